import { fileURLToPath } from 'node:url';
import { validateResource } from '@medplum/core';
import type { MeasureReport } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { inventExams } from '../../src/cli/simulated/invented-exams.ts';
import { simulationModel } from '../../src/cli/simulated/simulated-patient.ts';
import { sectionKeys } from '../../src/exam/catalogue/item.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { evaluateMeasure } from '../../src/measures/evaluate-measure.ts';
import type { ServedResource } from '../../src/measures/exam-lists.ts';
import { measuresFrom } from '../../src/measures/load-measures.ts';
import { builtSteps } from '../support/built.ts';
import { indexR4Definitions } from '../support/r4-definitions.ts';
import { servedResources } from '../support/served-exam.ts';

indexR4Definitions();

/** Statement of an exam as it was sent; the measures never see it. */
interface Sent {
  readonly notTested?: string;
  readonly [property: string]: unknown;
}

const now = new Date('2026-02-01T00:00:00Z');
const steps = builtSteps();
const model = simulationModel(createExamReader());
const invented = [...inventExams(model, { count: 300, seed: 3, until: new Date('2026-01-01T00:00:00Z') })];
const exams = invented.map(({ exam: body }) => {
  const exam = steps.readExam(body, { purpose: 'record', now });
  const assessment = steps.assess(exam);
  return {
    findings: (section: string) => ((body.findings ?? {}) as Record<string, readonly Sent[]>)[section] ?? [],
    otherwiseNormal: ((body.otherwiseNormal ?? []) as readonly { section: string; region?: string }[]).map(
      ({ section, region = 'everywhere' }) => ({ section, region }),
    ),
    assessment,
    resources: servedResources(steps, exam, assessment),
  };
});
type SentExam = (typeof exams)[number];
const measures = measuresFrom(fileURLToPath(new URL('../../profiles/measures', import.meta.url)));

async function evaluate(id: string): Promise<NonNullable<MeasureReport['group']>> {
  const measure = measures.get(id);
  if (measure === undefined) throw new Error(`no measure ${id}`);
  const report = await evaluateMeasure(
    measure,
    exams.map(({ resources }) => resources as ServedResource[]),
    { periodStart: '2023', periodEnd: '2026', reportType: 'summary', now, id: 'report' },
  );
  validateResource(report as never);
  return report.group ?? [];
}

type Group = NonNullable<MeasureReport['group']>[number];
const counts = ({ population = [] }: Group) =>
  Object.fromEntries(population.map(({ code, count }) => [code?.coding?.[0]?.code, count]));
const strata = ({ stratifier }: Group) =>
  Object.fromEntries(
    (stratifier?.[0]?.stratum ?? []).map(({ value, population = [] }) => [value?.text, population[0]?.count ?? 0]),
  );
const number = (test: (exam: SentExam) => boolean) => exams.filter(test).length;
const wasTested = ({ notTested }: Sent) => notTested === undefined;

/** Whether the examiner states that everything else of the section, or of the region named, was tested and normal. */
const saidNormal = ({ otherwiseNormal }: SentExam, section: string, ...regions: readonly string[]): boolean =>
  otherwiseNormal.some(
    (one) => one.section === section && (regions.length === 0 || ['everywhere', ...regions].includes(one.region)),
  );

/** What documentation of a section there is, from the body of the exam. */
function documented(exam: SentExam, section: string): string {
  const findings = exam.findings(section);
  if (findings.some(wasTested)) return 'tested';
  if (saidNormal(exam, section)) return 'summary-statement';
  return findings.length > 0 ? 'only-not-tested' : 'not-documented';
}

// What is expected is counted in the bodies that were sent and in what was computed from them, never in the resources.
describe('the shipped measures', () => {
  it('count the documentation of every section, and how it is documented', async () => {
    const groups = await evaluate('section-documentation');
    expect(groups).toHaveLength(sectionKeys.length);
    for (const [index, section] of sectionKeys.entries()) {
      const group = groups[index] as Group;
      const kinds = exams.map((exam) => documented(exam, section));
      expect([section, counts(group)]).toEqual([
        section,
        {
          'initial-population': exams.length,
          denominator: exams.length,
          numerator: kinds.filter((kind) => kind !== 'not-documented').length,
        },
      ]);
      expect([section, strata(group)]).toEqual([
        section,
        Object.fromEntries([...new Set(kinds)].map((kind) => [kind, kinds.filter((one) => one === kind).length])),
      ]);
    }
  });

  it('count vibration and ankle reflexes where a neuropathy leads', async () => {
    // One nerve alone, and a cranial nerve, are not what the measure asks about.
    const isSuspected = ({ assessment: { pattern, localisations } }: SentExam) =>
      /neuropathy$/.test(pattern.key.replace(/^(?:mono|cranial-)neuropathy$/, '')) ||
      /neuropathy|ganglionopathy/.test(localisations[0]?.code.code ?? '');
    const [vibration, ankle] = await evaluate('neuropathy-signs');
    const ofVibration = ({ findings }: SentExam) =>
      findings('sensation').filter(({ modality }) => modality === 'vibration');
    const ofAnkle = ({ findings }: SentExam) => findings('reflexes').filter(({ reflex }) => reflex === 'ankle');
    // Vibration is felt at fingers as well as at toes.
    for (const [group, section, found, ...regions] of [
      [vibration, 'sensation', ofVibration, 'upper-limbs', 'lower-limbs'],
      [ankle, 'reflexes', ofAnkle, 'lower-limbs'],
    ] as const) {
      const suspected = number(isSuspected);
      const wasDone = (exam: SentExam) => found(exam).some(wasTested) || saidNormal(exam, section, ...regions);
      const tested = number((exam) => isSuspected(exam) && wasDone(exam));
      expect(counts(group as Group)).toMatchObject({ 'initial-population': suspected, numerator: tested });
      expect(tested).toBeGreaterThan(0);
      expect(suspected).toBeLessThan(exams.length);
    }
  });

  it('count bladder, bowel and saddle where both legs have signs', async () => {
    const legs =
      /^(?:power\/(?:hip|knee|ankle|toe|great-toe)-|tone\/(?:lower-limb|knee|ankle)|clonus\/|reflexes\/(?:knee|ankle)|plantars\/)/;
    const sidesWithSigns = ({ resources }: SentExam) =>
      new Set(
        resources.flatMap((resource) => {
          if (resource.resourceType !== 'Observation' || resource.interpretation?.[0]?.coding?.[0]?.code !== 'A')
            return [];
          const [, side] = /\.(left|right)$/.exec(resource.bodySite?.coding?.[0]?.code ?? '') ?? [];
          return resource.code.coding?.some(({ code = '' }) => legs.test(code)) && side !== undefined ? [side] : [];
        }),
      );
    const isBilateral = (exam: SentExam) => sidesWithSigns(exam).size === 2;
    const sphincters = (exam: SentExam) =>
      saidNormal(exam, 'sphincters') ||
      exam.findings('sphincters').some((one) => wasTested(one) && !/saddle|erectile|genital/.test(String(one.sign)));
    const saddle = (exam: SentExam) =>
      saidNormal(exam, 'sphincters') ||
      exam.findings('sphincters').some((one) => wasTested(one) && one.sign === 'saddle-anaesthesia') ||
      exam
        .findings('sensation')
        .some(
          (one) =>
            wasTested(one) &&
            (/saddle|perianal/.test(String(one.site)) ||
              /^S(?:3|4-5)$/.test(String(one.dermatome)) ||
              /^S[345]$/.test(String(one.levelBelow))),
        );
    const [first, second] = await evaluate('bilateral-leg-signs');
    const bilateral = number(isBilateral);
    expect(bilateral).toBeGreaterThan(0);
    expect(bilateral).toBeLessThan(exams.length);
    expect(counts(first as Group)).toMatchObject({
      'initial-population': bilateral,
      numerator: number((exam) => isBilateral(exam) && sphincters(exam)),
    });
    expect(counts(second as Group)).toMatchObject({
      'initial-population': bilateral,
      numerator: number((exam) => isBilateral(exam) && saddle(exam)),
    });
  });

  it('count red flags by key, and the urgent proposals beside them', async () => {
    const raised = ({ assessment }: SentExam) =>
      assessment.redFlags.filter(({ state }) => state === 'present').map(({ key }) => key);
    const isUrgent = ({ assessment }: SentExam) =>
      assessment.workup.some(({ priority }) => priority === 'urgent' || priority === 'stat');
    const [group] = await evaluate('red-flag-proposals');
    const flagged = exams.filter((exam) => raised(exam).length > 0);
    expect(flagged.length).toBeGreaterThan(0);
    expect(counts(group as Group)).toMatchObject({
      'initial-population': flagged.length,
      numerator: flagged.filter(isUrgent).length,
    });
    const keys = new Set(flagged.flatMap(raised));
    expect(Object.keys(strata(group as Group)).length).toBe(keys.size);
    const [minutes] = await evaluate('red-flag-minutes');
    expect(counts(minutes as Group)['measure-population']).toBe(flagged.filter(isUrgent).length);
  });

  it('count how often the leading localisation was certain', async () => {
    const [group] = await evaluate('certain-localisation');
    const isNormal = ({ assessment }: SentExam) => assessment.conclusion === 'no-abnormality';
    const isCertain = ({ assessment: { conclusion, localisations } }: SentExam) =>
      ['single-site', 'diffuse-process'].includes(conclusion) &&
      Math.round((localisations[0]?.probability ?? 0) * 1000) >= 800;
    expect(counts(group as Group)).toMatchObject({
      denominator: exams.length,
      'denominator-exclusion': number(isNormal),
      numerator: number((exam) => isCertain(exam)),
    });
    const conclusions = exams.map(({ assessment }) => assessment.conclusion);
    expect(Object.values(strata(group as Group)).reduce((sum: number, count) => sum + Number(count), 0)).toBe(
      conclusions.length,
    );
  });
});
