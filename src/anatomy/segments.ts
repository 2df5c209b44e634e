/** Spinal cord segments and the roots of the same name, from above downwards. */
export const segments = [
  'C1',
  'C2',
  'C3',
  'C4',
  'C5',
  'C6',
  'C7',
  'C8',
  'T1',
  'T2',
  'T3',
  'T4',
  'T5',
  'T6',
  'T7',
  'T8',
  'T9',
  'T10',
  'T11',
  'T12',
  'L1',
  'L2',
  'L3',
  'L4',
  'L5',
  'S1',
  'S2',
  'S3',
  'S4',
  'S5',
] as const; // prettier rows by region read better than one line each

export type Segment = (typeof segments)[number];

const order = new Map<string, number>(segments.map((segment, index) => [segment, index]));

/** Position of a segment counted from C1 = 0 downwards; S5 = 29. */
export function segmentIndex(segment: Segment): number {
  return order.get(segment) ?? 0;
}

export function isSegment(text: string): text is Segment {
  return order.has(text);
}

/** How a share of a muscle, reflex or patch of skin divides over the roots; the shares sum to 1. */
export type RootShares = Readonly<Partial<Record<Segment, number>>>;
