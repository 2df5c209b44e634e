import type { Modality } from '../../anatomy/probe.ts';
import { type Segment, segmentIndex } from '../../anatomy/segments.ts';
import { type DermatomeKey, dermatomeKeys, type SkinPlace } from '../../anatomy/skin.ts';
import { skinPlace } from '../../anatomy/skin-places.ts';
import type { Item } from '../../exam/catalogue/item.ts';
import type { Finding, FindingPlace } from '../../exam/finding.ts';
import type { ProbeTarget } from '../observation/probe-models.ts';
import type { Column, StateColumns } from './columns.ts';

/** One value that the engine weighs: a finding, or one of the places that a summary statement stands for. */
export interface Datum {
  readonly finding: Finding;
  readonly column: Column;
  /** Index of the stated value among the values of the column's model. */
  readonly valueIndex: number;
  readonly abnormal: boolean;
  /** Share of the full weight that the datum has after correlated data have been discounted, 0 to 1. */
  readonly weight: number;
}

interface Draft {
  readonly finding: Finding;
  readonly target: ProbeTarget;
  readonly value: string | number;
  readonly group: string;
  readonly base: number;
  readonly correlation: number;
}

/** All evidence is tempered by this factor, because findings are never quite independent. Judged; calibrated on simulated examinations. */
const temper = 0.8;

/**
 * Correlation of data within a group: a group of n has the weight of n to the power of (1 - correlation). Judged from how
 * examinations are done: neighbouring patches of skin are hardly tested apart, muscles one by one.
 */
const correlation = { power: 0.12, sensation: 0.4, task: 0.5, upperMotor: 0.35, summary: 0.5, other: 0.1 } as const;

/** A statement about a whole region weighs as much as a few items tested one by one. */
const summaryBase = 0.6;

/** What the examiner stated, one datum per place, each with its discounted weight. Untested items give none. */
export function gatherEvidence(findings: readonly Finding[], columns: StateColumns): readonly Datum[] {
  const patches = lostPatches(findings);
  const drafts: Draft[] = [];
  for (const finding of findings) addDrafts(drafts, finding, patches);
  const sizes = new Map<string, number>();
  for (const { group, base } of drafts) sizes.set(group, (sizes.get(group) ?? 0) + base);
  const data: Datum[] = [];
  for (const { finding, target, value, group, base, correlation: strength } of drafts) {
    const column = columns.column(target);
    const valueIndex = column === null ? -1 : column.model.indexOf(value);
    if (column === null || valueIndex === -1) continue;
    const size = Math.max(1, sizes.get(group) ?? 1);
    data.push({
      finding,
      column,
      valueIndex,
      abnormal: finding.abnormal && value === finding.value,
      weight: temper * base * (strength === 0 ? 1 : size ** -strength),
    });
  }
  return data;
}

function addDrafts(drafts: Draft[], finding: Finding, patches: LostPatches): void {
  const { item, side, place, value, origin } = finding;
  if (value === null) return;
  const { probe } = item;
  if (probe.kind === 'sensation' && place !== undefined) {
    drafts.push(...sensoryDrafts(finding, probe.modality, value, patches));
    return;
  }
  const isSummary = origin === 'otherwise-normal';
  const { name, strength } = groupOf(finding);
  drafts.push({
    finding,
    target: place === undefined ? { item, side } : { item, side, place },
    value,
    group: name,
    base: isSummary ? summaryBase : 1,
    correlation: isSummary ? correlation.summary : strength,
  });
}

/** The data that a finding is correlated with, by name, and how strongly. */
interface Group {
  readonly name: string;
  readonly strength: number;
}

/** Groups by item, then by what else of the finding decides; there are at most twelve of an item. */
const groups = new Map<Item, Map<string, Group>>();

function groupOf(finding: Finding): Group {
  const { item, side, abnormal, origin } = finding;
  let ofItem = groups.get(item);
  if (ofItem === undefined) {
    ofItem = new Map();
    groups.set(item, ofItem);
  }
  const key = groupKeys[side][origin][abnormal ? 'abnormal' : 'normal'];
  const known = ofItem.get(key);
  if (known !== undefined) return known;
  const [name, strength] = namedGroup(finding);
  const group = { name: `${origin}|${name}`, strength };
  ofItem.set(key, group);
  return group;
}

const byResult = (name: string) => ({ abnormal: `${name}|abnormal`, normal: `${name}|normal` });
const byOrigin = (name: string) => ({
  recorded: byResult(`${name}|recorded`),
  'otherwise-normal': byResult(`${name}|otherwise-normal`),
});
const groupKeys = { left: byOrigin('left'), right: byOrigin('right'), midline: byOrigin('midline') } as const;

function namedGroup({ item, side, abnormal }: Finding): readonly [string, number] {
  switch (item.probe.kind) {
    case 'movement':
      return [`power|${item.region}|${side}|${abnormal}`, correlation.power];
    case 'weakness-of':
      return [`task|${item.probe.movements.join('+')}|${side}`, correlation.task];
    case 'upper-motor':
    case 'clonus':
    case 'tone':
      return [`upper-motor|${item.region}|${side}`, correlation.upperMotor];
    case 'cerebellar':
      return [`coordination|${item.region}|${side}`, correlation.upperMotor];
    case 'denervation':
      return [`denervation|${item.region}|${side}`, correlation.upperMotor];
    default:
      return [`${item.section}|${side}`, correlation.other];
  }
}

const tractOf: Readonly<Record<Modality, string>> = {
  pinprick: 'pain',
  temperature: 'pain',
  vibration: 'position',
  'joint-position': 'position',
  'light-touch': 'touch',
};

function sensoryDrafts(
  finding: Finding,
  modality: Modality,
  value: string | number,
  patches: LostPatches,
): readonly Draft[] {
  const { item, side, place } = finding;
  if (place === undefined) return [];
  const at = (key: DermatomeKey, stated: string | number, base: number, group: string): Draft => ({
    finding,
    target: { item, side, place: { kind: 'dermatome', key } },
    value: stated,
    group,
    base,
    correlation: 0,
  });
  if (place.kind === 'level-below') return levelDrafts(place.key as Segment, value, at, `level|${finding.id}`);
  if (place.kind === 'region') {
    const keys = sampledByRegion.get(place.key) ?? [];
    // The region was declared as a whole: together its dermatomes weigh about as much as two tested points.
    return keys.map((key) => at(key, value, Math.min(0.5, 2 / keys.length) * summaryBase, `region|${finding.id}`));
  }
  const region = regionOf(place);
  const border = finding.abnormal ? bordersOf(place, patches.get(patchName(finding)) ?? []) : [];
  return [
    ...border.map((key) => at(key, 'normal', borderBase, `border|${finding.id}`)),
    {
      finding,
      target: { item, side, place },
      value,
      group: `sensation|${tractOf[modality]}|${region}|${side}|${finding.abnormal}`,
      base: 1,
      correlation: correlation.sensation,
    },
  ];
}

/** Weight of the skin beyond a patch that was named: who names a dermatome or a nerve's territory says where it ends. */
const borderBase = 0.2;

/** By modality and side, the segments that the named patches of lost sensation take in. */
type LostPatches = ReadonlyMap<string, readonly number[]>;

function lostPatches(findings: readonly Finding[]): LostPatches {
  const patches = new Map<string, number[]>();
  for (const finding of findings) {
    if (!finding.abnormal || finding.place === undefined) continue;
    const named = segmentsNamed(finding.place);
    if (named.length > 0) patches.set(patchName(finding), [...(patches.get(patchName(finding)) ?? []), ...named]);
  }
  return patches;
}

function patchName({ modality, side }: Finding): string {
  return `${modality}|${side}`;
}

const segmentsByRow = new Map<SkinPlace, readonly number[]>();

function segmentsNamed({ kind, key }: FindingPlace): readonly number[] {
  const row = kind === 'territory' || kind === 'dermatome' ? skinPlace(kind, key) : undefined;
  if (row === undefined) return [];
  const known =
    segmentsByRow.get(row) ??
    row.supplies.flatMap(({ roots }) => Object.keys(roots) as Segment[]).map((root) => segmentIndex(root));
  segmentsByRow.set(row, known);
  return known;
}

/**
 * Dermatomes two to four segments beyond a named dermatome or territory on either side. Who names several samples one
 * stretch of skin, so that only what lies beyond all of them is its border.
 */
function bordersOf(place: FindingPlace, patch: readonly number[]): readonly DermatomeKey[] {
  const own = segmentsNamed(place);
  if (own.length === 0) return [];
  const top = Math.min(...own);
  const bottom = Math.max(...own);
  const patchTop = Math.min(...patch);
  const patchBottom = Math.max(...patch);
  return dermatomeSegments.flatMap(([key, segment]) => {
    if (segment >= patchTop && segment <= patchBottom) return [];
    const away = segment < top ? top - segment : segment - bottom;
    return away >= 2 && away <= 4 ? [key] : [];
  });
}

function segmentOf(key: DermatomeKey): Segment {
  return key === 'S4-5' ? 'S4' : key;
}

const dermatomeSegments = dermatomeKeys.map((key) => [key, segmentIndex(segmentOf(key))] as const);

/** Dermatomes that stand for a region which was declared normal: enough to meet every root and tract. */
const sampled: readonly DermatomeKey[] = [
  'C2',
  'C3',
  'C5',
  'C6',
  'C7',
  'C8',
  'T1',
  'T4',
  'T8',
  'T11',
  'L1',
  'L2',
  'L3',
  'L4',
  'L5',
  'S1',
  'S2',
  'S3',
  'S4-5',
];

const sampledByRegion = new Map<string, DermatomeKey[]>();
for (const key of sampled) {
  const region = skinPlace('dermatome', key)?.region ?? '';
  sampledByRegion.set(region, [...(sampledByRegion.get(region) ?? []), key]);
}

function regionOf(place: { readonly kind: string; readonly key: string }): string {
  const { kind } = place;
  return kind === 'dermatome' || kind === 'landmark' || kind === 'territory'
    ? (skinPlace(kind, place.key)?.region ?? kind)
    : kind;
}

/** How far above a stated level the examiner must have found sensation normal to call it a level. */
const normalAbove = 4;

/**
 * A sensory level says two things: abnormal below, and by the meaning of the word normal at the level and just above it.
 * The dermatomes at the border carry most of the weight.
 */
function levelDrafts(
  level: Segment,
  value: string | number,
  at: (key: DermatomeKey, stated: string | number, base: number, group: string) => Draft,
  group: string,
): readonly Draft[] {
  const border = segmentIndex(level);
  return dermatomeKeys.flatMap((key) => {
    const row = skinPlace('dermatome', key);
    if (row === undefined) return [];
    const distance = segmentIndex(segmentOf(key)) - border;
    if (distance > 0) return [at(key, value, distance <= 3 ? 0.5 : 0.15, group)];
    return distance > -normalAbove && value !== 'normal' ? [at(key, 'normal', 0.4, group)] : [];
  });
}
