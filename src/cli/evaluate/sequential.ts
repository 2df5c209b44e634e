import { skinPlace } from '../../anatomy/skin-places.ts';
import { itemById } from '../../exam/catalogue/catalogue.ts';
import { columnName } from '../../localisation/inference/columns.ts';
import type { Localisation, NextExamination } from '../../localisation/localisation.ts';
import type { Localiser } from '../../localisation/localise.ts';
import type { ProbeTarget } from '../../localisation/observation/probe-models.ts';
import type { Found } from '../../simulation/bedside.ts';
import { partOf } from '../../simulation/body-part.ts';
import { everything, routine } from '../simulated/routine.ts';
import { SimulatedPatient, type SimulationModel } from '../simulated/simulated-patient.ts';
import { sureFrom } from './judge.ts';
import { namesSite } from './simulate.ts';

/** Most items that are examined beyond the complaint. */
export const itemsAtMost = 40;

/** How an examiner chooses the next item; null when nothing is left to do. */
type Order = (answer: Localisation, done: ReadonlySet<string>) => ProbeTarget | null;

/** Items examined until the right site was first with enough probability, one number a patient; null when it never was. */
export interface SequentialRun {
  readonly name: string;
  readonly items: readonly (number | null)[];
}

export interface Sequential {
  readonly runs: readonly SequentialRun[];
  /** Of the patients in whom the two orders differ: how often the proposals needed fewer items than head to toe. */
  readonly sooner: { readonly proposals: number; readonly routine: number };
}

/**
 * Examines simulated patients item by item, from the complaint to the right site, in three orders: as the localiser proposes;
 * from head to toe; and from head to toe, but the part complained of first. Every order meets the same patient and the same
 * findings. Patients without a complaint (nothing is often abnormal in them) are passed over.
 */
export function examineInOrder(model: SimulationModel, localiser: Localiser, count: number, seed: number): Sequential {
  const results: (number | null)[][] = [];
  for (let number = 1; results.length < count && number <= count * drawsPerPatient; number += 1) {
    const patient = new SimulatedPatient(model, seed, number);
    const complaint = complaintOf(patient);
    if (complaint.length === 0) continue;
    const orders = [proposed, fixed(routine), fixed(partsFirst(complaint))];
    results.push(orders.map((order) => itemsNeeded(patient, complaint, order, localiser)));
  }
  const names = ['as proposed', 'head to toe', 'head to toe, the part complained of first'];
  const pairs = results.map(([ours, theirs]) => [ours ?? beyond, theirs ?? beyond] as const);
  return {
    runs: names.map((name, order) => ({ name, items: results.map((items) => items[order] ?? null) })),
    sooner: {
      proposals: pairs.filter(([ours, theirs]) => ours < theirs).length,
      routine: pairs.filter(([ours, theirs]) => theirs < ours).length,
    },
  };
}

/** Rank of "never" among numbers of items. */
const beyond = Number.POSITIVE_INFINITY;
/** Most draws for each patient wanted: those without a complaint are few. */
const drawsPerPatient = 5;

/** Signs that a complaint is made of, and how much oftener than in health each is abnormal at least. Judged. */
const complaintSigns = 2;
const complainedOf = 0.5;
/** The signs are taken from so many of the most troubled. */
const mostTroubled = 12;

/** What the patient comes with: a few of the signs that the lesion makes worst, known to be there. */
function complaintOf(patient: SimulatedPatient): readonly Found[] {
  if (patient.isHealthy) return [];
  const worst = everything
    .map((target) => ({ target, trouble: patient.trouble(target) }))
    .filter(({ trouble }) => trouble >= complainedOf)
    .sort((a, b) => b.trouble - a.trouble)
    .slice(0, mostTroubled)
    .map(({ target }) => target);
  const chosen: ProbeTarget[] = [];
  while (chosen.length < complaintSigns && worst.length > 0) {
    const [target] = worst.splice(Math.floor(patient.chance.next() * worst.length), 1);
    if (target !== undefined) chosen.push(target);
  }
  return chosen.flatMap((target) => patient.find(target, true) ?? []);
}

function itemsNeeded(
  patient: SimulatedPatient,
  complaint: readonly Found[],
  order: Order,
  localiser: Localiser,
): number | null {
  const found = [...complaint];
  const done = new Set(complaint.map(({ target }) => columnName(target)));
  for (let items = 0; ; items += 1) {
    const answer = localiser.localise(patient.examOf(found));
    const [first] = answer.localisations;
    if (first !== undefined && first.probability >= sureFrom && namesSite(first, patient.lesion.site)) return items;
    const next = items < itemsAtMost ? order(answer, done) : null;
    if (next === null) return null;
    done.add(columnName(next));
    const result = patient.find(next);
    if (result !== null) found.push(result);
  }
}

const proposed: Order = ({ nextExamination }) =>
  nextExamination[0] === undefined ? null : targetOf(nextExamination[0]);

function targetOf({ item, side, place }: NextExamination): ProbeTarget | null {
  const row = itemById.get(item);
  if (row === undefined) return null;
  if (place === undefined) return { item: row, side: side ?? 'midline' };
  const kind = skinPlace('dermatome', place) === undefined ? 'landmark' : 'dermatome';
  return { item: row, side: side ?? 'midline', place: { kind, key: place } };
}

function fixed(targets: readonly ProbeTarget[]): Order {
  return (_, done) => targets.find((target) => !done.has(columnName(target))) ?? null;
}

/** The routine, the parts complained of first, each in its own order. */
function partsFirst(complaint: readonly Found[]): readonly ProbeTarget[] {
  const parts = new Set(complaint.map(({ target }) => partOf(target)));
  return [...routine.filter((one) => parts.has(partOf(one))), ...routine.filter((one) => !parts.has(partOf(one)))];
}
