import type { Exam, HistoryStatement } from '../../exam/exam.ts';
import type { Site } from '../hypothesis.ts';
import { headHistory } from './history/head-history.ts';
import type { HistoryWeight } from './history/history-weight.ts';
import { illnessHistory } from './history/illness-history.ts';
import { limbHistory } from './history/limb-history.ts';

export const historyWeightRows: readonly HistoryWeight[] = [...limbHistory, ...headHistory, ...illnessHistory];

const byKey = new Map<string, HistoryWeight[]>();
for (const weight of historyWeightRows) byKey.set(weight.key, [...(byKey.get(weight.key) ?? []), weight]);

/** Key of a statement in the tables: what is said of relatives is written `family/...`. */
function keyOf({ kind, key }: HistoryStatement): string {
  return kind === 'family' ? `family/${key}` : key;
}

/** One statement as evidence about one site. */
export interface HistoryEvidence {
  readonly statement: HistoryStatement;
  /** Natural log of the factor. */
  readonly weight: number;
  readonly because: string;
}

export function historyEvidence(exam: Exam, site: Site): readonly HistoryEvidence[] {
  return exam.history.flatMap((statement) =>
    (byKey.get(keyOf(statement)) ?? [])
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
    for (const statement of exam.history) {
      for (const weight of byKey.get(keyOf(statement)) ?? []) {
        factors ??= new Float64Array(this.sites.length).fill(1);
        const factor = statement.present ? weight.present : weight.denied;
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
