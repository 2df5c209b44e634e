import { findingReasons } from '../../causes/reasons.ts';
import { read, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { aMonth, isOnBothSides, spinalPain } from './cord.ts';
import { infectionsBefore } from './fever.ts';
import { toxicToNerves } from './spinal-flags.ts';
import { each, none, type RaisingStory } from './story.ts';

/** Complaints of limbs, bladder and throat that raise a flag before anybody has examined, or though nobody has said since when. */
export const limbComplaints: readonly RaisingStory[] = [
  {
    // Legs that fail within days with the bladder or a band; or, within a month in which they go on failing, with a pain between the shoulder blades.
    flag: 'suspected-cord-compression',
    check: (facts) => {
      const isFresh = facts.cameWithin(14) && facts.maybeProgressing;
      const { pace, durationDays } = facts.exam.onset;
      const grows = facts.exam.course === 'progressive' && pace !== 'chronic' && (durationDays ?? 99) <= aMonth;
      if (!(isFresh || grows) || hasPower(facts) || facts.reducedReflexes.length > 0) return none;
      return [
        ...(isFresh ? each(facts.told('leg-weakness'), facts.told('bladder-disturbance', 'tight-band')) : none),
        ...each(facts.told('leg-weakness', 'difficulty-walking'), facts.told('thoracic-back-pain')),
      ];
    },
    source: recalled('nice-ng234', 'recognition and imaging'),
  },
  {
    // A band about the trunk with feet that tingle or go numb, or a shock from the neck down, within a month: the cord is inflamed or pressed before legs or bladder fail.
    flag: 'suspected-cord-compression',
    check: (facts) => {
      const isFresh = facts.exam.onset.pace !== 'chronic' && facts.beganWithin(28) === 'yes' && facts.isProgressive;
      const other = facts.told('rash', 'herpes-zoster', 'preceding-gastroenteritis', 'ascending-weakness');
      return isFresh && other.length === 0 && facts.reducedReflexes.length === 0
        ? each(facts.told('tight-band'), facts.told('numbness', 'paraesthesiae'), [
            ...facts.told('electric-shock-on-neck-flexion', 'unsteadiness', 'leg-weakness', 'difficulty-walking'),
            ...facts.told('bladder-disturbance', 'clumsiness', 'thoracic-back-pain'),
          ])
        : none;
    },
    source: recalled('adams-victor', 'transverse myelitis'),
  },
  {
    // A neck that hurts and weakness that grows within days, with tingling, of which nobody names a limb: of a root it would be one arm.
    flag: 'suspected-cord-compression',
    check: (facts) => {
      const isFresh = facts.cameWithin(14) && facts.isProgressive && !hasPower(facts);
      const other = facts.told('radicular-arm-pain', 'arm-weakness', 'preceding-gastroenteritis', 'ascending-weakness');
      return isFresh && other.length === 0 && facts.reducedReflexes.length === 0
        ? each(facts.told('neck-pain'), facts.told('weakness'), facts.told('paraesthesiae', 'numbness'))
        : none;
    },
    source: recalled('nice-ng234', 'recognition and imaging'),
  },
  {
    // Known cancer and legs that are said to fail; of a nerve poison it would be numbness first.
    flag: 'suspected-metastatic-cord-compression',
    check: (facts) => {
      const poison = facts.told(...toxicToNerves);
      const isFresh = facts.exam.onset.pace !== 'chronic' && facts.beganWithin(92) !== 'no' && facts.maybeProgressing;
      if (!isFresh || poison.length > 0 || hasPower(facts) || facts.cranialNerveSigns.length > 0) return none;
      return each(
        facts.told('cancer', 'lymphoma'),
        facts.told('leg-weakness'),
        facts.told('numbness', 'bladder-disturbance', 'difficulty-walking', 'tight-band', ...spinalPain),
      );
    },
    source: read('nice-ng234'),
  },
  {
    // A numb saddle with the pain of the back or the leg is imaged, whenever it began, unless it rests.
    flag: 'suspected-cauda-equina-syndrome',
    check: (facts) =>
      facts.isUndated && facts.maybeProgressing && facts.query.result('mri-lumbar-spine') === undefined
        ? each(facts.told('saddle-numbness'), facts.told(...spinalPain, 'radicular-leg-pain', 'bilateral-leg-pain'))
        : none,
    source: read('girft-ces-2023'),
  },
  {
    // Legs and bladder said to fail together within days below arms and trunk that nobody complains of, before anybody has tried either.
    flag: 'suspected-cauda-equina-syndrome',
    check: (facts) => {
      const above = facts.told(
        ...['arm-weakness', 'tight-band', 'thoracic-back-pain', 'neck-pain', 'electric-shock-on-neck-flexion'],
        ...[
          'multiple-sclerosis',
          'stroke',
          'diplopia',
          'speech-difficulty',
          'cognitive-change',
          'loss-of-consciousness',
        ],
      );
      const found = [...facts.upperMotorSigns, ...facts.trunkSensoryLoss, ...facts.cranialNerveSigns];
      const isFresh = facts.cameWithin(14) && facts.maybeProgressing;
      return isFresh && above.length + found.length === 0 && !hasPower(facts)
        ? each(facts.told('leg-weakness'), facts.told('bladder-disturbance'))
        : none;
    },
    source: read('girft-ces-2023'),
  },
  {
    // Tingling and legs that fail within weeks of an infection; lost jerks with an unsteady, tingling walk; or an infection that dates what nobody has dated.
    flag: 'acute-ascending-weakness',
    check: (facts) => {
      const { onset, course } = facts.exam;
      const isElsewhere =
        [...facts.upperMotorSigns, ...facts.trunkSensoryLoss].length +
          facts.saddleLoss.length +
          facts.sphincterFailure.length >
        0;
      const isKept = facts.query
        .testedWhere(({ item }) => item.scale === 'reflex-grade' && item.region === 'lower-limbs')
        .some(({ abnormal }) => !abnormal);
      if (isElsewhere || isKept || !facts.maybeProgressing || onset.pace === 'hyperacute') return none;
      const before = facts.told(...infectionsBefore, 'recent-vaccination');
      const tingling = facts.told('paraesthesiae', 'numbness');
      const walk = facts.told('difficulty-walking', 'leg-weakness', 'unsteadiness', 'ascending-weakness');
      const lost = facts.reducedReflexes;
      const isLost = isOnBothSides(lost) && lost.length >= 4;
      const isFresh = facts.beganWithin(28) === 'yes' && course === 'progressive';
      return [
        ...(isFresh ? each(before, facts.told('paraesthesiae'), walk) : none),
        ...(isFresh && isLost ? each(findingReasons(lost, 3), tingling, walk) : none),
        ...(facts.isUndated && isLost && facts.bothLegsWeak
          ? each(before, findingReasons(facts.weak('lower-limbs'), 2), findingReasons(lost, 2))
          : none),
      ];
    },
    source: read('ean-pns-gbs-2023'),
  },
  {
    // Lids or double vision with a failing throat that grow worse over weeks, before anybody has looked whether they tire.
    flag: 'threatened-myasthenic-crisis',
    check: (facts) => {
      const isWeeks = facts.exam.course === 'progressive' && facts.beganWithin(92) === 'yes';
      const throat = facts.told('dysphagia', 'slurred-speech', 'voice-change', 'breathlessness');
      return isWeeks && facts.exam.onset.pace !== 'hyperacute' && facts.abnormalFindings.length === 0
        ? each(facts.told('drooping-eyelids', 'diplopia'), throat, facts.told('dysphagia', 'breathlessness'))
        : none;
    },
    source: read('mg-consensus-2021'),
  },
  {
    // Germs known to be in the blood, or within days no defence against them, a painful spine and legs or a bladder that fail: no fever is needed.
    flag: 'suspected-spinal-infection',
    check: (facts) => {
      if (facts.beganWithin(60) === 'no' || !facts.maybeProgressing) return none;
      const defenceless = facts.cameWithin(28) ? facts.told('immunosuppression', 'hiv-infection') : none;
      const inBlood = facts.told('recent-bacteraemia', 'sepsis', 'injecting-drug-use');
      const isNew = facts.exam.onset.pace !== 'chronic' && facts.beganWithin(60) === 'yes';
      return [
        ...each([...inBlood, ...defenceless], facts.told(...spinalPain), [
          ...facts.told('leg-weakness', 'arm-weakness', 'difficulty-walking', 'bladder-disturbance'),
          ...findingReasons(facts.weakLimbs, 2),
        ]),
        // Of new pain alone guidance asks for the MRI where germs are known to have been in the blood. Source: IDSA 2015, recalled.
        ...(isNew
          ? each(inBlood, facts.told('back-pain', 'thoracic-back-pain', 'neck-pain', 'night-spinal-pain'))
          : none),
      ];
    },
    source: recalled('adams-victor', 'spinal epidural abscess'),
  },
];

/** Somebody has tried the power of the legs. */
export function hasPower({ query }: BedsideFacts): boolean {
  return query.testedWhere(({ item }) => item.section === 'power' && item.region === 'lower-limbs').length > 0;
}
