import { findHistoryRow } from '../exam/catalogue/history.ts';
import { lowerFirst } from '../exam/describe.ts';
import type { Course, OnsetPace } from '../exam/exam.ts';
import { joinWords, sentence } from '../kernel/words.ts';
import { complaintSymptoms } from './complaint-symptoms.ts';
import type { PatientHistory, PracticePatient } from './patient.ts';

const paceWords: Readonly<Record<OnsetPace, string>> = {
  hyperacute: 'began within minutes',
  acute: 'came on over hours to days',
  subacute: 'came on over weeks',
  chronic: 'came on over months or longer',
};

const courseWords: Readonly<Record<Course, string>> = {
  progressive: 'it has grown worse since',
  static: 'it has stayed the same since',
  improving: 'it has become better since',
  'relapsing-remitting': 'it has come and gone in bouts since',
  fluctuating: 'it changes through the day',
  monophasic: 'it came once and has settled since',
};

/** What the person says, in a few plain sentences. Says nothing of the lesion that the history does not. */
export function vignette({ person, history, complaints, complainedOf }: PracticePatient): string {
  const { ageYears, sex } = person;
  const who = sex === 'female' ? 'woman' : 'man';
  const they = sex === 'female' ? 'She' : 'He';
  const what =
    complaints.length === 0
      ? `A ${who} of ${ageYears} is sent because a routine examination was not quite normal; ${they.toLowerCase()} has noticed nothing else.`
      : `A ${who} of ${ageYears} complains of ${joinWords(complaints)}.`;
  return [
    what,
    `It ${paceWords[history.onset.pace]}, ${durationWords(history.onset.durationDays)} ago; ${courseWords[history.course]}.`,
    ...toldWords(they, history, complainedOf.flatMap(complaintSymptoms)),
  ].join(' ');
}

function durationWords(days: number): string {
  if (days < 14) return days === 1 ? 'a day' : `${days} days`;
  if (days < 90) return `${Math.round(days / 7)} weeks`;
  return days < 730 ? `${Math.round(days / 30)} months` : `${Math.round(days / 365)} years`;
}

const lists = ['symptoms', 'conditions', 'exposures', 'family'] as const;

function wordsOf(list: (typeof lists)[number], label: string): string {
  return list === 'family' ? `${label.charAt(0).toLowerCase()}${label.slice(1)} in the family` : lowerFirst(label);
}

function isNew(list: (typeof lists)[number], said: readonly string[]): (one: { readonly key: string }) => boolean {
  return ({ key }) => list !== 'symptoms' || !said.includes(key);
}

/** What else is told; what is complained of has been said. */
function toldWords(they: string, history: PatientHistory, said: readonly string[]): readonly string[] {
  const told = lists.flatMap((list) =>
    (history[list] ?? []).filter(isNew(list, said)).map(({ key, present }) => ({
      words: wordsOf(list, findHistoryRow(list, key)?.label ?? key),
      present,
    })),
  );
  const say = (lead: string, some: typeof told): readonly string[] =>
    some.length === 0 ? [] : [sentence(`${lead} ${joinWords(some.map(({ words }) => words))}`)];
  return [
    ...say(
      `${they} also tells of`,
      told.filter(({ present }) => present),
    ),
    ...say(
      'Asked for and denied:',
      told.filter(({ present }) => !present),
    ),
  ];
}
