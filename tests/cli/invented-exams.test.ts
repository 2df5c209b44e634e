import { describe, expect, it } from 'vitest';
import { inventExams } from '../../src/cli/simulated/invented-exams.ts';
import { simulationModel } from '../../src/cli/simulated/simulated-patient.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { faultsOf } from '../exam/support/read.ts';

const reader = createExamReader();
const model = simulationModel(reader);
const until = new Date('2026-01-01T00:00:00Z');
const exams = [...inventExams(model, { count: 500, seed: 1, until })];

describe('invented exams', () => {
  it('are read without a fault, as are their corrections', () => {
    const bodies = exams.flatMap(({ exam, correction }) => (correction === undefined ? [exam] : [exam, correction]));
    expect(bodies.flatMap((body) => faultsOf(body))).toEqual([]);
    expect(bodies.length).toBeGreaterThan(exams.length);
  });

  it('come out the same under the same seed, and fewer are the first of more', () => {
    const again = [...inventExams(simulationModel(reader), { count: 40, seed: 1, until })];
    expect(JSON.stringify(again)).toBe(JSON.stringify(exams.slice(0, 40)));
    const [other] = inventExams(model, { count: 1, seed: 2, until });
    expect(JSON.stringify(other)).not.toBe(JSON.stringify(exams[0]));
  });

  it('state 25 to 60 findings, some not tested and some sections otherwise normal, and say that they are invented', () => {
    for (const { exam } of exams) {
      const findings = Object.values(exam.findings as Record<string, readonly unknown[]>).flat();
      expect(findings.length).toBeGreaterThanOrEqual(25);
      expect(findings.length).toBeLessThanOrEqual(60);
      expect(JSON.stringify(findings[0])).toContain('Invented');
    }
    const share = (test: (text: string) => boolean) =>
      exams.filter(({ exam }) => test(JSON.stringify(exam))).length / exams.length;
    expect(share((text) => text.includes('"notTested"'))).toBeGreaterThan(0.2);
    expect(share((text) => text.includes('"otherwiseNormal"'))).toBeGreaterThan(0.2);
  });

  it('belong to one person over time, within the two years before the date named, under identifiers of their own', () => {
    const identifiers = new Set(exams.map(({ exam }) => (exam.identifier as { value: string }).value));
    expect(identifiers.size).toBe(exams.length);
    const moments = new Map<string, number[]>();
    for (const { exam } of exams) {
      const { reference } = exam.subject as { reference: string };
      expect(reference).toMatch(/^Patient\/invented-/);
      const moment = Date.parse(exam.examinedAt as string);
      expect(moment).toBeLessThan(until.getTime());
      expect(moment).toBeGreaterThanOrEqual(Date.parse('2024-01-01T00:00:00Z'));
      moments.set(reference, [...(moments.get(reference) ?? []), moment]);
    }
    const several = [...moments.values()].filter((own) => own.length > 1);
    expect(several.length).toBeGreaterThan(20);
    for (const own of several) expect(own).toEqual([...own].sort((a, b) => a - b));
  });

  it('lead the engine back to the lesion that they were drawn from, mostly', () => {
    const localiser = createLocaliser();
    const ranks = exams.slice(0, 120).map(({ exam, lesion }) => {
      const { localisations } = localiser.localise(reader.read(exam, { purpose: 'record', now: until }));
      return localisations.findIndex(({ site, side }) => site === lesion.site.key && side === lesion.site.side);
    });
    expect(ranks.filter((rank) => rank === 0).length / ranks.length).toBeGreaterThan(0.6);
    expect(ranks.filter((rank) => rank >= 0 && rank < 3).length / ranks.length).toBeGreaterThan(0.75);
  }, 180_000);
});
