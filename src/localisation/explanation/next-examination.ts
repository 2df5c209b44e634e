import { bodyPartTable } from '../../anatomy/body-parts.ts';
import { movementTable } from '../../anatomy/movements.ts';
import type { dermatomeKeys } from '../../anatomy/skin.ts';
import { skinPlaceKeys } from '../../anatomy/skin-places.ts';
import { items } from '../../exam/catalogue/catalogue.ts';
import { type Item, itemId } from '../../exam/catalogue/item.ts';
import { routineSteps } from '../../exam/catalogue/routine.ts';
import { describePlace } from '../../exam/describe.ts';
import type { FindingPlace } from '../../exam/finding.ts';
import { bodySides, type Side } from '../../kernel/side.ts';
import type { Column, StateColumns } from '../inference/columns.ts';
import { type Contender, InformationGain } from '../inference/information-gain.ts';
import type { NextExamination } from '../localisation.ts';
import type { Context } from '../observation/context.ts';
import type { ProbeTarget } from '../observation/probe-models.ts';
import { round } from './explain.ts';
import { siteWords } from './site-words.ts';

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

/** Everything where and on which side it may be examined: what may be proposed first, then every patch of skin and every site. */
export function* everyTarget(): Generator<ProbeTarget> {
  for (const { target } of candidates) yield target;
  for (const item of items) {
    if (item.sides === 'optional') yield { item, side: 'midline' };
    for (const place of placesOf(item)) for (const side of sidesAt(item, place)) yield { item, side, place };
  }
}

const everySide: Readonly<Record<Item['sides'], readonly Side[]>> = {
  paired: bodySides,
  midline: ['midline'],
  optional: [...bodySides, 'midline'],
};

/** A part that is on each side of the body is named with its side. */
function sidesAt({ sides }: Item, { kind, key }: FindingPlace): readonly Side[] {
  const isPaired = kind === 'body-part' && bodyPartTable.get(key)?.paired === true;
  return sides === 'optional' && isPaired ? bodySides : everySide[sides];
}

function placesOf(item: Item): readonly FindingPlace[] {
  if (item.probe.kind !== 'sensation') return (item.sites ?? []).map((key) => ({ kind: 'body-part', key }));
  return skinKinds.flatMap((kind) => skinPlaceKeys(kind).map((key) => ({ kind, key })));
}

const skinKinds = ['dermatome', 'landmark', 'territory'] as const;

const proposals = 6;
/** Below this much information an item is not worth the patient's time. */
const worthwhileBits = 0.02;

/** The candidates that anything can be drawn from, with their columns; the same for every exam. */
export function openColumns(columns: StateColumns): readonly OpenColumn[] {
  return candidates.flatMap((candidate) => {
    const column = columns.column(candidate.target);
    return column === null ? [] : [{ candidate, column }];
  });
}

export interface OpenColumn {
  readonly candidate: Candidate;
  readonly column: Column;
}

/**
 * Untested items ranked by how much they are expected to tell the leading sites apart, for the effort that they take.
 * Method: mutual information between site and result, in bits; expectation over the leading sites only.
 * @param contenders leading sites; probabilities need not sum to 1
 * @param open       everything that could be examined
 * @param closed     columns that have been tested or could not be
 */
export function proposeNext(
  contenders: readonly Contender[],
  columns: StateColumns,
  open: readonly OpenColumn[],
  closed: ReadonlySet<Column>,
  context: Context,
): readonly NextExamination[] {
  const total = contenders.reduce((sum, { probability }) => sum + probability, 0);
  if (contenders.length < 2 || total === 0) return [];
  const gain = new InformationGain(contenders, columns, context);
  const ranked = open
    .flatMap(({ candidate, column }): Ranked[] => {
      if (closed.has(column)) return [];
      const bits = gain.bits(column, worthwhileBits);
      return bits < worthwhileBits ? [] : [{ candidate, column, bits }];
    })
    .sort((a, b) => worth(b) - worth(a) || (a.column.name < b.column.name ? -1 : 1));
  return diverse(ranked, (column) => shareAbnormal(column, gain.chances(column)[0] ?? []))
    .slice(0, proposals)
    .map(({ candidate: { target, place }, column, bits }) => ({
      item: itemId(target.item),
      label: place === undefined ? target.item.label : `${target.item.label} ${describePlace(place, target.side)}`,
      side: target.side === 'midline' ? null : target.side,
      ...(place === undefined ? {} : { place: place.key }),
      ...contrast(column, gain.chances(column), contenders),
      gainBits: round(bits),
    }));
}

const routine: ReadonlySet<string> = new Set(routineSteps.map(({ item }) => item));

/** What is seldom done at the bedside, hard to judge there, or a burden to the patient. Common practice. */
const seldom: ReadonlySet<string> = new Set([
  'cranial-nerves/enlarged-blind-spot',
  'power/toe-abduction',
  'reflexes/anal',
  'reflexes/bulbocavernosus',
  'reflexes/cremasteric',
  'sphincters/absent-deep-anal-pressure',
  'sphincters/absent-voluntary-anal-contraction',
]);

/**
 * Information for the effort: what every examination tries goes before what tells a little more and is tried by few, such
 * as abduction of the eye before a squint. Judged.
 */
function worth({ candidate, bits }: Ranked): number {
  const item = itemId(candidate.target.item);
  if (routine.has(item)) return bits;
  return bits * (seldom.has(item) ? 0.4 : 0.75);
}

interface Ranked {
  readonly candidate: Candidate;
  readonly column: Column;
  readonly bits: number;
}

/** Least share of the information of the other side with which a side is still worth naming. Judged. */
const asTelling = 0.6;

/**
 * One proposal per idea: the muscles of one group, the reflexes of one region, neighbouring patches of skin, two names of one
 * failure, and both sides tell much the same. Of two sides that do, the one is named that the leading site affects more.
 */
function diverse(ranked: readonly Ranked[], affected: (column: Column) => number): readonly Ranked[] {
  const firsts = new Map<string, Ranked>();
  for (const one of ranked) {
    const idea = ideaOf(one.candidate.target, one.candidate.place);
    const first = firsts.get(idea);
    const isBetterSide =
      first !== undefined &&
      isOtherSide(one.candidate, first.candidate) &&
      one.bits >= asTelling * first.bits &&
      affected(one.column) > affected(first.column);
    if (first === undefined || isBetterSide) firsts.set(idea, one);
  }
  return [...firsts.values()];
}

function isOtherSide({ target: a, place: there }: Candidate, { target: b, place: here }: Candidate): boolean {
  return a.item === b.item && a.side !== b.side && there?.key === here?.key;
}

function ideaOf({ item }: ProbeTarget, place: FindingPlace | undefined): string {
  if (item.probe.kind === 'movement') return `muscles of ${movementTable.get(item.probe.movement)?.group}`;
  if (item.section === 'reflexes') return `reflexes of ${item.region}`;
  if (item.probe.kind === 'faculty' && place === undefined) return `failure of ${item.probe.faculty}`;
  return place === undefined ? itemId(item) : `${itemId(item)} ${place.kind}`;
}

/** How likely a column is to show something abnormal, by its chances at one site. */
function shareAbnormal({ model }: Pick<Column, 'model'>, chances: readonly number[]): number {
  return chances.reduce((sum, chance, value) => (model.normal[value] === true ? sum : sum + chance), 0);
}

/** Which two of the leading sites the item tells apart, and which way. */
function contrast(
  { model }: Column,
  rows: readonly (readonly number[])[],
  contenders: readonly Contender[],
): { readonly tellsApart: boolean; readonly because: string } {
  const considered = rows
    .map((row, index) => ({
      normal: 1 - shareAbnormal({ model }, row),
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
    const site = contenders[index]?.site;
    return site === undefined ? '' : siteWords(site);
  };
  return { tellsApart: true, because: `likely to be affected by ${name(affected)}, spared by ${name(spared)}` };
}
