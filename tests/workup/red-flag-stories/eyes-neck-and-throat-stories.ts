import { site, weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, measured, months, on, power, reflexes, type Story, signs, weeks, years } from './story.ts';

const cord = site('spinal-cord-transverse', 'cord', 0.8, 'C6');
const brain = site('cortex-middle-cerebral', 'hemisphere');
const undated = { person: { ageYears: 66 } };
const growing = { onset: months, course: 'progressive' };
const bothHandsThin = [{ sign: 'wasting', site: 'hand', side: 'both', present: true }];

/** Dangers of which nobody gives a date, or that go by another word; and what is old or is explained otherwise. */
export const eyesNeckAndThroatStories: readonly Story[] = [
  {
    flag: 'suspected-stroke',
    by: 'a limb lost to the brain without a date, where arteries are at risk; a spastic one is old (NICE NG128)',
    at: brain,
    raised: { ...undated, findings: { power: power('right', '4', 'shoulder-abduction', 'finger-abduction') } },
    not: {
      ...undated,
      findings: {
        power: power('right', '4', 'shoulder-abduction', 'finger-abduction'),
        tone: [{ site: 'upper-limb', side: 'right', tone: 'spastic' }],
      },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'a changed person with a headache that nobody has dated; migraine is known (NICE NG127)',
    at: brain,
    raised: { history: { symptoms: has('headache') }, findings: { higherFunction: signs('apathy') } },
    not: {
      history: { symptoms: has('headache'), conditions: has('migraine') },
      findings: { higherFunction: signs('apathy') },
    },
  },
  {
    flag: 'central-vestibular-syndrome',
    by: 'dizziness with eyes that beat vertically; without them it may be anything (Shah 2023)',
    raised: {
      history: { onset: days, symptoms: has('dizziness') },
      findings: { cranialNerves: signs('vertical-nystagmus') },
    },
    not: { history: { onset: days, symptoms: has('dizziness') } },
  },
  {
    flag: 'compressive-third-nerve-palsy',
    by: 'unequal pupils, the abnormal one on the side of the palsy (Fang 2017)',
    raised: {
      person: { ageYears: 60 },
      history: { onset: days, conditions: has('hypertension') },
      findings: { cranialNerves: on('left', 'third-nerve-palsy', 'anisocoria') },
    },
    not: {
      person: { ageYears: 60 },
      history: { onset: days, conditions: has('hypertension') },
      findings: { cranialNerves: on('left', 'third-nerve-palsy') },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'arms that wither above brisk legs; brisk legs alone are met in health (NICE NG127)',
    at: cord,
    raised: {
      history: { ...growing, symptoms: has('numbness') },
      findings: { inspection: bothHandsThin, reflexes: reflexes('3', 'knee') },
    },
    not: { history: { ...growing, symptoms: has('numbness') }, findings: { reflexes: reflexes('3', 'knee') } },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'pin lost over both arms that have withered, and not over the legs (Adams and Victor, syringomyelia)',
    at: cord,
    raised: {
      history: { ...growing, symptoms: has('clumsiness') },
      findings: {
        inspection: bothHandsThin,
        sensation: [{ modality: 'pinprick', dermatome: 'C6', side: 'both', result: 'reduced' }],
      },
    },
    not: {
      history: { ...growing, symptoms: has('clumsiness') },
      findings: { sensation: [{ modality: 'pinprick', dermatome: 'C6', side: 'both', result: 'reduced' }] },
    },
  },
  {
    flag: 'slow-weakness-with-swallowing-trouble',
    by: 'a tongue that withers on both sides with slurred speech; on one side it is its nerve (NICE NG127)',
    raised: {
      history: { ...growing, symptoms: has('slurred-speech') },
      findings: { cranialNerves: on('both', 'tongue-wasting') },
    },
    not: {
      history: { ...growing, symptoms: has('slurred-speech') },
      findings: { cranialNerves: on('left', 'tongue-wasting') },
    },
  },
  {
    flag: 'threatened-myasthenic-crisis',
    by: 'a known myasthenia whose breath grows short, undated; one of years that rests (Narayanaswami 2021)',
    raised: { history: { conditions: has('myasthenia-gravis'), symptoms: has('breathlessness') } },
    not: {
      history: {
        onset: years,
        course: 'static',
        conditions: has('myasthenia-gravis'),
        symptoms: has('breathlessness'),
      },
    },
  },
  {
    flag: 'severe-inflammatory-myopathy',
    by: 'lids and limbs under a checkpoint inhibitor; with lost jerks it is of the nerves (Johnson 2018)',
    raised: {
      history: { onset: weeks, symptoms: has('muscle-pain'), medications: has('immune-checkpoint-inhibitor') },
      findings: { cranialNerves: on('both', 'ptosis') },
    },
    not: {
      history: { onset: weeks, symptoms: has('weakness'), medications: has('immune-checkpoint-inhibitor') },
      findings: { cranialNerves: on('both', 'ptosis'), reflexes: reflexes('0', 'knee', 'ankle') },
    },
  },
  {
    flag: 'suspected-eclampsia',
    by: 'a headache of pregnancy with a painful belly and no pressure taken; a normal one was taken (NICE NG133)',
    raised: { history: { onset: days, conditions: has('pregnancy'), symptoms: has('headache', 'abdominal-pain') } },
    not: {
      history: { onset: days, conditions: has('pregnancy'), symptoms: has('headache', 'abdominal-pain') },
      results: [measured('systolic-pressure-supine', 112, 'mm[Hg]')],
    },
  },
  {
    flag: 'suspected-pituitary-apoplexy',
    by: 'eyes that do not move with a headache and a low sodium (Rajasekaran 2011)',
    raised: {
      history: { onset: days, symptoms: has('headache') },
      findings: { cranialNerves: on('left', 'ophthalmoplegia') },
      results: [measured('sodium', 120, 'mmol/L')],
    },
    not: {
      history: { onset: days, symptoms: has('headache') },
      findings: { cranialNerves: on('left', 'ophthalmoplegia') },
      results: [measured('sodium', 138, 'mmol/L')],
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'hips that weaken within weeks; in a family with thin feet over years (NICE NG127)',
    raised: {
      person: { ageYears: 5 },
      history: { onset: weeks, course: 'progressive' },
      findings: { gait: signs('gowers-sign') },
    },
    not: {
      person: { ageYears: 9 },
      history: { onset: years, course: 'progressive', family: has('high-arched-feet') },
      findings: { power: weakLegsBothSides },
    },
  },
];
