import type { Exam } from '../../exam/exam.ts';
import { type Finding, isBrisk, isLost } from '../../exam/finding.ts';
import { cameFast } from '../../exam/pace.ts';
import { daysPerYear } from '../../kernel/days.ts';
import { anyOf, kinds, sites } from './history/history-weight.ts';
import { longAxons, shiftBy, sidesOf, weakMovements } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { tells } from './told.ts';

/** Up to this age a child is held, fed and watched rather than asked to do something. Judged. */
const infancyYears = 1.5;
/** Age in years below which what has stood since the first year is asked about. Judged. */
const toddlerYears = 3;

/**
 * Odds where an infant is limp or without jerks in all limbs and nothing speaks of the cord: it is torn at birth or malformed, and hardly
 * ever inflamed. Source: common practice (Dubowitz, the floppy infant, recalled); judged.
 */
const limp = { cord: 0.06, foramenMagnum: 0.2, brainstem: 0.5, territory: 0.01 } as const;
/** A part of the brainstem that one artery feeds: arteries of infants hardly ever close there. */
const territoryOfTheBrainstem: Applies = ({ key, kind }) =>
  kind === 'brainstem' && key !== 'brainstem-diffuse' && key !== 'foramen-magnum';
const ofTheCord: ReadonlySet<string> = new Set([
  ...['trauma', 'neck-trauma', 'shoulder-dystocia', 'difficult-delivery', 'perinatal-injury', 'spina-bifida'],
  ...['back-pain', 'neck-pain', 'bladder-disturbance', 'spinal-surgery'],
]);
const seenOfTheCord: ReadonlySet<string> = new Set([
  ...['urinary-retention', 'palpable-bladder', 'reduced-anal-tone', 'lumbosacral-skin-mark', 'spinal-tenderness'],
]);

function isLimp({ abnormal, item: { probe }, value }: Finding): boolean {
  if (probe.kind === 'tone') return value === 'reduced';
  return abnormal && probe.kind === 'reflex' && isLost(value);
}

function limpShifts({ findings, history }: Exam): readonly Shift[] {
  const found = findings.filter((finding) => isLimp(finding));
  const [first] = found;
  const limbs = new Set(found.map(({ item: { region }, side }) => `${region} ${side}`));
  if (first === undefined || limbs.size < 3 || tells(history, ofTheCord)) return [];
  const isOfTheCord = ({ abnormal, item, place, modality }: Finding): boolean =>
    abnormal && (seenOfTheCord.has(item.key) || place?.kind === 'level-below' || modality !== undefined);
  if (
    findings.some((finding) => isOfTheCord(finding) || (finding.item.probe.kind === 'reflex' && isBrisk(finding.value)))
  )
    return [];
  const because =
    'limp infants have an ill brain, motor cells, junctions or muscles, and a cord that was torn or malformed in few';
  return [
    shiftBy(first, { applies: kinds('cord'), factor: limp.cord, because }),
    shiftBy(first, { applies: sites('foramen-magnum'), factor: limp.foramenMagnum, because }),
    shiftBy(first, { applies: sites('brainstem-diffuse'), factor: limp.brainstem, because }),
    shiftBy(first, { applies: territoryOfTheBrainstem, factor: limp.territory, because }),
  ];
}

/** Odds where an infant does not suck, swallow or cry as it should, and neither half is named. Judged. */
const feedsBadly = { oneNerve: 0.08, junction: 3, bulbarCells: 1.5 } as const;
/** The same where a parent has it too: of the receptor, by the mother's antibodies or by descent, and not of a poison. Judged. */
const likeAParent = { receptor: 5, poison: 0.12 } as const;
const ofTheParents: ReadonlySet<string> = new Set(['similar-disorder', 'autoimmune-disease']);
const ofTheThroat: ReadonlySet<string> = new Set([
  ...['drooling', 'weak-suck-or-cry', 'absent-gag-reflex', 'dysphagia', 'nasal-speech', 'dysphonia'],
]);
const nervesOfOneSide: Applies = (site) => site.kind === 'cranial-nerve' && site.side !== 'both';

/** One nerve of face or throat leaves an infant its suck; who loses it has lost both halves, to a poison of the junction first. */
function throatShifts({ findings, history, onset }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const throat = wrong.find(({ item }) => ofTheThroat.has(item.key));
  const halves = sidesOf(wrong.filter(({ item, side }) => item.section === 'cranialNerves' && side !== 'midline'));
  if (throat === undefined || halves.size === 1) return [];
  const because = 'an infant that no longer sucks or swallows has lost both halves of face and throat';
  const isLikeAParent = history.some(({ present, kind, key }) => present && kind === 'family' && ofTheParents.has(key));
  const descent = 'an infant that does not suck has it of a parent who is ill alike';
  const atOnce = onset.pace === 'acute' || onset.pace === 'subacute';
  return [
    shiftBy(throat, { applies: nervesOfOneSide, factor: feedsBadly.oneNerve, because }),
    ...(atOnce && !isLikeAParent
      ? [shiftBy(throat, { applies: sites('presynaptic-junction'), factor: feedsBadly.junction, because })]
      : []),
    ...(isLikeAParent
      ? [
          shiftBy(throat, { applies: sites('postsynaptic-junction'), factor: likeAParent.receptor, because: descent }),
          shiftBy(throat, { applies: sites('presynaptic-junction'), factor: likeAParent.poison, because: descent }),
        ]
      : []),
    shiftBy(throat, { applies: sites('bulbar-motor-nuclei'), factor: feedsBadly.bulbarCells, because }),
  ];
}

/** Odds where an infant loses skills: of the cerebellum by itself, and of the whole brain, more where mind or wakefulness dim too. Judged. */
const losesSkills = { cerebellum: 0.03, brain: 2.5, brainThatDims: 6 } as const;
const skills: ReadonlySet<string> = new Set(['loss-of-skills']);
const ofTheMind: ReadonlySet<string> = new Set(['seizure', 'behaviour-change', 'cognitive-change', 'visual-loss']);
const shakesOrSways: ReadonlySet<string> = new Set([
  ...['ataxic', 'titubation', 'intention-tremor', 'finger-nose', 'heel-shin', 'nystagmus', 'gaze-evoked-nystagmus'],
  ...[
    'cerebellar-dysarthria',
    'opsoclonus',
    'ocular-flutter',
    'vertical-nystagmus',
    'downbeat-nystagmus',
    'past-pointing',
  ],
]);
const unsteadiness: ReadonlySet<string> = new Set(['unsteadiness', 'clumsiness']);

/** To sit and to hold the head are steps that an infant takes with its whole brain; lost, they say nothing of the cerebellum alone. */
function skillsShifts({ findings, history }: Exam): readonly Shift[] {
  if (!tells(history, skills) || tells(history, unsteadiness)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [first] = wrong;
  if (first === undefined || wrong.some(({ item }) => shakesOrSways.has(item.key))) return [];
  const dims = tells(history, ofTheMind) || wrong.some(({ item }) => item.section === 'higherFunction');
  const because = 'an infant that loses skills has the whole brain ill; to sit is one of them';
  return [
    shiftBy(first, { applies: kinds('cerebellum'), factor: losesSkills.cerebellum, because }),
    shiftBy(first, {
      applies: sites('diffuse-encephalopathy'),
      factor: dims ? losesSkills.brainThatDims : losesSkills.brain,
      because,
    }),
  ];
}

/**
 * An arm that does not move from birth was pulled in most: 1 to 2 plexuses in 1,000 births, against 0.2 to 0.4 strokes of
 * the newborn, which seldom show as a weak limb before months have passed. Source: Foad 2008 (recalled). Odds judged.
 */
const pulledAtBirth = 5;
const upperRoots: Applies = ({ key, level }) => key === 'adjacent-nerve-roots' && level === 'C5';
const plexusOfTheArm = anyOf(sites('brachial-plexus', 'upper-trunk', 'lower-trunk'), upperRoots);

function newbornShifts({ findings, person }: Exam): readonly Shift[] {
  if (person.ageYears === undefined || person.ageYears >= 1) return [];
  const weak = weakMovements(findings);
  const [first] = weak;
  if (first === undefined || !weak.every(({ item }) => item.region === 'upper-limbs') || sidesOf(weak).size > 1)
    return [];
  const because = 'an arm that does not move from birth was mostly pulled';
  return [shiftBy(first, { applies: plexusOfTheArm, factor: pulledAtBirth, because })];
}

/**
 * In the first year inflammation of the roots is a rarity (0.2 in 100,000), and a face that does not move with limp limbs is of
 * muscle, junction or motor cells, above all where it has stood since birth. Source: McGrogan 2009, Dubowitz, the floppy infant
 * (from memory). Odds judged.
 */
const limpFromBirth = { roots: 0.05, muscle: 6, release: 0.4, brainOfTheLate: 3 } as const;
const ofLimpInfants = sites(
  'proximal-myopathy',
  'myotonic-myopathy',
  'lower-motor-neuron-system',
  'postsynaptic-junction',
);

/** Age in years below which it began, for what is called of the first year. */
const firstYear = 0.6;

function beganInFirstYear({ person: { ageYears }, onset: { durationDays = 0 } }: Exam): boolean {
  return ageYears !== undefined && (ageYears < 1 || ageYears - durationDays / daysPerYear < firstYear);
}

const late: ReadonlySet<string> = new Set(['developmental-delay']);
const saidToBeWeak: ReadonlySet<string> = new Set(['weakness', 'fatigable-weakness', 'leg-weakness', 'arm-weakness']);

function floppyInfantShifts(exam: Exam): readonly Shift[] {
  const { findings, course, history } = exam;
  if (!beganInFirstYear(exam)) return [];
  const first = findings.find(
    ({ abnormal, item, value }) =>
      abnormal &&
      ((item.probe.kind === 'tone' && value === 'reduced') || ['weak-suck-or-cry', 'head-lag'].includes(item.key)),
  );
  if (first === undefined) return [];
  const roots = shiftBy(first, {
    applies: anyOf(kinds('polyradiculoneuropathy', 'ganglion'), longAxons),
    factor: limpFromBirth.roots,
    because: 'roots and nerves are hardly ever inflamed in the first year',
  });
  if (tells(history, late) && !tells(history, saidToBeWeak)) {
    const because =
      'limp infants who are late in all they learn, and are not called weak, mostly have an illness of the brain';
    return [
      roots,
      shiftBy(first, { applies: sites('diffuse-encephalopathy'), factor: limpFromBirth.brainOfTheLate, because }),
    ];
  }
  if (course !== 'static') return [roots];
  const because = 'a child that is limp from birth has a disease of muscle, junction or motor cells';
  return [
    roots,
    shiftBy(first, { applies: ofLimpInfants, factor: limpFromBirth.muscle, because }),
    shiftBy(first, { applies: sites('presynaptic-junction'), factor: limpFromBirth.release, because }),
  ];
}

/**
 * An infant that was well and grows limp in all limbs within days: botulism of infancy and diseases of motor cells and muscle
 * are as common then as illness of the brain, which the same picture suggests. Source: Dubowitz, the floppy infant (from
 * memory). Odds judged.
 */
const limpInfant = { years: 1.2, limbs: 4, junction: 5 } as const;

function limpInfantShifts({ findings, person }: Exam): readonly Shift[] {
  if (person.ageYears === undefined || person.ageYears > limpInfant.years) return [];
  const limp = findings.filter(
    ({ abnormal, item, value }) => abnormal && item.probe.kind === 'tone' && value === 'reduced',
  );
  const limbs = new Set(
    limp.filter(({ side }) => side !== 'midline').map(({ item, side }) => `${item.region} ${side}`),
  );
  const weakNeck = findings.some(
    ({ abnormal, item }) => abnormal && item.probe.kind === 'movement' && item.probe.movement === 'neck-flexion',
  );
  const [first] = limp;
  if (first === undefined || limbs.size < limpInfant.limbs || !weakNeck) return [];
  const because = 'an infant grows limp with a head that lags when its junctions are blocked';
  return [shiftBy(first, { applies: sites('presynaptic-junction'), factor: limpInfant.junction, because })];
}

/** Age in years up to which half a body that is stiff was mostly hurt around birth, and the odds of brain and cord then. Judged. */
const stiffHalf = { years: 6, brain: 2, cord: 0.15 } as const;
const hurtsTheCord: ReadonlySet<string> = new Set([
  ...['trauma', 'neck-trauma', 'neck-pain', 'back-pain'],
  ...['bladder-disturbance', 'difficult-delivery', 'shoulder-dystocia'],
]);

/**
 * An arm and a leg of one half that are stiff in a small child, told of by nobody as sudden: a hemisphere that was hurt around
 * birth in nearly all (one of 1,000; from memory), and half a cord in hardly any.
 */
function stiffHalfShifts({ findings, history, onset, person: { ageYears = stiffHalf.years } }: Exam): readonly Shift[] {
  if (ageYears >= stiffHalf.years || cameFast(onset)) return [];
  if (tells(history, hurtsTheCord)) return [];
  const wrong = findings.filter(({ abnormal }) => abnormal);
  if (wrong.some(({ item, modality }) => modality !== undefined || seenOfTheCord.has(item.key))) return [];
  const stiff = wrong.filter(
    ({ item, value }) =>
      value === 'spastic' || item.key === 'hemiplegic' || (item.section === 'reflexes' && isBrisk(value)),
  );
  const arm = stiff.find(({ item }) => item.region === 'upper-limbs' || item.key === 'hemiplegic');
  if (arm === undefined || sidesOf(stiff.filter(({ side }) => side !== 'midline')).size !== 1) return [];
  const because = 'half a small child that is stiff has a hemisphere that was hurt around birth in nearly all';
  return [
    shiftBy(arm, { applies: kinds('hemisphere'), factor: stiffHalf.brain, because }),
    shiftBy(arm, { applies: kinds('cord', 'root', 'plexus', 'nerve'), factor: stiffHalf.cord, because }),
  ];
}

/** What the signs of an infant say together of the place, where they would say something else of who walks and talks. */
export function infantPatternShifts(exam: Exam): readonly Shift[] {
  const { ageYears } = exam.person;
  if (ageYears === undefined || ageYears >= stiffHalf.years) return [];
  if (ageYears >= toddlerYears) return stiffHalfShifts(exam);
  if (ageYears > infancyYears) return [...floppyInfantShifts(exam), ...stiffHalfShifts(exam)];
  return [
    ...stiffHalfShifts(exam),
    ...newbornShifts(exam),
    ...floppyInfantShifts(exam),
    ...limpInfantShifts(exam),
    ...limpShifts(exam),
    ...throatShifts(exam),
    ...skillsShifts(exam),
  ];
}
