import { fromMemory, recalled } from '../kernel/cite.ts';
import type { Region } from './body-parts.ts';
import { branch, posteriorForearm } from './cutaneous-branches.ts';
import type { Ontology } from './ontology.ts';
import { type SkinPlace, skinPlaceIn } from './skin.ts';
import type { Supply } from './supply.ts';

/** Everything from the tips up to an edge: the length given is that of the fibres at the edge, the shortest ones in it. */
const upToEdge = (
  label: string,
  region: Region,
  bodyPart: string,
  edgeCm: number,
  supplies: readonly Supply[],
  uberon?: Ontology,
): SkinPlace => skinPlaceIn(region, fromMemory)(label, bodyPart, edgeCm, supplies, uberon);

/** The same branches with their shares scaled to make up one part of a larger patch. */
const part = (share: number, supplies: readonly Supply[]): readonly Supply[] =>
  supplies.map((supply) => ({ ...supply, weight: supply.weight * share }));

const foot = [
  branch('superficial-fibular-nerve-ankle', 0.3),
  branch('deep-fibular-nerve-ankle', 0.05),
  branch('medial-plantar-nerve', 0.25),
  branch('lateral-plantar-nerve', 0.15),
  branch('medial-calcaneal-nerve', 0.1),
  branch('sural-nerve', 0.1),
  branch('saphenous-nerve', 0.05),
];
const shinAndCalf = [
  branch('saphenous-nerve', 0.35),
  branch('lateral-sural-cutaneous-nerve', 0.2),
  branch('superficial-fibular-nerve-ankle', 0.15),
  branch('sural-nerve', 0.3),
];
const thigh = [
  branch('femoral-nerve-groin', 0.35),
  branch('lateral-femoral-cutaneous-nerve', 0.25),
  branch('obturator-nerve', 0.1),
  branch('posterior-femoral-cutaneous-nerve', 0.3),
];
const hand = [
  branch('median-nerve-wrist', 0.35),
  branch('palmar-branch-of-median-nerve', 0.1),
  branch('superficial-branch-of-ulnar-nerve', 0.15),
  branch('palmar-branch-of-ulnar-nerve', 0.05),
  branch('dorsal-branch-of-ulnar-nerve', 0.15),
  branch('superficial-radial-nerve', 0.2),
];
const forearm = [
  branch('lateral-cutaneous-nerve-of-forearm', 0.4),
  branch('medial-cutaneous-nerve-of-forearm', 0.35),
  ...posteriorForearm(0.25),
];
const upperArm = [
  branch('axillary-nerve', 0.35),
  branch('radial-nerve-axilla', 0.3),
  branch('medial-cutaneous-nerve-of-arm', 0.15),
  branch('intercostobrachial-nerve', 0.2),
];

/** Shares of one branch that occurs in several parts become one supply, with the roots averaged by share. */
function together(...parts: readonly (readonly Supply[])[]): readonly Supply[] {
  const merged = new Map<Supply['via'], Supply>();
  for (const supply of parts.flat()) {
    const seen = merged.get(supply.via);
    merged.set(supply.via, seen === undefined ? supply : blend(seen, supply));
  }
  return [...merged.values()];
}

function blend(one: Supply, other: Supply): Supply {
  const weight = one.weight + other.weight;
  const roots = { ...one.roots };
  for (const root of Object.keys(roots) as (keyof typeof roots)[]) {
    roots[root] = ((roots[root] ?? 0) * one.weight) / weight;
  }
  for (const [root, share] of Object.entries(other.roots) as [keyof typeof roots, number][]) {
    roots[root] = (roots[root] ?? 0) + (share * other.weight) / weight;
  }
  return { via: one.via, roots, weight };
}

/** The stockings and gloves of length-dependent loss. */
const endsOfLimbs = {
  'stocking-to-ankle': upToEdge('Foot up to the ankle', 'lower-limbs', 'foot', 88, foot),
  'stocking-to-mid-calf': upToEdge(
    'Foot and leg up to the middle of the calf',
    'lower-limbs',
    'leg-below-knee',
    78,
    together(part(0.7, foot), part(0.3, shinAndCalf)),
  ),
  'stocking-to-knee': upToEdge(
    'Foot and leg up to the knee',
    'lower-limbs',
    'leg-below-knee',
    66,
    together(part(0.5, foot), part(0.5, shinAndCalf)),
  ),
  'stocking-to-thigh': upToEdge(
    'Foot and leg up to the thigh',
    'lower-limbs',
    'thigh',
    48,
    together(part(0.4, foot), part(0.35, shinAndCalf), part(0.25, thigh)),
  ),
  'glove-to-wrist': upToEdge('Hand up to the wrist', 'upper-limbs', 'hand', 64, hand),
  'glove-to-elbow': upToEdge(
    'Hand and forearm up to the elbow',
    'upper-limbs',
    'forearm',
    46,
    together(part(0.6, hand), part(0.4, forearm)),
  ),
} as const satisfies Readonly<Record<string, SkinPlace>>;

/** Keys of the patches that have an edge round the limb. */
export const stockingsAndGloves: ReadonlySet<string> = new Set(Object.keys(endsOfLimbs));

/**
 * Large patches: the stockings and gloves of length-dependent loss, and the whole regions that a summary statement names.
 * Their shares stand for area at the bedside, the foot and the hand counting for more than their size (judged).
 */
export const skinExtents = {
  ...endsOfLimbs,
  'whole-foot': upToEdge('Whole foot', 'lower-limbs', 'foot', 88, foot, {
    code: 'UBERON:0001513',
    display: 'skin of pes',
  }),
  'whole-leg': upToEdge(
    'Whole lower limb',
    'lower-limbs',
    'lower-limb',
    32,
    together(part(0.35, foot), part(0.35, shinAndCalf), part(0.3, thigh)),
    { code: 'UBERON:0002103', display: 'hindlimb' },
  ),
  'whole-hand': upToEdge('Whole hand', 'upper-limbs', 'hand', 64, hand, {
    code: 'UBERON:0001519',
    display: 'skin of manus',
  }),
  'whole-arm': upToEdge(
    'Whole upper limb',
    'upper-limbs',
    'upper-limb',
    20,
    together(part(0.4, hand), part(0.3, forearm), part(0.3, upperArm)),
    { code: 'UBERON:0002102', display: 'forelimb' },
  ),
  'half-face': {
    ...upToEdge('Half of the face', 'head', 'face', 10, [
      branch('ophthalmic-nerve', 0.35),
      branch('maxillary-nerve', 0.35),
      branch('mandibular-nerve', 0.3),
    ]),
    source: recalled('blumenfeld', 'trigeminal nerve, divisions'),
  },
  hemitrunk: upToEdge('Half of the trunk', 'trunk', 'trunk', 30, [
    branch('intercostal-nerves', 0.7),
    branch('dorsal-rami', 0.2),
    branch('supraclavicular-nerves', 0.05, { C3: 0.2, C4: 0.8 }),
    branch('iliohypogastric-nerve', 0.05),
  ]),
} as const satisfies Readonly<Record<string, SkinPlace>>;
