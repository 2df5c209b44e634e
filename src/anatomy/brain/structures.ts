import { recalled, type Source } from '../../kernel/cite.ts';

/** Large parts of the head that structures belong to, from the cortex down and outwards. */
export const brainParts = [
  'cortex',
  'white-matter',
  'deep-nuclei',
  'visual-pathway',
  'midbrain',
  'pons',
  'medulla',
  'cerebellum',
  'cranial-nerve',
  'envelope',
] as const;
export type BrainPart = (typeof brainParts)[number];

/**
 * A structure above the cord, or a cranial nerve: the unit that a lesion damages. Small enough that two functions of
 * different places never share one, large enough that a bedside sign can tell it from its neighbours.
 */
export interface BrainStructure {
  /** Name as it reads after "the left". */
  readonly label: string;
  readonly part: BrainPart;
  /** False for what lies in the midline and has no halves that signs could tell apart. */
  readonly paired: boolean;
  readonly source: Source;
}

const row =
  (part: BrainPart, source: Source) =>
  (label: string, paired = true): BrainStructure => ({
    label,
    part,
    paired,
    source,
  });

const cortex = row('cortex', recalled('blumenfeld', 'cerebral hemispheres and vascular supply'));
const white = row('white-matter', recalled('blumenfeld', 'corticobulbar and corticospinal tracts, internal capsule'));
const deep = row('deep-nuclei', recalled('blumenfeld', 'thalamus and basal ganglia'));
const visual = row('visual-pathway', recalled('blumenfeld', 'visual system'));
const midbrain = row('midbrain', recalled('blumenfeld', 'midbrain, internal structures and vascular supply'));
const pons = row('pons', recalled('blumenfeld', 'pons, internal structures and vascular supply'));
const medulla = row('medulla', recalled('blumenfeld', 'medulla, internal structures and vascular supply'));
const cerebellum = row('cerebellum', recalled('blumenfeld', 'cerebellum'));
const nerve = row('cranial-nerve', recalled('brazis', 'cranial nerves, course outside the brainstem'));
const envelope = row('envelope', recalled('adams-victor', 'meninges and intracranial pressure'));

const structures = {
  // Cortex
  'motor-cortex-face': cortex('motor cortex, face area'),
  'motor-cortex-arm': cortex('motor cortex, arm area'),
  'motor-cortex-hand': cortex('motor cortex, hand area'),
  'motor-cortex-leg': cortex('motor cortex, leg area'),
  'motor-cortex-foot': cortex('motor cortex, foot area'),
  'sensory-cortex-face': cortex('sensory cortex, face area'),
  'sensory-cortex-arm': cortex('sensory cortex, arm area'),
  'sensory-cortex-hand': cortex('sensory cortex, hand area'),
  'sensory-cortex-leg': cortex('sensory cortex, leg area'),
  'sensory-cortex-foot': cortex('sensory cortex, foot area'),
  'frontal-eye-field': cortex('frontal eye field'),
  'medial-frontal-cortex': cortex('medial frontal cortex'),
  'dorsolateral-frontal-cortex': cortex('dorsolateral frontal cortex'),
  'orbitofrontal-cortex': cortex('orbitofrontal cortex'),
  'inferior-frontal-gyrus': cortex('inferior frontal gyrus'),
  'superior-temporal-gyrus': cortex('superior temporal gyrus'),
  'inferior-parietal-lobule': cortex('inferior parietal lobule'),
  'superior-parietal-lobule': cortex('superior parietal lobule'),
  'medial-temporal-lobe': cortex('medial temporal lobe'),
  'occipital-cortex-above-calcarine': cortex('occipital cortex above the calcarine fissure'),
  'occipital-cortex-below-calcarine': cortex('occipital cortex below the calcarine fissure'),
  'occipital-pole': cortex('occipital pole'),
  'ventral-occipitotemporal-cortex': cortex('ventral occipitotemporal cortex'),

  // White matter
  'corona-radiata': white('corona radiata'),
  'internal-capsule-genu': white('genu of the internal capsule'),
  'internal-capsule-posterior-limb': white('posterior limb of the internal capsule'),
  'thalamocortical-radiation': white('thalamocortical radiation'),
  'frontopontine-fibres': white('frontopontine fibres'),

  // Deep nuclei
  striatum: deep('striatum'),
  'globus-pallidus': deep('globus pallidus'),
  'subthalamic-nucleus': deep('subthalamic nucleus'),
  'substantia-nigra': deep('substantia nigra'),
  'ventral-posterolateral-nucleus': deep('ventral posterolateral nucleus of the thalamus'),
  'ventral-posteromedial-nucleus': deep('ventral posteromedial nucleus of the thalamus'),
  'ventrolateral-nucleus': deep('ventrolateral nucleus of the thalamus'),
  'medial-thalamus': deep('medial thalamus'),
  hypothalamus: deep('hypothalamus'),

  // Visual pathway
  retina: visual('retina'),
  'inner-retina': visual('inner layers of the retina'),
  'optic-nerve-head': visual('optic nerve head'),
  'optic-nerve': visual('optic nerve'),
  'optic-chiasm': visual('optic chiasm', false),
  'optic-tract': visual('optic tract'),
  'lateral-geniculate-body': visual('lateral geniculate body'),
  'lower-optic-radiation': visual('lower optic radiation, in the temporal lobe'),
  'upper-optic-radiation': visual('upper optic radiation, in the parietal lobe'),

  // Midbrain
  'cerebral-peduncle': midbrain('cerebral peduncle'),
  'corticobulbar-fibres-in-midbrain': midbrain('corticobulbar fibres in the cerebral peduncle'),
  'oculomotor-nucleus': midbrain('oculomotor nucleus'),
  'oculomotor-fascicle': midbrain('oculomotor fascicle'),
  'pupil-nucleus': midbrain('parasympathetic nucleus of the pupil'),
  'trochlear-nucleus': midbrain('trochlear nucleus'),
  'red-nucleus': midbrain('red nucleus'),
  pretectum: midbrain('pretectum', false),
  'vertical-gaze-centre': midbrain('vertical gaze centre'),
  'medial-lemniscus-in-midbrain': midbrain('medial lemniscus in the midbrain'),
  'spinothalamic-tract-in-midbrain': midbrain('spinothalamic tract in the midbrain'),
  'sympathetic-fibres-in-midbrain': midbrain('descending sympathetic fibres in the midbrain'),
  'midbrain-reticular-formation': midbrain('midbrain reticular formation'),

  // Pons
  'basis-pontis': pons('corticospinal fibres in the base of the pons'),
  'corticobulbar-fibres-in-pons': pons('corticobulbar fibres in the base of the pons'),
  'pontine-nuclei': pons('pontine nuclei'),
  'abducens-nucleus': pons('abducens nucleus'),
  'horizontal-gaze-centre': pons('horizontal gaze centre of the pons'),
  'abducens-fascicle': pons('abducens fascicle'),
  'medial-longitudinal-fasciculus': pons('medial longitudinal fasciculus'),
  'facial-nucleus': pons('facial nucleus'),
  'facial-fascicle': pons('facial fascicle'),
  'cochlear-nucleus': pons('cochlear nucleus'),
  'vestibular-nuclei': pons('vestibular nuclei'),
  'trigeminal-motor-nucleus': pons('trigeminal motor nucleus'),
  'trigeminal-main-sensory-nucleus': pons('main sensory nucleus of the trigeminal nerve'),
  'spinal-trigeminal-tract-in-pons': pons('spinal trigeminal tract in the pons'),
  'trigeminothalamic-fibres': pons('trigeminothalamic fibres'),
  'medial-lemniscus-in-pons': pons('medial lemniscus in the pons'),
  'spinothalamic-tract-in-pons': pons('spinothalamic tract in the pons'),
  'middle-cerebellar-peduncle': pons('middle cerebellar peduncle'),
  'superior-cerebellar-peduncle': pons('superior cerebellar peduncle'),
  'sympathetic-fibres-in-pons': pons('descending sympathetic fibres in the pons'),
  'pontine-reticular-formation': pons('pontine reticular formation'),

  // Medulla
  pyramid: medulla('pyramid'),
  'crossed-corticospinal-fibres': medulla('corticospinal fibres below their crossing'),
  'medial-lemniscus-in-medulla': medulla('medial lemniscus in the medulla'),
  'dorsal-column-nuclei': medulla('dorsal column nuclei'),
  'hypoglossal-nucleus': medulla('hypoglossal nucleus'),
  'hypoglossal-fascicle': medulla('hypoglossal fascicle'),
  'nucleus-ambiguus': medulla('nucleus ambiguus'),
  'solitary-nucleus': medulla('solitary nucleus'),
  'spinal-trigeminal-tract-in-medulla': medulla('spinal trigeminal tract in the medulla'),
  'spinothalamic-tract-in-medulla': medulla('spinothalamic tract in the medulla'),
  'inferior-cerebellar-peduncle': medulla('inferior cerebellar peduncle'),
  'lower-vestibular-nuclei': medulla('lower vestibular nuclei'),
  'sympathetic-fibres-in-medulla': medulla('descending sympathetic fibres in the medulla'),

  // Cerebellum
  'cerebellar-hemisphere': cerebellum('cerebellar hemisphere'),
  'cerebellar-vermis': cerebellum('cerebellar vermis', false),
  'flocculonodular-lobe': cerebellum('flocculonodular lobe', false),

  // Cranial nerves outside the brainstem
  'olfactory-nerve': nerve('olfactory nerve and bulb'),
  'oculomotor-nerve': nerve('oculomotor nerve'),
  'pupil-fibres-of-oculomotor-nerve': nerve('superficial pupil fibres of the oculomotor nerve'),
  'trochlear-nerve': nerve('trochlear nerve'),
  'abducens-nerve': nerve('abducens nerve'),
  'trigeminal-root': nerve('trigeminal root and ganglion'),
  'trigeminal-motor-root': nerve('motor root of the trigeminal nerve'),
  'facial-nerve-before-canal': nerve('facial nerve in the cerebellopontine angle'),
  'facial-nerve-in-canal': nerve('facial nerve in the facial canal'),
  'facial-nerve-beyond-canal': nerve('facial nerve beyond the stylomastoid foramen'),
  'cochlear-nerve': nerve('cochlear nerve'),
  'vestibular-nerve': nerve('vestibular nerve or labyrinth'),
  'semicircular-canals': nerve('semicircular canals'),
  'glossopharyngeal-nerve': nerve('glossopharyngeal nerve'),
  'vagus-nerve': nerve('vagus nerve'),
  'recurrent-laryngeal-nerve': nerve('recurrent laryngeal nerve'),
  'accessory-nerve': nerve('accessory nerve near the skull base'),
  'hypoglossal-nerve': nerve('hypoglossal nerve'),
  'cervical-sympathetic-chain': nerve('cervical sympathetic chain'),
  'carotid-sympathetic-plexus': nerve('sympathetic plexus of the carotid artery'),
  'ciliary-ganglion': nerve('ciliary ganglion'),

  // Envelope
  meninges: envelope('meninges', false),
  'intracranial-pressure': envelope('balance of intracranial pressure', false),
} as const satisfies Record<string, BrainStructure>;

export type StructureKey = keyof typeof structures;

export const brainStructures: Readonly<Record<StructureKey, BrainStructure>> = structures;
export const structureKeys = Object.keys(structures) as readonly StructureKey[];
