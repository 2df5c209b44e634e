import { describe, expect, it } from 'vitest';
import { queryExam } from '../../src/causes/exam-query.ts';
import { shows } from '../../src/causes/table/cause.ts';
import { unseenMovement } from '../../src/causes/unseen-movement.ts';
import { bedsideExam } from '../support/bedside.ts';

const ofChorea = shows(['involuntary-movements/chorea'], 3, 0.05);
const ratios = (parts: Record<string, unknown>, row = ofChorea) =>
  unseenMovement(row, queryExam(bedsideExam(parts))).map(({ ratio }) => ratio);

const power = [{ movement: 'finger-extension', grade: '3', side: 'left' }];

describe('a movement of which nobody speaks', () => {
  it('counts against a disease that is made of it where somebody has examined', () => {
    const [ratio] = ratios({ findings: { power } });
    expect(ratio).toBeGreaterThan(0.05);
    expect(ratio).toBeLessThan(0.2);
    expect(ratios({ findings: { power } }, shows(['involuntary-movements/chorea'], 3, 0.4))).toEqual([]);
  });

  it('says nothing before an examination, nor where a movement was told', () => {
    expect(ratios({ history: { symptoms: [{ key: 'weakness', present: true }] } })).toEqual([]);
    const symptoms = [{ key: 'involuntary-movements', present: true }];
    expect(ratios({ history: { symptoms }, findings: { power } })).toEqual([]);
  });

  it('counts against any disease of a movement beside another one', () => {
    const involuntaryMovements = [{ sign: 'dystonia', present: true, side: 'left' }];
    expect(
      ratios({ findings: { involuntaryMovements } }, shows(['involuntary-movements/chorea'], 3, 0.4)),
    ).toHaveLength(1);
  });
});
