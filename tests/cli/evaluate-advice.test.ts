import { describe, expect, it } from 'vitest';
import type { EvaluationCase, ExpectedAdvice } from '../../src/cli/evaluate/evaluation-case.ts';
import { flagFiguresOf } from '../../src/cli/evaluate/flag-figures.ts';
import { adviceFiguresOf, judgeAdvice } from '../../src/cli/evaluate/judge-advice.ts';
import type { Assessment, RedFlag } from '../../src/workup/assessment.ts';

const flag = (key: string, state: RedFlag['state'] = 'present') => ({ key, state });
const named = (key: string) => ({ key });
const caused = (key: string) => ({ key, probability: key === 'first' ? 0.65 : 0.1 });
const answer = {
  causes: ['first', 'second', 'third', 'fourth'].map(caused),
  redFlags: [flag('danger'), flag('other-danger'), flag('open', 'not-assessable'), flag('gone', 'absent')],
  workup: ['scan', 'blood'].map(named),
} as unknown as Assessment;

const judged = (advice: ExpectedAdvice) =>
  judgeAdvice({ name: 'one', file: 'cases.ndjson', line: 1, expect: { advice } } as unknown as EvaluationCase, answer);

describe('causes, red flags and tests beside what was expected', () => {
  it('ranks the first right cause', () => {
    expect(judged({ causes: ['fourth', 'second'] }).cause).toEqual({ rank: 2, stated: 0.65 });
    expect(judged({ causes: ['none'] }).cause).toEqual({ rank: null, stated: 0.65 });
    expect(judged({}).cause).toBeNull();
  });

  it('tells the flags that were missed from those that nobody expected', () => {
    const { flags } = judged({ redFlags: ['danger', 'gone', 'open'], mayFlag: ['other-danger'] });
    expect(flags).toEqual({ expected: 3, raised: ['danger'], missed: ['gone', 'open'], extra: [] });
    expect(judged({ redFlags: [] }).flags?.extra).toEqual(['danger', 'other-danger']);
    expect(judged({ undecided: ['open', 'danger', 'gone'] }).undecided).toEqual({ expected: 3, missed: ['gone'] });
  });

  it('tells the tests that were not proposed, and those that should not have been', () => {
    const { tests, needless } = judged({ tests: ['scan', 'biopsy'], notTests: ['blood', 'tilt'] });
    expect(tests).toEqual({ expected: 2, missed: ['biopsy'] });
    expect(needless).toEqual(['blood']);
  });

  it('counts flags and tests one by one, causes and false alarms by case', () => {
    const figures = adviceFiguresOf([
      judged({ causes: ['first'], redFlags: ['danger', 'gone'], tests: ['scan', 'biopsy'] }),
      judged({ causes: ['third'], redFlags: [], tests: ['blood'], notTests: ['tilt'] }),
      judged({ causes: ['fourth'], redFlags: [], mayFlag: ['danger', 'other-danger'] }),
      judged({}),
    ]);
    expect(figures).toEqual({
      firstCause: { right: 1, of: 3 },
      firstThreeCauses: { right: 2, of: 3 },
      causeCalibrationError: expect.closeTo(0.65 - 1 / 3, 10),
      flagsRaised: { right: 1, of: 2 },
      falseAlarms: { right: 1, of: 2 },
      undecidedSaid: { right: 0, of: 0 },
      testsProposed: { right: 2, of: 3 },
      needlessTests: { right: 0, of: 1 },
    });
  });

  it('counts each red flag, also one that was raised beside the expected ones', () => {
    const row = (key: string, raised: number, missed: number, falseAlarms: number, besideOthers: number) => ({
      key,
      expected: raised + missed,
      raised,
      missed,
      falseAlarms,
      besideOthers,
    });
    const figures = flagFiguresOf([
      judged({ redFlags: ['danger', 'gone'] }),
      judged({ redFlags: [], mayFlag: ['danger'] }),
      judged({ redFlags: ['gone|danger'], mayFlag: ['other-danger'] }),
      judged({ causes: ['first'] }),
    ]);
    expect(figures).toEqual([row('danger', 1, 0, 0, 0), row('gone', 1, 1, 0, 0), row('other-danger', 0, 0, 1, 1)]);
  });
});
