import { describe, expect, it } from 'vitest';
import { allCauses } from '../../src/causes/table/all-causes.ts';
import { hypotheses, noLesionIndex } from '../../src/localisation/hypotheses/hypotheses.ts';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { StateColumns } from '../../src/localisation/inference/columns.ts';
import { gatherEvidence } from '../../src/localisation/inference/evidence.ts';
import { Priors } from '../../src/localisation/inference/prior.ts';
import { scoreHypotheses } from '../../src/localisation/inference/score.ts';
import { contextOf } from '../../src/localisation/observation/context.ts';
import { bedsideExam } from '../support/bedside.ts';

const columns = new StateColumns(hypotheses, noLesionIndex);
const priors = new Priors(hypotheses);

/** Chance of an abnormal result at some sites, each as often as it is met. */
function chance(findings: Record<string, unknown>, isThere: (site: Site) => boolean, ageYears = 50): number {
  const exam = bedsideExam({ person: { ageYears }, findings });
  const data = gatherEvidence(exam.findings, columns);
  const scored = scoreHypotheses(data, columns, contextOf(exam), priors.logWeights(exam), noLesionIndex);
  const [datum] = scored.data;
  if (datum === undefined) throw new RangeError('the finding is not evidence');
  const { abnormal } = datum.reading.table;
  let all = 0;
  let found = 0;
  hypotheses.forEach(({ site, frequency }, index) => {
    if (!isThere(site)) return;
    all += frequency;
    found += frequency * (abnormal[datum.states[index] ?? 0] ?? 0);
  });
  return found / all;
}

const healthy = ({ kind }: Site) => kind === 'none';
const isCervical = ({ level }: Site) => level?.startsWith('C') ?? false;
const cervicalCord = (site: Site) => site.kind === 'cord' && isCervical(site);
const cervicalRoot = (site: Site) => site.kind === 'root' && isCervical(site);
const carpalTunnel = ({ key, side }: Site) => key === 'median-nerve-wrist' && side === 'left';
/** What a conduction study can confirm. */
const largeFibre = ({ kind, key }: Site) =>
  kind === 'polyneuropathy' && key !== 'small-fibre-polyneuropathy' && key !== 'autonomic-neuropathy';

const extensor = { plantars: [{ side: 'left', response: 'extensor' }] };
const positive = (test: string) => ({ specialTests: [{ test, side: 'left', result: 'positive' }] });

describe('likelihood ratios of bedside signs in the model, beside published ones', () => {
  it.each([
    {
      sign: 'extensor plantar for cervical myelopathy, in a neck clinic',
      by: 'Cook 2009: 4.0 (1.1 to 16.6)',
      findings: extensor,
      of: cervicalCord,
      against: cervicalRoot,
      from: 1.1,
      to: 16.6,
    },
    {
      // Two studies that do not agree: the model lies between the lower end of the one and the upper end of the other.
      sign: 'extensor plantar for a lesion of the pyramidal tract',
      by: 'Appasamy 2018: 3.5 (2.5 to 5.0, from 62 of 125 against 35 of 250); Isaza 2014: 51.8 (16.6 to 161)',
      findings: extensor,
      of: (site: Site) => site.key === 'internal-capsule' && site.side === 'right',
      against: healthy,
      from: 2.5,
      to: 161,
    },
    {
      sign: 'Phalen test for carpal tunnel syndrome',
      by: 'Dabbagh 2023, 604 people: sensitivity 0.57, specificity 0.67, ratio 1.7; within a third of it',
      findings: positive('phalen'),
      of: carpalTunnel,
      against: cervicalRoot,
      from: 1.7 / 1.33,
      to: 1.7 * 1.33,
    },
    {
      sign: 'Tinel sign at the wrist for carpal tunnel syndrome',
      by: 'Dabbagh 2023, 748 people: sensitivity 0.45, specificity 0.78, ratio 2.0; within a third of it',
      findings: positive('tinel-wrist'),
      of: carpalTunnel,
      against: cervicalRoot,
      from: 2 / 1.33,
      to: 2 * 1.33,
    },
  ])('$sign ($by)', ({ findings, of, against, from, to }) => {
    const ratio = chance(findings, of) / chance(findings, against);
    expect(ratio).toBeGreaterThanOrEqual(from);
    expect(ratio).toBeLessThanOrEqual(to);
  });

  // Abraham 2017, PLoS ONE 12(3):e0171597: 312 polyneuropathies confirmed by conduction studies. Intervals of 95 % by Wilson.
  it.each([
    {
      sign: 'abnormal vibration',
      findings: { sensation: [{ modality: 'vibration', site: 'great-toe', side: 'left', result: 'absent' }] },
      from: 0.68,
      to: 0.78,
    },
    {
      sign: 'abnormal ankle reflex',
      findings: { reflexes: [{ reflex: 'ankle', side: 'left', grade: '0' }] },
      from: 0.68,
      to: 0.82,
    },
  ])('finds $sign about as often in polyneuropathy as published', ({ findings, from, to }) => {
    const share = chance(findings, largeFibre);
    expect(share).toBeGreaterThanOrEqual(from);
    expect(share).toBeLessThanOrEqual(to);
  });
});

// van der Geest 2020, 68 studies of giant cell arteritis.
describe('likelihood ratios of giant cell arteritis', () => {
  const arteritis = allCauses.find(({ key }) => key === 'giant-cell-arteritis');

  it('of jaw claudication, a tender artery and raised platelets lie within the published intervals', () => {
    const told = arteritis?.history?.find(({ keys }) => keys.includes('jaw-claudication'))?.present;
    const sign = arteritis?.signs?.find(({ items }) =>
      items.includes('inspection/temporal-artery-tenderness'),
    )?.present;
    const platelets = arteritis?.quantities?.find(({ result }) => result === 'platelets')?.whenMet;
    for (const [ratio, from, to] of [
      [told, 3.74, 6.41],
      [sign, 1.14, 8.65],
      [platelets, 2.12, 6.64],
    ] as const) {
      expect(ratio).toBeGreaterThanOrEqual(from);
      expect(ratio).toBeLessThanOrEqual(to);
    }
  });
});
