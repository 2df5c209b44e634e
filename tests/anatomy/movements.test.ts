import { describe, expect, it } from 'vitest';
import { type MovementKey, movementKeys, movements, movementTable } from '../../src/anatomy/movements.ts';
import type { PlaceKey } from '../../src/anatomy/places.ts';
import type { Segment } from '../../src/anatomy/segments.ts';
import { motorDeficit, motorItem } from '../../src/localisation/forward/motor.ts';
import { hypothesis } from '../../src/localisation/hypothesis.ts';
import { LesionBuilder } from '../../src/localisation/lesion.ts';
import { greatestRoot, rootTotals, shareCutAt } from '../support/wiring.ts';

// Source: International Standards for Neurological Classification of Spinal Cord Injury, revised 2019, key muscles.
const keyMuscles: readonly (readonly [Segment, MovementKey])[] = [
  ['C5', 'elbow-flexion'],
  ['C6', 'wrist-extension'],
  ['C7', 'elbow-extension'],
  ['C8', 'finger-flexion'],
  ['T1', 'little-finger-abduction'],
  ['L2', 'hip-flexion'],
  ['L3', 'knee-extension'],
  ['L4', 'ankle-dorsiflexion'],
  ['L5', 'great-toe-extension'],
  ['S1', 'ankle-plantarflexion'],
];

describe('the key muscles of the spinal standard', () => {
  it.each(keyMuscles)('%s is scored by %s, which gets at least a quarter from that root', (segment, key) => {
    expect(movements[key].keyMuscleOf).toBe(segment);
    expect(rootTotals(movements[key].supplies).get(segment)).toBeGreaterThanOrEqual(0.25);
  });

  it('are ten, one for each segment', () => {
    expect(movementKeys.filter((key) => movements[key].keyMuscleOf !== undefined)).toHaveLength(keyMuscles.length);
  });

  it('come mostly from their segment, save the ankle dorsiflexors, which L5 serves more', () => {
    const exceptions = keyMuscles.filter(([segment, key]) => movements[key].dominantRoot !== segment);
    expect(exceptions).toEqual([['L4', 'ankle-dorsiflexion']]);
  });
});

const mrc = 'Aids to the Examination of the Peripheral Nervous System, 5th ed';
const ucsf = 'UCSF root table';
const ortho = 'public lower limb root table';
const preston = 'Preston and Shapiro, 4th ed';

type Textbook = readonly [MovementKey, roots: readonly Segment[], main: Segment, nerve: PlaceKey, source: string];

// Roots, main root and nerve of the main muscle as the named work gives them.
const textbook: readonly Textbook[] = [
  ['shoulder-shrug', ['C3', 'C4'], 'C4', 'spinal-accessory-nerve', mrc],
  ['scapular-retraction', ['C4', 'C5'], 'C5', 'dorsal-scapular-nerve', mrc],
  ['scapular-protraction', ['C5', 'C6', 'C7'], 'C6', 'long-thoracic-nerve', mrc],
  ['shoulder-abduction-initiation', ['C5', 'C6'], 'C5', 'suprascapular-nerve', mrc],
  ['shoulder-abduction', ['C5', 'C6'], 'C5', 'axillary-nerve', ucsf],
  ['shoulder-external-rotation', ['C5', 'C6'], 'C5', 'suprascapular-nerve', mrc],
  ['shoulder-horizontal-adduction-upper', ['C5', 'C6'], 'C6', 'lateral-pectoral-nerve', mrc],
  ['shoulder-horizontal-adduction-lower', ['C6', 'C7', 'C8'], 'C7', 'lateral-pectoral-nerve', mrc],
  ['shoulder-adduction-posterior', ['C6', 'C7', 'C8'], 'C7', 'thoracodorsal-nerve', mrc],
  ['elbow-flexion', ['C5', 'C6'], 'C5', 'musculocutaneous-nerve', ucsf],
  ['elbow-flexion-midprone', ['C5', 'C6'], 'C6', 'radial-nerve-spiral-groove', ucsf],
  ['elbow-extension', ['C6', 'C7', 'C8'], 'C7', 'radial-nerve-axilla', ucsf],
  ['forearm-supination', ['C6', 'C7'], 'C6', 'radial-nerve-elbow', mrc],
  ['forearm-pronation', ['C6', 'C7'], 'C7', 'median-nerve-elbow', mrc],
  ['wrist-extension-radial', ['C5', 'C6'], 'C6', 'radial-nerve-spiral-groove', mrc],
  ['wrist-extension-ulnar', ['C7', 'C8'], 'C7', 'posterior-interosseous-nerve', mrc],
  ['wrist-flexion-radial', ['C6', 'C7'], 'C7', 'median-nerve-elbow', mrc],
  ['wrist-flexion-ulnar', ['C7', 'C8', 'T1'], 'C8', 'ulnar-nerve-elbow', mrc],
  ['finger-extension', ['C7', 'C8'], 'C7', 'posterior-interosseous-nerve', ucsf],
  ['index-finger-extension', ['C7', 'C8'], 'C8', 'posterior-interosseous-nerve', preston],
  ['thumb-extension', ['C7', 'C8'], 'C8', 'posterior-interosseous-nerve', preston],
  ['thumb-abduction-radial', ['C7', 'C8'], 'C7', 'posterior-interosseous-nerve', mrc],
  ['finger-flexion-superficial', ['C7', 'C8', 'T1'], 'C8', 'median-nerve-elbow', ucsf],
  ['index-distal-flexion', ['C7', 'C8'], 'C8', 'anterior-interosseous-nerve', mrc],
  ['little-finger-distal-flexion', ['C7', 'C8'], 'C8', 'ulnar-nerve-elbow', mrc],
  ['thumb-flexion', ['C7', 'C8'], 'C8', 'anterior-interosseous-nerve', mrc],
  ['thumb-abduction', ['C8', 'T1'], 'T1', 'median-nerve-wrist', mrc],
  ['thumb-opposition', ['C8', 'T1'], 'T1', 'median-nerve-wrist', mrc],
  ['thumb-adduction', ['C8', 'T1'], 'T1', 'deep-branch-of-ulnar-nerve', mrc],
  ['index-finger-abduction', ['C8', 'T1'], 'T1', 'deep-branch-of-ulnar-nerve', ucsf],
  ['little-finger-abduction', ['C8', 'T1'], 'T1', 'ulnar-nerve-wrist', mrc],
  ['finger-adduction', ['C8', 'T1'], 'T1', 'deep-branch-of-ulnar-nerve', mrc],
  ['hip-flexion', ['L1', 'L2', 'L3'], 'L2', 'lumbar-plexus', ucsf],
  ['hip-adduction', ['L2', 'L3', 'L4'], 'L3', 'obturator-nerve', ortho],
  ['hip-abduction', ['L4', 'L5', 'S1'], 'L5', 'superior-gluteal-nerve', ortho],
  ['hip-internal-rotation', ['L4', 'L5', 'S1'], 'L5', 'superior-gluteal-nerve', ortho],
  ['hip-extension', ['L5', 'S1', 'S2'], 'S1', 'inferior-gluteal-nerve', ortho],
  ['knee-extension', ['L2', 'L3', 'L4'], 'L3', 'femoral-nerve-groin', ucsf],
  ['knee-flexion', ['L5', 'S1', 'S2'], 'S1', 'sciatic-nerve', ortho],
  ['ankle-dorsiflexion', ['L4', 'L5'], 'L5', 'deep-fibular-nerve', mrc],
  ['ankle-inversion', ['L4', 'L5'], 'L5', 'tibial-nerve-calf', mrc],
  ['ankle-eversion', ['L5', 'S1'], 'L5', 'superficial-fibular-nerve', mrc],
  ['ankle-plantarflexion', ['S1', 'S2'], 'S1', 'tibial-nerve-popliteal-fossa', mrc],
  ['great-toe-extension', ['L5', 'S1'], 'L5', 'deep-fibular-nerve', mrc],
  ['toe-extension', ['L5', 'S1'], 'L5', 'deep-fibular-nerve', mrc],
  ['great-toe-flexion', ['L5', 'S1', 'S2'], 'S1', 'tibial-nerve-calf', mrc],
  ['toe-flexion', ['L5', 'S1', 'S2'], 'S1', 'tibial-nerve-calf', mrc],
  ['toe-abduction', ['S1', 'S2'], 'S2', 'tibial-nerve-tarsal-tunnel', mrc],
];

describe('textbook root and nerve supply', () => {
  it.each(textbook)('%s comes from %j, mainly %s, by the %s (%s)', (key, roots, main, nerve) => {
    const { supplies, dominantRoot } = movements[key];
    const totals = rootTotals(supplies);
    for (const root of roots) expect(totals.get(root), root).toBeGreaterThanOrEqual(0.1);
    const named = roots.reduce((sum, root) => sum + (totals.get(root) ?? 0), 0);
    expect(named).toBeGreaterThanOrEqual(0.7);
    expect(dominantRoot).toBe(main);
    expect(shareCutAt(nerve, supplies)).toBeGreaterThan(0.45);
  });

  it.each(movementKeys)('%s names as dominant the root with the greatest share', (key) => {
    const totals = rootTotals(movements[key].supplies);
    const top = totals.get(greatestRoot(movements[key].supplies) ?? 'C1') ?? 0;
    expect(totals.get(movements[key].dominantRoot) ?? 0).toBeCloseTo(top, 9);
  });
});

type Lesion = readonly [PlaceKey, lost: readonly MovementKey[], spared: readonly MovementKey[], source: string];

// What a complete lesion at each place takes and what it leaves, by the order of branching.
const lesions: readonly Lesion[] = [
  // In the posterior triangle the branch to sternocleidomastoid has left already.
  ['spinal-accessory-nerve', ['shoulder-shrug'], ['scapular-protraction', 'neck-rotation'], mrc],
  ['long-thoracic-nerve', ['scapular-protraction'], ['scapular-retraction', 'shoulder-abduction'], mrc],
  [
    'upper-trunk',
    ['shoulder-abduction', 'shoulder-external-rotation', 'elbow-flexion', 'elbow-flexion-midprone'],
    ['scapular-retraction', 'scapular-protraction', 'elbow-extension', 'finger-flexion'],
    preston,
  ],
  [
    'lower-trunk',
    ['thumb-abduction', 'finger-abduction', 'index-distal-flexion', 'little-finger-distal-flexion'],
    ['shoulder-abduction', 'elbow-flexion', 'elbow-extension', 'wrist-extension-radial'],
    preston,
  ],
  [
    'medial-cord',
    ['finger-abduction', 'thumb-abduction', 'wrist-flexion-ulnar'],
    ['finger-extension', 'index-finger-extension', 'wrist-flexion-radial'],
    preston,
  ],
  [
    'lateral-cord',
    ['elbow-flexion', 'wrist-flexion-radial'],
    ['shoulder-abduction', 'elbow-extension', 'thumb-abduction'],
    preston,
  ],
  [
    'posterior-cord',
    ['shoulder-abduction', 'elbow-extension', 'finger-extension', 'shoulder-adduction-posterior'],
    ['elbow-flexion', 'shoulder-external-rotation', 'finger-flexion'],
    preston,
  ],
  ['suprascapular-nerve', ['shoulder-abduction-initiation', 'shoulder-external-rotation'], ['shoulder-abduction'], mrc],
  ['suprascapular-nerve-spinoglenoid', ['shoulder-external-rotation'], ['shoulder-abduction-initiation'], preston],
  ['axillary-nerve', ['shoulder-abduction'], ['shoulder-abduction-initiation', 'shoulder-external-rotation'], mrc],
  ['musculocutaneous-nerve', ['elbow-flexion'], ['shoulder-abduction', 'wrist-extension'], mrc],
  ['radial-nerve-axilla', ['elbow-extension', 'wrist-extension', 'finger-extension'], ['shoulder-abduction'], preston],
  ['radial-nerve-spiral-groove', ['wrist-extension', 'finger-extension'], ['elbow-extension'], preston],
  [
    'posterior-interosseous-nerve',
    ['finger-extension', 'thumb-extension', 'wrist-extension-ulnar', 'thumb-abduction-radial'],
    ['wrist-extension-radial', 'wrist-extension', 'elbow-flexion-midprone', 'forearm-supination'],
    preston,
  ],
  [
    'anterior-interosseous-nerve',
    ['thumb-flexion', 'index-distal-flexion'],
    ['thumb-abduction', 'finger-flexion-superficial', 'wrist-flexion-radial', 'little-finger-distal-flexion'],
    preston,
  ],
  [
    'median-nerve-wrist',
    ['thumb-abduction', 'thumb-opposition'],
    ['thumb-flexion', 'index-distal-flexion', 'index-finger-abduction'],
    preston,
  ],
  [
    'ulnar-nerve-elbow',
    ['wrist-flexion-ulnar', 'little-finger-distal-flexion', 'finger-abduction', 'thumb-adduction'],
    ['thumb-abduction', 'index-distal-flexion', 'finger-extension'],
    preston,
  ],
  [
    'ulnar-nerve-wrist',
    ['finger-abduction', 'little-finger-abduction', 'index-finger-abduction'],
    ['wrist-flexion-ulnar', 'little-finger-distal-flexion'],
    preston,
  ],
  [
    'deep-branch-of-ulnar-nerve',
    ['index-finger-abduction', 'thumb-adduction', 'little-finger-abduction'],
    ['little-finger-distal-flexion'],
    preston,
  ],
  // The branch to the little-finger muscles leaves where the deep branch begins.
  [
    'deep-branch-of-ulnar-nerve-beyond-hypothenar',
    ['index-finger-abduction', 'thumb-adduction', 'finger-adduction'],
    ['little-finger-abduction'],
    preston,
  ],
  [
    'median-nerve-elbow',
    ['forearm-pronation', 'wrist-flexion-radial', 'finger-flexion-superficial', 'thumb-flexion', 'thumb-abduction'],
    ['little-finger-distal-flexion', 'wrist-flexion-ulnar', 'finger-abduction'],
    preston,
  ],
  [
    'median-nerve-beyond-pronator',
    ['wrist-flexion-radial', 'finger-flexion-superficial', 'thumb-flexion', 'thumb-abduction'],
    ['little-finger-distal-flexion', 'finger-abduction'],
    preston,
  ],
  ['middle-trunk', [], ['shoulder-abduction', 'elbow-flexion', 'finger-abduction', 'thumb-abduction'], preston],
  ['dorsal-scapular-nerve', ['scapular-retraction'], ['shoulder-abduction', 'scapular-protraction'], mrc],
  ['thoracodorsal-nerve', ['shoulder-adduction-posterior'], ['shoulder-abduction', 'elbow-extension'], mrc],
  ['ulnar-nerve-forearm', ['finger-abduction', 'little-finger-abduction'], ['wrist-flexion-ulnar'], preston],
  ['femoral-nerve-pelvis', ['knee-extension'], ['hip-adduction', 'hip-abduction', 'ankle-dorsiflexion'], preston],
  ['superior-gluteal-nerve', ['hip-abduction', 'hip-internal-rotation'], ['hip-extension', 'knee-flexion'], preston],
  ['inferior-gluteal-nerve', ['hip-extension'], ['hip-abduction', 'knee-flexion'], preston],
  ['lumbosacral-trunk', [], ['hip-flexion', 'knee-extension', 'ankle-plantarflexion', 'toe-abduction'], preston],
  [
    'sciatic-nerve-fibular-division',
    ['ankle-dorsiflexion', 'ankle-eversion', 'great-toe-extension'],
    ['ankle-inversion', 'ankle-plantarflexion', 'knee-flexion-medial', 'hip-abduction'],
    preston,
  ],
  [
    'sciatic-nerve-tibial-division',
    ['ankle-plantarflexion', 'ankle-inversion', 'toe-flexion', 'knee-flexion-medial'],
    ['ankle-dorsiflexion', 'ankle-eversion', 'hip-extension'],
    preston,
  ],
  [
    'tibial-nerve-popliteal-fossa',
    ['ankle-plantarflexion', 'ankle-inversion', 'toe-flexion'],
    ['knee-flexion', 'ankle-dorsiflexion'],
    preston,
  ],
  [
    'lumbar-plexus',
    ['hip-flexion', 'knee-extension', 'hip-adduction'],
    ['hip-abduction', 'ankle-dorsiflexion', 'knee-flexion'],
    preston,
  ],
  ['femoral-nerve-groin', ['knee-extension'], ['hip-flexion', 'hip-adduction'], preston],
  ['obturator-nerve', ['hip-adduction'], ['knee-extension', 'hip-flexion'], preston],
  [
    'sacral-plexus',
    ['hip-abduction', 'hip-extension', 'knee-flexion', 'ankle-dorsiflexion', 'ankle-plantarflexion'],
    ['knee-extension', 'hip-flexion', 'hip-adduction'],
    preston,
  ],
  [
    'sciatic-nerve',
    ['knee-flexion', 'ankle-dorsiflexion', 'ankle-plantarflexion', 'ankle-inversion'],
    ['hip-abduction', 'hip-extension', 'knee-extension'],
    preston,
  ],
  [
    'common-fibular-nerve',
    ['ankle-dorsiflexion', 'ankle-eversion', 'great-toe-extension', 'toe-extension'],
    ['ankle-inversion', 'hip-abduction', 'knee-flexion', 'knee-flexion-lateral', 'ankle-plantarflexion'],
    preston,
  ],
  ['deep-fibular-nerve', ['ankle-dorsiflexion', 'great-toe-extension'], ['ankle-eversion', 'ankle-inversion'], preston],
  ['superficial-fibular-nerve', ['ankle-eversion'], ['ankle-dorsiflexion', 'toe-extension'], preston],
  ['tibial-nerve-tarsal-tunnel', ['toe-abduction'], ['ankle-plantarflexion', 'ankle-inversion'], preston],
];

describe('the order of branching', () => {
  it.each(lesions)('a cut at the %s takes %j and leaves %j (%s)', (place, lost, spared) => {
    for (const key of lost) expect(shareCutAt(place, movements[key].supplies), key).toBeGreaterThanOrEqual(0.7);
    for (const key of spared) expect(shareCutAt(place, movements[key].supplies), key).toBeLessThanOrEqual(0.25);
  });

  it('divides hip flexion between the plexus itself and the femoral nerve in the pelvis', () => {
    const share = shareCutAt('femoral-nerve-pelvis', movements['hip-flexion'].supplies);
    expect(share).toBeGreaterThan(0.3);
    expect(share).toBeLessThan(0.6);
  });

  // Source: Preston and Shapiro, 4th ed, brachial and lumbosacral plexopathies: what the part that carries one root takes.
  it.each<[PlaceKey, MovementKey]>([
    ['middle-trunk', 'elbow-extension'],
    ['middle-trunk', 'finger-extension'],
    ['middle-trunk', 'wrist-flexion-radial'],
    ['lumbosacral-trunk', 'great-toe-extension'],
    ['lumbosacral-trunk', 'hip-abduction'],
    ['lumbosacral-trunk', 'ankle-inversion'],
  ])('a cut at the %s takes more than half of %s', (place, key) => {
    expect(shareCutAt(place, movements[key].supplies)).toBeGreaterThan(0.5);
  });

  it('lets no cervical root paralyse the muscles of the accessory nerve, which has rootlets of its own', () => {
    for (const root of ['C1', 'C2', 'C3', 'C4', 'C5'] as const) {
      const lesion = new LesionBuilder().root('left', root, 1, 1).build();
      const weak = hypothesis({ key: 'test', label: 'Test', side: 'left', level: root, kind: 'root' }, '', 1, lesion);
      const loss = (key: MovementKey) => motorDeficit(weak, motorItem(movements[key], 'left')).lower;
      expect(loss('neck-rotation')).toBeLessThan(0.1);
      expect(loss('shoulder-shrug')).toBeLessThan(0.2);
    }
  });

  it('weakens inversion and hip abduction with an L5 root but not with the common fibular nerve', () => {
    for (const key of ['ankle-inversion', 'hip-abduction'] as const) {
      expect(rootTotals(movements[key].supplies).get('L5')).toBeGreaterThan(0.5);
      expect(shareCutAt('common-fibular-nerve', movements[key].supplies)).toBeLessThan(0.2);
    }
  });
});

describe('the weakness of an upper motor neuron lesion', () => {
  it.each<[MovementKey, MovementKey]>([
    ['shoulder-abduction', 'shoulder-adduction'],
    ['shoulder-external-rotation', 'shoulder-internal-rotation'],
    ['elbow-extension', 'elbow-flexion'],
    ['wrist-extension', 'wrist-flexion'],
    ['finger-extension', 'finger-flexion'],
    ['forearm-supination', 'forearm-pronation'],
    ['hip-flexion', 'hip-extension'],
    ['hip-abduction', 'hip-adduction'],
    ['knee-flexion', 'knee-extension'],
    ['ankle-dorsiflexion', 'ankle-plantarflexion'],
    ['ankle-eversion', 'ankle-inversion'],
  ])('shows more in %s than in %s', (weaker, stronger) => {
    expect(movements[weaker].pyramidalWeight).toBeGreaterThan(movements[stronger].pyramidalWeight);
  });
});

describe('the look-up', () => {
  it('finds every movement, and nothing that an object has by nature', () => {
    for (const key of movementKeys) expect(movementTable.get(key)).toBe(movements[key]);
    expect(movementTable.get('__proto__')).toBeUndefined();
    expect(movementTable.get('constructor')).toBeUndefined();
  });

  it('holds at least 58 movements', () => {
    expect(movementKeys.length).toBeGreaterThanOrEqual(58);
  });
});
