import { recalled } from '../../../kernel/cite.ts';
import type { FunctionRow } from '../function-row.ts';
import { onBothSides, onEitherSide, onLeft, onRight, other, type Path, partly, same, series, shared } from '../path.ts';
import type { StructureKey } from '../structures.ts';

const language = recalled('brazis', 'language and the dominant hemisphere');
const attention = recalled('brazis', 'hemineglect');
const frontal = recalled('brazis', 'frontal lobes');
const temporal = recalled('brazis', 'memory');
const arousal = recalled('brazis', 'coma');

/** Share of people in whom the left hemisphere leads for language, over both hands. Judged from sodium-amytal series. */
const leftLeads = 0.93;
const leading = (key: StructureKey): Path => shared([leftLeads, onLeft(key)], [1 - leftLeads, onRight(key)]);
/** The right half of the brain attends to both sides of space, the left to the right only. */
const attentionToLeft = series(
  partly(0.75, onRight('inferior-parietal-lobule')),
  partly(0.3, onRight('dorsolateral-frontal-cortex')),
  partly(0.2, onRight('striatum')),
  partly(0.3, onRight('medial-thalamus')),
  // A third of thalamic haemorrhages of the right half and a few of its infarcts neglect: what the thalamus sends up is lost.
  partly(0.12, onRight('thalamocortical-radiation')),
);
const attentionToRight = series(
  partly(0.25, onLeft('inferior-parietal-lobule')),
  partly(0.06, onLeft('dorsolateral-frontal-cortex')),
);

export const higherFunctions = {
  consciousness: {
    carries: 'wakefulness',
    path: series(
      partly(0.85, onBothSides('midbrain-reticular-formation')),
      partly(0.85, onBothSides('pontine-reticular-formation')),
      partly(0.7, onBothSides('medial-thalamus')),
      partly(0.25, onEitherSide('medial-thalamus')),
      partly(0.15, onEitherSide('midbrain-reticular-formation')),
      partly(0.4, same('intracranial-pressure')),
    ),
    source: arousal,
  },
  attention: {
    carries: 'attention',
    path: series(
      partly(0.25, onRight('inferior-parietal-lobule')),
      partly(0.2, onEitherSide('dorsolateral-frontal-cortex')),
      partly(0.35, onEitherSide('medial-thalamus')),
      partly(0.75, onBothSides('medial-thalamus')),
      // The caudate nucleus works with the frontal lobe before it.
      partly(0.15, onEitherSide('striatum')),
      partly(0.3, same('intracranial-pressure')),
    ),
    source: frontal,
  },
  orientation: {
    carries: 'orientation',
    path: series(
      partly(0.5, onBothSides('medial-temporal-lobe')),
      partly(0.6, onBothSides('medial-thalamus')),
      partly(0.2, onEitherSide('medial-thalamus', 'medial-temporal-lobe')),
      partly(0.25, same('intracranial-pressure')),
    ),
    source: temporal,
  },
  memory: {
    carries: 'the laying down of memories',
    path: series(
      onBothSides('medial-temporal-lobe'),
      partly(0.45, onLeft('medial-temporal-lobe')),
      partly(0.12, onRight('medial-temporal-lobe')),
      partly(0.3, onEitherSide('medial-thalamus')),
      partly(0.6, onBothSides('medial-thalamus')),
    ),
    source: temporal,
  },
  executive: {
    carries: 'planning and set shifting',
    path: series(
      partly(0.5, onEitherSide('dorsolateral-frontal-cortex')),
      partly(0.15, onEitherSide('striatum', 'medial-frontal-cortex')),
    ),
    source: frontal,
  },
  'mood-behaviour': {
    carries: 'drive and restraint',
    path: series(
      partly(0.5, onEitherSide('orbitofrontal-cortex')),
      partly(0.45, onEitherSide('medial-frontal-cortex')),
      partly(0.2, onEitherSide('dorsolateral-frontal-cortex')),
    ),
    source: frontal,
  },
  'frontal-release': {
    carries: 'the restraint of grasp, snout and palm-chin reflexes',
    path: series(
      partly(0.5, other('medial-frontal-cortex')),
      partly(0.3, onEitherSide('dorsolateral-frontal-cortex', 'orbitofrontal-cortex')),
    ),
    source: frontal,
  },
  'language-expression': {
    carries: 'the production of language',
    path: series(
      partly(0.9, leading('inferior-frontal-gyrus')),
      partly(0.2, leading('dorsolateral-frontal-cortex')),
      partly(0.2, leading('medial-frontal-cortex')),
      partly(0.2, leading('medial-thalamus')),
      // Deep lesions of the leading half starve or cut off the cortex above them.
      partly(0.3, leading('striatum')),
    ),
    source: language,
  },
  'speech-initiation': {
    carries: 'the drive to speak and move',
    // Without the inner face of both frontal lobes, or the middle of both thalami, people are awake and silent.
    path: series(
      partly(0.75, onBothSides('medial-frontal-cortex')),
      partly(0.3, onBothSides('medial-thalamus')),
      partly(0.1, onLeft('medial-frontal-cortex')),
    ),
    source: recalled('brazis', 'akinetic mutism'),
  },
  'language-comprehension': {
    carries: 'the understanding of language',
    path: partly(0.9, leading('superior-temporal-gyrus')),
    source: language,
  },
  'language-repetition': {
    carries: 'naming and repetition',
    path: series(
      partly(0.85, leading('inferior-frontal-gyrus')),
      partly(0.85, leading('superior-temporal-gyrus')),
      partly(0.5, leading('inferior-parietal-lobule')),
      // Names fail with the basal temporal cortex; repetition does not.
      partly(0.25, leading('ventral-occipitotemporal-cortex')),
    ),
    source: language,
  },
  calculation: {
    carries: 'calculation, writing, the naming of fingers and of left and right',
    path: series(
      partly(0.6, leading('inferior-parietal-lobule')),
      partly(0.15, leading('superior-temporal-gyrus')),
      partly(0.12, leading('medial-frontal-cortex')),
    ),
    source: recalled('brazis', 'parietal lobes'),
  },
  praxis: {
    carries: 'skilled movement',
    path: series(partly(0.45, leading('inferior-parietal-lobule')), partly(0.25, leading('medial-frontal-cortex'))),
    source: recalled('brazis', 'apraxia'),
  },
  'spatial-attention': {
    carries: 'attention to that side of space',
    path: { left: attentionToLeft, right: attentionToRight },
    source: attention,
  },
  construction: {
    carries: 'drawing, dressing and awareness of the own body',
    path: series(
      partly(0.6, onRight('inferior-parietal-lobule')),
      partly(0.35, onRight('superior-parietal-lobule')),
      partly(0.15, onLeft('inferior-parietal-lobule')),
      partly(0.12, onRight('medial-thalamus')),
      partly(0.08, onRight('thalamocortical-radiation')),
    ),
    source: recalled('brazis', 'parietal lobes'),
  },
  'limb-ownership': {
    carries: 'the sense that the hand obeys',
    path: series(partly(0.35, other('medial-frontal-cortex')), partly(0.2, other('superior-parietal-lobule'))),
    source: recalled('brazis', 'disconnection syndromes'),
  },
  'cortical-sensation': {
    carries: 'recognition by touch',
    path: series(
      partly(0.9, other('sensory-cortex-hand')),
      partly(0.6, other('superior-parietal-lobule')),
      partly(0.3, other('inferior-parietal-lobule')),
      partly(0.4, other('ventral-posterolateral-nucleus')),
      partly(0.35, other('thalamocortical-radiation')),
    ),
    source: recalled('brazis', 'cortical sensory loss'),
  },
} as const satisfies Record<string, FunctionRow>;
