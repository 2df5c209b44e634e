import type { KeptType, ServerOperation } from '../fhir/capability-statement.ts';
import { auditSearchParams } from '../search/audit-search.ts';
import { searchIncludesFor, searchParamsFor, searchRevIncludesFor } from '../search/capability.ts';
import { searchedTypes } from '../search/parameters.ts';
import { checkedTypes } from '../validation/r4-definitions.ts';

const validate = { name: 'validate', definition: 'http://hl7.org/fhir/OperationDefinition/Resource-validate' } as const;

/** What goes beyond reading and searching. */
const beyond: Partial<Record<string, Pick<KeptType, 'interactions' | 'operations'>>> = {
  Measure: {
    interactions: ['create', 'update'],
    operations: [
      { name: 'evaluate-measure', definition: 'http://hl7.org/fhir/OperationDefinition/Measure-evaluate-measure' },
    ],
  },
  Subscription: { interactions: ['create', 'update'], operations: [] },
};

/** What happens writes it, nobody else. */
const auditTrail: KeptType = {
  type: 'AuditEvent',
  searchParam: auditSearchParams,
  searchInclude: [],
  searchRevInclude: [],
  only: ['read', 'search-type'],
};

/** The types that are kept and what each can be searched by. */
export function keptTypes(): readonly KeptType[] {
  const fromExams = searchedTypes.map((type) => ({
    type,
    searchParam: searchParamsFor(type),
    searchInclude: searchIncludesFor(type),
    searchRevInclude: searchRevIncludesFor(type),
    ...beyond[type],
    operations: [...(checkedTypes.some((one) => one === type) ? [validate] : []), ...(beyond[type]?.operations ?? [])],
  }));
  return [...fromExams, auditTrail];
}

export const serverOperations: readonly ServerOperation[] = [
  { name: 'export', definition: 'http://hl7.org/fhir/uv/bulkdata/OperationDefinition/export' },
  {
    name: 'viewdefinition-run',
    definition: 'http://sql-on-fhir.org/OperationDefinition/$viewdefinition-run',
    documentation:
      'Formats json, ndjson and csv. A view is posted, or referred to as ViewDefinition/{id} or by canonical address: those that come with the service, listed at /views. Also below ViewDefinition and ViewDefinition/{id}. Not offered: group, source.',
  },
];

/** Types that are not kept by themselves: answered inside others and checked, or taken in and read. */
export const onlyChecked: readonly { readonly type: string; readonly operations: readonly ServerOperation[] }[] = [
  ...checkedTypes
    .filter((type) => !searchedTypes.some((one) => one === type))
    .map((type) => ({ type, operations: [validate] })),
  {
    type: 'QuestionnaireResponse',
    operations: [
      {
        name: 'extract',
        definition: 'http://hl7.org/fhir/uv/sdc/OperationDefinition/QuestionnaireResponse-extract',
        documentation:
          'Of the type, with the response as the body or as the parameter questionnaire-response. Answers the transaction Bundle of a response to our own Questionnaire and keeps nothing; POST /exams takes the same response and keeps it.',
      },
    ],
  },
];
