import { describe, expect, it } from 'vitest';
import { bodyPartTable, regions } from '../../src/anatomy/body-parts.ts';
import { movementTable } from '../../src/anatomy/movements.ts';
import { placeTable } from '../../src/anatomy/places.ts';
import { facultyKeys } from '../../src/anatomy/probe.ts';
import { reflexTable } from '../../src/anatomy/reflexes.ts';
import { isSegment } from '../../src/anatomy/segments.ts';
import { itemById, items } from '../../src/exam/catalogue/catalogue.ts';
import { comaScale } from '../../src/exam/catalogue/coma-scale.ts';
import { historyListKeys, historyLists, historyRows } from '../../src/exam/catalogue/history.ts';
import { type CodeLink, type Item, itemId } from '../../src/exam/catalogue/item.ts';
import { resultByLoinc, resultRows } from '../../src/exam/catalogue/results.ts';
import { sections } from '../../src/exam/catalogue/sections.ts';
import { convertUnit } from '../../src/exam/results/ucum.ts';
import { scales } from '../../src/exam/scales.ts';
import type { Source } from '../../src/kernel/cite.ts';
import { works } from '../../src/kernel/works.ts';
import { loincCheckDigit } from '../support/code-systems.ts';

const kebabCase = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const repeated = (values: readonly string[]) => values.filter((value, index) => values.indexOf(value) !== index);
const hpoLinks = (item: Item): readonly CodeLink[] => [
  ...(item.hpo ? [item.hpo] : []),
  ...Object.values(item.hpoByValue ?? {}),
];

/** What a probe names that is not in the tables it points into. */
function unresolved({ probe }: Item): readonly string[] {
  const faculties: ReadonlySet<string> = new Set(facultyKeys);
  switch (probe.kind) {
    case 'movement':
      return [probe.movement].filter((key) => !movementTable.has(key));
    case 'reflex':
    case 'clonus':
      return [probe.reflex].filter((key) => !reflexTable.has(key));
    case 'weakness-of':
      return [...probe.movements, ...(probe.butKept ?? [])].filter((key) => !movementTable.has(key));
    case 'faculty':
      return [probe.faculty, ...(probe.orAlso ?? [])].filter((key) => !faculties.has(key));
    case 'provocation': {
      const roots = Object.keys(probe.roots ?? {});
      const places = probe.places ?? [];
      if (roots.length + places.length === 0) return ['nothing provoked'];
      return [
        ...roots.filter((root) => !isSegment(root)),
        ...places.filter((place) => !Object.hasOwn(placeTable, place)),
      ];
    }
    default:
      return [];
  }
}

describe('the items', () => {
  it('have one id each', () => {
    expect(repeated(items.map(itemId))).toEqual([]);
    expect(itemById.size).toBe(items.length);
  });

  it('have keys in kebab case', () => {
    expect(items.map(({ key }) => key).filter((key) => !kebabCase.test(key))).toEqual([]);
  });

  it('have labels that differ within a section', () => {
    expect(repeated(items.map(({ section, label }) => `${section}: ${label}`))).toEqual([]);
  });

  it('name their source among the works', () => {
    const sources: readonly Source[] = [...items, ...historyRows, ...resultRows, comaScale].map(({ source }) => source);
    expect(sources.filter(({ work }) => !Object.hasOwn(works, work))).toEqual([]);
  });

  it('have probes that lead to rows of the anatomy', () => {
    expect(items.flatMap((item) => unresolved(item).map((what) => `${itemId(item)}: ${what}`))).toEqual([]);
  });

  it('have body parts and regions that exist', () => {
    const parts = items.flatMap(({ sites, bodyPart }) => [
      ...(sites ?? []),
      ...(bodyPart === undefined ? [] : [bodyPart]),
    ]);
    expect(parts.filter((part) => !bodyPartTable.has(part))).toEqual([]);
    expect(items.filter(({ region }) => !regions.includes(region)).map(itemId)).toEqual([]);
  });

  it('have only sites with two sides where a side must be given', () => {
    const oneSided = items.filter(
      ({ sides, sites }) => sides === 'paired' && sites?.some((site) => bodyPartTable.get(site)?.paired === false),
    );
    expect(oneSided.map(itemId)).toEqual([]);
  });

  it('are placed at their sites or at a body part of their own, not both', () => {
    expect(items.filter(({ sites, bodyPart }) => sites !== undefined && bodyPart !== undefined).map(itemId)).toEqual(
      [],
    );
  });

  it('have a term by value only for values of their scale that are not normal', () => {
    const wrong = items.flatMap((item) => {
      if (item.scale === 'beats') return item.hpoByValue === undefined ? [] : [itemId(item)];
      const scale = scales[item.scale];
      const abnormal = new Set<string>(
        scale.grades.map(({ key }) => key).filter((key) => !scale.normal.some((one) => one === key)),
      );
      return Object.keys(item.hpoByValue ?? {})
        .filter((value) => !abnormal.has(value))
        .map((value) => `${itemId(item)}: ${value}`);
    });
    expect(wrong).toEqual([]);
  });
});

describe('the codes', () => {
  it('of HPO look like HPO codes and carry a label', () => {
    const links = [...items.flatMap(hpoLinks), ...historyRows.flatMap(({ hpo }) => (hpo ? [hpo] : []))];
    expect(links.filter(({ code, display }) => !/^HP:\d{7}$/.test(code) || display === '')).toEqual([]);
  });

  it('carry one label for each code', () => {
    const all = [
      ...items.flatMap((item) => [...hpoLinks(item), ...(item.loinc ? [item.loinc] : [])]),
      ...historyRows.flatMap(({ hpo, mondo }) => [...(hpo ? [hpo] : []), ...(mondo ? [mondo] : [])]),
    ];
    const labels = new Map<string, string>();
    for (const { code, display } of all) expect(labels.set(code, labels.get(code) ?? display).get(code)).toBe(display);
  });

  it('say the same as one item only', () => {
    const owners = items.flatMap((item) => {
      const same = hpoLinks(item).filter(({ relation }) => relation === 'equivalent');
      return [...new Set(same.map(({ code }) => code))];
    });
    expect(repeated(owners)).toEqual([]);
  });

  it('of MONDO look like MONDO codes', () => {
    const codes = historyRows.flatMap(({ mondo }) => (mondo ? [mondo.code] : []));
    expect(codes.filter((code) => !/^MONDO:\d{7}$/.test(code))).toEqual([]);
  });

  it('of LOINC end with their check digit', () => {
    expect(loincCheckDigit('12345')).toBe(5);
    const codes = [
      ...items.flatMap(({ loinc }) => (loinc ? [loinc.code] : [])),
      ...sections.flatMap(({ loinc }) => (loinc ? [loinc.code] : [])),
      ...resultRows.flatMap(({ loinc }) => loinc.map(({ code }) => code)),
      ...[comaScale.panel, comaScale.total, ...comaScale.parts.map(({ loinc }) => loinc)].map(({ code }) => code),
    ];
    const wrong = codes.filter((code) => {
      const [number = '', digit] = code.split('-');
      return !/^\d+-\d$/.test(code) || loincCheckDigit(number) !== Number(digit);
    });
    expect(wrong).toEqual([]);
  });
});

describe('the history', () => {
  it('has keys in kebab case', () => {
    expect(historyRows.map(({ key }) => key).filter((key) => !kebabCase.test(key))).toEqual([]);
  });

  it('has no key twice, except that relatives may have what the person has', () => {
    const own = historyListKeys.filter((list) => list !== 'family').flatMap((list) => historyLists[list]);
    expect(repeated(own.map(({ key }) => key))).toEqual([]);
    expect(repeated(historyLists.family.map(({ key }) => key))).toEqual([]);
  });
});

describe('the results', () => {
  it('have one key each, in kebab case', () => {
    const keys = resultRows.map(({ key }) => key);
    expect(repeated(keys)).toEqual([]);
    expect(keys.filter((key) => !kebabCase.test(key))).toEqual([]);
  });

  it('share no LOINC code', () => {
    const codes = resultRows.flatMap(({ loinc }) => loinc.map(({ code }) => code));
    expect(repeated(codes)).toEqual([]);
    expect(resultByLoinc.size).toBe(codes.length);
  });

  it('have limits in order, and a positive molar mass', () => {
    for (const row of resultRows) {
      if (row.kind !== 'quantity') continue;
      expect(row.plausible[0], row.key).toBeLessThan(row.plausible[1]);
      expect(row.molarMass ?? 1, row.key).toBeGreaterThan(0);
    }
  });

  it('have units that UCUM knows, and a molar mass where mass must turn into amount', () => {
    for (const row of resultRows) {
      if (row.kind !== 'quantity') continue;
      for (const unit of [row.unit, ...(row.lines ?? []).map((line) => line.unit)]) {
        expect(convertUnit(1, unit, unit), `${row.key}: ${unit}`).toBeCloseTo(1, 9);
      }
      if (row.molarMass !== undefined) expect(convertUnit(1, 'mg/dL', row.unit, row.molarMass), row.key).not.toBeNull();
    }
  });

  it('have values with one key each, some normal and some not', () => {
    for (const row of resultRows) {
      if (row.kind !== 'coded') continue;
      const keys = row.values.map(({ key }) => key);
      expect(repeated(keys), row.key).toEqual([]);
      expect(row.normal.length, row.key).toBeGreaterThan(0);
      expect(
        row.normal.every((key) => keys.includes(key)),
        row.key,
      ).toBe(true);
      expect(keys.length, row.key).toBeGreaterThan(row.normal.length);
    }
  });
});
