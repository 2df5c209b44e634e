import type { Coding, Identifier, Meta, Observation, Reference } from 'fhir/r4.js';
import { describeFinding } from '../exam/describe.ts';
import type { Exam, ReferenceValue } from '../exam/exam.ts';
import { examId, resourceId } from '../exam/exam-id.ts';
import type { Finding } from '../exam/finding.ts';
import { ExamInvalidError } from '../kernel/errors.ts';
import { capitalised } from '../kernel/words.ts';
import { profileUrl, systems } from '../terminology/systems.ts';
import { examCategory, shared } from './codings.ts';
import { device } from './device.ts';
import { fullUrlOf } from './entry.ts';
import { fhirText, isBlank } from './narrative.ts';
import { remembered } from './remembered.ts';
import { statementName } from './summary-statement.ts';

/** What the resources of one Bundle have in common; made once, before any of them. */
export interface Frame {
  readonly exam: string;
  /** Whose examination it is, and in which encounter where the sender named one. */
  readonly about: { readonly subject: Reference; readonly encounter?: Reference };
  readonly performer: readonly Reference[];
  /** What all Observations share that say what the examiner stated. */
  readonly stated: Pick<
    Observation,
    'status' | 'category' | 'subject' | 'encounter' | 'effectiveDateTime' | 'performer'
  >;
  readonly device: Reference;
  /** Time of the examination as sent. */
  readonly examinedAt: string;
  readonly version: number;
  readonly modelVersion: string;
  readonly inError: boolean;
  /** Status of what was computed: nobody has reviewed it, so it is never final. */
  readonly computed: 'preliminary' | 'entered-in-error';
  /** The sender's own identifier of the exam. */
  readonly sender: Identifier;
  /** `meta` with one profile of ours and the exam that the resource was made from; the same object for each of them. */
  readonly meta: (profile: string) => Meta;
  /** Tells which exam a resource was made from. */
  readonly examTag: Coding;
  /** A finding in words with a capital, as every narrative says it; worked out once. */
  readonly say: (finding: Finding) => string;
  /** Name of the summary statement that a finding is part of; undefined for what was stated for itself. */
  readonly statementOf: (finding: Finding) => string | undefined;
  /** Resource id of the thing with this name within the exam. */
  readonly id: (name: string) => string;
  /** Reference from entry to entry within the Bundle. */
  readonly ref: (name: string) => Reference;
}

/**
 * @throws ExamInvalidError when the exam has no identifier or no subject: nothing could be identified or belong to
 *   anybody. Exams that come through `POST /exams` have both.
 */
export function frameOf(exam: Exam, modelVersion: string, version: number): Frame {
  const { identifier, subject } = exam;
  if (identifier === undefined || subject === undefined) {
    const missing = identifier === undefined ? '/identifier' : '/subject';
    throw new ExamInvalidError([{ pointer: missing, code: 'REQUIRED', message: 'A Bundle needs it.' }]);
  }
  const key = examId(identifier);
  const id = remembered((name: string) => resourceId(key, name));
  const inError = exam.status === 'entered-in-error';
  const about = {
    subject: reference(subject),
    ...(exam.encounter === undefined ? {} : { encounter: reference(exam.encounter) }),
  };
  const performer = exam.performer.map(reference);
  const examinedAt = fhirDateTime(exam.examinedAt);
  const examTag = shared({ system: systems.exam, code: key });
  const statements = new Map(exam.otherwiseNormal.map((one) => [one.pointer, statementName(one)]));
  return {
    exam: key,
    about,
    performer,
    stated: {
      status: exam.status,
      category: examCategory,
      ...about,
      effectiveDateTime: examinedAt,
      ...(performer.length === 0 ? {} : { performer }),
    },
    device: { reference: fullUrlOf(device(modelVersion).id) },
    examinedAt,
    version,
    modelVersion,
    inError,
    computed: inError ? 'entered-in-error' : 'preliminary',
    examTag,
    meta: remembered((name: string) => shared({ profile: [profileUrl(name)], tag: [examTag] })),
    sender: { system: fhirText(identifier.system), value: fhirText(identifier.value) },
    say: remembered((finding: Finding) => capitalised(describeFinding(finding))),
    statementOf: ({ origin, pointer }) => (origin === 'otherwise-normal' ? statements.get(pointer) : undefined),
    id,
    ref: (name) => ({ reference: fullUrlOf(id(name)) }),
  };
}

function reference(value: ReferenceValue): Reference {
  const { identifier } = value;
  return {
    ...(isBlank(value.reference) ? {} : { reference: fhirText(value.reference ?? '') }),
    ...(isBlank(value.type) ? {} : { type: value.type as string }),
    ...(identifier === undefined
      ? {}
      : {
          identifier: {
            ...(isBlank(identifier.system) ? {} : { system: identifier.system as string }),
            value: fhirText(identifier.value),
          },
        }),
    ...(isBlank(value.display) ? {} : { display: fhirText(value.display ?? '') }),
  };
}

// FHIR R4 regular expression of `instant`, which is also a valid `dateTime`.
const instant =
  /^(?:[1-9]\d{3}|0\d{2}[1-9]|0\d[1-9]0|0[1-9]00)-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])T(?:[01]\d|2[0-3]):[0-5]\d:(?:[0-5]\d|60)(?:\.\d+)?(?:Z|[+-](?:(?:0\d|1[0-3]):[0-5]\d|14:00))$/;

/**
 * The exam's time as a FHIR dateTime that is also a valid instant: as sent where possible, else the same moment in UTC
 * (RFC 3339 allows lower-case letters, a blank for the T, and offsets that FHIR does not).
 */
function fhirDateTime(text: string): string {
  return instant.test(text) ? text : new Date(text.toUpperCase().replace(' ', 'T')).toISOString();
}
