import type { Exam } from '../../exam/exam.ts';

/** What about the person and the tempo changes how a deficit looks. */
export interface Context {
  /** 0 = days old, when reflexes may be lost and nothing has wasted; 1 = months old. In quarters, so that tables can be kept. */
  readonly chronicity: number;
  /**
   * How far age has come, in units of what is usual from 60 on: 0 under 60, 1 from 60, more in great age; the population's
   * share of 1 when the age was not given.
   */
  readonly from60: number;
}

const unknownAge = 0.4;
const unknownChronicity = 0.75;

/** Days after which an upper-motor-neuron lesion has usually become spastic, and after which muscles waste. Judged. */
const acuteDays = 10;
const settledDays = 60;

export function contextOf(exam: Pick<Exam, 'onset' | 'person'>): Context {
  const { ageYears } = exam.person;
  return {
    chronicity: Math.round(chronicity(exam.onset) * 4) / 4,
    from60: ageYears === undefined ? unknownAge : ageing(ageYears),
  };
}

/**
 * From 65 to 74 a quarter of people in family practice have a deficit at both feet, from 85 on half, most often the ankle
 * jerks: Mold, as reported in Am Fam Physician 2005;71:146 (recalled). The figures from 60 on are those of 60 to 74.
 */
function ageing(years: number): number {
  if (years < 60) return 0;
  return years < 75 ? 1 : years < 85 ? 1.4 : 2;
}

function chronicity(onset: Exam['onset']): number {
  if (onset.durationDays !== undefined) {
    return Math.min(1, Math.max(0, (onset.durationDays - acuteDays) / (settledDays - acuteDays)));
  }
  const byPace = { hyperacute: 0.1, acute: 0.1, subacute: 0.5, chronic: 1 } as const;
  return onset.pace === undefined ? unknownChronicity : byPace[onset.pace];
}
