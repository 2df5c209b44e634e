import { type HistoryList, historyListKeys, historyLists } from '../exam/catalogue/history.ts';
import type { HistoryRow } from '../exam/catalogue/history-row.ts';
import type { FormItem } from './form-item.ts';
import { courseOptions, paceOptions, relationOptions, sideOptions } from './option-sets.ts';

const listTexts = {
  symptoms: 'Symptoms',
  conditions: 'Conditions',
  exposures: 'Exposures',
  family: 'Family history',
  medications: 'Medications',
} as const satisfies Record<HistoryList, string>;

/** What is known besides the examination: onset and course, then each statement as yes or no. */
export const historyGroup: FormItem = {
  linkId: 'history',
  text: 'History',
  type: 'group',
  items: [
    {
      linkId: 'history/onset-pace',
      text: 'How fast it came on',
      type: 'choice',
      options: paceOptions,
      target: ['history', 'onset'],
    },
    {
      linkId: 'history/onset-duration-days',
      text: 'Days since it began',
      type: 'decimal',
      target: ['history', 'onset'],
      property: 'durationDays',
    },
    { linkId: 'history/course', text: 'Course', type: 'choice', options: courseOptions, target: ['history'] },
    ...historyListKeys.map(
      (list): FormItem => ({
        linkId: `history/${list}`,
        text: listTexts[list],
        type: 'group',
        items: historyLists[list].map((row) => statement(list, row)),
      }),
    ),
  ],
};

/** A symptom may be stated of each side, and a disorder of several relatives, so these are groups that repeat. */
function statement(list: HistoryList, { key, label }: HistoryRow): FormItem {
  const linkId = `history/${list}/${key}`;
  const entry = { list: ['history', list], fixed: { key } };
  const present: FormItem = { linkId, text: label, type: 'boolean', property: 'present' };
  const detail = detailOf(list, linkId);
  if (detail === null) return { ...present, entry };
  return {
    linkId: `${linkId}.statements`,
    text: label,
    type: 'group',
    repeats: true,
    entry,
    items: [{ ...present, required: true }, detail],
  };
}

function detailOf(list: HistoryList, linkId: string): FormItem | null {
  if (list === 'symptoms') return { linkId: `${linkId}.side`, text: 'Side', type: 'choice', options: sideOptions };
  if (list === 'family') {
    return { linkId: `${linkId}.relation`, text: 'Who', type: 'choice', options: relationOptions };
  }
  return null;
}
