import { pathTo } from '../../anatomy/places.ts';
import type { Faculty } from '../../anatomy/probe.ts';
import { isSegment, type Segment, segmentIndex } from '../../anatomy/segments.ts';
import { skinPlace, territoryKeys } from '../../anatomy/skin-places.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { type BodySide, bodySides, opposite } from '../../kernel/side.ts';
import { acuteLimbShifts } from './acute-limb-patterns.ts';
import { ageingShifts } from './ageing-pattern.ts';
import { centralCordShifts } from './central-cord-injury.ts';
import { changedConductShifts } from './changed-conduct.ts';
import { comaPatternShifts } from './coma-patterns.ts';
import { convulsionShifts } from './convulsion-pattern.ts';
import { crossedShift } from './crossed-signs.ts';
import { handPatternShifts } from './hand-patterns.ts';
import { headPatternShifts } from './head-patterns.ts';
import { anyOf, kinds, sites } from './history/history-weight.ts';
import { infantPatternShifts } from './infant-patterns.ts';
import { legPatternShifts } from './leg-patterns.ts';
import { lidsAndThroatShifts, pupilsAndLidsShifts } from './lids-and-throat.ts';
import { limbPatternShifts, shiftBy } from './limb-patterns.ts';
import { massShifts } from './mass-near-nerve.ts';
import { nervePatternShifts } from './nerve-patterns.ts';
import { neuropathicJointShifts } from './neuropathic-joint.ts';
import { bothShouldersThinShifts, painfulShoulderShifts } from './painful-shoulder.ts';
import { porphyricShifts } from './porphyric-pattern.ts';
import { reachPatternShifts } from './reach-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { generalSigns } from './signs/general-signs.ts';
import { headSigns } from './signs/head-signs.ts';
import { recordedSigns } from './signs/recorded-signs.ts';
import { onEachSide, type SignWeight } from './signs/sign-weight.ts';
import { slackBellyShifts } from './slack-belly.ts';
import { stiffNeckShift } from './stiff-neck.ts';
import { stockingEdgeShifts } from './stocking-edge.ts';
import { struckLimbShifts } from './struck-limb.ts';
import { tetanyShifts } from './tetany-pattern.ts';
import { tells } from './told.ts';
import { tractsUnfeltShifts } from './tracts-unfelt.ts';
import { legTremorShifts, unseenTremorShifts } from './tremor-patterns.ts';
import { vertigoPatternShifts } from './vertigo-patterns.ts';
import { youngAtaxiaShifts } from './young-ataxia.ts';

export const signWeightRows: readonly SignWeight[] = [...recordedSigns, ...headSigns, ...generalSigns];

const byKey = new Map<string, SignWeight[]>();
for (const weight of signWeightRows) byKey.set(weight.key, [...(byKey.get(weight.key) ?? []), weight]);

/**
 * Who names a level on the trunk has gone up the trunk and found the skin sound above it: that is said of a cord, not of
 * the territory of a plexus or a nerve of the leg, nor of nerves that fail from their far end. Odds judged.
 */
const levelOnTheTrunk = { top: segmentIndex('T2'), bottom: segmentIndex('T12'), limbNerves: 0.4, above: 0.15 } as const;
const aboveTheNeck: Applies = ({ key, kind }) =>
  kind === 'hemisphere' || (kind === 'brainstem' && key !== 'foramen-magnum');
const limbNerves = anyOf(kinds('nerve', 'plexus', 'polyradiculoneuropathy', 'polyneuropathy'), sites('foramen-magnum'));

function levelShift({ findings }: Exam): readonly Shift[] {
  const levels = findings.filter(({ abnormal, place }) => {
    if (!abnormal || place?.kind !== 'level-below' || !isSegment(place.key)) return false;
    const level = segmentIndex(place.key);
    return level >= levelOnTheTrunk.top && level <= levelOnTheTrunk.bottom;
  });
  const [named] = levels;
  if (named === undefined) return [];
  const isOfBothHalves = new Set(levels.map(({ side }) => side)).size > 1;
  return [
    ...(isOfBothHalves
      ? [
          shiftBy(named, {
            applies: aboveTheNeck,
            factor: levelOnTheTrunk.above,
            because: 'a level on both halves of the trunk is that of a cord',
          }),
        ]
      : []),
    shiftBy(named, {
      applies: limbNerves,
      factor: levelOnTheTrunk.limbNerves,
      because: 'a level on the trunk is not the edge of nerves of the limbs, and lies far from the foramen magnum',
    }),
  ];
}

/**
 * Who names the territory of a nerve found the edge of the loss where the territory ends; loss from a root, trunk or plexus
 * runs over it. Odds of the nerve, at any place where its fibres for that skin run. Judged.
 */
const edgeOfTheTerritory = 3;

/** Odds of the nerve of that skin itself, when nothing else is lost that a lesion further up would take with it, or something. Judged. */
const nothingBeside = 5;
const somethingBeside = 1.6;

function territoryShift({ findings }: Exam): readonly Shift[] {
  const lost = findings.filter(
    ({ abnormal, modality, place }) => abnormal && modality !== undefined && place !== undefined,
  );
  const [named] = lost;
  const where = new Set(lost.map(({ place, side }) => `${place?.kind} ${place?.key} ${side}`));
  if (named?.place?.kind !== 'territory' || where.size > 1) return [];
  const applies = nervesTo.get(`${named.place.key} ${named.side}`);
  if (applies === undefined) return [];
  const because = 'loss that ends where the territory of the nerve ends is of that nerve';
  const edge = shiftBy(named, { applies, factor: edgeOfTheTerritory, because });
  const own = ownNerveOf.get(`${named.place.key} ${named.side}`);
  if (own === undefined) return [edge];
  const alone = findings.every(({ abnormal, modality }) => !abnormal || modality !== undefined);
  return [
    edge,
    alone
      ? shiftBy(named, { applies: own, factor: nothingBeside, because: 'all that is lost is what it serves' })
      : shiftBy(named, { applies: own, factor: somethingBeside, because: 'the skin that is lost is its own' }),
  ];
}

/** Nerves through which the fibres of each territory run, by territory and side. */
const nervesTo: ReadonlyMap<string, Applies> = new Map(
  territoryKeys.flatMap((key) => {
    const nerves = new Set<string>(
      (skinPlace('territory', key)?.supplies ?? []).flatMap(({ via, roots }) =>
        (Object.keys(roots) as Segment[]).flatMap((root) => pathTo(via, root)),
      ),
    );
    return bodySides.map((side): [string, Applies] => [
      `${key} ${side}`,
      (site) => site.kind === 'nerve' && site.side === side && nerves.has(site.key),
    ]);
  }),
);

/** The nerve that a territory is named for, by territory and side; none where it is no site of its own. */
const ownNerveOf: ReadonlyMap<string, Applies> = new Map(
  territoryKeys.flatMap((key) => {
    const nerves = new Set(
      (skinPlace('territory', key)?.supplies ?? []).flatMap(({ via }) => (via === null ? [] : [via])),
    );
    const [only] = nerves;
    if (only === undefined || nerves.size > 1) return [];
    return bodySides.map((side): [string, Applies] => [
      `${key} ${side}`,
      (site) => site.side === side && site.key === only,
    ]);
  }),
);

/**
 * Signs of one nerve of face, tongue and larynx that are found on one half alone. A process of junctions, muscles or motor
 * cells takes both halves there in nearly all, even if one is worse. Odds for each such nerve, for two at most. Judged.
 */
const ofOneHalf: ReadonlyMap<string, string> = new Map([
  ['tongue-weakness', 'tongue'],
  ['tongue-wasting', 'tongue'],
  ['vocal-cord-paralysis', 'larynx'],
  ['palatal-weakness', 'palate'],
  ['facial-weakness', 'face'],
]);
/** Nerves of the eye muscles, which a junction imitates one at a time: they count beside one of the others. */
const ofOneEye: ReadonlyMap<string, string> = new Map([
  ['sixth-nerve-palsy', 'sixth'],
  ['third-nerve-palsy', 'third'],
  ['fourth-nerve-palsy', 'fourth'],
  ['ophthalmoplegia', 'several'],
]);
const oneHalf = { junctionAndMuscle: 0.3, motorCells: 0.5, atMost: 2 } as const;
const junctionAndMuscle = kinds('junction', 'muscle');
const motorCells = anyOf(kinds('motor-neuron-system'), sites('bulbar-motor-nuclei'));

function oneHalfShifts({ findings }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const ofFaceAndThroat = onOneHalf(wrong, ofOneHalf);
  const nerves = ofFaceAndThroat.length > 0 ? [...ofFaceAndThroat, ...onOneHalf(wrong, ofOneEye)] : [];
  const because = 'a process of junctions, muscles or motor cells takes both halves of face and throat';
  return nerves
    .slice(0, oneHalf.atMost)
    .flatMap(([finding]) =>
      finding === undefined
        ? []
        : [
            shiftBy(finding, { applies: junctionAndMuscle, factor: oneHalf.junctionAndMuscle, because }),
            shiftBy(finding, { applies: motorCells, factor: oneHalf.motorCells, because }),
          ],
    );
}

/** The findings of each nerve that is wrong on one half alone. */
function onOneHalf(wrong: readonly Finding[], nerveOf: ReadonlyMap<string, string>): readonly (readonly Finding[])[] {
  const byNerve = new Map<string, Finding[]>();
  for (const finding of wrong) {
    const nerve = nerveOf.get(finding.item.key);
    if (nerve !== undefined) byNerve.set(nerve, [...(byNerve.get(nerve) ?? []), finding]);
  }
  return [...byNerve.values()].filter((found) => sideOf(found) !== null);
}

/** A spasm of half the face comes from its irritated nerve and from hardly anything else. Odds judged. */
const spasmOfHalfTheFace = 60;

function spasmShift({ findings }: Exam): readonly Shift[] {
  const spasms = findings.filter(({ abnormal, item }) => abnormal && item.key === 'hemifacial-spasm');
  const [spasm] = spasms;
  if (spasm === undefined) return [];
  const side = sideOf(spasms);
  const applies: Applies = (site) => site.key === 'facial-nerve' && (side === null || site.side === side);
  const because = 'a facial nerve that is irritated makes half of the face twitch, and hardly anything else does';
  return [shiftBy(spasm, { applies, factor: spasmOfHalfTheFace, because })];
}

/**
 * A tremor of one side at rest that is there on holding and grows on aiming, or goes with a clumsy limb, is that of Holmes: the red
 * nucleus or the thalamus, and not the nigra alone. Deuschl 1998, consensus statement (recalled); odds judged.
 */
const restAndAim = { aims: 5, holds: 2, nigra: 0.4 } as const;
const aiming: ReadonlySet<string> = new Set([
  'intention-tremor',
  'finger-nose',
  'finger-chase',
  'heel-shin',
  'rebound',
]);

const pathsOfTheTremor = onEachSide(sites('thalamus', 'midbrain-tegmentum'));

function holmesShift({ findings }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [rest, ...others] = wrong.filter(({ item, side }) => item.key === 'resting-tremor' && side !== 'midline');
  if (rest === undefined || rest.side === 'midline' || others.some(({ side }) => side !== rest.side)) return [];
  const { side } = rest;
  const onIt = wrong.filter((one) => one.side === side);
  const aims = onIt.some(({ item }) => aiming.has(item.key));
  if (!aims && !onIt.some(({ item }) => item.key === 'action-tremor')) return [];
  const applies = pathsOfTheTremor[opposite(side)];
  const because = 'tremor at rest that goes on in movement comes from the paths through red nucleus and thalamus';
  const there = shiftBy(rest, { applies, factor: aims ? restAndAim.aims : restAndAim.holds, because });
  if (!aims) return [there];
  return [there, shiftBy(rest, { applies: sites('akinetic-rigid-syndrome'), factor: restAndAim.nigra, because })];
}

/**
 * Odds of a lesion below the brain in coma, which comes from there only when breathing fails, and in the sleepy or wordless,
 * who may have fallen ill in two places. Judged.
 */
const comaFromBelow = 0.1;
const sleepOrSilenceFromBelow = 0.4;
const sleepOrSilence: ReadonlySet<string> = new Set([
  'drowsiness',
  'mutism',
  'expressive-aphasia',
  'receptive-aphasia',
  'global-aphasia',
  'neglect',
]);
const belowTheBrain = kinds('cord', 'root', 'cauda-equina', 'plexus', 'nerve', 'polyneuropathy', 'muscle');
/** Blocked junctions and inflamed roots leave the mind clear until breathing fails. Odds in the confused; judged. */
const confusedFromTheJunction = 0.6;
const confusion: ReadonlySet<string> = new Set([
  'confusion',
  'inattention',
  'disorientation',
  'hallucinations',
  'coma',
  // Who is silent or wordless and breathes by himself has lost tracts or cortex.
  'mutism',
  'expressive-aphasia',
  'receptive-aphasia',
  'global-aphasia',
]);
const junctionAndRoots = kinds('junction', 'polyradiculoneuropathy');
/** Odds of failing autonomic nerves in the confused: what dries the mouth and widens the pupils then is in the blood. Judged. */
const confusedFromAutonomicNerves = 0.15;

function comaShift({ findings }: Exam): readonly Shift[] {
  const found = findings.filter(({ abnormal }) => abnormal);
  const coma = found.find(({ item }) => item.key === 'coma');
  const because = 'nothing below the brainstem takes away consciousness';
  if (coma !== undefined) return [shiftBy(coma, { applies: belowTheBrain, factor: comaFromBelow, because })];
  const sign = found.find(({ item }) => sleepOrSilence.has(item.key));
  if (sign === undefined) return [];
  return [
    shiftBy(sign, {
      applies: belowTheBrain,
      factor: sleepOrSilenceFromBelow,
      because: 'nothing below the brainstem makes people sleepy or takes away words and attention',
    }),
  ];
}

/** Signs of the frontal lobes and of a mind that fails, which go with no lesion of a cord, root or nerve. */
const ofTheMind: ReadonlySet<string> = new Set([
  'inattention',
  'confusion',
  'disorientation',
  'disinhibition',
  'apathy',
  'executive-dysfunction',
  'frontal-release-signs',
  'grasp-reflex',
  'memory-impairment',
  'amnesia',
  'hallucinations',
]);
/** Odds of cord, roots and single nerves beside one such sign, which may be older, and beside two or more. Judged. */
const mindBeside = { one: 0.75, several: 0.4 } as const;
/** Lack of vitamin B12 dulls the mind as it takes the columns. */
const outsideTheMind: Applies = (site) =>
  kinds('cord', 'root', 'cauda-equina', 'plexus', 'nerve')(site) && site.key !== 'spinal-cord-posterolateral';

function mindShift({ findings }: Exam): readonly Shift[] {
  const signs = findings.filter(({ abnormal, item }) => abnormal && ofTheMind.has(item.key));
  const [first] = signs;
  if (first === undefined) return [];
  const kindsOfSign = new Set(signs.map(({ item }) => item.key)).size;
  const because = 'no lesion of cord, roots or nerves changes the mind';
  return [
    shiftBy(first, { applies: outsideTheMind, factor: kindsOfSign > 1 ? mindBeside.several : mindBeside.one, because }),
  ];
}

function confusedShift({ findings }: Exam): readonly Shift[] {
  const confused = findings.find(({ abnormal, item }) => abnormal && confusion.has(item.key));
  if (confused === undefined) return [];
  const because = 'what blocks junctions or inflames roots leaves the mind clear';
  const ofTheBlood =
    'who is confused with dry mouth and wide pupils has something in the blood that blocks brain and nerves alike';
  return [
    shiftBy(confused, { applies: junctionAndRoots, factor: confusedFromTheJunction, because }),
    shiftBy(confused, {
      applies: sites('autonomic-neuropathy'),
      factor: confusedFromAutonomicNerves,
      because: ofTheBlood,
    }),
  ];
}

/**
 * Sites that nobody names without one of a few signs, the functions that these report on, and the odds without any of them.
 * Each is the definition of the syndrome (common practice); odds judged.
 */
const hallmarks: readonly {
  readonly applies: Applies;
  readonly functions: ReadonlySet<Faculty>;
  readonly without: number;
  readonly because: string;
}[] = [
  {
    applies: sites('akinetic-rigid-syndrome'),
    functions: new Set(['bradykinesia', 'axial-bradykinesia', 'rigidity', 'rest-tremor', 'gait-initiation']),
    without: 0.25,
    because: 'nothing slow, stiff or trembling at rest was found',
  },
  {
    applies: sites('medial-longitudinal-fasciculus'),
    functions: new Set(['internuclear']),
    without: 0.25,
    because: 'no eye fails to turn in on looking across',
  },
  {
    applies: sites('cerebellar-degeneration'),
    functions: new Set(['limb-coordination', 'trunk-coordination', 'nystagmus-gaze-evoked', 'downbeat']),
    without: 0.2,
    because: 'neither limbs nor trunk are ataxic, and the eyes are steady',
  },
  {
    applies: sites('oculopharyngeal-myopathy'),
    functions: new Set(['eyelid-elevation', 'swallowing', 'palate']),
    without: 0.3,
    because: 'neither lids nor throat are weak',
  },
  {
    applies: sites('autonomic-neuropathy'),
    functions: new Set([
      'blood-pressure',
      'heart-rate',
      'sweating',
      'gut',
      'sexual',
      'bladder-retention',
      'bowel',
      'pupil-parasympathetic',
    ]),
    without: 0.4,
    because: 'no organ that autonomic fibres serve was found to fail',
  },
  {
    applies: sites('subthalamic-nucleus'),
    functions: new Set(['ballism', 'chorea']),
    without: 0.25,
    because: 'no limb is thrown about',
  },
];

/** Tests of movement that grows smaller as it goes on; other fine movements fail for want of strength or steering as readily. */
const decrement: ReadonlySet<string> = new Set(['finger-tapping', 'foot-tapping']);

function showsOneOf({ abnormal, item: { key, probe }, value }: Finding, functions: ReadonlySet<Faculty>): boolean {
  if (!abnormal) return false;
  if (probe.kind === 'tone') return functions.has('rigidity') && value !== 'spastic' && value !== 'reduced';
  if (probe.kind === 'cerebellar') return functions.has('limb-coordination');
  if (probe.kind === 'upper-motor')
    return (
      probe.orAlso?.some((faculty) => functions.has(faculty) && (faculty !== 'bradykinesia' || decrement.has(key))) ===
      true
    );
  return probe.kind === 'faculty' && [probe.faculty, ...(probe.orAlso ?? [])].some((faculty) => functions.has(faculty));
}

function hallmarkShifts({ findings }: Exam): readonly Shift[] {
  const wrong = findings.find(({ abnormal }) => abnormal);
  if (wrong === undefined) return [];
  return hallmarks
    .filter(({ functions }) => !findings.some((finding) => showsOneOf(finding, functions)))
    .map(({ applies, without, because }) => shiftBy(wrong, { applies, factor: without, because }));
}

/** Signs of movement in excess, which a diffuse process or a disorder without a place shows on both halves. */
const inExcess: ReadonlySet<string> = new Set(['chorea', 'dystonia', 'ballism']);
/**
 * Odds where they keep to arm and leg of one half alone: the lesion lies in the other striatum or near it in most with
 * hemidystonia (Marsden 1985, recalled), and in one half of the brain in most with chorea of one half in later life. Judged.
 */
const movingHalf = { encephalopathy: 0.15, dystonia: 0.3, chorea: 0.7, ofOnePart: 0.5 } as const;

function movingHalfShifts({ findings }: Exam): readonly Shift[] {
  const moving = findings.filter(
    ({ abnormal, item: { probe } }) => abnormal && probe.kind === 'faculty' && inExcess.has(probe.faculty),
  );
  const [first] = moving;
  const places = new Set(moving.map(({ place }) => place?.key));
  if (first === undefined || sideOf(moving) === null) return [];
  const isDystonia = moving.every(({ item: { probe } }) => probe.kind === 'faculty' && probe.faculty === 'dystonia');
  if (places.size < 2) {
    if (!isDystonia) return [];
    const focal = 'dystonia of one part alone comes without a lesion that could be seen';
    return [shiftBy(first, { applies: sites('striatum', 'thalamus'), factor: movingHalf.ofOnePart, because: focal })];
  }
  const because = 'arm and leg of one half alone move unwilled, which a lesion of the other half of the brain makes';
  return [
    shiftBy(first, { applies: encephalopathy, factor: movingHalf.encephalopathy, because }),
    shiftBy(first, {
      applies: sites('hyperkinetic-syndrome'),
      factor: isDystonia ? movingHalf.dystonia : movingHalf.chorea,
      because,
    }),
  ];
}

/** What a cerebellum that fails shows, and nothing else. */
const ofTheCerebellum: ReadonlySet<Faculty> = new Set([
  'limb-coordination',
  'trunk-coordination',
  'speech-cerebellar',
  'speech-articulation',
  'nystagmus-gaze-evoked',
  'nystagmus-central',
  'downbeat',
  'pursuit',
  'saccade-accuracy',
]);
/** Odds of what makes limbs unsteady by lost position sense, where unsteadiness is all that was found and told. Judged. */
const ataxiaByLostSense = 0.4;
const losesPosition = anyOf(
  kinds('ganglion', 'polyradiculoneuropathy', 'polyneuropathy'),
  sites('spinal-cord-posterior', 'spinal-cord-posterolateral'),
);
const toldOfSense: ReadonlySet<string> = new Set(['numbness', 'paraesthesiae', 'weakness', 'worse-in-the-dark']);

function isOfTheCerebellum({ item: { probe } }: Finding): boolean {
  return probe.kind === 'cerebellar' || (probe.kind === 'faculty' && ofTheCerebellum.has(probe.faculty));
}

function ataxiaAloneShift({ findings, history }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const limb = wrong.find(({ item: { probe } }) => probe.kind === 'cerebellar');
  if (limb === undefined || !wrong.every(isOfTheCerebellum)) return [];
  if (tells(history, toldOfSense)) return [];
  const because = 'who is unsteady for want of feeling tells of numbness or shows it, and has lost reflexes';
  return [shiftBy(limb, { applies: losesPosition, factor: ataxiaByLostSense, because })];
}

/** Eyes jerk back into the orbit by the pretectum and by hardly anything else: Brazis, midbrain (recalled). Odds judged. */
const retraction = 3;

function retractionShift({ findings }: Exam): readonly Shift[] {
  const seen = findings.find(({ abnormal, item }) => abnormal && item.key === 'convergence-retraction-nystagmus');
  if (seen === undefined) return [];
  const because = 'hardly anything but the pretectum makes eyes jerk back into the orbit';
  return [shiftBy(seen, { applies: sites('midbrain-dorsal'), factor: retraction, because })];
}

/** Signs of a clouded mind; who was asked about one and shows none of the section has a clear mind. */
const clouding: ReadonlySet<string> = new Set(['confusion', 'inattention', 'disorientation', 'drowsiness']);
/** Odds of a diffuse encephalopathy with a mind that was examined and found clear. Judged. */
const clearMind = 0.3;
const encephalopathy = sites('diffuse-encephalopathy');

function clearMindShift({ findings }: Exam): readonly Shift[] {
  const mind = findings.filter(({ item }) => item.section === 'higherFunction');
  const cleared = mind.filter(({ abnormal, item }) => !abnormal && clouding.has(item.key));
  const [clear] = cleared;
  // Who does not speak, and was looked at twice for it, may be clear for all that.
  const isSilentAlone = cleared.length > 1 && mind.every(({ abnormal, item }) => !abnormal || item.key === 'mutism');
  if (clear === undefined || (mind.some(({ abnormal }) => abnormal) && !isSilentAlone)) return [];
  const because = 'the mind was examined and is clear';
  return [shiftBy(clear, { applies: encephalopathy, factor: clearMind, because })];
}

/** How signs that no pathway decides shift the odds of sites; one that is found in several places counts once. */
export function signShifts(exam: Exam): readonly Shift[] {
  return [
    ...levelShift(exam),
    ...stockingEdgeShifts(exam),
    ...territoryShift(exam),
    ...recordedShifts(exam),
    ...acuteLimbShifts(exam),
    ...limbPatternShifts(exam),
    ...struckLimbShifts(exam),
    ...painfulShoulderShifts(exam),
    ...bothShouldersThinShifts(exam),
    ...reachPatternShifts(exam),
    ...nervePatternShifts(exam),
    ...handPatternShifts(exam),
    ...legPatternShifts(exam),
    ...oneHalfShifts(exam),
    ...crossedShift(exam),
    ...headPatternShifts(exam),
    ...spasmShift(exam),
    ...holmesShift(exam),
    ...comaShift(exam),
    ...comaPatternShifts(exam),
    ...vertigoPatternShifts(exam),
    ...mindShift(exam),
    ...confusedShift(exam),
    ...massShifts(exam),
    ...hallmarkShifts(exam),
    ...retractionShift(exam),
    ...ataxiaAloneShift(exam),
    ...clearMindShift(exam),
    ...movingHalfShifts(exam),
    ...stiffNeckShift(exam),
    ...porphyricShifts(exam),
    ...convulsionShifts(exam),
    ...tetanyShifts(exam),
    ...ageingShifts(exam),
    ...youngAtaxiaShifts(exam),
    ...lidsAndThroatShifts(exam),
    ...pupilsAndLidsShifts(exam),
    ...infantPatternShifts(exam),
    ...neuropathicJointShifts(exam),
    ...slackBellyShifts(exam),
    ...centralCordShifts(exam),
    ...tractsUnfeltShifts(exam),
    ...legTremorShifts(exam),
    ...unseenTremorShifts(exam),
    ...changedConductShifts(exam),
  ];
}

function recordedShifts(exam: Exam): readonly Shift[] {
  const signs = exam.findings.filter(({ abnormal, item }) => abnormal && byKey.has(item.key));
  const counted = new Set<string>();
  return signs.flatMap((finding) => {
    const { key } = finding.item;
    if (counted.has(key)) return [];
    counted.add(key);
    const side = sideOf(signs.filter(({ item }) => item.key === key));
    return (byKey.get(key) ?? []).map(({ applies, present, because, onSide }) =>
      shiftBy(finding, { applies: (side === null ? undefined : onSide?.[side]) ?? applies, factor: present, because }),
    );
  });
}

/** The one side on which a sign was found; null when it is in the midline or on both. */
function sideOf(findings: readonly Finding[]): BodySide | null {
  const [first, ...others] = new Set(findings.map(({ side }) => side));
  return first === undefined || first === 'midline' || others.length > 0 ? null : first;
}
