import { segments } from '../../anatomy/segments.ts';
import { backgrounds } from './backgrounds.ts';
import { brainDrawings } from './brain-drawings.ts';
import { cordDrawings, cordSectionDrawings, ganglionName } from './cord-drawings.ts';
import { muscleDrawings } from './muscle-drawings.ts';
import { nerveDrawings } from './nerve-drawings.ts';
import { type Drawing, type PictureShape, type Point, pathOf, shapeOf, type ViewKey, viewKeys } from './shape.ts';
import { type SiteShapes, siteShapes } from './site-shapes.ts';

/** One drawing of the picture, with its own coordinates. */
export interface PictureView {
  readonly key: ViewKey;
  readonly label: string;
  /** How it is seen, in words. The person's right is on the reader's left in every view. */
  readonly seen: string;
  /** SVG viewBox; x 0 is the midline. */
  readonly viewBox: string;
  /** SVG path data of what lies around the shapes and is never marked. */
  readonly background: string;
}

/** A word or letter in a view. */
export interface PictureText {
  readonly view: ViewKey;
  readonly text: string;
  readonly at: Point;
}

export interface NeuraxisPicture {
  readonly views: readonly PictureView[];
  readonly shapes: readonly PictureShape[];
  readonly texts: readonly PictureText[];
  readonly sites: Readonly<Record<string, SiteShapes>>;
}

const views: Readonly<Record<ViewKey, Omit<PictureView, 'key' | 'background'>>> = {
  cortex: {
    label: 'Cerebral cortex',
    seen: 'from above, unrolled: medial surface at the midline, underside outermost',
    viewBox: '-112 -146 224 276',
  },
  deep: {
    label: 'Basal ganglia, thalamus and internal capsule',
    seen: 'axial section, front upwards',
    viewBox: '-92 -84 184 166',
  },
  visual: {
    label: 'Visual pathway',
    seen: 'from the eyes to the occipital lobe, front upwards',
    viewBox: '-92 -98 184 190',
  },
  brainstem: {
    label: 'Brainstem, cerebellum and cranial nerves',
    seen: 'sections of midbrain, pons and medulla, front upwards',
    viewBox: '-116 -184 232 314',
  },
  cord: { label: 'Spinal cord and roots', seen: 'from the front', viewBox: '-62 -22 124 356' },
  'cord-section': { label: 'Cross-section of the cord', seen: 'front upwards', viewBox: '-60 -48 120 96' },
  nerves: { label: 'Plexuses and nerves', seen: 'from the front, palms forward', viewBox: '-235 0 470 1030' },
  muscles: { label: 'Muscles', seen: 'from the front, extensors drawn outside flexors', viewBox: '-235 0 470 1030' },
};

const drawings: Readonly<Record<ViewKey, readonly Drawing[]>> = {
  ...brainDrawings,
  cord: cordDrawings(),
  'cord-section': cordSectionDrawings(),
  nerves: nerveDrawings(),
  muscles: muscleDrawings(),
};

/** Letters for the sides in the upper corners of every view. */
function sideLetters(view: ViewKey): readonly PictureText[] {
  const [x = 0, y = 0, width = 0] = views[view].viewBox.split(' ').map(Number);
  const inset = width / 18;
  return [
    { view, text: 'R', at: [Math.round(x + inset), Math.round(y + inset * 1.6)] },
    { view, text: 'L', at: [Math.round(x + width - inset), Math.round(y + inset * 1.6)] },
  ];
}

/** Segments that are named in the picture: where a region begins, and some between. */
const labelled: ReadonlySet<string> = new Set(['C1', 'C5', 'T1', 'T6', 'L1', 'S1', 'S5']);
const regionTops = segments.filter((segment) => labelled.has(segment));

function words(shapes: readonly PictureShape[]): readonly PictureText[] {
  const sections: readonly (readonly [string, Point])[] = [
    ['midbrain', [0, -165]],
    ['pons', [0, -82]],
    ['cerebellum', [0, 44]],
    ['medulla', [0, 116]],
  ];
  const levels = regionTops.flatMap((segment) => {
    const shape = shapes.find(({ name }) => name === ganglionName(segment));
    return shape === undefined
      ? []
      : [{ view: 'cord' as const, text: segment, at: [shape.at[0] + 9, shape.at[1]] as Point }];
  });
  return [...sections.map(([text, at]) => ({ view: 'brainstem' as const, text, at })), ...levels];
}

function* build(): Generator<void, NeuraxisPicture> {
  const shapes = viewKeys.flatMap((view) => drawings[view].map((drawing) => shapeOf(view, drawing)));
  return {
    views: viewKeys.map((key) => ({
      key,
      ...views[key],
      background: (backgrounds[key] ?? []).map(pathOf).join(''),
    })),
    shapes,
    texts: [...viewKeys.flatMap(sideLetters), ...words(shapes)],
    sites: yield* siteShapes(),
  };
}

let picture: NeuraxisPicture | undefined;

/** Draws the neuraxis a site at a time, so that a caller can go on with other things in between. */
export function* drawNeuraxis(): Generator<void> {
  picture ??= yield* build();
}

/**
 * The neuraxis as a schematic drawing, from the cortex to the muscles, and what every site that an answer can name takes
 * of it. Geometry is our own and shows order and side, not size. Units of a view are those of its viewBox.
 */
export function neuraxisPicture(): NeuraxisPicture {
  if (picture !== undefined) return picture;
  const steps = build();
  for (;;) {
    const { done, value } = steps.next();
    if (done) {
      picture = value;
      return value;
    }
  }
}
