import { describe, expect, it } from 'vitest';
import type { Localisation, LocalisationAnswer } from '../../src/client/generated/api-types.ts';
import {
  boxOf,
  calloutsOf,
  enlargedBox,
  markedSites,
  type Neuraxis,
  shapesOfSite,
  viewAlternative,
} from '../../src/page/reasoning/marked-shapes.ts';
import { neuraxisPicture } from '../../src/picture/neuraxis/neuraxis-picture.ts';

const picture = JSON.parse(JSON.stringify(neuraxisPicture())) as Neuraxis;

const site = (parts: Partial<Localisation> & Pick<Localisation, 'site'>): Localisation => ({
  label: 'A site',
  side: 'left',
  level: null,
  levelRange: null,
  kind: 'nerve',
  code: { system: 's', code: 'c', display: 'd' },
  probability: 0.9,
  fit: 1,
  supporting: [],
  against: [],
  unexplained: [],
  ...parts,
});

const answer = (
  conclusion: LocalisationAnswer['conclusion'],
  ...localisations: readonly Localisation[]
): LocalisationAnswer => ({ conclusion, localisations }) as unknown as LocalisationAnswer;

const named = (one: Localisation) => shapesOfSite(picture, one).map(({ shape, side }) => `${shape.name}.${side}`);

const median = site({ site: 'median-nerve-wrist', label: 'Median nerve at the wrist' });
const ulnar = site({ site: 'ulnar-nerve-elbow', label: 'Ulnar nerve at the elbow', side: 'right', probability: 0.6 });

describe('the shapes of a site', () => {
  it('lie on the side of the site, on both, or in the midline', () => {
    expect(named(median)).toEqual(['median-nerve-wrist.left']);
    expect(named({ ...median, side: 'right' })).toEqual(['median-nerve-wrist.right']);
    expect(named(site({ site: 'pudendal-nerve', side: 'both' }))).toEqual([
      'pudendal-nerve.left',
      'pudendal-nerve.right',
    ]);
    expect(named(site({ site: 'optic-chiasm', side: null, kind: 'visual-pathway' }))).toEqual(['optic-chiasm.midline']);
    expect(named(site({ site: 'medulla-lateral', side: 'right', kind: 'brainstem' }))).toEqual([
      'medulla-lateral.right',
    ]);
  });

  it('are at the level of a cord site, and at every root of a range', () => {
    const cord = site({ site: 'spinal-cord-hemisection', level: 'C6', levelRange: ['C5', 'C7'], kind: 'cord' });
    expect(named(cord)).toContain('segment-c6.left');
    expect(named(cord).filter((name) => name.startsWith('segment'))).toHaveLength(1);
    expect(named(cord).some((name) => name.endsWith('.right'))).toBe(false);
    const roots = site({ site: 'adjacent-nerve-roots', level: 'L5', levelRange: ['L5', 'S1'], kind: 'root' });
    expect(named(roots)).toEqual(['root-l5.left', 'root-s1.left']);
    expect(named(site({ site: 'nerve-root', level: 'T12', levelRange: ['T12', 'L1'], kind: 'root' }))).toEqual([
      'root-t12.left',
      'root-l1.left',
    ]);
  });

  it('are none for a site that the picture does not know', () => {
    expect(named(site({ site: 'unheard-of' }))).toEqual([]);
  });
});

describe('the sites that are marked', () => {
  it('are none where nothing is concluded', () => {
    for (const conclusion of ['no-abnormality', 'not-anatomical', 'insufficient'] as const)
      expect(markedSites(picture, answer(conclusion, median))).toEqual([]);
  });

  it('keep the numbers of the list and leave out what is unlikely', () => {
    const unlikely = site({ site: 'sural-nerve', probability: 0.01 });
    const marked = markedSites(picture, answer('single-site', median, ulnar, unlikely));
    expect(marked.map(({ rank, name }) => [rank, name])).toEqual([
      [1, 'Median nerve at the wrist, left'],
      [2, 'Ulnar nerve at the elbow, right'],
    ]);
  });

  it('are the nerves themselves where a process picks out several', () => {
    const process = site({
      site: 'multiple-mononeuropathy',
      kind: 'multiple-nerves',
      side: 'both',
      label: 'Several single nerves: left median nerve at the wrist and right ulnar nerve at the elbow',
    });
    const marked = markedSites(picture, answer('multiple-sites', process, median, ulnar));
    expect(marked.map(({ rank }) => rank)).toEqual([2, 3]);
  });
});

describe('numbers beside the picture', () => {
  const marked = markedSites(picture, answer('single-site', median, ulnar));
  const box = boxOf(picture.views.find(({ key }) => key === 'nerves')?.viewBox ?? '');

  it('stand on the side of what they point to, inside the box and apart', () => {
    const callouts = calloutsOf(marked, 'nerves', box, 60);
    expect(callouts).toHaveLength(2);
    for (const { rank, from, to } of callouts) {
      expect(Math.sign(from[0])).toBe(rank === 1 ? 1 : -1); // the person's left is on the reader's right
      expect(Math.sign(to[0])).toBe(Math.sign(from[0]));
      expect(from[1]).toBeGreaterThan(box.y);
      expect(from[1]).toBeLessThan(box.y + box.height);
    }
    const near = markedSites(
      picture,
      answer('single-site', median, { ...ulnar, site: 'ulnar-nerve-wrist', side: 'left' }),
    );
    const [one, other] = calloutsOf(near, 'nerves', box, 60);
    expect((other?.from[1] ?? 0) - (one?.from[1] ?? 0)).toBeGreaterThanOrEqual(60);
  });

  it('come with an enlargement of a small part only', () => {
    const wrist = markedSites(picture, answer('single-site', median)).flatMap(({ shapes }) => shapes);
    const detail = enlargedBox(wrist, box, 0.2);
    expect(detail?.x).toBeGreaterThan(0);
    expect(detail?.height).toBeLessThan(box.height / 2);
    expect((detail?.x ?? 0) + (detail?.width ?? 0)).toBeLessThanOrEqual(box.x + box.width);
    const both = markedSites(
      picture,
      answer('single-site', median, site({ site: 'sural-nerve', side: 'right', probability: 0.5 })),
    );
    expect(
      enlargedBox(
        both.flatMap(({ shapes }) => shapes),
        box,
        0.2,
      ),
    ).toBeNull();
    expect(enlargedBox([], box, 0.2)).toBeNull();
  });

  it('are said in words', () => {
    expect(viewAlternative('Plexuses and nerves', 'nerves', marked)).toBe(
      'Plexuses and nerves. Marked: 1, Median nerve at the wrist, left: left median nerve at the wrist. 2, Ulnar nerve at the elbow, right: right ulnar nerve at the elbow.',
    );
    expect(viewAlternative('Muscles', 'muscles', marked)).toBe('Muscles. Nothing is marked.');
    const junction = markedSites(
      picture,
      answer('diffuse-process', site({ site: 'presynaptic-junction', side: 'both', kind: 'junction' })),
    );
    expect(viewAlternative('Muscles', 'muscles', junction)).toMatch(/on both sides, .* and \d+ more\.$/);
  });
});
