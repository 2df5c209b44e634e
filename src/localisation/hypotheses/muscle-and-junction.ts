import type { MuscleGroup } from '../../anatomy/movement.ts';
import { segmentIndex } from '../../anatomy/segments.ts';
import type { SiteKind } from '../../anatomy/site-kind.ts';
import type { BodySide } from '../../kernel/side.ts';
import { type AgeRange, type Hypothesis, hypothesis, type Lasting, type PaceFactors } from '../hypothesis.ts';
import { intact } from '../lesion.ts';
import { type FibreSite, type Process, processOf, type Reasons } from '../process.ts';
import { junctionDiseases } from './junction-patterns.ts';
import { myopathies } from './myopathy-patterns.ts';
import { facultiesOf, type Lopsidedness, lopsided, type ProcessSign, processSite } from './process-signs.ts';

/** Strength lost by each group of muscles, 0 to 1; groups that are not named keep theirs. */
export type GroupLoss = Readonly<Partial<Record<MuscleGroup, number>>>;

/** A disease of muscle or of the junction in one distribution. */
export interface MuscleDisease {
  readonly key: string;
  readonly label: string;
  readonly kind: Extract<SiteKind, 'muscle' | 'junction'>;
  readonly variant: string;
  /** Percent of all focal and diffuse findings. Judged. */
  readonly percent: number;
  readonly losses: GroupLoss;
  /** Share that is worse on one side, and how much of the loss the better side has then. */
  readonly lopsidedShare?: number;
  readonly betterSide?: number;
  /** Loss of every stretch reflex, and the share of the weakness of its own muscle that a reflex loses beyond that. */
  readonly reflex: number;
  readonly ownReflex: number;
  /** How far stretch reflexes are let go of, where the illness behind it makes them brisk. */
  readonly release?: number;
  /** Share of the weakness whose muscles twitch, as when a junction is overdriven. */
  readonly twitching?: number;
  readonly because: string;
  readonly reasons?: Reasons;
  readonly paces?: PaceFactors;
  readonly ages?: AgeRange;
  readonly lasting?: Lasting;
  readonly signs: readonly ProcessSign[];
}

/** Groups of the muscles that answer a tendon tap, by the segment that textbooks name for the reflex. */
const reflexGroups: readonly { readonly upTo: number; readonly group: MuscleGroup }[] = [
  { upTo: segmentIndex('C4'), group: 'scapular' },
  { upTo: segmentIndex('C7'), group: 'upper-arm' },
  { upTo: segmentIndex('T1'), group: 'finger-flexors' },
  { upTo: segmentIndex('T12'), group: 'trunk' },
  { upTo: segmentIndex('L4'), group: 'knee-extensors' },
  { upTo: segmentIndex('L5'), group: 'knee-flexors' },
  { upTo: segmentIndex('S3'), group: 'leg-posterior' },
];

function reflexGroup({ segment }: FibreSite): MuscleGroup | undefined {
  return segment === null ? undefined : reflexGroups.find(({ upTo }) => segment <= upTo)?.group;
}

function groupProcess(disease: MuscleDisease, worse: BodySide | null): Process {
  const lossOf = (side: BodySide, group: MuscleGroup | undefined): number => {
    const loss = group === undefined ? 0 : (disease.losses[group] ?? 0);
    return worse === null || side === worse ? loss : loss * (disease.betterSide ?? 1);
  };
  return processOf({
    motor: ({ side, group }) => lossOf(side, group),
    reflex: (fibre) =>
      fibre.segment === null ? 0 : Math.max(disease.reflex, disease.ownReflex * lossOf(fibre.side, reflexGroup(fibre))),
    release: ({ segment }) => (segment === null ? 0 : (disease.release ?? 0)),
    sparesTracts: true,
    wasting: disease.kind === 'muscle' ? 'muscle' : 'block',
    ...(disease.twitching !== undefined && { twitching: disease.twitching }),
    because: disease.because,
    ...(disease.reasons && { reasons: disease.reasons }),
  });
}

function diseaseHypothesis(disease: MuscleDisease, side: Lopsidedness): Hypothesis {
  return hypothesis(
    processSite(disease.key, disease.label, disease.kind),
    `${disease.variant}${side.key}`,
    disease.percent * side.share,
    intact,
    {
      process: groupProcess(disease, side.worse),
      faculties: facultiesOf(disease.signs, side.worse),
      ...(disease.paces && { paces: disease.paces }),
      ...(disease.ages && { ages: disease.ages }),
      ...(disease.lasting && { lasting: disease.lasting }),
    },
  );
}

/** Every disease of the junction and of muscle, by the groups that it weakens. */
export function muscleHypotheses(): Hypothesis[] {
  return [...junctionDiseases, ...myopathies].flatMap((disease) =>
    lopsided(disease.lopsidedShare ?? 0).map((side) => diseaseHypothesis(disease, side)),
  );
}
