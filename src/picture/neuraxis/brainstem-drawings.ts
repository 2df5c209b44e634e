import type { StructureKey } from '../../anatomy/brain/structures.ts';
import { type BrainDrawing, structure } from './deep-drawings.ts';
import { ellipse, line, type Outline, polygon } from './shape.ts';

const part = (
  name: string,
  label: string,
  holds: readonly StructureKey[],
  outline: Outline,
  paired = true,
): BrainDrawing => ({ name, label, paired, outlines: [outline], holds });

/** Cross-sections of midbrain, pons and medulla, each with its front upwards, and the cerebellum behind the pons. */
function sections(): readonly BrainDrawing[] {
  return [
    part(
      'midbrain-base',
      'base of the midbrain (cerebral peduncle)',
      ['cerebral-peduncle', 'corticobulbar-fibres-in-midbrain'],
      polygon([6, -146], [18, -154], [34, -146], [36, -132], [24, -136], [10, -138]),
    ),
    part(
      'substantia-nigra',
      'substantia nigra',
      ['substantia-nigra'],
      polygon([6, -135], [24, -134], [36, -128], [30, -125], [18, -129], [6, -130]),
    ),
    part(
      'midbrain-tegmentum-medial',
      'medial tegmentum of the midbrain',
      [
        'oculomotor-nucleus',
        'oculomotor-fascicle',
        'pupil-nucleus',
        'trochlear-nucleus',
        'red-nucleus',
        'vertical-gaze-centre',
      ],
      polygon([2, -128], [18, -126], [18, -106], [2, -106]),
    ),
    part(
      'midbrain-tegmentum-lateral',
      'lateral tegmentum of the midbrain',
      ['medial-lemniscus-in-midbrain', 'spinothalamic-tract-in-midbrain', 'midbrain-reticular-formation'],
      polygon([20, -126], [32, -122], [33, -104], [20, -104]),
    ),
    part(
      'midbrain-dorsal',
      'dorsal midbrain',
      ['pretectum'],
      polygon([-22, -103], [0, -101], [22, -103], [20, -92], [0, -95], [-20, -92]),
      false,
    ),
    part(
      'pons-base',
      'base of the pons',
      ['basis-pontis', 'corticobulbar-fibres-in-pons', 'pontine-nuclei'],
      polygon([2, -74], [22, -74], [40, -58], [38, -44], [2, -42]),
    ),
    part(
      'pons-tegmentum-medial',
      'medial tegmentum of the pons',
      [
        'abducens-nucleus',
        'abducens-fascicle',
        'horizontal-gaze-centre',
        'medial-lemniscus-in-pons',
        'pontine-reticular-formation',
      ],
      polygon([7, -41], [19, -41], [19, -22], [7, -22]),
    ),
    structure('medial-longitudinal-fasciculus', ellipse(3.5, -26, 2.5, 5)),
    part(
      'pons-tegmentum-lateral',
      'lateral tegmentum of the pons',
      [
        'facial-nucleus',
        'facial-fascicle',
        'cochlear-nucleus',
        'vestibular-nuclei',
        'trigeminal-motor-nucleus',
        'trigeminal-main-sensory-nucleus',
        'spinal-trigeminal-tract-in-pons',
        'trigeminothalamic-fibres',
        'spinothalamic-tract-in-pons',
        'superior-cerebellar-peduncle',
        'sympathetic-fibres-in-pons',
      ],
      polygon([21, -41], [36, -42], [34, -24], [21, -22]),
    ),
    structure('middle-cerebellar-peduncle', polygon([42, -50], [50, -40], [46, -18], [37, -20], [38, -38])),
    structure('cerebellar-vermis', polygon([-9, -12], [9, -12], [12, 20], [0, 28], [-12, 20])),
    structure('cerebellar-hemisphere', polygon([14, -12], [44, -16], [64, 2], [54, 26], [24, 30], [15, 18])),
    structure('flocculonodular-lobe', polygon([-20, -19], [0, -16], [20, -19], [18, -14], [0, -12], [-18, -14])),
    part(
      'medulla-medial',
      'medial medulla',
      [
        'pyramid',
        'crossed-corticospinal-fibres',
        'medial-lemniscus-in-medulla',
        'hypoglossal-nucleus',
        'hypoglossal-fascicle',
      ],
      polygon([2, 52], [14, 50], [16, 66], [12, 92], [2, 92]),
    ),
    part(
      'medulla-lateral',
      'lateral medulla',
      [
        'nucleus-ambiguus',
        'solitary-nucleus',
        'spinal-trigeminal-tract-in-medulla',
        'spinothalamic-tract-in-medulla',
        'inferior-cerebellar-peduncle',
        'lower-vestibular-nuclei',
        'sympathetic-fibres-in-medulla',
      ],
      polygon([18, 52], [32, 60], [36, 78], [28, 92], [15, 92]),
    ),
    part(
      'medulla-dorsal',
      'dorsal column nuclei',
      ['dorsal-column-nuclei'],
      polygon([3, 95], [24, 95], [20, 102], [5, 102]),
    ),
  ];
}

/** Cranial nerves at the height where they leave the brainstem, each outwards from its section. */
function cranialNerves(): readonly BrainDrawing[] {
  return [
    part(
      'oculomotor-nerve',
      'oculomotor nerve (III)',
      ['oculomotor-nerve', 'pupil-fibres-of-oculomotor-nerve'],
      line([6, -152], [30, -164], [66, -160]),
    ),
    structure('ciliary-ganglion', ellipse(72, -160, 4, 4)),
    part('trochlear-nerve', 'trochlear nerve (IV)', ['trochlear-nerve'], line([24, -96], [52, -104], [72, -136])),
    part(
      'trigeminal-root',
      'trigeminal root and ganglion (V)',
      ['trigeminal-root', 'trigeminal-motor-root'],
      line([42, -62], [56, -70], [64, -74]),
    ),
    part('abducens-nerve', 'abducens nerve (VI)', ['abducens-nerve'], line([10, -78], [30, -92], [70, -114])),
    structure('facial-nerve-before-canal', line([48, -30], [58, -32], [66, -33])),
    structure('facial-nerve-in-canal', line([68, -33], [76, -34], [80, -28])),
    structure('facial-nerve-beyond-canal', line([81, -26], [86, -18], [98, -14])),
    structure('cochlear-nerve', line([52, -16], [64, -20], [76, -12])),
    structure('vestibular-nerve', line([56, -8], [66, -10], [78, -2])),
    structure('semicircular-canals', ellipse(84, 2, 5, 5)),
    part(
      'glossopharyngeal-nerve',
      'glossopharyngeal nerve (IX)',
      ['glossopharyngeal-nerve'],
      line([36, 62], [56, 54], [84, 54]),
    ),
    part('vagus-nerve', 'vagus nerve (X)', ['vagus-nerve'], line([38, 72], [60, 68], [84, 74])),
    structure('recurrent-laryngeal-nerve', line([84, 76], [92, 90], [80, 96])),
    part(
      'accessory-nerve',
      'accessory nerve (XI) near the skull base',
      ['accessory-nerve'],
      line([36, 84], [56, 84], [72, 88]),
    ),
    part('hypoglossal-nerve', 'hypoglossal nerve (XII)', ['hypoglossal-nerve'], line([15, 48], [34, 40], [78, 40])),
    part(
      'cervical-sympathetic-chain',
      'sympathetic chain in the neck',
      ['cervical-sympathetic-chain'],
      line([50, 118], [52, 106], [52, 96]),
    ),
    structure('carotid-sympathetic-plexus', line([60, 96], [104, 60], [106, -60], [84, -150])),
  ];
}

/** Brainstem, cerebellum and cranial nerves. */
export function brainstemDrawings(): readonly BrainDrawing[] {
  return [...sections(), ...cranialNerves()];
}
