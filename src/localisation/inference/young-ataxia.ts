import type { Exam } from '../../exam/exam.ts';
import { type Finding, isLost } from '../../exam/finding.ts';
import { daysPerYear } from '../../kernel/days.ts';
import { harmsLongAxons } from './harmed-axons.ts';
import { kinds, sites } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';
import { tells } from './told.ts';

/**
 * Odds where somebody young sways and has lost jerks, over weeks to years, and no leg is weak. Neuropathies of the longest axons that begin in
 * youth are inherited and begin with weak, thin feet (Szigeti 2009, recalled); to sway first is of ganglia, columns and cerebellum, which
 * Friedreich's ataxia takes together, the commonest inherited ataxia before 25 (Harding 1981, from memory). Judged.
 */
const swaysWithoutJerks = { longAxons: 0.2, ganglia: 4, columns: 3, cerebellum: 3, rootsBelow: 0.4 } as const;
/** It began before this age, in years. */
const began = 25;
/** Days within which roots that are inflamed do it as well. */
const soon = 21;

const sways: ReadonlySet<string> = new Set(['ataxic', 'sensory-ataxic', 'romberg', 'pseudoathetosis']);
const saysToSway: ReadonlySet<string> = new Set(['unsteadiness', 'clumsiness', 'worse-in-the-dark']);
/** What grows in the back of the skull of a child hurts and is brought up. */
const ofPressure: ReadonlySet<string> = new Set(['headache', 'new-headache', 'morning-headache', 'vomiting']);
const ofWeakFeet: ReadonlySet<string> = new Set(['foot-drop', 'high-stepping', 'heel-walking', 'toe-walking']);
/** What starves or poisons long axons in the young too. */
const starvesOrPoisons: ReadonlySet<string> = new Set([
  ...harmsLongAxons,
  'thallium',
  'lead',
  'other-heavy-metal',
  'cancer',
  'leprosy',
  'critical-illness',
  'bariatric-surgery',
  'malnutrition',
  'burning-feet',
  'nitrous-oxide',
]);

function isSlow({ onset: { pace, durationDays }, course }: Exam): boolean {
  if (course === 'relapsing-remitting' || course === 'fluctuating' || course === 'improving') return false;
  if (durationDays !== undefined) return durationDays > soon;
  return pace === 'subacute' || pace === 'chronic';
}

const isLostJerk = ({ item: { probe }, value }: Finding): boolean => probe.kind === 'reflex' && isLost(value);

/** A child or a youth that sways and has no jerks. */
export function youngAtaxiaShifts(exam: Exam): readonly Shift[] {
  const { findings, history, person, onset } = exam;
  if (person.ageYears === undefined || person.ageYears - (onset.durationDays ?? 0) / daysPerYear >= began) return [];
  if (!isSlow(exam) || tells(history, starvesOrPoisons) || tells(history, ofPressure)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const jerk = wrong.find((finding) => isLostJerk(finding) && finding.item.region === 'lower-limbs');
  const walks = wrong.some(({ item }) => sways.has(item.key));
  const noPosition = wrong.some(({ modality }) => modality === 'joint-position');
  if (jerk === undefined || !(walks || (noPosition && tells(history, saysToSway)))) return [];
  // Weak legs with no jerks are of roots or of long axons, unless a toe goes up as well.
  const isWeak = wrong.some(({ item }) => item.probe.kind === 'movement' && item.region === 'lower-limbs');
  const isFreed = wrong.some(({ value }) => value === 'extensor');
  if (wrong.some(({ item }) => ofWeakFeet.has(item.key)) || (isWeak && !isFreed)) return [];
  const because = 'who sways from youth on and has lost jerks, on legs that are strong, has ganglia and columns ill';
  return [
    shiftBy(jerk, { applies: kinds('polyneuropathy'), factor: swaysWithoutJerks.longAxons, because }),
    shiftBy(jerk, { applies: kinds('ganglion'), factor: swaysWithoutJerks.ganglia, because }),
    shiftBy(jerk, {
      applies: sites('spinal-cord-posterolateral', 'spinal-cord-posterior'),
      factor: swaysWithoutJerks.columns,
      because,
    }),
    shiftBy(jerk, { applies: sites('cerebellar-degeneration'), factor: swaysWithoutJerks.cerebellum, because }),
    shiftBy(jerk, { applies: inTheCanalBelow, factor: swaysWithoutJerks.rootsBelow, because }),
  ];
}

const inTheCanalBelow = kinds('cauda-equina', 'root');
