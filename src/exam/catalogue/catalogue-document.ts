import { bodyParts, type Region, regions } from '../../anatomy/body-parts.ts';
import { dermatomes } from '../../anatomy/dermatomes.ts';
import { landmarks } from '../../anatomy/landmarks.ts';
import type { Ontology } from '../../anatomy/ontology.ts';
import { segments } from '../../anatomy/segments.ts';
import { dermatomeKeys } from '../../anatomy/skin.ts';
import { territories } from '../../anatomy/territories.ts';
import { systems } from '../../terminology/systems.ts';
import { notTestedReasons } from '../finding.ts';
import { usualUnits } from '../results/usual-units.ts';
import { scales } from '../scales.ts';
import { itemsOf } from './catalogue.ts';
import { comaScale } from './coma-scale.ts';
import { type HistoryList, historyListKeys, historyLists } from './history.ts';
import type { HistoryRow } from './history-row.ts';
import { type Investigation, investigations } from './investigations.ts';
import { type CodeLink, type Item, itemId } from './item.ts';
import { type NamedList, otherNamesOf } from './other-names.ts';
import type { ResultRow } from './result-row.ts';
import { resultRows } from './results.ts';
import { routineSteps } from './routine.ts';
import { sections } from './sections.ts';

const coded = (system: string, link: Ontology | CodeLink, value?: string) => ({
  system,
  code: link.code,
  display: link.display,
  ...('relation' in link && { relation: link.relation }),
  ...(value !== undefined && { value }),
});

function codesOf(item: Item) {
  return [
    ...(item.loinc ? [coded(systems.loinc, item.loinc)] : []),
    ...(item.hpo ? [coded(systems.hpo, item.hpo)] : []),
    ...Object.entries(item.hpoByValue ?? {}).map(([value, link]) => coded(systems.hpo, link, value)),
  ];
}

/** Nothing for a key that has no other name. */
function alsoCalled(list: NamedList, key: string): { readonly otherNames?: readonly string[] } {
  const names = otherNamesOf(list, key);
  return names.length === 0 ? {} : { otherNames: names };
}

function itemEntry(item: Item) {
  const scale = item.scale === 'beats' ? undefined : scales[item.scale];
  return {
    key: item.key,
    id: itemId(item),
    label: item.label,
    ...alsoCalled(item.section, item.key),
    sides: item.sides,
    region: item.region,
    ...(item.sites && { sites: item.sites, siteRequired: item.siteRequired ?? false }),
    ...(item.bodyPart !== undefined && { bodyPart: item.bodyPart }),
    scale: item.scale,
    property: scale?.property ?? 'beats',
    values: scale?.grades.map(({ key, label }) => ({ key, label })) ?? { minimum: 0, maximum: 99 },
    normal: scale?.normal ?? [],
    codes: codesOf(item),
  };
}

function historyEntry(list: HistoryList, row: HistoryRow) {
  const codes = [
    ...(row.hpo ? [coded(systems.hpo, row.hpo)] : []),
    ...(row.mondo ? [coded(systems.mondo, row.mondo)] : []),
  ];
  return { key: row.key, label: row.label, ...alsoCalled(list, row.key), codes };
}

function resultEntry(row: ResultRow) {
  const codes = row.loinc.map((link) => coded(systems.loinc, link));
  const { key, label, kind } = row;
  const named = { key, label, ...alsoCalled('results', key), kind, codes };
  if (row.kind === 'coded') return { ...named, values: row.values, normal: row.normal };
  const plausible = { low: row.plausible[0], high: row.plausible[1] };
  return { ...named, unit: row.unit, units: usualUnits(row), plausible };
}

function investigationEntry({ key, label, loinc }: Investigation) {
  const codes = loinc ? [{ system: systems.loinc, ...loinc }] : [];
  return { key, label, ...alsoCalled('investigations', key), codes };
}

const labelled = (rows: Readonly<Record<string, { readonly label: string; readonly region: Region }>>) =>
  Object.entries(rows).map(([key, { label, region }]) => ({ key, label, region }));

/** The whole catalogue as plain JSON: sections with their items, history, results, and the keys that say where. */
export function catalogueDocument() {
  return {
    sections: sections.map(({ key, label, itemProperty, loinc }) => ({
      section: key,
      label,
      itemProperty,
      ...(loinc && { codes: [coded(systems.loinc, loinc)] }),
      items: itemsOf(key).map(itemEntry),
    })),
    comaScale: {
      key: comaScale.key,
      label: comaScale.label,
      codes: [coded(systems.loinc, comaScale.panel), coded(systems.loinc, comaScale.total)],
      parts: comaScale.parts.map(({ key, label, loinc, scores }) => ({
        key,
        label,
        codes: [coded(systems.loinc, loinc)],
        scores,
      })),
    },
    history: Object.fromEntries(
      historyListKeys.map((list) => [list, historyLists[list].map((row) => historyEntry(list, row))]),
    ),
    results: resultRows.map(resultEntry),
    investigations: investigations.map(investigationEntry),
    places: {
      dermatomes: dermatomeKeys.map((key) => ({ key, label: dermatomes[key].label, region: dermatomes[key].region })),
      landmarks: labelled(landmarks),
      territories: labelled(territories),
      bodyParts: labelled(bodyParts),
      levels: segments,
    },
    routine: routineSteps,
    notTested: notTestedReasons,
    regions,
  };
}
