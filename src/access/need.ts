import type { Caller } from './caller.ts';
import { covers, type Permission } from './scope.ts';

/** What somebody needs who calls a route. A subject-limited caller is refused unless the route is `narrowed` to it. */
export interface Need {
  /** `open`: nothing. `known`: any token or key that is valid here. `scopes`: also what is listed. */
  readonly kind: 'open' | 'known' | 'scopes';
  /** All of these. */
  readonly all: readonly Permission[];
  /** At least one of these, where there are any; the route then keeps to those that the caller has. */
  readonly some: readonly Permission[];
  /** Whether the route shows a subject-limited caller only what belongs to its subject, or nothing of any person. */
  readonly isNarrowed: boolean;
}

/** For what is published with the program and says nothing about any person. */
export const open: Need = Object.freeze({ kind: 'open', all: [], some: [], isNarrowed: true });

/** For what says nothing about any person but takes work. */
export const known: Need = Object.freeze({ kind: 'known', all: [], some: [], isNarrowed: true });

export function scopes(...all: readonly Permission[]): Need {
  return Object.freeze({ kind: 'scopes', all, some: [], isNarrowed: false });
}

export function anyScope(...some: readonly Permission[]): Need {
  return Object.freeze({ kind: 'scopes', all: [], some, isNarrowed: false });
}

export function narrowed(need: Need): Need {
  return Object.freeze({ ...need, isNarrowed: true });
}

/** Whether a caller has a permission. Where no access control is configured, everybody has all. */
export function isAllowed({ scopes: held, subject }: Caller, permission: Permission): boolean {
  return held === undefined || covers(held, permission, subject !== undefined);
}

/**
 * What of a need a caller lacks, as scopes that would give it; `subject` when it is that the caller is limited to one
 * subject. Undefined when nothing is lacking.
 */
export function lacking(need: Need, caller: Caller): readonly string[] | 'subject' | undefined {
  if (caller.scopes === undefined) return undefined;
  if (caller.subject !== undefined && !need.isNarrowed) return 'subject';
  const missing = need.all.filter((permission) => !isAllowed(caller, permission));
  const none = need.some.length > 0 && !need.some.some((permission) => isAllowed(caller, permission));
  if (missing.length === 0 && !none) return undefined;
  const context = caller.subject === undefined ? 'system' : 'patient';
  return [...need.all, ...(none ? need.some : [])].map((permission) => `${context}/${permission}`);
}
