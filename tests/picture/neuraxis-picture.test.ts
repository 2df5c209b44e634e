import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { placeKeys, placeTable } from '../../src/anatomy/places.ts';
import { segments } from '../../src/anatomy/segments.ts';
import { bodySides, opposite } from '../../src/kernel/side.ts';
import { brainIndex } from '../../src/localisation/brain-path.ts';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import { cordIndex, placeIndex } from '../../src/localisation/lesion.ts';
import { siteCatalogue } from '../../src/localisation/sites.ts';
import { allBrainDrawings } from '../../src/picture/neuraxis/brain-drawings.ts';
import { cordParts, rootName, segmentName } from '../../src/picture/neuraxis/cord-drawings.ts';
import { lengthCmTo, shownAt } from '../../src/picture/neuraxis/nerve-drawings.ts';
import { neuraxisPicture } from '../../src/picture/neuraxis/neuraxis-picture.ts';

const picture = neuraxisPicture();
const shapes = new Map(picture.shapes.map((shape) => [shape.name, shape]));
const own = (site: string): readonly string[] => picture.sites[site]?.own ?? [];

/** Every shape that a hypothesis damages, with its side, read from the arrays of the lesion one cell at a time. */
function damagedShapes({ damage, site }: (typeof hypotheses)[number]): ReadonlySet<string> {
  const names = new Set<string>();
  for (const side of bodySides) {
    for (const { name, holds } of allBrainDrawings)
      if (holds.some((key) => (damage.brain[brainIndex(side, key)] ?? 0) > 0)) names.add(`${name}.${side}`);
    for (const key of placeKeys) {
      const index = placeIndex(side, key);
      if ((damage.motorPlace[index] ?? 0) + (damage.sensoryPlace[index] ?? 0) > 0) names.add(`${shownAt(key)}.${side}`);
    }
    segments.forEach((segment, level) => {
      const index = cordIndex(side, level);
      for (const part of Object.keys(cordParts) as (keyof typeof cordParts)[])
        if ((damage[part][index] ?? 0) > 0)
          names.add(`${cordParts[part]}.${side}`).add(`${segmentName(segment)}.${side}`);
      if (site.kind !== 'cord' && (damage.ventralRoot[index] ?? 0) + (damage.dorsalRoot[index] ?? 0) > 0)
        names.add(`${rootName(segment)}.${side}`);
    });
  }
  return names;
}

/** The shapes that an answer with this site marks, each with its side. */
function markedShapes({ key, side, level, span }: (typeof hypotheses)[number]['site']): readonly string[] {
  const mapped = picture.sites[key] ?? { own: [], other: [] };
  const levels = (span ?? [level]).flatMap((one) => (one === null ? [] : [one.toLowerCase()]));
  const named = (names: readonly string[], on: string) =>
    names
      .flatMap((name) => (name.endsWith('-@') ? levels.map((one) => name.replace('@', one)) : [name]))
      .map((name) => `${name}.${on}`);
  if (side === 'left' || side === 'right') return [...named(mapped.own, side), ...named(mapped.other, opposite(side))];
  return bodySides.flatMap((one) => named([...mapped.own, ...mapped.other], one));
}

describe('the sites of the model in the picture', () => {
  it('gives every site but health a shape, and names only shapes that there are', () => {
    for (const { site } of siteCatalogue()) {
      const marked = markedShapes(site);
      expect(marked.length > 0, site.label).toBe(site.kind !== 'none');
      for (const name of marked)
        expect(shapes.has(name.replace(/\.(left|right)$/, '')), `${site.label}: ${name}`).toBe(true);
    }
    expect(own('no-lesion')).toEqual([]);
  });

  it('marks a damaged structure on its side for nine in ten lesions of every site', () => {
    const all = new Map<string, number>();
    const hit = new Map<string, number>();
    for (const one of hypotheses) {
      const damaged = damagedShapes(one);
      // A place on a nerve is marked there, whichever fascicles are hit; see the test below.
      if (damaged.size === 0 || placeKeys.some((key) => key === one.site.key)) continue;
      const isHit = markedShapes(one.site).some((name) => damaged.has(name));
      all.set(one.site.key, (all.get(one.site.key) ?? 0) + one.frequency);
      hit.set(one.site.key, (hit.get(one.site.key) ?? 0) + (isHit ? one.frequency : 0));
    }
    const poor = [...all].filter(([key, frequency]) => (hit.get(key) ?? 0) < 0.9 * frequency).map(([key]) => key);
    // Encephalopathy marks the whole cortex; in one of its forms the white matter suffers.
    expect(poor.filter((key) => key !== 'diffuse-encephalopathy')).toEqual([]);
  });

  it('marks a lesion of a place on a nerve or plexus at that place alone', () => {
    const named = siteCatalogue().filter(({ site }) => placeKeys.some((key) => key === site.key));
    expect(named.length).toBeGreaterThan(100);
    for (const { site } of named) expect(picture.sites[site.key]).toEqual({ own: [site.key], other: [] });
  });

  it('marks nothing on the other side of a one-sided lesion that the lesion does not reach', () => {
    const sided = hypotheses.filter(({ site }) => site.side === 'left' || site.side === 'right');
    const reached = new Set(
      sided.flatMap((one) => [...damagedShapes(one)].map((name) => `${one.site.key}|${one.site.side}|${name}`)),
    );
    for (const { site } of sided)
      for (const name of markedShapes(site)) {
        const shape = shapes.get(name.replace(/\.(left|right)$/, ''));
        if (shape?.paired && !name.endsWith(`.${site.side}`))
          expect(reached).toContain(`${site.key}|${site.side}|${name}`);
      }
  });

  it('marks root and cord segment at the level that is named', () => {
    for (const { site } of hypotheses.filter(({ site }) => site.level !== null)) {
      const level = site.level?.toLowerCase();
      expect(
        markedShapes(site).some((name) => name.startsWith(`root-${level}.`) || name.startsWith(`segment-${level}.`)),
      ).toBe(true);
    }
  });
});

/** Distributions as Preston and Shapiro, Electromyography and Neuromuscular Disorders, and Brazis teach them (recalled). */
describe('processes in the picture', () => {
  it('shows a length-dependent polyneuropathy in the longest nerves first', () => {
    const lit = own('length-dependent-polyneuropathy');
    expect(lit).toEqual(
      expect.arrayContaining(['sural-nerve', 'medial-plantar-nerve', 'superficial-fibular-nerve-ankle']),
    );
    for (const name of ['femoral-nerve-groin', 'sciatic-nerve', 'radial-nerve-axilla', 'axillary-nerve'])
      expect(lit).not.toContain(name);
    expect(own('motor-polyneuropathy')).not.toContain('sural-nerve');
    expect(own('autonomic-neuropathy')).toEqual(['sympathetic-chain']);
  });

  it('shows inflammation of roots and nerves in both, and a ganglionopathy in the ganglia alone', () => {
    expect(own('demyelinating-polyradiculoneuropathy')).toEqual(
      expect.arrayContaining(['root-c6', 'root-l5', 'tibial-nerve-calf']),
    );
    expect(own('sensory-ganglionopathy').every((name) => name.startsWith('ganglion-'))).toBe(true);
  });

  it('shows muscle disease by region and junction disease at the end plates', () => {
    expect(own('proximal-myopathy')).toEqual(expect.arrayContaining(['muscle-hip', 'muscle-shoulder']));
    expect(own('proximal-myopathy')).not.toContain('muscle-foot');
    expect(own('distal-myopathy')).toContain('muscle-leg-anterior');
    expect(own('distal-myopathy')).not.toContain('muscle-hip');
    expect(own('finger-flexor-quadriceps-myopathy')).toEqual(
      expect.arrayContaining(['muscle-finger-flexors', 'muscle-knee-extensors']),
    );
    expect(own('oculopharyngeal-myopathy')).toEqual(expect.arrayContaining(['muscle-eyes', 'muscle-throat']));
    expect(own('oculopharyngeal-myopathy')).not.toContain('muscle-hip');
    expect(own('postsynaptic-junction')).toContain('end-plates-eyes');
    expect(own('presynaptic-junction')).toContain('end-plates-hip');
  });

  it('shows motor neuron disease in anterior horns, descending tracts or both', () => {
    expect(own('motor-neuron-system')).toEqual(
      expect.arrayContaining(['anterior-horn', 'lateral-column', 'segment-c8']),
    );
    expect(own('lower-motor-neuron-system')).not.toContain('lateral-column');
    expect(own('upper-motor-neuron-system')).not.toContain('anterior-horn');
    for (const site of ['motor-neuron-system', 'lower-motor-neuron-system', 'upper-motor-neuron-system'])
      expect(own(site)).not.toContain('dorsal-column');
  });

  it('shows parts of the cord as their syndromes have them', () => {
    expect(own('spinal-cord-posterior')).toEqual(['segment-@', 'dorsal-column']);
    expect(own('spinal-cord-anterior')).not.toContain('dorsal-column');
    expect(own('spinal-cord-central')).toContain('commissure');
    expect(own('spinal-cord-posterolateral')).toEqual(expect.arrayContaining(['dorsal-column', 'lateral-column']));
    expect(own('conus-medullaris')).toContain('segment-s3');
  });
});

describe('the geometry of the picture', () => {
  it('draws what is paired on the person’s left, inside its view', () => {
    for (const { name, view, paired, at, d } of picture.shapes) {
      const [x = 0, y = 0, width = 0, height = 0] = (picture.views.find(({ key }) => key === view)?.viewBox ?? '')
        .split(' ')
        .map(Number);
      if (paired) expect(at[0], name).toBeGreaterThan(0);
      expect(at[0] >= x && at[0] <= x + width && at[1] >= y && at[1] <= y + height, name).toBe(true);
      expect(d, name).toMatch(/^M-?\d[-\d. MLQAZ]*$/);
    }
    expect(shapes.size).toBe(picture.shapes.length);
  });

  it('leads every nerve outwards in the order of the anatomy', () => {
    for (const place of placeKeys) {
      const { proximal } = placeTable[place];
      if (typeof proximal !== 'string' || shownAt(place) !== place) continue;
      const nearer = shownAt(proximal as (typeof placeKeys)[number]);
      if (nearer !== null && nearer !== place) expect(lengthCmTo(place), place).toBeGreaterThan(lengthCmTo(nearer));
    }
  });

  it('gives nerve stretches about the length that they have in a person', () => {
    // Root to wrist some 60 to 80 cm, to the sole some 100 to 120 cm: distances of F wave studies, Preston and Shapiro (recalled).
    expect(lengthCmTo('median-nerve-wrist')).toBeGreaterThan(60);
    expect(lengthCmTo('median-nerve-wrist')).toBeLessThan(85);
    expect(lengthCmTo('medial-plantar-nerve')).toBeGreaterThan(95);
    expect(lengthCmTo('medial-plantar-nerve')).toBeLessThan(120);
  });

  it('orders the cord from above downwards', () => {
    const heights = segments.map((segment) => shapes.get(segmentName(segment))?.at[1] ?? 0);
    expect([...heights].sort((a, b) => a - b)).toEqual(heights);
  });

  it('is small enough to be sent with the page', () => {
    expect(gzipSync(JSON.stringify(picture)).length).toBeLessThan(16_000);
  });
});
