import type { Ontology } from './ontology.ts';

/** Parts of the body that a finding may be placed at, each inside its parent; limb parts run from near to far. */
export interface BodyPart {
  readonly label: string;
  readonly region: Region;
  readonly parent: string | null;
  /** Whether there is one on each side. */
  readonly paired: boolean;
  /** Rank from the root of the limb outwards: losing a part means losing every part of the limb with a higher rank. */
  readonly rank?: number;
  readonly uberon?: Ontology;
}

export const regions = ['head', 'neck', 'upper-limbs', 'trunk', 'lower-limbs', 'perineum'] as const;
/** The large regions that a section may be declared normal for. */
export type Region = (typeof regions)[number];

const uberon = (code: string, display: string): Ontology => ({ code, display });

/** A part of the head, neck or trunk; `parent` null for the region as a whole. */
const axial = (label: string, region: Region, parent: string | null, paired: boolean, code?: Ontology): BodyPart => ({
  label,
  region,
  parent,
  paired,
  ...(code && { uberon: code }),
});

const limbPart =
  (region: Region, limb: string) =>
  (label: string, rank: number, code?: Ontology, parent: string = limb): BodyPart => ({
    label,
    region,
    parent,
    paired: true,
    rank,
    ...(code && { uberon: code }),
  });

const upper = limbPart('upper-limbs', 'upper-limb');
const lower = limbPart('lower-limbs', 'lower-limb');

/**
 * UBERON names limb parts for all vertebrates: manus is the hand, pes the foot, the stylopod the upper arm or thigh, the
 * zeugopod the forearm or lower leg.
 */
const parts = {
  head: axial('Head', 'head', null, false, uberon('UBERON:0000033', 'head')),
  scalp: axial('Scalp', 'head', 'head', false, uberon('UBERON:0000403', 'scalp')),
  face: axial('Face', 'head', 'head', false, uberon('UBERON:0001456', 'face')),
  forehead: axial('Forehead', 'head', 'face', false, uberon('UBERON:0008200', 'forehead')),
  eye: axial('Eye', 'head', 'face', true, uberon('UBERON:0000970', 'eye')),
  eyelid: axial('Eyelid', 'head', 'face', true, uberon('UBERON:0001711', 'eyelid')),
  cheek: axial('Cheek', 'head', 'face', true, uberon('UBERON:0001567', 'cheek')),
  jaw: axial('Lower jaw', 'head', 'face', false, uberon('UBERON:0001710', 'lower jaw region')),
  mouth: axial('Mouth', 'head', 'face', false, uberon('UBERON:0000165', 'mouth')),
  tongue: axial('Tongue', 'head', 'mouth', false, uberon('UBERON:0001723', 'tongue')),
  palate: axial('Soft palate', 'head', 'mouth', false, uberon('UBERON:0001733', 'soft palate')),
  ear: axial('Ear', 'head', 'head', true, uberon('UBERON:0001690', 'ear')),

  neck: axial('Neck', 'neck', null, false, uberon('UBERON:0000974', 'neck')),

  trunk: axial('Trunk', 'trunk', null, false, uberon('UBERON:0002100', 'trunk')),
  chest: axial('Chest', 'trunk', 'trunk', false, uberon('UBERON:0001443', 'chest')),
  abdomen: axial('Abdomen', 'trunk', 'trunk', false, uberon('UBERON:0000916', 'abdomen')),
  groin: axial('Groin', 'trunk', 'abdomen', true, uberon('UBERON:0008337', 'inguinal part of abdomen')),
  back: axial('Back', 'trunk', 'trunk', false, uberon('UBERON:0001137', 'dorsum')),
  perineum: axial('Perineum', 'perineum', 'trunk', false, uberon('UBERON:0002356', 'perineum')),
  genitalia: axial('External genitalia', 'perineum', 'perineum', false, uberon('UBERON:0004176', 'external genitalia')),
  'perianal-skin': axial('Perianal skin', 'perineum', 'perineum', false, uberon('UBERON:0012336', 'perianal skin')),

  'upper-limb': axial('Upper limb', 'upper-limbs', null, true, uberon('UBERON:0002102', 'forelimb')),
  shoulder: upper('Shoulder', 1, uberon('UBERON:0001467', 'shoulder')),
  'scapular-region': upper('Scapular region', 1, undefined, 'shoulder'),
  axilla: upper('Axilla', 1, uberon('UBERON:0009472', 'axilla'), 'shoulder'),
  'upper-arm': upper('Upper arm', 2, uberon('UBERON:0003822', 'forelimb stylopod')),
  elbow: upper('Elbow', 3, uberon('UBERON:0001461', 'elbow')),
  forearm: upper('Forearm', 4, uberon('UBERON:0002386', 'forelimb zeugopod')),
  wrist: upper('Wrist', 5, uberon('UBERON:0004452', 'carpal region')),
  hand: upper('Hand', 6, uberon('UBERON:0002398', 'manus')),
  palm: upper('Palm', 7, uberon('UBERON:0008878', 'palmar part of manus'), 'hand'),
  'thenar-eminence': upper('Thenar eminence', 7, uberon('UBERON:0017716', 'thenar eminence'), 'palm'),
  'hypothenar-eminence': upper('Hypothenar eminence', 7, uberon('UBERON:0017717', 'hypothenar eminence'), 'palm'),
  'first-web-space': upper('First web space of the hand', 7, undefined, 'hand'),
  thumb: upper('Thumb', 7, uberon('UBERON:0001463', 'manual digit 1'), 'hand'),
  fingers: upper('Fingers', 7, undefined, 'hand'),
  'index-finger': upper('Index finger', 7, uberon('UBERON:0003622', 'manual digit 2'), 'fingers'),
  'middle-finger': upper('Middle finger', 7, uberon('UBERON:0003623', 'manual digit 3'), 'fingers'),
  'ring-finger': upper('Ring finger', 7, uberon('UBERON:0003624', 'manual digit 4'), 'fingers'),
  'little-finger': upper('Little finger', 7, uberon('UBERON:0003625', 'manual digit 5'), 'fingers'),

  'lower-limb': axial('Lower limb', 'lower-limbs', null, true, uberon('UBERON:0002103', 'hindlimb')),
  buttock: lower('Buttock', 1, uberon('UBERON:0013691', 'buttock')),
  hip: lower('Hip', 1, uberon('UBERON:0001464', 'hip')),
  thigh: lower('Thigh', 2, uberon('UBERON:0000376', 'hindlimb stylopod')),
  knee: lower('Knee', 3, uberon('UBERON:0001465', 'knee')),
  'leg-below-knee': lower('Leg below the knee', 4, uberon('UBERON:0003823', 'hindlimb zeugopod')),
  shin: lower('Shin', 4, undefined, 'leg-below-knee'),
  calf: lower('Calf', 4, undefined, 'leg-below-knee'),
  ankle: lower('Ankle', 5, uberon('UBERON:0004454', 'tarsal region')),
  foot: lower('Foot', 6, uberon('UBERON:0002387', 'pes')),
  heel: lower('Heel', 7, uberon('UBERON:0015875', 'heel'), 'foot'),
  'sole-of-foot': lower('Sole of the foot', 7, uberon('UBERON:0008338', 'plantar part of pes'), 'foot'),
  toes: lower('Toes', 7, uberon('UBERON:0001466', 'pedal digit'), 'foot'),
  'great-toe': lower('Great toe', 7, uberon('UBERON:0003631', 'pedal digit 1'), 'toes'),
} as const satisfies Record<string, BodyPart>;

export type BodyPartKey = keyof typeof parts;

export const bodyParts: Readonly<Record<BodyPartKey, BodyPart>> = parts;
export const bodyPartKeys = Object.keys(bodyParts) as readonly BodyPartKey[];

/** The same rows for look-ups by a key from outside. */
export const bodyPartTable: ReadonlyMap<string, BodyPart> = new Map(Object.entries(bodyParts));

/** Whether `part` is `ancestor` or lies inside it. An unknown key lies in nothing but itself. */
export function isWithin(part: string, ancestor: string): boolean {
  let here: string | null = part;
  while (here !== null) {
    if (here === ancestor) return true;
    here = bodyPartTable.get(here)?.parent ?? null;
  }
  return false;
}

/**
 * Whether somebody who has lost `lostPart` on one side has also lost `part` there: it is the same part, lies inside it,
 * or lies further out on the same limb. Parts of one rank are neighbours, so a lost thumb leaves the fingers.
 */
export function isLostWith(part: string, lostPart: string): boolean {
  if (isWithin(part, lostPart)) return true;
  const rank = bodyPartTable.get(part)?.rank;
  const lostRank = bodyPartTable.get(lostPart)?.rank;
  if (rank === undefined || lostRank === undefined) return false;
  return rank > lostRank && bodyPartTable.get(part)?.region === bodyPartTable.get(lostPart)?.region;
}
