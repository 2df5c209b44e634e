import { recalled } from '../../../kernel/cite.ts';
import type { FunctionRow } from '../function-row.ts';
import { either, onBothSides, onEitherSide, other, partly, same, series } from '../path.ts';

const eyes = recalled('brazis', 'ocular motor system');
const pupils = recalled('brazis', 'pupil');
const vestibular = recalled('brazis', 'vestibular system and nystagmus');

export const eyeMovementFunctions = {
  oculomotor: {
    carries: 'elevation, depression and adduction of the eye',
    path: same('oculomotor-nucleus', 'oculomotor-fascicle', 'oculomotor-nerve'),
    source: eyes,
  },
  'superior-rectus': {
    carries: 'the superior rectus, whose fibres come from the nucleus of the other side',
    path: partly(0.85, other('oculomotor-nucleus')),
    source: eyes,
  },
  'eyelid-elevation': {
    carries: 'the levator of the lid',
    // One midline nucleus serves both lids, so a lesion of one half weakens both, but less.
    path: series(
      partly(0.6, same('oculomotor-nucleus')),
      partly(0.5, other('oculomotor-nucleus')),
      same('oculomotor-fascicle', 'oculomotor-nerve'),
    ),
    source: eyes,
  },
  'pupil-parasympathetic': {
    carries: 'constriction of the pupil',
    path: series(
      same('pupil-nucleus'),
      partly(0.55, same('pretectum')),
      partly(0.75, same('oculomotor-fascicle')),
      same('pupil-fibres-of-oculomotor-nerve', 'ciliary-ganglion'),
    ),
    source: pupils,
  },
  'sympathetic-eye': {
    carries: 'the sympathetic supply of pupil and lid',
    path: same(
      'hypothalamus',
      'sympathetic-fibres-in-midbrain',
      'sympathetic-fibres-in-pons',
      'sympathetic-fibres-in-medulla',
      'cervical-sympathetic-chain',
      'carotid-sympathetic-plexus',
    ),
    source: pupils,
  },
  trochlear: {
    carries: 'the superior oblique',
    path: series(other('trochlear-nucleus'), same('trochlear-nerve')),
    source: eyes,
  },
  abducens: {
    carries: 'abduction of the eye',
    path: series(
      same('abducens-nucleus', 'abducens-fascicle', 'abducens-nerve'),
      partly(0.35, same('intracranial-pressure')),
      // Where thalamus and midbrain meet, convergence in excess holds the eye in: it looks like a sixth nerve.
      partly(0.25, onBothSides('vertical-gaze-centre')),
      partly(0.04, onEitherSide('vertical-gaze-centre')),
    ),
    source: eyes,
  },
  'tonic-pupil': {
    carries: 'the ciliary muscle and the sphincter of the pupil',
    path: same('ciliary-ganglion'),
    source: pupils,
  },
  'gaze-horizontal': {
    carries: 'conjugate gaze to that side',
    path: series(
      same('abducens-nucleus', 'horizontal-gaze-centre'),
      partly(0.75, other('frontal-eye-field')),
      partly(0.15, other('internal-capsule-genu')),
      // With both upper parietal lobes gone the gaze is no longer sent anywhere at will.
      partly(0.4, onBothSides('superior-parietal-lobule')),
    ),
    source: eyes,
  },
  internuclear: {
    carries: 'the signal to adduct on looking across',
    path: same('medial-longitudinal-fasciculus'),
    source: eyes,
  },
  'paralytic-divergence': {
    carries: 'the hold that keeps this eye from drifting out',
    // Gaze that fails to one side, and the eye of that side that cannot come back across: the other eye drifts out.
    path: partly(
      0.6,
      either(other('abducens-nucleus', 'horizontal-gaze-centre'), other('medial-longitudinal-fasciculus')),
    ),
    source: recalled('brazis', 'paralytic pontine exotropia'),
  },
  convergence: {
    carries: 'convergence, which may fail with both longitudinal fascicles',
    path: partly(0.4, onBothSides('medial-longitudinal-fasciculus')),
    source: eyes,
  },
  skew: {
    carries: 'vertical alignment of the eyes',
    path: series(
      partly(0.4, onEitherSide('vestibular-nuclei')),
      partly(0.5, onEitherSide('lower-vestibular-nuclei')),
      partly(0.4, onEitherSide('medial-longitudinal-fasciculus')),
      partly(0.35, onEitherSide('vertical-gaze-centre')),
      partly(0.25, same('flocculonodular-lobe')),
    ),
    source: vestibular,
  },
  'gaze-vertical': {
    carries: 'vertical gaze',
    path: series(
      partly(0.9, same('pretectum')),
      onBothSides('vertical-gaze-centre'),
      partly(0.35, onEitherSide('vertical-gaze-centre')),
      partly(0.3, onBothSides('superior-parietal-lobule')),
    ),
    source: eyes,
  },
  'gaze-down': {
    carries: 'downgaze',
    // The pretectum is for looking up; what looks down lies lower, and needs both halves.
    path: series(
      partly(0.25, same('pretectum')),
      onBothSides('vertical-gaze-centre'),
      partly(0.25, onEitherSide('vertical-gaze-centre')),
    ),
    source: eyes,
  },
  pretectal: {
    carries: 'upgaze, convergence and the light reflex through the dorsal midbrain',
    path: series(same('pretectum'), partly(0.05, same('intracranial-pressure'))),
    source: eyes,
  },
  'nystagmus-vestibular': {
    carries: 'the balance between the two labyrinths',
    // The fast phase beats away from the side that has lost its tone.
    path: series(
      other('vestibular-nerve'),
      partly(0.5, other('vestibular-nuclei')),
      partly(0.6, other('lower-vestibular-nuclei')),
    ),
    source: vestibular,
  },
  'nystagmus-gaze-evoked': {
    carries: 'holding of gaze to that side',
    path: series(
      partly(0.5, same('cerebellar-hemisphere')),
      partly(0.25, other('cerebellar-hemisphere')),
      partly(0.6, same('flocculonodular-lobe')),
      partly(0.4, same('cerebellar-vermis')),
      partly(0.4, same('vestibular-nuclei', 'lower-vestibular-nuclei')),
      partly(0.3, same('medial-longitudinal-fasciculus')),
      partly(0.3, same('middle-cerebellar-peduncle')),
      partly(0.5, other('medial-longitudinal-fasciculus')),
    ),
    source: vestibular,
  },
  'nystagmus-central': {
    carries: 'stability of gaze in the midline of brainstem and cerebellum',
    path: series(
      partly(0.55, same('flocculonodular-lobe')),
      partly(0.3, same('cerebellar-vermis')),
      partly(0.25, onEitherSide('vestibular-nuclei')),
      // The nuclei beside the hypoglossal one hold vertical gaze.
      partly(0.4, onEitherSide('lower-vestibular-nuclei')),
      partly(0.3, onEitherSide('medial-longitudinal-fasciculus')),
      partly(0.12, onEitherSide('cerebellar-hemisphere')),
      // The interstitial nucleus holds the eyes up and down, and beats where it fails.
      partly(0.15, onEitherSide('vertical-gaze-centre')),
    ),
    source: vestibular,
  },
  downbeat: {
    carries: 'the damping of upward drift of the eyes',
    path: series(
      partly(0.6, same('flocculonodular-lobe')),
      partly(0.1, same('cerebellar-vermis')),
      partly(0.1, onEitherSide('vertical-gaze-centre')),
    ),
    source: vestibular,
  },
  pursuit: {
    carries: 'smooth pursuit',
    path: series(
      partly(0.7, same('flocculonodular-lobe')),
      partly(0.6, same('cerebellar-vermis')),
      partly(0.35, onEitherSide('cerebellar-hemisphere')),
      partly(0.2, onEitherSide('middle-cerebellar-peduncle')),
    ),
    source: vestibular,
  },
  'saccade-accuracy': {
    carries: 'the aim of saccades',
    // The dorsal vermis and the fastigial nuclei set their size.
    path: series(
      partly(0.65, same('cerebellar-vermis')),
      partly(0.35, onEitherSide('cerebellar-hemisphere')),
      partly(0.3, same('flocculonodular-lobe')),
      partly(0.3, onEitherSide('inferior-cerebellar-peduncle')),
      partly(0.2, onEitherSide('superior-cerebellar-peduncle', 'middle-cerebellar-peduncle')),
    ),
    source: eyes,
  },
  vestibular: {
    carries: 'the vestibulo-ocular reflex',
    // The head turned to one side takes the eyes to the other, by the abducens nucleus there.
    path: series(
      same('vestibular-nerve'),
      partly(0.35, same('vestibular-nuclei')),
      partly(0.5, other('abducens-nucleus')),
    ),
    source: vestibular,
  },
  'canal-balance': {
    carries: 'stillness of the eyes in the hanging position',
    // Without the nodule what the canals store is not damped by gravity, and eyes beat in a hanging head.
    path: series(same('semicircular-canals'), partly(0.3, same('flocculonodular-lobe'))),
    source: vestibular,
  },
  'balance-to-side': {
    carries: 'balance against falling to that side',
    path: series(
      partly(0.7, same('vestibular-nerve')),
      partly(0.7, same('vestibular-nuclei', 'lower-vestibular-nuclei')),
      partly(0.6, same('inferior-cerebellar-peduncle')),
      partly(0.6, same('cerebellar-hemisphere')),
    ),
    source: vestibular,
  },
} as const satisfies Record<string, FunctionRow>;
