import { describe, expect, it } from 'vitest';
import { symptoms } from '../../src/exam/catalogue/symptoms.ts';
import { sidedLabel } from '../../src/exam/sided-label.ts';
import { bedsideExam } from '../support/bedside.ts';

describe('the label of what is told of a side', () => {
  it.each([
    ['Weakness of the arms', 'Weakness of the right arm', 'Weakness of both arms'],
    ['Radicular pain in the leg', 'Radicular pain in the right leg', 'Radicular pain in both legs'],
    ['Pain in or behind the eye', 'Pain in or behind the right eye', 'Pain in or behind both eyes'],
    ['Clumsy hands', 'Clumsy right hand', 'Clumsy hands'],
    ['Burning feet', 'Burning right foot', 'Burning feet'],
    ['Red or swollen eye', 'Red or swollen right eye', 'Red or swollen eyes'],
    ['Leg pain', 'Leg pain on the right', 'Leg pain on both sides'],
    ['Numbness', 'Numbness on the right', 'Numbness on both sides'],
    ['Radicular pain in both legs', 'Radicular pain in both legs', 'Radicular pain in both legs'],
  ])('%s', (label, right, both) => {
    expect(sidedLabel(label, 'right')).toBe(right);
    expect(sidedLabel(label, 'both')).toBe(both);
  });

  it('names the side once, whatever is told', () => {
    for (const { label } of symptoms) {
      const sided = sidedLabel(label, 'left');
      if (!label.includes(' both ')) expect(sided.match(/\bleft\b/g), sided).toHaveLength(1);
    }
  });

  it('is how the statement is read', () => {
    const { history } = bedsideExam({
      history: { symptoms: [{ key: 'arm-weakness', side: 'left', present: true }] },
      findings: {},
    });
    expect(history.map(({ label }) => label)).toEqual(['Weakness of the left arm']);
  });
});
