import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import { aboveTheLoins } from './above-the-loins.ts';
import { anyHeadache } from './brain-sites.ts';
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
    history: [
      told(['spinal-surgery', 'recent-surgery', 'chronic-liver-disease'], 1.8, 1),
      told('fever', 0.5, 1),
      told(['anticoagulant', 'bleeding-disorder', 'antiplatelet', 'thrombophilia'], 8, 0.4),
      told([...spinalPain, 'radicular-leg-pain', 'bilateral-leg-pain'], 2, 0.3),
      told(['lumbar-puncture-or-epidural', 'head-injury', 'trauma', 'heavy-exertion'], 4, 0.8),
      told(['headache', 'thunderclap-headache'], 1.5, 1),
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
      at(['vestibular-nerve', 'olfactory-nerve', 'spinal-cord-lateral', 'spinal-cord-transverse'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
      at(['basal-meningeal-process'], 'rare'),
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
    key: 'opsoclonus-myoclonus-syndrome',
    group: 'paraneoplastic',
    label: 'Opsoclonus-myoclonus syndrome',
    produces: [
      at(['cerebellar-vermis', 'cerebellar-degeneration', 'brainstem-diffuse'], 'uncommon'),
      at(['cerebellar-hemisphere', 'hyperkinetic-syndrome', 'diffuse-encephalopathy', 'flocculonodular-lobe'], 'rare'),
      at(['action-tremor'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.38, subacute: 0.52, chronic: 0.08 },
    // Toddlers with a neuroblastoma or after an infection; grown people are fewer.
    age: { from: 0, to: 6, outside: 0.3 },
    history: [
      told('behaviour-change', 2.5, 0.7),
      told(['unsteadiness', 'falls', 'difficulty-walking', 'tremor', 'oscillopsia'], 1.5, 0.7),
      told(['preceding-infection', 'preceding-respiratory-infection', 'cancer'], 2, 0.9),
      told(['family/ataxia', 'family/similar-disorder'], 0.3, 1.05),
      told(['vomiting', 'recent-vaccination'], 1.3, 1),
    ],
    signs: [
      shows(['cranial-nerves/opsoclonus', 'cranial-nerves/ocular-flutter'], 60, 0.3),
      shows(['involuntary-movements/myoclonus'], 6, 0.5),
    ],
    source: recalled('adams-victor', 'opsoclonus-myoclonus'),
  },
  {
    key: 'tuberculoma',
    group: 'infective',
    label: 'Tuberculoma of brain or cord',
    produces: [
      inKind(['hemisphere', 'brainstem', 'cerebellum'], 'rare'),
      at(['raised-intracranial-pressure', 'cavernous-sinus', 'orbital-apex', 'basal-meningeal-process'], 'rare'),
      inKind(['cord'], 'rare'),
      at(['oculomotor-nerve', 'optic-chiasm', 'cerebellopontine-angle'], 'rare'),
      inKind(['multiple-sites'], 'rare'),
      at(['abducens-nerve', 'facial-nerve', 'optic-nerve'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.4 },
    history: [
      told('tuberculosis', 15, 0.5),
      told(['travel', 'hiv-infection', 'immunosuppression', 'tnf-inhibitor'], 3, 0.6),
      told(['night-sweats', 'fever', 'chronic-cough', ...weightLoss], 2.5, 0.6),
      told(['seizure', 'headache', 'morning-headache'], 1.5, 0.8),
    ],
    source: recalled('tuberculous-meningitis-2002'),
  },
  {
    key: 'manganese-or-toxic-parkinsonism',
    group: 'toxic',
    label: 'Parkinsonism of manganese, carbon monoxide or another poison',
    produces: [
      at(['akinetic-rigid-syndrome', 'frontal-gait-disorder'], 'uncommon'),
      at(['striatum', 'hyperkinetic-syndrome', 'corticobulbar-both-sides'], 'rare'),
      at(['diffuse-encephalopathy', 'cerebellar-degeneration'], 'exceptional'),
    ],
    tempo: tempos.subacute,
    courses: { progressive: 1.1 },
    age: { from: 18, to: 100, outside: 0.3 },
    history: [
      told(
        [
          'manganese',
          'other-heavy-metal',
          'carbon-monoxide',
          'organic-solvents',
          'organophosphate',
          'injecting-drug-use',
        ],
        25,
        0.03,
      ),
      told('chronic-liver-disease', 3, 1),
      told(['behaviour-change', 'psychiatric-disorder', 'falls'], 1.5, 0.95),
    ],
    source: recalled('adams-victor', 'manganese and carbon monoxide'),
  },
  {
    key: 'restless-legs-syndrome',
    group: 'degenerative',
    label: 'Restless legs syndrome',
    produces: [at(['no-lesion'], 'uncommon'), at(['hyperkinetic-syndrome'], 'rare')],
    tempo: tempos.chronic,
    history: [
      told('restless-legs', 60, 0.01),
      told(['pregnancy', 'chronic-kidney-disease', 'family/similar-disorder'], 2, 0.95),
      told(['antipsychotic', 'metoclopramide'], 1.5, 1),
    ],
    source: recalled('adams-victor', 'restless legs'),
  },
  {
    key: 'idiopathic-hypoglossal-palsy',
    group: 'immune',
    label: 'Idiopathic or post-infectious palsy of the tongue',
    produces: [at(['hypoglossal-nerve'], 'uncommon'), at(['vagus-nerve', 'jugular-foramen'], 'rare')],
    tempo: tempos.acute,
    courses: { progressive: 0.4, improving: 2 },
    history: [
      told(['preceding-infection', 'preceding-respiratory-infection', 'recent-vaccination'], 2.5, 0.8),
      told(['cancer', 'lymphoma', 'face-or-neck-lump', ...weightLoss], 0.3, 1.1),
      told(['neck-pain', 'headache'], 0.7, 1.1),
    ],
    source: recalled('twelfth-nerve-1996', 'no cause found in a few'),
  },
  {
    key: 'rickettsial-encephalitis',
    group: 'infective',
    label: 'Scrub typhus or other rickettsial infection of brain and meninges',
    produces: [
      at(['basal-meningeal-process', 'brainstem-diffuse', 'raised-intracranial-pressure'], 'rare'),
      at(['abducens-nerve', 'facial-nerve', 'cochlear-nerve', 'cerebellar-vermis'], 'rare'),
      at(['cerebellar-degeneration'], 'rare'),
      at(['hyperkinetic-syndrome', 'cerebellar-hemisphere', 'demyelinating-polyradiculoneuropathy'], 'exceptional'),
      at(['oculomotor-nerve', 'optic-nerve'], 'exceptional'),
      at(['diffuse-encephalopathy', 'meningeal-irritation'], 'rare'),
    ],
    // A week of fever comes before the head.
    tempo: { hyperacute: 0.02, acute: 0.6, subacute: 0.36, chronic: 0.02 },
    courses: { 'relapsing-remitting': 0.1 },
    history: [
      told('fever', 5, 0.05),
      told(['travel', 'tick-bite'], 6, 0.3),
      told('rash', 3, 0.8),
      told(anyHeadache, 1.6, 0.5),
      told(['hearing-loss', 'muscle-pain', 'breathlessness'], 1.5, 0.95),
      told(['travel', 'tick-bite', 'rash'], 1, 0.15),
    ],
    signs: [
      shows(['autonomic/fever'], 3, 0.3),
      shows(
        ['higher-function/confusion', 'higher-function/drowsiness', 'higher-function/coma', 'higher-function/stupor'],
        2,
        0.6,
      ),
      shows(['inspection/enlarged-lymph-nodes', 'inspection/enlarged-liver-or-spleen'], 2, 0.95),
      shows(['inspection/non-blanching-rash'], 1.6, 1),
    ],
    source: fromMemory,
  },
  {
    key: 'adult-onset-alexander-disease',
    group: 'hereditary',
    inheritance: ['autosomal-dominant'],
    label: 'Alexander disease of later onset',
    produces: [
      at(['bulbar-motor-nuclei', 'brainstem-diffuse', 'corticobulbar-both-sides'], 'rare'),
      at(['spinal-cord-lateral', 'upper-motor-neuron-system', 'cerebellar-degeneration'], 'rare'),
      at(['cerebellar-vermis', 'medulla-half'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { progressive: 1.5, improving: 0.05, 'relapsing-remitting': 0.2 },
    age: { from: 12, to: 65, outside: 0.3 },
    history: [
      told(['dysphagia', 'slurred-speech', 'voice-change'], 2, 0.6),
      told(['unsteadiness', 'difficulty-walking', 'bladder-disturbance'], 1.5, 0.8),
      told('family/similar-disorder', 4, 0.7),
    ],
    signs: [
      shows(['involuntary-movements/palatal-tremor'], 15, 0.8),
      shows(['plantars/plantar-response', 'clonus/ankle', 'gait/spastic'], 2, 0.7),
    ],
    values: [
      reads('mri-brain', [
        ['white-matter-disease', 3],
        ['infarct', 0.05],
      ]),
      reads('genetic-test', [
        ['other', 30],
        ['negative', 0.1],
      ]),
    ],
    source: fromMemory,
  },
  {
    key: 'hypertrophic-olivary-degeneration',
    group: 'degenerative',
    label: 'Degeneration of the inferior olive after a lesion of brainstem or cerebellum',
    produces: [
      at(['pons-tegmentum', 'midbrain-tegmentum', 'brainstem-diffuse', 'cerebellar-hemisphere'], 'rare'),
      at(['medulla-half', 'medial-longitudinal-fasciculus', 'action-tremor', 'hyperkinetic-syndrome'], 'rare'),
    ],
    // Weeks to a year after the lesion.
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.2, improving: 0.2 },
    age: { from: 25, to: 100, outside: 0.3 },
    history: [
      told(['stroke', 'head-injury', 'recent-surgery'], 6, 0.3),
      told(['oscillopsia', 'tremor'], 2, 0.8),
      told('fever', 0.3, 1),
      told('hypertension', 1.2, 1),
    ],
    signs: [shows(['involuntary-movements/palatal-tremor'], 30, 0.1)],
    source: fromMemory,
  },
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
    sides: [sided(eyeMusclePalsies, { one: 1, both: 0.3 })],
    source: recalled('fourth-nerve-2018', 'no cause found in a share'),
  },
  {
    key: 'vagal-zoster',
    group: 'infective',
    label: 'Zoster of the glossopharyngeal and vagus nerves',
    produces: [
      at(['jugular-foramen', 'vagus-nerve'], 'uncommon'),
      at(['recurrent-laryngeal-nerve', 'bulbar-motor-nuclei', 'hypoglossal-nerve'], 'rare'),
      at(['spinal-accessory-nerve'], 'rare'),
    ],
    tempo: tempos.acute,
    history: [
      told(['rash', 'herpes-zoster'], 20, 0.5),
      told(['ear-pain', 'facial-pain', 'headache', 'neck-pain'], 2, 0.5),
      told(['dysphagia', 'voice-change'], 1.6, 0.5),
      told(['immunosuppression', 'diabetes-mellitus'], 1.5, 0.95),
      told(['fever', 'hearing-loss', 'vertigo'], 1.2, 1),
      told(['cancer', 'weight-loss', 'face-or-neck-lump'], 0.6, 1),
      told('nasal-regurgitation', 1.2, 1),
    ],
    signs: [shows(['inspection/vesicular-rash'], 12, 0.6)],
    source: recalled('ramsay-hunt-2001'),
  },
  {
    key: 'cardiovocal-syndrome',
    group: 'compressive',
    label: 'Left vocal cord palsy by aorta, pulmonary artery or heart (Ortner syndrome)',
    produces: [at(['recurrent-laryngeal-nerve'], 'uncommon'), at(['vagus-nerve'], 'rare')],
    tempo: { hyperacute: 0.1, acute: 0.2, subacute: 0.35, chronic: 0.35 },
    age: { from: 30, to: 110, outside: 0.4 },
    history: [
      told('aortic-disease', 15, 0.4),
      told(['heart-failure', 'cardiomyopathy', 'atrial-fibrillation', 'ischaemic-heart-disease'], 3, 0.8),
      told(['hypertension', 'breathlessness', 'thoracic-back-pain'], 1.7, 0.8),
      told(['cancer', 'neck-or-chest-surgery'], 0.5, 1),
    ],
    source: fromMemory,
  },
  {
    // Of 135 people 80 % had failing kidneys; consciousness falls in 47 %, myoclonus in 42 %, non-convulsive status in 25 %.
    key: 'beta-lactam-encephalopathy',
    group: 'toxic',
    label: 'Encephalopathy from cefepime or another beta-lactam',
    produces: [at(['diffuse-encephalopathy'], 'uncommon'), at(['cortex-middle-cerebral-lower'], 'rare')],
    tempo: tempos.acute,
    age: { from: 40, to: 110, outside: 0.4 },
    history: [
      told('beta-lactam', 25, 0.02),
      told('chronic-kidney-disease', 5, 0.3),
      told(['fever', 'sepsis', 'recent-bacteraemia'], 1.3, 1),
    ],
    signs: [shows(['involuntary-movements/myoclonus', 'involuntary-movements/asterixis'], 2.5, 0.7)],
    values: [
      reads('eeg', [
        ['status-epilepticus', 3],
        ['epileptiform', 2],
        ['slowing', 1.5],
        ['normal', 0.02],
      ]),
    ],
    source: read('cefepime-2017', 'abstract'),
  },
  {
    key: 'moyamoya',
    group: 'vascular',
    label: 'Moyamoya disease or syndrome',
    produces: [
      at(
        ['cortex-middle-cerebral', 'cortex-middle-cerebral-upper', 'cortex-anterior-cerebral', 'internal-capsule'],
        'rare',
      ),
      at(['cortex-hand-area', 'cortex-parasagittal', 'cortex-frontal'], 'rare'),
      at(['no-lesion', 'hyperkinetic-syndrome', 'striatum', 'cortex-parietal'], 'rare'),
      inKind(['hemisphere'], 'exceptional'),
    ],
    tempo: tempos.suddenOrAcute,
    courses: { 'relapsing-remitting': 3 },
    // Two peaks of onset, about 5 and about 40 years.
    age: { from: 1, to: 55, outside: 0.1 },
    sex: { male: 0.7, female: 1.3 },
    history: [
      told('similar-attacks-before', 6, 0.6),
      told(['transient-ischaemic-attack', 'stroke'], 2, 0.8),
      told(['down-syndrome', 'radiotherapy'], 6, 0.95),
      told(anyHeadache, 1.3, 0.9),
      told(['family/similar-disorder', 'family/stroke'], 2, 0.95),
      told(['hyperthyroidism', 'spreading-over-minutes'], 1.3, 1),
      told(['hypertension', 'atrial-fibrillation'], 0.6, 1),
    ],
    signs: [shows(['inspection/cafe-au-lait-spots', 'inspection/neurofibromas'], 4, 0.95)],
    values: [
      reads('angiography-head-neck', [
        ['moyamoya', 100],
        ['occlusion', 2],
        ['normal', 0.02],
      ]),
    ],
    source: recalled('moyamoya-2009'),
  },
];
