import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { powerOf } from '../../exam/power.ts';
import { sites } from './history/history-weight.ts';
import { shiftBy, sidesOf } from './limb-patterns.ts';
import type { Shift } from './shift.ts';
import { tells } from './told.ts';

/**
 * Odds where an injury has left both hands weaker than the legs: the middle of the neck's cord is bruised, in the old by a fall that bends a
 * narrow neck back. Schneider 1954; van Middendorp 2010, arms lower than legs by ten points of a hundred (both recalled). Judged.
 */
const handsBelowLegs = { central: 15, across: 0.6 } as const;
const injury: ReadonlySet<string> = new Set(['trauma', 'neck-trauma', 'head-injury']);
const ofTheHand = /^(wrist|finger|thumb)-/;
/** Steps of the scale of the Medical Research Council by which the hands must be weaker, on average. */
const weakerBy = 0.9;

/** Mean grade, 4- and 4+ a third to either side of 4. */
const mean = (graded: readonly Finding[]): number =>
  graded.reduce((sum, one) => sum + (powerOf(one) ?? 0), 0) / graded.length;

export function centralCordShifts({ findings, history }: Exam): readonly Shift[] {
  if (!tells(history, injury)) return [];
  const graded = findings.filter(({ item, value }) => item.section === 'power' && value !== null);
  const hands = graded.filter(({ item, abnormal }) => abnormal && ofTheHand.test(item.key));
  const legs = graded.filter(({ item }) => item.region === 'lower-limbs');
  const [first] = hands;
  if (first === undefined || legs.length < 2 || sidesOf(hands).size < 2) return [];
  const hasTracts = findings.some(
    ({ abnormal, item, value }) =>
      abnormal &&
      item.region === 'lower-limbs' &&
      (item.key === 'plantar-response' ||
        item.section === 'clonus' ||
        value === 'spastic' ||
        item.section === 'reflexes'),
  );
  if (!hasTracts || mean(legs) - mean(hands) < weakerBy) return [];
  const because = 'after an injury both hands are weaker than the legs, whose tracts lie outside those of the hands';
  return [
    shiftBy(first, { applies: sites('spinal-cord-central'), factor: handsBelowLegs.central, because }),
    shiftBy(first, { applies: sites('spinal-cord-transverse'), factor: handsBelowLegs.across, because }),
  ];
}
