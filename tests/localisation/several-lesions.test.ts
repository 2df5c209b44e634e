import { describe, expect, it } from 'vitest';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import type { Companions } from '../../src/localisation/inference/combination-prior.ts';
import { isKnownAnyway, KnownIllness } from '../../src/localisation/inference/known-illness.ts';
import { Priors } from '../../src/localisation/inference/prior.ts';
import { Scattering } from '../../src/localisation/inference/scattering.ts';
import { SharedInjury } from '../../src/localisation/inference/shared-injury.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { midline, plantars, power, reflexes, sensation, signs } from './case-writing.ts';

const { localise } = createLocaliser();
const priors = new Priors(hypotheses);

function indexOf(key: string, side: string | null): number {
  return hypotheses.findIndex(({ site }) => site.key === key && site.side === side);
}

const told = (keys: readonly string[]) => keys.map((key) => ({ key, present: true }));

function factor(
  kind: typeof Scattering | typeof KnownIllness,
  draft: Parameters<typeof bedsideExam>[0],
  one: number,
  other: number,
): number {
  const exam = bedsideExam(draft);
  const reason: Companions = new kind(exam, hypotheses, priors.logWeights(exam));
  return reason.besides(one)(other);
}

describe('diseases that strike several places', () => {
  const eye = indexOf('optic-nerve', 'left');
  const cord = indexOf('spinal-cord-posterolateral', 'both');
  const attacks = {
    person: { ageYears: 30, sex: 'female' },
    history: { onset: { pace: 'subacute' }, course: 'relapsing-remitting' },
  };

  it('take optic nerve and cord together, in either order, more often than chance', () => {
    const together = factor(Scattering, attacks, eye, cord);
    expect(together).toBeGreaterThan(0.5);
    expect(factor(Scattering, attacks, cord, eye)).toBeCloseTo(together, 10);
  });

  it('take both hemispheres where a cancer is known', () => {
    const [back, front] = [indexOf('cortex-occipital', 'left'), indexOf('cortex-frontal', 'right')];
    const weeks = { person: { ageYears: 60 }, history: { onset: { pace: 'subacute' }, course: 'progressive' } };
    const cancer = { ...weeks, history: { ...weeks.history, conditions: told(['cancer']) } };
    expect(factor(Scattering, cancer, back, front)).toBeGreaterThan(3 * factor(Scattering, weeks, back, front));
  });

  it('are no reason for nerves and roots', () => {
    expect(factor(Scattering, attacks, eye, indexOf('median-nerve-wrist', 'left'))).toBe(0);
    expect(factor(Scattering, attacks, indexOf('median-nerve-wrist', 'left'), eye)).toBe(0);
  });

  it('are found: a pale disc on one side, numb and brisk limbs, attacks before', () => {
    const exam = bedsideExam({
      ...attacks,
      findings: {
        cranialNerves: signs({
          'optic-disc-pallor': [true, null],
          'relative-afferent-pupillary-defect': [true, null],
        }),
        sensation: sensation('vibration', { 'dorsum-of-foot': [null, 'reduced'] }),
        reflexes: reflexes({ knee: '3', ankle: '3' }),
        plantars: plantars(null, 'extensor'),
      },
    });
    const { conclusion, localisations } = localise(exam);
    expect(conclusion).toBe('multiple-sites');
    expect(localisations[0]).toMatchObject({ site: 'optic-nerve', side: 'left' });
    expect(localisations[1]?.kind).toBe('cord');
  });
});

describe('an illness that is known', () => {
  const mind = indexOf('diffuse-encephalopathy', 'both');
  const neck = indexOf('spinal-cord-transverse', 'both');
  const demented = { person: { ageYears: 78 }, history: { conditions: told(['dementia']) } };

  it('stands beside a new lesion as often as it leaves a mark', () => {
    expect(factor(KnownIllness, demented, neck, mind)).toBeGreaterThan(1);
    expect(factor(KnownIllness, demented, mind, neck)).toBeGreaterThan(1);
    expect(factor(KnownIllness, { person: { ageYears: 78 } }, neck, mind)).toBe(0);
    expect(factor(KnownIllness, demented, neck, indexOf('median-nerve-wrist', 'left'))).toBe(0);
  });

  it('is known anyway, but where a new lesion may lie too', () => {
    const site = (index: number) => hypotheses[index]?.site ?? expect.fail('no such site');
    expect(isKnownAnyway(site(mind), bedsideExam(demented))).toBe(true);
    expect(isKnownAnyway(site(neck), bedsideExam(demented))).toBe(false);
    const neuritis = bedsideExam({ history: { conditions: told(['optic-neuritis']) } });
    expect(isKnownAnyway(site(indexOf('optic-nerve', 'left')), neuritis)).toBe(false);
  });

  it('does not hide a cord that is pressed', () => {
    const exam = bedsideExam({
      ...demented,
      history: {
        ...demented.history,
        onset: { pace: 'chronic', durationDays: 365 },
        course: 'progressive',
        symptoms: told(['difficulty-walking', 'neck-pain', 'clumsiness']),
      },
      findings: {
        higherFunction: midline({ 'memory-impairment': true, disorientation: true }),
        gait: midline({ spastic: true }),
        power: power({ 'finger-abduction': '4', 'elbow-extension': '4', 'hip-flexion': '4', 'knee-flexion': '4' }),
        reflexes: reflexes({ biceps: '3', triceps: '3', knee: '3', ankle: '3' }),
        plantars: plantars('extensor'),
        sensation: sensation('light-touch', { palm: 'reduced' }),
      },
    });
    expect(localise(exam).localisations[0]?.site).toBe('spinal-cord-transverse');
  });
});

describe('both hemispheres', () => {
  const drowsy = midline({ drowsiness: true, confusion: true });
  const weak = power({
    'shoulder-abduction': ['4', '4+'],
    'finger-abduction': ['4', '4+'],
    'hip-flexion': ['3', '4'],
    'ankle-dorsiflexion': ['3', '4'],
  });

  it('are pressed in the old who grow sleepy, muddled and weak on both sides over weeks', () => {
    const exam = bedsideExam({
      person: { ageYears: 82 },
      history: {
        onset: { pace: 'subacute', durationDays: 20 },
        course: 'progressive',
        symptoms: told(['headache', 'falls']),
      },
      findings: { higherFunction: drowsy, power: weak, plantars: plantars('extensor', null) },
    });
    const { localisations } = localise(exam);
    expect(localisations[0]?.site).toBe('raised-intracranial-pressure');
    expect(localisations.find(({ site }) => site === 'brainstem-diffuse')?.probability ?? 0).toBeLessThan(0.2);
  });

  it('are starved where the mind is clouded, the eyes are lame and the jerks are gone', () => {
    const exam = bedsideExam({
      person: { ageYears: 51 },
      findings: {
        higherFunction: midline({ confusion: true, disorientation: true }),
        cranialNerves: signs({ 'gaze-palsy': [true, null] }),
        gait: midline({ 'unable-to-stand': true }),
        reflexes: reflexes({ biceps: '0', knee: '0', ankle: '0' }),
      },
    });
    expect(localise(exam).localisations[0]?.site).toBe('diffuse-encephalopathy');
  });

  it('a clear mind with lame eyes and lost jerks is still one of roots and nerves', () => {
    const exam = bedsideExam({
      person: { ageYears: 44 },
      history: { onset: { pace: 'acute', durationDays: 4 }, symptoms: told(['preceding-infection']) },
      findings: {
        higherFunction: midline({ confusion: false, drowsiness: false }),
        cranialNerves: signs({ ophthalmoplegia: true }),
        gait: midline({ ataxic: true }),
        reflexes: reflexes({ biceps: '0', knee: '0', ankle: '0' }),
      },
    });
    expect(localise(exam).localisations[0]?.site).toBe('demyelinating-polyradiculoneuropathy');
  });
});

describe('an injury', () => {
  const crash = { conditions: told(['head-injury']), exposures: told(['trauma']) };
  const nerves = signs({
    'third-nerve-palsy': [true, null],
    'dilated-pupil': [true, null],
    'sixth-nerve-palsy': [null, true],
  });
  const chanceOf = (history: object, place: string): number =>
    localise(bedsideExam({ history, findings: { cranialNerves: nerves } })).localisations.find(
      ({ site, side }) => `${site} ${side}` === place,
    )?.probability ?? 0;
  const onset = { pace: 'acute', durationDays: 5 };

  it('tears a nerve of either eye at once, where without one a single place is sought', () => {
    for (const nerve of ['abducens-nerve right', 'oculomotor-nerve left']) {
      expect(chanceOf({ onset, ...crash }, nerve)).toBeGreaterThan(0.2);
      expect(chanceOf({ onset }, nerve)).toBeLessThan(0.5 * chanceOf({ onset, ...crash }, nerve));
    }
  });

  it('is no reason for two nerves where they failed over months, nor for a nerve and the brain', () => {
    const third = indexOf('oculomotor-nerve', 'left');
    const sixth = indexOf('abducens-nerve', 'right');
    const factorOf = (onset: object, other: number) =>
      new SharedInjury(bedsideExam({ history: { onset, ...crash } }), hypotheses).besides(third)(other);
    expect(factorOf({ pace: 'acute' }, sixth)).toBeGreaterThan(1);
    expect(factorOf({ pace: 'chronic' }, sixth)).toBe(0);
    expect(factorOf({ pace: 'acute' }, indexOf('midbrain-tegmentum', 'left'))).toBe(0);
  });
});
