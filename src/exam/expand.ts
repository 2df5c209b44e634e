import { bodyPartTable, type Region, regions } from '../anatomy/body-parts.ts';
import { compareText } from '../kernel/compare-text.ts';
import { type BodySide, bodySides, type Side } from '../kernel/side.ts';
import { items, itemsOf, normalValues } from './catalogue/catalogue.ts';
import { type Item, itemId } from './catalogue/item.ts';
import type { Finding, FindingPlace, NormalStatement } from './finding.ts';
import type { FindingEntry, SideValue } from './request.ts';
import { clonusAbnormalFromBeats } from './scales.ts';
import { valueProperty } from './schema/section-schemas.ts';

/** The one or two findings of an entry: `both` is one on each side, and a midline item has no side. */
export function findingsOf(item: Item, entry: FindingEntry, pointer: string): readonly Finding[] {
  const place = placeOf(entry, item);
  const value = entry.notTested === undefined ? sentValue(item, entry[valueProperty(item)]) : null;
  return sidesOf(entry.side).map((side) => ({
    ...blank(item, side, place, value, pointer),
    ...(entry.notTested === undefined ? {} : { notTested: entry.notTested }),
    ...(entry.reinforced === undefined ? {} : { reinforced: entry.reinforced }),
    ...(entry.note === undefined ? {} : { note: entry.note }),
    origin: 'recorded',
  }));
}

function blank(item: Item, side: Side, place: FindingPlace | null, value: Finding['value'], pointer: string) {
  const modality = item.probe.kind === 'sensation' ? item.probe.modality : undefined;
  return {
    item,
    side,
    ...(place === null ? {} : { place }),
    ...(modality === undefined ? {} : { modality }),
    value,
    abnormal: isAbnormal(item, value),
    pointer,
    id: findingId(item, side, place),
  };
}

const ranks: ReadonlyMap<Item, number> = new Map(items.map((item, rank) => [item, rank]));

function orderOf(item: Item): number {
  return ranks.get(item) ?? 0;
}

const ids: ReadonlyMap<Item, string> = new Map(items.map((item) => [item, itemId(item)]));

/** The id of an item of the catalogue, put together once. */
export function idOf(item: Item): string {
  return ids.get(item) ?? itemId(item);
}

/** Name of a finding within its exam; landmarks and body parts stand as they are, other places with their kind. */
function findingId(item: Item, side: Side, place: FindingPlace | null): string {
  if (place === null) return `${idOf(item)}|${side}`;
  const isPlain = place.kind === 'body-part' || place.kind === 'landmark';
  return `${idOf(item)}@${isPlain ? '' : `${place.kind}:`}${place.key}|${side}`;
}

function sidesOf(side: SideValue | undefined): readonly Side[] {
  if (side === undefined) return ['midline'];
  return side === 'both' ? bodySides : [side];
}

function placeOf(entry: FindingEntry, item: Item): FindingPlace | null {
  if (entry.dermatome !== undefined) return { kind: 'dermatome', key: entry.dermatome };
  if (entry.territory !== undefined) return { kind: 'territory', key: entry.territory };
  if (entry.levelBelow !== undefined) return { kind: 'level-below', key: entry.levelBelow };
  if (entry.site === undefined) return null;
  if (item.section === 'sensation') return { kind: 'landmark', key: entry.site };
  // In sections such as tone the site names the item itself.
  return item.sites === undefined ? null : { kind: 'body-part', key: entry.site };
}

function sentValue(item: Item, sent: unknown): string | number {
  if (item.scale === 'presence') return sent === true ? 'present' : 'absent';
  return sent as string | number;
}

function normalValue(item: Item): string | number {
  if (item.scale === 'beats') return 0;
  const [normal] = normalValues(item);
  if (normal === undefined) throw new Error(`Scale ${item.scale} has no normal grade`);
  return normal;
}

/** Whether a value is a deficit on its scale; not tested is not. */
export function isAbnormal(item: Item, value: Finding['value']): boolean {
  if (value === null) return false;
  if (item.scale === 'beats') return Number(value) >= clonusAbnormalFromBeats;
  return !normalValues(item).includes(String(value));
}

/**
 * The findings that the statements stand for: every item of the section (in the region, on the side) that the exam does
 * not state for itself, with its normal value. Sensation is declared for a region as a whole, once for each modality.
 * Parts that are lost are left out: nobody can have tested them.
 */
export function declaredNormal(
  statements: readonly NormalStatement[],
  recorded: readonly Finding[],
  isLost: (item: Item, side: Side) => boolean,
): readonly Finding[] {
  const stated = new Map<string, Set<Side>>();
  for (const { item, side } of recorded) {
    const sides = stated.get(idOf(item));
    if (sides === undefined) stated.set(idOf(item), new Set([side]));
    else sides.add(side);
  }
  const declared = new Map<string, Finding>();
  for (const statement of statements) {
    for (const finding of findingsDeclared(statement, (item) => stated.get(idOf(item)) ?? new Set())) {
      if (!isLost(finding.item, finding.side) && !declared.has(finding.id)) declared.set(finding.id, finding);
    }
  }
  return [...declared.values()];
}

function findingsDeclared(
  statement: NormalStatement,
  statedSides: (item: Item) => ReadonlySet<Side>,
): readonly Finding[] {
  const { section, region, side, pointer } = statement;
  if (section === 'sensation') return sensationDeclared(statement);
  return itemsOf(section)
    .filter((item) => region === undefined || isInRegion(item, region))
    .flatMap((item) =>
      sidesDeclared(item, side, statedSides(item)).map((at) =>
        normalFinding(item, at, regionPlace(item, region), pointer),
      ),
    );
}

function sensationDeclared({ region, side, pointer }: NormalStatement): readonly Finding[] {
  const covered = region === undefined ? regions : [region];
  return itemsOf('sensation').flatMap((item) =>
    covered.flatMap((key) =>
      sidesOf(side ?? 'both').map((at) => normalFinding(item, at, { kind: 'region', key }, pointer)),
    ),
  );
}

function normalFinding(item: Item, side: Side, place: FindingPlace | null, pointer: string): Finding {
  return { ...blank(item, side, place, normalValue(item), pointer), origin: 'otherwise-normal' };
}

/** A sign that may be anywhere is declared absent for the region spoken of, or for the whole person. */
function regionPlace(item: Item, region: Region | undefined): FindingPlace | null {
  return item.sites === undefined || region === undefined ? null : { kind: 'region', key: region };
}

export function isInRegion(item: Item, region: Region): boolean {
  if (item.section === 'sensation') return true;
  if (item.sites === undefined) return item.region === region;
  return item.sites.some((site) => bodyPartTable.get(site)?.region === region);
}

/** Sides of an item that a statement newly covers, given the sides on which the item is stated already. */
function sidesDeclared(item: Item, side: SideValue | undefined, stated: ReadonlySet<Side>): readonly Side[] {
  const wanted: readonly BodySide[] = side === undefined || side === 'both' ? bodySides : [side];
  const open = wanted.filter((one) => !stated.has(one) && !stated.has('midline'));
  if (item.sides === 'paired') return open;
  if (item.sides === 'midline') return stated.size === 0 && wanted.length === 2 ? ['midline'] : [];
  return stated.size === 0 && wanted.length === 2 ? ['midline'] : open;
}

const placeKinds: readonly FindingPlace['kind'][] = [
  'body-part',
  'landmark',
  'dermatome',
  'territory',
  'level-below',
  'region',
];
const sideOrder: readonly Side[] = ['left', 'right', 'midline'];

/** Catalogue order, then side, then place: the order of the request changes nothing. */
export function inExamOrder(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort(
    (a, b) =>
      orderOf(a.item) - orderOf(b.item) ||
      sideOrder.indexOf(a.side) - sideOrder.indexOf(b.side) ||
      comparePlaces(a.place, b.place),
  );
}

function comparePlaces(a: FindingPlace | undefined, b: FindingPlace | undefined): number {
  if (a === undefined || b === undefined) return Number(a !== undefined) - Number(b !== undefined);
  return placeKinds.indexOf(a.kind) - placeKinds.indexOf(b.kind) || compareText(a.key, b.key);
}
