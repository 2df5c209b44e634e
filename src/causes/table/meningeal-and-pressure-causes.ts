import { recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told, under } from './cause.ts';

const ukMeningitis = recalled('meningitis-uk-2016');
const tuberculousScore = recalled('tuberculous-meningitis-2002');

const anyHeadache = ['headache', 'new-headache', 'morning-headache', 'thunderclap-headache'];
const stiffNeck = ['special-tests/neck-stiffness', 'special-tests/kernig', 'special-tests/brudzinski'];
const fever = shows(['autonomic/fever'], 4, 0.4);
const discSwelling = ['cranial-nerves/optic-disc-swelling'];
const severalCranialNerves = [
  'cranial-nerves/ophthalmoplegia',
  'cranial-nerves/third-nerve-palsy',
  'cranial-nerves/sixth-nerve-palsy',
  'cranial-nerves/facial-weakness',
];

/** Causes of disease of the meninges and of raised (or low) pressure of the cerebrospinal fluid. */
export const meningealAndPressureCauses: readonly Cause[] = [
  {
    key: 'bacterial-meningitis',
    group: 'infective',
    label: 'Bacterial meningitis',
    mondo: mondo('MONDO:0006670', 'bacterial meningitis'),
    produces: [
      at(['meningeal-irritation'], 'very-common'),
      at(['basal-meningeal-process', 'diffuse-encephalopathy', 'raised-intracranial-pressure'], 'uncommon'),
      at(['cochlear-nerve'], 'rare'),
    ],
    tempo: { hyperacute: 0.4, acute: 0.55, subacute: 0.04, chronic: 0.01 },
    courses: { progressive: 2, 'relapsing-remitting': 0.05, improving: 0.1, static: 0.2 },
    durationDays: { to: 7, outside: 0.15, source: tuberculousScore },
    history: [
      told('fever', 5, 0.15),
      told(anyHeadache, 1.5, 0.3),
      told('thunderclap-headache', 0.3, 1.02),
      told('photophobia', 1.3, 0.8),
      told('vomiting', 1.5, 0.8),
      told(['sinus-or-ear-infection', 'sepsis', 'recent-bacteraemia'], 3.5, 0.85),
      told('rash', 3, 0.85),
      told(['immunosuppression', 'alcohol-excess', 'head-injury', 'recent-surgery'], 1.8, 0.95),
    ],
    signs: [
      fever,
      shows(stiffNeck, 1.5, 0.5),
      shows(['inspection/non-blanching-rash'], 15, 0.85),
      shows(['higher-function/drowsiness', 'higher-function/confusion', 'higher-function/coma'], 4, 0.35),
      shows(severalCranialNerves, 1.2, 0.98),
    ],
    quantities: [
      atLeast('csf-white-cells', 1000, '10*6/L', 10, 0.4, ukMeningitis),
      atLeast('csf-white-cells', 5, '10*6/L', 2, 0.02, ukMeningitis),
      under('csf-glucose', 2, 'mmol/L', 8, 0.3, ukMeningitis),
      atLeast('csf-protein', 1, 'g/L', 4, 0.3, ukMeningitis),
      atLeast('csf-lactate', 3.5, 'mmol/L', 10, 0.08, ukMeningitis),
      atLeast('crp', 50, 'mg/L', 4, 0.15),
      atLeast('white-cells', 12, '10*9/L', 2, 0.5),
    ],
    source: recalled('bacterial-meningitis-2004'),
  },
  {
    key: 'viral-meningitis',
    group: 'infective',
    label: 'Viral meningitis',
    mondo: mondo('MONDO:0007015', 'viral meningitis'),
    produces: [
      at(['meningeal-irritation'], 'very-common'),
      at(['no-lesion'], 'rare'),
      at(['basal-meningeal-process'], 'rare'),
    ],
    tempo: { hyperacute: 0.2, acute: 0.72, subacute: 0.07, chronic: 0.01 },
    courses: { improving: 2, progressive: 0.6, 'relapsing-remitting': 0.5 },
    durationDays: { to: 14, outside: 0.25, source: ukMeningitis },
    age: { from: 2, to: 55, outside: 0.5 },
    history: [
      told('fever', 3, 0.5),
      told(anyHeadache, 1.5, 0.15),
      told('photophobia', 1.8, 0.6),
      told('thunderclap-headache', 0.2, 1.05),
      told(['preceding-infection', 'preceding-gastroenteritis', 'preceding-respiratory-infection', 'rash'], 1.6, 0.9),
      told(['sinus-or-ear-infection', 'seizure'], 0.4, 1.05),
    ],
    signs: [
      shows(['autonomic/fever'], 2.5, 0.7),
      shows(
        [
          'higher-function/drowsiness',
          'higher-function/confusion',
          'higher-function/coma',
          'inspection/non-blanching-rash',
        ],
        0.12,
        1.6,
      ),
      shows(severalCranialNerves, 0.1, 1.05),
      shows(discSwelling, 0.1, 1.05),
    ],
    quantities: [
      atLeast('csf-white-cells', 5, '10*6/L', 2, 0.05, ukMeningitis),
      atLeast('csf-white-cells', 1000, '10*6/L', 0.15, 1.3, ukMeningitis),
      under('csf-glucose', 2, 'mmol/L', 0.1, 1.3, ukMeningitis),
      atLeast('csf-protein', 1, 'g/L', 0.4, 1.3, ukMeningitis),
      atLeast('csf-lactate', 3.5, 'mmol/L', 0.1, 1.5, ukMeningitis),
      atLeast('crp', 50, 'mg/L', 0.3, 1.3),
    ],
    values: [reads('csf-microbiology', [['positive', 3]])],
    source: ukMeningitis,
  },
  {
    key: 'tuberculous-meningitis',
    group: 'infective',
    label: 'Tuberculous meningitis',
    produces: [
      at(['basal-meningeal-process'], 'very-common'),
      at(['meningeal-irritation', 'raised-intracranial-pressure'], 'uncommon'),
      at(['diffuse-encephalopathy', 'abducens-nerve'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
    ],
    tempo: { hyperacute: 0.01, acute: 0.24, subacute: 0.6, chronic: 0.15 },
    courses: { progressive: 2, improving: 0.15, 'relapsing-remitting': 0.1, static: 0.3 },
    durationDays: { from: 6, outside: 0.3, source: tuberculousScore },
    history: [
      told('tuberculosis', 8, 0.8),
      told(['travel', 'hiv-infection', 'immunosuppression', 'tnf-inhibitor', 'alcohol-excess'], 3, 0.6),
      told('fever', 3, 0.3),
      told(['weight-loss', 'night-sweats'], 4, 0.4),
      told(anyHeadache, 1.5, 0.3),
    ],
    signs: [
      fever,
      shows(stiffNeck, 2, 0.5),
      shows(severalCranialNerves, 1.6, 0.8),
      shows(['higher-function/drowsiness', 'higher-function/confusion'], 2, 0.7),
    ],
    quantities: [
      atLeast('csf-white-cells', 5, '10*6/L', 2, 0.05, tuberculousScore),
      atLeast('csf-white-cells', 900, '10*6/L', 0.2, 1.2, tuberculousScore),
      atLeast('csf-protein', 1, 'g/L', 4, 0.25, tuberculousScore),
      under('csf-glucose', 2.2, 'mmol/L', 4, 0.4, ukMeningitis),
      under('sodium', 133, 'mmol/L', 2, 0.9),
    ],
    values: [
      reads('mri-brain', [
        ['meningeal-enhancement', 4],
        ['hydrocephalus', 2.5],
        ['normal', 0.2],
      ]),
      reads('hiv-test', [
        ['positive', 3],
        ['negative', 0.8],
      ]),
      reads('csf-cytology', [['malignant', 0.02]]),
      reads('csf-microbiology', [
        ['positive', 6],
        ['negative', 0.7],
      ]),
    ],
    source: tuberculousScore,
  },
  {
    key: 'fungal-meningitis',
    group: 'infective',
    label: 'Fungal meningitis (cryptococcal)',
    produces: [
      at(['basal-meningeal-process'], 'common'),
      at(['meningeal-irritation', 'raised-intracranial-pressure'], 'uncommon'),
      at(['diffuse-encephalopathy', 'abducens-nerve', 'optic-nerve'], 'rare'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.6, improving: 0.2 },
    history: [
      told(['hiv-infection', 'immunosuppression', 'corticosteroid', 'lymphoma', 'tacrolimus'], 15, 0.15),
      told(anyHeadache, 1.6, 0.2),
      told('fever', 3, 0.5),
      told(['visual-loss', 'transient-visual-loss'], 1.7, 0.9),
      told('travel', 1.5, 0.95),
    ],
    signs: [shows(['autonomic/fever'], 2, 0.6), shows(discSwelling, 2, 0.8), shows(stiffNeck, 1.1, 0.9)],
    quantities: [
      atLeast('csf-opening-pressure', 25, 'cm[H2O]', 4, 0.4, recalled('cryptococcal-2010')),
      under('csf-glucose', 2.2, 'mmol/L', 2.5, 0.6, ukMeningitis),
      atLeast('csf-white-cells', 1000, '10*6/L', 0.1, 1.1),
    ],
    values: [
      reads('hiv-test', [
        ['positive', 12],
        ['negative', 0.4],
      ]),
      reads('csf-microbiology', [
        ['positive', 10],
        ['negative', 0.2],
      ]),
    ],
    source: recalled('cryptococcal-2010'),
  },
  {
    key: 'neurosarcoidosis',
    group: 'immune',
    label: 'Neurosarcoidosis',
    produces: [
      inKind(['polyradiculoneuropathy', 'root', 'cauda-equina', 'cord'], 'rare'),
      at(['basal-meningeal-process'], 'common'),
      at(['facial-nerve', 'optic-nerve', 'optic-chiasm', 'cavernous-sinus', 'orbital-apex'], 'uncommon'),
      at(['meningeal-irritation', 'raised-intracranial-pressure', 'vestibular-nerve', 'cochlear-nerve'], 'rare'),
      at(['trigeminal-nerve', 'cerebellopontine-angle', 'abducens-nerve', 'oculomotor-nerve'], 'rare'),
      inKind(['multiple-sites'], 'uncommon'),
    ],
    // A nerve of the head, the facial above all, often fails within days.
    tempo: { hyperacute: 0.02, acute: 0.25, subacute: 0.48, chronic: 0.25 },
    courses: { 'relapsing-remitting': 1.5 },
    age: { from: 20, to: 65, outside: 0.5 },
    history: [
      told('sarcoidosis', 25, 0.7),
      told(['joint-pain', 'rash', 'dry-eyes', 'red-eye'], 1.6, 0.9),
      told(['breathlessness', 'weight-loss', 'night-sweats', 'fatigue'], 1.6, 0.85),
      told('fever', 1, 1),
    ],
    signs: [
      shows(['cranial-nerves/facial-weakness'], 2, 0.8),
      shows(['inspection/enlarged-lymph-nodes'], 3, 0.9),
      shows(['autonomic/fever'], 0.7, 1.05),
    ],
    quantities: [
      atLeast('angiotensin-converting-enzyme', 70, 'U/L', 5, 0.6),
      atLeast('csf-white-cells', 5, '10*6/L', 1.6, 0.5),
      atLeast('calcium', 2.65, 'mmol/L', 4, 0.95),
    ],
    values: [
      reads('ct-chest', [
        ['hilar-nodes', 15],
        ['normal', 0.25],
      ]),
      reads('mri-brain', [
        ['meningeal-enhancement', 3],
        ['normal', 0.3],
      ]),
      reads('csf-microbiology', [['positive', 0.05]]),
      reads('csf-cytology', [['malignant', 0.02]]),
    ],
    source: recalled('neurosarcoidosis-2018'),
  },
  {
    key: 'neurosyphilis',
    group: 'infective',
    label: 'Neurosyphilis',
    mondo: mondo('MONDO:0004944', 'neurosyphilis'),
    produces: [
      inKind(['cord'], 'rare'),
      at(['polyradiculopathy', 'frontal-gait-disorder'], 'rare'),
      at(['basal-meningeal-process', 'ciliary-ganglion'], 'uncommon'),
      at(['optic-nerve', 'cochlear-nerve', 'vestibular-nerve', 'meningeal-irritation', 'facial-nerve'], 'rare'),
      at(['trigeminal-nerve', 'cerebellopontine-angle', 'oculomotor-nerve'], 'rare'),
      at(['diffuse-encephalopathy', 'midbrain-dorsal'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
    ],
    // Early meningitis takes nerves of the head, and vessels, within days.
    tempo: { hyperacute: 0.05, acute: 0.15, subacute: 0.37, chronic: 0.43 },
    history: [
      told(['syphilis', 'unprotected-sex', 'hiv-infection'], 10, 0.3),
      told(['cognitive-change', 'behaviour-change'], 1.5, 0.95),
      told('rash', 2, 0.95),
    ],
    signs: [shows(['cranial-nerves/light-near-dissociation', 'cranial-nerves/small-pupil'], 3, 0.9)],
    quantities: [
      atLeast('csf-white-cells', 5, '10*6/L', 4, 0.15, recalled('neurosyphilis-2019')),
      atLeast('csf-white-cells', 1000, '10*6/L', 0.2, 1),
    ],
    values: [
      reads('syphilis-serology', [
        ['positive', 30],
        ['negative', 0.02],
      ]),
      reads('hiv-test', [
        ['positive', 3],
        ['negative', 0.8],
      ]),
    ],
    source: recalled('neurosyphilis-2019'),
  },
  {
    key: 'hypertrophic-pachymeningitis',
    group: 'immune',
    label: 'Hypertrophic pachymeningitis (IgG4 disease, granulomatosis with polyangiitis)',
    produces: [
      at(['basal-meningeal-process'], 'common'),
      at(['cavernous-sinus', 'jugular-foramen', 'orbital-apex', 'optic-nerve'], 'uncommon'),
      at(['meningeal-irritation', 'raised-intracranial-pressure', 'hypoglossal-nerve'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { 'relapsing-remitting': 1.4 },
    age: { from: 35, to: 85, outside: 0.5 },
    history: [
      told(['headache', 'new-headache', 'morning-headache'], 1.9, 0.2),
      told(['vasculitis', 'rheumatoid-arthritis', 'sinus-or-ear-infection'], 4, 0.7),
      told('hearing-loss', 1.6, 0.95),
      told('fever', 0.6, 1.05),
    ],
    signs: [shows(stiffNeck, 0.3, 1.1)],
    quantities: [atLeast('crp', 10, 'mg/L', 1.6, 0.6)],
    values: [
      reads('mri-brain', [
        ['meningeal-enhancement', 8],
        ['normal', 0.05],
      ]),
      reads('anca', [
        ['positive', 10],
        ['negative', 0.7],
      ]),
    ],
    source: recalled('pachymeningitis-2014'),
  },
  {
    key: 'subarachnoid-haemorrhage',
    group: 'vascular',
    label: 'Subarachnoid haemorrhage',
    mondo: mondo('MONDO:0005099', 'subarachnoid hemorrhage'),
    produces: [
      at(['meningeal-irritation'], 'very-common'),
      at(['raised-intracranial-pressure', 'diffuse-encephalopathy', 'no-lesion'], 'uncommon'),
      at(['oculomotor-nerve'], 'rare'),
    ],
    tempo: { hyperacute: 0.96, acute: 0.03, subacute: 0.005, chronic: 0.005 },
    courses: { 'relapsing-remitting': 0.05, progressive: 0.6 },
    age: { from: 30, to: 90, outside: 0.3 },
    sex: { male: 0.8, female: 1.2 },
    history: [
      told('thunderclap-headache', 25, 0.06),
      told(anyHeadache, 1.2, 0.1),
      told('loss-of-consciousness', 3, 0.85),
      told('heavy-exertion', 1.8, 0.95),
      told('vomiting', 1.8, 0.7),
      told('neck-pain', 1.8, 0.8),
      told('family/aneurysm', 4, 0.97),
      told(['hypertension', 'tobacco', 'cocaine-or-stimulants'], 1.5, 0.85),
      told(['fever', 'rash', 'sinus-or-ear-infection'], 0.15, 1.1),
      told(['head-injury', 'trauma'], 0.6, 1.02),
    ],
    signs: [
      shows(stiffNeck, 2, 0.6),
      shows(['autonomic/fever'], 0.2, 1.2),
      shows(['cranial-nerves/third-nerve-palsy', 'cranial-nerves/dilated-pupil'], 1.8, 0.95),
      shows(['inspection/non-blanching-rash'], 0.02, 1.02),
    ],
    quantities: [
      atLeast('csf-red-cells', 1000, '10*6/L', 5, 0.3),
      atLeast('csf-white-cells', 300, '10*6/L', 0.2, 1.1),
      atLeast('crp', 50, 'mg/L', 0.25, 1.1),
    ],
    values: [
      reads(
        'ct-head',
        [
          ['subarachnoid-haemorrhage', 100],
          ['normal', 0.05],
          ['incidental', 0.05],
        ],
        recalled('nice-ng228'),
      ),
      reads('csf-xanthochromia', [
        ['positive', 40],
        ['negative', 0.03],
      ]),
      reads('angiography-head-neck', [
        ['aneurysm', 15],
        ['normal', 0.3],
      ]),
    ],
    source: recalled('nice-ng228'),
  },
  {
    key: 'idiopathic-intracranial-hypertension',
    group: 'metabolic',
    label: 'Idiopathic intracranial hypertension',
    mondo: mondo('MONDO:0009468', 'pseudotumor cerebri'),
    produces: [
      at(['raised-intracranial-pressure'], 'very-common'),
      at(['abducens-nerve'], 'uncommon'),
      at(['optic-nerve', 'no-lesion'], 'rare'),
    ],
    tempo: { hyperacute: 0.01, acute: 0.09, subacute: 0.5, chronic: 0.4 },
    age: { from: 12, to: 50, outside: 0.12 },
    sex: { male: 0.2, female: 1.8 },
    history: [
      told('obesity', 6, 0.15),
      told('recent-weight-loss', 0.5, 1),
      told(['headache', 'new-headache', 'morning-headache'], 1.4, 0.3),
      told('transient-visual-loss', 2.5, 0.6),
      told('pulsatile-tinnitus', 5, 0.6),
      told(['tetracycline', 'retinoid'], 8, 0.95),
      told(['cancer', 'immunosuppression', 'fever', 'seizure'], 0.15, 1.05),
      told('sleep-apnoea', 1.6, 0.97),
      // Both point to the venous sinuses instead.
      told(['thrombophilia', 'pregnancy'], 0.4, 1),
    ],
    signs: [
      shows(discSwelling, 2, 0.1),
      shows(['higher-function/drowsiness', 'higher-function/confusion', 'special-tests/neck-stiffness'], 0.05, 1.2),
      shows(['coordination/finger-nose', 'gait/ataxic', 'special-tests/pronator-drift'], 0.15, 1.1),
    ],
    quantities: [
      atLeast('csf-opening-pressure', 25, 'cm[H2O]', 6, 0.05, recalled('iih-consensus-2018', 'diagnostic criteria')),
      atLeast('csf-white-cells', 6, '10*6/L', 0.05, 1.3, recalled('iih-consensus-2018', 'normal constituents')),
      atLeast('csf-protein', 0.6, 'g/L', 0.2, 1.2, recalled('iih-consensus-2018', 'normal constituents')),
    ],
    values: [
      reads('mri-brain', [
        ['normal', 4],
        ['incidental', 3],
        ['space-occupying', 0.02],
        ['hydrocephalus', 0.02],
        ['venous-thrombosis', 0.02],
        ['meningeal-enhancement', 0.1],
      ]),
      reads('ct-head', [
        ['normal', 3],
        ['space-occupying', 0.03],
        ['hydrocephalus', 0.03],
      ]),
    ],
    source: recalled('iih-consensus-2018'),
  },
  {
    key: 'obstructive-hydrocephalus',
    group: 'compressive',
    label: 'Obstructive hydrocephalus',
    produces: [
      at(['raised-intracranial-pressure', 'midbrain-dorsal'], 'common'),
      at(['diffuse-encephalopathy', 'frontal-gait-disorder', 'abducens-nerve'], 'uncommon'),
      at(['optic-chiasm'], 'rare'),
    ],
    tempo: { hyperacute: 0.15, acute: 0.3, subacute: 0.35, chronic: 0.2 },
    courses: { progressive: 1.8, improving: 0.2 },
    history: [
      told(anyHeadache, 1.8, 0.3),
      told('vomiting', 3, 0.5),
      told(['unsteadiness', 'difficulty-walking', 'falls'], 2, 0.8),
      told('bladder-disturbance', 2, 0.95),
      told(['cognitive-change', 'loss-of-consciousness'], 2, 0.9),
      told('obesity', 0.7, 1.05),
    ],
    signs: [
      shows(['cranial-nerves/upgaze-palsy', 'cranial-nerves/convergence-retraction-nystagmus'], 6, 0.8),
      shows(['higher-function/drowsiness'], 3, 0.7),
      shows(['gait/ataxic', 'gait/magnetic'], 2, 0.9),
    ],
    values: [
      reads('ct-head', [
        ['hydrocephalus', 25],
        ['normal', 0.02],
      ]),
      reads('mri-brain', [
        ['hydrocephalus', 25],
        ['normal', 0.02],
      ]),
    ],
    source: recalled('adams-victor', 'hydrocephalus'),
  },
  {
    key: 'post-lumbar-puncture-headache',
    group: 'traumatic',
    label: 'Low cerebrospinal fluid pressure after dural puncture, or spontaneous',
    produces: [at(['meningeal-irritation', 'no-lesion'], 'uncommon'), at(['abducens-nerve', 'cochlear-nerve'], 'rare')],
    tempo: { hyperacute: 0.15, acute: 0.65, subacute: 0.17, chronic: 0.03 },
    courses: { progressive: 0.4 },
    age: { from: 15, to: 65, outside: 0.4 },
    history: [
      told('orthostatic-headache', 30, 0.03),
      told('lumbar-puncture-or-epidural', 15, 0.3),
      told('spinal-surgery', 4, 0.98),
      told('morning-headache', 0.3, 1.05),
      told('fever', 0.1, 1.1),
      told('thunderclap-headache', 0.4, 1.02),
    ],
    signs: [shows(['autonomic/fever'], 0.1, 1.1), shows(discSwelling, 0.03, 1.1)],
    quantities: [under('csf-opening-pressure', 6, 'cm[H2O]', 20, 0.2, recalled('ichd-3', 'low pressure'))],
    values: [reads('mri-brain', [['meningeal-enhancement', 3]])],
    source: recalled('ichd-3', 'post-dural puncture headache'),
  },
];
