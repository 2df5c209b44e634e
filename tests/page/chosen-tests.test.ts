import { describe, expect, it } from 'vitest';
import type { Investigation } from '../../src/client/generated/api-types.ts';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import { emptyDraft } from '../../src/page/draft/draft.ts';
import { examOfDraft } from '../../src/page/draft/exam-of-draft.ts';
import { furtherTests, testRows, withTest } from '../../src/page/send/chosen-tests.ts';
import { catalogue } from './catalogue.ts';

const index = indexCatalogue(catalogue);
const draft = emptyDraft(new Date('2026-03-14T10:00:00Z'), () => 'b5b8f6a4-6d67-4f0e-9d35-0a2f4c1b7e11');

function suggested(...keys: readonly string[]): readonly Investigation[] {
  return keys.map((key) => ({
    key,
    label: key,
    code: { system: 'urn:x', code: key, display: key },
    tier: 1,
    priority: 'routine',
    because: 'invented',
    source: 'invented',
  }));
}

const workup = [...suggested('potassium', 'electrocardiogram')];

describe('the tests that go out with an exam', () => {
  it('are all that is suggested until the examiner chooses', () => {
    expect(testRows(draft, workup, index).map(({ isChosen }) => isChosen)).toEqual([true, true]);
    expect(examOfDraft(draft, index).exam).not.toHaveProperty('requests');
  });

  it('are named one by one once something is left out, and none when all is', () => {
    const one = withTest(draft, workup, 'potassium', false);
    expect(examOfDraft(one, index).exam.requests).toEqual(['electrocardiogram']);
    expect(examOfDraft(withTest(one, workup, 'electrocardiogram', false), index).exam.requests).toEqual([]);
  });

  it('are all again when what was left out is ticked again', () => {
    const again = withTest(withTest(draft, workup, 'potassium', false), workup, 'potassium', true);
    expect(again).toEqual(draft);
  });

  it('keep what the examiner added, though the service does not suggest it', () => {
    const added = withTest(draft, workup, 'mri-brain', true);
    const row = testRows(added, workup, index).at(-1);
    expect(row).toMatchObject({ key: 'mri-brain', isChosen: true, suggestion: undefined });
    expect(row?.label).not.toBe('mri-brain');
    expect(furtherTests(testRows(added, workup, index), index).map(({ key }) => key)).not.toContain('mri-brain');
  });

  it('keep a ticked one that is suggested no longer', () => {
    const chosen = withTest(draft, workup, 'electrocardiogram', false);
    const rows = testRows(chosen, [...suggested('electrocardiogram')], index);
    expect(rows.map(({ key, isChosen, suggestion }) => [key, isChosen, suggestion !== undefined])).toEqual([
      ['electrocardiogram', false, true],
      ['potassium', true, false],
    ]);
  });

  it('tell one that is suggested later from one that was left out, until it is decided about', () => {
    const chosen = withTest(draft, workup, 'potassium', false);
    const later = [...workup, ...suggested('lumbar-puncture')];
    const isNew = (now: typeof draft) => testRows(now, later, index).map((row) => row.isNew);
    expect(isNew(chosen)).toEqual([false, false, true]);
    expect(isNew(withTest(chosen, later, 'electrocardiogram', false))).toEqual([false, false, true]);
    expect(isNew(withTest(chosen, later, 'lumbar-puncture', false))).toEqual([false, false, false]);
    expect(isNew(withTest(chosen, later, 'lumbar-puncture', true))).toEqual([false, false, false]);
  });
});
