import { dermatomes } from '../../anatomy/dermatomes.ts';
import type { Modality } from '../../anatomy/probe.ts';
import { type Segment, segmentIndex, segments } from '../../anatomy/segments.ts';
import type { DermatomeKey } from '../../anatomy/skin.ts';
import { segmentsServing, skinPlace } from '../../anatomy/skin-places.ts';
import { itemId } from '../../exam/catalogue/item.ts';
import { routineSteps } from '../../exam/catalogue/routine.ts';
import type { Finding } from '../../exam/finding.ts';
import { type BodySide, isBodySide, opposite, type Side } from '../../kernel/side.ts';

/**
 * What "otherwise normal" means to whoever writes it. It speaks of what lies beyond the trouble: who found every muscle that
 * was tried in a leg paralysed, from hip to ankle, does not call the toes of that leg normal by it, nor the skin of a numb
 * patch for what was not tried there, nor the lesser reflexes of a limb whose reflexes are gone. Of reflexes and of movements those
 * are meant that everybody tries: not the adductor jerk, the cremasteric or the anal reflex, and the turning of a foot only where the
 * legs were tried closely. Nor does it deny another name of what was
 * stated to be wrong: who states a sixth nerve palsy has not found that the eye abducts.
 */
export interface RestMeant {
  /** Whether a finding that was declared normal in a summary was meant. */
  readonly includes: (finding: Finding) => boolean;
  /** Whether the skin of a dermatome was meant where the sensation of its region was declared normal. */
  readonly includesSkin: (key: DermatomeKey, modality: Modality, side: Side) => boolean;
}

export function restMeant(findings: readonly Finding[]): RestMeant {
  const recorded = findings.filter(({ origin, value }) => origin === 'recorded' && value !== null);
  const weak = limbsAllWeak(recorded);
  const changed = limbsAllChanged(recorded);
  const closely = triedClosely(recorded);
  const numb = numbSkin(recorded);
  const stated = failing(findings);
  return {
    includes: (finding) => {
      const { probe, region } = finding.item;
      const limb = `${region}|${finding.side}`;
      return !(
        (probe.kind === 'movement' && (weak.has(limb) || !(isRoutine(finding) || closely.has(region)))) ||
        (probe.kind === 'reflex' && (changed.has(limb) || !isRoutine(finding))) ||
        facultiesOf(finding).some((name) => stated.has(name))
      );
    },
    includesSkin: (key, modality, side) =>
      numb.get(skinName(modality, side))?.has(segmentIndex(dermatomes[key].segment)) !== true,
  };
}

const triedByAll: ReadonlySet<string> = new Set(routineSteps.map(({ item }) => item));

function isRoutine({ item }: Finding): boolean {
  return triedByAll.has(itemId(item));
}

/** Regions in which the examiner recorded a movement beyond the routine: who turns the foot in and out tries the others too. */
function triedClosely(recorded: readonly Finding[]): ReadonlySet<string> {
  const movements = recorded.filter((finding) => finding.item.probe.kind === 'movement' && !isRoutine(finding));
  return new Set(movements.map(({ item }) => item.region));
}

/** Parts of a limb from which its weakness must be told to be one of the whole limb. */
const nearParts: ReadonlySet<string> = new Set(['shoulder', 'elbow', 'hip']);
const farParts: ReadonlySet<string> = new Set([
  'fingers',
  'index-finger',
  'middle-finger',
  'little-finger',
  'thumb',
  'foot',
  'great-toe',
  'toes',
]);

/**
 * Limbs, by region and side, in which every movement that was tried is weak, near the trunk and far from it; and the arm and the
 * leg of one side where every movement that was tried in either is weak, few as they are: that tells of half the body.
 */
function limbsAllWeak(recorded: readonly Finding[]): ReadonlySet<string> {
  const limbs = byLimb(recorded.filter(({ item }) => item.probe.kind === 'movement'));
  const allWeak = namesWhere(limbs, (tried) => tried.every(({ abnormal }) => abnormal));
  return namesWhere(limbs, (tried, name) => {
    if (!allWeak.has(name)) return false;
    const isOf = (parts: ReadonlySet<string>) => tried.some(({ item }) => parts.has(item.bodyPart ?? ''));
    return (isOf(nearParts) && isOf(farParts)) || isHalfTheBody(name, allWeak);
  });
}

function isHalfTheBody(limb: string, weak: ReadonlySet<string>): boolean {
  const [, side] = limb.split('|');
  const isWeak = (one: BodySide): boolean => weak.has(`upper-limbs|${one}`) && weak.has(`lower-limbs|${one}`);
  return isBodySide(side) && isWeak(side) && !isWeak(opposite(side));
}

/** From so many on, reflexes that are all changed say that those of the limb are. */
const severalReflexes = 2;

function limbsAllChanged(recorded: readonly Finding[]): ReadonlySet<string> {
  const limbs = byLimb(recorded.filter(({ item }) => item.probe.kind === 'reflex'));
  return namesWhere(limbs, (tried) => tried.length >= severalReflexes && tried.every(({ abnormal }) => abnormal));
}

function byLimb(findings: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> {
  const limbs = new Map<string, Finding[]>();
  for (const finding of findings) {
    const name = `${finding.item.region}|${finding.side}`;
    limbs.set(name, [...(limbs.get(name) ?? []), finding]);
  }
  return limbs;
}

function namesWhere(
  limbs: ReadonlyMap<string, readonly Finding[]>,
  holds: (tried: readonly Finding[], name: string) => boolean,
): ReadonlySet<string> {
  return new Set([...limbs].flatMap(([name, tried]) => (holds(tried, name) ? [name] : [])));
}

/** What a loss leaves in doubt at the same place: touch is lost with either of the other two. */
const alsoInDoubt: Readonly<Record<Modality, readonly Modality[]>> = {
  pinprick: ['pinprick', 'temperature', 'light-touch'],
  temperature: ['pinprick', 'temperature', 'light-touch'],
  vibration: ['vibration', 'joint-position', 'light-touch'],
  'joint-position': ['vibration', 'joint-position', 'light-touch'],
  'light-touch': ['pinprick', 'temperature', 'vibration', 'joint-position', 'light-touch'],
};

/** By modality and side, the segments in whose skin a loss was found. */
function numbSkin(recorded: readonly Finding[]): ReadonlyMap<string, ReadonlySet<number>> {
  const numb = new Map<string, Set<number>>();
  for (const finding of recorded) {
    if (!finding.abnormal || finding.modality === undefined) continue;
    const found = segmentsOf(finding);
    for (const modality of alsoInDoubt[finding.modality]) {
      const name = skinName(modality, finding.side);
      const known = numb.get(name) ?? new Set<number>();
      numb.set(name, known);
      for (const segment of found) known.add(segment);
    }
  }
  return numb;
}

function skinName(modality: Modality, side: Side): string {
  return `${modality}|${side}`;
}

function segmentsOf({ place }: Finding): readonly number[] {
  if (place === undefined) return [];
  const { kind, key } = place;
  if (kind === 'level-below')
    return segments.flatMap((_, index) => (index > segmentIndex(key as Segment) ? [index] : []));
  const row = kind === 'dermatome' || kind === 'landmark' || kind === 'territory' ? skinPlace(kind, key) : undefined;
  return row === undefined ? [] : segmentsServing(row);
}

/** By faculty and side, what was stated to fail. */
function failing(findings: readonly Finding[]): ReadonlySet<string> {
  return new Set(findings.filter(({ abnormal }) => abnormal).flatMap(facultiesOf));
}

function facultiesOf({ item: { probe, section }, side }: Finding): readonly string[] {
  if (probe.kind === 'movement') return [`${probe.movement}|${side}`];
  // A posture that is seen names the movement that fails: winging the serratus, a wrist that drops its extensors.
  if (probe.kind === 'weakness-of' && section === 'inspection')
    return probe.movements.map((movement) => `${movement}|${side}`);
  if (probe.kind !== 'faculty') return [];
  return [probe.faculty, ...(probe.orAlso ?? [])].map((faculty) => `${faculty}|${side}`);
}
