import type { ServiceRequest } from 'fhir/r4.js';

/** Shapes of CDS Hooks 2.0, as far as they are used here. Source: https://cds-hooks.hl7.org/2.0/ */
export interface Card {
  readonly uuid: string;
  /** Less than 140 characters. */
  readonly summary: string;
  /** GitHub-flavoured Markdown. */
  readonly detail: string;
  readonly indicator: 'info' | 'warning' | 'critical';
  readonly source: CardSource;
  readonly suggestions?: readonly Suggestion[];
  /** Required with suggestions. */
  readonly selectionBehavior?: 'at-most-one' | 'any';
}

export interface CardSource {
  readonly label: string;
  readonly url?: string;
}

export interface Suggestion {
  readonly label: string;
  readonly uuid: string;
  readonly isRecommended: boolean;
  readonly actions: readonly CreateAction[];
}

export interface CreateAction {
  readonly type: 'create';
  readonly description: string;
  readonly resource: ServiceRequest;
}

/** What every card of one exam has in common. */
export interface CardFrame {
  /** The UUID of a card or suggestion by its name within the exam; the same exam always has the same. */
  readonly uuid: (name: string) => string;
  readonly source: CardSource;
  /** Day of the examination, `2026-03-14`. */
  readonly day: string;
  /** Whether it is recent enough for a flag to interrupt. */
  readonly isRecent: boolean;
  /** Who the proposals are for. */
  readonly patient: string;
  readonly encounter?: string;
}
