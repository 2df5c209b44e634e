import {
  anyOf,
  bothOccipitalLobes,
  cervicalRoots,
  type HistoryWeight,
  kinds,
  sites,
  wastingCerebellum,
  weigh,
} from './history-weight.ts';

const handNerves = sites(
  'median-nerve-wrist',
  'ulnar-nerve-wrist',
  'ulnar-nerve-elbow',
  'superficial-radial-nerve',
  'palmar-branch-of-median-nerve',
  'superficial-branch-of-ulnar-nerve',
);

/** Nerves of the pelvis and of the legs that a head which goes through the pelvis, forceps or stirrups press upon. */
const nervesOfDelivery = sites(
  'femoral-nerve-groin',
  'obturator-nerve',
  'lumbosacral-trunk',
  'lumbosacral-plexus',
  'common-fibular-nerve',
  'pudendal-nerve',
  'lateral-femoral-cutaneous-nerve',
);

/** Nerves that are pressed or stretched in somebody who lies still and does not feel it. */
const nervesOfPosition = sites(
  'ulnar-nerve-elbow',
  'common-fibular-nerve',
  'femoral-nerve-groin',
  'lateral-femoral-cutaneous-nerve',
  'radial-nerve-spiral-groove',
  'sciatic-nerve',
  'lower-trunk',
);

/** Complaints of night, chewing, sleep, hands and ears, and what birth, position, heat and some medicines do. Factors judged. */
export const complaintAndBirthHistory: readonly HistoryWeight[] = [
  ...weigh('night-blindness', sites('retina'), 6, 0.9, 'rods see in the dark'),
  ...weigh('night-blindness', sites('optic-chiasm'), 0.5, 1, 'what ails the nerve blurs by day as well'),
  ...weigh('difficulty-chewing', sites('postsynaptic-junction'), 3, 0.9, 'the jaw tires in myasthenia'),
  ...weigh(
    'difficulty-chewing',
    sites('bulbar-motor-nuclei', 'mandibular-nerve', 'trigeminal-nerve', 'corticobulbar-both-sides'),
    1.6,
    1,
    'the fifth nerve and its nucleus close the jaw',
  ),
  ...weigh(
    'difficulty-chewing',
    kinds('muscle', 'junction'),
    1.4,
    1,
    'muscles of the jaw fail with those of the throat',
  ),
  ...weigh('hand-pain', handNerves, 1.8, 0.9, 'it ends in the hand, which hurts'),
  ...weigh('hand-pain', anyOf(cervicalRoots, kinds('plexus')), 1.3, 1, 'its pain is felt down to the hand'),
  ...weigh(
    'hand-pain',
    kinds('hemisphere', 'brainstem', 'anterior-horn'),
    0.6,
    1,
    'what fails from above seldom hurts',
  ),
  ...weigh(
    'insomnia',
    anyOf(kinds('encephalopathy'), sites('thalamus', 'hyperkinetic-syndrome')),
    1.3,
    1,
    'withdrawal, antibodies and a sick thalamus keep awake',
  ),
  ...weigh('ear-fullness', sites('cochlear-nerve', 'vestibular-nerve'), 2, 0.95, 'the inner ear is felt to be full'),
  ...weigh(
    'ear-fullness',
    sites('medulla-lateral', 'cerebellar-hemisphere', 'brainstem-diffuse'),
    0.6,
    1,
    'brainstem and cerebellum leave the ear alone',
  ),
  ...weigh(
    'sound-induced-vertigo',
    sites('vestibular-nerve'),
    6,
    1,
    'sound moves the fluid of an inner ear that has a third window',
  ),
  ...weigh(
    'sound-induced-vertigo',
    kinds('brainstem', 'cerebellum', 'hemisphere', 'intracranial-pressure'),
    0.4,
    1,
    'a lesion of the brain does not answer to sound',
  ),
  ...weigh('gout', sites('median-nerve-wrist', 'proximal-myopathy'), 1.3, 1, 'tophi press and colchicine weakens'),
  ...weigh('pre-eclampsia', bothOccipitalLobes, 2, 1, 'its vessels leak behind before elsewhere'),
  ...weigh(
    'pre-eclampsia',
    anyOf(kinds('hemisphere', 'encephalopathy'), sites('retina')),
    1.5,
    1,
    'its vessels leak, tighten and burst in the brain',
  ),
  ...weigh(
    'hyperemesis-gravidarum',
    sites('brainstem-diffuse', 'diffuse-encephalopathy', 'length-dependent-polyneuropathy', 'motor-polyneuropathy'),
    2,
    1,
    'months of vomiting use up thiamine',
  ),
  ...weigh(
    'heat-exposure',
    anyOf(kinds('encephalopathy'), wastingCerebellum, sites('cerebellar-hemisphere')),
    2.5,
    1,
    'heat kills the cells of the cerebellum and clouds the mind',
  ),
  ...weigh(
    'heat-exposure',
    kinds('intracranial-pressure', 'meninges'),
    0.5,
    1,
    'heat alone explains a body that is hot and a mind that is dull',
  ),
  ...weigh('difficult-delivery', nervesOfDelivery, 3, 1, 'head, forceps and stirrups press upon it'),
  ...weigh(
    'shoulder-dystocia',
    sites('upper-trunk', 'brachial-plexus', 'lower-trunk', 'phrenic-nerve'),
    6,
    1,
    'the shoulder that is held back stretches the plexus',
  ),
  ...weigh(
    'shoulder-dystocia',
    anyOf(sites('adjacent-nerve-roots', 'facial-nerve', 'oculosympathetic-chain')),
    2,
    1,
    'roots, the face and the sympathetic chain suffer at birth',
  ),
  ...weigh(
    'surgical-positioning',
    sites('brachial-plexus', 'upper-trunk'),
    5,
    1,
    'an arm that lies abducted, or hangs, stretches the plexus',
  ),
  ...weigh('surgical-positioning', nervesOfPosition, 3, 1, 'who sleeps does not feel the pressure upon it'),
  ...weigh(
    'gabapentinoid',
    kinds('encephalopathy'),
    1.4,
    1,
    'the medicine clouds the mind, of the kidney patient above all',
  ),
  ...weigh('gabapentinoid', wastingCerebellum, 1.3, 1, 'the medicine unsteadies'),
  ...weigh(
    'tamoxifen',
    anyOf(sites('retina', 'raised-intracranial-pressure')),
    1.4,
    1,
    'it thickens the blood and leaves crystals in the retina',
  ),
  ...weigh('ace-inhibitor', sites('autonomic-neuropathy'), 1.2, 1, 'it lowers the pressure on standing'),
];
