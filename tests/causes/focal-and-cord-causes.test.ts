import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { bedsideExam, hba1c, localised, nothingFound, site } from '../support/bedside.ts';

type Place = readonly [key: string, kind: SiteKind, level?: string];
interface Story {
  readonly place: Place;
  readonly age: number;
  readonly sex: 'male' | 'female';
  readonly pace: 'hyperacute' | 'acute' | 'subacute' | 'chronic';
  readonly course?: string;
  readonly symptoms?: readonly string[];
  readonly conditions?: readonly string[];
  readonly exposures?: readonly string[];
  readonly medications?: readonly string[];
  readonly family?: readonly string[];
  readonly inspection?: readonly (readonly [sign: string, side?: string])[];
  readonly results?: readonly unknown[];
}

const stated = (keys: readonly string[] = []) => keys.map((key) => ({ key, present: true }));

function ranking(story: Story): readonly string[] {
  const [key, kind, level = null] = story.place;
  const { pace, course = 'progressive' } = story;
  const exam = bedsideExam({
    person: { ageYears: story.age, sex: story.sex },
    history: {
      onset: { pace },
      course,
      symptoms: stated(story.symptoms),
      conditions: stated(story.conditions),
      exposures: stated(story.exposures),
      medications: stated(story.medications),
      family: stated(story.family),
    },
    findings: {
      inspection: (story.inspection ?? []).map(([sign, side]) => ({
        sign,
        ...(side === undefined ? {} : { side }),
        present: true,
      })),
    },
    results: story.results ?? [],
  });
  return rankCauses(exam, localised(site(key, kind, 1, level))).map((cause) => cause.key);
}

const nerve = (key: string): Place => [key, 'nerve'];
const plexus = (key: string): Place => [key, 'plexus'];
const cord = (key: string, level?: string): Place => (level === undefined ? [key, 'cord'] : [key, 'cord', level]);

// Preston and Shapiro, Electromyography and Neuromuscular Disorders: mononeuropathies, plexopathies, radiculopathy.
const peripheral: readonly (readonly [string, string, Story])[] = [
  [
    'a wrist drop on waking after drink',
    'radial-compression-in-the-arm',
    {
      place: nerve('radial-nerve-spiral-groove'),
      age: 38,
      sex: 'male',
      pace: 'hyperacute',
      course: 'static',
      exposures: ['alcohol-excess', 'deep-sleep-on-arm'],
    },
  ],
  [
    'a radial palsy with a broken humerus',
    'shoulder-dislocation-or-humeral-fracture',
    {
      place: nerve('radial-nerve-spiral-groove'),
      age: 30,
      sex: 'male',
      pace: 'hyperacute',
      course: 'static',
      exposures: ['trauma'],
      conditions: ['limb-fracture-or-dislocation'],
    },
  ],
  [
    'a numb outer shoulder after its dislocation',
    'shoulder-dislocation-or-humeral-fracture',
    {
      place: nerve('axillary-nerve'),
      age: 62,
      sex: 'female',
      pace: 'hyperacute',
      course: 'improving',
      conditions: ['limb-fracture-or-dislocation'],
    },
  ],
  [
    'a drooping shoulder after a lymph-node biopsy',
    'accessory-nerve-injury-in-the-neck',
    {
      place: nerve('spinal-accessory-nerve'),
      age: 34,
      sex: 'female',
      pace: 'hyperacute',
      course: 'static',
      exposures: ['recent-surgery'],
      inspection: [['shoulder-droop', 'right']],
    },
  ],
  [
    'a winged scapula after days of severe shoulder pain',
    'neuralgic-amyotrophy',
    {
      place: nerve('long-thoracic-nerve'),
      age: 36,
      sex: 'male',
      pace: 'acute',
      course: 'improving',
      symptoms: ['shoulder-pain', 'preceding-infection'],
    },
  ],
  [
    'wasted interossei of a cyclist with normal sensation',
    'ulnar-compression-at-wrist',
    {
      place: nerve('deep-branch-of-ulnar-nerve'),
      age: 41,
      sex: 'male',
      pace: 'subacute',
      exposures: ['external-pressure', 'repetitive-hand-use'],
    },
  ],
  [
    'a dropped foot after hip replacement',
    'sciatic-nerve-injury',
    {
      place: nerve('sciatic-nerve'),
      age: 70,
      sex: 'female',
      pace: 'hyperacute',
      course: 'static',
      conditions: ['hip-replacement'],
      exposures: ['recent-surgery'],
    },
  ],
  [
    'a swollen, painful leg after a fracture',
    'compartment-syndrome',
    {
      place: nerve('deep-fibular-nerve'),
      age: 24,
      sex: 'male',
      pace: 'hyperacute',
      symptoms: ['leg-pain'],
      exposures: ['trauma'],
      conditions: ['limb-fracture-or-dislocation'],
      inspection: [['oedema', 'left']],
    },
  ],
  [
    'a weak quadriceps on anticoagulants with groin pain',
    'retroperitoneal-haematoma',
    {
      place: nerve('femoral-nerve-pelvis'),
      age: 74,
      sex: 'male',
      pace: 'hyperacute',
      symptoms: ['flank-pain', 'back-pain'],
      medications: ['anticoagulant'],
    },
  ],
  [
    'a weak arm years after breast radiotherapy, without pain',
    'radiation-plexopathy',
    {
      place: plexus('brachial-plexus'),
      age: 63,
      sex: 'female',
      pace: 'chronic',
      conditions: ['cancer'],
      exposures: ['radiotherapy'],
    },
  ],
  [
    'an arm limp from birth or a motorcycle fall',
    'obstetric-or-traction-brachial-plexus-injury',
    { place: plexus('upper-trunk'), age: 22, sex: 'male', pace: 'hyperacute', course: 'static', exposures: ['trauma'] },
  ],
  [
    'a dropped foot after a long labour',
    'lumbosacral-plexus-injury-at-delivery-or-pelvic-surgery',
    {
      place: plexus('lumbosacral-trunk'),
      age: 29,
      sex: 'female',
      pace: 'hyperacute',
      course: 'improving',
      conditions: ['pregnancy'],
    },
  ],
  [
    'burning around the chest in diabetes with loss of weight',
    'diabetic-thoracic-radiculopathy',
    {
      place: ['nerve-root', 'root', 'T8'],
      age: 61,
      sex: 'male',
      pace: 'subacute',
      symptoms: ['abdominal-pain', 'weight-loss'],
      conditions: ['diabetes-mellitus'],
      results: [hba1c(9.4)],
    },
  ],
  [
    'a girdle of vesicles',
    'zoster-radiculitis',
    {
      place: ['nerve-root', 'root', 'T6'],
      age: 72,
      sex: 'female',
      pace: 'acute',
      symptoms: ['rash', 'neuropathic-pain'],
    },
  ],
];

// Adams and Victor, Principles of Neurology: diseases of the spinal cord.
const central: readonly (readonly [string, string, Story])[] = [
  [
    'painless burns of the hands and a curved spine',
    'syringomyelia',
    {
      place: cord('spinal-cord-central', 'C6'),
      age: 35,
      sex: 'female',
      pace: 'chronic',
      symptoms: ['painless-injury'],
      inspection: [['scoliosis']],
    },
  ],
  [
    'stiff legs in three generations',
    'hereditary-spastic-paraplegia',
    { place: cord('spinal-cord-lateral', 'T4'), age: 33, sex: 'male', pace: 'chronic', family: ['spastic-paraplegia'] },
  ],
  [
    'stiff legs on one who grew up in the tropics, with a bladder that fails',
    'htlv-1-myelopathy',
    {
      place: cord('spinal-cord-lateral', 'T4'),
      age: 52,
      sex: 'female',
      pace: 'chronic',
      symptoms: ['bladder-disturbance'],
      exposures: ['travel'],
    },
  ],
  [
    'paraplegia on surfacing from a dive',
    'decompression-sickness',
    {
      place: cord('spinal-cord-posterior', 'T6'),
      age: 33,
      sex: 'male',
      pace: 'hyperacute',
      course: 'static',
      exposures: ['diving'],
    },
  ],
  [
    'sudden paraplegia after repair of the aorta',
    'spinal-cord-infarction',
    {
      place: cord('spinal-cord-anterior', 'T8'),
      age: 71,
      sex: 'male',
      pace: 'hyperacute',
      course: 'static',
      conditions: ['aortic-disease', 'hypertension'],
    },
  ],
  [
    'a stepless decline of legs and bladder in an older man',
    'spinal-dural-arteriovenous-fistula',
    {
      place: cord('conus-medullaris'),
      age: 64,
      sex: 'male',
      pace: 'subacute',
      symptoms: ['bladder-disturbance', 'sexual-dysfunction', 'neurogenic-claudication'],
    },
  ],
  [
    'half a cord years after radiotherapy, without pain',
    'radiation-myelopathy',
    {
      place: cord('spinal-cord-hemisection', 'T4'),
      age: 55,
      sex: 'male',
      pace: 'subacute',
      conditions: ['lymphoma'],
      exposures: ['radiotherapy'],
    },
  ],
  [
    'a hairy patch over the sacrum and high arches',
    'tethered-cord',
    {
      place: cord('conus-medullaris'),
      age: 17,
      sex: 'female',
      pace: 'chronic',
      symptoms: ['bladder-disturbance', 'back-pain'],
      inspection: [['lumbosacral-skin-mark'], ['pes-cavus', 'both']],
    },
  ],
  [
    'stiff legs in cirrhosis',
    'hepatic-myelopathy',
    {
      place: cord('spinal-cord-lateral', 'T6'),
      age: 54,
      sex: 'male',
      pace: 'subacute',
      conditions: ['chronic-liver-disease'],
      exposures: ['alcohol-excess'],
    },
  ],
  [
    'weeks of night sweats and a gibbus in one who had tuberculosis',
    'spinal-tuberculosis',
    {
      place: cord('spinal-cord-transverse', 'T8'),
      age: 36,
      sex: 'male',
      pace: 'subacute',
      symptoms: ['thoracic-back-pain', 'night-sweats', 'weight-loss', 'fever'],
      conditions: ['tuberculosis'],
      exposures: ['travel'],
      inspection: [['kyphosis']],
    },
  ],
  [
    'myelitis of a woman with lupus',
    'lupus-or-sjogren-myelitis',
    {
      place: cord('spinal-cord-transverse', 'T6'),
      age: 31,
      sex: 'female',
      pace: 'acute',
      symptoms: ['joint-pain'],
      conditions: ['lupus'],
    },
  ],
];

const others: readonly (readonly [string, string, Story])[] = [
  [
    'retention with sacral vesicles',
    'sacral-herpes-radiculitis',
    {
      place: ['cauda-equina', 'cauda-equina'],
      age: 27,
      sex: 'female',
      pace: 'acute',
      symptoms: ['bladder-disturbance', 'rash'],
      exposures: ['unprotected-sex'],
      inspection: [['vesicular-rash', 'both']],
    },
  ],
  [
    'back pain, both legs and a numb saddle',
    'lumbar-disc-herniation',
    {
      place: ['cauda-equina', 'cauda-equina'],
      age: 43,
      sex: 'male',
      pace: 'acute',
      symptoms: ['back-pain', 'bilateral-leg-pain', 'saddle-numbness'],
    },
  ],
];

describe('causes of focal lesions of nerves, plexuses, roots and cord', () => {
  it.each([...peripheral, ...central, ...others])('puts first the cause of %s: %s', (_, expected, story) => {
    expect(ranking(story).slice(0, 1)).toEqual([expected]);
  });
});

describe('causes of a named nerve site without a story', () => {
  const leading = (place: Place) => ranking({ place, age: 50, sex: 'male', pace: 'subacute' }).slice(0, 3);

  it.each([
    ['median-nerve-wrist', 'carpal-tunnel-syndrome'],
    ['ulnar-nerve-elbow', 'ulnar-entrapment-at-elbow'],
    ['ulnar-nerve-wrist', 'ulnar-compression-at-wrist'],
    ['posterior-interosseous-nerve', 'posterior-interosseous-entrapment'],
    ['lateral-femoral-cutaneous-nerve', 'meralgia-paraesthetica'],
    ['tibial-nerve-popliteal-fossa', 'popliteal-cyst-or-mass'],
    ['tibial-nerve-tarsal-tunnel', 'tarsal-tunnel-syndrome'],
    ['pudendal-nerve', 'pudendal-neuropathy'],
    ['greater-occipital-nerve', 'occipital-neuralgia'],
  ])('begins at %s with %s', (key, expected) => {
    expect(leading(nerve(key))[0]).toBe(expected);
  });
});

describe('causes of back pain with a normal examination', () => {
  const withSymptoms = (...keys: readonly string[]) =>
    bedsideExam({ history: { onset: { pace: 'chronic' }, symptoms: stated(keys) } });

  // NICE NG59, Low back pain and sciatica: non-specific pain, without signs of a root.
  it('names mechanical pain when the back hurts, and not otherwise', () => {
    const keys = (...symptoms: readonly string[]) =>
      rankCauses(withSymptoms(...symptoms), nothingFound).map((cause) => cause.key);
    expect(keys('back-pain')).toContain('mechanical-back-pain');
    expect(keys('headache')).not.toContain('mechanical-back-pain');
  });
});
