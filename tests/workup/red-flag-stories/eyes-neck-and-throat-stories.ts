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
  {
    flag: 'potassium-paralysis',
    by: 'legs that fail within a day in one who has had such attacks, before potassium is known (Adams and Victor)',
    raised: {
      history: { onset: { pace: 'acute', durationDays: 1 }, symptoms: has('similar-attacks-before') },
      findings: { power: weakLegsBothSides },
    },
    not: { history: { onset: { pace: 'acute', durationDays: 1 } }, findings: { power: weakLegsBothSides } },
  },
  {
    flag: 'head-injury-with-deficit',
    by: 'eyes that beat after a knock; on one change of position alone they are those of loosened ear stones (NICE NG232)',
    raised: {
      history: { onset: days, conditions: has('head-injury') },
      findings: { cranialNerves: signs('torsional-nystagmus') },
    },
    not: {
      history: { onset: days, conditions: has('head-injury') },
      findings: {
        cranialNerves: signs('torsional-nystagmus'),
        specialTests: [{ test: 'dix-hallpike', side: 'left', result: 'positive' }],
      },
    },
  },
  {
    flag: 'suspected-metastatic-cord-compression',
    by: 'a level on both sides in cancer; a strip of one side is of the nerves of the trunk (NICE NG234)',
    raised: {
      history: { onset: weeks, conditions: has('cancer') },
      findings: { sensation: [{ modality: 'light-touch', dermatome: 'T4', side: 'both', result: 'reduced' }] },
    },
    not: {
      history: { onset: weeks, conditions: has('cancer') },
      findings: { sensation: [{ modality: 'light-touch', dermatome: 'T4', side: 'left', result: 'reduced' }] },
    },
  },
  {
    flag: 'acute-ascending-weakness',
    by: 'hips weak within weeks with low jerks; sore ones where muscle is the place do not climb (EAN/PNS 2023)',
    at: site('proximal-myopathy', 'muscle', 0.9),
    raised: {
      history: { onset: { pace: 'subacute', durationDays: 14 } },
      findings: { power: weakLegsBothSides, reflexes: reflexes('1', 'ankle') },
    },
    not: {
      history: { onset: { pace: 'subacute', durationDays: 14 }, symptoms: has('muscle-pain') },
      findings: { power: weakLegsBothSides, reflexes: reflexes('1', 'ankle') },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'legs that weaken under a walk that sways, with jerks untried; jerks that were tried and are normal (NICE NG127)',
    at: cord,
    raised: {
      history: growing,
      findings: { power: weakLegsBothSides, gait: signs('ataxic') },
    },
    not: {
      history: growing,
      findings: { power: weakLegsBothSides, gait: signs('ataxic'), reflexes: reflexes('2', 'knee') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'a child who sways with headache and vomiting, undated; one with known migraine (HeadSmart 2017)',
    raised: {
      person: { ageYears: 6 },
      history: { symptoms: has('headache', 'vomiting', 'unsteadiness') },
      findings: { gait: signs('ataxic') },
    },
    not: {
      person: { ageYears: 6 },
      history: { symptoms: has('headache', 'vomiting', 'unsteadiness'), conditions: has('migraine') },
      findings: { gait: signs('ataxic') },
    },
  },
  {
    flag: 'compressive-third-nerve-palsy',
    by: 'common practice: a lid that droops with double vision and a fresh headache is imaged before anybody has named the nerve',
    raised: { history: { onset: days, symptoms: has('headache', 'diplopia', 'drooping-eyelids') } },
    not: { history: { onset: days, symptoms: has('headache', 'diplopia', 'drooping-eyelids', 'fatigable-weakness') } },
  },
  {
    flag: 'central-vestibular-syndrome',
    by: 'common practice: a limb that fails beside vertigo is central, though it comes on turning over',
    raised: {
      history: { onset: days, symptoms: has('positional-vertigo') },
      findings: {
        specialTests: [
          { test: 'dix-hallpike', side: 'right', result: 'positive' },
          { test: 'pronator-drift', side: 'right', result: 'positive' },
        ],
      },
    },
    not: {
      history: { onset: days, symptoms: has('positional-vertigo') },
      findings: { specialTests: [{ test: 'dix-hallpike', side: 'right', result: 'positive' }] },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'common practice: a child who sways on both sides over days has an inflamed cerebellum; a stroke of childhood shows on one half',
    at: site('cerebellar-hemisphere', 'cerebellum'),
    raised: {
      person: { ageYears: 3 },
      history: { onset: days, symptoms: has('preceding-infection') },
      findings: { gait: signs('ataxic'), coordination: [{ test: 'finger-nose', side: 'left', result: 'impaired' }] },
    },
    not: {
      person: { ageYears: 3 },
      history: { onset: days, symptoms: has('preceding-infection') },
      findings: { gait: signs('ataxic'), coordination: [{ test: 'finger-nose', side: 'both', result: 'impaired' }] },
    },
  },
];
