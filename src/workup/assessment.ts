import type { RankedCause, Reason } from '../causes/ranked-cause.ts';
import type { Coding } from '../kernel/coding.ts';
import type { Localisation } from '../localisation/localisation.ts';

export type Urgency = 'immediate' | 'same-day' | 'urgent';

/** A red flag whose trigger is met, or that could not be decided because something was not examined. */
export interface RedFlag {
  readonly key: string;
  readonly label: string;
  readonly state: 'present' | 'absent' | 'not-assessable';
  readonly urgency: Urgency;
  readonly because: readonly Reason[];
  readonly action: string;
  readonly source: string;
}

export interface WorkupItem {
  readonly key: string;
  readonly label: string;
  /** LOINC where a code says the same; else our own code. */
  readonly code: Coding;
  readonly tier: 1 | 2 | 3;
  readonly priority: 'routine' | 'urgent' | 'stat';
  readonly because: string;
  readonly source: string;
  /** Where the guidance can be read, where it has a stable address. */
  readonly guidance?: string;
}

/** An investigation that goes out as a proposal: one that was suggested, or one that the examiner asked for. */
export interface ProposedTest extends Omit<WorkupItem, 'tier' | 'source'> {
  /** Absent where the examiner asked for what was not suggested; then there is no work that it follows either. */
  readonly tier?: WorkupItem['tier'];
  readonly source?: string;
  /** Whether the examiner named it, as opposed to all that is suggested being proposed. */
  readonly isChosen: boolean;
}

/** Something that published guidance says is not needed here. */
export interface NeedlessTest {
  readonly key: string;
  readonly label: string;
  readonly because: string;
  readonly source: string;
}

/** Everything computed from one exam. */
export interface Assessment extends Localisation {
  readonly causes: readonly RankedCause[];
  /** Every flag considered relevant; the HTTP answer lists the `present` ones first, then the undecidable ones. */
  readonly redFlags: readonly RedFlag[];
  /** What is suggested, whatever the examiner chose of it. */
  readonly workup: readonly WorkupItem[];
  /** What goes out as a proposal: all that is suggested, unless the exam says which investigations are wanted. */
  readonly proposed: readonly ProposedTest[];
  /** What was suggested and not wanted; none unless the exam says what is. */
  readonly notChosen: readonly WorkupItem[];
  readonly needless: readonly NeedlessTest[];
  readonly presentation: string;
  readonly caution: string;
  readonly modelVersion: string;
}
