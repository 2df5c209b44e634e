import { describe, expect, it } from 'vitest';
import { dermatomes } from '../../src/anatomy/dermatomes.ts';
import { type PlaceKey, placeKeys } from '../../src/anatomy/places.ts';
import { type Segment, segmentIndex } from '../../src/anatomy/segments.ts';
import { type DermatomeKey, dermatomeKeys, type SkinPlace } from '../../src/anatomy/skin.ts';
import { allSkinPlaces, dermatomesBelow, skinPlace, skinPlaceKeys } from '../../src/anatomy/skin-places.ts';
import { greatestRoot, rootTotals, shareCutAt } from '../support/wiring.ts';

function landmark(key: string): SkinPlace {
  const place = skinPlace('landmark', key);
  if (place === undefined) throw new Error(`no landmark ${key}`);
  return place;
}

function territory(key: string): SkinPlace {
  const place = skinPlace('territory', key);
  if (place === undefined) throw new Error(`no territory ${key}`);
  return place;
}

const cut = (place: SkinPlace, lesion: PlaceKey) => shareCutAt(lesion, place.supplies);
const rootsOf = (place: SkinPlace) => rootTotals(place.supplies);

describe('the dermatomes', () => {
  it.each(dermatomeKeys)('%s comes mostly from its own root, the rest from the roots next to it', (key) => {
    const { segment } = dermatomes[key];
    const own: readonly Segment[] = key === 'S4-5' ? ['S4', 'S5'] : [segment];
    const shares = rootsOf(dermatomes[key]);
    const ownShare = own.reduce((sum, root) => sum + (shares.get(root) ?? 0), 0);
    expect(ownShare).toBeGreaterThanOrEqual(0.72);
    expect(ownShare).toBeLessThanOrEqual(0.9);
    const strangers = [...shares.keys()].filter((root) =>
      own.every((one) => Math.abs(segmentIndex(root) - segmentIndex(one)) > 1),
    );
    expect(strangers).toEqual([]);
  });

  // Source: Key Sensory Points guide to the International Standards, ASIA 2008; where each point lies, in our words.
  it.each<[DermatomeKey, string]>([
    ['C2', 'scalp'],
    ['C3', 'neck'],
    ['C4', 'shoulder'],
    ['C5', 'elbow'],
    ['C6', 'thumb'],
    ['C7', 'middle-finger'],
    ['C8', 'little-finger'],
    ['T1', 'elbow'],
    ['T2', 'axilla'],
    ['T3', 'chest'],
    ['T4', 'chest'],
    ['T5', 'chest'],
    ['T6', 'chest'],
    ['T7', 'abdomen'],
    ['T8', 'abdomen'],
    ['T9', 'abdomen'],
    ['T10', 'abdomen'],
    ['T11', 'abdomen'],
    ['T12', 'abdomen'],
    ['L1', 'thigh'],
    ['L2', 'thigh'],
    ['L3', 'knee'],
    ['L4', 'ankle'],
    ['L5', 'foot'],
    ['S1', 'heel'],
    ['S2', 'knee'],
    ['S3', 'perineum'],
    ['S4-5', 'perianal-skin'],
  ])('%s is tested at a point on the %s', (key, bodyPart) => {
    expect(dermatomes[key].bodyPart).toBe(bodyPart);
  });

  it('do not share roots across the chest, where C4 lies next to T2', () => {
    expect([...rootsOf(dermatomes.C4).keys()].some((root) => root.startsWith('T'))).toBe(false);
    expect([...rootsOf(dermatomes.T2).keys()].some((root) => root.startsWith('C'))).toBe(false);
  });

  it('are farthest from the cord at L5', () => {
    const lengths = dermatomeKeys.map((key) => dermatomes[key].lengthCm);
    expect(Math.max(...lengths)).toBe(dermatomes.L5.lengthCm);
  });

  it('below a segment leave out the segment itself', () => {
    expect(dermatomesBelow('S3')).toEqual(['S4-5']);
    expect(dermatomesBelow('L4')).toEqual(['L5', 'S1', 'S2', 'S3', 'S4-5']);
    expect(dermatomesBelow('C1')).toEqual([...dermatomeKeys]);
    expect(dermatomesBelow('S4')).toEqual([]);
    expect(dermatomesBelow('S5')).toEqual([]);
  });
});

describe('the landmarks', () => {
  // Source: Key Sensory Points guide, ASIA 2008, and the level landmarks of the textbooks (Blumenfeld, 3rd ed.).
  it.each<[string, readonly Segment[]]>([
    ['occiput', ['C2']],
    ['supraclavicular-fossa', ['C3']],
    ['shoulder-tip', ['C4']],
    ['outer-upper-arm', ['C5']],
    ['outer-forearm', ['C6']],
    ['thumb', ['C6']],
    ['middle-finger', ['C7']],
    ['little-finger', ['C8']],
    ['ring-finger', ['C8']],
    ['inner-forearm', ['T1']],
    ['axilla', ['T2']],
    ['nipple', ['T4']],
    ['xiphisternum', ['T6']],
    ['epigastrium', ['T6', 'T7', 'T8']],
    ['costal-margin', ['T7', 'T8']],
    ['umbilicus', ['T10']],
    ['groin', ['L1']],
    ['knee', ['L3']],
    ['inner-shin', ['L4']],
    ['medial-malleolus', ['L4']],
    ['outer-shin', ['L5']],
    ['dorsum-of-foot', ['L5']],
    ['great-toe', ['L5']],
    ['heel', ['S1']],
    ['lateral-malleolus', ['S1']],
    ['outer-border-of-foot', ['S1']],
    ['little-toe', ['S1']],
    ['popliteal-fossa', ['S2']],
    ['back-of-thigh', ['S2']],
    ['saddle', ['S3']],
    ['perianal-skin', ['S4']],
  ])('%s belongs first to %j', (key, roots) => {
    expect(roots).toContain(greatestRoot(landmark(key).supplies));
  });

  it('of the face come from the trigeminal divisions, but the angle of the jaw from C2 and C3', () => {
    expect(cut(landmark('forehead'), 'ophthalmic-nerve')).toBe(1);
    expect(cut(landmark('cheek'), 'maxillary-nerve')).toBe(1);
    expect(cut(landmark('chin'), 'mandibular-nerve')).toBe(1);
    expect(cut(landmark('angle-of-jaw'), 'mandibular-nerve')).toBe(0);
    expect([...rootsOf(landmark('angle-of-jaw')).keys()]).toEqual(['C2', 'C3']);
  });

  it('lie in the order in which length-dependent loss climbs, the fingertips between mid-calf and knee', () => {
    const climbing = [
      'great-toe',
      'sole',
      'ankle',
      'stocking-to-mid-calf',
      'fingertips',
      'stocking-to-knee',
      'stocking-to-thigh',
      'umbilicus',
    ];
    const lengths = climbing.map((key) => landmark(key).lengthCm);
    expect(lengths).toEqual([...lengths].sort((one, other) => other - one));
    expect(landmark('glove-to-wrist').lengthCm).toBeLessThan(landmark('fingertips').lengthCm);
    expect(landmark('glove-to-elbow').lengthCm).toBeLessThan(landmark('glove-to-wrist').lengthCm);
  });

  it.each(skinPlaceKeys('landmark').filter((key) => /^(stocking|glove)-/.test(key)))(
    '%s takes in several nerves',
    (key) => {
      expect(landmark(key).supplies.length).toBeGreaterThanOrEqual(6);
    },
  );
});

// Facts of the textbooks: Aids to the Examination of the Peripheral Nervous System, 5th ed.; Preston and Shapiro, 4th ed.
describe('a lesion at one place of a nerve', () => {
  it.each<[string, PlaceKey, number]>([
    ['ring-finger', 'median-nerve-wrist', 0.5],
    ['ring-finger', 'ulnar-nerve-wrist', 0.5],
    ['ring-finger-radial-half', 'ulnar-nerve-elbow', 0],
    ['ring-finger-ulnar-half', 'median-nerve-wrist', 0],
    ['thenar-eminence', 'median-nerve-wrist', 0],
    ['dorsum-of-hand-ulnar-side', 'ulnar-nerve-wrist', 0],
    ['dorsum-of-hand-ulnar-side', 'ulnar-nerve-elbow', 1],
    ['inner-forearm', 'ulnar-nerve-elbow', 0],
    ['inner-forearm', 'medial-cord', 1],
    ['inner-forearm', 'lower-trunk', 1],
    ['first-dorsal-web-space-of-hand', 'radial-nerve-spiral-groove', 1],
    ['first-dorsal-web-space-of-hand', 'posterior-interosseous-nerve', 0],
    ['back-of-arm', 'radial-nerve-spiral-groove', 0],
    ['outer-forearm', 'musculocutaneous-nerve', 1],
    ['outer-forearm', 'upper-trunk', 1],
    ['outer-thigh', 'lateral-femoral-cutaneous-nerve', 1],
    ['outer-thigh', 'femoral-nerve-pelvis', 0],
    ['inner-shin', 'femoral-nerve-groin', 1],
    ['inner-shin', 'sciatic-nerve', 0],
    ['back-of-thigh', 'sciatic-nerve', 0],
    ['back-of-thigh', 'sacral-plexus', 1],
    ['dorsum-of-foot', 'sciatic-nerve', 1],
    ['first-web-space-of-foot', 'deep-fibular-nerve-ankle', 1],
    ['first-web-space-of-foot', 'superficial-fibular-nerve', 0],
    ['first-web-space-of-foot', 'common-fibular-nerve', 1],
    ['outer-border-of-foot', 'common-fibular-nerve', 0],
    ['heel', 'tibial-nerve-tarsal-tunnel', 0],
    ['sole-medial', 'tibial-nerve-tarsal-tunnel', 1],
    ['sole-lateral', 'tibial-nerve-calf', 1],
    ['perianal-skin', 'sciatic-nerve', 0],
  ])('%s: cut at %s, it loses %d of its fibres', (key, lesion, share) => {
    expect(cut(landmark(key), lesion)).toBeCloseTo(share, 9);
  });

  // Martin 1996 (abstract read): palmar branches of the ulnar nerve in 25 hands.
  it('at the wrist takes about half of the hypothenar skin, at the elbow all of it', () => {
    const shareAtWrist = cut(landmark('hypothenar-eminence'), 'ulnar-nerve-wrist');
    expect(shareAtWrist).toBeGreaterThan(0.3);
    expect(shareAtWrist).toBeLessThan(0.7);
    expect(cut(landmark('hypothenar-eminence'), 'ulnar-nerve-elbow')).toBeCloseTo(1, 9);
  });

  it('at the fibular neck leaves the upper outer shin, in the sciatic nerve it does not', () => {
    const shareAtNeck = cut(landmark('outer-shin'), 'common-fibular-nerve');
    expect(shareAtNeck).toBeGreaterThan(0.2);
    expect(shareAtNeck).toBeLessThan(0.6);
    expect(cut(landmark('outer-shin'), 'sciatic-nerve')).toBeCloseTo(1, 9);
  });

  it('in the lower trunk takes both halves of the ring finger, the radial half for its C8 fibres only', () => {
    expect(cut(landmark('ring-finger-radial-half'), 'lower-trunk')).toBeGreaterThan(0.5);
    expect(cut(landmark('ring-finger-ulnar-half'), 'lower-trunk')).toBeCloseTo(1, 9);
  });

  it('of the deep fibular nerve at the ankle empties its own territory and no other', () => {
    const touched = skinPlaceKeys('territory').filter((key) => cut(territory(key), 'deep-fibular-nerve-ankle') === 1);
    expect(touched).toEqual(['deep-fibular-nerve']);
  });

  it.each<PlaceKey>([
    'posterior-interosseous-nerve',
    'anterior-interosseous-nerve',
    'deep-branch-of-ulnar-nerve',
    'suprascapular-nerve',
    'long-thoracic-nerve',
    'spinal-accessory-nerve',
    'superior-gluteal-nerve',
    'phrenic-nerve',
  ])('takes no skin when it is in the %s', (lesion) => {
    expect(placeKeys).toContain(lesion);
    expect(allSkinPlaces.every((place) => cut(place, lesion) === 0)).toBe(true);
  });
});

describe('the territories', () => {
  it.each<[string, PlaceKey]>([
    ['radial-nerve', 'radial-nerve-axilla'],
    ['median-nerve', 'median-nerve-forearm'],
    ['ulnar-nerve', 'ulnar-nerve-elbow'],
    ['femoral-nerve', 'femoral-nerve-groin'],
    ['sciatic-nerve', 'sciatic-nerve'],
    ['common-fibular-nerve', 'sciatic-nerve-fibular-division'],
    ['tibial-nerve', 'tibial-nerve-calf'],
    ['axillary-nerve', 'axillary-nerve'],
    ['pudendal-nerve', 'pudendal-nerve'],
  ])('of the %s are lost whole when the nerve is cut above all its branches (%s)', (key, lesion) => {
    expect(cut(territory(key), lesion)).toBeCloseTo(1, 9);
  });

  // Source: root ranges in Aids to the Examination of the Peripheral Nervous System, 5th ed., and Gray's Anatomy, 42nd ed.
  it.each<[string, readonly Segment[]]>([
    ['axillary-nerve', ['C5', 'C6']],
    ['lateral-cutaneous-nerve-of-forearm', ['C5', 'C6']],
    ['superficial-radial-nerve', ['C6', 'C7']],
    ['median-nerve', ['C6', 'C7', 'C8']],
    ['ulnar-nerve', ['C8', 'T1']],
    ['medial-cutaneous-nerve-of-forearm', ['C8', 'T1']],
    ['lateral-femoral-cutaneous-nerve', ['L2', 'L3']],
    ['obturator-nerve', ['L2', 'L3', 'L4']],
    ['saphenous-nerve', ['L3', 'L4']],
    ['superficial-fibular-nerve', ['L4', 'L5', 'S1']],
    ['sural-nerve', ['S1', 'S2']],
    ['posterior-femoral-cutaneous-nerve', ['S1', 'S2', 'S3']],
    ['pudendal-nerve', ['S2', 'S3', 'S4']],
  ])('of the %s come from %j', (key, roots) => {
    expect([...rootsOf(territory(key)).keys()].sort()).toEqual([...roots].sort());
  });
});

describe('the look-up', () => {
  it('keeps the kinds apart and knows nothing that is not in its tables', () => {
    expect(skinPlace('dermatome', 'L5')).toBe(dermatomes.L5);
    expect(skinPlace('landmark', 'L5')).toBeUndefined();
    expect(skinPlace('landmark', 'sural-nerve')).toBeUndefined();
    for (const key of ['__proto__', 'constructor', 'toString', '', 'S4']) {
      expect(skinPlace('dermatome', key)).toBeUndefined();
      expect(skinPlace('landmark', key)).toBeUndefined();
    }
  });
});
