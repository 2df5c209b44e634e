/** A curve as [position, value] pairs, positions rising. */
export type Profile = readonly (readonly [position: number, value: number])[];

/**
 * Value of a profile at a position: a cubic through the pairs that never overshoots them (Fritsch and Carlson, SIAM J
 * Numer Anal 1980;17:238-46, recalled), so that a silhouette has no corners and no bumps that its table does not have.
 * Beyond either end the value of that end holds.
 */
export function valueAt(profile: Profile, position: number): number {
  const next = profile.findIndex(([at]) => at > position);
  if (next === 0) return profile[0]?.[1] ?? 0;
  if (next < 0) return profile.at(-1)?.[1] ?? 0;
  const [from, start] = pair(profile, next - 1);
  const [to, end] = pair(profile, next);
  const span = to - from;
  const part = (position - from) / span;
  const rise = (end - start) / span;
  const before = limited(next > 1 ? steepness(profile, next - 1) : rise, rise);
  const after = limited(next < profile.length - 1 ? steepness(profile, next) : rise, rise);
  const bend = part * (1 - part) * span;
  return start + (end - start) * part + bend * ((before - rise) * (1 - part) + (rise - after) * part);
}

/** Value on straight lines between the pairs; the end values hold beyond the ends. */
export function straightValueAt(profile: Profile, position: number): number {
  const next = profile.findIndex(([at]) => at > position);
  if (next === 0) return profile[0]?.[1] ?? 0;
  if (next < 0) return profile.at(-1)?.[1] ?? 0;
  const [from, start] = pair(profile, next - 1);
  const [to, end] = pair(profile, next);
  return start + ((end - start) * (position - from)) / (to - from);
}

const pair = (profile: Profile, index: number): readonly [number, number] => profile[index] ?? [0, 0];

function slope(profile: Profile, index: number): number {
  const [from, start] = pair(profile, index);
  const [to, end] = pair(profile, index + 1);
  return (end - start) / (to - from);
}

/** Slope at a pair: none at a turning point, else the harmonic mean of both sides. */
function steepness(profile: Profile, index: number): number {
  const [one, other] = [slope(profile, index - 1), slope(profile, index)];
  return one * other <= 0 ? 0 : (2 * one * other) / (one + other);
}

/** At most three times the rise of the stretch, the bound within which the cubic stays monotone. */
function limited(steep: number, rise: number): number {
  return Math.sign(steep) * Math.min(Math.abs(steep), 3 * Math.abs(rise));
}

/**
 * The same cubic worked out beforehand at even distances, for a picture that asks many thousand times; between these it
 * is straight.
 */
export function curve(profile: Profile, spacing: number): (position: number) => number {
  const start = profile[0]?.[0] ?? 0;
  const count = Math.ceil(((profile.at(-1)?.[0] ?? 0) - start) / spacing) + 1;
  const samples = Float64Array.from({ length: count }, (_, index) => valueAt(profile, start + index * spacing));
  return (position) => {
    const place = Math.max(0, Math.min(count - 1, (position - start) / spacing));
    const index = Math.floor(place);
    const value = samples[index] ?? 0;
    return value + ((samples[index + 1] ?? value) - value) * (place - index);
  };
}
