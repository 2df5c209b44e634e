import type { Exam } from '../../exam/exam.ts';
import { kinds, sites } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';

/**
 * Odds where conduct has changed over months to years and neither memory nor wakefulness is found wanting: the frontal lobes waste or are
 * pressed, while what ails the whole brain takes memory and attention first. Rascovsky 2011, criteria (recalled); odds judged.
 */
const conductAlone = { frontal: 2.5, whole: 0.5 } as const;
/** Two of these at least: one alone is met in any illness of the mind. */
const ofConduct: ReadonlySet<string> = new Set([
  ...['disinhibition', 'apathy', 'executive-dysfunction', 'anosognosia', 'motor-impersistence'],
  ...['grasp-reflex', 'frontal-release-signs', 'palilalia'],
]);
/** What the frontal lobes leave alone. */
const ofTheWholeMind: ReadonlySet<string> = new Set([
  ...['drowsiness', 'coma', 'confusion', 'disorientation', 'inattention', 'amnesia', 'memory-impairment'],
  ...['hallucinations', 'agitation'],
]);
const slowFromDays = 180;

export function changedConductShifts({ findings, onset }: Exam): readonly Shift[] {
  if (onset.pace !== 'chronic' && (onset.durationDays ?? 0) < slowFromDays) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const signs = wrong.filter(({ item }) => ofConduct.has(item.key));
  const [first] = signs;
  if (first === undefined || new Set(signs.map(({ item }) => item.key)).size < 2) return [];
  if (wrong.some(({ item }) => ofTheWholeMind.has(item.key))) return [];
  const because = 'conduct has changed over months, and neither memory nor attention is found wanting';
  return [
    shiftBy(first, { applies: sites('cortex-frontal'), factor: conductAlone.frontal, because }),
    shiftBy(first, { applies: kinds('encephalopathy'), factor: conductAlone.whole, because }),
  ];
}
