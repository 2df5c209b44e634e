import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { StructureDefinition } from 'fhir/r4.js';
import { expect, it } from 'vitest';
import { summaryElements } from '../../src/fhir/summary-elements.ts';
import { searchedTypes } from '../../src/search/parameters.ts';

const folder = dirname(createRequire(import.meta.url).resolve('hl7.fhir.r4.examples/package.json'));
/** Elements that every resource has. */
const common = ['id', 'meta', 'implicitRules', 'language', 'text', 'contained', 'extension', 'modifierExtension'];

it.each(searchedTypes)('shows as the summary of %s what its HL7 definition marks so', (type) => {
  const file = join(folder, `StructureDefinition-${type}.json`);
  const { snapshot } = JSON.parse(readFileSync(file, 'utf8')) as StructureDefinition;
  const own = (snapshot?.element ?? []).filter(({ path }) => path.split('.').length === 2);
  const named = own
    .map((element) => ({ ...element, name: element.path.split('.')[1] as string }))
    .filter(({ name }) => !common.includes(name))
    .flatMap(({ name, min, isSummary, type: types = [] }) => {
      const names = name.endsWith('[x]')
        ? types.map(({ code }) => name.replace('[x]', `${code[0]?.toUpperCase()}${code.slice(1)}`))
        : [name];
      return names.map((one) => ({ name: one, isMandatory: (min ?? 0) > 0, isSummary: isSummary === true }));
    });
  expect(summaryElements[type]?.mandatory).toEqual(named.filter((one) => one.isMandatory).map(({ name }) => name));
  expect(summaryElements[type]?.summary).toEqual(
    named.filter((one) => one.isSummary && !one.isMandatory).map(({ name }) => name),
  );
});
