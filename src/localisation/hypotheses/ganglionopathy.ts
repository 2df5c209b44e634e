import type { BodySide } from '../../kernel/side.ts';
import { type Hypothesis, hypothesis } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { type BodyPart, partOf, processOf } from '../process.ts';
import { reasonsOf } from './process-reasons.ts';
import { facultiesOf, lopsided, processSite } from './process-signs.ts';

/** Percent of all focal and diffuse findings. Judged. */
const percentOfAll = 0.6;

/**
 * Ganglia lost by the part of the body that they serve. Whole cells die, so that a part is hit from its root to its tip,
 * one side more than the other, and face, trunk or arms as early as feet.
 * Source: Amato and Russell, sensory neuronopathy (recalled); fractions and shares judged.
 */
const patterns: readonly {
  readonly variant: string;
  readonly share: number;
  readonly lopsidedShare: number;
  readonly lost: Readonly<Record<BodyPart, number>>;
}[] = [
  {
    variant: 'everywhere',
    share: 0.22,
    lopsidedShare: 0.2,
    lost: { head: 0.45, neck: 0.5, arm: 0.85, trunk: 0.6, leg: 0.9 },
  },
  // Within weeks, as with tumours, hands and feet may lose all sense of where they are.
  {
    variant: 'limbs-lost',
    share: 0.18,
    lopsidedShare: 0.2,
    lost: { head: 0.2, neck: 0.3, arm: 0.97, trunk: 0.4, leg: 0.98 },
  },
  {
    variant: 'limbs',
    share: 0.2,
    lopsidedShare: 0.4,
    lost: { head: 0.05, neck: 0.1, arm: 0.75, trunk: 0.15, leg: 0.8 },
  },
  {
    variant: 'arms-first',
    share: 0.2,
    lopsidedShare: 0.6,
    lost: { head: 0.25, neck: 0.25, arm: 0.8, trunk: 0.25, leg: 0.3 },
  },
  {
    variant: 'face-and-trunk',
    share: 0.1,
    lopsidedShare: 0.4,
    lost: { head: 0.75, neck: 0.5, arm: 0.5, trunk: 0.6, leg: 0.35 },
  },
  {
    variant: 'slight',
    share: 0.1,
    lopsidedShare: 0.4,
    lost: { head: 0.15, neck: 0.15, arm: 0.45, trunk: 0.2, leg: 0.5 },
  },
];

/** The better side has this much of the loss. Judged. */
const betterSide = 0.5;
/** Small cells suffer less often than large ones. Judged. */
const smallCells = 0.65;

/** With tumours and Sjögren's disease it belongs to later life (Camdessanché 2009, recalled). Judged. */
const ages = { from: 35, outside: 0.4 } as const;

/** Loss of sensory cells without any loss of strength. */
export function ganglionopathyHypotheses(): Hypothesis[] {
  return patterns.flatMap(({ variant, share, lopsidedShare, lost }) =>
    lopsided(lopsidedShare).map(({ key, worse, share: sideShare }) => {
      const lossOf = (side: BodySide, segment: number | null): number =>
        lost[partOf(segment)] * (worse === null || side === worse ? 1 : betterSide);
      return hypothesis(
        processSite('sensory-ganglionopathy', 'Sensory ganglionopathy', 'ganglion'),
        `${variant}${key}`,
        percentOfAll * share * sideShare,
        intact,
        {
          process: processOf({
            largeFibre: ({ side, segment }) => lossOf(side, segment),
            smallFibre: ({ side, segment }) => smallCells * lossOf(side, segment),
            spindle: ({ side, segment }) => 0.85 * lossOf(side, segment),
            reflex: ({ side, segment }) => 0.5 * lossOf(side, segment),
            because: 'sensory cell bodies are lost whatever the length of their axons',
            reasons: reasonsOf.ganglia,
          }),
          faculties: facultiesOf(
            [
              ['trigeminal-sensation', 0.7 * lost.head, 0.7 * betterSide * lost.head],
              ['pupil-parasympathetic', 0.1],
              ['blood-pressure', 0.15],
            ],
            worse,
          ),
          ages,
        },
      );
    }),
  );
}
