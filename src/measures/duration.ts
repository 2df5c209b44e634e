/** ms of each precision that a duration can be asked in. Months and years have no fixed length. */
const lengths: Readonly<Record<string, number>> = {
  week: 604_800_000,
  day: 86_400_000,
  hour: 3_600_000,
  minute: 60_000,
  second: 1000,
  millisecond: 1,
};

/** Units that `duration` takes, in the singular. */
export const durationUnits: readonly string[] = Object.keys(lengths);

/**
 * Whole units from one time to another; negative when the other is earlier, nothing where either has no time of day.
 * Source: FHIRPath, continuous build, `duration(value, precision)`.
 */
export function durationBetween(from: readonly unknown[], to: unknown, precision: string): number[] {
  const length = lengths[precision.replace(/s$/, '')];
  const [start, end] = [momentOf(from[0]), momentOf([to].flat()[0])];
  if (from.length !== 1 || length === undefined || start === undefined || end === undefined) return [];
  return [Math.trunc((end - start) / length)];
}

/** ms since 1970 of a node or a literal with a time of day and a zone. */
function momentOf(value: unknown): number | undefined {
  const { data = value, asStr } = (value ?? {}) as { data?: unknown; asStr?: string };
  const text = asStr ?? (data as { asStr?: string } | null)?.asStr ?? data;
  if (typeof text !== 'string' || !/T\d{2}:\d{2}.*(Z|[+-]\d{2}:\d{2})$/.test(text)) return undefined;
  const moment = Date.parse(text);
  return Number.isNaN(moment) ? undefined : moment;
}
