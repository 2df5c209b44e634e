import { isWithin } from '../../anatomy/body-parts.ts';
import type { MuscleGroup } from '../../anatomy/movement.ts';
import { movementTable } from '../../anatomy/movements.ts';
import { muscles } from '../../anatomy/muscles.ts';
import type { Modality, Probe } from '../../anatomy/probe.ts';
import { reflexTable } from '../../anatomy/reflexes.ts';
import { type Segment, segmentIndex } from '../../anatomy/segments.ts';
import type { SiteKind } from '../../anatomy/site-kind.ts';
import type { SkinPlace } from '../../anatomy/skin.ts';
import { skinPlace } from '../../anatomy/skin-places.ts';
import { scales } from '../../exam/scales.ts';
import { type BodySide, opposite, type Side, sidesOf } from '../../kernel/side.ts';
import { facultyChance } from '../forward/faculty.ts';
import { type MotorItem, motorDeficit, motorItem } from '../forward/motor.ts';
import { arcState, reflexItem } from '../forward/reflex-arc.ts';
import { tractsReleasedAt } from '../forward/release.ts';
import { sensoryDeficit, sensoryItem } from '../forward/sensory.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { cordIndex, placeIndex } from '../lesion.ts';
import { either } from '../process.ts';
import { signModel } from './abnormality.ts';
import { cerebellar, proprioception } from './ataxia-models.ts';
import type { Context } from './context.ts';
import {
  plantarDistribution,
  plantarResponses,
  powerDistribution,
  powerGrades,
  reflexDistribution,
  reflexGrades,
  sensoryDistribution,
  sensoryResults,
  superficialDistribution,
  superficialGrades,
  toneDistribution,
  toneGrades,
} from './observed.ts';
import { coarse, fine, gradedModel, type ProbeModel } from './probe-model.ts';
import { limbSegment, mean, motorItems, type ProbeTarget } from './probe-target.ts';
import { chanceInOldAge, signAccuracy, upperMotorAccuracy } from './sign-accuracy.ts';

export type { ProbeTarget } from './probe-target.ts';

const groupMovements = (groups: readonly MuscleGroup[]): readonly string[] =>
  [...movementTable].flatMap(([key, movement]) => (groups.includes(movement.group) ? [key] : []));

/** Loss of descending control to a limb on one side. */
function released(hypothesis: Hypothesis, side: BodySide, limb: 'upper' | 'lower'): number {
  return tractsReleasedAt(hypothesis, side, segmentIndex(limbSegment[limb]));
}

const toneMuscles = {
  upper: ['elbow-flexion', 'elbow-extension', 'wrist-extension'],
  lower: ['knee-extension', 'knee-flexion', 'ankle-plantarflexion'],
} as const;

function power({ side }: ProbeTarget, movementKey: string): ProbeModel | null {
  const movement = movementTable.get(movementKey);
  if (movement === undefined) return null;
  const item = motorItem(movement, side);
  return gradedModel({
    family: 'power',
    values: powerGrades,
    normal: scales['mrc-power'].normal,
    steps: [fine],
    fractions: (hypothesis) => [motorDeficit(hypothesis, item).total],
    distribution: ([loss = 0]) => powerDistribution(loss),
  });
}

function reflex({ side }: ProbeTarget, reflexKey: string): ProbeModel | null {
  const row = reflexTable.get(reflexKey);
  if (row === undefined) return null;
  const item = reflexItem(row, side);
  const fractions = (hypothesis: Hypothesis): number[] => {
    const { arc, released: lost } = arcState(hypothesis, item);
    return [arc, lost];
  };
  const { under60, from60 } = row.absentInHealth;
  const family = `${row.kind}|${under60}|${from60}`;
  const absent = ({ from60: share }: Context): number => under60 + (from60 - under60) * share;
  return row.kind === 'stretch'
    ? gradedModel({
        family,
        values: reflexGrades,
        normal: scales['reflex-grade'].normal,
        steps: [21, coarse],
        fractions,
        distribution: ([arc = 1, lost = 0], context) => reflexDistribution(arc, lost, absent(context), context),
      })
    : gradedModel({
        family,
        values: superficialGrades,
        normal: scales['superficial-reflex'].normal,
        steps: [coarse, coarse],
        fractions,
        distribution: ([arc = 1, lost = 0], context) => superficialDistribution(arc, lost, absent(context)),
      });
}

/** Vibration that is lost with age at the far end of the leg: toes 29 %, ankles 15 % of healthy people from 60. */
function lostInHealth(modality: Modality, place: SkinPlace): { readonly from60: number } {
  if (modality !== 'vibration') return { from60: 0.01 };
  return { from60: place.lengthCm >= 97 ? 0.27 : place.lengthCm >= 84 ? 0.13 : 0.02 }; // Vrancken 2006 (read), less the usual false losses
}

function sensation({ side, place }: ProbeTarget, modality: Modality): ProbeModel | null {
  if (place === undefined) return null;
  const { kind } = place;
  const row =
    kind === 'dermatome' || kind === 'landmark' || kind === 'territory' ? skinPlace(kind, place.key) : undefined;
  if (row === undefined) return null;
  const item = sensoryItem(row, modality, side);
  const ageing = lostInHealth(modality, row);
  return gradedModel({
    family: `sensation|${ageing.from60}`,
    values: sensoryResults,
    normal: scales.sensation.normal,
    steps: [fine],
    fractions: (hypothesis) => [sensoryDeficit(hypothesis, item).total],
    distribution: ([loss = 0], context) => sensoryDistribution(loss, ageing.from60 * context.from60),
  });
}

function plantar({ side }: ProbeTarget): ProbeModel {
  const toes = sidesOf(side).flatMap((one) => motorItems(['great-toe-extension'], one));
  return gradedModel({
    family: 'plantar',
    values: plantarResponses,
    normal: scales['plantar-response'].normal,
    steps: [coarse, coarse],
    fractions: (hypothesis) => [
      mean(sidesOf(side).map((one) => tractsReleasedAt(hypothesis, one, segmentIndex('L5')))),
      1 - mean(toes.map((item) => motorDeficit(hypothesis, item).lower)),
    ],
    distribution: ([lost = 0, toeMuscles = 1]) => plantarDistribution(lost, toeMuscles),
  });
}

const legTone = new Set(['lower-limb', 'knee', 'ankle', 'hip', 'thigh', 'leg-below-knee', 'foot']);
const armTone = new Set(['upper-limb', 'elbow', 'wrist', 'shoulder', 'forearm', 'upper-arm', 'hand']);

/** How much of the tone that the comatose lose is lost with wakefulness. Judged. */
const slackInComa = 0.5;

/** How much of its tone a limb loses that a lesion of the cerebellum makes ataxic: Holmes 1917 (from memory), share judged. */
const slackWithAtaxia = 0.3;

/** Loss of tone by lost motor units, with wakefulness, or with the hold of the cerebellum. */
function slackness(hypothesis: Hypothesis, muscles: readonly MotorItem[], side: BodySide): number {
  const lower = mean(muscles.map((muscle) => motorDeficit(hypothesis, muscle).lower));
  const asleep = facultyChance(hypothesis, 'consciousness', 'midline');
  const ataxic = facultyChance(hypothesis, 'limb-coordination', side);
  return 1 - (1 - lower) * (1 - slackInComa * asleep ** 3) * (1 - slackWithAtaxia * ataxic);
}

function tone({ item, side }: ProbeTarget): ProbeModel | null {
  const limb = legTone.has(item.key) ? 'lower' : armTone.has(item.key) ? 'upper' : null;
  if (limb === null || side === 'midline') return null;
  const muscles = motorItems(toneMuscles[limb], side);
  return gradedModel({
    family: 'tone',
    values: toneGrades,
    normal: scales.tone.normal,
    steps: [6, 5, restraints.length],
    fractions: (hypothesis) => {
      const shock = hypothesis.process.shock({ side, segment: segmentIndex(limbSegment[limb]) });
      return [
        released(hypothesis, side, limb) * (1 - shock),
        either(slackness(hypothesis, muscles, side), shock),
        nearestRestraint(
          facultyChance(hypothesis, 'rigidity', side),
          facultyChance(hypothesis, 'frontal-release', 'midline'),
        ),
      ];
    },
    distribution: ([lost = 0, lower = 0, place = 0], context) => {
      const [rigid, frontal] = restraints[Math.round(place * (restraints.length - 1))] ?? [0, 0];
      return toneDistribution({ released: lost, lowerLoss: lower, unrestrained: rigid, frontal }, context);
    },
  });
}

/**
 * Chances of rigidity and of frontal release that are told apart. Limbs resist in many whose whole brain is clouded or fails, and
 * in more whose frontal lobes do; who is rigid as well is found rigid.
 */
const restraints: readonly (readonly [rigid: number, frontal: number])[] = [
  ...([
    [0, 0],
    [1 / 3, 0],
    [2 / 3, 0],
    [1, 0],
  ] as const),
  ...([
    [0, 0.4],
    [1 / 3, 0.4],
  ] as const),
  ...([
    [0, 0.75],
    [2 / 3, 0.75],
  ] as const),
];

/** Place of the nearest of them in the list, as a fraction. */
function nearestRestraint(rigid: number, frontal: number): number {
  const distance = ([r, f]: readonly [number, number]): number => (r - rigid) ** 2 + (f - frontal) ** 2;
  const nearest = restraints.reduce((best, one) => (distance(one) < distance(best) ? one : best));
  return restraints.indexOf(nearest) / (restraints.length - 1);
}

function clonus({ item, side }: ProbeTarget, reflexKey: string): ProbeModel | null {
  const row = reflexTable.get(reflexKey);
  if (row === undefined) return null;
  const arc = reflexItem(row, side);
  return signModel({
    item,
    family: 'clonus',
    steps: [coarse, coarse],
    fractions: (hypothesis) => {
      const state = arcState(hypothesis, arc);
      return [state.arc, state.released];
    },
    chance: ([kept = 1, lost = 0], context) => 0.008 + 0.6 * lost * kept * (0.25 + 0.75 * context.chronicity),
  });
}

/** Bulk lost for the weakness by how the weakness comes about, as a state and as a factor; see `Process.wasting`. Judged. */
const wastingStates = { block: 0, muscle: 0.5, denervation: 1 } as const;
const wastingFactor = (state: number, chronicity: number): number => {
  // What is thin within days was thin before the day that is told, and says little of how the muscles fail now.
  const blocked = chronicity < 0.25 ? 0.6 : 0.25;
  return state < 0.25 ? blocked : state < 0.75 ? 0.75 : 1;
};

/**
 * The muscle that makes the bulk where a movement is seen. Others may lend it strength, as the supraspinatus does to a
 * shoulder whose deltoid is gone, but do not fill the hollow.
 */
function mainMuscles(keys: readonly string[], side: BodySide): readonly MotorItem[] {
  return motorItems(keys, side).map((item) => {
    const [main] = item.movement.supplies;
    return main === undefined ? item : motorItem({ ...item.movement, supplies: [{ ...main, weight: 1 }] }, item.side);
  });
}

/** A muscle that keeps half of its motor units grows the rest and looks nearly full: power to which the loss is raised. Judged. */
const seenFrom = 1.4;

/** Wasting seen within days of the onset that was told, as a share of that seen after months: the day that is told is often that of the pain or of the last turn. Judged. */
const seenAtOnce = 0.25;

/** Joints that are moved by the muscles of the near half of a limb. */
const aboveElbowAndKnee: ReadonlySet<string> = new Set(['shoulder', 'elbow', 'hip', 'knee']);

/**
 * Bulk that is seen to be lost, of a part by its emptiest muscle as much as by all; of a limb that is called thin as a whole by
 * the fuller of its two halves too, since a hollow in the hand alone is called one of the hand. Judged.
 */
function bulkLost(losses: readonly number[], isNear: readonly boolean[] | null): number {
  const most = Math.max(...losses, 0);
  if (isNear === null) return most * 0.5 + mean(losses) * 0.5;
  const near = losses.filter((_, place) => isNear[place]);
  const far = losses.filter((_, place) => !isNear[place]);
  return most * 0.2 + mean(losses) * 0.3 + Math.min(mean(near), mean(far)) * 0.5;
}

/** Wasting takes weeks; twitching is commonest where the cell body is lost, absent in disease of muscle and junction. Judged. */
function denervation({ item, side, place }: ProbeTarget, feature: 'wasting' | 'fasciculation'): ProbeModel | null {
  if (place === undefined) return null;
  const keys = [...movementTable].flatMap(([key, movement]) => (isWithin(movement.bulkAt, place.key) ? [key] : []));
  if (keys.length === 0) return null;
  const items = sidesOf(side).flatMap((one) => mainMuscles(keys, one));
  const isWholeLimb = place.key === 'upper-limb' || place.key === 'lower-limb';
  const halves = items.map(({ movement }) => aboveElbowAndKnee.has(movement.bodyPart));
  const fractions = (hypothesis: Hypothesis): number[] => {
    const losses = items.map((one) => motorDeficit(hypothesis, one).lower);
    const horn = mean(
      items.flatMap((one) =>
        one.strands.map((strand) =>
          strand.segment === null
            ? 0
            : (hypothesis.pathways.damage.anteriorHorn[cordIndex(strand.side, strand.segment)] ?? 0),
        ),
      ),
    );
    const { wasting, twitching = 0 } = hypothesis.process;
    return [
      bulkLost(losses, isWholeLimb ? halves : null),
      either(horn, twitching * mean(losses)),
      wastingStates[wasting],
    ];
  };
  return signModel({
    item,
    family: feature,
    steps: [coarse, 6, 3],
    fractions,
    chance: ([loss = 0, horn = 0, bulk = 1], context) =>
      feature === 'wasting'
        ? 0.02 +
          0.8 *
            loss ** seenFrom *
            (seenAtOnce + (1 - seenAtOnce) * context.chronicity) *
            wastingFactor(bulk, context.chronicity)
        : 0.012 + (bulk === 1 ? 0.1 : 0.02) * loss + 0.75 * horn * (0.4 + 0.6 * context.chronicity),
  });
}

/** How much of a weakness from above shows in a sign that a slack muscle makes; spastic legs neither waddle nor climb up themselves. Judged. */
const spasticShare = 0.35;

/** How much of a weakness that comes and goes with effort shows in the posture of a limb at rest. Judged. */
const heldShare = 0.4;

/** A task fails when the weakest of the movements that it needs is weak; tasks of the whole body load the muscles more. */
function weaknessOf(
  { item, side }: ProbeTarget,
  { movements, bilateral = false, flaccid = false, butKept = [], shownBy = 1 }: Extract<Probe, { kind: 'weakness-of' }>,
): ProbeModel {
  const lossOf = (hypothesis: Hypothesis, one: MotorItem): number => {
    const { lower, total } = motorDeficit(hypothesis, one);
    if (flaccid && hypothesis.process.sparesArcs === true) return total * heldShare;
    return flaccid ? lower + (total - lower) * spasticShare : total;
  };
  const perSide = sidesOf(side).map((one) => motorItems(movements, one));
  const opponents = sidesOf(side).map((one) => motorItems(butKept, one));
  const kept = (hypothesis: Hypothesis, items: readonly MotorItem[]): number =>
    items.reduce((product, one) => product * (1 - motorDeficit(hypothesis, one).total), 1);
  const loaded = item.scale === 'performance';
  return signModel({
    item,
    family: `task|${shownBy}`,
    steps: [fine],
    fractions: (hypothesis) => {
      const losses = perSide.map(
        (items, place) =>
          Math.max(0, ...items.map((one) => lossOf(hypothesis, one))) * kept(hypothesis, opponents[place] ?? []),
      );
      return [bilateral ? Math.min(...losses) : Math.max(...losses)];
    },
    chance: ([loss = 0]) => {
      const threshold = loaded ? 0.22 : 0.38;
      return 0.02 + (0.94 * shownBy) / (1 + Math.exp((threshold - loss) / 0.07));
    },
  });
}

/** The muscles of the flank, layer on layer, which hold the belly in. Source: Gray's Anatomy (recalled). */
const flank = [
  { ...muscles['abdominal-obliques'], muscle: 'abdominal-obliques', weight: 0.85 },
  { ...muscles['abdominal-obliques-lowest'], muscle: 'abdominal-obliques-lowest', weight: 0.15 },
];

/**
 * One root or two at the foot of the rib cage are enough for a bulge, which shows how much slacker one side is than the
 * other. Shares judged.
 */
const bulge = { inHealth: 0.004, shown: 0.6, gain: 4 } as const;

function slackBelly({ item, side }: ProbeTarget): ProbeModel | null {
  if (side === 'midline') return null;
  const trunk = movementTable.get('trunk-flexion');
  if (trunk === undefined) return null;
  const wall = { ...trunk, supplies: flank };
  const [own, other] = [motorItem(wall, side), motorItem(wall, opposite(side))];
  return signModel({
    item,
    family: 'slack-belly',
    steps: [fine],
    fractions: (hypothesis) => [
      Math.max(0, motorDeficit(hypothesis, own).lower - motorDeficit(hypothesis, other).lower),
    ],
    chance: ([slack = 0]) => bulge.inHealth + bulge.shown * Math.min(1, slack * bulge.gain),
  });
}

function upperMotor(
  { item, side }: ProbeTarget,
  { limb, orAlso = [] }: Extract<Probe, { kind: 'upper-motor' }>,
): ProbeModel {
  const { sensitivity, falsePositive } = upperMotorAccuracy(item.key);
  const parts = limb === 'both' ? (['upper', 'lower'] as const) : [limb];
  const alsoFailing = (hypothesis: Hypothesis): number =>
    Math.max(0, ...orAlso.map((faculty) => facultyChance(hypothesis, faculty, side)));
  return signModel({
    item,
    family: `upper-motor|${sensitivity}|${falsePositive}|${orAlso.length > 0}`,
    steps: orAlso.length > 0 ? [coarse, coarse] : [coarse],
    fractions: (hypothesis) => [
      Math.max(...sidesOf(side).flatMap((one) => parts.map((part) => released(hypothesis, one, part)))),
      ...(orAlso.length > 0 ? [alsoFailing(hypothesis)] : []),
    ],
    chance: ([lost = 0, also = 0], context) =>
      1 -
      (1 - falsePositive - sensitivity * Math.min(1, lost * 1.25) * (0.45 + 0.55 * context.chronicity)) *
        (1 - 0.85 * also),
  });
}

function deformity({ item, side }: ProbeTarget): ProbeModel {
  const feet = sidesOf(side).flatMap((one) => motorItems(groupMovements(['foot', 'leg-anterior']), one));
  return signModel({
    item,
    family: 'deformity',
    steps: [coarse],
    fractions: (hypothesis) => [mean(feet.map((one) => motorDeficit(hypothesis, one).lower))],
    chance: ([loss = 0], context) => 0.05 + 0.3 * loss * context.chronicity,
  });
}

/** Stretching or tapping provokes a compressed root or nerve, not the cord or a diffuse process. */
const provocable: ReadonlySet<SiteKind> = new Set(['root', 'nerve', 'cauda-equina', 'plexus']);

function provocation({ item, side }: ProbeTarget, probe: Extract<Probe, { kind: 'provocation' }>): ProbeModel {
  const { sensitivity, falsePositive } = signAccuracy(item.key);
  const roots = Object.keys(probe.roots ?? {}) as Segment[];
  const places = probe.places ?? [];
  return signModel({
    item,
    family: `provocation|${sensitivity}|${falsePositive}`,
    steps: [6],
    fractions: (hypothesis) => {
      if (!provocable.has(hypothesis.site.kind)) return [0];
      const { dorsalRoot, ventralRoot, sensoryPlace, motorPlace } = hypothesis.pathways.damage;
      const hits = sidesOf(side).flatMap((one) => [
        ...roots.map((root) => {
          const cell = cordIndex(one, segmentIndex(root));
          return Math.max(dorsalRoot[cell] ?? 0, ventralRoot[cell] ?? 0);
        }),
        ...places.map((place) => {
          const cell = placeIndex(one, place);
          return Math.max(sensoryPlace[cell] ?? 0, motorPlace[cell] ?? 0);
        }),
      ]);
      return [Math.max(0, ...hits)];
    },
    chance: ([hit = 0]) => falsePositive + (sensitivity - falsePositive) * Math.min(1, hit * 1.6),
  });
}

const hundredths = 101;

/** How often a failure of several things is recorded when one of them fails alone. Judged. */
const calledSoAlone = 0.25;

/** How often a sign that needs feeling skin is recorded where that skin is numb, beside the numbness. Judged. */
const noticedAsNumb = 0.6;

function facultyModel({ item, side }: ProbeTarget, probe: Extract<Probe, { kind: 'faculty' }>): ProbeModel {
  const faculties = [...(probe.seldomWithout === undefined ? [probe.faculty] : []), ...(probe.orAlso ?? [])];
  const together = (hypothesis: Hypothesis, one: Side): number => {
    if (probe.seldomWithout === undefined) return 0;
    const first = facultyChance(hypothesis, probe.faculty, one);
    const second = facultyChance(hypothesis, probe.seldomWithout, one);
    return Math.max(first, second) * (calledSoAlone + (1 - calledSoAlone) * Math.min(first, second));
  };
  const skin = (probe.orSkin ?? []).flatMap((key) => skinPlace('landmark', key) ?? []);
  const numb = (hypothesis: Hypothesis, one: Side): number =>
    Math.max(
      0,
      ...skin.flatMap((place) =>
        sidesOf(one).map((own) => sensoryDeficit(hypothesis, sensoryItem(place, 'light-touch', own)).total),
      ),
    );
  const ofAge = chanceInOldAge(item.key);
  return signModel({
    item,
    family: `faculty|${ofAge}`,
    steps: [hundredths],
    fractions: (hypothesis) => {
      const { butSpares, needsOther } = probe;
      const failingOn = (one: Side): number =>
        Math.max(
          together(hypothesis, one),
          noticedAsNumb * numb(hypothesis, one),
          ...faculties.map((faculty) => facultyChance(hypothesis, faculty, one)),
        );
      const failing = failingOn(side);
      if (butSpares !== undefined) return [failing * (1 - facultyChance(hypothesis, butSpares, side))];
      return [needsOther === true && side !== 'midline' ? failing * (1 - failingOn(opposite(side))) : failing];
    },
    chance: ([chance = 0], { from60 }) => either(chance, ofAge * from60),
  });
}

/** The model of an item where it is examined; null when nothing can be drawn from it. */
export function probeModel(target: ProbeTarget): ProbeModel | null {
  const { probe } = target.item;
  switch (probe.kind) {
    case 'movement':
      return power(target, probe.movement);
    case 'reflex':
      return reflex(target, probe.reflex);
    case 'sensation':
      return sensation(target, probe.modality);
    case 'plantar':
      return plantar(target);
    case 'tone':
      return tone(target);
    case 'clonus':
      return clonus(target, probe.reflex);
    case 'denervation':
      return denervation(target, probe.feature);
    case 'weakness-of':
      return weaknessOf(target, probe);
    case 'slack-belly':
      return slackBelly(target);
    case 'upper-motor':
      return upperMotor(target, probe);
    case 'proprioception':
      return proprioception(target, probe.limb);
    case 'cerebellar':
      return cerebellar(target, probe);
    case 'long-standing-deformity':
      return deformity(target);
    case 'provocation':
      return provocation(target, probe);
    case 'faculty':
      return facultyModel(target, probe);
    case 'recorded-only':
      return null;
  }
}
