import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, type Cause, reads, shows, sided, tempos, told, under } from './cause.ts';
import { signsOfAnOpticNerve } from './sided-signs.ts';

const visualPathways = recalled('brazis', 'visual pathways');
const ocularMotor = recalled('brazis', 'ocular motor system');
const afferentDefect = ['cranial-nerves/relative-afferent-pupillary-defect'];
const discOfDisease = ['cranial-nerves/optic-disc-swelling', 'cranial-nerves/optic-disc-pallor'];
const injury = ['trauma', 'head-injury'];

/** There since birth or the first years, whenever it is noticed. */
const sinceBirth = { hyperacute: 0.005, acute: 0.005, subacute: 0.02, chronic: 0.97 } as const;

/** Rarer causes of loss of sight, of eyes out of line and of unequal pupils. */
export const otherEyeCauses: readonly Cause[] = [
  {
    key: 'neuroretinitis',
    group: 'infective',
    label: 'Neuroretinitis (cat-scratch disease or another infection of the optic disc)',
    produces: [at(['optic-nerve', 'retina'], 'rare')],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 0.5, improving: 1.3 },
    age: { from: 5, to: 50, outside: 0.4 },
    history: [
      told('animal-bite', 12, 0.7),
      told(['fever', 'preceding-infection', 'fatigue', 'headache'], 1.8, 0.8),
      told('eye-pain', 0.6, 1.2),
      told(['multiple-sclerosis', 'diabetes-mellitus', 'hypertension'], 0.4, 1),
      told(['hiv-infection', 'tick-bite', 'syphilis'], 1.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/macular-star'], 50, 0.35),
      shows(['cranial-nerves/optic-disc-swelling'], 3, 0.1),
      shows(['inspection/enlarged-lymph-nodes'], 4, 1),
    ],
    sides: [
      sided(['cranial-nerves/reduced-visual-acuity', 'cranial-nerves/optic-disc-swelling'], { one: 1.2, both: 0.4 }),
    ],
    source: visualPathways,
  },
  {
    key: 'uveitis-or-vogt-koyanagi-harada',
    group: 'immune',
    label: 'Uveitis or Vogt-Koyanagi-Harada disease',
    produces: [
      at(['retina'], 'uncommon'),
      at(['optic-nerve', 'meningeal-irritation'], 'rare'),
      at(['cochlear-nerve'], 'exceptional'),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { 'relapsing-remitting': 1.6 },
    age: { from: 12, to: 65, outside: 0.5 },
    history: [
      told('red-eye', 5, 0.4),
      told(['photophobia', 'flashes-and-floaters'], 3, 0.7),
      told(['headache', 'tinnitus', 'hearing-loss'], 1.6, 0.9),
      told(
        [
          'ankylosing-spondylitis',
          'sarcoidosis',
          'inflammatory-bowel-disease',
          'oral-or-genital-ulcers',
          'joint-pain',
          'hair-loss',
          'tuberculosis',
          'immune-checkpoint-inhibitor',
        ],
        2.5,
        0.9,
      ),
      told([...injury, 'sinus-or-ear-infection'], 0.5, 1),
    ],
    signs: [
      shows([...afferentDefect, 'cranial-nerves/dilated-pupil'], 0.4, 1.1),
      shows(['cranial-nerves/ophthalmoplegia', 'inspection/proptosis', 'cranial-nerves/third-nerve-palsy'], 0.1, 1.05),
    ],
    source: visualPathways,
  },
  {
    key: 'paraneoplastic-retinopathy',
    group: 'paraneoplastic',
    label: 'Retinopathy or optic neuropathy of a distant cancer',
    produces: [at(['retina', 'optic-nerve'], 'rare')],
    tempo: tempos.subacute,
    courses: { progressive: 1.6, improving: 0.2, 'relapsing-remitting': 0.2 },
    age: { from: 45, to: 90, outside: 0.3 },
    history: [
      told('night-blindness', 4, 0.8),
      told('cancer', 8, 0.6),
      told('flashes-and-floaters', 3, 0.8),
      told(['tobacco', 'weight-loss', 'recent-weight-loss'], 2, 0.9),
      told('eye-pain', 0.2, 1.2),
    ],
    signs: [
      shows(['cranial-nerves/constricted-visual-field', 'cranial-nerves/central-scotoma'], 1.6, 0.9),
      shows(['cranial-nerves/opsoclonus', 'gait/ataxic'], 2, 1),
    ],
    sides: [sided(signsOfAnOpticNerve, { one: 0.3, both: 1.6 })],
    values: [reads('paraneoplastic-antibody', [['positive', 12]])],
    source: visualPathways,
  },
  {
    key: 'functional-visual-loss',
    group: 'functional',
    label: 'Functional loss of vision',
    produces: [at(['retina', 'optic-nerve', 'no-lesion'], 'uncommon'), at(['cortex-occipital'], 'rare')],
    tempo: { hyperacute: 0.35, acute: 0.3, subacute: 0.2, chronic: 0.15 },
    courses: { fluctuating: 2, progressive: 0.5 },
    age: { from: 6, to: 60, outside: 0.5 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told(['visual-loss', 'transient-visual-loss'], 1.2, 0.2),
      told(['functional-disorder', 'psychiatric-disorder'], 4, 0.5),
      told(['hypertension', 'diabetes-mellitus', 'cancer', 'alcohol-excess', 'glaucoma', 'retinal-disease'], 0.4, 1.1),
      told(['eye-pain', 'red-eye', 'jaw-claudication', 'flashes-and-floaters'], 0.5, 1),
    ],
    signs: [
      shows(['special-tests/hoover', 'special-tests/midline-splitting', 'special-tests/give-way-weakness'], 6, 1),
      shows(['cranial-nerves/constricted-visual-field'], 2, 0.9),
      shows([...afferentDefect, 'cranial-nerves/unreactive-pupil', 'cranial-nerves/sluggish-pupil'], 0.05, 1.5),
      shows([...discOfDisease, 'cranial-nerves/cherry-red-spot', 'cranial-nerves/macular-star'], 0.05, 1.4),
      shows(['cranial-nerves/altitudinal-field-defect', 'cranial-nerves/central-scotoma'], 0.3, 1),
    ],
    values: [
      reads('visual-evoked-potentials', [
        ['normal', 6],
        ['delayed', 0.2],
        ['absent', 0.3],
      ]),
      reads('mri-brain', [
        ['normal', 1.5],
        ['space-occupying', 0.1],
        ['infarct', 0.2],
      ]),
    ],
    source: visualPathways,
  },
  {
    key: 'hypophysitis',
    group: 'immune',
    label: 'Inflammation of the pituitary gland (hypophysitis)',
    produces: [
      at(['optic-chiasm'], 'rare'),
      at(
        ['optic-nerve', 'cavernous-sinus', 'raised-intracranial-pressure', 'oculomotor-nerve', 'abducens-nerve'],
        'exceptional',
      ),
    ],
    tempo: tempos.subacute,
    age: { from: 18, to: 75, outside: 0.4 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told('immune-checkpoint-inhibitor', 20, 1),
      told('pregnancy', 5, 0.95),
      told('polyuria', 5, 0.8),
      told(['headache', 'new-headache'], 2, 0.4),
      told(
        ['fatigue', 'amenorrhoea-or-galactorrhoea', 'hypothyroidism', 'weight-loss', 'family/autoimmune-disease'],
        2,
        0.7,
      ),
      told(['sarcoidosis', 'acromegaly'], 0.5, 1),
      told('thunderclap-headache', 0.3, 1),
    ],
    quantities: [under('cortisol', 100, 'nmol/L', 5, 0.7), under('sodium', 132, 'mmol/L', 2, 0.9)],
    values: [
      reads('mri-brain', [
        ['space-occupying', 4],
        ['normal', 0.2],
      ]),
    ],
    source: fromMemory,
  },
  {
    key: 'wolfram-syndrome',
    group: 'hereditary',
    inheritance: ['autosomal-recessive'],
    label: 'Wolfram syndrome (diabetes, optic atrophy and deafness)',
    produces: [at(['optic-nerve'], 'rare'), at(['optic-chiasm', 'retina'], 'exceptional')],
    tempo: tempos.lifelong,
    courses: { progressive: 1.6, improving: 0.05 },
    age: { from: 3, to: 25, outside: 0.1 },
    history: [
      told('diabetes-mellitus', 15, 0.1),
      told('polyuria', 3, 0.9),
      told('hearing-loss', 4, 0.7),
      told(['family/similar-disorder', 'family/consanguinity'], 3, 0.8),
      told(['bladder-disturbance', 'unsteadiness', 'psychiatric-disorder'], 1.6, 1),
      told('eye-pain', 0.2, 1.05),
    ],
    signs: [shows(['cranial-nerves/optic-disc-pallor'], 4, 0.3), shows(['cranial-nerves/hearing-loss'], 4, 0.7)],
    sides: [sided(signsOfAnOpticNerve, { one: 0.1, both: 1.5 })],
    source: recalled('mitochondrial-optic-2009'),
  },
  {
    key: 'optic-nerve-hypoplasia',
    group: 'hereditary',
    label: 'Optic nerve that is small or malformed from birth',
    produces: [at(['optic-nerve'], 'rare')],
    tempo: sinceBirth,
    courses: { static: 2, progressive: 0.1, 'relapsing-remitting': 0.02, improving: 0.3 },
    age: { from: 0, to: 8, outside: 0.1 },
    history: [
      told(['developmental-delay', 'perinatal-injury'], 2.5, 0.8),
      told(['eye-pain', 'headache', 'vomiting', 'fever'], 0.2, 1.1),
    ],
    signs: [
      shows(['cranial-nerves/pendular-nystagmus', 'cranial-nerves/nystagmus', 'cranial-nerves/esotropia'], 3, 0.8),
      shows(['cranial-nerves/optic-disc-swelling', 'inspection/proptosis'], 0.1, 1.05),
    ],
    source: visualPathways,
  },
  {
    key: 'congenital-misinnervation-of-eye-muscles',
    group: 'hereditary',
    inheritance: ['autosomal-dominant'],
    label: 'Eye muscles that were wrongly wired at birth (Duane syndrome, congenital fibrosis, congenital palsy)',
    produces: [
      at(['abducens-nerve'], 'uncommon'),
      at(['oculomotor-nerve'], 'rare'),
      at(['orbital-apex', 'postsynaptic-junction', 'pons-tegmentum'], 'exceptional'),
    ],
    tempo: sinceBirth,
    courses: { static: 2.5, progressive: 0.1, improving: 0.1, 'relapsing-remitting': 0.02, fluctuating: 0.1 },
    // It is noticed late where nothing doubles.
    age: { from: 0, to: 14, outside: 0.1 },
    history: [
      told('diplopia', 0.3, 1.8),
      told(['headache', 'vomiting', 'eye-pain', 'preceding-infection', ...injury], 0.15, 1.3),
      told('family/similar-disorder', 2, 0.95),
    ],
    signs: [
      shows(['inspection/enophthalmos', 'inspection/head-tilt'], 2, 1),
      shows(['cranial-nerves/optic-disc-swelling', 'cranial-nerves/dilated-pupil'], 0.15, 1.05),
    ],
    source: ocularMotor,
  },
  {
    key: 'sagging-eye-syndrome',
    group: 'degenerative',
    label: 'Double vision of age from slack eye muscle bands (divergence insufficiency, sagging eye)',
    produces: [
      at(['abducens-nerve'], 'uncommon'),
      at(['trochlear-nerve', 'postsynaptic-junction', 'oculopharyngeal-myopathy'], 'rare'),
      at(['no-lesion'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { static: 1.4, improving: 0.2 },
    age: { from: 60, to: 105, outside: 0.08 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told('diplopia', 1.4, 0.5),
      told(['headache', 'eye-pain', 'jaw-claudication', 'diabetes-mellitus', 'cancer'], 0.3, 1.3),
    ],
    signs: [
      shows(['cranial-nerves/esotropia', 'cranial-nerves/hypertropia'], 3, 0.8),
      shows(['cranial-nerves/sixth-nerve-palsy', 'cranial-nerves/third-nerve-palsy'], 0.4, 1.2),
      // The lids and the fat of the orbit sag as well.
      shows(['inspection/enophthalmos'], 6, 1),
      shows(['cranial-nerves/ptosis'], 1.5, 0.9),
      shows(['inspection/proptosis', 'cranial-nerves/lid-retraction', 'cranial-nerves/facial-numbness'], 0.1, 1.05),
    ],
    source: ocularMotor,
  },
  {
    key: 'physiological-anisocoria',
    group: 'functional',
    label: 'Pupils unequal by nature',
    produces: [at(['ciliary-ganglion', 'oculosympathetic-chain', 'no-lesion'], 'rare')],
    tempo: sinceBirth,
    courses: { static: 2, fluctuating: 2, progressive: 0.05 },
    history: [
      told(['eye-pain', 'headache', 'neck-pain', 'diplopia', 'drooping-eyelids', 'photophobia'], 0.1, 1.6),
      told(
        ['eye-drops', 'anticholinergic', 'beta-agonist', 'neck-or-chest-surgery', 'neck-trauma', 'tobacco', ...injury],
        0.3,
        1.2,
      ),
    ],
    signs: [
      shows(['cranial-nerves/anisocoria'], 3, 0.4),
      shows(
        [
          'cranial-nerves/unreactive-pupil',
          'cranial-nerves/sluggish-pupil',
          'cranial-nerves/tonic-pupil',
          'cranial-nerves/light-near-dissociation',
          'cranial-nerves/ptosis',
          'cranial-nerves/horner-syndrome',
        ],
        0.03,
        1.5,
      ),
    ],
    source: recalled('brazis', 'pupil'),
  },
  {
    key: 'infantile-nystagmus',
    group: 'hereditary',
    inheritance: ['x-linked', 'autosomal-dominant', 'autosomal-recessive'],
    label: 'Nystagmus since infancy',
    produces: [
      at(['flocculonodular-lobe', 'no-lesion'], 'rare'),
      at(['cerebellar-vermis', 'brainstem-diffuse', 'vestibular-nerve'], 'exceptional'),
    ],
    tempo: sinceBirth,
    courses: { static: 2.5, progressive: 0.05, 'relapsing-remitting': 0.02 },
    age: { from: 0, to: 2, outside: 0.03 },
    sex: { male: 1.3, female: 0.7 },
    history: [
      told('oscillopsia', 0.2, 1.3),
      told(['vertigo', 'unsteadiness', 'vomiting', 'headache', 'loss-of-skills', 'weight-loss'], 0.15, 1.3),
      told('family/similar-disorder', 2.5, 0.95),
    ],
    signs: [
      shows(['cranial-nerves/pendular-nystagmus', 'cranial-nerves/nystagmus'], 4, 0.3),
      shows(['inspection/head-tilt', 'inspection/titubation'], 1.6, 1),
      shows(['gait/ataxic', 'cranial-nerves/opsoclonus', 'cranial-nerves/vertical-nystagmus'], 0.2, 1.1),
    ],
    source: ocularMotor,
  },
];
