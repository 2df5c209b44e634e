import { commonPractice, fromMemory, read, recalled } from '../../../kernel/cite.ts';
import { anyOf, cervicalCord, kinds, lumbarRoots, sites, thoracicRoots } from '../history/history-weight.ts';
import type { Applies } from '../shift.ts';
import { type SignWeight, sign, signOnSide } from './sign-weight.ts';

const muscle = kinds('muscle');
const pickedNerves = anyOf(sites('multiple-mononeuropathy'), kinds('nerve'));
/** Zoster lives in one ganglion or two neighbours. */
const fewRoots = sites('nerve-root', 'adjacent-nerve-roots');
const wholePlexus = sites('brachial-plexus', 'lumbosacral-plexus');
const plexusPart: Applies = (site) => site.kind === 'plexus' && !wholePlexus(site);
const zoster = read('zoster-limb-paresis-2014', 'radiculopathy 37 %, plexopathy 41 %, both 8 % of 49');
const amato = recalled('amato-russell');

/**
 * Signs of skin, muscle, spine and nerve trunks that no pathway of the nervous system decides, but that say what sort of
 * place is ill. Factors judged; they stay as small as those of the history.
 */
export const recordedSigns: readonly SignWeight[] = [
  ...sign('muscle-tenderness', muscle, 2.5, 'inflamed or torn muscle is tender', amato),
  ...sign(
    ['heliotrope-rash', 'gottron-papules'],
    muscle,
    6,
    'the rash is that of dermatomyositis',
    recalled('eular-acr-myositis-2017'),
  ),
  ...sign(
    'calf-pseudohypertrophy',
    sites('proximal-myopathy'),
    6,
    'large weak calves are typical of a dystrophy of the limb girdles',
    amato,
  ),
  ...sign('muscle-hypertrophy', sites('myotonic-myopathy'), 3, 'muscle that cannot let go grows', amato),
  ...sign('muscle-rippling', muscle, 4, 'the muscle itself is irritable', amato),
  ...sign('hyperlordosis', muscle, 2, 'weak hips tilt the pelvis', commonPractice),
  ...sign(
    'thickened-nerve',
    anyOf(pickedNerves, kinds('polyneuropathy', 'polyradiculoneuropathy')),
    5,
    'the nerves themselves are thick',
    recalled('adams-victor', 'leprous neuritis'),
  ),
  ...sign('thickened-nerve', kinds('none'), 0.4, 'a nerve that is thick is not sound', commonPractice),
  ...sign(
    'hypopigmented-patch',
    anyOf(pickedNerves, sites('length-dependent-polyneuropathy')),
    5,
    'leprosy takes skin and the nerves beneath it',
    recalled('adams-victor', 'leprous neuritis'),
  ),
  ...sign(
    ['non-blanching-rash', 'livedo-reticularis'],
    anyOf(pickedNerves, sites('length-dependent-polyneuropathy')),
    3,
    'inflamed vessels starve nerves as they starve skin',
    recalled('vasculitic-neuropathy-2010'),
  ),
  ...sign(
    'head-tilt',
    sites('trochlear-nerve', 'midbrain-tegmentum', 'cerebellar-vermis', 'foramen-magnum', 'hyperkinetic-syndrome'),
    1.8,
    'the head is held so that two images meet, or as a full posterior fossa or the muscles of the neck force it',
    recalled('brazis', 'ocular motility'),
  ),
  ...sign(
    'chemosis',
    sites('cavernous-sinus', 'orbital-apex'),
    3,
    'the veins of the orbit drain through it',
    commonPractice,
  ),
  ...signOnSide('abdominal-bulge', thoracicRoots, 6, 'its roots hold the wall of the belly', commonPractice),
  ...sign(
    'absent-limb-pulse',
    anyOf(pickedNerves, kinds('plexus'), sites('spinal-cord-anterior', 'spinal-cord-transverse', 'conus-medullaris')),
    1.6,
    'an artery that is shut starves nerves, and the aorta feeds the cord',
    recalled('adams-victor', 'ischaemic neuropathy'),
  ),
  ...sign('catatonia', kinds('encephalopathy'), 2.5, 'it is met with illness of the whole brain', commonPractice),
  ...sign('non-blanching-rash', kinds('meninges'), 2, 'meningococci bring it', recalled('meningitis-uk-2016')),
  ...signOnSide('vesicular-rash', fewRoots, 6, 'zoster comes from the ganglia', zoster),
  ...signOnSide('vesicular-rash', plexusPart, 3, 'zoster goes on from the ganglia into the plexus', zoster),
  ...signOnSide(
    'vesicular-rash',
    wholePlexus,
    2,
    'zoster goes on from the ganglia into the plexus, though seldom into all of it',
    zoster,
  ),
  ...signOnSide(
    'vesicular-rash',
    sites('polyradiculopathy', 'facial-nerve', 'ophthalmic-nerve', 'orbital-apex'),
    3,
    'zoster comes from the ganglia',
    commonPractice,
  ),
  ...sign(
    'erythema-migrans',
    sites('facial-nerve', 'polyradiculopathy', 'basal-meningeal-process'),
    4,
    'borrelia picks out facial nerves, roots and basal meninges',
    commonPractice,
  ),
  ...sign('mees-lines', kinds('polyneuropathy'), 4, 'arsenic and thallium mark the nails', fromMemory),
  ...sign('angiokeratoma', sites('small-fibre-polyneuropathy'), 5, 'it goes with Fabry disease', fromMemory),
  ...sign(
    ['foot-ulcer', 'neuropathic-joint', 'distal-hair-loss'],
    anyOf(kinds('polyneuropathy'), sites('spinal-cord-central')),
    2,
    'skin and joints that feel no pain break down',
    commonPractice,
  ),
  ...sign('myokymia', anyOf(kinds('plexus'), pickedNerves), 4, 'irradiated and irritated nerves ripple', amato),
  ...sign(
    'facial-myokymia',
    sites('pons-tegmentum', 'pons-ventral', 'pons-lateral', 'facial-nerve'),
    4,
    'the facial nucleus or fascicle is irritated',
    recalled('brazis', 'facial nerve'),
  ),
  ...signOnSide(
    'facial-synkinesis',
    sites('facial-nerve'),
    5,
    'the facial nerve has grown back amiss',
    recalled('brazis', 'facial nerve'),
  ),
  ...signOnSide(
    ['hemifacial-spasm', 'facial-synkinesis'],
    sites('cerebellopontine-angle'),
    6,
    'the facial nerve is irritated, or has grown back amiss',
    recalled('brazis', 'facial nerve'),
  ),
  ...sign(
    'palatal-tremor',
    kinds('brainstem', 'cerebellum'),
    5,
    'the loop from red nucleus to olive and cerebellum is broken',
    recalled('brazis', 'brainstem'),
  ),
  ...sign(
    'exaggerated-startle',
    kinds('encephalopathy'),
    3,
    'an irritable cortex and brainstem start at a sound',
    fromMemory,
  ),
  ...sign('opsoclonus', kinds('cerebellum', 'brainstem'), 4, 'the pauses between saccades are lost', fromMemory),
  ...sign('neuromyotonia', sites('motor-polyneuropathy'), 3, 'motor axons fire by themselves', amato),
  ...sign(
    'conductive-hearing-loss',
    sites('cochlear-nerve', 'cerebellopontine-angle'),
    0.4,
    'the middle ear explains the deafness',
    commonPractice,
  ),
  ...sign(
    'lhermitte',
    anyOf(cervicalCord, sites('spinal-cord-posterior', 'spinal-cord-posterolateral')),
    3,
    'stretched dorsal columns of the neck are felt as a shock',
    commonPractice,
  ),
  ...sign(
    'neurogenic-claudication-relief',
    anyOf(lumbarRoots, sites('polyradiculopathy')),
    4,
    'legs that recover on stooping point to a narrow lumbar canal',
    recalled('cook-2010'),
  ),
  ...sign(
    'neurogenic-claudication-relief',
    kinds('polyneuropathy'),
    0.5,
    'a polyneuropathy does not come with walking and go with stooping',
    recalled('cook-2010'),
  ),
  ...sign(
    'spinal-tenderness',
    anyOf(kinds('cord', 'root', 'cauda-equina'), sites('polyradiculopathy')),
    1.7,
    'the spine is ill where it is tender',
    commonPractice,
  ),
  ...sign(
    'scoliosis',
    anyOf(muscle, sites('cerebellar-degeneration')),
    1.5,
    'a spine whose muscles are weak or ill steered from childhood bends as it grows',
    amato,
  ),
  ...sign('scoliosis', sites('spinal-cord-central'), 2, 'a cavity of the cord bends the growing spine', commonPractice),
  ...sign(
    'lumbosacral-skin-mark',
    anyOf(kinds('cauda-equina'), sites('conus-medullaris')),
    3,
    'the cord was tethered before birth',
    commonPractice,
  ),
  ...sign(
    'fever',
    anyOf(kinds('meninges', 'encephalopathy'), sites('brainstem-diffuse')),
    1.5,
    'fever goes with infection of brain and meninges',
    commonPractice,
  ),
  ...sign('proptosis', sites('orbital-apex'), 6, 'what pushes the eye forward lies behind it', commonPractice),
  ...sign(
    'proptosis',
    sites('cavernous-sinus'),
    3,
    'a closed or arterialised sinus no longer drains the orbit',
    commonPractice,
  ),
  ...sign(
    'proptosis',
    anyOf(sites('oculomotor-nerve', 'trochlear-nerve', 'abducens-nerve'), kinds('junction')),
    0.4,
    'a palsied nerve does not push the eye forward',
    commonPractice,
  ),
  ...sign(
    'flushing-above-level',
    kinds('cord'),
    4,
    'vessels below the lesion no longer obey the centres above it',
    commonPractice,
  ),
  ...sign(
    'temporal-artery-tenderness',
    sites('optic-nerve'),
    3,
    'arteritis closes the vessels of the nerve',
    commonPractice,
  ),
];
