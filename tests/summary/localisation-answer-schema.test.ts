import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import { inventExams } from '../../src/cli/simulated/invented-exams.ts';
import { simulationModel } from '../../src/cli/simulated/simulated-patient.ts';
import { catalogueDocument } from '../../src/exam/catalogue/catalogue-document.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { catalogueSchema } from '../../src/http/api-description/catalogue-schema.ts';
import { localisationAnswerSchema } from '../../src/summary/localisation-answer-schema.ts';
import { builtSteps, compiledByBuild } from '../support/built.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';

const now = new Date('2026-12-31T00:00:00Z');

function validator(schema: object) {
  const ajv = new Ajv2020({ strict: true, strictTuples: false, allErrors: true });
  addFormats.default(ajv);
  return ajv.compile(schema);
}

describe('the schema of the localisation answer', () => {
  const validate = validator(localisationAnswerSchema());
  const steps = builtSteps();
  const answerTo = (body: unknown) =>
    JSON.parse(
      JSON.stringify(steps.toLocalisationAnswer(steps.assess(steps.readExam(body, { purpose: 'localise', now })))),
    );

  it('holds for the answers to the examples and to forty invented exams', () => {
    const model = simulationModel(createExamReader(), compiledByBuild()?.model?.states);
    const invented = [...inventExams(model, { count: 40, seed: 7, until: new Date('2026-01-01T00:00:00Z') })];
    const conclusions = new Set<string>();
    for (const body of [...exampleNames.map((name) => exampleExam({}, name)), ...invented.map(({ exam }) => exam)]) {
      const answer = answerTo(body);
      conclusions.add(answer.conclusion);
      expect([validate(answer), validate.errors]).toEqual([true, null]);
    }
    expect(conclusions.size).toBeGreaterThan(2);
  });

  it('is closed: a property more, a property less or another value is no answer', () => {
    const answer = answerTo(exampleExam());
    expect(validate({ ...answer, more: 1 })).toBe(false);
    expect(validate({ ...answer, conclusion: 'perhaps' })).toBe(false);
    for (const property of Object.keys(answer)) {
      const { [property]: _left, ...rest } = answer;
      expect([property, validate(rest)]).toEqual([property, false]);
    }
    const [site] = answer.localisations;
    expect(validate({ ...answer, localisations: [{ ...site, probability: 1.5 }] })).toBe(false);
    expect(validate({ ...answer, localisations: [{ ...site, more: 1 }] })).toBe(false);
  });
});

describe('the schema of the catalogue', () => {
  it('holds for the catalogue and is closed', () => {
    const validate = validator(catalogueSchema());
    const catalogue = JSON.parse(JSON.stringify(catalogueDocument()));
    expect([validate(catalogue), validate.errors]).toEqual([true, null]);
    expect(validate({ ...catalogue, more: 1 })).toBe(false);
  });
});
