import { recalled } from '../../kernel/cite.ts';
import { anyHeadache, cognitiveDecline } from './brain-sites.ts';
import { at, atLeast, type Cause, inKind, reads, shows, tempos, told, under } from './cause.ts';

const book = (chapter: string) => recalled('adams-victor', chapter);
const regression = ['loss-of-skills', 'developmental-delay'] as const;
const kin = ['family/similar-disorder', 'family/consanguinity'] as const;

/** Hereditary and other diseases of the brain that mostly begin in children and young people. */
export const childhoodBrainCauses: readonly Cause[] = [
  {
    key: 'childhood-leukodystrophy',
    group: 'hereditary',
    label: 'Leukodystrophy of childhood (vanishing white matter, Pelizaeus-Merzbacher, Canavan, Alexander disease)',
    inheritance: ['autosomal-recessive', 'x-linked'],
    produces: [
      at(['diffuse-encephalopathy', 'cerebellar-degeneration', 'upper-motor-neuron-system'], 'rare'),
      at(['corticobulbar-both-sides', 'brainstem-diffuse'], 'exceptional'),
      at(['spinal-cord-posterolateral', 'raised-intracranial-pressure'], 'exceptional'),
      inKind(['multiple-sites'], 'exceptional'),
      at(['spinal-cord-transverse', 'spinal-cord-lateral'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.5, improving: 0.2 },
    age: { from: 0, to: 12, outside: 0.05 },
    history: [
      told(regression, 4, 0.2),
      told(kin, 2, 0.9),
      told(['fever', 'head-injury', 'preceding-infection'], 1.6, 1),
      told(['unsteadiness', 'difficulty-walking', 'stiffness', 'seizure'], 1.5, 0.9),
      told(['back-pain', 'neck-pain', 'bladder-disturbance'], 0.4, 1.05),
    ],
    signs: [
      shows(['inspection/large-head'], 4, 1),
      shows(
        ['gait/spastic', 'tone/lower-limb', 'plantars/plantar-response', 'clonus/ankle', 'gait/scissoring'],
        1.8,
        0.6,
      ),
      shows(['cranial-nerves/pendular-nystagmus', 'cranial-nerves/nystagmus', 'inspection/titubation'], 2, 0.95),
      shows(['gait/ataxic', 'inspection/head-lag'], 1.5, 0.95),
      shows(['involuntary-movements/chorea'], 0.6, 1),
    ],
    values: [
      reads('mri-brain', [
        ['white-matter-disease', 25],
        ['normal', 0.02],
      ]),
      reads('nerve-conduction-pattern', [
        ['normal', 1.3],
        ['demyelinating-uniform', 0.1],
      ]),
    ],
    source: book('inherited metabolic diseases of the nervous system'),
  },
  {
    key: 'leigh-syndrome',
    group: 'hereditary',
    label: 'Leigh syndrome or another metabolic disease that strikes brainstem and striatum in childhood',
    inheritance: ['autosomal-recessive', 'mitochondrial', 'x-linked'],
    produces: [
      at(['brainstem-diffuse', 'hyperkinetic-syndrome', 'striatum', 'diffuse-encephalopathy'], 'rare'),
      at(['cerebellar-degeneration', 'bulbar-motor-nuclei', 'midbrain-tegmentum'], 'exceptional'),
      at(['pons-tegmentum', 'spinal-cord-lateral'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.03, acute: 0.37, subacute: 0.35, chronic: 0.25 },
    courses: { progressive: 1.5 },
    age: { from: 0, to: 10, outside: 0.1 },
    history: [
      told([...regression, 'vomiting', 'weakness', 'unsteadiness'], 2.5, 0.3),
      told('loss-of-skills', 2, 0.8),
      told(kin, 2, 0.9),
      told(['preceding-infection', 'fever'], 1.6, 0.95),
      told(['seizure', 'breathlessness', 'dysphagia', 'visual-loss', 'cardiomyopathy'], 1.4, 0.95),
      told(['antipsychotic', 'metoclopramide', 'trauma'], 0.4, 1),
    ],
    signs: [
      shows(
        [
          'cranial-nerves/ophthalmoplegia',
          'cranial-nerves/nystagmus',
          'cranial-nerves/ptosis',
          'cranial-nerves/optic-disc-pallor',
        ],
        3,
        0.7,
      ),
      shows(
        ['involuntary-movements/dystonia', 'involuntary-movements/athetosis', 'involuntary-movements/chorea'],
        2.5,
        0.8,
      ),
      shows(['tone/neck', 'tone/lower-limb', 'inspection/head-lag', 'cranial-nerves/weak-suck-or-cry'], 1.5, 0.9),
    ],
    quantities: [
      atLeast('lactate', 2.5, 'mmol/L', 8, 0.3),
      atLeast('csf-lactate', 2.5, 'mmol/L', 8, 0.2),
      atLeast('csf-white-cells', 10, '10*6/L', 0.2, 1.1),
    ],
    values: [
      reads('muscle-biopsy', [['mitochondrial', 4]]),
      reads('mri-brain', [
        ['normal', 0.1],
        ['other', 3],
      ]),
    ],
    source: book('mitochondrial diseases'),
  },
  {
    key: 'metabolic-crisis-of-inborn-error',
    group: 'hereditary',
    label: 'Crisis of an inborn error of metabolism (urea cycle disorder, organic aciduria)',
    inheritance: ['autosomal-recessive', 'x-linked'],
    produces: [
      at(['diffuse-encephalopathy'], 'uncommon'),
      at(
        ['raised-intracranial-pressure', 'hyperkinetic-syndrome', 'striatum', 'cerebellar-degeneration'],
        'exceptional',
      ),
      at(['no-lesion'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.12, acute: 0.68, subacute: 0.15, chronic: 0.05 },
    courses: { 'relapsing-remitting': 2, fluctuating: 2 },
    age: { from: 0, to: 18, outside: 0.3 },
    history: [
      told(['vomiting', 'early-satiety'], 3, 0.5),
      // Who cannot burn protein shuns meat and milk long before anybody knows why.
      told('vegan-diet', 4, 1),
      told(kin, 2.5, 0.9),
      told(['similar-attacks-before', 'developmental-delay', ...regression], 2, 0.9),
      told(
        ['pregnancy', 'valproate', 'corticosteroid', 'bariatric-surgery', 'recent-surgery', 'recent-weight-loss'],
        1.8,
        1,
      ),
      told(['preceding-infection', 'seizure'], 1.4, 0.95),
      // Ammonia makes odd before it makes sleepy.
      told('behaviour-change', 2, 0.95),
      told(['chronic-liver-disease', 'alcohol-excess', 'chronic-kidney-disease'], 0.3, 1.1),
    ],
    signs: [
      shows(['inspection/large-head', 'inspection/bulging-fontanelle'], 1.3, 1),
      shows(
        ['higher-function/drowsiness', 'higher-function/stupor', 'higher-function/coma', 'higher-function/confusion'],
        2,
        0.5,
      ),
      shows(['involuntary-movements/asterixis', 'gait/ataxic', 'involuntary-movements/dystonia'], 1.5, 1),
      shows(['inspection/enlarged-liver-or-spleen'], 1.6, 1),
      shows(['special-tests/neck-stiffness'], 0.4, 1),
    ],
    quantities: [
      atLeast('ammonia', 80, 'umol/L', 15, 0.2),
      atLeast('lactate', 3, 'mmol/L', 2, 0.9),
      atLeast('csf-white-cells', 10, '10*6/L', 0.1, 1.2),
    ],
    source: book('hyperammonaemia'),
  },
  {
    key: 'progressive-myoclonic-epilepsy',
    group: 'hereditary',
    label: 'Progressive myoclonic epilepsy (Unverricht-Lundborg, Lafora, ceroid lipofuscinosis, MERRF, sialidosis)',
    inheritance: ['autosomal-recessive', 'mitochondrial'],
    produces: [
      at(['hyperkinetic-syndrome', 'diffuse-encephalopathy', 'cerebellar-degeneration'], 'rare'),
      at(['action-tremor', 'no-lesion', 'cortex-occipital', 'retina'], 'exceptional'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.6, improving: 0.1 },
    age: { from: 1, to: 35, outside: 0.15 },
    history: [
      told(['seizure', 'epilepsy', 'ongoing-seizure'], 5, 0.08),
      told([...kin, 'family/epilepsy'], 2.5, 0.8),
      told([...cognitiveDecline, 'loss-of-skills', 'behaviour-change'], 2, 0.7),
      told(['visual-loss', 'hearing-loss', 'twitching', 'falls', 'unsteadiness'], 1.5, 0.95),
      told('fever', 0.4, 1.05),
      told(['family/chorea', 'family/ataxia'], 0.4, 1),
    ],
    signs: [
      shows(['involuntary-movements/myoclonus'], 12, 0.1),
      shows(['gait/ataxic', 'coordination/finger-nose', 'cranial-nerves/cerebellar-dysarthria'], 1.8, 0.8),
      shows(
        ['cranial-nerves/cherry-red-spot', 'cranial-nerves/hearing-loss', 'cranial-nerves/optic-disc-pallor'],
        2.5,
        1,
      ),
    ],
    values: [
      reads('eeg', [
        ['epileptiform', 3],
        ['normal', 0.1],
      ]),
    ],
    source: book('progressive myoclonic epilepsies'),
  },
  {
    key: 'ataxia-with-oculomotor-apraxia',
    group: 'hereditary',
    label: 'Recessive ataxia with oculomotor apraxia (types 1 and 2)',
    inheritance: ['autosomal-recessive'],
    produces: [
      at(['cerebellar-degeneration'], 'uncommon'),
      at(
        ['sensory-ganglionopathy', 'length-dependent-polyneuropathy', 'hyperkinetic-syndrome', 'cerebellar-vermis'],
        'exceptional',
      ),
      inKind(['multiple-sites'], 'rare'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.4, improving: 0.05, 'relapsing-remitting': 0.1 },
    age: { from: 2, to: 30, outside: 0.1 },
    history: [
      told(kin, 3, 0.7),
      told(['unsteadiness', 'clumsiness', 'slurred-speech'], 1.4, 0.7),
      told(['cardiomyopathy', 'diabetes-mellitus', 'lymphoma', 'hearing-loss'], 0.4, 1.05),
    ],
    signs: [
      shows(['higher-function/ocular-apraxia'], 12, 0.5),
      shows(['involuntary-movements/chorea', 'involuntary-movements/dystonia'], 2, 0.9),
      shows(['reflexes/ankle', 'reflexes/knee'], 1.4, 0.6),
      shows(['sensation/vibration', 'inspection/pes-cavus', 'inspection/wasting'], 1.5, 0.8),
      shows(['cranial-nerves/optic-disc-pallor', 'inspection/scoliosis'], 0.7, 1),
    ],
    values: [
      reads('mri-brain', [
        ['cerebellar-atrophy', 4],
        ['normal', 0.2],
      ]),
    ],
    source: book('hereditary ataxias of childhood'),
  },
  {
    key: 'mitochondrial-ataxia',
    group: 'hereditary',
    label: 'Mitochondrial ataxia (POLG, Kearns-Sayre syndrome)',
    inheritance: ['autosomal-recessive', 'mitochondrial'],
    produces: [
      at(['cerebellar-degeneration', 'sensory-ganglionopathy', 'brainstem-diffuse'], 'rare'),
      at(
        ['cerebellar-vermis', 'cerebellar-hemisphere', 'hyperkinetic-syndrome', 'akinetic-rigid-syndrome'],
        'exceptional',
      ),
      inKind(['multiple-sites'], 'rare'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.3, improving: 0.1 },
    age: { from: 3, to: 55, outside: 0.3 },
    history: [
      told('night-blindness', 1.5, 1),
      told(kin, 2, 0.85),
      told(['epilepsy', 'seizure', 'migraine'], 2.5, 0.85),
      told(['hearing-loss', 'diabetes-mellitus', 'cardiomyopathy', 'drooping-eyelids'], 2.5, 0.7),
      told(['valproate', 'cataract', 'gynaecomastia', 'muscle-pain', 'fatigue'], 1.4, 1),
      told(['alcohol-excess', 'cancer'], 0.4, 1.05),
    ],
    signs: [
      shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia'], 6, 0.5),
      shows(['involuntary-movements/myoclonus', 'cranial-nerves/hearing-loss'], 2, 0.95),
      shows(['sensation/vibration', 'sensation/joint-position', 'reflexes/ankle'], 1.5, 0.7),
    ],
    quantities: [atLeast('lactate', 2.2, 'mmol/L', 3, 0.7)],
    values: [
      reads('muscle-biopsy', [
        ['mitochondrial', 20],
        ['normal', 0.4],
      ]),
    ],
    source: book('mitochondrial diseases'),
  },
  {
    key: 'brain-calcification',
    group: 'hereditary',
    label: 'Calcification of the basal ganglia (primary familial, or of low parathyroid hormone)',
    inheritance: ['autosomal-dominant'],
    produces: [
      at(['akinetic-rigid-syndrome', 'hyperkinetic-syndrome', 'diffuse-encephalopathy'], 'rare'),
      at(['cerebellar-degeneration', 'frontal-gait-disorder', 'striatum', 'corticobulbar-both-sides'], 'exceptional'),
      at(['no-lesion'], 'exceptional'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.3 },
    age: { from: 20, to: 80, outside: 0.3 },
    history: [
      told(['family/similar-disorder', 'family/parkinsonism', 'family/chorea', 'family/dementia'], 2.5, 0.7),
      told(['neck-or-chest-surgery', 'cramps', 'perioral-numbness'], 2.5, 0.95),
      told(['slurred-speech', 'seizure', 'migraine', 'psychiatric-disorder'], 1.6, 0.9),
      told([...cognitiveDecline, 'behaviour-change', 'unsteadiness'], 1.4, 0.9),
      told(['antipsychotic', 'metoclopramide', 'stroke'], 0.5, 1),
    ],
    signs: [
      shows(
        ['cranial-nerves/dysarthria', 'cranial-nerves/cerebellar-dysarthria', 'cranial-nerves/hypokinetic-dysarthria'],
        1.6,
        0.9,
      ),
      shows(['special-tests/chvostek-or-trousseau', 'involuntary-movements/carpopedal-spasm'], 6, 1),
      shows(['gait/ataxic', 'involuntary-movements/dystonia', 'involuntary-movements/chorea'], 1.4, 0.95),
    ],
    quantities: [
      under('ionised-calcium', 1.1, 'mmol/L', 8, 0.6),
      under('calcium', 2.1, 'mmol/L', 10, 0.6),
      atLeast('phosphate', 1.6, 'mmol/L', 4, 0.9),
    ],
    values: [
      reads('ct-head', [
        ['normal', 0.03],
        ['other', 8],
        ['infarct', 0.5],
      ]),
    ],
    source: book('calcification of the basal ganglia'),
  },
  {
    key: 'infant-subdural-haematoma',
    group: 'traumatic',
    label: 'Subdural haematoma of an infant (inflicted or accidental injury)',
    produces: [
      // In the first year nothing else raises the pressure within days as often.
      at(['raised-intracranial-pressure'], 'common'),
      at(['diffuse-encephalopathy'], 'uncommon'),
      inKind(['hemisphere'], 'rare'),
      at(['no-lesion', 'brainstem-diffuse', 'abducens-nerve'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.35, acute: 0.4, subacute: 0.22, chronic: 0.03 },
    // The story of an injury is often missing, or does not fit.
    age: { from: 0, to: 2, outside: 0.02 },
    history: [
      told(['seizure', 'vomiting', 'loss-of-consciousness'], 2, 0.4),
      told(['trauma', 'head-injury', 'falls'], 2, 0.8),
      told(['perinatal-injury', 'bleeding-disorder'], 1.5, 1),
      told(['fever', 'rash', 'preceding-infection', 'family/consanguinity'], 0.4, 1.1),
      told(['loss-of-skills', 'developmental-delay', 'congenital-heart-disease'], 0.5, 1),
    ],
    signs: [
      shows(['inspection/bulging-fontanelle', 'inspection/large-head'], 4, 0.9),
      shows(['cranial-nerves/retinal-haemorrhages'], 20, 0.6),
      shows(['higher-function/drowsiness', 'higher-function/coma', 'involuntary-movements/posturing'], 2, 0.7),
      shows(['autonomic/fever', 'special-tests/neck-stiffness', 'cranial-nerves/cherry-red-spot'], 0.3, 1.1),
    ],
    values: [
      reads('ct-head', [
        ['subdural-haematoma', 60],
        ['normal', 0.05],
      ]),
    ],
    quantities: [under('haemoglobin', 90, 'g/L', 2, 1)],
    source: book('craniocerebral trauma'),
  },
  {
    key: 'febrile-seizure',
    group: 'paroxysmal',
    label: 'Febrile seizure',
    produces: [
      at(['no-lesion'], 'uncommon'),
      at(['diffuse-encephalopathy'], 'rare'),
      inKind(['hemisphere'], 'exceptional'),
    ],
    tempo: tempos.sudden,
    courses: { improving: 2, progressive: 0.1 },
    durationDays: { to: 2, outside: 0.2, source: book('febrile seizures') },
    age: { from: 0, to: 6, outside: 0.02 },
    history: [
      told(['seizure', 'ongoing-seizure'], 10, 0.05),
      told('fever', 8, 0.1),
      told(['family/epilepsy', 'family/similar-disorder'], 1.8, 0.95),
      told(['preceding-infection', 'preceding-respiratory-infection', 'ear-pain', 'recent-vaccination'], 1.4, 1),
      told(['epilepsy', 'developmental-delay', 'ventricular-shunt'], 0.4, 1),
    ],
    signs: [
      shows(['autonomic/fever'], 3, 0.6),
      shows(['special-tests/neck-stiffness', 'inspection/non-blanching-rash', 'higher-function/coma'], 0.05, 1.1),
    ],
    source: book('febrile seizures'),
  },
  {
    key: 'epileptic-encephalopathy-of-infancy',
    group: 'hereditary',
    label: 'Epileptic encephalopathy of childhood (infantile spasms, Dravet, Lennox-Gastaut, Rett syndrome)',
    produces: [
      at(['diffuse-encephalopathy', 'no-lesion'], 'rare'),
      at(['hyperkinetic-syndrome', 'cerebellar-degeneration', 'cortex-middle-cerebral-lower'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.2 },
    age: { from: 0, to: 8, outside: 0.05 },
    history: [
      told(regression, 5, 0.08),
      told(['seizure', 'epilepsy', 'twitching'], 4, 0.3),
      told(['perinatal-injury', 'down-syndrome', 'family/epilepsy'], 1.8, 0.95),
      told(['fever', 'recent-vaccination', 'similar-attacks-before'], 1.3, 1),
      told([...anyHeadache, 'vomiting', 'visual-loss'], 0.5, 1.05),
    ],
    signs: [
      shows(['inspection/hypopigmented-patch', 'inspection/cafe-au-lait-spots'], 3, 1),
      shows(
        ['inspection/enlarged-liver-or-spleen', 'cranial-nerves/cherry-red-spot', 'cranial-nerves/optic-disc-swelling'],
        0.1,
        1,
      ),
      shows(['higher-function/apraxia', 'tone/neck', 'inspection/head-lag', 'gait/ataxic'], 1.4, 1),
    ],
    values: [
      reads('eeg', [
        ['epileptiform', 6],
        ['normal', 0.05],
      ]),
    ],
    source: book('epilepsies of infancy and childhood'),
  },
  {
    key: 'congenital-cerebellar-malformation',
    group: 'hereditary',
    label: 'Malformed or small cerebellum from birth (Joubert, Dandy-Walker, hypoplasia)',
    inheritance: ['autosomal-recessive', 'x-linked'],
    produces: [
      at(['cerebellar-degeneration', 'cerebellar-vermis'], 'uncommon'),
      at(
        ['cerebellar-hemisphere', 'diffuse-encephalopathy', 'raised-intracranial-pressure', 'midbrain-tegmentum'],
        'exceptional',
      ),
    ],
    tempo: tempos.lifelong,
    courses: { static: 3, improving: 1.5, progressive: 0.2, 'relapsing-remitting': 0.1 },
    age: { from: 0, to: 4, outside: 0.05 },
    history: [
      told('developmental-delay', 5, 0.3),
      told(kin, 2, 0.9),
      told('perinatal-injury', 1.5, 1),
      told(['loss-of-skills', 'vomiting', 'preceding-infection', 'fever', ...anyHeadache], 0.3, 1.1),
    ],
    signs: [
      shows(['inspection/large-head'], 2, 1),
      shows(
        ['higher-function/ocular-apraxia', 'cranial-nerves/nystagmus', 'cranial-nerves/pendular-nystagmus'],
        2,
        0.9,
      ),
      shows(['tone/neck', 'tone/lower-limb', 'inspection/head-lag', 'gait/ataxic'], 1.5, 0.8),
      shows(['reflexes/ankle', 'inspection/pes-cavus'], 0.7, 1),
    ],
    values: [
      reads('mri-brain', [
        ['cerebellar-atrophy', 3],
        ['normal', 0.02],
      ]),
    ],
    source: book('developmental diseases of the nervous system'),
  },
];
