import type { Fault } from '../kernel/errors.ts';
import { plainText } from '../kernel/plain-text.ts';

/** JSON forms of the elements of a Measure beside its groups. Source: HL7 FHIR R4, StructureDefinition Measure. */
type Form = 'text' | 'list' | 'texts' | 'object' | 'boolean';

const byForm: Readonly<Record<Form, string>> = {
  text: `resourceType id language url version name title subtitle status date publisher description purpose usage
    copyright approvalDate lastReviewDate disclaimer riskAdjustment rateAggregation rationale
    clinicalRecommendationStatement guidance`,
  texts: 'library definition',
  list: `extension contained identifier contact useContext jurisdiction topic author editor reviewer endorser
    relatedArtifact type group`,
  object: 'meta text subjectCodeableConcept subjectReference effectivePeriod scoring improvementNotation',
  boolean: 'experimental',
};

const formOf = new Map<string, Form>(
  (Object.entries(byForm) as [Form, string][]).flatMap(([form, names]) =>
    names.split(/\s+/).map((name): [string, Form] => [name, form]),
  ),
);

/** Elements that a Measure may have here; those that would change its meaning and are not understood are left out. */
export const measureElements: readonly string[] = [...formOf.keys()];

const expected: Readonly<Record<Form, string>> = {
  text: 'Expected a text.',
  texts: 'Expected a list of texts.',
  list: 'Expected a list of objects.',
  object: 'Expected an object.',
  boolean: 'Expected true or false.',
};

const statuses = ['draft', 'active', 'retired', 'unknown'];
const dateForm = /^\d{4}(-\d{2}(-\d{2}(T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2}))?)?)?$/;

export type Json = Readonly<Record<string, unknown>>;
export function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Tells which known elements of a Measure have a form that R4 does not give them. */
export function checkShape(
  measure: Json,
  add: (pointer: string, code: Fault['code'], message: string, suggestion?: string) => void,
): void {
  for (const [name, value] of Object.entries(measure)) {
    const form = formOf.get(name);
    if (form !== undefined && !hasForm(value, form)) add(`/${name}`, 'WRONG_TYPE', expected[form]);
  }
  if (!statuses.includes(plainText(measure.status))) {
    const code = measure.status === undefined ? 'REQUIRED' : 'UNKNOWN_KEY';
    add('/status', code, `Expected one of: ${statuses.join(', ')}.`);
  }
  if (measure.url === undefined) add('/url', 'REQUIRED', 'Expected the canonical address of the Measure.');
  for (const name of ['date', 'approvalDate', 'lastReviewDate']) {
    const value = measure[name];
    if (typeof value === 'string' && !dateForm.test(value)) add(`/${name}`, 'DATE', 'Expected a date of FHIR.');
  }
}

function hasForm(value: unknown, form: Form): boolean {
  if (form === 'text') return typeof value === 'string' && value.trim() !== '';
  if (form === 'boolean') return typeof value === 'boolean';
  if (form === 'object') return isObject(value) && Object.keys(value).length > 0;
  if (!Array.isArray(value) || value.length === 0) return false;
  return value.every((item) => (form === 'texts' ? typeof item === 'string' && item !== '' : isObject(item)));
}
