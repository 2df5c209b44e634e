import { movementTable } from '../../anatomy/movements.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { kinds, sites } from './history/history-weight.ts';
import { lostFeeling, shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';
import { tells } from './told.ts';

/** Joints whose muscles have no stretch of cortex to themselves, as hand and foot do. */
const nearJoints: ReadonlySet<string> = new Set(['shoulder', 'elbow', 'hip', 'knee']);
/** A hand or a foot that hangs, as it is seen. */
const hangs: ReadonlySet<string> = new Set(['foot-drop', 'wrist-drop', 'finger-drop']);
const ofMotorCellsAndAxons: ReadonlySet<string> = new Set([
  'wasting',
  'fasciculation',
  'thickened-nerve',
  'palpable-mass',
]);

/** What lames a nerve, root or muscle at once, and pain, which the cortex does not give. */
const hurtOrPressed: ReadonlySet<string> = new Set([
  ...['trauma', 'limb-fracture-or-dislocation', 'external-pressure', 'deep-sleep-on-arm', 'elbow-leaning'],
  ...['leg-crossing', 'prolonged-squatting', 'prolonged-immobility', 'surgical-positioning', 'recent-surgery'],
  ...['hip-replacement', 'needle-near-nerve', 'lumbar-puncture-or-epidural', 'heavy-exertion', 'alcohol-excess'],
  ...[
    'recent-weight-loss',
    'weight-loss',
    'loss-of-consciousness',
    'pregnancy',
    'difficult-delivery',
    'injecting-drug-use',
  ],
  ...['previous-pressure-palsy', 'pressure-palsies', 'critical-illness', 'anticoagulant', 'vasculitis'],
  ...['arm-pain', 'shoulder-pain', 'hand-pain', 'leg-pain', 'thigh-pain', 'foot-pain', 'back-pain', 'neck-pain'],
  ...['radicular-arm-pain', 'radicular-leg-pain', 'bilateral-leg-pain', 'flank-pain', 'tense-painful-limb'],
  ...['muscle-thinning', 'limb-lump', 'similar-attacks-before', 'diving', 'electric-shock', 'venomous-bite'],
]);

/** Illnesses and habits that close the arteries of the brain. */
const arteriesAtRisk: ReadonlySet<string> = new Set([
  ...['hypertension', 'diabetes-mellitus', 'atrial-fibrillation', 'stroke', 'transient-ischaemic-attack', 'tobacco'],
  ...['ischaemic-heart-disease', 'heart-failure', 'peripheral-arterial-disease', 'hyperlipidaemia', 'thrombophilia'],
]);
/** Years from which on age alone puts them at risk. Judged. */
const oldArteries = 60;

function isFar({ item }: Finding): boolean {
  if (hangs.has(item.key)) return true;
  const movement = item.probe.kind === 'movement' ? movementTable.get(item.probe.movement) : undefined;
  return movement !== undefined && !nearJoints.has(movement.bodyPart);
}

/**
 * A hand or a foot of one side that failed within seconds to hours, with the rest of the limb strong as far as anybody looked,
 * where nothing pressed on the nerve, nothing hurts, and no muscle has wasted; else none.
 */
export function struckEnd({ findings, history, onset }: Exam): readonly Finding[] {
  if (onset.pace !== 'hyperacute' || tells(history, hurtOrPressed)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const weak = wrong.filter(({ item }) => item.probe.kind === 'movement' || hangs.has(item.key));
  const limbs = new Set(weak.map(({ item, side }) => `${item.region} ${side}`));
  const [first] = weak;
  if (first === undefined || limbs.size !== 1 || first.side === 'midline' || !weak.every(isFar)) return [];
  const isOfTheNerve = wrong.some(
    ({ item, value }) =>
      ofMotorCellsAndAxons.has(item.key) ||
      (item.scale === 'reflex-grade' && item.region !== 'head' && ['0', 'trace', '1'].includes(String(value))),
  );
  return isOfTheNerve || isFibularAlone(findings) ? [] : weak;
}

/** Eversion is lost and inversion strong: the split that the fibular nerve makes and no stretch of cortex. */
function isFibularAlone(findings: readonly Finding[]): boolean {
  const of = (key: string) => findings.filter(({ item, value }) => item.key === key && value !== null);
  return (
    of('ankle-inversion').some(({ abnormal }) => !abnormal) && of('ankle-eversion').some(({ abnormal }) => abnormal)
  );
}

/** Odds of the stretch of cortex for hand or foot, where feeling was kept or not looked at and where it is lost too. Judged. */
const ofTheCortex = { strengthAlone: 4, feelingToo: 2 } as const;
/** Odds of a nerve that fails at once though nothing pressed on it. Judged. */
const nerveForNoReason = 0.6;

const because =
  'it failed at once, nothing pressed on a nerve, and hand and foot have a stretch of cortex of their own';

/**
 * A wrist or a foot that drops in a moment while arteries are at risk is a small infarct of the motor strip oftener than its
 * looks say. Source: Brazis, monoparesis (recalled).
 */
export function struckLimbShifts(exam: Exam): readonly Shift[] {
  const [first] = struckEnd(exam);
  const isAtRisk = tells(exam.history, arteriesAtRisk) || (exam.person.ageYears ?? 0) >= oldArteries;
  if (first === undefined || !isAtRisk) return [];
  const isNumb = lostFeeling(exam.findings).length > 0;
  const cortex = first.item.region === 'upper-limbs' ? 'cortex-hand-area' : 'cortex-anterior-cerebral';
  return [
    shiftBy(first, {
      applies: sites(cortex),
      factor: isNumb ? ofTheCortex.feelingToo : ofTheCortex.strengthAlone,
      because,
    }),
    shiftBy(first, { applies: kinds('nerve', 'root', 'plexus'), factor: nerveForNoReason, because }),
  ];
}
