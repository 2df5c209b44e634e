import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import type { Finding } from '../../exam/finding.ts';
import { isOnLimb } from '../../exam/place-on-limb.ts';
import { read, recalled } from '../../kernel/cite.ts';
import { bodySides } from '../../kernel/side.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { bulbarReasons } from './breathing.ts';
import { clouded } from './consciousness.ts';
import { failingBladder, isOnBothSides, spinalPain } from './cord.ts';
import { areBothEyes, eyeMovementSigns } from './eye-movement-signs.ts';
import { infectionsBefore, trueFever } from './fever.ts';
import { each, none, type RaisingStory } from './story.ts';
import { centralSigns, onOneSide, weakHalf } from './sudden-deficit.ts';
import { isUnder, written } from './thresholds.ts';

const halfYear = 183;
const tenYears = 3653;

/** In mmol/L; below it a low sodium is called more than mild. */
const lowSodium = 130;

/** Emergencies that show one or two signs of the many they are known by. */
export const fewSignStories: readonly RaisingStory[] = [
  {
    // A fever, and memory, thought, speech or the senses that fail within the month.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      const known = facts.told('dementia', 'alcohol-excess');
      if (!isOfFourWeeks(facts) || known.length > 0) return none;
      const mind = [...findingReasons(facts.query.abnormal(failingMind), 3), ...facts.told('cognitive-change')];
      return each(trueFever(facts), mind);
    },
    source: recalled('adams-victor', 'herpes simplex encephalitis'),
  },
  {
    // Memory with a clouded mind, both failing over weeks: inflammation of the limbic system needs no fever and no fit.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      const memory = facts.query.abnormal(['higher-function/memory-impairment', 'higher-function/amnesia']);
      const isWeeks = facts.exam.onset.pace === 'subacute' && facts.beganWithin(92) === 'yes';
      const other = facts.told('dementia', 'alcohol-excess', 'head-injury', 'malnutrition', 'cancer');
      return isWeeks && facts.exam.course === 'progressive' && other.length === 0
        ? each(findingReasons(memory), findingReasons(facts.query.abnormal(clouded)))
        : none;
    },
    source: recalled('autoimmune-encephalitis-2016', 'possible autoimmune encephalitis'),
  },
  {
    // A mind that fails within three months and a body that jerks, twists or dances, or a trace that fits: no poison, kidney or liver known that does both.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      const isWeeks = facts.exam.onset.pace !== 'hyperacute' && facts.beganWithin(92) === 'yes';
      const grows = facts.exam.course === 'progressive' || facts.exam.course === 'fluctuating';
      if (!isWeeks || !grows || facts.told(...jerkAndCloud).length > 0) return none;
      const mind = [...clouded, 'higher-function/memory-impairment', 'higher-function/amnesia'];
      const trace = facts.query.result('eeg');
      const fits = trace?.value === 'epileptiform' ? [{ pointer: trace.pointer, text: trace.label }] : [];
      const moves = findingReasons(facts.query.abnormal(unwilledMovements), 3);
      return each(findingReasons(facts.query.abnormal(mind), 3), [...moves, ...fits]);
    },
    source: recalled('autoimmune-encephalitis-2016', 'possible autoimmune encephalitis'),
  },
  {
    // The same where nobody has told since when: sleepy, with a fit or another manner, and a gait or limbs that fail beside.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      if (!facts.isUndated || !facts.maybeProgressing) return none;
      const known = facts.told(...jerkAndCloud, 'epilepsy', 'head-injury', 'alcohol-excess', 'cancer', 'stroke');
      if (known.length > 0) return none;
      const beside = facts.query.abnormal([...unwilledMovements, 'gait/ataxic', 'gait/unable-to-walk']);
      return each(
        findingReasons(facts.query.abnormal(clouded), 2),
        facts.told('seizure', 'behaviour-change'),
        findingReasons([...beside, ...centralSigns(facts.query)], 3),
      );
    },
    source: recalled('autoimmune-encephalitis-2016', 'possible autoimmune encephalitis'),
  },
  {
    // A mind that clouds within weeks with eyes or balance that fail and toes that go up on both sides: want of thiamine leaves the tracts alone.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      const { query, exam } = facts;
      const isWeeks = exam.onset.pace !== 'hyperacute' && facts.beganWithin(42) === 'yes' && facts.maybeProgressing;
      const known = facts.told(
        ...['rapid-sodium-correction', 'cardiac-arrest', 'head-injury', 'chronic-liver-disease', 'multiple-sclerosis'],
        ...['atrial-fibrillation', 'hypertension', 'stroke', 'cancer'],
      );
      const toes = facts.upperMotorSigns.filter(({ item }) => item.section === 'plantars');
      const failing = query.abnormal([
        ...eyeMovementSigns,
        'gait/ataxic',
        'coordination/finger-nose',
        'coordination/heel-shin',
      ]);
      return isWeeks && known.length === 0 && isOnBothSides(toes)
        ? each(findingReasons(query.abnormal(clouded), 2), findingReasons(failing, 3), findingReasons(toes, 2))
        : none;
    },
    source: recalled('adams-victor', 'brainstem encephalitis'),
  },
  {
    // One narrow pupil, or one low lid with a painful neck, and a fresh pain on that side of the head: the lid and the pupil of Horner differ by little and one of them is missed.
    flag: 'painful-horner-syndrome',
    check: (facts) => {
      const { query } = facts;
      if (!isOfFourWeeks(facts) || facts.told('red-eye', 'similar-attacks-before', 'opioid').length > 0) return none;
      const narrow = query.abnormal(['cranial-nerves/small-pupil']);
      const lids = query.abnormal(['cranial-nerves/ptosis']);
      const other = [
        ...query.abnormal([...eyeMovementSigns, 'cranial-nerves/dilated-pupil', 'cranial-nerves/fatigable-ptosis']),
        ...facts.told('diplopia', 'fatigable-weakness', 'myasthenia-gravis'),
      ];
      const neck = facts.told('neck-pain', 'neck-trauma');
      const pain = [...neck, ...facts.told('facial-pain', 'eye-pain', 'new-headache', 'headache', 'shoulder-pain')];
      // A lid and a hand that fail on one side of a painful arm: the first thoracic root with its sympathetic fibres.
      const hand = facts.weak('upper-limbs', lids[0]?.side === 'left' ? 'left' : 'right');
      const isRoot = lids.length === 1 && other.length === 0 && facts.kindProbability('plexus', 'root') >= 0.5;
      return [
        ...(isRoot ? each(findingReasons([...lids, ...hand.slice(0, 2)]), findingReasons(hand, 1), pain) : none),
        ...(narrow.length === 1 && lids.length === 0 ? each(findingReasons(narrow), pain) : none),
        ...(lids.length === 1 && narrow.length === 0 && other.length === 0 ? each(findingReasons(lids), neck) : none),
      ];
    },
    source: recalled('adams-victor', 'dissection of the carotid artery'),
  },
  {
    // A bladder that stays full or an anus that is slack, with a painful back or legs that fail, whatever its date and whatever the arms do.
    flag: 'suspected-cauda-equina-syndrome',
    check: (facts) => {
      const { query } = facts;
      if (!facts.maybeProgressing || query.result('mri-lumbar-spine') !== undefined) return none;
      if (facts.upperMotorSigns.length + facts.trunkSensoryLoss.length > 0) return none;
      const slack = findingReasons(
        query.abnormal(['sphincters/reduced-anal-tone', 'sphincters/absent-voluntary-anal-contraction']),
      );
      const full = findingReasons(query.abnormal(['sphincters/urinary-retention', 'sphincters/palpable-bladder']));
      const pain = facts.told(...spinalPain, 'radicular-leg-pain', 'bilateral-leg-pain');
      const isGrowing = facts.exam.course === 'progressive' && facts.beganWithin(92) === 'yes';
      const mayHoldBack =
        !(facts.cameWithin(14) || (isGrowing && facts.beganWithin(28) === 'yes')) ||
        facts.kindProbability('cauda-equina', 'root', 'cord') < 0.5 ||
        facts.told('anticholinergic', 'opioid', 'recent-surgery', 'pregnancy').length > 0;
      const both = facts.bothLegsWeak ? findingReasons(facts.weak('lower-limbs'), 3) : none;
      return [
        // A bladder that newly stays full in somebody in whom nothing else holds it back: nerve roots or cord, though nothing hurts.
        ...(mayHoldBack ? none : full),
        ...(facts.isUndated ? each(slack, [...full, ...failingBladder(facts)], pain) : none),
        ...(isGrowing || facts.beganWithin(28) === 'yes' ? each(slack, failingBladder(facts), both) : none),
      ];
    },
    source: read('girft-ces-2023'),
  },
  {
    // Nerves that fail one by one with pain: another one in each leg, and one of an arm.
    flag: 'suspected-vasculitic-neuropathy',
    check: (facts) => {
      const inTime = facts.isUndated ? facts.exam.course === 'progressive' : facts.beganWithin(halfYear) === 'yes';
      const isElsewhere =
        facts.upperMotorSigns.length + facts.trunkSensoryLoss.length + facts.sphincterFailure.length > 0;
      if (!inTime || !facts.maybeProgressing || isElsewhere) return none;
      const numb = facts.query.abnormalWhere(
        ({ item, place }) => item.section === 'sensation' && place?.kind === 'territory',
      );
      const legs = bodySides.map((side) =>
        numb.filter((one) => one.side === side && isOnLimb(one.place, 'lower-limbs')),
      );
      const [left, right] = legs.map((found) => new Set(found.map(nerveOf)));
      const isInBoth = left !== undefined && right !== undefined && left.size > 0 && right.size > 0;
      const areUnlike = isInBoth && [...left].every((nerve) => !right.has(nerve));
      const arm = numb.filter(({ place }) => isOnLimb(place, 'upper-limbs'));
      return areUnlike && arm.length > 0
        ? each(
            facts.told('neuropathic-pain', 'leg-pain', 'arm-pain', 'foot-pain', 'muscle-pain'),
            findingReasons(numb, 4),
          )
        : none;
    },
    source: read('vasculitic-neuropathy-2010'),
  },
  {
    // Both lids, the eyes and the throat within a week in nobody known to tire: who ate what is seldom known on the first day.
    flag: 'suspected-botulism',
    check: (facts) => {
      const { query } = facts;
      const tires = query.abnormal(['cranial-nerves/fatigable-ptosis', 'cranial-nerves/fatigable-diplopia']);
      const isOther =
        tires.length > 0 ||
        facts.told('myasthenia-gravis', 'fatigable-weakness').length > 0 ||
        facts.reducedReflexes.some(({ value }) => value === '0') ||
        facts.upperMotorSigns.length > 0 ||
        trueFever(facts).length > 0;
      if (isOther || facts.exam.onset.pace === 'chronic' || facts.beganWithin(7) !== 'yes') return none;
      const lids = query.abnormal(['cranial-nerves/ptosis']);
      const still = query.abnormal([...eyeMovementSigns, 'cranial-nerves/internuclear-ophthalmoplegia']);
      const eyes = [
        ...(areBothEyes(still) ? findingReasons(still, 2) : none),
        ...facts.told('diplopia'),
        ...findingReasons(query.abnormal(['cranial-nerves/diplopia'])),
      ];
      const throat = [...bulbarReasons(facts), ...facts.told('slurred-speech')];
      const isFrozen = query.abnormal(['cranial-nerves/ophthalmoplegia']).length > 0 && areBothEyes(still);
      const told = isFrozen ? facts.told('drooping-eyelids') : none;
      return isOnBothSides(lids) || told.length > 0 ? each([...findingReasons(lids), ...told], eyes, throat) : none;
    },
    source: read('botulism-2021'),
  },
  {
    // A headache with sight that goes for seconds and a beat in the ear, or double: the discs are swollen until somebody has looked.
    flag: 'raised-intracranial-pressure',
    check: (facts) => {
      const isUnseen = facts.query.sign('cranial-nerves/optic-disc-swelling') === 'unknown';
      const isKnown = facts.told('migraine', 'similar-attacks-before', 'jaw-claudication', 'scalp-tenderness');
      const inTime = facts.beganWithin(365) !== 'no' && facts.exam.onset.pace !== 'hyperacute';
      return isUnseen && inTime && facts.maybeProgressing && isKnown.length === 0
        ? each(
            facts.told('headache', 'new-headache', 'morning-headache'),
            facts.told('transient-visual-loss'),
            facts.told('pulsatile-tinnitus', 'diplopia', 'vomiting'),
          )
        : none;
    },
    source: read('iih-consensus-2018'),
  },
  {
    // Double vision, balance and thought told of, two of them, in somebody who has kept down no food, or taken up none.
    flag: 'suspected-wernicke-encephalopathy',
    check: (facts) => {
      const { pace } = facts.exam.onset;
      const isFresh = pace !== 'chronic' && pace !== 'hyperacute' && facts.beganWithin(60) !== 'no';
      const kept = facts.told('vomiting');
      const starved = [
        ...facts.told('bariatric-surgery', 'gastrectomy', 'malnutrition', 'malabsorption', 'alcohol-excess'),
        ...(kept.length > 0 ? each(facts.told('pregnancy'), kept) : none),
      ];
      const parts = [
        facts.told('diplopia'),
        facts.told('unsteadiness'),
        facts.told('cognitive-change', 'behaviour-change'),
      ].filter(({ length }) => length > 0);
      return isFresh && facts.maybeProgressing && parts.length >= 2 ? each(starved, parts.flat()) : none;
    },
    source: read('caine-1997', 'two of diet, eye signs, cerebellar signs and altered mental state'),
  },
  {
    // Both eyes that cease to move with a balance that fails within weeks: without lost jerks or an infection before, thiamine is given first.
    flag: 'suspected-wernicke-encephalopathy',
    check: (facts) => {
      const { pace } = facts.exam.onset;
      const { query } = facts;
      const isFresh = (pace === 'acute' || pace === 'subacute') && facts.beganWithin(28) === 'yes';
      const isOther =
        facts.reducedReflexes.length > 0 ||
        facts.told(...infectionsBefore).length > 0 ||
        facts.told('fatigable-weakness', 'myasthenia-gravis', 'paraesthesiae').length > 0 ||
        query.abnormal(['cranial-nerves/fatigable-ptosis', 'cranial-nerves/ptosis']).length > 0;
      const eyes = query.abnormal(eyeMovementSigns);
      const balance = [...facts.told('unsteadiness'), ...findingReasons(query.abnormal(['gait/ataxic']))];
      return isFresh && facts.maybeProgressing && !isOther && areBothEyes(eyes)
        ? each(findingReasons(eyes, 2), balance)
        : none;
    },
    source: read('caine-1997', 'two of diet, eye signs, cerebellar signs and altered mental state'),
  },
  {
    // Face and ear of one side: feeling, movement or hearing that fail together and did not come at once are pressed on in the angle.
    flag: 'suspected-space-occupying-lesion',
    check: (facts) => {
      const { pace } = facts.exam.onset;
      const isSlow =
        pace === 'subacute' || pace === 'chronic' || (facts.isUndated && facts.exam.course !== 'monophasic');
      const infected = facts.told('herpes-zoster', 'sinus-or-ear-infection', 'fever', 'head-injury', 'ear-pain');
      const isSeen = facts.query.result('mri-brain') !== undefined || facts.weakLimbs.length > 0;
      // What has been so for many years, and of which nobody says that it grows, was so from birth or is the scar of something.
      const isOld = facts.exam.course !== 'progressive' && facts.beganWithin(tenYears) === 'no';
      if (!isSlow || isOld || !facts.maybeProgressing || infected.length > 0 || isSeen) return none;
      const hearing = facts.query.abnormal(['cranial-nerves/hearing-loss']);
      const face = facts.query.abnormal([
        'cranial-nerves/facial-numbness',
        'cranial-nerves/absent-corneal-reflex',
        'cranial-nerves/facial-weakness',
      ]);
      return onOneSide([...hearing, ...face]).length > 0
        ? each(findingReasons(hearing), findingReasons(face, 2))
        : none;
    },
    source: recalled('brazis', 'cerebellopontine angle'),
  },
  {
    // New confusion counts for as much as drowsiness does, by whatever word it was written down.
    flag: 'unexplained-fall-in-consciousness',
    check: (facts) => {
      if (facts.beganWithin(7) !== 'yes') return cloudedForWeeks(facts);
      const inattentive = findingReasons(facts.query.abnormal(['higher-function/inattention']));
      const mind = [
        ...facts.told('cognitive-change', 'behaviour-change'),
        ...findingReasons(
          facts.query.abnormal(['higher-function/hallucinations', 'higher-function/memory-impairment']),
        ),
      ];
      return [
        ...findingReasons(facts.query.abnormal(['higher-function/confusion', 'higher-function/disorientation'])),
        ...each(inattentive, mind),
      ];
    },
    source: recalled('news2-2017', 'new confusion'),
  },
  {
    // Pain of the abdomen with a low sodium is asked for porphyria before any limb is weak.
    flag: 'suspected-acute-porphyria',
    check: (facts) => {
      const sodium = facts.query.quantity('sodium', 'mmol/L');
      const isLow = sodium !== undefined && isUnder(sodium, lowSodium) && facts.beganWithin(42) !== 'no';
      return isLow
        ? each(facts.told('abdominal-pain'), [{ pointer: sodium.pointer, text: `sodium ${written(sodium)} mmol/L` }])
        : none;
    },
    source: recalled('porphyria-2005', 'when to suspect an acute attack'),
  },
  {
    // Both legs or all limbs weak within a day or two in one who has had such attacks, or whose thyroid or relatives bring them: potassium is measured first.
    flag: 'potassium-paralysis',
    check: (facts) => {
      const before = facts.told(
        ...['similar-attacks-before', 'episodic-weakness', 'hyperthyroidism', 'family/periodic-paralysis'],
      );
      const isOther =
        facts.upperMotorSigns.length + facts.trunkSensoryLoss.length + facts.cranialNerveSigns.length > 0 ||
        facts.told('myasthenia-gravis', 'fatigable-weakness', ...spinalPain).length > 0 ||
        facts.query.quantity('potassium', 'mmol/L') !== undefined;
      return facts.bothLegsWeak && facts.cameWithin(3) && !isOther
        ? each(before, findingReasons(facts.weak('lower-limbs'), 3))
        : none;
    },
    source: recalled('adams-victor', 'periodic paralysis'),
  },
  {
    // A mind that is restless and sees what is not there, attends to nothing or drives the heart, new within two weeks: delirium.
    flag: 'unexplained-fall-in-consciousness',
    check: (facts) => {
      const isKnown = facts.told('psychiatric-disorder', 'dementia').length > 0;
      return !isKnown && facts.cameWithin(14) && facts.maybeProgressing
        ? each(
            findingReasons(facts.query.abnormal(['higher-function/agitation'])),
            findingReasons(
              facts.query.abnormal([
                'higher-function/hallucinations',
                'higher-function/inattention',
                'autonomic/hyperhidrosis',
                'autonomic/resting-tachycardia',
                'autonomic/fever',
              ]),
              3,
            ),
          )
        : none;
    },
    source: recalled('adams-victor', 'delirium and other acute confusional states'),
  },
  {
    // Known epilepsy, and a mind that clouds within hours to two days, with nobody who has seen a fit: it may still be going on.
    flag: 'status-epilepticus',
    check: (facts) => {
      const other = [...facts.told('head-injury', 'dementia', 'alcohol-excess'), ...trueFever(facts)];
      const isTraced = facts.query.result('eeg') !== undefined;
      return facts.beganWithin(2) === 'yes' && facts.maybeProgressing && other.length === 0 && !isTraced
        ? each(facts.told('epilepsy'), findingReasons(facts.query.abnormal(clouded), 2))
        : none;
    },
    source: recalled('adams-victor', 'non-convulsive status epilepticus'),
  },
  {
    // A fit, and a mind that has not come back: deeply asleep or coming and going, or clouded in one whose brain is known to fit or to be scarred.
    flag: 'status-epilepticus',
    check: (facts) => {
      const { query } = facts;
      const other = [...facts.told('head-injury', 'alcohol-excess', 'pregnancy'), ...trueFever(facts)];
      const isTraced = query.result('eeg') !== undefined;
      if (facts.beganWithin(2) !== 'yes' || !facts.maybeProgressing || other.length > 0 || isTraced) return none;
      const deep = query.abnormal(['higher-function/coma', 'higher-function/fluctuating-consciousness']);
      return [
        ...each(facts.told('seizure'), findingReasons(deep)),
        ...each(facts.told('seizure'), facts.told('epilepsy', 'stroke'), findingReasons(query.abnormal(clouded), 2)),
      ];
    },
    source: recalled('nice-ng217', 'status epilepticus'),
  },
  {
    // A mind that clouds or forgets in one with zoster, or under a medicine that lets immune cells loose on the brain: neither needs a fever.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      const inTime = facts.beganWithin(92) === 'yes' && facts.exam.onset.pace !== 'hyperacute';
      const mind = facts.query.abnormal([...clouded, 'higher-function/memory-impairment', 'higher-function/amnesia']);
      return inTime && facts.maybeProgressing
        ? each(facts.told('herpes-zoster', 'immune-checkpoint-inhibitor', 'natalizumab'), findingReasons(mind, 2))
        : none;
    },
    source: recalled('autoimmune-encephalitis-2016', 'possible autoimmune encephalitis'),
  },
  {
    // Without defence a deficit of the brain that grows over weeks is an infection of it, without fever or headache too.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      const isWeeks = facts.exam.onset.pace !== 'hyperacute' && facts.beganWithin(3) !== 'yes';
      const inTime = isWeeks && facts.exam.course === 'progressive' && facts.beganWithin(92) === 'yes';
      const half = facts.brainProbability >= 0.5 ? weakHalf(facts) : [];
      const focal = [...centralSigns(facts.query), ...half];
      return inTime && facts.query.result('mri-brain') === undefined
        ? each(facts.told('natalizumab', 'hiv-infection', 'immunosuppression'), findingReasons(focal, 3))
        : none;
    },
    source: recalled('adams-victor', 'progressive multifocal leukoencephalopathy; toxoplasmosis'),
  },
  {
    // A mind that clouds in the weeks after an infection or a vaccination, with limbs, balance or sight that fail: disseminated inflammation comes without fever.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      const { query } = facts;
      const before = facts.told('recent-vaccination', ...infectionsBefore);
      const deficit = [
        ...facts.weakLimbs,
        ...facts.upperMotorSigns,
        ...query.abnormal(['gait/ataxic', 'cranial-nerves/reduced-visual-acuity', ...eyeMovementSigns]),
      ];
      const isFresh = facts.beganWithin(42) === 'yes' && facts.exam.onset.pace !== 'hyperacute';
      return isFresh && facts.maybeProgressing
        ? each(before, findingReasons(query.abnormal(clouded), 2), findingReasons(deficit, 3))
        : none;
    },
    source: recalled('adams-victor', 'acute disseminated encephalomyelitis'),
  },
  {
    // A headache, a first fit and words or half a body that fail, more and more within weeks: pus and viruses in the brain come without fever too.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      const { pace } = facts.exam.onset;
      const inTime = pace !== 'hyperacute' && facts.exam.course === 'progressive' && facts.beganWithin(31) === 'yes';
      const known = facts.told('epilepsy', 'head-injury', 'pregnancy');
      const half = facts.brainProbability >= 0.5 ? weakHalf(facts) : [];
      const focal = [...centralSigns(facts.query), ...half];
      return inTime && known.length === 0
        ? each(facts.told('headache', 'new-headache'), facts.told('seizure'), findingReasons(focal, 3))
        : none;
    },
    source: recalled('adams-victor', 'brain abscess'),
  },
  {
    // A fever, and limbs of one side that fail within two weeks, brisk or untried: an abscess is as febrile as that for days only.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      const weak = onOneSide(facts.weakLimbs);
      const isLower = facts.reducedReflexes.length + facts.trunkSensoryLoss.length > 0;
      const local = facts.told('head-injury', 'trauma', ...spinalPain, 'herpes-zoster');
      return facts.beganWithin(14) === 'yes' && facts.maybeProgressing && !isLower && local.length === 0
        ? each(trueFever(facts), findingReasons(weak, 3))
        : none;
    },
    source: recalled('adams-victor', 'brain abscess'),
  },
  {
    // A red eye that is painful or pushed forward and sees double, or whose lid falls: the orbit or its veins are infected until seen.
    flag: 'orbital-or-cavernous-sinus-infection',
    check: (facts) => {
      const { query } = facts;
      const isKnown = facts.told('hyperthyroidism', 'similar-attacks-before');
      if (facts.beganWithin(92) === 'no' || !facts.maybeProgressing || isKnown.length > 0) return none;
      const red = [
        ...facts.told('red-eye'),
        ...findingReasons(query.abnormal(['inspection/chemosis', 'inspection/periorbital-oedema'])),
      ];
      const pain = [...facts.told('eye-pain', 'headache', 'new-headache', 'facial-pain'), ...trueFever(facts)];
      const still = [
        ...findingReasons(query.abnormal([...eyeMovementSigns, 'cranial-nerves/diplopia', 'cranial-nerves/ptosis']), 2),
        ...facts.told('diplopia'),
      ];
      return each(red, pain, still);
    },
    source: recalled('adams-victor', 'cavernous sinus thrombosis'),
  },
  {
    // Both legs that fail within days under a painful spine, in one whom germs reach easily: a third have no fever.
    flag: 'suspected-spinal-infection',
    check: (facts) => {
      const host = facts.told(
        'diabetes-mellitus',
        'dialysis',
        'chronic-kidney-disease',
        'alcohol-excess',
        'chronic-liver-disease',
      );
      const isDays =
        facts.beganWithin(28) === 'yes' &&
        facts.exam.course === 'progressive' &&
        facts.exam.onset.pace !== 'hyperacute';
      return facts.bothLegsWeak && isDays && facts.reducedReflexes.length < 4
        ? each(
            facts.told('night-spinal-pain', 'thoracic-back-pain', 'back-pain'),
            host,
            findingReasons(facts.weak('lower-limbs'), 2),
          )
        : none;
    },
    source: recalled('adams-victor', 'spinal epidural abscess'),
  },
  {
    // Both legs or all limbs that fail within days in a fever without defence, or with germs in the blood: pain of the spine may be missing.
    flag: 'suspected-spinal-infection',
    check: (facts) => {
      const host = facts.told(
        'immunosuppression',
        'injecting-drug-use',
        'recent-bacteraemia',
        'sepsis',
        'chronic-kidney-disease',
      );
      return facts.bothLegsWeak && facts.maybeProgressing && facts.beganWithin(28) === 'yes'
        ? each(trueFever(facts), host, findingReasons(facts.weak('lower-limbs'), 3))
        : none;
    },
    source: recalled('adams-victor', 'spinal epidural abscess'),
  },
];

function isOfFourWeeks({ exam, beganWithin, maybeProgressing }: BedsideFacts): boolean {
  return exam.onset.pace !== 'chronic' && beganWithin(28) === 'yes' && maybeProgressing;
}

const failingMind = [
  'higher-function/memory-impairment',
  'higher-function/amnesia',
  'higher-function/hallucinations',
  'higher-function/mutism',
  'higher-function/expressive-aphasia',
  'higher-function/receptive-aphasia',
  'higher-function/global-aphasia',
];

const nerveOf = ({ place }: Finding): string => place?.key ?? '';

/**
 * A mind found clouded for weeks, or at a time that nobody has told, in whom nothing known accounts for it. What grows is new
 * for three months; beyond them, or where it stays as it is, it is called a dementia.
 */
function cloudedForWeeks(facts: BedsideFacts): readonly Reason[] {
  const known = facts.told(
    ...['dementia', 'developmental-delay', 'perinatal-injury', 'parkinson-disease'],
    ...['stroke', 'dream-enactment', 'similar-attacks-before'],
    // A disorder of mood or thought does not take away where one is within weeks; of what nobody dated it may be the habit.
    ...(facts.isUndated && facts.beganWithin(92) !== 'yes' ? ['psychiatric-disorder'] : []),
  );
  if (known.length > 0 || !facts.maybeProgressing) return none;
  const isNew =
    facts.beganWithin(28) === 'yes' || (facts.exam.course === 'progressive' && facts.beganWithin(92) === 'yes');
  return isNew || facts.isUndated
    ? findingReasons(facts.query.abnormal(['higher-function/confusion', 'higher-function/disorientation']))
    : none;
}

/** What clouds the mind and makes it jerk or twist without an inflammation. */
const jerkAndCloud = [
  ...['dementia', 'chronic-kidney-disease', 'dialysis', 'chronic-liver-disease', 'cardiac-arrest', 'lithium'],
  ...['beta-lactam', 'opioid', 'antipsychotic', 'metoclopramide', 'valproate', 'hyperthyroidism', 'parkinson-disease'],
] as const;

/** Movements that nobody wills, but for tremor and the flap of a metabolic disorder. */
const unwilledMovements = [
  ...['involuntary-movements/myoclonus', 'involuntary-movements/dystonia', 'involuntary-movements/chorea'],
  ...['involuntary-movements/orofacial-dyskinesia', 'involuntary-movements/athetosis', 'cranial-nerves/opsoclonus'],
  ...['cranial-nerves/ocular-flutter', 'involuntary-movements/oculogyric-crisis', 'involuntary-movements/seizure-seen'],
];
