import { segments } from '../../anatomy/segments.ts';
import { dermatomeKeys } from '../../anatomy/skin.ts';
import { dermatomesBelow, landmarkKeys, territoryKeys } from '../../anatomy/skin-places.ts';
import { itemsOf } from '../catalogue/catalogue.ts';
import { comaScale, type ScalePart } from '../catalogue/coma-scale.ts';
import type { Item, SectionKey } from '../catalogue/item.ts';
import { sectionOf } from '../catalogue/sections.ts';
import { type Scale, scales } from '../scales.ts';
import { closedObject, definition, ifThen, type JsonSchema, listOf, oneOfKeys } from './json-schema.ts';

/** Properties of a sensory finding that say where it was made; exactly one is given. */
export const placeProperties = ['site', 'dermatome', 'territory', 'levelBelow'] as const;
type PlaceProperty = (typeof placeProperties)[number];

/** Schema of the list of one section, built from its rows of the catalogue. */
export function sectionSchema(section: SectionKey): JsonSchema {
  const { label } = sectionOf(section);
  const items = union(section, shapesOf(section));
  return listOf(
    section === 'higherFunction' ? ifThen({ required: ['scale'] }, comaScaleSchema, items) : items,
    section === 'sensation' ? 1000 : 400,
    label,
  );
}

/** The property that holds the value of an item: `grade`, `present`, `beats` ... */
export function valueProperty(item: Item): string {
  return item.scale === 'beats' ? 'beats' : scales[item.scale].property;
}

/** Rows of a section in groups that take the same properties with the same values, in catalogue order. */
function shapesOf(section: SectionKey): readonly (readonly Item[])[] {
  const shapes = new Map<string, Item[]>();
  for (const item of itemsOf(section)) {
    const shape = JSON.stringify([item.scale, item.sides, item.sites ?? null, item.siteRequired ?? false]);
    const same = shapes.get(shape);
    if (same === undefined) shapes.set(shape, [item]);
    else same.push(item);
  }
  return [...shapes.values()];
}

/**
 * A choice by the property that names the item. Written with `if` instead of `oneOf`, so that a validator looks at the
 * one shape that is meant and its error names the one property that is wrong.
 */
function union(section: SectionKey, shapes: readonly (readonly Item[])[]): JsonSchema {
  const [only] = shapes;
  const { itemProperty } = sectionOf(section);
  if (only !== undefined && shapes.length === 1) return shapeSchema(section, only);
  if (itemProperty === null) throw new Error(`Section ${section} has several shapes but nothing to tell them apart`);
  const keysOf = (items: readonly Item[]): readonly string[] => items.map((item) => item.key);
  return {
    type: 'object',
    required: [itemProperty],
    properties: { [itemProperty]: oneOfKeys(shapes.flatMap(keysOf)) },
    allOf: shapes.map((items) =>
      ifThen(
        { required: [itemProperty], properties: { [itemProperty]: { enum: keysOf(items) } } },
        shapeSchema(section, items),
      ),
    ),
  };
}

function shapeSchema(section: SectionKey, items: readonly Item[]): JsonSchema {
  const [first] = items;
  if (first === undefined) throw new Error(`Section ${section} has no items`);
  const { itemProperty } = sectionOf(section);
  const value = valueProperty(first);
  const properties: Record<string, JsonSchema> = {};
  const required: string[] = [];
  if (itemProperty !== null) {
    properties[itemProperty] = oneOfKeys(items.map((item) => item.key));
    required.push(itemProperty);
  }
  if (first.sites !== undefined && itemProperty !== 'site') {
    properties.site = oneOfKeys(first.sites, 'the body part at which the sign is');
    if (first.siteRequired === true) required.push('site');
  }
  if (first.sides !== 'midline') properties.side = definition('side');
  if (first.sides === 'paired') required.push('side');
  if (section === 'sensation') Object.assign(properties, sensationPlaces);
  properties[value] = valueSchema(first);
  if (first.scale === 'reflex-grade') {
    properties.reinforced = { type: 'boolean', description: 'whether it was elicited with reinforcement' };
  }
  properties.notTested = definition('notTested');
  properties.note = definition('note');
  return closedObject(properties, required, {
    ...(section === 'sensation' ? { oneOf: placeProperties.map((place) => ({ required: [place] })) } : {}),
    ...ifThen({ required: ['notTested'] }, { not: { required: [value] } }, { required: [value] }),
  });
}

const sensationPlaces: Readonly<Record<PlaceProperty, JsonSchema>> = {
  site: oneOfKeys(landmarkKeys, 'a landmark'),
  dermatome: oneOfKeys(dermatomeKeys, 'a dermatome, such as "L5"'),
  territory: oneOfKeys(territoryKeys, 'the territory of a cutaneous nerve'),
  levelBelow: oneOfKeys(
    segments.filter((segment) => dermatomesBelow(segment).length > 0),
    'everything below this segment, such as "T10"',
  ),
};

function valueSchema(item: Item): JsonSchema {
  if (item.scale === 'beats') {
    return {
      type: 'integer',
      minimum: 0,
      maximum: 99,
      description: 'the number of beats; 99 stands for sustained clonus',
    };
  }
  const scale: Scale = scales[item.scale];
  if (item.scale === 'presence') {
    return { type: 'boolean', description: 'true when the sign is there, false when it was looked for and is not' };
  }
  return oneOfKeys(
    scale.grades.map((grade) => grade.key),
    scale.label,
  );
}

const comaScaleParts = comaScale.parts.map((part) => part.key);

const comaScaleSchema: JsonSchema = closedObject(
  {
    scale: { const: comaScale.key, description: `a scored scale: ${comaScale.key}` },
    ...Object.fromEntries(comaScale.parts.map((part) => [part.key, comaScalePartSchema(part)])),
    total: {
      type: 'integer',
      minimum: comaScale.totalRange[0],
      maximum: comaScale.totalRange[1],
      description: 'the sum of the parts; computed when absent',
    },
    notTested: definition('notTested'),
    note: definition('note'),
  },
  ['scale'],
  {
    ...ifThen(
      { required: ['notTested'] },
      { not: { anyOf: [...comaScaleParts, 'total'].map((part) => ({ required: [part] })) } },
      { required: comaScaleParts },
    ),
  },
);

function comaScalePartSchema(part: ScalePart): JsonSchema {
  const scores = part.scores.map(({ score }) => score);
  const [minimum, maximum] = [Math.min(...scores), Math.max(...scores)];
  const description = `${part.label.toLowerCase()}, ${minimum} to ${maximum}, or { "notTested": reason }`;
  return {
    ...ifThen({ type: 'object' }, closedObject({ notTested: definition('notTested') }, ['notTested']), {
      type: 'integer',
      minimum,
      maximum,
      description,
    }),
    description,
  };
}
