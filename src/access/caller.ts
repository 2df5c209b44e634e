/** Who asks, as far as access control knows. */
export interface Caller {
  /** Name that access control has for the program that asks; never that of a person. */
  readonly client: string;
  /** Pseudonymous key of the user behind the program, where its token names one. */
  readonly user?: string;
  /** What it may do, in the SMART form, such as `system/Observation.rs`; undefined when no access control is configured. */
  readonly scopes: readonly string[] | undefined;
  /** The one subject whose data it may see, such as `Patient/4711`; undefined for no such limit. */
  readonly subject?: string;
}

/** Everybody, when no access control is configured. */
export const anyone: Caller = Object.freeze({ client: 'anonymous', scopes: undefined });

/** Somebody of whom nothing is known yet, where access control is configured. */
export const nobody: Caller = Object.freeze({ client: 'anonymous', scopes: [] });
