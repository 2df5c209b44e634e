import { linkedTypes, searchedTypes } from '../../search/parameters.ts';
import { conformanceTypes } from '../../terminology/load.ts';
import { exportedTypes } from '../export-wish.ts';
import type { ApiOperation } from './operation.ts';

/** What a token must carry for an operation, as the routes declare it. */
export interface NeededScopes {
  /** All of these, without their context. */
  readonly all: readonly string[];
  /** At least one of these. */
  readonly some?: readonly string[];
  /** Whether a token that is limited to one subject will do. */
  readonly isNarrowed: boolean;
}

type Need = (parts: readonly string[]) => NeededScopes | 'open';

const whole = (...all: string[]): NeededScopes => ({ all, isNarrowed: false });
const own = (...all: string[]): NeededScopes => ({ all, isNarrowed: true });
const oneOf = (types: Iterable<string>): NeededScopes => ({
  all: [],
  some: [...types].map((type) => `${type}.rs`),
  isNarrowed: false,
});
/** Types of which a subject-limited token sees what is its own. */
const hidden: readonly string[] = ['Provenance', 'Subscription'];
const ofType = (type: string, action: string) => (hidden.includes(type) ? whole : own)(`${type}.${action}`);

/** Types that are published with the program. */
const conformance = conformanceTypes.join('|');

/** By method and path; the first that fits counts. `tests/contract/api-security.test.ts` holds it to the routes. */
const needs: readonly (readonly [RegExp, Need])[] = [
  [
    /^get (\/|\/about|\/page\/\{file\}|\/api|\/openapi\.json|\/catalogue|\/picture|\/cds-services|\/fhir\/metadata)$/,
    () => 'open',
  ],
  [/^get (\/health|\/json-schema|\/profiles|\/terminology|(\/fhir)?\/\.well-known)\//, () => 'open'],
  [new RegExp(`^get /fhir/(${conformance})(/\\{id\\})?$`), () => 'open'],
  [/^post \/exams$/, () => own('exam.c')],
  [/^get \/exams\/\{id\}\/deliveries$/, () => whole('exam.r')],
  [/^post \/exams\/\{id\}\/deliveries\/retry$/, () => whole('exam.ru')],
  [/^put \/exams\//, () => own('exam.ru')],
  [/^get \/exams\//, () => own('exam.r')],
  [/^post (\/localisation$|\/cds-services\/|\/fhir\/QuestionnaireResponse\/\$extract$)/, () => own('localisation.c')],
  [/^(get|post) \/practice\//, () => own('localisation.c')],
  [/^get \/metrics$/, () => whole('metrics.r')],
  [/ \/fhir\/AuditEvent(\/_search)?$/, () => whole('AuditEvent.s')],
  [/ \/fhir\/AuditEvent\//, () => whole('AuditEvent.r')],
  [/^\w+ \/fhir\/(\$export$|export-)/, () => oneOf(exportedTypes)],
  [/\$viewdefinition-run$|^get \/views\//, () => oneOf(searchedTypes)],
  [/\$evaluate-measure$/, () => whole('Measure.r', ...[...linkedTypes].map((type) => `${type}.rs`))],
  [/^post \/fhir\/(\w+)\/\{id\}\/\$validate$/, ([type]) => whole(`${type}.r`)],
  [/\/\$|^get \/views$/, () => own()],
  [/^get \/fhir\/(\w+)\/_history$/, ([type]) => whole(`${type}.s`)],
  [/^(?:get|post) \/fhir\/(\w+)\/_search$|^get \/fhir\/(\w+)$/, ([type = '']) => ofType(type, 's')],
  [/^get \/fhir\/(\w+)\/\{id\}/, ([type = '']) => ofType(type, 'r')],
  [/^post \/fhir\/(\w+)$/, ([type]) => whole(`${type}.c`)],
  [/^put \/fhir\/(\w+)\/\{id\}$/, ([type]) => whole(`${type}.u`)],
  [/^delete \/fhir\/(\w+)\/\{id\}$/, ([type]) => whole(`${type}.d`)],
];

/** @throws Error for an operation of which nothing is said */
export function scopesOf({ method, path }: Pick<ApiOperation, 'method' | 'path'>): NeededScopes | 'open' {
  for (const [form, need] of needs) {
    const found = form.exec(`${method} ${path}`);
    if (found !== null) return need(found.slice(1).filter((part) => part !== undefined));
  }
  throw new Error(`Nothing says which scopes ${method} ${path} needs.`);
}

/**
 * Security requirements of OpenAPI: no token where access is not configured, or else one with any of these lists.
 * The names in a requirement of the type `http` are roles that are needed. Source: OpenAPI 3.1.0, Security Requirement.
 */
export function securityOf(operation: ApiOperation): readonly Readonly<Record<string, readonly string[]>>[] {
  const needed = scopesOf(operation);
  if (needed === 'open') return [];
  const { all, some, isNarrowed } = needed;
  if (all.length + (some?.length ?? 0) === 0) return [{}, { bearer: [] }];
  const contexts = isNarrowed ? ['system', 'patient'] : ['system'];
  const alternatives = some === undefined ? [all] : some.map((one) => [...all, one]);
  return [
    {},
    ...contexts.flatMap((context) =>
      alternatives.map((scopes) => ({ bearer: scopes.map((scope) => `${context}/${scope}`) })),
    ),
  ];
}
