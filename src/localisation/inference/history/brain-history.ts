import type { Applies } from '../shift.ts';
import { anyOf, bothLabyrinths, type HistoryWeight, kinds, sites, weigh } from './history-weight.ts';

const cortex: Applies = ({ key }) => key.startsWith('cortex-');
/** Where speech is led from, and what lies outside it. */
const frontAndTemple: Applies = (site) =>
  site.side === 'left' &&
  [
    'cortex-middle-cerebral',
    'cortex-middle-cerebral-upper',
    'cortex-middle-cerebral-lower',
    'cortex-frontal',
    'cortex-temporal',
  ].includes(site.key);
/** The vestibular nuclei with the peduncles beside them, the labyrinth and its nerve. */
const balance = sites('medulla-lateral', 'pons-lateral', 'cerebellopontine-angle', 'vestibular-nerve');
const struckCerebellum = sites('cerebellar-hemisphere', 'cerebellar-vermis');
/** Where growths of the brain settle or start: a lobe, the cerebellum, the thalamus. */
const grownInto: Applies = ({ key, kind }) =>
  [
    'cortex-frontal',
    'cortex-temporal',
    'cortex-parietal',
    'cortex-occipital',
    'cortex-parasagittal',
    'cortex-hand-area',
    'cerebellar-hemisphere',
    'cerebellar-vermis',
  ].includes(key) || kind === 'intracranial-pressure';
/** Veins run together along the falx, and behind a clot there the pressure rises. */
const drainedBySinuses = sites('raised-intracranial-pressure', 'cortex-parasagittal', 'cortex-anterior-cerebral');
const baseOfTheSkull = sites(
  'cavernous-sinus',
  'orbital-apex',
  'abducens-nerve',
  'trigeminal-nerve',
  'jugular-foramen',
  'basal-meningeal-process',
);
const smallArteriesOfTheNerves = sites('oculomotor-nerve', 'trochlear-nerve', 'abducens-nerve');
const inflamedBrain = sites('cortex-temporal', 'diffuse-encephalopathy', 'brainstem-diffuse');
const whiteMatter = kinds('hemisphere', 'cerebellum', 'brainstem');
const basalGanglia = kinds('basal-ganglia');
const labyrinth = sites('vestibular-nerve');
const sympathetic = sites('oculosympathetic-chain');
const withoutLesion = kinds('none');

/** Lack of vitamin B12 and a virus of the columns dull the mind as well. */
const starvedColumns = sites('spinal-cord-posterolateral');
const belowTheHead: Applies = (site) =>
  kinds('cord', 'cauda-equina', 'root', 'plexus', 'nerve', 'multiple-nerves', 'anterior-horn')(site) &&
  !starvedColumns(site);

/** What is told of the brain, the eyes and the head: complaints, illnesses, exposures and medicines, by place. */
export const brainHistory: readonly HistoryWeight[] = [
  // Balance and skill.
  ...weigh('unsteadiness', balance, 1.3, 0.95, 'balance hangs on the labyrinths and their nuclei'),
  ...weigh('unsteadiness', sites('frontal-gait-disorder', 'akinetic-rigid-syndrome'), 1.3, 1, 'gait fails with it'),
  ...weigh(
    'difficulty-walking',
    anyOf(kinds('cerebellum'), sites('cortex-parasagittal', 'akinetic-rigid-syndrome')),
    1.3,
    1,
    'gait fails with it',
  ),
  ...weigh(
    'falls',
    sites('akinetic-rigid-syndrome', 'cerebellar-vermis', 'cerebellar-degeneration'),
    1.3,
    1,
    'posture is no longer held',
  ),
  ...weigh(
    'clumsiness',
    sites('cortex-hand-area', 'cortex-parietal', 'internal-capsule', 'pons-ventral', 'akinetic-rigid-syndrome'),
    1.3,
    1,
    'skill of the fingers is lost before their strength',
  ),
  ...weigh(
    ['unsteadiness', 'clumsiness'],
    sites('retina', 'optic-nerve', 'optic-chiasm', 'raised-intracranial-pressure', 'meningeal-irritation'),
    0.7,
    1,
    'it leaves balance and hands alone',
  ),
  ...weigh('worse-in-the-dark', kinds('cerebellum'), 0.7, 1, 'sight does not help a cerebellum'),
  ...weigh('positional-vertigo', kinds('hemisphere'), 0.4, 1, 'a hemisphere does not heed the posture of the head'),
  ...weigh(
    'positional-vertigo',
    sites('cerebellar-vermis', 'flocculonodular-lobe', 'cerebellar-hemisphere'),
    1.2,
    1,
    'the nodule sets how gravity is read',
  ),
  ...weigh(
    'oscillopsia',
    anyOf(kinds('cerebellum'), sites('brainstem-diffuse')),
    1.4,
    1,
    'the eyes are not held still',
  ),
  ...weigh(
    'diplopia',
    sites('cavernous-sinus', 'orbital-apex'),
    1.2,
    0.8,
    'eyes out of line are what it is noticed by',
  ),
  ...weigh(
    'drooping-eyelids',
    anyOf(sympathetic, sites('midbrain-tegmentum', 'midbrain-ventral')),
    1.6,
    0.95,
    'the lid is lifted from there',
  ),
  ...weigh(
    'diplopia',
    sites('raised-intracranial-pressure', 'basal-meningeal-process'),
    1.3,
    1,
    'the sixth nerve gives way on its long course over the base',
  ),
  ...weigh(
    ['numbness', 'paraesthesiae'],
    sites('thalamus', 'cortex-parietal', 'thalamus-and-capsule', 'medulla-lateral'),
    1.3,
    1,
    'what is felt passes or ends there',
  ),
  ...weigh('neuropathic-pain', sites('thalamus', 'medulla-lateral'), 2, 1, 'pain of central tracts comes from there'),
  ...weigh(
    ['speech-difficulty'],
    frontAndTemple,
    1.8,
    0.85,
    'the words are found and understood there in nearly everybody',
  ),
  ...weigh(
    'speech-difficulty',
    (site) => site.side === 'right' && cortex(site),
    0.6,
    1,
    'the right hemisphere leads for language in few',
  ),
  ...weigh('speech-difficulty', sites('diffuse-encephalopathy'), 1.4, 1, 'words fail a clouded or wasting brain'),
  ...weigh(
    'slurred-speech',
    sites('cortex-middle-cerebral-upper', 'cortex-middle-cerebral', 'thalamus-and-capsule', 'medulla-medial'),
    1.2,
    1,
    'face and tongue are moved from there',
  ),
  ...weigh(
    'dysphagia',
    sites('brainstem-diffuse', 'basal-meningeal-process', 'akinetic-rigid-syndrome'),
    1.2,
    1,
    'swallowing fails with it',
  ),
  ...weigh(
    'electric-shock-on-neck-flexion',
    sites('foramen-magnum', 'medial-longitudinal-fasciculus'),
    1.5,
    1,
    'a cord that is bent or bared of myelin fires',
  ),
  ...weigh(
    'twitching',
    anyOf(sites('facial-nerve', 'hyperkinetic-syndrome'), cortex),
    1.4,
    1,
    'a vessel on the facial nerve, the basal ganglia or the cortex makes muscles jerk',
  ),
  ...weigh('only-in-one-task', kinds('hemisphere'), 0.5, 1, 'paresis does not choose its task'),
  ...weigh(
    'repetitive-hand-use',
    sites('hyperkinetic-syndrome'),
    1.5,
    1,
    'hands that play or write for hours fall into dystonia',
  ),
  ...weigh(
    ['tremor', 'stiffness'],
    anyOf(basalGanglia, sites('striatum')),
    1.2,
    1,
    'the basal ganglia set tone and stillness',
  ),
  ...weigh(
    ['dream-enactment', 'light-headed-on-standing', 'early-satiety', 'loss-of-smell'],
    sites('frontal-gait-disorder', 'action-tremor', 'striatum'),
    0.6,
    1,
    'it is a forerunner of the diseases of the nigra',
  ),

  ...weigh(
    ['headache', 'new-headache', 'morning-headache'],
    kinds('cord', 'cauda-equina', 'plexus', 'nerve', 'multiple-nerves', 'polyneuropathy', 'anterior-horn', 'muscle'),
    0.65,
    1,
    'nothing below the head makes it ache',
  ),
  ...weigh(
    ['cognitive-change', 'behaviour-change', 'loss-of-skills'],
    belowTheHead,
    0.6,
    1,
    'nothing below the head changes the mind',
  ),

  ...weigh(
    ['seizure', 'fever', 'vomiting', 'weight-loss', 'cancer', 'recent-surgery'],
    withoutLesion,
    0.7,
    1,
    'it asks for a lesion until one has been looked for',
  ),
  ...weigh(
    'head-injury',
    sites('cortex-parasagittal', 'cortex-middle-cerebral-upper', 'diffuse-encephalopathy'),
    1.5,
    1,
    'the brain is bruised where the skull is struck',
  ),

  // Mind.
  ...weigh(
    'behaviour-change',
    sites('hyperkinetic-syndrome', 'thalamus', 'cortex-parasagittal'),
    1.5,
    1,
    'conduct changes with the circuits of the frontal lobes',
  ),
  ...weigh(
    'cognitive-change',
    sites('cortex-parietal', 'hyperkinetic-syndrome', 'raised-intracranial-pressure'),
    1.3,
    1,
    'thinking is slowed with it',
  ),
  ...weigh(
    ['cognitive-change', 'behaviour-change'],
    anyOf(kinds('cranial-nerve', 'visual-pathway'), sites('medial-longitudinal-fasciculus', 'medulla-lateral')),
    0.5,
    1,
    'the mind is left alone',
  ),
  ...weigh(
    'psychiatric-disorder',
    anyOf(withoutLesion, sites('hyperkinetic-syndrome')),
    1.6,
    1,
    'functional disorder goes with it more often than other disease, and chorea may open with it',
  ),
  ...weigh(
    ['seizure', 'ongoing-seizure'],
    sites('cortex-temporal', 'cortex-frontal', 'cortex-parasagittal'),
    1.3,
    1,
    'of all cortex temple, front and motor strip convulse most readily',
  ),
  ...weigh('similar-attacks-before', anyOf(cortex, labyrinth), 1.3, 1, 'cortex and labyrinth fail in attacks'),
  ...weigh(
    ['similar-attacks-before', 'resolved-deficit'],
    anyOf(sites('striatum', 'cerebellar-degeneration', 'frontal-gait-disorder'), basalGanglia),
    0.6,
    1,
    'what wastes does not come and go',
  ),
  ...weigh(
    'loss-of-consciousness',
    sites('thalamus', 'midbrain-tegmentum', 'pons-tegmentum', 'cerebellar-hemisphere'),
    1.3,
    1,
    'what keeps people awake lies there or is pressed from there',
  ),

  // Fever, infection, inflammation.
  ...weigh('fever', inflamedBrain, 1.5, 1, 'herpes simplex takes the temple, other infections the brain as a whole'),
  ...weigh(
    'fever',
    sites(
      'internal-capsule',
      'thalamus-and-capsule',
      'pons-ventral',
      'medulla-medial',
      'akinetic-rigid-syndrome',
      'retina',
    ),
    0.6,
    1,
    'small vessels close without fever',
  ),
  ...weigh(
    ['preceding-infection', 'preceding-respiratory-infection'],
    anyOf(labyrinth, sites('facial-nerve', 'meningeal-irritation')),
    1.8,
    1,
    'labyrinth, facial nerve and meninges are inflamed in the wake of a cold',
  ),
  ...weigh(
    ['preceding-infection', 'preceding-respiratory-infection', 'recent-vaccination'],
    sites('optic-nerve', 'diffuse-encephalopathy', 'hyperkinetic-syndrome', 'cerebellar-degeneration'),
    1.4,
    1,
    'immunity that an infection has roused turns on optic nerve, white matter, striatum and cerebellum',
  ),
  ...weigh(
    'rash',
    anyOf(kinds('meninges'), inflamedBrain),
    1.5,
    1,
    'infection of meninges and brain shows on the skin',
  ),
  ...weigh(
    ['sarcoidosis', 'vasculitis', 'lupus'],
    anyOf(sites('optic-nerve', 'basal-meningeal-process', 'trigeminal-nerve'), kinds('hemisphere')),
    1.4,
    1,
    'inflammation of vessels and granulomas reach brain, base and optic nerve',
  ),
  ...weigh(
    'vasculitis',
    sites('orbital-apex', 'cavernous-sinus', 'cochlear-nerve'),
    2,
    1,
    'granulomas fill orbit and ear',
  ),
  ...weigh('sjogren-syndrome', sites('optic-nerve'), 1.3, 1, 'it goes with neuromyelitis'),
  ...weigh(
    'syphilis',
    sites('optic-nerve', 'cochlear-nerve', 'diffuse-encephalopathy', 'midbrain-dorsal'),
    1.8,
    1,
    'syphilis takes sight, hearing, mind and the light reflex',
  ),
  ...weigh(
    'lyme-disease',
    sites('abducens-nerve', 'meningeal-irritation'),
    1.5,
    1,
    'it inflames the base of the brain',
  ),
  ...weigh(
    ['immunosuppression', 'hiv-infection'],
    anyOf(whiteMatter, sites('basal-meningeal-process')),
    1.3,
    1,
    'toxoplasma, fungi and the virus of the white matter settle where immunity fails',
  ),
  ...weigh(
    'diabetes-mellitus',
    sites('orbital-apex', 'trochlear-nerve', 'retina', 'optic-nerve', 'facial-nerve'),
    1.4,
    1,
    'small vessels and moulds reach it in diabetes',
  ),
  ...weigh(
    ['hypertension', 'hyperlipidaemia', 'diabetes-mellitus'],
    smallArteriesOfTheNerves,
    1.3,
    1,
    'the small artery of the nerve closes',
  ),
  ...weigh(
    ['hypertension', 'hyperlipidaemia'],
    sites('retina', 'optic-nerve'),
    1.2,
    1,
    'arteries of retina and nerve head close',
  ),
  ...weigh('sleep-apnoea', sites('optic-nerve'), 1.3, 1, 'the nerve head starves at night'),
  ...weigh(
    'sinus-or-ear-infection',
    sites('cortex-temporal', 'cortex-frontal', 'cerebellar-hemisphere'),
    2,
    1,
    'an infected ear or sinus drains into temple, cerebellum and frontal lobe',
  ),
  ...weigh(
    'recent-bacteraemia',
    sites('brainstem-diffuse', 'cerebellar-hemisphere'),
    1.3,
    1,
    'blood carries clots and germs',
  ),
  ...weigh(['tuberculosis'], sites('raised-intracranial-pressure', 'abducens-nerve'), 1.4, 1, 'the base is inflamed'),

  // Growths.
  ...weigh(['cancer', 'lymphoma'], grownInto, 1.5, 1, 'tumour spreads to the lobes and the cerebellum'),
  ...weigh(['cancer', 'lymphoma'], baseOfTheSkull, 1.5, 1, 'tumour spreads to the base of the skull and the orbit'),
  ...weigh(
    'cancer',
    anyOf(sympathetic, sites('recurrent-laryngeal-nerve')),
    2,
    1,
    'a tumour of the top of the lung, the breast or the nodes reaches it',
  ),
  ...weigh('tobacco', sympathetic, 1.4, 1, 'a tumour of the top of the lung reaches it'),
  ...weigh('cancer', sites('cerebellar-degeneration'), 1.5, 1, 'immunity against a tumour kills its large cells'),
  ...weigh(
    ['weight-loss', 'recent-weight-loss', 'night-sweats'],
    anyOf(grownInto, baseOfTheSkull, sites('diffuse-encephalopathy')),
    1.2,
    1,
    'a tumour or a long infection wastes the body',
  ),
  ...weigh(
    'radiotherapy',
    anyOf(grownInto, sites('optic-nerve', 'optic-chiasm', 'hypoglossal-nerve')),
    1.4,
    1,
    'rays harm brain, optic and lower cranial nerves after years',
  ),
  ...weigh('face-or-neck-lump', sites('trigeminal-nerve', 'spinal-accessory-nerve'), 1.8, 1, 'a growth lies beside it'),
  ...weigh(
    ['hypothyroidism', 'sexual-dysfunction', 'fatigue'],
    sites('optic-chiasm'),
    1.3,
    1,
    'the gland below fails with it',
  ),

  // Blood, clots and vessels.
  ...weigh(
    ['pregnancy', 'hormonal-contraceptive', 'thrombophilia'],
    drainedBySinuses,
    1.8,
    1,
    'blood that clots readily closes the sinus along the falx',
  ),
  ...weigh(
    ['thrombophilia', 'lupus'],
    kinds('hemisphere', 'brainstem'),
    1.3,
    1,
    'blood that clots readily closes arteries',
  ),
  ...weigh(
    'pregnancy',
    sites('hyperkinetic-syndrome', 'optic-chiasm'),
    1.4,
    1,
    'pregnancy brings on chorea and swells the gland',
  ),
  ...weigh(
    ['anticoagulant', 'bleeding-disorder'],
    anyOf(struckCerebellum, sites('raised-intracranial-pressure', 'meningeal-irritation', 'thalamus-and-capsule')),
    1.4,
    1,
    'blood that does not clot bleeds into brain and meninges',
  ),
  ...weigh('anticoagulant', sites('optic-chiasm'), 1.3, 1, 'a tumour of the pituitary bleeds'),
  ...weigh(
    'head-injury',
    anyOf(labyrinth, sites('oculomotor-nerve', 'raised-intracranial-pressure', 'optic-chiasm', 'trigeminal-nerve')),
    2,
    1,
    'a blow shakes the labyrinth, tears nerves and bleeds beneath the dura',
  ),
  ...weigh(
    ['neck-trauma', 'neck-pain'],
    sites('cortex-middle-cerebral', 'cortex-middle-cerebral-upper', 'retina', 'pons-lateral', 'medulla-medial'),
    1.3,
    1,
    'a torn artery of the neck sends clots',
  ),
  ...weigh(
    ['family/stroke', 'family/migraine'],
    anyOf(kinds('hemisphere'), sites('diffuse-encephalopathy')),
    1.2,
    1,
    'one inherited disease of small arteries gives migraine, strokes and dementia',
  ),
  ...weigh('migraine', anyOf(labyrinth, cortex), 1.2, 1, 'migraine runs over the cortex and shakes the labyrinth'),
  ...weigh(
    'lumbar-puncture-or-epidural',
    anyOf(kinds('meninges'), sites('abducens-nerve')),
    2,
    1,
    'fluid leaks away and the brain sinks, or germs are carried in',
  ),
  ...weigh('diving', anyOf(labyrinth, sites('cochlear-nerve')), 2.5, 1, 'pressure breaks the windows of the inner ear'),
  ...weigh('dental-procedure', sites('trigeminal-nerve', 'mandibular-nerve'), 2, 1, 'the needle or the drill hurts it'),

  // Poisons, want and medicines.
  ...weigh(
    [
      'alcohol-excess',
      'vitamin-b12-deficiency',
      'pernicious-anaemia',
      'malnutrition',
      'vegan-diet',
      'bariatric-surgery',
    ],
    sites('optic-nerve'),
    1.5,
    1,
    'want of vitamins blinds both optic nerves',
  ),
  ...weigh(
    'tobacco',
    ({ key, side }) => key === 'optic-nerve' && side === 'both',
    1.5,
    1,
    'smoke and drink blind together',
  ),
  ...weigh(
    ['alcohol-excess', 'chronic-liver-disease', 'sepsis', 'critical-illness', 'hypothyroidism'],
    sites('diffuse-encephalopathy'),
    1.4,
    1,
    'ill organs cloud the mind',
  ),
  ...weigh(['vomiting', 'nausea'], sites('diffuse-encephalopathy'), 1.2, 1, 'an ill brain makes sick'),
  ...weigh(
    ['gastrectomy', 'recent-weight-loss', 'malabsorption'],
    sites('brainstem-diffuse'),
    2,
    1,
    'lack of thiamine harms the grey matter round its ventricles',
  ),
  ...weigh(
    ['metronidazole', 'phenytoin', 'carbamazepine', 'lithium'],
    sites('brainstem-diffuse', 'diffuse-encephalopathy'),
    1.4,
    1,
    'the medicine puts cerebellar nuclei and brainstem out of order',
  ),
  ...weigh(
    ['injecting-drug-use', 'opioid', 'benzodiazepine', 'magnesium'],
    sites('diffuse-encephalopathy'),
    1.4,
    1,
    'the drug clouds the mind',
  ),
  ...weigh(
    ['serotonergic-medicine', 'lithium', 'tacrolimus', 'corticosteroid', 'amiodarone'],
    sites('action-tremor'),
    1.5,
    1,
    'the medicine shakes the hands',
  ),
  ...weigh(
    ['oxaliplatin', 'cisplatin'],
    anyOf(bothLabyrinths, sites('cochlear-nerve')),
    2,
    1,
    'platinum kills the hair cells',
  ),
  ...weigh('macrolide', sites('cochlear-nerve'), 1.3, 1, 'the medicine dulls the ear'),
  ...weigh('corticosteroid', sites('raised-intracranial-pressure'), 1.3, 1, 'the pressure rises when it is withdrawn'),
  ...weigh(
    'immune-checkpoint-inhibitor',
    sites('optic-chiasm', 'diffuse-encephalopathy', 'meningeal-irritation', 'facial-nerve'),
    1.5,
    1,
    'the immunity that it sets free turns on gland, brain and meninges',
  ),
  ...weigh('family/epilepsy', cortex, 1.2, 1, 'epilepsy runs in families'),
  ...weigh(
    ['family/parkinsonism', 'family/dementia'],
    sites('akinetic-rigid-syndrome', 'frontal-gait-disorder'),
    1.3,
    1,
    'a relative has the like',
  ),
  ...weigh(
    'family/ataxia',
    sites('cerebellar-vermis', 'cerebellar-hemisphere'),
    0.6,
    1,
    'what is inherited wastes all of it',
  ),
  ...weigh('thymoma', sites('diffuse-encephalopathy', 'cortex-temporal'), 1.4, 1, 'immunity turns on the limbic lobe'),
  ...weigh('asthma', sites('olfactory-nerve'), 1.3, 1, 'swollen lining shuts the nose'),
];
