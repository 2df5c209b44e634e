import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import type { Finding } from '../../exam/finding.ts';
import { recalled } from '../../kernel/cite.ts';
import { struckEnd } from '../../localisation/inference/struck-limb.ts';
import { agedFrom, type BedsideFacts } from '../bedside-facts.ts';
import { isOnBothSides } from './cord.ts';
import { faceSigns } from './face-signs.ts';
import { feverReasons } from './fever.ts';
import { each, none, type RaisingStory } from './story.ts';
import { centralSigns, isStrokeOfOld, onOneSide, suddenFocalSigns, weakHalf } from './sudden-deficit.ts';
import { notOfBothSides, weaknessOfOneSide } from './told-sides.ts';

/** Deficits of days that may be a stroke, where the moment at which they came was not seen or nobody has examined yet. */
export const strokeStories: readonly RaisingStory[] = [
  {
    // A deficit of days, in somebody whose arteries are at risk, where the brain is the likeliest place.
    flag: 'suspected-stroke',
    check: (facts) => {
      const isDays = facts.cameWithin(14) && !isStrokeOfOld(facts);
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
        .map((items) => findingReasons(facts.query.abnormal(items).filter(notOfOldEars(facts)), 1))
        .filter(({ length }) => length > 0);
      // An ear that was shown to have failed beats and sways by itself.
      const isOfTheEar = facts.query.abnormal(['cranial-nerves/abnormal-head-impulse']).length > 0;
      const least = pace === 'subacute' || isOfTheEar ? 3 : 2;
      const inTime = pace !== 'chronic' && facts.beganWithin(14) === 'yes';
      const isElsewhere =
        facts.told(...ofOnePlace, ...ofTheJunction).length > 0 ||
        facts.query.hasAbnormal('inspection/proptosis') ||
        facts.reducedReflexes.length > 0 ||
        facts.query.abnormal(['cranial-nerves/fatigable-ptosis', 'cranial-nerves/fatigable-diplopia']).length > 0 ||
        feverReasons(facts).length > 0;
      return inTime && !isElsewhere && signs.length >= least
        ? each(signs.flat(), [...atRisk(facts), ...facts.told('neck-pain', 'neck-trauma')])
        : none;
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
  {
    // Half a body or the words that go in steps or over weeks, where an artery or a heart that throws clots is known, or an illness that closes arteries.
    flag: 'suspected-stroke',
    check: (facts) => {
      const { pace } = facts.exam.onset;
      const inTime = (pace === 'subacute' || pace === 'acute') && facts.beganWithin(31) === 'yes';
      if (!inTime || !facts.maybeProgressing || feverReasons(facts).length > 0) return none;
      const half = facts.brainProbability >= 0.5 ? weakHalf(facts) : [];
      const signs = [...centralSigns(facts.query), ...half];
      const comesInSteps = facts.exam.course === 'fluctuating' ? atRisk(facts) : none;
      const known = facts.told(
        ...['atrial-fibrillation', 'transient-ischaemic-attack', 'valve-disease-or-endocarditis'],
        ...['tuberculosis', 'syphilis', 'vasculitis', 'sickle-cell-disease'],
      );
      return each(findingReasons(signs, 4), [...known, ...comesInSteps]);
    },
    source: recalled('adams-victor', 'stroke in evolution; arteritis of the meninges'),
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
    // A hand or a foot that drops in a moment, unhurt and unpressed, where arteries are bad: it looks like a nerve and may be the motor strip.
    flag: 'suspected-stroke',
    check: (facts) => {
      const isGone = facts.told('resolved-deficit', 'migraine', 'multiple-sclerosis').length > 0;
      if (isGone || facts.beganWithin(7) === 'no' || suddenFocalSigns(facts).length > 0) return none;
      return each(findingReasons(struckEnd(facts.exam), 3), badArteries(facts));
    },
    source: recalled('brazis', 'monoparesis'),
  },
  {
    // Several things that fail at once are told before anybody has examined; and a plain sign of the brain of the last days.
    flag: 'suspected-stroke',
    check: (facts) => {
      const isOther = facts.told(...notTheBrain).length + feverReasons(facts).length > 0 || isStrokeOfOld(facts);
      // Of which nobody says when or how it goes on is taken for new.
      const isTakenForNew = facts.isUndated && facts.exam.course === undefined;
      if (isOther || !(facts.cameWithin(7) || isTakenForNew)) return none;
      const told = facts.told(
        'slurred-speech',
        'speech-difficulty',
        'arm-weakness',
        'leg-weakness',
        'weakness',
        'numbness',
        'face-numbness',
        'face-droop',
        'diplopia',
        'visual-loss',
        'dysphagia',
      );
      // Two of face, speech and a limb at once: none of them may have been looked at.
      const faceArmSpeech = [
        notOfBothSides(facts, 'face-droop'),
        facts.told('slurred-speech', 'speech-difficulty'),
        [
          ...notOfBothSides(facts, 'arm-weakness', 'leg-weakness', ...(isTakenForNew ? [] : ['numbness'])),
          ...weaknessOfOneSide(facts),
        ],
      ].filter((one) => one.length > 0);
      const together = faceArmSpeech.length >= 2 ? faceArmSpeech.flat() : none;
      const isUnsure = facts.brainProbability < 0.5 || isTakenForNew;
      if (isUnsure) return facts.abnormalFindings.length > 0 ? none : together;
      return told.length >= 2 ? told : findingReasons(centralSigns(facts.query), 4);
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
  {
    // A face that fell at once and that nobody has looked at: whether the forehead moves tells the nerve from the brain.
    flag: 'suspected-stroke',
    check: (facts) => {
      const isLookedAt = facts.query.tested(faceSigns).length > 0;
      const isOther = facts.told(...notTheBrain).length > 0 || isStrokeOfOld(facts);
      const { pace } = facts.exam.onset;
      const isSudden = facts.cameWithin(2) && (pace === undefined || pace === 'hyperacute');
      return isSudden && !isLookedAt && !isOther ? notOfBothSides(facts, 'face-droop') : none;
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
  {
    // Speech that went within two days in somebody who has had such an attack, or whose arteries are bad: whatever else was found.
    flag: 'suspected-stroke',
    check: (facts) => {
      const isOther =
        facts.told(...notTheBrain, ...ofTheJunction).length + feverReasons(facts).length > 0 ||
        facts.query.abnormal(['cranial-nerves/facial-weakness', 'cranial-nerves/upper-facial-weakness']).length > 0;
      const speech = [
        ...facts.told('slurred-speech', 'speech-difficulty'),
        ...findingReasons(facts.query.abnormal(speechSigns), 1),
      ];
      const burst = facts.told('new-headache', 'thunderclap-headache', 'vomiting');
      return facts.cameWithin(2) && !isOther ? each(speech, [...badArteries(facts), ...burst]) : none;
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
  {
    // A tongue or a palate that fails on one side at once, or with slurred speech in the old of whom nobody has said since when.
    flag: 'suspected-stroke',
    check: (facts) => {
      const { onset, course } = facts.exam;
      const { query } = facts;
      const half = query.abnormal([
        'cranial-nerves/tongue-deviation',
        'cranial-nerves/tongue-weakness',
        'cranial-nerves/palatal-weakness',
      ]);
      const withers = query.abnormal(['cranial-nerves/tongue-wasting', 'cranial-nerves/tongue-fasciculation']);
      const isOfTheNerve =
        facts.told(...ofTheJunction, 'neck-or-chest-surgery', 'dental-procedure', 'recent-surgery', 'neck-trauma')
          .length > 0 ||
        facts.told('radiotherapy', 'cancer', 'botulinum-toxin-injection', 'face-or-neck-lump').length > 0 ||
        withers.length + facts.weakLimbs.length > 0;
      if (isOfTheNerve) return none;
      const speech = [
        ...facts.told('slurred-speech', 'speech-difficulty', 'dysphagia'),
        ...findingReasons(query.abnormal(speechSigns), 1),
      ];
      const isSudden = onset.pace === 'hyperacute' && facts.beganWithin(14) === 'yes';
      const isAcute = onset.pace === 'acute' && facts.beganWithin(7) === 'yes' && course !== 'progressive';
      const isBoth = isOnBothSides(query.abnormal(['cranial-nerves/tongue-weakness']));
      const isOld = facts.isUntimed && agedFrom(55, facts).length > 0;
      if (isAcute && (isBoth || badArteries(facts).length > 0)) return each(findingReasons(half, 2), speech);
      if (isSudden) return each(findingReasons(half, 2), speech);
      return isOld ? each(findingReasons(half, 2), facts.told('slurred-speech')) : none;
    },
    source: recalled('nice-ng128', 'sudden onset of focal symptoms'),
  },
];

/** Hearing lost in both ears alike is that of age or noise, and no sign of the brainstem. */
function notOfOldEars({ query }: BedsideFacts): (finding: Finding) => boolean {
  const isBoth = isOnBothSides(query.abnormal(['cranial-nerves/hearing-loss']));
  return ({ item }) => item.key !== 'hearing-loss' || !isBoth;
}

const speechSigns = [
  'cranial-nerves/dysarthria',
  'cranial-nerves/spastic-dysarthria',
  'cranial-nerves/cerebellar-dysarthria',
  'higher-function/expressive-aphasia',
  'higher-function/receptive-aphasia',
  'higher-function/global-aphasia',
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
    'cranial-nerves/esotropia',
    'cranial-nerves/skew-deviation',
  ],
  ['cranial-nerves/facial-numbness'],
  ['cranial-nerves/facial-weakness'],
  ['cranial-nerves/hearing-loss'],
  ['cranial-nerves/nystagmus', 'cranial-nerves/gaze-evoked-nystagmus'],
  ['cranial-nerves/dysarthria', 'cranial-nerves/cerebellar-dysarthria', 'cranial-nerves/spastic-dysarthria'],
  ['cranial-nerves/dysphagia', 'cranial-nerves/palatal-weakness'],
  ['cranial-nerves/tongue-deviation', 'cranial-nerves/tongue-weakness'],
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

export const atRisk = (facts: BedsideFacts): readonly Reason[] => [
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
  ...agedFrom(55, facts),
];

/** An attack before, a fibrillating heart, or two and more things that harm arteries. */
export function badArteries(facts: BedsideFacts): readonly Reason[] {
  const risk = atRisk(facts);
  const plain = facts.told('transient-ischaemic-attack', 'stroke', 'atrial-fibrillation');
  return plain.length > 0 || risk.length >= 2 ? [...plain, ...risk] : none;
}
