import { describe, expect, it } from 'vitest';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import type { Draft } from '../../src/page/draft/draft.ts';
import { draftOfExam } from '../../src/page/draft/draft-of-exam.ts';
import { examOfDraft } from '../../src/page/draft/exam-of-draft.ts';
import { differencesOf } from '../../src/page/send/differences.ts';
import { dateInWords } from '../../src/page/send/sheet-date.ts';
import { comaLine, sheetSections, untestedLines } from '../../src/page/send/sheet-rows.ts';
import { catalogue, exampleExam } from './catalogue.ts';

const index = indexCatalogue(catalogue);
const draft = draftOfExam(exampleExam('foot-drop'), index);

function sectionsOf(one: Draft) {
  return sheetSections(one, undefined, examOfDraft(one, index), index);
}

describe('the printed sheet', () => {
  it('has a row with both sides for each item that is abnormal on one', () => {
    const power = sectionsOf(draft).find(({ label }) => label === 'Power');
    const row = power?.rows.find(({ name }) => name === 'Ankle dorsiflexion');
    expect(row).toMatchObject({ right: { text: '5', isAbnormal: false }, left: { text: '2', isAbnormal: true } });
    expect(power?.rows.map(({ name }) => name)).not.toContain('Hip flexion');
  });

  it('leaves out nothing that was tested: what has no row is named as normal, absent or negative', () => {
    for (const name of ['foot-drop', 'cervical-cord', 'ascending-weakness'] as const) {
      const exam = draftOfExam(exampleExam(name), index);
      const named = sectionsOf(exam).flatMap(({ rows, others }) => [
        ...rows.map((row) => row.name),
        ...others.flatMap(({ names }) => names.map((one) => one.replace(/ \((right|left)\)$/, ''))),
      ]);
      const tested = Object.entries(exam.cells).filter(([, { value }]) => value !== undefined);
      const items = new Set(tested.map(([key]) => key.replace(/\|[a-z]+$/, '')));
      expect(named.filter((one) => !one.startsWith('the rest'))).toHaveLength(items.size);
    }
  });

  it('calls a sign that was looked for in vain absent, not normal', () => {
    const gait = sectionsOf(draft).find(({ label }) => label === 'Gait');
    expect(gait?.others).toEqual([{ word: 'absent', names: ['Romberg sign'] }]);
  });

  it('says what was not tested, on which side and why', () => {
    const lines = untestedLines(draft, index).map(({ reason, names }) => `${reason}: ${names.join('; ')}`);
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/^not done: Temperature, .*\(left\)$/);
    expect(lines[1]).toMatch(/^declined: Crossed straight-leg raise.*\(right\)$/);
  });

  it('sums the coma scale only where every part was scored', () => {
    const scored = { ...draft, comaScale: { eye: { score: 3 }, verbal: { score: 4 }, motor: { score: 6 } } };
    expect(comaLine(scored, index)).toContain('total 13');
    const partly = { ...draft, comaScale: { eye: { score: 3 }, motor: { score: 6 }, verbal: { notTested: 'unable' } } };
    expect(comaLine(partly as Draft, index)).toMatch(/eye 3, motor 6$/);
    expect(comaLine(draft, index)).toBeUndefined();
  });

  it('gives the moment in the time of the place where it was', () => {
    expect(dateInWords('2026-03-14T10:20:00+01:00', 'uk')).toBe('14 Mar 2026, 10:20 (+01:00)');
    expect(dateInWords('2026-03-04T23:05:00.5Z', 'us')).toBe('Mar 4, 2026, 23:05 (UTC)');
  });
});

describe('two versions of an exam side by side', () => {
  it('differ nowhere when they say the same', () => {
    expect(differencesOf(draft, draftOfExam(exampleExam('foot-drop'), index), index)).toEqual([]);
  });

  it('differ where one was changed, also in what only one has', () => {
    const { 'gait/high-stepping||left': _gone, ...cells } = draft.cells;
    const mine: Draft = {
      ...draft,
      subject: 'Patient/2',
      cells: { ...cells, 'power/ankle-dorsiflexion||left': { notTested: 'pain' } },
    };
    expect(differencesOf(draft, mine, index)).toMatchObject([
      { what: 'Ankle dorsiflexion, left', mine: 'not tested: pain' },
      { what: 'High-stepping gait, left', kept: 'Present', mine: 'not recorded' },
      { what: 'Person examined', kept: 'Patient/invented-foot-drop', mine: 'Patient/2' },
    ]);
  });
});
