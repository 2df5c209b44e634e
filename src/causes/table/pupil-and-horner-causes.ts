import { fromMemory, recalled } from '../../kernel/cite.ts';
import { at, type Cause, reads, shows, showsAt, sided, tempos, told } from './cause.ts';

const ophthalmology = recalled('brazis', 'ocular motor system');
const largePupil = ['cranial-nerves/dilated-pupil', 'cranial-nerves/unreactive-pupil', 'cranial-nerves/sluggish-pupil'];
const bulgingEye = ['inspection/proptosis'];
const injury = ['trauma', 'head-injury', 'neck-trauma'];

/** Causes of disease of the pupil and of its sympathetic supply, and headaches that go with them. */
export const pupilAndHornerCauses: readonly Cause[] = [
  {
    key: 'carotid-dissection',
    group: 'vascular',
    label: 'Dissection of the internal carotid artery',
    produces: [
      at(['jugular-foramen', 'vagus-nerve'], 'common'),
      at(['optic-nerve'], 'rare'),
      at(['oculosympathetic-chain'], 'very-common'),
      at(['hypoglossal-nerve'], 'common'),
      at(['retina'], 'uncommon'),
      at(
        [
          'oculomotor-nerve',
          'abducens-nerve',
          'trigeminal-nerve',
          'basal-meningeal-process',
          'no-lesion',
          'ophthalmic-nerve',
        ],
        'exceptional',
      ),
      at(['spinal-accessory-nerve', 'recurrent-laryngeal-nerve', 'cavernous-sinus'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.45, acute: 0.35, subacute: 0.16, chronic: 0.04 },
    courses: { progressive: 0.6, 'relapsing-remitting': 0.2 },
    durationDays: { to: 45, outside: 0.4, source: fromMemory },
    age: { from: 20, to: 65, outside: 0.35 },
    history: [
      told(['neck-pain', 'facial-pain', 'headache', 'new-headache', 'eye-pain'], 4, 0.12),
      told(['neck-trauma', 'trauma', 'heavy-exertion'], 3, 0.75),
      told('pulsatile-tinnitus', 5, 0.85),
      told('transient-visual-loss', 3, 0.9),
      told('migraine', 1.5, 0.95),
      told(['cancer', 'tobacco'], 0.6, 1.05),
      told(['tinnitus', 'ear-pain', 'dysphagia'], 1.3, 1),
      told('fever', 0.5, 1),
      told('family/aneurysm', 1.4, 1),
      told(['preceding-infection', 'recent-vaccination'], 1.2, 1),
      told(['transient-ischaemic-attack', 'pregnancy', 'voice-change', 'slurred-speech'], 1.3, 1),
    ],
    signs: [
      shows(['cranial-nerves/tongue-deviation'], 2, 1),
      shows(['cranial-nerves/horner-syndrome'], 2, 0.6),
      shows(['autonomic/anhidrosis'], 0.7, 1.05),
    ],
    sides: [
      sided(
        [
          'cranial-nerves/horner-syndrome',
          'cranial-nerves/vocal-cord-paralysis',
          'cranial-nerves/palatal-weakness',
          'cranial-nerves/tongue-weakness',
        ],
        { one: 1, both: 0.2 },
      ),
    ],
    values: [
      reads('angiography-head-neck', [
        ['dissection', 60],
        ['normal', 0.05],
      ]),
    ],
    source: recalled('cervical-dissection-2009'),
  },
  {
    key: 'apical-lung-tumour',
    group: 'neoplastic',
    label: 'Tumour of the lung apex (Pancoast tumour)',
    produces: [
      at(['oculosympathetic-chain'], 'common'),
      at(['lower-trunk', 'medial-cord'], 'common'),
      at(['nerve-root'], 'rare', 'cervical'),
      at(['recurrent-laryngeal-nerve'], 'uncommon'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 2, improving: 0.05, 'relapsing-remitting': 0.1 },
    age: { from: 45, to: 90, outside: 0.05 },
    sex: { male: 1.3, female: 0.7 },
    history: [
      // Nine of ten with cancer of the lung have smoked, but so has every other man of that age (from memory).
      told('tobacco', 1.8, 0.25),
      told(['arm-pain', 'shoulder-pain', 'radicular-arm-pain'], 4, 0.3),
      told(['weight-loss', 'recent-weight-loss'], 3, 0.6),
      told('cancer', 3, 0.9),
      told('voice-change', 1.8, 0.95),
      told(['eye-pain', 'headache'], 0.5, 1.05),
      told(['neck-or-chest-surgery', 'neck-trauma'], 0.4, 1.05),
    ],
    signs: [
      shows(['cranial-nerves/horner-syndrome'], 2, 0.6),
      shows(['power/finger-abduction', 'power/thumb-abduction', 'inspection/wasting'], 1.6, 0.7),
      shows(['autonomic/anhidrosis'], 2, 0.9),
    ],
    values: [
      reads('ct-chest', [
        ['tumour', 30],
        ['normal', 0.03],
      ]),
      reads('mri-brachial-plexus', [
        ['mass', 15],
        ['normal', 0.1],
      ]),
    ],
    source: recalled('horner-1980', 'tumours among preganglionic lesions'),
  },
  {
    key: 'neck-or-chest-surgery-or-mass-with-horner',
    group: 'traumatic',
    label: 'Horner syndrome from an operation, catheter or mass in neck or chest',
    produces: [at(['oculosympathetic-chain'], 'very-common'), at(['lower-trunk'], 'exceptional')],
    tempo: { hyperacute: 0.4, acute: 0.2, subacute: 0.25, chronic: 0.15 },
    history: [
      // A block of the plexus or an epidural reaches the chain for some hours.
      told(
        [
          'neck-or-chest-surgery',
          'recent-surgery',
          'spinal-surgery',
          'needle-near-nerve',
          'lumbar-puncture-or-epidural',
        ],
        12,
        0.35,
      ),
      told(['face-or-neck-lump', 'lymphoma'], 8, 0.7),
      told(['trauma', 'neck-trauma'], 1.6, 0.9),
      told(['eye-pain', 'headache', 'new-headache', 'neck-pain'], 0.35, 1.3),
      told('critical-illness', 3, 0.95),
    ],
    signs: [
      shows(['cranial-nerves/horner-syndrome'], 2, 0.5),
      shows(['autonomic/anhidrosis'], 1.6, 0.9),
      shows(['inspection/enlarged-lymph-nodes'], 3, 0.95),
      showsAt(['inspection/palpable-mass'], ['neck'], 4, 1),
    ],
    source: recalled('horner-1980', 'operations and tumours among 270 cases of known cause'),
  },
  {
    key: 'congenital-horner-syndrome',
    group: 'traumatic',
    label: 'Congenital Horner syndrome',
    produces: [at(['oculosympathetic-chain'], 'uncommon')],
    tempo: { hyperacute: 0.005, acute: 0.005, subacute: 0.01, chronic: 0.98 },
    courses: { static: 2.5, progressive: 0.1, 'relapsing-remitting': 0.05 },
    age: { from: 0, to: 3, outside: 0.02 },
    history: [
      told('shoulder-dystocia', 4, 1),
      told(['eye-pain', 'headache', 'new-headache', 'neck-pain', 'arm-pain'], 0.15, 1.5),
      told(['neck-or-chest-surgery', 'recent-surgery', 'cancer', 'weight-loss'], 0.2, 1.2),
      told('perinatal-injury', 3, 1),
    ],
    signs: [shows(['cranial-nerves/horner-syndrome'], 2, 0.5), shows(['autonomic/anhidrosis'], 1.4, 1)],
    values: [
      reads('angiography-head-neck', [
        ['normal', 1.4],
        ['dissection', 0.03],
      ]),
    ],
    source: ophthalmology,
  },
  {
    key: 'neuroblastoma-with-horner',
    group: 'neoplastic',
    label: 'Neuroblastoma of neck or chest',
    // Of infants whose Horner syndrome has no cause in sight one in ten or more has a neuroblastoma (Mahoney 2006; recalled); older people have none.
    produces: [at(['oculosympathetic-chain'], 'common')],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.5 },
    age: { from: 0, to: 6, outside: 0.005 },
    history: [
      told('shoulder-dystocia', 0.3, 1),
      told('face-or-neck-lump', 3, 0.9),
      told(['weight-loss', 'fever'], 2, 0.95),
      told(['neck-or-chest-surgery', 'recent-surgery', 'trauma'], 0.3, 1.1),
    ],
    signs: [
      shows(['cranial-nerves/horner-syndrome'], 2, 0.5),
      shows(['cranial-nerves/opsoclonus', 'cranial-nerves/ocular-flutter'], 20, 0.98),
      shows(['inspection/enlarged-lymph-nodes'], 2, 0.95),
      shows(['inspection/palpable-mass'], 3, 1),
    ],
    values: [
      reads('ct-chest', [
        ['tumour', 15],
        ['normal', 0.3],
      ]),
    ],
    source: ophthalmology,
  },
  {
    key: 'cluster-headache',
    group: 'paroxysmal',
    label: 'Cluster headache or another trigeminal autonomic headache',
    produces: [
      at(['oculosympathetic-chain'], 'common'),
      at(['no-lesion'], 'uncommon'),
      at(['trigeminal-nerve', 'ophthalmic-nerve'], 'rare'),
    ],
    tempo: { hyperacute: 0.45, acute: 0.25, subacute: 0.15, chronic: 0.15 },
    courses: { 'relapsing-remitting': 5, fluctuating: 3, progressive: 0.1, static: 0.2 },
    age: { from: 15, to: 60, outside: 0.4 },
    sex: { male: 1.5, female: 0.5 },
    history: [
      told('facial-pain', 1.2, 1),
      told('eye-pain-attacks', 30, 0.2),
      told('similar-attacks-before', 4, 0.6),
      told(['eye-pain', 'headache', 'facial-pain'], 1.6, 0.08),
      told('red-eye', 2, 0.8),
      told('tobacco', 1.4, 0.9),
      told('neck-trauma', 0.3, 1.02),
    ],
    signs: [shows(['inspection/tearing-or-runny-nostril'], 12, 0.8), shows(['cranial-nerves/horner-syndrome'], 2, 0.8)],
    values: [
      reads('angiography-head-neck', [
        ['normal', 1.5],
        ['dissection', 0.05],
      ]),
    ],
    source: recalled('ichd-3', 'trigeminal autonomic cephalalgias'),
  },
  {
    key: 'recurrent-painful-ophthalmoplegic-neuropathy',
    group: 'paroxysmal',
    label: 'Recurrent painful ophthalmoplegic neuropathy',
    produces: [at(['oculomotor-nerve'], 'uncommon'), at(['abducens-nerve'], 'rare')],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 6, progressive: 0.1, static: 0.4 },
    age: { from: 2, to: 30, outside: 0.1 },
    history: [
      told(['headache', 'new-headache', 'eye-pain'], 3, 0.08),
      told(['migraine', 'family/migraine'], 4, 0.7),
      told(injury, 0.2, 1.05),
      told('similar-attacks-before', 5, 0.5),
      told(['vomiting', 'photophobia'], 1.3, 1),
      told(['fever', 'cancer', 'hypertension', 'diabetes-mellitus'], 0.4, 1),
    ],
    signs: [shows(bulgingEye, 0.1, 1.05)],
    values: [
      reads('angiography-head-neck', [
        ['normal', 1.5],
        ['aneurysm', 0.03],
      ]),
    ],
    source: recalled('ichd-3', 'painful lesions of the cranial nerves'),
  },
  {
    key: 'adie-tonic-pupil',
    group: 'immune',
    label: 'Adie tonic pupil',
    produces: [
      at(['ciliary-ganglion'], 'very-common'),
      at(['oculomotor-nerve', 'midbrain-dorsal', 'sensory-polyneuropathy', 'autonomic-neuropathy'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.1, acute: 0.3, subacute: 0.3, chronic: 0.3 },
    courses: { progressive: 0.4, static: 1.4 },
    age: { from: 15, to: 60, outside: 0.5 },
    sex: { male: 0.5, female: 1.5 },
    history: [
      told(['trauma', 'head-injury', 'eye-drops'], 0.2, 1.1),
      told(['headache', 'new-headache', 'eye-pain'], 0.6, 1.1),
      told('diplopia', 0.15, 1.1),
      told(['photophobia', 'visual-loss', 'altered-sweating'], 1.3, 1),
      told(['syphilis', 'diabetes-mellitus', 'anticholinergic'], 0.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/impaired-accommodation'], 3, 0.9),
      shows(['cranial-nerves/tonic-pupil', 'cranial-nerves/light-near-dissociation'], 12, 0.2),
      shows(['reflexes/ankle', 'reflexes/knee'], 3, 0.6),
      shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia', 'cranial-nerves/diplopia'], 0.1, 1.1),
      shows(['autonomic/anhidrosis'], 2, 1),
    ],
    source: recalled('adie-1977'),
  },
  {
    key: 'pharmacological-pupil',
    group: 'toxic',
    label: 'Pupil dilated by a drug or plant',
    produces: [
      at(['ciliary-ganglion'], 'common'),
      at(['oculomotor-nerve'], 'uncommon'),
      at(['midbrain-dorsal', 'no-lesion'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.7, acute: 0.28, subacute: 0.01, chronic: 0.01 },
    courses: { improving: 2, progressive: 0.2, 'relapsing-remitting': 0.3 },
    durationDays: { to: 14, outside: 0.2, source: fromMemory },
    history: [
      told(['eye-drops', 'anticholinergic', 'beta-agonist', 'cocaine-or-stimulants'], 6, 0.2),
      told(['eye-drops', 'anticholinergic'], 3, 1),
      told(['trauma', 'headache', 'eye-pain'], 0.5, 1.1),
      told('photophobia', 1.3, 1),
      told('neck-pain', 0.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/impaired-accommodation'], 2.5, 0.8),
      shows(largePupil, 2, 0.2),
      shows(['cranial-nerves/tonic-pupil', 'cranial-nerves/light-near-dissociation'], 0.1, 1.1),
      shows(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia', 'cranial-nerves/diplopia'], 0.05, 1.2),
    ],
    source: ophthalmology,
  },
  {
    key: 'zoster-ophthalmicus',
    group: 'infective',
    label: 'Zoster of the ophthalmic division',
    produces: [
      at(['ophthalmic-nerve'], 'very-common'),
      at(['orbital-apex', 'trigeminal-nerve'], 'uncommon'),
      at(['oculomotor-nerve', 'abducens-nerve', 'trochlear-nerve', 'cavernous-sinus', 'optic-nerve'], 'rare'),
      at(['retina'], 'exceptional'),
      at(['basal-meningeal-process', 'facial-nerve'], 'exceptional'),
    ],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 0.1, progressive: 0.7 },
    age: { from: 50, to: 110, outside: 0.5 },
    history: [
      told(['herpes-zoster', 'rash'], 10, 0.2),
      told(['eye-pain', 'facial-pain', 'neuropathic-pain', 'headache'], 2, 0.3),
      told('immunosuppression', 2.5, 0.9),
      told('red-eye', 2, 0.8),
    ],
    signs: [shows(['inspection/vesicular-rash'], 30, 0.15)],
    source: recalled('zoster-ophthalmicus-2008'),
  },
];
