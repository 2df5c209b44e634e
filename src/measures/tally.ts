import type { PopulationCode } from './published-codes.ts';

/** What is counted for one group, or for one stratum of it. */
export interface Tally {
  readonly counts: Map<PopulationCode, number>;
  readonly observations: number[];
  /** Ids of the impressions counted, where a list was asked for. */
  readonly members: Map<PopulationCode, string[]>;
}

export interface GroupTally {
  readonly all: Tally;
  /** One for each stratifier: tallies by stratum. */
  readonly strata: readonly Map<string, Tally>[];
}

export function newTally(): Tally {
  return { counts: new Map(), observations: [], members: new Map() };
}

/** Counts one exam; `id` only where its membership is to be listed. */
export function count(tally: Tally, populations: readonly PopulationCode[], observed: number | undefined, id?: string) {
  for (const population of populations) {
    tally.counts.set(population, (tally.counts.get(population) ?? 0) + 1);
    keepMember(tally, population, id);
  }
  if (observed === undefined) return;
  tally.observations.push(observed);
  keepMember(tally, 'measure-observation', id);
}

function keepMember({ members }: Tally, population: PopulationCode, id: string | undefined): void {
  if (id === undefined) return;
  const ids = members.get(population) ?? [];
  ids.push(id);
  members.set(population, ids);
}
