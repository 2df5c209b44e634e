import { movementTable } from '../../anatomy/movements.ts';
import { skinPlace } from '../../anatomy/skin-places.ts';
import type { Finding } from '../../exam/finding.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { motorDeficit, motorItem } from '../forward/motor.ts';
import { sensoryDeficit, sensoryItem } from '../forward/sensory.ts';
import type { Hypothesis } from '../hypothesis.ts';

const pairs = ['arms', 'legs', 'trunk', 'perineum'] as const;
type Pair = (typeof pairs)[number];

/** Parts of the body that an examiner turns to as a whole, and the two halves of the trunk and of the perineum. */
type Part = 'head' | `${BodySide} ${Pair}`;

/** Parts that are gone through only when something leads there: that nothing was found says less there. */
const seldomExamined: ReadonlySet<Pair> = new Set(['trunk', 'perineum']);

const movementsOf: Readonly<Record<Pair, readonly string[]>> = {
  arms: ['shoulder-abduction', 'elbow-extension', 'finger-extension', 'finger-abduction'],
  legs: ['hip-flexion', 'knee-extension', 'ankle-dorsiflexion', 'ankle-plantarflexion'],
  trunk: [],
  perineum: [],
};
const skinOf: Readonly<Record<Pair, readonly string[]>> = {
  arms: ['thumb', 'little-finger'],
  legs: ['great-toe', 'front-of-thigh'],
  trunk: ['nipple', 'umbilicus', 'lower-abdomen'],
  perineum: ['saddle', 'perianal-skin'],
};

/** What a sample of skin is asked about: pain fibres and position fibres run apart, and the loss of either is complained of. */
const modalities = ['pinprick', 'joint-position'] as const;

const samples = pairs.flatMap((pair) =>
  bodySides.map((side) => ({
    part: `${side} ${pair}` as const,
    muscles: movementsOf[pair].flatMap((key) => {
      const movement = movementTable.get(key);
      return movement === undefined ? [] : [motorItem(movement, side)];
    }),
    skin: skinOf[pair].flatMap((key) => {
      const place = skinPlace('landmark', key);
      return place === undefined ? [] : modalities.map((modality) => sensoryItem(place, modality, side));
    }),
  })),
);

/** Loss that a patient would complain of: the least that an examiner grades below full power, so a mild lesion counts too. Judged. */
const noticeable = 0.3;

/** Parts that a hypothesis would make the patient complain of. */
function complaints(hypothesis: Hypothesis): readonly Part[] {
  const limbs = samples
    .filter(
      ({ muscles, skin }) =>
        muscles.some((item) => motorDeficit(hypothesis, item).total >= noticeable) ||
        skin.some((item) => sensoryDeficit(hypothesis, item).total >= noticeable),
    )
    .map(({ part }) => part);
  const head = [...hypothesis.faculties.values()].some((chance) => chance >= 0.5);
  return head ? ['head', ...limbs] : limbs;
}

/**
 * Odds of a hypothesis, for each part of the body that it would trouble and in which nothing was found wrong. An
 * examination follows the complaint, so a lesion that troubles a part at which nobody looked is unlikely; how unlikely is
 * judged. That somebody looked and found nothing must not make it likelier, so what counts is what was found wrong.
 */
const uncomplainedOf = 0.25;

/** Parts of the body in which at least one item was abnormal. */
function troubledParts(findings: readonly Finding[]): ReadonlySet<Part> {
  return new Set(findings.filter(({ abnormal }) => abnormal).flatMap(partsOf));
}

function partsOf({ item, side, place }: Finding): readonly Part[] {
  if (item.section === 'higherFunction' || item.section === 'cranialNerves') return ['head'];
  const region = regionOf(item.region, place);
  const pair = pairOf(region);
  if (pair === null) return region === 'head' ? ['head'] : [];
  return side === 'midline' ? bodySides.map((one): Part => `${one} ${pair}`) : [`${side} ${pair}`];
}

function regionOf(own: string, place: Finding['place']): string {
  if (place === undefined) return own;
  const { kind, key } = place;
  if (kind === 'dermatome' || kind === 'landmark' || kind === 'territory') return skinPlace(kind, key)?.region ?? own;
  // What is lost below a level was followed down to the feet.
  return kind === 'region' ? key : kind === 'level-below' ? 'lower-limbs' : own;
}

function pairOf(region: string): Pair | null {
  if (region === 'trunk' || region === 'perineum') return region;
  return region === 'upper-limbs' ? 'arms' : region === 'lower-limbs' ? 'legs' : null;
}

const allParts: readonly Part[] = [
  'head',
  ...pairs.flatMap((pair) => bodySides.map((side): Part => `${side} ${pair}`)),
];

/**
 * Parts in which something should have been found if a lesion troubled them: of the parts that are seldom examined only
 * the other half of one that was found wrong, because who describes one half has looked at both.
 */
function lookedAt(troubled: ReadonlySet<Part>): ReadonlySet<Part> {
  const halves = pairs.flatMap((pair) =>
    bodySides
      .filter((side) => !seldomExamined.has(pair) || troubled.has(`${opposite(side)} ${pair}`))
      .map((side): Part => `${side} ${pair}`),
  );
  return new Set(['head', ...halves]);
}

/** Complaints of every hypothesis, worked out once, one bit for each part. */
export class Coverage {
  readonly complaints: Uint16Array;

  constructor(hypotheses: readonly Hypothesis[], known?: Uint16Array) {
    this.complaints = known ?? Uint16Array.from(hypotheses, (hypothesis) => bits(new Set(complaints(hypothesis))));
  }

  /** Adds to [H] weights the natural log of the odds of each hypothesis, by how much of what it would trouble is troubled. */
  discount(logWeights: Float64Array, findings: readonly Finding[]): void {
    const troubled = troubledParts(findings);
    const untroubled = bits(lookedAt(troubled)) & ~bits(troubled);
    if (untroubled === 0) return;
    for (let index = 0; index < logWeights.length; index += 1) {
      const missed = (this.complaints[index] ?? 0) & untroubled;
      if (missed !== 0) logWeights[index] = (logWeights[index] ?? 0) + (logOdds[missed] ?? 0);
    }
  }
}

/** By bits of the parts, the natural log of the odds. */
const logOdds = Float64Array.from({ length: 1 << allParts.length }, (_, mask) => Math.log(uncomplainedOf) * ones(mask));

function bits(parts: ReadonlySet<Part>): number {
  return allParts.reduce((mask, part, place) => (parts.has(part) ? mask | (1 << place) : mask), 0);
}

function ones(mask: number): number {
  return allParts.reduce((count, _, place) => count + ((mask >> place) & 1), 0);
}
