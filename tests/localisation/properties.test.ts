import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Localisation } from '../../src/localisation/localisation.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { examBody, power, reflexes, sensation } from './case-writing.ts';
import { textbookCases } from './textbook-cases.ts';

const localiser = createLocaliser();

type Body = Record<string, unknown>;

function localise(body: Body): Localisation {
  return localiser.localise(bedsideExam(body));
}

const swap: Readonly<Record<string, string>> = { left: 'right', right: 'left' };

/** The same exam of the mirrored person. */
function mirrored(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(mirrored);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [
      key,
      key === 'side' && typeof one === 'string' ? (swap[one] ?? one) : mirrored(one),
    ]),
  );
}

/** What an answer says about sites, without words. */
const sites = ({ localisations, conclusion }: Localisation) => ({
  conclusion,
  sites: localisations.map(({ site, side, level, probability, fit }) => ({ site, side, level, probability, fit })),
});

const mirroredSites = (answer: Localisation) => {
  const { conclusion, sites: list } = sites(answer);
  return {
    conclusion,
    sites: list.map((one) => ({ ...one, side: one.side === null ? null : (swap[one.side] ?? one.side) })),
  };
};

/** Order among equally likely sites is by name, so it may differ; sets are compared. */
const asSet = (answer: {
  readonly conclusion: string;
  readonly sites: readonly { readonly probability: number }[];
}) => ({
  conclusion: answer.conclusion,
  sites: answer.sites
    .filter(({ probability }) => probability >= 0.01)
    .map((one) => JSON.stringify(one))
    .sort(),
});

/** The dominant hemisphere is on one side, so signs of language have no mirror image. */
const mirrorable = textbookCases.filter(({ findings }) => findings.higherFunction === undefined);

describe('the answer follows the exam', () => {
  it.each(mirrorable.map((one) => [one.name, one] as const))('mirrors the side of %s and nothing else', (_, one) => {
    const body = examBody(one);
    expect(asSet(sites(localise(mirrored(body) as Body)))).toEqual(asSet(mirroredSites(localise(body))));
  });

  it('does not depend on the order of the findings', () => {
    const one = textbookCases[0];
    if (one === undefined) throw new RangeError('no case');
    const body = examBody(one);
    const findings = body.findings as Record<string, readonly unknown[]>;
    const expected = sites(localise(body));
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat()), (keys) => {
        const shuffled = Object.fromEntries(
          Object.entries(findings).map(([section, list]) => [
            section,
            list
              .map((item) => [keys.next().value, item] as const)
              .sort(([a], [b]) => a - b)
              .map(([, item]) => item),
          ]),
        );
        expect(sites(localise({ ...body, findings: shuffled }))).toEqual(expected);
      }),
      { numRuns: 20 },
    );
  });

  it('gives the same answer to the byte on a fresh engine and on a used one', () => {
    const body = examBody(textbookCases[3] ?? { findings: {} });
    const exam = bedsideExam(body);
    expect(JSON.stringify(createLocaliser().localise(exam))).toBe(JSON.stringify(localiser.localise(exam)));
  });

  it('gives probabilities between 0 and 1 that sum to at most 1 while one site suffices', () => {
    for (const one of textbookCases) {
      const { localisations, conclusion } = localise(examBody(one));
      for (const { probability, fit } of localisations) {
        expect(probability).toBeGreaterThanOrEqual(0);
        expect(probability).toBeLessThanOrEqual(1);
        expect(fit).toBeGreaterThanOrEqual(0);
        expect(fit).toBeLessThanOrEqual(1);
      }
      if (conclusion === 'multiple-sites') continue;
      expect(localisations.reduce((sum, { probability }) => sum + probability, 0)).toBeLessThanOrEqual(1.2);
    }
  });

  it('is not less sure of a fibular palsy when one more thing that it spares is found normal', () => {
    const findings = {
      power: power({
        'ankle-dorsiflexion': ['2', '5'],
        'great-toe-extension': ['2', '5'],
        'ankle-eversion': ['3', '5'],
      }),
      sensation: sensation('pinprick', { 'dorsum-of-foot': ['reduced', 'normal'] }),
    };
    const at = (answer: Localisation) =>
      answer.localisations.find(({ site }) => site === 'common-fibular-nerve')?.probability ?? 0;
    const before = at(localise(examBody({ findings })));
    for (const spared of ['ankle-inversion', 'hip-abduction', 'ankle-plantarflexion', 'knee-extension']) {
      const more = { ...findings, power: [...findings.power, ...power({ [spared]: '5' })] };
      expect(at(localise(examBody({ findings: more }))), spared).toBeGreaterThanOrEqual(before - 0.005);
    }
  });

  it('grows less sure when findings are taken away', () => {
    const full = textbookCases.find(({ name }) => name === 'C7 radiculopathy');
    if (full === undefined) throw new RangeError('no case');
    const sparse = { ...full, findings: { power: (full.findings.power ?? []).slice(0, 2) } };
    const lead = (answer: Localisation) => answer.localisations[0]?.probability ?? 0;
    expect(lead(localise(examBody(sparse)))).toBeLessThan(lead(localise(examBody(full))));
  });
});

describe('honest uncertainty', () => {
  it('says that one finding is too little', () => {
    expect(localise(examBody({ findings: { reflexes: reflexes({ ankle: ['1', null] }) } })).conclusion).toBe(
      'insufficient',
    );
  });

  it('does not take what was not tested for normal', () => {
    const base = { power: power({ 'ankle-dorsiflexion': ['2', '5'], 'great-toe-extension': ['2', '5'] }) };
    const withUntested = { power: [...base.power, { movement: 'ankle-inversion', side: 'left', notTested: 'pain' }] };
    expect(sites(localise(examBody({ findings: withUntested }))).sites).toEqual(
      sites(localise(examBody({ findings: base }))).sites,
    );
  });

  it('says that findings scattered over both sides and all levels follow no anatomy', () => {
    const { conclusion } = localise(
      examBody({
        findings: {
          power: power({ 'shoulder-abduction': ['3', '5'], 'great-toe-extension': ['5', '3'] }),
          reflexes: reflexes({ knee: ['0', '2'], biceps: ['2', '0'] }),
          sensation: sensation('pinprick', { T4: ['absent', 'normal'], 'little-finger': ['normal', 'absent'] }),
        },
      }),
    );
    expect(conclusion).toBe('not-anatomical');
  });
});

describe('the next examination', () => {
  it('proposes what tells a fibular nerve from an L5 root when only the foot drop is known', () => {
    const { nextExamination, localisations } = localise(
      examBody({ findings: { power: power({ 'ankle-dorsiflexion': ['3', '5'], 'great-toe-extension': ['3', '5'] }) } }),
    );
    expect(localisations.slice(0, 4).map(({ site }) => site)).toEqual(
      expect.arrayContaining(['common-fibular-nerve', 'nerve-root']),
    );
    const proposed = nextExamination.map(({ item }) => item);
    const tellsApart = [
      'power/ankle-inversion',
      'power/hip-abduction',
      'power/ankle-eversion',
      'power/hip-internal-rotation',
      'reflexes/medial-hamstring',
      'power/knee-flexion-medial',
    ];
    expect(proposed.some((item) => tellsApart.includes(item))).toBe(true);
    expect(nextExamination.every(({ gainBits }) => gainBits > 0)).toBe(true);
  });

  it('does not propose what was tested, nor what could not be', () => {
    const { nextExamination } = localise(
      examBody({
        findings: {
          power: [
            ...power({ 'ankle-dorsiflexion': ['3', '5'], 'great-toe-extension': ['3', '5'] }),
            { movement: 'ankle-inversion', side: 'left', notTested: 'pain' },
          ],
        },
      }),
    );
    expect(
      nextExamination.filter(
        ({ item, side }) => side === 'left' && ['power/ankle-inversion', 'power/ankle-dorsiflexion'].includes(item),
      ),
    ).toEqual([]);
  });
});
