import { commonPractice, fromMemory, recalled } from '../../../kernel/cite.ts';
import { anyOf, kinds, sites } from '../history/history-weight.ts';
import { type SignWeight, sign, signOnSide } from './sign-weight.ts';

const neurofibromatosis = recalled('adams-victor', 'neurofibromatosis');

/** Signs that no pathway decides and that say what part of the head or brain is ill. Factors judged, as small as those of the history. */
export const headSigns: readonly SignWeight[] = [
  ...sign(
    'palatal-tremor',
    sites('pons-tegmentum', 'midbrain-tegmentum', 'brainstem-diffuse', 'cerebellar-degeneration'),
    2.5,
    'the olive swells when the path that comes down to it through midbrain and pons is cut',
    recalled('brazis', 'brainstem'),
  ),
  ...sign(
    'palatal-tremor',
    sites('cerebellar-vermis', 'flocculonodular-lobe'),
    0.5,
    'the loop runs through the dentate nucleus and not through the midline',
    recalled('brazis', 'brainstem'),
  ),
  ...sign(
    'opsoclonus',
    sites('cerebellar-degeneration', 'cerebellar-vermis'),
    2.5,
    'an inflamed cerebellum loses the pauses between the movements of the eyes',
    fromMemory,
  ),
  ...sign(
    'akathisia',
    sites('hyperkinetic-syndrome', 'akinetic-rigid-syndrome'),
    3,
    'what blocks dopamine drives people about',
    commonPractice,
  ),
  ...sign(
    'mirror-movements',
    anyOf(kinds('hemisphere'), sites('foramen-magnum', 'akinetic-rigid-syndrome')),
    1.8,
    'one hemisphere moves both hands, or the crossing of its tracts is amiss',
    fromMemory,
  ),
  ...sign(
    'kayser-fleischer-ring',
    anyOf(kinds('basal-ganglia'), sites('striatum')),
    6,
    'copper settles in cornea and lentiform nucleus',
    recalled('adams-victor', 'Wilson disease'),
  ),
  ...sign(
    ['cafe-au-lait-spots', 'neurofibromas'],
    sites('cerebellopontine-angle', 'optic-nerve', 'optic-chiasm', 'cochlear-nerve', 'orbital-apex'),
    2.5,
    'growths of neurofibromatosis sit on optic and acoustic nerves',
    neurofibromatosis,
  ),
  ...sign(
    ['cafe-au-lait-spots', 'neurofibromas'],
    anyOf(kinds('plexus', 'root'), sites('polyradiculopathy', 'multiple-mononeuropathy')),
    2,
    'neurofibromas grow on roots, plexus and nerves',
    neurofibromatosis,
  ),
  ...sign(
    'livedo-reticularis',
    kinds('hemisphere'),
    1.6,
    'arteries of skin and brain close together',
    recalled('adams-victor', 'Sneddon syndrome'),
  ),
  ...sign(
    'lhermitte',
    sites('foramen-magnum', 'medial-longitudinal-fasciculus'),
    2,
    'dorsal columns at the top of the neck are stretched or bared',
    commonPractice,
  ),
  ...sign(
    'enlarged-lymph-nodes',
    sites('basal-meningeal-process', 'recurrent-laryngeal-nerve', 'oculosympathetic-chain', 'vagus-nerve'),
    1.8,
    'lymphoma, sarcoid and tumour of the nodes lie beside it',
    commonPractice,
  ),
  ...sign(
    'erythema-migrans',
    sites('meningeal-irritation', 'abducens-nerve'),
    2,
    'borrelia inflames the base of the brain',
    commonPractice,
  ),
  ...signOnSide(
    'vesicular-rash',
    sites(
      'jugular-foramen',
      'vagus-nerve',
      'vestibular-nerve',
      'cochlear-nerve',
      'trigeminal-nerve',
      'oculomotor-nerve',
    ),
    2.5,
    'zoster goes from one cranial ganglion to the next',
    fromMemory,
  ),
  ...sign(
    'fever',
    sites('orbital-apex', 'cavernous-sinus', 'cortex-temporal'),
    1.4,
    'infection of orbit, sinus and temporal lobe goes with fever',
    commonPractice,
  ),
  ...sign(
    ['cautious', 'antalgic'],
    sites('cerebellar-hemisphere', 'cerebellar-vermis', 'brainstem-diffuse'),
    0.7,
    'who steps with care steers the steps',
    fromMemory,
  ),
  ...sign(
    'temporal-artery-tenderness',
    sites('oculomotor-nerve', 'abducens-nerve', 'retina'),
    2,
    'arteritis closes the vessels of eye and eye muscles',
    commonPractice,
  ),
  ...sign(
    'exaggerated-startle',
    sites('brainstem-diffuse'),
    2,
    'the start at a sound runs through the brainstem',
    fromMemory,
  ),
  ...sign(
    'scoliosis',
    sites('foramen-magnum'),
    1.8,
    'low tonsils and a cavity of the cord bend the growing spine',
    commonPractice,
  ),
];
