import type { Bundle } from 'fhir/r4.js';
import type { AuditRecord } from '../audit/audit-record.ts';
import type { Exam, ReferenceValue } from '../exam/exam.ts';
import { examId } from '../exam/exam-id.ts';
import { parseStrictJson } from '../exam/strict-json.ts';
import type { BundleOptions } from '../fhir/bundle.ts';
import { type BundleType, bundleForms } from '../fhir/bundle-forms.ts';
import { servedResources } from '../fhir/served.ts';
import { ExamInvalidError, type Fault } from '../kernel/errors.ts';
import { contentHash } from '../store/content-hash.ts';
import { requireCurrent } from '../store/current-version.ts';
import type { ExamContent, ExamRepository, StoredExam } from '../store/exam-repository.ts';
import type { ExamSteps, Spelling } from './exam-steps.ts';

/** Deeper than any exam, shallow enough for every recursive walk. */
export const maxDepth = 20;

/** What the audit trail is to say when an exam with this id and subject is kept. */
export type AuditOfExam = (id: string, subject: ReferenceValue | undefined) => AuditRecord;

/** From the bytes of a request to what is kept or answered. */
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
}

export function createExamRecords(steps: ExamSteps, exams: ExamRepository, now: () => Date): ExamRecords {
  function read(bytes: Buffer) {
    const body = parseStrictJson(bytes, { maxDepth });
    const exam = steps.readExam(body, { purpose: 'record', now: now() });
    return { exam, id: idOf(exam), hash: contentHash(body) };
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
      const { exam, id, hash } = read(bytes);
      // A repeat is answered from the store, without computing anything; the insert decides about a race.
      const current = await exams.find(id);
      if (current?.contentHash === hash) return { created: false, exam: current };
      const audit = auditOf?.(id, exam.subject);
      return exams.insert(id, toContent(exam, bytes, hash, { version: 1 }, audit));
    },
    async correct(id, version, bytes, auditOf) {
      const { exam, id: ownId, hash } = read(bytes);
      const faults = faultsOfCorrection(exam, ownId === id);
      if (faults.length > 0) throw new ExamInvalidError(faults);
      // Versions never change, so what is read here is what the correction is about; the store decides about a race.
      const previous = bundleIn(requireCurrent(await exams.find(id), version));
      const audit = auditOf?.(id, exam.subject);
      return exams.correct(id, version, toContent(exam, bytes, hash, { version: version + 1, previous }, audit));
    },
    bundle(stored, type) {
      if (type === 'transaction') return stored.bundle;
      return jsonBytes(bundleForms[type](bundleIn(stored)));
    },
    localise(bytes, spelling) {
      const exam = steps.readExam(parseStrictJson(bytes, { maxDepth }), { purpose: 'localise', now: now() });
      const assessment = steps.assess(exam, spelling === undefined ? {} : { spelling });
      return jsonBytes(steps.toLocalisationAnswer(assessment));
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

function bundleIn({ bundle }: StoredExam): Bundle {
  return JSON.parse(bundle.toString('utf8')) as Bundle;
}

function jsonBytes(value: unknown): Buffer {
  return Buffer.from(JSON.stringify(value), 'utf8');
}
