import { describe, expect, it } from 'vitest';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import { type Site, siteId } from '../../src/localisation/hypothesis.ts';
import { toldPartShifts } from '../../src/localisation/inference/told-parts.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power } from './case-writing.ts';

type Side = 'left' | 'right' | 'both';

const sites = [...new Map(hypotheses.map(({ site }) => [siteId(site), site])).values()];
const site = (key: string, side: Site['side'], level?: string): Site => {
  const found = sites.find((one) => one.key === key && one.side === side && (level ?? one.level) === one.level);
  if (found === undefined) throw new Error(`no site ${key} ${side}`);
  return found;
};
const examOf = (told: Readonly<Record<string, Side | undefined>>, findings = {}) =>
  bedsideExam({
    history: {
      symptoms: Object.entries(told).map(([key, side]) => ({ key, present: true, ...(side && { side }) })),
    },
    findings,
  });
const odds = (exam: ReturnType<typeof examOf>, where: Site): number =>
  toldPartShifts(exam).reduce((product, { applies, factor }) => (applies(where) ? product * factor : product), 1);

describe('what is complained of, and where', () => {
  // Crossed and uncrossed wiring: any textbook of neuroanatomy.
  it.each([
    ['arm-weakness', 'radial-nerve-spiral-groove', 'right'],
    ['arm-weakness', 'internal-capsule', 'left'],
    ['leg-weakness', 'common-fibular-nerve', 'right'],
    ['numbness', 'thalamus', 'left'],
    ['clumsiness', 'cerebellar-hemisphere', 'right'],
    ['face-numbness', 'trigeminal-nerve', 'right'],
    ['face-droop', 'facial-nerve', 'right'],
    ['face-droop', 'internal-capsule', 'left'],
    ['visual-loss', 'optic-nerve', 'right'],
    ['visual-loss', 'cortex-occipital', 'left'],
    ['hearing-loss', 'cochlear-nerve', 'right'],
    ['drooping-eyelids', 'oculomotor-nerve', 'right'],
  ] as const)('%s on the right is that of the %s of the %s', (complaint, key, side) => {
    const exam = examOf({ [complaint]: 'right' });
    const other = side === 'left' ? 'right' : 'left';
    expect(odds(exam, site(key, side))).toBeGreaterThan(2);
    expect(odds(exam, site(key, other))).toBeLessThan(0.5);
  });

  it('speaks for what strikes both sides where both are complained of, and against it where one is', () => {
    const neuropathy = site('length-dependent-polyneuropathy', 'both');
    expect(odds(examOf({ numbness: 'both' }), neuropathy)).toBeGreaterThan(1);
    expect(odds(examOf({ numbness: 'left' }), neuropathy)).toBeLessThan(1);
    expect(odds(examOf({ numbness: 'both' }), site('thalamus', 'left'))).toBeLessThan(0.5);
  });

  it('speaks against a place that would not make the complaint, with a side or without', () => {
    expect(odds(examOf({ numbness: undefined }), site('facial-nerve', 'left'))).toBeLessThan(1);
    expect(odds(examOf({ numbness: undefined }), site('ulnar-nerve-elbow', 'left'))).toBe(1);
    expect(odds(examOf({ 'hearing-loss': 'left' }), site('femoral-nerve-groin', 'left'))).toBeLessThan(1);
  });

  it('says less beside signs, which say more exactly where', () => {
    const told = { 'arm-weakness': 'right' } as const;
    const found = examOf(told, { power: power({ 'wrist-extension': [null, '3'] }) });
    const radial = site('radial-nerve-spiral-groove', 'right');
    expect(odds(found, radial)).toBeGreaterThan(1);
    expect(odds(found, radial)).toBeLessThan(odds(examOf(told), radial));
  });

  it('gives an answer for the other side when all is told of the other side', () => {
    const { localise } = createLocaliser();
    const leading = (side: Side) =>
      localise(examOf({ 'visual-loss': side, 'eye-pain': side })).localisations.slice(0, 3);
    const [left, right] = [leading('left'), leading('right')];
    expect(left[0]).toMatchObject({ site: 'optic-nerve', side: 'left' });
    expect(right.map(({ probability }) => probability)).toEqual(left.map(({ probability }) => probability));
    expect(right[0]).toMatchObject({ site: 'optic-nerve', side: 'right' });
  });
});
