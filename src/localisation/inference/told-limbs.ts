import { type Place, places } from '../../anatomy/places.ts';
import type { Exam } from '../../exam/exam.ts';
import { isBodySide } from '../../kernel/side.ts';
import { brachialPlexusSites, lumbosacralPlexusSites } from '../plexus-sites.ts';
import { anyOf, cervicalRoots, kinds, lumbarRoots, sites } from './history/history-weight.ts';
import type { Applies, Shift } from './shift.ts';
import { firstTold, shiftsOfTold, type Told, toldOfEach } from './told.ts';

type Limb = 'arm' | 'leg';

const complaintsOf: Readonly<Record<Limb, readonly string[]>> = {
  arm: [
    ...['arm-pain', 'hand-pain', 'radicular-arm-pain', 'shoulder-pain', 'arm-weakness', 'clumsiness'],
    'nocturnal-hand-paraesthesiae',
  ],
  leg: [
    ...['leg-pain', 'foot-pain', 'thigh-pain', 'radicular-leg-pain', 'bilateral-leg-pain', 'leg-weakness'],
    ...['burning-feet', 'leg-crossing', 'prolonged-squatting'],
  ],
};
const plexusOf: Readonly<Record<Limb, ReadonlySet<string>>> = {
  arm: new Set(brachialPlexusSites),
  leg: new Set(lumbosacralPlexusSites),
};
/** Nerves of the shoulder that leave the roots above the plexus. */
const fromTheRoots: ReadonlySet<string> = new Set(['dorsal-scapular-nerve', 'long-thoracic-nerve']);
const wiring: Readonly<Record<string, Place | undefined>> = places;

/** The plexuses through which the fibres of a place have come, for those that serve a limb. */
function limbOf(key: string): Limb | null {
  if (fromTheRoots.has(key)) return 'arm';
  for (const limb of ['arm', 'leg'] as const) if (plexusOf[limb].has(key)) return limb;
  const proximal = wiring[key]?.proximal ?? null;
  if (proximal === null) return null;
  const [first] = typeof proximal === 'string' ? [proximal] : Object.values(proximal);
  return first === undefined ? null : limbOf(first);
}

const reached = [...brachialPlexusSites, ...lumbosacralPlexusSites, ...Object.keys(places)];
const nervesOf: Readonly<Record<Limb, ReadonlySet<string>>> = {
  arm: new Set(reached.filter((key) => limbOf(key) === 'arm')),
  leg: new Set(reached.filter((key) => limbOf(key) === 'leg')),
};
/** Roots, plexus and nerves that serve one limb alone. */
export const serves: Readonly<Record<Limb, Applies>> = {
  arm: (site) => nervesOf.arm.has(site.key) || cervicalRoots(site),
  leg: (site) => nervesOf.leg.has(site.key) || lumbarRoots(site),
};
const servesOneLimb = anyOf(serves.arm, serves.leg);

/** Odds of what serves the other pair of limbs than the one complained of, and of what serves one limb where both are. Judged. */
const ofTheOther = 0.15;
const ofOneAlone = 0.3;
/** Odds of half of the cord where limbs of both halves are complained of, as far as anybody said. Judged. */
const ofOneHalf = 0.6;
const halfOfTheCord = sites('spinal-cord-hemisection');

const nervous = ['numbness', 'paraesthesiae', 'neuropathic-pain'];

type Row = readonly [applies: Applies, factor: number];

const ofOneFoot: readonly Row[] = [
  [sites('tibial-nerve-tarsal-tunnel'), 5],
  [sites('medial-plantar-nerve', 'lateral-plantar-nerve', 'medial-calcaneal-nerve', 'tibial-nerve-calf'), 2.5],
  [sites('length-dependent-polyneuropathy', 'sensory-polyneuropathy', 'small-fibre-polyneuropathy'), 1.5],
  [({ kind, level }) => kind === 'root' && (level === 'L5' || level === 'S1'), 1.5],
];
const onesFoot = 'a foot that hurts and tingles has its own nerves, of which the tibial enters through a tight canal';

/** What complaints of one part say together of the nerves that end there. Judged. */
const patterns: readonly {
  readonly groups: readonly (readonly string[])[];
  /** Where it holds for one foot, or for what nobody said is of one alone. */
  readonly of?: 'one-side' | 'no-side';
  /** What speaks against it, when told. */
  readonly butNot?: readonly string[];
  readonly rows: readonly Row[];
  readonly because: string;
}[] = [
  {
    // Of people past fifty 5 to 8 of 100 have a polyneuropathy, and hardly any a tarsal tunnel (Hanewinckel 2016, from memory).
    groups: [['foot-pain'], ['numbness', 'paraesthesiae', 'burning-feet']],
    of: 'no-side',
    rows: [
      [sites('length-dependent-polyneuropathy', 'sensory-polyneuropathy', 'small-fibre-polyneuropathy'), 3],
      [sites('tibial-nerve-tarsal-tunnel'), 3],
      [sites('medial-plantar-nerve', 'lateral-plantar-nerve', 'medial-calcaneal-nerve', 'tibial-nerve-calf'), 1.5],
      [({ kind, level }) => kind === 'root' && (level === 'L5' || level === 'S1'), 1.5],
    ],
    because: 'feet that hurt and tingle, and nobody says that one does, have lost the ends of the longest axons',
  },
  {
    groups: [['foot-pain'], ['neuropathic-pain']],
    butNot: ['numbness', 'paraesthesiae', 'burning-feet'],
    rows: ofOneFoot,
    because: onesFoot,
  },
  {
    groups: [['foot-pain'], ['numbness', 'paraesthesiae', 'burning-feet']],
    of: 'one-side',
    rows: ofOneFoot,
    because: onesFoot,
  },
  {
    groups: [['leg-weakness']],
    of: 'no-side',
    butNot: ['leg-pain', 'radicular-leg-pain', 'thigh-pain', 'foot-pain', 'leg-crossing', 'prolonged-squatting'],
    rows: [
      [kinds('nerve', 'plexus', 'root'), 0.6],
      [halfOfTheCord, ofOneHalf],
    ],
    because: 'legs are said to be weak, not one of them, and nothing hurts in one',
  },
  {
    groups: [['muscle-thinning'], ['weakness', 'arm-weakness', 'leg-weakness', 'twitching']],
    rows: [[kinds('none'), 0.4]],
    because: 'muscle that is weak and thin has lost its nerve or is ill itself',
  },
  {
    groups: [['thigh-pain'], nervous],
    rows: [
      [sites('lateral-femoral-cutaneous-nerve'), 6],
      [({ kind, level }) => kind === 'root' && (level === 'L2' || level === 'L3'), 2.5],
      [sites('lumbar-plexus', 'femoral-nerve-pelvis'), 1.5],
    ],
    because: 'a thigh that burns is that of its skin nerve, or of an upper lumbar root',
  },
  {
    groups: [['leg-pain'], nervous],
    rows: [
      [({ kind, level }) => kind === 'root' && (level === 'L5' || level === 'S1'), 4],
      [sites('common-fibular-nerve', 'sciatic-nerve'), 2],
    ],
    because: 'a leg that hurts and tingles is most often that of a low lumbar root',
  },
  {
    groups: [['arm-pain'], nervous],
    rows: [
      [({ kind, level }) => kind === 'root' && (level === 'C6' || level === 'C7'), 2.5],
      [sites('ulnar-nerve-elbow', 'median-nerve-wrist'), 2],
      [sites('brachial-plexus', 'lower-trunk'), 1.5],
    ],
    because: 'an arm that hurts and tingles is that of a root of the neck, or of a nerve at elbow or wrist',
  },
  {
    groups: [['arm-pain', 'shoulder-pain'], nervous, ['clumsiness']],
    rows: [[sites('ulnar-nerve-elbow', 'lower-trunk'), 2]],
    because:
      'a hand that is clumsy as well has lost muscles of its own, which the ulnar nerve and the lower trunk serve',
  },
  {
    groups: [['shoulder-pain', 'arm-pain'], ['arm-weakness']],
    rows: [
      [sites('brachial-plexus', 'upper-trunk'), 2.5],
      [({ kind, level }) => kind === 'root' && (level === 'C5' || level === 'C6' || level === 'C7'), 1.5],
    ],
    because: 'an arm that hurts and then fails is that of the plexus or of a root',
  },
  {
    groups: [['prolonged-immobility'], ['leg-pain', 'numbness'], ['leg-weakness', 'difficulty-walking', 'leg-pain']],
    rows: [
      [sites('sciatic-nerve'), 3],
      [sites('lumbosacral-plexus', 'sacral-plexus'), 2.5],
    ],
    because: 'a leg that hurts after its owner lay still for hours was pressed in the buttock oftener than at the knee',
  },
];

/** Complaints that muscles and joints do not make: odds of no lesion. Judged. */
const noLesion = 0.5;

/** Which limb is complained of, and how, before anybody has found anything. */
export function toldLimbShifts(told: Told, findings: Exam['findings']): readonly Shift[] {
  return [...otherLimbShifts(told), ...partShifts(told), ...nervousShifts(told), ...examinedLimbShifts(told, findings)];
}

function otherLimbShifts(told: Told): readonly Shift[] {
  const [arm, leg] = (['arm', 'leg'] as const).map((limb) => firstTold(told, complaintsOf[limb]));
  if (arm !== undefined && leg !== undefined) {
    const isOfOneHalf = [...told.values()].some(({ side }) => isBodySide(side));
    return [
      shift(arm, servesOneLimb, ofOneAlone, 'arms and legs are complained of, and it serves one limb'),
      ...(isOfOneHalf
        ? []
        : [shift(arm, halfOfTheCord, ofOneHalf, 'arms and legs are complained of, and not those of one half')]),
    ];
  }
  const because = 'it does not serve the limb that is complained of';
  if (arm !== undefined) return [shift(arm, serves.leg, ofTheOther, because)];
  return leg === undefined ? [] : [shift(leg, serves.arm, ofTheOther, because)];
}

/**
 * Nobody says which limb tingles, but all that was tried, in vain, is of the arms or of the legs: who looks for a sign looks where
 * the complaint is. Judged.
 */
const lookedAt = { other: 0.3, narrows: 2.5 } as const;
const narrowsOf: Readonly<Record<Limb, Applies>> = {
  arm: sites('median-nerve-wrist', 'ulnar-nerve-elbow', 'ulnar-nerve-wrist'),
  leg: sites('tibial-nerve-tarsal-tunnel', 'common-fibular-nerve'),
};

function examinedLimbShifts(told: Told, findings: Exam['findings']): readonly Shift[] {
  const first = firstTold(told, nervous);
  const tests = findings.filter(({ item, value }) => item.section === 'specialTests' && value !== null);
  if (first === undefined || firstTold(told, [...complaintsOf.arm, ...complaintsOf.leg]) !== undefined) return [];
  if (tests.length === 0 || tests.length < findings.length) return [];
  const limb = (['arm', 'leg'] as const).find((one) => tests.every(({ item }) => item.region === regionOf[one]));
  if (limb === undefined) return [];
  const because = 'the complaint is where somebody looked for its signs';
  const other = limb === 'arm' ? 'leg' : 'arm';
  return [
    shift(first, serves[other], lookedAt.other, because),
    shift(first, kinds('cauda-equina', 'cord', 'polyneuropathy'), lookedAt.other, because),
    shift(first, narrowsOf[limb], lookedAt.narrows, because),
  ];
}
const regionOf = { arm: 'upper-limbs', leg: 'lower-limbs' } as const;

function partShifts(told: Told): readonly Shift[] {
  return patterns.flatMap(({ groups, of, butNot = [], rows, because }) => {
    const first = firstTold(told, butNot) === undefined ? toldOfEach(told, groups) : undefined;
    return first === undefined || (of !== undefined && (of === 'one-side') !== isOfOneSide(told, groups))
      ? []
      : rows.map(([applies, factor]) => shift(first, applies, factor, because));
  });
}

/** Whether one of these is told of one side alone. */
const isOfOneSide = (told: Told, groups: readonly (readonly string[])[]): boolean =>
  groups.flat().some((key) => isBodySide(told.get(key)?.side));

function nervousShifts(told: Told): readonly Shift[] {
  const first = firstTold(told, [...nervous, 'burning-feet', 'muscle-thinning']);
  const isOfALimb = firstTold(told, [...complaintsOf.arm, ...complaintsOf.leg]) !== undefined;
  const because = 'muscles and joints that hurt neither tingle nor waste';
  return first === undefined || !isOfALimb ? [] : [shift(first, kinds('none'), noLesion, because)];
}

const shift = shiftsOfTold('told-limb');
