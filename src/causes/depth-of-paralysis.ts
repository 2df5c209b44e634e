import { powerOf } from '../exam/power.ts';
import { bodySides } from '../kernel/side.ts';
import type { ExamQuery } from './exam-query.ts';
import type { Modifier } from './modifier.ts';
import { missing } from './reasons.ts';
import type { Cause } from './table/cause.ts';

/** Grade up to which a movement is as good as lost. */
const lost = 1;

/** Grade from which on a weak movement still lifts the limb. */
const stillLifts = 3;

/** Movements of the legs that must be as good as lost, on both sides together. Judged. */
const enoughLost = 2;

/** Share of the people with weak legs from a lesion of cord or cauda equina who can hardly move them: 100 of 279 cases of the evaluation. */
const shareOfLost = 0.36;

/** How much a partial weakness may speak for what seldom goes further. Judged. */
const mostOfPartial = 1.4;

/**
 * How deep a weakness of both legs is. What strikes the whole width of the cord at once, by lack of blood, injury or pus, takes all
 * movement; what presses or starves it over months lets most of its fibres work for long, and who can hardly move has something else.
 */
export function depthModifiers({ paralysis }: Cause, query: ExamQuery): readonly Modifier[] {
  if (paralysis === undefined) return [];
  const weak = query.abnormalWhere(({ item }) => item.section === 'power' && item.region === 'lower-limbs');
  if (!bodySides.every((side) => weak.some((finding) => finding.side === side))) return [];
  const grades = weak.map((finding) => powerOf(finding) ?? stillLifts);
  const deepest = weak.find((finding) => (powerOf(finding) ?? stillLifts) <= lost);
  if (grades.filter((grade) => grade <= lost).length >= enoughLost && deepest !== undefined) {
    const reason = () => ({ pointer: deepest.pointer, text: 'hardly any power left in the legs' });
    return [{ ratio: paralysis, saysOnlyWhere: true, reason }];
  }
  if (grades.some((grade) => grade < stillLifts)) return [];
  const partial = (1 - shareOfLost * paralysis) / (1 - shareOfLost);
  const reason = () => missing('the weakness of the legs is partial');
  return [{ ratio: Math.min(mostOfPartial, partial), saysOnlyWhere: true, reason }];
}
