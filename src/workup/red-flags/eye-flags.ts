import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons, missing } from '../../causes/reasons.ts';
import { lowerFirst } from '../../exam/describe.ts';
import type { Finding } from '../../exam/finding.ts';
import { read, recalled } from '../../kernel/cite.ts';
import { bodySides } from '../../kernel/side.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { headache } from './brain-flags.ts';
import { reducedConsciousness } from './consciousness.ts';
import { isOnBothSides } from './cord.ts';
import { isOfTheLungApex } from './lung-apex.ts';
import { absent, notAssessable, present, type RedFlagRule, type Verdict } from './rule.ts';
import { each } from './story.ts';
import { isKnownAura } from './sudden-deficit.ts';
import { isAtLeast, written } from './thresholds.ts';

/** Months in which sight that fails under swollen discs may still be saved. Source: Mollan 2018, consensus on idiopathic intracranial hypertension (recalled). */
const drowningWithinDays = 92;

/** Sight that goes on failing under discs that are swollen on both sides. */
function isSightDrowning(facts: BedsideFacts): boolean {
  const discs = facts.query.abnormal(['cranial-nerves/optic-disc-swelling']);
  return isOnBothSides(discs) && facts.exam.course === 'progressive' && facts.beganWithin(drowningWithinDays) === 'yes';
}

/**
 * A disc that is pale on the only side where an eye sees less or its pupil gives way, in somebody who has had an optic neuritis or
 * complains of other things than the sight: a disc takes weeks to grow pale, and what has just begun is the rest.
 */
export function isLossOfOld(facts: BedsideFacts): boolean {
  const { query, told, abnormalFindings } = facts;
  const pale = new Set(query.abnormal(['cranial-nerves/optic-disc-pallor']).map(({ side }) => side));
  const fresh = told('visual-loss', 'transient-visual-loss', 'eye-pain', 'flashes-and-floaters');
  const ofSight = query.abnormalWhere(({ item }) => ofAnOldOpticNerve.has(item.key));
  const other = abnormalFindings.filter(({ item }) => !ofAnOldOpticNerve.has(item.key));
  const isElsewhere =
    told('optic-neuritis', 'diplopia').length > 0 || other.some(({ item }) => item.section !== 'cranialNerves');
  return pale.size > 0 && fresh.length === 0 && isElsewhere && ofSight.every(({ side }) => pale.has(side));
}

const ofAnOldOpticNerve: ReadonlySet<string> = new Set([
  'optic-disc-pallor',
  'relative-afferent-pupillary-defect',
  'reduced-colour-vision',
  'reduced-visual-acuity',
  'central-scotoma',
]);

/** Flags of sight, of the pupil and of the third nerve. */
export const eyeFlags: readonly RedFlagRule[] = [
  {
    key: 'compressive-third-nerve-palsy',
    label: 'Third nerve palsy that may be an aneurysm',
    urgency: 'immediate',
    action: 'CT or MR angiography now.',
    source: read('third-nerve-cohort-2017'),
    check: checkThirdNerve,
  },
  {
    key: 'acute-visual-loss',
    label: 'Acute loss of vision',
    urgency: 'immediate',
    action: 'Emergency eye and stroke assessment; C-reactive protein at once over the age of 50.',
    source: recalled('bsr-gca-2020'),
    check: (facts) => {
      const isPastAura = isKnownAura(facts) && facts.told('resolved-deficit').length > 0;
      const loss = [
        ...(isPastAura ? [] : facts.told('visual-loss')),
        ...findingReasons(
          facts.query.abnormal([
            'cranial-nerves/reduced-visual-acuity',
            'cranial-nerves/reduced-colour-vision',
            'cranial-nerves/altitudinal-field-defect',
            'cranial-nerves/constricted-visual-field',
            'cranial-nerves/monocular-field-defect',
            'cranial-nerves/central-scotoma',
            'cranial-nerves/relative-afferent-pupillary-defect',
          ]),
        ),
      ];
      const { pace } = facts.exam.onset;
      // An eye that is red and aches, with a pupil that does not move, is lost within a day.
      const pupil = facts.query.abnormal([
        'cranial-nerves/unreactive-pupil',
        'cranial-nerves/sluggish-pupil',
        'cranial-nerves/dilated-pupil',
      ]);
      const red = facts.told('red-eye');
      const closed = red.length > 0 && pupil.length > 0 ? [...red, ...findingReasons(pupil, 2)] : [];
      const isRecent =
        facts.beganWithin(14) === 'yes' ||
        (facts.exam.course === 'progressive' && facts.beganWithin(28) === 'yes') ||
        isSightDrowning(facts) ||
        isEyeOfAnOldArtery(facts);
      if (closed.length === 0 && isLossOfOld(facts)) return null;
      return loss.length + closed.length > 0 && pace !== 'chronic' && isRecent ? present([...loss, ...closed]) : null;
    },
  },
  {
    key: 'suspected-giant-cell-arteritis',
    label: 'Suspected giant cell arteritis',
    urgency: 'immediate',
    action:
      'High-dose corticosteroid now if vision is threatened; otherwise specialist assessment the same working day where possible.',
    source: read('bsr-gca-2020'),
    check: (facts) => {
      const age = facts.exam.person.ageYears;
      if (age === undefined || age < 50) return null;
      const arterial = [
        ...facts.told('jaw-claudication', 'scalp-tenderness'),
        ...findingReasons(facts.query.abnormal(['inspection/temporal-artery-tenderness'])),
      ];
      const visual = facts.told('visual-loss', 'transient-visual-loss', 'diplopia');
      // A headache that came with the loss of sight in old age counts as new, though nobody called it so.
      const isFresh = age >= 60 && facts.beganWithin(28) === 'yes' && facts.told('migraine').length === 0;
      const withSight = isFresh && visual.length > 0;
      const pain = facts.told('new-headache', ...(withSight ? ['headache'] : []));
      const inflamed = inflammation(facts);
      if (inflamed.length > 0 && pain.length + visual.length > 0)
        return present([...arterial, ...visual, ...pain, ...inflamed], visual.length > 0 ? 'immediate' : 'same-day');
      if (arterial.length === 0 && (visual.length === 0 || pain.length === 0)) {
        const asked = ['jaw-claudication', 'scalp-tenderness'].some((key) => facts.query.history(key) !== undefined);
        const measured = ['esr', 'crp'].some((key) => facts.query.result(key) !== undefined);
        return pain.length > 0 && !asked && !measured
          ? notAssessable([
              missing('jaw claudication and scalp tenderness were not asked for, and it matters'),
              ...pain,
            ])
          : null;
      }
      return present([...arterial, ...visual, ...pain], visual.length > 0 ? 'immediate' : 'same-day');
    },
  },
  {
    key: 'painful-horner-syndrome',
    label: 'New Horner syndrome with pain: artery of the neck or apex of the lung',
    urgency: 'immediate',
    action: 'CT or MR angiography of the neck now.',
    source: recalled('adams-victor', 'dissection of the carotid artery'),
    check: (facts) => {
      const horner = hornerSigns(facts);
      const pain = facts.told(
        'neck-pain',
        'facial-pain',
        'eye-pain',
        'neck-trauma',
        'shoulder-pain',
        'arm-pain',
        // The first thoracic root and the tip of the lung hurt between the shoulder blades and down the arm.
        'radicular-arm-pain',
        'thoracic-back-pain',
        ...headache,
      );
      // A Horner syndrome of half a year with pain still has a cause that grows.
      return horner.length > 0 &&
        pain.length > 0 &&
        (facts.exam.onset.pace !== 'chronic' || facts.beganWithin(183) === 'yes')
        ? present([...findingReasons(horner), ...pain], isOfTheLungApex(facts) ? 'urgent' : undefined)
        : null;
    },
  },
];

/** The syndrome named as such, or a drooping lid with a small pupil on the same side. */
function hornerSigns({ query }: BedsideFacts): readonly Finding[] {
  const named = query.abnormal(['cranial-nerves/horner-syndrome']);
  if (named.length > 0) return named;
  const pupils = query.abnormal(['cranial-nerves/small-pupil']);
  return query.abnormal(['cranial-nerves/ptosis']).flatMap((lid) => {
    const own = pupils.filter(({ side }) => side === lid.side);
    return own.length > 0 && pupils.length === 1 ? [lid, ...own] : [];
  });
}

const otherEyeNerves = [
  'cranial-nerves/fourth-nerve-palsy',
  'cranial-nerves/sixth-nerve-palsy',
  'cranial-nerves/eye-abduction-weakness',
  'cranial-nerves/esotropia',
];

/** A C-reactive protein of 10 mg/L or an erythrocyte sedimentation rate of 50 mm/h and more. Source: ACR/EULAR criteria 2022. */
function inflammation({ query }: BedsideFacts): readonly Reason[] {
  return (
    [
      ['crp', 'mg/L', 10],
      ['esr', 'mm/h', 50],
    ] as const
  ).flatMap(([key, unit, threshold]) => {
    const measured = query.quantity(key, unit);
    return measured !== undefined && isAtLeast(measured, threshold)
      ? [{ pointer: measured.pointer, text: `${lowerFirst(measured.label)} ${written(measured)} ${unit}` }]
      : [];
  });
}

/** A palsy named as such, or a drooping lid with a wide pupil or a weak muscle of the same nerve on the same side. */
function thirdNerveSigns({ query }: BedsideFacts): readonly Finding[] {
  const named = query.abnormal(['cranial-nerves/third-nerve-palsy']);
  if (named.length > 0) return named;
  const parts = [
    'cranial-nerves/dilated-pupil',
    'cranial-nerves/unreactive-pupil',
    'cranial-nerves/sluggish-pupil',
    'cranial-nerves/eye-adduction-weakness',
    'cranial-nerves/exotropia',
    'cranial-nerves/eye-elevation-weakness',
    'cranial-nerves/eye-depression-weakness',
  ];
  const wide = wideAndUnmoving(query);
  if (wide.length > 0) return wide;
  return query.abnormal(['cranial-nerves/ptosis']).flatMap((lid) => {
    const own = bodySides.flatMap((side) => (side === lid.side ? query.abnormal(parts, side) : []));
    const other = bodySides.flatMap((side) =>
      side === lid.side ? [] : query.abnormal(['cranial-nerves/ptosis', ...parts], side),
    );
    return own.length > 0 && other.length === 0 ? [lid, ...own] : [];
  });
}

/** A wide pupil in an eye that does not move, of one side alone and not pushed out, though nobody has named the nerve or the lid. */
function wideAndUnmoving(query: BedsideFacts['query']): readonly Finding[] {
  const pupils = query.abnormal([
    'cranial-nerves/dilated-pupil',
    'cranial-nerves/unreactive-pupil',
    'cranial-nerves/sluggish-pupil',
  ]);
  const moves = query.abnormal([
    'cranial-nerves/ophthalmoplegia',
    'cranial-nerves/eye-adduction-weakness',
    'cranial-nerves/exotropia',
    'cranial-nerves/eye-elevation-weakness',
  ]);
  const found = [...pupils, ...moves];
  const isOneEye = new Set(found.map(({ side }) => side)).size === 1;
  const pushedOut = query.abnormal(['inspection/proptosis', 'inspection/chemosis']);
  return pupils.length > 0 && moves.length > 0 && isOneEye && pushedOut.length === 0 ? found : [];
}

/** A lid that droops on one side with double vision and a fresh pain, in an eye that nobody has looked at further. */
function painfulLid(facts: BedsideFacts): readonly Finding[] {
  const { query } = facts;
  if (thirdNerveSigns(facts).length > 0 || hornerSigns(facts).length > 0) return [];
  const lids = query.abnormal(['cranial-nerves/ptosis']);
  const pain = facts.told('new-headache', 'thunderclap-headache', 'eye-pain');
  return lids.length === 1 && pain.length > 0 && facts.told('diplopia').length > 0 && facts.beganWithin(14) === 'yes'
    ? lids
    : [];
}

/**
 * A lid that is said to droop with double vision and a fresh pain of head or eye, in eyes that nobody has looked at or has found to be
 * out of line: an aneurysm or a bleeding pituitary until it is imaged, whatever the pupil does.
 */
function lidToldWithPain(facts: BedsideFacts): readonly Reason[] {
  if (!facts.cameWithin(14) || facts.exam.course === 'fluctuating' || hornerSigns(facts).length > 0) return [];
  const lids = facts.query.findings('cranial-nerves/ptosis');
  if (lids.length > 0 && lids.every(({ abnormal }) => !abnormal)) return [];
  const comesAndGoes = facts.told(
    'fatigable-weakness',
    'fluctuating-symptoms',
    'similar-attacks-before',
    'myasthenia-gravis',
  );
  if (comesAndGoes.length > 0) return [];
  const double = [...facts.told('diplopia'), ...findingReasons(facts.query.abnormal(['cranial-nerves/diplopia']))];
  return each(facts.told('drooping-eyelids'), double, facts.told('eye-pain', ...headache));
}

function checkThirdNerve(facts: BedsideFacts): Verdict | null {
  const { query, exam } = facts;
  const palsies = [...thirdNerveSigns(facts), ...painfulLid(facts)];
  const [palsy] = palsies;
  if (palsy === undefined) {
    const told = lidToldWithPain(facts);
    return told.length > 0 ? present(told) : null;
  }
  if (exam.onset.pace === 'chronic') return null;
  const pupilItems = [
    'cranial-nerves/dilated-pupil',
    'cranial-nerves/unreactive-pupil',
    'cranial-nerves/sluggish-pupil',
  ];
  const pupil = query.abnormal([...pupilItems, 'cranial-nerves/anisocoria'], palsy.side);
  const pain = facts.told('eye-pain', 'facial-pain', ...headache);
  const young = exam.person.ageYears !== undefined && exam.person.ageYears < 50;
  // Disease of small vessels takes one nerve and leaves the mind clear.
  const beyond = query.abnormal([...otherEyeNerves, ...reducedConsciousness]);
  if (pupil.length > 0 || pain.length > 0 || young || beyond.length > 0) {
    const age = young ? [{ pointer: '/person/ageYears', text: `age ${exam.person.ageYears}, under 50` }] : [];
    return present([...findingReasons([...palsies, ...pupil, ...beyond]), ...pain, ...age]);
  }
  const seen = pupilItems.some((id) => query.sign(id, palsy.side) === 'normal');
  // A fresh palsy whose pupil nobody has looked at, in somebody whose small vessels nothing harms, is imaged like one with a wide pupil.
  const smallVessels = facts.told('diabetes-mellitus', 'hypertension', 'similar-attacks-before');
  if (!seen && smallVessels.length === 0 && facts.maybeProgressing && facts.beganWithin(28) === 'yes')
    return present([missing('the pupil on that side was not examined, and it matters'), ...findingReasons(palsies)]);
  // A spared pupil reassures where sugar or pressure has harmed the small vessels; of nobody else, while the palsy is fresh and does not mend.
  const vessels = facts.told(
    ...['diabetes-mellitus', 'hypertension', 'hyperlipidaemia', 'tobacco', 'ischaemic-heart-disease', 'stroke'],
    ...['peripheral-arterial-disease', 'similar-attacks-before', 'myasthenia-gravis', 'fatigable-weakness'],
  );
  const isFresh = facts.maybeProgressing && facts.exam.course !== 'fluctuating' && facts.beganWithin(14) === 'yes';
  if (seen && vessels.length === 0 && isFresh)
    return present([missing('nothing that harms small vessels was told'), ...findingReasons(palsies)]);
  if (!seen)
    return notAssessable([
      missing('the pupil on that side was not examined, and it matters'),
      ...findingReasons(palsies),
    ]);
  return absent(findingReasons(pupilItems.flatMap((id) => query.findings(id, palsy.side))));
}

/** Weeks of the pains of giant cell arteritis, which go on: the eye that fails at their end fails now, and the other one next. */
function isEyeOfAnOldArtery(facts: BedsideFacts): boolean {
  const pains = facts.told('new-headache', 'scalp-tenderness', 'jaw-claudication');
  const isOld = (facts.exam.person.ageYears ?? 0) >= 50;
  return isOld && pains.length > 0 && facts.exam.course === 'progressive' && facts.beganWithin(92) === 'yes';
}
