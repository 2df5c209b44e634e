import type { PlaceKey } from '../../anatomy/places.ts';
import type { Faculty, Probe } from '../../anatomy/probe.ts';
import type { RootShares } from '../../anatomy/segments.ts';

/** Short forms of the probes, so that a row of a section table stays readable. */

export const faculty = (name: Faculty): Probe => ({ kind: 'faculty', faculty: name });

/** The sign shows when any of these fails; the first is the usual one. */
export const anyFaculty = (first: Faculty, ...others: readonly Faculty[]): Probe => ({
  kind: 'faculty',
  faculty: first,
  orAlso: others,
});

/** The sign shows when the first two fail together, less often when one does, and when any of the others fails. */
export const failTogether = (first: Faculty, second: Faculty, ...others: readonly Faculty[]): Probe => ({
  kind: 'faculty',
  faculty: first,
  seldomWithout: second,
  orAlso: others,
});

/** The sign shows when the first fails and the second is kept. */
export const failsButSpares = (failing: Faculty, kept: Faculty): Probe => ({
  kind: 'faculty',
  faculty: failing,
  butSpares: kept,
});

export const weaknessOf = (...movements: readonly string[]): Probe => ({ kind: 'weakness-of', movements });

/** The sign is missing in many, though the movement is weak: other muscles make up for it. */
export const oftenShown = (probe: Probe, shownBy: number): Probe =>
  probe.kind === 'weakness-of' ? { ...probe, shownBy } : probe;

/** The sign needs weakness on both sides to show as described. */
export const weaknessOnBothSides = (...movements: readonly string[]): Probe => ({
  kind: 'weakness-of',
  movements,
  bilateral: true,
});

/** The posture is that of slack muscles whose opponents still pull; a limb that is stiff or held does not take it. */
export const slackBeside = (movements: readonly string[], butKept: readonly string[] = []): Probe => ({
  kind: 'weakness-of',
  movements,
  flaccid: true,
  butKept,
});

/** The sign is made by slack muscles on both sides. */
export const slackOnBothSides = (...movements: readonly string[]): Probe => ({
  kind: 'weakness-of',
  movements,
  bilateral: true,
  flaccid: true,
});

export const upperMotor = (limb: 'upper' | 'lower' | 'both'): Probe => ({ kind: 'upper-motor', limb });

/** Taps and fine movements are slow and irregular with pyramidal, basal-ganglia and cerebellar disease alike. */
export const slowTapping = (limb: 'upper' | 'lower'): Probe => ({
  kind: 'upper-motor',
  limb,
  orAlso: ['bradykinesia', 'limb-coordination'],
});

export const proprioception = (limb: 'upper' | 'lower'): Probe => ({ kind: 'proprioception', limb });

export const cerebellar = (part: 'upper-limb' | 'lower-limb' | 'midline'): Probe => ({ kind: 'cerebellar', part });

/** Balance with the weight of the body on both legs: unsteady legs fail, and legs that do not hold the knee. */
export const standing: Probe = { kind: 'cerebellar', part: 'midline', bearsWeight: true };

export const provokesRoots = (roots: RootShares): Probe => ({ kind: 'provocation', roots });

export const provokesNerve = (...places: readonly PlaceKey[]): Probe => ({ kind: 'provocation', places });

export const longStandingDeformity: Probe = { kind: 'long-standing-deformity' };

export const recordedOnly: Probe = { kind: 'recorded-only' };
