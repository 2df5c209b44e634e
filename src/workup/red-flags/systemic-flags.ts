import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { fromMemory, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { clouded } from './consciousness.ts';
import { isOnBothSides } from './cord.ts';
import { feverReasons } from './fever.ts';
import { isNewborn, orTold, present, type RedFlagRule } from './rule.ts';
import { each, none } from './story.ts';
import { isAtLeast, isOver, isUnder, written } from './thresholds.ts';

/**
 * Limits in mmol/L beyond which brain and nerves suffer. Profound hyponatraemia is under 125 (Spasovski 2014); symptoms come
 * when adjusted calcium falls under about 1.9 (Turner 2016), and over 3.0 it is treated promptly (Walsh 2016); a sodium over
 * 155 and the limits of ionised calcium are judged.
 */
const limits = {
  sodium: { low: 125, high: 155 },
  calcium: { low: 1.9, high: 3 },
  'ionised-calcium': { low: 0.9, high: 1.6 },
} as const;

/** The salt as a reason when it lies beyond its limits; empty when it does not, or was not measured. */
export function dangerousSalt({ query }: BedsideFacts, salt: keyof typeof limits): readonly Reason[] {
  const measured = query.quantity(salt, 'mmol/L');
  if (measured === undefined) return [];
  const { pointer } = measured;
  const { low, high } = limits[salt];
  return isUnder(measured, low) || isOver(measured, high)
    ? [{ pointer, text: `${salt.replace('-', ' ')} ${written(measured)} mmol/L` }]
    : [];
}

/** Dangers that come from the blood, a poison, a toxin or an artery, and a first seizure. */
export const systemicFlags: readonly RedFlagRule[] = [
  {
    key: 'first-seizure',
    label: 'First seizure, or the first in somebody with cancer',
    urgency: 'urgent',
    action: 'Epilepsy specialist within two weeks; ECG, glucose and sodium now; no driving until seen.',
    source: recalled('nice-ng217'),
    check: (facts) => {
      const seizure = [
        ...facts.told('seizure'),
        ...findingReasons(facts.query.abnormal(['involuntary-movements/seizure-seen'])),
      ];
      // A known epilepsy accounts for a fit like those before, not for one in somebody who has a cancer as well.
      const cancer = facts.told('cancer', 'lymphoma');
      const known = facts.told('similar-attacks-before', ...(cancer.length > 0 ? [] : ['epilepsy']));
      // A newborn who fits, and a seizure that goes on, cannot wait for a clinic and have flags of their own.
      const isEmergency = isNewborn(facts.exam) || facts.told('ongoing-seizure').length > 0;
      // What grows may have begun to fit late, and so may what has cramped hands or muscles for months.
      const grows = facts.exam.course === 'progressive' || (facts.maybeProgressing && tetany(facts).length > 0);
      const inTime = facts.beganWithin(grows ? 183 : 28) !== 'no';
      return seizure.length > 0 && known.length === 0 && !isEmergency && inTime
        ? present([...seizure, ...cancer])
        : null;
    },
  },
  {
    key: 'dangerous-sodium-or-calcium',
    label: 'Sodium or calcium at which the brain or the nerves suffer',
    urgency: 'immediate',
    action:
      'Monitored correction now; sodium is raised slowly, lest the pons be harmed, unless a fit or coma asks for hypertonic saline; ECG for calcium.',
    source: recalled('adams-victor', 'acquired metabolic disorders'),
    check: (facts) => {
      const salts = (['sodium', 'calcium', 'ionised-calcium'] as const).flatMap((salt) => dangerousSalt(facts, salt));
      return orTold(salts.length > 0 ? present(salts) : null, tetany(facts));
    },
  },
  {
    key: 'suspected-poisoning',
    label: 'Suspected poisoning of brain, nerve or muscle',
    urgency: 'immediate',
    action:
      'Airway, breathing, circulation; call the poisons service; end the exposure; an antidote, where there is one, early.',
    source: recalled('adams-victor', 'disorders of the nervous system due to drugs and toxins'),
    check: (facts) => {
      const poison = facts.told(
        'organophosphate',
        'carbon-monoxide',
        'thallium',
        'arsenic',
        'lead',
        'other-heavy-metal',
        'venomous-bite',
        'marine-toxin',
        'toxic-alcohol',
      );
      const told = facts.told(
        'headache',
        'vomiting',
        'nausea',
        'abdominal-pain',
        'breathlessness',
        'hair-loss',
        'seizure',
        'visual-loss',
        'perioral-numbness',
        'paraesthesiae',
      );
      const signs = facts.query.abnormal([
        ...clouded,
        'cranial-nerves/small-pupil',
        'cranial-nerves/reduced-visual-acuity',
        'cranial-nerves/ptosis',
        'autonomic/hyperhidrosis',
        'autonomic/bradycardia',
      ]);
      const effect = [...told, ...findingReasons([...signs, ...facts.weakLimbs], 4)];
      if (poison.length > 0 && effect.length > 0 && facts.beganWithin(28) === 'yes')
        return present([...poison, ...effect]);
      return orTold(null, [...slowlyPoisoned(facts), ...toxidrome(facts), ...breathedIn(facts)]);
    },
  },
  {
    key: 'acute-limb-ischaemia',
    label: 'Suspected acute ischaemia of a limb',
    urgency: 'immediate',
    action: 'Feel the pulses; vascular surgeon and heparin now; a limb that is numb and weak has hours.',
    source: fromMemory,
    check: (facts) => orTold(null, ischaemicLimb(facts)),
  },
  {
    key: 'diabetic-foot-ulcer',
    label: 'Ulcer of a foot with diabetes',
    urgency: 'urgent',
    action:
      'Foot team within one working day; hospital at once with fever, spreading infection, gangrene or a pulseless foot; take the weight off it.',
    source: recalled('nice-ng19', 'referral: active problem within one working day'),
    check: (facts) => {
      const diabetes = [...facts.told('diabetes-mellitus'), ...measuredDiabetes(facts)];
      const ulcer = findingReasons(facts.query.abnormal(['inspection/foot-ulcer']), 2);
      return ulcer.length > 0 && diabetes.length > 0 ? present([...ulcer, ...diabetes]) : null;
    },
  },
  {
    key: 'potassium-paralysis',
    label: 'Weakness with dangerous potassium',
    urgency: 'immediate',
    action: 'ECG and monitored correction of potassium now.',
    source: recalled('adams-victor', 'periodic paralysis'),
    check: (facts) => {
      const potassium = facts.query.quantity('potassium', 'mmol/L');
      const told = facts.told('weakness', 'leg-weakness', 'arm-weakness', 'episodic-weakness');
      if (potassium === undefined || facts.weakLimbs.length + told.length === 0) return null;
      const { pointer } = potassium;
      if (!isUnder(potassium, 3) && !isOver(potassium, 6)) return null;
      return present([
        { pointer, text: `potassium ${written(potassium)} mmol/L` },
        ...told,
        ...findingReasons(facts.weakLimbs, 3),
      ]);
    },
  },
  {
    key: 'suspected-tetanus',
    label: 'Suspected tetanus',
    urgency: 'immediate',
    action: 'Airway first, intensive care, tetanus immunoglobulin, wound care; the diagnosis is clinical.',
    source: recalled('adams-victor', 'tetanus'),
    check: (facts) => {
      const rigid = facts.query.abnormalWhere(
        ({ item, value }) =>
          item.probe.kind === 'tone' && value === 'rigid' && (item.key === 'trunk' || item.key === 'neck'),
      );
      const wound = facts.told('trauma', 'injecting-drug-use', 'recent-surgery');
      const isRigid = rigid.length > 0 && wound.length > 0 && facts.exam.onset.pace !== 'chronic';
      const stiffNeck = facts.query.abnormal(['special-tests/neck-stiffness']);
      const swallow = [
        ...facts.told('dysphagia'),
        ...findingReasons(facts.query.abnormal(['cranial-nerves/dysphagia'])),
      ];
      const isStiff =
        stiffNeck.length > 0 && swallow.length > 0 && wound.length > 0 && feverReasons(facts).length === 0;
      const jaw = [
        ...facts.told('lockjaw'),
        ...findingReasons(facts.query.abnormal(['involuntary-movements/risus-sardonicus', 'cranial-nerves/trismus'])),
        ...(isRigid ? [...findingReasons(rigid, 2), ...wound] : []),
        ...(isStiff ? [...findingReasons(stiffNeck, 1), ...wound] : []),
      ];
      const spasms = [
        ...findingReasons(
          facts.query.abnormal([
            'involuntary-movements/flexor-spasms',
            'involuntary-movements/generalised-spasms',
            'involuntary-movements/opisthotonus',
            'cranial-nerves/dysphagia',
            'special-tests/neck-stiffness',
          ]),
        ),
        ...(facts.query.hasAbnormal('involuntary-movements/risus-sardonicus') ? findingReasons(rigid, 2) : []),
        ...facts.told('stiffness', 'cramps', 'dysphagia'),
      ];
      const fits = spasms.length > 0 || (facts.told('lockjaw').length > 0 && wound.length > 0);
      return jaw.length > 0 && fits && facts.beganWithin(28) !== 'no' ? present([...jaw, ...spasms]) : null;
    },
  },
];

/** HbA1c from 6.5 % is diabetes. Source: ada-standards, recalled. */
function measuredDiabetes({ query }: BedsideFacts): readonly Reason[] {
  const measured = query.quantity('hba1c', '%');
  return measured !== undefined && isAtLeast(measured, 6.5)
    ? [{ pointer: measured.pointer, text: `HbA1c ${written(measured)} %` }]
    : none;
}

/** Hands that cramp over nerves that answer a tap or a cuff, or one of these with tingling or a fit: the calcium is low until measured. */
function tetany(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const isMeasured = ['calcium', 'ionised-calcium'].some((key) => query.result(key) !== undefined);
  if (isMeasured || !facts.maybeProgressing) return none;
  const spasm = findingReasons(query.abnormal(['involuntary-movements/carpopedal-spasm']));
  const tapped = findingReasons(query.abnormal(['special-tests/chvostek-or-trousseau']));
  return each(
    [...spasm, ...tapped],
    [
      ...(spasm.length > 0 ? tapped : none),
      ...facts.told('perioral-numbness', 'paraesthesiae', 'cramps', 'seizure', 'neck-or-chest-surgery'),
    ],
  );
}

/** A limb that is newly cold or pale with pain or a diseased artery, and that is weak or numb. */
export function ischaemicLimb(facts: BedsideFacts): readonly Reason[] {
  if (!facts.cameWithin(14)) return none;
  const skin = facts.query.abnormal(['inspection/colour-or-temperature-change']);
  const deficit = [
    ...findingReasons(facts.weakLimbs, 2),
    ...facts.told('numbness'),
    ...findingReasons(
      facts.query.abnormalWhere(({ item }) => item.section === 'sensation'),
      2,
    ),
  ];
  const artery = [
    ...facts.told('leg-pain', 'arm-pain', 'foot-pain', 'thigh-pain'),
    ...facts.told('atrial-fibrillation', 'peripheral-arterial-disease', 'ischaemic-heart-disease', 'aortic-disease'),
    // A limb that is dead at once and has changed its colour needs no known disease of its artery.
    ...(facts.exam.onset.pace === 'hyperacute' && facts.lowestLimbPower <= 2 ? findingReasons(facts.weakLimbs, 1) : []),
  ];
  // A pulse that is not there is the artery itself.
  const pulse = findingReasons(facts.query.abnormal(['inspection/absent-limb-pulse']), 1);
  if (pulse.length > 0 && deficit.length > 0) return [...pulse, ...findingReasons(skin, 1), ...artery, ...deficit];
  // A heart or an artery that throws clots, and a limb that hurts and fails at once: nobody may have felt the pulse yet.
  const isSudden = facts.exam.onset.pace === 'hyperacute' && facts.told('back-pain', 'neck-pain').length === 0;
  const unseen = isSudden
    ? each(
        facts.told('atrial-fibrillation', 'peripheral-arterial-disease', 'aortic-disease'),
        facts.told('leg-pain', 'arm-pain', 'foot-pain'),
        [...deficit, ...facts.told('leg-weakness', 'arm-weakness')],
      )
    : none;
  return [...each(findingReasons(skin, 1), artery, deficit), ...unseen];
}

/** Metals are taken in over months; hair that falls out with painful feet or belly is thallium's or arsenic's, whoever gave it. */
function slowlyPoisoned(facts: BedsideFacts): readonly Reason[] {
  if (!facts.maybeProgressing) return none;
  const isWeeks = facts.beganWithin(92) === 'yes';
  const isGrowing = facts.exam.course === 'progressive' && facts.beganWithin(365) === 'yes';
  if (!isWeeks && !isGrowing) return none;
  const deadly = facts.told('thallium', 'arsenic');
  const mind = facts.told('seizure', 'behaviour-change', 'cognitive-change');
  const nerves = [...findingReasons([...facts.weakLimbs, ...facts.legSensoryLoss], 3), ...mind];
  const hair = facts.beganWithin(60) === 'yes' ? facts.told('hair-loss') : none;
  const pain = facts.told('burning-feet', 'neuropathic-pain', 'foot-pain', 'abdominal-pain', 'vomiting');
  // Lead and its like harm nerves over years; the danger is the brain, and colic or wrists that drop on both sides go before it.
  const colic = facts.told('abdominal-pain', 'vomiting');
  const both = isOnBothSides(facts.weakLimbs) ? findingReasons(facts.weakLimbs, 3) : none;
  return [
    ...each(deadly, nerves),
    ...each(facts.told('lead', 'other-heavy-metal'), isWeeks ? [...mind, ...colic, ...both] : mind),
    ...(isWeeks ? each(hair, pain, [...nerves, ...facts.told('weakness', 'leg-weakness', 'numbness')]) : none),
  ];
}

/** Fumes that put a mind to sleep within days of being breathed in or swallowed. */
function breathedIn(facts: BedsideFacts): readonly Reason[] {
  return facts.cameWithin(3)
    ? each(facts.told('organic-solvents'), findingReasons(facts.query.abnormal(clouded), 2))
    : none;
}

/** Poisons that tell of themselves, though nobody knows what was taken: too much acetylcholine, or too little. */
function toxidrome(facts: BedsideFacts): readonly Reason[] {
  if (!facts.cameWithin(7)) return none;
  const { query } = facts;
  const on = (...ids: readonly string[]) => findingReasons(query.abnormal(ids), 2);
  const pupils = query.abnormal(['cranial-nerves/small-pupil']);
  const isPinpoint = isOnBothSides(pupils);
  const twitching = query.abnormalWhere(({ item }) => item.key === 'fasciculation');
  const wet = [
    on('cranial-nerves/drooling', 'autonomic/hypersecretion'),
    on('autonomic/hyperhidrosis'),
    on('autonomic/bradycardia'),
    [...facts.told('breathlessness'), ...on('autonomic/breathlessness-at-rest')],
    facts.told('vomiting', 'abdominal-pain'),
    [...facts.told('bowel-disturbance'), ...on('sphincters/faecal-incontinence')],
    [...facts.told('bladder-disturbance'), ...on('sphincters/urinary-incontinence')],
    [...facts.told('cramps', 'twitching'), ...findingReasons(twitching, 1)],
  ].filter(({ length }) => length > 0);
  if (isPinpoint && wet.length >= 3) return [...findingReasons(pupils, 2), ...wet.flat()];
  // Glands that run over leave little room for another explanation.
  if (pupils.length > 0 && wet.length >= 2 && query.hasAbnormal('autonomic/hypersecretion'))
    return [...findingReasons(pupils, 2), ...wet.flat()];
  const dry = [
    on('cranial-nerves/dilated-pupil'),
    [...on('autonomic/dry-mouth'), ...facts.told('dry-mouth')],
    on('autonomic/resting-tachycardia'),
    on('sphincters/urinary-retention'),
    on('autonomic/ileus'),
  ].filter(({ length }) => length > 0);
  const mind = on(...clouded, 'higher-function/hallucinations');
  return dry.length >= 2 ? each(facts.told('anticholinergic'), mind, dry.flat()) : none;
}
