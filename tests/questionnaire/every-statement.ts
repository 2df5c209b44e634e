import { dermatomeKeys } from '../../src/anatomy/skin.ts';
import { landmarkKeys, territoryKeys } from '../../src/anatomy/skin-places.ts';
import { itemsOf } from '../../src/exam/catalogue/catalogue.ts';
import { historyListKeys, historyLists } from '../../src/exam/catalogue/history.ts';
import { investigationKeys } from '../../src/exam/catalogue/investigations.ts';
import type { Item } from '../../src/exam/catalogue/item.ts';
import { resultRows } from '../../src/exam/catalogue/results.ts';
import { sections } from '../../src/exam/catalogue/sections.ts';
import { familyRelations } from '../../src/exam/exam.ts';
import { notTestedReasons } from '../../src/exam/finding.ts';
import { scales } from '../../src/exam/scales.ts';

export interface Statement {
  readonly list: readonly string[];
  readonly entry: Readonly<Record<string, unknown>> | string;
  /** What it is about: two statements of one thing may contradict each other. */
  readonly about: string;
}

type Entry = Record<string, unknown>;

/**
 * One entry of the exam's JSON for each value of each item, on the sides and at places in turn, for each statement of the
 * history, each result, each section that can be declared normal, and each investigation that can be wanted. Reasons for not testing go round. Limb loss is left
 * out: it forbids values elsewhere.
 */
export function everyStatement(): readonly Statement[] {
  return [
    ...sections.flatMap(({ key, itemProperty }) =>
      itemsOf(key).flatMap((item) => findingEntries(item).map((entry) => finding(key, itemProperty, item, entry))),
    ),
    scale({ eye: 4, verbal: 5, motor: 6, total: 15, note: 'Invented.' }),
    scale({ eye: 1, verbal: { notTested: 'unable' }, motor: 3 }),
    scale({ notTested: 'declined' }),
    ...historyListKeys.flatMap((list) =>
      historyLists[list].flatMap(({ key }, index) =>
        [true, false].map((present) => ({
          list: ['history', list],
          entry: { key, present, ...detail(list, index) },
          about: `${list}/${key}`,
        })),
      ),
    ),
    ...sections.flatMap(({ key: section }) => [
      { list: ['otherwiseNormal'], entry: { section }, about: `normal/${section}` },
      ...(section === 'power'
        ? [{ list: ['otherwiseNormal'], entry: { section, region: 'lower-limbs', side: 'both' }, about: 'normal/legs' }]
        : []),
    ]),
    ...resultRows.map((row): Statement => {
      const entry =
        row.kind === 'quantity'
          ? { valueQuantity: { value: row.plausible[0], comparator: '>=', unit: row.unit, code: row.unit } }
          : { value: row.values.at(-1)?.key, note: 'Invented.' };
      return { list: ['results'], entry: { key: row.key, ...entry }, about: `results/${row.key}` };
    }),
    // Not all at once, since a response has a greatest size.
    ...investigationKeys.map((entry, index) => ({ list: ['requests'], entry, about: `requests/${index % 15}` })),
  ];
}

const sides = ['left', 'right', 'both'];

function detail(list: string, index: number): Entry {
  if (list === 'symptoms') return index % 2 === 0 ? {} : { side: sides[index % 3] };
  if (list === 'family') return index % 2 === 0 ? {} : { relation: familyRelations[index % familyRelations.length] };
  return {};
}

function findingEntries(item: Item): readonly Entry[] {
  const values: Entry[] =
    item.scale === 'beats'
      ? [{ beats: 0 }, { beats: 99, note: 'Invented.' }]
      : scales[item.scale].grades.map(({ key }) =>
          item.scale === 'presence' ? { present: key === 'present' } : { [scales[item.scale as 'tone'].property]: key },
        );
  const all: readonly Entry[] = [
    ...values,
    ...notTestedReasons.filter((one) => one !== 'limb-absent').map((notTested) => ({ notTested })),
  ];
  // A lost part forbids values elsewhere; a test of its own says that it goes through.
  const harmless = all.filter((value) => item.key !== 'amputation' || value.present !== true);
  return harmless.map((value, index) => ({
    ...value,
    ...placeOf(item, index),
    ...(item.sides === 'paired' ? { side: sides[index % 3] } : {}),
    ...(item.sides === 'optional' ? { side: sides[index % 2] } : {}),
    ...(item.scale === 'reflex-grade' && index % 2 === 0 ? { reinforced: index % 4 === 0 } : {}),
    ...(index % 5 === 1 ? { note: `Invented, ${index}.` } : {}),
  }));
}

function placeOf(item: Item, index: number): Entry {
  if (item.section === 'sensation') {
    const places = [
      { site: landmarkKeys[index] },
      { dermatome: dermatomeKeys[index] },
      { territory: territoryKeys[index] },
      { levelBelow: 'T10' },
    ];
    return places[index % 4] ?? {};
  }
  if (item.sites === undefined || item.key === 'amputation')
    return item.sites === undefined ? {} : { site: item.sites[0] };
  return item.siteRequired === true || index % 2 === 0 ? { site: item.sites[index % item.sites.length] } : {};
}

function finding(section: string, itemProperty: string | null, item: Item, entry: Entry): Statement {
  const { present: _p, note: _n, ...rest } = entry;
  const place = [
    rest.dermatome,
    rest.territory,
    rest.levelBelow,
    item.sites || section === 'sensation' ? rest.site : '',
  ];
  return {
    list: ['findings', section],
    entry: { ...(itemProperty === null ? {} : { [itemProperty]: item.key }), ...entry },
    about: `${section}/${item.key}/${place.join('.')}`,
  };
}

function scale(parts: Entry): Statement {
  return {
    list: ['findings', 'higherFunction'],
    entry: { scale: 'glasgow-coma-scale', ...parts },
    about: 'coma scale',
  };
}
