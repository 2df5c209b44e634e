import { randomBytes } from 'node:crypto';

/** Where a request stands in a trace: that of its caller, or a new one. */
export interface TraceContext {
  /** 32 hexadecimal digits. */
  readonly traceId: string;
  /** 16 hexadecimal digits, new for each request. */
  readonly spanId: string;
  /** The caller's span; absent when the trace begins here. */
  readonly parentId?: string;
}

/** Version, trace id, parent id, flags; what a later version adds stands behind another hyphen. */
const form =
  /^(?<version>[0-9a-f]{2})-(?<traceId>[0-9a-f]{32})-(?<parentId>[0-9a-f]{16})-[0-9a-f]{2}(?<more>-[\x20-\x7e]*)?$/;

/**
 * Reads a `traceparent` header; one that is not as the standard has it begins a new trace.
 * Source: W3C Trace Context, sections 3.2 (traceparent) and 4.3 (versioning): version ff and ids of zeros only are
 * invalid, version 00 has four parts, of a later version the same four are read.
 */
export function traceContextOf(header: string | string[] | undefined): TraceContext {
  const spanId = randomBytes(8).toString('hex');
  const parts = typeof header === 'string' ? form.exec(header.trim())?.groups : undefined;
  const { version, traceId = '', parentId = '', more } = parts ?? {};
  const isValid =
    parts !== undefined && version !== 'ff' && !(version === '00' && more !== undefined) && !/^0+$/.test(traceId);
  if (!isValid || /^0+$/.test(parentId)) return { traceId: randomBytes(16).toString('hex'), spanId };
  return { traceId, spanId, parentId };
}
