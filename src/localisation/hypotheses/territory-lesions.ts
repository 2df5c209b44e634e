import type { StructureKey } from '../../anatomy/brain/structures.ts';
import { type BrainSystem, systemOf } from '../../anatomy/brain/systems.ts';
import type { Territory } from '../../anatomy/brain/territory.ts';
import type { PlaceKey } from '../../anatomy/places.ts';
import type { SiteKind } from '../../anatomy/site-kind.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { type AgeRange, type Hypothesis, hypothesis, type PaceFactors, type Site } from '../hypothesis.ts';
import { LesionBuilder } from '../lesion.ts';
import type { FacultyChances } from '../process.ts';

/** Lesions of one territory as hypotheses. */
export interface TerritoryLesion {
  /** Key of the site that the lesion is named by; several territories may be one site in different extents. */
  readonly site: string;
  readonly territory: Territory;
  readonly kind: SiteKind;
  /** Percent of all focal and diffuse findings, both sides together. Judged. */
  readonly percent: number;
  /** Whether the site has a side; a lesion of both sides is `both`, one of the midline has none. */
  readonly side?: 'both' | 'midline';
  readonly faculties?: FacultyChances;
  /** Signs on the side of the lesion, where they are of that side alone. */
  readonly facultiesOnSide?: (side: BodySide) => FacultyChances;
  /** Whether it is a growth, or a loss by steps, as often as a stroke. */
  readonly mayGrow?: boolean;
  /** Whether what grows there, beside lesions of other kinds, raises the pressure in the skull before it is found. */
  readonly mayPress?: boolean;
  /** How its pace differs from that of other lesions of its kind. Judged. */
  readonly paces?: PaceFactors;
  /** At what age it is met, when that is not any age. Judged. */
  readonly ages?: AgeRange;
  /** For territories whose parts are territories of their own: what takes only a part is one of those. */
  readonly isAllOrMost?: boolean;
  /** Systems that a lesion which is named by the territory never spares. */
  readonly essential?: readonly BrainSystem[];
  /** Systems that it seldom spares. */
  readonly hardlySpared?: readonly BrainSystem[];
}

/**
 * How much of a territory is taken, and how often it is so. A lesion that takes half of each structure stands for those
 * that spare some and take others, which nobody could list.
 */
const fillings: readonly Filling[] = [
  { key: 'whole', part: 1, share: 0.35 },
  { key: 'most', part: 0.75, share: 0.2 },
  { key: 'part', part: 0.45, share: 0.2 },
];

interface Filling {
  readonly key: string;
  readonly part: number;
  readonly share: number;
  /** A system whose structures the lesion leaves alone. */
  readonly spares?: BrainSystem;
  /** Whether it takes so much room that the pressure in the skull rises. */
  readonly presses?: boolean;
  /** How its pace differs from that of the other fillings. */
  readonly paces?: PaceFactors;
}

/** Growths that raise the pressure in the skull before they are found: their share, and how far it rises. Judged. */
const pressing: Filling = { key: 'pressing', part: 0.85, share: 0.15, presses: true };
const pressureOfGrowth = 0.6;

/** How the pace of a growth differs from that of other lesions of its kind. Judged. */
const paceOfGrowth = { hyperacute: 0.4, acute: 0.7, subacute: 1.3, chronic: 2 } as const;

/** The same in a territory where most lesions are no growths. */
const pressingBeside: Filling = {
  ...pressing,
  share: 0.08,
  paces: { hyperacute: 0.2, acute: 0.4, subacute: 1.5, chronic: 2 },
};

/** Share of the lesions of a territory that spare one of its systems altogether, and the fewest systems that it must hold for that. */
const sparing = { share: 0.3, parts: [0.9, 0.5], fromSystems: 3 } as const;
/** How much rarer it is that a system is spared which such a lesion nearly always takes. Judged. */
const hardly = 0.25;

function fillingsOf({
  isAllOrMost,
  territory,
  mayGrow,
  mayPress,
  essential = [],
  hardlySpared = [],
}: TerritoryLesion): readonly Filling[] {
  const filled = isAllOrMost === true ? fillings.filter(({ part }) => part > 0.5) : fillings;
  const pressed = mayGrow === true ? [pressing] : mayPress === true ? [pressingBeside] : [];
  const even = [...filled, ...pressed];
  const systems = systemsOf(territory);
  if (systems.length < sparing.fromSystems) return even;
  const spared = systems.filter((system) => !essential.includes(system));
  return [
    ...even,
    ...spared.flatMap((system) =>
      sparing.parts.map(
        (part): Filling => ({
          key: `without-${system}-${part}`,
          part,
          share:
            (sparing.share / (spared.length * sparing.parts.length)) * (hardlySpared.includes(system) ? hardly : 1),
          spares: system,
        }),
      ),
    ),
  ];
}

function systemsOf({ holds, across = {} }: Territory): readonly BrainSystem[] {
  const keys = [...Object.keys(holds), ...Object.keys(across)] as StructureKey[];
  return [...new Set(keys.flatMap((key) => systemOf(key) ?? []))];
}

const entries = <Key extends string, Value>(record: Readonly<Partial<Record<Key, Value>>>) =>
  Object.entries(record) as [Key, Value][];

function lesionOf(territory: Territory, side: BodySide, { part, spares, presses }: Filling): LesionBuilder {
  const isTaken = (structure: StructureKey): boolean => spares === undefined || systemOf(structure) !== spares;
  const lesion = new LesionBuilder();
  if (presses === true) lesion.brain('left', 'intracranial-pressure', pressureOfGrowth);
  for (const [structure, depth] of entries<StructureKey, number>(territory.holds))
    if (isTaken(structure)) lesion.brain(side, structure, depth * part);
  for (const [structure, depth] of entries<StructureKey, number>(territory.across ?? {}))
    if (isTaken(structure)) lesion.brain(opposite(side), structure, depth * part);
  for (const [place, [motor, sensory]] of entries<PlaceKey, readonly [number, number]>(territory.nerves ?? {}))
    lesion.place(side, place, motor * part, sensory * part);
  return lesion;
}

function siteOf({ site, territory, kind, side }: TerritoryLesion, own: BodySide): Site {
  const named = side === undefined ? own : side === 'both' ? 'both' : null;
  return { key: site, label: territory.label, side: named, level: null, kind };
}

/** Every lesion of the territories, on each side and in each filling. */
export function territoryHypotheses(lesions: readonly TerritoryLesion[]): Hypothesis[] {
  return lesions.flatMap((lesion, row) =>
    bodySides.flatMap((side) =>
      fillingsOf(lesion).map((filling) =>
        hypothesis(
          siteOf(lesion, side),
          `${row}-${side}-${filling.key}`,
          (lesion.percent * filling.share) / 2,
          lesionOf(lesion.territory, side, filling).build(),
          {
            ...(lesion.faculties !== undefined && { faculties: lesion.faculties }),
            ...(lesion.facultiesOnSide !== undefined && { faculties: lesion.facultiesOnSide(side) }),
            ...(lesion.mayGrow === true && { paces: paceOfGrowth }),
            ...(lesion.paces !== undefined && { paces: lesion.paces }),
            ...(filling.paces !== undefined && { paces: filling.paces }),
            ...(lesion.ages !== undefined && { ages: lesion.ages }),
          },
        ),
      ),
    ),
  );
}
