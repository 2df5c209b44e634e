import type { Questionnaire, QuestionnaireItem } from 'fhir/r4.js';
import { items, itemsOf } from '../../exam/catalogue/catalogue.ts';
import { type Item, itemId, sectionCode, sectionKeys } from '../../exam/catalogue/item.ts';
import { sectionOf } from '../../exam/catalogue/sections.ts';
import { bodySides } from '../../kernel/side.ts';
import { systems } from '../../terminology/systems.ts';
import { header, type Release, valueSetUrl } from './header.ts';

/**
 * The examination as a form: a group for each section, a question for each item and side, and beside each question the
 * reason why it could not be tested. An item that may be found at several places is a group that repeats, with the place
 * and the side as questions of their own. `linkId` is the item id, with `.left` or `.right` where a side is fixed.
 */
export function examQuestionnaire(release: Release): Questionnaire {
  return {
    ...header('Questionnaire', release, {
      id: 'neuro-exam',
      title: 'Neurological examination',
      description: `The ${items.length} items of the structured neurological examination by section. Every question may stay empty: what is not answered was not examined, and is not taken as normal.`,
    }),
    subjectType: ['Patient'],
    item: sectionKeys.map((section) => ({
      linkId: sectionCode(section),
      text: sectionOf(section).label,
      type: 'group',
      item: itemsOf(section).flatMap(itemQuestions),
    })),
  };
}

function itemQuestions(item: Item): QuestionnaireItem[] {
  if (item.section === 'sensation') return [placedGroup(item, 'sensation-sites')];
  if (item.sites !== undefined) return [placedGroup(item, 'body-parts')];
  if (item.sides === 'paired') return sidedQuestions(item);
  if (item.sides === 'optional') return [placedGroup(item, null)];
  return question(item, itemId(item), item.label);
}

function sidedQuestions(item: Item): QuestionnaireItem[] {
  return bodySides.flatMap((side) => question(item, `${itemId(item)}.${side}`, `${item.label}, ${side}`));
}

/** The value and, while it is empty, the reason for its absence. */
function question(item: Item, linkId: string, text: string): QuestionnaireItem[] {
  return [
    { linkId, code: codeOf(item), text, ...answer(item) },
    {
      linkId: `${linkId}.not-tested`,
      text: 'Not tested because',
      type: 'choice',
      enableWhen: [{ question: linkId, operator: 'exists', answerBoolean: false }],
      answerValueSet: valueSetUrl('not-tested-reasons'),
    },
  ];
}

function answer(item: Item): Pick<QuestionnaireItem, 'type' | 'answerValueSet'> {
  if (item.scale === 'beats') return { type: 'integer' };
  return { type: 'choice', answerValueSet: valueSetUrl(item.scale) };
}

/** @param places id of the ValueSet of places; null where only the side is asked for */
function placedGroup(item: Item, places: string | null): QuestionnaireItem {
  const id = itemId(item);
  const parts: QuestionnaireItem[] = [];
  if (places !== null) {
    parts.push({ linkId: `${id}.site`, text: 'Where', type: 'choice', answerValueSet: valueSetUrl(places) });
  }
  if (item.sides !== 'midline') {
    parts.push({ linkId: `${id}.side`, text: 'Side', type: 'choice', answerValueSet: valueSetUrl('sides') });
  }
  return {
    linkId: `${id}.findings`,
    text: item.label,
    type: 'group',
    repeats: true,
    item: [...parts, ...question(item, id, item.label)],
  };
}

function codeOf(item: Item): QuestionnaireItem['code'] {
  return [{ system: systems.examItem, code: itemId(item), display: item.label }];
}
