import Database from 'better-sqlite3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkView } from '../../src/views/check-view.ts';
import { compileView } from '../../src/views/compile-view.ts';
import { createTableSql } from '../../src/views/create-table.ts';
import { parseLossless } from '../../src/views/lossless-json.ts';
import { writeRows } from '../../src/views/write-rows.ts';

const column = (name: string, path: string, type = 'string') => ({ name, path, type });
const view = (...columns: readonly object[]) => ({ name: 'v', resource: 'Patient', select: [{ column: columns }] });

describe('faults of a view', () => {
  it.each([
    ['a slip in an element', { ...view(column('a', 'id')), were: [] }, '/were', 'where'],
    ['a slip in the type', { ...view(column('a', 'id')), resource: 'Patiant' }, '/resource', 'Patient'],
    ['a name twice', view(column('a', 'id'), column('a', 'id')), '/select', undefined],
    [
      'a constant that is no time',
      { ...view(column('a', 'id')), constant: [{ name: 'day', valueDate: 'T::' }] },
      '/constant/0/valueDate',
      undefined,
    ],
    ['an undefined constant', view(column('a', '%nothing')), '/select/0/column/0/path', undefined],
    ['a call that prints data', view(column('a', "trace('x')")), '/select/0/column/0/path', undefined],
    ['a call that reaches outside', view(column('a', 'link.other.resolve()')), '/select/0/column/0/path', undefined],
  ])('names %s', (_what, definition, pointer, suggestion) => {
    expect(checkView(definition)).toEqual([
      expect.objectContaining({ pointer, ...(suggestion === undefined ? {} : { suggestion }) }),
    ]);
  });
});

it('names view, path and type when several values meet one cell, never the values', () => {
  const { rowsOf } = compileView(view(column('family', 'name.family')));
  const run = () => rowsOf({ resourceType: 'Patient', name: [{ family: 'Alpha' }, { family: 'Beta' }] });
  expect(run).toThrow('View v, path name.family, resource Patient: several values for column family');
  expect(run).not.toThrow(/Alpha|Beta/);
});

it('refuses more rows than one resource may give', () => {
  const name = Array.from({ length: 400 }, () => ({ family: 'Invented' }));
  const each = (column: string) => ({ forEach: '%resource.name', column: [{ name: column, path: 'family' }] });
  const { rowsOf } = compileView({ resource: 'Patient', select: [each('a'), each('b')] });
  expect(() => rowsOf({ resourceType: 'Patient', name })).toThrow('more than 100000 rows');
});

it('ends a repeat that finds its own start', () => {
  const { rowsOf } = compileView({ resource: 'Patient', select: [{ repeat: ['$this'], column: [column('a', 'id')] }] });
  expect(() => rowsOf({ resourceType: 'Patient', id: 'a' })).toThrow();
});

describe('lossless JSON', () => {
  it('reads any JSON as the plain parser does, once written again', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        const plain = JSON.parse(text);
        fc.pre(!/\d{16}|e-?\d/i.test(text) && !text.includes('decimal'));
        expect(JSON.parse(JSON.stringify(parseLossless(text)))).toEqual(JSON.parse(JSON.stringify(plain)));
      }),
    );
  });
});

describe('writers', () => {
  const columns = [
    { name: 'text', type: 'string', collection: false },
    { name: 'n', type: 'integer', collection: false },
    { name: 'list', type: 'string', collection: true },
  ];
  const rows = [
    { text: '=1+1', n: -1, list: ['a', 'b'] },
    { text: 'a "b", c', n: null, list: [] },
  ];
  const written = async (format: 'csv' | 'ndjson' | 'json', given = rows) => {
    let text = '';
    for await (const chunk of writeRows(given, columns, format)) text += chunk;
    return text;
  };

  it('keeps a spreadsheet from running text, and leaves numbers alone', async () => {
    expect(await written('csv')).toBe('text,n,list\n\'=1+1,-1,"[""a"",""b""]"\n"a ""b"", c",,[]\n');
  });

  it('writes JSON that reads back as the rows, also none', async () => {
    expect(JSON.parse(await written('json'))).toEqual(rows);
    expect(JSON.parse(await written('json', []))).toEqual([]);
    expect(
      (await written('ndjson'))
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line)),
    ).toEqual(rows);
  });
});

it('makes a table that SQLite takes, with the types of the view', () => {
  const compiled = compileView(view(column('key', 'id'), column('male', "gender = 'male'", 'boolean')));
  const db = new Database(':memory:');
  db.exec(createTableSql(compiled, 'sqlite'));
  expect(db.pragma('table_info(views_v)')).toMatchObject([
    { name: 'key', type: 'TEXT' },
    { name: 'male', type: 'INTEGER' },
  ]);
  expect(createTableSql(compiled, 'postgres')).toBe('CREATE TABLE "views"."v" (\n  "key" text,\n  "male" boolean\n)');
});
