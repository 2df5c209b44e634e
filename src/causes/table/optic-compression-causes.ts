import { recalled } from '../../kernel/cite.ts';
import { at, type Cause, reads, shows, sided, tempos, told, under } from './cause.ts';
import { eyeMusclePalsies, signsOfAnOpticNerve } from './sided-signs.ts';

const localization = recalled('brazis', 'visual pathways');
const discSwelling = ['cranial-nerves/optic-disc-swelling'];
const discPallor = ['cranial-nerves/optic-disc-pallor'];
const afferentDefect = ['cranial-nerves/relative-afferent-pupillary-defect'];
const endocrine = ['amenorrhoea-or-galactorrhoea', 'sexual-dysfunction', 'acromegaly', 'hypothyroidism'];
const massOnScan = reads('mri-brain', [
  ['space-occupying', 15],
  ['normal', 0.03],
]);

/** Causes that press on optic nerve and chiasm or injure them. */
export const opticCompressionCauses: readonly Cause[] = [
  {
    key: 'compressive-optic-neuropathy',
    group: 'compressive',
    label: 'Compression of the optic nerve (meningioma, glioma, aneurysm, mucocele)',
    produces: [
      at(['optic-nerve'], 'common'),
      at(['orbital-apex'], 'uncommon'),
      at(['optic-chiasm', 'cavernous-sinus'], 'rare'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.1, subacute: 0.28, chronic: 0.6 },
    courses: { progressive: 2.2, improving: 0.05, 'relapsing-remitting': 0.1, static: 0.4 },
    history: [
      told('night-blindness', 0.4, 1),
      told(['headache', 'new-headache', 'morning-headache'], 1.3, 0.9),
      told('eye-pain', 0.5, 1.15),
      told(['cancer', 'lymphoma'], 3, 0.95),
      told(['jaw-claudication', 'scalp-tenderness'], 0.2, 1.02),
      told('loss-of-smell', 3, 0.98),
      told(['sinus-or-ear-infection', 'pituitary-tumour', 'radiotherapy'], 1.8, 1),
      told('transient-visual-loss', 1.6, 1),
      told('neurofibromatosis', 8, 1),
      told(['pregnancy', 'hormonal-contraceptive'], 1.4, 1),
      told(['diabetes-mellitus', 'alcohol-excess', 'ethambutol'], 0.7, 1),
    ],
    signs: [
      shows(['cranial-nerves/monocular-nystagmus'], 3, 1),
      shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7),
      shows(discPallor, 2.5, 0.6),
      shows(afferentDefect, 1.5, 0.4),
      shows(['inspection/proptosis'], 6, 0.85),
      shows(['inspection/cafe-au-lait-spots', 'inspection/neurofibromas'], 5, 0.98),
      shows(['cranial-nerves/altitudinal-field-defect'], 0.6, 1.05),
    ],
    sides: [sided(signsOfAnOpticNerve, { one: 1.3, both: 0.4 })],
    values: [massOnScan],
    source: localization,
  },
  {
    key: 'traumatic-optic-neuropathy',
    group: 'traumatic',
    label: 'Traumatic optic neuropathy',
    produces: [at(['optic-nerve'], 'uncommon'), at(['optic-chiasm', 'optic-tract'], 'rare')],
    tempo: tempos.sudden,
    courses: { progressive: 0.15, 'relapsing-remitting': 0.02 },
    history: [told(['head-injury', 'trauma'], 40, 0.02), told('recent-surgery', 3, 1)],
    signs: [shows(['cranial-nerves/reduced-visual-acuity'], 2, 0.7)],
    source: localization,
  },
  {
    key: 'pituitary-tumour',
    group: 'neoplastic',
    label: 'Pituitary tumour',
    produces: [
      at(['optic-chiasm'], 'very-common'),
      at(['optic-tract'], 'common'),
      at(['cavernous-sinus', 'optic-nerve'], 'uncommon'),
      at(['oculomotor-nerve'], 'rare'),
      at(['abducens-nerve', 'raised-intracranial-pressure', 'no-lesion', 'cortex-temporal'], 'rare'),
      at(['orbital-apex'], 'exceptional'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 2, improving: 0.1, 'relapsing-remitting': 0.1 },
    age: { from: 20, to: 85, outside: 0.3 },
    history: [
      told('pituitary-tumour', 15, 0.95),
      told(endocrine, 4, 0.5),
      told(['headache', 'new-headache', 'morning-headache'], 1.5, 0.8),
      told('thunderclap-headache', 0.2, 1.02),
      told(['fatigue', 'weight-loss', 'carpal-tunnel-syndrome', 'sleep-apnoea'], 1.4, 0.95),
      told('visual-loss', 1.3, 0.9),
      told(['fever', 'eye-pain'], 0.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/bitemporal-hemianopia'], 5, 0.4),
      shows(discSwelling, 0.3, 1.05),
      shows(discPallor, 1.4, 0.9),
    ],
    values: [massOnScan],
    source: localization,
  },
  {
    key: 'pituitary-apoplexy',
    group: 'vascular',
    label: 'Pituitary apoplexy',
    produces: [
      at(['optic-nerve', 'abducens-nerve', 'orbital-apex'], 'rare'),
      at(['optic-chiasm', 'cavernous-sinus'], 'common'),
      at(['meningeal-irritation', 'raised-intracranial-pressure'], 'rare'),
      at(['oculomotor-nerve'], 'uncommon'),
      at(['diffuse-encephalopathy'], 'rare'),
      at(['optic-tract', 'trochlear-nerve', 'brainstem-diffuse', 'basal-meningeal-process'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.7, acute: 0.28, subacute: 0.01, chronic: 0.01 },
    courses: { progressive: 1.2, 'relapsing-remitting': 0.05 },
    age: { from: 25, to: 85, outside: 0.4 },
    sex: { male: 1.2, female: 0.8 },
    history: [
      told(['thunderclap-headache', 'new-headache'], 3.5, 0.9),
      told(['thunderclap-headache', 'new-headache', 'headache', 'eye-pain', 'facial-pain'], 1.9, 0.16),
      told('vomiting', 2.2, 0.6),
      told('pituitary-tumour', 20, 0.95),
      told(endocrine, 2.5, 0.8),
      told(['anticoagulant', 'dopamine-agonist', 'recent-surgery'], 2, 0.98),
      // The gland swells to twice its size, and starves where blood is lost at the birth.
      told('pregnancy', 3, 1),
      told(['fever', 'photophobia', 'hypertension', 'head-injury', 'loss-of-consciousness'], 1.2, 1),
      told(['visual-loss', 'diplopia'], 1.6, 0.6),
      told(['numbness', 'weakness', 'vertigo', 'unsteadiness'], 0.6, 1),
    ],
    signs: [
      shows(['cranial-nerves/bitemporal-hemianopia'], 4, 0.6),
      shows(
        ['cranial-nerves/ophthalmoplegia', 'cranial-nerves/third-nerve-palsy', 'cranial-nerves/sixth-nerve-palsy'],
        1.8,
        0.7,
      ),
      shows(
        [
          'higher-function/drowsiness',
          'higher-function/stupor',
          'higher-function/confusion',
          'higher-function/fluctuating-consciousness',
        ],
        2,
        0.9,
      ),
      shows(['inspection/proptosis', 'inspection/chemosis', 'inspection/periorbital-oedema'], 0.3, 1),
      shows(['special-tests/neck-stiffness', 'cranial-nerves/ptosis'], 1.3, 1),
      shows(['cranial-nerves/reduced-visual-acuity'], 1.8, 0.8),
    ],
    sides: [sided(eyeMusclePalsies, { one: 0.9, both: 2 })],
    quantities: [
      {
        result: 'cortisol',
        unit: 'nmol/L',
        threshold: 100,
        met: 'below',
        whenMet: 8,
        whenNot: 0.6,
        source: recalled('pituitary-apoplexy-2011'),
      },
      under('sodium', 130, 'mmol/L', 2.5, 0.9),
    ],
    values: [
      reads('mri-brain', [
        ['haemorrhage', 6],
        ['space-occupying', 6],
        ['normal', 0.05],
      ]),
    ],
    source: recalled('pituitary-apoplexy-2011'),
  },
  {
    key: 'suprasellar-tumour',
    group: 'neoplastic',
    label: 'Suprasellar tumour (craniopharyngioma, meningioma, glioma)',
    produces: [
      at(['optic-chiasm', 'optic-tract'], 'common'),
      at(['optic-nerve', 'raised-intracranial-pressure'], 'uncommon'),
      at(['diffuse-encephalopathy', 'oculomotor-nerve', 'cortex-frontal', 'frontal-gait-disorder'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.08, subacute: 0.25, chronic: 0.65 },
    courses: { progressive: 2, improving: 0.1, 'relapsing-remitting': 0.1 },
    history: [
      told(['headache', 'new-headache', 'morning-headache'], 1.8, 0.7),
      told(['amenorrhoea-or-galactorrhoea', 'sexual-dysfunction', 'hypothyroidism'], 2, 0.8),
      told('polyuria', 6, 0.95),
      told('vomiting', 2, 0.9),
      told('acromegaly', 0.05, 1),
      told(['visual-loss', 'behaviour-change', 'cognitive-change', 'obesity', 'fatigue'], 1.3, 1),
      told('eye-pain', 0.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/bitemporal-hemianopia'], 3, 0.6),
      // What does not grow from the sella itself lies to one side, and so on one nerve.
      shows(['cranial-nerves/relative-afferent-pupillary-defect', 'cranial-nerves/central-scotoma'], 2, 0.8),
      shows(discSwelling, 2.5, 0.9),
      shows(discPallor, 1.6, 0.8),
    ],
    values: [massOnScan],
    source: localization,
  },
];
