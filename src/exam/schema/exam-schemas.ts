import { regions } from '../../anatomy/body-parts.ts';
import { type HistoryList, historyListKeys, historyLists } from '../catalogue/history.ts';
import { investigationKeys } from '../catalogue/investigations.ts';
import { type SectionKey, sectionKeys } from '../catalogue/item.ts';
import { courses, examStatuses, familyRelations, onsetPaces } from '../exam.ts';
import { resultsSchema } from '../results/results-schema.ts';
import { datatypeDefinitions } from './datatypes.ts';
import { closedObject, definition, type JsonSchema, listOf, oneOfKeys } from './json-schema.ts';
import { sectionSchema } from './section-schemas.ts';

/** Where the schemas say that they live; the service answers them under the same path of its own address. */
const schemaBase = 'https://neuroexam-fhir.example/json-schema';

/** What a reading of an exam is for: an exam that is kept needs its identifier and its subject. */
export type ExamPurpose = 'record' | 'localise';

/** Rules that JSON Schema cannot say; the service checks them, and faults name the place as for any other rule. */
const furtherRules = [
  'The same item on the same side and at the same place may be given twice only with the same value.',
  'The examination is dated from 1900 on, on a day that exists, and not in the future.',
  'No value is given for a part of the body that the examination says is absent.',
  'A sign at a body part of which there is one on each side needs its side.',
  'A region that is declared normal has at least one item in that section.',
  'A total of the coma scale, where sent, is the sum of its parts.',
  'The number of a result is in a UCUM unit of the right kind and is possible.',
  'The history does not say the same thing twice with different values.',
] as const;

/** The JSON Schemas of what the service takes, draft 2020-12, each complete in itself. Pure: the same on every call. */
export function examSchemas(): readonly { readonly name: string; readonly schema: JsonSchema }[] {
  return [
    { name: 'exam.schema.json', schema: examSchema('record') },
    { name: 'localisation-request.schema.json', schema: examSchema('localise') },
  ];
}

/** The schema of a request body; the two purposes differ only in what is required. */
export function examSchema(purpose: ExamPurpose): JsonSchema {
  const isKept = purpose === 'record';
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `${schemaBase}/${isKept ? 'exam' : 'localisation-request'}.schema.json`,
    title: isKept ? 'Neurological examination to be kept' : 'Neurological examination to be localised',
    description: `Every property and key is named here; others are refused. Further rules: ${furtherRules.join(' ')}`,
    ...closedObject(topLevel, isKept ? ['identifier', 'subject', 'examinedAt'] : ['examinedAt']),
    $defs: {
      ...datatypeDefinitions,
      ...Object.fromEntries(sectionKeys.map((section) => [sectionDefinition(section), sectionSchema(section)])),
      ...Object.fromEntries(historyListKeys.map((list) => [`history-${list}`, historySchema(list)])),
      results: resultsSchema(),
      requests: requestsSchema(),
    },
  };
}

function sectionDefinition(section: SectionKey): string {
  return `findings-${section}`;
}

const topLevel: Readonly<Record<string, JsonSchema>> = {
  identifier: definition('examIdentifier'),
  status: oneOfKeys(examStatuses, 'how final the examination is; final when absent'),
  subject: definition('subject'),
  encounter: definition('encounter'),
  performer: listOf(definition('performer'), 20, 'who examined'),
  examinedAt: definition('examinedAt'),
  person: closedObject(
    {
      ageYears: { type: 'number', minimum: 0, maximum: 130, description: 'age in years' },
      sex: oneOfKeys(['male', 'female', 'other', 'unknown'], 'FHIR administrative gender'),
    },
    [],
    { description: 'age and sex of the person examined' },
  ),
  history: closedObject(
    {
      onset: closedObject(
        {
          pace: oneOfKeys(onsetPaces, 'how fast it came on'),
          durationDays: { type: 'number', minimum: 0, maximum: 50_000, description: 'days since it began' },
        },
        [],
      ),
      course: oneOfKeys(courses, 'how it went on'),
      ...Object.fromEntries(historyListKeys.map((list) => [list, definition(`history-${list}`)])),
    },
    [],
    { description: 'what is known besides the examination' },
  ),
  findings: closedObject(
    Object.fromEntries(sectionKeys.map((section) => [section, definition(sectionDefinition(section))])),
    [],
    { description: 'what was examined, by section' },
  ),
  otherwiseNormal: listOf(
    closedObject(
      {
        section: oneOfKeys(sectionKeys, 'the section in which everything else was tested and normal'),
        region: oneOfKeys(regions, 'the region it is said of; the whole section when absent'),
        side: definition('side'),
      },
      ['section'],
    ),
    100,
    "the examiner's own statement that everything else was tested and normal",
  ),
  results: definition('results'),
  requests: definition('requests'),
};

/** Keys alone: what an investigation is, how pressing and why, is the service's to say. */
function requestsSchema(): JsonSchema {
  return {
    ...listOf(
      oneOfKeys(investigationKeys, 'the key of an investigation in the catalogue'),
      investigationKeys.length,
      'the investigations that the examiner wants proposed, whether they were suggested or not; when absent all that are suggested',
    ),
    uniqueItems: true,
  };
}

function historySchema(list: HistoryList): JsonSchema {
  const keys = historyLists[list].map((row) => row.key);
  return listOf(
    closedObject(
      {
        key: oneOfKeys(keys),
        present: { type: 'boolean', description: 'true when it is so, false when it was asked and is not' },
        ...(list === 'symptoms' ? { side: definition('side') } : {}),
        ...(list === 'family' ? { relation: oneOfKeys(familyRelations, 'who in the family') } : {}),
      },
      ['key', 'present'],
    ),
    400,
  );
}
