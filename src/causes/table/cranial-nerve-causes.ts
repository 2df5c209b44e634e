import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import { anyHeadache } from './brain-sites.ts';
import { at, atLeast, type Cause, mondo, reads, shows, showsAt, sided, tempos, told } from './cause.ts';

const brazis = recalled('brazis');
const bellGuideline = recalled('bells-palsy-2013');
const twelfthNerve = recalled('twelfth-nerve-1996');

const trauma = ['trauma', 'head-injury', 'neck-trauma'];
const operations = ['neck-or-chest-surgery', 'spinal-surgery', 'needle-near-nerve', 'surgical-positioning'];
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

/** Causes of disease of the nerves of the face and of those that pass the base of the skull. */
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
      // One in two aches behind the ear.
      told('ear-pain', 2.2, 0.85),
      told('pregnancy', 2.5, 1),
      told('diabetes-mellitus', 1.4, 0.95),
      told(['preceding-infection', 'preceding-respiratory-infection'], 1.4, 0.95),
      told(['trauma', 'head-injury', 'tick-bite'], 0.3, 1.05),
      told('face-or-neck-lump', 0.15, 1.05),
      told(['recent-vaccination', 'family/similar-disorder', 'hypertension'], 1.2, 1),
      told(['fever', 'weight-loss', 'joint-pain', 'night-sweats'], 0.5, 1),
      told(['cancer', 'lymphoma'], 0.6, 1),
      told(['diplopia', 'arm-weakness', 'leg-weakness', 'vertigo', 'hearing-loss'], 0.4, 1),
      told('hiv-infection', 1.5, 1),
      told(['twitching', 'sinus-or-ear-infection'], 0.4, 1),
    ],
    signs: [
      shows(['inspection/vesicular-rash'], 0.05, 1.1),
      shows(['inspection/erythema-migrans'], 0.1, 1),
      shows(['cranial-nerves/hearing-loss', 'cranial-nerves/nystagmus'], 0.35, 1.1),
      // The face feels numb to a quarter of them, and a few have lost some of its feeling.
      shows(['cranial-nerves/facial-numbness'], 0.6, 1.05),
      shows(['cranial-nerves/hyperacusis', 'cranial-nerves/loss-of-taste'], 1.3, 0.95),
      shows(
        ['inspection/palpable-mass', 'inspection/ear-or-nose-leak', 'involuntary-movements/hemifacial-spasm'],
        0.15,
        1,
      ),
      shows(['inspection/enlarged-lymph-nodes', 'cranial-nerves/conductive-hearing-loss'], 0.4, 1),
    ],
    sides: [
      sided(['cranial-nerves/facial-weakness', 'cranial-nerves/upper-facial-weakness'], { one: 1.05, both: 0.1 }),
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
      at(['trigeminal-nerve', 'basal-meningeal-process', 'pons-lateral', 'recurrent-laryngeal-nerve'], 'exceptional'),
    ],
    tempo: tempos.acute,
    courses: { 'relapsing-remitting': 0.1 },
    durationDays: { to: 28, outside: 0.2, source: fromMemory },
    history: [
      told('ear-pain', 4, 0.35),
      told(['herpes-zoster', 'rash'], 6, 0.4),
      told('vertigo', 2.5, 0.85),
      told(['hearing-loss', 'tinnitus'], 2, 0.85),
      told('immunosuppression', 2, 0.95),
      told(['facial-pain', 'headache', 'dysphagia'], 1.2, 1),
      told('face-or-neck-lump', 0.3, 1),
      told(['vomiting', 'unsteadiness'], 1.3, 1),
      told(['sore-throat', 'diabetes-mellitus', 'corticosteroid'], 1.2, 1),
    ],
    signs: [zosterRash, shows(earIsDeaf, 2.5, 0.85)],
    sides: [sided(['cranial-nerves/facial-weakness', 'cranial-nerves/upper-facial-weakness'], { one: 1, both: 0.1 })],
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
        [
          'vestibular-nerve',
          'cochlear-nerve',
          'cerebellopontine-angle',
          'jugular-foramen',
          'vagus-nerve',
          'spinal-accessory-nerve',
        ],
        'uncommon',
      ),
      at(['spinal-accessory-nerve', 'recurrent-laryngeal-nerve', 'trochlear-nerve'], 'uncommon'),
      at(['optic-nerve', 'olfactory-nerve'], 'uncommon'),
      at(['mandibular-nerve', 'maxillary-nerve'], 'very-common'),
      at(['basal-meningeal-process', 'optic-chiasm'], 'exceptional'),
    ],
    // A nerve that swells in its canal, or is caught in a scar, fails some days later.
    tempo: { hyperacute: 0.76, acute: 0.17, subacute: 0.05, chronic: 0.02 },
    courses: { progressive: 0.15, 'relapsing-remitting': 0.05, improving: 1.3 },
    history: [
      told([...trauma, 'limb-fracture-or-dislocation', ...operations], 8, 1),
      told([...trauma, 'limb-fracture-or-dislocation', ...operations, 'dental-procedure'], 1, 0.06),
      // The needle and the forceps reach nerves of the jaw, not those behind the eye.
      told('dental-procedure', 2, 1),
      told(trauma, 2, 0.95),
      // Of what was operated on nothing is said.
      told('recent-surgery', 2, 1),
      told('loss-of-consciousness', 2, 0.9),
    ],
    signs: [
      shows(
        [
          'cranial-nerves/third-nerve-palsy',
          'cranial-nerves/sixth-nerve-palsy',
          'cranial-nerves/facial-numbness',
          'cranial-nerves/tongue-deviation',
          'cranial-nerves/tongue-weakness',
        ],
        2,
        0.9,
      ),
      shows(['cranial-nerves/conductive-hearing-loss'], 2.5, 0.95),
      // A nerve alone does not take away the mind: who does not wake bleeds within the skull.
      shows(['higher-function/coma', 'higher-function/stupor'], 0.2, 1),
      shows(['inspection/ear-or-nose-leak', 'inspection/enophthalmos'], 3, 1),
    ],
    source: read('cavernous-sinus-1996', 'trauma and operation 24 % of 151'),
  },
  {
    key: 'parotid-tumour',
    group: 'neoplastic',
    label: 'Tumour of the parotid gland or along the facial nerve',
    produces: [
      at(['facial-nerve'], 'uncommon'),
      at(['cerebellopontine-angle'], 'rare'),
      // Along the nerves of the face a cancer of the gland or of the skin creeps back to the skull.
      at(['mandibular-nerve', 'maxillary-nerve', 'trigeminal-nerve', 'basal-meningeal-process'], 'exceptional'),
    ],
    // Up to a quarter of the palsies come suddenly.
    tempo: { hyperacute: 0.08, acute: 0.14, subacute: 0.36, chronic: 0.42 },
    courses: { progressive: 2.5, improving: 0.05, 'relapsing-remitting': 0.3 },
    durationDays: { from: 14, outside: 0.3, source: bellGuideline },
    age: { from: 35, to: 95, outside: 0.4 },
    history: [
      told('face-or-neck-lump', 20, 0.4),
      told(['cancer', 'lymphoma'], 3, 0.9),
      told('facial-pain', 2, 0.9),
      told('twitching', 1.5, 0.95),
      told('hearing-loss', 0.8, 1),
      told(['numbness', 'similar-attacks-before'], 1.3, 1),
      told(['fever', 'rash'], 0.5, 1),
      told('face-numbness', 1.5, 1),
    ],
    signs: [
      shows(['inspection/enlarged-lymph-nodes'], 4, 0.9),
      showsAt(['inspection/palpable-mass'], ['face', 'neck'], 15, 0.6),
      shows(['involuntary-movements/hemifacial-spasm', 'cranial-nerves/facial-myokymia'], 2, 1),
      shows(['cranial-nerves/facial-numbness'], 1.5, 1),
    ],
    sides: [sided(['cranial-nerves/facial-weakness', 'cranial-nerves/upper-facial-weakness'], { one: 1, both: 0.05 })],
    source: recalled('bells-palsy-2013', 'a slow palsy is a tumour until shown otherwise'),
  },
  {
    key: 'hemifacial-spasm',
    group: 'vascular',
    label: 'Hemifacial spasm',
    mondo: mondo('MONDO:0007713', 'clonic hemifacial spasm'),
    produces: [
      at(['facial-nerve'], 'uncommon'),
      at(['no-lesion'], 'rare'),
      // The twitch may be taken for a movement of the basal ganglia.
      at(['hyperkinetic-syndrome'], 'rare'),
      at(['cerebellopontine-angle'], 'exceptional'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.2, fluctuating: 1.5, improving: 0.2 },
    age: { from: 35, to: 80, outside: 0.4 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told('twitching', 15, 0.08),
      // What twitches beside a weak or thin limb is its muscle.
      told(['arm-weakness', 'leg-weakness', 'muscle-thinning', 'difficulty-walking', 'cramps'], 0.1, 1),
      told('hypertension', 1.2, 1),
    ],
    signs: [
      shows(['involuntary-movements/hemifacial-spasm'], 60, 0.1),
      shows(['cranial-nerves/facial-myokymia', 'cranial-nerves/facial-synkinesis'], 5, 0.7),
      shows(['cranial-nerves/facial-weakness', 'cranial-nerves/upper-facial-weakness'], 0.2, 1.5),
    ],
    sides: [sided(['involuntary-movements/hemifacial-spasm'], { one: 1, both: 0.3 })],
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
      at(
        ['optic-nerve', 'maxillary-nerve', 'mandibular-nerve', 'foramen-magnum', 'raised-intracranial-pressure'],
        'exceptional',
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
      told(['dysphagia', 'voice-change', 'weight-loss', 'chronic-kidney-disease'], 1.3, 1),
      told('cancer', 0.7, 1),
      told(
        [
          'ear-pain',
          'sinus-or-ear-infection',
          'hearing-loss',
          'facial-pain',
          'eye-pain',
          'fever',
          'dysphagia',
          'voice-change',
          'diplopia',
          ...anyHeadache,
        ],
        1,
        0.15,
      ),
      told(['dental-procedure', 'sore-throat', 'tuberculosis', 'radiotherapy'], 1.3, 1),
    ],
    signs: [
      shows(['cranial-nerves/conductive-hearing-loss'], 5, 0.8),
      shows(['autonomic/fever'], 3, 0.8),
      shows(['inspection/ear-or-nose-leak'], 5, 0.9),
    ],
    quantities: [atLeast('crp', 10, 'mg/L', 2.5, 0.3), atLeast('esr', 40, 'mm/h', 2.5, 0.4)],
    values: [
      reads('mri-brain', [
        ['meningeal-enhancement', 2],
        ['venous-thrombosis', 2],
        ['normal', 0.4],
      ]),
    ],
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
    history: [
      told('triggered-facial-pain', 25, 0.04),
      told('facial-pain', 1.8, 0.08),
      told('numbness', 0.3, 1.3),
      told('multiple-sclerosis', 2, 1),
      told('dental-procedure', 1.2, 1),
      told(['worse-in-the-cold', 'similar-attacks-before'], 1.3, 1),
      told(['hearing-loss', 'diplopia', 'weight-loss', 'cancer'], 0.5, 1),
    ],
    signs: [
      shows(
        ['cranial-nerves/facial-numbness', 'cranial-nerves/absent-corneal-reflex', 'cranial-nerves/jaw-weakness'],
        0.25,
        1.5,
      ),
    ],
    sides: [sided(['cranial-nerves/facial-numbness'], { one: 1, both: 0.2 })],
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
      at(['cerebellopontine-angle'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    age: { from: 25, to: 75, outside: 0.6 },
    sex: { male: 0.4, female: 1.6 },
    history: [
      told(['lupus', 'sjogren-syndrome', 'rheumatoid-arthritis', 'family/autoimmune-disease'], 6, 0.5),
      told(['cold-white-fingers', 'joint-pain'], 5, 0.6),
      told(['dry-eyes', 'dry-mouth'], 4, 0.8),
      told(['face-numbness', 'facial-pain'], 2, 0.12),
      told('triggered-facial-pain', 0.15, 1.1),
      told('dental-procedure', 0.3, 1.05),
      told(['muscle-pain', 'photosensitive-rash', 'rash', 'vasculitis', 'interstitial-lung-disease'], 1.6, 1),
      told(['cancer', 'hearing-loss', 'trauma'], 0.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/facial-numbness'], 2, 0.2),
      shows(['cranial-nerves/jaw-weakness', 'cranial-nerves/jaw-deviation'], 0.3, 1.1),
    ],
    sides: [sided(['cranial-nerves/facial-numbness'], { one: 0.8, both: 3 })],
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
    produces: [
      at(['mandibular-nerve'], 'common'),
      at(['trigeminal-nerve'], 'uncommon'),
      at(['maxillary-nerve'], 'rare'),
      at(['basal-meningeal-process'], 'exceptional'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.8, improving: 0.2 },
    age: { from: 40, to: 95, outside: 0.45 },
    history: [
      told(['cancer', 'lymphoma'], 12, 0.3),
      told(['weight-loss', 'recent-weight-loss', 'night-sweats'], 3, 0.8),
      told(['dental-procedure', 'trauma'], 0.15, 1.2),
      told(['facial-pain', 'numbness'], 1.3, 1),
      told(['back-pain', 'night-spinal-pain', 'fatigue', 'fever', 'face-or-neck-lump'], 1.4, 1),
      told('face-numbness', 1.4, 0.7),
    ],
    signs: [
      shows(['inspection/enlarged-lymph-nodes', 'inspection/enlarged-liver-or-spleen'], 3, 1),
      shows(['cranial-nerves/facial-numbness'], 1.5, 0.4),
    ],
    values: [reads('csf-cytology', [['malignant', 10]])],
    source: recalled('numb-chin-1992'),
  },
  {
    key: 'skull-base-tumour',
    group: 'neoplastic',
    label: 'Tumour of the skull base (glomus tumour, meningioma, schwannoma, metastasis, nasopharyngeal cancer)',
    produces: [
      at(['orbital-apex', 'oculomotor-nerve'], 'uncommon'),
      at(['jugular-foramen', 'hypoglossal-nerve', 'vagus-nerve'], 'very-common'),
      at(['trigeminal-nerve', 'maxillary-nerve', 'mandibular-nerve', 'basal-meningeal-process'], 'common'),
      at(['cavernous-sinus', 'ophthalmic-nerve'], 'uncommon'),
      at(['cerebellopontine-angle', 'facial-nerve', 'cochlear-nerve', 'oculosympathetic-chain'], 'uncommon'),
      at(['spinal-accessory-nerve'], 'uncommon'),
      at(
        ['trochlear-nerve', 'optic-nerve', 'vestibular-nerve', 'bulbar-motor-nuclei', 'foramen-magnum', 'optic-chiasm'],
        'rare',
      ),
      at(['recurrent-laryngeal-nerve', 'olfactory-nerve', 'medulla-lateral'], 'exceptional'),
      at(['abducens-nerve'], 'common'),
    ],
    tempo: { hyperacute: 0.05, acute: 0.11, subacute: 0.4, chronic: 0.44 },
    courses: { progressive: 2, improving: 0.1, 'relapsing-remitting': 0.1 },
    age: { from: 35, to: 90, outside: 0.5 },
    history: [
      told('pulsatile-tinnitus', 8, 0.9),
      told(['cancer', 'lymphoma'], 5, 0.8),
      told('face-or-neck-lump', 4, 0.85),
      told(['headache', 'new-headache', 'facial-pain', 'ear-pain', 'neck-pain'], 1.8, 0.8),
      told(['weight-loss', 'recent-weight-loss'], 2, 0.9),
      told(['neck-or-chest-surgery', 'recent-surgery', 'trauma', 'dental-procedure'], 0.3, 1.1),
      told(['hearing-loss', 'tinnitus', 'numbness', 'face-numbness'], 1.3, 1),
      told('radiotherapy', 1.3, 1),
      told('fever', 0.4, 1),
      told('rash', 0.4, 1),
      told('neurofibromatosis', 3, 1),
      told(['sinus-or-ear-infection', 'diplopia', 'slurred-speech'], 1.2, 1),
    ],
    signs: [
      shows(['cranial-nerves/facial-numbness'], 2, 0.95),
      shows(lowerCranialNerves, 2, 0.8),
      shows(['inspection/enlarged-lymph-nodes'], 3, 0.9),
      // A growth behind the nose shuts the tube to the ear.
      shows(['cranial-nerves/conductive-hearing-loss', 'cranial-nerves/tongue-wasting'], 2.5, 1),
    ],
    sides: [
      sided(
        [
          'cranial-nerves/vocal-cord-paralysis',
          'cranial-nerves/palatal-weakness',
          'cranial-nerves/tongue-weakness',
          'cranial-nerves/tongue-wasting',
        ],
        { one: 1.1, both: 0.5 },
      ),
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
      at(
        [
          'abducens-nerve',
          'oculomotor-nerve',
          'trigeminal-nerve',
          'facial-nerve',
          'cochlear-nerve',
          'retina',
          'spinal-accessory-nerve',
        ],
        'rare',
      ),
      at(['cavernous-sinus', 'basal-meningeal-process', 'cerebellopontine-angle'], 'exceptional'),
    ],
    tempo: tempos.chronic,
    courses: { progressive: 1.6, improving: 0.1 },
    history: [
      told('radiotherapy', 25, 0.03),
      told(['cancer', 'lymphoma', 'pituitary-tumour'], 3, 0.5),
      told('pituitary-tumour', 1.5, 1),
    ],
    signs: [
      shows(['cranial-nerves/tongue-fasciculation', 'cranial-nerves/tongue-wasting'], 1.5, 0.8),
      shows(
        ['cranial-nerves/facial-myokymia', 'involuntary-movements/myokymia', 'involuntary-movements/neuromyotonia'],
        6,
        1,
      ),
      shows(['inspection/enlarged-lymph-nodes', 'inspection/palpable-mass'], 0.3, 1),
    ],
    values: [reads('needle-emg', [['myokymic-discharges', 20]]), reads('mri-brain', [['space-occupying', 0.3]])],
    source: twelfthNerve,
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
