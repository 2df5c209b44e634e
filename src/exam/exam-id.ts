import { uuidV5 } from '../kernel/uuid.ts';

/** Namespace of every name-based UUID that the service makes; a fixed random UUID. */
const namespace = '5b1f8a52-3c0e-4d6b-9b57-0c1f6e2a7d94';

/**
 * The service's id of an exam: a UUID derived from the sender's own identifier, so that a repeat is the same exam.
 * Nothing of the identifier can be read from it, so it may stand in a URL.
 */
export function examId(identifier: { readonly system: string; readonly value: string }): string {
  return uuidV5(`exam\n${identifier.system}\n${identifier.value}`, namespace);
}

/** Id of one resource made from an exam; `name` is unique within the exam, such as `Finding.id`. */
export function resourceId(exam: string, name: string): string {
  return uuidV5(name, exam);
}
