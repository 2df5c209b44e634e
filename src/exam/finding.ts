import type { Region } from '../anatomy/body-parts.ts';
import type { Modality } from '../anatomy/probe.ts';
import type { BodySide, Side } from '../kernel/side.ts';
import type { Item, SectionKey } from './catalogue/item.ts';

export const notTestedReasons = ['pain', 'declined', 'unable', 'not-done', 'limb-absent', 'other'] as const;
export type NotTestedReason = (typeof notTestedReasons)[number];

/** Where a finding was made, when the item itself does not say it. */
export interface FindingPlace {
  readonly kind: 'body-part' | 'landmark' | 'dermatome' | 'territory' | 'level-below' | 'region';
  readonly key: string;
}

/**
 * One thing that the examiner stated about one side. `both` has become two findings and `otherwiseNormal` has been
 * expanded; every finding remembers where in the request it came from.
 */
export interface Finding {
  readonly item: Item;
  readonly side: Side;
  readonly place?: FindingPlace;
  readonly modality?: Modality;
  /** Key of a grade of the item's scale, or beats of clonus; null when not tested. */
  readonly value: string | number | null;
  readonly notTested?: NotTestedReason;
  /** Reflexes: elicited with reinforcement. */
  readonly reinforced?: boolean;
  readonly note?: string;
  /** Whether the value is a deficit on its scale; false when not tested. */
  readonly abnormal: boolean;
  /** JSON Pointer of the statement in the request. */
  readonly pointer: string;
  readonly origin: 'recorded' | 'otherwise-normal';
  /** Unique within the exam and stable across posts: `power/ankle-dorsiflexion|left`, `sensation/pinprick@dermatome:L5|left`. */
  readonly id: string;
}

/** Whether a grade of a tendon reflex is above the usual one. */
export const isBrisk = (grade: Finding['value']): boolean => grade === '3' || grade === '4';

/** Whether a reflex is gone, or as good as gone. */
export const isLost = (grade: Finding['value']): boolean => grade === '0' || grade === 'trace';

/** What the examiner declared normal in one sentence: all of a section, of a region, or of a side. */
export interface NormalStatement {
  readonly section: SectionKey;
  readonly region?: Region;
  readonly side?: BodySide | 'both';
  readonly pointer: string;
}

/** A scored scale given by its parts (coma scale). */
export interface ScoredScale {
  readonly scale: 'glasgow-coma-scale';
  readonly parts: Readonly<Record<'eye' | 'verbal' | 'motor', number | null>>;
  /** Sum of the parts, 3 to 15; null unless all three were tested. */
  readonly total: number | null;
  readonly notTested: Readonly<Partial<Record<'eye' | 'verbal' | 'motor', NotTestedReason>>>;
  readonly note?: string;
  readonly pointer: string;
}
