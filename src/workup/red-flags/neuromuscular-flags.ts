import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons, missing } from '../../causes/reasons.ts';
import { lowerFirst } from '../../exam/describe.ts';
import type { Limb } from '../../exam/place-on-limb.ts';
import { powerOf } from '../../exam/power.ts';
import { read, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { acuteSymmetricalWeakness, breathingSigns, bulbarReasons, checkBreathing } from './breathing.ts';
import { areFeetPressed, isOnBothSides } from './cord.ts';
import { isOfOneNerveOrRoot, isOfPairedNerves, isOfPressedNerves, limbsOf } from './few-muscles.ts';
import { isCholinergic, isOfTheJunction, tiringSigns } from './junction.ts';
import { notAssessable, present, type RedFlagRule, slowlyProgressive, type Verdict } from './rule.ts';
import { oneSidedWeakness, onOneSide, suddenFocalSigns, weakHalf } from './sudden-deficit.ts';
import { isAtLeast, isUnder, written } from './thresholds.ts';

const twoYears = 730;

/** Flags of nerve, root, junction and muscle, and of the breathing that depends on them. */
export const neuromuscularFlags: readonly RedFlagRule[] = [
  {
    key: 'acute-ascending-weakness',
    label: 'Rapidly progressive symmetrical weakness, Guillain-Barré syndrome suspected',
    urgency: 'immediate',
    action: 'Admit; measure vital capacity now and repeat it; ECG and blood pressure monitoring.',
    source: read('ean-pns-gbs-2023'),
    check: (facts) => {
      if (isOfTheJunction(facts) || isCholinergic(facts)) return null;
      const because = [...acuteSymmetricalWeakness(facts), ...areflexicCranialPalsy(facts)];
      // Inflamed roots do not come and go through the day; weakness that does, with jerks kept, has flags of its own.
      const comesAndGoes = facts.exam.course === 'fluctuating' && facts.reducedReflexes.length === 0;
      if (because.length > 0 && !comesAndGoes) return present(because);
      const told = facts.told('leg-weakness', 'weakness', 'difficulty-walking', 'ascending-weakness');
      const lost = facts.reducedReflexes;
      const isSymmetrical = (['left', 'right'] as const).every(
        (side) => lost.filter((one) => one.side === side).length >= 2,
      );
      // Jerks that are low all over say nothing where only one limb was found weak.
      const isOfOneSide = oneSidedWeakness(facts).length > 0;
      const isPlain = facts.upperMotorSigns.length + facts.saddleLoss.length === 0 && !isOfOneSide;
      if (told.length > 0 && isSymmetrical && isPlain && facts.beganWithin(28) === 'yes' && facts.maybeProgressing)
        return present([...told, ...findingReasons(lost, 4)]);
      const lostBoth = (['left', 'right'] as const).every((side) => lost.some((one) => one.side === side));
      const story = facts.told(
        'paraesthesiae',
        'ascending-weakness',
        'preceding-infection',
        'preceding-gastroenteritis',
      );
      const isGrowing = facts.isProgressive && facts.beganWithin(28) === 'yes';
      if (told.length > 0 && lostBoth && story.length > 0 && isPlain && isGrowing)
        return present([...told, ...story, ...findingReasons(lost, 2)]);
      const unseen = facts.query.testedWhere(
        ({ item }) => item.scale === 'reflex-grade' && item.region === 'lower-limbs',
      );
      const isFresh = facts.bothLegsWeak && facts.beganWithin(28) === 'yes' && facts.exam.course === 'progressive';
      return isFresh && unseen.length === 0 && facts.upperMotorSigns.length + facts.trunkSensoryLoss.length === 0
        ? notAssessable([
            missing('reflexes of the legs were not tested, and it matters'),
            ...findingReasons(facts.weak('lower-limbs'), 2),
          ])
        : null;
    },
  },
  {
    key: 'neuromuscular-respiratory-failure',
    label: 'Neuromuscular respiratory failure threatened',
    urgency: 'immediate',
    action:
      'Intensive care review now: vital capacity under 20 mL/kg, inspiratory pressure under 30 or expiratory under 40 cmH2O put the person at risk; do not wait for breathlessness or blood gases.',
    source: recalled('gbs-lawn-2001', 'vital capacity under 20 mL/kg, pressures under 30 and 40 cmH2O'),
    check: checkBreathing,
  },
  {
    key: 'acute-bulbar-weakness',
    label: 'Acute bulbar weakness',
    urgency: 'immediate',
    action: 'Nil by mouth; assess airway and vital capacity; swallowing assessment before anything by mouth.',
    source: recalled('mg-crisis-2011', 'bulbar failure'),
    check: (facts) => {
      const signs = [...bulbarReasons(facts), ...speechFromAbove(facts)];
      const isGrowing = facts.isProgressive && facts.beganWithin(31) === 'yes';
      if (isOneVagusNerve(facts)) return null;
      return signs.length > 0 && (isGrowing || facts.beganWithin(14) === 'yes') ? present(signs) : null;
    },
  },
  {
    key: 'threatened-myasthenic-crisis',
    label: 'Threatened myasthenic crisis',
    urgency: 'immediate',
    action:
      'Admit; serial vital capacity; nil by mouth if the swallow is weak; stop medicines that worsen transmission.',
    source: read('mg-consensus-2021'),
    check: (facts) => {
      const { query } = facts;
      const ocular = [
        ...findingReasons(
          query.abnormal([
            'cranial-nerves/fatigable-ptosis',
            'cranial-nerves/ptosis',
            'cranial-nerves/fatigable-diplopia',
            'special-tests/limb-fatigability',
          ]),
        ),
        ...facts.told('diplopia', 'drooping-eyelids', 'fatigable-weakness', 'myasthenia-gravis'),
      ];
      const neck = Math.min(query.power('neck-flexion', 'midline') ?? 5, query.power('neck-extension', 'midline') ?? 5);
      const dangers = [
        ...bulbarReasons(facts),
        ...findingReasons(query.abnormal(['cranial-nerves/dysarthria'])),
        ...facts.told('slurred-speech'),
        ...facts.told('breathlessness', 'orthopnoea'),
        ...findingReasons(query.abnormal(breathingSigns)),
        ...(neck <= 3 ? findingReasons(query.abnormal(['power/neck-flexion', 'power/neck-extension'])) : []),
      ];
      const worsening =
        facts.exam.course === 'progressive' || facts.beganWithin(facts.isProgressive ? 31 : 14) === 'yes';
      const tires = query.abnormal(tiringSigns);
      // Lids and swallowing that have grown worse for years without tiring, in nobody known to be myasthenic, are no crisis.
      const isOld = (facts.exam.onset.durationDays ?? 0) > slowlyProgressive;
      const junction =
        tires.length > 0 ||
        facts.told('myasthenia-gravis', 'fatigable-weakness').length > 0 ||
        (facts.kindProbability('junction') >= 0.1 && !isOld);
      // Of a known myasthenia that nobody has dated breath or neck is enough, for these do not stay so.
      const breath = [
        ...facts.told('breathlessness', 'orthopnoea'),
        ...findingReasons(query.abnormal(breathingSigns)),
        ...(neck <= 3 ? findingReasons(query.abnormal(['power/neck-flexion', 'power/neck-extension'])) : []),
      ];
      if (facts.isUntimed && breath.length > 0 && facts.told('myasthenia-gravis').length > 0)
        return present([...dangers, ...ocular]);
      return ocular.length > 0 && dangers.length > 0 && worsening && junction ? present([...dangers, ...ocular]) : null;
    },
  },
  {
    key: 'suspected-botulism',
    label: 'Suspected botulism',
    urgency: 'immediate',
    action: 'Call the public health line and ask for antitoxin on clinical grounds; watch the breathing.',
    source: read('botulism-2021'),
    check: (facts) => {
      const cranial = facts.query.abnormal([
        'cranial-nerves/ptosis',
        'cranial-nerves/ophthalmoplegia',
        'cranial-nerves/dilated-pupil',
        'cranial-nerves/unreactive-pupil',
        'cranial-nerves/sluggish-pupil',
        'cranial-nerves/facial-weakness',
        'cranial-nerves/dysphagia',
        'cranial-nerves/dysphonia',
        'cranial-nerves/flaccid-dysarthria',
      ]);
      const kinds = new Set(cranial.map((finding) => finding.item.key));
      const story = facts.told(
        'descending-weakness',
        'home-preserved-food',
        'botulinum-toxin-injection',
        'injecting-drug-use',
      );
      const afebrile = facts.query.history('fever')?.present !== true && !facts.query.hasAbnormal('autonomic/fever');
      const pupils = cranial.filter(
        ({ item }) => item.key === 'dilated-pupil' || item.key === 'unreactive-pupil' || item.key === 'sluggish-pupil',
      );
      // Wide pupils on both sides with palsies of eyes and throat need no story of the food.
      const widePupils = new Set(pupils.map(({ side }) => side)).size === 2 && kinds.size >= 3;
      const onBoth = (key: string): boolean =>
        (['left', 'right'] as const).every((side) =>
          cranial.some(({ item, side: own }) => item.key === key && own === side),
        );
      const bulbar = bulbarReasons(facts);
      // Lids, eyes and throat on both sides at once, with pupils that may still react; and the floppy infant who is constipated.
      const isDescending =
        onBoth('ptosis') && (onBoth('ophthalmoplegia') || onBoth('facial-weakness')) && bulbar.length > 0;
      const isTypical = widePupils || isDescending;
      const age = facts.exam.person.ageYears;
      const gut = [
        ...facts.told('bowel-disturbance'),
        ...findingReasons(facts.query.abnormal(['sphincters/constipation'])),
      ];
      if (age !== undefined && age < 1 && afebrile) {
        const infant = poisonedInfant(facts, gut, [...bulbar, ...findingReasons(cranial, 2)]);
        if (infant.length > 0) return present(infant);
      }
      // A dry mouth or a gut that stands still, beside lids and throat, is not the junction of myasthenia.
      const dry = [
        ...facts.told('dry-mouth'),
        ...findingReasons(facts.query.abnormal(['autonomic/dry-mouth'])),
        ...gut,
      ];
      const eyes = [...findingReasons(cranial, 3), ...facts.told('diplopia', 'drooping-eyelids')];
      if (dry.length > 0 && bulbar.length > 0 && eyes.length > 0 && afebrile && facts.beganWithin(7) === 'yes')
        return present([...dry, ...bulbar, ...eyes]);
      return kinds.size >= 2 && (story.length > 0 || isTypical) && afebrile && facts.beganWithin(7) === 'yes'
        ? present([...story, ...findingReasons(cranial, 4)])
        : null;
    },
  },
  {
    key: 'autonomic-instability-in-neuropathy',
    label: 'Autonomic instability in acute neuropathy',
    urgency: 'immediate',
    action: 'Monitored bed; continuous ECG; avoid vagal triggers such as suction.',
    source: recalled('gbs-ten-steps-2019', 'monitoring'),
    check: (facts) => {
      const signs = facts.query.abnormal([
        'autonomic/blood-pressure-lability',
        'autonomic/paroxysmal-hypertension',
        'autonomic/arrhythmia',
        'autonomic/bradycardia',
        'autonomic/resting-tachycardia',
        'autonomic/ileus',
        'autonomic/orthostatic-hypotension',
        'autonomic/fixed-heart-rate',
      ]);
      const storm = [...findingReasons(signs), ...measuredInstability(facts)];
      if (isOfTheJunction(facts) || isCholinergic(facts)) return null;
      return storm.length > 0 && acuteSymmetricalWeakness(facts).length > 0 ? present(storm) : null;
    },
  },
  {
    key: 'rapidly-progressive-weakness',
    label: 'Very rapidly progressive limb weakness',
    urgency: 'same-day',
    action: 'Same-day specialist assessment with imaging; potassium, creatine kinase, ECG and vital capacity.',
    source: read('nice-ng127', 'limb weakness that progresses within hours to days'),
    check: (facts) => {
      // A more telling flag speaks for these.
      const isHemiparesis = weakHalf(facts).length > 0;
      const hasOwnFlag =
        (isHemiparesis && suddenFocalSigns(facts).length > 0) ||
        (acuteSymmetricalWeakness(facts).length > 0 && !areAllLimbsStruck(facts)) ||
        areFeetPressed(facts) ||
        isOfPressedNerves(facts) ||
        isOfPairedNerves(facts) ||
        facts.saddleLoss.length > 0 ||
        isOfTheTractsOfLegs(facts);
      // One limb that weakened within days may be a nerve that was lain on; several are not.
      const severalLimbs = limbsOf(facts.weakLimbs).size > 1;
      if (isOfOneNerveOrRoot(facts)) return null;
      return facts.weakLimbs.length > 0 &&
        facts.lowestLimbPower <= 4 &&
        facts.beganWithin(7) === 'yes' &&
        (facts.exam.course === 'progressive' || (facts.isProgressive && severalLimbs)) &&
        !hasOwnFlag
        ? present(findingReasons(facts.weakLimbs, 4))
        : null;
    },
  },
  {
    key: 'bilateral-facial-palsy',
    label: 'Facial palsy on both sides',
    urgency: 'same-day',
    action: 'Same-day neurology; lumbar puncture; Borrelia and HIV tests.',
    source: recalled('gbs-ten-steps-2019', 'variants'),
    check: checkBothFaces,
  },
  {
    key: 'slow-weakness-with-breathlessness',
    label: 'Slowly progressive weakness with breathlessness',
    urgency: 'immediate',
    action: 'Immediate referral; vital capacity sitting and lying.',
    source: read('nice-ng127', 'limb or neck weakness with breathlessness'),
    check: (facts) =>
      slowWeakness(facts, [
        ...facts.told('breathlessness', 'orthopnoea'),
        ...findingReasons(facts.query.abnormal(breathingSigns)),
        ...weakDiaphragm(facts),
      ]),
  },
  {
    key: 'slow-weakness-with-swallowing-trouble',
    label: 'Slowly progressive weakness with swallowing trouble',
    urgency: 'urgent',
    action: 'Urgent neurology referral; swallowing assessment.',
    source: read('nice-ng127', 'limb or neck weakness with swallowing impairment'),
    check: (facts) =>
      slowWeakness(facts, [
        ...facts.told('dysphagia', 'nasal-regurgitation'),
        ...findingReasons(facts.query.abnormal(['cranial-nerves/dysphagia'])),
        ...failingTongue(facts),
      ]),
  },
];

/** Signs of the tracts in the legs, which the flag of the cord speaks for; jerks that are brisk in legs found strong say nothing of arms that hang. */
function isOfTheTractsOfLegs({ upperMotorSignsInLegs, weak, query, bothArmsWeak }: BedsideFacts): boolean {
  const areJerks = upperMotorSignsInLegs.every(({ item }) => item.scale === 'reflex-grade');
  const tried = query.testedWhere(({ item }) => item.probe.kind === 'movement' && item.region === 'lower-limbs');
  const areStrong = tried.length > 0 && weak('lower-limbs').length === 0;
  return upperMotorSignsInLegs.length > 0 && !(areJerks && areStrong && bothArmsWeak);
}

/** A vital capacity that falls by a quarter on lying down: the diaphragm is weak. */
function weakDiaphragm({ query }: BedsideFacts): readonly Reason[] {
  const fall = query.quantity('vital-capacity-fall-supine', '%');
  return fall !== undefined && isAtLeast(fall, 25)
    ? [{ pointer: fall.pointer, text: `vital capacity falls by ${written(fall)} % on lying down` }]
    : [];
}

/** A pulse of 120 or more or under 50 a minute, a systolic pressure of 180 or more or under 90 mmHg. Judged. */
function measuredInstability({ query }: BedsideFacts): readonly Reason[] {
  const limits = [
    ['heart-rate', '/min', 50, 120],
    ['systolic-pressure-supine', 'mm[Hg]', 90, 180],
  ] as const;
  return limits.flatMap(([key, unit, low, high]) => {
    const measured = query.quantity(key, unit);
    return measured !== undefined && (isUnder(measured, low) || isAtLeast(measured, high))
      ? [{ pointer: measured.pointer, text: `${lowerFirst(measured.label)} ${written(measured)}` }]
      : [];
  });
}

/**
 * Spores that grow in the gut of an infant: it stands still, then lids, face and suck fail, then head and limbs; over days to
 * several weeks. Without the gut, lids or pupils with a weak suck and a floppy body are enough.
 */
function poisonedInfant(facts: BedsideFacts, gut: readonly Reason[], head: readonly Reason[]): readonly Reason[] {
  const slack = facts.query.abnormalWhere(({ item, value }) => item.probe.kind === 'tone' && value === 'reduced');
  const floppy = [
    ...facts.told('weakness', 'descending-weakness'),
    ...findingReasons([...slack, ...facts.query.abnormal(['power/neck-flexion', 'power/neck-extension'])], 2),
  ];
  const lids = [
    ...facts.told('drooping-eyelids'),
    ...findingReasons(
      facts.query.abnormal(['cranial-nerves/ptosis', 'cranial-nerves/ophthalmoplegia', 'cranial-nerves/dilated-pupil']),
      2,
    ),
  ];
  if (facts.exam.onset.pace === 'chronic' || facts.beganWithin(60) === 'no' || !facts.maybeProgressing) return [];
  if (gut.length > 0 && head.length + floppy.length + lids.length > 0) return [...gut, ...head, ...floppy];
  const suck = bulbarReasons(facts);
  // A throat that fails in two ways within days, in an infant who neither fits nor was born so, is it before lids or limbs follow.
  const isBrain = facts.told('seizure', 'ongoing-seizure', 'vomiting', 'head-injury', 'perinatal-injury').length > 0;
  const throat = findingReasons(
    facts.query.abnormal([
      ...['cranial-nerves/weak-suck-or-cry', 'cranial-nerves/absent-gag-reflex', 'cranial-nerves/drooling'],
      ...['cranial-nerves/dysphagia', 'cranial-nerves/dysphonia', 'cranial-nerves/facial-weakness'],
    ]),
  );
  if (!isBrain && throat.length >= 2 && facts.cameWithin(14)) return [...facts.told('dysphagia'), ...throat];
  return lids.length > 0 && suck.length > 0 && floppy.length > 0 ? [...lids, ...suck, ...floppy] : [];
}

const signsOfYears = [
  'inspection/scapular-winging',
  'inspection/wasting',
  'inspection/calf-pseudohypertrophy',
  'inspection/joint-contracture',
  'involuntary-movements/grip-myotonia',
  'involuntary-movements/percussion-myotonia',
];

/**
 * Both facial nerves weak, each shown by its whole half of the face or by its upper part. Beyond the month, up to two years, it
 * is still sarcoid, Borrelia, HIV or growth in the meninges where nothing else is weak and no muscle or junction speaks.
 */
function checkBothFaces(facts: BedsideFacts): Verdict | null {
  if (isOfTheJunction(facts)) return null;
  const faces = facts.query.abnormal([
    'cranial-nerves/facial-weakness',
    'cranial-nerves/upper-facial-weakness',
    // It shows an eye that could not be closed.
    'cranial-nerves/bells-phenomenon',
  ]);
  if (!isOnBothSides(faces)) return null;
  const recency = facts.beganWithin(28);
  // Of what nobody has dated, muscles that are thin or winged, or do not let go, say that it has gone on for years.
  if (recency === 'unknown' && facts.query.abnormal(signsOfYears).length > 0) return null;
  if (recency !== 'no') return present(findingReasons(faces, 4));
  const elsewhere = facts.query.abnormal(['cranial-nerves/ptosis', 'cranial-nerves/tongue-wasting', 'reflexes/jaw']);
  const inherited = facts.told(
    ...['family/muscle-disease', 'family/myotonic-dystrophy', 'family/similar-disorder', 'myasthenia-gravis'],
    ...['fatigable-weakness', 'muscle-thinning', 'difficulty-with-stairs'],
  );
  const isMonths = facts.exam.onset.pace !== 'chronic' && facts.beganWithin(92) === 'yes';
  const isOther =
    facts.weakLimbs.length + elsewhere.length + inherited.length > 0 ||
    facts.kindProbability('muscle', 'junction', 'motor-neuron-system') >= (isMonths ? 0.7 : 0.3);
  return facts.maybeProgressing && facts.beganWithin(twoYears) === 'yes' && !isOther
    ? present(findingReasons(faces, 4), 'urgent')
    : null;
}

/** Cranial nerve palsies on both sides with lost reflexes within four weeks: the variants of the syndrome that spare the limbs. */
function areflexicCranialPalsy(facts: BedsideFacts): readonly Reason[] {
  if (facts.beganWithin(28) !== 'yes' || !facts.maybeProgressing || facts.upperMotorSigns.length > 0) return [];
  const lost = facts.reducedReflexes;
  const palsies = facts.query.abnormal([
    'cranial-nerves/ophthalmoplegia',
    'cranial-nerves/facial-weakness',
    'cranial-nerves/sixth-nerve-palsy',
    'cranial-nerves/eye-abduction-weakness',
    'cranial-nerves/esotropia',
    'cranial-nerves/flaccid-dysarthria',
    'cranial-nerves/dysphagia',
  ]);
  const isSymmetrical = (['left', 'right'] as const).every((side) => lost.some((finding) => finding.side === side));
  const faces = palsies.filter(({ item }) => item.key === 'facial-weakness');
  const bothFaces = new Set(faces.map(({ side }) => side)).size === 2;
  return palsies.length > 0 && isSymmetrical && (bothFaces || lost.length >= 4)
    ? findingReasons([...palsies, ...lost], 5)
    : [];
}

/** A tongue that withers, twitches or stiffens on both sides with speech or a voice that fails: the swallow fails with it, though nobody has asked. */
function failingTongue(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const tongue = query.abnormal([
    'cranial-nerves/tongue-wasting',
    'cranial-nerves/tongue-fasciculation',
    'cranial-nerves/spastic-tongue',
  ]);
  const speech = [
    ...facts.told('slurred-speech', 'voice-change'),
    ...findingReasons(
      query.abnormal([
        'cranial-nerves/dysarthria',
        'cranial-nerves/flaccid-dysarthria',
        'cranial-nerves/spastic-dysarthria',
        'cranial-nerves/nasal-speech',
        'cranial-nerves/drooling',
      ]),
      2,
    ),
  ];
  const isOfOneNerve = onOneSide(tongue).length > 0;
  return tongue.length > 0 && !isOfOneNerve && facts.exam.course === 'progressive' && speech.length > 0
    ? [...findingReasons(tongue, 2), ...speech.slice(0, 2)]
    : [];
}

function slowWeakness(facts: BedsideFacts, trouble: readonly Reason[]): Verdict | null {
  const weak = [
    ...facts.weakLimbs,
    ...facts.query.abnormalWhere(({ item }) => item.section === 'power' && item.region === 'neck'),
    ...facts.query.abnormal([
      'cranial-nerves/tongue-wasting',
      'cranial-nerves/tongue-fasciculation',
      'cranial-nerves/spastic-tongue',
      'cranial-nerves/jaw-weakness',
    ]),
  ];
  // A limb that is called weak and was found slow or rigid, and not weak, is that of parkinsonism.
  const stiff = facts.query.abnormalWhere(
    ({ item, value }) => item.key === 'bradykinesia' || (item.probe.kind === 'tone' && value === 'rigid'),
  );
  const told = stiff.length > 0 ? [] : facts.told('weakness', 'leg-weakness', 'arm-weakness', 'difficulty-with-stairs');
  // Half a body that a stroke has left weak, with the swallow of the same brain.
  const isOfStroke = facts.told('stroke').length > 0 && oneSidedWeakness(facts).length === weak.length;
  // Of what nobody has dated muscles that have grown thin or twitch say that it is not of days.
  const thin = facts.query.abnormalWhere(({ item }) => item.key === 'wasting' || item.key === 'fasciculation');
  const isUndatedButOld = facts.isUndated && thin.length + facts.told('muscle-thinning').length > 0;
  const isOfWeeks = facts.exam.onset.pace === 'subacute' && facts.beganWithin(14) === 'no';
  const slow =
    (facts.beganWithin(28) === 'no' || isOfWeeks || isUndatedButOld) && facts.maybeProgressing && !isOfStroke;
  return slow && weak.length + told.length > 0 && trouble.length > 0
    ? present([...trouble, ...findingReasons(weak, 3), ...told])
    : null;
}

/** A voice that is hoarse by itself, with a cord of one side seen to stand still or after an operation on the neck: the swallow and the breath are sound. */
function isOneVagusNerve(facts: BedsideFacts): boolean {
  const { abnormalFindings, query } = facts;
  const cords = onOneSide(query.abnormal(['cranial-nerves/vocal-cord-paralysis']));
  const operated = facts.told('neck-or-chest-surgery', 'recent-surgery');
  const isVoiceAlone = abnormalFindings.every(({ item }) => ofTheVoice.has(item.key));
  const beyond = facts.told(
    ...['dysphagia', 'nasal-regurgitation', 'slurred-speech', 'breathlessness', 'orthopnoea', 'diplopia'],
    ...['drooping-eyelids', 'weakness', 'arm-weakness', 'leg-weakness', 'fatigable-weakness', 'myasthenia-gravis'],
  );
  return cords.length + operated.length > 0 && isVoiceAlone && beyond.length === 0;
}

const ofTheVoice: ReadonlySet<string> = new Set(['dysphonia', 'vocal-cord-paralysis', 'bovine-cough']);

/** Speech that fails with the lids of both eyes, or at the head of a weakness that comes down: the throat is next. */
function speechFromAbove(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const lids = isOnBothSides(query.abnormal(['cranial-nerves/ptosis', 'cranial-nerves/fatigable-ptosis']));
  const tongue = isOnBothSides(query.abnormal(['cranial-nerves/tongue-weakness']));
  const isFromAbove = lids || tongue || facts.told('descending-weakness').length > 0;
  const others = query.abnormal([
    'cranial-nerves/tongue-weakness',
    'cranial-nerves/jaw-weakness',
    'cranial-nerves/fatigable-ptosis',
    'power/neck-flexion',
    'power/neck-extension',
  ]);
  const isBelow = facts.weakLimbs.length + others.length > 0;
  if (!isFromAbove || !isBelow) return [];
  return [...findingReasons(query.abnormal(['cranial-nerves/dysarthria'])), ...facts.told('slurred-speech')];
}

/** All four limbs nearly without power within two days: as fast as that no nerve fails, but potassium, the cord and the pons do. */
function areAllLimbsStruck(facts: BedsideFacts): boolean {
  const isGone = (limb: Limb) => isOnBothSides(facts.weak(limb).filter((finding) => (powerOf(finding) ?? 5) <= 1));
  return isGone('upper-limbs') && isGone('lower-limbs') && facts.beganWithin(2) === 'yes';
}
