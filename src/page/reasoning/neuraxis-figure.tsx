import { useMemo } from 'preact/hooks';
import type { LocalisationAnswer, Picture } from '../../client/generated/api-types.ts';
import { namesAPlace } from './answer-words.ts';
import {
  type Box,
  boxOf,
  calloutsOf,
  enlargedBox,
  type MarkedSite,
  type Neuraxis,
  type ViewKey,
  viewAlternative,
} from './marked-shapes.ts';
import { RankShape, RankSign } from './rank-sign.tsx';

interface NeuraxisFigureProps {
  readonly picture: Picture;
  readonly answer: LocalisationAnswer;
  readonly sites: readonly MarkedSite[];
}

/** Enlargements take at least this share of the height of their view. */
const leastEnlarged = 0.2;
/** Room for one drawing, and height of its letters, in px. */
const largest = { width: 300, height: 330 } as const;
const smallestText = 13;
/** From how many shapes on the lines of a site are drawn slim. */
const manyFrom = 12;
const bodyViews: ReadonlySet<ViewKey> = new Set(['nerves', 'muscles']);

/** The views of the nervous system in which something is marked, and in words what is. */
export function NeuraxisFigure({ picture, answer, sites }: NeuraxisFigureProps) {
  const { neuraxis } = picture;
  const shown = neuraxis.views.filter(({ key }) =>
    sites.some(({ shapes }) => shapes.some(({ shape }) => shape.view === key)),
  );
  const first = sites[0]?.shapes[0]?.shape.view;
  const ordered = [...shown.filter(({ key }) => key === first), ...shown.filter(({ key }) => key !== first)];
  return (
    <section class="neuraxis" aria-labelledby="neuraxis-title">
      <h3 id="neuraxis-title">On the neuraxis</h3>
      {sites.length === 0 ? (
        <p class="soft">{nothingMarked(answer)}</p>
      ) : (
        <>
          <ul>
            {sites.map(({ rank, name }) => (
              <li key={rank} class="neuraxis-key-row">
                <RankSign rank={rank} isMarked /> {name}
              </li>
            ))}
          </ul>
          <div class="views-of-neuraxis">
            {ordered.map((view) => (
              <ViewFigure key={view.key} view={view} picture={picture} sites={sites} />
            ))}
          </div>
        </>
      )}
    </section>
  );
}

function nothingMarked(answer: LocalisationAnswer): string {
  if (answer.conclusion === 'no-abnormality') return 'Nothing is marked: no lesion is concluded.';
  if (answer.conclusion === 'not-anatomical') return 'Nothing is marked: the findings follow no anatomy.';
  return namesAPlace(answer)
    ? 'Nothing is marked.'
    : 'Nothing is marked: the findings are insufficient to name a place.';
}

interface ViewFigureProps {
  readonly view: Neuraxis['views'][number];
  readonly picture: Picture;
  readonly sites: readonly MarkedSite[];
}

function ViewFigure({ view, picture, sites }: ViewFigureProps) {
  const whole = boxOf(view.viewBox);
  const marks = sites.flatMap(({ shapes }) => shapes.filter(({ shape }) => shape.view === view.key));
  const enlarged = bodyViews.has(view.key) || view.key === 'cord' ? enlargedBox(marks, whole, leastEnlarged) : null;
  return (
    <figure class={`view-of-neuraxis of-${view.key}`}>
      <figcaption>
        {view.label} <span class="soft">({view.seen})</span>
      </figcaption>
      <div class="drawings">
        <Drawing view={view} picture={picture} sites={sites} box={whole} frame={enlarged} />
        {enlarged !== null && <Drawing view={view} picture={picture} sites={sites} box={enlarged} isDetail />}
      </div>
    </figure>
  );
}

interface DrawingProps extends ViewFigureProps {
  readonly box: Box;
  /** What is enlarged beside it. */
  readonly frame?: Box | null;
  readonly isDetail?: boolean;
}

function Drawing({ view, picture, sites, box, frame, isDetail }: DrawingProps) {
  const { neuraxis } = picture;
  const scale = Math.min(largest.height / box.height, largest.width / box.width);
  const size = smallestText / scale;
  const id = `hatch-${view.key}-${isDetail ? 'detail' : 'whole'}`;
  const base = useMemo(() => <Base view={view} picture={picture} />, [view, picture]);
  const texts = neuraxis.texts.filter((text) => text.view === view.key);
  return (
    <svg
      class={isDetail ? 'detail' : 'whole'}
      viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
      width={Math.round(box.width * scale)}
      height={Math.round(box.height * scale)}
      role="img"
      aria-label={viewAlternative(view.label, view.key, sites)}
      aria-hidden={isDetail}
    >
      <Patterns id={id} size={size} />
      {base}
      {[...sites].reverse().map(({ rank, shapes }) => (
        <g key={rank} class={`mark rank-${rank} ${shapes.length >= manyFrom ? 'many' : ''}`}>
          {shapes
            .filter(({ shape }) => shape.view === view.key)
            .map(({ shape, side }) => (
              <path
                key={`${shape.name} ${side}`}
                class={shape.kind}
                d={shape.d}
                transform={side === 'right' ? 'scale(-1 1)' : undefined}
                {...(shape.kind === 'area' && rank > 1 && { fill: `url(#${id}-${Math.min(rank, 3)})` })}
              />
            ))}
        </g>
      ))}
      {frame && <rect class="frame-of-detail" x={frame.x} y={frame.y} width={frame.width} height={frame.height} />}
      {texts.map(({ text, at }) => (
        <text key={`${text} ${at}`} class="picture-word" x={at[0]} y={at[1]} font-size={size} text-anchor="middle">
          {text}
        </text>
      ))}
      {isDetail && <DetailSides box={box} size={size} />}
      {calloutsOf(sites, view.key, box, size * 2).map(({ rank, from, to }) => (
        <g key={rank} class="callout">
          <path class="leader" d={`M${from[0]} ${from[1]}L${to[0]} ${to[1]}`} />
          <g transform={`translate(${from[0]} ${from[1]})`}>
            <RankShape rank={rank} size={size * 0.85} />
            <text
              class={`rank-number ${rank === 1 ? 'on-first' : ''}`}
              y={size * 0.38}
              font-size={size * 1.1}
              text-anchor="middle"
            >
              {rank}
            </text>
          </g>
        </g>
      ))}
    </svg>
  );
}

/** Which side of the person an enlargement shows. */
function DetailSides({ box, size }: { readonly box: Box; readonly size: number }) {
  const y = box.y + size * 1.4;
  const middle = box.x + box.width / 2;
  if (box.x < -size && box.x + box.width > size) {
    return (
      <>
        <text class="picture-word" x={box.x + size} y={y} font-size={size} text-anchor="middle">
          R
        </text>
        <text class="picture-word" x={box.x + box.width - size} y={y} font-size={size} text-anchor="middle">
          L
        </text>
      </>
    );
  }
  return (
    <text class="picture-word" x={middle} y={y} font-size={size} text-anchor="middle">
      {middle > 0 ? 'Left' : 'Right'}, enlarged
    </text>
  );
}

/** Everything of a view that is not marked. */
function Base({ view, picture }: { readonly view: Neuraxis['views'][number]; readonly picture: Picture }) {
  const body = bodyViews.has(view.key) ? picture.body.views.find(({ key }) => key === 'front') : undefined;
  const shapes = picture.neuraxis.shapes.filter((shape) => shape.view === view.key);
  return (
    <g class="base">
      {view.background !== '' && <path class="background" d={view.background} />}
      {body !== undefined &&
        [1, -1].map((way) => (
          <path
            key={way}
            class="background"
            d={body.outline}
            transform={`scale(${way} 1) translate(${-body.width / 2} 0)`}
          />
        ))}
      {shapes.map(({ name, d, kind, paired }) => (
        <g key={name} class={kind}>
          <path d={d} />
          {paired && <path d={d} transform="scale(-1 1)" />}
        </g>
      ))}
    </g>
  );
}

/** Hatching for the second and third site, so that they differ without colour. */
function Patterns({ id, size }: { readonly id: string; readonly size: number }) {
  const step = size * 0.5;
  return (
    <defs>
      <pattern id={`${id}-2`} width={step} height={step} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect class="hatch-ground" width={step} height={step} />
        <path class="hatch-line" d={`M0 0V${step}`} />
      </pattern>
      <pattern id={`${id}-3`} width={step} height={step} patternUnits="userSpaceOnUse">
        <rect class="hatch-ground" width={step} height={step} />
        <circle class="hatch-dot" cx={step / 2} cy={step / 2} r={step / 5} />
      </pattern>
    </defs>
  );
}
