import { read, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told, under } from './cause.ts';
import { weightLoss } from './complaints.ts';

const cordChapter = recalled('adams-victor', 'diseases of the spinal cord');
const anyCord = ['cord'] as const;

/** A lesion that spreads within the cord: for inflammation, against what presses from outside. */
export const longLesion = (long: number, short: number, compression: number) =>
  (['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
    reads(result, [
      ['cord-lesion-long', long],
      ['cord-lesion-short', short],
      ['cord-compression', compression],
    ]),
  );

/** A blind eye beside a sick cord. */
const anOpticNerveToo = [
  'cranial-nerves/reduced-visual-acuity',
  'cranial-nerves/relative-afferent-pupillary-defect',
  'cranial-nerves/optic-disc-pallor',
];

/** Inflammations of the spinal cord, of which most strike brain and optic nerves too. */
export const cordInflammationCauses: readonly Cause[] = [
  {
    key: 'multiple-sclerosis',
    group: 'immune',
    label: 'Multiple sclerosis',
    mondo: mondo('MONDO:0005301', 'multiple sclerosis'),
    produces: [
      at(['optic-nerve'], 'common'),
      at(
        [
          'trigeminal-nerve',
          'abducens-nerve',
          'vestibular-nerve',
          'optic-tract',
          'optic-radiation-temporal',
          'optic-radiation-parietal',
        ],
        'uncommon',
      ),
      at(['facial-nerve', 'oculomotor-nerve', 'optic-chiasm'], 'rare'),
      at(['spinal-cord-posterior', 'spinal-cord-hemisection', 'spinal-cord-posterolateral'], 'very-common'),
      at(['spinal-cord-lateral'], 'very-common'),
      at(['spinal-cord-central', 'spinal-cord-anterior'], 'uncommon'),
      inKind(anyCord, 'common'),
      inKind(['brainstem'], 'common'),
      // Half of the medulla is hardly ever anything but an infarct.
      at(['medulla-lateral', 'medulla-half'], 'uncommon'),
      inKind(['cerebellum', 'hemisphere'], 'uncommon'),
      inKind(['multiple-sites'], 'very-common'),
      at(
        [
          'diffuse-encephalopathy',
          'trochlear-nerve',
          'cochlear-nerve',
          'cerebellopontine-angle',
          'hyperkinetic-syndrome',
          'action-tremor',
          'sensory-polyneuropathy',
          'frontal-gait-disorder',
          'hypoglossal-nerve',
        ],
        'rare',
      ),
    ],
    // Attacks over days to weeks; a fifth or so is progressive from the start or by the time it is examined. Judged.
    tempo: { hyperacute: 0.03, acute: 0.37, subacute: 0.38, chronic: 0.22 },
    paralysis: 0.4,
    courses: { 'relapsing-remitting': 8, progressive: 0.8 },
    age: { from: 15, to: 60, outside: 0.25 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told(
        ['radicular-arm-pain', 'radicular-leg-pain', 'thoracic-back-pain', 'night-spinal-pain', 'pain-on-straining'],
        0.5,
        1,
      ),
      told(['injecting-drug-use', 'tuberculosis', 'hiv-infection', 'syphilis'], 0.6, 1),
      told(['resolved-deficit', 'similar-attacks-before'], 1.8, 0.95),
      told('tight-band', 1.6, 1),
      told('tnf-inhibitor', 2, 1),
      told(['cancer', 'lymphoma', 'anticoagulant'], 0.6, 1),
      told('multiple-sclerosis', 12, 0.6),
      told('optic-neuritis', 4, 0.9),
      told(['family/similar-disorder', 'family/multiple-sclerosis'], 2.5, 1),
      told(['paraesthesiae', 'numbness', 'electric-shock-on-neck-flexion'], 1.3, 0.95),
      told(['hypertension', 'atrial-fibrillation', 'ischaemic-heart-disease'], 0.6, 1.02),
      told(['fever', 'weight-loss', 'night-sweats'], 0.5, 1),
      told(['head-injury', 'trauma', 'neck-trauma'], 0.6, 1),
      told(['fatigue', 'triggered-facial-pain', 'sexual-dysfunction'], 1.4, 1),
      told(['pregnancy', 'bladder-disturbance', 'vertigo'], 1.2, 1),
    ],
    signs: [
      shows(['special-tests/lhermitte'], 2, 0.95),
      shows(
        ['cranial-nerves/internuclear-ophthalmoplegia', 'cranial-nerves/relative-afferent-pupillary-defect'],
        4,
        0.95,
      ),
      shows(['cranial-nerves/facial-myokymia', 'cranial-nerves/optic-disc-pallor'], 1.8, 1),
    ],
    quantities: [atLeast('csf-white-cells', 50, '10*6/L', 0.2, 1.1)],
    values: [
      reads('somatosensory-evoked-potentials', [
        ['central-delay', 2],
        ['peripheral-delay', 0.5],
        ['normal', 0.7],
      ]),
      reads('visual-evoked-potentials', [
        ['absent', 1.5],
        ['delayed', 3],
        ['normal', 0.6],
      ]),
      ...(['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
        reads(result, [
          ['cord-lesion-short', 5],
          ['cord-lesion-long', 0.2],
          ['cord-compression', 0.05],
          ['normal', 0.4],
        ]),
      ),
      reads('mri-brain', [
        ['demyelinating-lesions', 10],
        ['normal', 0.1],
      ]),
      reads('csf-oligoclonal-bands', [
        ['positive', 4],
        ['negative', 0.3],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'idiopathic-transverse-myelitis',
    group: 'immune',
    label: 'Idiopathic transverse myelitis',
    mondo: mondo('MONDO:0015344', 'idiopathic acute transverse myelitis'),
    produces: [
      // In spinal shock it is taken for a disease of the roots.
      at(['demyelinating-polyradiculoneuropathy', 'polyradiculopathy'], 'rare'),
      at(['spinal-cord-transverse', 'conus-medullaris'], 'common'),
      inKind(anyCord, 'uncommon'),
    ],
    // The worst is reached between four hours and three weeks.
    tempo: { hyperacute: 0.1, acute: 0.58, subacute: 0.28, chronic: 0.04 },
    paralysis: 1.2,
    durationDays: { to: 60, outside: 0.3, source: read('transverse-myelitis-2002', 'nadir 4 hours to 21 days') },
    history: [
      told(['visual-loss', 'eye-pain', 'hiccups'], 0.4, 1),
      told('recent-vaccination', 2, 1),
      // Myelitis is among what checkpoint inhibitors set off.
      told('immune-checkpoint-inhibitor', 3, 1),
      told(['thoracic-back-pain', 'tight-band'], 1.2, 1),
      told(['cancer', 'anticoagulant', 'injecting-drug-use'], 0.5, 1),
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 2.5, 0.9),
      told(['trauma', 'limb-fracture-or-dislocation', 'neck-trauma'], 0.2, 1),
      told('ascending-weakness', 1.3, 1),
      told(['lupus', 'sjogren-syndrome', 'sarcoidosis', 'multiple-sclerosis', 'optic-neuritis'], 0.5, 1),
      told(['atrial-fibrillation', 'aortic-disease', 'peripheral-arterial-disease'], 0.6, 1),
      told(['numbness', 'bladder-disturbance', 'back-pain'], 1.2, 1),
    ],
    // With an optic nerve it has another name.
    signs: [shows(anOpticNerveToo, 0.3, 1)],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 3, 0.5)],
    values: [
      ...(['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
        reads(result, [
          ['cord-lesion-long', 3],
          ['cord-lesion-short', 1.5],
          ['cord-compression', 0.03],
          ['normal', 0.2],
        ]),
      ),
      reads('mri-brain', [
        ['demyelinating-lesions', 0.2],
        ['normal', 1.3],
      ]),
      reads('aquaporin-4-antibody', [['positive', 0.05]]),
      reads('mog-antibody', [['positive', 0.1]]),
    ],
    source: read('transverse-myelitis-2002'),
  },
  {
    key: 'neuromyelitis-optica-spectrum-disorder',
    group: 'immune',
    label: 'Neuromyelitis optica spectrum disorder',
    produces: [
      at(['optic-nerve', 'optic-chiasm'], 'uncommon'),
      at(['spinal-cord-transverse'], 'common'),
      inKind(anyCord, 'uncommon'),
      inKind(['multiple-sites', 'brainstem'], 'uncommon'),
      inKind(['hemisphere'], 'exceptional'),
      at(['diffuse-encephalopathy', 'optic-tract', 'vestibular-nerve'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.06, acute: 0.6, subacute: 0.28, chronic: 0.06 },
    paralysis: 1.2,
    courses: { 'relapsing-remitting': 3 },
    sex: { male: 0.4, female: 1.6 },
    history: [
      told('autoimmune-disease', 1.6, 1),
      told(['lupus', 'sjogren-syndrome', 'myasthenia-gravis', 'family/autoimmune-disease'], 3, 0.97),
      told(['resolved-deficit', 'similar-attacks-before'], 1.6, 1),
      told(['tight-band', 'neuropathic-pain'], 1.4, 1),
      told('visual-loss', 2, 1),
      // The area postrema makes people vomit for days before.
      told('vomiting', 2, 1),
      told('hiccups', 8, 0.98),
      told('optic-neuritis', 4, 0.9),
      told(['hypothyroidism', 'pregnancy', 'stiffness', 'preceding-infection'], 1.3, 1),
    ],
    signs: [shows(anOpticNerveToo, 1.6, 0.95)],
    quantities: [atLeast('csf-white-cells', 50, '10*6/L', 1.6, 1)],
    values: [
      ...(['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
        reads(result, [
          ['cord-lesion-long', 5],
          ['cord-lesion-short', 0.3],
          ['cord-compression', 0.03],
          ['normal', 0.2],
        ]),
      ),
      reads('csf-oligoclonal-bands', [
        ['positive', 0.4],
        ['negative', 1.3],
      ]),
      reads(
        'aquaporin-4-antibody',
        [
          ['positive', 80],
          ['negative', 0.25],
        ],
        read('nmosd-2015'),
      ),
    ],
    source: read('nmosd-2015'),
  },
  {
    key: 'mog-antibody-disease',
    group: 'immune',
    label: 'Myelin oligodendrocyte glycoprotein antibody-associated disease',
    mondo: mondo('MONDO:1040024', 'myelin oligodendrocyte glycoprotein antibody-associated disease'),
    produces: [
      at(['raised-intracranial-pressure', 'optic-chiasm'], 'rare'),
      at(['optic-nerve'], 'uncommon'),
      at(['spinal-cord-transverse', 'conus-medullaris'], 'uncommon'),
      inKind(['cord', 'multiple-sites'], 'uncommon'),
      inKind(['hemisphere', 'cerebellum'], 'exceptional'),
      inKind(['brainstem'], 'uncommon'),
      at(['diffuse-encephalopathy', 'meningeal-irritation', 'optic-tract'], 'rare'),
    ],
    tempo: { hyperacute: 0.06, acute: 0.62, subacute: 0.27, chronic: 0.05 },
    age: { from: 0, to: 50, outside: 0.4 },
    history: [
      told('optic-neuritis', 4, 0.95),
      told(['preceding-infection', 'preceding-respiratory-infection', 'recent-vaccination'], 2, 0.95),
      told(['fever', 'headache', 'seizure', 'eye-pain'], 1.5, 1),
      told(['resolved-deficit', 'similar-attacks-before'], 1.5, 1),
      told('bladder-disturbance', 1.3, 1),
      told(['behaviour-change', 'cognitive-change', 'vomiting', 'pregnancy'], 1.3, 1),
    ],
    signs: [shows(anOpticNerveToo, 1.6, 0.95)],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 2, 0.6)],
    values: [
      ...(['mri-cervical-spine', 'mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
        reads(result, [
          ['cord-lesion-long', 3],
          ['cord-lesion-short', 1],
          ['cord-compression', 0.03],
        ]),
      ),
      reads('csf-oligoclonal-bands', [
        ['positive', 0.3],
        ['negative', 1.3],
      ]),
      reads('aquaporin-4-antibody', [['positive', 0.05]]),
      reads('mog-antibody', [
        ['positive', 40],
        ['negative', 0.1],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'sarcoid-myelopathy',
    group: 'immune',
    label: 'Sarcoid myelopathy',
    produces: [
      at(['polyradiculopathy'], 'rare'),
      inKind(anyCord, 'rare'),
      at(['spinal-cord-transverse', 'conus-medullaris', 'cauda-equina'], 'uncommon'),
      at(['spinal-cord-hemisection', 'spinal-cord-posterior', 'spinal-cord-central'], 'rare'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.3 },
    age: { from: 20, to: 70, outside: 0.5 },
    history: [
      told(['polyuria', 'facial-pain', 'face-or-neck-lump', 'weight-loss'], 1.4, 1),
      told(['chronic-cough', 'breathlessness', 'joint-pain', 'rash', 'interstitial-lung-disease'], 1.5, 0.97),
      told('bladder-disturbance', 1.2, 1),
      told('sarcoidosis', 25, 0.4),
      told(['fatigue', 'night-sweats'], 1.5, 0.95),
      told(['red-eye', 'visual-loss', 'numbness', 'tight-band'], 1.4, 1),
    ],
    signs: [shows(['inspection/enlarged-lymph-nodes'], 3, 1), shows(['cranial-nerves/facial-weakness'], 2, 1)],
    quantities: [
      atLeast('angiotensin-converting-enzyme', 70, 'U/L', 4, 0.7),
      atLeast('calcium', 2.65, 'mmol/L', 2, 1),
      atLeast('csf-white-cells', 5, '10*6/L', 2, 0.4),
    ],
    values: [
      reads('mri-lumbar-spine', [['root-enhancement', 2.5]]),
      ...longLesion(4, 0.7, 0.2),
      reads('ct-chest', [
        ['hilar-nodes', 15],
        ['normal', 0.4],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'lupus-or-sjogren-myelitis',
    group: 'immune',
    label: 'Myelitis of lupus or Sjögren syndrome',
    produces: [
      at(['spinal-cord-central', 'spinal-cord-posterior', 'spinal-cord-hemisection'], 'rare'),
      inKind(anyCord, 'rare'),
      at(['spinal-cord-transverse', 'conus-medullaris'], 'uncommon'),
      at(['lower-motor-neuron-system', 'cauda-equina', 'polyradiculopathy'], 'exceptional'),
    ],
    // Where the grey matter is taken, the legs are lost within six hours. Birnbaum 2009 (recalled).
    tempo: { hyperacute: 0.2, acute: 0.5, subacute: 0.25, chronic: 0.05 },
    paralysis: 1.2,
    age: { from: 12, to: 60, outside: 0.5 },
    sex: { male: 0.3, female: 1.7 },
    history: [
      told('autoimmune-disease', 2, 1),
      told(['thrombophilia', 'optic-neuritis', 'oral-or-genital-ulcers', 'hair-loss'], 2, 1),
      told('fever', 1.3, 1),
      told('family/autoimmune-disease', 1.5, 1),
      told(['lupus', 'sjogren-syndrome'], 25, 0.4),
      told(['joint-pain', 'photosensitive-rash', 'dry-mouth', 'dry-eyes', 'cold-white-fingers'], 3, 0.7),
      told(['fatigue', 'rash'], 1.5, 1),
    ],
    quantities: [under('complement-c4', 0.1, 'g/L', 3, 0.8), under('complement-c3', 0.8, 'g/L', 2.5, 0.8)],
    values: [
      ...longLesion(3, 0.7, 0.1),
      reads('ana', [
        ['positive', 3],
        ['negative', 0.15],
      ]),
      reads('anti-ro', [
        ['positive', 4],
        ['negative', 0.7],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'paraneoplastic-myelopathy',
    group: 'paraneoplastic',
    label: 'Paraneoplastic myelopathy',
    produces: [
      at(['lower-motor-neuron-system', 'motor-neuron-system', 'upper-motor-neuron-system'], 'rare'),
      at(['spinal-cord-lateral', 'spinal-cord-posterolateral'], 'uncommon'),
      inKind(anyCord, 'rare'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.6, improving: 0.2 },
    age: { from: 40, to: 110, outside: 0.3 },
    history: [
      told(['visual-loss', 'numbness', 'chronic-cough'], 1.3, 1),
      told(['twitching', 'muscle-thinning', 'stiffness'], 1.2, 1),
      told(['cancer', 'lymphoma'], 5, 0.5),
      told('tobacco', 1.5, 0.8),
      told(weightLoss, 2.5, 0.7),
    ],
    values: [
      reads('ct-chest', [
        ['tumour', 6],
        ['normal', 0.7],
      ]),
      ...longLesion(2, 1, 0.1),
      reads('paraneoplastic-antibody', [
        ['positive', 40],
        ['negative', 0.3],
      ]),
    ],
    source: cordChapter,
  },
];
