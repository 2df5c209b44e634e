import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inventExams } from '../../src/cli/simulated/invented-exams.ts';
import { simulationModel } from '../../src/cli/simulated/simulated-patient.ts';
import { createExamSteps } from '../../src/context.ts';
import type { Exam } from '../../src/exam/exam.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { readSentExam } from '../../src/questionnaire/read-sent-exam.ts';
import { questionnaireResponse } from '../../src/questionnaire/write-response.ts';
import { compiledByBuild } from '../support/built.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { everyStatement, type Statement } from './every-statement.ts';

const version = '0.1.0';
const now = new Date('2026-06-01T00:00:00Z');
const reader = createExamReader();
const read = (body: unknown): Exam => reader.read(body, { purpose: 'record', now });

/** The exam without the pointers, which lead into what was sent. */
function withoutPointers(exam: Exam): unknown {
  return JSON.parse(JSON.stringify(exam, (key, value) => (key === 'pointer' ? undefined : value)));
}

/** Out as a form, through JSON, and back. */
function throughTheForm(exam: Exam): Exam {
  const sent = JSON.parse(JSON.stringify(questionnaireResponse(exam, version)));
  return readSentExam(sent, version, read).exam;
}

function expectTheSame(body: unknown): void {
  const exam = read(body);
  expect(withoutPointers(throughTheForm(exam))).toEqual(withoutPointers(exam));
}

describe('an exam as a QuestionnaireResponse, and back', () => {
  it.each(exampleNames)('is the same exam: %s', (name) => {
    expectTheSame(exampleExam({}, name));
  });

  it('is the same for invented exams and their corrections', () => {
    const until = new Date('2026-01-01T00:00:00Z');
    for (const { exam, correction } of inventExams(simulationModel(reader), { count: 25, seed: 7, until })) {
      expectTheSame(exam);
      if (correction !== undefined) expectTheSame(correction);
    }
  });

  it('makes the same Bundle to the byte', () => {
    const steps = createExamSteps(compiledByBuild());
    const bundleOf = (exam: Exam) => JSON.stringify(steps.toBundle(exam, steps.assess(exam), { version: 1 }));
    const until = new Date('2026-01-01T00:00:00Z');
    const invented = [...inventExams(simulationModel(reader), { count: 6, seed: 3, until })].map(({ exam }) => exam);
    for (const body of [...exampleNames.map((name) => exampleExam({}, name)), ...invented]) {
      const exam = read(body);
      expect(bundleOf(throughTheForm(exam)) === bundleOf(exam)).toBe(true);
    }
  });

  it('is the same whatever entries of the catalogue are put together', () => {
    const statements = everyStatement();
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 0, max: statements.length - 1 }), { maxLength: 40 }), (chosen) => {
        expectTheSame(exampleExam(bodyOf(chosen.map((index) => statements[index]))));
      }),
      { numRuns: 30, seed: 1 },
    );
  });

  it('can say each single thing that the catalogue knows', () => {
    const statements = everyStatement();
    expect(statements.length).toBeGreaterThan(3000);
    const byAbout = new Map<string, Statement[]>();
    for (const statement of statements) {
      byAbout.set(statement.about, [...(byAbout.get(statement.about) ?? []), statement]);
    }
    const rounds = Math.max(...[...byAbout.values()].map(({ length }) => length));
    for (let round = 0; round < rounds; round++) {
      expectTheSame(exampleExam(bodyOf([...byAbout.values()].map((same) => same[round]))));
    }
  });

  it('keeps a lost limb, and what could not be tested for it', () => {
    expectTheSame(
      exampleExam({
        findings: {
          inspection: [{ sign: 'amputation', site: 'foot', side: 'left', present: true }],
          power: [{ movement: 'ankle-dorsiflexion', side: 'left', notTested: 'limb-absent' }],
          clonus: [{ site: 'ankle', side: 'left', notTested: 'limb-absent', note: 'Invented.' }],
        },
      }),
    );
  });

  it.each([[undefined], [[]], [['mri-brain']], [['lumbar-puncture', 'mri-brain']]])(
    'keeps which investigations are wanted, none, or whatever is suggested: %j',
    (requests) => {
      expectTheSame(exampleExam(requests === undefined ? {} : { requests }));
    },
  );

  it('keeps a performer that cannot be the author, several of them, and identifiers', () => {
    const identifier = { system: 'https://clinic.example/staff', value: 'S-1' };
    for (const performer of [
      [{ reference: 'CareTeam/1' }, { reference: 'Practitioner/2' }],
      [
        { reference: 'Practitioner/1', display: 'invented' },
        { reference: 'https://clinic.example/fhir/PractitionerRole/2' },
      ],
      [{ identifier }, { type: 'Organization', identifier }],
      [{ reference: 'Practitioner/1' }, { reference: 'Practitioner/1' }],
      [],
    ]) {
      expectTheSame(exampleExam({ performer, encounter: { reference: 'Encounter/3' } }));
    }
  });

  it.each(['preliminary', 'final', 'amended', 'entered-in-error'])('keeps the status %s', (status) => {
    expectTheSame(exampleExam({ status }));
  });
});

/** The statements in the lists that they belong to; of several that could contradict each other the first. */
function bodyOf(statements: readonly (Statement | undefined)[]): Record<string, unknown> {
  const body: Record<string, unknown> = { history: {}, findings: {}, otherwiseNormal: [], results: [] };
  const subjects = new Set<string>();
  for (const statement of statements) {
    if (statement === undefined || subjects.has(statement.about)) continue;
    subjects.add(statement.about);
    const [last = '', ...above] = [...statement.list].reverse();
    const object = above.reverse().reduce((at, step) => at[step] as Record<string, unknown>, body);
    object[last] = [...((object[last] as unknown[]) ?? []), statement.entry];
  }
  return body;
}
