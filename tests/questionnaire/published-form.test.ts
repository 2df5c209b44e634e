import { validateResource } from '@medplum/core';
import type { CodeSystem, Questionnaire, QuestionnaireItem, ValueSet } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { questionnaireUrl } from '../../src/questionnaire/form-index.ts';
import { questionnaireResponse } from '../../src/questionnaire/write-response.ts';
import { canonicalBase } from '../../src/terminology/systems.ts';
import { published } from '../contract/codings.ts';
import { brokenInvariants } from '../contract/r4-invariants.ts';
import { flat } from '../support/code-systems.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { indexR4Definitions } from '../support/r4-definitions.ts';

const form = published.byUrl(questionnaireUrl) as Questionnaire;
const sets = new Map((form.contained as ValueSet[]).map((set) => [`#${set.id}`, set]));

function all(items: readonly QuestionnaireItem[]): QuestionnaireItem[] {
  return items.flatMap((item) => [item, ...all(item.item ?? [])]);
}
const items = all(form.item ?? []);

beforeAll(() => {
  indexR4Definitions();
});

describe('the published Questionnaire', () => {
  it('brings the answers of every choice with it, and none that no question has', () => {
    const asked = new Set(items.flatMap(({ answerValueSet }) => answerValueSet ?? []));
    expect(asked).toEqual(new Set(sets.keys()));
    expect(items.filter(({ type, answerValueSet }) => (type === 'choice') !== (answerValueSet !== undefined))).toEqual(
      [],
    );
  });

  it('offers codes of the published code systems, by their own names', () => {
    const own = [...sets.values()].flatMap(({ expansion }) => expansion?.contains ?? []);
    for (const { system, code, display } of own.filter((one) => one.system?.startsWith(canonicalBase))) {
      const concepts = flat((published.byUrl(String(system)) as CodeSystem).concept ?? []);
      expect([code, concepts.find((one) => one.code === code)?.display]).toEqual([code, display]);
    }
  });

  it('says in an expansion what its definition says', () => {
    for (const { compose, expansion } of sets.values()) {
      const defined = compose?.include.flatMap(({ system, concept = [] }) =>
        concept.map(({ code }) => `${system}|${code}`),
      );
      expect(new Set(expansion?.contains?.map(({ system, code }) => `${system}|${code}`))).toEqual(new Set(defined));
    }
  });

  it('asks a question only while the one that it depends on is there to be answered', () => {
    const linkIds = new Set(items.map(({ linkId }) => linkId));
    expect(linkIds.size).toBe(items.length);
    for (const { enableWhen = [] } of items) for (const { question } of enableWhen) expect(linkIds).toContain(question);
  });
});

/** Source: HL7 FHIR R4, QuestionnaireResponse, by a general-purpose validator and the FHIRPath of its invariants. */
describe('an exam as a response', () => {
  const reader = createExamReader();
  it.each(exampleNames)('is a valid R4 resource whose answers the form offers: %s', (name) => {
    const exam = reader.read(exampleExam({}, name), { purpose: 'record', now: new Date('2026-11-01T00:00:00Z') });
    const response = questionnaireResponse(exam, form.version);
    expect(response.questionnaire).toBe(`${form.url}|${form.version}`);
    expect(validateResource(response as Parameters<typeof validateResource>[0])).toEqual([]);
    expect(brokenInvariants(response)).toEqual([]);
    const byLinkId = new Map(items.map((item) => [item.linkId, item]));
    let codings = 0;
    const check = (answered: NonNullable<typeof response.item>): void => {
      for (const { linkId, answer = [], item = [] } of answered) {
        check(item);
        for (const { valueCoding, item: below = [] } of answer) {
          check(below);
          if (valueCoding === undefined) continue;
          codings += 1;
          const offered = sets.get(String(byLinkId.get(linkId)?.answerValueSet))?.expansion?.contains;
          expect(offered).toContainEqual(valueCoding);
        }
      }
    };
    check(response.item ?? []);
    expect(codings).toBeGreaterThan(10);
  });
});
