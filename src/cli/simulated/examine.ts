import { sectionKeys } from '../../exam/catalogue/item.ts';
import type { NotTestedReason } from '../../exam/finding.ts';
import type { Chance } from '../../kernel/chance.ts';
import type { ProbeTarget } from '../../localisation/observation/probe-models.ts';
import { type Bedside, entryOf, whereOf } from '../../simulation/bedside.ts';
import { type Declarable, declarables, type Unit, units } from './bedside-routine.ts';

/** Least and greatest number of findings that are stated one by one. */
const leastFindings = 25;
const mostFindings = 60;
/** An item is in trouble from this much above health on; the sign strikes the eye and the part of the body is gone into. */
const troubled = 0.4;
/** At most so many striking items, and others of their parts, come before the routine. Judged. */
const strikingAtMost = 16;
const goneIntoAtMost = 8;
/** The rest is called normal only where nothing is likelier to be abnormal than in health by more than this. */
const quiet = 0.1;
const declaredShare = 0.4;
const declaredAtMost = 3;
/** Share of the routine that is left out with a reason. */
const notTestedShare = 0.04;

const reasons: readonly NotTestedReason[] = ['not-done', 'pain', 'declined', 'unable'];

export type Entry = Readonly<Record<string, unknown>>;

export interface Examination {
  readonly findings: Readonly<Record<string, readonly Entry[]>>;
  readonly otherwiseNormal: readonly Entry[];
}

/**
 * What a competent examiner writes down: the signs that strike the eye, some of what else lies in those parts, the routine
 * as far as the page goes, and of a few sections that the rest was normal. Whether an item is done does not depend on what
 * is found.
 */
export function examine(bedside: Bedside, chance: Chance): Examination {
  const trouble = new Map(units.map((unit) => [unit, Math.max(...unit.targets.map((one) => bedside.trouble(one)))]));
  const isStriking = (unit: Unit): boolean => (trouble.get(unit) ?? 0) >= troubled;
  const striking = some(units.filter(isStriking), strikingAtMost, chance);
  const parts = new Set(striking.flatMap((unit) => unit.parts));
  const near = units.filter((unit) => !isStriking(unit) && unit.parts.some((part) => parts.has(part)));
  const routine = units.filter((unit) => unit.isRoutine);
  const order = [...striking, ...some(near, goneIntoAtMost, chance), ...some(routine, routine.length, chance)];
  const wanted = leastFindings + Math.floor(chance.next() * (mostFindings - leastFindings));
  const done = new Map<Unit, readonly Entry[]>();
  let count = 0;
  for (const unit of order) {
    if (count >= wanted) break;
    if (done.has(unit)) continue;
    const skipped = unit.isRoutine && !isStriking(unit) && chance.isSo(notTestedShare);
    const entries = skipped ? [notTested(unit, chance)] : entriesOf(unit, bedside);
    if (entries.length === 0 || count + entries.length > mostFindings) continue;
    done.set(unit, entries);
    count += entries.length;
  }
  const findings: Record<string, readonly Entry[]> = {};
  for (const section of sectionKeys) {
    const own = units.flatMap((unit) => (unit.item.section === section ? (done.get(unit) ?? []) : []));
    if (own.length > 0) findings[section] = own;
  }
  return { findings, otherwiseNormal: declared(bedside, chance) };
}

/** At most so many of a list, by chance, in a chance order (Fisher and Yates, as far as needed). */
function some<T>(from: readonly T[], most: number, chance: Chance): readonly T[] {
  const left = [...from];
  const end = Math.min(most, left.length);
  for (let at = 0; at < end; at += 1) {
    const other = at + Math.floor(chance.next() * (left.length - at));
    const [a, b] = [left[at], left[other]];
    if (a !== undefined && b !== undefined) [left[at], left[other]] = [b, a];
  }
  return left.slice(0, end);
}

/** Both sides in one entry where they are alike. */
function entriesOf(unit: Unit, bedside: Bedside): readonly Entry[] {
  const found = unit.targets.flatMap((target) => bedside.find(target) ?? []);
  const entries = found.map(entryOf);
  const [left, right] = found;
  if (found.length !== 2 || left?.value !== right?.value) return entries;
  return [{ ...entries[0], side: 'both' }];
}

function notTested({ item, targets }: Unit, chance: Chance): Entry {
  const sides = targets.map(({ side }) => side);
  const reason = reasons[Math.floor(chance.next() * reasons.length)] ?? 'not-done';
  return {
    ...whereOf(item, targets[0]?.place),
    ...(sides.length === 2 ? { side: 'both' } : sides[0] === 'midline' ? {} : { side: sides[0] }),
    notTested: reason,
  };
}

function declared(bedside: Bedside, chance: Chance): readonly Entry[] {
  const isQuiet = ({ targets }: Declarable): boolean => targets.every((target) => isUntroubled(bedside, target));
  return declarables
    .filter(() => chance.isSo(declaredShare))
    .filter(isQuiet)
    .slice(0, declaredAtMost)
    .map(({ section, region }) => ({ section, ...(region === undefined ? {} : { region }) }));
}

function isUntroubled(bedside: Bedside, target: ProbeTarget): boolean {
  return bedside.trouble(target) <= quiet;
}
