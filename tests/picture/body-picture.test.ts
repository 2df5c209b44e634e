import { describe, expect, it } from 'vitest';
import { segments } from '../../src/anatomy/segments.ts';
import { dermatomeKeys } from '../../src/anatomy/skin.ts';
import { dermatomesBelow, landmarkKeys, type SkinPlaceKind, territoryKeys } from '../../src/anatomy/skin-places.ts';
import { keyPoints } from '../../src/picture/key-points.ts';
import { views } from '../../src/picture/views.ts';
import { covers, dermatomesOf, outlineRings, picture, ringsOfPatch, viewOf } from './view-geometry.ts';

const drawn = new Set(picture.views.flatMap(({ patches }) => patches.map(({ kind, key }) => `${kind} ${key}`)));

/** Points between the whole units on which borders lie, so that none lies on a border. */
function pointsOf({ width, height }: { readonly width: number; readonly height: number }, step = 3) {
  const points: (readonly [number, number])[] = [];
  for (let y = 0.37; y < height; y += step) for (let x = width / 2 + 0.41; x < width; x += step) points.push([x, y]);
  return points;
}

/** A point and what lies two units about it, as far as the outline and the border of a patch may be drawn apart. */
const around = (x: number, y: number) =>
  [
    [x, y],
    [x - 2, y],
    [x + 2, y],
    [x, y - 2],
    [x, y + 2],
  ] as const;

describe('the pictures of the body', () => {
  it.each<readonly [SkinPlaceKind, readonly string[]]>([
    ['dermatome', dermatomeKeys],
    ['territory', territoryKeys],
    ['landmark', landmarkKeys],
  ])('have a place for every %s; a row without one is added to the tables of src/picture', (kind, keys) => {
    expect(keys.filter((key) => !drawn.has(`${kind} ${key}`))).toEqual([]);
  });

  it('have nothing of another key', () => {
    const known = new Set([
      ...dermatomeKeys.map((key) => `dermatome ${key}`),
      ...territoryKeys.map((key) => `territory ${key}`),
      ...landmarkKeys.map((key) => `landmark ${key}`),
    ]);
    expect([...drawn].filter((name) => !known.has(name))).toEqual([]);
  });

  it.each(picture.views.map((view) => [view.key, view] as const))('tile the %s with dermatomes', (_, view) => {
    const dermatomes = dermatomesOf(view).map((patch) => ringsOfPatch(patch));
    const face = ringsOfPatch(
      view.patches.find(({ key }) => key === 'half-face') ?? { kind: 'landmark', key: '', at: [0, 0] },
    );
    const outline = outlineRings(view);
    const isIn = (x: number, y: number) => covers(outline, x, y);
    let [seen, bare, doubled, beside] = [0, 0, 0, 0];
    for (const [x, y] of pointsOf(view)) {
      const count = dermatomes.filter((rings) => covers(rings, x, y)).length;
      if (count > 1) doubled++;
      if (around(x, y).every(([nearX, nearY]) => !isIn(nearX, nearY))) beside += count;
      if (covers(face, x, y) || !around(x, y).every(([nearX, nearY]) => isIn(nearX, nearY))) continue;
      seen++;
      if (count === 0) bare++;
    }
    expect(seen).toBeGreaterThan(100);
    expect([doubled, beside]).toEqual([0, 0]);
    // Along the face, whose border is drawn twice.
    expect(bare / seen).toBeLessThan(0.002);
  });

  // Key Sensory Points guide to the International Standards (ASIA 2008), as placed in key-points.ts.
  it.each(dermatomeKeys)('have the key point of %s in its own patch', (key) => {
    const spot = keyPoints[key];
    const showing = views.flatMap((view) => {
      const point = view.pointOf(spot);
      return point === undefined ? [] : [{ view, x: point.x + view.width / 2, y: point.y }];
    });
    expect(showing.length).toBeGreaterThan(0);
    for (const { view, x, y } of showing) {
      const own = dermatomesOf(viewOf(view.key)).filter((patch) => covers(ringsOfPatch(patch), x, y));
      expect(own.map((patch) => patch.key)).toEqual([key]);
    }
  });

  it('point well inside each patch', () => {
    for (const view of picture.views) {
      for (const patch of view.patches) {
        if (patch.path === undefined) continue;
        const [x, y] = patch.at;
        expect([view.key, patch.key, covers(ringsOfPatch(patch), x + 0.01, y + 0.01)]).toEqual([
          view.key,
          patch.key,
          true,
        ]);
      }
    }
  });

  it('have every spot on the body', () => {
    for (const view of picture.views) {
      const spots = view.patches.filter(({ path }) => path === undefined);
      const outline = outlineRings(view);
      const off = spots.filter(({ at: [x, y] }) => !covers(outline, Math.min(x, view.width - 1) - 0.01, y + 0.01));
      expect([view.key, off.map(({ key }) => key)]).toEqual([view.key, []]);
    }
  });

  it('name for a segment the first dermatome of those that are lost with a level there', () => {
    for (const segment of segments) {
      const first = picture.firstBelow[segment];
      const from = first === undefined ? [] : dermatomeKeys.slice(dermatomeKeys.indexOf(first));
      expect([segment, from]).toEqual([segment, dermatomesBelow(segment)]);
    }
  });
});
