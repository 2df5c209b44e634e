import type { Source } from '../kernel/cite.ts';
import type { SiteKind } from '../localisation/localisation.ts';
import type { WorkupItem } from './assessment.ts';

/** When a test is proposed: for a site, a kind of site, a cause, or a red flag. */
export interface WorkupRule {
  readonly tests: readonly string[];
  readonly kinds?: readonly SiteKind[];
  readonly sites?: readonly string[];
  readonly causes?: readonly string[];
  /** Red flags that are present or could not be decided. */
  readonly flags?: readonly string[];
  /** Priority while the flags can only not be decided; without it `stat` becomes `urgent`. */
  readonly whenUndecided?: WorkupItem['priority'];
  readonly tier: WorkupItem['tier'];
  readonly priority: WorkupItem['priority'];
  readonly because: string;
  readonly source: Source;
}
