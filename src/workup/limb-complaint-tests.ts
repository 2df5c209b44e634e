import { isOnLimb } from '../exam/place-on-limb.ts';
import { commonPractice, read, recalled } from '../kernel/cite.ts';
import { namesAPlace } from '../localisation/localisation.ts';
import type { BedsideFacts } from './bedside-facts.ts';
import type { WorkupRule } from './workup-rule.ts';

const nerveBook = recalled('preston-shapiro');
const muscleBook = recalled('amato-russell');

const ofTheArm = [
  ...['arm-pain', 'hand-pain', 'shoulder-pain', 'radicular-arm-pain', 'arm-weakness'],
  ...['nocturnal-hand-paraesthesiae', 'clumsiness'],
] as const;
const ofTheLeg = [
  ...['leg-pain', 'foot-pain', 'thigh-pain', 'radicular-leg-pain', 'bilateral-leg-pain', 'leg-weakness'],
  'burning-feet',
] as const;
/** What a nerve tells of, and sore muscles and joints do not. */
const ofANerve = [
  ...['numbness', 'paraesthesiae', 'neuropathic-pain', 'burning-feet', 'nocturnal-hand-paraesthesiae'],
  ...['muscle-thinning', 'limb-lump', 'radicular-arm-pain', 'radicular-leg-pain', 'bilateral-leg-pain'],
] as const;
/** Habits that press on nerves: pain alone may be theirs. */
const pressingOnTheArm = ['elbow-leaning', 'deep-sleep-on-arm', 'repetitive-hand-use', 'external-pressure'] as const;
const pressingOnTheLeg = ['leg-crossing', 'prolonged-squatting', 'external-pressure'] as const;
/** Complaints of the head, and attacks: the limb is not looked into for itself. */
const ofTheHead = [
  ...['headache', 'new-headache', 'vertigo', 'diplopia', 'visual-loss', 'slurred-speech', 'speech-difficulty'],
  ...['face-numbness', 'face-droop', 'seizure', 'cognitive-change', 'resolved-deficit', 'episodic-weakness'],
] as const;

/** Six weeks, after which guidance no longer waits for a root to mend. */
const sixWeeks = 42;

/** More than six weeks, growing for more than two, or of which nobody says since when. */
function lasts({ beganWithin, exam, isUndated, maybeProgressing }: BedsideFacts): boolean {
  if (!maybeProgressing) return false;
  return (
    isUndated ||
    beganWithin(sixWeeks) === 'no' ||
    exam.onset.pace === 'chronic' ||
    (exam.course === 'progressive' && beganWithin(14) !== 'yes')
  );
}

/** Too little was found to name a place, so that the complaint itself says what is looked into. */
function isUnnamed({ localisation, told, kindProbability }: BedsideFacts): boolean {
  return (
    !namesAPlace(localisation.conclusion) &&
    told(...ofTheHead).length === 0 &&
    kindProbability('hemisphere', 'brainstem', 'cerebellum', 'cord') < 0.5
  );
}

/** A complaint of each group. */
const tells = ({ told }: BedsideFacts, ...groups: readonly (readonly string[])[]): boolean =>
  groups.every((group) => told(...group).length > 0);

/** Complaints of a limb that last, where no examination has found a place: a test is proposed for the complaint. */
export const limbComplaintTests: readonly WorkupRule[] = [
  {
    tests: ['nerve-conduction-study'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      lasts(facts) &&
      (tells(facts, [...ofTheArm, ...ofTheLeg], ofANerve) ||
        tells(facts, ofTheArm, pressingOnTheArm) ||
        tells(facts, ofTheLeg, pressingOnTheLeg)),
    tier: 2,
    priority: 'routine',
    because:
      'a limb that tingles, burns or wastes for more than six weeks, or hurts where a habit presses on it: conduction shows whether a nerve is ill',
    source: nerveBook,
  },
  {
    tests: ['electromyography'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      ((lasts(facts) && tells(facts, ['muscle-thinning'])) ||
        tells(facts, ['arm-weakness'], ['arm-pain', 'radicular-arm-pain', 'shoulder-pain'])),
    tier: 2,
    priority: 'routine',
    because:
      'a limb that hurts and fails, or grows thin: the needle tells root, plexus and nerve apart after three weeks',
    source: nerveBook,
  },
  {
    tests: ['nerve-ultrasound'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      lasts(facts) &&
      tells(facts, [...ofTheArm, ...ofTheLeg], ofANerve) &&
      tells(facts, ['limb-lump', 'foot-pain', 'hand-pain']),
    tier: 2,
    priority: 'routine',
    because: 'pain and tingling at the end of a limb, or beside a lump: a cyst, a tumour or a tight canal is seen',
    source: nerveBook,
  },
  {
    tests: ['mri-cervical-spine'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      (lasts(facts) || facts.told('arm-weakness').length > 0) &&
      tells(facts, ['neck-pain', 'radicular-arm-pain'], [...ofTheArm, ...ofANerve]),
    tier: 2,
    priority: 'routine',
    because: 'pain from the neck into an arm that is weak, or that six weeks have not mended',
    source: read('racgp-cervical-radiculopathy-2013', 'when to consider MRI'),
  },
  {
    tests: ['mri-cervical-spine'],
    byStory: true,
    when: (facts) => isUnnamed(facts) && lasts(facts) && isThinArm(facts),
    tier: 1,
    priority: 'routine',
    because: 'an arm that grows thin over months: the cord and the roots of the neck are looked at first',
    source: recalled('gold-coast-2020', 'mimics to exclude'),
  },
  {
    tests: ['mri-lumbar-spine'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      lasts(facts) &&
      (tells(facts, ['radicular-leg-pain', 'bilateral-leg-pain']) ||
        tells(facts, ['leg-pain', 'thigh-pain', 'back-pain'], ['numbness', 'paraesthesiae', 'leg-weakness'])),
    tier: 2,
    priority: 'routine',
    because: 'pain of the leg with tingling or from the back, which six weeks have not mended',
    source: recalled('nice-ng59', 'imaging'),
  },
  {
    tests: ['creatine-kinase'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      tells(facts, ['statin', 'hydroxychloroquine', 'colchicine', 'immune-checkpoint-inhibitor']) &&
      tells(facts, ['weakness', 'leg-weakness', 'arm-weakness', 'difficulty-with-stairs', 'muscle-pain', 'dark-urine']),
    tier: 1,
    priority: 'urgent',
    because: 'muscles that ache or fail beside a medicine that harms them: the enzyme tells whether they are dying',
    source: commonPractice,
  },
  {
    tests: ['mri-whole-spine'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      lasts(facts) &&
      facts.exam.course === 'progressive' &&
      facts.kindProbability('cord', 'cauda-equina') >= 0.2 &&
      tells(facts, ['numbness', 'paraesthesiae'], ['leg-weakness', 'difficulty-walking']),
    tier: 2,
    priority: 'routine',
    because: 'legs that grow numb and weak over months, with the cord as likely as the nerves',
    source: recalled('nice-ng127', 'limb weakness and gait unsteadiness'),
  },
  {
    tests: ['mri-lumbosacral-plexus'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      lasts(facts) &&
      isClear(facts.query.result('mri-lumbar-spine')?.value) &&
      tells(facts, ['radicular-leg-pain', 'leg-pain', 'thigh-pain'], ofANerve),
    tier: 2,
    priority: 'routine',
    because: 'the spine shows nothing that explains the leg: plexus and nerve in pelvis and buttock come next',
    source: nerveBook,
  },
  {
    tests: ['chest-radiograph', 'mri-brachial-plexus'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      lasts(facts) &&
      tells(facts, ['arm-pain', 'shoulder-pain', 'radicular-arm-pain'], [...ofANerve, 'arm-weakness']) &&
      tells(facts, ['tobacco', 'cancer', 'lymphoma', 'weight-loss', 'recent-weight-loss', 'radiotherapy']),
    tier: 1,
    priority: 'urgent',
    because:
      'an arm that hurts and tingles for weeks in somebody at risk of a tumour: the apex of the lung and the plexus',
    source: recalled('adams-victor', 'tumours of the brachial plexus'),
  },
  {
    tests: ['glucose-or-hba1c', 'vitamin-b12', 'serum-immunofixation'],
    byStory: true,
    when: (facts) => isUnnamed(facts) && lasts(facts) && tells(facts, ['burning-feet']),
    tier: 1,
    priority: 'routine',
    because: 'feet that burn for weeks are those of a polyneuropathy until shown otherwise',
    source: read('aan-dsp-laboratory-2009'),
  },
  {
    tests: ['nerve-conduction-study', 'nerve-ultrasound'],
    causes: [
      'carpal-tunnel-syndrome',
      'ulnar-entrapment-at-elbow',
      'fibular-compression-at-fibular-neck',
      'tarsal-tunnel-syndrome',
      'nerve-compression',
      'nerve-tumour-or-cyst',
    ],
    when: (facts) => isUnnamed(facts) && (lasts(facts) || facts.told('arm-weakness', 'leg-weakness').length > 0),
    tier: 2,
    priority: 'routine',
    because: 'pressure on a nerve is likely: where, and how much of it is lost',
    source: nerveBook,
  },
  {
    tests: ['nerve-conduction-study'],
    causes: ['carpal-tunnel-syndrome'],
    // Of a pregnancy nobody waits for six weeks: what treatment there is before the birth depends on how much of the nerve is lost.
    when: (facts) =>
      isUnnamed(facts) &&
      facts.maybeProgressing &&
      facts.told('pregnancy').length > 0 &&
      facts.told('numbness', 'paraesthesiae', 'nocturnal-hand-paraesthesiae', 'hand-pain').length > 0,
    tier: 2,
    priority: 'routine',
    because:
      'numb or painful hands in a pregnancy are mostly those of the carpal tunnel: how much of the nerve is lost',
    source: nerveBook,
  },
  {
    tests: ['creatine-kinase', 'thyroid-stimulating-hormone'],
    byStory: true,
    when: (facts) =>
      isUnnamed(facts) &&
      lasts(facts) &&
      tells(
        facts,
        ['muscle-pain', 'cramps', 'stiffness'],
        ['weakness', 'fatigue', 'cramps', 'difficulty-with-stairs'],
      ) &&
      facts.told(...ofANerve).length === 0,
    tier: 1,
    priority: 'routine',
    because: 'muscles that ache, cramp or tire for months: a thyroid that fails does all of it and is put right',
    source: muscleBook,
  },
];

/** An arm that is seen, or told, to grow thin, while no leg is. */
function isThinArm({ query, told }: BedsideFacts): boolean {
  const thin = query.abnormal(['inspection/wasting']);
  if (thin.length === 0) return told('muscle-thinning').length > 0 && told('arm-weakness').length > 0;
  return thin.every(({ place }) => isOnLimb(place, 'upper-limbs'));
}

const isClear = (value: unknown): boolean => value === 'normal' || value === 'incidental';
