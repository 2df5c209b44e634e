import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { plantars, power, reflexes, sensation, wasting } from './case-writing.ts';

const { localise } = createLocaliser();
const first = (draft: Parameters<typeof bedsideExam>[0]) => localise(bedsideExam(draft)).localisations[0];
const claims = (...keys: readonly string[]) => keys.map((key) => ({ key, present: true }));

describe('patterns of the limbs that no single finding makes', () => {
  it('a claw beside a nerve that is thick at the elbow is ulnar, not median', () => {
    const inspection = [
      { sign: 'claw-hand', side: 'left', present: true },
      { sign: 'thickened-nerve', site: 'elbow', side: 'left', present: true },
    ];
    const found = first({ history: { onset: { pace: 'chronic' } }, findings: { inspection } });
    expect([found?.site, found?.side]).toEqual(['ulnar-nerve-elbow', 'left']);
  });

  it('an arm that is thin as a whole has lost motor cells sooner than one nerve', () => {
    const thin = (site: string) =>
      localise(
        bedsideExam({
          history: { onset: { pace: 'chronic', durationDays: 900 }, symptoms: claims('muscle-thinning') },
          findings: { inspection: [{ sign: 'wasting', site, side: 'left', present: true }] },
        }),
      ).localisations;
    const motorCells = (site: string) =>
      thin(site).find((one) => one.site === 'lower-motor-neuron-system')?.probability ?? 0;
    const median = (site: string) => thin(site).find((one) => one.site === 'median-nerve-wrist')?.probability ?? 0;
    expect(motorCells('upper-limb')).toBeGreaterThan(median('upper-limb'));
    expect(median('hand')).toBeGreaterThan(median('upper-limb'));
  });

  it('one weak movement of the shoulder among strong ones is of a nerve', () => {
    const found = first({
      history: { onset: { pace: 'acute' } },
      findings: {
        power: power({
          'shoulder-external-rotation': [null, '4'],
          'shoulder-abduction': [null, '5'],
          'shoulder-flexion': [null, '5'],
          'shoulder-internal-rotation': [null, '5'],
        }),
      },
    });
    expect(found?.site).toMatch(/^suprascapular-nerve/);
  });

  it('pain down the leg is of a root though nothing is found', () => {
    const found = first({
      person: { ageYears: 50 },
      history: { symptoms: claims('radicular-leg-pain') },
      findings: {
        power: power({ 'ankle-dorsiflexion': '5', 'ankle-plantarflexion': '5', 'knee-extension': '5' }),
        reflexes: reflexes({ knee: '2', ankle: '2' }),
      },
    });
    expect(found?.site).toBe('nerve-root');
  });

  it('an arm that hangs from birth has its plexus or upper roots torn', () => {
    const findings = {
      power: power({ 'shoulder-abduction': [null, '1'], 'elbow-flexion': [null, '1'] }),
      reflexes: reflexes({ biceps: [null, '0'] }),
    };
    const found = first({ person: { ageYears: 0 }, history: { onset: { pace: 'hyperacute' } }, findings });
    expect(['upper-trunk', 'brachial-plexus', 'adjacent-nerve-roots']).toContain(found?.site);
  });

  it('an infant that is limp from birth has a disease of muscle, junction or motor cells', () => {
    const findings = {
      tone: [{ site: 'trunk', tone: 'reduced' }],
      cranialNerves: [
        { sign: 'weak-suck-or-cry', present: true },
        { sign: 'facial-weakness', side: 'both', present: true },
      ],
      reflexes: reflexes({ biceps: '1', knee: '1', ankle: '1' }),
    };
    const history = { onset: { pace: 'acute', durationDays: 3 }, course: 'static' };
    const chanceOfRoots = (ageYears: number) =>
      localise(bedsideExam({ person: { ageYears }, history, findings })).localisations.find(
        ({ kind }) => kind === 'polyradiculoneuropathy',
      )?.probability ?? 0;
    expect(chanceOfRoots(0)).toBeLessThan(0.3);
    expect(chanceOfRoots(0)).toBeLessThan(chanceOfRoots(30) / 2);
    const found = first({ person: { ageYears: 0 }, history, findings });
    expect(['muscle', 'junction', 'anterior-horn']).toContain(found?.kind);
  });

  it('a territory that is lost alone is of its own nerve', () => {
    const found = first({
      history: { symptoms: claims('numbness') },
      findings: {
        sensation: [
          { modality: 'light-touch', territory: 'lateral-cutaneous-nerve-of-forearm', side: 'left', result: 'absent' },
        ],
      },
    });
    expect(found?.site).toBe('lateral-cutaneous-nerve-of-forearm');
  });

  it('both thighs that fail in front at once are of both femoral nerves', () => {
    const found = first({
      history: { onset: { pace: 'acute' }, conditions: [], exposures: claims('trauma') },
      findings: {
        power: power({ 'knee-extension': '1' }),
        sensation: sensation('light-touch', { 'front-of-thigh': 'reduced', 'inner-shin': 'reduced' }),
      },
    });
    expect(found?.site).toMatch(/^femoral-nerve/);
  });

  it('limbs of one half that are ataxic beside palsied eyes are of the midbrain, not of nerves', () => {
    const found = first({
      person: { ageYears: 60 },
      history: { onset: { pace: 'hyperacute' } },
      findings: {
        cranialNerves: [{ sign: 'third-nerve-palsy', side: 'right', present: true }],
        coordination: [
          { test: 'finger-nose', side: 'left', result: 'impaired' },
          { test: 'heel-shin', side: 'left', result: 'impaired' },
        ],
      },
    });
    expect([found?.site, found?.side]).toEqual(['midbrain-tegmentum', 'right']);
  });

  it('thighs that are paralysed without pain speak against the cauda equina', () => {
    const caudaAfter = (...told: readonly string[]) =>
      localise(
        bedsideExam({
          history: { onset: { pace: 'acute' }, symptoms: claims('leg-weakness', ...told) },
          findings: {
            power: power({ 'hip-flexion': '0', 'knee-extension': '0', 'ankle-dorsiflexion': '0' }),
            sphincters: [{ sign: 'urinary-retention', present: true }],
          },
        }),
      ).localisations.find(({ site }) => site === 'cauda-equina');
    expect(caudaAfter()?.against.some(({ text }) => text.includes('hip flexion'))).toBe(true);
    expect(caudaAfter('back-pain')?.against.some(({ text }) => text.includes('hip flexion'))).toBe(false);
  });

  it('confusion speaks against a blocked junction', () => {
    const findings = {
      higherFunction: [{ sign: 'confusion', present: true }],
      cranialNerves: [
        { sign: 'ptosis', side: 'both', present: true },
        { sign: 'nasal-speech', present: true },
      ],
    };
    const { localisations } = localise(bedsideExam({ history: { onset: { pace: 'acute' } }, findings }));
    const blocked = localisations.find(({ kind }) => kind === 'junction');
    expect(blocked?.against.some(({ because }) => because.includes('leaves the mind clear'))).toBe(true);
  });

  it('fingers that do not close and knees that give way on both sides are of one myopathy, unless the jerks are brisk', () => {
    const slow = { onset: { pace: 'chronic' }, course: 'progressive' };
    const weak = power({ 'finger-flexion': '4', 'knee-extension': '4', 'hip-flexion': '4' });
    const old = { person: { ageYears: 68 }, history: slow };
    expect(first({ ...old, findings: { power: weak } })?.site).toBe('finger-flexor-quadriceps-myopathy');
    const brisk = { power: weak, reflexes: reflexes({ knee: '4', ankle: '4' }) };
    expect(first({ ...old, findings: brisk })?.site).not.toBe('finger-flexor-quadriceps-myopathy');
  });

  it('legs alone that fail in weeks under a painful spine are less of muscle than the same legs without pain', () => {
    const findings = { power: power({ 'hip-flexion': '3', 'knee-extension': '3' }), plantars: plantars('flexor') };
    const ofMuscle = (...complaints: readonly string[]) =>
      localise(
        bedsideExam({
          person: { ageYears: 60 },
          history: { onset: { pace: 'subacute', durationDays: 14 }, symptoms: claims('leg-weakness', ...complaints) },
          findings,
        }),
      ).localisations.find(({ site }) => site === 'proximal-myopathy')?.probability ?? 0;
    expect(ofMuscle('back-pain')).toBeLessThan(ofMuscle() - 0.1);
  });

  it('an infant that is limp and late, and not called weak, has an illness of the brain', () => {
    const limp = [
      { site: 'upper-limb', side: 'both', tone: 'reduced' },
      { site: 'lower-limb', side: 'both', tone: 'reduced' },
    ];
    const brain = (symptoms: readonly object[]) =>
      localise(
        bedsideExam({
          person: { ageYears: 0.7 },
          history: { symptoms, conditions: claims('developmental-delay') },
          findings: { tone: limp },
        }),
      ).localisations.find(({ site }) => site === 'diffuse-encephalopathy')?.probability ?? 0;
    expect(brain([])).toBeGreaterThan(0.3);
    expect(brain(claims('weakness'))).toBeLessThan(brain([]));
  });

  it('hips and shoulders that fail with numb hands and feet in a week are of inflamed roots, though muscles are said to be thin', () => {
    const draft = (inspection: readonly object[]) => ({
      person: { ageYears: 60 },
      history: { onset: { pace: 'acute', durationDays: 8 }, symptoms: claims('paraesthesiae', 'leg-weakness') },
      findings: {
        inspection,
        power: power({
          'hip-flexion': '3',
          'knee-extension': '3',
          'shoulder-abduction': '4',
          'wrist-extension': '5',
          'ankle-dorsiflexion': '5',
        }),
        sensation: [
          ...sensation('light-touch', { 'stocking-to-knee': 'reduced', 'glove-to-wrist': 'reduced' }),
          ...sensation('vibration', { 'stocking-to-knee': 'reduced', 'glove-to-wrist': 'reduced' }),
        ],
      },
    });
    expect(first(draft([]))?.site).toBe('demyelinating-polyradiculoneuropathy');
    const thin = wasting({ 'upper-limb': true, 'lower-limb': true });
    expect(first(draft(thin))?.site).toBe('demyelinating-polyradiculoneuropathy');
  });
});
