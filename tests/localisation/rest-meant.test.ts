import { describe, expect, it } from 'vitest';
import { restMeant } from '../../src/localisation/inference/rest-meant.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { type ExamDraft, examBody, power, reflexes, sensation } from './case-writing.ts';

const localiser = createLocaliser();
const chanceOf = (draft: ExamDraft, site: string): number =>
  localiser
    .localise(bedsideExam(examBody(draft)))
    .localisations.filter((one) => one.site === site)
    .reduce((sum, { probability }) => sum + probability, 0);

const wholeLeg = {
  'hip-flexion': [null, '1'],
  'hip-abduction': [null, '1'],
  'knee-extension': [null, '0'],
  'ankle-dorsiflexion': [null, '0'],
} as const;

describe('what "otherwise normal" means', () => {
  // A limb lost to the anterior horn within days: Adams and Victor, poliomyelitis (recalled).
  it('is not the untried muscles of a leg that is paralysed from hip to ankle', () => {
    const draft = {
      onset: { pace: 'acute', durationDays: 3 },
      findings: { power: power(wholeLeg), reflexes: reflexes({ knee: [null, '0'], ankle: [null, '0'] }) },
    };
    const site = 'lower-motor-neuron-system';
    const alone = chanceOf({ ...draft, otherwiseNormal: [{ section: 'sensation' }] }, site);
    const said = chanceOf({ ...draft, otherwiseNormal: [{ section: 'sensation' }, { section: 'power' }] }, site);
    expect(said).toBeGreaterThan(0.5 * alone);
    expect(said).toBeGreaterThan(0.3);
  });

  // Eversion kept beside a dropped foot: Stewart, Focal Peripheral Neuropathies (recalled).
  it('is the other muscles of a leg of which one joint alone is weak', () => {
    const draft = { findings: { power: power({ 'ankle-dorsiflexion': [null, '2'] }) } };
    const said = { ...draft, otherwiseNormal: [{ section: 'power' }] };
    expect(chanceOf(said, 'deep-fibular-nerve')).toBeGreaterThan(chanceOf(draft, 'deep-fibular-nerve'));
    expect(chanceOf(said, 'sciatic-nerve')).toBeLessThan(chanceOf(draft, 'sciatic-nerve'));
  });

  // Weakness of the movements that a pyramidal lesion takes first: Adams and Victor (recalled).
  it('is not the untried muscles of half the body where arm and leg fail in all that was tried', () => {
    const draft = {
      findings: {
        power: power({ 'finger-abduction': [null, '4'], 'hip-flexion': [null, '4-'] }),
        plantars: [{ side: 'right', response: 'extensor' }],
        cranialNerves: [{ sign: 'sixth-nerve-palsy', side: 'left', present: true }],
      },
    };
    const said = { ...draft, otherwiseNormal: [{ section: 'power' }] };
    expect(chanceOf(said, 'pons-ventral') + chanceOf(said, 'pons-tegmentum')).toBeGreaterThan(0.8);
  });

  it('is of the movements those that everybody tries, and all where a limb was tried closely', () => {
    const meant = (tried: Parameters<typeof power>[0]): readonly string[] => {
      const body = examBody({ findings: { power: power(tried) }, otherwiseNormal: [{ section: 'power' }] });
      const { findings } = bedsideExam(body);
      const declared = findings.filter(({ origin, side }) => origin !== 'recorded' && side === 'right');
      return declared.filter(restMeant(findings).includes).map(({ item }) => item.key);
    };
    const routine = meant({ 'ankle-dorsiflexion': [null, '2'] });
    expect(routine).toContain('hip-abduction');
    expect(routine).not.toContain('ankle-inversion');
    const closely = meant({ 'ankle-dorsiflexion': [null, '2'], 'ankle-eversion': [null, '3'] });
    expect(closely).toContain('ankle-inversion');
    expect(closely).not.toContain('thumb-adduction');
  });

  it('is not the numb skin itself', () => {
    const draft = { findings: { sensation: sensation('light-touch', { 'territory:sural-nerve': [null, 'absent'] }) } };
    const said = { ...draft, otherwiseNormal: [{ section: 'sensation' }] };
    expect(chanceOf(said, 'sural-nerve')).toBeGreaterThanOrEqual(chanceOf(draft, 'sural-nerve') - 0.02);
  });

  // The adductor jerk is lost with the obturator nerve, but hardly anybody tries it.
  it('is of the reflexes those that everybody tries', () => {
    const draft = {
      findings: {
        power: power({ 'hip-adduction': [null, '2'] }),
        reflexes: reflexes({ knee: '2', ankle: '2' }),
      },
    };
    const said = { ...draft, otherwiseNormal: [{ section: 'reflexes' }] };
    expect(chanceOf(said, 'obturator-nerve')).toBeGreaterThan(0.95 * chanceOf(draft, 'obturator-nerve'));
    const tried = {
      findings: { ...draft.findings, reflexes: reflexes({ knee: '2', ankle: '2', adductor: '2' }) },
    };
    expect(chanceOf(tried, 'obturator-nerve')).toBeLessThan(chanceOf(draft, 'obturator-nerve'));
  });
});
