import type { Exam } from '../../exam/exam.ts';
import { sites } from './history/history-weight.ts';
import { shiftBy, sidesOf, weakMovements } from './limb-patterns.ts';
import type { Shift } from './shift.ts';
import { tells } from './told.ts';

/** What goes with an attack beside the belly: vessels, mind, gut and urine. */
const toldOfAnAttack: ReadonlySet<string> = new Set([
  'dark-urine',
  'vomiting',
  'seizure',
  'behaviour-change',
  'similar-attacks-before',
]);
const signsOfAnAttack: ReadonlySet<string> = new Set([
  'resting-tachycardia',
  'blood-pressure-lability',
  'confusion',
  'hallucinations',
  'constipation',
  'ileus',
]);
const bellyPain: ReadonlySet<string> = new Set(['abdominal-pain']);
const speaksAgainst: ReadonlySet<string> = new Set(['fever', 'spinal-tenderness', 'neck-stiffness']);
/** Odds of motor axons that die all over, and of what looks like inflamed roots. Judged. */
const attack = { motorAxons: 3, roots: 1.8 } as const;

/**
 * The belly hurts, and within days to weeks limbs fail on both sides with a racing heart, a clouded mind or dark urine: motor
 * axons that a poisoned liver or lead has taken. Source: Adams and Victor, porphyric polyneuropathy (recalled).
 */
export function porphyricShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (onset.pace !== 'acute' && onset.pace !== 'subacute') return [];
  if (!tells(history, bellyPain) || tells(history, speaksAgainst)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  if (wrong.some(({ item, place }) => speaksAgainst.has(item.key) || place?.kind === 'level-below')) return [];
  const weak = weakMovements(findings);
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size < 2) return [];
  if (!tells(history, toldOfAnAttack) && !wrong.some(({ item }) => signsOfAnAttack.has(item.key))) return [];
  const because = 'belly pain, then limbs that fail with a racing heart, a clouded mind or dark urine';
  return [
    shiftBy(first, { applies: sites('motor-polyneuropathy'), factor: attack.motorAxons, because }),
    shiftBy(first, { applies: sites('demyelinating-polyradiculoneuropathy'), factor: attack.roots, because }),
  ];
}
