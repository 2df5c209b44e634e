import { dermatomes } from '../../anatomy/dermatomes.ts';
import type { Modality } from '../../anatomy/probe.ts';
import { type Segment, segmentIndex } from '../../anatomy/segments.ts';
import { type DermatomeKey, dermatomeKeys } from '../../anatomy/skin.ts';
import { segmentsServing, skinPlace } from '../../anatomy/skin-places.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Finding, FindingPlace } from '../../exam/finding.ts';
import { scales } from '../../exam/scales.ts';
import { opposite } from '../../kernel/side.ts';
import { ofBothSides } from '../forward/faculty.ts';
import type { ProbeTarget } from '../observation/probe-models.ts';
import type { Column, StateColumns } from './columns.ts';
import { alsoDeniedBy, alsoTried } from './denials.ts';
import { correlation, groupOf } from './evidence-groups.ts';
import { type RestMeant, restMeant } from './rest-meant.ts';

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

/** A statement about a whole region weighs as much as a few items tested one by one. */
const summaryBase = 0.6;

/** What an examination after an attack that has passed says of where the attack was, as a share of its usual weight. Judged. */
const afterTheAttack = 0.2;

/** Whether the trouble was gone when the examination was made, so that nothing was found of it. */
export function hasPassed({ findings, history, course }: Exam): boolean {
  const isTold = history.some(({ key, present, kind }) => key === 'resolved-deficit' && present && kind !== 'family');
  return isTold && course !== 'progressive' && findings.every(({ abnormal }) => !abnormal);
}

/**
 * What the examiner stated, one datum per place, each with its discounted weight. Untested items give none.
 * @param isPast whether the trouble had gone before the examination; see `hasPassed`
 */
export function gatherEvidence(findings: readonly Finding[], columns: StateColumns, isPast = false): readonly Datum[] {
  const patches = lostPatches(findings);
  const rest = restMeant(findings);
  const drafts: Draft[] = [];
  for (const finding of onBothSidesAtOnce(findings))
    if (finding.origin === 'recorded' || rest.includes(finding)) addDrafts(drafts, finding, patches, rest);
  drafts.push(...otherHalves(findings), ...otherDirections(findings), ...denials(findings));
  const agedSides = agedOnBothSides(drafts);
  const sizes = new Map<string, number>();
  for (const { group, base } of drafts) sizes.set(group, (sizes.get(group) ?? 0) + base);
  const data: Datum[] = [];
  for (const draft of drafts) {
    const { finding, target, value, group, base, correlation: strength } = draft;
    const column = columns.column(target);
    const valueIndex = column === null ? -1 : column.model.indexOf(value);
    if (column === null || valueIndex === -1) continue;
    const size = Math.max(1, sizes.get(group) ?? 1);
    data.push({
      finding,
      column,
      valueIndex,
      abnormal: finding.abnormal && value === finding.value,
      weight:
        (isPast ? afterTheAttack : 1) *
        temper *
        base *
        (strength === 0 ? 1 : size ** -strength) *
        (mirrored(draft, agedSides) ? oneOfTwo : 1),
    });
  }
  return data;
}

/**
 * Weight of the other half of the body when a sign is stated of one half alone: who tells of a droop on the right has seen
 * the left side of the face, and who grades a weak right leg has moved the left one. Of a limb little more than that it is
 * not weak is meant, and its neighbours say the same. Judged.
 */
const otherHalfBase = { head: 0.6, limb: 0.45, reflex: 0.15 } as const;

function otherHalves(findings: readonly Finding[]): readonly Draft[] {
  const stated = new Set(findings.filter(({ value }) => value !== null).map(sidedName));
  const troubled = new Set(findings.filter(({ abnormal }) => abnormal).flatMap(limbAspect));
  const spastic = new Set(
    findings.filter(({ value }) => value === 'spastic').map(({ item, side }) => `${item.region}|${side}`),
  );
  return findings.flatMap((finding): readonly Draft[] => {
    const { item, side, place, abnormal, origin } = finding;
    if (!abnormal || origin !== 'recorded' || side === 'midline') return [];
    const other = { ...finding, side: opposite(side) };
    if (stated.has(sidedName(other))) return [];
    const target = place === undefined ? { item, side: other.side } : { item, side: other.side, place };
    const draft = { finding, target, correlation: correlation.otherHalf };
    if (item.section === 'cranialNerves' && item.probe.kind === 'faculty' && item.scale === 'presence') {
      const group = `other-half|${item.probe.faculty}|${other.side}`;
      return [{ ...draft, value: scales.presence.normal[0], group, base: otherHalfBase.head }];
    }
    const [aspect] = limbAspect(other);
    if (aspect === undefined || troubled.has(aspect) || item.scale === 'beats') return [];
    // A limb that was found spastic was not left out because it is strong.
    if (item.probe.kind === 'movement' && spastic.has(`${item.region}|${other.side}`)) return [];
    const base = item.probe.kind === 'reflex' ? otherHalfBase.reflex : otherHalfBase.limb;
    return [{ ...draft, value: scales[item.scale].normal[0], group: `other-half|${aspect}`, base }];
  });
}

/** Of both limbs alike are looked for strength, tone, reflexes, feeling and coordination. */
const lookedForInBoth: ReadonlySet<string> = new Set(['movement', 'cerebellar', 'reflex', 'tone']);

/** What a sign says to be wrong of which limb, where it is of those that are looked for in both. */
function limbAspect({ item: { probe, region }, side, place, modality }: Finding): readonly string[] {
  if (lookedForInBoth.has(probe.kind)) return [`${probe.kind}|${region}|${side}`];
  if (probe.kind !== 'sensation' || place === undefined || modality === undefined || !isPatch(place)) return [];
  return [`${tractOf[modality]}|${regionOf(place)}|${side}`];
}

/** Weight of the other directions where one was found weak: who tells of an eye that does not come in has had it look up. Judged. */
const otherDirectionBase = 0.7;

function otherDirections(findings: readonly Finding[]): readonly Draft[] {
  return alsoTried(findings).map(({ finding, item }) => ({
    finding,
    target: { item, side: finding.side },
    value: scales.presence.normal[0],
    group: `directions|${finding.side}`,
    base: otherDirectionBase,
    correlation: correlation.faculty,
  }));
}

function denials(findings: readonly Finding[]): readonly Draft[] {
  return alsoDeniedBy(findings).map(({ finding, item }) => {
    const { name, strength } = groupOf({ ...finding, item });
    const value = scales.presence.normal[0];
    return { finding, target: { item, side: finding.side }, value, group: name, base: 1, correlation: strength };
  });
}

function isPatch({ kind }: FindingPlace): boolean {
  return kind === 'dermatome' || kind === 'landmark' || kind === 'territory';
}

function sidedName({ item, side, place }: Finding): string {
  return `${item.section}/${item.key}@${place?.key ?? ''}|${side}`;
}

/**
 * What age takes, it takes on both sides: an ankle jerk or vibration at the feet that is lost on the left says little more
 * when it is lost on the right too. Weight of each of the two. Judged.
 */
const oneOfTwo = 0.5;

function agedKey({ finding: { item, place } }: Draft): string | null {
  const { probe } = item;
  if (probe.kind === 'reflex') return probe.reflex === 'ankle' ? 'ankle' : null;
  if (probe.kind !== 'sensation' || probe.modality !== 'vibration' || place === undefined) return null;
  return agedPlaces.has(place.key) ? `vibration|${place.key}` : null;
}

const agedPlaces: ReadonlySet<string> = new Set([
  'great-toe',
  'toes',
  'ankle',
  'medial-malleolus',
  'lateral-malleolus',
]);

function agedOnBothSides(drafts: readonly Draft[]): ReadonlySet<string> {
  const sides = new Map<string, Set<string>>();
  for (const draft of drafts) {
    const key = draft.finding.abnormal ? agedKey(draft) : null;
    if (key !== null) sides.set(key, (sides.get(key) ?? new Set()).add(draft.finding.side));
  }
  return new Set([...sides].flatMap(([key, both]) => (both.size > 1 ? [key] : [])));
}

function mirrored(draft: Draft, aged: ReadonlySet<string>): boolean {
  const key = agedKey(draft);
  return key !== null && aged.has(key);
}

/** Signs that say something else on both sides than on one: found on both they are one finding, without a side. */
function onBothSidesAtOnce(findings: readonly Finding[]): readonly Finding[] {
  const found = findings.filter(({ item: { probe }, abnormal, side }) => {
    return abnormal && side !== 'midline' && probe.kind === 'faculty' && ofBothSides[probe.faculty] !== undefined;
  });
  const sides = new Set(found.map(({ side }) => side));
  if (sides.size < 2) return findings;
  const [first] = found;
  return findings.flatMap((finding) =>
    finding === first ? [{ ...finding, side: 'midline' as const }] : found.includes(finding) ? [] : [finding],
  );
}

function addDrafts(drafts: Draft[], finding: Finding, patches: LostPatches, rest: RestMeant): void {
  const { item, side, place, value, origin } = finding;
  if (value === null) return;
  const { probe } = item;
  if (probe.kind === 'sensation' && place !== undefined) {
    drafts.push(...sensoryDrafts(finding, probe.modality, value, patches, rest));
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
  rest: RestMeant,
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
    // The region was declared as a whole: together its dermatomes weigh about as much as two tested points. Who declares
    // several regions normal in both modalities of a tract has not tested them all.
    const group = `region|${tractOf[modality]}|${side}|${value === 'normal'}`;
    const meant = keys.filter((key) => rest.includesSkin(key, modality, side));
    return meant.map((key) => ({
      ...at(key, value, Math.min(0.5, 2 / keys.length) * summaryBase, group),
      correlation: correlation.regions,
    }));
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

function segmentsNamed({ kind, key }: FindingPlace): readonly number[] {
  const row = kind === 'territory' || kind === 'dermatome' || kind === 'landmark' ? skinPlace(kind, key) : undefined;
  // Other points of skin are tried as samples of a limb; the saddle is named because it alone is numb.
  if (row === undefined || (kind === 'landmark' && row.region !== 'perineum')) return [];
  return segmentsServing(row);
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

const dermatomeSegments = dermatomeKeys.map((key) => [key, segmentIndex(dermatomes[key].segment)] as const);

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
  return dermatomeSegments.flatMap(([key, segment]) => {
    const distance = segment - border;
    if (distance > 0) return [at(key, value, distance <= 3 ? 0.5 : 0.15, group)];
    return distance > -normalAbove && value !== 'normal' ? [at(key, 'normal', 0.4, group)] : [];
  });
}
