import { site } from '../../support/bedside.ts';
import { days, has, hours, on, power, type Story, signs } from './story.ts';

/** Strokes whose moment nobody saw or that show one sign, masses without headache, and what resembles them. */
export const strokeAndMassStories: readonly Story[] = [
  {
    flag: 'suspected-stroke',
    by: 'eyes that do not move up and down come from the midbrain or thalamus (Brazis); over weeks it is another disease',
    at: site('thalamus', 'hemisphere', 0.6),
    raised: { history: { onset: { pace: 'acute' } }, findings: { cranialNerves: signs('vertical-gaze-palsy') } },
    not: { history: { onset: { pace: 'subacute' } }, findings: { cranialNerves: signs('vertical-gaze-palsy') } },
  },
  {
    flag: 'suspected-stroke',
    by: 'a lower face alone is the brain; with a weak forehead it is the facial nerve (Adams and Victor)',
    raised: { history: { onset: days }, findings: { cranialNerves: on('left', 'lower-facial-weakness') } },
    not: {
      history: { onset: days },
      findings: { cranialNerves: on('left', 'lower-facial-weakness', 'upper-facial-weakness') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'a week of a deficit that lies in the brain, where arteries are at risk (NICE NG128)',
    at: site('cortex-hand-area', 'hemisphere', 0.7),
    raised: {
      history: { onset: { pace: 'acute', durationDays: 7 }, conditions: has('hypertension') },
      findings: { power: power('left', '2', 'finger-abduction') },
    },
    not: {
      history: { onset: { pace: 'chronic', durationDays: 90 }, conditions: has('hypertension') },
      findings: { power: power('left', '2', 'finger-abduction') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'a Horner syndrome with a fourth nerve lies in the brainstem; with pain of the eye in the cavernous sinus (Brazis)',
    at: site('trochlear-nerve', 'cranial-nerve'),
    raised: {
      person: { ageYears: 66 },
      history: { onset: { pace: 'acute', durationDays: 2 } },
      findings: { cranialNerves: [...on('right', 'fourth-nerve-palsy'), ...on('left', 'horner-syndrome')] },
    },
    not: {
      person: { ageYears: 66 },
      history: { onset: { pace: 'acute', durationDays: 2 }, symptoms: has('eye-pain') },
      findings: { cranialNerves: [...on('right', 'fourth-nerve-palsy'), ...on('left', 'horner-syndrome')] },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'one half of the face numb at once, at an age of strokes (NICE NG128); after a tooth was drawn it is its nerve',
    at: site('trigeminal-nerve', 'cranial-nerve'),
    raised: {
      person: { ageYears: 73 },
      history: { onset: hours, symptoms: has('numbness') },
      findings: { cranialNerves: on('left', 'facial-numbness') },
    },
    not: {
      person: { ageYears: 73 },
      history: { onset: hours, exposures: has('dental-procedure') },
      findings: { cranialNerves: on('left', 'facial-numbness') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'speech and an arm at once before anybody has examined (NICE NG128); with fever another flag speaks',
    raised: { history: { onset: { pace: 'acute' }, symptoms: has('slurred-speech', 'arm-weakness') } },
    not: { history: { onset: { pace: 'acute' }, symptoms: has('slurred-speech', 'arm-weakness', 'fever') } },
  },
  {
    flag: 'suspected-stroke',
    by: 'muscles of one joint after an operation there are those of a nerve; a whole leg is not (Stewart)',
    at: site('cortex-anterior-cerebral', 'hemisphere', 0.5),
    raised: {
      history: { onset: hours, exposures: has('recent-surgery') },
      findings: { power: power('left', '2', 'hip-flexion', 'ankle-dorsiflexion') },
    },
    not: {
      history: { onset: hours, exposures: has('recent-surgery') },
      findings: { power: power('left', '2', 'hip-abduction', 'hip-internal-rotation') },
    },
  },
];
