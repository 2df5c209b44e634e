import type { Exam } from '../exam/exam.ts';
import { throwIfAny } from '../exam/faults/report.ts';
import { ExamInvalidError, type Fault } from '../kernel/errors.ts';
import { isQuestionnaireResponse, type ResponseRead, readResponse } from './read-response.ts';

export interface SentExam {
  readonly exam: Exam;
  /** The exam's own JSON: what was sent, or what a QuestionnaireResponse means. */
  readonly body: unknown;
  /** Where in what was sent the value at a pointer of the exam stands. */
  readonly originOf: (pointer: string) => string;
}

/**
 * An exam from its own JSON or from a QuestionnaireResponse; faults lead into what was sent.
 * @param version that of the published Questionnaire; responses to any are taken when it is undefined
 * @param read    reads an exam's own JSON
 * @throws ExamInvalidError with every fault
 */
export function readSentExam(sent: unknown, version: string | undefined, read: (body: unknown) => Exam): SentExam {
  if (!isQuestionnaireResponse(sent)) return { exam: read(sent), body: sent, originOf: (pointer) => pointer };
  const response = readResponse(sent, version);
  const originOf = (pointer: string) => originIn(response, pointer);
  let exam: Exam | undefined;
  let faults: readonly Fault[] = [];
  try {
    exam = read(response.body);
  } catch (error) {
    if (!(error instanceof ExamInvalidError)) throw error;
    // What the response lacks is told in its own words already.
    const others = error.faults.filter(({ pointer, suggestion }) => pointer !== '' || suggestion !== 'examinedAt');
    faults = others.map((fault) => led(fault, originOf));
  }
  throwIfAny([...response.faults, ...faults]);
  if (exam === undefined) throw new Error('an exam that was refused has faults');
  return { exam, body: response.body, originOf };
}

/** The longest part of the pointer of which the origin is known, and the rest as it is. */
function originIn({ origins }: ResponseRead, pointer: string): string {
  for (let end = pointer.length; end > 0; end = pointer.lastIndexOf('/', end - 1)) {
    const origin = origins.get(pointer.slice(0, end));
    if (origin === undefined) continue;
    const rest = pointer.slice(end);
    // Inside an entry the properties are the exam's, which the response has not; inside a datatype they are its own.
    return isEntryProperty(pointer.slice(0, end), rest) ? origin : `${origin}${rest}`;
  }
  return pointer;
}

/** Whether a pointer goes on from an entry of a list of findings, history, statements or results. */
function isEntryProperty(known: string, rest: string): boolean {
  return rest !== '' && /^\/(?:findings|history|otherwiseNormal|results)\/(?:[^/]+\/)?\d+$/.test(known);
}

/** Pointers that a message names beside its own. */
const namedPointers = /\/(?:findings|history|otherwiseNormal|results|requests|performer)(?:\/[A-Za-z0-9-]+)+/g;

function led(fault: Fault, originOf: (pointer: string) => string): Fault {
  const message = fault.message.replaceAll(namedPointers, (pointer) => originOf(pointer));
  return { ...fault, pointer: originOf(fault.pointer), message };
}
