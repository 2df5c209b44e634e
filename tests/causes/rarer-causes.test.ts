import { describe, expect, it } from 'vitest';
import type { SiteKind } from '../../src/anatomy/site-kind.ts';
import { rankCauses } from '../../src/differential/rank-causes.ts';
import { bedsideExam, localised, site } from '../support/bedside.ts';

interface Story {
  readonly cause: string;
  readonly at: readonly [site: string, kind: SiteKind, level?: string];
  readonly person: readonly [ageYears: number, sex: 'male' | 'female'];
  readonly onset: readonly [pace: string, durationDays: number];
  readonly told: Readonly<Record<string, readonly string[]>>;
  readonly signs?: readonly unknown[];
  readonly results?: readonly unknown[];
}

const measured = (key: string, value: number, code: string) => ({
  key,
  valueQuantity: { value, unit: code, system: 'http://unitsofmeasure.org', code },
});
const platelets = measured('platelets', 9, '10*9/L');
const hot = measured('body-temperature', 41.5, 'Cel');
const lactate = measured('lactate', 5, 'mmol/L');
const ammonia = measured('ammonia', 310, 'umol/L');
const compressed = { key: 'mri-thoracic-spine', value: 'cord-compression' };

const stories: readonly Story[] = [
  {
    cause: 'spinal-arachnoid-cyst',
    at: ['spinal-cord-posterior', 'cord', 'T6'],
    person: [30, 'male'],
    onset: ['chronic', 500],
    told: { symptoms: ['fluctuating-symptoms', 'thoracic-back-pain'], exposures: ['lumbar-puncture-or-epidural'] },
    results: [compressed],
  },
  {
    cause: 'ossification-of-ligamentum-flavum',
    at: ['spinal-cord-posterolateral', 'cord', 'T10'],
    person: [66, 'male'],
    onset: ['chronic', 700],
    told: { conditions: ['obesity'], symptoms: ['difficulty-walking'] },
    results: [compressed],
  },
  {
    cause: 'primary-extradural-tumour',
    at: ['spinal-cord-transverse', 'cord', 'T8'],
    person: [44, 'male'],
    onset: ['subacute', 40],
    told: { conditions: ['lymphoma'], symptoms: ['thoracic-back-pain', 'night-sweats'] },
  },
  {
    cause: 'spinal-subdural-haematoma',
    at: ['cauda-equina', 'cauda-equina'],
    person: [72, 'female'],
    onset: ['hyperacute', 1],
    told: {
      medications: ['anticoagulant'],
      exposures: ['lumbar-puncture-or-epidural'],
      symptoms: ['back-pain', 'headache'],
    },
  },
  {
    cause: 'synovial-or-perineural-cyst',
    at: ['nerve-root', 'root', 'S2'],
    person: [68, 'female'],
    onset: ['chronic', 900],
    told: { symptoms: ['saddle-numbness', 'back-pain'] },
  },
  {
    cause: 'superficial-siderosis',
    at: ['cerebellar-degeneration', 'cerebellum'],
    person: [58, 'male'],
    onset: ['chronic', 3000],
    told: { symptoms: ['hearing-loss', 'unsteadiness', 'loss-of-smell'], conditions: ['head-injury'] },
  },
  {
    cause: 'aortic-dissection-or-occlusion',
    at: ['spinal-cord-transverse', 'cord', 'T10'],
    person: [67, 'male'],
    onset: ['hyperacute', 0.2],
    told: { conditions: ['aortic-disease', 'hypertension'], symptoms: ['thoracic-back-pain', 'bilateral-leg-pain'] },
  },
  {
    cause: 'ischaemic-plexopathy-or-neuropathy',
    at: ['lumbosacral-plexus', 'plexus'],
    person: [69, 'male'],
    onset: ['hyperacute', 2],
    told: { conditions: ['peripheral-arterial-disease'], exposures: ['recent-surgery', 'tobacco'] },
  },
  {
    cause: 'endometriosis-of-a-nerve',
    at: ['sciatic-nerve', 'nerve'],
    person: [33, 'female'],
    onset: ['chronic', 700],
    told: { symptoms: ['similar-attacks-before', 'leg-pain'] },
  },
  {
    cause: 'psoas-abscess',
    at: ['femoral-nerve-pelvis', 'nerve'],
    person: [52, 'male'],
    onset: ['subacute', 20],
    told: { symptoms: ['fever', 'flank-pain'], conditions: ['diabetes-mellitus'] },
  },
  {
    cause: 'opsoclonus-myoclonus-syndrome',
    at: ['cerebellar-vermis', 'cerebellum'],
    person: [2, 'female'],
    onset: ['acute', 10],
    told: { symptoms: ['behaviour-change', 'unsteadiness'] },
    signs: [{ sign: 'opsoclonus', present: true }],
  },
  {
    cause: 'tuberculoma',
    at: ['cortex-frontal', 'hemisphere'],
    person: [34, 'male'],
    onset: ['chronic', 120],
    told: { conditions: ['tuberculosis', 'hiv-infection'], symptoms: ['seizure', 'night-sweats'] },
  },
  {
    cause: 'manganese-or-toxic-parkinsonism',
    at: ['akinetic-rigid-syndrome', 'basal-ganglia'],
    person: [45, 'male'],
    onset: ['subacute', 120],
    told: { exposures: ['other-heavy-metal'], symptoms: ['falls', 'behaviour-change'] },
  },
  {
    cause: 'restless-legs-syndrome',
    at: ['no-lesion', 'none'],
    person: [55, 'female'],
    onset: ['chronic', 2000],
    told: { symptoms: ['restless-legs'] },
  },
  {
    cause: 'idiopathic-hypoglossal-palsy',
    at: ['hypoglossal-nerve', 'cranial-nerve'],
    person: [30, 'female'],
    onset: ['acute', 10],
    told: { symptoms: ['preceding-respiratory-infection'] },
  },
  {
    cause: 'idiopathic-ocular-motor-palsy',
    at: ['abducens-nerve', 'cranial-nerve'],
    person: [9, 'male'],
    onset: ['acute', 6],
    told: { symptoms: ['diplopia', 'preceding-respiratory-infection'] },
  },
  {
    cause: 'vagal-zoster',
    at: ['vagus-nerve', 'cranial-nerve'],
    person: [63, 'female'],
    onset: ['acute', 5],
    told: { symptoms: ['rash', 'ear-pain', 'dysphagia', 'voice-change'] },
  },
  {
    cause: 'cardiovocal-syndrome',
    at: ['recurrent-laryngeal-nerve', 'cranial-nerve'],
    person: [71, 'male'],
    onset: ['subacute', 30],
    told: { conditions: ['aortic-disease', 'hypertension'], symptoms: ['voice-change'] },
  },
  {
    cause: 'hiv-associated-brain-disease',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [38, 'male'],
    onset: ['subacute', 120],
    told: { conditions: ['hiv-infection'], symptoms: ['cognitive-change', 'weight-loss', 'difficulty-walking'] },
    results: [{ key: 'mri-brain', value: 'white-matter-disease' }],
  },
  {
    cause: 'cerebral-malaria',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [27, 'female'],
    onset: ['acute', 3],
    told: { exposures: ['travel'], symptoms: ['fever', 'headache', 'seizure', 'dark-urine'] },
  },
  {
    cause: 'rabies',
    at: ['bulbar-motor-nuclei', 'brainstem'],
    person: [35, 'male'],
    onset: ['acute', 4],
    told: { exposures: ['travel', 'animal-bite'], symptoms: ['dysphagia', 'fever', 'paraesthesiae'] },
    signs: [{ sign: 'drooling', present: true }],
  },
  {
    cause: 'neurobrucellosis',
    at: ['cochlear-nerve', 'cranial-nerve'],
    person: [44, 'male'],
    onset: ['subacute', 60],
    told: { exposures: ['travel'], symptoms: ['fever', 'night-sweats', 'joint-pain', 'hearing-loss'] },
  },
  {
    cause: 'adult-onset-leukodystrophy',
    at: ['cortex-frontal', 'hemisphere'],
    person: [38, 'female'],
    onset: ['chronic', 500],
    told: { symptoms: ['behaviour-change', 'seizure'], family: ['dementia'] },
    results: [{ key: 'mri-brain', value: 'white-matter-disease' }],
  },
  {
    cause: 'storage-disease-of-the-brain',
    at: ['midbrain-dorsal', 'brainstem'],
    person: [19, 'female'],
    onset: ['chronic', 1500],
    told: { conditions: ['psychiatric-disorder', 'cataract'], symptoms: ['cognitive-change', 'slurred-speech'] },
    signs: [{ sign: 'vertical-gaze-palsy', present: true }],
  },
  {
    cause: 'neuroacanthocytosis-or-iron-accumulation',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [34, 'male'],
    onset: ['chronic', 1200],
    told: { conditions: ['epilepsy'], symptoms: ['dysphagia', 'behaviour-change', 'muscle-thinning'] },
    results: [
      {
        key: 'creatine-kinase',
        valueQuantity: { value: 1400, unit: 'U/L', system: 'http://unitsofmeasure.org', code: 'U/L' },
      },
    ],
  },
  {
    cause: 'brain-arteriovenous-malformation',
    at: ['cortex-parietal', 'hemisphere'],
    person: [29, 'male'],
    onset: ['chronic', 300],
    told: { symptoms: ['seizure', 'headache', 'pulsatile-tinnitus'] },
    results: [{ key: 'angiography-head-neck', value: 'other' }],
  },
  {
    cause: 'fat-or-air-embolism',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [24, 'male'],
    onset: ['acute', 1],
    told: { conditions: ['limb-fracture-or-dislocation'], symptoms: ['breathlessness', 'loss-of-consciousness'] },
  },
  {
    cause: 'susac-syndrome',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [28, 'female'],
    onset: ['subacute', 40],
    told: { symptoms: ['behaviour-change', 'hearing-loss', 'visual-loss', 'headache'] },
  },
  {
    cause: 'radiation-brain-injury',
    at: ['cortex-temporal', 'hemisphere'],
    person: [52, 'male'],
    onset: ['chronic', 200],
    told: { exposures: ['radiotherapy'], conditions: ['cancer'], symptoms: ['cognitive-change'] },
    results: [{ key: 'mri-brain', value: 'ring-enhancing' }],
  },
  {
    cause: 'toxic-myelopathy',
    at: ['spinal-cord-transverse', 'cord', 'T10'],
    person: [19, 'male'],
    onset: ['acute', 5],
    told: { medications: ['methotrexate', 'cytarabine'], exposures: ['lumbar-puncture-or-epidural'] },
  },
  {
    cause: 'osteoporotic-vertebral-collapse',
    at: ['conus-medullaris', 'cord'],
    person: [81, 'female'],
    onset: ['subacute', 20],
    told: { conditions: ['osteoporosis', 'spinal-fracture'], symptoms: ['back-pain'] },
  },
  {
    cause: 'abdominal-cutaneous-nerve-entrapment',
    at: ['intercostal-nerves', 'nerve'],
    person: [24, 'female'],
    onset: ['chronic', 300],
    told: { symptoms: ['abdominal-pain'] },
  },
  {
    cause: 'deep-gluteal-syndrome',
    at: ['sciatic-nerve', 'nerve'],
    person: [40, 'female'],
    onset: ['chronic', 200],
    told: { symptoms: ['leg-pain'], exposures: ['prolonged-immobility'] },
  },
  {
    cause: 'adult-polyglucosan-body-disease',
    at: ['spinal-cord-posterolateral', 'cord'],
    person: [55, 'male'],
    onset: ['chronic', 2000],
    told: { symptoms: ['bladder-disturbance', 'stiffness'] },
    results: [
      { key: 'mri-brain', value: 'white-matter-disease' },
      { key: 'mri-whole-spine', value: 'normal' },
    ],
  },
  {
    cause: 'thrombotic-microangiopathy',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [36, 'female'],
    onset: ['acute', 2],
    told: { symptoms: ['headache', 'fever', 'rash', 'dark-urine', 'fluctuating-symptoms'] },
    results: [platelets],
  },
  {
    cause: 'cerebral-hyperperfusion',
    at: ['cortex-middle-cerebral', 'hemisphere'],
    person: [71, 'male'],
    onset: ['acute', 5],
    told: {
      symptoms: ['headache', 'seizure', 'eye-pain'],
      exposures: ['neck-or-chest-surgery'],
      conditions: ['hypertension', 'transient-ischaemic-attack'],
    },
  },
  {
    cause: 'neuropsychiatric-lupus',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [22, 'female'],
    onset: ['subacute', 12],
    told: { conditions: ['lupus'], symptoms: ['joint-pain', 'behaviour-change', 'photosensitive-rash'] },
  },
  {
    cause: 'whipple-disease-of-the-brain',
    at: ['midbrain-dorsal', 'brainstem'],
    person: [53, 'male'],
    onset: ['subacute', 200],
    told: { symptoms: ['joint-pain', 'weight-loss', 'cognitive-change'], conditions: ['malabsorption'] },
    signs: [{ sign: 'vertical-gaze-palsy', present: true }],
  },
  {
    cause: 'subacute-sclerosing-panencephalitis',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [11, 'male'],
    onset: ['subacute', 120],
    told: { symptoms: ['loss-of-skills', 'twitching', 'falls', 'cognitive-change'] },
    results: [{ key: 'csf-oligoclonal-bands', value: 'positive' }],
  },
  {
    cause: 'rasmussen-encephalitis',
    at: ['cortex-middle-cerebral-upper', 'hemisphere'],
    person: [6, 'female'],
    onset: ['subacute', 150],
    told: { symptoms: ['ongoing-seizure', 'twitching', 'loss-of-skills', 'weakness'] },
  },
  {
    cause: 'eosinophilic-meningitis',
    at: ['meningeal-irritation', 'meninges'],
    person: [30, 'male'],
    onset: ['acute', 10],
    told: { symptoms: ['headache', 'paraesthesiae'], exposures: ['raw-meat', 'travel'] },
  },
  {
    cause: 'amoebic-encephalitis',
    at: ['meningeal-irritation', 'meninges'],
    person: [11, 'male'],
    onset: ['acute', 3],
    told: { symptoms: ['headache', 'fever', 'vomiting', 'loss-of-smell'], exposures: ['freshwater-contact'] },
  },
  {
    cause: 'sleeping-sickness',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [48, 'male'],
    onset: ['subacute', 200],
    told: { symptoms: ['fever', 'weight-loss', 'behaviour-change', 'joint-pain'], exposures: ['travel'] },
  },
  {
    cause: 'chemotherapy-encephalopathy',
    at: ['cortex-middle-cerebral-upper', 'hemisphere'],
    person: [12, 'female'],
    onset: ['hyperacute', 1],
    told: { conditions: ['cancer'], medications: ['methotrexate'], symptoms: ['speech-difficulty'] },
  },
  {
    cause: 'marchiafava-bignami-disease',
    at: ['frontal-gait-disorder', 'hemisphere'],
    person: [55, 'male'],
    onset: ['subacute', 15],
    told: { exposures: ['alcohol-excess'], conditions: ['malnutrition'], symptoms: ['cognitive-change'] },
  },
  {
    cause: 'heat-stroke',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [24, 'male'],
    onset: ['hyperacute', 0],
    told: { exposures: ['heavy-exertion'], symptoms: ['fever', 'loss-of-consciousness'] },
    results: [hot],
  },
  {
    cause: 'narcolepsy',
    at: ['no-lesion', 'none'],
    person: [15, 'male'],
    onset: ['chronic', 300],
    told: { symptoms: ['cataplexy', 'fatigue', 'dream-enactment'] },
  },
  {
    cause: 'leigh-syndrome',
    at: ['brainstem-diffuse', 'brainstem'],
    person: [0, 'male'],
    onset: ['acute', 12],
    told: { symptoms: ['vomiting', 'loss-of-skills', 'breathlessness'] },
    results: [lactate],
  },
  {
    cause: 'metabolic-crisis-of-inborn-error',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [26, 'male'],
    onset: ['acute', 1],
    told: { symptoms: ['vomiting', 'behaviour-change', 'similar-attacks-before'] },
    results: [ammonia],
  },
  {
    cause: 'progressive-myoclonic-epilepsy',
    at: ['hyperkinetic-syndrome', 'basal-ganglia'],
    person: [15, 'female'],
    onset: ['chronic', 300],
    told: { symptoms: ['seizure', 'twitching', 'cognitive-change'], family: ['consanguinity'] },
  },
  {
    cause: 'mitochondrial-ataxia',
    at: ['cerebellar-degeneration', 'cerebellum'],
    person: [31, 'female'],
    onset: ['chronic', 3000],
    told: { conditions: ['epilepsy', 'migraine'], symptoms: ['unsteadiness', 'hearing-loss'] },
    signs: [{ sign: 'ophthalmoplegia', present: true }],
  },
  {
    cause: 'ataxia-with-oculomotor-apraxia',
    at: ['cerebellar-degeneration', 'cerebellum'],
    person: [8, 'male'],
    onset: ['chronic', 1500],
    told: { symptoms: ['unsteadiness', 'slurred-speech'], family: ['consanguinity'] },
  },
  {
    cause: 'childhood-leukodystrophy',
    at: ['upper-motor-neuron-system', 'motor-neuron-system'],
    person: [4, 'female'],
    onset: ['chronic', 600],
    told: { symptoms: ['loss-of-skills', 'unsteadiness', 'fever'] },
    results: [{ key: 'mri-brain', value: 'white-matter-disease' }],
  },
  {
    cause: 'infant-subdural-haematoma',
    at: ['raised-intracranial-pressure', 'intracranial-pressure'],
    person: [0, 'male'],
    onset: ['hyperacute', 0],
    told: { symptoms: ['seizure', 'vomiting', 'loss-of-consciousness'] },
    results: [{ key: 'ct-head', value: 'subdural-haematoma' }],
  },
  {
    cause: 'epileptic-encephalopathy-of-infancy',
    at: ['diffuse-encephalopathy', 'encephalopathy'],
    person: [0, 'female'],
    onset: ['subacute', 30],
    told: { symptoms: ['loss-of-skills', 'seizure', 'twitching'], conditions: ['developmental-delay'] },
  },
  {
    cause: 'congenital-cerebellar-malformation',
    at: ['cerebellar-vermis', 'cerebellum'],
    person: [3, 'male'],
    onset: ['chronic', 1000],
    told: { conditions: ['developmental-delay'], symptoms: ['unsteadiness'] },
  },
  {
    cause: 'febrile-seizure',
    at: ['no-lesion', 'none'],
    person: [1, 'male'],
    onset: ['hyperacute', 0],
    told: { symptoms: ['seizure', 'fever', 'preceding-respiratory-infection'] },
  },
];

function keysOf({ at, person, onset, told, signs = [], results = [] }: Story): readonly string[] {
  const [key, kind, level = null] = at;
  const history = Object.fromEntries(
    Object.entries(told).map(([list, keys]) => [list, keys.map((one) => ({ key: one, present: true }))]),
  );
  const exam = bedsideExam({
    person: { ageYears: person[0], sex: person[1] },
    history: { onset: { pace: onset[0], durationDays: onset[1] }, ...history },
    findings: { cranialNerves: signs },
    results,
  });
  return rankCauses(exam, localised(site(key, kind, 1, level))).map((cause) => cause.key);
}

describe('causes that are thought of because of the story', () => {
  it.each(stories)('$cause is among the first three', (story) => {
    expect(keysOf(story).slice(0, 3)).toContain(story.cause);
  });
});
