import { site, weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, hours, measured, on, power, reflexes, type Story, signs, weeks, years } from './story.ts';

const junction = site('postsynaptic-junction', 'junction');
const roots = site('demyelinating-polyradiculoneuropathy', 'polyradiculoneuropathy');
const cord = site('spinal-cord-transverse', 'cord');
const lostLegJerks = reflexes('0', 'knee', 'ankle');

/** The same emergencies in other words: measured, told by one who has not been examined, or named by another sign. */
export const furtherWordingStories: readonly Story[] = [
  {
    flag: 'thunderclap-headache',
    by: 'Ottawa rule: a first headache that came at once on exertion; one of many such is migraine',
    raised: { history: { onset: hours, symptoms: has('headache'), exposures: has('heavy-exertion') } },
    not: {
      history: {
        onset: hours,
        symptoms: has('headache', 'similar-attacks-before'),
        exposures: has('heavy-exertion'),
      },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'a mind that clouds with a walk that fails after a vaccination; the walk alone is a neuropathy',
    raised: {
      history: { onset: days, exposures: has('recent-vaccination') },
      findings: { higherFunction: signs('confusion'), power: weakLegsBothSides },
    },
    not: {
      history: { onset: days, exposures: has('recent-vaccination') },
      findings: { power: weakLegsBothSides },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'zoster and a clouded mind; a mind that was never clear is another matter',
    raised: {
      history: { onset: days, conditions: has('herpes-zoster') },
      findings: { higherFunction: signs('confusion') },
    },
    not: {
      history: { onset: years, conditions: has('herpes-zoster') },
      findings: { higherFunction: signs('confusion') },
    },
  },
  {
    flag: 'status-epilepticus',
    by: 'NICE NG217: a fit after which nobody wakes; sleep after a fit passes',
    raised: { history: { onset: hours, symptoms: has('seizure') }, findings: { higherFunction: signs('coma') } },
    not: { history: { onset: hours, symptoms: has('seizure') }, findings: { higherFunction: signs('drowsiness') } },
  },
  {
    flag: 'unexplained-fall-in-consciousness',
    by: 'NEWS2: new disorientation; of years it is dementia',
    raised: { history: { onset: days }, findings: { higherFunction: signs('disorientation') } },
    not: { history: { onset: years }, findings: { higherFunction: signs('disorientation') } },
  },
  {
    flag: 'neuromuscular-respiratory-failure',
    by: 'a known myasthenia with breath that grows short; with a failing heart it may be that',
    raised: {
      history: { onset: days, symptoms: has('orthopnoea'), conditions: has('myasthenia-gravis') },
    },
    not: {
      history: { onset: days, symptoms: has('orthopnoea'), conditions: has('myasthenia-gravis', 'heart-failure') },
    },
  },
  {
    flag: 'acute-bulbar-weakness',
    by: 'drink that comes back through the nose within days; of years it is old',
    raised: { history: { onset: days, symptoms: has('nasal-regurgitation') } },
    not: { history: { onset: years, symptoms: has('nasal-regurgitation') } },
  },
  {
    flag: 'threatened-myasthenic-crisis',
    by: 'a head that drops with lids that tire; one that is held up does not',
    at: junction,
    raised: {
      history: { onset: days, course: 'progressive' },
      findings: {
        cranialNerves: on('both', 'fatigable-ptosis'),
        power: [{ movement: 'neck-extension', grade: '3' }],
      },
    },
    not: {
      history: { onset: days, course: 'progressive' },
      findings: {
        cranialNerves: on('both', 'fatigable-ptosis'),
        power: [{ movement: 'neck-extension', grade: '5' }],
      },
    },
  },
  {
    flag: 'autonomic-instability-in-neuropathy',
    by: 'a pulse of 130 in legs that fail with lost jerks; one of 80 is quiet',
    at: roots,
    raised: {
      history: { onset: days },
      findings: { power: weakLegsBothSides, reflexes: lostLegJerks },
      results: [measured('heart-rate', 130, '/min')],
    },
    not: {
      history: { onset: days },
      findings: { power: weakLegsBothSides, reflexes: lostLegJerks },
      results: [measured('heart-rate', 80, '/min')],
    },
  },
  {
    flag: 'suspected-spinal-infection',
    by: 'IDSA 2015: tuberculosis, pain of the spine and sweats of weeks; the pain alone is a back',
    raised: {
      history: { onset: weeks, symptoms: has('back-pain', 'night-sweats'), conditions: has('tuberculosis') },
    },
    not: { history: { onset: weeks, symptoms: has('back-pain'), conditions: has('tuberculosis') } },
  },
  {
    flag: 'autonomic-dysreflexia',
    by: 'a broken spine, dead legs, a pounding head and 200 mmHg; at 110 it is a headache',
    at: cord,
    raised: {
      history: { onset: years, symptoms: has('headache'), conditions: has('spinal-fracture') },
      findings: { power: power('both', '0', 'hip-flexion', 'knee-extension') },
      results: [measured('systolic-pressure-supine', 200, 'mm[Hg]')],
    },
    not: {
      history: { onset: years, symptoms: has('headache'), conditions: has('spinal-fracture') },
      findings: { power: power('both', '0', 'hip-flexion', 'knee-extension') },
      results: [measured('systolic-pressure-supine', 110, 'mm[Hg]')],
    },
  },
  {
    flag: 'head-injury-with-deficit',
    by: 'NICE NG232: no memory of what went before the knock; with a whole memory it is an ache',
    raised: {
      history: { onset: hours, conditions: has('head-injury') },
      findings: { higherFunction: signs('amnesia') },
    },
    not: { history: { onset: hours, symptoms: has('headache'), conditions: has('head-injury') } },
  },
  {
    flag: 'drug-induced-hyperthermia-with-rigidity',
    by: 'Hunter criteria: tremor with brisk jerks and sweat on a serotonergic medicine; tremor alone is common',
    raised: {
      history: { onset: days, symptoms: has('tremor'), medications: has('serotonergic-medicine') },
      findings: { autonomic: signs('hyperhidrosis'), reflexes: reflexes('4', 'knee') },
    },
    not: {
      history: { onset: days, symptoms: has('tremor'), medications: has('serotonergic-medicine') },
      findings: { autonomic: signs('hyperhidrosis') },
    },
  },
  {
    flag: 'orbital-or-cavernous-sinus-infection',
    by: 'a whole eye frozen with pain in diabetes; without diabetes it has other causes first',
    at: site('cavernous-sinus', 'cranial-nerve'),
    raised: {
      history: { onset: weeks, symptoms: has('headache'), conditions: has('diabetes-mellitus') },
      findings: { cranialNerves: on('right', 'ophthalmoplegia', 'ptosis') },
    },
    not: {
      history: { onset: weeks, symptoms: has('headache') },
      findings: { cranialNerves: on('right', 'ophthalmoplegia', 'ptosis') },
    },
  },
  {
    flag: 'suspected-poisoning',
    by: 'a first fit on isoniazid; in known epilepsy it is the epilepsy',
    raised: { history: { onset: days, symptoms: has('seizure'), medications: has('isoniazid') } },
    not: {
      history: {
        onset: days,
        symptoms: has('seizure'),
        conditions: has('epilepsy'),
        medications: has('isoniazid'),
      },
    },
  },
  {
    flag: 'acute-limb-ischaemia',
    by: 'a fibrillating heart and a leg that hurts and fails at once; a back that hurts speaks for a root',
    raised: {
      history: { onset: hours, symptoms: has('leg-pain', 'leg-weakness'), conditions: has('atrial-fibrillation') },
    },
    not: {
      history: {
        onset: hours,
        symptoms: has('leg-pain', 'leg-weakness', 'back-pain'),
        conditions: has('atrial-fibrillation'),
      },
    },
  },
  {
    flag: 'severe-inflammatory-myopathy',
    by: 'the skin of dermatomyositis with a breath that grows short; the skin alone can wait',
    raised: {
      history: { onset: weeks, symptoms: has('breathlessness') },
      findings: { inspection: signs('gottron-papules') },
    },
    not: { history: { onset: weeks }, findings: { inspection: signs('gottron-papules') } },
  },
];
