import { AppError } from '../kernel/errors.ts';
import type { CompiledView } from './compile-view.ts';
import { parseLossless } from './lossless-json.ts';
import type { Row } from './view-definition.ts';

export type RunItem =
  | { readonly row: Row }
  /** `line` counts from 1. */
  | { readonly fault: { readonly line: number; readonly message: string } };

/**
 * Rows of a view over NDJSON lines or parsed resources, each a resource or a Bundle. A bad line gives a fault and the
 * rest goes on; nothing is held beyond one line.
 */
export async function* runViewOver(
  lines: AsyncIterable<unknown> | Iterable<unknown>,
  view: CompiledView,
): AsyncGenerator<RunItem> {
  let line = 0;
  for await (const item of lines) {
    line += 1;
    if (typeof item === 'string' && item.trim() === '') continue;
    try {
      const parsed = typeof item === 'string' ? parseLossless(item) : item;
      const rows = resourcesIn(parsed).flatMap((resource) => view.rowsOf(resource));
      for (const row of rows) yield { row };
    } catch (error) {
      yield { fault: { line, message: messageOf(error) } };
    }
  }
}

/** @throws TypeError when it is no resource */
function resourcesIn(value: unknown): readonly unknown[] {
  const { resourceType, entry } = (value ?? {}) as { resourceType?: unknown; entry?: unknown };
  if (typeof resourceType !== 'string') throw new TypeError('no resource');
  if (resourceType !== 'Bundle') return [value];
  return Array.isArray(entry) ? entry.flatMap((part) => part?.resource ?? []) : [];
}

/** Messages of the parser quote the line, so only our own are passed on. */
function messageOf(error: unknown): string {
  if (error instanceof AppError) return error.message;
  if (error instanceof SyntaxError) return 'Expected one JSON object on the line.';
  return 'Expected a FHIR resource or a Bundle of resources.';
}
