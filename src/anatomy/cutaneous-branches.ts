import { recalled, type Source } from '../kernel/cite.ts';
import type { PlaceKey } from './places.ts';
import { type RootShares, type Segment, segmentIndex, segments } from './segments.ts';
import type { Supply } from './supply.ts';

/** What a cutaneous nerve carries over the whole of its territory; a small patch inside it may lean to one root. */
export interface BranchRoots {
  readonly roots: RootShares;
  readonly source: Source;
}

const neck = recalled('grays-anatomy', 'cervical plexus, cutaneous branches');
const trunk = recalled('grays-anatomy', 'thoracic nerves and dorsal rami');
const upper = recalled('mrc-aids', 'upper limb, cutaneous nerve areas');
const lumbar = recalled('grays-anatomy', 'lumbar plexus, cutaneous branches');
const lower = recalled('mrc-aids', 'lower limb, cutaneous nerve areas');
const cranial = recalled('blumenfeld', 'trigeminal nerve, divisions');

/** The roots from `first` down to `last`, each with the same share. */
export function evenly(first: Segment, last: Segment): RootShares {
  const roots = segments.slice(segmentIndex(first), segmentIndex(last) + 1);
  return Object.fromEntries(roots.map((root) => [root, 1 / roots.length]));
}

/**
 * The places from which skin is supplied, with the usual root shares. Shares are judged from the root ranges of the
 * works named; no measurement gives them. Small branches without a place of their own go by the place they leave:
 * the lesser occipital nerve by the cervical plexus, the upper lateral cutaneous nerve of the arm by the axillary nerve,
 * the lower lateral cutaneous nerve of the arm by the radial nerve in the axilla, the anterior femoral
 * cutaneous nerves by the femoral nerve below the inguinal ligament, the cluneal nerves by the dorsal rami and the
 * posterior femoral cutaneous nerve, digital nerves by the nerve at the wrist or in the sole.
 */
export const branchRoots = {
  'ophthalmic-nerve': { roots: {}, source: cranial },
  'maxillary-nerve': { roots: {}, source: cranial },
  'mandibular-nerve': { roots: {}, source: cranial },

  'greater-occipital-nerve': { roots: { C2: 0.8, C3: 0.2 }, source: trunk },
  'cervical-plexus': { roots: { C2: 0.8, C3: 0.2 }, source: neck },
  'great-auricular-nerve': { roots: { C2: 0.5, C3: 0.5 }, source: neck },
  'transverse-cervical-nerve': { roots: { C2: 0.4, C3: 0.6 }, source: neck },
  'supraclavicular-nerves': { roots: { C3: 0.4, C4: 0.6 }, source: neck },

  'intercostal-nerves': { roots: evenly('T2', 'T12'), source: trunk },
  'dorsal-rami': { roots: evenly('T3', 'L2'), source: trunk },
  'intercostobrachial-nerve': { roots: { T2: 0.9, T3: 0.1 }, source: upper },

  'axillary-nerve': { roots: { C5: 0.8, C6: 0.2 }, source: upper },
  'radial-nerve-axilla': { roots: { C5: 0.1, C6: 0.3, C7: 0.4, C8: 0.2 }, source: upper },
  'posterior-cutaneous-nerve-of-arm': { roots: { C5: 0.1, C6: 0.25, C7: 0.4, C8: 0.25 }, source: upper },
  'radial-nerve-spiral-groove': { roots: { C5: 0.05, C6: 0.35, C7: 0.45, C8: 0.15 }, source: upper },
  'superficial-radial-nerve': { roots: { C6: 0.6, C7: 0.4 }, source: upper },
  'lateral-cutaneous-nerve-of-forearm': { roots: { C5: 0.25, C6: 0.75 }, source: upper },
  'medial-cutaneous-nerve-of-arm': { roots: { C8: 0.2, T1: 0.8 }, source: upper },
  'medial-cutaneous-nerve-of-forearm': { roots: { C8: 0.4, T1: 0.6 }, source: upper },
  'palmar-branch-of-median-nerve': { roots: { C6: 0.6, C7: 0.4 }, source: upper },
  'median-nerve-wrist': { roots: { C6: 0.35, C7: 0.45, C8: 0.2 }, source: upper },
  'palmar-branch-of-ulnar-nerve': { roots: { C8: 0.8, T1: 0.2 }, source: upper },
  'dorsal-branch-of-ulnar-nerve': { roots: { C8: 0.85, T1: 0.15 }, source: upper },
  'superficial-branch-of-ulnar-nerve': { roots: { C8: 0.8, T1: 0.2 }, source: upper },

  'iliohypogastric-nerve': { roots: { T12: 0.25, L1: 0.75 }, source: lumbar },
  'ilioinguinal-nerve': { roots: { L1: 1 }, source: lumbar },
  'genitofemoral-nerve': { roots: { L1: 0.5, L2: 0.5 }, source: lumbar },
  'lateral-femoral-cutaneous-nerve': { roots: { L2: 0.5, L3: 0.5 }, source: lumbar },
  'femoral-nerve-groin': { roots: { L2: 0.45, L3: 0.55 }, source: lumbar },
  'obturator-nerve': { roots: { L2: 0.35, L3: 0.45, L4: 0.2 }, source: lumbar },
  'saphenous-nerve': { roots: { L3: 0.2, L4: 0.8 }, source: lower },

  'posterior-femoral-cutaneous-nerve': { roots: { S1: 0.2, S2: 0.6, S3: 0.2 }, source: lower },
  'pudendal-nerve': { roots: { S2: 0.2, S3: 0.45, S4: 0.35 }, source: lower },
  'lateral-sural-cutaneous-nerve': { roots: { L4: 0.1, L5: 0.7, S1: 0.2 }, source: lower },
  'superficial-fibular-nerve-ankle': { roots: { L4: 0.1, L5: 0.7, S1: 0.2 }, source: lower },
  'deep-fibular-nerve-ankle': { roots: { L4: 0.1, L5: 0.9 }, source: lower },
  'sural-nerve': { roots: { S1: 0.8, S2: 0.2 }, source: lower },
  'tibial-nerve-calf': { roots: { L4: 0.15, L5: 0.45, S1: 0.4 }, source: lower },
  'medial-calcaneal-nerve': { roots: { S1: 0.8, S2: 0.2 }, source: lower },
  'medial-plantar-nerve': { roots: { L4: 0.15, L5: 0.6, S1: 0.25 }, source: lower },
  'lateral-plantar-nerve': { roots: { S1: 0.8, S2: 0.2 }, source: lower },
} as const satisfies Partial<Record<PlaceKey, BranchRoots>>;

/** A place from which a branch to the skin leaves. */
export type BranchKey = keyof typeof branchRoots;

/**
 * The stream of one cutaneous nerve to a patch of skin.
 * @param weight share of the patch, 0 to 1
 * @param roots shares in this patch; left out, those of the nerve's whole territory
 */
export function branch(via: BranchKey, weight: number, roots: RootShares = branchRoots[via].roots): Supply {
  return { via, roots, weight };
}

/** Skin reached by twigs of the lowest sacral and the coccygeal nerves that join no named nerve. */
export function anococcygeal(weight: number): Supply {
  return { via: null, roots: { S4: 0.4, S5: 0.6 }, weight };
}

/**
 * The posterior cutaneous nerve of the forearm. It leaves the radial nerve above the spiral groove in some arms and
 * inside it in others, so a lesion in the groove is taken to cut half of it.
 */
export function posteriorForearm(weight: number, roots?: RootShares): readonly [Supply, Supply] {
  return [
    branch('radial-nerve-axilla', weight / 2, roots ?? branchRoots['radial-nerve-spiral-groove'].roots),
    branch('radial-nerve-spiral-groove', weight / 2, roots),
  ];
}
