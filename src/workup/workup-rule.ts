import type { SiteKind } from '../anatomy/site-kind.ts';
import type { Source } from '../kernel/cite.ts';
import type { WorkupItem } from './assessment.ts';
import type { BedsideFacts } from './bedside-facts.ts';

/** When a test is proposed: for a site, a kind of site, a cause, or a red flag. */
export interface WorkupRule {
  readonly tests: readonly string[];
  readonly kinds?: readonly SiteKind[];
  readonly sites?: readonly string[];
  readonly causes?: readonly string[];
  /** Red flags that are present or could not be decided. */
  readonly flags?: readonly string[];
  /** The story by itself asks for it: the rule holds wherever `when` does, also where no place is named. */
  readonly byStory?: true;
  /** A further condition on findings, history and results; without it the rule holds wherever site, cause or flag do. */
  readonly when?: (facts: BedsideFacts) => boolean;
  /** Priority while the flags can only not be decided; without it `stat` becomes `urgent`. */
  readonly whenUndecided?: WorkupItem['priority'];
  readonly tier: WorkupItem['tier'];
  /** The same where one of the causes is as good as named. */
  readonly tierOfTheNamed?: WorkupItem['tier'];
  readonly priority: WorkupItem['priority'];
  readonly because: string;
  readonly source: Source;
}

/** Tests that guidance advises against, or finds needless, for a cause that leads or a site. */
export interface WithholdRule {
  readonly key: string;
  /** What is not needed, in words: "imaging of the spine". */
  readonly label: string;
  readonly tests: readonly string[] | 'all';
  /** The leading cause, at least as likely as `leadingFrom`; without cause and site the condition alone decides. */
  readonly causes?: readonly string[];
  readonly sites?: readonly string[];
  readonly when?: (facts: BedsideFacts) => boolean;
  /** Whether the test is unsafe here, whatever asks for it. */
  readonly outranksFlags?: boolean;
  readonly because: string;
  readonly source: Source;
}
