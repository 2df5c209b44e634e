import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { CodeSystem } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { codeUseProblems } from '../../src/cli/generate/code-use.ts';
import { codesInUse } from '../../src/cli/generate/codes-in-use.ts';
import { type OpenTable, openTableNames, readOpenTables } from '../../src/cli/generate/open-tables.ts';
import { systems } from '../../src/terminology/systems.ts';
import { flat, loincCheckDigit } from '../support/code-systems.ts';
import { hl7Folder, hl7Resource, loincNamesInHl7Package } from './hl7-package.ts';

const tables = readOpenTables(join(import.meta.dirname, '..', '..'));

const patterns: Readonly<Record<'hpo' | 'uberon' | 'mondo' | 'loinc', RegExp>> = {
  hpo: /^HP:\d{7}$/,
  uberon: /^UBERON:\d{7}$/,
  mondo: /^MONDO:\d{7}$/,
  loinc: /^\d{1,7}-\d$/,
};

describe.each(openTableNames)('the table of open codes %s', (name) => {
  const table: OpenTable = tables[name];
  const keys = table.codes.map((row) => `${row.system ?? table.system}|${row.code}`);

  it('says whose it is, under which terms, and from where', () => {
    for (const text of [table.system, table.name, table.version, table.licence, table.notice, table.source]) {
      expect(text).not.toBe('');
    }
  });

  it('has no code twice', () => {
    expect(keys).toEqual([...new Set(keys)]);
  });

  it('has a clean name for every code', () => {
    for (const { code, display } of table.codes) {
      expect(display, code).toBe(display.trim());
      expect(display, code).not.toBe('');
    }
  });
});

describe('open codes', () => {
  it('are all in use, and all in the tables under the very name that is used', () => {
    expect(codeUseProblems(codesInUse(), tables)).toEqual([]);
  });

  it.each(Object.entries(patterns))('of %s have the form of its identifiers', (name, pattern) => {
    for (const { code } of tables[name as keyof typeof patterns].codes) expect(code).toMatch(pattern);
  });

  it('are published under the systems that the resources name', () => {
    expect(tables.hpo.system).toBe(systems.hpo);
    expect(tables.loinc.system).toBe(systems.loinc);
    expect(tables.uberon.system).toBe(systems.uberon);
    expect(tables.mondo.system).toBe(systems.mondo);
  });
});

// Names that LOINC has changed since the release that HL7's package of 2019 quotes. Imaging changed style as a whole.
const renamedSinceR4: ReadonlyMap<string, string> = new Map([
  ['787-2', 'Erythrocyte mean corpuscular volume [Entitic volume] by Automated count'],
  // A zero-width space stands in the package's copy.
  ['3024-7', 'Thyroxine (T4) free [Mass/\u200bvolume] in Serum or Plasma'],
  ['29463-7', 'Body Weight'],
  ['30657-1', 'Brain MRI WO contrast'],
  ['30667-0', 'Spine Cervical MRI WO contrast'],
  ['30679-5', 'Spine Lumbar MRI WO contrast'],
  ['30799-1', 'Head CT WO contrast'],
  ['30854-4', 'Spine Cervical and Thoracic and Lumbar MRI WO contrast'],
  ['30855-1', 'Spine Cervical and Thoracic and Lumbar MRI W and WO contrast IV'],
  ['30866-8', 'Lumbar plexus MRI'],
  ['36067-7', 'Spine MRI'],
  ['36532-0', 'Spine Thoracic MRI WO contrast'],
  ['42304-6', 'Head vessels and Neck vessels MRI angiogram'],
  ['42698-1', 'Spine Cervical and Thoracic and Lumbar MRI'],
  ['51969-4', 'Genetic analysis summary report in Blood or Tissue Document by Molecular genetics method'],
]);

describe('LOINC', () => {
  const theirs = loincNamesInHl7Package();

  it('codes end in their check digit', () => {
    for (const { code } of tables.loinc.codes) {
      const [body = '', digit] = code.split('-');
      expect(String(loincCheckDigit(body)), code).toBe(digit);
    }
  });

  it("names agree with HL7's package of R4 definitions and examples wherever it prints the code", () => {
    const differing = tables.loinc.codes
      .filter(({ code, display }) => theirs.has(code) && !theirs.get(code)?.has(display))
      .map(({ code }) => code);
    expect(differing.sort()).toEqual([...renamedSinceR4.keys()].sort());
    for (const [code, older] of renamedSinceR4) expect(theirs.get(code), code).toContain(older);
  });

  it("rows said to be seen in HL7's package are there", () => {
    for (const { code, display, seenIn } of tables.loinc.codes) {
      if (seenIn?.startsWith('hl7.fhir.r4.examples/')) expect(theirs.get(code), code).toContain(display);
    }
  });
});

describe('HL7', () => {
  it('codes and names are those of the R4 code systems', () => {
    const published = new Map<string, Map<string, string | undefined>>();
    for (const file of readdirSync(hl7Folder)) {
      if (!/^CodeSystem-.*\.json$/.test(file)) continue;
      const { url = file, concept = [] } = hl7Resource(file) as CodeSystem;
      published.set(url, new Map(flat(concept).map(({ code, display }) => [code, display])));
    }
    for (const { system = '', code, display } of tables.hl7.codes) {
      expect(published.get(system)?.get(code), `${system}|${code}`).toBe(display);
    }
  });
});
