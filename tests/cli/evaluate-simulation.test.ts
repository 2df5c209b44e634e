import { describe, expect, it } from 'vitest';
import { reportSequential, reportSimulation } from '../../src/cli/evaluate/report-simulation.ts';
import { examineInOrder } from '../../src/cli/evaluate/sequential.ts';
import { simulate } from '../../src/cli/evaluate/simulate.ts';
import { routine } from '../../src/cli/simulated/routine.ts';
import { SimulatedPatient, simulationModel } from '../../src/cli/simulated/simulated-patient.ts';
import { Chance, chanceFrom, pick } from '../../src/kernel/chance.ts';
import { columnName } from '../../src/localisation/inference/columns.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { reader } from '../exam/support/read.ts';

const model = simulationModel(reader);
const localiser = createLocaliser();

describe('chance that can be repeated', () => {
  it('is the same for the same words and spread evenly', () => {
    const many = Array.from({ length: 20_000 }, (_, index) => chanceFrom(`patient ${index}`));
    expect(chanceFrom('patient 3')).toBe(many[3]);
    const run = new Chance('seed');
    const again = new Chance('seed');
    const runs = Array.from({ length: 20_000 }, () => run.next());
    expect(runs.slice(0, 50)).toEqual(Array.from({ length: 50 }, () => again.next()));
    for (const numbers of [many, runs]) {
      const tenths = Array.from(
        { length: 10 },
        (_, tenth) => numbers.filter((one) => Math.floor(one * 10) === tenth).length,
      );
      // Chi-square with 9 degrees of freedom exceeds 27.9 once in a thousand (standard tables).
      expect(tenths.reduce((sum, count) => sum + (count - 2000) ** 2 / 2000, 0)).toBeLessThan(27.9);
    }
  });

  it('picks by weight and never what has none', () => {
    expect([0, 0.24, 0.26, 0.99].map((chance) => pick([1, 0, 3], chance))).toEqual([0, 0, 2, 2]);
    expect(pick([0, 2, 0], 0)).toBe(1);
    expect(pick([0, 2, 0], 1)).toBe(1);
  });
});

describe('a simulated patient', () => {
  it('has the same findings in whatever order and however often they are asked for', () => {
    const once = new SimulatedPatient(model, 1, 7);
    const again = new SimulatedPatient(model, 1, 7);
    const backwards = [...routine].reverse().map((target) => again.find(target));
    expect(routine.map((target) => once.find(target))).toEqual(backwards.reverse());
    expect(routine.map((target) => once.find(target))).toEqual(routine.map((target) => again.find(target)));
  });

  it('has lesions of many kinds, and another under another number or seed', () => {
    const kinds = new Set(
      Array.from({ length: 60 }, (_, index) => new SimulatedPatient(model, 1, index).lesion.site.kind),
    );
    expect(kinds.size).toBeGreaterThan(6);
    const seeds = new Set(Array.from({ length: 20 }, (_, seed) => new SimulatedPatient(model, seed, 1).lesion));
    expect(seeds.size).toBeGreaterThan(5);
  });

  it('is examined with every step of the routine once, and each can be drawn', () => {
    expect(new Set(routine.map(columnName)).size).toBe(routine.length);
    const patient = new SimulatedPatient(model, 1, 1);
    expect(routine.filter((target) => patient.find(target) === null).map(columnName)).toEqual([]);
  });

  it('shows a complaint as abnormal', () => {
    const patient = new SimulatedPatient(model, 1, 2);
    const exam = patient.examOf(routine.flatMap((target) => patient.find(target, true) ?? []));
    expect(exam.findings.filter(({ abnormal }) => !abnormal).map(({ id }) => id)).toEqual([]);
    expect(exam.findings).toHaveLength(routine.length);
  });
});

describe('simulated examinations', () => {
  it('come out the same under the same seed', () => {
    const report = () => reportSimulation(simulate(model, localiser, 12, 3), 3);
    expect(report()).toBe(report());
    expect(reportSimulation(simulate(model, localiser, 12, 4), 4)).not.toBe(report());
  });
});

describe('an examination item by item', () => {
  it('is led to the right site sooner by the proposals than from head to toe', () => {
    const { runs, sooner } = examineInOrder(model, localiser, 8, 1);
    expect(runs.map(({ items }) => items.length)).toEqual([8, 8, 8]);
    expect(sooner.proposals).toBeGreaterThan(sooner.routine);
  }, 60_000);

  it('says of an order that never gets there that its median lies beyond the end', () => {
    const runs = [
      { name: 'one', items: [3, null, null] },
      { name: 'other', items: [2, 4, 9] },
    ];
    const text = reportSequential({ runs, sooner: { proposals: 0, routine: 3 } }, 1);
    // By hand: (3 + 40 + 40) / 3 = 27.7 and (2 + 4 + 9) / 3 = 5.
    expect(text).toMatch(/one +1\/3 33\.3% +over 40 +27\.7\n/);
    expect(text).toMatch(/other +3\/3 100\.0% +4 +5\.0\n/);
  });
});
