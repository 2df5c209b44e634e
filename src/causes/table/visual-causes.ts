import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, atLeast, type Cause, mondo, reads, shows, sided, tempos, told } from './cause.ts';

const localization = recalled('brazis', 'visual pathways');
const ischaemicOptic = recalled('ischaemic-optic-2009');
const gcaSigns = recalled('gca-signs-2020');
const discSwelling = ['cranial-nerves/optic-disc-swelling'];
const discPallor = ['cranial-nerves/optic-disc-pallor'];
const afferentDefect = ['cranial-nerves/relative-afferent-pupillary-defect'];
const vascularRisk = [
  'diabetes-mellitus',
  'hypertension',
  'hyperlipidaemia',
  'ischaemic-heart-disease',
  'sleep-apnoea',
];

/** Causes of disease of the retina, the optic nerve and the chiasm. */
export const visualCauses: readonly Cause[] = [
  {
    key: 'optic-neuritis',
    group: 'immune',
    label: 'Demyelinating optic neuritis',
    mondo: mondo('MONDO:0005885', 'optic neuritis'),
    produces: [
      at(['optic-nerve'], 'very-common'),
      at(['optic-chiasm'], 'uncommon'),
      // Both discs swell in some.
      at(['raised-intracranial-pressure'], 'rare'),
      at(['raised-intracranial-pressure'], 'uncommon'),
    ],
    tempo: tempos.acute,
    courses: { improving: 1.8, progressive: 0.5, 'relapsing-remitting': 1.5, static: 0.5 },
    // It worsens over days; loss that progresses for more than two weeks is atypical.
    durationDays: { to: 21, outside: 0.2, source: recalled('optic-neuritis-2022') },
    age: { from: 15, to: 50, outside: 0.25 },
    sex: { male: 0.5, female: 1.5 },
    history: [
      told('eye-pain', 5, 0.3),
      told(['multiple-sclerosis', 'optic-neuritis', 'family/multiple-sclerosis'], 5, 0.95),
      told(['paraesthesiae', 'numbness', 'electric-shock-on-neck-flexion', 'bladder-disturbance'], 1.8, 0.95),
      told(vascularRisk, 0.5, 1.2),
      told(['jaw-claudication', 'scalp-tenderness'], 0.1, 1.05),
      told('cancer', 0.4, 1.02),
      told(['trauma', 'head-injury', 'ethambutol'], 0.2, 1.02),
      told('red-eye', 0.25, 1.02),
      told('similar-attacks-before', 1.3, 1),
      told(['preceding-infection', 'recent-vaccination'], 1.2, 1),
      told(['morning-headache', 'vomiting'], 0.5, 1),
      told(['tnf-inhibitor', 'family/autoimmune-disease'], 1.8, 1),
    ],
    signs: [
      shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7),
      shows(['cranial-nerves/reduced-colour-vision'], 2, 0.5),
      shows(afferentDefect, 1.4, 0.4),
      shows(['cranial-nerves/central-scotoma'], 1.6, 0.9),
      shows(['cranial-nerves/altitudinal-field-defect'], 0.4, 1.1),
      shows(['inspection/proptosis', 'cranial-nerves/bitemporal-hemianopia'], 0.1, 1.02),
      shows(discPallor, 0.5, 1.1),
    ],
    sides: [
      sided(
        [
          'cranial-nerves/reduced-visual-acuity',
          'cranial-nerves/central-scotoma',
          'cranial-nerves/optic-disc-pallor',
          'cranial-nerves/monocular-field-defect',
        ],
        { one: 1.2, both: 0.5 },
      ),
    ],
    values: [
      reads('mri-brain', [
        ['demyelinating-lesions', 8],
        ['normal', 1],
        ['space-occupying', 0.1],
      ]),
      reads('visual-evoked-potentials', [
        ['delayed', 3],
        ['normal', 0.2],
      ]),
      reads('csf-oligoclonal-bands', [
        ['positive', 4],
        ['negative', 0.6],
      ]),
      reads('aquaporin-4-antibody', [
        ['positive', 0.03],
        ['negative', 1.1],
      ]),
      reads('mog-antibody', [
        ['positive', 0.05],
        ['negative', 1.1],
      ]),
    ],
    source: recalled('optic-neuritis-1991', 'pain in 92 %, women in 77 %, swollen disc in a third'),
  },
  {
    key: 'anterior-ischaemic-optic-neuropathy',
    group: 'vascular',
    label: 'Non-arteritic anterior ischaemic optic neuropathy',
    produces: [at(['optic-nerve'], 'very-common')],
    tempo: tempos.suddenOrAcute,
    courses: { progressive: 0.4, static: 1.5, improving: 0.8, 'relapsing-remitting': 0.1 },
    durationDays: { to: 60, outside: 0.5, source: fromMemory },
    age: { from: 50, to: 95, outside: 0.15 },
    history: [
      told(vascularRisk, 2, 0.4),
      told('eye-pain', 0.2, 1.3),
      told(['jaw-claudication', 'scalp-tenderness'], 0.1, 1.1),
      told('transient-visual-loss', 0.5, 1.05),
      told(['headache', 'new-headache'], 0.4, 1.1),
      told('recent-surgery', 2, 1),
      told(['amiodarone', 'chronic-kidney-disease', 'glaucoma'], 1.3, 1),
      told(['cancer', 'fever'], 0.6, 1),
    ],
    signs: [
      shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7),
      shows(discSwelling, 4, 0.12),
      shows(['cranial-nerves/altitudinal-field-defect'], 6, 0.7),
      shows(['inspection/temporal-artery-tenderness'], 0.1, 1.1),
      shows(['inspection/proptosis'], 0.1, 1.02),
    ],
    sides: [
      sided(
        [
          'cranial-nerves/reduced-visual-acuity',
          'cranial-nerves/central-scotoma',
          'cranial-nerves/optic-disc-pallor',
          'cranial-nerves/monocular-field-defect',
        ],
        { one: 1.2, both: 0.3 },
      ),
    ],
    quantities: [atLeast('esr', 50, 'mm/h', 0.25, 1.2), atLeast('crp', 25, 'mg/L', 0.2, 1.2)],
    values: [
      reads('mri-brain', [
        ['demyelinating-lesions', 0.15],
        ['normal', 1.3],
        ['space-occupying', 0.1],
      ]),
    ],
    source: ischaemicOptic,
  },
  {
    key: 'giant-cell-arteritis',
    group: 'immune',
    label: 'Giant cell arteritis',
    mondo: mondo('MONDO:0008538', 'temporal arteritis'),
    produces: [
      at(['optic-nerve'], 'common'),
      at(['retina', 'oculomotor-nerve', 'abducens-nerve', 'orbital-apex', 'no-lesion'], 'uncommon'),
      at(['trochlear-nerve', 'cavernous-sinus', 'ciliary-ganglion', 'oculosympathetic-chain'], 'rare'),
      at(
        ['meningeal-irritation', 'basal-meningeal-process', 'cortex-occipital', 'brainstem-diffuse', 'facial-nerve'],
        'rare',
      ),
    ],
    tempo: { hyperacute: 0.3, acute: 0.35, subacute: 0.3, chronic: 0.05 },
    courses: { progressive: 1.4, improving: 0.4 },
    age: { from: 50, to: 105, outside: 0.01 },
    sex: { male: 0.65, female: 1.35 },
    history: [
      told('jaw-claudication', 4.9, 0.7),
      told('scalp-tenderness', 3.5, 0.7),
      // These ratios are among people in whom it was suspected; of others hardly anybody has either.
      told(['jaw-claudication', 'scalp-tenderness'], 2.5, 1),
      told(['headache', 'new-headache'], 1.8, 0.35),
      told('new-headache', 2, 0.9),
      told('transient-visual-loss', 2.5, 0.85),
      told(['weight-loss', 'fever', 'night-sweats', 'fatigue'], 1.8, 0.7),
      told(['muscle-pain', 'stiffness', 'shoulder-pain'], 1.9, 0.85),
      told(['diabetes-mellitus', 'hypertension'], 0.8, 1.05),
      told(['diplopia', 'visual-loss', 'joint-pain'], 1.3, 1),
      told(['ear-pain', 'facial-pain', 'neck-pain', 'chronic-cough'], 1.2, 1),
      told(
        [
          'headache',
          'new-headache',
          'morning-headache',
          'visual-loss',
          'transient-visual-loss',
          'diplopia',
          'drooping-eyelids',
          'eye-pain',
          'jaw-claudication',
          'scalp-tenderness',
        ],
        1,
        0.12,
      ),
    ],
    signs: [
      shows(['cranial-nerves/reduced-visual-acuity'], 1.8, 0.8),
      shows(['inspection/temporal-artery-tenderness'], 4.7, 0.6),
      shows(discSwelling, 1.2, 0.8),
      shows(['cranial-nerves/optic-disc-pallor'], 1, 1),
      // That ratio is among people in whom it was suspected; of others hardly anybody has a tender artery.
      shows(['inspection/temporal-artery-tenderness'], 3, 1),
    ],
    sides: [sided(['cranial-nerves/reduced-visual-acuity'], { one: 1.1, both: 0.8 })],
    quantities: [
      atLeast('crp', 10, 'mg/L', 2.5, 0.08, gcaSigns),
      atLeast('esr', 50, 'mm/h', 3.5, 0.2, gcaSigns),
      atLeast('platelets', 400, '10*9/L', 3.75, 0.7, gcaSigns),
    ],
    source: recalled('gca-signs-2020', 'jaw claudication 4.9, thick temporal artery 4.7, platelets 3.8'),
  },
  {
    key: 'retinal-artery-occlusion',
    group: 'vascular',
    label: 'Occlusion of the retinal artery or its branch',
    produces: [at(['retina'], 'common'), at(['optic-nerve'], 'uncommon')],
    tempo: tempos.sudden,
    courses: { progressive: 0.1, static: 1.5, 'relapsing-remitting': 0.1 },
    age: { from: 45, to: 105, outside: 0.3 },
    history: [
      told(['hypertension', 'hyperlipidaemia', 'ischaemic-heart-disease', 'peripheral-arterial-disease'], 2, 0.5),
      told(['atrial-fibrillation', 'stroke', 'transient-ischaemic-attack'], 2.5, 0.9),
      told('transient-visual-loss', 3, 0.85),
      told('eye-pain', 0.15, 1.3),
      told('flashes-and-floaters', 0.2, 1.1),
      told(['headache', 'jaw-claudication', 'scalp-tenderness'], 0.5, 1),
      told(['diabetes-mellitus', 'tobacco', 'thrombophilia'], 1.3, 1),
    ],
    signs: [
      shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7),
      shows(afferentDefect, 3, 0.3),
      shows(discSwelling, 0.4, 1.1),
    ],
    sides: [
      sided(
        [
          'cranial-nerves/reduced-visual-acuity',
          'cranial-nerves/altitudinal-field-defect',
          'cranial-nerves/monocular-field-defect',
        ],
        { one: 1.2, both: 0.05 },
      ),
    ],
    values: [
      reads('angiography-head-neck', [
        ['stenosis', 4],
        ['occlusion', 4],
        ['normal', 0.7],
      ]),
    ],
    source: recalled('retinal-artery-2021'),
  },
  {
    key: 'retinal-disease',
    group: 'degenerative',
    label: 'Disease of the retina or macula (degeneration, detachment, vein occlusion, diabetic)',
    produces: [at(['retina'], 'very-common'), at(['optic-nerve'], 'uncommon')],
    tempo: { hyperacute: 0.15, acute: 0.2, subacute: 0.2, chronic: 0.45 },
    history: [
      told('retinal-disease', 12, 0.8),
      told('flashes-and-floaters', 8, 0.8),
      told('diabetes-mellitus', 2, 0.9),
      told(['hydroxychloroquine', 'chloroquine'], 6, 0.98),
      told('eye-pain', 0.25, 1.2),
      told(['jaw-claudication', 'scalp-tenderness'], 0.2, 1.02),
      told(['hypertension', 'corticosteroid'], 1.2, 1),
      told(['headache', 'new-headache'], 0.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7),
      shows(afferentDefect, 0.5, 1.4),
      shows(['cranial-nerves/reduced-colour-vision'], 0.8, 1.1),
      shows([...discSwelling, ...discPallor], 0.3, 1.1),
      shows(['cranial-nerves/monocular-field-defect', 'cranial-nerves/central-scotoma'], 1.3, 1),
    ],
    values: [
      reads('mri-brain', [
        ['normal', 1.3],
        ['space-occupying', 0.2],
      ]),
    ],
    source: localization,
  },
  {
    key: 'hereditary-retinal-dystrophy',
    group: 'hereditary',
    inheritance: ['autosomal-recessive', 'autosomal-dominant', 'x-linked', 'mitochondrial'],
    label: 'Hereditary retinal dystrophy (retinitis pigmentosa)',
    produces: [at(['retina'], 'uncommon')],
    tempo: tempos.lifelong,
    courses: { progressive: 1.6, improving: 0.05, 'relapsing-remitting': 0.05 },
    age: { from: 3, to: 45, outside: 0.3 },
    history: [
      told(['family/similar-disorder', 'family/consanguinity'], 8, 0.5),
      told('worse-in-the-dark', 4, 0.8),
      told('hearing-loss', 2, 0.95),
      told('eye-pain', 0.2, 1.1),
    ],
    signs: [shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7), shows(afferentDefect, 0.3, 1.2)],
    sides: [sided(['cranial-nerves/reduced-visual-acuity'], { one: 0.1, both: 1.5 })],
    source: localization,
  },
  {
    key: 'glaucoma',
    group: 'degenerative',
    label: 'Glaucoma',
    // The closed angle is met as a fixed wide pupil in an eye that hurts.
    produces: [
      at(['optic-nerve'], 'common'),
      at(['retina'], 'uncommon'),
      at(['oculomotor-nerve', 'ciliary-ganglion', 'no-lesion'], 'uncommon'),
      at(['cavernous-sinus', 'orbital-apex'], 'rare'),
    ],
    tempo: { hyperacute: 0.15, acute: 0.15, subacute: 0.1, chronic: 0.6 },
    courses: { progressive: 1.5, improving: 0.1, 'relapsing-remitting': 0.3 },
    age: { from: 40, to: 105, outside: 0.2 },
    history: [
      told('glaucoma', 25, 0.5),
      told('family/similar-disorder', 2, 0.95),
      told('red-eye', 8, 0.95),
      // Only the closed angle hurts.
      told('jaw-claudication', 0.5, 1.02),
      told('vomiting', 1.5, 1),
      told(['corticosteroid', 'eye-drops', 'anticholinergic'], 1.5, 1),
      told('fever', 0.3, 1),
    ],
    signs: [
      shows(['cranial-nerves/reduced-colour-vision', 'cranial-nerves/central-scotoma'], 0.3, 1.5),
      shows(discSwelling, 0.05, 1.2),
      shows(discPallor, 0.9, 1),
      // The pupil of a closed angle stands half wide.
      shows(['cranial-nerves/unreactive-pupil', 'cranial-nerves/dilated-pupil'], 2.5, 1),
      shows(
        [
          'cranial-nerves/third-nerve-palsy',
          'cranial-nerves/ptosis',
          'cranial-nerves/ophthalmoplegia',
          'inspection/proptosis',
        ],
        0.05,
        1,
      ),
    ],
    source: localization,
  },
  {
    key: 'leber-hereditary-optic-neuropathy',
    group: 'hereditary',
    inheritance: ['mitochondrial'],
    label: 'Leber hereditary optic neuropathy',
    produces: [at(['optic-nerve'], 'uncommon'), at(['optic-chiasm'], 'uncommon')],
    tempo: { hyperacute: 0.01, acute: 0.25, subacute: 0.64, chronic: 0.1 },
    courses: { improving: 0.3, 'relapsing-remitting': 0.1 },
    age: { from: 10, to: 45, outside: 0.25 },
    sex: { male: 1.6, female: 0.4 },
    history: [
      told('family/similar-disorder', 12, 0.5),
      told('eye-pain', 0.1, 1.5),
      told(['alcohol-excess', 'tobacco'], 1.6, 0.9),
      told('multiple-sclerosis', 0.3, 1.02),
    ],
    signs: [
      shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7),
      shows(['cranial-nerves/central-scotoma'], 3, 0.4),
      shows(afferentDefect, 0.6, 1.5),
      // The fibres to the pupil are spared: it goes on reacting in an eye that hardly sees.
      shows(['cranial-nerves/unreactive-pupil'], 0.3, 1.6),
      shows(['cranial-nerves/altitudinal-field-defect'], 0.1, 1.05),
    ],
    sides: [
      sided(
        [
          'cranial-nerves/reduced-visual-acuity',
          'cranial-nerves/central-scotoma',
          'cranial-nerves/optic-disc-pallor',
          'cranial-nerves/monocular-field-defect',
        ],
        { one: 0.7, both: 1.6 },
      ),
    ],
    values: [
      reads('genetic-test', [
        ['other', 60],
        ['negative', 0.1],
      ]),
      reads('mri-brain', [
        ['demyelinating-lesions', 0.2],
        ['normal', 1.4],
        ['space-occupying', 0.05],
      ]),
      reads('aquaporin-4-antibody', [['positive', 0.05]]),
    ],
    source: recalled('mitochondrial-optic-2009'),
  },
  {
    key: 'dominant-optic-atrophy',
    group: 'hereditary',
    inheritance: ['autosomal-dominant'],
    label: 'Autosomal dominant optic atrophy',
    produces: [at(['optic-nerve'], 'uncommon'), at(['optic-chiasm'], 'rare')],
    tempo: tempos.lifelong,
    courses: { progressive: 1.2, improving: 0.05, 'relapsing-remitting': 0.05 },
    age: { from: 3, to: 25, outside: 0.15 },
    history: [told('family/similar-disorder', 10, 0.3), told('hearing-loss', 2, 0.95), told('eye-pain', 0.1, 1.1)],
    signs: [
      shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7),
      shows(discPallor, 5, 0.2),
      shows(afferentDefect, 0.3, 1.4),
      shows(['cranial-nerves/reduced-colour-vision'], 1.6, 0.7),
    ],
    sides: [
      sided(
        [
          'cranial-nerves/reduced-visual-acuity',
          'cranial-nerves/central-scotoma',
          'cranial-nerves/optic-disc-pallor',
          'cranial-nerves/monocular-field-defect',
        ],
        { one: 0.1, both: 1.5 },
      ),
    ],
    values: [
      reads('genetic-test', [
        ['other', 60],
        ['negative', 0.2],
      ]),
      reads('mri-brain', [
        ['space-occupying', 0.05],
        ['normal', 1.3],
      ]),
    ],
    source: recalled('mitochondrial-optic-2009', 'dominant optic atrophy'),
  },
  {
    key: 'toxic-or-nutritional-optic-neuropathy',
    group: 'toxic',
    label: 'Toxic or nutritional optic neuropathy',
    produces: [at(['optic-nerve'], 'uncommon'), at(['optic-chiasm'], 'rare')],
    tempo: { hyperacute: 0.05, acute: 0.27, subacute: 0.48, chronic: 0.2 },
    courses: { 'relapsing-remitting': 0.05 },
    history: [
      // Methanol is a solvent; it blinds within a day or two.
      told(['organic-solvents', 'ethambutol', 'linezolid', 'amiodarone', 'isoniazid', 'disulfiram'], 20, 0.4),
      told(
        [
          'alcohol-excess',
          'malnutrition',
          'bariatric-surgery',
          'malabsorption',
          'gastrectomy',
          'vegan-diet',
          'vitamin-b12-deficiency',
        ],
        6,
        0.5,
      ),
      told('tobacco', 2, 0.7),
      told('eye-pain', 0.1, 1.4),
      told('burning-feet', 2, 0.95),
      told(['metronidazole', 'tacrolimus', 'chloroquine', 'methotrexate'], 1.6, 1),
      told(['hearing-loss', 'paraesthesiae'], 1.3, 1),
      told('vomiting', 1.2, 1),
    ],
    signs: [
      shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7),
      shows(['cranial-nerves/central-scotoma', 'cranial-nerves/reduced-colour-vision'], 2, 0.3),
      shows(afferentDefect, 0.25, 1.6),
      shows(['cranial-nerves/altitudinal-field-defect'], 0.15, 1.05),
      shows(discSwelling, 0.4, 1.1),
      shows(['cranial-nerves/unreactive-pupil', 'cranial-nerves/dilated-pupil'], 1.5, 1),
    ],
    sides: [
      sided(
        [
          'cranial-nerves/reduced-visual-acuity',
          'cranial-nerves/central-scotoma',
          'cranial-nerves/optic-disc-pallor',
          'cranial-nerves/monocular-field-defect',
        ],
        { one: 0.2, both: 1.6 },
      ),
    ],
    values: [
      reads('mri-brain', [
        ['space-occupying', 0.05],
        ['normal', 1.3],
        ['demyelinating-lesions', 0.2],
      ]),
    ],
    source: recalled('toxic-optic-2011'),
  },
  {
    key: 'optic-disc-drusen',
    group: 'hereditary',
    label: 'Drusen of the optic disc',
    produces: [at(['raised-intracranial-pressure', 'optic-nerve'], 'uncommon')],
    tempo: tempos.lifelong,
    courses: { static: 2, progressive: 0.4, 'relapsing-remitting': 0.3 },
    history: [
      told(['headache', 'new-headache', 'morning-headache', 'vomiting', 'diplopia'], 0.3, 1.8),
      told(['visual-loss', 'pulsatile-tinnitus'], 0.4, 1.5),
      told('eye-pain', 0.3, 1.1),
    ],
    signs: [shows(discSwelling, 2, 0.1), shows(['cranial-nerves/sixth-nerve-palsy', ...afferentDefect], 0.3, 1.1)],
    quantities: [atLeast('csf-opening-pressure', 25, 'cm[H2O]', 0.1, 2.5, recalled('iih-consensus-2018'))],
    values: [
      reads('mri-brain', [
        ['normal', 2],
        ['space-occupying', 0.05],
        ['hydrocephalus', 0.05],
        ['venous-thrombosis', 0.05],
      ]),
    ],
    source: localization,
  },
];
