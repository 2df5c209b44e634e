import type { Exam } from '../../exam/exam.ts';
import { kinds, sites } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';
import { tells } from './told.ts';

/**
 * Odds where legs shake on standing and hands do not: that is orthostatic tremor or a tremor of cerebellum and basal ganglia in nearly all,
 * while nerves that have lost their large fibres shake the hands (Bain 1996 and Gerschlager 2004, recalled). Judged.
 */
const legsThatShake = { tremor: 3, nerves: 0.15 } as const;
const ofTheLeg = /^(lower-limb|thigh|leg|foot)/;
const shaking: ReadonlySet<string> = new Set([
  'postural-tremor',
  'action-tremor',
  'intention-tremor',
  'resting-tremor',
]);

export function legTremorShifts({ findings }: Exam): readonly Shift[] {
  const tremors = findings.filter(({ abnormal, item }) => abnormal && shaking.has(item.key));
  const [first] = tremors;
  if (first?.item.key !== 'postural-tremor') return [];
  if (!tremors.every(({ place }) => place !== undefined && ofTheLeg.test(place.key))) return [];
  const because = 'the legs shake when they are held or stood upon, and the hands do not';
  return [
    shiftBy(first, { applies: sites('action-tremor'), factor: legsThatShake.tremor, because }),
    shiftBy(first, {
      applies: kinds('polyneuropathy', 'polyradiculoneuropathy'),
      factor: legsThatShake.nerves,
      because,
    }),
  ];
}

/** Odds of a tremor of both hands as the illness where hands were looked at and nobody has told or seen of one. Judged. */
const tremorUnseen = 0.05;
const shakesOrClumsy: ReadonlySet<string> = new Set(['tremor', 'involuntary-movements']);
/** What else that tremor goes with: a heart that races, skin that sweats, eyes that stare. */
const ofItsCompany: ReadonlySet<string> = new Set([
  'resting-tachycardia',
  'hyperhidrosis',
  'lid-retraction',
  'lid-lag',
]);

/** Brisk jerks go with the coarse tremor of an active thyroid; without the tremor they say nothing of it. */
export function unseenTremorShifts({ findings, history }: Exam): readonly Shift[] {
  if (tells(history, shakesOrClumsy)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  if (first === undefined) return [];
  if (wrong.some(({ item }) => item.section === 'involuntaryMovements' || ofItsCompany.has(item.key))) return [];
  const because = 'nobody tells of a tremor or has seen one';
  return [shiftBy(first, { applies: sites('action-tremor'), factor: tremorUnseen, because })];
}
