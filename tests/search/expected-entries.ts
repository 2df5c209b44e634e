import { linkedTypes } from '../../src/search/parameters.ts';
import { systems } from '../../src/terminology/systems.ts';
import type { Found, StandardParameter } from './standard-parameters.ts';

// An independent, slow turn of what FHIRPath finds into index entries, each as one line of text.

type Any = Record<string, never> & { [key: string]: Any };

const fold = (text: string) =>
  [...text.normalize('NFD')]
    .filter((sign) => !/\p{M}/u.test(sign))
    .join('')
    .toLowerCase();
const line = (...parts: readonly unknown[]) => JSON.stringify(parts.map((part) => part ?? null));

/** All lines that a parameter gives for a resource. */
export function expectedLines(parameter: StandardParameter, resource: unknown): readonly string[] {
  const found = parameter.find(resource);
  const { name } = parameter;
  if (parameter.type === 'composite') return found.flatMap(({ value }) => compositeLines(parameter, value));
  return found.flatMap((one) => {
    switch (parameter.type) {
      case 'reference':
        return referenceLines(parameter, one);
      case 'date':
      case 'number':
      case 'quantity':
        return spans(one).map(([low, high, unit]) => line('range', name, low, high, unit));
      default:
        return tokens(parameter.type === 'token' && typeof one.value === 'string' ? { ...one, type: 'code' } : one).map(
          (token) => line('token', name, ...token),
        );
    }
  });
}

type TokenLine = readonly [kind: string, system: string, code: string, text: string | null];

function tokens({ type, value }: Found): readonly TokenLine[] {
  const one = value as Any;
  switch (type) {
    case 'CodeableConcept': {
      const codings = (one.coding ?? []) as unknown as Any[];
      const own = codings.flatMap((coding) => tokens({ type: 'Coding', value: coding }));
      const text = one.text as unknown as string | undefined;
      const isNew = text !== undefined && codings.every((coding) => (coding.display as unknown) !== text);
      return isNew ? [...own, ['coding', '', '', fold(text)]] : own;
    }
    case 'Coding': {
      const { system, code, display } = one as Record<string, unknown> as Record<string, string | undefined>;
      if (system === systems.resourceTag || (system ?? code ?? display) === undefined) return [];
      return [['coding', system ?? '', code ?? '', display === undefined ? null : fold(display)]];
    }
    case 'Identifier': {
      const { system, value: code, type: kind } = one as Record<string, unknown>;
      if (code === undefined || system === systems.resourceIdentifier) return [];
      const words = (kind as { text?: string } | undefined)?.text;
      return [['coding', String(system ?? ''), String(code), words === undefined ? null : fold(words)]];
    }
    case 'uri':
    case 'url':
    case 'canonical':
      return [['uri', '', String(value), null]];
    case 'code':
      return [['coding', '', String(value), null]];
    default:
      return [
        ['string', '', fold(String(value)), null],
        ['string', 'exact', String(value), null],
      ];
  }
}

function referenceLines(
  { name, isPatientOnly, targets }: StandardParameter,
  { type, value }: Found,
): readonly string[] {
  if (type !== 'Reference') return [line('token', name, 'reference', '', value, null)];
  const {
    reference,
    type: stated,
    identifier,
  } = value as Record<string, never> as {
    reference?: string;
    type?: string;
    identifier?: { system?: string; value?: string; type?: { text?: string } };
  };
  const parts = reference?.split('/_history/')[0]?.split('/') ?? [];
  const told = /^[A-Z]/.test(parts.at(-2) ?? '') ? parts.at(-2) : stated;
  if (isPatientOnly && told !== undefined && told !== 'Patient') return [];
  const lines: string[] = [];
  if (identifier?.value !== undefined) {
    const words = identifier.type?.text === undefined ? null : fold(identifier.type.text);
    lines.push(line('token', name, 'reference-identifier', identifier.system ?? '', identifier.value, words));
  }
  if (reference === undefined || reference.startsWith('#')) return lines;
  const isUuid = (parts[1] ?? '').length === 36 && parts[1]?.split('-').length === 5;
  if (parts.length !== 2) lines.push(line('token', name, 'reference', '', reference, null));
  else if (isUuid && linkedTypes.has(String(parts[0])) && targets.some((target) => linkedTypes.has(target))) {
    lines.push(line('link', name, parts.join('/')));
  } else lines.push(line('token', name, 'reference', parts[0], parts[1], null));
  return lines;
}

type Span = readonly [low: number, high: number, unit: readonly (string | null)[] | null];

function spans({ type, value }: Found): readonly Span[] {
  if (typeof value === 'number') return [[value, value, null]];
  if (typeof value === 'string') return [[...instants(value), null]];
  const one = value as Record<string, never> as {
    start?: string;
    end?: string;
    event?: string[];
    repeat?: { boundsPeriod?: object };
    value?: number;
    comparator?: string;
    system?: string;
    code?: string;
    unit?: string;
  };
  if (type === 'Period') {
    if (one.start === undefined && one.end === undefined) return [];
    const low = one.start === undefined ? -8.64e15 : instants(one.start)[0];
    return [[low, one.end === undefined ? 8.64e15 : instants(one.end)[1], null]];
  }
  if (type === 'Timing') {
    const all = (one.event ?? []).map(instants);
    const bounds = one.repeat?.boundsPeriod;
    if (bounds !== undefined) for (const [low, high] of spans({ type: 'Period', value: bounds })) all.push([low, high]);
    if (all.length === 0) return [];
    return [[Math.min(...all.map(([low]) => low)), Math.max(...all.map(([, high]) => high)), null]];
  }
  // A series of samples has no single value; it is not indexed.
  if (type === 'SampledData' || one.value === undefined) return [];
  const symbol = one.code ?? one.unit;
  const unit = symbol === undefined ? null : ['coding', one.system ?? '', symbol, null];
  const low = one.comparator?.startsWith('<') ? -Number.MAX_VALUE : one.value;
  return [[low, one.comparator?.startsWith('>') ? Number.MAX_VALUE : one.value, unit]];
}

/** By the platform's own reading of ISO 8601: the end is the start of the next year, month, day, second or millisecond. */
function instants(text: string): readonly [number, number] {
  const isDate = !text.includes('T');
  const start = new Date(text);
  const end = new Date(start);
  if (isDate && text.length === 4) end.setUTCFullYear(end.getUTCFullYear() + 1);
  else if (isDate && text.length === 7) end.setUTCMonth(end.getUTCMonth() + 1);
  else if (isDate) end.setUTCDate(end.getUTCDate() + 1);
  else {
    const digits = /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
    end.setTime(end.getTime() + (digits >= 3 ? 1 : ([1000, 100, 10][digits] ?? 1)));
  }
  return [start.getTime(), end.getTime() - 1];
}

function compositeLines({ name, parts }: StandardParameter, element: unknown): readonly string[] {
  const [first, second] = parts;
  const codes = (found: readonly Found[] = []) => found.flatMap(tokens).filter(([, , code]) => code !== '');
  const seconds = second?.(element) ?? [];
  return codes(first?.(element)).flatMap((code) => [
    ...codes(seconds.filter(({ type }) => type === 'CodeableConcept')).map((value) => line('pair', name, code, value)),
    ...seconds
      .filter(({ type }) => type === 'Quantity')
      .flatMap(spans)
      .map(([low, high, unit]) => line('range', name, low, high, unit, code)),
  ]);
}
