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
  readonly workup: readonly WorkupItem[];
  readonly needless: readonly NeedlessTest[];
  readonly presentation: string;
  readonly caution: string;
  readonly modelVersion: string;
}
