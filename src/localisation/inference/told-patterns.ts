import type { Exam } from '../../exam/exam.ts';
import { isBodySide } from '../../kernel/side.ts';
import { harmsLongAxons } from './harmed-axons.ts';
import { anyOf, cervicalCord, kinds, sites, thoracicCord } from './history/history-weight.ts';
import type { Applies, Shift } from './shift.ts';
import { firstTold, shiftsOfTold, type Told, toldOfEach } from './told.ts';
import { toldInDaysShifts } from './told-in-days.ts';
import { toldLimbShifts } from './told-limbs.ts';

/** Complaints that say more together than each by itself, of which one of each group must be told. */
interface ToldPattern {
  readonly groups: readonly (readonly string[])[];
  /** What speaks against it, when told. */
  readonly butNot: readonly string[];
  readonly rows: readonly { readonly applies: Applies; readonly factor: number }[];
  readonly because: string;
}

const cerebellumAsAWhole = sites('cerebellar-degeneration');
const nigraAndCerebellum = sites('akinetic-rigid-syndrome', 'cerebellar-degeneration');
const cordOfTheNeck: Applies = anyOf(cervicalCord, sites('foramen-magnum'));
const hemispheres: Readonly<Record<'left' | 'right', Applies>> = {
  left: (site) => site.kind === 'hemisphere' && site.side === 'right',
  right: (site) => site.kind === 'hemisphere' && site.side === 'left',
};
const anyHemisphere = kinds('hemisphere');

const gait = ['unsteadiness', 'falls', 'difficulty-walking'];
const upright = ['light-headed-on-standing', 'syncope'];
const bladder = ['bladder-disturbance', 'sexual-dysfunction'];

const numb = ['numbness', 'paraesthesiae'];
const notOfTheCordBelow = [
  ...['arm-weakness', 'clumsiness', 'tremor', 'slurred-speech', 'cognitive-change', 'diplopia', 'headache', 'vertigo'],
  ...['face-numbness', 'dysphagia', 'muscle-pain'],
  // What starves or poisons the columns.
  ...['zinc-excess', 'nitrous-oxide', 'vitamin-b12-deficiency', 'pernicious-anaemia', 'bariatric-surgery'],
  ...['gastrectomy', 'malabsorption', 'vegan-diet'],
];
/** Of the cross-section as a whole: half of it alone makes one leg weak and the other numb. */
const cordBelowTheArms: Applies = (site) =>
  site.key === 'conus-medullaris' || (thoracicCord(site) && site.key === 'spinal-cord-transverse');

/** All judged: what the single complaints say is in the tables of the history. */
const slowPatterns: readonly ToldPattern[] = [
  {
    groups: [['unsteadiness'], ['slurred-speech']],
    butNot: ['diplopia', 'drooping-eyelids', 'fluctuating-symptoms', 'muscle-thinning', 'twitching'],
    rows: [{ applies: cerebellumAsAWhole, factor: 3 }],
    because: 'gait and speech that fail together over months share the cerebellum',
  },
  {
    groups: [[...gait, 'stiffness', 'tremor', 'slurred-speech'], upright, bladder],
    butNot: ['numbness', 'paraesthesiae', 'burning-feet', 'diabetes-mellitus', 'amyloidosis'],
    rows: [{ applies: nigraAndCerebellum, factor: 2.5 }],
    because: 'blood pressure and bladder that fail with the gait go with a wasting nigra and cerebellum',
  },
  {
    groups: [['difficulty-walking', 'falls'], ['cognitive-change']],
    butNot: [
      'numbness',
      'paraesthesiae',
      'tremor',
      'headache',
      'leg-weakness',
      'seizure',
      'unsteadiness',
      'alcohol-excess',
    ],
    rows: [{ applies: sites('frontal-gait-disorder'), factor: 1.6 }],
    because: 'steps and thought that fail together over months share the frontal lobes',
  },
  {
    groups: [
      ['clumsiness'],
      [...gait, 'leg-weakness', 'stiffness'],
      ['neck-pain', 'electric-shock-on-neck-flexion', 'numbness', 'paraesthesiae'],
    ],
    butNot: ['slurred-speech', 'tremor', 'headache', 'cognitive-change', 'muscle-thinning'],
    rows: [
      { applies: cordOfTheNeck, factor: 3 },
      { applies: sites('spinal-cord-hemisection'), factor: 0.6 },
    ],
    because: 'hands that grow clumsy and legs that fail meet in the cord of the neck',
  },
  {
    groups: [['clumsiness', 'arm-weakness'], ['leg-weakness']],
    butNot: [
      ...['numbness', 'paraesthesiae', 'burning-feet', 'muscle-pain', 'unsteadiness', 'tremor', 'cognitive-change'],
      ...['headache', 'diplopia', 'drooping-eyelids', 'difficulty-with-stairs', 'bladder-disturbance'],
    ],
    rows: [
      { applies: sites('motor-neuron-system', 'lower-motor-neuron-system'), factor: 2.5 },
      { applies: cordOfTheNeck, factor: 2 },
    ],
    because: 'hands and legs that fail without numbness meet in the motor neurons or the cord of the neck',
  },
  {
    groups: [numb, ['leg-weakness'], [...bladder, 'bowel-disturbance']],
    butNot: [...notOfTheCordBelow, 'light-headed-on-standing', 'syncope', 'weight-loss'],
    rows: [
      { applies: cordBelowTheArms, factor: 3 },
      { applies: kinds('cauda-equina'), factor: 2 },
      { applies: sites('spinal-cord-posterolateral'), factor: 2 },
    ],
    because: 'legs that grow numb and weak with the bladder meet in the cord, or in the roots below it',
  },
  {
    groups: [numb, ['leg-weakness'], ['difficulty-with-stairs', 'difficulty-walking', 'episodic-weakness']],
    butNot: [
      ...notOfTheCordBelow,
      ...[
        'leg-pain',
        'back-pain',
        'radicular-leg-pain',
        'thigh-pain',
        'foot-pain',
        'burning-feet',
        'diabetes-mellitus',
      ],
      ...['alcohol-excess', 'bladder-disturbance', 'known-neuropathy', 'muscle-thinning', 'hiv-infection', 'cancer'],
    ],
    rows: [
      { applies: cordBelowTheArms, factor: 2.5 },
      { applies: kinds('polyradiculoneuropathy'), factor: 1.5 },
      { applies: kinds('nerve'), factor: 0.5 },
      { applies: kinds('muscle'), factor: 0.5 },
    ],
    because: 'both legs that grow numb and weak, and do not hurt, are of the cord or of all roots',
  },
];

/** The same, and what does it late in life. */
const reasonsOfLongAxons = [...harmsLongAxons, 'dialysis', 'amyloidosis', 'amiodarone', 'monoclonal-gammopathy'];
const longAxons = sites('length-dependent-polyneuropathy', 'sensory-polyneuropathy', 'small-fibre-polyneuropathy');

/** Feeling that is lost slowly, on no side that was named, in somebody whose long axons have a reason to fail. Judged. */
const numbAndHarmed: ToldPattern = {
  groups: [numb, reasonsOfLongAxons],
  butNot: [
    ...['face-numbness', 'perioral-numbness', 'nocturnal-hand-paraesthesiae', 'hand-pain', 'arm-pain', 'shoulder-pain'],
    ...['radicular-arm-pain', 'radicular-leg-pain', 'thigh-pain', 'back-pain', 'neck-pain', 'saddle-numbness'],
    ...['bladder-disturbance', 'tight-band', 'headache', 'vertigo', 'cognitive-change', 'seizure', 'speech-difficulty'],
  ],
  rows: [
    { applies: longAxons, factor: 3 },
    { applies: kinds('none'), factor: 0.5 },
  ],
  because: 'what harms the longest axons is there, and feeling has gone slowly on no side that was named',
};

/**
 * What came at once and has gone, and was of feeling alone: of lasting strokes that are so nearly all lie in the thalamus or beside
 * it, few in the cortex (Kim 1992, recalled). Factors judged.
 */
const attackPatterns: readonly ToldPattern[] = [
  {
    groups: [['numbness', 'face-numbness'], ['resolved-deficit']],
    butNot: [
      ...['weakness', 'leg-weakness', 'arm-weakness', 'speech-difficulty', 'visual-loss', 'spreading-over-minutes'],
      ...['migraine', 'seizure', 'epilepsy', 'neck-pain', 'back-pain', 'deep-sleep-on-arm', 'external-pressure'],
    ],
    rows: [
      { applies: sites('thalamus'), factor: 6 },
      { applies: sites('thalamus-and-capsule'), factor: 1.5 },
      { applies: sites('cortex-parietal'), factor: 0.7 },
      { applies: kinds('nerve', 'root', 'plexus', 'polyneuropathy', 'ganglion'), factor: 0.4 },
    ],
    because: 'feeling that goes at once and comes back goes with a small artery of the thalamus above all',
  },
];

const junctions = kinds('junction');
const lidsAndMore = ['diplopia', 'weakness', 'arm-weakness', 'dysphagia', 'difficulty-chewing', 'slurred-speech'];
const blocksJunctions = ['venomous-bite', 'home-preserved-food', 'botulinum-toxin-injection', 'organophosphate'];

/** Those that mean the same however fast they came. All judged. */
const otherPatterns: readonly ToldPattern[] = [
  {
    groups: [['drooping-eyelids'], [...lidsAndMore, 'nasal-regurgitation', 'breathlessness']],
    butNot: ['headache', 'new-headache', 'eye-pain', 'neck-pain', 'numbness', 'unsteadiness', 'vertigo', 'head-injury'],
    rows: [{ applies: junctions, factor: 3 }],
    because: 'lids that droop and other muscles of the head or limbs that fail share no nerve, but a weak junction',
  },
  {
    groups: [blocksJunctions, ['drooping-eyelids', ...lidsAndMore, 'breathlessness', 'descending-weakness']],
    butNot: [],
    rows: [{ applies: junctions, factor: 5 }],
    because: 'the poison stops the junctions, and muscles fail',
  },
];

const heads = ['headache', 'new-headache', 'morning-headache'];
const ofOneHalf = ['arm-weakness', 'leg-weakness', 'clumsiness', 'numbness'];
const ofTheHead = { told: 3 } as const;

/**
 * What several complaints say together of a place, before anybody has found anything: once there is a sign it says more than
 * all of them.
 */
export function toldPatternShifts(exam: Exam): readonly Shift[] {
  if (exam.findings.some(({ abnormal }) => abnormal)) return [];
  const told = new Map(
    exam.history.filter(({ present, kind }) => present && kind !== 'family').map((one) => [one.key, one]),
  );
  const attacks = isSlow(exam) || exam.onset.pace === 'acute' ? [] : attackPatterns;
  const hasSide = exam.history.some(({ present, side }) => present && isBodySide(side));
  const slow = isSlow(exam) ? [...slowPatterns, ...(hasSide ? [] : [numbAndHarmed])] : [];
  const patterns = [...attacks, ...slow, ...otherPatterns];
  return [
    ...patterns.flatMap((one) => shiftsOf(one, told)),
    ...headAndHalf(exam, told),
    ...toldInDaysShifts(exam, told),
    ...toldLimbShifts(told, exam.findings),
  ];
}

/** Over weeks to years; of what nobody has dated that it goes on. */
function isSlow({ onset, course }: Exam): boolean {
  const { pace, durationDays } = onset;
  if (pace === 'hyperacute' || course === 'fluctuating' || course === 'relapsing-remitting') return false;
  if (pace === 'acute') return (durationDays ?? 0) > 60;
  return durationDays === undefined ? pace !== undefined || course === 'progressive' : durationDays > 28;
}

function shiftsOf({ groups, butNot, rows, because }: ToldPattern, told: Told): readonly Shift[] {
  const statement = toldOfEach(told, groups);
  if (statement === undefined || firstTold(told, butNot) !== undefined) return [];
  return rows.map((row) => shiftOf(statement, row.applies, row.factor, because));
}

/** A headache with a limb of one side, or with words, that fails over days to months: the half of the brain that serves it. */
function headAndHalf({ onset, history }: Exam, told: Told): readonly Shift[] {
  if (onset.pace === 'chronic' && onset.durationDays === undefined) return [];
  const isOld = (onset.durationDays ?? 0) > 365;
  const isOther = ['migraine', 'resolved-deficit', 'neck-pain', 'back-pain', 'similar-attacks-before'].some((key) =>
    told.has(key),
  );
  if (isOld || isOther || !heads.some((key) => told.has(key))) return [];
  const because = 'a headache with a failing half of the body lies in the other half of the brain';
  const limb = history.find(
    ({ key, present, side }) => present && ofOneHalf.includes(key) && (side === 'left' || side === 'right'),
  );
  if (limb !== undefined && (limb.side === 'left' || limb.side === 'right'))
    return [shiftOf(limb, hemispheres[limb.side], ofTheHead.told, because)];
  const words = told.get('speech-difficulty');
  return words === undefined
    ? []
    : [shiftOf(words, anyHemisphere, ofTheHead.told, 'a headache with lost words lies in a hemisphere')];
}

const shiftOf = shiftsOfTold('told-pattern');
