import { describe, expect, it } from 'vitest';
import type { DermatomeKey } from '../../src/anatomy/skin.ts';
import type { Spot } from '../../src/picture/surface.ts';
import { territoryRegions } from '../../src/picture/territory-regions.ts';
import { type ViewKey, views } from '../../src/picture/views.ts';
import { covers, dermatomesOf, picture, ringsOfPatch, viewOf } from './view-geometry.ts';

/** Pairs of dermatomes that have a point of their border in common, in any view. */
function neighbours(view: ViewKey): ReadonlySet<string> {
  const owners = new Map<string, DermatomeKey[]>();
  for (const patch of dermatomesOf(viewOf(view))) {
    for (const [x, y] of new Set(ringsOfPatch(patch).flat())) {
      owners.set(`${x} ${y}`, [...(owners.get(`${x} ${y}`) ?? []), patch.key as DermatomeKey]);
    }
  }
  return new Set([...owners.values()].flatMap((keys) => keys.flatMap((one) => keys.map((other) => `${one} ${other}`))));
}

const dermatomeAt = (view: ViewKey, spot: Spot) => {
  const drawn = views.find(({ key }) => key === view);
  const point = drawn?.pointOf(spot);
  if (drawn === undefined || point === undefined) return 'not seen';
  const [x, y] = [point.x + drawn.width / 2 + 0.01, point.y + 0.01];
  return dermatomesOf(viewOf(view)).find((patch) => covers(ringsOfPatch(patch), x, y))?.key ?? 'none';
};

describe('the map of the dermatomes', () => {
  // Order along the body and the limbs: Gray's Anatomy, dermatomes; International Standards, ASIA.
  it('has neighbours touch in the order of the cord, and C4 meet T2 on the chest', () => {
    const front = neighbours('front');
    const back = neighbours('back');
    for (const pair of [
      'C2 C3',
      'C3 C4',
      'C4 T2',
      'C5 C6',
      'C6 C7',
      'C7 C8',
      'C8 T1',
      'T1 T2',
      'T2 T3',
      'T6 T7',
      'T11 T12',
      'T12 L1',
      'L1 L2',
      'L2 L3',
      'L3 L4',
      'L4 L5',
      'L5 S1',
    ]) {
      expect([pair, front.has(pair)]).toEqual([pair, true]);
    }
    for (const pair of ['S1 S2', 'S2 S3', 'S3 S4-5', 'L5 S1', 'C4 T2'])
      expect([pair, back.has(pair)]).toEqual([pair, true]);
    for (const pair of ['C4 T1', 'C5 T3', 'C8 T3', 'C4 T3']) expect([pair, front.has(pair)]).toEqual([pair, false]);
  });

  it('has segments meet along the axial lines that are no neighbours in the cord', () => {
    for (const pair of ['C5 T1', 'C6 C8'])
      expect([pair, neighbours('front').has(pair)]).toEqual([pair, pair === 'C5 T1']);
    expect(neighbours('back').has('L3 S2')).toBe(true);
  });

  // Aids to the Examination of the Peripheral Nervous System, dermatomes; key points of the International Standards.
  it.each<readonly [string, ViewKey, Spot, string]>([
    ['thumb', 'palms', { part: 'palm', around: 1, along: 0.8 }, 'C6'],
    ['middle finger', 'palms', { part: 'palm', around: 3, along: 0.8 }, 'C7'],
    ['little finger', 'hand-backs', { part: 'hand-back', around: 5, along: 0.8 }, 'C8'],
    ['nipple', 'front', { part: 'axis', around: 4, along: 267 }, 'T4'],
    ['navel', 'front', { part: 'axis', around: -84, along: 400 }, 'T10'],
    ['inner knee', 'front', { part: 'axis', around: -76, along: 720 }, 'L3'],
    ['inner ankle bone', 'front', { part: 'axis', around: -80, along: 944 }, 'L4'],
    ['top of the foot', 'foot-tops', { part: 'foot-top', around: 3, along: 0.5 }, 'L5'],
    ['great toe', 'foot-tops', { part: 'foot-top', around: 1, along: 0.92 }, 'L5'],
    ['little toe', 'foot-tops', { part: 'foot-top', around: 5, along: 0.9 }, 'S1'],
    ['outer sole', 'soles', { part: 'sole', around: 4.6, along: 0.5 }, 'S1'],
    ['heel', 'soles', { part: 'sole', around: 3, along: 0.1 }, 'S1'],
    ['back of the thigh', 'back', { part: 'axis', around: 182, along: 640 }, 'S2'],
    ['skin beside the anus', 'saddle', { part: 'saddle', around: 10, along: 132 }, 'S4-5'],
    ['genitals', 'saddle', { part: 'saddle', around: 8, along: 50 }, 'S3'],
  ])('gives the %s of the %s picture its own segment', (_, view, spot, key) => {
    expect(dermatomeAt(view, spot)).toBe(key);
  });

  it("shows the patient's left on the right of the viewer from the front and on the left from the back", () => {
    expect(Object.fromEntries(views.map(({ key, drawnSide }) => [key, drawnSide]))).toMatchObject({
      front: 'left',
      back: 'right',
      face: 'left',
    });
    for (const view of picture.views) {
      const beyond = view.patches.filter(({ at: [x] }) => x < view.width / 2);
      expect([view.key, beyond.map(({ key }) => key)]).toEqual([view.key, []]);
    }
  });

  it('names a source beside every area', () => {
    for (const regions of Object.values(territoryRegions)) {
      expect(regions.length).toBeGreaterThan(0);
      for (const { source } of regions) expect(source.work).not.toBe('');
    }
  });
});
