import { recalled } from '../../../kernel/cite.ts';
import type { FunctionRow } from '../function-row.ts';
import { either, onBothSides, onLeft, onRight, other, partly, same, series } from '../path.ts';

const visual = recalled('brazis', 'visual pathways');
const pupil = recalled('brazis', 'pupil');

/** From chiasm to cortex, each half of the brain sees the other half of space; its lower fibres see the upper quarter. */
const upperQuarter = series(
  other('optic-tract', 'lateral-geniculate-body', 'lower-optic-radiation', 'occipital-cortex-below-calcarine'),
  partly(0.3, other('occipital-pole')),
);
const lowerQuarter = series(
  other('optic-tract', 'lateral-geniculate-body', 'upper-optic-radiation', 'occipital-cortex-above-calcarine'),
  partly(0.3, other('occipital-pole')),
);

/** How often a lesion of the retina or the optic nerve shows as each kind of loss: judged from the causes met. */
export const visionFunctions = {
  smell: {
    carries: 'smell',
    path: series(same('olfactory-nerve'), partly(0.15, same('orbitofrontal-cortex'))),
    source: recalled('brazis', 'olfactory nerve'),
  },
  'visual-acuity': {
    carries: 'sharp sight',
    path: series(
      partly(0.75, same('retina')),
      same('inner-retina'),
      partly(0.25, same('optic-nerve-head')),
      same('optic-nerve'),
      partly(0.35, same('optic-chiasm')),
      onBothSides('occipital-pole'),
    ),
    source: visual,
  },
  'colour-vision': {
    carries: 'colour vision',
    path: series(
      partly(0.3, same('retina')),
      partly(0.6, same('inner-retina')),
      partly(0.3, same('optic-nerve-head')),
      same('optic-nerve'),
      partly(0.3, same('optic-chiasm')),
    ),
    source: visual,
  },
  'central-field': {
    carries: 'the centre of the field',
    path: series(partly(0.5, same('retina', 'inner-retina')), partly(0.6, same('optic-nerve'))),
    source: visual,
  },
  'junctional-field': {
    carries: 'the temporal field of this eye, beside the nerve of the other',
    // Where the other nerve joins the chiasm its lesion takes the crossing fibres of this eye that lie beside it.
    path: partly(0.8, either(other('optic-nerve'), same('optic-chiasm'))),
    source: recalled('brazis', 'anterior chiasmal syndrome'),
  },
  'altitudinal-field': {
    carries: 'the upper or lower half of the field of one eye',
    path: series(
      partly(0.45, same('retina')),
      partly(0.12, same('inner-retina')),
      partly(0.6, same('optic-nerve-head')),
      partly(0.12, same('optic-nerve')),
      // Both upper banks of the calcarine fissure see the lower half of the world with either eye, both lower banks the upper.
      partly(0.4, onBothSides('occipital-cortex-above-calcarine')),
      partly(0.4, onBothSides('occipital-cortex-below-calcarine')),
    ),
    source: visual,
  },
  'optic-disc': {
    carries: 'flow in the optic nerve head',
    path: series(
      same('optic-nerve-head'),
      partly(0.3, same('optic-nerve')),
      partly(0.85, same('intracranial-pressure')),
    ),
    source: visual,
  },
  'optic-atrophy': {
    carries: 'nourishment of the optic disc',
    path: series(
      partly(0.5, same('optic-nerve')),
      partly(0.3, same('optic-nerve-head')),
      partly(0.4, same('optic-chiasm')),
      partly(0.3, other('optic-tract')),
      partly(0.2, same('retina', 'inner-retina')),
    ),
    source: visual,
  },
  'pupil-afferent': {
    carries: 'the afferent limb of the light reflex',
    path: series(
      partly(0.3, same('retina')),
      partly(0.9, same('inner-retina')),
      partly(0.5, same('optic-nerve-head')),
      same('optic-nerve'),
      partly(0.2, same('optic-chiasm')),
      partly(0.35, other('optic-tract')),
    ),
    source: pupil,
  },
  'light-perception': {
    carries: 'any light at all from the eye',
    // An eye that is blind has no direct reaction to light; most lesions leave some sight.
    path: series(partly(0.2, same('optic-nerve', 'inner-retina')), partly(0.2, same('optic-chiasm'))),
    source: pupil,
  },
  'light-perception-of-both-eyes': {
    carries: 'any light at all from either eye, without which both pupils are wide',
    path: series(partly(0.25, onBothSides('optic-nerve')), partly(0.1, same('optic-chiasm'))),
    source: pupil,
  },
  'visual-field-upper-quadrant': {
    carries: 'sight of the upper quarter of that side',
    path: upperQuarter,
    source: visual,
  },
  'visual-field-lower-quadrant': {
    carries: 'sight of the lower quarter of that side',
    path: lowerQuarter,
    source: visual,
  },
  'visual-field-half': {
    carries: 'sight of that half of space',
    path: either(upperQuarter, lowerQuarter),
    source: visual,
  },
  'awareness-of-sight': {
    carries: 'knowing that one does not see',
    // Few of the cortically blind deny it; hardly anybody whose eyes are blind does.
    path: partly(0.25, onBothSides('occipital-cortex-above-calcarine')),
    source: recalled('brazis', 'cortical blindness'),
  },
  'visual-field-bitemporal': { carries: 'sight of both temporal halves', path: same('optic-chiasm'), source: visual },
  'visual-recognition': {
    carries: 'recognition of what is seen',
    path: series(
      partly(0.5, onRight('ventral-occipitotemporal-cortex')),
      partly(0.25, onLeft('ventral-occipitotemporal-cortex')),
      onBothSides('ventral-occipitotemporal-cortex'),
      // The whole of a scene is lost with the upper parietal lobes of both sides, the odd view of a thing with the right one.
      partly(0.6, onBothSides('superior-parietal-lobule')),
      partly(0.06, onRight('inferior-parietal-lobule')),
    ),
    source: recalled('brazis', 'occipital lobes and visual association areas'),
  },
  reading: {
    carries: 'reading',
    path: series(
      // Letters are known there, and what the right half sees of them must pass the splenium beside it.
      partly(0.8, onLeft('ventral-occipitotemporal-cortex')),
      partly(0.5, onLeft('superior-temporal-gyrus')),
      partly(0.5, onLeft('inferior-parietal-lobule')),
    ),
    source: recalled('brazis', 'alexia'),
  },
} as const satisfies Record<string, FunctionRow>;
