import { describe, expect, it } from 'vitest';
import { bodyPartTable } from '../../src/anatomy/body-parts.ts';
import { branchRoots } from '../../src/anatomy/cutaneous-branches.ts';
import { type PlaceKey, pathTo, placeTable } from '../../src/anatomy/places.ts';
import type { RootShares, Segment } from '../../src/anatomy/segments.ts';
import { segmentIndex, segments } from '../../src/anatomy/segments.ts';
import { dermatomeKeys } from '../../src/anatomy/skin.ts';
import { allSkinPlaces, landmarkKeys, skinPlace, skinPlaceKeys, territoryKeys } from '../../src/anatomy/skin-places.ts';

const kinds = ['dermatome', 'landmark', 'territory'] as const;
const rows = kinds.flatMap((kind) =>
  skinPlaceKeys(kind).flatMap((key) => {
    const place = skinPlace(kind, key);
    return place === undefined ? [] : [{ name: `${kind} ${key}`, place }];
  }),
);

const rootsOf = (shares: RootShares) => Object.keys(shares) as Segment[];
const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
const rootsBetween = (first: Segment, last: Segment) =>
  new Set<Segment>(segments.slice(segmentIndex(first), segmentIndex(last) + 1));

const trigeminal: readonly (PlaceKey | null)[] = ['ophthalmic-nerve', 'maxillary-nerve', 'mandibular-nerve'];

/** Each rib space has the nerve of its own root. */
const intercostals: Partial<Record<PlaceKey, ReadonlySet<Segment>>> = Object.fromEntries(
  segments
    .filter((root) => root.startsWith('T'))
    .map((root) => [`intercostal-nerve-${root.toLowerCase()}`, new Set<Segment>([root])]),
);

/** The roots that enter the wiring at each place fed straight from the cord. Source: Gray's Anatomy 42nd ed., plexuses. */
const entrances: Partial<Record<PlaceKey, ReadonlySet<Segment>>> = {
  'cervical-plexus': rootsBetween('C1', 'C4'),
  'greater-occipital-nerve': rootsBetween('C2', 'C3'),
  'dorsal-rami': rootsBetween('C2', 'S5'),
  ...intercostals,
  'upper-trunk': rootsBetween('C5', 'C6'),
  'middle-trunk': rootsBetween('C7', 'C7'),
  'lower-trunk': rootsBetween('C8', 'T1'),
  'lumbar-plexus': rootsBetween('T12', 'L4'),
  'lumbosacral-trunk': rootsBetween('L4', 'L5'),
  'sacral-plexus': rootsBetween('S1', 'S4'),
};

describe('the skin tables', () => {
  it('hold the 28 dermatomes in order, and at least 46 landmarks and 28 territories', () => {
    expect(skinPlaceKeys('dermatome')).toEqual([...dermatomeKeys]);
    expect(dermatomeKeys).toHaveLength(28);
    expect(landmarkKeys.length).toBeGreaterThanOrEqual(46);
    expect(territoryKeys.length).toBeGreaterThanOrEqual(28);
    expect(allSkinPlaces).toHaveLength(rows.length);
  });

  it('name every key in kebab case, and give no two rows of a kind one label', () => {
    for (const kind of ['landmark', 'territory'] as const) {
      const keys = skinPlaceKeys(kind);
      expect(keys.filter((key) => !/^[a-z]+(-[a-z]+)*$/.test(key))).toEqual([]);
      expect(new Set(keys.map((key) => skinPlace(kind, key)?.label)).size).toBe(keys.length);
    }
  });

  it.each(rows)('$name: the shares of its supplies sum to 1, each nerve once', ({ place }) => {
    expect(sum(place.supplies.map((supply) => supply.weight))).toBeCloseTo(1, 9);
    expect(place.supplies.every((supply) => supply.weight > 0)).toBe(true);
    expect(new Set(place.supplies.map((supply) => supply.via)).size).toBe(place.supplies.length);
  });

  it.each(rows)('$name: the root shares of each supply sum to 1, of the trigeminal divisions none', ({ place }) => {
    for (const { via, roots } of place.supplies) {
      if (trigeminal.includes(via)) expect(roots).toEqual({});
      else expect(sum(Object.values(roots))).toBeCloseTo(1, 9);
      expect(Object.values(roots).every((share) => share > 0)).toBe(true);
    }
  });

  it.each(rows)('$name: every root enters the wiring at a place that receives it', ({ place }) => {
    for (const { via, roots } of place.supplies) {
      for (const root of rootsOf(roots)) {
        const [entrance] = pathTo(via, root);
        if (entrance === undefined) expect(['S4', 'S5']).toContain(root);
        else expect(entrances[entrance]?.has(root), `${root} at ${entrance} on the way to ${via}`).toBe(true);
      }
    }
  });

  it.each(rows)('$name: lies on a known body part of its own region', ({ place }) => {
    expect(bodyPartTable.get(place.bodyPart)?.region).toBe(place.region);
  });

  it.each(rows)('$name: has a source, a label and a length that fits a body', ({ place }) => {
    expect(place.source.work).not.toBe('');
    expect(place.label).toMatch(/^[A-Z]/);
    expect(place.lengthCm).toBeGreaterThanOrEqual(5);
    expect(place.lengthCm).toBeLessThanOrEqual(110);
  });

  it('cite a body or nerve term of UBERON in its form, and no term twice within a kind', () => {
    for (const kind of kinds) {
      const codes = skinPlaceKeys(kind).flatMap((key) => skinPlace(kind, key)?.uberon?.code ?? []);
      expect(codes.filter((code) => !/^UBERON:\d{7}$/.test(code))).toEqual([]);
      expect(new Set(codes).size).toBe(codes.length);
    }
    // The code whose label is sometimes given as dermatome means a part of the embryonic somite.
    expect(allSkinPlaces.some((place) => place.uberon?.code === 'UBERON:0004016')).toBe(false);
  });

  it('use every cutaneous branch of the list, and give each a source', () => {
    const used = new Set(allSkinPlaces.flatMap((place) => place.supplies.map((supply) => supply.via)));
    for (const [key, row] of Object.entries(branchRoots)) {
      expect(used.has(key as PlaceKey), key).toBe(true);
      expect(row.source.work).not.toBe('');
      expect(key in placeTable).toBe(true);
    }
  });
});
