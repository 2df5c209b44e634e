import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { items } from '../../src/exam/catalogue/catalogue.ts';
import { sectionOf } from '../../src/exam/catalogue/sections.ts';
import { scales } from '../../src/exam/scales.ts';
import { examSchemas } from '../../src/exam/schema/exam-schemas.ts';
import { valueProperty } from '../../src/exam/schema/section-schemas.ts';
import { footDropRequest, requestWithFindings } from './support/exam-request.ts';
import { faultsOf } from './support/read.ts';

type Node = Readonly<Record<string, unknown>>;

/** Every object inside a schema with its path, itself included. */
function* nodesOf(value: unknown, path = ''): Generator<readonly [path: string, node: Node]> {
  if (Array.isArray(value)) {
    for (const [index, inner] of value.entries()) yield* nodesOf(inner, `${path}/${index}`);
  } else if (typeof value === 'object' && value !== null) {
    yield [path, value as Node];
    for (const [name, inner] of Object.entries(value)) yield* nodesOf(inner, `${path}/${name}`);
  }
}

const schemas = examSchemas();

describe.each(schemas.map(({ name, schema }) => [name, schema] as const))('%s', (name, schema) => {
  const nodes = [...nodesOf(schema)];

  it('is a 2020-12 schema under its own address', () => {
    const ajv = new Ajv2020({ strict: false });
    expect(ajv.validateSchema(schema), JSON.stringify(ajv.errors)).toBe(true);
    expect(schema.$id).toBe(`https://neuroexam-fhir.example/json-schema/${name}`);
  });

  it('closes every object and bounds every list and text', () => {
    const open = nodes.filter(([, node]) => 'properties' in node && node.type === 'object' && !('allOf' in node));
    expect(open.filter(([, node]) => node.additionalProperties !== false).map(([path]) => path)).toEqual([]);
    const lists = nodes.filter(([, node]) => node.type === 'array' && !('maxItems' in node));
    expect(lists.map(([path]) => path)).toEqual([]);
    const texts = nodes.filter(([, node]) => node.type === 'string' && !('maxLength' in node) && !('enum' in node));
    expect(texts.map(([path]) => path)).toEqual([]);
  });

  it('resolves every reference within itself', () => {
    const names = new Set(Object.keys(schema.$defs as object).map((key) => `#/$defs/${key}`));
    for (const [path, node] of nodes) if ('$ref' in node) expect(names, path).toContain(node.$ref);
  });

  it('has only patterns that take linear time', () => {
    const patterns = new Set(nodes.flatMap(([, node]) => (typeof node.pattern === 'string' ? [node.pattern] : [])));
    const floods = [
      'a',
      ' ',
      '/',
      'a/',
      'https://a',
      'Patient/',
      '1',
      '-',
      ':',
      '\n',
      'a ',
      '2026-03-14T10:20:00.1',
    ].map((part) => part.repeat(Math.ceil(100_000 / part.length)));
    for (const pattern of patterns) {
      const expression = new RegExp(pattern, 'u');
      for (const flood of [...floods, ...floods.map((text) => `https://${text}`)]) {
        const start = performance.now();
        expression.test(`${flood}\u0000`);
        expect(performance.now() - start, `${pattern} on ${flood.slice(0, 20)}`).toBeLessThan(200);
      }
    }
  });

  it('accepts the request that uses every part', () => {
    const validate = new Ajv2020({ strict: false, ownProperties: true }).compile(schema);
    expect(validate(footDropRequest), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...footDropRequest, extra: 1 })).toBe(false);
  });
});

describe('the schemas', () => {
  it('are the same on every call', () => {
    expect(examSchemas()).toEqual(schemas);
  });

  it('differ only in what is required and in their names', () => {
    const [record, localise] = schemas.map(({ schema: { $id, title, required, ...rest } }) => rest);
    expect(record).toEqual(localise);
  });

  it.each(items.map((item) => [`${item.section}/${item.key}`, item] as const))(
    'take every value of %s',
    (_name, item) => {
      const { itemProperty } = sectionOf(item.section);
      const values =
        item.scale === 'beats'
          ? [0, 5]
          : item.scale === 'presence'
            ? [true, false]
            : scales[item.scale].grades.map(({ key }) => key);
      for (const value of values) {
        const entry = {
          ...(itemProperty === null ? {} : { [itemProperty]: item.key }),
          ...(item.sites === undefined || itemProperty === 'site' ? {} : { site: item.sites[0] }),
          ...(item.section === 'sensation' ? { dermatome: 'L5' } : {}),
          ...(item.sides === 'midline' ? {} : { side: 'both' }),
          [valueProperty(item)]: value,
        };
        expect(faultsOf(requestWithFindings({ [item.section]: [entry] }))).toEqual([]);
      }
    },
  );
});
