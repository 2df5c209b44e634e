import { describe, expect, it } from 'vitest';
import { resultByKey } from '../../src/exam/catalogue/results.ts';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import { resultShifts, resultWeightRows } from '../../src/localisation/inference/result-weights.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { power, reflexes, sensation } from './case-writing.ts';

const { localise } = createLocaliser();
const coded = (key: string, value: string) => ({ key, value });
const number = (key: string, value: number, code: string, comparator?: string) => ({
  key,
  valueQuantity: { value, code, unit: code, system: 'http://unitsofmeasure.org', ...(comparator && { comparator }) },
});

const sites = [...new Map(hypotheses.map(({ site }) => [`${site.key} ${site.side} ${site.level}`, site])).values()];

describe('results that are back', () => {
  it('are known to the catalogue, with their values and units, and each speaks of some site', () => {
    const unknown = resultWeightRows.flatMap(({ result, values = [], unit }) => {
      const row = resultByKey.get(result);
      if (row?.kind === 'quantity') return row.unit === unit && values.length === 0 ? [] : [`${result} in ${unit}`];
      const known = row?.values.map(({ key }) => key) ?? [];
      return values.filter((value) => !known.includes(value)).map((value) => `${result} = ${value}`);
    });
    expect(unknown).toEqual([]);
    const idle = resultWeightRows.filter(({ applies }) => !sites.some(applies));
    expect(idle.map(({ result }) => result).filter((result) => result !== 'mri-thoracic-spine')).toEqual([]);
    expect(resultWeightRows.every(({ factor }) => factor >= 0.05 && factor <= 25)).toBe(true);
  });

  // A weak spastic leg pair without a sensory level: the cord or both hemispheres. Imaging decides.
  const legs = {
    person: { ageYears: 60 },
    history: { onset: { pace: 'subacute', durationDays: 40 } },
    findings: {
      power: power({ 'hip-flexion': '4', 'knee-flexion': '4', 'ankle-dorsiflexion': '4' }),
      reflexes: reflexes({ knee: '3', ankle: '3', biceps: '2' }),
    },
  };
  const cordShare = (results: readonly unknown[]) =>
    localise(bedsideExam({ ...legs, results })).localisations.reduce(
      (sum, { kind, probability }) => sum + (kind === 'cord' ? probability : 0),
      0,
    );

  it('confirm or refute a lesion of the cord', () => {
    const without = cordShare([]);
    expect(cordShare([coded('mri-whole-spine', 'cord-compression')])).toBeGreaterThan(without);
    expect(cordShare([coded('mri-whole-spine', 'normal')])).toBeLessThan(without);
  });

  it('stand among the reasons by their pointers', () => {
    const [first] = localise(
      bedsideExam({ ...legs, results: [coded('mri-thoracic-spine', 'cord-compression')] }),
    ).localisations;
    expect(first?.kind).toBe('cord');
    expect(first?.supporting).toContainEqual(
      expect.objectContaining({
        finding: '/results/0',
        text: 'MRI of the thoracic spine: compression of the cord',
        because: 'the cord is seen to be compressed there',
      }),
    );
  });

  // Normal sensory responses in a numb area place the lesion before the ganglion (Preston and Shapiro, nerve conduction).
  it('tell a root from its nerve by the sensory responses', () => {
    const hand = {
      findings: {
        power: power({
          'finger-abduction': ['4', '5'],
          'thumb-abduction': ['4', '5'],
          'finger-extension': ['4', '5'],
          'wrist-extension': '5',
          'elbow-extension': '5',
        }),
        reflexes: reflexes({ triceps: '2', biceps: '2', knee: '2', ankle: '2' }),
        sensation: sensation('pinprick', { C8: ['reduced', 'normal'], C6: 'normal', T2: 'normal' }),
      },
    };
    const rootShare = (value: string) =>
      localise(bedsideExam({ ...hand, results: [coded('nerve-conduction-pattern', value)] })).localisations.reduce(
        (sum, { kind, probability }) => sum + (kind === 'root' ? probability : 0),
        0,
      );
    expect(1 - rootShare('axonal')).toBeGreaterThan(1.8 * (1 - rootShare('preserved-sensory')));
  });

  // Numb thumbs, fingers and tops of the feet with all else normal: fibres, nerves or cord, by what the nerves conduct.
  it('tell small fibres from single nerves by the pattern of conduction', () => {
    const both = (site: string) => ({ modality: 'light-touch', site, side: 'both', result: 'reduced' });
    const numb = {
      history: { onset: { pace: 'chronic', durationDays: 120 } },
      findings: { sensation: ['thumb', 'index-finger', 'middle-finger', 'dorsum-of-foot'].map(both) },
      otherwiseNormal: ['power', 'reflexes', 'plantars', 'cranialNerves'].map((section) => ({ section })),
    };
    const shareOf = (site: string, value: string) =>
      localise(bedsideExam({ ...numb, results: [coded('nerve-conduction-pattern', value)] })).localisations.find(
        (one) => one.site === site,
      )?.probability ?? 0;
    expect(shareOf('small-fibre-polyneuropathy', 'normal')).toBeGreaterThan(0.25);
    expect(shareOf('small-fibre-polyneuropathy', 'axonal')).toBeLessThan(0.1);
    expect(shareOf('small-fibre-polyneuropathy', 'multifocal-axonal')).toBeLessThan(0.1);
    expect(shareOf('multiple-mononeuropathy', 'multifocal-axonal')).toBeGreaterThan(0.5);
    expect(shareOf('multiple-mononeuropathy', 'normal')).toBeLessThan(0.05);
  });

  // Widespread denervation is of lower motor neurons: it speaks against a disease of the upper ones alone.
  it('do not count denervation for upper motor neurons', () => {
    const factorsAt = (value: string, site: string) =>
      resultShifts(bedsideExam({ results: [coded('needle-emg', value)] })).flatMap(({ applies, factor }) =>
        sites.some((one) => one.key === site && applies(one)) ? [factor] : [],
      );
    const product = (factors: readonly number[]) => factors.reduce((a, b) => a * b, 1);
    expect(product(factorsAt('denervation-widespread', 'upper-motor-neuron-system'))).toBeLessThan(1);
    expect(product(factorsAt('denervation-widespread', 'lower-motor-neuron-system'))).toBeGreaterThan(1);
    expect(product(factorsAt('normal', 'upper-motor-neuron-system'))).toBe(1);
  });

  it('read a level of the receptor antibody as the antibody', () => {
    const lids = { findings: { cranialNerves: [{ sign: 'ptosis', side: 'left', present: true }] } };
    const shifts = resultShifts(bedsideExam({ ...lids, results: [number('achr-antibody-level', 8, 'nmol/L')] }));
    expect(shifts.map(({ factor, pointer }) => ({ factor, pointer }))).toEqual([{ factor: 25, pointer: '/results/0' }]);
  });

  it('count as bounds when they came with a comparator', () => {
    const weak = { findings: { power: power({ 'shoulder-abduction': '4', 'hip-flexion': '4' }) } };
    const muscleShare = (...results: readonly unknown[]) =>
      localise(bedsideExam({ ...weak, results })).localisations.reduce(
        (sum, { kind, probability }) => sum + (kind === 'muscle' ? probability : 0),
        0,
      );
    const high = muscleShare(number('creatine-kinase', 1000, 'U/L'));
    expect(high).toBeGreaterThan(muscleShare());
    // The thresholds of the localisation are 1,000 and 5,000 U/L; causes have thresholds of their own.
    const factors = (...results: readonly unknown[]) =>
      resultShifts(bedsideExam({ ...weak, results })).map(({ factor }) => factor);
    const met = factors(number('creatine-kinase', 1000, 'U/L'));
    expect(met.length).toBeGreaterThan(0);
    expect(factors(number('creatine-kinase', 4000, 'U/L', '>'))).toEqual(met);
    expect(factors(number('creatine-kinase', 4000, 'U/L', '<'))).toEqual([]);
    expect(factors(number('creatine-kinase', 399, 'U/L'))).toEqual([]);
    expect(muscleShare(number('creatine-kinase', 4000, 'U/L', '>'))).toBeCloseTo(high, 2);
    expect(muscleShare(number('creatine-kinase', 4000, 'U/L', '<'))).toBeLessThan(high);
  });
});
