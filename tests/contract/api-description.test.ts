import { Validator } from '@seriousme/openapi-schema-validator';
import { describe, expect, it } from 'vitest';
import { apiDocument, describedOperations, examplesOf, schemaValidator } from '../support/api-document.ts';
import { lookAtWholeApp, mountedRoutes } from '../support/whole-app.ts';

async function routesOfTheService(): Promise<readonly string[]> {
  const routes = await lookAtWholeApp(mountedRoutes);
  return routes.map(({ method, path }) => `${method} ${path.replace(/[:*](\w+)/g, '{$1}')}`);
}

describe('the API description', () => {
  it('is OpenAPI 3.1, by the official schema', async () => {
    const validator = new Validator();
    const { valid, errors } = await validator.validate(
      structuredClone(apiDocument) as object as Record<string, unknown>,
    );
    expect(errors).toBeUndefined();
    expect(valid).toBe(true);
    expect(validator.version).toBe('3.1');
  });

  it('describes every route of the service and no other', async () => {
    const routes = await routesOfTheService();
    const described = describedOperations.map(({ method, path }) => `${method} ${path}`);
    expect(routes.length).toBeGreaterThan(100);
    const missing = routes.filter((route) => !described.includes(route));
    const invented = described.filter((route) => !routes.includes(route));
    expect(missing, 'routes to describe in src/http/api-description, then npm run generate').toEqual([]);
    expect(invented, 'descriptions of routes that the service does not have').toEqual([]);
  });

  it('names every operation once and gives each path parameter', () => {
    const ids = describedOperations.map(({ operation }) => operation.operationId);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { path, operation } of describedOperations) {
      const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
      const given = operation.parameters
        .map((parameter) => parameter as { $ref?: string; name?: string; in?: string })
        .map((parameter) =>
          parameter.$ref === undefined
            ? parameter
            : (apiDocument.components.parameters?.[parameter.$ref.replace(/^.*\//, '')] as typeof parameter),
        )
        .filter((parameter) => parameter?.in === 'path')
        .map((parameter) => parameter?.name);
      expect([path, given.sort()]).toEqual([path, inPath.sort()]);
    }
  });

  it('refers to nothing that is not there', () => {
    const references = [...JSON.stringify(apiDocument).matchAll(/"\$ref":"#\/components\/(\w+)\/([^"]+)"/g)];
    expect(references.length).toBeGreaterThan(500);
    const broken = references.filter(([, kind = '', name = '']) => apiDocument.components[kind]?.[name] === undefined);
    expect(broken.map(([reference]) => reference)).toEqual([]);
  });

  it('has an example of every operation, where one of several types is enough', () => {
    const covered = new Set<string>();
    const all = new Set<string>();
    for (const described of describedOperations) {
      const { method, path, operation } = described;
      const key = `${operation.tags[0]} ${method} ${operation['x-family'] ?? path}`;
      all.add(key);
      if (examplesOf(described).length > 0) covered.add(key);
    }
    expect([...all].filter((key) => !covered.has(key))).toEqual([]);
  });

  it('has request examples that keep the schema, unless the service refuses them', () => {
    for (const example of describedOperations.flatMap(examplesOf)) {
      const schema = example.body && example.operation.requestBody?.content[example.body.type]?.schema;
      if (schema === undefined || example.status >= 400) continue;
      const validate = schemaValidator(schema);
      expect([example.operation.operationId, validate(example.body?.value), validate.errors]).toEqual([
        example.operation.operationId,
        true,
        null,
      ]);
    }
  });
});
