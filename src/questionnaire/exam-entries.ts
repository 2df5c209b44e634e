import type { HistoryList } from '../exam/catalogue/history.ts';
import type { SectionKey } from '../exam/catalogue/item.ts';
import { sectionOf } from '../exam/catalogue/sections.ts';
import type { Exam, HistoryStatement, InvestigationResult } from '../exam/exam.ts';
import type { Finding, FindingPlace, NormalStatement, ScoredScale } from '../exam/finding.ts';
import { valueProperty } from '../exam/schema/section-schemas.ts';
import { systems } from '../terminology/systems.ts';
import type { Json } from './json-object.ts';

/** One entry of a list of the exam's JSON: `list` leads to the list. An entry that is a text stands as an object here. */
export interface ExamEntry {
  readonly list: readonly string[];
  readonly entry: Json;
}

/** What was stated in an exam, as entries of its JSON with one side each; read again they are the same exam. */
export function examEntries(exam: Exam): readonly ExamEntry[] {
  return [
    ...exam.history.map(statementEntry),
    ...exam.findings.filter(({ origin }) => origin === 'recorded').map(findingEntry),
    ...exam.scales.map(scaleEntry),
    ...exam.otherwiseNormal.map(normalEntry),
    ...exam.results.map(resultEntry),
    ...requestEntries(exam),
  ];
}

const listOfKind = {
  symptom: 'symptoms',
  condition: 'conditions',
  exposure: 'exposures',
  family: 'family',
  medication: 'medications',
} as const satisfies Record<HistoryStatement['kind'], HistoryList>;

function statementEntry({ kind, key, present, relation, side }: HistoryStatement): ExamEntry {
  const entry = { key, present, ...(relation && { relation }), ...(side && { side }) };
  return { list: ['history', listOfKind[kind]], entry };
}

const placeProperty: Readonly<Record<FindingPlace['kind'], string | null>> = {
  'body-part': 'site',
  landmark: 'site',
  dermatome: 'dermatome',
  territory: 'territory',
  'level-below': 'levelBelow',
  // Only what was declared normal is about a region.
  region: null,
};

function findingEntry({ item, side, place, value, notTested, reinforced, note }: Finding): ExamEntry {
  const { itemProperty } = sectionOf(item.section);
  const where = place === undefined ? null : placeProperty[place.kind];
  return {
    list: ['findings', item.section],
    entry: {
      ...(itemProperty === null ? {} : { [itemProperty]: item.key }),
      ...(where === null || place === undefined ? {} : { [where]: place.key }),
      ...(side === 'midline' ? {} : { side }),
      ...(value === null ? {} : { [valueProperty(item)]: item.scale === 'presence' ? value === 'present' : value }),
      ...(notTested === undefined ? {} : { notTested }),
      ...(reinforced === undefined ? {} : { reinforced }),
      ...(note === undefined ? {} : { note }),
    },
  };
}

function scaleEntry({ scale, parts, notTested, note }: ScoredScale): ExamEntry {
  const scored = Object.entries(parts).filter(([, score]) => score !== null);
  const absent = Object.entries(notTested).map(([part, reason]) => [part, { notTested: reason }] as const);
  return {
    list: ['findings', 'higherFunction' satisfies SectionKey],
    entry: { scale, ...Object.fromEntries([...scored, ...absent]), ...(note === undefined ? {} : { note }) },
  };
}

function normalEntry({ section, region, side }: NormalStatement): ExamEntry {
  return { list: ['otherwiseNormal'], entry: { section, ...(region && { region }), ...(side && { side }) } };
}

/** As the options of the form set them. */
function requestEntries({ requests }: Exam): readonly ExamEntry[] {
  const list = ['requests'];
  if (requests === undefined) return [];
  return requests.length === 0 ? [{ list, entry: { none: true } }] : requests.map((key) => ({ list, entry: { key } }));
}

function resultEntry({ key, quantity, comparator, value, note }: InvestigationResult): ExamEntry {
  const measured = quantity && {
    value: quantity.value,
    ...(comparator && { comparator }),
    unit: quantity.unit,
    system: systems.ucum,
    code: quantity.unit,
  };
  return {
    list: ['results'],
    entry: {
      key,
      ...(measured && { valueQuantity: measured }),
      ...(value === undefined ? {} : { value }),
      ...(note === undefined ? {} : { note }),
    },
  };
}
