import { itemsOf } from '../exam/catalogue/catalogue.ts';
import { comaScale, type ScalePart } from '../exam/catalogue/coma-scale.ts';
import { type Item, itemId, type SectionKey, sectionCode, sectionKeys } from '../exam/catalogue/item.ts';
import { sectionOf } from '../exam/catalogue/sections.ts';
import { bodySides } from '../kernel/side.ts';
import type { EntryOf, FormItem } from './form-item.ts';
import { note } from './note.ts';
import {
  gradeOptions,
  notTestedOptions,
  scoreRange,
  sensationOptions,
  sideOptions,
  siteOptions,
} from './option-sets.ts';

/** A group for each section of the examination, in the order in which it is presented. */
export const findingGroups: readonly FormItem[] = sectionKeys.map((section) => ({
  linkId: sectionCode(section),
  text: sectionOf(section).label,
  type: 'group',
  items: [...(section === 'higherFunction' ? [comaScaleGroup()] : []), ...itemsOf(section).flatMap(itemQuestions)],
}));

/**
 * A paired item has a question for each side. One that may be at several places, or with or without a side, is a group
 * that repeats, with the place and the side as questions of their own.
 */
function itemQuestions(item: Item): readonly FormItem[] {
  const isPlaced = item.section === 'sensation' || item.sites !== undefined;
  if (isPlaced || item.sides === 'optional') return [placedGroup(item)];
  if (item.sides === 'midline') return questions(item, itemId(item), item.label, {});
  return bodySides.flatMap((side) => questions(item, `${itemId(item)}.${side}`, `${item.label}, ${side}`, { side }));
}

/** A count needs its reason for being absent beside it; the reasons of a scale are among its answers. */
function questions(item: Item, linkId: string, text: string, fixed: Record<string, unknown>): readonly FormItem[] {
  const entry = entryOf(item, fixed);
  if (item.scale !== 'beats') return [{ ...valueQuestion(item, linkId, text), entry }];
  const beats: FormItem = {
    linkId,
    text: `${text}: beats, 99 for sustained`,
    type: 'integer',
    code: itemId(item),
    property: 'beats',
    entry,
    items: [note(linkId)],
  };
  const reason: FormItem = {
    linkId: `${linkId}.not-tested`,
    text: 'Not tested because',
    type: 'choice',
    options: notTestedOptions((notTested) => ({ notTested })),
    unless: linkId,
    entry,
    items: [note(`${linkId}.not-tested`)],
  };
  return [beats, reason];
}

function entryOf(item: Item, fixed: Record<string, unknown>): EntryOf {
  const { itemProperty } = sectionOf(item.section);
  return {
    list: ['findings', item.section],
    fixed: { ...(itemProperty === null ? {} : { [itemProperty]: item.key }), ...fixed },
  };
}

function valueQuestion(item: Item, linkId: string, text: string): FormItem {
  const options = gradeOptions[item.scale];
  if (options === undefined) throw new Error(`${itemId(item)} has no scale`);
  return {
    linkId,
    text,
    type: 'choice',
    code: itemId(item),
    options,
    items: [...(item.scale === 'reflex-grade' ? [reinforced(linkId)] : []), note(linkId)],
  };
}

function placedGroup(item: Item): FormItem {
  const id = itemId(item);
  const isSensation = item.section === 'sensation';
  const where = isSensation ? sensationOptions : item.sites && siteOptions(item.sites);
  const parts: FormItem[] = [];
  if (where !== undefined) {
    const required = isSensation || item.siteRequired === true;
    parts.push({ linkId: `${id}.site`, text: 'Where', type: 'choice', options: where, required });
  }
  if (item.sides !== 'midline') {
    const required = item.sides === 'paired';
    parts.push({ linkId: `${id}.side`, text: 'Side', type: 'choice', options: sideOptions, required });
  }
  return {
    linkId: `${id}.findings`,
    text: item.label,
    type: 'group',
    repeats: true,
    entry: entryOf(item, {}),
    items: [...parts, { ...valueQuestion(item, id, item.label), required: true }],
  };
}

function reinforced(linkId: string): FormItem {
  return { linkId: `${linkId}.reinforced`, text: 'With reinforcement', type: 'boolean', property: 'reinforced' };
}

function comaScaleGroup(): FormItem {
  const id = `${sectionCode('higherFunction' satisfies SectionKey)}/${comaScale.key}`;
  const [lowest, highest] = comaScale.totalRange;
  return {
    linkId: id,
    text: comaScale.label,
    type: 'group',
    entry: { list: ['findings', 'higherFunction'], fixed: { scale: comaScale.key } },
    items: [
      ...comaScale.parts.flatMap((part) => comaScalePart(id, part)),
      {
        linkId: `${id}.total`,
        text: `Total, ${lowest} to ${highest}: only as a check of the parts`,
        type: 'integer',
        property: 'total',
      },
      note(id),
    ],
  };
}

function comaScalePart(id: string, part: ScalePart): readonly FormItem[] {
  const linkId = `${id}.${part.key}`;
  const [lowest, highest] = scoreRange(part);
  return [
    { linkId, text: `${part.label}, ${lowest} to ${highest}`, type: 'integer', property: part.key },
    {
      linkId: `${linkId}.not-tested`,
      text: 'Not tested because',
      type: 'choice',
      options: notTestedOptions((notTested) => ({ [part.key]: { notTested } })),
      unless: linkId,
    },
  ];
}
