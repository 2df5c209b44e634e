import { describe, expect, it } from 'vitest';
import { assessRedFlags, redFlagRules } from '../../src/workup/red-flags.ts';
import { bedsideExam, localised, site } from '../support/bedside.ts';
import { attacksAndTendedLimbsStories } from './red-flag-stories/attacks-and-tended-limbs-stories.ts';
import { brainAndEyeStories } from './red-flag-stories/brain-and-eye-stories.ts';
import { cloudedMindStories } from './red-flag-stories/clouded-mind-stories.ts';
import { complaintsAloneStories } from './red-flag-stories/complaints-alone-stories.ts';
import { earRootAndKnockStories } from './red-flag-stories/ear-root-and-knock-stories.ts';
import { eyesNeckAndThroatStories } from './red-flag-stories/eyes-neck-and-throat-stories.ts';
import { fewSignStories } from './red-flag-stories/few-sign-stories.ts';
import { furtherWordingStories } from './red-flag-stories/further-wordings-stories.ts';
import { headAndMuscleStories } from './red-flag-stories/head-and-muscle-stories.ts';
import { infantAndPoisonStories } from './red-flag-stories/infant-and-poison-stories.ts';
import { legsChildAndEyeStories } from './red-flag-stories/legs-child-and-eye-stories.ts';
import { nerveStories } from './red-flag-stories/nerve-stories.ts';
import { operatedAndUntriedStories } from './red-flag-stories/operated-and-untried-stories.ts';
import { remedyStories } from './red-flag-stories/remedy-stories.ts';
import { resultsStories } from './red-flag-stories/results-stories.ts';
import { secondDangerStories } from './red-flag-stories/second-danger-stories.ts';
import { sleepAndBothHalvesStories } from './red-flag-stories/sleep-and-both-halves-stories.ts';
import { sparseAndSlowStories } from './red-flag-stories/sparse-and-slow-stories.ts';
import { spineStories } from './red-flag-stories/spine-stories.ts';
import type { Parts } from './red-flag-stories/story.ts';
import { strokeAndMassStories } from './red-flag-stories/stroke-and-mass-stories.ts';
import { systemicStories } from './red-flag-stories/systemic-stories.ts';
import { toldInFewWordsStories } from './red-flag-stories/told-in-few-words-stories.ts';
import { undatedAndOneSidedStories } from './red-flag-stories/undated-and-one-sided-stories.ts';
import { voiceStepsAndCalciumStories } from './red-flag-stories/voice-steps-and-calcium-stories.ts';

const stories = [
  ...attacksAndTendedLimbsStories,
  ...sleepAndBothHalvesStories,
  ...brainAndEyeStories,
  ...cloudedMindStories,
  ...complaintsAloneStories,
  ...eyesNeckAndThroatStories,
  ...fewSignStories,
  ...furtherWordingStories,
  ...headAndMuscleStories,
  ...infantAndPoisonStories,
  ...legsChildAndEyeStories,
  ...earRootAndKnockStories,
  ...nerveStories,
  ...operatedAndUntriedStories,
  ...resultsStories,
  ...secondDangerStories,
  ...sparseAndSlowStories,
  ...spineStories,
  ...strokeAndMassStories,
  ...systemicStories,
  ...remedyStories,
  ...toldInFewWordsStories,
  ...undatedAndOneSidedStories,
  ...voiceStepsAndCalciumStories,
];

describe('further red flags', () => {
  it('number at least fifty in all, each with an action and a source', () => {
    expect(redFlagRules.length).toBeGreaterThanOrEqual(50);
    for (const { action, source, key } of redFlagRules) {
      expect(action.length, key).toBeGreaterThan(20);
      expect(source.work, key).toBeTruthy();
    }
  });

  it('have each a picture and a near miss', () => {
    expect([...new Set(stories.map(({ flag }) => flag))].toSorted()).toEqual(
      redFlagRules.map(({ key }) => key).toSorted(),
    );
  });

  it.each(stories)('$flag: raised by its picture and not by its near miss ($by)', ({ flag, raised, not, at }) => {
    const where = localised(at ?? site('common-fibular-nerve', 'nerve'));
    const stateIn = (parts: Parts) =>
      assessRedFlags(bedsideExam(parts), where).find(({ key, state }) => key === flag && state === 'present');
    const found = stateIn(raised);
    expect(found?.because.length).toBeGreaterThan(0);
    expect(stateIn(not)).toBeUndefined();
  });
});
