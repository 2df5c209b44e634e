import { createExamReader } from '../../exam/read-exam.ts';
import { buildBundle } from '../../fhir/bundle.ts';
import { footDrop } from '../../http/api-description/example-exams.ts';
import { createAssessor } from '../../summary/assess.ts';
import { localisationAnswer } from '../../summary/localisation-answer.ts';

/** Any moment after the example; it decides nothing but that the example lies in the past. */
const now = new Date('2026-11-25T00:00:00Z');

let worked: Readonly<Record<string, unknown>> | undefined;

/** What the engine says to the example of the API description, cut to the beginning of every list. */
export function workedExample(name: string): unknown {
  worked ??= workOut();
  return worked[name];
}

function workOut(): Readonly<Record<string, unknown>> {
  const exam = createExamReader().read(footDrop, { purpose: 'record', now });
  const assessment = createAssessor().assess(exam);
  const bundle = buildBundle(exam, assessment, { version: 1 });
  const finding = bundle.entry?.find(({ resource }) => resource?.resourceType === 'Observation');
  const { meta: _meta, text: _text, ...shown } = { text: undefined, ...finding?.resource };
  const before = bundle.entry?.slice(0, bundle.entry.indexOf(finding ?? {})) ?? [];
  return {
    localisation: excerpt(JSON.parse(JSON.stringify(localisationAnswer(assessment)))),
    bundle: {
      resourceType: bundle.resourceType,
      type: bundle.type,
      entry: [
        ...before.map(({ request, resource }) => ({ request, resource: { resourceType: resource?.resourceType } })),
        { ...finding, resource: JSON.parse(JSON.stringify(shown)) },
      ],
    },
  };
}

/** The first item of every list; objects stay whole. */
function excerpt(value: unknown): unknown {
  if (Array.isArray(value)) return value.slice(0, 1).map(excerpt);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [key, key === 'levelRange' ? part : excerpt(part)]),
  );
}
