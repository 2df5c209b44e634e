import type { Bundle } from 'fhir/r4.js';
import { collectionOf } from '../../src/fhir/bundle-forms.ts';
import { builtSteps } from '../support/built.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';

export type Resource = Record<string, unknown> & { resourceType: string };

const steps = builtSteps();
/** Every resource of the example exams, as it is served. */
export const emitted = exampleNames.flatMap((name) => {
  const exam = steps.readExam(exampleExam({}, name), { purpose: 'record', now: new Date('2030-01-01T00:00:00Z') });
  return served(steps.toBundle(exam, steps.assess(exam), { version: 1 }));
});

/** The resources of a Bundle with references as a server gives them. */
function served(bundle: Bundle): Resource[] {
  const resources = (collectionOf(bundle).entry ?? []).flatMap(({ resource }) => resource ?? []);
  const types = new Map(resources.map(({ id, resourceType }) => [id, resourceType]));
  const text = JSON.stringify(resources).replace(/urn:uuid:([0-9a-f-]{36})/g, (whole, id) =>
    types.has(id) ? `${types.get(id)}/${id}` : whole,
  );
  return JSON.parse(text);
}
