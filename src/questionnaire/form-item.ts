import type { Coding } from '../kernel/coding.ts';

/** One answer of a choice and what it says in the exam's JSON: the properties that it sets. */
export interface Option extends Required<Pick<Coding, 'system' | 'code' | 'display'>> {
  readonly sets: Readonly<Record<string, unknown>>;
}

/** The answers of a choice. Sets of one id have the same codes, though what these set may differ. */
export interface OptionSet {
  readonly id: string;
  readonly title: string;
  readonly options: readonly Option[];
}

/** What a question is answered with; the names are those of R4. */
export type AnswerType = 'choice' | 'boolean' | 'integer' | 'decimal' | 'text' | 'quantity' | 'reference';

/** The entry of a list of the exam that an item stands for, with the properties that the item itself says. */
export interface EntryOf {
  readonly list: readonly string[];
  readonly fixed: Readonly<Record<string, unknown>>;
  /** Where entries are texts and no objects: the property of an option that is the entry. One without it means that the list is empty. */
  readonly bare?: string;
}

/**
 * One item of the form and where its answer belongs in the exam's JSON. Items below an item with an `entry` set
 * properties of that entry, all others those of the exam.
 */
export interface FormItem {
  readonly linkId: string;
  readonly text: string;
  readonly type: 'group' | AnswerType;
  /** Own code of what is examined. */
  readonly code?: string;
  readonly options?: OptionSet;
  /** UCUM unit that the form offers; others of the same kind are taken. */
  readonly unit?: string;
  readonly repeats?: boolean;
  /** Whether an entry means nothing without this answer. */
  readonly required?: boolean;
  /** The question that must be empty for this one to be asked. */
  readonly unless?: string;
  readonly maxLength?: number;
  /** Types that a reference may lead to. */
  readonly referenceTo?: readonly string[];
  readonly entry?: EntryOf;
  /** Object that is set, from the exam as a whole; only outside entries. */
  readonly target?: readonly string[];
  /** Property that the answer becomes; a choice has its options' own, and in an entry without either the answer is the entry. */
  readonly property?: string;
  readonly items?: readonly FormItem[];
}
