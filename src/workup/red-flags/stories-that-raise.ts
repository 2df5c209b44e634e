import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { read, recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { dangerOf } from './danger-words.ts';
import { eyeMovementSigns } from './eye-movement-signs.ts';
import { infectionsBefore, trueFever } from './fever.ts';
import { fewSignStories } from './few-signs-that-raise.ts';
import { headComplaints } from './head-complaints-that-raise.ts';
import { infantStories } from './infant-stories-that-raise.ts';
import { limbComplaints } from './limb-complaints-that-raise.ts';
import { massStories } from './mass-stories-that-raise.ts';
import { medicineStories } from './medicine-stories-that-raise.ts';
import { orbitAndPressureStories } from './orbit-and-pressure-stories-that-raise.ts';
import { shuntAndSpasmStories } from './shunt-and-spasm-stories-that-raise.ts';
import { slowCordStories } from './slow-cord-stories-that-raise.ts';
import { slowRaisingStories } from './slow-stories-that-raise.ts';
import { spineStories } from './spine-stories-that-raise.ts';
import { each, none, type RaisingStory } from './story.ts';
import { strokeStories } from './stroke-stories-that-raise.ts';
import { onOneSide } from './sudden-deficit.ts';
import { isAtLeast, isUnder, written } from './thresholds.ts';

const { headPain } = dangerOf;

const movementsOfEncephalitis: ReadonlySet<string> = new Set([
  'orofacial-dyskinesia',
  'dystonia',
  'chorea',
  'myoclonus',
  'opsoclonus',
  'ocular-flutter',
  'posturing',
]);

const isFirst = (facts: BedsideFacts): boolean => facts.told('similar-attacks-before', 'migraine').length === 0;

export const raisingStories: readonly RaisingStory[] = [
  {
    // Sudden headache with collapse or a stiff neck; an attack of the known kind, or a fever, is something else.
    flag: 'thunderclap-headache',
    check: (facts) =>
      facts.exam.onset.pace === 'hyperacute' && isFirst(facts) && trueFever(facts).length === 0
        ? each(headPain(facts), [
            ...facts.told('loss-of-consciousness'),
            ...findingReasons(facts.query.abnormal(['special-tests/neck-stiffness'])),
          ])
        : none,
    source: recalled('nice-ng228', 'symptoms and signs'),
  },
  {
    // Where nobody has tried the neck; one that was tried and is supple speaks for itself.
    flag: 'suspected-meningitis',
    check: (facts) =>
      facts.beganWithin(14) === 'yes' && facts.query.sign('special-tests/neck-stiffness') === 'unknown'
        ? each(
            trueFever(facts),
            headPain(facts),
            facts.told(
              ...['photophobia', 'neck-pain'],
              ...(facts.told('preceding-gastroenteritis', 'bowel-disturbance').length > 0 ? [] : ['vomiting']),
            ),
          )
        : none,
    source: recalled('nice-ng240', 'symptoms and signs'),
  },
  {
    // A fever with a pain of the head or a dislike of light, and an eye that does not move: the meninges at the base.
    flag: 'suspected-meningitis',
    check: (facts) =>
      facts.beganWithin(28) === 'yes' &&
      facts.maybeProgressing &&
      facts.query.sign('special-tests/neck-stiffness') === 'unknown'
        ? each(
            trueFever(facts),
            [...headPain(facts), ...facts.told('photophobia')],
            findingReasons(facts.query.abnormal(eyeMovementSigns), 2),
          )
        : none,
    source: recalled('nice-ng240', 'symptoms and signs'),
  },
  {
    // Without defence a headache of weeks with vomiting, failing sight or a cranial nerve is cryptococcus or tuberculosis.
    flag: 'suspected-meningitis',
    check: (facts) =>
      facts.beganWithin(60) === 'yes' && facts.maybeProgressing && isFirst(facts)
        ? each(facts.told('hiv-infection', 'immunosuppression'), headPain(facts), [
            ...facts.told('vomiting', 'visual-loss', 'diplopia', 'neck-pain', 'hearing-loss', 'photophobia'),
            ...findingReasons(facts.cranialNerveSigns, 2),
          ])
        : none,
    source: recalled('adams-victor', 'cryptococcal meningitis'),
  },
  {
    // A mind that changes within three months with movements, fits, silence or a storm that no disorder of mood brings.
    flag: 'suspected-encephalitis',
    check: (facts) => {
      if (facts.beganWithin(92) !== 'yes' || facts.told('antipsychotic', 'metoclopramide').length > 0) return none;
      const movement = facts.query.abnormalWhere(({ item }) => movementsOfEncephalitis.has(item.key));
      const storm = facts.query.abnormal([
        'autonomic/blood-pressure-lability',
        'autonomic/resting-tachycardia',
        'autonomic/hyperhidrosis',
        'autonomic/fever',
      ]);
      const mind = [
        ...facts.told('behaviour-change'),
        ...findingReasons(facts.query.abnormal(['higher-function/hallucinations', 'higher-function/mutism'])),
      ];
      return each(mind, [...findingReasons([...movement, ...storm], 3), ...facts.told('seizure', 'ongoing-seizure')]);
    },
    source: recalled('autoimmune-encephalitis-2016', 'probable anti-NMDA receptor encephalitis'),
  },
  {
    flag: 'suspected-encephalitis',
    check: (facts) =>
      facts.beganWithin(92) === 'yes'
        ? each(
            findingReasons(facts.query.abnormal(['higher-function/memory-impairment', 'higher-function/amnesia'])),
            facts.told('seizure', 'behaviour-change', 'ongoing-seizure'),
          )
        : none,
    source: recalled('autoimmune-encephalitis-2016', 'possible autoimmune encephalitis'),
  },
  {
    flag: 'raised-intracranial-pressure',
    check: (facts) =>
      facts.query.sign('cranial-nerves/optic-disc-swelling') === 'unknown' &&
      facts.exam.course === 'progressive' &&
      facts.beganWithin(183) !== 'no'
        ? each(facts.told('morning-headache'), facts.told('vomiting', 'transient-visual-loss'))
        : none,
    source: recalled('nice-ng127', 'headaches'),
  },
  {
    flag: 'acute-ascending-weakness',
    check: checkPolyradiculoneuropathy,
    source: read('ean-pns-gbs-2023'),
  },
  {
    // Eyes and balance that fail within days after an infection or with tingling, before anybody has tried the reflexes.
    flag: 'acute-ascending-weakness',
    check: (facts) => {
      const { query } = facts;
      const isTried = query.testedWhere(({ item }) => item.scale === 'reflex-grade').length > 0;
      const isElsewhere =
        facts.upperMotorSigns.length > 0 ||
        query.abnormalWhere(({ item }) => item.section === 'higherFunction').length > 0 ||
        facts.brainProbability >= 0.5;
      if (isTried || isElsewhere || facts.beganWithin(28) !== 'yes' || !facts.maybeProgressing) return none;
      const eyes = query.abnormal(['cranial-nerves/ophthalmoplegia', 'cranial-nerves/sixth-nerve-palsy']);
      const isBoth = eyes.length > 0 && onOneSide(eyes).length === 0;
      const balance = query.abnormal(['gait/ataxic', 'coordination/heel-shin', 'gait/unable-to-stand']);
      const before = facts.told(...infectionsBefore, 'paraesthesiae');
      return isBoth ? each(findingReasons(eyes, 2), findingReasons(balance, 1), before) : none;
    },
    source: recalled('ean-pns-gbs-2023', 'variants'),
  },
  {
    flag: 'suspected-botulism',
    check: (facts) => {
      const source = facts.told('home-preserved-food', 'botulinum-toxin-injection', 'injecting-drug-use');
      const told = facts.told(
        'diplopia',
        'drooping-eyelids',
        'dysphagia',
        'slurred-speech',
        'voice-change',
        'dry-mouth',
        'descending-weakness',
      );
      const signs = findingReasons(
        facts.query.abnormal([
          'cranial-nerves/ptosis',
          'cranial-nerves/ophthalmoplegia',
          'cranial-nerves/dysphagia',
          'cranial-nerves/flaccid-dysarthria',
          'cranial-nerves/nasal-speech',
        ]),
        3,
      );
      // A wound is enough with one of them: those who inject are seen early, and sent away.
      const isInjected = facts.told('injecting-drug-use', 'botulinum-toxin-injection').length > 0;
      const isBulbar = told.length + (signs.length > 0 ? 1 : 0) >= (isInjected ? 1 : 2);
      return isBulbar && trueFever(facts).length === 0 && facts.beganWithin(14) === 'yes'
        ? each(source, [...told, ...signs])
        : none;
    },
    source: read('botulism-2021'),
  },
];

/**
 * Weak legs that grew weaker within four weeks, with tingling, an infection before, weakness that climbs, or the fluid or the
 * conduction that goes with it, before the reflexes were tried. A level, a numb saddle, a bladder that fails or reflexes
 * that are brisk or normal in the legs speak for another place.
 */
function checkPolyradiculoneuropathy(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const triedAndKept = query
    .testedWhere(({ item }) => item.scale === 'reflex-grade' && item.region === 'lower-limbs')
    .some(({ abnormal }) => !abnormal);
  const elsewhere =
    [...facts.upperMotorSigns, ...facts.trunkSensoryLoss].length +
    facts.saddleLoss.length +
    facts.sphincterFailure.length;
  if (triedAndKept || elsewhere > 0 || facts.beganWithin(28) !== 'yes' || !facts.isProgressive) return none;
  if (facts.exam.onset.pace === 'hyperacute') return none;
  const climbing = facts.told('ascending-weakness');
  const weak = [
    ...climbing,
    ...facts.told('leg-weakness'),
    ...(facts.bothLegsWeak ? findingReasons(facts.weak('lower-limbs'), 3) : none),
  ];
  const isBothSided = facts.bothLegsWeak || climbing.length > 0;
  const also = [
    ...facts.told('paraesthesiae', ...infectionsBefore),
    ...(climbing.length > 0 && facts.bothLegsWeak ? climbing : none),
    ...proteinWithoutCells(facts),
    ...conduction(facts),
  ];
  return isBothSided ? each(weak, also) : none;
}

/** Protein over 0.45 g/L with fewer than 50 cells. Source: EAN/PNS guideline 2023. */
function proteinWithoutCells({ query }: BedsideFacts): readonly Reason[] {
  const protein = query.quantity('csf-protein', 'g/L');
  const cells = query.quantity('csf-white-cells', '10*6/L');
  if (protein === undefined || !isAtLeast(protein, 0.45) || (cells !== undefined && !isUnder(cells, 50))) return none;
  return [{ pointer: protein.pointer, text: `CSF protein ${written(protein)} g/L` }];
}

function conduction({ query }: BedsideFacts): readonly Reason[] {
  const result = query.result('nerve-conduction-pattern');
  return result?.value === 'demyelinating-non-uniform' || result?.value === 'motor-conduction-block'
    ? [{ pointer: result.pointer, text: 'demyelinating nerve conduction' }]
    : none;
}

const everyStory: readonly RaisingStory[] = [
  ...raisingStories,
  ...strokeStories,
  ...massStories,
  ...slowRaisingStories,
  ...orbitAndPressureStories,
  ...spineStories,
  ...slowCordStories,
  ...medicineStories,
  ...shuntAndSpasmStories,
  ...infantStories,
  ...headComplaints,
  ...limbComplaints,
  ...fewSignStories,
];

/** Reasons for which a story alone raises a flag; empty when none does. */
export function toldBy(flag: string, facts: BedsideFacts): readonly Reason[] {
  return everyStory.flatMap((row) => (row.flag === flag ? row.check(facts) : none));
}
