import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { feverReasons } from './fever.ts';
import { each, none, type RaisingStory } from './story.ts';
import { centralSigns, onOneSide, suddenFocalSigns } from './sudden-deficit.ts';

/** Deficits of days that may be a stroke, where the moment at which they came was not seen or nobody has examined yet. */
export const strokeStories: readonly RaisingStory[] = [
  {
    // A deficit of days, in somebody whose arteries are at risk, where the brain is the likeliest place.
    flag: 'suspected-stroke',
    check: (facts) => {
      const isDays = facts.cameWithin(14);
      if (!isDays || facts.brainProbability < 0.5 || suddenFocalSigns(facts).length > 0) return none;
      return each(findingReasons(facts.abnormalFindings, 4), atRisk(facts));
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
  {
    // What arteries of the brainstem supply fails in several places at once, in somebody whose arteries are at risk.
    flag: 'suspected-stroke',
    check: (facts) => {
      const { pace } = facts.exam.onset;
      const signs = brainstemSigns
        .map((items) => findingReasons(facts.query.abnormal(items), 1))
        .filter(({ length }) => length > 0);
      const least = pace === 'subacute' ? 3 : 2;
      const inTime = pace !== 'chronic' && facts.beganWithin(14) === 'yes';
      const isElsewhere =
        facts.told(...ofOnePlace, ...ofTheJunction).length > 0 ||
        facts.query.hasAbnormal('inspection/proptosis') ||
        facts.reducedReflexes.length > 0 ||
        facts.query.abnormal(['cranial-nerves/fatigable-ptosis', 'cranial-nerves/fatigable-diplopia']).length > 0 ||
        feverReasons(facts).length > 0;
      return inTime && !isElsewhere && signs.length >= least ? each(signs.flat(), atRisk(facts)) : none;
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
  {
    // A face that has gone numb on one side.
    flag: 'suspected-stroke',
    check: (facts) => {
      const numb = onOneSide(facts.query.abnormal(['cranial-nerves/facial-numbness']));
      return facts.cameWithin(7) &&
        numb.length > 0 &&
        facts.told('facial-pain', 'trauma', 'head-injury', 'dental-procedure').length === 0
        ? each(findingReasons(numb), atRisk(facts))
        : none;
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
  {
    // Several things that fail at once are told before anybody has examined; and a plain sign of the brain of the last days.
    flag: 'suspected-stroke',
    check: (facts) => {
      if (facts.told(...notTheBrain).length + feverReasons(facts).length > 0 || !facts.cameWithin(7)) return none;
      const told = facts.told(
        'slurred-speech',
        'speech-difficulty',
        'arm-weakness',
        'leg-weakness',
        'weakness',
        'numbness',
        'diplopia',
        'visual-loss',
        'dysphagia',
      );
      // Speech and a limb at once: the arm and the face may not have been looked at.
      const faceArmSpeech = each(
        facts.told('slurred-speech', 'speech-difficulty'),
        facts.told('arm-weakness', 'leg-weakness', 'numbness'),
      );
      if (facts.brainProbability < 0.5) return facts.abnormalFindings.length > 0 ? none : faceArmSpeech;
      return told.length >= 2 ? told : findingReasons(centralSigns(facts.query), 4);
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
];

/** A pain of the eye, the face or the ear, or zoster, speaks for the cavernous sinus, the orbit or the temporal bone, where several nerves run together. */
const ofOnePlace = ['eye-pain', 'red-eye', 'facial-pain', 'ear-pain', 'herpes-zoster'] as const;
const ofTheJunction = [
  'myasthenia-gravis',
  'fatigable-weakness',
  'descending-weakness',
  'home-preserved-food',
] as const;

/** Nuclei and tracts of the brainstem, each by its signs. */
const brainstemSigns = [
  ['cranial-nerves/horner-syndrome'],
  [
    'cranial-nerves/third-nerve-palsy',
    'cranial-nerves/fourth-nerve-palsy',
    'cranial-nerves/sixth-nerve-palsy',
    'cranial-nerves/eye-abduction-weakness',
    'cranial-nerves/skew-deviation',
  ],
  ['cranial-nerves/facial-numbness'],
  ['cranial-nerves/facial-weakness'],
  ['cranial-nerves/hearing-loss'],
  ['cranial-nerves/nystagmus', 'cranial-nerves/gaze-evoked-nystagmus'],
  ['cranial-nerves/dysarthria', 'cranial-nerves/cerebellar-dysarthria', 'cranial-nerves/spastic-dysarthria'],
  ['cranial-nerves/dysphagia', 'cranial-nerves/palatal-weakness'],
  ['gait/ataxic', 'coordination/finger-nose', 'coordination/heel-shin'],
];

const notTheBrain = [
  'resolved-deficit',
  'migraine',
  'back-pain',
  'thoracic-back-pain',
  'neck-pain',
  'bladder-disturbance',
  'trauma',
  'myasthenia-gravis',
  'descending-weakness',
] as const;

const atRisk = (facts: BedsideFacts): readonly Reason[] => {
  const age = facts.exam.person.ageYears;
  return [
    ...facts.told(
      'hypertension',
      'diabetes-mellitus',
      'atrial-fibrillation',
      'stroke',
      'transient-ischaemic-attack',
      'ischaemic-heart-disease',
      'heart-failure',
      'peripheral-arterial-disease',
      'hyperlipidaemia',
      'tobacco',
      'thrombophilia',
      'hormonal-contraceptive',
      'cocaine-or-stimulants',
    ),
    ...(age !== undefined && age >= 55 ? [{ pointer: '/person/ageYears', text: `age ${age}` }] : []),
  ];
};
