import type { OnsetPace } from '../exam/exam.ts';
import type { ExamQuery } from './exam-query.ts';
import type { Modifier } from './modifier.ts';
import { missing } from './reasons.ts';
import type { Cause } from './table/cause.ts';

/** Of a cause that would begin at any of the four paces equally often nothing follows: each row has a mean of 1. */
type Weights = Readonly<Record<OnsetPace, number>>;

/** Where a story was told and nobody says how fast it came, it hardly came at a stroke: that is what is said first. Judged. */
const withoutPace: Weights = { hyperacute: 0.57, acute: 0.93, subacute: 1.25, chronic: 1.25 };

/** Muscles that are stiff or thin have been so for weeks: right after a lesion they are limp and full. Judged. */
const withOldSigns: Weights = { hyperacute: 0.35, acute: 0.6, subacute: 1.3, chronic: 1.75 };

const oldSigns = ['inspection/wasting', 'inspection/joint-contracture'];

/** How fast it came, as far as silence and signs that take time tell where the pace was not stated. */
export function untoldPaceModifiers({ tempo }: Cause, query: ExamQuery): readonly Modifier[] {
  const { exam, abnormal, abnormalWhere } = query;
  if (exam.onset.pace !== undefined) return [];
  const isOld =
    abnormal(oldSigns).length > 0 ||
    abnormalWhere(({ item, value }) => item.section === 'tone' && value === 'spastic').length > 0;
  if (!isOld && exam.history.length === 0) return [];
  const weights = isOld ? withOldSigns : withoutPace;
  const ratio = (Object.keys(weights) as OnsetPace[]).reduce((sum, pace) => sum + tempo[pace] * weights[pace], 0);
  const text = isOld ? 'stiff or thin muscles take weeks' : 'nothing was told of a sudden onset';
  return [{ ratio, reason: () => missing(text) }];
}
