import type { CodeLink } from './item.ts';

/** The open code says the same thing as our item. */
export const equivalent = (code: string, display: string): CodeLink => ({ code, display, relation: 'equivalent' });

/** The open code says more things than our item. */
export const wider = (code: string, display: string): CodeLink => ({ code, display, relation: 'wider' });

/** The open code says only a part of what our item says. */
export const narrower = (code: string, display: string): CodeLink => ({ code, display, relation: 'narrower' });

/** The open code overlaps with our item; neither holds the other. */
export const inexact = (code: string, display: string): CodeLink => ({ code, display, relation: 'inexact' });
