import { describe, expect, it } from 'vitest';
import type { PlaceKey } from '../../src/anatomy/places.ts';
import { type ReflexKey, reflexes, reflexKeys, reflexTable } from '../../src/anatomy/reflexes.ts';
import type { Segment } from '../../src/anatomy/segments.ts';
import { greatestRoot, rootTotals, shareCutAt } from '../support/wiring.ts';

const ucsf = 'UCSF root table';
const upstate = 'Upstate Medical University reflex table';
const dejong = 'DeJong, 8th ed';
const notes = 'public notes on cutaneous reflex levels';

type Textbook = readonly [ReflexKey, roots: readonly Segment[], main: readonly Segment[], source: string];

// Levels as the named work gives them; two main roots where it names two.
const textbook: readonly Textbook[] = [
  ['biceps', ['C5', 'C6'], ['C5'], ucsf],
  ['brachioradialis', ['C5', 'C6'], ['C6'], ucsf],
  ['triceps', ['C6', 'C7', 'C8'], ['C7'], ucsf],
  ['finger-flexor', ['C7', 'C8', 'T1'], ['C8'], ucsf],
  ['deltoid', ['C5', 'C6'], ['C5'], dejong],
  ['pectoral', ['C5', 'C6', 'C7', 'C8', 'T1'], ['C6'], dejong],
  ['pronator', ['C6', 'C7'], ['C6', 'C7'], dejong],
  ['abdominal-upper', ['T7', 'T8', 'T9', 'T10'], ['T8', 'T9'], dejong],
  ['abdominal-lower', ['T10', 'T11', 'T12'], ['T11', 'T12'], dejong],
  ['cremasteric', ['L1', 'L2'], ['L1'], dejong],
  ['adductor', ['L2', 'L3', 'L4'], ['L3'], dejong],
  ['knee', ['L2', 'L3', 'L4'], ['L3', 'L4'], ucsf],
  ['medial-hamstring', ['L5', 'S1'], ['L5'], 'Preston and Shapiro, 4th ed'],
  ['ankle', ['S1', 'S2'], ['S1'], upstate],
  ['anal', ['S2', 'S3', 'S4'], ['S4'], notes],
  ['bulbocavernosus', ['S2', 'S3', 'S4'], ['S3'], notes],
];

describe('the levels of the reflexes', () => {
  it.each(textbook)('%s runs through %j, mainly %j (%s)', (key, roots, main) => {
    const totals = rootTotals(reflexes[key].efferent);
    for (const root of roots) expect(totals.get(root), root).toBeGreaterThanOrEqual(0.1);
    const named = roots.reduce((sum, root) => sum + (totals.get(root) ?? 0), 0);
    expect(named).toBeGreaterThanOrEqual(0.85);
    expect(main).toContain(reflexes[key].dominantRoot);
    expect(reflexes[key].dominantRoot).toBe(greatestRoot(reflexes[key].efferent));
  });

  it('sends the jaw jerk through no spinal root', () => {
    expect(reflexes.jaw.dominantRoot).toBeNull();
    expect(rootTotals(reflexes.jaw.afferent).size).toBe(0);
  });
});

type Lesion = readonly [PlaceKey, lost: readonly ReflexKey[], kept: readonly ReflexKey[]];

describe('the nerves of the reflexes', () => {
  // Source: Preston and Shapiro, Electromyography and Neuromuscular Disorders, 4th ed, the chapters on each nerve.
  it.each<Lesion>([
    ['musculocutaneous-nerve', ['biceps'], ['brachioradialis', 'triceps']],
    ['radial-nerve-axilla', ['triceps', 'brachioradialis'], ['biceps']],
    ['radial-nerve-spiral-groove', ['brachioradialis'], ['triceps']],
    ['posterior-interosseous-nerve', [], ['triceps', 'brachioradialis']],
    ['upper-trunk', ['biceps', 'brachioradialis', 'deltoid'], ['triceps', 'finger-flexor']],
    ['femoral-nerve-groin', ['knee'], ['adductor', 'ankle']],
    ['obturator-nerve', ['adductor'], ['knee']],
    ['common-fibular-nerve', [], ['ankle', 'knee', 'medial-hamstring']],
    ['sciatic-nerve', ['ankle', 'medial-hamstring'], ['knee', 'adductor']],
    ['tibial-nerve-tarsal-tunnel', [], ['ankle']],
    ['pudendal-nerve', ['anal', 'bulbocavernosus'], ['cremasteric']],
  ])('a cut at the %s takes %j and leaves %j', (place, lost, kept) => {
    for (const key of lost) expect(shareCutAt(place, reflexes[key].efferent), key).toBeGreaterThanOrEqual(0.8);
    for (const key of kept) expect(shareCutAt(place, reflexes[key].efferent), key).toBeLessThanOrEqual(0.2);
  });
});

describe('absence in health', () => {
  it('follows the published rate of absent ankle jerks over 60', () => {
    // Source: Vrancken 2006, 23 % (16 to 30) over 60, none expected under 60.
    const { under60, from60 } = reflexes.ankle.absentInHealth;
    expect(from60).toBe(0.23);
    expect(under60).toBeLessThanOrEqual(0.02);
  });

  it('follows the hospital series of the abdominal reflexes', () => {
    // Source: Neurology 1957;7:459: 10.3 % under 50, 34.5 % over 50, 16.5 % overall.
    const { under60, from60 } = reflexes['abdominal-upper'].absentInHealth;
    expect(under60).toBeGreaterThanOrEqual(0.103);
    expect(under60).toBeLessThan(0.165);
    expect(from60).toBeCloseTo(0.345, 2);
  });

  it.each(reflexKeys)('of the %s reflex does not fall with age', (key) => {
    const { under60, from60 } = reflexes[key].absentInHealth;
    expect(from60).toBeGreaterThanOrEqual(under60);
    expect(under60).toBeGreaterThan(0);
    expect(from60).toBeLessThan(1);
  });
});

describe('the look-up', () => {
  it('finds every reflex, and nothing that an object has by nature', () => {
    for (const key of reflexKeys) expect(reflexTable.get(key)).toBe(reflexes[key]);
    expect(reflexTable.get('__proto__')).toBeUndefined();
  });

  it('holds at least 18 reflexes', () => {
    expect(reflexKeys.length).toBeGreaterThanOrEqual(18);
  });
});
