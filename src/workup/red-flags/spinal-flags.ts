import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons, missing } from '../../causes/reasons.ts';
import { isOnLimb } from '../../exam/place-on-limb.ts';
import { read, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import {
  checkCord,
  cordSigns,
  crossedLoss,
  failingArms,
  failingBladder,
  isOnBothSides,
  isPlainlyAbove,
  lostPositionOfAllLimbs,
  lostPositionOfLegs,
  spinalPain,
  suspendedLoss,
  unknownOnset,
  wastedOrNumbHands,
  weakAndSwaying,
  weakBelowALevel,
  weakUnderASlippingNeck,
} from './cord.ts';
import { checkDysreflexia } from './dysreflexia.ts';
import { feverReasons, trueFever } from './fever.ts';
import { isOfTheGirdles } from './girdles.ts';
import { isOutsideTheCanal } from './outside-canal.ts';
import { absent, notAssessable, orTold, present, type RedFlagRule, slowlyProgressive, type Verdict } from './rule.ts';
import { each, none } from './story.ts';
import { onOneSide } from './sudden-deficit.ts';
import { isAtLeast, isOver, isUnder, written } from './thresholds.ts';

const legPain = ['leg-pain', 'thigh-pain', 'radicular-leg-pain', 'bilateral-leg-pain'] as const;
const halfYear = 183;

/** What people tell of when cord or roots fail. */
const toldDeficit = [
  'leg-weakness',
  'arm-weakness',
  'weakness',
  'numbness',
  'difficulty-walking',
  'bladder-disturbance',
] as const;

/** What relatives have too and has grown worse for years is a family's disease and not a mass. */
function isKnownFamily(facts: BedsideFacts): boolean {
  return hasRelatives(facts) && isOld(facts);
}

function hasRelatives({ told }: BedsideFacts): boolean {
  return told('family/similar-disorder', 'family/spastic-paraplegia', 'family/ataxia').length > 0;
}

function isOld({ exam }: BedsideFacts): boolean {
  return (exam.onset.durationDays ?? 0) > slowlyProgressive;
}

/** Not within the month, or called so. */
function isGradual({ exam: { onset }, beganWithin }: BedsideFacts): boolean {
  return beganWithin(28) === 'no' || onset.pace === 'subacute' || onset.pace === 'chronic';
}

/** Pain of the neck or arm with clumsy hands or a changed gait, and nobody looked at the legs. */
function checkUnseenLegs(facts: BedsideFacts): Verdict | null {
  const pain = facts.told('neck-pain', 'radicular-arm-pain');
  const hint = facts.told('clumsiness', 'difficulty-walking', 'unsteadiness', 'bladder-disturbance');
  const legs = facts.query.testedWhere(
    ({ item }) => item.section === 'plantars' || (item.section === 'reflexes' && item.region === 'lower-limbs'),
  );
  const isLeftOut = facts.exam.findings.some(
    ({ item, notTested }) => item.section === 'plantars' && notTested !== undefined,
  );
  if (pain.length === 0 || legs.length > 0 || (hint.length === 0 && !isLeftOut)) return null;
  return notAssessable([
    missing('reflexes of the legs and plantar responses were not tested, and it matters'),
    ...hint,
  ]);
}

/**
 * Whether something was found that roots of the legs cannot do: the arms are affected too, or upper motor neurons. With
 * these, numb legs and a painful back are no sign of the cauda equina, and other flags speak.
 */
function isMoreThanLumbarRoots({ query, upperMotorSigns }: BedsideFacts): boolean {
  const elsewhere = query.abnormalWhere(
    ({ item, place }) =>
      (item.region === 'upper-limbs' && ['power', 'reflexes', 'tone'].includes(item.section)) ||
      (item.section === 'sensation' && isOnLimb(place, 'upper-limbs')),
  );
  return elsewhere.length > 0 || upperMotorSigns.length > 0;
}

/** Flags of the cord, the cauda equina and the spine. */
export const spinalFlags: readonly RedFlagRule[] = [
  {
    key: 'suspected-cauda-equina-syndrome',
    label: 'Suspected cauda equina syndrome',
    urgency: 'immediate',
    action:
      'Emergency MRI of the lumbosacral spine as soon as possible and within four hours of the request; call the spinal surgeons.',
    source: read('girft-ces-2023'),
    check: checkCaudaEquina,
  },
  {
    key: 'threatened-cauda-equina',
    label: 'Pain in both legs from the back, cauda equina at risk',
    urgency: 'same-day',
    action: 'Examine saddle sensation and the bladder the same day; MRI of the lumbosacral spine.',
    source: read('girft-ces-2023'),
    check: (facts) => {
      const both = facts.told('bilateral-leg-pain');
      const stretch = facts.query.abnormal(['special-tests/straight-leg-raise']);
      const bothSides = (['left', 'right'] as const).every(
        (side) => stretch.some((one) => one.side === side) || facts.legSensoryLoss.some((one) => one.side === side),
      );
      const pain = facts.told('back-pain', 'leg-pain', 'radicular-leg-pain');
      const signs =
        bothSides && pain.length > 0 && !isMoreThanLumbarRoots(facts)
          ? [...pain, ...findingReasons([...stretch, ...facts.legSensoryLoss], 2)]
          : [];
      const because = [...both, ...signs];
      return because.length > 0 && facts.beganWithin(14) !== 'no' && facts.exam.onset.pace !== 'chronic'
        ? present(because)
        : null;
    },
  },
  {
    key: 'suspected-cord-compression',
    label: 'Acute or subacute cord lesion, compression until shown otherwise',
    urgency: 'immediate',
    action: 'MRI of the whole spine at once, before other tests.',
    source: recalled('nice-ng234', 'recognition and imaging'),
    check: checkCord,
  },
  {
    key: 'progressive-cord-signs',
    label: 'Progressive signs of the spinal cord or cauda equina',
    urgency: 'urgent',
    action:
      'Urgent MRI of the spine (cervical if the arms are affected, else the whole spine) and an opinion on surgery.',
    source: recalled('nice-ng127', 'limb weakness and gait unsteadiness'),
    check: (facts) => {
      const cauda = [...facts.saddleLoss, ...failingBladder(facts)];
      const legs = [...facts.weak('lower-limbs'), ...facts.legSensoryLoss];
      // Numb feet of a neuropathy may come with a bladder of the same neuropathy.
      const isOfNerves = facts.weak('lower-limbs').length === 0 && isOfPolyneuropathy(facts);
      const isLower = cauda.length > 0 && legs.length > 0 && !isOfNerves;
      const lower = isLower ? [...cauda.slice(0, 3), ...findingReasons(legs, 3)] : [];
      // Rigid legs and a weak bladder of a failing autonomic system are not the cord's.
      const failing = facts.query.hasAbnormal('autonomic/orthostatic-hypotension') ? (['cerebellum'] as const) : [];
      const isElsewhere =
        facts.kindProbability('basal-ganglia', ...failing) >= 0.5 && facts.trunkSensoryLoss.length === 0;
      const found = cordSigns(facts);
      const signs = found.length > 0 ? found : lower;
      // What is said to grow, or of which nothing is said, counts as gradual where nobody has said since when.
      const isUndated = facts.beganWithin(28) === 'unknown';
      const slow = (isGradual(facts) || isUndated) && !isKnownFamily(facts) && !isElsewhere;
      if (isOfMotorNeurons(facts)) return null;
      if (signs.length > 0 && slow && facts.maybeProgressing) return present(signs);
      return orTold(checkUnseenLegs(facts), [
        ...growingInTheCord(facts),
        ...clumsyAndUnsteady(facts),
        ...(hasRelatives(facts) ? [] : weakAndSwaying(facts)),
        ...(isUndated && facts.maybeProgressing ? weakBelowALevel(facts) : []),
        ...(isOld(facts) ? [] : weakUnderASlippingNeck(facts)),
      ]);
    },
  },
  {
    key: 'suspected-metastatic-cord-compression',
    label: 'Cancer with signs of the cord or cauda equina',
    urgency: 'immediate',
    action:
      'Contact the metastatic cord compression coordinator at once; MRI of the whole spine always within 24 hours.',
    source: read('nice-ng234'),
    check: (facts) => {
      const cancer = facts.told('cancer', 'lymphoma');
      if (cancer.length === 0) return null;
      if (!facts.maybeProgressing && facts.beganWithin(365) === 'no') return null;
      // Brisk jerks of both legs above flexor plantars are met in health, where the spine does not hurt.
      const tracts = isBriskAlone(facts) && facts.told(...spinalPain).length === 0 ? [] : facts.upperMotorSignsInLegs;
      // A strip of the trunk on one side is that of its nerves, unless the spine hurts or something else fails.
      const strip = facts.trunkSensoryLoss.filter(({ place }) => place?.kind !== 'level-below');
      const isStrip = onOneSide(facts.trunkSensoryLoss).length > 0 && strip.length === facts.trunkSensoryLoss.length;
      const isOfNerves = isStrip && facts.told(...spinalPain, 'tight-band', 'difficulty-walking').length === 0;
      const signs = [
        ...findingReasons([...tracts, ...(isOfNerves ? [] : facts.trunkSensoryLoss)], 3),
        ...(facts.bothLegsWeak ? findingReasons(facts.weak('lower-limbs'), 2) : []),
        ...facts.sphincterFailure.slice(0, 2),
      ];
      const pain = facts.told(...spinalPain);
      const root = facts.told('radicular-leg-pain', 'radicular-arm-pain', 'bilateral-leg-pain', 'tight-band');
      const trouble = facts.told('leg-weakness', 'difficulty-walking', 'numbness', 'unsteadiness', 'falls');
      const limbSigns = [...facts.weak('lower-limbs'), ...facts.weak('upper-limbs'), ...facts.legSensoryLoss];
      // What presses on the cord does not leave it at a bladder for more than a year.
      const isOutletAlone = signs.length > 0 && facts.sphincterFailure.length >= signs.length;
      if (isOutletAlone && facts.beganWithin(365) === 'no' && pain.length + root.length === 0) return null;
      if ((isNeuropathic(facts) || isOldWeakness(facts) || isOfTheGirdles(facts)) && pain.length === 0) return null;
      if (signs.length > 0) return present([...cancer, ...signs]);
      if (trouble.length > 0 && pain.length + root.length > 0)
        return present([...cancer, ...pain, ...root, ...trouble]);
      if (root.length > 0 && limbSigns.length > 0)
        return present([...cancer, ...root, ...findingReasons(limbSigns, 3)]);
      return pain.length > 0 && limbSigns.length > 0
        ? present([...cancer, ...pain, ...findingReasons(limbSigns, 3)])
        : null;
    },
  },
  {
    key: 'suspected-spinal-metastases',
    label: 'Cancer with spinal pain, no deficit',
    urgency: 'same-day',
    action:
      'Contact the metastatic cord compression coordinator within 24 hours; MRI of the whole spine within one week.',
    source: read('nice-ng234'),
    check: (facts) => {
      const cancer = facts.told('cancer', 'lymphoma');
      const pain = [
        ...facts.told('thoracic-back-pain', 'night-spinal-pain', 'pain-on-straining', 'neck-pain', 'tight-band'),
        ...(facts.exam.course === 'progressive' ? facts.told('back-pain') : []),
      ];
      const deficit = facts.query.abnormalWhere(({ item }) => item.section === 'power' || item.section === 'sensation');
      if (cancer.length > 0 && pain.length > 0 && deficit.length === 0) return present([...cancer, ...pain]);
      // Any pain of the spine in the first year, where no cord speaks: the legs have a flag of their own.
      const isCord = facts.bothLegsWeak || facts.upperMotorSignsInLegs.length > 0 || facts.trunkSensoryLoss.length > 0;
      if (isCord || !facts.maybeProgressing || facts.beganWithin(365) === 'no') return null;
      const tender = findingReasons(facts.query.abnormal(['inspection/spinal-tenderness']));
      return orTold(null, each(cancer, [...facts.told(...spinalPain), ...tender]));
    },
  },
  {
    key: 'suspected-spinal-infection',
    label: 'Suspected spinal infection',
    urgency: 'immediate',
    action: 'MRI of the whole spine with contrast, blood cultures, and antibiotics as soon as cultures are taken.',
    source: recalled('adams-victor', 'spinal epidural abscess'),
    check: (facts) => {
      const pain = facts.told(...spinalPain);
      const fever = feverReasons(facts);
      if (pain.length === 0) return null;
      if (fever.length === 0) return orTold(null, [...infectionWithoutFever(facts), ...wastingWithSpinalPain(facts)]);
      const risk = facts.told(
        'injecting-drug-use',
        'immunosuppression',
        'recent-bacteraemia',
        'sepsis',
        'diabetes-mellitus',
        'spinal-surgery',
        'recent-surgery',
        'lumbar-puncture-or-epidural',
        'chronic-kidney-disease',
      );
      const stiff = facts.query.abnormal(['special-tests/neck-stiffness', 'inspection/spinal-tenderness']);
      const signs = findingReasons(
        [...facts.weak('lower-limbs'), ...facts.upperMotorSignsInLegs, ...facts.trunkSensoryLoss, ...stiff],
        3,
      );
      const told = facts.told(...toldDeficit);
      // New pain of the back with a true fever, or a C-reactive protein as high as in one, is spondylodiscitis until shown otherwise. Source: IDSA guideline 2015, recalled.
      const isNew = facts.beganWithin(92) === 'yes' && facts.maybeProgressing;
      const crp = facts.query.quantity('crp', 'mg/L');
      const isFebrile = trueFever(facts).length > 0 || (crp !== undefined && isAtLeast(crp, 50));
      const back = isNew && isFebrile ? facts.told('back-pain', 'thoracic-back-pain', 'night-spinal-pain') : [];
      // Inflamed blood with a pain that wakes, sweats or a loss of weight is the same, of weeks too.
      const isWeeks = facts.beganWithin(halfYear) === 'yes' && facts.maybeProgressing;
      const wasting = isWeeks ? facts.told('night-sweats', 'weight-loss', 'night-spinal-pain') : [];
      return risk.length + signs.length + told.length + back.length + wasting.length > 0
        ? present([...pain, ...fever, ...risk, ...signs, ...told])
        : null;
    },
  },
  {
    key: 'suspected-spinal-haematoma',
    label: 'Suspected spinal or retroperitoneal haematoma',
    urgency: 'immediate',
    action: 'MRI of the spine or CT of the abdomen now; reverse the anticoagulant with specialist advice.',
    source: recalled('adams-victor', 'spinal haematoma'),
    check: (facts) => {
      const thin = thinBlood(facts);
      const risk = [...thin, ...facts.told('lumbar-puncture-or-epidural')];
      // Blood in the iliacus or psoas hurts in the groin, the thigh or the belly and takes the femoral nerve or the lumbar plexus.
      const pain = facts.told(...spinalPain, ...legPain, 'flank-pain', 'abdominal-pain');
      const signs = [
        ...findingReasons([...facts.weak('lower-limbs'), ...facts.trunkSensoryLoss], 3),
        ...facts.told('leg-weakness'),
      ];
      const recent = facts.beganWithin(14) !== 'no';
      // Pain of the spine that strikes like a blow, with any loss of function, is blood until shown otherwise.
      const struck =
        facts.exam.onset.pace === 'hyperacute' && facts.told('neck-pain', 'back-pain', 'thoracic-back-pain').length > 0;
      const deficit = [...signs, ...facts.told(...toldDeficit)];
      if (struck && recent && deficit.length > 0) return present([...pain, ...deficit]);
      // A thigh that no longer lifts and a knee that no longer straightens, newly, need no pain in somebody who bleeds.
      const thigh = facts.query.abnormal(['power/hip-flexion', 'power/knee-extension']);
      const isPlexus = thigh.length >= 2 && facts.kindProbability('plexus', 'nerve', 'root', 'cord') >= 0.5;
      if (isPlexus && thin.length > 0 && facts.cameWithin(14))
        return present([...thin, ...pain, ...findingReasons(thigh, 3)]);
      return risk.length > 0 && pain.length > 0 && signs.length > 0 && recent
        ? present([...risk, ...pain, ...signs])
        : null;
    },
  },
  {
    key: 'autonomic-dysreflexia',
    label: 'Autonomic dysreflexia',
    urgency: 'immediate',
    action:
      'Sit the person up, loosen clothing, find and remove the trigger (bladder, bowel, skin); watch the blood pressure.',
    source: read('autonomic-dysreflexia-2005'),
    check: checkDysreflexia,
  },
];

/**
 * What keeps blood from clotting: told, or measured. A catheter is not put beside the dura above an INR of 1.4 or below
 * 75 to 80 platelets; it bleeds by itself well beyond that. Source: ASRA guideline 2018 on neuraxial anaesthesia, recalled.
 */
function thinBlood(facts: BedsideFacts): readonly Reason[] {
  const inr = facts.query.quantity('inr', '{INR}');
  const platelets = facts.query.quantity('platelets', '10*9/L');
  return [
    ...facts.told('anticoagulant', 'bleeding-disorder'),
    ...(inr !== undefined && isOver(inr, 1.5) ? [{ pointer: inr.pointer, text: `INR ${written(inr)}` }] : []),
    ...(platelets !== undefined && isUnder(platelets, 50)
      ? [{ pointer: platelets.pointer, text: `platelets ${written(platelets)} × 10⁹/L` }]
      : []),
  ];
}

/**
 * A third and more of spinal abscesses have no fever. A racing heart or a tender spine stands for it in somebody through
 * whose skin or blood germs have come, once legs or bladder fail.
 */
function infectionWithoutFever(facts: BedsideFacts): readonly Reason[] {
  if (facts.beganWithin(92) === 'no' || !facts.maybeProgressing) return none;
  const ill = findingReasons(facts.query.abnormal(['autonomic/resting-tachycardia', 'inspection/spinal-tenderness']));
  const entry = facts.told(
    'injecting-drug-use',
    'recent-bacteraemia',
    'sepsis',
    'immunosuppression',
    'spinal-surgery',
    'lumbar-puncture-or-epidural',
  );
  const failing = [
    ...findingReasons(facts.weak('lower-limbs'), 2),
    ...failingBladder(facts),
    ...facts.told(...toldDeficit),
  ];
  return each(facts.told(...spinalPain), ill, entry, failing);
}

/** Tuberculosis of the spine has fever in a third: weeks of pain with sweats or wasting, in one who has met it, or with legs that fail. */
function wastingWithSpinalPain(facts: BedsideFacts): readonly Reason[] {
  if (facts.beganWithin(halfYear) !== 'yes' || !facts.maybeProgressing || facts.told('cancer', 'lymphoma').length > 0)
    return none;
  const wasting = facts.told('night-sweats', 'weight-loss');
  const met = facts.told('tuberculosis', 'travel', 'hiv-infection', 'injecting-drug-use', 'immunosuppression');
  const failing = [...facts.told(...toldDeficit), ...findingReasons(facts.weak('lower-limbs'), 2)];
  const pain = facts.told(...spinalPain);
  const known = facts.told('tuberculosis');
  return [...each(pain, met, wasting), ...each(pain, wasting, failing), ...each(pain, known, failing)];
}

/** One sign of the tracts or a level is enough where the cord is a likely place and limbs, walk or bladder are said to grow worse. */
function growingInTheCord(facts: BedsideFacts): readonly Reason[] {
  const inCord = facts.kindProbability('cord');
  const isUndated = facts.beganWithin(28) === 'unknown';
  const grows = (isGradual(facts) || isUndated) && facts.exam.course === 'progressive';
  // A level is met in no degeneration of tracts, however long it has been there.
  const tooOld = isOld(facts) && facts.trunkSensoryLoss.length === 0;
  if (!grows || inCord < 0.3 || tooOld || hasRelatives(facts)) return none;
  // Brisk reflexes alone are met in health, unless limbs are weak or withered or their position is lost, and the cord is the likeliest place.
  const swaying = facts.query.abnormal(['gait/sensory-ataxic', 'gait/romberg']);
  const alsoFailing = [...facts.weakLimbs, ...failingArms(facts), ...lostPositionOfLegs(facts), ...swaying];
  const isWeak = alsoFailing.length > 0 && isOnBothSides(facts.upperMotorSignsInLegs) && inCord >= 0.5;
  const signs = [
    ...facts.upperMotorSigns.filter(
      ({ item }) => (isWeak || item.scale !== 'reflex-grade') && item.section !== 'involuntaryMovements',
    ),
    ...facts.trunkSensoryLoss,
    ...suspendedLoss(facts),
    ...(facts.reducedReflexes.length === 0 ? lostPositionOfAllLimbs(facts) : []),
  ];
  const trouble = [
    ...findingReasons([...facts.weakLimbs, ...facts.legSensoryLoss], 3),
    ...facts.told(...toldDeficit.filter((key) => key !== 'arm-weakness' && key !== 'weakness')),
    ...facts.told('clumsiness', 'unsteadiness', 'falls', 'paraesthesiae', 'electric-shock-on-neck-flexion'),
  ];
  return each([...findingReasons(signs, 3), ...crossedLoss(facts)], trouble);
}

/**
 * Numb or clumsy hands with a walk that fails little by little and brisk reflexes, where no sign of the head speaks for the
 * brain: the commonest cord disease of adults is told like this. A shock down the back on bending the neck counts as much.
 */
function clumsyAndUnsteady(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const hoffmann = query.abnormal(['special-tests/hoffmann', 'special-tests/tromner']);
  // Fingers of both hands that answer a flick beside legs that sway: whether it grows need not be said.
  const isOfBothHands = isOnBothSides(hoffmann) && facts.maybeProgressing;
  const grows = isGradual(facts) && (facts.isProgressive || isOfBothHands);
  const head = query.abnormalWhere(
    ({ item }) => item.section === 'cranialNerves' || item.section === 'higherFunction' || item.section === 'autonomic',
  );
  const slow = query.abnormal(['involuntary-movements/bradykinesia']);
  if (!grows || isOld(facts) || hasRelatives(facts) || head.length + slow.length > 0) return none;
  if (facts.told('multiple-sclerosis', 'speech-difficulty', 'cognitive-change').length > 0) return none;
  const place = facts.kindProbability('cord') + siteProbability(facts, 'foramen-magnum');
  const shock = facts.told('electric-shock-on-neck-flexion');
  const hands = [
    ...facts.told('clumsiness', 'arm-weakness', 'numbness', ...(isOfBothHands ? ['paraesthesiae'] : [])),
    ...findingReasons([...facts.weak('upper-limbs'), ...wastedOrNumbHands(facts)], 2),
  ];
  const tracts = facts.upperMotorSignsInLegs.filter(({ item }) => item.scale !== 'reflex-grade');
  const walk = [
    ...facts.told('difficulty-walking', 'unsteadiness', 'falls', 'leg-weakness'),
    ...shock,
    ...findingReasons([...query.abnormal(['special-tests/lhermitte']), ...tracts], 2),
  ];
  // The finger-flexor signs of both hands name the neck, whatever place the rest speaks for.
  const isOfTheNeck = isOnBothSides(facts.upperMotorSigns.filter(({ item }) => item.probe.kind === 'upper-motor'));
  return place >= 0.15 || isOfTheNeck ? each(findingReasons(facts.upperMotorSigns, 3), hands, walk) : none;
}

function siteProbability({ localisation }: BedsideFacts, site: string): number {
  return localisation.localisations
    .filter((one) => one.site === site)
    .reduce((sum, { probability }) => sum + probability, 0);
}

/**
 * Muscles that twitch in arms and legs, with a jaw or a tongue that shares in it, and nothing lost of feeling or bladder, nor a
 * pain of the spine: motor neurons above and below, and no compression.
 */
function isOfMotorNeurons(facts: BedsideFacts): boolean {
  const twitching = facts.query.abnormalWhere(({ item }) => item.key === 'fasciculation');
  const regions = new Set(twitching.map(({ item, place }) => place?.key ?? item.region));
  const bulbar = facts.query.abnormal([
    'cranial-nerves/tongue-fasciculation',
    'cranial-nerves/tongue-wasting',
    'reflexes/jaw',
  ]);
  const sensory = facts.query.abnormalWhere(({ item }) => item.section === 'sensation');
  return (
    regions.size >= 2 &&
    bulbar.length > 0 &&
    sensory.length + facts.sphincterFailure.length + facts.saddleLoss.length === 0 &&
    facts.told(...spinalPain, 'numbness', 'tight-band').length === 0
  );
}

/** Numb feet where a polyneuropathy is much likelier than the cord or the cauda equina. */
function isOfPolyneuropathy(facts: BedsideFacts): boolean {
  const nerves = facts.kindProbability('polyneuropathy', 'ganglion', 'polyradiculoneuropathy');
  return (
    facts.saddleLoss.length === 0 &&
    facts.told(...spinalPain).length === 0 &&
    nerves >= 0.5 &&
    facts.beganWithin(halfYear) === 'no'
  );
}

/** Medicines against tumours that poison nerves. */
export const toxicToNerves = [
  ...['vincristine', 'cisplatin', 'carboplatin', 'oxaliplatin', 'paclitaxel', 'docetaxel', 'bortezomib', 'thalidomide'],
  'brentuximab-vedotin',
] as const;

/** Lost reflexes with flexor plantars, no level and a sound bladder: the nerves, and not the cord. */
function isNeuropathic(facts: BedsideFacts): boolean {
  const plantars = facts.query.testedWhere(({ item }) => item.section === 'plantars');
  // Before anybody has tried the plantars, the medicine of the cancer accounts for numb feet where the nerves are much the likeliest place.
  const toxic = facts.told(...toxicToNerves);
  const isToxic = toxic.length > 0 && facts.kindProbability('polyneuropathy', 'ganglion') >= 0.7;
  return (
    facts.reducedReflexes.length > 0 &&
    (plantars.length > 0 || isToxic) &&
    facts.upperMotorSigns.length === 0 &&
    facts.trunkSensoryLoss.length === 0 &&
    facts.saddleLoss.length === 0 &&
    failingBladder(facts).length === 0
  );
}

/** Brisk jerks in arms and legs alike over flexor plantars, with no further sign of the tracts. */
function isBriskAlone({ query, upperMotorSigns, upperMotorSignsInLegs }: BedsideFacts): boolean {
  const plantars = query.testedWhere(({ item }) => item.section === 'plantars');
  const arms = upperMotorSigns.filter(({ item }) => item.region === 'upper-limbs');
  return (
    plantars.length > 0 &&
    plantars.every(({ abnormal }) => !abnormal) &&
    arms.length > 0 &&
    isOnBothSides(upperMotorSignsInLegs) &&
    upperMotorSigns.every(({ item, value }) => item.scale === 'reflex-grade' && value === '3')
  );
}

/** Weak limbs of more than three years, with no tract, level or bladder beside them: a tumour would have taken the cord long ago. */
function isOldWeakness(facts: BedsideFacts): boolean {
  return (
    isOld(facts) &&
    facts.upperMotorSigns.length === 0 &&
    facts.trunkSensoryLoss.length === 0 &&
    facts.saddleLoss.length === 0 &&
    facts.sphincterFailure.length === 0
  );
}

function checkCaudaEquina(facts: BedsideFacts): Verdict | null {
  if (isPlainlyTheCord(facts)) return null;
  const pain = facts.told(...spinalPain, ...legPain);
  const legSigns = [...facts.weak('lower-limbs'), ...facts.legSensoryLoss];
  const isSyndrome = facts.saddleLoss.length > 0 && facts.sphincterFailure.length > 0;
  // A bladder or bowel that fails beside legs that fail: told or found, with the pain of roots or without.
  const isLumbar = !isMoreThanLumbarRoots(facts) && facts.trunkSensoryLoss.length === 0;
  const withLegs = facts.sphincterFailure.length > 0 && legSigns.length > 0 && isLumbar;
  // Bladder and bowel that fail together under a painful back need no sign of the legs.
  const isBothOutlets = isLumbar && facts.sphincterFailure.length >= 3 && facts.told(...spinalPain).length > 0;
  const isLower = withLegs || isBothOutlets || facts.saddleLoss.length > 0;
  // The days are often counted from the first pain: what fails in a course of weeks or months that grows is fresh.
  const isWorse =
    facts.exam.course === 'progressive' &&
    (isSyndrome || (isLower && facts.exam.onset.pace !== 'chronic')) &&
    facts.beganWithin(isSyndrome ? 365 : halfYear) === 'yes';
  const recent = isWorse ? 'yes' : facts.beganWithin(28);
  const early = facts.query.abnormal([
    'sphincters/urinary-hesitancy',
    'sphincters/loss-of-genital-sensation',
    'sphincters/erectile-dysfunction',
  ]);
  const signs = [
    ...facts.saddleLoss,
    ...facts.sphincterFailure,
    ...findingReasons(early),
    ...facts.told('sexual-dysfunction'),
  ];
  const suspicion = [...pain, ...findingReasons(legSigns, 3)];
  const isFreshSaddle = recent === 'yes' || (facts.isUndated && facts.maybeProgressing);
  const isFreshNumbness = facts.saddleLoss.length > 0 && isFreshSaddle;
  // Numbness of the saddle with a failing bladder or bowel is the syndrome itself and needs neither pain nor leg signs.
  // A numb saddle with a bladder that stays full is imaged however long it has lasted, unless that has been done or it has come to rest.
  const isFull = facts.query.abnormal(['sphincters/urinary-retention', 'sphincters/palpable-bladder']).length > 0;
  // The same of a back that hurts, a bladder that leaks and a leg that is weak.
  const isLeaking =
    withLegs &&
    facts.weak('lower-limbs').length > 0 &&
    facts.told(...spinalPain).length > 0 &&
    !isOfPolyneuropathy(facts) &&
    (facts.exam.onset.durationDays ?? 0) <= 730;
  const isUnseen =
    ((isSyndrome && isFull) || isLeaking) &&
    facts.maybeProgressing &&
    facts.query.result('mri-lumbar-spine') === undefined;
  if (signs.length > 0 && (recent !== 'no' || isUnseen) && (suspicion.length > 0 || isSyndrome || isFreshNumbness)) {
    const because = [...signs.slice(0, 4), ...suspicion.slice(0, 3)];
    return recent === 'yes' || isSyndrome || isUnseen || isFreshNumbness
      ? present(because)
      : notAssessable([...because, unknownOnset]);
  }
  const isRootPain = pain.length > 0 && legSigns.length > 0 && !isMoreThanLumbarRoots(facts);
  const isElsewhere = isPlainlyAbove(facts) || isOutsideTheCanal(facts);
  const relevant = recent !== 'no' && !isElsewhere && (facts.bothLegsWeak || isRootPain);
  if (!relevant) return null;
  const gaps: Reason[] = [];
  if (facts.saddleChecks.length === 0) gaps.push(missing('saddle sensation was not examined, and it matters'));
  if (facts.bladderChecks.length === 0)
    gaps.push(missing('bladder function was not examined or asked for, and it matters'));
  if (gaps.length > 0) return notAssessable([...gaps, ...suspicion.slice(0, 3)]);
  return absent([...facts.saddleChecks, ...facts.bladderChecks]);
}

/** A level on the trunk and the tracts of both legs, with a saddle that nobody calls numb: the bladder fails with the cord, which has its own flags. */
function isPlainlyTheCord(facts: BedsideFacts): boolean {
  const isLevel = facts.trunkSensoryLoss.length > 0 && isOnBothSides(facts.upperMotorSignsInLegs);
  return isLevel && facts.saddleLoss.length === 0 && facts.kindProbability('cord') >= 0.9;
}
