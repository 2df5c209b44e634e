import { describe, expect, it } from 'vitest';
import { sectionKeys } from '../../src/exam/catalogue/item.ts';
import { keysWithOtherNames, namedLists, otherNamesOf, rowsOf } from '../../src/exam/catalogue/other-names.ts';
import { requestWithFindings } from './support/exam-request.ts';
import { faultsOf } from './support/read.ts';

describe('other names', () => {
  it.each(namedLists)('of %s belong to keys that it has', (list) => {
    const keys = new Set(rowsOf(list).map(({ key }) => key));
    expect(keysWithOtherNames(list).filter((key) => !keys.has(key))).toEqual([]);
  });

  it.each(namedLists)('of %s lead to one key each, and to none that is called so itself', (list) => {
    const named = keysWithOtherNames(list).flatMap((key) => otherNamesOf(list, key).map((name) => name.toLowerCase()));
    expect(named.filter((name, at) => named.indexOf(name) !== at)).toEqual([]);
    const own = new Set(rowsOf(list).flatMap(({ key, label }) => [key.replaceAll('-', ' '), label.toLowerCase()]));
    expect(named.filter((name) => own.has(name))).toEqual([]);
  });

  it('are there for most sections of the examination', () => {
    expect(sectionKeys.filter((section) => keysWithOtherNames(section).length === 0)).toEqual(['tone', 'clonus']);
  });
});

describe('a sign or statement under another name', () => {
  const body = { examinedAt: '2026-05-01T10:00:00Z', findings: {} };

  it.each([
    ['cranialNerves', { sign: 'miosis', side: 'left', present: true }, 'small-pupil'],
    ['cranialNerves', { sign: 'abducens palsy', side: 'left', present: true }, 'sixth-nerve-palsy'],
    ['power', { movement: 'biceps', side: 'left', grade: '4' }, 'elbow-flexion'],
    ['cranialNerves', { sign: 'jaw-jerk', present: true }, 'reflexes/jaw'],
    ['specialTests', { test: 'meningism', result: 'positive' }, 'neck-stiffness'],
  ])('of %s is refused with the key that it stands for', (section, entry, suggestion) => {
    expect(faultsOf(requestWithFindings({ [section]: [entry] })).map((fault) => fault.suggestion)).toEqual([
      suggestion,
    ]);
  });

  it.each([
    ['symptoms', 'ptosis', 'drooping-eyelids'],
    ['symptoms', 'smoking', 'exposures/tobacco'],
    ['exposures', 'penetrating-injury', 'trauma'],
    ['medications', 'warfarin', 'anticoagulant'],
    ['conditions', 'MGUS', 'monoclonal-gammopathy'],
  ])('of the %s: %s', (list, key, suggestion) => {
    const faults = faultsOf({ ...body, history: { [list]: [{ key, present: true }] } });
    expect(faults.filter(({ pointer }) => pointer.startsWith('/history')).map((fault) => fault.suggestion)).toEqual([
      suggestion,
    ]);
  });
});
