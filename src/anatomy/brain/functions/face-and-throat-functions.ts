import { recalled } from '../../../kernel/cite.ts';
import type { FunctionRow } from '../function-row.ts';
import { corticobulbar, uncrossedCorticobulbar } from '../long-tracts.ts';
import { either, onEitherSide, other, partly, same, series, shared } from '../path.ts';

const fifth = recalled('brazis', 'trigeminal nerve');
const seventh = recalled('brazis', 'facial nerve');
const eighth = recalled('brazis', 'acoustic nerve');
const ninthAndTenth = recalled('brazis', 'glossopharyngeal and vagus nerves');
const eleventh = recalled('brazis', 'accessory nerve');
const twelfth = recalled('brazis', 'hypoglossal nerve');

const facialNerve = same(
  'facial-nucleus',
  'facial-fascicle',
  'facial-nerve-before-canal',
  'facial-nerve-in-canal',
  'facial-nerve-beyond-canal',
);
/** Raised pressure alone palsies the sixth nerve often and the seventh seldom (Chen 2021, read; share judged). */
const pressedFacialNerve = partly(0.03, same('intracranial-pressure'));
/**
 * Forehead, jaw, palate and larynx are served from both hemispheres: one alone suffices, or nearly. Where both fail the
 * loss is of both sides alike, and is a sign of its own.
 */
const bothHemispheres = either(corticobulbar, uncrossedCorticobulbar);
export const faceAndThroatFunctions = {
  'trigeminal-sensation': {
    carries: 'sensation of the face',
    path: series(
      same('trigeminal-root'),
      partly(0.8, same('trigeminal-main-sensory-nucleus')),
      partly(0.9, same('spinal-trigeminal-tract-in-pons', 'spinal-trigeminal-tract-in-medulla')),
      partly(0.9, other('trigeminothalamic-fibres', 'ventral-posteromedial-nucleus', 'thalamocortical-radiation')),
      partly(0.35, other('sensory-cortex-face')),
    ),
    source: fifth,
  },
  corneal: {
    carries: 'the corneal reflex',
    path: series(
      same('trigeminal-root'),
      partly(0.6, same('spinal-trigeminal-tract-in-pons', 'trigeminal-main-sensory-nucleus')),
      partly(0.4, same('spinal-trigeminal-tract-in-medulla')),
      partly(0.35, facialNerve),
    ),
    source: fifth,
  },
  'jaw-power': {
    carries: 'the muscles of the jaw',
    path: same('trigeminal-motor-nucleus', 'trigeminal-motor-root'),
    source: fifth,
  },
  'lower-face': {
    carries: 'movement of the lower face',
    path: series(facialNerve, corticobulbar, pressedFacialNerve),
    source: seventh,
  },
  'upper-face': {
    carries: 'movement of forehead and eyelids',
    path: series(facialNerve, partly(0.7, bothHemispheres), partly(0.08, corticobulbar), pressedFacialNerve),
    source: seventh,
  },
  'mouth-closure': {
    carries: 'lips that keep in what is in the mouth',
    path: series(partly(0.45, facialNerve), partly(0.25, corticobulbar)),
    source: seventh,
  },
  taste: {
    carries: 'taste on the front of the tongue',
    path: series(
      partly(0.7, same('facial-nerve-in-canal')),
      partly(0.4, same('facial-nerve-before-canal')),
      partly(0.3, same('solitary-nucleus')),
    ),
    source: seventh,
  },
  stapedius: {
    carries: 'the damping of loud sound by the stapedius',
    path: series(partly(0.5, same('facial-nerve-in-canal')), partly(0.2, same('facial-nerve-before-canal'))),
    source: seventh,
  },
  hearing: {
    carries: 'hearing',
    // The lower colliculi, through which both ears are heard, lie beside the pretectum.
    path: series(same('cochlear-nucleus', 'cochlear-nerve'), partly(0.06, same('pretectum'))),
    source: eighth,
  },
  palate: {
    carries: 'lift of the palate',
    path: series(same('nucleus-ambiguus', 'vagus-nerve'), partly(0.3, same('glossopharyngeal-nerve'))),
    source: ninthAndTenth,
  },
  gag: {
    carries: 'the gag reflex',
    path: same('nucleus-ambiguus', 'glossopharyngeal-nerve', 'vagus-nerve'),
    source: ninthAndTenth,
  },
  swallowing: {
    carries: 'swallowing',
    path: series(
      partly(0.8, onEitherSide('nucleus-ambiguus')),
      partly(0.6, onEitherSide('vagus-nerve')),
      partly(0.35, onEitherSide('glossopharyngeal-nerve')),
      partly(0.3, onEitherSide('hypoglossal-nucleus', 'hypoglossal-nerve')),
      partly(0.85, bothHemispheres),
      partly(0.3, series(corticobulbar, uncrossedCorticobulbar)),
    ),
    source: ninthAndTenth,
  },
  voice: {
    carries: 'the vocal cord',
    path: series(
      partly(0.75, same('nucleus-ambiguus')),
      partly(0.9, same('vagus-nerve')),
      same('recurrent-laryngeal-nerve'),
    ),
    source: ninthAndTenth,
  },
  'speech-articulation': {
    carries: 'articulation',
    path: series(
      partly(0.9, bothHemispheres),
      partly(0.55, series(corticobulbar, uncrossedCorticobulbar)),
      partly(0.3, shared([0.5, facialNerve], [0.5, onEitherSide('facial-nerve-beyond-canal')])),
      partly(0.45, onEitherSide('hypoglossal-nucleus', 'hypoglossal-fascicle', 'hypoglossal-nerve')),
      partly(0.4, onEitherSide('nucleus-ambiguus', 'vagus-nerve')),
      partly(0.25, onEitherSide('internal-capsule-posterior-limb', 'basis-pontis')),
    ),
    source: recalled('dejong', 'articulation'),
  },
  'speech-cerebellar': {
    carries: 'the rhythm of speech',
    path: series(
      partly(0.45, onEitherSide('cerebellar-hemisphere')),
      partly(0.35, same('cerebellar-vermis')),
      partly(0.35, onEitherSide('superior-cerebellar-peduncle', 'middle-cerebellar-peduncle')),
      partly(0.15, onEitherSide('inferior-cerebellar-peduncle', 'pontine-nuclei')),
    ),
    source: recalled('dejong', 'articulation'),
  },
  accessory: {
    carries: 'the sternocleidomastoid',
    path: same('accessory-nerve'),
    source: eleventh,
  },
  tongue: {
    carries: 'the muscle that puts the tongue out',
    path: series(same('hypoglossal-nucleus', 'hypoglossal-fascicle', 'hypoglossal-nerve'), partly(0.35, corticobulbar)),
    source: twelfth,
  },
  'tongue-denervation': {
    carries: 'the motor cells and fibres of the tongue',
    path: same('hypoglossal-nucleus', 'hypoglossal-fascicle', 'hypoglossal-nerve'),
    source: twelfth,
  },
  pseudobulbar: {
    carries: 'the control of the bulbar nuclei by both hemispheres',
    path: bothHemispheres,
    source: recalled('adams-victor', 'spastic bulbar palsy'),
  },
} as const satisfies Record<string, FunctionRow>;
