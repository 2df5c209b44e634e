import { isSegment, type Segment } from '../../anatomy/segments.ts';
import type { Exam } from '../../exam/exam.ts';
import { nearestKey } from '../../exam/faults/nearest-key.ts';
import { pointerTo } from '../../exam/faults/pointer.ts';
import type { ExamReader } from '../../exam/read-exam.ts';
import { conclusionCodes } from '../../fhir/local-codes.ts';
import { ExamInvalidError, withSuggestion } from '../../kernel/errors.ts';
import { joinWords } from '../../kernel/words.ts';
import type { Conclusion } from '../../localisation/localisation.ts';
import { siteCatalogue } from '../../localisation/sites.ts';
import { caseKinds, type EvaluationCase, type Expectation, type SiteSide } from './evaluation-case.ts';
import {
  adviceProperties,
  isObject,
  listed,
  type Problem,
  readAdvice,
  unknownKey,
  unknownProperties,
} from './read-advice.ts';

/** What is needed to read a case: the reader of exams, and the present, which no exam may lie behind. */
export interface CaseReading {
  readonly reader: ExamReader;
  readonly now: Date;
}

type Draft = Omit<EvaluationCase, 'file' | 'line'>;

const siteKeys: ReadonlySet<string> = new Set(siteCatalogue().map(({ site }) => site.key));
const sides: readonly SiteSide[] = ['left', 'right', 'both', null];
const conclusions = Object.keys(conclusionCodes) as readonly Conclusion[];
const caseProperties = ['name', 'picture', 'source', 'kind', 'expect', 'exam'];
const expectProperties = ['sites', 'side', 'level', 'levelWithin', 'conclusion', ...adviceProperties];
const usualTolerance = 1;

/** Reads one case; null beside its problems when there are any. */
export function readCase(
  value: unknown,
  { reader, now }: CaseReading,
): { readonly draft: Draft | null; readonly problems: readonly Problem[] } {
  if (!isObject(value)) return { draft: null, problems: [{ pointer: '', message: 'A case is a JSON object.' }] };
  const problems: Problem[] = unknownProperties(value, caseProperties);
  const text = (property: 'name' | 'picture' | 'source'): string | undefined => {
    const own = value[property];
    if (own === undefined && property !== 'name') return undefined;
    if (typeof own === 'string' && own.trim() !== '') return own;
    problems.push({ pointer: pointerTo(property), message: 'Words are needed here.' });
    return undefined;
  };
  const name = text('name') ?? '';
  const picture = text('picture');
  const source = text('source');
  const kind = caseKinds.find((one) => one === value.kind);
  if (kind === undefined && value.kind !== undefined) {
    problems.push({ pointer: '/kind', message: oneOf(value.kind, caseKinds) });
  }
  const expect = readExpectation(value.expect, problems);
  const exam = readExam(value.exam, { reader, now }, problems);
  if (expect === null || exam === null || problems.length > 0) return { draft: null, problems };
  return {
    draft: {
      name,
      ...(picture === undefined ? {} : { picture }),
      ...(source === undefined ? {} : { source }),
      ...(kind === undefined ? {} : { kind }),
      expect,
      exam,
    },
    problems,
  };
}

function readExam(body: unknown, { reader, now }: CaseReading, problems: Problem[]): Exam | null {
  if (body === undefined) {
    problems.push({ pointer: '', message: '`exam` is missing: the body of a localisation request.' });
    return null;
  }
  try {
    return reader.read(body, { purpose: 'localise', now });
  } catch (error) {
    if (!(error instanceof ExamInvalidError)) throw error;
    problems.push(
      ...error.faults.map(({ pointer, ...fault }) => ({ pointer: `/exam${pointer}`, message: withSuggestion(fault) })),
    );
    return null;
  }
}

function readExpectation(value: unknown, problems: Problem[]): Expectation | null {
  if (!isObject(value)) {
    problems.push({ pointer: '', message: '`expect` is missing: an object with `sites` or `conclusion`.' });
    return null;
  }
  problems.push(...unknownProperties(value, expectProperties, 'expect'));
  const sites = listed(value.sites ?? []);
  sites.forEach((site, index) => {
    if (typeof site === 'string' && siteKeys.has(site)) return;
    const pointer = Array.isArray(value.sites) ? pointerTo('expect', 'sites', index) : '/expect/sites';
    problems.push({ pointer, message: unknownKey('site', site, siteKeys) });
  });
  const one = <T>(
    property: string,
    isKnown: (item: unknown) => item is T,
    expected: string,
  ): readonly T[] | undefined => {
    if (value[property] === undefined) return undefined;
    const items = listed(value[property]);
    if (items.length > 0 && items.every(isKnown)) return items;
    problems.push({ pointer: pointerTo('expect', property), message: expected });
    return undefined;
  };
  const level = one(
    'level',
    (item): item is Segment | null => item === null || (typeof item === 'string' && isSegment(item)),
    'A segment, C1 to S5, or a list of segments.',
  )?.filter((item) => item !== null);
  const side = one('side', (item): item is SiteSide => sides.includes(item as SiteSide), oneOf(value.side, sides));
  const conclusion = one(
    'conclusion',
    (item): item is Conclusion => conclusions.includes(item as Conclusion),
    oneOf(value.conclusion, conclusions),
  );
  const { levelWithin = usualTolerance } = value;
  if (!(typeof levelWithin === 'number' && Number.isInteger(levelWithin) && levelWithin >= 0)) {
    problems.push({ pointer: '/expect/levelWithin', message: 'A whole number of segments, 0 or more.' });
    return null;
  }
  const advice = readAdvice(value, problems);
  if (sites.length === 0 && value.conclusion === undefined && Object.keys(advice).length === 0) {
    problems.push({
      pointer: '/expect',
      message: 'Without `sites` there must be a `conclusion`, a cause, a red flag or a test.',
    });
  }
  return {
    sites: sites as readonly string[],
    levelWithin,
    ...(side === undefined ? {} : { sides: side }),
    ...(level === undefined ? {} : { levels: level }),
    ...(conclusion === undefined ? {} : { conclusions: conclusion }),
    advice,
  };
}

function oneOf(value: unknown, known: readonly (string | null)[]): string {
  const near =
    typeof value === 'string'
      ? nearestKey(
          value,
          known.filter((key) => key !== null),
        )
      : undefined;
  return `Expected ${joinWords(known.map(String), 'or')}.${near === undefined ? '' : ` Did you mean ${near}?`}`;
}
