import { describe, expect, it } from 'vitest';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import { emptyDraft, type ResultEntry } from '../../src/page/draft/draft.ts';
import { examOfDraft } from '../../src/page/draft/exam-of-draft.ts';
import { faultsWithin } from '../../src/page/story/faults-at.ts';
import { courses, paces, sexes } from '../../src/page/story/onset-words.ts';
import {
  placeOf,
  resultOf,
  resultWords,
  unitsOf,
  withNote,
  withoutResult,
  withQuantity,
  withValue,
} from '../../src/page/story/result-entries.ts';
import { amend, relationLabels, stateHistory, withAnother, withList } from '../../src/page/story/statements.ts';
import { storyDetail } from '../../src/page/story/story-place.ts';
import { faultsOf, read } from '../exam/support/read.ts';
import { catalogue } from './catalogue.ts';

const index = indexCatalogue(catalogue);
const empty = emptyDraft(new Date('2026-03-14T09:20:00Z'), () => '7f6d2c1e-94a5-4a4c-8f1b-3f0f8f1f2a10');
const { results } = catalogue;
const result = (key: string) => {
  const found = results.find((one) => one.key === key);
  if (found === undefined) throw new Error(`no result ${key}`);
  return found;
};
/** The faults that the service finds in a draft with these results. */
const faultsIn = (entries: readonly ResultEntry[]) => {
  const { exam } = examOfDraft({ ...empty, subject: 'Patient/1', results: entries }, index);
  return faultsOf(exam);
};

describe('statements of the history', () => {
  it('are stated anew, and stated otherwise in their place', () => {
    const once = stateHistory([], 'back-pain', true);
    const twice = stateHistory(once, 'numbness', false);
    expect(twice).toEqual([
      { key: 'back-pain', present: true },
      { key: 'numbness', present: false },
    ]);
    expect(stateHistory(twice, 'back-pain', false)[0]).toEqual({ key: 'back-pain', present: false });
  });

  it('differ by side where a side is given', () => {
    const right = stateHistory(stateHistory([], 'leg-pain', true), 'leg-pain', true, 'right');
    expect(right).toEqual([{ key: 'leg-pain', present: true, side: 'right' }]);
    expect(stateHistory(right, 'leg-pain', false, 'left')).toHaveLength(2);
  });

  it('are said again of the other side, or of a relative still to be named', () => {
    expect(withAnother([{ key: 'leg-pain', present: true, side: 'left' }], 0)[1]).toEqual({
      key: 'leg-pain',
      present: true,
      side: 'right',
    });
    const relatives = withAnother([{ key: 'ataxia', present: true, relation: 'parent' }], 0);
    expect(relatives[1]).toEqual({ key: 'ataxia', present: true });
  });

  it('name no relative without the disorder', () => {
    const stated = amend(stateHistory([], 'ataxia', true), 0, { relation: 'parent' });
    expect(stated[0]?.relation).toBe('parent');
    expect(amend(stated, 0, { present: false })).toEqual([{ key: 'ataxia', present: false }]);
    expect(amend(stated, 0, { relation: undefined })).toEqual([{ key: 'ataxia', present: true }]);
  });

  it('are taken by the service with every relative, pace, course and sex that is offered', () => {
    for (const relation of Object.keys(relationLabels)) {
      const draft = withList(empty, 'family', [{ key: 'ataxia', present: true, relation }]);
      expect(read(examOfDraft({ ...draft, subject: 'Patient/1' }, index).exam).history[0]?.relation).toBe(relation);
    }
    const offered = {
      pace: Object.keys(paces) as (keyof typeof paces)[],
      course: Object.keys(courses) as (keyof typeof courses)[],
      sex: Object.keys(sexes) as (keyof typeof sexes)[],
    };
    for (const pace of offered.pace) {
      for (const course of offered.course) {
        for (const sex of offered.sex) {
          const draft = { ...empty, subject: 'Patient/1', onset: { pace }, course, person: { sex } };
          expect(faultsOf(examOfDraft(draft, index).exam)).toEqual([]);
        }
      }
    }
  });
});

describe('results', () => {
  it('are taken by the service in every unit and with every value that is offered', () => {
    for (const one of results) {
      const { plausible, values = [] } = one;
      for (const unit of unitsOf(one)) {
        const found = faultsIn(withQuantity([], one, { value: plausible?.high ?? 1, unit }));
        // The number may be out of range in another unit than the catalogue's; the unit itself is known.
        expect(
          found.filter(({ code }) => code !== 'OUT_OF_RANGE'),
          `${one.key} in ${unit}`,
        ).toEqual([]);
      }
      for (const { key } of values) expect(faultsIn(withValue([], one, key)), one.key).toEqual([]);
    }
  });

  it('are changed in their place, with note and code', () => {
    const loinc = { system: 'http://loinc.org', code: '4548-4' };
    const sent: ResultEntry = { code: loinc, valueQuantity: { value: 5.3, unit: '%' }, note: 'fasting' };
    const hba1c = result('hba1c');
    expect(resultOf(sent, results)).toBe(hba1c);
    const [entry] = withQuantity([sent], hba1c, { value: 48, unit: 'mmol/mol' });
    expect(entry).toEqual({
      code: loinc,
      note: 'fasting',
      valueQuantity: { value: 48, unit: 'mmol/mol', system: 'http://unitsofmeasure.org', code: 'mmol/mol' },
    });
    expect(withNote([sent], hba1c, ' ')[0]).toEqual({ code: loinc, valueQuantity: { value: 5.3, unit: '%' } });
    expect(withoutResult([sent], hba1c)).toEqual([]);
    expect(placeOf(result('crp'), [sent])).toBe(-1);
  });

  it('read as they were stated', () => {
    const [glucose] = withQuantity([], result('glucose-fasting'), { value: 5, comparator: '<', unit: 'MMOL/l' });
    expect(resultWords(result('glucose-fasting'), glucose)).toBe('<5 mmol/L');
    expect(resultWords(result('nerve-conduction-pattern'), { value: 'axonal' })).toBe('Axonal');
    expect(resultWords(result('crp'), undefined)).toBe('');
  });
});

describe('a pointer of the exam', () => {
  it.each([
    ['/person/ageYears', 'person'],
    ['/history/onset/pace', 'person'],
    ['/history/course', 'person'],
    ['/history/symptoms/2', 'symptoms.2'],
    ['/history/family/0/relation', 'family.0'],
    ['/history/medications', 'medications'],
    ['/results/3/valueQuantity/code', 'results.3'],
    ['/results', 'results'],
    ['/findings/power/0', undefined],
    ['', undefined],
  ])('%s leads to %s', (pointer, detail) => expect(storyDetail(pointer)).toBe(detail));
});

describe('faults', () => {
  it('stand beside the entry that they are about, in the words of the service', () => {
    const entries = withQuantity(withQuantity([], result('crp'), { value: 4, unit: 'furlongs' }), result('potassium'), {
      value: 400,
      unit: 'mmol/L',
    });
    const faults = faultsIn(entries);
    expect(faultsWithin(faults, '/results/0').map(({ message }) => message)).toEqual([
      expect.stringContaining('Not a UCUM unit'),
    ]);
    expect(faultsWithin(faults, '/results/1').map(({ message }) => message)).toEqual([
      expect.stringContaining('in anybody'),
    ]);
  });

  it('of the tenth entry are not those of the first', () => {
    const faults = [{ pointer: '/results/10/value', message: 'ten' }];
    expect(faultsWithin(faults, '/results/1')).toEqual([]);
    expect(faultsWithin(faults, '/results/10')).toEqual(faults);
  });
});
