import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons, missing, sayingOnce } from '../../causes/reasons.ts';
import { cameFast } from '../../exam/pace.ts';
import { fromMemory, read, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { headache } from './brain-flags.ts';
import { breathingSigns } from './breathing.ts';
import { clouded, reducedConsciousness } from './consciousness.ts';
import { aMonth, failingBladder, isOnBothSides, unknownOnset } from './cord.ts';
import { eyeMovementSigns } from './eye-movement-signs.ts';
import { faceSigns } from './face-signs.ts';
import { feverReasons, trueFever } from './fever.ts';
import { isOneDistalNerve, isPressedNerve } from './few-muscles.ts';
import { checkHeadInjury, focalBrainSigns } from './head-injury.ts';
import { hasToxicLithium } from './measured-poison.ts';
import { beganAsNewborn, isNewborn, notAssessable, orTold, present, type RedFlagRule } from './rule.ts';
import { each } from './story.ts';
import { brainSigns, oneSidedWeakness, suddenFocalSigns } from './sudden-deficit.ts';
import { isAtLeast, isUnder, written } from './thresholds.ts';
import { notOfBothSides } from './told-sides.ts';
import { checkVertigo } from './vertigo.ts';

/** What is the first sign of a tumour in many children, beside limbs, gait and eyes that do not move. */
const otherSignsOfAChild = [
  'cranial-nerves/optic-disc-swelling',
  'cranial-nerves/optic-disc-pallor',
  'cranial-nerves/reduced-visual-acuity',
  'cranial-nerves/bitemporal-hemianopia',
  'cranial-nerves/upgaze-palsy',
  'cranial-nerves/vertical-gaze-palsy',
  'cranial-nerves/downgaze-palsy',
  'cranial-nerves/convergence-retraction-nystagmus',
  'cranial-nerves/gaze-evoked-nystagmus',
  'cranial-nerves/dysphagia',
  'cranial-nerves/dysarthria',
  'cranial-nerves/tongue-deviation',
];

/** What relatives have that grows worse in a child over years. */
const ofTheFamily = [
  ...['family/similar-disorder', 'family/peripheral-neuropathy', 'family/high-arched-feet', 'family/muscle-disease'],
  ...['family/myotonic-dystrophy', 'family/ataxia', 'family/spastic-paraplegia'],
] as const;

const dancingEyes = ['cranial-nerves/opsoclonus', 'cranial-nerves/ocular-flutter'];

/** Thought, skills or wakefulness that fail beside the limbs: no neuropathy and no dystrophy of the family does that. */
const failingBrain = (facts: BedsideFacts): readonly Reason[] => [
  ...facts.told('cognitive-change', 'behaviour-change', 'loss-of-skills', 'seizure'),
  ...findingReasons(
    facts.query.abnormal([
      'higher-function/memory-impairment',
      'higher-function/executive-dysfunction',
      'involuntary-movements/myoclonus',
    ]),
  ),
];

/** Hips that are weak, as the way a child rises and walks shows it. */
const weakHips = ['gait/gowers-sign', 'gait/waddling', 'gait/rising-from-floor', 'gait/stairs'];

/** Dangers of the head that a whole story tells: dizziness, injury, pregnancy, pituitary, orbit, a falling consciousness. */
export const headFlags: readonly RedFlagRule[] = [
  {
    key: 'unexplained-fall-in-consciousness',
    label: 'Consciousness reduced or falling, or new confusion',
    urgency: 'immediate',
    action:
      'Airway, breathing, circulation; glucose at once; CT of the head; look for infection, seizure and poisoning.',
    source: recalled('adams-victor', 'coma and related disorders of consciousness'),
    check: (facts) => {
      const signs = findingReasons(facts.query.abnormal(reducedConsciousness));
      const scale = facts.exam.scales.flatMap(({ total, pointer }) =>
        total !== null && total <= 14 ? [{ pointer, text: `Glasgow coma scale ${total} of 15` }] : [],
      );
      // Weeks are counted from the first sign of the illness; where that grows, the sleep is new.
      const inTime = facts.beganWithin(facts.exam.course === 'progressive' ? 92 : 28) !== 'no';
      if (signs.length + scale.length > 0 && inTime) return present(sayingOnce([...signs, ...scale]));
      // Told by others before anybody has examined; what has passed was no fall of consciousness.
      const muddled = facts.told('resolved-deficit').length === 0 ? facts.told('cognitive-change') : [];
      const isClear = facts.query.tested(clouded).some(({ abnormal }) => !abnormal);
      return muddled.length > 0 && facts.beganWithin(7) === 'yes' && !isClear ? present(muddled) : null;
    },
  },
  {
    key: 'central-vestibular-syndrome',
    label: 'Continuous vertigo with a sign of brainstem or cerebellum',
    urgency: 'immediate',
    action: 'Stroke team now; MRI with diffusion (a CT does not exclude it).',
    source: recalled('vestibular-meta-2023', 'bedside tests in the acute vestibular syndrome'),
    check: checkVertigo,
  },
  {
    key: 'head-injury-with-deficit',
    label: 'Head injury with a deficit, seizure, vomiting or falling consciousness',
    urgency: 'immediate',
    action:
      'CT of the head within the hour; protect the neck; stop and reverse an anticoagulant with specialist advice.',
    source: recalled('nice-ng232', 'criteria for CT of the head'),
    check: checkHeadInjury,
  },
  {
    key: 'suspected-cerebral-venous-thrombosis',
    label: 'Suspected thrombosis of cerebral veins',
    urgency: 'same-day',
    action: 'CT or MR venography the same day; at once if consciousness falls or there was a seizure.',
    source: recalled('cvt-2017', 'when to suspect it'),
    check: (facts) => {
      const pain = facts.told(...headache);
      const risk = facts.told(
        'pregnancy',
        'hormonal-contraceptive',
        'thrombophilia',
        'sinus-or-ear-infection',
        'cancer',
        'head-injury',
        'inflammatory-bowel-disease',
        'lumbar-puncture-or-epidural',
      );
      const discs = facts.query.abnormal(['cranial-nerves/optic-disc-swelling']);
      const signs = [
        ...findingReasons(
          facts.query.abnormal([
            'cranial-nerves/optic-disc-swelling',
            'cranial-nerves/sixth-nerve-palsy',
            'cranial-nerves/eye-abduction-weakness',
            ...clouded,
            ...focalBrainSigns,
          ]),
          3,
        ),
        ...findingReasons(oneSidedWeakness(facts), 2),
        ...facts.told('seizure', 'transient-visual-loss', 'visual-loss', 'diplopia'),
      ];
      // Most come to be known within the month; later, with nothing found, it must be said that the headache grows.
      const inTime = facts.exam.course === 'progressive' || (facts.maybeProgressing && facts.beganWithin(28) === 'yes');
      const isFresh = facts.told('new-headache').length > 0 && inTime;
      const isSudden = facts.told('thunderclap-headache').length > 0;
      const hormones = facts.told('pregnancy', 'hormonal-contraceptive', 'tamoxifen', 'thrombophilia');
      if (hormones.length > 0 && (isFresh || isSudden) && facts.beganWithin(60) !== 'no')
        return present([...pain, ...hormones]);
      return pain.length + discs.length > 0 && risk.length > 0 && signs.length > 0 && facts.beganWithin(60) !== 'no'
        ? present([...pain, ...risk, ...signs])
        : null;
    },
  },
  {
    key: 'suspected-eclampsia',
    label: 'Pregnancy with seizure, headache or loss of vision, and high blood pressure',
    urgency: 'immediate',
    action: 'Obstetric emergency team; magnesium sulfate and control of the blood pressure.',
    source: recalled('nice-ng133', 'severe hypertension, pre-eclampsia and eclampsia'),
    check: (facts) => {
      const pregnancy = facts.told('pregnancy');
      if (pregnancy.length === 0 || facts.beganWithin(42) === 'no') return null;
      const seizure = facts.told('seizure', 'ongoing-seizure');
      const warning = [
        ...facts.told('new-headache', 'thunderclap-headache', 'headache', 'visual-loss', 'flashes-and-floaters'),
        ...findingReasons(facts.query.abnormal([...clouded, 'cranial-nerves/reduced-visual-acuity']), 2),
        ...findingReasons(
          facts.query.abnormalWhere(({ item }) => item.probe.kind === 'clonus'),
          1,
        ),
      ];
      const pressure = [
        ...highPressure(facts),
        ...facts.told('hypertension', 'pre-eclampsia'),
        ...proteinInUrine(facts),
      ];
      // Before anybody has measured it, a headache with a pain of the belly, or with jerks that have grown brisk, stands for the pressure.
      const isMeasured = facts.query.quantity('systolic-pressure-supine', 'mm[Hg]') !== undefined;
      const brisk = isOnBothSides(facts.upperMotorSignsInLegs) && oneSidedWeakness(facts).length === 0;
      const belly = facts.told('abdominal-pain');
      const unmeasured =
        !isMeasured && warning.length > 0 && facts.trunkSensoryLoss.length === 0
          ? [...belly, ...(brisk ? findingReasons(facts.upperMotorSignsInLegs, 2) : [])]
          : [];
      const signs = [...pressure, ...unmeasured];
      if (seizure.length === 0 && (warning.length === 0 || signs.length === 0)) return null;
      return present([...pregnancy, ...seizure, ...warning, ...signs]);
    },
  },
  {
    key: 'suspected-pituitary-apoplexy',
    label: 'Suspected pituitary apoplexy',
    urgency: 'immediate',
    action:
      'Hydrocortisone intravenously as soon as blood for cortisol is taken; MRI of the pituitary; eye and endocrine opinion.',
    source: recalled('pituitary-apoplexy-2011', 'assessment and emergency treatment'),
    check: (facts) => {
      const pain = facts.told('thunderclap-headache', 'new-headache', 'headache');
      const sudden = facts.cameWithin(14);
      const chiasm = facts.query.abnormal(['cranial-nerves/bitemporal-hemianopia']);
      const isKnown = facts.told('pituitary-tumour');
      const eyes = facts.query.abnormal(eyeMovementSigns);
      const both = eyes.some(({ side }) => side === 'left') && eyes.some(({ side }) => side === 'right');
      const enough =
        chiasm.length > 0 ||
        (facts.told('thunderclap-headache').length > 0 &&
          eyes.length > 0 &&
          (facts.told('visual-loss').length > 0 || facts.query.hasAbnormal('cranial-nerves/reduced-visual-acuity'))) ||
        ((isKnown.length > 0 || both) && eyes.length > 0 && facts.told('visual-loss').length > 0) ||
        (eyes.length > 0 && isSodiumLow(facts));
      if (pain.length > 0 && sudden && enough)
        return present([...pain, ...isKnown, ...findingReasons([...chiasm, ...eyes], 4)]);
      // Of a known tumour a headache or vomiting with anything of the eyes is enough.
      const anyEye = facts.query.abnormal([
        ...eyeMovementSigns,
        'cranial-nerves/ptosis',
        'cranial-nerves/reduced-visual-acuity',
      ]);
      const told = [...findingReasons([...chiasm, ...anyEye]), ...facts.told('visual-loss', 'diplopia')];
      return sudden ? orTold(null, each(isKnown, [...facts.told(...headache), ...facts.told('vomiting')], told)) : null;
    },
  },
  {
    key: 'orbital-or-cavernous-sinus-infection',
    label: 'Suspected infection of the orbit or cavernous sinus',
    urgency: 'immediate',
    action:
      'Antibiotics after cultures, imaging of orbit and sinuses with venography now; think of fungus in diabetes and immunosuppression.',
    source: recalled('adams-victor', 'septic thrombosis of the cavernous sinus'),
    check: (facts) => {
      const fever = feverReasons(facts);
      const host = facts.told('diabetes-mellitus', 'immunosuppression', 'sinus-or-ear-infection', 'sepsis');
      const eyes = facts.query.abnormal(eyeMovementSigns);
      const orbit = [
        ...findingReasons(
          facts.query.abnormal(['inspection/proptosis', 'inspection/chemosis', 'inspection/periorbital-oedema']),
        ),
        ...facts.told('red-eye', 'eye-pain', 'facial-pain'),
      ];
      const bulging = facts.query.abnormal(['inspection/proptosis']);
      const lids = facts.query.abnormal(['cranial-nerves/ptosis']);
      const sinus = facts.told('sinus-or-ear-infection');
      // Nobody has said since when; an eye that is pushed out, hurts and has stopped moving is not left for that.
      const isFrozenAndPushedOut =
        facts.beganWithin(21) === 'unknown' &&
        bulging.length > 0 &&
        lids.length +
          facts.query.abnormal(['cranial-nerves/unreactive-pupil', 'cranial-nerves/sluggish-pupil']).length >
          0 &&
        eyes.length > 0 &&
        facts.told('eye-pain', 'facial-pain').length > 0 &&
        facts.told('hyperthyroidism').length === 0;
      // A bulging eye with a drooping lid, or an eye that fails after a sinus infection, needs no further sign of the orbit.
      const isOrbit = (eyes.length > 0 && orbit.length + sinus.length > 0) || (bulging.length > 0 && lids.length > 0);
      const fits = isOrbit && (facts.beganWithin(21) === 'yes' || isFrozenAndPushedOut);
      const isInfected = fever.length > 0 && (orbit.length > 0 || sinus.length > 0);
      return fits && (isInfected || sinus.length > 0 || isFungalRisk(facts) || isFrozenAndPushedOut)
        ? present([...fever, ...findingReasons(eyes, 3), ...orbit, ...host])
        : null;
    },
  },
  {
    key: 'acute-facial-palsy',
    label: 'Facial palsy of the lower motor neuron type in its first three days',
    urgency: 'same-day',
    action:
      'Prednisolone within 72 hours of onset unless contraindicated; protect the eye; look into the ear for vesicles.',
    source: read('bells-palsy-2013'),
    check: (facts) => {
      const palsy = facts.query.abnormal(['cranial-nerves/facial-weakness', 'cranial-nerves/upper-facial-weakness']);
      const sides = new Set(palsy.map(({ side }) => side));
      const { durationDays } = facts.exam.onset;
      const isFresh = durationDays !== undefined && durationDays <= 3;
      // Of what came within hours or days the day must be asked, for treatment helps in the first three.
      const isUndated = durationDays === undefined && cameFast(facts.exam.onset);
      // With signs of the brainstem the palsy is part of a stroke.
      const told = notOfBothSides(facts, 'face-droop');
      const isLookedAt = facts.query.tested(faceSigns);
      const ofTheBrain = facts.told(
        ...['arm-weakness', 'leg-weakness', 'slurred-speech', 'speech-difficulty', 'diplopia'],
      );
      const isOpen = palsy.length + isLookedAt.length + ofTheBrain.length === 0;
      if (isOpen && told.length > 0 && facts.cameWithin(3))
        return notAssessable([missing('whether the forehead moves was not examined, and it matters'), ...told]);
      if (palsy.length === 0 || sides.size !== 1 || suddenFocalSigns(facts).length > 0) return null;
      if (isUndated && facts.maybeProgressing) return notAssessable([unknownOnset, ...findingReasons(palsy)]);
      return isFresh ? present(findingReasons(palsy)) : null;
    },
  },
  {
    key: 'drug-induced-hyperthermia-with-rigidity',
    label: 'Suspected malignant syndrome or serotonin syndrome on a medicine that can cause it',
    urgency: 'immediate',
    action: 'Stop the medicine; creatine kinase, fluids, cooling; intensive care advice.',
    source: recalled('adams-victor', 'neuroleptic malignant syndrome and serotonin syndrome'),
    check: (facts) => {
      // In Parkinson disease the dose that was left out does it: at an operation, with a blocked bowel.
      const isMuddled = facts.query.abnormal(clouded).length > 0 && facts.cameWithin(14);
      const drug = facts.told(
        ...['antipsychotic', 'metoclopramide', 'serotonergic-medicine', 'levodopa'],
        ...(isMuddled ? ['parkinson-disease'] : []),
      );
      const fever = trueFever(facts);
      const stiff = facts.query.abnormalWhere(
        ({ item, value }) =>
          (item.probe.kind === 'tone' && (value === 'rigid' || value === 'spastic')) || item.probe.kind === 'clonus',
      );
      // Nobody may have taken the temperature: a clouded mind, sweating or a racing heart with it stands for the heat.
      const causing = facts.told('antipsychotic', 'metoclopramide', 'serotonergic-medicine');
      const storm =
        causing.length > 0 && facts.beganWithin(14) === 'yes'
          ? findingReasons(
              facts.query.abnormal([
                ...clouded,
                'higher-function/mutism',
                'autonomic/hyperhidrosis',
                'autonomic/resting-tachycardia',
                'autonomic/blood-pressure-lability',
              ]),
              3,
            )
          : [];
      // Stiffness that is told, or jerks brisk in arms and legs with a storm of the autonomic nerves, stands for the tone that nobody tried.
      const jerks = facts.upperMotorSigns.filter(({ item }) => item.scale === 'reflex-grade');
      const isBrisk = jerks.length >= 4 && fever.length > 0 && storm.length > 0;
      // Tremor with brisk jerks, where serotonin is in excess. Source: Hunter criteria 2003, recalled.
      const trembling = [
        ...facts.told('tremor'),
        ...findingReasons(
          facts.query.abnormalWhere(({ item }) => item.key === 'postural-tremor' || item.key === 'action-tremor'),
          1,
        ),
      ];
      // Lithium makes hands shake and jerks brisk by itself where its level is toxic.
      const isSerotonin =
        facts.told('serotonergic-medicine').length > 0 &&
        trembling.length > 0 &&
        jerks.length >= 2 &&
        !(hasToxicLithium(facts) && fever.length === 0);
      const other =
        causing.length > 0
          ? [
              ...facts.told('stiffness'),
              ...(isSerotonin ? trembling : []),
              ...(isBrisk || isSerotonin ? findingReasons(jerks, 2) : []),
            ]
          : [];
      return drug.length > 0 &&
        fever.length + storm.length > 0 &&
        stiff.length + other.length > 0 &&
        facts.beganWithin(28) !== 'no'
        ? present([...drug, ...fever, ...storm, ...findingReasons(stiff, 3), ...other])
        : null;
    },
  },
  {
    key: 'child-with-progressive-deficit',
    label: 'Child with progressive weakness, unsteadiness or focal deficit',
    urgency: 'immediate',
    action: 'Immediate paediatric referral: tumour, polyneuropathy and cord lesions of children are treatable.',
    source: read('nice-ng127', 'children: limb weakness, unsteadiness, head'),
    check: (facts) => {
      const age = facts.exam.person.ageYears;
      if (age === undefined || age >= 16 || isNewborn(facts.exam) || isPressedNerve(facts)) return null;
      const told = facts.told('difficulty-walking', 'leg-weakness', 'weakness', 'unsteadiness');
      const signs = [
        ...(isOneDistalNerve(facts) ? [] : facts.weakLimbs),
        ...(told.length > 0 ? facts.reducedReflexes : []),
        // A wide pupil by itself has a flag of its own, and is mostly a drug's.
        ...facts.query.abnormal([...brainSigns, 'special-tests/pronator-drift']),
        ...facts.query.abnormal(['gait/ataxic', ...eyeMovementSigns, ...otherSignsOfAChild]),
        ...facts.query.abnormalWhere(({ item }) => item.probe.kind === 'cerebellar'),
        ...facts.upperMotorSigns,
        // Hips that have grown weak within the year; over years they are a dystrophy's, which is no emergency.
        ...(facts.beganWithin(365) === 'no' ? [] : facts.query.abnormal(weakHips)),
      ];
      const { pace, durationDays } = facts.exam.onset;
      const isAcute = facts.cameWithin(aMonth);
      const grows = facts.exam.course === 'progressive' || (facts.exam.course === undefined && pace === 'subacute');
      // What is said to grow worse is looked into however long it has done so, unless relatives have the same in their limbs.
      const isFamily = facts.told(...ofTheFamily).length > 0 && failingBrain(facts).length === 0;
      const isSaid = facts.exam.course === 'progressive' && !(isFamily && (durationDays ?? 0) > 730);
      const isGrowing = grows && (isSaid || (durationDays ?? 0) <= 730);
      const moves = isGrowing && facts.beganWithin(365) !== 'no' ? newMovementsOfAChild(facts) : [];
      const worsening = isGrowing || (isAcute && facts.maybeProgressing);
      const floppy = age < 2 && facts.maybeProgressing ? weakAndFloppy(facts) : [];
      if (floppy.length > 0) return present([{ pointer: '/person/ageYears', text: `age ${age}` }, ...floppy]);
      // A child who stops walking is the sign.
      const stopped = isGrowing && facts.beganWithin(28) === 'yes' ? told : [];
      const said = new Set(stopped.map(({ text }) => text));
      // What nobody has dated counts where it is told as tumours of children are, in one who is not known to have been so before.
      const known = facts.told(
        'migraine',
        'similar-attacks-before',
        'developmental-delay',
        'perinatal-injury',
        'fever',
      );
      const isUndated = facts.isUntimed && known.length === 0;
      const lost = isGrowing || isUndated ? lostByAChild(facts).filter(({ text }) => !said.has(text)) : [];
      // Eyes that dance are never of old: a neuroblastoma or an inflamed brain, whether the bouts come again or not.
      const dancing =
        facts.isUndated && facts.maybeProgressing ? findingReasons(facts.query.abnormal(dancingEyes)) : [];
      if (dancing.length > 0) return present([{ pointer: '/person/ageYears', text: `age ${age}` }, ...dancing]);
      const isTold = isUndated && signs.length > 0 && lost.length > 0;
      return signs.length + stopped.length + lost.length + moves.length > 0 && (worsening || isTold)
        ? present([
            { pointer: '/person/ageYears', text: `age ${age}` },
            ...stopped,
            ...lost,
            ...moves,
            ...findingReasons(signs, 4),
          ])
        : null;
    },
  },
  {
    key: 'newborn-with-neurological-signs',
    label: 'Newborn with a neurological sign',
    urgency: 'immediate',
    action: 'Paediatric emergency assessment; the rules for adults do not apply.',
    source: fromMemory,
    check: (facts) => {
      const signs = facts.abnormalFindings;
      const told = facts.told('seizure', 'ongoing-seizure');
      return (isNewborn(facts.exam) || beganAsNewborn(facts.exam)) && signs.length + told.length > 0
        ? present([...told, ...findingReasons(signs, 4)])
        : null;
    },
  },
];

/**
 * What a child could do and loses, before anybody has found a sign: walk and bladder or a mark over the spine; balance with
 * headache or vomiting; speech, sight or thought with each other or with seizures. Sources: NICE NG127; HeadSmart 2017, recalled.
 */
function lostByAChild(facts: BedsideFacts): readonly Reason[] {
  const walk = facts.told('difficulty-walking', 'leg-weakness', 'falls', 'unsteadiness', 'clumsiness');
  const spine = [
    ...failingBladder(facts),
    ...facts.told('bowel-disturbance', 'back-pain', 'thoracic-back-pain', 'night-spinal-pain'),
    ...findingReasons(facts.query.abnormal(['inspection/lumbosacral-skin-mark', 'inspection/scoliosis'])),
  ];
  const head = facts.told(...headache, 'vomiting', 'diplopia', 'visual-loss');
  const lost = facts.told(
    ...['speech-difficulty', 'slurred-speech', 'cognitive-change', 'visual-loss', 'hearing-loss', 'behaviour-change'],
  );
  const also = [...walk, ...facts.told('seizure', ...headache, 'vomiting')];
  const isRegress = lost.length >= 2 || (lost.length > 0 && also.length > 0);
  const tilt = findingReasons(facts.query.abnormal(['inspection/head-tilt']));
  const toes = findingReasons(facts.query.abnormal(['gait/spastic', 'gait/scissoring', 'gait/waddling']), 1);
  // What a child had learnt and loses is the sign by itself.
  const unlearnt = facts.told('loss-of-skills');
  // A break or a burn that did not hurt: nerves or cord that do not feel, beside anything found of skin, joint or muscle.
  const unfelt = facts.query.abnormalWhere(
    ({ item }) => item.section === 'sensation' || ['wasting', 'neuropathic-joint', 'foot-ulcer'].includes(item.key),
  );
  return [
    ...each(facts.told('painless-injury'), [
      ...findingReasons(unfelt, 2),
      ...facts.told('limb-fracture-or-dislocation', 'arm-weakness', 'clumsiness'),
    ]),
    ...each(walk, [...spine, ...head, ...toes, ...tilt]),
    // A tilted head that shuns the light: the floor of the skull is pressed. Marmor 1990, from memory.
    ...each(tilt, [...head, ...facts.told('photophobia')]),
    // Under five years of age a headache of weeks is imaged.
    ...((facts.exam.person.ageYears ?? 18) < 5 && trueFever(facts).length === 0 ? facts.told(...headache) : []),
    ...(isRegress ? lost : []),
    ...unlearnt,
  ];
}

/** Limbs that twist or dance and take walk, hands, speech or manner along within the year: copper, rheumatic fever, antibodies or a store of iron, and no tic. */
function newMovementsOfAChild(facts: BedsideFacts): readonly Reason[] {
  const seen = ['dystonia', 'chorea', 'athetosis'].map((key) => `involuntary-movements/${key}`);
  return each(
    findingReasons(facts.query.abnormal(seen), 2),
    facts.told(
      ...['difficulty-walking', 'falls', 'unsteadiness', 'clumsiness', 'slurred-speech', 'speech-difficulty'],
      ...['behaviour-change', 'cognitive-change', 'dysphagia'],
    ),
  );
}

/** NICE NG127: a baby who has been floppy for weeks or months and is weak, as in feeding or breathing, is referred urgently. */
function weakAndFloppy(facts: BedsideFacts): readonly Reason[] {
  const floppy = facts.query.abnormalWhere(({ item, value }) => item.probe.kind === 'tone' && value === 'reduced');
  const weak = [
    ...facts.told('dysphagia', 'breathlessness', 'weakness'),
    ...findingReasons(
      [...facts.weakLimbs, ...facts.query.abnormal(['cranial-nerves/dysphagia', ...breathingSigns])],
      3,
    ),
  ];
  return floppy.length > 0 && weak.length > 0 ? [...weak, ...findingReasons(floppy, 2)] : [];
}

/** Under 130 mmol/L, as where the pituitary no longer drives the adrenals. */
function isSodiumLow({ query }: BedsideFacts): boolean {
  const sodium = query.quantity('sodium', 'mmol/L');
  return sodium !== undefined && isUnder(sodium, 130);
}

/** 140 mmHg or more, the threshold of hypertension in pregnancy. Source: NICE NG133. */
function highPressure(facts: BedsideFacts): readonly Reason[] {
  const systolic = facts.query.quantity('systolic-pressure-supine', 'mm[Hg]');
  return [
    ...findingReasons(facts.query.abnormal(['autonomic/paroxysmal-hypertension'])),
    ...(systolic !== undefined && isAtLeast(systolic, 140)
      ? [{ pointer: systolic.pointer, text: `systolic pressure ${written(systolic)} mmHg` }]
      : []),
  ];
}

/** Fungus grows into the orbit of people with diabetes or without defence, often before there is fever. */
function isFungalRisk(facts: BedsideFacts): boolean {
  const weakDefence = facts.told('immunosuppression', 'diabetes-mellitus').length > 0;
  const failing =
    facts.told('visual-loss').length > 0 || facts.query.hasAbnormal('cranial-nerves/reduced-visual-acuity');
  const orbit =
    facts.query.hasAbnormal('inspection/proptosis') ||
    facts.query.hasAbnormal('cranial-nerves/ophthalmoplegia') ||
    (failing && facts.query.abnormal(eyeMovementSigns).length > 0);
  return weakDefence && orbit && facts.told('facial-pain', 'red-eye').length > 0;
}

/** Protein in the urine of a pregnant woman stands for the pressure: NICE NG133 (recalled). */
function proteinInUrine({ query }: BedsideFacts): readonly Reason[] {
  const result = query.result('urine-protein');
  return result?.value === 'raised' || result?.value === 'nephrotic'
    ? [{ pointer: result.pointer, text: 'protein in the urine' }]
    : [];
}
