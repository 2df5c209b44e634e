import type { Exam } from '../../exam/exam.ts';
import { type Finding, isLost } from '../../exam/finding.ts';
import { cameFast } from '../../exam/pace.ts';
import { anyOf, cervicalCord, kinds, lumbarRoots, sites } from './history/history-weight.ts';
import { hasSignOfTheHead, lostFeeling, shiftBy, sidesOf, weakMovements } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { tells } from './told.ts';
import { serves } from './told-limbs.ts';

const painOfTheNeck: ReadonlySet<string> = new Set(['neck-pain', 'radicular-arm-pain']);
/** Within hours a shoulder that hurts as the limbs fail is the neck's as well; over days it may be anything. */
const painOfTheNeckInHours: ReadonlySet<string> = new Set([...painOfTheNeck, 'shoulder-pain', 'thoracic-back-pain']);
const painOfMuscle: ReadonlySet<string> = new Set(['muscle-pain', 'preceding-infection', 'similar-attacks-before']);

/** Days within which the limbs have failed, and what the pattern does to the odds. Judged. */
const underAPainfulNeck = { days: 14, cord: 3, bleeding: 5, muscle: 0.05, roots: 0.5 } as const;
const bleeds: ReadonlySet<string> = new Set(['anticoagulant', 'bleeding-disorder', 'lumbar-puncture-or-epidural']);

/**
 * All four limbs fail within days and it began with pain in the neck: blood, a disc, pus or a closed artery at the cord does that;
 * an attack of paralysis is painless, and inflamed roots hurt in the back and legs. Source: Groen 2004, blood outside the dura
 * (from memory). Odds judged.
 */
function fourLimbsUnderAPainfulNeckShifts({ findings, history, onset }: Exam): readonly Shift[] {
  const { pace, durationDays = 0 } = onset;
  if (!cameFast(onset)) return [];
  if (durationDays > underAPainfulNeck.days) return [];
  if (!tells(history, pace === 'hyperacute' ? painOfTheNeckInHours : painOfTheNeck)) return [];
  if (tells(history, painOfMuscle) || hasSignOfTheHead(findings)) return [];
  const weak = weakMovements(findings);
  const areBoth = (['upper-limbs', 'lower-limbs'] as const).every(
    (limb) => sidesOf(weak.filter(({ item }) => item.region === limb)).size === 2,
  );
  const [first] = weak;
  if (first === undefined || !areBoth) return [];
  const because = 'the neck hurt and all four limbs failed within days';
  const blood = tells(history, bleeds) ? underAPainfulNeck.bleeding : 1;
  return [
    shiftBy(first, { applies: cordBelowTheNeck, factor: underAPainfulNeck.cord * blood, because }),
    shiftBy(first, { applies: kinds('muscle', 'junction'), factor: underAPainfulNeck.muscle, because }),
    shiftBy(first, { applies: kinds('polyradiculoneuropathy'), factor: underAPainfulNeck.roots, because }),
  ];
}

const cordBelowTheNeck: Applies = (site) => cervicalCord(site) && site.key !== 'spinal-cord-posterior';

/** What the pattern does to the odds of what lies in the canal, and of what lies outside of it. Judged. */
const struckInTheCanal = { inside: 3, outside: 0.2 } as const;
const inTheCanal = anyOf(lumbarRoots, kinds('cauda-equina'), sites('conus-medullaris'));

/**
 * A needle in the back that shot pain into a leg touched what lies in the canal; the plexus and the nerves of the leg are out
 * of its reach. Source: Horlocker 2000, paraesthesia at spinal anaesthesia (from memory). Odds judged.
 */
function needleInTheCanalShifts({ findings, history }: Exam): readonly Shift[] {
  const isSaid = (key: string): boolean => history.some((one) => one.present && one.key === key);
  if (!isSaid('lumbar-puncture-or-epidural') || !isSaid('needle-near-nerve')) return [];
  const wrong = findings.find(({ abnormal, item }) => abnormal && item.region === 'lower-limbs');
  if (wrong === undefined) return [];
  const because = 'a needle in the back touches roots and cord, not what lies outside the canal';
  return [
    shiftBy(wrong, { applies: inTheCanal, factor: struckInTheCanal.inside, because }),
    shiftBy(wrong, { applies: outOfTheCanal, factor: struckInTheCanal.outside, because }),
  ];
}

const outOfTheCanal: Applies = (site) => (site.kind === 'nerve' || site.kind === 'plexus') && serves.leg(site);

/** What the pattern does to the odds of the cord, and of inflamed roots. Judged. */
const shockOfTheCord = { cord: 2.5, roots: 0.5 } as const;
const holdsUrine: ReadonlySet<string> = new Set(['urinary-retention', 'palpable-bladder', 'loss-of-bladder-sensation']);

/**
 * Both legs are limp within days, they feel nothing right up to the trunk, and the bladder holds: a cord in shock has no jerks either, and
 * inflamed roots numb the ends of limbs and stop the bladder late and in few. Source: Brazis, spinal shock (recalled). Odds judged.
 */
function shockOfTheCordShifts({ findings, onset }: Exam): readonly Shift[] {
  if (!cameFast(onset)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const weak = weakMovements(wrong).filter(({ item }) => item.region === 'lower-limbs');
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size < 2 || hasSignOfTheHead(findings)) return [];
  const numb = lostFeeling(wrong).filter(({ place }) => place?.key === 'whole-leg' || place?.kind === 'level-below');
  if (sidesOf(numb).size < 2 || !wrong.some(({ item }) => holdsUrine.has(item.key))) return [];
  const because = 'both legs are limp and numb up to the trunk within days, and the bladder holds';
  return [
    shiftBy(first, { applies: kinds('cord'), factor: shockOfTheCord.cord, because }),
    shiftBy(first, { applies: kinds('polyradiculoneuropathy'), factor: shockOfTheCord.roots, because }),
  ];
}

/** Days within which the bladder has failed with the limbs, and what that does to the odds of what lies in the canal and of inflamed roots. Judged. */
const bladderFromTheFirst = { days: 10, inTheCanal: 1.5, roots: 0.35 } as const;

/**
 * Both legs are weak within days and the bladder already holds: that casts doubt on inflamed roots as long as no jerk was found to be
 * gone and no foot numb. Source: Asbury 1990, criteria for Guillain-Barré syndrome (recalled). Odds judged.
 */
function bladderFromTheFirstShifts({ findings, onset }: Exam): readonly Shift[] {
  if (!cameFast(onset) || (onset.durationDays ?? 0) > bladderFromTheFirst.days) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const bladder = wrong.find(({ item }) => holdsUrine.has(item.key));
  const weak = weakMovements(wrong).filter(({ item }) => item.region === 'lower-limbs');
  if (bladder === undefined || sidesOf(weak).size < 2 || hasSignOfTheHead(findings)) return [];
  if (lostFeeling(findings).length > 0) return [];
  if (wrong.some(({ item, value }) => item.section === 'reflexes' && isLost(value))) return [];
  const because = 'the bladder holds as the limbs fail, and no jerk was found to be gone';
  return [
    shiftBy(bladder, { applies: kinds('cord', 'cauda-equina'), factor: bladderFromTheFirst.inTheCanal, because }),
    shiftBy(bladder, { applies: kinds('polyradiculoneuropathy'), factor: bladderFromTheFirst.roots, because }),
  ];
}

/** Odds where both arms alone fail within days after an infection: of what lies above, and of inflamed roots and nerves. Judged. */
const armsAfterInfection = { above: 0.1, roots: 2 } as const;
const infections: ReadonlySet<string> = new Set([
  ...['preceding-infection', 'preceding-gastroenteritis', 'preceding-respiratory-infection'],
]);

/** Border zones of both hemispheres fail in shock and not after an infection, which inflames roots; a few begin in the hands. */
function armsAfterInfectionShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (!cameFast(onset) || !tells(history, infections) || hasSignOfTheHead(findings)) return [];
  const weak = weakMovements(findings);
  const [first] = weak;
  if (first === undefined || sidesOf(weak).size < 2 || !weak.every(({ item }) => item.region === 'upper-limbs'))
    return [];
  const because = 'both arms fail within days after an infection, which inflames roots and nerves';
  return [
    shiftBy(first, { applies: kinds('hemisphere', 'brainstem'), factor: armsAfterInfection.above, because }),
    shiftBy(first, { applies: kinds('polyradiculoneuropathy'), factor: armsAfterInfection.roots, because }),
  ];
}

/** Odds where four limbs are lost within hours or days while feeling and breath are said to be kept. Judged. */
const lostButFeels = { cord: 0.2, brainstem: 0.3, muscle: 4 } as const;
const feelingLost: ReadonlySet<string> = new Set(['numbness', 'paraesthesiae']);
const ofTheSpine: ReadonlySet<string> = new Set([
  ...['neck-pain', 'back-pain', 'thoracic-back-pain', 'shoulder-pain', 'radicular-arm-pain', 'tight-band'],
  ...['bladder-disturbance', 'bowel-disturbance', 'trauma', 'neck-trauma', 'lumbar-puncture-or-epidural'],
]);
/** Grades of a limb that hardly moves or does not. */
const hardlyMoves: ReadonlySet<Finding['value']> = new Set(['0', '1', '1+', '2-']);

/**
 * A cord that moves neither arms nor legs takes breath and feeling with them; muscle without its potassium leaves both (Adams and
 * Victor, periodic paralysis, recalled).
 */
function lostButFeelsShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (!cameFast(onset) || tells(history, ofTheSpine) || tells(history, feelingLost)) return [];
  const denies = (key: string): boolean => history.some((one) => !one.present && one.key === key);
  if (!denies('numbness') || !denies('breathlessness') || hasSignOfTheHead(findings)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  if (wrong.some(({ item, modality }) => modality !== undefined || item.section === 'sphincters')) return [];
  const lost = weakMovements(wrong).filter(({ value }) => hardlyMoves.has(value));
  const [first] = lost;
  const areBoth = (['upper-limbs', 'lower-limbs'] as const).every(
    (limb) => sidesOf(lost.filter(({ item }) => item.region === limb)).size === 2,
  );
  if (first === undefined || !areBoth) return [];
  const because = 'no limb moves, and feeling and breath are kept, which a cord takes with the limbs';
  return [
    shiftBy(first, { applies: kinds('cord'), factor: lostButFeels.cord, because }),
    shiftBy(first, { applies: kinds('brainstem'), factor: lostButFeels.brainstem, because }),
    shiftBy(first, { applies: kinds('muscle'), factor: lostButFeels.muscle, because }),
  ];
}

/** Odds where both legs fail within weeks under a tender spine in somebody with an infection that spreads. Judged. */
const infectedSpine = { canal: 2, roots: 0.4 } as const;
const spreads: ReadonlySet<string> = new Set([
  'sepsis',
  'recent-bacteraemia',
  'injecting-drug-use',
  'fever',
  'tuberculosis',
]);

/** Pus between or beside the vertebrae presses on cord and cauda (Darouiche 2006, from memory). */
function infectedSpineShifts({ findings, history, onset }: Exam): readonly Shift[] {
  if (onset.pace === 'chronic' || !tells(history, spreads) || hasSignOfTheHead(findings)) return [];
  const tender = findings.find(({ abnormal, item }) => abnormal && item.key === 'spinal-tenderness');
  const weak = weakMovements(findings).filter(({ item }) => item.region === 'lower-limbs');
  if (tender === undefined || sidesOf(weak).size < 2) return [];
  const because = 'both legs fail under a tender spine, with an infection that spreads';
  return [
    shiftBy(tender, { applies: kinds('cord', 'cauda-equina'), factor: infectedSpine.canal, because }),
    shiftBy(tender, { applies: kinds('polyradiculoneuropathy'), factor: infectedSpine.roots, because }),
  ];
}

/** What fails in limbs within hours or days beside what was told of it, and what that says of the site. */
export function acuteLimbShifts(exam: Exam): readonly Shift[] {
  return [
    ...fourLimbsUnderAPainfulNeckShifts(exam),
    ...shockOfTheCordShifts(exam),
    ...bladderFromTheFirstShifts(exam),
    ...armsAfterInfectionShifts(exam),
    ...lostButFeelsShifts(exam),
    ...infectedSpineShifts(exam),
    ...needleInTheCanalShifts(exam),
  ];
}
