import { softwareName } from '../fhir/device.ts';
import { AppError } from '../kernel/errors.ts';
import { type ErrorCode, errorTitles } from '../kernel/fault-codes.ts';
import type { AuditRecord } from './audit-record.ts';

/** How the preparation of an export ended: all of it can be fetched, or why not, in general words. */
export type ExportEnd = 'ready' | { readonly failure: string };

/** Makes the record of the end of an export. */
export type ExportEndRecord = (job: string, end: ExportEnd) => AuditRecord;

/** For exports that were given up because their time was over. */
export const outOfTime: ExportEnd = { failure: 'Not ready when its time was over' };

/** The service does this by itself, long after the answer to whoever asked for the export, so that it is the one who acts. */
export function exportEndRecord(now: () => Date, software: string): ExportEndRecord {
  return (job, end) => ({
    at: now().toISOString(),
    interaction: 'export-end',
    action: 'E',
    ...(end === 'ready' ? { outcome: '0' } : { outcome: '8', reason: end.failure }),
    client: softwareName,
    job,
    software,
  });
}

/** What an error may say of itself in the trail: the title of its kind, never its message. */
export function failureOf(error: unknown): ExportEnd {
  const code = error instanceof AppError ? error.code : 'UNEXPECTED';
  return { failure: Object.hasOwn(errorTitles, code) ? errorTitles[code as ErrorCode] : errorTitles.UNEXPECTED };
}
