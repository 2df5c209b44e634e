import { read, recalled } from '../../../kernel/cite.ts';
import { brachialPlexusSites, lumbosacralPlexusSites } from '../../plexus-sites.ts';
import {
  anyOf,
  cervicalCord,
  cervicalRoots,
  kinds,
  lumbarRoots,
  sites,
  thoracicCord,
} from '../history/history-weight.ts';
import type { Applies } from '../shift.ts';
import { found, type ResultWeight } from './result-weight.ts';

const cord = kinds('cord');
const lowerCord = sites('conus-medullaris');
const cauda = kinds('cauda-equina');
const brain = kinds('hemisphere', 'brainstem', 'cerebellum');
const central = sites('spinal-cord-central');
const columns = sites('spinal-cord-posterior', 'spinal-cord-posterolateral');
const pressure = kinds('intracranial-pressure');
const brachial = sites(...brachialPlexusSites);
const lumbosacral = sites(...lumbosacralPlexusSites);
const manyRoots = anyOf(sites('polyradiculopathy'), kinds('polyradiculoneuropathy', 'cauda-equina'));

const cordBook = recalled('adams-victor', 'diseases of the spinal cord');
const strokeGuideline = recalled('nice-ng128', 'imaging');

/** What an MRI of part of the spine says of the cord and the roots there. */
const spineRegion = (key: string, cordThere: Applies, rootsThere: Applies): readonly ResultWeight[] => [
  ...found(key, 'cord-compression', cordThere, 10, 'the cord is seen to be compressed there', cordBook),
  ...found(
    key,
    ['cord-lesion-short', 'cord-lesion-long'],
    cordThere,
    10,
    'a lesion is seen within the cord there',
    cordBook,
  ),
  ...found(key, 'syrinx', central, 10, 'a syrinx spreads from the centre of the cord', cordBook),
  ...found(key, 'dorsal-column-signal', columns, 15, 'the dorsal columns are seen to be diseased', cordBook),
  ...found(key, 'root-compression', rootsThere, 5, 'a root is seen to be compressed there'),
  ...found(key, 'canal-stenosis', anyOf(cordThere, rootsThere), 1.5, 'the canal is narrow there'),
  ...found(
    key,
    ['metastasis', 'infection-or-abscess', 'haematoma'],
    anyOf(cordThere, rootsThere),
    3,
    'what is seen there may press on cord and roots',
    cordBook,
  ),
  ...found(key, 'other', anyOf(cordThere, rootsThere), 1.5, 'something is seen there that is not normal'),
  ...found(key, 'root-enhancement', manyRoots, 5, 'roots or meninges are seen to be inflamed or infiltrated'),
  ...found(
    key,
    ['normal', 'incidental'],
    cordThere,
    0.25,
    'nothing is seen there that explains a lesion of the cord; an early or metabolic one can be missed',
    cordBook,
  ),
  ...found(key, ['normal', 'incidental'], rootsThere, 0.4, 'no compressed root is seen there'),
];

/** Imaging of spine, brain and plexus: shows the lesion, or fails to. */
export const imagingResults: readonly ResultWeight[] = [
  ...spineRegion('mri-cervical-spine', cervicalCord, cervicalRoots),
  ...spineRegion('mri-thoracic-spine', thoracicCord, () => false),
  ...spineRegion('mri-whole-spine', cord, kinds('root')),
  ...found(
    ['mri-cervical-spine', 'mri-thoracic-spine'],
    ['cord-compression', 'cord-lesion-short', 'cord-lesion-long'],
    brain,
    0.5,
    'a lesion of the cord has been found that may suffice',
  ),
  ...found('mri-whole-spine', ['normal', 'incidental'], cauda, 0.3, 'no compression of the cauda equina is seen'),
  ...found(
    'mri-lumbar-spine',
    'cauda-equina-compression',
    cauda,
    20,
    'the cauda equina is seen to be compressed',
    read('girft-ces-2023'),
  ),
  ...found('mri-lumbar-spine', 'conus-lesion', lowerCord, 20, 'a lesion of the conus is seen', cordBook),
  ...found('mri-lumbar-spine', 'root-compression', lumbarRoots, 5, 'a root is seen to be compressed there'),
  ...found('mri-lumbar-spine', 'canal-stenosis', lumbarRoots, 2, 'the lumbar canal is narrow'),
  ...found(
    'mri-lumbar-spine',
    ['metastasis', 'infection-or-abscess', 'haematoma'],
    anyOf(lumbarRoots, lowerCord),
    3,
    'what is seen there may press on the roots',
  ),
  ...found(
    'mri-lumbar-spine',
    'other',
    anyOf(lumbarRoots, lowerCord),
    1.5,
    'something is seen there that is not normal',
  ),
  ...found('mri-lumbar-spine', 'root-enhancement', manyRoots, 5, 'roots are seen to be inflamed or infiltrated'),
  ...found(
    'mri-lumbar-spine',
    ['normal', 'incidental'],
    cauda,
    0.15,
    'no compression of the cauda equina is seen',
    read('girft-ces-2023'),
  ),
  ...found('mri-lumbar-spine', ['normal', 'incidental'], kinds('root'), 0.5, 'no compressed root is seen there'),

  ...found(
    ['mri-brain', 'ct-head'],
    ['infarct', 'haemorrhage'],
    brain,
    5,
    'a lesion of the brain is seen',
    strokeGuideline,
  ),
  ...found(['mri-brain', 'ct-head'], 'space-occupying', anyOf(brain, pressure), 5, 'a mass is seen in the head'),
  ...found('mri-brain', 'ring-enhancing', anyOf(brain, pressure), 5, 'a mass is seen in the head'),
  ...found(['mri-brain', 'ct-head'], 'other', brain, 1.5, 'something is seen in the brain that is not normal'),
  ...found('mri-brain', 'cavernous-malformation', brain, 3, 'a malformation that bleeds is seen in the brain'),
  ...found('mri-brain', 'microbleeds', kinds('hemisphere'), 1.5, 'small vessels of the hemispheres have bled'),
  ...found(
    'mri-brain',
    'white-matter-disease',
    kinds('hemisphere', 'encephalopathy'),
    2,
    'the white matter of the hemispheres is seen to be diseased',
  ),
  ...found(
    'mri-brain',
    'posterior-oedema',
    anyOf(kinds('encephalopathy'), ({ key, side }) => key === 'cortex-occipital' && side === 'both'),
    5,
    'the hindmost parts of both hemispheres are swollen',
    recalled('adams-victor', 'hypertensive encephalopathy'),
  ),
  ...found(
    'mri-brain',
    'pontine-signal',
    sites('pons-ventral', 'corticobulbar-both-sides'),
    8,
    'the middle of the pons is seen to be diseased',
    recalled('adams-victor', 'central pontine myelinolysis'),
  ),
  ...found('mri-brain', 'pontine-signal', sites('pons-tegmentum', 'brainstem-diffuse'), 3, 'the pons is diseased'),
  ...found(
    'mri-brain',
    'cortical-ribboning',
    kinds('encephalopathy'),
    5,
    'the cortex is seen to be diseased in many places',
    recalled('adams-victor', 'prion diseases'),
  ),
  ...found(
    'mri-brain',
    'low-tonsils',
    anyOf(
      sites('foramen-magnum'),
      ({ key, level }) => key === 'spinal-cord-central' && level?.startsWith('C') === true,
    ),
    5,
    'the tonsils of the cerebellum press on what runs through the foramen magnum',
    recalled('adams-victor', 'Chiari malformation'),
  ),
  ...found(
    'ct-head',
    'subdural-haematoma',
    anyOf(kinds('hemisphere'), pressure),
    5,
    'a haematoma lies over a hemisphere',
  ),
  ...found(
    'mri-brain',
    'demyelinating-lesions',
    anyOf(brain, cord, sites('optic-nerve')),
    3,
    'demyelination strikes brain, cord and optic nerve',
    recalled('adams-victor', 'multiple sclerosis'),
  ),
  ...found(
    'mri-brain',
    'cerebellar-atrophy',
    sites('cerebellar-degeneration', 'cerebellar-vermis'),
    12,
    'the cerebellum is seen to be wasted',
  ),
  ...found(
    'mri-brain',
    'wernicke-signal',
    anyOf(sites('brainstem-diffuse'), kinds('encephalopathy')),
    8,
    'the changes lie around third ventricle and aqueduct',
    recalled('caine-1997'),
  ),
  ...found(
    'mri-brain',
    'encephalitis',
    anyOf(sites('cortex-temporal'), kinds('encephalopathy')),
    6,
    'the brain is seen to be inflamed',
  ),
  ...found(
    ['mri-brain', 'ct-head'],
    'hydrocephalus',
    anyOf(sites('frontal-gait-disorder', 'midbrain-dorsal'), pressure),
    6,
    'the ventricles are seen to be wide',
  ),
  ...found(
    'mri-brain',
    'meningeal-enhancement',
    anyOf(kinds('meninges'), sites('polyradiculopathy')),
    5,
    'the meninges are seen to be diseased',
  ),
  ...found(
    'mri-brain',
    'venous-thrombosis',
    anyOf(kinds('hemisphere'), pressure),
    4,
    'a venous sinus is seen to be closed',
  ),
  ...found(
    'mri-brain',
    'small-vessel-disease',
    sites('frontal-gait-disorder', 'corticobulbar-both-sides'),
    2,
    'small vessels supply the tracts of both hemispheres',
  ),
  ...found('mri-brain', 'cortical-atrophy', kinds('encephalopathy'), 1.5, 'the cortex is seen to be wasted'),
  ...found(
    'mri-brain',
    ['normal', 'incidental'],
    kinds('hemisphere', 'cerebellum'),
    0.2,
    'no lesion of the brain is seen',
    strokeGuideline,
  ),
  ...found(
    'mri-brain',
    ['normal', 'incidental'],
    kinds('brainstem'),
    0.35,
    'no lesion of the brainstem is seen; an early or small one can be missed',
    strokeGuideline,
  ),
  ...found(
    'ct-head',
    ['normal', 'incidental'],
    kinds('hemisphere'),
    0.8,
    'no bleeding or mass is seen; an early infarct can be missed',
    strokeGuideline,
  ),
  ...found(
    'ct-head',
    'subarachnoid-haemorrhage',
    kinds('meninges'),
    20,
    'blood is seen around the brain',
    read('nice-ng228'),
  ),
  ...found(
    'angiography-head-neck',
    'aneurysm',
    sites('oculomotor-nerve'),
    3,
    'an aneurysm may press on the third nerve',
  ),
  ...found(
    'angiography-head-neck',
    'dissection',
    anyOf(brain, sites('oculosympathetic-chain')),
    3,
    'a dissected artery harms the brain and the sympathetic fibres around it',
  ),
  ...found(
    'angiography-head-neck',
    ['stenosis', 'multifocal-narrowing', 'moyamoya'],
    brain,
    2,
    'an artery of the brain is seen to be narrow',
    strokeGuideline,
  ),
  ...found(
    'angiography-head-neck',
    'occlusion',
    brain,
    4,
    'an artery of the brain is seen to be closed',
    strokeGuideline,
  ),

  ...found('mri-brachial-plexus', ['mass', 'inflammation'], brachial, 6, 'the plexus is seen to be diseased'),
  ...found('mri-brachial-plexus', 'other', brachial, 2, 'the plexus does not look normal'),
  ...found('mri-lumbosacral-plexus', 'other', lumbosacral, 2, 'the plexus does not look normal'),
  ...found('mri-brachial-plexus', ['normal', 'incidental'], brachial, 0.5, 'the plexus looks sound'),
  ...found(
    'mri-lumbosacral-plexus',
    ['mass', 'haematoma', 'inflammation'],
    lumbosacral,
    6,
    'the plexus is seen to be diseased',
  ),
  ...found('mri-lumbosacral-plexus', ['normal', 'incidental'], lumbosacral, 0.5, 'the plexus looks sound'),
  ...found('mri-muscle', ['normal', 'incidental'], kinds('muscle'), 0.5, 'the muscles look sound'),
  ...found('mri-muscle', 'other', kinds('muscle'), 1.5, 'the muscles do not look normal'),
  ...found('mri-muscle', ['oedema', 'fatty-replacement'], kinds('muscle'), 4, 'the muscles are seen to be diseased'),
  ...found(
    'nerve-ultrasound',
    ['focal-swelling', 'mass-or-cyst'],
    kinds('nerve'),
    3,
    'a nerve is seen to be swollen in one place',
  ),
  ...found('nerve-ultrasound', 'normal', kinds('nerve'), 0.6, 'the nerve looks sound where it was looked at'),
  ...found(
    'nerve-ultrasound',
    'diffuse-enlargement',
    kinds('polyradiculoneuropathy', 'polyneuropathy'),
    3,
    'nerves are seen to be thick along their length',
  ),
];
