import { describe, expect, it } from 'vitest';
import { type CodeUse, codeUseProblems } from '../../src/cli/generate/code-use.ts';
import type { OpenTable, OpenTables } from '../../src/cli/generate/open-tables.ts';

const table = (system: string, codes: OpenTable['codes']): OpenTable => ({
  system,
  name: 'invented',
  version: '1',
  licence: 'none',
  notice: 'none',
  source: 'none',
  codes,
});

const tables: OpenTables = {
  hpo: table('urn:a', [{ code: 'A1', display: 'First' }]),
  loinc: table('urn:b', []),
  uberon: table('urn:c', []),
  mondo: table('urn:d', []),
  hl7: table('urn:e', [
    { system: 'urn:e:1', code: 'N', display: 'Normal' },
    { system: 'urn:e:2', code: 'N', display: 'No' },
  ]),
};

const uses: readonly CodeUse[] = [
  { table: 'hpo', code: 'A1', display: 'First', where: 'row 1' },
  { table: 'hl7', system: 'urn:e:1', code: 'N', display: 'Normal', where: 'row 2' },
  { table: 'hl7', system: 'urn:e:2', code: 'N', display: 'No', where: 'row 3' },
];

describe('the check of codes in use', () => {
  it('has nothing to say when use and tables agree, also where two systems share a code', () => {
    expect(codeUseProblems(uses, tables)).toEqual([]);
  });

  it('names a code that no table has', () => {
    const [problem] = codeUseProblems([...uses, { table: 'loinc', code: '1-8', display: 'X', where: 'row 4' }], tables);
    expect(problem).toContain('row 4: 1-8 "X" is not in');
  });

  it('names a display that differs by one letter', () => {
    const changed = uses.map((use) => (use.code === 'A1' ? { ...use, display: 'first' } : use));
    expect(codeUseProblems(changed, tables)).toEqual([expect.stringContaining('is called "first", but "First"')]);
  });

  it('names a row that nothing uses', () => {
    expect(codeUseProblems(uses.slice(1), tables)).toEqual([expect.stringContaining('nothing uses urn:a|A1')]);
  });
});
