import { describe, expect, it } from 'vitest';
import { bodyPartKeys, bodyParts, bodyPartTable, isLostWith, isWithin, regions } from '../../src/anatomy/body-parts.ts';
import { movementKeys, movements } from '../../src/anatomy/movements.ts';
import { type Muscle, type MuscleKey, muscles } from '../../src/anatomy/muscles.ts';
import { type Place, type PlaceKey, pathTo, placeKeys, placeTable } from '../../src/anatomy/places.ts';
import { reflexes, reflexKeys } from '../../src/anatomy/reflexes.ts';
import { type Segment, segmentIndex, segments } from '../../src/anatomy/segments.ts';
import type { Supply } from '../../src/anatomy/supply.ts';
import { works } from '../../src/kernel/works.ts';

const muscleRows: readonly (readonly [string, Muscle])[] = (Object.keys(muscles) as MuscleKey[]).map((key) => [
  key,
  muscles[key],
]);

const suppliesByItem: readonly (readonly [string, readonly Supply[]])[] = [
  ...movementKeys.map((key) => [`movement ${key}`, movements[key].supplies] as const),
  ...reflexKeys.map((key) => [`reflex ${key}, afferent`, reflexes[key].afferent] as const),
  ...reflexKeys.map((key) => [`reflex ${key}, efferent`, reflexes[key].efferent] as const),
];

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const repeated = (values: readonly string[]) => values.filter((value, index) => values.indexOf(value) !== index);

/** Each rib space has the nerve of its own root. */
const intercostals = Object.fromEntries(
  segments
    .filter((root) => root.startsWith('T'))
    .map((root) => [`intercostal-nerve-${root.toLowerCase()}`, [root, root]]),
) as Readonly<Partial<Record<PlaceKey, readonly [Segment, Segment]>>>;

/** Roots that join the periphery at each place whose fibres come straight from the cord: first and last. */
const entry: Readonly<Partial<Record<PlaceKey, readonly [Segment, Segment]>>> = {
  'cervical-plexus': ['C1', 'C4'],
  'spinal-accessory-nerve-upper-neck': ['C1', 'C5'],
  'greater-occipital-nerve': ['C2', 'C3'],
  'dorsal-rami': ['C1', 'S5'],
  ...intercostals,
  'upper-trunk': ['C5', 'C6'],
  'middle-trunk': ['C7', 'C7'],
  'lower-trunk': ['C8', 'T1'],
  'dorsal-scapular-nerve': ['C4', 'C5'],
  'long-thoracic-nerve': ['C5', 'C7'],
  'lumbar-plexus': ['T12', 'L4'],
  'lumbosacral-trunk': ['L4', 'L5'],
  'sacral-plexus': ['S1', 'S4'],
};

describe.each(suppliesByItem)('%s', (_name, supplies) => {
  it('shares out exactly one whole', () => {
    expect(Math.abs(sum(supplies.map(({ weight }) => weight)) - 1)).toBeLessThan(1e-9);
    for (const { roots } of supplies) {
      const shares = Object.values(roots);
      if (shares.length > 0) expect(Math.abs(sum(shares) - 1)).toBeLessThan(1e-9);
      for (const share of shares) expect(share).toBeGreaterThan(0);
    }
  });

  it('leaves the cord by roots that reach its nerve', () => {
    for (const { via, roots } of supplies) {
      for (const root of Object.keys(roots) as Segment[]) {
        const first = pathTo(via, root)[0];
        if (first === undefined) continue;
        const [from, to] = entry[first] ?? [];
        expect(from, `${root} enters at ${first} on the way to ${via}`).toBeDefined();
        if (from === undefined || to === undefined) continue;
        expect(segmentIndex(root), `${root} at ${first}`).toBeGreaterThanOrEqual(segmentIndex(from));
        expect(segmentIndex(root), `${root} at ${first}`).toBeLessThanOrEqual(segmentIndex(to));
      }
    }
  });
});

describe('the muscles', () => {
  it('are all used by some movement', () => {
    const used = new Set(movementKeys.flatMap((key) => movements[key].supplies.map(({ muscle }) => muscle)));
    expect(muscleRows.filter(([, { label }]) => !used.has(label)).map(([key]) => key)).toEqual([]);
  });

  it('have labels of their own and a source', () => {
    expect(repeated(muscleRows.map(([, { label }]) => label))).toEqual([]);
    for (const [, { source }] of muscleRows) expect(Object.hasOwn(works, source.work)).toBe(true);
  });

  it('give one label to one UBERON class', () => {
    const labels = new Map<string, string>();
    for (const [key, { uberon }] of muscleRows) {
      if (uberon === undefined) continue;
      expect(uberon.code).toMatch(/^UBERON:\d{7}$/);
      expect(labels.get(uberon.code) ?? uberon.display, key).toBe(uberon.display);
      labels.set(uberon.code, uberon.display);
    }
  });
});

describe('the movements and reflexes', () => {
  const rows = [...Object.values(movements), ...Object.values(reflexes)];

  it('have labels of their own, a source, and a body part in the same region', () => {
    expect(repeated(rows.map(({ label }) => label))).toEqual([]);
    for (const { label, bodyPart, region, source } of rows) {
      expect(Object.hasOwn(works, source.work)).toBe(true);
      expect(bodyPartTable.get(bodyPart)?.region, label).toBe(region);
    }
  });

  it('are keyed in kebab case', () => {
    for (const key of [...movementKeys, ...reflexKeys, ...bodyPartKeys]) expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('keep lengths and weights in their ranges', () => {
    for (const { lengthCm, pyramidalWeight } of Object.values(movements)) {
      expect(lengthCm).toBeGreaterThan(5);
      expect(lengthCm).toBeLessThan(130);
      expect(pyramidalWeight).toBeGreaterThan(0);
      expect(pyramidalWeight).toBeLessThanOrEqual(1);
    }
  });

  it('list the muscles of a movement in order of importance', () => {
    for (const key of movementKeys) {
      const weights = movements[key].supplies.map(({ weight }) => weight);
      expect(weights, key).toEqual([...weights].sort((one, other) => other - one));
    }
  });

  it('show the bulk of every movement at a known body part', () => {
    for (const key of movementKeys) expect(bodyPartTable.has(movements[key].bulkAt), key).toBe(true);
  });

  it('leave no two movements with the same equivalent HPO term', () => {
    const same = movementKeys.flatMap((key) => {
      const { hpo } = movements[key];
      return hpo?.relation === 'equivalent' ? [hpo.code] : [];
    });
    expect(repeated(same)).toEqual([]);
  });

  it('make the foot the most distant part and keep each limb in order', () => {
    const length = (key: keyof typeof movements) => movements[key].lengthCm;
    const leg = [
      'hip-flexion',
      'knee-extension',
      'ankle-dorsiflexion',
      'great-toe-extension',
      'toe-abduction',
    ] as const;
    const arm = [
      'shoulder-abduction',
      'elbow-flexion',
      'wrist-extension',
      'finger-extension',
      'thumb-abduction',
    ] as const;
    for (const chain of [leg, arm]) {
      const lengths = chain.map(length);
      expect(lengths).toEqual([...lengths].sort((one, other) => one - other));
    }
  });
});

describe('the places', () => {
  it('lead inwards to known places and never in a circle', () => {
    for (const key of placeKeys) {
      const { proximal }: Place = placeTable[key];
      const next = typeof proximal === 'object' && proximal !== null ? Object.values(proximal) : [proximal];
      for (const one of next) if (one !== null) expect(Object.hasOwn(placeTable, one), `${key} -> ${one}`).toBe(true);
      for (const root of segments) expect(new Set(pathTo(key, root)).size).toBe(pathTo(key, root).length);
    }
  });

  // Source: Aids to the Examination of the Peripheral Nervous System, 5th ed, nerve diagrams.
  it.each<[PlaceKey, Segment, PlaceKey[]]>([
    [
      'median-nerve-wrist',
      'T1',
      [
        'lower-trunk',
        'lower-trunk-t1',
        'medial-cord',
        'median-nerve-upper-arm',
        'median-nerve-elbow',
        'median-nerve-beyond-pronator',
        'median-nerve-forearm',
        'median-nerve-wrist',
      ],
    ],
    ['median-nerve-elbow', 'C6', ['upper-trunk', 'lateral-cord', 'median-nerve-upper-arm', 'median-nerve-elbow']],
    [
      'posterior-interosseous-nerve',
      'C7',
      [
        'middle-trunk',
        'posterior-cord',
        'radial-nerve-axilla',
        'radial-nerve-spiral-groove',
        'radial-nerve-elbow',
        'posterior-interosseous-nerve',
      ],
    ],
    [
      'deep-fibular-nerve',
      'L5',
      [
        'lumbosacral-trunk',
        'sacral-plexus',
        'sciatic-nerve',
        'sciatic-nerve-fibular-division',
        'common-fibular-nerve',
        'deep-fibular-nerve',
      ],
    ],
    ['inferior-gluteal-nerve', 'S1', ['sacral-plexus', 'inferior-gluteal-nerve']],
    ['femoral-nerve-groin', 'L3', ['lumbar-plexus', 'femoral-nerve-pelvis', 'femoral-nerve-groin']],
  ])('reach the %s from %s by %j', (place, root, path) => {
    expect(pathTo(place, root)).toEqual(path);
  });

  it('have an empty way to a branch straight from the root', () => {
    expect(pathTo(null, 'C5')).toEqual([]);
  });
});

describe('the body parts', () => {
  it('have labels of their own, known parents, known regions, and one UBERON class each', () => {
    const parts = bodyPartKeys.map((key) => bodyParts[key]);
    expect(repeated(parts.map(({ label }) => label))).toEqual([]);
    expect(repeated(parts.flatMap(({ uberon }) => (uberon ? [uberon.code] : [])))).toEqual([]);
    for (const { parent, region } of parts) {
      expect(regions).toContain(region);
      if (parent !== null) expect(bodyPartTable.has(parent), parent).toBe(true);
    }
  });

  it('lie inside the whole of their limb', () => {
    expect(isWithin('great-toe', 'lower-limb')).toBe(true);
    expect(isWithin('thenar-eminence', 'hand')).toBe(true);
    expect(isWithin('hand', 'hand')).toBe(true);
    expect(isWithin('hand', 'forearm')).toBe(false);
    expect(isWithin('__proto__', 'hand')).toBe(false);
  });

  it.each([
    ['foot', 'leg-below-knee', true],
    ['great-toe', 'ankle', true],
    ['calf', 'knee', true],
    ['knee', 'leg-below-knee', false],
    ['hip', 'thigh', false],
    ['foot', 'toes', false],
    ['fingers', 'thumb', false],
    ['little-finger', 'fingers', true],
    ['thenar-eminence', 'wrist', true],
    ['foot', 'upper-arm', false],
    ['face', 'upper-limb', false],
    ['shoulder', 'upper-limb', true],
  ])('lose the %s with the %s: %s', (part, lost, expected) => {
    expect(isLostWith(part, lost)).toBe(expected);
  });

  it('leave the knee and hip testable above a below-knee stump, and nothing under it', () => {
    const lost = movementKeys.filter((key) => isLostWith(movements[key].bodyPart, 'leg-below-knee'));
    expect(lost.every((key) => /^(ankle|toe|great-toe)-/.test(key))).toBe(true);
    expect(lost).toContain('ankle-dorsiflexion');
    expect(isLostWith(reflexes.ankle.bodyPart, 'leg-below-knee')).toBe(true);
    expect(isLostWith(reflexes.knee.bodyPart, 'leg-below-knee')).toBe(false);
  });
});
