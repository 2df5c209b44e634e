import type { Faculty } from '../../anatomy/probe.ts';
import type { SiteKind } from '../../anatomy/site-kind.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import type { PaceFactors, Site } from '../hypothesis.ts';
import { type FacultyChances, facultyKey } from '../process.ts';

/** The site of a process: everywhere, on both sides, at no level. */
export function processSite(key: string, label: string, kind: SiteKind): Site {
  return { key, label, side: 'both', level: null, kind };
}

/** Several single nerves: found as such, or pieced together from two sites and more. */
export const severalNerves: Site = {
  key: 'multiple-mononeuropathy',
  label: 'Several single nerves',
  side: null,
  level: null,
  kind: 'multiple-nerves',
};

/**
 * A weak medial rectus with jerks of the other eye looks like an internuclear ophthalmoplegia. Chance judged, and less where
 * single eye muscles fail.
 */
export const weakMedialRectus = 0.06;

/** Faculties that have a sign on each side. */
const pairedFaculties: ReadonlySet<Faculty> = new Set<Faculty>([
  'lower-face',
  'upper-face',
  'eyelid-elevation',
  'eye-movement-fatigue',
  'abducens',
  'oculomotor',
  'trochlear',
  'lid-retraction',
  'internuclear',
  'pupil-parasympathetic',
  'trigeminal-sensation',
  'palate',
  'tongue-denervation',
  'accessory',
]);

/** A sign of a process with its chance; in a lopsided process the chance on the better side may be another. */
export type ProcessSign = readonly [Faculty, number, number?];

/**
 * What a process that weakens the palate weakens with it, as a share of the chance of the palate: nerves, junctions and
 * muscles of the throat, tongue and jaw seldom fail one without the other. Judged; a form that says otherwise is held to that.
 */
const withThePalate: readonly (readonly [Faculty, number])[] = [
  ['gag', 0.7],
  ['speech-articulation', 0.8],
  ['voice', 0.6],
  ['tongue', 0.45],
  ['jaw-power', 0.3],
];

function withCompanions(list: readonly ProcessSign[]): readonly ProcessSign[] {
  const palate = list.find(([faculty]) => faculty === 'palate');
  if (palate === undefined) return list;
  const named = new Set(list.map(([faculty]) => faculty));
  const companions = withThePalate.filter(([faculty]) => !named.has(faculty));
  return [...list, ...companions.map(([faculty, share]): ProcessSign => [faculty, share * palate[1]])];
}

/**
 * Chances of signs that a process shows on both sides.
 * @param worse the worse side of a lopsided process; null when both are alike
 */
export function facultiesOf(list: readonly ProcessSign[], worse: BodySide | null = null): FacultyChances {
  return new Map(
    withCompanions(list).flatMap(([faculty, chance, onBetterSide]) =>
      (pairedFaculties.has(faculty) ? bodySides : (['midline'] as const)).map(
        (side) =>
          [
            facultyKey(faculty, side),
            worse === null || side === 'midline' || side === worse ? chance : (onBetterSide ?? chance),
          ] as const,
      ),
    ),
  );
}

/** Which side of a process is worse, with the share of cases. */
export interface Lopsidedness {
  readonly key: string;
  readonly worse: BodySide | null;
  readonly share: number;
}

/** Even, or worse on one side in so large a share, half of it on either side. */
export function lopsided(share: number): readonly Lopsidedness[] {
  const even = share < 1 ? [{ key: '', worse: null, share: 1 - share }] : [];
  if (share === 0) return even;
  return [...even, ...bodySides.map((side) => ({ key: `-${side}`, worse: side, share: share / 2 }))];
}

/** A form that comes on within days to a few weeks, among forms of its kind. Judged. */
export const comesOnFast: PaceFactors = { hyperacute: 1.3, acute: 1.3, subacute: 0.35, chronic: 0.02 };
/** A form that comes on over months to years. Judged. */
export const comesOnSlowly: PaceFactors = { hyperacute: 0.05, acute: 0.1, subacute: 0.7, chronic: 1.3 };
