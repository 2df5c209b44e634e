import { describe, expect, it } from 'vitest';
import type { RankedCause } from '../../src/causes/ranked-cause.ts';
import { allCauses } from '../../src/causes/table/all-causes.ts';
import { createAssessor } from '../../src/summary/assess.ts';
import { systems } from '../../src/terminology/systems.ts';
import { likelyEmergencies } from '../../src/workup/red-flags/likely-emergencies.ts';
import { assessRedFlags, redFlagRules } from '../../src/workup/red-flags.ts';
import { bedsideExam, localised, site, weakLegsBothSides } from '../support/bedside.ts';

const anywhere = localised(site('common-fibular-nerve', 'nerve'));

const cause = (key: string, probability: number): RankedCause => ({
  key,
  label: key,
  code: { system: systems.cause, code: key, display: key },
  probability,
  supporting: [{ pointer: '/history/symptoms/0', text: 'back pain' }],
  against: [],
  source: 'invented',
});

const presentIn = (history: object, causes: readonly RankedCause[], findings: object = {}) =>
  assessRedFlags(bedsideExam({ history, findings }), anywhere, causes).filter(({ state }) => state === 'present');

const raisedIn = (...parts: Parameters<typeof presentIn>) => presentIn(...parts).map(({ key }) => key);

describe('emergencies raised by the causes behind them', () => {
  it('name flags and causes that the tables know', () => {
    const causes = new Set(allCauses.map(({ key }) => key));
    const flags = new Set(redFlagRules.map(({ key }) => key));
    for (const { flag, causes: behind } of likelyEmergencies) {
      expect(flags).toContain(flag);
      expect(behind.filter((key) => !causes.has(key))).toEqual([]);
    }
  });

  it('are said from an eighth on where the trouble is recent, with the likelihood and what speaks for the cause', () => {
    const told = { onset: { durationDays: 6 }, symptoms: [{ key: 'tight-band', present: true }] };
    const [flag] = presentIn(told, [cause('spinal-epidural-abscess', 0.16)]);
    expect(flag?.key).toBe('suspected-cord-compression');
    expect(flag?.because[0]).toMatchObject({ pointer: '/history/symptoms/0', text: expect.stringContaining('16 %') });
    expect(flag?.because[1]?.pointer).toBe('/history/symptoms/0');
  });

  it('are not said of what is old or too unlikely', () => {
    expect(raisedIn({ onset: { durationDays: 2000 } }, [cause('spinal-epidural-abscess', 0.9)])).toEqual([]);
    expect(raisedIn({ onset: { durationDays: 6 } }, [cause('spinal-epidural-abscess', 0.1)])).toEqual([]);
  });

  it('one shoulder blade that stands off is one nerve, whatever infection went before', () => {
    const told = { onset: { durationDays: 18 }, symptoms: [{ key: 'preceding-infection', present: true }] };
    const wing = (side: string) => ({ inspection: [{ sign: 'scapular-winging', side, present: true }] });
    const roots = [cause('guillain-barre-syndrome', 0.3)];
    expect(raisedIn(told, roots, wing('left'))).not.toContain('acute-ascending-weakness');
    expect(raisedIn(told, roots, wing('both'))).toContain('acute-ascending-weakness');
  });

  it('inflamed roots take more than the eyes, and sugar takes one nerve and the feet', () => {
    const roots = [cause('miller-fisher-syndrome', 0.5)];
    const week = { onset: { pace: 'acute', durationDays: 7 } };
    const eyes = { cranialNerves: [{ sign: 'ophthalmoplegia', present: true }] };
    const told = (...keys: readonly string[]) => ({ ...week, symptoms: keys.map((key) => ({ key, present: true })) });
    expect(raisedIn(told('drooping-eyelids'), roots, eyes)).not.toContain('acute-ascending-weakness');
    expect(raisedIn(told('drooping-eyelids', 'unsteadiness'), roots, eyes)).toContain('acute-ascending-weakness');
    const sixthOverFeet = {
      cranialNerves: [{ sign: 'sixth-nerve-palsy', side: 'left', present: true }],
      sensation: [{ modality: 'light-touch', site: 'sole', side: 'both', result: 'reduced' }],
    };
    const diabetic = { ...told('diplopia'), conditions: [{ key: 'diabetes-mellitus', present: true }] };
    expect(raisedIn(diabetic, roots, sixthOverFeet)).not.toContain('acute-ascending-weakness');
    expect(raisedIn(told('diplopia'), roots, sixthOverFeet)).toContain('acute-ascending-weakness');
  });

  // A sign of a functional disorder does not exclude a stroke beside it: Stone 2005 (recalled).
  it('a sudden weak leg is a stroke until proven otherwise, though the walk looks functional', () => {
    const exam = bedsideExam({
      person: { ageYears: 66 },
      history: { onset: { pace: 'acute', durationDays: 1 }, symptoms: [{ key: 'leg-weakness', present: true }] },
      findings: {
        power: ['hip-flexion', 'knee-flexion', 'ankle-dorsiflexion'].map((movement) => ({
          ...{ movement, side: 'left', grade: '4' },
        })),
        gait: [{ sign: 'functional', side: 'left', present: true }],
        reflexes: ['knee', 'ankle'].map((reflex) => ({ reflex, side: 'left', grade: '2' })),
        tone: [{ site: 'lower-limb', side: 'left', tone: 'normal' }],
      },
    });
    const { localisations, redFlags } = createAssessor().assess(exam);
    expect(localisations[0]?.site).toBe('no-lesion');
    expect(redFlags.filter(({ state }) => state === 'present').map(({ key }) => key)).toContain('suspected-stroke');
  });

  it('ask for more where nobody has said since when, and a stroke then not at all', () => {
    expect(raisedIn({}, [cause('rhabdomyolysis', 0.14)])).toEqual([]);
    expect(raisedIn({}, [cause('rhabdomyolysis', 0.22)])).toEqual(['rhabdomyolysis']);
    expect(raisedIn({}, [cause('ischaemic-stroke', 0.9)])).toEqual([]);
  });

  it('are an inflamed artery of the head from the age on at which it is met, unless days of fever explain the headache', () => {
    const raised = (ageYears: number | undefined, symptoms: readonly string[], durationDays = 3) =>
      assessRedFlags(
        bedsideExam({
          ...(ageYears !== undefined && { person: { ageYears } }),
          history: { onset: { durationDays }, symptoms: symptoms.map((key) => ({ key, present: true })) },
        }),
        anywhere,
        [cause('giant-cell-arteritis', 0.3)],
      )
        .filter(({ state }) => state === 'present')
        .map(({ key }) => key);
    expect(raised(72, ['headache'])).toContain('suspected-giant-cell-arteritis');
    expect(raised(undefined, ['headache'])).not.toContain('suspected-giant-cell-arteritis');
    expect(raised(undefined, ['headache', 'jaw-claudication'])).toContain('suspected-giant-cell-arteritis');
    expect(raised(72, ['headache', 'fever'])).not.toContain('suspected-giant-cell-arteritis');
    expect(raised(72, ['headache', 'fever'], 20)).toContain('suspected-giant-cell-arteritis');
  });

  it('add to what the rules raise and take nothing away', () => {
    const history = { onset: { pace: 'acute', durationDays: 3 }, symptoms: [{ key: 'back-pain', present: true }] };
    const findings = {
      power: weakLegsBothSides,
      reflexes: ['knee', 'ankle'].map((reflex) => ({ reflex, side: 'both', grade: '0' })),
    };
    const alone = raisedIn(history, [], findings);
    const beside = raisedIn(history, [cause('acute-porphyria', 0.5)], findings);
    expect(alone).not.toContain('suspected-acute-porphyria');
    expect(beside).toEqual(expect.arrayContaining([...alone, 'suspected-acute-porphyria']));
  });

  it('are not said of what rests for months, of one limb or of one nerve of the head', () => {
    const mass = [cause('brain-tumour', 0.4)];
    const arm = { power: [{ movement: 'finger-flexion', side: 'right', grade: '3' }] };
    const sixth = { cranialNerves: [{ sign: 'sixth-nerve-palsy', side: 'right', present: true }] };
    const fresh = { onset: { pace: 'acute', durationDays: 7 } };
    const old = { onset: { pace: 'chronic', durationDays: 240 }, course: 'static' };
    const aphasia = { higherFunction: [{ sign: 'expressive-aphasia', present: true }] };
    expect(raisedIn(old, mass, aphasia)).toEqual([]);
    expect(raisedIn(fresh, [cause('spinal-epidural-haematoma', 0.2)], arm)).toEqual([]);
    expect(raisedIn(fresh, [cause('miller-fisher-syndrome', 0.2)], sixth)).toEqual([]);
  });

  it('are a stroke of some weeks where one leads in the brain, whatever pace was noted', () => {
    const lateral = localised(site('medulla-lateral', 'brainstem'));
    const findings = { cranialNerves: [{ sign: 'palatal-weakness', side: 'left', present: true }] };
    const raised = (onset: object, causes: readonly RankedCause[], at = lateral) =>
      assessRedFlags(bedsideExam({ history: { onset }, findings }), at, causes)
        .filter(({ state }) => state === 'present')
        .map(({ key }) => key);
    const month = { pace: 'subacute', durationDays: 30 };
    const stroke = [cause('ischaemic-stroke', 0.6), cause('brain-tumour', 0.2)];
    expect(raised(month, stroke)).toContain('suspected-stroke');
    expect(raised({ ...month, durationDays: 90 }, stroke)).not.toContain('suspected-stroke');
    expect(raised({ pace: 'subacute' }, [cause('brain-tumour', 0.5), cause('ischaemic-stroke', 0.4)])).not.toContain(
      'suspected-stroke',
    );
    expect(raised(month, stroke, anywhere)).not.toContain('suspected-stroke');
  });

  it('are a poison that nobody told of where hair and nails speak of one', () => {
    const onset = { pace: 'subacute', durationDays: 20 };
    expect(raisedIn({ onset }, [cause('thallium-neuropathy', 0.2)])).toContain('suspected-poisoning');
    expect(raisedIn({ onset: { durationDays: 200 } }, [cause('thallium-neuropathy', 0.9)])).toEqual([]);
  });

  it('are not said of a walk that sways since nobody knows when, nor of a painful back with sound legs', () => {
    const swaying = { gait: [{ sign: 'sensory-ataxic', present: true }] };
    const roots = [cause('guillain-barre-syndrome', 0.2)];
    expect(raisedIn({ symptoms: [{ key: 'difficulty-walking', present: true }] }, roots, swaying)).toEqual([]);
    const weak = { symptoms: [{ key: 'leg-weakness', present: true }] };
    expect(raisedIn(weak, roots, swaying)).toContain('acute-ascending-weakness');
    const back = {
      onset: { pace: 'acute', durationDays: 3 },
      symptoms: [{ key: 'back-pain', present: true }],
      medications: [{ key: 'anticoagulant', present: true }],
    };
    const blood = [cause('spinal-epidural-haematoma', 0.2)];
    const strong = { power: weakLegsBothSides.map((one) => ({ ...one, grade: '5' })) };
    expect(raisedIn(back, blood)).toContain('suspected-cord-compression');
    expect(raisedIn(back, blood, strong)).not.toContain('suspected-cord-compression');
  });
});
