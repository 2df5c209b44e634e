import { describe, expect, it } from 'vitest';
import { dermatomeKeys } from '../../src/anatomy/skin.ts';
import { landmarkKeys, territoryKeys } from '../../src/anatomy/skin-places.ts';
import { findItem, hpoOf, itemById, items, itemsOf, normalValues } from '../../src/exam/catalogue/catalogue.ts';
import { catalogueDocument } from '../../src/exam/catalogue/catalogue-document.ts';
import { comaScale } from '../../src/exam/catalogue/coma-scale.ts';
import { findHistoryRow, historyLists } from '../../src/exam/catalogue/history.ts';
import { type Item, itemId, type SectionKey, sectionKeys } from '../../src/exam/catalogue/item.ts';
import { resultByKey, resultByLoinc } from '../../src/exam/catalogue/results.ts';
import { sectionOf, sections } from '../../src/exam/catalogue/sections.ts';

const signSections: readonly SectionKey[] = sectionKeys.filter(
  (key) => !['tone', 'clonus', 'power', 'reflexes', 'plantars', 'sensation'].includes(key),
);

function item(id: string): Item {
  const found = itemById.get(id);
  if (found === undefined) throw new Error(`no item ${id}`);
  return found;
}

describe('the size of the catalogue', () => {
  it('has every movement, reflex, modality and patch of skin that the contract promises', () => {
    expect(itemsOf('power').length).toBeGreaterThanOrEqual(55);
    expect(itemsOf('reflexes').length).toBeGreaterThanOrEqual(16);
    expect(itemsOf('sensation').map(({ key }) => key)).toEqual([
      'light-touch',
      'pinprick',
      'temperature',
      'vibration',
      'joint-position',
    ]);
    expect(dermatomeKeys).toHaveLength(28);
    expect(landmarkKeys.length).toBeGreaterThanOrEqual(40);
    expect(territoryKeys.length).toBeGreaterThanOrEqual(25);
  });

  it('has at least 130 signs, tests and tasks besides power, reflexes and sensation', () => {
    expect(signSections.flatMap(itemsOf).length).toBeGreaterThanOrEqual(130);
    for (const section of signSections) expect(itemsOf(section).length, section).toBeGreaterThanOrEqual(10);
  });

  it('has a history of every kind', () => {
    const sizes = Object.fromEntries(Object.entries(historyLists).map(([list, rows]) => [list, rows.length]));
    expect(sizes.symptoms).toBeGreaterThanOrEqual(45);
    expect(sizes.conditions).toBeGreaterThanOrEqual(35);
    expect(sizes.exposures).toBeGreaterThanOrEqual(20);
    expect(sizes.medications).toBeGreaterThanOrEqual(25);
    expect(sizes.family).toBeGreaterThanOrEqual(6);
  });

  it.each([
    ['I', 'anosmia'],
    ['II', 'reduced-visual-acuity'],
    ['III', 'third-nerve-palsy'],
    ['IV', 'fourth-nerve-palsy'],
    ['V', 'facial-numbness'],
    ['VI', 'sixth-nerve-palsy'],
    ['VII', 'facial-weakness'],
    ['VIII', 'hearing-loss'],
    ['IX', 'absent-gag-reflex'],
    ['X', 'palatal-weakness'],
    ['XI', 'trapezius-weakness'],
    ['XII', 'tongue-deviation'],
  ])('has a sign of cranial nerve %s', (_nerve, key) => {
    expect(findItem('cranialNerves', key)?.section).toBe('cranialNerves');
  });

  it('draws something from at least four of five items', () => {
    const drawn = items.filter(({ probe }) => probe.kind !== 'recorded-only');
    expect(drawn.length / items.length).toBeGreaterThan(0.8);
  });
});

describe('look-ups', () => {
  it('finds every item by section and key, and by its id', () => {
    for (const one of items) {
      expect(findItem(one.section, one.key)).toBe(one);
      expect(itemById.get(itemId(one))).toBe(one);
    }
  });

  it('finds nothing for keys that every object has', () => {
    for (const key of ['__proto__', 'constructor', 'toString', '']) {
      expect(findItem('gait', key)).toBeUndefined();
      expect(findHistoryRow('symptoms', key)).toBeUndefined();
      expect(resultByKey.get(key)).toBeUndefined();
      expect(resultByLoinc.get(key)).toBeUndefined();
    }
  });

  it('presents the items in the order of the sections', () => {
    const order = items.map(({ section }) => sectionKeys.indexOf(section));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(sections.map(({ key }) => key)).toEqual([...sectionKeys]);
  });

  it('names the property of the finding that names the item', () => {
    expect(sectionOf('power').itemProperty).toBe('movement');
    expect(sectionOf('reflexes').itemProperty).toBe('reflex');
    expect(sectionOf('gait').itemProperty).toBe('sign');
    expect(sectionOf('plantars').itemProperty).toBeNull();
  });

  it('takes HbA1c under each way of reporting it', () => {
    for (const code of ['4548-4', '17856-6', '59261-8']) expect(resultByLoinc.get(code)?.key).toBe('hba1c');
  });
});

describe('the HPO term of a value', () => {
  it('is the term of the item for a weak movement, and none for a strong one', () => {
    const dorsiflexion = item('power/ankle-dorsiflexion');
    expect(hpoOf(dorsiflexion, '3')?.display).toBe('Foot dorsiflexor weakness');
    expect(hpoOf(dorsiflexion, '5')).toBeUndefined();
  });

  it('tells a lost reflex from a brisk one', () => {
    const ankle = item('reflexes/ankle');
    expect(hpoOf(ankle, '0')?.display).toBe('Absent Achilles reflex');
    expect(hpoOf(ankle, '1')?.display).toBe('Decreased Achilles reflex');
    expect(hpoOf(ankle, '4')?.display).toBe('Hyperactive Achilles reflex');
    expect(hpoOf(ankle, '2')).toBeUndefined();
  });

  it('calls only an extensor plantar response a Babinski sign', () => {
    const plantar = item('plantars/plantar-response');
    expect(hpoOf(plantar, 'extensor')?.display).toBe('Babinski sign');
    expect(hpoOf(plantar, 'mute')).toBeUndefined();
    expect(hpoOf(plantar, 'equivocal')).toBeUndefined();
  });

  it('does not call increased feeling a loss', () => {
    expect(hpoOf(item('sensation/pinprick'), 'reduced')?.display).toBe('Impaired pain sensation');
    expect(hpoOf(item('sensation/pinprick'), 'increased')).toBeUndefined();
  });

  it('does not call clumsiness in proportion to weakness dysmetria', () => {
    expect(hpoOf(item('coordination/finger-nose'), 'impaired')?.display).toBe('Upper limb dysmetria');
    expect(hpoOf(item('coordination/finger-nose'), 'impaired-by-weakness')).toBeUndefined();
  });

  it('asks for four beats of clonus', () => {
    expect(hpoOf(item('clonus/ankle'), 3)).toBeUndefined();
    expect(hpoOf(item('clonus/ankle'), 4)?.display).toBe('Ankle clonus');
  });

  it('leaves an equivocal test without a term', () => {
    expect(hpoOf(item('special-tests/hoffmann'), 'positive')?.display).toBe('Hoffmann sign');
    expect(hpoOf(item('special-tests/hoffmann'), 'equivocal')).toBeUndefined();
  });
});

describe('the coma scale', () => {
  it('runs from 3 to 15 by its parts', () => {
    const best = comaScale.parts.map(({ scores }) => Math.max(...scores.map(({ score }) => score)));
    const worst = comaScale.parts.map(({ scores }) => Math.min(...scores.map(({ score }) => score)));
    expect(best).toEqual([4, 5, 6]);
    expect(worst).toEqual([1, 1, 1]);
    expect(comaScale.totalRange).toEqual([3, 15]);
  });
});

describe('the catalogue as a document', () => {
  const document = catalogueDocument();

  it('is plain JSON that survives being written and read', () => {
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
  });

  it('lists section, key, label, sides, values and codes of every item', () => {
    const entries = document.sections.flatMap((section) => section.items);
    expect(entries.map(({ id }) => id)).toEqual(items.map(itemId));
    const ankle = entries.find(({ id }) => id === 'power/ankle-dorsiflexion');
    expect(ankle).toMatchObject({
      key: 'ankle-dorsiflexion',
      sides: 'paired',
      property: 'grade',
      normal: ['5'],
      codes: [{ code: 'HP:0009027', relation: 'equivalent' }],
    });
  });

  it('lists the places and reasons that a finding may name', () => {
    expect(document.places.dermatomes).toHaveLength(28);
    expect(document.places.landmarks.map(({ key }) => key)).toContain('dorsum-of-foot');
    expect(document.notTested).toContain('limb-absent');
    expect(document.regions).toContain('lower-limbs');
  });

  it('has a normal value for every item that is not counted', () => {
    for (const one of items)
      if (one.scale !== 'beats') expect(normalValues(one).length, itemId(one)).toBeGreaterThan(0);
  });
});
