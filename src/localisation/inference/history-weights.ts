import { isSegment, type Segment, segmentIndex } from '../../anatomy/segments.ts';
import type { Exam, HistoryStatement } from '../../exam/exam.ts';
import { fromMemory, type Source } from '../../kernel/cite.ts';
import type { Site } from '../hypothesis.ts';

/** How a statement of the history shifts the odds of sites: factor when present, and when denied. */
interface HistoryWeight {
  readonly key: string;
  readonly applies: (site: Site) => boolean;
  readonly present: number;
  readonly denied: number;
  readonly because: string;
  readonly source: Source;
}

const between = (level: Segment | null, top: Segment, bottom: Segment): boolean =>
  level !== null &&
  isSegment(level) &&
  segmentIndex(level) >= segmentIndex(top) &&
  segmentIndex(level) <= segmentIndex(bottom);

const lumbarRoots = (site: Site): boolean =>
  (site.kind === 'root' && between(site.level, 'L1', 'S3')) || site.kind === 'cauda-equina';
const cervicalRoots = (site: Site): boolean => site.kind === 'root' && between(site.level, 'C3', 'T1');
const cervicalCord = (site: Site): boolean => site.kind === 'cord' && between(site.level, 'C1', 'C8');
const thoracicCord = (site: Site): boolean => site.kind === 'cord' && between(site.level, 'T1', 'L1');

const at =
  (key: string) =>
  (site: Site): boolean =>
    site.key === key;

/** Processes of which a large share runs in families. Judged. */
const oftenInherited: ReadonlySet<string> = new Set([
  'oculopharyngeal-myopathy',
  'facioscapulohumeral-myopathy',
  'myotonic-myopathy',
  'distal-myopathy',
  'motor-polyneuropathy',
  'spinal-cord-lateral',
  'cerebellar-degeneration',
]);

/** Judged, and kept small on purpose: the examination decides. */
const weights: readonly HistoryWeight[] = [
  {
    key: 'back-pain',
    applies: lumbarRoots,
    present: 1.6,
    denied: 0.65,
    because: 'back pain is usual when lumbosacral roots are compressed',
    source: fromMemory,
  },
  {
    key: 'radicular-leg-pain',
    applies: lumbarRoots,
    present: 2.5,
    denied: 0.6,
    because: 'pain down the leg points to a root',
    source: fromMemory,
  },
  {
    key: 'neck-pain',
    applies: cervicalRoots,
    present: 1.6,
    denied: 0.7,
    because: 'neck pain is usual when cervical roots are compressed',
    source: fromMemory,
  },
  {
    key: 'radicular-arm-pain',
    applies: cervicalRoots,
    present: 2.5,
    denied: 0.6,
    because: 'pain down the arm points to a root',
    source: fromMemory,
  },
  {
    key: 'neck-pain',
    applies: cervicalCord,
    present: 1.3,
    denied: 0.9,
    because: 'neck pain goes with cervical cord compression',
    source: fromMemory,
  },
  {
    key: 'back-pain',
    applies: thoracicCord,
    present: 1.3,
    denied: 0.9,
    because: 'back pain goes with cord compression',
    source: fromMemory,
  },
  {
    key: 'nocturnal-hand-paraesthesiae',
    applies: (site) => site.key === 'median-nerve-wrist',
    present: 3,
    denied: 0.7,
    because: 'tingling at night is typical of the median nerve at the wrist',
    source: fromMemory,
  },
  {
    key: 'diabetes-mellitus',
    applies: (site) => site.kind === 'polyneuropathy',
    present: 1.7,
    denied: 0.9,
    because: 'diabetes is the commonest cause of polyneuropathy',
    source: fromMemory,
  },
  {
    key: 'diplopia',
    applies: (site) => site.kind === 'junction',
    present: 2,
    denied: 0.8,
    because: 'double vision is common in disease of the neuromuscular junction',
    source: fromMemory,
  },
  {
    key: 'preceding-infection',
    applies: (site) => site.kind === 'polyradiculoneuropathy',
    present: 1.8,
    denied: 0.9,
    because: 'an infection in the weeks before is usual',
    source: fromMemory,
  },
  {
    key: 'preceding-gastroenteritis',
    applies: (site) => site.kind === 'polyradiculoneuropathy',
    present: 1.8,
    denied: 0.9,
    because: 'an infection in the weeks before is usual',
    source: fromMemory,
  },
  {
    key: 'preceding-respiratory-infection',
    applies: (site) => site.kind === 'polyradiculoneuropathy',
    present: 1.8,
    denied: 0.9,
    because: 'an infection in the weeks before is usual',
    source: fromMemory,
  },
  {
    key: 'fatigable-weakness',
    applies: (site) => site.kind === 'junction',
    present: 2,
    denied: 0.8,
    because: 'weakness that grows with use points to the neuromuscular junction',
    source: fromMemory,
  },
  {
    key: 'leg-crossing',
    applies: at('common-fibular-nerve'),
    present: 2.5,
    denied: 1,
    because: 'crossed legs press on the nerve at the fibular neck',
    source: fromMemory,
  },
  {
    key: 'prolonged-squatting',
    applies: at('common-fibular-nerve'),
    present: 2.5,
    denied: 1,
    because: 'squatting presses on the nerve at the fibular neck',
    source: fromMemory,
  },
  {
    key: 'recent-weight-loss',
    applies: at('common-fibular-nerve'),
    present: 1.6,
    denied: 1,
    because: 'lost fat leaves the nerve at the fibular neck without padding',
    source: fromMemory,
  },
  {
    key: 'deep-sleep-on-arm',
    applies: at('radial-nerve-spiral-groove'),
    present: 2.5,
    denied: 1,
    because: 'the nerve is pressed against the humerus in deep sleep',
    source: fromMemory,
  },
  {
    key: 'elbow-leaning',
    applies: at('ulnar-nerve-elbow'),
    present: 2,
    denied: 1,
    because: 'leaning presses on the nerve behind the elbow',
    source: fromMemory,
  },
  {
    key: 'tight-clothing',
    applies: at('lateral-femoral-cutaneous-nerve'),
    present: 2.5,
    denied: 1,
    because: 'a tight waistband presses on the nerve at the groin',
    source: fromMemory,
  },
  {
    key: 'external-pressure',
    applies: (site) => site.kind === 'nerve',
    present: 1.6,
    denied: 1,
    because: 'pressure from outside hurts single nerves',
    source: fromMemory,
  },
  {
    key: 'recent-surgery',
    applies: (site) => site.kind === 'nerve' || site.kind === 'plexus',
    present: 1.5,
    denied: 1,
    because: 'nerves are at risk from an operation nearby and from lying still',
    source: fromMemory,
  },
  {
    key: 'limb-fracture-or-dislocation',
    applies: (site) => site.kind === 'nerve' || site.kind === 'plexus',
    present: 1.6,
    denied: 1,
    because: 'nerves lie against the bone or joint that was hurt',
    source: fromMemory,
  },
  {
    key: 'saddle-numbness',
    applies: (site) => site.kind === 'cauda-equina' || site.key === 'conus-medullaris',
    present: 2,
    denied: 0.7,
    because: 'the lowest sacral segments serve the saddle',
    source: fromMemory,
  },
  {
    key: 'similar-disorder',
    applies: (site) => oftenInherited.has(site.key),
    present: 4,
    denied: 0.85,
    because: 'a relative with the like speaks for an inherited disease',
    source: fromMemory,
  },
  {
    key: 'muscle-disease',
    applies: (site) => site.kind === 'muscle',
    present: 3,
    denied: 1,
    because: 'a relative has disease of muscle',
    source: fromMemory,
  },
];

const byKey = new Map<string, HistoryWeight[]>();
for (const weight of weights) byKey.set(weight.key, [...(byKey.get(weight.key) ?? []), weight]);

/** One statement as evidence about one site. */
export interface HistoryEvidence {
  readonly statement: HistoryStatement;
  /** Natural log of the factor. */
  readonly weight: number;
  readonly because: string;
}

export function historyEvidence(exam: Exam, site: Site): readonly HistoryEvidence[] {
  return exam.history.flatMap((statement) =>
    (byKey.get(statement.key) ?? [])
      .filter((weight) => weight.applies(site))
      .map((weight) => ({
        statement,
        weight: Math.log(statement.present ? weight.present : weight.denied),
        because: weight.because,
      })),
  );
}

/** Odds factors of the history for a list of sites; which sites a weight applies to is worked out once. */
export class HistoryFactors {
  private readonly sites: readonly Site[];
  private readonly applying = new Map<HistoryWeight, Uint16Array>();

  constructor(sites: readonly Site[]) {
    this.sites = sites;
  }

  /** Factor of each site; null when no statement has a weight. */
  factors(exam: Exam): Float64Array | null {
    let factors: Float64Array | null = null;
    for (const { key, present } of exam.history) {
      for (const weight of byKey.get(key) ?? []) {
        factors ??= new Float64Array(this.sites.length).fill(1);
        const factor = present ? weight.present : weight.denied;
        for (const index of this.placesOf(weight)) factors[index] = (factors[index] ?? 1) * factor;
      }
    }
    return factors;
  }

  private placesOf(weight: HistoryWeight): Uint16Array {
    const known = this.applying.get(weight);
    if (known !== undefined) return known;
    const places = Uint16Array.from(this.sites.flatMap((site, index) => (weight.applies(site) ? [index] : [])));
    this.applying.set(weight, places);
    return places;
  }
}
