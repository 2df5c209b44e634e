import { plainText } from '../kernel/plain-text.ts';
import type { Pseudonyms } from './pseudonyms.ts';

/** The text by which a FHIR Reference names its target: the reference itself, or else the identifier. */
export function nameIn(reference: unknown): string | undefined {
  if (typeof reference !== 'object' || reference === null) return undefined;
  const { reference: literal, identifier } = reference as { reference?: unknown; identifier?: unknown };
  if (typeof literal === 'string') return literal;
  const { system = '', value } = (identifier ?? {}) as { system?: unknown; value?: unknown };
  return typeof value === 'string' ? `${plainText(system)}|${value}` : undefined;
}

/** A reference of the same type to nobody who can be looked up. */
export function pseudonymousReference(type: string, name: string, pseudonyms: Pseudonyms): { reference: string } {
  return { reference: `${type}/${pseudonyms.of(type, name)}` };
}

/** An instant, moved; undefined for what has no day to move, so that nothing unmoved gets through. Answered in UTC. */
export function movedTime(text: string, shiftMs: number): string | undefined {
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(text);
  if (!isDay && !/^\d{4}-\d{2}-\d{2}T/.test(text)) return undefined;
  const time = Date.parse(text);
  if (Number.isNaN(time)) return undefined;
  const moved = new Date(time + shiftMs).toISOString();
  return isDay ? moved.slice(0, 10) : moved.replace('.000Z', 'Z');
}
