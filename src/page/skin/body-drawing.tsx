import type { ComponentChildren } from 'preact';
import type { Catalogue } from '../../client/generated/api-types.ts';
import type { Side } from '../draft/draft.ts';
import type { BodyPatch, BodyPicture, BodyView } from './body-pictures.ts';
import { fillOf, PatternFills } from './pattern-fills.tsx';
import { patternOf, type SkinFinding } from './skin-findings.ts';
import { areaOf, patchesOf } from './tap-meaning.ts';

export const sidesOfView = ({ drawnSide }: BodyView): readonly Side[] =>
  drawnSide === 'left' ? ['right', 'left'] : ['left', 'right'];

interface BodyDrawingProps {
  readonly view: BodyView;
  readonly picture: BodyPicture;
  readonly catalogue: Catalogue;
  /** What is filled in, under what can be tapped. */
  readonly findings: readonly SkinFinding[];
  /** Begins the ids of this drawing. */
  readonly name: string;
  /** How much wider the fillings are drawn, on a body that is shown small. */
  readonly coarseness?: number;
  /** Controls over the drawing, for one half. */
  readonly over?: (side: Side) => ComponentChildren;
  /** Letters over everything, which must not be mirrored. */
  readonly letters?: ComponentChildren;
}

/** One view of the body with what was found on it. The service draws one half; the other is its mirror. */
export function BodyDrawing({
  view,
  picture,
  catalogue,
  findings,
  name,
  coarseness = 1,
  over,
  letters,
}: BodyDrawingProps) {
  const half = (side: Side): string | undefined =>
    side === view.drawnSide ? undefined : `translate(${view.width} 0) scale(-1 1)`;
  const [viewersLeft, viewersRight] = sidesOfView(view);
  return (
    <svg
      class="body"
      viewBox={`-4 -4 ${view.width + 8} ${view.height + 8}`}
      role={over ? 'group' : 'presentation'}
      aria-label={over && view.label}
    >
      <PatternFills name={name} coarseness={coarseness} />
      {/* The sides in letters, as on a film. */}
      <text class="side-letter" font-size={16 * coarseness} x="2" y="2" dominant-baseline="hanging">
        {viewersLeft === 'right' ? 'R' : 'L'}
      </text>
      <text
        class="side-letter"
        font-size={16 * coarseness}
        x={view.width - 2}
        y="2"
        text-anchor="end"
        dominant-baseline="hanging"
      >
        {viewersRight === 'right' ? 'R' : 'L'}
      </text>
      {sidesOfView(view).map((side) => (
        <g key={side} transform={half(side)}>
          <path class="outline" d={view.outline} />
          <Findings
            view={view}
            picture={picture}
            catalogue={catalogue}
            name={name}
            findings={findings.filter((one) => one.side === side)}
          />
          <path class="marks" d={view.marks} />
          {over?.(side)}
        </g>
      ))}
      {letters}
    </svg>
  );
}

function Findings({
  view,
  picture,
  catalogue,
  findings,
  name,
}: Omit<BodyDrawingProps, 'over' | 'letters' | 'coarseness'>) {
  const drawn = findings
    .flatMap((finding) =>
      patchesOf(finding.place, view, picture, catalogue).map((patch) => ({
        patch,
        pattern: patternOf(finding.item, finding.value),
        isWide: finding.place.kind === 'levelBelow',
      })),
    )
    .sort((one, other) => Number(other.isWide) - Number(one.isWide) || areaOf(other.patch) - areaOf(one.patch));
  return (
    <g class="findings">
      {drawn.map(({ patch, pattern }) => (
        <Shape
          key={`${patch.kind}${patch.key}${patch.at}`}
          patch={patch}
          class={`finding ${pattern}`}
          fill={fillOf(name, pattern)}
        />
      ))}
    </g>
  );
}

interface ShapeProps {
  readonly patch: BodyPatch;
  readonly class: string;
  readonly fill?: string;
}

/** Radius of a spot in units of the drawing. */
export const spotRadius = 8;

export function Shape({ patch, class: name, fill }: ShapeProps) {
  const { path, at } = patch;
  return path === undefined ? (
    <circle class={name} cx={at[0]} cy={at[1]} r={spotRadius} fill={fill} />
  ) : (
    <path class={name} d={path} fill={fill} fill-rule="evenodd" />
  );
}
