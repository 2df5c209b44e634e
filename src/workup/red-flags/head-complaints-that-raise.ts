import { findingReasons } from '../../causes/reasons.ts';
import { read, recalled } from '../../kernel/cite.ts';
import { agedFrom, type BedsideFacts } from '../bedside-facts.ts';
import { headache } from './brain-flags.ts';
import { feverReasons } from './fever.ts';
import { each, none, type RaisingStory } from './story.ts';
import { atRisk, badArteries } from './stroke-stories-that-raise.ts';
import { centralSigns, oneSidedWeakness, weakHalf } from './sudden-deficit.ts';
import { oneSidedComplaints } from './told-sides.ts';

const stroke = recalled('nice-ng128', 'sudden onset of focal symptoms');

/** Complaints of the head that raise a flag before anybody has examined, or though nobody has said since when. */
export const headComplaints: readonly RaisingStory[] = [
  {
    // One complaint that came at once, in somebody whose arteries are bad: double vision, half a body, a limb, balance.
    flag: 'suspected-stroke',
    check: (facts) => {
      const isUnexamined = facts.abnormalFindings.length === 0;
      if (!facts.cameWithin(2) || !isUnexamined || facts.told(...otherPlace).length + feverReasons(facts).length > 0)
        return none;
      const isAtOnce = facts.exam.onset.pace === 'hyperacute';
      const numbSide = facts.query.history('numbness')?.side;
      const balance =
        facts.told('positional-vertigo', 'hearing-loss', 'syncope', 'light-headed-on-standing', 'falls').length === 0 &&
        facts.query.tested(['cranial-nerves/abnormal-head-impulse']).length === 0;
      return each(
        [
          ...facts.told('arm-weakness'),
          ...(numbSide === 'left' || numbSide === 'right' ? facts.told('numbness') : none),
          ...(isAtOnce ? facts.told('diplopia') : none),
          ...(balance && isAtOnce ? facts.told('unsteadiness', 'vertigo') : none),
          ...(balance ? facts.told('continuous-vertigo') : none),
        ],
        badArteries(facts),
      );
    },
    source: stroke,
  },
  {
    // Nobody has said since when: half a body or the words lost in the old or the sick of artery is treated as new.
    flag: 'suspected-stroke',
    check: (facts) => {
      const known = facts.told('multiple-sclerosis', 'cancer', 'resolved-deficit', 'dementia', 'head-injury');
      // A disc takes weeks to grow pale: what goes with it is old.
      const pale = facts.query.abnormal(['cranial-nerves/optic-disc-pallor']);
      if (!facts.isUntimed || known.length + feverReasons(facts).length + pale.length > 0) return none;
      const half = oneSidedWeakness(facts);
      const isHalf = weakHalf(facts).length > 0 && facts.brainProbability >= 0.5;
      const central = centralSigns(facts.query);
      const kinds = new Set(central.map(({ item }) => item.key));
      const signs = [...(isHalf ? half : []), ...central];
      const isPlain = isHalf || kinds.size >= 2 || (central.length > 0 && half.length > 0);
      const isUntold = facts.abnormalFindings.length === 0;
      const told = isUntold ? facts.told('speech-difficulty', 'slurred-speech') : none;
      const limb = facts.told('arm-weakness', 'leg-weakness', 'weakness');
      const risk = badArteries(facts);
      return [
        ...(isPlain ? each(findingReasons(signs, 4), [...risk, ...agedFrom(60, facts)]) : none),
        ...(told.length > 0 ? each(told, limb, risk) : none),
        ...(central.length > 0 && risk.length > 0 ? each(findingReasons(signs, 3), risk) : none),
        ...(isNewLimb(facts) ? each(findingReasons(half, 3), atRisk(facts)) : none),
        ...each(findingReasons(facts.query.abnormal(plainOfAHemisphere), 2), agedFrom(60, facts)),
      ];
    },
    source: stroke,
  },
  {
    // Words, thought or half a body that fail more and more over weeks.
    flag: 'suspected-space-occupying-lesion',
    check: (facts) => {
      const { pace } = facts.exam.onset;
      const isWeeks =
        facts.exam.course === 'progressive' &&
        (pace === 'subacute' || pace === undefined || pace === 'acute') &&
        facts.beganWithin(3) !== 'yes' &&
        facts.beganWithin(183) === 'yes';
      if (!isWeeks || facts.query.result('mri-brain') !== undefined || facts.told('migraine').length > 0) return none;
      const sideOf = (key: string) => facts.query.history(key)?.side;
      const side = sideOf('arm-weakness');
      const isHalf = (side === 'left' || side === 'right') && side === sideOf('leg-weakness');
      const mind = facts.told('behaviour-change', 'cognitive-change', 'speech-difficulty');
      return [
        ...each(mind, facts.told(...headache, 'vomiting', 'seizure')),
        ...facts.told('speech-difficulty'),
        ...(isHalf ? facts.told('arm-weakness', 'leg-weakness') : none),
        ...each(facts.told(...headache), oneSidedComplaints(facts)),
      ];
    },
    source: recalled('nice-ng127', 'progressive subacute loss of central neurological function'),
  },
  {
    // Known cancer and a fit unlike those before, or a headache with vomiting; an epilepsy that is known does not account for it.
    flag: 'suspected-space-occupying-lesion',
    check: (facts) => {
      const isFresh = facts.beganWithin(183) !== 'no' && facts.exam.onset.pace !== 'chronic';
      if (!isFresh || facts.query.result('mri-brain') !== undefined) return none;
      const cancer = facts.told('cancer', 'lymphoma');
      const isLikeBefore = facts.told('similar-attacks-before').length > 0;
      // Blood that does not clot bleeds over the brain after falls in fits: one with a headache that is new is looked at.
      const fit = isLikeBefore ? none : facts.told('seizure');
      return [
        ...each(cancer, fit),
        ...each(facts.told('anticoagulant', 'bleeding-disorder'), fit, facts.told('new-headache', 'morning-headache')),
        ...each(cancer, facts.told('new-headache', 'morning-headache'), facts.told('vomiting')),
      ];
    },
    source: recalled('nice-ng127', 'headaches; first seizure'),
  },
  {
    // A first headache that came at once with a faint, on exertion, under a stimulant, with vomiting and a painful neck, or with one of these from the age of forty.
    flag: 'thunderclap-headache',
    check: (facts) => {
      const isFirst = facts.told('migraine', 'similar-attacks-before', 'head-injury').length === 0;
      const isOther = !isFirst || feverReasons(facts).length > 0 || facts.beganWithin(14) === 'no';
      if (facts.exam.onset.pace !== 'hyperacute' || isOther) return none;
      const isForty = (facts.exam.person.ageYears ?? 0) >= 40;
      return [
        ...each(
          facts.told('headache', 'new-headache'),
          facts.told('syncope', 'loss-of-consciousness', 'heavy-exertion', 'cocaine-or-stimulants', 'family/aneurysm'),
        ),
        ...each(facts.told('headache', 'new-headache'), facts.told('vomiting'), facts.told('neck-pain')),
        ...(isForty ? each(facts.told('new-headache'), facts.told('vomiting', 'neck-pain')) : none),
      ];
    },
    source: recalled('nice-ng228', 'symptoms and signs'),
  },
  {
    // From sixty, sight lost with a headache at a time nobody has told, or double vision with a headache and an ill body.
    flag: 'suspected-giant-cell-arteritis',
    check: (facts) => {
      if ((facts.exam.person.ageYears ?? 0) < 60 || facts.told('migraine', 'cancer').length > 0) return none;
      const pain = facts.told('headache', 'new-headache', 'facial-pain');
      const sight = facts.told('visual-loss', 'transient-visual-loss');
      const ill = facts.told('fatigue', 'weight-loss', 'fever', 'night-sweats', 'muscle-pain', 'joint-pain');
      return [
        ...(facts.isUndated ? each(sight, pain) : none),
        // Sight that goes in an ill old body: a quarter never have a headache.
        ...(facts.beganWithin(28) === 'yes' && ill.length >= 2 ? each(sight, ill) : none),
        ...(facts.beganWithin(28) !== 'no' ? each([...sight, ...facts.told('diplopia')], pain, ill) : none),
        ...(facts.beganWithin(92) !== 'no' && facts.maybeProgressing ? each(sight, pain, ill) : none),
      ];
    },
    source: read('bsr-gca-2020'),
  },
  {
    // Pregnancy, childbed and the pill thicken the blood: a headache of days with vomiting is imaged.
    flag: 'suspected-cerebral-venous-thrombosis',
    check: (facts) =>
      facts.beganWithin(28) === 'yes' && facts.told('migraine', 'similar-attacks-before').length === 0
        ? each(
            facts.told('pregnancy', 'hormonal-contraceptive', 'tamoxifen', 'thrombophilia'),
            facts.told(...headache),
            facts.told('vomiting', 'visual-loss', 'diplopia', 'seizure', 'weakness', 'numbness'),
          )
        : none,
    source: recalled('cvt-2017', 'when to suspect it'),
  },
];

/** A limb weak on one side where the brain is the likeliest place, not stiff, thin or held as an old palsy leaves it, in one whom nothing has left so. */
function isNewLimb(facts: BedsideFacts): boolean {
  const { query } = facts;
  const old = [
    ...query.abnormal(['inspection/abnormal-posture', 'gait/hemiplegic']),
    ...query.abnormalWhere(
      ({ item, value }) => item.key === 'wasting' || item.key === 'joint-contracture' || value === 'spastic',
    ),
  ];
  const left = facts.told(
    ...['stroke', 'perinatal-injury', 'developmental-delay', 'poliomyelitis', 'parkinson-disease', 'epilepsy'],
    ...['migraine', 'functional-disorder', 'similar-attacks-before'],
  );
  return facts.brainProbability >= 0.5 && oneSidedWeakness(facts).length > 0 && old.length + left.length === 0;
}

/** Signs of a hemisphere that nobody carries about for long without being known for it. */
const plainOfAHemisphere = [
  'higher-function/global-aphasia',
  'higher-function/expressive-aphasia',
  'higher-function/receptive-aphasia',
  'higher-function/neglect',
  'cranial-nerves/forced-gaze-deviation',
];

/** What speaks for a nerve, a joint, the junction, or an attack that has passed. */
const otherPlace = [
  ...['resolved-deficit', 'migraine', 'similar-attacks-before', 'multiple-sclerosis', 'myasthenia-gravis'],
  ...['neck-pain', 'back-pain', 'radicular-arm-pain', 'shoulder-pain', 'arm-pain', 'eye-pain', 'trauma'],
  ...['external-pressure', 'deep-sleep-on-arm', 'elbow-leaning', 'recent-surgery', 'neck-or-chest-surgery'],
  ...['carpal-tunnel-syndrome', 'fatigable-weakness', 'descending-weakness', 'bladder-disturbance'],
] as const;
