import type { ExamStatus } from '../exam/exam.ts';
import { nearestKey } from '../exam/faults/nearest-key.ts';
import { pointerTo } from '../exam/faults/pointer.ts';
import { throwIfAny } from '../exam/faults/report.ts';
import { sizeFaults } from '../exam/faults/sizes.ts';
import type { Fault } from '../kernel/errors.ts';
import { examForm } from './exam-form.ts';
import { questionnaireUrl } from './form-index.ts';
import { isObject, type Json, unknownElements } from './json-object.ts';
import { readItems } from './read-items.ts';

/** What each status of a response says of the exam. A response that was stopped is no examination. */
export const statusOf: ReadonlyMap<string, ExamStatus> = new Map([
  ['completed', 'final'],
  ['in-progress', 'preliminary'],
  ['amended', 'amended'],
  ['entered-in-error', 'entered-in-error'],
]);

export interface ResponseRead {
  /** The exam's JSON, which has still to be read as any other. */
  readonly body: Json;
  /** JSON Pointer into that JSON to JSON Pointer into the response. */
  readonly origins: ReadonlyMap<string, string>;
  readonly faults: readonly Fault[];
}

/** Elements that say something of the exam, and those that say how the resource is kept or shown. */
const taken = [
  'resourceType',
  'id',
  'meta',
  'language',
  'text',
  'extension',
  'identifier',
  'questionnaire',
  'status',
  'subject',
  'encounter',
  'authored',
  'author',
  'source',
  'item',
];

/** Whether a body is a response to a Questionnaire rather than an exam's own JSON. */
export function isQuestionnaireResponse(body: unknown): body is Json {
  return isObject(body) && body.resourceType === 'QuestionnaireResponse';
}

/**
 * The exam that a QuestionnaireResponse says. Nothing is dropped: what cannot be said in an exam is a fault.
 * @param version that of the published Questionnaire, which the response names or leaves open; any when undefined
 * @throws ExamInvalidError when it is too large to be read
 */
export function readResponse(response: Json, version: string | undefined): ResponseRead {
  throwIfAny(sizeFaults(response));
  const { identifier, subject, encounter, authored, author, source, item } = response;
  const head: Record<string, unknown> = {};
  const origins = new Map<string, string>();
  const faults: Fault[] = [
    ...unknownElements(response, taken, ''),
    ...questionnaireFaults(response.questionnaire, version),
  ];
  const status = typeof response.status === 'string' ? statusOf.get(response.status) : undefined;
  if (status === undefined) faults.push(statusFault(response.status));
  else head.status = status;
  for (const [name, value] of Object.entries({ identifier, subject, encounter })) {
    if (value !== undefined) head[name] = value;
  }
  if (authored === undefined) {
    const message = 'The time of the examination is required here, with its time zone.';
    faults.push({ pointer: '', code: 'REQUIRED', message, suggestion: 'authored' });
  } else head.examinedAt = authored;
  origins.set('/examinedAt', '/authored');
  addPerformers(head, { author, source }, origins);
  const read = readItems(examForm, item, '/item', head);
  return {
    body: read.body,
    origins: new Map([...origins, ...read.origins]),
    faults: [...faults, ...read.faults],
  };
}

/** Who wrote the answers down and who gave them have both examined; the same reference twice is one. */
function addPerformers(head: Record<string, unknown>, named: Json, origins: Map<string, string>): void {
  const performer: unknown[] = [];
  for (const [name, value] of Object.entries(named)) {
    const isKnown = performer.some((one) => JSON.stringify(one) === JSON.stringify(value));
    if (value === undefined || isKnown) continue;
    origins.set(pointerTo('performer', performer.length), pointerTo(name));
    performer.push(value);
  }
  if (performer.length > 0) head.performer = performer;
}

function questionnaireFaults(questionnaire: unknown, version: string | undefined): readonly Fault[] {
  const pointer = '/questionnaire';
  if (questionnaire === undefined) {
    const message = `\`questionnaire\` is required here: ${questionnaireUrl}, with or without its version.`;
    return [{ pointer: '', code: 'REQUIRED', message, suggestion: 'questionnaire' }];
  }
  if (typeof questionnaire !== 'string') return [{ pointer, code: 'WRONG_TYPE', message: 'Expected text.' }];
  const [url, asked] = questionnaire.split('|');
  if (url !== questionnaireUrl) {
    return [
      { pointer, code: 'UNKNOWN_KEY', message: `Responses to ${questionnaireUrl} are understood, and to no other.` },
    ];
  }
  if (version !== undefined && asked !== undefined && asked !== version) {
    return [
      { pointer, code: 'UNKNOWN_KEY', message: `The version that is understood is ${version}.`, suggestion: version },
    ];
  }
  return [];
}

function statusFault(status: unknown): Fault {
  const known = [...statusOf.keys()];
  if (status === undefined)
    return { pointer: '', code: 'REQUIRED', message: '`status` is required here.', suggestion: 'status' };
  const suggestion = typeof status === 'string' ? nearestKey(status, known) : undefined;
  return {
    pointer: '/status',
    code: 'UNKNOWN_KEY',
    message: `Expected ${known.join(', ')}.`,
    ...(suggestion === undefined ? {} : { suggestion }),
  };
}
