import { movementTable } from '../../anatomy/movements.ts';
import { skinPlace } from '../../anatomy/skin-places.ts';
import type { Finding } from '../../exam/finding.ts';
import { bodySides } from '../../kernel/side.ts';
import { motorDeficit, motorItem } from '../forward/motor.ts';
import { sensoryDeficit, sensoryItem } from '../forward/sensory.ts';
import type { Hypothesis } from '../hypothesis.ts';

/** Parts of the body that an examiner turns to as a whole. */
const parts = ['head', 'arms', 'legs'] as const;
type Part = (typeof parts)[number];

const movementsOf: Readonly<Record<Exclude<Part, 'head'>, readonly string[]>> = {
  arms: ['shoulder-abduction', 'elbow-extension', 'finger-extension', 'finger-abduction'],
  legs: ['hip-flexion', 'knee-extension', 'ankle-dorsiflexion', 'ankle-plantarflexion'],
};
const skinOf: Readonly<Record<Exclude<Part, 'head'>, readonly string[]>> = {
  arms: ['thumb', 'little-finger'],
  legs: ['great-toe', 'front-of-thigh'],
};

const samples = (['arms', 'legs'] as const).map((part) => ({
  part,
  muscles: movementsOf[part].flatMap((key) => {
    const movement = movementTable.get(key);
    return movement === undefined ? [] : bodySides.map((side) => motorItem(movement, side));
  }),
  skin: skinOf[part].flatMap((key) => {
    const place = skinPlace('landmark', key);
    return place === undefined ? [] : bodySides.map((side) => sensoryItem(place, 'pinprick', side));
  }),
}));

/** Loss that a patient would complain of. Judged. */
const noticeable = 0.4;

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

const partOfRegion = new Map<string, Part>([
  ['head', 'head'],
  ['upper-limbs', 'arms'],
  ['lower-limbs', 'legs'],
]);

/**
 * Odds of a hypothesis that would trouble a part of the body at which nobody looked. An examination follows the
 * complaint, so such a lesion is unlikely; how unlikely is judged.
 */
const unlookedFor = 0.4;

/** Parts of the body of which at least one item was examined. */
function examinedParts(findings: readonly Finding[]): ReadonlySet<Part> {
  return new Set(
    findings
      .filter(({ value }) => value !== null)
      .flatMap(({ item, place }) => {
        const skin =
          place?.kind === 'dermatome' || place?.kind === 'landmark' || place?.kind === 'territory'
            ? skinPlace(place.kind, place.key)
            : undefined;
        if (place?.kind === 'level-below') return ['legs' as const];
        const region = place?.kind === 'region' ? place.key : (skin?.region ?? item.region);
        return (
          partOfRegion.get(region) ??
          (item.section === 'higherFunction' || item.section === 'cranialNerves' ? 'head' : [])
        );
      }),
  );
}

/** Complaints of every hypothesis, worked out once. */
export class Coverage {
  private readonly complaints: readonly (readonly Part[])[];

  constructor(hypotheses: readonly Hypothesis[]) {
    this.complaints = hypotheses.map(complaints);
  }

  /** Natural log of the odds of each hypothesis, by how far the examination looked where it would trouble. */
  logOdds(findings: readonly Finding[]): Float64Array {
    const examined = examinedParts(findings);
    return Float64Array.from(
      this.complaints,
      (list) => Math.log(unlookedFor) * list.filter((part) => !examined.has(part)).length,
    );
  }
}
