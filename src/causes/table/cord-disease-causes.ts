import { read, recalled } from '../../kernel/cite.ts';
import { aboveTheLoins } from './above-the-loins.ts';
import { at, atLeast, type Cause, inKind, mondo, reads, shows, tempos, told } from './cause.ts';
import { spinalPain, weightLoss } from './complaints.ts';
import { cordLooksSpared, fluidWithoutCells, lesionIsOutside, pressesFromOutside } from './cord-images.ts';
import { longLesion } from './cord-inflammation-causes.ts';

const cordChapter = recalled('adams-victor', 'diseases of the spinal cord');
const anyCord = ['cord'] as const;

/** Infection, poisoning and rarer structural disease of the spinal cord. */
export const cordDiseaseCauses: readonly Cause[] = [
  // Infection
  {
    key: 'acute-infectious-myelitis',
    group: 'infective',
    label: 'Acute viral or bacterial myelitis',
    produces: [
      at(['polyradiculopathy', 'demyelinating-polyradiculoneuropathy'], 'rare'),
      at(['spinal-cord-transverse', 'conus-medullaris', 'spinal-cord-anterior', 'spinal-cord-hemisection'], 'uncommon'),
      inKind(anyCord, 'rare'),
      at(['cauda-equina', 'lower-motor-neuron-system', 'meningeal-irritation', 'brainstem-diffuse'], 'exceptional'),
    ],
    tempo: tempos.acute,
    courses: { progressive: 1 },
    history: [
      told(['sore-throat', 'vomiting', 'livestock-or-raw-milk', 'saddle-numbness', 'sinus-or-ear-infection'], 1.3, 1),
      told(['travel', 'tick-bite', 'syphilis', 'tuberculosis', 'unprotected-sex'], 2, 1),
      told(['preceding-infection', 'preceding-respiratory-infection', 'preceding-gastroenteritis'], 1.6, 0.95),
      told('fever', 5, 0.4),
      told(['rash', 'herpes-zoster'], 4, 0.85),
      told(['immunosuppression', 'hiv-infection'], 3, 0.9),
      told('headache', 1.5, 0.9),
      told(['oral-or-genital-ulcers', 'muscle-pain'], 1.6, 1),
    ],
    signs: [
      shows(['special-tests/neck-stiffness'], 2.5, 0.95),
      shows(['inspection/vesicular-rash'], 10, 0.8),
      shows(['autonomic/fever'], 3, 0.6),
    ],
    quantities: [atLeast('csf-white-cells', 5, '10*6/L', 4, 0.1)],
    values: [
      ...longLesion(3, 0.8, 0.05),
      reads('csf-microbiology', [
        ['positive', 60],
        ['negative', 0.4],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'spinal-tuberculosis',
    group: 'infective',
    label: 'Tuberculosis of the spine',
    produces: [
      at(['spinal-cord-transverse', 'conus-medullaris'], 'uncommon'),
      inKind(anyCord, 'uncommon', 'thoracic'),
      inKind(anyCord, 'rare'),
      inKind(['cauda-equina'], 'rare'),
      inKind(['root'], 'rare', 'thoracic'),
      at(['foramen-magnum', 'polyradiculopathy', 'adjacent-nerve-roots', 'no-lesion'], 'rare'),
      inKind(['root'], 'exceptional', 'cervical'),
    ],
    tempo: tempos.subacuteOrChronic,
    paralysis: 1.2,
    courses: { progressive: 1.5 },
    history: [
      told(['malnutrition', 'injecting-drug-use', 'family/similar-disorder'], 1.3, 1),
      told('chronic-cough', 2, 1),
      told('tuberculosis', 15, 0.7),
      told(spinalPain, 2, 0.35),
      // Fever, sweats or wasting in a third to a half. Garg and Somvanshi 2011 (from memory).
      told(['night-sweats', 'fever', ...weightLoss], 3.5, 0.65),
      told('travel', 3, 0.8),
      told(['immunosuppression', 'hiv-infection'], 2.5, 0.9),
      told(['night-spinal-pain', 'diabetes-mellitus', 'alcohol-excess', 'chronic-kidney-disease'], 1.4, 1),
      told(['tnf-inhibitor', 'corticosteroid'], 1.8, 1),
    ],
    signs: [
      shows(['inspection/enlarged-lymph-nodes'], 2, 1),
      shows(['inspection/kyphosis'], 5, 0.8),
      shows(['inspection/spinal-tenderness'], 2.5, 0.75),
    ],
    quantities: [atLeast('esr', 30, 'mm/h', 2, 0.3)],
    values: [
      ...pressesFromOutside,
      reads('mri-whole-spine', [
        ['infection-or-abscess', 40],
        ['metastasis', 0.5],
        ['normal', 0.02],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'hiv-vacuolar-myelopathy',
    group: 'infective',
    label: 'Vacuolar myelopathy of HIV infection',
    produces: [
      at(['spinal-cord-posterior', 'spinal-cord-transverse'], 'rare'),
      at(['spinal-cord-posterolateral', 'spinal-cord-lateral'], 'uncommon'),
      inKind(anyCord, 'rare', 'thoracic'),
      at(['upper-motor-neuron-system'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    paralysis: 0.4,
    courses: { progressive: 1.4 },
    history: [
      told(['fever', 'back-pain', 'thoracic-back-pain', 'night-sweats'], 0.4, 1.05),
      told(['bladder-disturbance', 'sexual-dysfunction'], 1.6, 0.8),
      told('hiv-infection', 25, 0.02),
      told(['cognitive-change', ...weightLoss], 2, 0.8),
      told(['unprotected-sex', 'injecting-drug-use'], 1.6, 1),
    ],
    signs: [shows(['inspection/spinal-tenderness', 'inspection/kyphosis'], 0.2, 1)],
    values: [
      ...cordLooksSpared,
      reads('hiv-test', [
        ['positive', 25],
        ['negative', 0.02],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'schistosomal-or-parasitic-myelopathy',
    group: 'infective',
    label: 'Myelopathy of schistosomiasis or another parasite',
    produces: [
      at(['polyradiculopathy'], 'rare'),
      at(['cauda-equina'], 'uncommon'),
      inKind(anyCord, 'rare'),
      at(['lower-motor-neuron-system', 'demyelinating-polyradiculoneuropathy', 'lumbosacral-plexus'], 'exceptional'),
      at(['conus-medullaris'], 'common'),
      at(['spinal-cord-transverse'], 'uncommon'),
    ],
    tempo: tempos.acuteOrSubacute,
    age: { from: 5, to: 50, outside: 0.6 },
    history: [
      told(['bladder-disturbance', 'rash', 'fever', 'abdominal-pain'], 1.4, 1),
      // Larvae of roundworms come with raw meat or liver, tapeworms with dogs and sheep.
      told(['travel', 'freshwater-contact', 'raw-meat', 'livestock-or-raw-milk'], 8, 0.05),
      told(['freshwater-contact', 'raw-meat'], 2, 1),
      told('freshwater-contact', 8, 0.4),
      told(['back-pain', 'bilateral-leg-pain'], 1.5, 0.6),
    ],
    signs: [aboveTheLoins, shows(['inspection/kyphosis'], 0.4, 1)],
    quantities: [atLeast('eosinophils', 0.5, '10*9/L', 8, 0.5), atLeast('csf-white-cells', 5, '10*6/L', 2, 0.5)],
    values: [
      ...longLesion(1.5, 1, 0.6),
      reads('mri-lumbar-spine', [
        ['conus-lesion', 4],
        ['cauda-equina-compression', 0.3],
      ]),
    ],
    source: cordChapter,
  },

  {
    key: 'radiation-myelopathy',
    group: 'toxic',
    label: 'Radiation myelopathy',
    produces: [
      at(['spinal-cord-hemisection', 'spinal-cord-transverse'], 'uncommon'),
      inKind(anyCord, 'uncommon'),
      at(['foramen-magnum', 'medulla-half'], 'exceptional'),
      at(['lower-motor-neuron-system'], 'rare'),
    ],
    tempo: tempos.subacuteOrChronic,
    courses: { progressive: 1.5 },
    history: [
      told(['cancer', 'lymphoma'], 2, 0.8),
      told('radiotherapy', 40, 0.005),
      told(spinalPain, 0.5, 1.3),
      told('electric-shock-on-neck-flexion', 1.6, 1),
    ],
    values: [
      ...longLesion(3, 1.2, 0.1),
      reads('mri-whole-spine', [
        ['metastasis', 0.1],
        ['normal', 0.7],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'hepatic-myelopathy',
    group: 'metabolic',
    label: 'Hepatic myelopathy',
    produces: [
      at(['spinal-cord-lateral'], 'uncommon'),
      at(['spinal-cord-posterolateral'], 'rare'),
      at(['spinal-cord-transverse', 'upper-motor-neuron-system'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    paralysis: 0.4,
    courses: { progressive: 1.4 },
    age: { from: 25, to: 80, outside: 0.5 },
    history: [
      // It follows a shunt, placed or grown.
      told(['stiffness', 'recent-surgery'], 1.4, 1),
      told('chronic-liver-disease', 30, 0.02),
      told(['alcohol-excess', 'hepatitis-b', 'hepatitis-c'], 2, 0.7),
      told('cognitive-change', 1.4, 1),
    ],
    quantities: [atLeast('ammonia', 50, 'umol/L', 4, 0.3)],
    values: [...cordLooksSpared],
    signs: [shows(['inspection/jaundice', 'inspection/ascites', 'inspection/spider-naevi'], 8, 0.5)],
    source: cordChapter,
  },
  {
    key: 'konzo-or-lathyrism',
    group: 'toxic',
    label: 'Konzo or lathyrism',
    produces: [
      at(['spinal-cord-lateral', 'upper-motor-neuron-system', 'spinal-cord-transverse', 'optic-nerve'], 'rare'),
      at(['cochlear-nerve', 'sensory-polyneuropathy', 'spinal-cord-posterolateral'], 'exceptional'),
    ],
    // The legs stiffen within hours, often on a walk, and then stay as they are.
    tempo: { hyperacute: 0.3, acute: 0.5, subacute: 0.16, chronic: 0.04 },
    courses: { static: 3, progressive: 0.3 },
    age: { from: 3, to: 45, outside: 0.5 },
    history: [
      told('cassava-or-grass-pea', 40, 1),
      told('family/similar-disorder', 2, 1),
      told(['bladder-disturbance', 'numbness', 'back-pain'], 0.4, 1.1),
      told('travel', 3, 0.4),
      // Who lives where it is met has not travelled, but has gone hungry.
      told(['travel', 'malnutrition', 'vegan-diet'], 1.7, 0.08),
      told(['malnutrition', 'vegan-diet'], 5, 0.4),
    ],
    values: [...cordLooksSpared],
    source: cordChapter,
  },
  {
    key: 'decompression-sickness',
    group: 'vascular',
    label: 'Decompression sickness of the spinal cord',
    produces: [
      inKind(anyCord, 'rare'),
      at(['spinal-cord-transverse', 'spinal-cord-posterior', 'spinal-cord-posterolateral'], 'rare'),
      inKind(anyCord, 'rare', 'thoracic'),
      at(['vestibular-nerve', 'cochlear-nerve', 'diffuse-encephalopathy', 'cauda-equina'], 'exceptional'),
      inKind(['hemisphere', 'brainstem', 'cerebellum'], 'exceptional'),
    ],
    tempo: tempos.sudden,
    courses: { progressive: 0.8, improving: 1.5 },
    age: { from: 15, to: 65, outside: 0.4 },
    history: [
      told(['back-pain', 'thoracic-back-pain', 'tight-band', 'vertigo', 'rash'], 1.5, 1),
      told('diving', 80, 0.02),
      told('joint-pain', 3, 0.8),
      told(['cognitive-change', 'visual-loss', 'breathlessness', 'unsteadiness'], 1.4, 1),
    ],
    source: cordChapter,
  },
  {
    key: 'electrical-injury-of-the-cord',
    group: 'traumatic',
    label: 'Electrical or lightning injury of the cord',
    produces: [inKind(anyCord, 'rare'), at(['lower-motor-neuron-system', 'upper-motor-neuron-system'], 'exceptional')],
    // At once, or after days to months.
    tempo: { hyperacute: 0.55, acute: 0.2, subacute: 0.15, chronic: 0.1 },
    history: [told(['trauma', 'cardiac-arrest', 'loss-of-consciousness'], 1.3, 1), told('electric-shock', 80, 0.01)],
    source: cordChapter,
  },

  // Vessels and structure
  {
    key: 'spinal-arteriovenous-malformation',
    group: 'vascular',
    label: 'Arteriovenous malformation of the spinal cord',
    produces: [
      at(['demyelinating-polyradiculoneuropathy', 'polyradiculopathy', 'cauda-equina'], 'rare'),
      inKind(anyCord, 'rare'),
      at(['spinal-cord-central', 'spinal-cord-hemisection', 'conus-medullaris', 'spinal-cord-transverse'], 'uncommon'),
      at(['meningeal-irritation', 'no-lesion'], 'exceptional'),
    ],
    // It bleeds at once, or steals blood for years.
    tempo: tempos.any,
    paralysis: 0.8,
    courses: { 'relapsing-remitting': 1.5 },
    age: { from: 5, to: 45, outside: 0.4 },
    history: [
      told(['resolved-deficit', 'similar-attacks-before', 'fluctuating-symptoms'], 1.7, 1),
      told(['headache', 'heavy-exertion', 'pregnancy', 'vomiting'], 1.5, 1),
      told('fever', 0.4, 1),
      told('neurogenic-claudication', 2, 1),
      told(spinalPain, 2, 0.6),
      told('thunderclap-headache', 2, 1),
    ],
    signs: [
      // What bleeds into the fluid stiffens the neck.
      shows(['special-tests/neck-stiffness'], 3, 1),
    ],
    quantities: [atLeast('csf-red-cells', 1000, '10*6/L', 4, 0.8)],
    values: [
      reads('mri-thoracic-spine', [
        ['haematoma', 2],
        ['cord-lesion-long', 2],
        ['normal', 0.1],
      ]),
      reads('mri-whole-spine', [
        ['haematoma', 2],
        ['normal', 0.05],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'cord-herniation',
    group: 'compressive',
    label: 'Idiopathic herniation of the thoracic cord',
    produces: [
      at(['spinal-cord-lateral', 'spinal-cord-posterolateral', 'spinal-cord-transverse'], 'rare'),
      inKind(anyCord, 'rare', 'thoracic'),
      at(['spinal-cord-anterior'], 'uncommon', 'thoracic'),
      at(['spinal-cord-hemisection'], 'common', 'thoracic'),
    ],
    tempo: { hyperacute: 0.02, acute: 0.04, subacute: 0.18, chronic: 0.76 },
    paralysis: 0.4,
    courses: { progressive: 1.4 },
    age: { from: 25, to: 75, outside: 0.5 },
    sex: { male: 0.6, female: 1.4 },
    history: [
      told(['radicular-arm-pain', 'radicular-leg-pain', 'cancer', 'optic-neuritis'], 0.6, 1),
      told(['bladder-disturbance', 'fever'], 0.7, 1),
      told('spinal-surgery', 1.5, 1),
      told(['neuropathic-pain', 'painless-injury', 'numbness'], 1.4, 1),
    ],
    quantities: [fluidWithoutCells],
    values: [
      reads('mri-thoracic-spine', [
        ['normal', 0.3],
        ['cord-lesion-long', 0.4],
        ['other', 3],
        ['cord-compression', 0.6],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'ossification-of-posterior-longitudinal-ligament',
    group: 'compressive',
    label: 'Ossification of the posterior longitudinal ligament',
    produces: [
      at(['lower-motor-neuron-system', 'polyradiculopathy'], 'exceptional'),
      inKind(anyCord, 'uncommon', 'cervical'),
      inKind(anyCord, 'rare', 'thoracic'),
      at(['spinal-cord-lateral', 'spinal-cord-posterolateral'], 'rare'),
    ],
    tempo: tempos.chronic,
    paralysis: 0.5,
    courses: { progressive: 1.3 },
    age: { from: 45, to: 100, outside: 0.3 },
    sex: { male: 1.4, female: 0.6 },
    history: [
      told(['spinal-stenosis', 'spinal-surgery', 'falls'], 1.6, 1),
      told(['neck-pain', 'stiffness', 'clumsiness'], 1.3, 0.9),
      told(['diabetes-mellitus', 'obesity'], 1.6, 0.9),
      told('neck-trauma', 1.5, 1),
    ],
    quantities: [fluidWithoutCells],
    values: [
      ...(['mri-cervical-spine', 'mri-whole-spine'] as const).map((result) =>
        reads(result, [
          ['cord-compression', 8],
          ['normal', 0.03],
        ]),
      ),
    ],
    source: cordChapter,
  },
  {
    key: 'epidural-lipomatosis',
    group: 'compressive',
    label: 'Spinal epidural lipomatosis',
    produces: [
      at(['polyradiculopathy'], 'uncommon'),
      inKind(anyCord, 'uncommon', 'thoracic'),
      inKind(anyCord, 'rare', 'lumbosacral'),
      at(['spinal-cord-lateral', 'conus-medullaris'], 'rare'),
      inKind(['cauda-equina'], 'uncommon'),
      inKind(['root'], 'rare', 'lumbosacral'),
      at(['spinal-cord-posterolateral'], 'exceptional'),
    ],
    tempo: tempos.subacuteOrChronic,
    paralysis: 0.4,
    history: [
      told('corticosteroid', 10, 0.3),
      told('obesity', 4, 0.3),
      told('neurogenic-claudication', 2, 0.8),
      told(['asthma', 'rheumatoid-arthritis', 'lupus', 'sarcoidosis'], 1.5, 1),
      told('back-pain', 1.2, 1),
    ],
    quantities: [fluidWithoutCells],
    values: [
      reads('mri-whole-spine', [
        ['cord-compression', 2],
        ['metastasis', 0.1],
        ['normal', 0.05],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'conus-or-filum-tumour',
    group: 'neoplastic',
    label: 'Tumour of conus or filum (ependymoma)',
    produces: [
      at(['spinal-cord-transverse', 'polyradiculopathy', 'adjacent-nerve-roots'], 'rare'),
      at(['conus-medullaris', 'cauda-equina'], 'common'),
    ],
    // Ependymomas of the filum bleed at times.
    tempo: { hyperacute: 0.05, acute: 0.08, subacute: 0.22, chronic: 0.65 },
    paralysis: 0.5,
    courses: { progressive: 1.6, improving: 0.1 },
    age: { from: 10, to: 65, outside: 0.5 },
    history: [
      told(['radicular-leg-pain', 'leg-pain', 'pain-on-straining', 'headache'], 1.3, 1),
      told(['bladder-disturbance', 'sexual-dysfunction', 'saddle-numbness'], 1.3, 0.9),
      told(['back-pain', 'night-spinal-pain'], 2, 0.4),
      told('night-spinal-pain', 2, 0.9),
      told('bilateral-leg-pain', 1.5, 0.9),
    ],
    signs: [shows(['inspection/scoliosis'], 1.3, 1), aboveTheLoins],
    values: [
      reads('mri-lumbar-spine', [
        ['conus-lesion', 8],
        ['cauda-equina-compression', 1.5],
        ['normal', 0.02],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'tethered-cord',
    group: 'compressive',
    label: 'Tethered cord syndrome',
    mondo: mondo('MONDO:0006995', 'tethered spinal cord syndrome'),
    produces: [
      at(['spinal-cord-transverse', 'spinal-cord-posterolateral', 'lumbosacral-plexus'], 'rare'),
      at(['common-fibular-nerve', 'sciatic-nerve', 'spinal-cord-hemisection'], 'exceptional'),
      at(
        [
          'lower-motor-neuron-system',
          'motor-polyneuropathy',
          'adjacent-nerve-roots',
          'nerve-root',
          'polyradiculopathy',
        ],
        'rare',
      ),
      at(['conus-medullaris'], 'common'),
      at(['cauda-equina', 'spinal-cord-lateral'], 'uncommon'),
    ],
    // Years of slow decline, or a sudden one when the spine is bent hard, as in labour or on the operating table.
    tempo: { hyperacute: 0.03, acute: 0.06, subacute: 0.11, chronic: 0.8 },
    paralysis: 0.4,
    age: { from: 0, to: 40, outside: 0.3 },
    history: [
      told(['pregnancy', 'heavy-exertion', 'foot-pain'], 1.3, 1),
      told(['bowel-disturbance', 'falls', 'difficulty-walking'], 1.3, 1),
      told('spina-bifida', 12, 1),
      told('spinal-surgery', 2, 1),
      told(['trauma', 'fever'], 0.5, 1),
      told(['back-pain', 'leg-pain'], 1.5, 0.8),
      told('bladder-disturbance', 1.5, 0.7),
    ],
    signs: [
      shows(['inspection/foot-ulcer'], 2, 1),
      aboveTheLoins,
      shows(['inspection/lumbosacral-skin-mark'], 12, 0.6),
      shows(
        ['inspection/pes-cavus', 'inspection/scoliosis', 'inspection/equinovarus', 'inspection/hammer-toes'],
        3,
        0.7,
      ),
    ],
    values: [
      reads('mri-lumbar-spine', [
        ['conus-lesion', 3],
        ['normal', 0.05],
      ]),
    ],
    source: cordChapter,
  },
  {
    key: 'cerebral-palsy',
    group: 'degenerative',
    label: 'Cerebral palsy',
    mondo: mondo('MONDO:0006497', 'cerebral palsy'),
    produces: [
      at(['spinal-cord-lateral', 'upper-motor-neuron-system', 'cortex-parasagittal'], 'uncommon'),
      inKind(['hemisphere'], 'rare'),
      // A third have one half alone.
      at(
        ['internal-capsule', 'cortex-middle-cerebral', 'cortex-middle-cerebral-upper', 'cortex-hand-area'],
        'uncommon',
      ),
      at(['thalamus-and-capsule', 'cortex-anterior-cerebral'], 'uncommon'),
      // A tenth or so twist and writhe, after a lack of oxygen at term or jaundice.
      at(['hyperkinetic-syndrome', 'corticobulbar-both-sides', 'striatum'], 'rare'),
      at(['cerebellar-degeneration', 'diffuse-encephalopathy'], 'exceptional'),
    ],
    tempo: tempos.lifelong,
    courses: { static: 4, progressive: 0.2 },
    age: { from: 0, to: 2, outside: 0.05 },
    history: [
      told('shoulder-dystocia', 1.4, 1),
      told(['developmental-delay', 'loss-of-skills'], 2, 1),
      told('perinatal-injury', 20, 0.5),
      told('epilepsy', 2, 0.9),
      told(['stiffness', 'difficulty-walking', 'falls'], 1.2, 1),
    ],
    signs: [
      shows(['special-tests/asymmetric-moro'], 1.3, 1),
      shows(['inspection/equinovarus', 'inspection/achilles-contracture'], 3, 0.7),
    ],
    source: recalled('adams-victor', 'cerebral palsy'),
  },
  {
    // Four people of 39 years on average, without an injury: a pain of the neck, then legs, half a cord or all four limbs
    // within hours to days.
    key: 'cervical-disc-herniation-with-cord-compression',
    group: 'compressive',
    label: 'Cervical disc herniation that compresses the cord',
    produces: [
      inKind(['cord'], 'rare', 'thoracic'),
      at(['adjacent-nerve-roots'], 'rare', 'cervical'),
      inKind(['cord'], 'uncommon', 'cervical'),
      // Beside the midline it presses on one half.
      at(['spinal-cord-hemisection'], 'common', 'cervical'),
      at(['spinal-cord-posterior', 'spinal-cord-posterolateral'], 'rare', 'cervical'),
      at(['spinal-cord-lateral', 'foramen-magnum', 'upper-motor-neuron-system'], 'exceptional'),
    ],
    tempo: { hyperacute: 0.2, acute: 0.35, subacute: 0.3, chronic: 0.15 },
    courses: { progressive: 1.5, 'relapsing-remitting': 0.2 },
    age: { from: 25, to: 70, outside: 0.3 },
    history: [
      told(['disc-herniation', 'spinal-stenosis'], 2.5, 1),
      told(['neck-trauma', 'trauma', 'electric-shock-on-neck-flexion'], 1.6, 1),
      told('anticoagulant', 0.6, 1),
      told('neck-pain', 3.5, 0.4),
      told('radicular-arm-pain', 1.8, 0.9),
      told(['heavy-exertion', 'pain-on-straining'], 1.8, 1),
      told('fever', 0.3, 1),
    ],
    signs: [shows(['special-tests/spurling', 'special-tests/lhermitte'], 1.6, 0.9)],
    quantities: [fluidWithoutCells],
    values: [
      ...lesionIsOutside,
      ...(['mri-cervical-spine', 'mri-whole-spine'] as const).map((result) =>
        reads(result, [
          ['cord-compression', 8],
          ['root-compression', 2],
          ['normal', 0.02],
        ]),
      ),
    ],
    source: read('cervical-disc-2016', 'abstract'),
  },
];
