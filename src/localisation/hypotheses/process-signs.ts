import type { Faculty } from '../../anatomy/probe.ts';
import { bodySides } from '../../kernel/side.ts';
import type { Site } from '../hypothesis.ts';
import type { SiteKind } from '../localisation.ts';
import { type FacultyChances, facultyKey } from '../process.ts';

/** The site of a process: everywhere, on both sides, at no level. */
export function processSite(key: string, label: string, kind: SiteKind): Site {
  return { key, label, side: 'both', level: null, kind };
}

/** Faculties that have a sign on each side. */
const pairedFaculties: ReadonlySet<Faculty> = new Set<Faculty>([
  'lower-face',
  'upper-face',
  'eyelid-elevation',
  'abducens',
  'oculomotor',
  'palate',
  'tongue-denervation',
  'accessory',
]);

/** A sign of a process with its chance. */
export type ProcessSign = readonly [Faculty, number];

/** Chances of signs that a process shows on both sides alike. */
export function facultiesOf(list: readonly ProcessSign[]): FacultyChances {
  return new Map(
    list.flatMap(([faculty, chance]) =>
      (pairedFaculties.has(faculty) ? bodySides : (['midline'] as const)).map(
        (side) => [facultyKey(faculty, side), chance] as const,
      ),
    ),
  );
}
