import { type Place, places } from '../../anatomy/places.ts';
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

const nervous = ['numbness', 'paraesthesiae', 'neuropathic-pain'];

/** What complaints of one part say together of the nerves that end there. Judged. */
const patterns: readonly {
  readonly groups: readonly (readonly string[])[];
  readonly rows: readonly (readonly [applies: Applies, factor: number])[];
  readonly because: string;
}[] = [
  {
    groups: [['foot-pain'], [...nervous, 'burning-feet']],
    rows: [
      [sites('tibial-nerve-tarsal-tunnel'), 5],
      [sites('medial-plantar-nerve', 'lateral-plantar-nerve', 'medial-calcaneal-nerve', 'tibial-nerve-calf'), 2.5],
      [sites('length-dependent-polyneuropathy', 'sensory-polyneuropathy', 'small-fibre-polyneuropathy'), 1.5],
      [({ kind, level }) => kind === 'root' && (level === 'L5' || level === 'S1'), 1.5],
    ],
    because: 'a foot that hurts and tingles has its own nerves, of which the tibial enters through a tight canal',
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
export function toldLimbShifts(told: Told): readonly Shift[] {
  return [...otherLimbShifts(told), ...partShifts(told), ...nervousShifts(told)];
}

function otherLimbShifts(told: Told): readonly Shift[] {
  const [arm, leg] = (['arm', 'leg'] as const).map((limb) => firstTold(told, complaintsOf[limb]));
  if (arm !== undefined && leg !== undefined)
    return [shift(arm, servesOneLimb, ofOneAlone, 'arms and legs are complained of, and it serves one limb')];
  const because = 'it does not serve the limb that is complained of';
  if (arm !== undefined) return [shift(arm, serves.leg, ofTheOther, because)];
  return leg === undefined ? [] : [shift(leg, serves.arm, ofTheOther, because)];
}

function partShifts(told: Told): readonly Shift[] {
  return patterns.flatMap(({ groups, rows, because }) => {
    const first = toldOfEach(told, groups);
    return first === undefined ? [] : rows.map(([applies, factor]) => shift(first, applies, factor, because));
  });
}

function nervousShifts(told: Told): readonly Shift[] {
  const first = firstTold(told, [...nervous, 'burning-feet', 'muscle-thinning']);
  const isOfALimb = firstTold(told, [...complaintsOf.arm, ...complaintsOf.leg]) !== undefined;
  const because = 'muscles and joints that hurt neither tingle nor waste';
  return first === undefined || !isOfALimb ? [] : [shift(first, kinds('none'), noLesion, because)];
}

const shift = shiftsOfTold('told-limb');
