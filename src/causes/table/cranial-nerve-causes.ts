import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import { anyHeadache } from './brain-sites.ts';
import { at, atLeast, type Cause, mondo, reads, shows, tempos, told } from './cause.ts';

const brazis = recalled('brazis');
const bellGuideline = recalled('bells-palsy-2013');
const twelfthNerve = recalled('twelfth-nerve-1996');

const trauma = ['trauma', 'head-injury', 'neck-trauma'];
const zosterRash = shows(['inspection/vesicular-rash'], 25, 0.35);
const lowerCranialNerves = [
  'cranial-nerves/palatal-weakness',
  'cranial-nerves/vocal-cord-paralysis',
  'cranial-nerves/absent-gag-reflex',
  'cranial-nerves/sternocleidomastoid-weakness',
  'cranial-nerves/trapezius-weakness',
  'cranial-nerves/tongue-deviation',
];
const earIsDeaf = ['cranial-nerves/hearing-loss'];

/** Causes of disease of the nerves of smell, face, throat and tongue. */
export const cranialNerveCauses: readonly Cause[] = [
  {
    key: 'bell-palsy',
    group: 'immune',
    label: 'Bell palsy',
    mondo: mondo('MONDO:0005665', "Bell's palsy"),
    produces: [at(['facial-nerve'], 'very-common')],
    tempo: { hyperacute: 0.35, acute: 0.61, subacute: 0.03, chronic: 0.01 },
    courses: { improving: 1.6, 'relapsing-remitting': 0.3 },
    // It is complete within 72 hours; a palsy that still worsens after three weeks has another cause.
    durationDays: { to: 21, outside: 0.1, source: bellGuideline },
    age: { from: 12, to: 75, outside: 0.7 },
    history: [
      told('ear-pain', 1.4, 0.95),
      told('pregnancy', 2.5, 1),
      told('diabetes-mellitus', 1.4, 0.95),
      told(['preceding-infection', 'preceding-respiratory-infection'], 1.4, 0.95),
      told(['trauma', 'head-injury', 'tick-bite'], 0.3, 1.05),
      told('face-or-neck-lump', 0.15, 1.05),
    ],
    signs: [
      shows(['inspection/vesicular-rash'], 0.05, 1.1),
      shows(['inspection/erythema-migrans'], 0.1, 1),
      shows(['cranial-nerves/hearing-loss', 'cranial-nerves/nystagmus', 'cranial-nerves/facial-numbness'], 0.35, 1.1),
      shows(['cranial-nerves/hyperacusis', 'cranial-nerves/loss-of-taste'], 1.3, 0.95),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 0.15, 1.1)],
    values: [
      reads('mri-brain', [
        ['normal', 1.4],
        ['space-occupying', 0.1],
        ['meningeal-enhancement', 0.2],
      ]),
      reads('borrelia-serology', [
        ['positive', 0.4],
        ['negative', 1.1],
      ]),
    ],
    source: recalled('facial-palsy-peitersen-2002', 'two thirds of one-sided palsies'),
  },
  {
    key: 'ramsay-hunt-syndrome',
    group: 'infective',
    label: 'Ramsay Hunt syndrome (zoster of the geniculate ganglion)',
    produces: [
      at(['facial-nerve'], 'common'),
      at(
        ['vestibular-nerve', 'cochlear-nerve', 'vagus-nerve', 'jugular-foramen', 'cerebellopontine-angle'],
        'uncommon',
      ),
    ],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 0.1 },
    durationDays: { to: 28, outside: 0.2, source: fromMemory },
    history: [
      told('ear-pain', 4, 0.35),
      told(['herpes-zoster', 'rash'], 6, 0.5),
      told('vertigo', 2.5, 0.85),
      told(['hearing-loss', 'tinnitus'], 2, 0.85),
      told('immunosuppression', 2, 0.95),
    ],
    signs: [zosterRash, shows(earIsDeaf, 2.5, 0.85)],
    values: [
      reads('csf-microbiology', [
        ['positive', 5],
        ['negative', 0.8],
      ]),
    ],
    source: recalled('ramsay-hunt-2001'),
  },
  {
    key: 'traumatic-cranial-nerve-injury',
    group: 'traumatic',
    label: 'Injury of a cranial nerve by trauma or operation',
    produces: [
      at(['maxillary-nerve', 'mandibular-nerve', 'cavernous-sinus'], 'very-common'),
      at(['facial-nerve', 'oculomotor-nerve', 'abducens-nerve', 'trigeminal-nerve', 'hypoglossal-nerve'], 'common'),
      at(['ophthalmic-nerve', 'orbital-apex', 'ciliary-ganglion'], 'common'),
      at(
        ['vestibular-nerve', 'cochlear-nerve', 'cerebellopontine-angle', 'jugular-foramen', 'vagus-nerve'],
        'uncommon',
      ),
      at(['spinal-accessory-nerve', 'recurrent-laryngeal-nerve', 'trochlear-nerve'], 'uncommon'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.15, 'relapsing-remitting': 0.05, improving: 1.3 },
    history: [
      told([...trauma, 'limb-fracture-or-dislocation'], 15, 0.06),
      told(['recent-surgery', 'dental-procedure', 'neck-or-chest-surgery'], 8, 0.8),
      told('loss-of-consciousness', 2, 0.9),
    ],
    signs: [
      shows(
        [
          'cranial-nerves/third-nerve-palsy',
          'cranial-nerves/sixth-nerve-palsy',
          'cranial-nerves/facial-numbness',
          'cranial-nerves/tongue-deviation',
        ],
        2,
        0.9,
      ),
      shows(['cranial-nerves/conductive-hearing-loss'], 2.5, 0.95),
    ],
    source: read('cavernous-sinus-1996', 'trauma and operation 24 % of 151'),
  },
  {
    key: 'parotid-tumour',
    group: 'neoplastic',
    label: 'Tumour of the parotid gland or along the facial nerve',
    produces: [at(['facial-nerve'], 'uncommon')],
    tempo: { hyperacute: 0.02, acute: 0.08, subacute: 0.4, chronic: 0.5 },
    courses: { progressive: 2.5, improving: 0.05, 'relapsing-remitting': 0.3 },
    durationDays: { from: 14, outside: 0.3, source: bellGuideline },
    age: { from: 35, to: 95, outside: 0.4 },
    history: [
      told('face-or-neck-lump', 20, 0.4),
      told(['cancer', 'lymphoma'], 3, 0.9),
      told('facial-pain', 1.5, 0.9),
      told('twitching', 1.5, 0.95),
      told('hearing-loss', 0.8, 1),
    ],
    signs: [shows(['inspection/enlarged-lymph-nodes'], 4, 0.9)],
    source: recalled('bells-palsy-2013', 'a slow palsy is a tumour until shown otherwise'),
  },
  {
    key: 'hemifacial-spasm',
    group: 'vascular',
    label: 'Hemifacial spasm',
    mondo: mondo('MONDO:0007713', 'clonic hemifacial spasm'),
    produces: [at(['facial-nerve'], 'uncommon'), at(['no-lesion'], 'rare')],
    tempo: tempos.chronic,
    courses: { progressive: 1.2, fluctuating: 1.5, improving: 0.2 },
    age: { from: 35, to: 80, outside: 0.4 },
    sex: { male: 0.7, female: 1.3 },
    history: [told('twitching', 15, 0.08)],
    signs: [
      shows(['involuntary-movements/hemifacial-spasm'], 60, 0.1),
      shows(['cranial-nerves/facial-myokymia', 'cranial-nerves/facial-synkinesis'], 5, 0.7),
      shows(['cranial-nerves/facial-weakness', 'cranial-nerves/upper-facial-weakness'], 0.2, 1.5),
    ],
    source: recalled('adams-victor', 'disorders of the facial nerve'),
  },
  {
    key: 'skull-base-or-ear-infection',
    group: 'infective',
    label: 'Infection of the middle ear, petrous bone or skull base',
    produces: [
      at(['facial-nerve', 'jugular-foramen', 'hypoglossal-nerve', 'abducens-nerve'], 'uncommon'),
      at(['vestibular-nerve', 'cochlear-nerve', 'trigeminal-nerve', 'cerebellopontine-angle'], 'uncommon'),
      // From the tip of the petrous bone to the sinus beside it, and along the base of the skull.
      at(['cavernous-sinus', 'basal-meningeal-process'], 'uncommon'),
      at(['raised-intracranial-pressure', 'orbital-apex'], 'rare'),
      at(['vagus-nerve'], 'uncommon'),
      at(
        [
          'bulbar-motor-nuclei',
          'recurrent-laryngeal-nerve',
          'spinal-accessory-nerve',
          'oculomotor-nerve',
          'meningeal-irritation',
        ],
        'rare',
      ),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { progressive: 1.5, 'relapsing-remitting': 0.2 },
    history: [
      told('sinus-or-ear-infection', 18, 0.3),
      told('ear-pain', 4, 0.35),
      // The tip of the petrous bone hurts behind the eye.
      told(['eye-pain', 'facial-pain', 'headache', 'new-headache'], 1.8, 0.8),
      told('fever', 3, 0.7),
      told(['diabetes-mellitus', 'immunosuppression'], 3, 0.7),
      told('hearing-loss', 1.6, 0.85),
    ],
    signs: [shows(['cranial-nerves/conductive-hearing-loss'], 5, 0.8), shows(['autonomic/fever'], 3, 0.8)],
    quantities: [atLeast('crp', 10, 'mg/L', 2.5, 0.3), atLeast('esr', 40, 'mm/h', 2.5, 0.4)],
    source: brazis,
  },
  {
    key: 'trigeminal-neuralgia',
    group: 'compressive',
    label: 'Trigeminal neuralgia',
    mondo: mondo('MONDO:0008599', 'trigeminal neuralgia'),
    produces: [
      at(['trigeminal-nerve'], 'very-common'),
      at(['maxillary-nerve', 'mandibular-nerve'], 'common'),
      at(['ophthalmic-nerve', 'no-lesion'], 'rare'),
    ],
    tempo: { hyperacute: 0.3, acute: 0.1, subacute: 0.2, chronic: 0.4 },
    courses: { 'relapsing-remitting': 2.5, fluctuating: 2, static: 0.4 },
    age: { from: 45, to: 100, outside: 0.4 },
    sex: { male: 0.8, female: 1.2 },
    history: [told('triggered-facial-pain', 25, 0.04), told('facial-pain', 1.8, 0.08), told('numbness', 0.3, 1.3)],
    signs: [
      shows(
        ['cranial-nerves/facial-numbness', 'cranial-nerves/absent-corneal-reflex', 'cranial-nerves/jaw-weakness'],
        0.25,
        1.5,
      ),
    ],
    values: [
      reads('mri-brain', [
        ['normal', 1.3],
        ['space-occupying', 0.2],
        ['demyelinating-lesions', 0.4],
      ]),
    ],
    source: recalled('trigeminal-neuralgia-ean-2019'),
  },
  {
    key: 'trigeminal-sensory-neuropathy',
    group: 'immune',
    label: 'Trigeminal sensory neuropathy of connective-tissue disease',
    produces: [
      at(['trigeminal-nerve'], 'common'),
      at(['maxillary-nerve', 'mandibular-nerve', 'ophthalmic-nerve'], 'uncommon'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 25, to: 75, outside: 0.6 },
    sex: { male: 0.4, female: 1.6 },
    history: [
      told(['lupus', 'sjogren-syndrome', 'rheumatoid-arthritis', 'family/autoimmune-disease'], 6, 0.5),
      told(['cold-white-fingers', 'joint-pain'], 5, 0.6),
      told(['dry-eyes', 'dry-mouth'], 4, 0.8),
      told('triggered-facial-pain', 0.15, 1.1),
      told('dental-procedure', 0.3, 1.05),
    ],
    signs: [
      shows(['cranial-nerves/facial-numbness'], 2, 0.2),
      shows(['cranial-nerves/jaw-weakness', 'cranial-nerves/jaw-deviation'], 0.3, 1.1),
    ],
    values: [
      reads('ana', [
        ['positive', 4],
        ['negative', 0.4],
      ]),
      reads('anti-ro', [
        ['positive', 5],
        ['negative', 0.8],
      ]),
    ],
    source: recalled('trigeminal-sensory-neuropathy-1990'),
  },
  {
    key: 'numb-chin-from-metastasis',
    group: 'neoplastic',
    label: 'Numb chin from cancer of the jaw or skull base',
    produces: [at(['mandibular-nerve'], 'common'), at(['trigeminal-nerve'], 'uncommon')],
    tempo: tempos.subacute,
    courses: { progressive: 1.8, improving: 0.2 },
    age: { from: 40, to: 95, outside: 0.3 },
    history: [
      told(['cancer', 'lymphoma'], 12, 0.3),
      told(['weight-loss', 'recent-weight-loss', 'night-sweats'], 3, 0.8),
      told(['dental-procedure', 'trauma'], 0.15, 1.2),
    ],
    values: [reads('csf-cytology', [['malignant', 10]])],
    source: recalled('numb-chin-1992'),
  },
  {
    key: 'recurrent-laryngeal-palsy-from-surgery',
    group: 'traumatic',
    label: 'Vocal cord palsy after an operation or intubation',
    produces: [at(['recurrent-laryngeal-nerve'], 'very-common'), at(['vagus-nerve'], 'common')],
    tempo: tempos.sudden,
    courses: { progressive: 0.1, 'relapsing-remitting': 0.05 },
    history: [
      // Most operations on the spine are done on the back.
      told(['neck-or-chest-surgery', 'recent-surgery', 'spinal-surgery'], 6, 0.08),
      told(['neck-or-chest-surgery', 'recent-surgery'], 2.5, 1),
      told('critical-illness', 2.5, 0.95),
      told('weight-loss', 0.4, 1.05),
    ],
    signs: [shows(['cranial-nerves/vocal-cord-paralysis', 'cranial-nerves/bovine-cough'], 2, 0.5)],
    source: read('vocal-fold-2007', 'operations were the cause in 37 % of 827'),
  },
  {
    key: 'recurrent-laryngeal-palsy-from-tumour',
    group: 'neoplastic',
    label: 'Vocal cord palsy from a tumour of lung, mediastinum, thyroid or neck',
    produces: [at(['recurrent-laryngeal-nerve'], 'very-common'), at(['vagus-nerve'], 'common')],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.6, improving: 0.15, 'relapsing-remitting': 0.1 },
    age: { from: 40, to: 95, outside: 0.4 },
    history: [
      told('cancer', 4, 0.85),
      told('tobacco', 2.5, 0.6),
      told(['weight-loss', 'recent-weight-loss', 'night-sweats'], 3, 0.6),
      told('face-or-neck-lump', 4, 0.85),
      told('aortic-disease', 2.5, 0.98),
      told(['neck-or-chest-surgery', 'recent-surgery'], 0.2, 1.3),
      told('breathlessness', 1.4, 0.9),
    ],
    signs: [
      shows(['cranial-nerves/vocal-cord-paralysis', 'cranial-nerves/bovine-cough'], 2, 0.5),
      shows(['cranial-nerves/horner-syndrome', 'inspection/enlarged-lymph-nodes'], 4, 0.9),
    ],
    values: [
      reads('ct-chest', [
        ['tumour', 20],
        ['hilar-nodes', 3],
        ['normal', 0.2],
      ]),
    ],
    source: recalled('vocal-fold-2007', 'malignant disease outside the larynx'),
  },
  {
    key: 'idiopathic-vocal-cord-palsy',
    group: 'immune',
    label: 'Vocal cord palsy without known cause, often after a viral infection',
    produces: [at(['recurrent-laryngeal-nerve', 'vagus-nerve'], 'common')],
    tempo: tempos.acute,
    courses: { progressive: 0.2, improving: 2 },
    history: [
      told(['preceding-infection', 'preceding-respiratory-infection'], 2.5, 0.8),
      told(['neck-or-chest-surgery', 'recent-surgery'], 0.1, 1.2),
      told(['cancer', 'weight-loss', 'face-or-neck-lump'], 0.25, 1.1),
    ],
    signs: [shows(['cranial-nerves/vocal-cord-paralysis', 'cranial-nerves/bovine-cough'], 2, 0.5)],
    values: [
      reads('ct-chest', [
        ['normal', 2],
        ['tumour', 0.05],
      ]),
    ],
    source: recalled('vocal-fold-2007'),
  },
  {
    key: 'skull-base-tumour',
    group: 'neoplastic',
    label: 'Tumour of the skull base (glomus tumour, meningioma, schwannoma, metastasis, nasopharyngeal cancer)',
    produces: [
      at(['orbital-apex', 'oculomotor-nerve'], 'uncommon'),
      at(['jugular-foramen', 'hypoglossal-nerve', 'vagus-nerve'], 'very-common'),
      at(['trigeminal-nerve', 'maxillary-nerve', 'mandibular-nerve', 'basal-meningeal-process'], 'common'),
      at(['abducens-nerve', 'cavernous-sinus', 'ophthalmic-nerve'], 'uncommon'),
      at(['cerebellopontine-angle', 'facial-nerve', 'cochlear-nerve', 'oculosympathetic-chain'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.03, acute: 0.09, subacute: 0.42, chronic: 0.46 },
    courses: { progressive: 2, improving: 0.1, 'relapsing-remitting': 0.1 },
    age: { from: 35, to: 90, outside: 0.5 },
    history: [
      told('pulsatile-tinnitus', 8, 0.9),
      told(['cancer', 'lymphoma'], 5, 0.8),
      told('face-or-neck-lump', 4, 0.85),
      told(['headache', 'new-headache', 'facial-pain', 'ear-pain', 'neck-pain'], 1.8, 0.8),
      told(['weight-loss', 'recent-weight-loss'], 2, 0.9),
      told(['neck-or-chest-surgery', 'recent-surgery', 'trauma', 'dental-procedure'], 0.3, 1.1),
    ],
    signs: [
      shows(['cranial-nerves/facial-numbness'], 2, 0.95),
      shows(lowerCranialNerves, 2, 0.8),
      shows(['inspection/enlarged-lymph-nodes'], 3, 0.9),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 0.3, 1.1)],
    values: [
      reads('mri-brain', [
        ['space-occupying', 12],
        ['normal', 0.1],
      ]),
    ],
    source: recalled('twelfth-nerve-1996', 'tumours led among 100 cases'),
  },
  {
    key: 'radiation-cranial-neuropathy',
    group: 'toxic',
    label: 'Late cranial neuropathy after radiotherapy of head or neck',
    produces: [
      at(['hypoglossal-nerve', 'vagus-nerve', 'jugular-foramen'], 'uncommon'),
      at(['optic-nerve', 'optic-chiasm', 'bulbar-motor-nuclei', 'recurrent-laryngeal-nerve'], 'rare'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.6, improving: 0.1 },
    history: [told('radiotherapy', 25, 0.03), told('cancer', 3, 0.5)],
    signs: [shows(['cranial-nerves/tongue-fasciculation', 'cranial-nerves/tongue-wasting'], 1.5, 0.8)],
    values: [reads('needle-emg', [['myokymic-discharges', 20]]), reads('mri-brain', [['space-occupying', 0.3]])],
    source: twelfthNerve,
  },
  {
    key: 'post-infectious-smell-loss',
    group: 'infective',
    label: 'Loss of smell after a viral infection of the nose',
    produces: [at(['olfactory-nerve'], 'very-common')],
    tempo: tempos.acute,
    courses: { progressive: 0.2, improving: 1.6 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told(['preceding-infection', 'preceding-respiratory-infection'], 6, 0.15),
      told('loss-of-smell', 1.3, 0.6),
      told(['head-injury', 'trauma'], 0.15, 1.1),
      told(['behaviour-change', 'seizure', 'visual-loss'], 0.3, 1.05),
    ],
    signs: [shows(['cranial-nerves/anosmia'], 2, 0.4)],
    source: recalled('smell-loss-1991', 'about a quarter of 750'),
  },
  {
    key: 'sinonasal-smell-loss',
    group: 'infective',
    label: 'Loss of smell from disease of the nose and sinuses',
    produces: [at(['olfactory-nerve'], 'very-common')],
    tempo: tempos.chronic,
    courses: { fluctuating: 2, 'relapsing-remitting': 2, progressive: 0.8 },
    history: [
      told(['sinus-or-ear-infection', 'asthma'], 6, 0.5),
      told(['head-injury', 'trauma'], 0.2, 1.1),
      told(['behaviour-change', 'seizure', 'visual-loss'], 0.3, 1.05),
    ],
    signs: [shows(['cranial-nerves/anosmia'], 2, 0.4)],
    source: recalled('smell-loss-1991'),
  },
  {
    key: 'head-injury-smell-loss',
    group: 'traumatic',
    label: 'Loss of smell after a head injury',
    produces: [at(['olfactory-nerve'], 'common')],
    tempo: tempos.sudden,
    courses: { progressive: 0.1 },
    history: [told(['head-injury', 'trauma'], 20, 0.04), told('loss-of-consciousness', 2, 0.7)],
    signs: [shows(['cranial-nerves/anosmia'], 2, 0.4)],
    source: recalled('smell-loss-1991', 'nearly a fifth of 750'),
  },
  {
    key: 'olfactory-groove-meningioma',
    group: 'neoplastic',
    label: 'Meningioma of the olfactory groove',
    produces: [
      at(['olfactory-nerve'], 'uncommon'),
      at(['cortex-frontal', 'optic-nerve', 'diffuse-encephalopathy'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 2, improving: 0.05 },
    age: { from: 35, to: 85, outside: 0.4 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told('behaviour-change', 6, 0.6),
      told(['headache', 'new-headache', 'morning-headache'], 2, 0.7),
      told('seizure', 4, 0.9),
      told(['visual-loss', 'transient-visual-loss'], 4, 0.8),
      told(['preceding-infection', 'preceding-respiratory-infection', 'head-injury'], 0.3, 1.2),
    ],
    signs: [
      shows(['cranial-nerves/anosmia'], 4, 0.3),
      shows(['cranial-nerves/optic-disc-swelling', 'cranial-nerves/optic-disc-pallor'], 8, 0.7),
      shows(['higher-function/apathy', 'higher-function/disinhibition', 'higher-function/grasp-reflex'], 5, 0.7),
    ],
    values: [
      reads('mri-brain', [
        ['space-occupying', 15],
        ['normal', 0.02],
      ]),
      reads('ct-head', [
        ['space-occupying', 10],
        ['normal', 0.15],
      ]),
    ],
    source: brazis,
  },
  {
    // In 1 % of those irradiated for cancer of the nasopharynx, four years later on average: headache, bleeding from the nose, dead bone.
    key: 'skull-base-radiation-necrosis',
    group: 'toxic',
    label: 'Late radiation damage of the bone of the skull base or upper neck',
    produces: [
      at(['jugular-foramen', 'hypoglossal-nerve'], 'rare'),
      at(['foramen-magnum', 'basal-meningeal-process', 'cavernous-sinus'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.6, improving: 0.1 },
    history: [
      told('radiotherapy', 40, 0.02),
      told('cancer', 2, 0.5),
      told([...anyHeadache, 'neck-pain', 'facial-pain'], 2, 0.4),
    ],
    source: read('skull-base-necrosis-2006', 'abstract'),
  },
];
