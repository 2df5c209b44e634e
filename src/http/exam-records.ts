import type { Bundle } from 'fhir/r4.js';
import type { AuditRecord } from '../audit/audit-record.ts';
import type { Exam, ReferenceValue } from '../exam/exam.ts';
import { examId } from '../exam/exam-id.ts';
import { parseStrictJson } from '../exam/strict-json.ts';
import type { BundleOptions } from '../fhir/bundle.ts';
import { type BundleType, bundleForms } from '../fhir/bundle-forms.ts';
import { servedResources } from '../fhir/served.ts';
import { AppError, ExamInvalidError, type Fault } from '../kernel/errors.ts';
import { isQuestionnaireResponse } from '../questionnaire/read-response.ts';
import { readSentExam } from '../questionnaire/read-sent-exam.ts';
import { questionnaireResponse } from '../questionnaire/write-response.ts';
import { canonicalJson, contentHash } from '../store/content-hash.ts';
import { requireCurrent } from '../store/current-version.ts';
import type { ExamContent, ExamRepository, StoredExam } from '../store/exam-repository.ts';
import { respelling } from '../summary/spelling.ts';
import type { Assessment } from '../workup/assessment.ts';
import type { ExamSteps, Spelling } from './exam-steps.ts';

/** Deeper than any exam, shallow enough for every recursive walk. */
export const maxDepth = 20;

/** What the audit trail is to say when an exam with this id and subject is kept. */
export type AuditOfExam = (id: string, subject: ReferenceValue | undefined) => AuditRecord;

/** From the bytes of a request to what is kept or answered. An exam may come as its own JSON or as a QuestionnaireResponse. */
export interface ExamRecords {
  /**
   * @param auditOf what is written beside the exam, in the same transaction
   * @throws RequestError, ExamInvalidError, ConflictError, StoreError
   */
  record(bytes: Buffer, auditOf?: AuditOfExam): Promise<{ readonly created: boolean; readonly exam: StoredExam }>;
  /**
   * Keeps a correction of version `version`; its Bundle withdraws what only earlier versions had.
   * @throws the same, and NotFoundError
   */
  correct(id: string, version: number, bytes: Buffer, auditOf?: AuditOfExam): Promise<StoredExam>;
  /**
   * The Bundle of a stored version as JSON bytes: a transaction is the very Bundle that was answered, the others are made
   * from it.
   */
  bundle(stored: StoredExam, type: BundleType): Buffer;
  /** @throws RequestError, ExamInvalidError */
  localise(bytes: Buffer, spelling?: Spelling): Buffer;
  /** The Bundle of an exam of which nothing is kept. @throws ExamInvalidError */
  extract(sent: unknown): Buffer;
  /** A stored version as a QuestionnaireResponse, JSON bytes. */
  asForm(stored: StoredExam): Buffer;
  /** What is computed from an exam of which nothing is kept, or from a stored version. @throws ExamInvalidError */
  assess(sent: unknown): { readonly exam: Exam; readonly assessment: Assessment };
}

/** @param formVersion version of the published Questionnaire; responses to any are taken when it is left out */
export function createExamRecords(
  steps: ExamSteps,
  exams: ExamRepository,
  now: () => Date,
  formVersion?: string,
): ExamRecords {
  function readSent(sent: unknown, purpose: 'record' | 'localise') {
    return readSentExam(sent, formVersion, (body) => steps.readExam(body, { purpose, now: now() }));
  }

  /** What is kept of a QuestionnaireResponse is the exam that it means. */
  function read(bytes: Buffer) {
    const sent = parseStrictJson(bytes, { maxDepth });
    const { exam, body } = readSent(sent, 'record');
    const raw = isQuestionnaireResponse(sent) ? jsonBytes(body) : bytes;
    return { exam, raw, id: idOf(exam), hash: contentHash(body) };
  }

  /** Whether an exam was kept before in other words, as when it came by form once and once as its own JSON. */
  function saysTheSame(exam: Exam, { raw }: StoredExam): boolean {
    try {
      return meaningOf(readSent(JSON.parse(raw.toString('utf8')), 'record').exam) === meaningOf(exam);
    } catch (error) {
      // What an earlier version took may be refused by this one; then it is not the same.
      if (error instanceof AppError) return false;
      throw error;
    }
  }

  function toContent(
    exam: Exam,
    raw: Buffer,
    hash: string,
    options: BundleOptions,
    audit: AuditRecord | undefined,
  ): ExamContent {
    const assessment = steps.assess(exam);
    const bundle = steps.toBundle(exam, assessment, options);
    return {
      raw,
      contentHash: hash,
      bundle: jsonBytes(bundle),
      resources: servedResources(bundle),
      modelVersion: assessment.modelVersion,
      receivedAt: now(),
      ...(audit === undefined ? {} : { audit }),
    };
  }

  return {
    async record(bytes, auditOf) {
      const { exam, raw, id, hash } = read(bytes);
      // A repeat is answered from the store, without computing anything; the insert decides about a race.
      const current = await exams.find(id);
      if (current !== undefined && (current.contentHash === hash || saysTheSame(exam, current))) {
        return { created: false, exam: current };
      }
      const audit = auditOf?.(id, exam.subject);
      return exams.insert(id, toContent(exam, raw, hash, { version: 1 }, audit));
    },
    async correct(id, version, bytes, auditOf) {
      const { exam, raw, id: ownId, hash } = read(bytes);
      const faults = faultsOfCorrection(exam, ownId === id);
      if (faults.length > 0) throw new ExamInvalidError(faults);
      // Versions never change, so what is read here is what the correction is about; the store decides about a race.
      const previous = bundleIn(requireCurrent(await exams.find(id), version));
      const audit = auditOf?.(id, exam.subject);
      return exams.correct(id, version, toContent(exam, raw, hash, { version: version + 1, previous }, audit));
    },
    bundle(stored, type) {
      if (type === 'transaction') return stored.bundle;
      return jsonBytes(bundleForms[type](bundleIn(stored)));
    },
    localise(bytes, spelling) {
      const { exam, originOf } = readSent(parseStrictJson(bytes, { maxDepth }), 'localise');
      const assessment = steps.assess(exam, spelling === undefined ? {} : { spelling });
      return jsonBytes(steps.toLocalisationAnswer(assessment, originOf), respelling(spelling ?? 'uk'));
    },
    extract(sent) {
      const { exam } = readSent(sent, 'record');
      return jsonBytes(steps.toBundle(exam, steps.assess(exam), { version: 1 }));
    },
    asForm({ raw }) {
      const { exam } = readSent(JSON.parse(raw.toString('utf8')), 'record');
      return jsonBytes(questionnaireResponse(exam, formVersion));
    },
    assess(sent) {
      const { exam } = readSent(sent, 'localise');
      return { exam, assessment: steps.assess(exam) };
    },
  };
}

function idOf(exam: Exam): string {
  if (exam.identifier === undefined) {
    const fault: Fault = {
      pointer: '/identifier',
      code: 'REQUIRED',
      message: "An exam to be kept needs the sender's own id.",
    };
    throw new ExamInvalidError([fault]);
  }
  return examId(exam.identifier);
}

function faultsOfCorrection(exam: Exam, isSameExam: boolean): Fault[] {
  const faults: Fault[] = [];
  if (!isSameExam) {
    const message =
      'A correction carries the identifier of the exam that it corrects; this one belongs to another exam.';
    faults.push({ pointer: '/identifier', code: 'OTHER_EXAM', message });
  }
  if (exam.status !== 'amended' && exam.status !== 'entered-in-error') {
    const message = 'A correction has the status amended or entered-in-error.';
    faults.push({ pointer: '/status', code: 'NOT_A_CORRECTION', message });
  }
  return faults;
}

/** All that an exam says, without where in the request it was said. */
function meaningOf(exam: Exam): string {
  return canonicalJson(JSON.parse(JSON.stringify(exam, (key, value) => (key === 'pointer' ? undefined : value))));
}

function bundleIn({ bundle }: StoredExam): Bundle {
  return JSON.parse(bundle.toString('utf8')) as Bundle;
}

function jsonBytes(value: unknown, replacer?: (name: string, value: unknown) => unknown): Buffer {
  return Buffer.from(JSON.stringify(value, replacer), 'utf8');
}
