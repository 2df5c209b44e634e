import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Localisation, LocalisationAnswer, RedFlag } from '../../src/client/generated/api-types.ts';
import type { Assessed } from '../../src/page/assessment.ts';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import { draftOfExam } from '../../src/page/draft/draft-of-exam.ts';
import { examOfDraft } from '../../src/page/draft/exam-of-draft.ts';
import { announcementOf } from '../../src/page/reasoning/announcement.ts';
import {
  conclusionWords,
  fitWords,
  levelWords,
  likelihoodWords,
  percentWords,
  strengthOf,
} from '../../src/page/reasoning/answer-words.ts';
import { cellOfItem, leadOf } from '../../src/page/reasoning/lead-to-record.ts';
import { gainWords, itemName } from '../../src/page/reasoning/next-items.tsx';
import { panelStateOf } from '../../src/page/reasoning/panel-state.ts';
import { catalogue, exampleExam } from './catalogue.ts';

const site = (label: string, side: Localisation['side'], probability: number): Localisation =>
  ({
    site: label,
    label,
    side,
    level: null,
    levelRange: null,
    kind: 'nerve',
    probability,
    fit: 1,
  }) as unknown as Localisation;
const fibular = site('Common fibular nerve at the fibular neck', 'left', 0.9);
const root = site('L5 nerve root', 'left', 0.3);

const flag = (key: string, state: RedFlag['state'] = 'present'): RedFlag => ({
  key,
  label: `Flag ${key}`,
  state,
  urgency: 'same-day',
  because: [],
  action: 'Act.',
  source: 'a work',
});

const answer = (
  conclusion: LocalisationAnswer['conclusion'],
  localisations: readonly Localisation[] = [],
  redFlags: readonly RedFlag[] = [],
): LocalisationAnswer => ({ conclusion, localisations, redFlags }) as unknown as LocalisationAnswer;

describe('the conclusion in words', () => {
  it('names the place with its side and number', () => {
    expect(conclusionWords(answer('single-site', [fibular, root])).heading).toBe(
      'Best explained by a single lesion: common fibular nerve at the fibular neck, left (90 %).',
    );
  });

  it('says that it is not settled where no site is likelier than the others together', () => {
    expect(conclusionWords(answer('single-site', [{ ...fibular, probability: 0.4 }, root])).heading).toBe(
      'Best explained by a single lesion, not settled which: common fibular nerve at the fibular neck, left (40 %), then L5 nerve root, left (30 %).',
    );
  });

  it('names no place where none is concluded', () => {
    for (const conclusion of ['no-abnormality', 'not-anatomical', 'insufficient'] as const) {
      const { heading, advice } = conclusionWords(answer(conclusion, [fibular]));
      expect(heading).not.toMatch(/fibular/);
      expect(advice).toBeDefined();
    }
  });

  it('names several sites together, and the process that picks them out by them', () => {
    const several = {
      ...site('Several single nerves: left fibular and right ulnar nerve', 'both', 0.9),
      kind: 'multiple-nerves' as const,
    };
    const ulnar = site('Ulnar nerve at the elbow', 'right', 0.8);
    expect(conclusionWords(answer('multiple-sites', [several, fibular, ulnar])).heading).toBe(
      'More than one lesion: common fibular nerve at the fibular neck, left; ulnar nerve at the elbow, right.',
    );
    expect(conclusionWords(answer('multiple-sites', [several])).heading).toMatch(/several single nerves/);
    expect(conclusionWords(answer('multiple-sites', [root])).heading).toBe('More than one lesion is needed.');
  });
});

describe('numbers in words', () => {
  it('never claim certainty, and rise with the number', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (probability) => {
        expect(percentWords(probability)).not.toMatch(/^(0|100) %$/);
        expect(likelihoodWords(probability)).toBeTruthy();
      }),
    );
    expect([1, 0.8, 0.6, 0.2, 0.05, 0].map(likelihoodWords)).toEqual([
      'Very likely',
      'Likely',
      'More likely than not',
      'Possible',
      'Less likely',
      'Unlikely',
    ]);
  });

  it('do not depend on the sign of a weight', () => {
    expect(strengthOf({ weight: -2.5 })).toEqual(strengthOf({ weight: 2.5 }));
    expect([0.2, 1.2, 3].map((weight) => strengthOf({ weight }).sign)).toEqual(['+', '++', '+++']);
  });

  it('tell levels, fit and gain', () => {
    expect(levelWords({ level: 'C6', levelRange: ['C6', 'C6'], kind: 'cord' })).toBe('C6');
    expect(levelWords({ level: 'C6', levelRange: ['C5', 'C7'], kind: 'cord' })).toBe('C6; C5 to C7 possible');
    expect(levelWords({ level: 'L5', levelRange: ['L5', 'S1'], kind: 'root' })).toBe('L5 to S1');
    expect(levelWords({ level: null, levelRange: null, kind: 'nerve' })).toBeNull();
    expect(fitWords(1)).toMatch(/every/);
    expect(fitWords(0.8)).toMatch(/80 %/);
    expect(new Set([0.8, 0.2, 0.05].map(gainWords)).size).toBe(3);
    expect(itemName('Hip abduction', 'left')).toBe('Hip abduction, left');
    expect(itemName('Pinprick in the left L5 dermatome', 'left')).toBe('Pinprick in the left L5 dermatome');
  });
});

describe('what is announced', () => {
  it('is a new leading site, politely, and nothing while it stays', () => {
    const first = answer('single-site', [fibular]);
    expect(announcementOf(undefined, first)).toEqual({ polite: expect.stringMatching(/fibular/), assertive: null });
    expect(announcementOf(first, answer('single-site', [{ ...fibular, probability: 0.95 }]))).toEqual({
      polite: null,
      assertive: null,
    });
    expect(announcementOf(first, answer('single-site', [root])).polite).toMatch(/L5/);
    expect(announcementOf(first, answer('insufficient', [fibular])).polite).toMatch(/Insufficient/);
  });

  it('is a new red flag at once, once, and not one that could not be decided', () => {
    const before = answer('insufficient', [], [flag('a')]);
    const { assertive } = announcementOf(
      before,
      answer('insufficient', [], [flag('a'), flag('b'), flag('c', 'not-assessable')]),
    );
    expect(assertive).toBe('Red flag, same day: Flag b. Act.');
    expect(announcementOf(before, before).assertive).toBeNull();
    expect(announcementOf(before, undefined)).toEqual({ polite: null, assertive: null });
  });
});

describe('the state of the panel', () => {
  const assessed = {} as Assessed;
  const now = { hasContent: true, assessed, isReached: true, isCurrent: true, faults: [] };

  it('tells nothing recorded, waiting, unreachable and refused apart', () => {
    expect(panelStateOf({ ...now, hasContent: false }).kind).toBe('nothing-recorded');
    expect(panelStateOf({ ...now, assessed: undefined }).kind).toBe('waiting');
    expect(panelStateOf({ ...now, assessed: undefined, isReached: false }).kind).toBe('unreachable');
    const faults = [{ pointer: '/x', message: 'no' }];
    expect(panelStateOf({ ...now, assessed: undefined, faults }).kind).toBe('refused');
  });

  it('marks an earlier answer as out of date when no newer one can come, and not while it is on its way', () => {
    expect(panelStateOf(now)).toMatchObject({ outOfDate: null });
    expect(panelStateOf({ ...now, isCurrent: false })).toMatchObject({ outOfDate: null });
    expect(panelStateOf({ ...now, isCurrent: false, isReached: false })).toMatchObject({
      outOfDate: expect.stringMatching(/connection/),
    });
    const faults = [{ pointer: undefined, message: 'no' }];
    expect(panelStateOf({ ...now, isCurrent: false, faults })).toMatchObject({
      outOfDate: expect.stringMatching(/not accepted/),
    });
  });
});

describe('ways back to the record', () => {
  const index = indexCatalogue(catalogue);
  const built = examOfDraft(draftOfExam(exampleExam('foot-drop'), index), index);

  it('lead from every finding to the cell that it came from', () => {
    expect(built.cellsAt.size).toBeGreaterThan(5);
    for (const [pointer, addresses] of built.cellsAt)
      expect(leadOf(pointer, built)).toEqual({ kind: 'cell', addresses });
    const [pointer] = built.cellsAt.keys();
    expect(leadOf(`${pointer}/grade`, built)).toMatchObject({ kind: 'cell' });
  });

  it('lead elsewhere for history, results, scales and statements', () => {
    expect(leadOf('/history/symptoms/0', built)).toEqual({ kind: 'view', view: 'story', detail: 'symptoms.0' });
    expect(leadOf('/results/0', built)).toEqual({ kind: 'view', view: 'story', detail: 'results.0' });
    expect(leadOf('/findings/higherFunction/99', built)).toEqual({ kind: 'view', view: 'examine', detail: 'mind' });
    expect(leadOf('/otherwiseNormal/0', built)).toEqual({ kind: 'view', view: 'examine' });
  });

  it('lead from a proposed item to its cell', () => {
    expect(cellOfItem('power/hip-abduction', 'left', undefined, index)).toEqual({
      section: 'power',
      item: 'hip-abduction',
      side: 'left',
    });
    expect(cellOfItem('sensation/pinprick', 'left', 'L5', index)?.place).toEqual({ kind: 'dermatome', key: 'L5' });
    expect(cellOfItem('sensation/vibration', 'right', 'great-toe', index)?.place).toEqual({
      kind: 'site',
      key: 'great-toe',
    });
    expect(cellOfItem('special-tests/trendelenburg-test', 'left', undefined, index)?.section).toBe('specialTests');
    expect(cellOfItem('power/unheard-of', null, undefined, index)).toBeUndefined();
  });
});
