import { findingReasons } from '../../causes/reasons.ts';
import { fromMemory, recalled } from '../../kernel/cite.ts';
import { breathingSigns } from './neuromuscular-flags.ts';
import { present, type RedFlagRule } from './rule.ts';

/** From this creatine kinase, in U/L, the kidneys are in danger. Judged from the usual ranges. */
const dangerousCreatineKinase = 5000;

/** Dangers that come from muscle, a swollen limb, porphyria, or a cord that drives the diaphragm. */
export const muscleAndNerveFlags: readonly RedFlagRule[] = [
  {
    key: 'rhabdomyolysis',
    label: 'Breakdown of muscle that endangers the kidneys',
    urgency: 'immediate',
    action: 'Fluids, potassium and ECG, creatinine; stop what may have caused it.',
    source: recalled('amato-russell', 'rhabdomyolysis'),
    check: (facts) => {
      const kinase = facts.query.quantity('creatine-kinase', 'U/L');
      const high = kinase !== undefined && kinase.value >= dangerousCreatineKinase;
      const urine = facts.told('dark-urine');
      const muscle = [
        ...facts.told('muscle-pain', 'weakness', 'heavy-exertion', 'prolonged-immobility'),
        ...findingReasons(facts.weakLimbs, 2),
      ];
      const isRecent = facts.beganWithin(14) !== 'no';
      if (!isRecent || !(high || (urine.length > 0 && muscle.length > 0))) return null;
      // Dark urine with pain of the abdomen and weak nerves is porphyria's picture.
      if (!high && facts.told('abdominal-pain').length > 0) return null;
      return present([
        ...(high ? [{ pointer: kinase.pointer, text: `creatine kinase ${kinase.value} U/L` }] : []),
        ...urine,
        ...muscle,
      ]);
    },
  },
  {
    key: 'severe-inflammatory-myopathy',
    label: 'Inflammation of muscle with weak swallowing or breathing',
    urgency: 'same-day',
    action: 'Admit; swallowing assessment, vital capacity, imaging of the lungs; treatment without delay.',
    source: recalled('eular-acr-myositis-2017', 'skin and oesophagus'),
    check: (facts) => {
      const skin = [
        ...findingReasons(facts.query.abnormal(['inspection/heliotrope-rash', 'inspection/gottron-papules'])),
        ...facts.told('photosensitive-rash'),
      ];
      const danger = [
        ...findingReasons(facts.query.abnormal(['cranial-nerves/dysphagia', ...breathingSigns])),
        ...facts.told('dysphagia', 'breathlessness', 'orthopnoea'),
      ];
      const kinase = facts.query.quantity('creatine-kinase', 'U/L');
      const inflamed =
        kinase !== undefined &&
        kinase.value >= 1000 &&
        facts.beganWithin(365) !== 'no' &&
        facts.kindProbability('muscle') >= 0.3
          ? [{ pointer: kinase.pointer, text: `creatine kinase ${kinase.value} U/L` }]
          : [];
      return skin.length + inflamed.length > 0 && danger.length > 0 && facts.weakLimbs.length > 0
        ? present([...skin, ...inflamed, ...danger, ...findingReasons(facts.weakLimbs, 2)])
        : null;
    },
  },
  {
    key: 'suspected-acute-porphyria',
    label: 'Suspected attack of acute porphyria',
    urgency: 'immediate',
    action:
      'Porphobilinogen in urine kept from light; haem and glucose; stop unsafe medicines; watch breathing and sodium.',
    source: recalled('adams-victor', 'porphyric polyneuropathy'),
    check: (facts) => {
      const belly = facts.told('abdominal-pain');
      const also = facts.told('dark-urine', 'seizure', 'behaviour-change', 'porphyria', 'family/porphyria');
      const weak = findingReasons(facts.weakLimbs, 3);
      return belly.length > 0 && also.length > 0 && weak.length > 0 && facts.beganWithin(42) !== 'no'
        ? present([...belly, ...also, ...weak])
        : null;
    },
  },
  {
    key: 'compartment-syndrome',
    label: 'Suspected compartment syndrome',
    urgency: 'immediate',
    action: 'Take off what constricts; surgeon now; do not wait for the pulse to go.',
    source: fromMemory,
    check: (facts) => {
      const tense = facts.told('tense-painful-limb');
      const cause = facts.told(
        'trauma',
        'limb-fracture-or-dislocation',
        'external-pressure',
        'prolonged-immobility',
        'heavy-exertion',
        'recent-surgery',
        'anticoagulant',
      );
      const deficit = facts.query.abnormalWhere(({ item }) => item.section === 'power' || item.section === 'sensation');
      return tense.length > 0 && cause.length + deficit.length > 0 && facts.beganWithin(7) !== 'no'
        ? present([...tense, ...cause, ...findingReasons(deficit, 3)])
        : null;
    },
  },
  {
    key: 'high-cord-lesion-with-breathing-at-risk',
    label: 'Acute lesion of the upper cervical cord, breathing at risk',
    urgency: 'immediate',
    action: 'Vital capacity now and hourly, cough, blood pressure and pulse; intensive care; protect the neck.',
    source: recalled('isncsci', 'phrenic motor neurons C3 to C5'),
    check: (facts) => {
      if (facts.beganWithin(28) !== 'yes' || !facts.bothArmsWeak || !facts.bothLegsWeak) return null;
      const breathing = [
        ...findingReasons(facts.query.abnormal(breathingSigns)),
        ...facts.told('breathlessness', 'orthopnoea'),
      ];
      const high = facts.localisation.localisations.some(
        ({ kind, level, probability }) => kind === 'cord' && probability >= 0.2 && /^C[1-5]$/.test(level ?? ''),
      );
      return high && facts.upperMotorSigns.length + facts.trunkSensoryLoss.length + breathing.length > 0
        ? present([...breathing, ...findingReasons([...facts.weak('upper-limbs'), ...facts.trunkSensoryLoss], 4)])
        : null;
    },
  },
];
