import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { investigationKeys } from '../../src/exam/catalogue/investigations.ts';
import type { Exam } from '../../src/exam/exam.ts';
import { createAssessor } from '../../src/summary/assess.ts';
import { bedsideExam, exampleRead } from '../support/bedside.ts';
import { exampleNames } from '../support/example-exam.ts';

const { assess } = createAssessor();
const withRequests = (exam: Exam, requests: readonly string[]) => assess({ ...exam, requests });
const keysOf = (tests: readonly { readonly key: string }[]) => tests.map(({ key }) => key);

describe.each(exampleNames)('what goes out as a proposal: %s', (name) => {
  const exam = exampleRead(name);
  const plain = assess(exam);

  it('is all that is suggested, unless the exam says what is wanted', () => {
    expect(plain.proposed).toEqual(plain.workup.map((item) => ({ ...item, isChosen: false })));
    expect(plain.notChosen).toEqual([]);
  });

  it('is just what is wanted, and nothing of the rest is lost or changed', () => {
    fc.assert(
      fc.property(fc.subarray([...investigationKeys]), (requests) => {
        const { workup, proposed, notChosen, redFlags, needless } = withRequests(exam, requests);
        expect(new Set(keysOf(proposed))).toEqual(new Set(requests));
        expect(proposed).toHaveLength(requests.length);
        expect(workup).toEqual(plain.workup);
        expect({ redFlags, needless }).toEqual({ redFlags: plain.redFlags, needless: plain.needless });
        expect(notChosen).toEqual(workup.filter(({ key }) => !requests.includes(key)));
        const suggested = proposed.filter(({ tier }) => tier !== undefined);
        expect(suggested).toEqual(
          workup.filter(({ key }) => requests.includes(key)).map((item) => ({ ...item, isChosen: true })),
        );
      }),
      { numRuns: 5 },
    );
  });
});

describe('what the examiner asks for though it was not suggested', () => {
  it('is proposed for that reason, without a work that it follows, and is never pressing', () => {
    const { proposed } = withRequests(exampleRead('foot-drop'), ['mri-brain', 'nerve-conduction-study']);
    expect(keysOf(proposed)).toEqual(['nerve-conduction-study', 'mri-brain']);
    const [, asked] = proposed;
    expect(asked).toMatchObject({
      label: 'MRI of the brain',
      priority: 'routine',
      because: 'the examiner asked for it; the service did not suggest it',
    });
    expect(asked).not.toHaveProperty('source');
  });

  it('says what speaks against it: a mass forbids a lumbar puncture, a result is there already', () => {
    const mass = bedsideExam({
      findings: { power: [{ movement: 'finger-abduction', side: 'left', grade: '3' }] },
      results: [{ key: 'mri-brain', value: 'space-occupying' }],
      requests: ['lumbar-puncture', 'mri-brain'],
    });
    const reasons = new Map(assess(mass).proposed.map(({ key, because }) => [key, because]));
    expect(reasons.get('lumbar-puncture')).toContain('since a mass has been seen');
    expect(reasons.get('mri-brain')).toContain('since a result of it came with the examination');
  });
});

describe('the presentation', () => {
  const exam = exampleRead('foot-drop');
  it('says what was asked for and what was left, instead of what is suggested', () => {
    const { presentation } = withRequests(exam, ['nerve-conduction-study']);
    expect(presentation).not.toContain('Suggested next');
    expect(presentation).toMatch(/Asked for by the examiner: nerve conduction study\./);
    expect(presentation).toMatch(/Suggested and not chosen: .+\./);
  });

  it('says that none was asked for', () => {
    const { presentation, workup } = withRequests(exam, []);
    expect(presentation).toContain('The examiner asked for no investigation. Suggested and not chosen: ');
    expect(workup.length).toBeGreaterThan(0);
    expect(assess(exam).presentation).not.toContain('not chosen');
    const pressing = withRequests(exampleRead('ascending-weakness'), []);
    expect(pressing.workup[0]).toMatchObject({ key: 'respiratory-pressures', priority: 'stat' });
    expect(pressing.presentation).toMatch(/Suggested and not chosen: [^,]* \(at once\), /);
  });
});
