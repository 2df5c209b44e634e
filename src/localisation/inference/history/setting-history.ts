import type { Applies } from '../shift.ts';
import { anyOf, type HistoryWeight, kinds, sites, thoracicRoots, weigh } from './history-weight.ts';

const trunksAndCords = sites(
  'upper-trunk',
  'middle-trunk',
  'lower-trunk',
  'lateral-cord',
  'posterior-cord',
  'medial-cord',
);
const nervesAtShoulderAndArm = sites(
  'axillary-nerve',
  'musculocutaneous-nerve',
  'suprascapular-nerve',
  'radial-nerve-elbow',
  'median-nerve-upper-arm',
);
const lowerCranialNerves = sites('jugular-foramen', 'vagus-nerve', 'hypoglossal-nerve');
const sympatheticAndRecurrent = sites('recurrent-laryngeal-nerve', 'oculosympathetic-chain');
const borderZones: Applies = ({ key, side }) =>
  side === 'both' && (key === 'cortex-parietal' || key === 'cortex-occipital' || key === 'cortex-parasagittal');
const bothOccipitalLobes: Applies = ({ key, side }) => key === 'cortex-occipital' && side === 'both';
const wastingCerebellum = sites('cerebellar-degeneration', 'flocculonodular-lobe');

/**
 * What a person has, takes or went through that the causes of one place need and others hardly do. The factors follow the
 * shares and likelihood ratios of the table of causes, tempered, since history counts for causes once more.
 */
export const settingHistory: readonly HistoryWeight[] = [
  ...weigh('retinal-disease', sites('retina'), 4, 1, 'the retina is known to be ill'),
  ...weigh('flashes-and-floaters', sites('retina'), 3, 1, 'a retina that is pulled or torn flashes'),
  ...weigh(['chloroquine', 'hydroxychloroquine'], sites('retina'), 3, 1, 'it harms the retina over years'),
  ...weigh('pituitary-tumour', sites('optic-chiasm'), 5, 1, 'the gland lies below the chiasm'),
  ...weigh('glaucoma', sites('optic-nerve'), 2, 1, 'pressure in the eye wastes the optic nerve'),
  ...weigh(
    'aortic-disease',
    sites('spinal-cord-anterior'),
    3,
    1,
    'the arteries of the front of the cord come from the aorta',
  ),
  ...weigh(
    'spinal-fracture',
    sites('spinal-cord-central'),
    1.6,
    1,
    'a narrow or broken canal bruises the middle of the cord',
  ),
  ...weigh(
    ['cancer', 'lymphoma'],
    anyOf(lowerCranialNerves, thoracicRoots),
    2,
    1,
    'tumour settles in the bone of the base of the skull and the spine',
  ),
  ...weigh(
    ['cancer', 'lymphoma'],
    sites('mandibular-nerve'),
    3,
    1,
    'a numb chin is often the first sign of tumour in the jaw or the base of the skull',
  ),
  ...weigh(
    'herpes-zoster',
    anyOf(sites('ophthalmic-nerve', 'intercostal-nerves'), thoracicRoots),
    3,
    1,
    'zoster is commonest on the trunk and the brow',
  ),
  ...weigh(
    'hip-replacement',
    sites(
      'sciatic-nerve',
      'sciatic-nerve-fibular-division',
      'sciatic-nerve-tibial-division',
      'femoral-nerve-groin',
      'femoral-nerve-pelvis',
      'lumbosacral-trunk',
    ),
    2,
    1,
    'the operation works beside it',
  ),
  ...weigh(
    ['neck-or-chest-surgery', 'spinal-surgery'],
    sympatheticAndRecurrent,
    3,
    1,
    'it crosses the field of operations on neck and chest',
  ),
  ...weigh(
    ['trauma', 'limb-fracture-or-dislocation', 'neck-trauma'],
    trunksAndCords,
    2,
    1,
    'a pull on the arm tears the plexus',
  ),
  ...weigh(
    ['trauma', 'neck-trauma'],
    sites('brachial-plexus'),
    1.5,
    1,
    'a blow that parts neck and shoulder tears the plexus',
  ),
  ...weigh(
    ['trauma', 'limb-fracture-or-dislocation'],
    nervesAtShoulderAndArm,
    1.8,
    1,
    'it is hurt with the shoulder and the upper arm',
  ),
  ...weigh(
    ['external-pressure', 'prolonged-immobility', 'deep-sleep-on-arm'],
    sites(
      'radial-nerve-axilla',
      'radial-nerve-spiral-groove',
      'superficial-radial-nerve',
      'sciatic-nerve',
      'sciatic-nerve-fibular-division',
      'common-fibular-nerve',
    ),
    1.6,
    1,
    'it is pressed on against bone or a hard seat',
  ),
  ...weigh('oxaliplatin', sites('sensory-ganglionopathy'), 3, 1, 'platinum kills the cells of sensory ganglia'),
  ...weigh(
    'immune-checkpoint-inhibitor',
    sites('postsynaptic-junction', 'axial-myopathy'),
    2,
    1,
    'the immunity that it sets free turns on junction and muscle',
  ),
  ...weigh(['organophosphate', 'venomous-bite'], kinds('junction'), 4, 1, 'it poisons the neuromuscular junction'),
  ...weigh(
    ['rheumatoid-arthritis', 'hepatitis-b'],
    sites('multiple-mononeuropathy'),
    1.6,
    1,
    'it goes with vasculitis of nerves',
  ),
  ...weigh(
    ['benzodiazepine', 'carbamazepine', 'metronidazole'],
    wastingCerebellum,
    2.5,
    1,
    'it puts the cerebellum out of order on both sides',
  ),
  ...weigh('alcohol-excess', sites('cerebellar-degeneration', 'cerebellar-vermis'), 2, 1, 'alcohol wastes the vermis'),
  ...weigh(
    'triggered-facial-pain',
    sites('trigeminal-nerve', 'maxillary-nerve', 'mandibular-nerve'),
    4,
    1,
    'touch fires a compressed trigeminal root',
  ),
  ...weigh('pulsatile-tinnitus', lowerCranialNerves, 3, 1, 'a vascular tumour at the jugular bulb is heard'),
  ...weigh('pulsatile-tinnitus', sites('cavernous-sinus'), 6, 1, 'a fistula of the carotid artery is heard'),
  ...weigh('red-eye', sites('cavernous-sinus'), 2.5, 1, 'the veins of the orbit drain through it'),
  ...weigh('red-eye', sites('orbital-apex'), 2, 1, 'what swells in the orbit shows at the front of the eye'),
  ...weigh('diabetes-mellitus', sites('striatum'), 1.3, 1, 'very high sugar sets one striatum into unwilled movement'),
  ...weigh('pituitary-tumour', sites('cavernous-sinus'), 3, 1, 'the gland lies between the two sinuses'),
  ...weigh(
    'sinus-or-ear-infection',
    sites(
      'cavernous-sinus',
      'orbital-apex',
      'abducens-nerve',
      'facial-nerve',
      'meningeal-irritation',
      'jugular-foramen',
      'hypoglossal-nerve',
      'basal-meningeal-process',
    ),
    3,
    1,
    'infection of sinus or ear goes through the bone to what lies behind',
  ),
  ...weigh('head-injury', sites('cavernous-sinus'), 1.8, 1, 'a blow tears the carotid artery in the sinus'),
  ...weigh(
    'head-injury',
    sites('frontal-gait-disorder'),
    2.5,
    1,
    'blood beneath the dura and water in the ventricles follow a blow by weeks',
  ),
  ...weigh(
    'pregnancy',
    anyOf(bothOccipitalLobes, kinds('encephalopathy')),
    2,
    1,
    'the vessels of the brain leak in eclampsia, behind before elsewhere',
  ),
  ...weigh(
    ['serotonergic-medicine', 'antipsychotic'],
    kinds('encephalopathy'),
    1.6,
    1,
    'the medicine may poison the brain as a whole',
  ),
  ...weigh('cardiac-arrest', borderZones, 4, 1, 'where the last branches of the arteries meet the brain starves first'),
  ...weigh('cardiac-arrest', kinds('encephalopathy'), 3, 1, 'both hemispheres went without oxygen'),
  ...weigh(
    ['family/peripheral-neuropathy', 'family/high-arched-feet'],
    sites('motor-polyneuropathy'),
    2.5,
    1,
    'motor neuropathy that is slow is mostly inherited',
  ),
  ...weigh(
    'family/similar-disorder',
    sites('upper-motor-neuron-system', 'motor-neuron-system'),
    1.6,
    1,
    'some diseases of motor neurons are inherited',
  ),
  ...weigh(
    'diabetes-mellitus',
    sites('intercostal-nerves', 'lumbar-plexus'),
    2,
    1,
    'diabetes hurts roots and plexus by their vessels',
  ),
  ...weigh(
    ['anticholinergic', 'eye-drops'],
    sites('ciliary-ganglion'),
    3,
    1,
    'it keeps the pupil wide as a lesion there does',
  ),
  ...weigh('cataract', sites('myotonic-myopathy'), 2, 1, 'myotonic dystrophy clouds the lens early'),
];
