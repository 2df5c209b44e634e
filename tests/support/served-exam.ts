import type { FhirResource } from 'fhir/r4.js';
import type { Exam } from '../../src/exam/exam.ts';
import { collectionOf } from '../../src/fhir/bundle-forms.ts';
import type { ExamSteps } from '../../src/http/exam-steps.ts';
import type { Assessment } from '../../src/workup/assessment.ts';

/** The resources of an exam as the server gives them: references are `Type/id`. */
export function servedResources(
  steps: ExamSteps,
  exam: Exam,
  assessment: Assessment = steps.assess(exam),
): FhirResource[] {
  const { entry = [] } = collectionOf(steps.toBundle(exam, assessment, { version: 1 }));
  const types = new Map(entry.map(({ fullUrl, resource }) => [fullUrl, `${resource?.resourceType}/${resource?.id}`]));
  const rewritten = JSON.stringify(entry.map(({ resource }) => resource)).replaceAll(
    /urn:uuid:[0-9a-f-]{36}/g,
    (url) => types.get(url) ?? url,
  );
  return JSON.parse(rewritten);
}
