import { checkedTypes } from '../../validation/r4-definitions.ts';
import { mediaTypes } from '../answer.ts';
import { type InputType, type OperationId, type OperationInputs, operationInputs } from '../operation-inputs.ts';
import { answersResource, bodyProblems, takesResource } from './fhir-schemas.ts';
import type { ApiCall, ApiOperation, ApiParameter } from './operation.ts';

const { fhir } = mediaTypes;

/** Datatypes of parameters that an address can carry; the others are sent by POST. */
const inAddress: Partial<Record<InputType, ApiParameter['schema']>> = {
  boolean: { type: 'string', enum: ['true', 'false'] },
  integer: { type: 'string', pattern: '^[0-9]{1,9}$' },
  canonical: { type: 'string' },
  code: { type: 'string' },
  date: { type: 'string' },
  dateTime: { type: 'string' },
  string: { type: 'string' },
  uri: { type: 'string' },
};

function addressParameters({ takes, several = [] }: OperationInputs): readonly ApiParameter[] {
  return Object.entries(takes).flatMap(([name, type]): ApiParameter[] => {
    const schema = inAddress[type];
    if (schema === undefined) return [];
    const isList = several.includes(name);
    const description = `Input of the operation, of type \`${type}\`${isList ? ', as often as wanted' : ''}.`;
    return [{ name, in: 'query', description, schema: isList ? { type: 'array', items: schema } : schema }];
  });
}

interface OperationWords {
  readonly summary: string;
  readonly answer: string;
  readonly schema: string;
  readonly area?: ApiOperation['area'];
  readonly problems?: ApiOperation['problems'];
  readonly example: OperationExample;
}

interface OperationExample extends Omit<ApiCall, 'parameters' | 'body' | 'status'> {
  readonly asks: Readonly<Record<string, string>>;
  /** What is asked besides where no instance stands in the address. */
  readonly onType: Readonly<Record<string, string>>;
  /** Id of the instance; absent for an operation of the type alone. */
  readonly instance?: string;
}

const reducedPower = 'https://neuroexam-fhir.example/fhir/ValueSet/power-reduced';
const examItems = 'https://neuroexam-fhir.example/fhir/CodeSystem/exam-item';
const result = (name: string, value: Readonly<Record<string, unknown>>) => ({
  type: fhir,
  value: { resourceType: 'Parameters', parameter: [{ name, ...value }] },
  isExcerpt: true,
});

/** In the words of the standard. Source: http://hl7.org/fhir/R4/operationslist.html */
const operations: Readonly<Record<OperationId, OperationWords>> = {
  'CodeSystem-lookup': {
    summary: 'What a code means',
    answer: 'Display and properties of the code.',
    schema: 'Parameters',
    example: {
      name: 'ankle-dorsiflexion',
      says: 'A code of ours.',
      asks: { system: examItems, code: 'power/ankle-dorsiflexion' },
      onType: {},
      answer: result('name', {}),
    },
  },
  'CodeSystem-subsumes': {
    summary: 'Whether one code includes another',
    answer: 'How the two codes stand to each other.',
    schema: 'Parameters',
    example: {
      name: 'section-and-item',
      says: 'A section and an item of it.',
      asks: { codeA: 'section/power', codeB: 'power/ankle-dorsiflexion' },
      onType: { system: examItems },
      instance: 'exam-item',
      answer: result('outcome', {}),
    },
  },
  'CodeSystem-validate-code': {
    summary: 'Whether a code is in a code system',
    answer: 'Whether it is.',
    schema: 'Parameters',
    example: {
      name: 'unknown-code',
      says: 'A code that is not there.',
      asks: { code: 'power/ankle-dorsiflection' },
      onType: { url: examItems },
      instance: 'exam-item',
      answer: result('result', { valueBoolean: false }),
    },
  },
  'ValueSet-expand': {
    summary: 'The codes of a value set',
    answer: 'The value set with its expansion.',
    schema: 'ValueSet',
    example: {
      name: 'weak',
      says: 'The grades of power below five.',
      asks: {},
      onType: { url: reducedPower },
      instance: 'power-reduced',
      answer: { type: fhir, value: { resourceType: 'ValueSet', expansion: {} }, isExcerpt: true },
    },
  },
  'ValueSet-validate-code': {
    summary: 'Whether a code is in a value set',
    answer: 'Whether it is.',
    schema: 'Parameters',
    example: {
      name: 'full-power',
      says: 'Full power is none of the reduced grades.',
      asks: { system: 'https://neuroexam-fhir.example/fhir/CodeSystem/mrc-power', code: '5' },
      onType: { url: reducedPower },
      instance: 'power-reduced',
      answer: result('result', { valueBoolean: false }),
    },
  },
  'ConceptMap-translate': {
    summary: 'The same in another code system',
    answer: 'Every match with its relation.',
    schema: 'Parameters',
    example: {
      name: 'to-hpo',
      says: 'The HPO term of an abnormal item.',
      asks: {
        system: examItems,
        code: 'power/ankle-dorsiflexion',
        targetsystem: 'http://human-phenotype-ontology.org',
      },
      onType: {},
      instance: 'exam-item-to-hpo',
      answer: result('result', {}),
    },
  },
  'Measure-evaluate-measure': {
    summary: 'Evaluate a Measure over the exams of a period',
    answer: 'The report, which is not kept.',
    schema: 'MeasureReport',
    area: 'FHIR measures',
    problems: ['MEASURE_INVALID', 'MEASURE_FAILED'],
    example: {
      name: 'one-quarter',
      says: 'Signs of a neuropathy, in the first quarter.',
      asks: { periodStart: '2026-01', periodEnd: '2026-03' },
      onType: { measure: 'neuropathy-signs' },
      instance: 'neuropathy-signs',
      answer: {
        type: fhir,
        value: { resourceType: 'MeasureReport', status: 'complete', type: 'summary' },
        isExcerpt: true,
      },
    },
  },
};

function described(id: OperationId): readonly ApiOperation[] {
  const words = operations[id];
  const [type, name] = [id.slice(0, id.indexOf('-')), id.slice(id.indexOf('-') + 1)];
  const query = addressParameters(operationInputs[id]);
  const programName = `${type}-${name}`.replace(/-(\w)/g, (_match, letter: string) => letter.toUpperCase());
  const base = {
    area: words.area ?? 'FHIR terminology',
    answers: { 200: answersResource(words.answer, words.schema) },
  } as const;
  const problems = ['NOT_FOUND', ...(words.problems ?? [])] as const;
  const both = (path: string, suffix: string, onInstance: boolean): ApiOperation[] => {
    const own = onInstance ? (['resourceId'] as const) : [];
    const { got, posted } = callsOf(words.example, onInstance);
    return [
      {
        ...base,
        method: 'get',
        path,
        id: `run${programName}${suffix}`,
        summary: words.summary,
        parameters: [...own, ...query, 'format', 'pretty'],
        problems,
        calls: got,
      },
      {
        ...base,
        method: 'post',
        path,
        id: `run${programName}${suffix}Posted`,
        summary: `${words.summary}, with Parameters in the body`,
        parameters: [...own, ...query, 'format', 'pretty'],
        body: takesResource('Parameters of the operation.', 'Parameters'),
        problems: [...problems, ...bodyProblems],
        calls: posted,
      },
    ];
  };
  return [
    ...both(`/fhir/${type}/$${name}`, '', false),
    ...(words.example.instance !== undefined ? both(`/fhir/${type}/{id}/$${name}`, 'OnInstance', true) : []),
  ];
}

/** The example of an operation by GET, and the same by POST. */
function callsOf({ asks, onType, instance = '', ...example }: OperationExample, onInstance: boolean) {
  const asked = onInstance ? asks : { ...onType, ...asks };
  const inPath: Record<string, string> = onInstance ? { id: instance } : {};
  const parameter = Object.entries(asked).map(([name, value]) => ({
    name,
    [valueNames[name] ?? 'valueString']: value,
  }));
  const body = { type: fhir, value: { resourceType: 'Parameters', parameter } };
  return {
    got: [{ ...example, status: 200, parameters: { ...inPath, ...asked } }],
    posted: [{ ...example, status: 200, parameters: inPath, body }],
  };
}

const valueNames: Readonly<Record<string, string>> = {
  url: 'valueUri',
  system: 'valueUri',
  targetsystem: 'valueUri',
  code: 'valueCode',
  codeA: 'valueCode',
  codeB: 'valueCode',
  periodStart: 'valueDate',
  periodEnd: 'valueDate',
};

const validateMode: ApiParameter = {
  name: 'mode',
  in: 'query',
  component: 'validateMode',
  description: 'What the resource is meant for; `profile` needs a profile.',
  schema: { type: 'string', enum: ['create', 'update', 'profile'] },
};
const validateProfile: ApiParameter = {
  name: 'profile',
  in: 'query',
  component: 'validateProfile',
  description: 'Canonical address of a profile to check against, beside those that the resource claims.',
  schema: { type: 'string' },
};

const badObservation: ApiCall = {
  name: 'wrong-status',
  says: 'A status that does not exist.',
  body: { type: fhir, value: { resourceType: 'Observation', status: 'done' } },
  status: 200,
  answer: {
    type: fhir,
    value: { resourceType: 'OperationOutcome', issue: [{ severity: 'error' }] },
    isExcerpt: true,
  },
};

const validation: readonly ApiOperation[] = checkedTypes.flatMap((type) =>
  [false, true].map(
    (onInstance): ApiOperation => ({
      method: 'post',
      path: onInstance ? `/fhir/${type}/{id}/$validate` : `/fhir/${type}/$validate`,
      family: onInstance ? '/fhir/{type}/{id}/$validate' : '/fhir/{type}/$validate',
      id: `validate${type}${onInstance ? 'OnInstance' : ''}`,
      area: 'FHIR validation',
      summary: onInstance ? 'Check a resource, or what is kept under the id' : 'Check a resource',
      description: 'The answer is 200 whatever was found; the issues say what is wrong.',
      isRepeatable: true,
      parameters: [...(onInstance ? (['resourceId'] as const) : []), validateMode, validateProfile, 'format'],
      body: takesResource('The resource, or Parameters with `resource`, `mode` and `profile`.', 'Unchecked'),
      answers: { 200: answersResource('What was found.', 'OperationOutcome') },
      problems: [...bodyProblems, 'NOT_FOUND'],
      ...(type !== 'Observation'
        ? {}
        : { calls: [onInstance ? { ...badObservation, parameters: { id: 'invented' } } : badObservation] }),
    }),
  ),
);

export const fhirOperationOperations: readonly ApiOperation[] = [
  ...(Object.keys(operationInputs) as OperationId[]).flatMap(described),
  ...validation,
];
