import type { SiteKind } from '../../anatomy/site-kind.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Hypothesis } from '../hypothesis.ts';
import type { Companions } from './combination-prior.ts';
import { tells } from './told.ts';

const injuries: ReadonlySet<string> = new Set(['trauma', 'head-injury', 'neck-trauma']);

/** What a blow to the head tears one by one; in a limb it strikes what lies side by side, which are places of their own. */
const torn: ReadonlySet<SiteKind> = new Set(['cranial-nerve']);

/**
 * How much commoner than chance two torn nerves are where an injury was told: of those with a torn nerve of the head one in eight
 * has another, and where nothing is known of one each is met in less than a hundredth. Source: Dhaliwal 2006 (from memory).
 * Judged.
 */
const together = 6;

/** Kinds of place of which an injury that was told may have struck several; none where there was none. */
export function tornKinds({ history, onset }: Exam): ReadonlySet<SiteKind> {
  const isRecent = onset.pace !== 'chronic' && onset.pace !== 'subacute';
  return isRecent && tells(history, injuries) ? torn : none;
}

const none: ReadonlySet<SiteKind> = new Set();

/** One injury takes several nerves of the head at once, on one side or on both. */
export class SharedInjury implements Companions {
  private readonly isTorn: readonly boolean[];

  constructor(exam: Exam, hypotheses: readonly Hypothesis[]) {
    const kinds = tornKinds(exam);
    this.isTorn = hypotheses.map(
      ({ site: { kind, side } }) => kinds.has(kind) && (side === 'left' || side === 'right'),
    );
  }

  /** The factor of a hypothesis beside another; 0 where no injury was told, or one of the two is no nerve of one side. */
  besides(member: number): (added: number) => number {
    if (this.isTorn[member] !== true) return () => 0;
    return (added) => (this.isTorn[added] === true ? together : 0);
  }
}
