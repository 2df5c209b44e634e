import { describe, expect, it } from 'vitest';
import { items } from '../../src/exam/catalogue/catalogue.ts';
import { canBeAskedFor, keysByDemand } from '../../src/exam/catalogue/cooperation.ts';
import { itemId } from '../../src/exam/catalogue/item.ts';
import { bedsideExam } from '../support/bedside.ts';

const asked = (parts: Record<string, unknown>) => {
  const exam = bedsideExam(parts);
  return items.filter(canBeAskedFor(exam)).map(itemId);
};

describe('what a patient can be examined for', () => {
  it('is everything in an adult who is awake, and where no age was given', () => {
    expect(asked({ person: { ageYears: 40 } })).toHaveLength(items.length);
    expect(asked({})).toHaveLength(items.length);
  });

  it('is in coma what needs no answer and no will (Plum and Posner: pupils, eye movements, reflexes, motor responses)', () => {
    const signs = asked({ findings: { higherFunction: [{ sign: 'coma', present: true }] } });
    expect(signs).toEqual(
      expect.arrayContaining([
        'cranial-nerves/unreactive-pupil',
        'cranial-nerves/absent-corneal-reflex',
        'cranial-nerves/absent-oculocephalic-reflex',
        'plantars/plantar-response',
        'reflexes/knee',
        'tone/upper-limb',
        'special-tests/neck-stiffness',
      ]),
    );
    for (const beyond of ['power/hip-flexion', 'sensation/pinprick', 'coordination/finger-nose', 'gait/romberg'])
      expect(signs).not.toContain(beyond);
    expect(signs.filter((one) => /aphasia|hemianopia|dysarthria|alexia/.test(one))).toEqual([]);
  });

  it('grows with the age of a child: a toddler moves, a child of six says what it feels, one of nine reads', () => {
    const at = (ageYears: number) => new Set(asked({ person: { ageYears } }));
    const steps = [
      [0.5, 'reflexes/knee', 'power/hip-flexion'],
      [2, 'power/hip-flexion', 'coordination/finger-nose'],
      [4, 'coordination/finger-nose', 'sensation/vibration'],
      [6, 'sensation/vibration', 'higher-function/alexia'],
    ] as const;
    for (const [age, can, cannot] of steps) {
      expect([age, at(age).has(can), at(age).has(cannot)]).toEqual([age, true, false]);
    }
    expect(at(9).size).toBe(items.length);
  });

  it('names keys that the catalogue has, each once', () => {
    const keys = new Set(items.map(({ key }) => key));
    const named = Object.values(keysByDemand).flat();
    expect(named.filter((key) => !keys.has(key))).toEqual([]);
    expect(named).toHaveLength(new Set(named).size);
  });
});
