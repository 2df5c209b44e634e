import { skinPlace } from '../anatomy/skin-places.ts';
import { itemById } from '../exam/catalogue/catalogue.ts';
import type { Glance } from '../localisation/glance.ts';
import type { Site } from '../localisation/hypothesis.ts';
import { columnName } from '../localisation/inference/columns.ts';
import type { NextExamination } from '../localisation/localisation.ts';
import type { ProbeTarget } from '../localisation/observation/probe-models.ts';
import type { Found } from '../simulation/bedside.ts';
import type { AskedItem } from './asked-items.ts';
import { askedFor, wordsOf } from './examine-patient.ts';
import { knownTarget } from './known-targets.ts';
import type { PracticePatient } from './patient.ts';
import type { PracticeModel } from './practice-model.ts';

/** Probability of the leading site from which the examiner stops; the evaluation takes as much for sure. Judged. */
export const sureFrom = 0.8;
/** Items after which the examiner gives up. Bounds the work. */
export const itemsAtMost = 20;

/** One item that the efficient examiner asked for. */
export interface EfficientStep {
  readonly asked: AskedItem;
  readonly text: string;
  /** Why it was chosen. */
  readonly because: string;
  /** The site that leads afterwards. */
  readonly leading: LeadingSite;
}

export interface LeadingSite {
  readonly site: string;
  readonly label: string;
  readonly side: Site['side'];
  readonly level: string | null;
  readonly probability: number;
}

export interface EfficientExamination {
  readonly sureFrom: number;
  readonly itemsAtMost: number;
  /** Whether the leading site passed `sureFrom`, or else the items were used up or nothing more was worth doing. */
  readonly isSure: boolean;
  /** Items after which the lesion itself led and went on leading to the end; null when another site led at the end. */
  readonly ledFrom: number | null;
  readonly steps: readonly EfficientStep[];
}

/**
 * What an examiner needs who begins with the complaint and then always does what is expected to tell most. Both meet the
 * same patient, and find the same. Yields after every item, so that a caller can do other things in between.
 */
export function* examineEfficiently(
  { localiser }: PracticeModel,
  patient: PracticePatient,
): Generator<void, EfficientExamination> {
  const found: Found[] = [];
  const done = new Set<ProbeTarget>();
  const steps: EfficientStep[] = [];
  const complaints = patient.complainedOf.flatMap((target) => knownTarget(target) ?? []);
  let exam = patient.examOf(found);
  let answer = localiser.glance(exam);
  while (steps.length < itemsAtMost && !isSure(answer, steps.length)) {
    const next = nextItem(answer, complaints, done);
    if (next === null) break;
    done.add(next.target);
    const result = patient.find(next.target);
    if (result === null) continue;
    found.push(result);
    exam = patient.examOf(found);
    answer = localiser.glance(exam);
    const text = wordsOf(exam).get(columnName(next.target)) ?? '';
    steps.push({ asked: askedFor(next.target), text, because: next.because, leading: leadingOf(answer) });
    yield;
  }
  return { sureFrom, itemsAtMost, isSure: isSure(answer, steps.length), ledFrom: ledFrom(steps, patient.site), steps };
}

function ledFrom(steps: readonly EfficientStep[], { key, side, kind, level }: Site): number | null {
  const isOther = ({ leading }: EfficientStep): boolean =>
    leading.site !== key || leading.side !== side || (kind !== 'cord' && leading.level !== level);
  const last = steps.findLastIndex(isOther);
  return last === steps.length - 1 ? null : last + 2;
}

/** Nobody is sure who has examined nothing. */
function isSure({ leading }: Glance, items: number): boolean {
  return items > 0 && leading.probability >= sureFrom;
}

function nextItem(
  { nextExamination }: Glance,
  complaints: readonly ProbeTarget[],
  done: ReadonlySet<ProbeTarget>,
): { readonly target: ProbeTarget; readonly because: string } | null {
  const complaint = complaints.find((target) => !done.has(target));
  if (complaint !== undefined) return { target: complaint, because: 'it is complained of' };
  for (const next of nextExamination) {
    const target = targetOf(next);
    if (target !== undefined && !done.has(target)) return { target, because: next.because };
  }
  return null;
}

/** The target of a proposal. */
export function targetOf({ item: id, side, place }: NextExamination): ProbeTarget | undefined {
  const item = itemById.get(id);
  if (item === undefined) return undefined;
  if (place === undefined) return knownTarget({ item, side: side ?? 'midline' });
  const kind = skinPlace('dermatome', place) === undefined ? 'landmark' : 'dermatome';
  return knownTarget({ item, side: side ?? 'midline', place: { kind, key: place } });
}

function leadingOf({ leading: { site, probability } }: Glance): LeadingSite {
  return { site: site.key, label: site.label, side: site.side, level: site.level, probability };
}
