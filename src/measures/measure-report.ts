import type {
  Coding,
  List,
  MeasureReport,
  MeasureReportGroup,
  MeasureReportGroupPopulation,
  MeasureReportGroupStratifierStratum,
  Quantity,
} from 'fhir/r4.js';
import type { CompiledGroup, CompiledMeasure } from './compile-measure.ts';
import type { EvaluationRequest } from './evaluate-measure.ts';
import { extensions, type PopulationCode, populationCodes, populationSystem } from './published-codes.ts';
import { scoreOf } from './score.ts';
import type { GroupTally, Tally } from './tally.ts';

/** The counts as a report, in the order of the Measure; strata by name. Lists of exams are contained. */
export function measureReport(
  measure: CompiledMeasure,
  tallies: readonly GroupTally[],
  { id, now, periodStart, periodEnd, reportType, subject }: EvaluationRequest,
): MeasureReport {
  const { url, version, improvementNotation } = measure.definition;
  const lists: List[] = [];
  const keep =
    reportType === 'subject-list'
      ? (members: readonly string[]) => {
          const list = listOf(`list-${lists.length + 1}`, members);
          lists.push(list);
          return { reference: `#${list.id}` };
        }
      : undefined;
  const group = measure.groups.map((one, index) => groupOf(measure, one, tallies[index] as GroupTally, keep));
  return {
    resourceType: 'MeasureReport',
    id,
    ...(lists.length === 0 ? {} : { contained: lists }),
    status: 'complete',
    type: reportType,
    measure: version === undefined ? (url ?? '') : `${url}|${version}`,
    ...(subject === undefined ? {} : { subject: { reference: subject } }),
    date: now.toISOString(),
    period: { start: periodStart, end: periodEnd },
    ...(improvementNotation === undefined ? {} : { improvementNotation }),
    group,
  };
}

type KeepList = ((members: readonly string[]) => { reference: string }) | undefined;

function groupOf(
  measure: CompiledMeasure,
  group: CompiledGroup,
  { all, strata }: GroupTally,
  keep: KeepList,
): MeasureReportGroup {
  const { code, stratifier = [] } = group.definition;
  const score = scoreQuantity(measure, group, all);
  return {
    ...(code === undefined ? {} : { code }),
    population: populationsIn(group, all, keep),
    ...(score === undefined ? {} : { measureScore: score }),
    ...(stratifier.length === 0
      ? {}
      : {
          stratifier: stratifier.map(({ code: about }, index) => {
            const stratum = [...(strata[index] ?? [])]
              .sort(([one], [other]) => (one < other ? -1 : 1))
              .map(([name, tally]) => stratumOf(measure, group, name, tally));
            return { ...(about === undefined ? {} : { code: [about] }), ...(stratum.length === 0 ? {} : { stratum }) };
          }),
        }),
  };
}

function stratumOf(
  measure: CompiledMeasure,
  group: CompiledGroup,
  name: string,
  tally: Tally,
): MeasureReportGroupStratifierStratum {
  const score = scoreQuantity(measure, group, tally);
  return {
    value: { text: name },
    population: populationsIn(group, tally, undefined),
    ...(score === undefined ? {} : { measureScore: score }),
  };
}

/** Populations of a group as its Measure lists them. */
function populationsIn(group: CompiledGroup, tally: Tally, keep: KeepList): MeasureReportGroupPopulation[] {
  return (group.definition.population ?? []).map(({ code }) => {
    const role = roleOf(code?.coding);
    const members = tally.members.get(role) ?? [];
    const number = role === 'measure-observation' ? tally.observations.length : (tally.counts.get(role) ?? 0);
    return {
      ...(code === undefined ? {} : { code }),
      count: number,
      ...(keep === undefined || members.length === 0 ? {} : { subjectResults: keep(members) }),
    };
  });
}

/** Digits that a number of double precision keeps; with the 17 that it prints, a small share has more decimals than FHIR asks readers to take. */
const significantDigits = 15;

function scoreQuantity(measure: CompiledMeasure, group: CompiledGroup, tally: Tally): Quantity | undefined {
  const count = (population: PopulationCode) => tally.counts.get(population) ?? 0;
  const score = scoreOf(measure.scoring, count, tally.observations, group.observation?.method);
  if (score === undefined) return undefined;
  const value = Number(score.toPrecision(significantDigits));
  const isUnit = ({ url }: { url: string }) => url === extensions.scoringUnit;
  const { extension: ofGroup = [] } = group.definition;
  const unit = (ofGroup.find(isUnit) ?? measure.definition.extension?.find(isUnit))?.valueCodeableConcept?.coding?.[0];
  if (unit?.system === undefined || unit.code === undefined) return { value };
  return { value, unit: unit.display ?? unit.code, system: unit.system, code: unit.code };
}

function listOf(id: string, members: readonly string[]): List {
  return {
    resourceType: 'List',
    id,
    status: 'current',
    mode: 'snapshot',
    entry: members.map((member) => ({ item: { reference: `ClinicalImpression/${member}` } })),
  };
}

function roleOf(codings: readonly Coding[] = []): PopulationCode {
  const codes = codings.filter(({ system }) => system === populationSystem).map(({ code }) => code);
  return populationCodes.find((known) => codes.includes(known)) as PopulationCode;
}
