import { movementTable } from '../../anatomy/movements.ts';
import { dermatomeKeys } from '../../anatomy/skin.ts';
import { items } from '../../exam/catalogue/catalogue.ts';
import { type Item, itemId } from '../../exam/catalogue/item.ts';
import { describePlace } from '../../exam/describe.ts';
import type { FindingPlace } from '../../exam/finding.ts';
import { bodySides, type Side } from '../../kernel/side.ts';
import type { Column, StateColumns } from '../inference/columns.ts';
import type { Mixture } from '../inference/ranking.ts';
import type { NextExamination } from '../localisation.ts';
import type { Context } from '../observation/context.ts';
import type { ProbeTarget } from '../observation/probe-models.ts';
import { round } from './explain.ts';
import { siteWords } from './site-words.ts';

/** A leading site with its probability and the hypotheses that stand for it, weights summing to 1. */
export interface Contender {
  readonly probability: number;
  readonly members: Mixture;
}

/** Landmarks that a bedside examination would add to the dermatomes. */
const extraLandmarks = [
  'great-toe',
  'dorsum-of-foot',
  'first-web-space-of-foot',
  'sole',
  'ankle',
  'inner-shin',
  'outer-shin',
  'thumb',
  'index-finger',
  'little-finger',
  'thenar-eminence',
  'dorsum-of-hand-ulnar-side',
  'inner-forearm',
  'outer-forearm',
  'outer-upper-arm',
  'perianal-skin',
] as const;

const superficial = [
  'C5',
  'C6',
  'C7',
  'C8',
  'T1',
  'T4',
  'T10',
  'L1',
  'L2',
  'L3',
  'L4',
  'L5',
  'S1',
  'S2',
  'S4-5',
] as const satisfies readonly (typeof dermatomeKeys)[number][];
const joints = ['great-toe', 'ankle', 'index-finger'] as const;

function placesFor(item: Item): readonly FindingPlace[] {
  if (item.key === 'vibration' || item.key === 'joint-position')
    return joints.map((key) => ({ kind: 'landmark', key }));
  if (item.key !== 'pinprick') return [];
  return [
    ...superficial.map((key) => ({ kind: 'dermatome', key }) as const),
    ...extraLandmarks.map((key) => ({ kind: 'landmark', key }) as const),
  ];
}

interface Candidate {
  readonly target: ProbeTarget;
  readonly place?: FindingPlace;
}

/** Everything that could be examined next, once; the same for every exam. */
const candidates: readonly Candidate[] = items.flatMap((item): Candidate[] => {
  const sides: readonly Side[] = item.sides === 'midline' ? ['midline'] : bodySides;
  if (item.probe.kind === 'sensation') {
    return placesFor(item).flatMap((place) => sides.map((side) => ({ target: { item, side, place }, place })));
  }
  if (item.sites !== undefined && item.siteRequired === true) return [];
  return sides.map((side) => ({ target: { item, side } }));
});

/** Every item where and on which side it may be examined: what may be proposed, and every dermatome in every modality. */
export function* everyTarget(): Generator<ProbeTarget> {
  for (const { target } of candidates) yield target;
  for (const item of items) {
    if (item.probe.kind !== 'sensation') continue;
    for (const key of dermatomeKeys) {
      for (const side of bodySides) yield { item, side, place: { kind: 'dermatome', key } };
    }
  }
}

const proposals = 6;
/** Below this much information an item is not worth the patient's time. */
const worthwhileBits = 0.02;

/**
 * Untested items ranked by how much they are expected to tell the leading sites apart.
 * Method: mutual information between site and result, in bits; expectation over the leading sites only.
 * @param contenders leading sites; probabilities need not sum to 1
 * @param closed     names of columns that have been tested or could not be
 */
export function proposeNext(
  contenders: readonly Contender[],
  columns: StateColumns,
  closed: ReadonlySet<string>,
  context: Context,
): readonly NextExamination[] {
  const total = contenders.reduce((sum, { probability }) => sum + probability, 0);
  if (contenders.length < 2 || total === 0) return [];
  const ranked = candidates
    .flatMap((candidate): Ranked[] => {
      const column = columns.column(candidate.target);
      if (column === null || closed.has(column.name)) return [];
      const rows = predictions(column, contenders, columns, context);
      return rows === null ? [] : [{ candidate, column, rows, bits: informationBits(rows, contenders, total) }];
    })
    .filter(({ bits }) => bits >= worthwhileBits)
    .sort((a, b) => b.bits - a.bits || (a.column.name < b.column.name ? -1 : 1));
  return diverse(ranked)
    .slice(0, proposals)
    .map(({ candidate: { target, place }, column, rows, bits }) => ({
      item: itemId(target.item),
      label: place === undefined ? target.item.label : `${target.item.label} ${describePlace(place, target.side)}`,
      side: target.side === 'midline' ? null : target.side,
      ...(place === undefined ? {} : { place: place.key }),
      ...contrast(column, rows, contenders, columns),
      gainBits: round(bits),
    }));
}

interface Ranked {
  readonly candidate: Candidate;
  readonly column: Column;
  readonly rows: readonly (readonly number[])[];
  readonly bits: number;
}

/** Chance of each value under each leading site; null when they all predict the same. */
function predictions(
  column: Column,
  contenders: readonly Contender[],
  columns: StateColumns,
  context: Context,
): readonly (readonly number[])[] | null {
  const states = contenders.map(({ members }) => members.map(({ index }) => columns.stateOf(column, index)));
  const first = states[0]?.[0];
  if (states.every((row) => row.every((state) => state === first))) return null;
  const { width, chance } = columns.table(column.model, context);
  return contenders.map(({ members }, row) =>
    column.model.values.map((_, value) =>
      members.reduce(
        (sum, { weight }, member) => sum + weight * (chance[(states[row]?.[member] ?? 0) * width + value] ?? 0),
        0,
      ),
    ),
  );
}

function informationBits(
  rows: readonly (readonly number[])[],
  contenders: readonly Contender[],
  total: number,
): number {
  const shares = contenders.map(({ probability }) => probability / total);
  const values = rows[0]?.length ?? 0;
  let bits = 0;
  for (let value = 0; value < values; value += 1) {
    const marginal = rows.reduce((sum, row, index) => sum + (shares[index] ?? 0) * (row[value] ?? 0), 0);
    rows.forEach((row, index) => {
      const chance = row[value] ?? 0;
      if (chance > 0) bits += (shares[index] ?? 0) * chance * Math.log2(chance / marginal);
    });
  }
  return bits;
}

/** One proposal per idea: the muscles of one group, neighbouring patches of skin, and both sides tell much the same. */
function diverse(ranked: readonly Ranked[]): readonly Ranked[] {
  const seen = new Set<string>();
  return ranked.filter(({ candidate: { target, place } }) => {
    const idea = ideaOf(target, place);
    if (seen.has(idea)) return false;
    seen.add(idea);
    return true;
  });
}

function ideaOf({ item }: ProbeTarget, place: FindingPlace | undefined): string {
  if (item.probe.kind === 'movement') return `muscles of ${movementTable.get(item.probe.movement)?.group}`;
  return place === undefined ? itemId(item) : `${itemId(item)} ${place.kind}`;
}

/** Which two of the leading sites the item tells apart, and which way. */
function contrast(
  { model }: Column,
  rows: readonly (readonly number[])[],
  contenders: readonly Contender[],
  columns: StateColumns,
): { readonly tellsApart: boolean; readonly because: string } {
  const considered = rows
    .map((row, index) => ({
      normal: row.reduce((sum, chance, value) => (model.normal[value] === true ? sum + chance : sum), 0),
      index,
      salience: Math.sqrt(contenders[index]?.probability ?? 0),
    }))
    .filter(({ salience }) => salience >= 0.14);
  const best = (worth: (one: { readonly normal: number; readonly salience: number }) => number): number =>
    considered.reduce(
      (top, one) => (worth(one) > worth(top) ? one : top),
      considered[0] ?? { normal: 0, index: 0, salience: 0 },
    ).index;
  const spared = best(({ normal, salience }) => normal * salience);
  const affected = best(({ normal, salience }) => (1 - normal) * salience);
  if (spared === affected) {
    return { tellsApart: false, because: 'its result would shift the weight between the leading sites' };
  }
  const name = (index: number): string => {
    const lead = columns.hypotheses[contenders[index]?.members[0]?.index ?? 0];
    return lead === undefined ? '' : siteWords(lead.site);
  };
  return { tellsApart: true, because: `likely to be affected by ${name(affected)}, spared by ${name(spared)}` };
}
