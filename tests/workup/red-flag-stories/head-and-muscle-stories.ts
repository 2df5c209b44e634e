import { site, weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, hours, measured, on, power, type Story, signs, weeks, years } from './story.ts';

export const headAndMuscleStories: readonly Story[] = [
  {
    flag: 'unexplained-fall-in-consciousness',
    by: 'common practice',
    raised: { history: { onset: hours }, findings: { higherFunction: signs('drowsiness') } },
    not: { history: { onset: years }, findings: { higherFunction: signs('drowsiness') } },
  },
  {
    flag: 'central-vestibular-syndrome',
    by: 'Tarnutzer 2023: direction-changing nystagmus, skew, or a head impulse without a saccade',
    raised: {
      history: { onset: hours, symptoms: has('continuous-vertigo') },
      findings: { cranialNerves: [...signs('direction-changing-nystagmus')] },
    },
    not: {
      history: { onset: hours, symptoms: has('continuous-vertigo') },
      findings: {
        cranialNerves: [
          ...on('left', 'nystagmus', 'abnormal-head-impulse'),
          { sign: 'skew-deviation', present: false },
        ],
      },
    },
  },
  {
    flag: 'head-injury-with-deficit',
    by: 'NICE NG232: seizure, vomiting, focal deficit or a lowered coma scale after a head injury',
    raised: { history: { onset: hours, conditions: has('head-injury'), symptoms: has('vomiting') } },
    not: { history: { onset: years, conditions: has('head-injury'), symptoms: has('vomiting') } },
  },
  {
    flag: 'head-injury-with-deficit',
    by: 'NICE NG232: a focal deficit is one of a cranial nerve too',
    raised: {
      history: { onset: days, conditions: has('head-injury') },
      findings: { cranialNerves: on('right', 'tongue-deviation') },
    },
    not: { history: { onset: days, conditions: has('head-injury') } },
  },
  {
    flag: 'suspected-cerebral-venous-thrombosis',
    by: 'Ferro 2017: headache with swollen discs or a deficit, and a reason to clot',
    raised: {
      history: { onset: weeks, symptoms: has('new-headache'), medications: has('hormonal-contraceptive') },
      findings: { cranialNerves: on('both', 'optic-disc-swelling') },
    },
    not: {
      history: { onset: weeks, symptoms: has('new-headache'), medications: has('hormonal-contraceptive') },
      findings: { cranialNerves: [{ sign: 'optic-disc-swelling', side: 'both', present: false }] },
    },
  },
  {
    flag: 'suspected-eclampsia',
    by: 'NICE NG133: headache with a systolic pressure of 140 mmHg and more in pregnancy',
    raised: {
      history: { onset: days, symptoms: has('new-headache'), conditions: has('pregnancy') },
      results: [measured('systolic-pressure-supine', 172, 'mm[Hg]')],
    },
    not: {
      history: { onset: days, symptoms: has('new-headache'), conditions: has('pregnancy') },
      results: [measured('systolic-pressure-supine', 118, 'mm[Hg]')],
    },
  },
  {
    flag: 'suspected-pituitary-apoplexy',
    by: 'Rajasekaran 2011: sudden headache with loss of fields or eye movement',
    raised: {
      history: { onset: hours, symptoms: has('thunderclap-headache') },
      findings: { cranialNerves: signs('bitemporal-hemianopia') },
    },
    not: {
      history: { onset: years, symptoms: has('headache') },
      findings: { cranialNerves: signs('bitemporal-hemianopia') },
    },
  },
  {
    flag: 'orbital-or-cavernous-sinus-infection',
    by: 'Adams and Victor: fever with a painful, bulging eye that does not move',
    raised: {
      history: { onset: days, symptoms: has('fever', 'eye-pain') },
      findings: { cranialNerves: on('left', 'ophthalmoplegia'), inspection: on('left', 'proptosis') },
    },
    not: {
      history: { onset: weeks, symptoms: has('eye-pain') },
      findings: { cranialNerves: on('left', 'ophthalmoplegia') },
    },
  },
  {
    flag: 'acute-facial-palsy',
    by: 'Baugh 2013: steroid within 72 hours',
    raised: {
      history: { onset: { pace: 'acute', durationDays: 2 } },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    },
    not: {
      history: { onset: { pace: 'acute', durationDays: 20 } },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    },
  },
  {
    flag: 'drug-induced-hyperthermia-with-rigidity',
    by: 'Adams and Victor: fever and rigidity on a neuroleptic',
    raised: {
      history: { onset: days, symptoms: has('fever'), medications: has('antipsychotic') },
      findings: { tone: [{ site: 'upper-limb', side: 'both', tone: 'rigid' }] },
    },
    not: {
      history: { onset: years, medications: has('antipsychotic') },
      findings: { tone: [{ site: 'upper-limb', side: 'both', tone: 'rigid' }] },
    },
  },
  {
    flag: 'suspected-tetanus',
    by: 'Adams and Victor: trismus with stiffness',
    raised: { history: { onset: days, symptoms: has('lockjaw', 'stiffness') } },
    not: { history: { onset: days, symptoms: has('stiffness') } },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'NICE NG127: children with progressive limb weakness are referred at once',
    raised: {
      person: { ageYears: 8 },
      history: { onset: weeks, course: 'progressive' },
      findings: { power: power('both', '3', 'hip-flexion') },
    },
    not: {
      person: { ageYears: 38 },
      history: { onset: weeks, course: 'progressive' },
      findings: { power: power('both', '3', 'hip-flexion') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'NICE NG127: an ataxia of years that runs in the family is for the clinic, not for tonight',
    raised: {
      person: { ageYears: 12 },
      history: { onset: years, course: 'progressive', symptoms: has('unsteadiness') },
      findings: { gait: signs('ataxic') },
    },
    not: {
      person: { ageYears: 12 },
      history: { onset: years, course: 'progressive', symptoms: has('unsteadiness'), family: has('ataxia') },
      findings: { gait: signs('ataxic') },
    },
  },
  {
    flag: 'newborn-with-neurological-signs',
    by: 'common practice',
    raised: { person: { ageYears: 0.03 }, history: { symptoms: has('seizure') } },
    not: { person: { ageYears: 30 }, history: { symptoms: has('seizure') } },
  },
  {
    flag: 'newborn-with-neurological-signs',
    by: 'an infant of two months that has been limp since its first weeks (common practice); one that was well until lately is older',
    raised: {
      person: { ageYears: 0.17 },
      history: { onset: { pace: 'chronic', durationDays: 60 }, symptoms: has('weakness') },
      findings: { tone: [{ site: 'trunk', tone: 'reduced' }] },
    },
    not: {
      person: { ageYears: 0.17 },
      history: { onset: { pace: 'acute', durationDays: 3 }, symptoms: has('weakness') },
      findings: { tone: [{ site: 'trunk', tone: 'reduced' }] },
    },
  },
  {
    flag: 'rhabdomyolysis',
    by: 'Amato and Russell: dark urine or a very high creatine kinase',
    raised: {
      history: { onset: days, symptoms: has('muscle-pain') },
      results: [measured('creatine-kinase', 24000, 'U/L')],
    },
    not: {
      history: { onset: days, symptoms: has('muscle-pain') },
      results: [measured('creatine-kinase', 700, 'U/L')],
    },
  },
  {
    flag: 'severe-inflammatory-myopathy',
    by: 'EULAR/ACR 2017: skin signs and dysphagia of dermatomyositis',
    raised: {
      history: { onset: weeks, symptoms: has('dysphagia') },
      findings: { power: power('both', '3', 'hip-flexion'), inspection: signs('heliotrope-rash') },
    },
    not: {
      history: { onset: weeks },
      findings: { power: power('both', '4', 'hip-flexion'), inspection: signs('heliotrope-rash') },
    },
  },
  {
    flag: 'severe-inflammatory-myopathy',
    by: 'Allenbach 2020: necrotising myopathy is rapidly progressive, and muscle is lost when treatment fails',
    at: site('proximal-myopathy', 'muscle'),
    raised: {
      history: { onset: weeks, course: 'progressive' },
      findings: { power: [...power('both', '3', 'hip-flexion'), ...power('both', '4', 'shoulder-abduction')] },
      results: [measured('creatine-kinase', 9000, 'U/L')],
    },
    not: {
      history: { onset: years, course: 'progressive' },
      findings: { power: [...power('both', '3', 'hip-flexion'), ...power('both', '4', 'shoulder-abduction')] },
      results: [measured('creatine-kinase', 9000, 'U/L')],
    },
  },
  {
    flag: 'suspected-acute-porphyria',
    by: 'Adams and Victor: abdominal pain, dark urine, motor neuropathy',
    raised: {
      history: { onset: days, symptoms: has('abdominal-pain', 'dark-urine') },
      findings: { power: power('both', '3', 'hip-flexion') },
    },
    not: {
      history: { onset: days, symptoms: has('abdominal-pain', 'preceding-gastroenteritis') },
      findings: { power: power('both', '3', 'hip-flexion') },
    },
  },
  {
    flag: 'compartment-syndrome',
    by: 'common practice',
    raised: { history: { onset: hours, symptoms: has('tense-painful-limb'), exposures: has('trauma') } },
    not: { history: { onset: hours, symptoms: has('leg-pain'), exposures: has('trauma') } },
  },
  {
    flag: 'high-cord-lesion-with-breathing-at-risk',
    by: 'The phrenic nerve comes from C3 to C5',
    at: site('spinal-cord-transverse', 'cord', 0.8, 'C4'),
    raised: {
      history: { onset: hours },
      findings: {
        power: [
          ...weakLegsBothSides,
          ...['left', 'right'].map((side) => ({ movement: 'elbow-flexion', side, grade: '2' })),
        ],
        plantars: [{ side: 'both', response: 'extensor' }],
      },
    },
    not: {
      history: { onset: hours },
      findings: { power: weakLegsBothSides, plantars: [{ side: 'both', response: 'extensor' }] },
    },
  },
  {
    flag: 'suspected-meningitis',
    by: 'NICE NG228 and NG240: a stiff neck with a new headache, with fever or without',
    raised: {
      history: { onset: days, symptoms: has('new-headache') },
      findings: { specialTests: [{ test: 'neck-stiffness', result: 'positive' }] },
    },
    not: {
      history: { onset: years, symptoms: has('headache') },
      findings: { specialTests: [{ test: 'neck-stiffness', result: 'negative' }] },
    },
  },
  {
    flag: 'suspected-wernicke-encephalopathy',
    by: 'Caine 1997: the triad of eye signs, ataxia and confusion',
    raised: {
      history: { onset: days },
      findings: {
        cranialNerves: signs('gaze-evoked-nystagmus'),
        coordination: [{ test: 'heel-shin', side: 'both', result: 'impaired' }],
        higherFunction: signs('confusion'),
      },
    },
    not: {
      history: { onset: days },
      findings: {
        cranialNerves: signs('gaze-evoked-nystagmus'),
        coordination: [{ test: 'heel-shin', side: 'both', result: 'impaired' }],
      },
    },
  },
  {
    flag: 'compressive-third-nerve-palsy',
    by: 'Fang 2017: a drooping lid with a wide pupil on the same side',
    raised: {
      person: { ageYears: 58 },
      history: { onset: days, symptoms: has('headache') },
      findings: { cranialNerves: on('left', 'ptosis', 'dilated-pupil', 'eye-adduction-weakness') },
    },
    not: {
      person: { ageYears: 58 },
      history: { onset: days },
      findings: { cranialNerves: [...on('left', 'ptosis'), ...on('right', 'ptosis')] },
    },
  },
];
