import { readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import type {
  ReadDocument,
  ReadOperation,
  ReadParameter,
  ReadResponse,
} from '../../src/http/api-page/read-document.ts';
import { parametersOf, resolve } from '../../src/http/api-page/read-document.ts';

const file = new URL('../../profiles/openapi.json', import.meta.url);

/** The API description as committed. */
export const apiDocument = JSON.parse(readFileSync(file, 'utf8')) as ReadDocument;

export interface DescribedOperation {
  readonly method: string;
  readonly path: string;
  readonly operation: ReadOperation;
}

export const describedOperations: readonly DescribedOperation[] = Object.entries(apiDocument.paths).flatMap(
  ([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ method: method.toUpperCase(), path, operation })),
);

export interface ParameterExample {
  readonly value: unknown;
  readonly 'x-taken-from'?: { readonly operation: string; readonly example: string; readonly header: string };
}

export interface AnswerExample {
  readonly value?: unknown;
  readonly 'x-excerpt'?: boolean;
  readonly 'x-varies'?: readonly string[];
}

/** One example of an operation, put together from its parameters, body and answer. */
export interface Example extends DescribedOperation {
  readonly name: string;
  readonly parameters: readonly (ReadParameter & { readonly example: ParameterExample })[];
  readonly body?: { readonly type: string; readonly value: unknown };
  readonly status: number;
  readonly response: ReadResponse;
  readonly answer: AnswerExample & { readonly type?: string };
}

type Examples<Value> = Readonly<Record<string, Value>> | undefined;

/** All examples of an operation; each is an answer of the document. */
export function examplesOf(described: DescribedOperation): readonly Example[] {
  const { operation } = described;
  return Object.entries(operation.responses).flatMap(([status, part]) => {
    const response = resolve<ReadResponse & { 'x-examples'?: Record<string, AnswerExample> }>(apiDocument, part);
    const withBody = Object.entries(response.content ?? {}).flatMap(([type, { examples }]) =>
      Object.entries((examples ?? {}) as Record<string, AnswerExample>).map(
        ([name, answer]) => [name, { ...answer, type }] as const,
      ),
    );
    const bare = Object.entries(response['x-examples'] ?? {});
    return [...withBody, ...bare].map(([name, answer]): Example => {
      const body = Object.entries(operation.requestBody?.content ?? {}).flatMap(([type, { examples }]) => {
        const example = (examples as Examples<{ value: unknown }>)?.[name];
        return example === undefined ? [] : [{ type, value: example.value }];
      })[0];
      return {
        ...described,
        name,
        parameters: parametersOf(apiDocument, operation).flatMap((parameter) => {
          const example = (parameter.examples as Examples<ParameterExample>)?.[name];
          return example === undefined ? [] : [{ ...parameter, example }];
        }),
        ...(body === undefined ? {} : { body }),
        status: Number(status),
        response,
        answer,
      };
    });
  });
}

let ajv: Ajv2020 | undefined;

/** A validator for a schema of the document. */
export function schemaValidator(schema: object): ValidateFunction {
  if (ajv === undefined) {
    ajv = new Ajv2020({ strict: false, allErrors: false });
    addFormats.default(ajv);
    ajv.addSchema({ $id: 'https://api.example/document', components: apiDocument.components });
  }
  const text = JSON.stringify(schema).replaceAll('"#/components/', '"https://api.example/document#/components/');
  return ajv.compile(JSON.parse(text));
}
