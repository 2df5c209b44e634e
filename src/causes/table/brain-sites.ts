/** Sites of the brain by what reaches them; a cause that is never seen at one site of a kind names its sites instead. */

/** Cortex as the arteries divide it. */
export const arterialCortex = [
  'cortex-middle-cerebral',
  'cortex-middle-cerebral-upper',
  'cortex-middle-cerebral-lower',
  'cortex-anterior-cerebral',
  'cortex-posterior-cerebral',
  'cortex-hand-area',
] as const;

/** Cortex as the lobes divide it. */
export const lobes = ['cortex-frontal', 'cortex-parietal', 'cortex-temporal', 'cortex-occipital'] as const;

export const cortex = [...arterialCortex, ...lobes] as const;

/** White matter and nuclei in the depth of a hemisphere, which perforating arteries supply. */
export const deepHemisphere = ['internal-capsule', 'striatum', 'thalamus', 'thalamus-and-capsule'] as const;

/** Visual pathway behind the chiasm, which shares the diseases of the hemisphere around it. */
export const hindVisualPathway = ['optic-tract', 'optic-radiation-temporal', 'optic-radiation-parietal'] as const;

export const opticRadiation = ['optic-radiation-temporal', 'optic-radiation-parietal'] as const;

/** Parts of one side of the brainstem, as its arteries supply them. */
export const brainstemParts = [
  'midbrain-ventral',
  'midbrain-tegmentum',
  'midbrain-dorsal',
  'pons-ventral',
  'pons-tegmentum',
  'pons-lateral',
  'medial-longitudinal-fasciculus',
  'medulla-medial',
  'medulla-lateral',
  'medulla-half',
] as const;

export const medulla = ['medulla-medial', 'medulla-lateral', 'medulla-half'] as const;

/** Headache in whatever words it is told. */
export const anyHeadache = ['headache', 'new-headache', 'morning-headache', 'thunderclap-headache'] as const;

/** Loss of thinking that the person or the family tells of. */
export const cognitiveDecline = ['cognitive-change', 'dementia'] as const;
