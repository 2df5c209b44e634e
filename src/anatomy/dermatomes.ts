import { read } from '../kernel/cite.ts';
import type { Region } from './body-parts.ts';
import { anococcygeal, branch, posteriorForearm } from './cutaneous-branches.ts';
import type { RootShares, Segment } from './segments.ts';
import type { Dermatome, DermatomeKey } from './skin.ts';
import type { Supply } from './supply.ts';

function dermatome(
  segment: Segment,
  keyPoint: string,
  region: Region,
  bodyPart: string,
  lengthCm: number,
  supplies: readonly Supply[],
  key: DermatomeKey = segment as DermatomeKey,
): Dermatome {
  const source = read('isncsci-key-sensory-points', key);
  return { label: `${key} dermatome`, segment, keyPoint, region, bodyPart, supplies, lengthCm, source };
}

/** A band of the trunk: most of it by the ventral ramus, the strip beside the spine by the dorsal one. */
function trunkBand(
  segment: Segment,
  keyPoint: string,
  bodyPart: 'chest' | 'abdomen',
  lengthCm: number,
  roots: RootShares,
): Dermatome {
  const supplies = [branch('intercostal-nerves', 0.85, roots), branch('dorsal-rami', 0.15, roots)];
  return dermatome(segment, keyPoint, 'trunk', bodyPart, lengthCm, supplies);
}

/**
 * The 28 dermatomes of the international standard. Each is the patch that an examiner tests for it: the key sensory
 * point and the band around it. Neighbouring roots overlap, so the segment's own root carries about four fifths (judged);
 * overlap runs along the limb or the trunk, never over a border where the embryonic neighbours are missing (C4 to T2 on
 * the chest). `lengthCm` is to the key point.
 */
export const dermatomes: Readonly<Record<DermatomeKey, Dermatome>> = {
  // Head, neck and shoulder cape
  C2: dermatome(
    'C2',
    'Back of the head, one centimetre or more to the side of the bump at the base of the skull',
    'head',
    'scalp',
    12,
    [
      branch('greater-occipital-nerve', 0.7, { C2: 0.82, C3: 0.18 }),
      branch('great-auricular-nerve', 0.15, { C2: 0.65, C3: 0.35 }),
      branch('cervical-plexus', 0.15),
    ],
  ),
  C3: dermatome('C3', 'Hollow above the collar bone, on the mid-clavicular line', 'neck', 'neck', 12, [
    branch('supraclavicular-nerves', 0.6, { C3: 0.8, C4: 0.2 }),
    branch('transverse-cervical-nerve', 0.3, { C2: 0.2, C3: 0.8 }),
    branch('great-auricular-nerve', 0.1, { C2: 0.25, C3: 0.75 }),
  ]),
  C4: dermatome('C4', 'Top of the shoulder, over the acromioclavicular joint', 'upper-limbs', 'shoulder', 15, [
    branch('supraclavicular-nerves', 1, { C3: 0.2, C4: 0.8 }),
  ]),

  // Upper limb
  C5: dermatome('C5', 'Front of the elbow, thumb side, just above the crease', 'upper-limbs', 'elbow', 42, [
    branch('axillary-nerve', 0.5, { C5: 0.82, C6: 0.18 }),
    branch('radial-nerve-axilla', 0.25, { C5: 0.75, C6: 0.25 }),
    branch('lateral-cutaneous-nerve-of-forearm', 0.25, { C5: 0.75, C6: 0.25 }),
  ]),
  C6: dermatome('C6', 'Back of the first bone of the thumb', 'upper-limbs', 'thumb', 68, [
    branch('lateral-cutaneous-nerve-of-forearm', 0.35, { C5: 0.2, C6: 0.8 }),
    branch('superficial-radial-nerve', 0.35, { C6: 0.8, C7: 0.2 }),
    branch('median-nerve-wrist', 0.3, { C6: 0.8, C7: 0.2 }),
  ]),
  C7: dermatome('C7', 'Back of the first bone of the middle finger', 'upper-limbs', 'middle-finger', 71, [
    branch('median-nerve-wrist', 0.5, { C6: 0.1, C7: 0.8, C8: 0.1 }),
    branch('superficial-radial-nerve', 0.35, { C6: 0.15, C7: 0.8, C8: 0.05 }),
    ...posteriorForearm(0.15, { C6: 0.15, C7: 0.7, C8: 0.15 }),
  ]),
  C8: dermatome('C8', 'Back of the first bone of the little finger', 'upper-limbs', 'little-finger', 70, [
    branch('superficial-branch-of-ulnar-nerve', 0.4, { C8: 0.85, T1: 0.15 }),
    branch('dorsal-branch-of-ulnar-nerve', 0.3, { C8: 0.85, T1: 0.15 }),
    branch('medial-cutaneous-nerve-of-forearm', 0.2, { C8: 0.75, T1: 0.25 }),
    branch('median-nerve-wrist', 0.1, { C7: 0.3, C8: 0.7 }),
  ]),
  T1: dermatome(
    'T1',
    'Front of the elbow, little-finger side, just above the inner bump of the humerus',
    'upper-limbs',
    'elbow',
    45,
    [
      branch('medial-cutaneous-nerve-of-forearm', 0.75, { C8: 0.15, T1: 0.85 }),
      branch('medial-cutaneous-nerve-of-arm', 0.15, { C8: 0.1, T1: 0.9 }),
      branch('intercostobrachial-nerve', 0.1, { T2: 1 }),
    ],
  ),
  T2: dermatome('T2', 'Top of the armpit', 'upper-limbs', 'axilla', 28, [
    branch('intercostobrachial-nerve', 0.55),
    branch('intercostal-nerves', 0.2, { T2: 0.85, T3: 0.15 }),
    branch('dorsal-rami', 0.1, { T2: 0.8, T3: 0.2 }),
    branch('medial-cutaneous-nerve-of-arm', 0.15, { T1: 1 }),
  ]),

  // Trunk
  T3: trunkBand('T3', 'Third rib space on the mid-clavicular line', 'chest', 30, { T2: 0.1, T3: 0.8, T4: 0.1 }),
  T4: trunkBand('T4', 'Fourth rib space on the mid-clavicular line, at the height of the male nipple', 'chest', 30, {
    T3: 0.1,
    T4: 0.8,
    T5: 0.1,
  }),
  T5: trunkBand('T5', 'Fifth rib space on the mid-clavicular line', 'chest', 32, { T4: 0.1, T5: 0.8, T6: 0.1 }),
  T6: trunkBand('T6', 'Mid-clavicular line at the height of the tip of the breastbone', 'chest', 33, {
    T5: 0.1,
    T6: 0.8,
    T7: 0.1,
  }),
  T7: trunkBand(
    'T7',
    'Mid-clavicular line, one quarter of the way down from the tip of the breastbone to the navel',
    'abdomen',
    34,
    { T6: 0.1, T7: 0.8, T8: 0.1 },
  ),
  T8: trunkBand('T8', 'Mid-clavicular line, halfway between the tip of the breastbone and the navel', 'abdomen', 35, {
    T7: 0.1,
    T8: 0.8,
    T9: 0.1,
  }),
  T9: trunkBand(
    'T9',
    'Mid-clavicular line, three quarters of the way down from the tip of the breastbone to the navel',
    'abdomen',
    36,
    { T8: 0.1, T9: 0.8, T10: 0.1 },
  ),
  T10: trunkBand('T10', 'Mid-clavicular line at the height of the navel', 'abdomen', 37, {
    T9: 0.1,
    T10: 0.8,
    T11: 0.1,
  }),
  T11: trunkBand('T11', 'Mid-clavicular line, halfway between the navel and the inguinal ligament', 'abdomen', 38, {
    T10: 0.1,
    T11: 0.8,
    T12: 0.1,
  }),
  T12: dermatome('T12', 'Middle of the inguinal ligament, on the mid-clavicular line', 'trunk', 'abdomen', 38, [
    branch('intercostal-nerves', 0.65, { T11: 0.15, T12: 0.85 }),
    branch('iliohypogastric-nerve', 0.2, { T12: 0.6, L1: 0.4 }),
    branch('dorsal-rami', 0.15, { T11: 0.1, T12: 0.8, L1: 0.1 }),
  ]),

  // Lower limb
  L1: dermatome(
    'L1',
    'Uppermost front of the thigh, halfway between the T12 and L2 points',
    'lower-limbs',
    'thigh',
    32,
    [
      branch('ilioinguinal-nerve', 0.4, { T12: 0.1, L1: 0.9 }),
      branch('iliohypogastric-nerve', 0.25, { T12: 0.2, L1: 0.8 }),
      branch('genitofemoral-nerve', 0.25, { L1: 0.7, L2: 0.3 }),
      branch('dorsal-rami', 0.1, { T12: 0.1, L1: 0.8, L2: 0.1 }),
    ],
  ),
  L2: dermatome(
    'L2',
    'Front and inner side of the thigh, halfway between the middle of the inguinal ligament and the inner knee',
    'lower-limbs',
    'thigh',
    45,
    [
      branch('femoral-nerve-groin', 0.5, { L2: 0.8, L3: 0.2 }),
      branch('lateral-femoral-cutaneous-nerve', 0.3, { L2: 0.8, L3: 0.2 }),
      branch('obturator-nerve', 0.1, { L2: 0.8, L3: 0.2 }),
      branch('genitofemoral-nerve', 0.1, { L1: 0.3, L2: 0.7 }),
    ],
  ),
  L3: dermatome('L3', 'Inner condyle of the femur, above the knee joint', 'lower-limbs', 'knee', 58, [
    branch('femoral-nerve-groin', 0.6, { L2: 0.15, L3: 0.85 }),
    branch('saphenous-nerve', 0.2, { L3: 0.7, L4: 0.3 }),
    branch('obturator-nerve', 0.2, { L2: 0.15, L3: 0.75, L4: 0.1 }),
  ]),
  L4: dermatome('L4', 'Inner ankle bone', 'lower-limbs', 'ankle', 88, [
    branch('saphenous-nerve', 0.9, { L3: 0.15, L4: 0.85 }),
    branch('superficial-fibular-nerve-ankle', 0.1, { L4: 0.4, L5: 0.6 }),
  ]),
  L5: dermatome('L5', 'Top of the foot over the knuckle of the third toe', 'lower-limbs', 'foot', 98, [
    branch('superficial-fibular-nerve-ankle', 0.55, { L4: 0.1, L5: 0.8, S1: 0.1 }),
    branch('lateral-sural-cutaneous-nerve', 0.2, { L4: 0.1, L5: 0.8, S1: 0.1 }),
    branch('deep-fibular-nerve-ankle', 0.15, { L4: 0.1, L5: 0.8, S1: 0.1 }),
    branch('medial-plantar-nerve', 0.1, { L4: 0.1, L5: 0.75, S1: 0.15 }),
  ]),
  S1: dermatome('S1', 'Outer side of the heel', 'lower-limbs', 'heel', 94, [
    branch('sural-nerve', 0.5, { L5: 0.05, S1: 0.8, S2: 0.15 }),
    branch('lateral-plantar-nerve', 0.25, { L5: 0.1, S1: 0.8, S2: 0.1 }),
    branch('medial-calcaneal-nerve', 0.25, { L5: 0.05, S1: 0.8, S2: 0.15 }),
  ]),
  S2: dermatome('S2', 'Middle of the hollow behind the knee', 'lower-limbs', 'knee', 60, [
    branch('posterior-femoral-cutaneous-nerve', 0.85, { S1: 0.1, S2: 0.8, S3: 0.1 }),
    branch('sural-nerve', 0.15, { S1: 0.25, S2: 0.75 }),
  ]),

  // Saddle
  S3: dermatome('S3', 'Sitting bone, or the fold below the buttock', 'perineum', 'perineum', 30, [
    branch('posterior-femoral-cutaneous-nerve', 0.5, { S2: 0.2, S3: 0.8 }),
    branch('pudendal-nerve', 0.5, { S2: 0.05, S3: 0.8, S4: 0.15 }),
  ]),
  'S4-5': dermatome(
    'S4',
    'Less than one centimetre outside the edge where anal skin meets mucosa',
    'perineum',
    'perianal-skin',
    25,
    [branch('pudendal-nerve', 0.75, { S3: 0.2, S4: 0.8 }), anococcygeal(0.25)],
    'S4-5',
  ),
};
