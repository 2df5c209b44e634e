import { type ResultRow, resultRows } from '../exam/catalogue/results.ts';
import { findingGroups } from './finding-questions.ts';
import type { FormItem } from './form-item.ts';
import { historyGroup } from './history-questions.ts';
import { note } from './note.ts';
import {
  regionOptions,
  requestOptions,
  resultOptions,
  sectionOptions,
  sexOptions,
  sideOptions,
} from './option-sets.ts';

/** Id of the published Questionnaire. */
export const questionnaireId = 'neuro-exam';

/** Resource types that an exam can name as performer. */
export const performerTypes = [
  'Practitioner',
  'PractitionerRole',
  'Organization',
  'CareTeam',
  'Patient',
  'RelatedPerson',
] as const;

const performers: FormItem = {
  linkId: 'performers',
  text: 'Examined by, besides the author',
  type: 'reference',
  repeats: true,
  referenceTo: performerTypes,
  entry: { list: ['performer'], fixed: {} },
};

const person: FormItem = {
  linkId: 'person',
  text: 'Person examined',
  type: 'group',
  items: [
    { linkId: 'person/age-years', text: 'Age in years', type: 'decimal', target: ['person'], property: 'ageYears' },
    { linkId: 'person/sex', text: 'Sex', type: 'choice', options: sexOptions, target: ['person'] },
  ],
};

const otherwiseNormal: FormItem = {
  linkId: 'otherwise-normal',
  text: 'Everything else was tested and normal in',
  type: 'group',
  repeats: true,
  entry: { list: ['otherwiseNormal'], fixed: {} },
  items: [
    { linkId: 'otherwise-normal/section', text: 'Section', type: 'choice', options: sectionOptions, required: true },
    { linkId: 'otherwise-normal/region', text: 'Region', type: 'choice', options: regionOptions },
    { linkId: 'otherwise-normal/side', text: 'Side', type: 'choice', options: sideOptions },
  ],
};

const results: FormItem = {
  linkId: 'results',
  text: 'Results that are back',
  type: 'group',
  items: resultRows.map(resultQuestion),
};

const requests: FormItem = {
  linkId: 'requests',
  text: 'Propose only these investigations; all that are suggested where nothing is chosen',
  type: 'choice',
  repeats: true,
  options: requestOptions,
  entry: { list: ['requests'], fixed: {}, bare: 'key' },
};

function resultQuestion(row: ResultRow): FormItem {
  const linkId = `results/${row.key}`;
  const common = {
    linkId,
    text: row.label,
    entry: { list: ['results'], fixed: { key: row.key } },
    items: [note(linkId)],
  };
  return row.kind === 'quantity'
    ? { ...common, type: 'quantity', property: 'valueQuantity', unit: row.unit }
    : { ...common, type: 'choice', options: resultOptions(row) };
}

/** The whole exam as a form. Identifier, subject, time, status and author are elements of the response itself. */
export const examForm: readonly FormItem[] = [
  performers,
  person,
  historyGroup,
  ...findingGroups,
  otherwiseNormal,
  results,
  requests,
];
