import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, type Cause, mondo, reads, shows, tempos, told } from './cause.ts';

const memoryLoss = ['higher-function/memory-impairment', 'higher-function/disorientation'] as const;

/** What lowers every slow degeneration of the cortex: it is never a matter of hours, and imaging shows no mass. */
const atrophy = reads('mri-brain', [
  ['cortical-atrophy', 3],
  ['normal', 0.5],
  ['space-occupying', 0.05],
  ['hydrocephalus', 0.2],
  ['cortical-ribboning', 0.05],
]);

/** Degenerations of the cortex, and the vascular disease that looks like them. */
export const cognitiveDeclineCauses: readonly Cause[] = [
  {
    key: 'alzheimer-disease',
    group: 'degenerative',
    label: 'Alzheimer disease',
    mondo: mondo('MONDO:0004975', 'Alzheimer disease'),
    produces: [
      at(['olfactory-nerve'], 'uncommon'),
      at(['diffuse-encephalopathy'], 'very-common'),
      at(['cortex-temporal', 'cortex-parietal', 'no-lesion'], 'uncommon'),
      at(['cortex-frontal'], 'rare'),
      at(['cortex-occipital'], 'rare'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 180, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.6, improving: 0.05, 'relapsing-remitting': 0.1 },
    age: { from: 60, to: 110, outside: 0.15 },
    history: [
      told(['cognitive-change', 'dementia'], 4, 0.1),
      told(['family/dementia'], 1.6, 0.95),
      told('down-syndrome', 1.9, 1),
      told(['fever', 'seizure', 'sepsis'], 0.4, 1),
      told('stroke', 0.6, 1.1),
      told('behaviour-change', 0.8, 1.1),
      told(['headache', 'new-headache', 'morning-headache', 'thunderclap-headache'], 0.6, 1),
      told('vomiting', 0.4, 1),
    ],
    signs: [
      shows(memoryLoss, 3, 0.3),
      shows(['higher-function/anomia', 'higher-function/constructional-apraxia'], 1.6, 0.8),
      shows(
        [
          'higher-function/drowsiness',
          'higher-function/stupor',
          'higher-function/coma',
          'higher-function/fluctuating-consciousness',
        ],
        0.1,
        1.1,
      ),
      // Walking is kept for years.
      shows(['gait/unable-to-walk'], 0.5, 1),
      shows(['involuntary-movements/asterixis'], 0.2, 1),
    ],
    values: [atrophy, reads('eeg', [['status-epilepticus', 0.1]])],
    source: recalled('alzheimer-2011'),
  },
  {
    key: 'vascular-dementia',
    group: 'vascular',
    label: 'Vascular dementia',
    mondo: mondo('MONDO:0004648', 'vascular dementia'),
    produces: [
      at(['diffuse-encephalopathy', 'corticobulbar-both-sides'], 'common'),
      at(['cortex-frontal', 'thalamus'], 'uncommon'),
      at(['cortex-temporal', 'frontal-gait-disorder'], 'uncommon'),
      at(['no-lesion'], 'rare'),
      at(['striatum', 'cortex-parietal', 'cortex-posterior-cerebral'], 'rare'),
    ],
    tempo: { hyperacute: 0.04, acute: 0.14, subacute: 0.22, chronic: 0.6 },
    courses: { progressive: 1.3, improving: 0.2 },
    age: { from: 55, to: 110, outside: 0.15 },
    history: [
      told(['cognitive-change', 'dementia'], 3, 0.1),
      told(['stroke', 'transient-ischaemic-attack'], 1.9, 0.5),
      told(['hypertension', 'diabetes-mellitus', 'atrial-fibrillation', 'ischaemic-heart-disease'], 1.9, 0.5),
      told('tobacco', 1.3, 0.95),
      told(['difficulty-walking', 'falls'], 1.5, 0.9),
      told('family/stroke', 1.3, 1),
      told('fever', 0.4, 1),
    ],
    signs: [
      shows(
        ['higher-function/executive-dysfunction', 'higher-function/apathy', 'higher-function/pseudobulbar-affect'],
        1.8,
        0.7,
      ),
      shows(['gait/magnetic', 'gait/shuffling', 'gait/cautious', 'plantars/plantar-response'], 1.8, 0.8),
      shows(['higher-function/coma'], 0.1, 1),
    ],
    values: [
      reads('mri-brain', [
        ['small-vessel-disease', 5],
        ['infarct', 4],
        ['normal', 0.05],
        ['cortical-atrophy', 0.6],
      ]),
      reads('ct-head', [['infarct', 3]]),
    ],
    source: recalled('nice-ng97'),
  },
  {
    key: 'frontotemporal-dementia',
    group: 'degenerative',
    label: 'Frontotemporal dementia',
    inheritance: ['autosomal-dominant'],
    mondo: mondo('MONDO:0017276', 'frontotemporal dementia'),
    produces: [
      at(['cortex-frontal'], 'common'),
      at(['cortex-temporal', 'diffuse-encephalopathy'], 'uncommon'),
      at(['motor-neuron-system', 'akinetic-rigid-syndrome', 'frontal-gait-disorder'], 'rare'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 180, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.6, improving: 0.05, 'relapsing-remitting': 0.1 },
    age: { from: 40, to: 75, outside: 0.2 },
    history: [
      told('behaviour-change', 6, 0.3),
      told('cognitive-change', 1.5, 0.7),
      told(['family/frontotemporal-dementia', 'family/motor-neuron-disease'], 5, 0.8),
      told('family/dementia', 2, 0.9),
      told(['seizure', 'fever'], 0.3, 1),
      told(['headache', 'morning-headache', 'new-headache'], 0.5, 1.1),
    ],
    signs: [
      shows(['higher-function/disinhibition', 'higher-function/apathy'], 3, 0.3),
      shows(['higher-function/executive-dysfunction', 'higher-function/frontal-release-signs'], 1.5, 0.7),
      shows(memoryLoss, 0.6, 1.4),
      shows(['inspection/fasciculation', 'inspection/wasting', 'cranial-nerves/tongue-fasciculation'], 3, 0.95),
      shows(['higher-function/drowsiness', 'cranial-nerves/optic-disc-swelling'], 0.1, 1),
    ],
    values: [atrophy],
    source: recalled('frontotemporal-2011'),
  },
  {
    key: 'primary-progressive-aphasia',
    group: 'degenerative',
    label: 'Primary progressive aphasia',
    produces: [
      at(['cortex-temporal', 'cortex-middle-cerebral-lower', 'cortex-middle-cerebral-upper'], 'uncommon'),
      at(['cortex-frontal'], 'uncommon'),
      at(['cortex-middle-cerebral', 'cortex-parietal'], 'rare'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 180, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.8, improving: 0.03, 'relapsing-remitting': 0.05 },
    age: { from: 45, to: 80, outside: 0.2 },
    history: [
      told('speech-difficulty', 8, 0.1),
      told(['family/dementia', 'family/frontotemporal-dementia'], 2, 0.9),
      told(['stroke', 'seizure'], 0.3, 1),
    ],
    signs: [
      shows(
        [
          'higher-function/anomia',
          'higher-function/expressive-aphasia',
          'higher-function/receptive-aphasia',
          'higher-function/impaired-repetition',
          'higher-function/speech-apraxia',
        ],
        4,
        0.05,
      ),
      shows(memoryLoss, 0.5, 1.3),
      shows(['higher-function/drowsiness', 'cranial-nerves/homonymous-hemianopia'], 0.1, 1.1),
    ],
    values: [atrophy],
    source: recalled('aphasia-2011'),
  },
  {
    key: 'posterior-cortical-atrophy',
    group: 'degenerative',
    label: 'Posterior cortical atrophy',
    produces: [
      at(['cortex-parietal', 'cortex-occipital'], 'uncommon'),
      at(['cortex-posterior-cerebral', 'optic-radiation-parietal'], 'rare'),
    ],
    tempo: tempos.chronic,
    durationDays: { from: 180, outside: 0.35, source: fromMemory },
    courses: { progressive: 1.8, improving: 0.03, 'relapsing-remitting': 0.05 },
    age: { from: 45, to: 75, outside: 0.2 },
    history: [
      told(['visual-loss', 'cognitive-change'], 2.5, 0.3),
      told('family/dementia', 1.6, 0.95),
      told(['seizure', 'fever', 'headache', 'new-headache'], 0.4, 1.1),
    ],
    signs: [
      shows(
        [
          'higher-function/constructional-apraxia',
          'higher-function/visual-agnosia',
          'higher-function/simultanagnosia',
          'higher-function/optic-ataxia',
          'higher-function/dressing-apraxia',
          'higher-function/prosopagnosia',
          'higher-function/alexia',
          'higher-function/acalculia',
        ],
        4,
        0.15,
      ),
      shows(memoryLoss, 0.7, 1.2),
    ],
    values: [atrophy],
    source: recalled('posterior-atrophy-2017'),
  },
];
