import type { Measurement } from '../causes/exam-query.ts';
import { dopamineBlockers } from '../causes/table/movement-causes.ts';
import { cameFast } from '../exam/pace.ts';
import { commonPractice, read, recalled } from '../kernel/cite.ts';
import type { BedsideFacts } from './bedside-facts.ts';
import { reducedConsciousness } from './red-flags/consciousness.ts';
import { feverReasons } from './red-flags/fever.ts';
import { isHeadSeen, isSeenInTheHead } from './red-flags/head-images.ts';
import { brainSigns, weakHalf } from './red-flags/sudden-deficit.ts';
import { ischaemicLimb } from './red-flags/systemic-flags.ts';
import { isAtLeast, isUnder } from './red-flags/thresholds.ts';
import type { WithholdRule } from './workup-rule.ts';

const imaging = ['mri-brain', 'ct-head', 'mri-whole-spine', 'mri-cervical-spine', 'mri-lumbar-spine', 'ct-angiography'];
/**
 * Platelets (10*9/L) and INR beyond which a needle in the canal may make it bleed, as handbooks have it; guidance on meningitis
 * in children stops at 100 already.
 */
const leastPlatelets = 50;
const highestRatio = 1.5;

const headImaging = ['mri-brain', 'ct-head', 'ct-angiography'];

/** Findings of imaging that forbid a lumbar puncture. */
const massResults: ReadonlySet<string> = new Set([
  'space-occupying',
  'ring-enhancing',
  'hydrocephalus',
  'subdural-haematoma',
  'haemorrhage',
]);

function isReached(measured: Measurement | undefined, limit: number): boolean {
  return measured !== undefined && isAtLeast(measured, limit);
}

/** Nothing was told or seen of a tick, or of the rash that it leaves. */
const hasNoTicks = ({ query, told }: BedsideFacts): boolean =>
  told('tick-bite', 'lyme-disease').length === 0 && !query.hasAbnormal('inspection/erythema-migrans');

/** What needs a needle in the back. */
const ofThePuncture = [
  'lumbar-puncture',
  'csf-opening-pressure',
  'csf-viral-pcr',
  'csf-cytology',
  'csf-oligoclonal-bands',
  'csf-tap-test',
] as const;

/** Where published guidance says that a test is not needed. A red flag that asks for the test outranks every row. */
export const withheldTests: readonly WithholdRule[] = [
  {
    key: 'no-imaging-of-length-dependent-neuropathy',
    label: 'Imaging of brain or spine',
    tests: imaging,
    sites: ['length-dependent-polyneuropathy', 'sensory-polyneuropathy', 'small-fibre-polyneuropathy'],
    // The dorsal columns lose the same qualities in the same places; where they are a likely place too, the image tells.
    when: ({ upperMotorSigns, kindProbability }) => upperMotorSigns.length === 0 && kindProbability('cord') < 0.15,
    because: 'a symmetrical loss from the feet upwards without brisk reflexes or extensor plantars lies in the nerves',
    source: recalled('nice-ng127', 'sensory symptoms'),
  },
  {
    key: 'no-routine-tests-of-bell-palsy',
    label: 'Routine blood tests and imaging',
    tests: [...headImaging, 'lumbar-puncture', 'nerve-conduction-study', 'electromyography'],
    causes: ['bell-palsy'],
    when: ({ exam }) => cameFast(exam.onset),
    because:
      'typical idiopathic facial palsy is a diagnosis of the bedside; image it if it is atypical or has not improved at three months',
    source: read('bells-palsy-2013'),
  },
  {
    key: 'no-borrelia-serology-without-ticks',
    label: 'Serology for Borrelia',
    tests: ['borrelia-serology'],
    causes: ['bell-palsy'],
    when: (facts) => hasNoTicks(facts) && cameFast(facts.exam.onset),
    because: 'facial palsy without a tick, a stay where they live or a spreading rash is seldom that of Borrelia',
    source: read('bells-palsy-2013'),
  },
  {
    key: 'no-imaging-of-positional-vertigo',
    label: 'Imaging and vestibular tests',
    tests: [...headImaging, 'mri-inner-ear', 'audiogram'],
    causes: ['benign-paroxysmal-positional-vertigo'],
    because: 'the positional test is the diagnosis, and the repositioning manoeuvre the treatment',
    source: recalled('bppv-2017'),
  },
  {
    key: 'no-imaging-of-vestibular-neuritis',
    label: 'Imaging',
    tests: headImaging,
    causes: ['vestibular-neuritis'],
    when: ({ query }) => query.hasAbnormal('cranial-nerves/abnormal-head-impulse'),
    because: 'a saccade on turning the head and no central sign place it in the labyrinth or its nerve',
    source: recalled('vestibular-meta-2023'),
  },
  {
    key: 'no-imaging-of-typical-parkinson-disease',
    label: 'Structural imaging of the brain',
    tests: ['mri-brain', 'ct-head'],
    causes: ['parkinson-disease'],
    because: 'the diagnosis is clinical; imaging serves atypical pictures',
    source: recalled('nice-ng71'),
  },
  {
    key: 'no-dopamine-imaging-of-typical-parkinson-disease',
    label: 'Imaging of the dopamine transporter',
    tests: ['dopamine-transporter-imaging'],
    causes: ['parkinson-disease'],
    // Under a medicine that blocks dopamine it is what tells the disease from the medicine.
    when: ({ told }) => told(...dopamineBlockers).length === 0,
    because: 'loss of dopamine is expected and is lost alike in the atypical forms',
    source: recalled('nice-ng71'),
  },
  {
    key: 'no-imaging-of-essential-tremor',
    label: 'Imaging of the brain',
    tests: ['mri-brain', 'ct-head'],
    causes: ['essential-tremor', 'enhanced-physiological-tremor'],
    because: 'a symmetrical tremor on action alone has no lesion to be seen',
    source: recalled('nice-ng127', 'tremor in adults'),
  },
  {
    key: 'no-imaging-of-migraine-aura',
    label: 'Imaging of the brain',
    tests: [...headImaging, 'electroencephalogram', 'lumbar-puncture'],
    causes: ['migraine-aura', 'vestibular-migraine'],
    when: ({ exam }) => (exam.person.ageYears ?? 99) < 50,
    because:
      'an aura that spreads over minutes and goes within the hour needs no image in a person who has had the like before',
    source: recalled('nice-ng127', 'headaches and sensory symptoms'),
  },
  {
    key: 'no-imaging-of-recent-radiculopathy',
    label: 'Imaging of the spine',
    tests: ['mri-cervical-spine', 'mri-lumbar-spine', 'mri-whole-spine', 'electromyography'],
    causes: ['lumbar-disc-herniation', 'cervical-spondylotic-radiculopathy'],
    // A limb that is told to be weak, and of which nobody has tried the power, may be as weak as it will.
    when: ({ beganWithin, lowestLimbPower, exam, query, told }) =>
      beganWithin(42) === 'yes' &&
      lowestLimbPower >= 4 &&
      exam.course !== 'progressive' &&
      (told('leg-weakness', 'arm-weakness').length === 0 ||
        query.testedWhere(({ item }) => item.section === 'power').length > 0),
    because:
      'in the first six weeks a root without marked or growing weakness recovers by itself; imaging would not change what is done',
    source: recalled('nice-ng59', 'imaging'),
  },
  {
    key: 'no-tests-of-meralgia',
    label: 'Imaging and conduction studies',
    tests: [
      'nerve-conduction-study',
      'electromyography',
      'mri-lumbar-spine',
      'mri-lumbosacral-plexus',
      'nerve-ultrasound',
    ],
    causes: ['meralgia-paraesthetica'],
    because: 'a numb outer thigh without weakness or lost reflex is a diagnosis of the bedside',
    source: recalled('preston-shapiro', 'lateral femoral cutaneous nerve'),
  },
  {
    key: 'no-nerve-tests-of-a-painful-joint',
    label: 'Conduction studies and imaging of the plexus',
    tests: [
      'nerve-conduction-study',
      'electromyography',
      'mri-brachial-plexus',
      'mri-lumbosacral-plexus',
      'nerve-ultrasound',
    ],
    causes: ['pain-limited-weakness'],
    when: ({ query, lowestLimbPower }) =>
      lowestLimbPower >= 4 &&
      !query.hasAbnormal('inspection/wasting') &&
      query.abnormalWhere(({ item }) => item.section === 'sensation' || item.section === 'reflexes').length === 0,
    because:
      'strength that gives way to pain alone, with full muscles, feeling and jerks, is of the joint or the muscle itself',
    source: commonPractice,
  },
  {
    key: 'few-tests-of-functional-disorder',
    label: 'Repeated investigation',
    tests: ['mri-whole-spine', 'lumbar-puncture', 'electromyography', 'nerve-conduction-study'],
    causes: [
      'functional-motor-disorder',
      'functional-sensory-disorder',
      'functional-gait-disorder',
      'functional-tremor',
    ],
    when: ({ upperMotorSigns, reducedReflexes }) => upperMotorSigns.length + reducedReflexes.length === 0,
    because: 'positive signs make the diagnosis; show them, and do one round of proportionate tests at most',
    source: recalled('functional-signs-2014'),
  },
  {
    key: 'no-tests-of-age-alone',
    label: 'Any test',
    tests: 'all',
    sites: ['no-lesion'],
    when: ({ exam, abnormalFindings }) => (exam.person.ageYears ?? 0) >= 60 && abnormalFindings.length > 0,
    because: 'ankle reflexes and vibration at the toes are lost in a quarter of healthy people over 60',
    source: recalled('vrancken-2006'),
  },
  {
    key: 'no-tests-of-tonic-pupil',
    label: 'Imaging of the brain',
    tests: headImaging,
    causes: ['adie-tonic-pupil', 'pharmacological-pupil'],
    because: 'a tonic or drugged pupil alone, without a drooping lid or double vision, is not a third nerve palsy',
    source: commonPractice,
  },
  {
    key: 'no-imaging-of-an-old-unchanged-lesion',
    label: 'New imaging of the spine',
    tests: imaging,
    causes: ['spinal-cord-injury', 'lumbar-disc-herniation', 'cerebral-palsy', 'arachnoiditis'],
    when: ({ exam }) => exam.course === 'static' && (exam.onset.durationDays ?? 0) > 730,
    because: 'a lesion that is known and has not changed for years; any new loss would change this at once',
    source: commonPractice,
  },
  {
    key: 'no-more-tests-of-proven-myasthenia',
    label: 'Further tests of the junction',
    tests: ['musk-antibody', 'single-fibre-emg', 'repetitive-stimulation'],
    when: ({ query }) => query.result('achr-antibody')?.value === 'positive',
    because: 'the receptor antibody is positive, which in a person with weakness is proof of myasthenia',
    source: recalled('mg-consensus-2021'),
  },
  {
    key: 'no-glucose-load-in-diabetes',
    label: 'Glucose tolerance test',
    tests: ['glucose-tolerance-test'],
    when: ({ query }) =>
      isReached(query.quantity('hba1c', '%'), 6.5) ||
      isReached(query.quantity('glucose-fasting', 'mmol/L'), 7) ||
      isReached(query.quantity('glucose-random', 'mmol/L'), 11.1),
    because: 'diabetes has been measured already',
    source: recalled('ada-standards'),
  },
  {
    key: 'gene-before-muscle',
    label: 'Electromyography and muscle biopsy',
    tests: ['electromyography', 'muscle-biopsy', 'mri-muscle'],
    causes: [
      'duchenne-or-becker-dystrophy',
      'myotonic-dystrophy',
      'facioscapulohumeral-muscular-dystrophy',
      'oculopharyngeal-muscular-dystrophy',
      'spinal-muscular-atrophy',
    ],
    because: 'the picture goes to the gene, which spares the needle',
    source: recalled('amato-russell'),
  },
  {
    key: 'no-conduction-study-of-a-limb-without-blood',
    label: 'Conduction studies',
    tests: ['nerve-conduction-study', 'electromyography', 'nerve-ultrasound'],
    when: (facts) => ischaemicLimb(facts).length > 0,
    because: 'a cold or pale limb that has newly failed needs its artery, and has hours',
    source: commonPractice,
  },
  {
    key: 'no-lumbar-puncture-before-an-image',
    label: 'Lumbar puncture before an image of the head',
    tests: ['lumbar-puncture', 'csf-cytology', 'csf-oligoclonal-bands', 'csf-tap-test'],
    when: (facts) => {
      const { query } = facts;
      const pressure = [
        ...facts.told('morning-headache', 'new-headache', 'headache'),
        ...query.abnormal(['cranial-nerves/optic-disc-swelling', 'higher-function/drowsiness']),
      ];
      const focal = [
        ...facts.upperMotorSigns,
        ...query.abnormal([
          ...brainSigns,
          'higher-function/alexia',
          'higher-function/anomia',
          'higher-function/agraphia',
        ]),
        ...query.abnormalWhere(({ item }) => item.probe.kind === 'cerebellar'),
      ];
      return !isHeadSeen(facts) && pressure.length > 0 && focal.length > 0 && feverReasons(facts).length === 0;
    },
    because:
      'pressure in the head with a focal deficit is imaged first: fluid taken below a mass may let the brain slip',
    source: recalled('nice-ng240', 'when lumbar puncture is unsafe'),
  },
  {
    key: 'no-lumbar-puncture-under-swollen-discs',
    label: 'Lumbar puncture before an image of the head',
    tests: ['lumbar-puncture', 'csf-viral-pcr', 'csf-cytology', 'csf-tuberculosis-and-fungi', 'csf-oligoclonal-bands'],
    when: (facts) => {
      const { query } = facts;
      const isPressed =
        query.hasAbnormal('cranial-nerves/optic-disc-swelling') &&
        (query.abnormal([...reducedConsciousness, 'cranial-nerves/sixth-nerve-palsy']).length > 0 ||
          facts.told('vomiting').length > 0);
      return !isHeadSeen(facts) && isPressed;
    },
    outranksFlags: true,
    because:
      'swollen discs with sleep, vomiting or a sixth nerve are pressure until an image shows otherwise; antibiotics and aciclovir do not wait for the fluid',
    source: recalled('nice-ng240', 'when lumbar puncture is unsafe'),
  },
  {
    key: 'no-lumbar-puncture-in-a-sleepy-hemiparesis',
    label: 'Lumbar puncture before an image of the head',
    tests: ['lumbar-puncture', 'csf-opening-pressure', 'csf-cytology'],
    when: (facts) =>
      !isHeadSeen(facts) && weakHalf(facts).length > 0 && facts.query.abnormal(reducedConsciousness).length > 0,
    outranksFlags: true,
    because:
      'half a body that fails under a falling consciousness is imaged first; antibiotics do not wait for the fluid',
    source: recalled('nice-ng240', 'when lumbar puncture is unsafe'),
  },
  {
    key: 'no-lumbar-puncture-while-blood-does-not-clot',
    label: 'Lumbar puncture before the clotting is mended',
    tests: ofThePuncture,
    when: ({ query }) => {
      const platelets = query.quantity('platelets', '10*9/L');
      const isShort = platelets !== undefined && isUnder(platelets, leastPlatelets);
      return isShort || isReached(query.quantity('inr', '{INR}'), highestRatio);
    },
    outranksFlags: true,
    because:
      'platelets under 50 or an INR of 1.5 or more: blood beside the cord; treatment does not wait for the fluid',
    source: commonPractice,
  },
  {
    key: 'no-lumbar-puncture-below-a-mass',
    label: 'Lumbar puncture',
    tests: ofThePuncture,
    when: (facts) => isSeenInTheHead(facts, massResults) || facts.query.hasAbnormal('higher-function/coma'),
    outranksFlags: true,
    because: 'a mass has been seen, or consciousness is lost: fluid taken from below may let the brain slip',
    source: recalled('nice-ng240', 'when lumbar puncture is unsafe'),
  },
];
