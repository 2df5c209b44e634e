import { describe, expect, it } from 'vitest';
import { headAloneShifts } from '../../src/localisation/inference/told-of-the-head.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { midline, power } from './case-writing.ts';
import { has, oddsBy } from './odds.ts';

const odds = oddsBy(headAloneShifts);
const afterBirth = { conditions: has('pregnancy'), exposures: has('recent-surgery') };
const headache = { ...afterBirth, symptoms: has('headache', 'nausea', 'fatigue') };

describe('what is told of the head alone', () => {
  it('looks for no nerve of a limb, whatever operation went before', () => {
    expect(odds({ history: headache }, 'femoral-nerve', 'nerve')).toBeLessThan(1);
    expect(odds({ history: headache }, 'abducens-nerve', 'cranial-nerve')).toBe(1);
    expect(
      odds({ history: headache, findings: { higherFunction: midline({ drowsiness: true }) } }, 'nerve-root', 'root'),
    ).toBeLessThan(1);
  });

  it('is not alone where a limb is told of or fails', () => {
    const legs = { ...afterBirth, symptoms: has('headache', 'leg-weakness') };
    expect(odds({ history: legs }, 'femoral-nerve', 'nerve')).toBe(1);
    const findings = { power: power({ 'hip-flexion': ['4', null] }) };
    expect(odds({ history: headache, findings }, 'femoral-nerve', 'nerve')).toBe(1);
    expect(odds({ history: afterBirth }, 'femoral-nerve', 'nerve')).toBe(1);
  });

  // What a headache in the week after birth may be: ACOG 2022, headaches in pregnancy and postpartum (recalled).
  it('puts pressure and meninges before nerves in a headache after birth', () => {
    const onset = { pace: 'acute', durationDays: 2 };
    const { localisations } = createLocaliser().localise(bedsideExam({ history: { ...headache, onset } }));
    expect(localisations.slice(0, 3).map(({ kind }) => kind)).not.toContain('nerve');
    expect(localisations[0]?.site).toBe('raised-intracranial-pressure');
  });
});
