import { bodyPartTable } from '../../anatomy/body-parts.ts';
import { movementTable } from '../../anatomy/movements.ts';
import { nearOnLimbs } from '../../anatomy/near-the-trunk.ts';
import type { Faculty } from '../../anatomy/probe.ts';
import { skinPlace } from '../../anatomy/skin-places.ts';
import { isUnconscious, unconscious } from '../../exam/catalogue/cooperation.ts';
import type { SectionKey } from '../../exam/catalogue/item.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { facultyChance } from '../forward/faculty.ts';
import { type MotorItem, motorDeficit, motorItem } from '../forward/motor.ts';
import { type SensoryItem, sensoryDeficit, sensoryItem } from '../forward/sensory.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { tells } from './told.ts';

const pairs = ['face', 'arms', 'legs', 'trunk', 'perineum'] as const;
type Pair = (typeof pairs)[number];

/** The head as a whole, and the two halves of every part of the body that an examiner turns to. */
type Part = 'head' | `${BodySide} ${Pair}`;

/** The near half of a limb and its far half, each moved by muscles of its own. */
const halvesOfALimb = ['near', 'far'] as const;
type LimbHalf = (typeof halvesOfALimb)[number];

/** A part, or one aspect of it, or the bladder and bowel, which a patient complains of without being asked. */
type Mark = Part | `${Part} ${Aspect}` | `${Part} ${LimbHalf} paralysed` | 'sphincters';

/** Parts that are gone through only when something leads there: that nothing was found says less there. */
const seldomExamined: ReadonlySet<Pair> = new Set(['face', 'trunk', 'perineum']);

const noMovements = { near: [], far: [] } as const;
const movementsOf: Readonly<Record<Pair, Readonly<Record<LimbHalf, readonly string[]>>>> = {
  face: noMovements,
  arms: { near: ['shoulder-abduction', 'elbow-extension'], far: ['finger-extension', 'finger-abduction'] },
  legs: { near: ['hip-flexion', 'knee-extension'], far: ['ankle-dorsiflexion', 'ankle-plantarflexion'] },
  trunk: noMovements,
  perineum: noMovements,
};
const skinOf: Readonly<Record<Pair, readonly string[]>> = {
  face: [],
  arms: ['outer-upper-arm', 'thumb', 'middle-finger', 'little-finger'],
  legs: ['great-toe', 'front-of-thigh', 'outer-border-of-foot'],
  trunk: ['nipple', 'umbilicus', 'lower-abdomen'],
  perineum: ['saddle', 'perianal-skin'],
};

/** What a sample of skin is asked about: pain fibres and position fibres run apart, and the loss of either is complained of. */
const modalities = ['pinprick', 'joint-position'] as const;

function musclesOf(keys: readonly string[], side: BodySide): readonly MotorItem[] {
  return keys.flatMap((key) => {
    const movement = movementTable.get(key);
    return movement === undefined ? [] : [motorItem(movement, side)];
  });
}

const samples = pairs.flatMap((pair) =>
  bodySides.map((side) => ({
    part: `${side} ${pair}` as const,
    muscles: { near: musclesOf(movementsOf[pair].near, side), far: musclesOf(movementsOf[pair].far, side) },
    skin: skinOf[pair].flatMap((key) => {
      const place = skinPlace('landmark', key);
      return place === undefined ? [] : modalities.map((modality) => sensoryItem(place, modality, side));
    }),
  })),
);

/** What may be lost in a part: power, feeling for pain, and feeling for position, by the ways that they take. */
const aspects = ['power', 'pain', 'position'] as const;
type Aspect = (typeof aspects)[number];

/** Loss that a patient would complain of: the least that an examiner grades below full power, so a mild lesion counts too. Judged. */
const noticeable = 0.3;

/**
 * Failures above the neck that people notice, or that a look at the face shows. Those that belong to one hemisphere are
 * left out: that nobody mentioned speech must not tell left from right.
 */
const noticedFaculties = [
  'consciousness',
  'attention',
  'memory',
  'visual-acuity',
  'visual-field-half',
  'visual-field-bitemporal',
  'oculomotor',
  'trochlear',
  'abducens',
  'gaze-horizontal',
  'internuclear',
  'eyelid-elevation',
  'eye-movement-fatigue',
  'trigeminal-sensation',
  'lower-face',
  'hearing',
  'vestibular',
  'nystagmus-vestibular',
  'swallowing',
  'voice',
  'speech-articulation',
  'speech-cerebellar',
  'tongue-denervation',
] as const satisfies readonly Faculty[];

/** Those of them that are seen on one half of the face or of space. */
const sidedFaculties = [
  'visual-acuity',
  'visual-field-half',
  'oculomotor',
  'abducens',
  'gaze-horizontal',
  'internuclear',
  'eyelid-elevation',
  'eye-movement-fatigue',
  'trigeminal-sensation',
  'lower-face',
  'hearing',
  'palate',
  'voice',
  'tongue',
  'tongue-denervation',
] as const satisfies readonly Faculty[];

/** Failures of movement that a limb is troubled by though it is neither weak nor numb. */
const clumsyFaculties: Readonly<Partial<Record<Pair, readonly Faculty[]>>> = {
  arms: ['rest-tremor', 'postural-tremor', 'limb-coordination', 'chorea', 'ballism'],
  legs: ['limb-coordination'],
};

/** Failures of gait, which are told of both legs unless one alone is clumsy: a gait that leans to the clumsy leg does not accuse the other. */
const gaitFaculties = ['trunk-coordination', 'gait-initiation'] as const satisfies readonly Faculty[];

/** Parts that a hypothesis would make the patient complain of, and which aspects of each limb. */
function complaints(hypothesis: Hypothesis): readonly Mark[] {
  const limbs = samples.flatMap(({ part, muscles, skin }): readonly Mark[] => {
    const lost: Readonly<Record<Aspect, boolean>> = {
      power: [...muscles.near, ...muscles.far].some((item) => motorDeficit(hypothesis, item).total >= noticeable),
      pain: isSkinLost(hypothesis, skin, 'pinprick'),
      position: isSkinLost(hypothesis, skin, 'joint-position'),
    };
    const named = aspects.filter((aspect) => lost[aspect]);
    if (named.length === 0 && !isClumsy(hypothesis, part)) return [];
    const hanging = halvesOfALimb.filter((half) => isParalysed(hypothesis, muscles[half]));
    return [
      part,
      ...named.map((aspect): Mark => `${part} ${aspect}`),
      ...hanging.map((half): Mark => `${part} ${half} paralysed`),
    ];
  });
  const head = noticedFaculties.some((faculty) => facultyChance(hypothesis, faculty, 'midline') >= 0.5);
  const halves = bodySides
    .filter((side) => sidedFaculties.some((faculty) => facultyChance(hypothesis, faculty, side) >= 0.5))
    .map((side): Part => `${side} face`);
  const sphincters = facultyChance(hypothesis, 'bladder-retention', 'midline') >= sphinctersFail;
  return [...(head ? ['head' as const] : []), ...(sphincters ? ['sphincters' as const] : []), ...halves, ...limbs];
}

function isClumsy(hypothesis: Hypothesis, part: Part): boolean {
  const [side, pair] = part.split(' ') as [BodySide, Pair];
  if (isClumsyItself(hypothesis, pair, side)) return true;
  if (pair !== 'legs' || isClumsyItself(hypothesis, pair, opposite(side))) return false;
  return gaitFaculties.some((faculty) => facultyChance(hypothesis, faculty, side) >= 0.5);
}

function isClumsyItself(hypothesis: Hypothesis, pair: Pair, side: BodySide): boolean {
  return (clumsyFaculties[pair] ?? []).some((faculty) => facultyChance(hypothesis, faculty, side) >= 0.5);
}

/** Loss of every movement of half a limb from which it hangs. Judged. */
const paralysed = 0.65;

function isParalysed(hypothesis: Hypothesis, muscles: readonly MotorItem[]): boolean {
  if (muscles.length === 0) return false;
  return muscles.reduce((sum, item) => sum + motorDeficit(hypothesis, item).total, 0) >= paralysed * muscles.length;
}

/** Chance of retention from which a lesion is one of the sphincters. Judged. */
const sphinctersFail = 0.4;

function isSkinLost(
  hypothesis: Hypothesis,
  skin: readonly SensoryItem[],
  modality: (typeof modalities)[number],
): boolean {
  return skin.some((item) => item.modality === modality && sensoryDeficit(hypothesis, item).total >= noticeable);
}

/**
 * Odds of a hypothesis, for each part of the body that it would trouble and in which nothing was found wrong. An
 * examination follows the complaint, so a lesion that troubles a part at which nobody looked is unlikely; how unlikely is
 * judged. That somebody looked and found nothing must not make it likelier, so what counts is what was found wrong.
 */
const uncomplainedOf = 0.15;
/** The same for the second of two limbs at neither of which anything was found: who did not look at one did not at the other. Judged. */
const uncomplainedOfEither = 0.4;
/** The same where the other half of the part was found wrong: who describes one half has looked at both. Judged. */
const uncomplainedOfBeside = 0.05;

/** The same in coma, where nobody complains, for one half that should move less than the other, which is looked for. Judged. */
const lopsidedInComa = 0.4;

/**
 * The same for an aspect of a limb that is troubled in some other way, while that aspect is lost in the limb beside it: who
 * describes a weak left leg has looked at the right one. Judged.
 */
const aspectSpared = 0.35;

/**
 * Odds of a lesion that would make both arms clumsy and neither weak nor numb, where steps were seen to sway with eyes or speech of the
 * cerebellum and nobody had the arms aim at anything: steps suffer first where all of it fails (Holmes 1939, recalled). Judged.
 */
const clumsinessUntested = 0.5;
const swayingGaits: ReadonlySet<string> = new Set(['ataxic', 'veering', 'tandem']);
const eyesAndSpeech: ReadonlySet<string> = new Set([
  ...['nystagmus', 'gaze-evoked-nystagmus', 'direction-changing-nystagmus', 'rebound-nystagmus', 'downbeat-nystagmus'],
  ...['saccadic-dysmetria', 'broken-pursuit', 'cerebellar-dysarthria'],
]);

/** What nobody complains of: it shows a lesion to the examiner, not to the person. */
const unfelt: ReadonlySet<Finding['item']['probe']['kind']> = new Set(['reflex', 'clonus', 'plantar'] as const);

/** Parts of the body in which something was found wrong that could be complained of, and which aspects. */
function troubledMarks(findings: readonly Finding[], isWeakInfant: boolean): ReadonlySet<Mark> {
  const wrong = findings.filter(({ abnormal, item }) => abnormal && !unfelt.has(item.probe.kind));
  const marks = new Set<Mark>();
  for (const finding of wrong) {
    const aspect = aspectOf(finding);
    for (const part of partsOf(finding)) {
      marks.add(part);
      if (part.endsWith('perineum')) marks.add('sphincters');
      if (aspect !== null) marks.add(`${part} ${aspect}`);
      // Nobody grades the power of an infant that is called weak: that a limb is limp says how strong it is, near and far.
      if (isWeakInfant && isLimp(finding)) {
        marks.add(`${part} power`);
        for (const half of halvesOfALimb) marks.add(`${part} ${half} paralysed`);
      }
      const half = halfOf(finding);
      if (half !== null) marks.add(`${part} ${half} paralysed`);
    }
  }
  return marks;
}

const isLimp = ({ item, value }: Finding): boolean => item.probe.kind === 'tone' && value === 'reduced';

/** Movements of the buttock and the back of the thigh: sacral, so that their weakness says nothing of the front of the thigh. */
const behindTheHip: ReadonlySet<string> = new Set(['hip-abduction', 'hip-extension', 'knee-flexion']);

/** The half of the limb that a weak movement is one of. */
function halfOf({ item: { probe } }: Finding): LimbHalf | null {
  if (probe.kind === 'movement' && behindTheHip.has(probe.movement)) return null;
  const group = probe.kind === 'movement' ? movementTable.get(probe.movement)?.group : undefined;
  return group === undefined ? null : nearOnLimbs.has(group) ? 'near' : 'far';
}

function aspectOf({ item, modality }: Finding): Aspect | null {
  if (item.probe.kind === 'movement') return 'power';
  if (modality === undefined || item.probe.kind !== 'sensation') return null;
  return modality === 'pinprick' || modality === 'temperature'
    ? 'pain'
    : modality === 'light-touch'
      ? null
      : 'position';
}

function partsOf({ item, side, place }: Finding): readonly Part[] {
  const region = regionOf(item.region, place);
  const pair = pairOf(region);
  if (item.section === 'higherFunction' || item.section === 'cranialNerves' || region === 'head')
    return side === 'midline' ? ['head', ...bodySides.map((one): Part => `${one} face`)] : ['head', `${side} face`];
  if (pair === null) return [];
  return side === 'midline' ? bodySides.map((one): Part => `${one} ${pair}`) : [`${side} ${pair}`];
}

function regionOf(own: string, place: Finding['place']): string {
  if (place === undefined) return own;
  const { kind, key } = place;
  if (kind === 'body-part') return bodyPartTable.get(key)?.region ?? own;
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

const limbParts = (['arms', 'legs'] as const).flatMap((pair) => bodySides.map((side): Part => `${side} ${pair}`));
const hangingMarks = limbParts.flatMap((part) => halvesOfALimb.map((half): Mark => `${part} ${half} paralysed`));
const aspectMarks = (some: readonly Aspect[]): readonly Mark[] =>
  limbParts.flatMap((part) => some.map((aspect): Mark => `${part} ${aspect}`));

/** Every mark has one of 32 bits: the parts, the sphincters, the aspects of each limb, and which halves of it are paralysed. */
const bitOf: ReadonlyMap<Mark, number> = new Map(
  [...allParts, 'sphincters' as const, ...aspectMarks(aspects), ...hangingMarks].map((mark, place) => [
    mark,
    1 << place,
  ]),
);

/**
 * Marks that should have been found if a lesion troubled them: of the parts that are seldom examined, and of the aspects of
 * a limb, only the other half of one that was found wrong, because who describes one half has looked at both.
 */
function lookedAt(troubled: ReadonlySet<Mark>, teller: Teller): ReadonlySet<Mark> {
  const halves = pairs.flatMap((pair) =>
    bodySides
      .filter((side) => !seldomExamined.has(pair) || troubled.has(`${opposite(side)} ${pair}`))
      .map((side): Part => `${side} ${pair}`),
  );
  // Only in a limb that is troubled somehow; of another the whole limb counts already.
  const spared = (['arms', 'legs'] as const).flatMap((pair) =>
    bodySides
      .filter((side) => troubled.has(`${side} ${pair}`))
      .flatMap((side) =>
        aspects
          // Weakness is told of first: who tells of a numb limb alone has a strong one.
          .filter(
            (aspect) =>
              aspect === 'power' || (teller === 'able' && troubled.has(`${opposite(side)} ${pair} ${aspect}`)),
          )
          .map((aspect): Mark => `${side} ${pair} ${aspect}`),
      ),
  );
  const weak = limbParts
    .filter((part) => troubled.has(`${part} power`))
    .flatMap((part) => halvesOfALimb.map((half): Mark => `${part} ${half} paralysed`));
  const told: readonly Mark[] = teller === 'able' ? ['head', 'sphincters'] : ['head'];
  return new Set<Mark>([...told, ...halves, ...spared, ...weak]);
}

/**
 * Whether a complaint can be looked for. Nobody complains out of coma, and limbs that are not moved at will are not tested for
 * power and feeling; small children cannot tell what they feel, though how they move is seen.
 */
type Teller = 'able' | 'small-child' | 'unconscious';

const tellsFromYears = 3;
const infantToYears = 1;

function tellerOf(exam: Pick<Exam, 'findings' | 'person'>): Teller {
  if (isUnconscious(exam)) return 'unconscious';
  return (exam.person.ageYears ?? tellsFromYears) < tellsFromYears ? 'small-child' : 'able';
}

/** Halves whose other half was found wrong. */
function besides(troubled: ReadonlySet<Mark>): readonly Part[] {
  return pairs.flatMap((pair) =>
    bodySides.filter((side) => troubled.has(`${opposite(side)} ${pair}`)).map((side): Part => `${side} ${pair}`),
  );
}

const partBits = (1 << allParts.length) - 1;
const sphincterBit = bitOf.get('sphincters') ?? 0;
const paralysedBits = bits(hangingMarks);
const feelingBits = bits(aspectMarks(['pain', 'position']));

const armBits = bits(['left arms', 'right arms']);
const armAspectBits = bits(bodySides.flatMap((side) => aspects.map((aspect): Mark => `${side} arms ${aspect}`)));

/** Whether steps were seen to sway with eyes or speech, and nothing is recorded of how any limb aims. */
function isSwayingUntested(findings: readonly Finding[]): boolean {
  return (
    findings.some(({ abnormal, item }) => abnormal && swayingGaits.has(item.key)) &&
    findings.some(({ abnormal, item }) => abnormal && eyesAndSpeech.has(item.key)) &&
    !findings.some(({ item, value }) => item.section === 'coordination' && value !== null)
  );
}

/** Odds of a lesion that paralyses half a limb, where only the other half of the limb was found weak. Judged. */
const otherHalfOnly = 0.3;

/**
 * Odds of a lesion that takes the feeling of a limb, where limbs are weak and nobody found or told of any loss of feeling:
 * numbness and tingling are told of early. Judged.
 */
const numbnessUntold = 0.5;
/** The same where the patient was asked about numbness or tingling and has none. Judged. */
const numbnessDenied = 0.15;

/** Odds of a lesion that stops the bladder, where nothing about the pelvic floor was found wrong. Judged. */
const silentSphincters = 0.45;

/** Sections that are examined by asking: who moves, feels and aims on command is awake. */
const askedFor: ReadonlySet<SectionKey> = new Set<SectionKey>(['power', 'sensation', 'coordination']);
/** Movements that somebody makes at will, at least with gravity out of the way. */
const madeAtWill: ReadonlySet<unknown> = new Set(['2', '3', '4-', '4', '4+', '5']);

/** Signs of a clouded mind, or of its being clear, that leave nothing to be guessed of. */
const saysOfTheMind: ReadonlySet<Faculty> = new Set<Faculty>(['consciousness', 'attention', 'orientation']);

/** Weight of this silence, as a power of the chance that the person would be awake. Judged. */
const silenceOfSleep = 0.5;

/** Whether limbs were examined on command while nothing was said of wakefulness, so that it was kept as far as anybody knows. */
function isTakenForAwake({ findings, history }: Pick<Exam, 'findings' | 'history'>): boolean {
  if (tells(history, sleepTold)) return false;
  const isSaid = findings.some(
    ({ item: { probe, key } }) =>
      unconscious.has(key) || (probe.kind === 'faculty' && saysOfTheMind.has(probe.faculty)),
  );
  if (isSaid) return false;
  return findings.some(({ item, value }) =>
    item.section === 'power' ? madeAtWill.has(value) : value !== null && askedFor.has(item.section),
  );
}

const sleepTold: ReadonlySet<string> = new Set(['loss-of-consciousness', 'seizure', 'ongoing-seizure']);

/** Complaints of every hypothesis, worked out once, one bit for each mark. */
export class Coverage {
  readonly complaints: Uint32Array;
  /** [H] Natural log of the odds that whoever has the lesion is awake, tempered; null until it is asked for. */
  private logAwake: Float64Array | null = null;
  private readonly hypotheses: readonly Hypothesis[];

  constructor(hypotheses: readonly Hypothesis[], known?: Uint32Array) {
    this.hypotheses = hypotheses;
    this.complaints = known ?? Uint32Array.from(hypotheses, (hypothesis) => bits(complaints(hypothesis)));
  }

  /** Adds to [H] weights the natural log of the odds of each hypothesis, by how much of what it would trouble is troubled. */
  discount(
    logWeights: Float64Array,
    { findings, history, person }: Pick<Exam, 'findings' | 'history' | 'person'>,
  ): void {
    const teller = tellerOf({ findings, person });
    const isWeakInfant = (person.ageYears ?? tellsFromYears) < infantToYears && tells(history, weaknessTold);
    const troubled = troubledMarks(findings, isWeakInfant);
    const untroubled = bits(lookedAt(troubled, teller)) & ~bits(troubled) & ~bits(toldOf(history, troubled, teller));
    if (isTakenForAwake({ findings, history })) this.discountSleep(logWeights);
    if (teller === 'able' && isWeakAlone(findings, history))
      this.discountNumbing(logWeights, isNumbnessDenied(history) ? numbnessDenied : numbnessUntold);
    if (untroubled === 0) return;
    const beside = bits(besides(troubled)) & partBits;
    const areArmsUntested = teller === 'able' && isSwayingUntested(findings);
    // Few combinations of marks occur, so what each costs is worked out once.
    const odds = new Map<number, number>();
    for (let index = 0; index < logWeights.length; index += 1) {
      const complaints = this.complaints[index] ?? 0;
      const missed = complaints & untroubled;
      if (missed === 0) continue;
      const isUntested =
        areArmsUntested && (complaints & armAspectBits) === 0 && (missed & ~beside & armBits) === armBits;
      const counted = isUntested ? missed & ~armBits : missed;
      const cost = odds.get(counted) ?? logOdds(counted, beside, teller);
      odds.set(counted, cost);
      logWeights[index] = (logWeights[index] ?? 0) + cost + (isUntested ? Math.log(clumsinessUntested) : 0);
    }
  }

  private discountSleep(logWeights: Float64Array): void {
    this.logAwake ??= Float64Array.from(
      this.hypotheses,
      (hypothesis) =>
        silenceOfSleep * Math.log(1 - Math.min(0.95, facultyChance(hypothesis, 'consciousness', 'midline'))),
    );
    for (let index = 0; index < logWeights.length; index += 1)
      logWeights[index] = (logWeights[index] ?? 0) + (this.logAwake[index] ?? 0);
  }

  private discountNumbing(logWeights: Float64Array, odds: number): void {
    for (let index = 0; index < logWeights.length; index += 1)
      if (((this.complaints[index] ?? 0) & feelingBits) !== 0)
        logWeights[index] = (logWeights[index] ?? 0) + Math.log(odds);
  }
}

const toldOfLimbs: Readonly<Record<'arms' | 'legs', ReadonlySet<string>>> = {
  arms: new Set(['arm-weakness']),
  legs: new Set(['leg-weakness', 'difficulty-walking', 'difficulty-with-stairs', 'ascending-weakness', 'burning-feet']),
};
/** The same of pain and of ways to be clumsy, which say where the trouble is as long as nobody has found it. */
const alsoToldOfLimbs: Readonly<Record<'arms' | 'legs', ReadonlySet<string>>> = {
  arms: new Set([
    ...['arm-pain', 'hand-pain', 'radicular-arm-pain', 'shoulder-pain', 'clumsiness', 'nocturnal-hand-paraesthesiae'],
    // Who tells of a tremor and says no more tells of the hands.
    'tremor',
  ]),
  legs: new Set([
    ...['leg-pain', 'foot-pain', 'thigh-pain', 'radicular-leg-pain', 'bilateral-leg-pain', 'neurogenic-claudication'],
  ]),
};
/** Who sways is troubled in the legs, unless the ear or the head sways. */
const sways: ReadonlySet<string> = new Set(['unsteadiness', 'falls']);
const swaysByTheHead: ReadonlySet<string> = new Set([
  ...['vertigo', 'positional-vertigo', 'continuous-vertigo', 'dizziness', 'tinnitus', 'hearing-loss', 'oscillopsia'],
  ...['headache', 'new-headache', 'light-headed-on-standing', 'syncope', 'loss-of-consciousness'],
]);
/** What tells of limbs that are out of order though the head may sway too. */
const clumsyWithIt: ReadonlySet<string> = new Set(['clumsiness']);
/** Complaints that are of limbs, and of no limb that is named. */
const toldOfSomeLimb: ReadonlySet<string> = new Set(['numbness', 'paraesthesiae', 'weakness']);
const weaknessTold: ReadonlySet<string> = new Set(['weakness', 'fatigable-weakness', 'loss-of-skills']);
const toldOfTheHead: ReadonlySet<string> = new Set([
  'diplopia',
  'drooping-eyelids',
  'dysphagia',
  'slurred-speech',
  'voice-change',
  'visual-loss',
  'hearing-loss',
]);

/** Parts that the patient told of, where the examination says nothing of them: a lesion that troubles them is no worse for it. */
function toldOf(history: Exam['history'], found: ReadonlySet<Mark>, teller: Teller): readonly Mark[] {
  // A parent says that the child is weak, and not of which limb.
  const isWeakChild = teller === 'small-child' && tells(history, weaknessTold);
  const isUnsteady = tells(history, sways) && (!tells(history, swaysByTheHead) || tells(history, clumsyWithIt));
  const tellsOf = (pair: 'arms' | 'legs'): boolean =>
    tells(history, toldOfLimbs[pair]) ||
    (found.size === 0 && (tells(history, alsoToldOfLimbs[pair]) || (pair === 'legs' && isUnsteady)));
  const isOfSomeLimb = found.size === 0 && !tellsOf('arms') && !tellsOf('legs') && tells(history, toldOfSomeLimb);
  const limbs = (['arms', 'legs'] as const).flatMap((pair) => {
    const halves = bodySides.map((side): Part => `${side} ${pair}`);
    const isTold = isWeakChild || isOfSomeLimb || tellsOf(pair);
    return isTold && !halves.some((half) => found.has(half)) ? halves : [];
  });
  return [...(tells(history, toldOfTheHead) ? ['head' as const] : []), ...limbs];
}

/** Whether limbs are weak and no loss of feeling was found or told of. */
function isWeakAlone(findings: readonly Finding[], history: Exam['history']): boolean {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  return (
    wrong.some(({ item }) => item.probe.kind === 'movement') &&
    !wrong.some(({ modality }) => modality !== undefined) &&
    !tells(history, feelingLost)
  );
}

function isNumbnessDenied(history: Exam['history']): boolean {
  return history.some(({ key, present }) => !present && feelingLost.has(key) && key !== 'saddle-numbness');
}

const feelingLost: ReadonlySet<string> = new Set(['numbness', 'paraesthesiae', 'saddle-numbness']);

/** The bits of both halves of arms and of legs. */
const bothLimbs = (['arms', 'legs'] as const).map((pair) => bits(bodySides.map((side): Part => `${side} ${pair}`)));

function logOdds(missed: number, beside: number, teller: Teller): number {
  const unseen = missed & partBits & ~beside;
  const asPairs = bothLimbs.filter((both) => (unseen & both) === both).length;
  return (
    ones(missed & beside) * Math.log(uncomplainedOfBeside) +
    (teller === 'unconscious'
      ? (ones(unseen) - 2 * asPairs) * Math.log(lopsidedInComa)
      : (ones(unseen) - asPairs) * Math.log(uncomplainedOf) + asPairs * Math.log(uncomplainedOfEither)) +
    ones(missed & sphincterBit) * Math.log(silentSphincters) +
    ones(missed & paralysedBits) * Math.log(otherHalfOnly) +
    ones(missed & ~partBits & ~sphincterBit & ~paralysedBits) * Math.log(aspectSpared)
  );
}

function bits(marks: Iterable<Mark>): number {
  let mask = 0;
  for (const mark of marks) mask |= bitOf.get(mark) ?? 0;
  return mask;
}

function ones(mask: number): number {
  let count = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}
