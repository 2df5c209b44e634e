import { recalled } from '../../kernel/cite.ts';
import { aboveTheLoins } from './above-the-loins.ts';
import { at, atLeast, atRoot, type Cause, inKind, reads, shows, sided, tempos, told } from './cause.ts';
import { spinalPain, weightLoss } from './complaints.ts';
import { eyeMusclePalsies } from './sided-signs.ts';

const cordChapter = recalled('adams-victor', 'diseases of the spinal cord');
const plexusChapter = recalled('preston-shapiro', 'plexopathies');

/** What presses on the cord, for the two regions that are imaged for it. */
const compression = (found: number, normal: number) =>
  (['mri-thoracic-spine', 'mri-whole-spine'] as const).map((result) =>
    reads(result, [
      ['cord-compression', found],
      ['normal', normal],
    ]),
  );

/** Causes that are rare at each of their sites, and are thought of because of the story. */
export const rarerCauses: readonly Cause[] = [
  // Spine and what lies in it
  {
    key: 'spinal-arachnoid-cyst',
    group: 'compressive',
    label: 'Arachnoid cyst of the spinal canal',
    produces: [
      at(['spinal-cord-posterior', 'spinal-cord-posterolateral'], 'uncommon', 'thoracic'),
      inKind(['cord'], 'uncommon', 'thoracic'),
      inKind(['cord', 'cauda-equina'], 'rare'),
    ],
    tempo: { hyperacute: 0.05, acute: 0.1, subacute: 0.35, chronic: 0.5 },
    paralysis: 0.6,
    courses: { progressive: 1.2, fluctuating: 1.5 },
    age: { from: 5, to: 75, outside: 0.6 },
    history: [
      told(['trauma', 'tuberculosis'], 1.4, 1),
      told('fever', 0.4, 1),
      told(spinalPain, 1.5, 0.8),
      told(['fluctuating-symptoms', 'pain-on-straining', 'similar-attacks-before'], 1.5, 1),
      told(['lumbar-puncture-or-epidural', 'spinal-surgery'], 2, 1),
    ],
    values: compression(6, 0.05),
    source: cordChapter,
  },
  {
    key: 'ossification-of-ligamentum-flavum',
    group: 'compressive',
    label: 'Ossification of the ligamentum flavum',
    produces: [
      at(['spinal-cord-lateral', 'cauda-equina'], 'rare'),
      at(['spinal-cord-posterior', 'spinal-cord-posterolateral', 'spinal-cord-transverse'], 'uncommon', 'thoracic'),
      inKind(['cord'], 'uncommon', 'thoracic'),
      inKind(['cord'], 'rare'),
      at(['conus-medullaris'], 'uncommon'),
    ],
    tempo: { hyperacute: 0.03, acute: 0.08, subacute: 0.19, chronic: 0.7 },
    paralysis: 0.5,
    courses: { progressive: 1.4, improving: 0.1 },
    age: { from: 35, to: 90, outside: 0.2 },
    history: [
      told(['leg-weakness', 'numbness', 'difficulty-walking'], 1.2, 1),
      told(['spinal-stenosis', 'bilateral-leg-pain', 'neurogenic-claudication', 'falls'], 1.4, 1),
      told('fever', 0.4, 1),
      told(['obesity', 'diabetes-mellitus'], 1.5, 0.95),
      told(['back-pain', 'thoracic-back-pain'], 1.3, 0.9),
    ],
    // It presses from behind, and the way of walking suffers first.
    signs: [shows(['gait/sensory-ataxic', 'gait/romberg', 'gait/spastic'], 1.3, 1)],
    values: compression(8, 0.03),
    source: cordChapter,
  },
  {
    key: 'primary-extradural-tumour',
    group: 'neoplastic',
    label: 'Lymphoma, neuroblastoma or another tumour that begins beside the cord',
    produces: [
      at(['spinal-cord-transverse', 'conus-medullaris'], 'uncommon'),
      inKind(['cord', 'cauda-equina'], 'uncommon'),
      inKind(['root', 'plexus'], 'rare'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.6, improving: 0.05, 'relapsing-remitting': 0.1 },
    history: [
      told(['face-or-neck-lump', 'flank-pain', 'pregnancy'], 1.3, 1),
      told(['difficulty-walking', 'thoracic-back-pain', 'bowel-disturbance', 'bladder-disturbance'], 1.2, 1),
      told(['abdominal-pain', 'fatigue'], 1.4, 1),
      told('anticoagulant', 0.6, 1),
      told('lymphoma', 8, 0.9),
      told(['back-pain', 'thoracic-back-pain', 'neck-pain', 'night-spinal-pain', 'radicular-leg-pain'], 1.5, 0.7),
      told([...weightLoss, 'night-sweats'], 2, 0.9),
      told(['hiv-infection', 'immunosuppression'], 1.5, 1),
    ],
    signs: [
      // A neuroblastoma of the chest or belly grows through the openings of the spine in infants.
      shows(
        ['inspection/enlarged-liver-or-spleen', 'cranial-nerves/horner-syndrome', 'cranial-nerves/opsoclonus'],
        3,
        1,
      ),
      shows(['inspection/enlarged-lymph-nodes'], 3, 0.95),
      shows(['inspection/spinal-tenderness'], 1.5, 0.95),
    ],
    values: compression(5, 0.02),
    source: cordChapter,
  },
  {
    key: 'spinal-subdural-haematoma',
    group: 'vascular',
    label: 'Spinal subdural or subarachnoid haematoma',
    produces: [inKind(['cord', 'cauda-equina'], 'rare'), at(['polyradiculopathy'], 'rare')],
    tempo: tempos.suddenOrAcute,
    paralysis: 1.3,
    history: [
      told(['spinal-surgery', 'recent-surgery', 'chronic-liver-disease'], 1.8, 1),
      told('fever', 0.5, 1),
      told(['anticoagulant', 'bleeding-disorder', 'antiplatelet', 'thrombophilia'], 8, 0.4),
      told([...spinalPain, 'radicular-leg-pain', 'bilateral-leg-pain'], 2, 0.3),
      told(['lumbar-puncture-or-epidural', 'head-injury', 'trauma', 'heavy-exertion'], 4, 0.8),
      // Blood in the fluid climbs to the head.
      told(['headache', 'thunderclap-headache'], 3, 1),
    ],
    quantities: [atLeast('csf-red-cells', 1000, '10*6/L', 5, 0.6), atLeast('inr', 3, '{INR}', 4, 0.9)],
    values: [
      reads('mri-whole-spine', [
        ['haematoma', 40],
        ['normal', 0.03],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'synovial-or-perineural-cyst',
    group: 'compressive',
    label: 'Synovial or perineural cyst of the lumbar or sacral canal',
    produces: [
      at(['common-fibular-nerve', 'lumbosacral-trunk'], 'exceptional'),
      inKind(['root'], 'uncommon', 'lumbosacral'),
      atRoot('S2', 'common'),
      atRoot('S3', 'common'),
      atRoot('S4', 'common'),
      inKind(['cauda-equina'], 'uncommon'),
      at(['polyradiculopathy', 'adjacent-nerve-roots', 'pudendal-nerve'], 'rare'),
    ],
    tempo: tempos.chronic,
    age: { from: 35, to: 90, outside: 0.4 },
    sex: { male: 0.8, female: 1.2 },
    history: [
      told(['spinal-stenosis', 'bladder-disturbance', 'sexual-dysfunction'], 1.4, 1),
      told(['back-pain', 'radicular-leg-pain', 'leg-pain', 'saddle-numbness'], 1.5, 0.6),
      told('saddle-numbness', 2, 0.95),
      told('neurogenic-claudication', 0.7, 1.1),
      told('pain-on-straining', 1.3, 1),
      told('fever', 0.3, 1),
    ],
    signs: [aboveTheLoins],
    source: recalled('preston-shapiro', 'radiculopathy'),
  },
  {
    key: 'superficial-siderosis',
    group: 'vascular',
    label: 'Superficial siderosis of the central nervous system',
    produces: [
      at(['cerebellar-degeneration', 'cerebellar-vermis', 'cochlear-nerve'], 'uncommon'),
      at(['basal-meningeal-process'], 'uncommon'),
      at(['vestibular-nerve', 'olfactory-nerve', 'spinal-cord-lateral', 'spinal-cord-transverse'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
      at(['cerebellopontine-angle', 'upper-motor-neuron-system'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.5 },
    age: { from: 25, to: 85, outside: 0.3 },
    history: [
      told(['hearing-loss', 'tinnitus'], 8, 0.1),
      told(['unsteadiness', 'clumsiness'], 1.5, 0.7),
      told('loss-of-smell', 3, 0.95),
      told(['head-injury', 'spinal-surgery', 'trauma', 'anticoagulant'], 2, 0.8),
      told(['family/ataxia', 'family/similar-disorder'], 0.3, 1.05),
      told(['cognitive-change', 'anticoagulant', 'spinal-surgery', 'headache'], 1.2, 1),
      told(['spinal-surgery', 'recent-surgery', 'trauma', 'cancer'], 1.3, 1),
    ],
    sides: [sided(['cranial-nerves/hearing-loss'], { one: 0.3, both: 1.8 })],
    values: [
      reads('mri-brain', [
        ['microbleeds', 1.5],
        ['cerebellar-atrophy', 2],
        ['normal', 0.2],
      ]),
    ],
    source: recalled('adams-victor', 'superficial siderosis'),
  },

  // Vessels, plexus and nerves
  {
    key: 'aortic-dissection-or-occlusion',
    group: 'vascular',
    label: 'Dissection or occlusion of the aorta with ischaemia of cord, plexus or nerves',
    produces: [
      at(['spinal-cord-transverse', 'spinal-cord-anterior', 'conus-medullaris', 'cauda-equina'], 'uncommon'),
      at(['lumbosacral-plexus', 'lumbar-plexus', 'sacral-plexus', 'multiple-mononeuropathy'], 'uncommon'),
      inKind(['cord'], 'rare'),
      at(['internal-capsule', 'sciatic-nerve', 'femoral-nerve-pelvis'], 'rare'),
    ],
    tempo: tempos.sudden,
    paralysis: 1.8,
    age: { from: 40, to: 100, outside: 0.3 },
    history: [
      told('fever', 0.4, 1),
      told('aortic-disease', 15, 0.8),
      told(['thoracic-back-pain', 'back-pain', 'abdominal-pain', 'bilateral-leg-pain', 'leg-pain'], 2.5, 0.4),
      told(['peripheral-arterial-disease', 'atrial-fibrillation', 'hypertension', 'tobacco'], 1.8, 0.8),
      told(['syncope', 'recent-surgery'], 1.5, 1),
    ],
    signs: [
      shows(['inspection/colour-or-temperature-change'], 4, 0.9),
      shows(['inspection/absent-limb-pulse'], 20, 0.3),
    ],
    source: recalled('limb-ischaemia-esvs-2020'),
  },
  {
    key: 'ischaemic-plexopathy-or-neuropathy',
    group: 'vascular',
    label: 'Ischaemia of a plexus or nerve by disease of its artery',
    produces: [
      at(['lumbosacral-plexus', 'lumbar-plexus', 'sacral-plexus', 'multiple-mononeuropathy'], 'uncommon'),
      at(['sciatic-nerve', 'sciatic-nerve-fibular-division', 'femoral-nerve-pelvis', 'brachial-plexus'], 'rare'),
    ],
    tempo: tempos.sudden,
    age: { from: 45, to: 110, outside: 0.3 },
    history: [
      told(['leg-pain', 'arm-pain', 'thigh-pain', 'neurogenic-claudication'], 1.5, 0.9),
      told(['thrombophilia', 'cocaine-or-stimulants'], 1.6, 1),
      told(['peripheral-arterial-disease', 'aortic-disease'], 10, 0.3),
      told(['recent-surgery', 'radiotherapy', 'atrial-fibrillation', 'injecting-drug-use'], 3, 0.9),
      told(['diabetes-mellitus', 'tobacco', 'hypertension'], 1.4, 0.9),
      told('trauma', 0.4, 1),
    ],
    signs: [
      shows(['inspection/colour-or-temperature-change'], 3, 0.9),
      shows(['inspection/absent-limb-pulse'], 10, 0.5),
    ],
    values: [reads('ecg', [['atrial-fibrillation', 4]])],
    source: plexusChapter,
  },
  {
    key: 'endometriosis-of-a-nerve',
    group: 'compressive',
    label: 'Endometriosis of the sciatic nerve or sacral plexus',
    produces: [
      at(['sciatic-nerve', 'sacral-plexus', 'lumbosacral-plexus', 'lumbosacral-trunk'], 'rare'),
      at(['pudendal-nerve', 'obturator-nerve', 'sciatic-nerve-fibular-division', 'superior-gluteal-nerve'], 'rare'),
    ],
    tempo: tempos.chronic,
    courses: { fluctuating: 4, 'relapsing-remitting': 4 },
    age: { from: 16, to: 52, outside: 0.03 },
    sex: { male: 0.02, female: 2 },
    history: [
      told(['leg-pain', 'radicular-leg-pain', 'abdominal-pain', 'flank-pain'], 2, 0.3),
      told(['similar-attacks-before', 'fluctuating-symptoms'], 5, 0.7),
      told(['trauma', 'recent-surgery', 'pregnancy'], 0.4, 1),
    ],
    signs: [aboveTheLoins],
    source: plexusChapter,
  },
  {
    key: 'psoas-abscess',
    group: 'infective',
    label: 'Abscess of the psoas muscle',
    produces: [
      at(['no-lesion'], 'rare'),
      at(['lumbar-plexus', 'femoral-nerve-pelvis'], 'uncommon'),
      at(['lumbosacral-plexus', 'obturator-nerve', 'genitofemoral-nerve', 'lateral-femoral-cutaneous-nerve'], 'rare'),
      at(['adjacent-nerve-roots'], 'rare', 'lumbosacral'),
    ],
    tempo: tempos.acuteOrSubacute,
    courses: { progressive: 1.5 },
    history: [
      told(['leg-pain', 'difficulty-walking', 'weight-loss', 'alcohol-excess'], 1.4, 1),
      told(['fever', 'night-sweats'], 8, 0.2),
      told(['flank-pain', 'back-pain', 'thigh-pain', 'abdominal-pain'], 2, 0.4),
      told(['diabetes-mellitus', 'injecting-drug-use', 'immunosuppression', 'hiv-infection', 'tuberculosis'], 3, 0.8),
      told(['recent-bacteraemia', 'sepsis', 'inflammatory-bowel-disease'], 4, 0.95),
      told(['anticoagulant'], 0.6, 1),
    ],
    signs: [aboveTheLoins, shows(['special-tests/femoral-stretch'], 1.5, 1), shows(['autonomic/fever'], 4, 0.5)],
    quantities: [atLeast('crp', 50, 'mg/L', 4, 0.3)],
    source: plexusChapter,
  },

  // Brain and cranial nerves
  {
    key: 'idiopathic-ocular-motor-palsy',
    group: 'immune',
    label: 'Idiopathic or post-infectious palsy of an ocular motor nerve',
    produces: [
      at(['abducens-nerve'], 'common'),
      at(['cavernous-sinus'], 'rare'),
      at(['pons-tegmentum'], 'exceptional'),
      at(['oculomotor-nerve'], 'uncommon'),
      at(['trochlear-nerve'], 'uncommon'),
    ],
    tempo: tempos.acute,
    courses: { progressive: 0.3, improving: 1.8 },
    age: { from: 0, to: 50, outside: 0.4 },
    history: [
      told(['preceding-infection', 'preceding-respiratory-infection', 'recent-vaccination'], 2.5, 0.9),
      told(['diabetes-mellitus', 'hypertension', 'cancer', 'head-injury', 'trauma'], 0.4, 1.1),
      told(['headache', 'new-headache', 'eye-pain', 'vomiting'], 0.6, 1.1),
    ],
    signs: [
      shows(['inspection/proptosis', 'cranial-nerves/optic-disc-swelling', 'cranial-nerves/facial-numbness'], 0.15, 1),
    ],
    sides: [sided(eyeMusclePalsies, { one: 1, both: 0.3 })],
    source: recalled('fourth-nerve-2018', 'no cause found in a share'),
  },
];
