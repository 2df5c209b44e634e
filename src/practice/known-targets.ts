import { everyTarget } from '../localisation/explanation/next-examination.ts';
import { columnName } from '../localisation/inference/columns.ts';
import type { ProbeTarget } from '../localisation/observation/probe-models.ts';

/**
 * Everything that can be examined, one object each: what is remembered of a target is remembered by the object, so that
 * requests must not bring new ones.
 */
export const knownTargets: ReadonlyMap<string, ProbeTarget> = new Map(
  [...everyTarget()].map((target) => [columnName(target), target]),
);

/** The one object for a target; undefined where nothing can be examined there. */
export function knownTarget(target: ProbeTarget): ProbeTarget | undefined {
  return knownTargets.get(columnName(target));
}
