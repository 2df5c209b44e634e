import { findingReasons } from '../../causes/reasons.ts';
import { recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { clouded, reducedConsciousness } from './consciousness.ts';
import { isOnBothSides } from './cord.ts';
import { each, none, type RaisingStory } from './story.ts';
import { centralSigns, oneSidedWeakness } from './sudden-deficit.ts';

const flag = 'suspected-poisoning';
const source = recalled('adams-victor', 'disorders of the nervous system due to drugs and toxins');

/** Medicines that poison at little more than their usual dose, or once the kidneys or the liver fail. */
const narrow = [
  'lithium',
  'phenytoin',
  'carbamazepine',
  'valproate',
  'beta-lactam',
  'metronidazole',
  'isoniazid',
  'tacrolimus',
  'ciclosporin',
  'ifosfamide',
  'baclofen',
  'cytarabine',
  'fluorouracil',
] as const;

const asleep = ['higher-function/drowsiness', 'higher-function/stupor', 'higher-function/coma'];
const failingOrgans = ['chronic-liver-disease', 'chronic-kidney-disease', 'dialysis'] as const;
const twoYears = 730;

/** Poisoning by what somebody takes or was given. */
export const medicineStories: readonly RaisingStory[] = [
  {
    // A bite or a sting, and within a day or two any sign of nerves or muscles.
    flag,
    check: (facts) =>
      facts.beganWithin(2) === 'yes'
        ? each(facts.told('venomous-bite'), [
            ...findingReasons(facts.abnormalFindings, 3),
            ...facts.told('weakness', 'twitching', 'drooping-eyelids', 'dysphagia', 'slurred-speech', 'numbness'),
          ])
        : none,
    source: recalled('adams-victor', 'venoms, bites and stings'),
  },
  {
    // A clouded mind, or two of mind, balance, speech, tremor, jerks and eyes, newly in one who takes such a medicine: at a usual level too.
    flag,
    check: (facts) => {
      if (!isNew(facts) || isOfOneHalf(facts)) return none;
      const on = (...ids: readonly string[]) => findingReasons(facts.query.abnormal(ids), 1);
      const mind = [
        ...findingReasons(facts.query.abnormal(clouded), 2),
        ...facts.told('cognitive-change', 'behaviour-change').slice(0, 1),
      ];
      const isClouded = facts.query.abnormal(clouded).length > 0;
      const signs = [
        mind,
        [...on('gait/ataxic', 'coordination/finger-nose', 'coordination/heel-shin'), ...facts.told('unsteadiness')],
        [...on('cranial-nerves/dysarthria', 'cranial-nerves/cerebellar-dysarthria'), ...facts.told('slurred-speech')],
        [
          ...on(
            'involuntary-movements/postural-tremor',
            'involuntary-movements/action-tremor',
            'involuntary-movements/intention-tremor',
          ),
          ...facts.told('tremor'),
        ],
        on('involuntary-movements/myoclonus', 'involuntary-movements/asterixis'),
        on(
          'cranial-nerves/nystagmus',
          'cranial-nerves/gaze-evoked-nystagmus',
          'cranial-nerves/downbeat-nystagmus',
          'cranial-nerves/ophthalmoplegia',
        ),
        facts.told('vomiting'),
      ].filter(({ length }) => length > 0);
      return isClouded || signs.length >= 2 ? each(facts.told(...narrow), signs.flat()) : none;
    },
    source,
  },
  {
    // Sleep that has come over one who takes such a medicine, or whose liver or kidneys fail: the months are those of the illness, not of the sleep.
    flag: 'unexplained-fall-in-consciousness',
    check: (facts) =>
      facts.maybeProgressing && facts.beganWithin(twoYears) === 'yes'
        ? each(facts.told(...narrow, ...failingOrgans), findingReasons(facts.query.abnormal(asleep), 2))
        : none,
    source: recalled('adams-victor', 'the acquired metabolic disorders of the nervous system'),
  },
  {
    // Gabapentin and pregabalin leave by the kidney alone, and add to opioids.
    flag,
    check: (facts) =>
      isNew(facts) && !isOfOneHalf(facts)
        ? each(facts.told('gabapentinoid'), facts.told('chronic-kidney-disease', 'opioid'), [
            ...findingReasons(facts.query.abnormal(clouded), 2),
            ...findingReasons(
              facts.query.abnormal(['involuntary-movements/myoclonus', 'involuntary-movements/asterixis']),
              2,
            ),
          ])
        : none,
    source,
  },
  {
    // Without baclofen, of the pump above all, the cord lets go: spasms, fever and fits within days, and then muscle breaks down.
    flag: 'drug-induced-hyperthermia-with-rigidity',
    check: (facts) =>
      facts.cameWithin(14)
        ? each(facts.told('baclofen-withdrawal'), [
            ...facts.told('fever', 'seizure', 'ongoing-seizure', 'stiffness', 'behaviour-change', 'altered-sweating'),
            ...findingReasons(
              facts.query.abnormal([
                ...clouded,
                'higher-function/hallucinations',
                'higher-function/agitation',
                'autonomic/fever',
                'autonomic/resting-tachycardia',
                'tone/upper-limb',
                'tone/lower-limb',
                'involuntary-movements/flexor-spasms',
                'involuntary-movements/generalised-spasms',
              ]),
              3,
            ),
          ])
        : none,
    source: recalled('adams-victor', 'baclofen'),
  },
  {
    // These make people fit who never did.
    flag,
    check: (facts) =>
      isNew(facts) && facts.told('epilepsy', 'head-injury', 'stroke').length === 0
        ? each(facts.told('isoniazid', 'beta-lactam', 'lithium'), facts.told('seizure', 'ongoing-seizure'))
        : none,
    source,
  },
  {
    // What puts people to sleep or stops their breath, in one who can no longer be woken fully.
    flag,
    check: (facts) => {
      if (!facts.cameWithin(3) || isOfOneHalf(facts)) return none;
      const sleeping = findingReasons(facts.query.abnormal(reducedConsciousness), 2);
      const pupils = facts.query.abnormal(['cranial-nerves/small-pupil']);
      const slow = facts.query.abnormal(['autonomic/breathlessness-at-rest', 'autonomic/bradycardia']);
      const narcotic = each(facts.told('opioid', 'injecting-drug-use'), sleeping, [
        ...(isOnBothSides(pupils) ? findingReasons(pupils, 2) : none),
        ...findingReasons(slow, 1),
      ]);
      const coma = findingReasons(facts.query.abnormal(['higher-function/coma']));
      return [...narcotic, ...each(facts.told('opioid'), coma), ...each(facts.told('benzodiazepine'), sleeping)];
    },
    source,
  },
  {
    // Magnesium from the drip blocks the junction: lost jerks go before the breath.
    flag,
    check: (facts) =>
      facts.cameWithin(7)
        ? each(facts.told('magnesium'), [
            ...findingReasons([...facts.weakLimbs, ...facts.reducedReflexes], 3),
            ...findingReasons(facts.query.abnormal([...reducedConsciousness, 'cranial-nerves/ptosis']), 2),
            ...facts.told('weakness', 'breathlessness'),
          ])
        : none,
    source,
  },
  {
    // Methanol: both eyes go blind within days of drinking, with vomiting or a clouded mind.
    flag,
    check: (facts) => {
      const eyes = facts.query.abnormal(['cranial-nerves/reduced-visual-acuity', 'cranial-nerves/central-scotoma']);
      const isBoth = isOnBothSides(eyes);
      return facts.cameWithin(5) && isBoth
        ? each(facts.told('alcohol-excess', 'organic-solvents'), findingReasons(eyes, 2), [
            ...facts.told('vomiting', 'abdominal-pain', 'breathlessness'),
            ...findingReasons(facts.query.abnormal(clouded), 2),
          ])
        : none;
    },
    source: recalled('adams-victor', 'methanol'),
  },
];

/** Days or weeks old, months where it is said to grow, or undated; and not at rest. */
function isNew(facts: BedsideFacts): boolean {
  const { onset, course } = facts.exam;
  const isRecent = facts.beganWithin(course === 'progressive' ? 92 : 28) !== 'no';
  return onset.pace !== 'chronic' && onset.pace !== 'hyperacute' && isRecent && facts.maybeProgressing;
}

/** A deficit of one side is that of a lesion. */
function isOfOneHalf(facts: BedsideFacts): boolean {
  return oneSidedWeakness(facts).length + centralSigns(facts.query).length > 0;
}
