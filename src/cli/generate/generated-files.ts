import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { StructureDefinition } from 'fhir/r4.js';
import { examSchemas } from '../../exam/schema/exam-schemas.ts';
import { apiDocument, apiDocumentPath } from '../../http/api-description/api-document.ts';
import { catalogueSchema } from '../../http/api-description/catalogue-schema.ts';
import { pictureSchema } from '../../http/api-description/picture-schema.ts';
import { localisationAnswerSchema } from '../../summary/localisation-answer-schema.ts';
import type { ConformanceResource } from '../../terminology/load.ts';
import { bodySiteResources } from './body-sites.ts';
import { causeResources } from './causes.ts';
import { clientFiles } from './client-files.ts';
import { examCodeSystems, examMaps, openValueSets } from './exam-items.ts';
import { faultResources } from './faults.ts';
import { type GeneratedFiles, jsonText } from './files.ts';
import type { Release } from './header.ts';
import { investigationResources } from './investigations.ts';
import { localisationResources } from './localisations.ts';
import { modelVersionFile } from './model-version.ts';
import type { OpenTables } from './open-tables.ts';
import { profileDefinitions } from './profiles.ts';
import { answerResources, examQuestionnaire } from './questionnaire.ts';
import { gradesValueSet, scaleResources, subsetValueSets } from './scale-resources.ts';
import { searchParameters } from './search-parameters.ts';
import { workedExample } from './worked-examples.ts';

/** Day of the last change of meaning in the published resources; changed by hand, so that output depends on no clock. */
const publicationDate = '2026-11-25';

/** All generated files. Same tables, same text, to the byte. */
export async function generatedFiles(version: string, tables: OpenTables): Promise<GeneratedFiles> {
  const release: Release = { version, date: publicationDate };
  const resources = conformanceResources(release, tables);
  const description = apiDocument(version, workedExample);
  return new Map([
    modelVersionFile(version),
    ...examSchemas().map(({ name, schema }) => [`profiles/json-schema/${name}`, jsonText(schema)] as const),
    ...answerSchemas().map(({ name, schema }) => [`profiles/json-schema/${name}`, jsonText(schema)] as const),
    ...resources.map((resource) => [filePath(resource), jsonText(resource)] as const),
    [apiDocumentPath, jsonText(description)],
    ...(await clientFiles(description)),
  ]);
}

/** What is answered, apart from FHIR. */
function answerSchemas() {
  return [
    { name: 'localisation-answer.schema.json', schema: localisationAnswerSchema() },
    { name: 'catalogue.schema.json', schema: catalogueSchema() },
    { name: 'picture.schema.json', schema: pictureSchema() },
  ];
}

function conformanceResources(release: Release, tables: OpenTables): ConformanceResource[] {
  return [
    ...scaleResources(release),
    ...subsetValueSets(release),
    gradesValueSet(release),
    ...examCodeSystems(release),
    ...examMaps(release, tables),
    ...bodySiteResources(release, tables),
    ...causeResources(release, tables),
    ...localisationResources(release),
    ...investigationResources(release, tables),
    ...faultResources(release),
    ...openValueSets(release, tables),
    ...profileDefinitions(release, r4Definition),
    ...searchParameters(release),
    ...answerResources(release),
    examQuestionnaire(release),
  ];
}

/** What describes resources and requests; the rest is vocabulary. */
const profileTypes: ReadonlySet<string> = new Set(['Questionnaire', 'SearchParameter', 'StructureDefinition']);

function filePath(resource: ConformanceResource): string {
  const isProfile = profileTypes.has(resource.resourceType);
  return `${isProfile ? 'profiles/fhir' : 'terminology'}/${resource.resourceType}-${resource.id}.json`;
}

/** HL7's own definition of a resource type, from the package of R4 definitions. */
function r4Definition(type: string): StructureDefinition {
  const folder = dirname(createRequire(import.meta.url).resolve('hl7.fhir.r4.examples/package.json'));
  const text = readFileSync(join(folder, `StructureDefinition-${type}.json`), 'utf8');
  // One comment of HL7's holds a stray left-to-right mark, which validators take for an attempt to hide text.
  return JSON.parse(text.replaceAll('\u200e', ''));
}
