import { weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, months, type Story, signs, weeks, years } from './story.ts';

const extensorBoth = [{ side: 'both', response: 'extensor' }];
const flexorBoth = [{ side: 'both', response: 'flexor' }];
const numbFeet = [{ modality: 'pinprick', site: 'dorsum-of-foot', side: 'both', result: 'reduced' }];
const levelAt = (segment: string) => [{ modality: 'pinprick', levelBelow: segment, side: 'both', result: 'reduced' }];

export const spineStories: readonly Story[] = [
  {
    flag: 'suspected-cauda-equina-syndrome',
    by: 'GIRFT 2023: altered saddle sensation with back or leg pain',
    raised: { history: { onset: days, symptoms: has('back-pain', 'saddle-numbness') } },
    not: {
      history: {
        onset: days,
        symptoms: [...has('back-pain', 'radicular-leg-pain'), { key: 'saddle-numbness', present: false }],
      },
    },
  },
  {
    flag: 'threatened-cauda-equina',
    by: 'GIRFT 2023: pain in both legs warns of it',
    raised: { history: { onset: days, symptoms: has('back-pain', 'bilateral-leg-pain') } },
    not: { history: { onset: days, symptoms: has('back-pain', 'radicular-leg-pain') } },
  },
  {
    flag: 'threatened-cauda-equina',
    by: 'roots of the legs do not weaken hands: a painful back with numb feet and hands is a neuropathy or a cord',
    raised: { history: { onset: days, symptoms: has('back-pain') }, findings: { sensation: numbFeet } },
    not: {
      history: { onset: days, symptoms: has('back-pain') },
      findings: {
        sensation: numbFeet,
        power: [{ movement: 'finger-extension', side: 'both', grade: '4' }],
        reflexes: [{ reflex: 'biceps', side: 'both', grade: '0' }],
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG234: a level with weak legs within weeks is imaged at once',
    raised: {
      history: { onset: days, course: 'progressive' },
      findings: { power: weakLegsBothSides, plantars: extensorBoth, sensation: levelAt('T8') },
    },
    not: {
      history: { onset: years, course: 'progressive' },
      findings: { power: weakLegsBothSides, plantars: extensorBoth, sensation: levelAt('T8') },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'NICE NG127: cord signs that grow over weeks to months',
    raised: {
      history: { onset: months, course: 'progressive' },
      findings: { power: weakLegsBothSides, plantars: extensorBoth },
    },
    not: {
      history: { onset: months, course: 'progressive' },
      findings: { power: weakLegsBothSides, plantars: flexorBoth },
    },
  },
  {
    flag: 'suspected-metastatic-cord-compression',
    by: 'NICE NG234: cancer with neurological signs of the spine',
    raised: {
      history: { onset: days, symptoms: has('thoracic-back-pain'), conditions: has('cancer') },
      findings: { power: weakLegsBothSides },
    },
    not: {
      history: { onset: days, symptoms: has('thoracic-back-pain') },
      findings: { power: weakLegsBothSides },
    },
  },
  {
    flag: 'suspected-spinal-metastases',
    by: 'NICE NG234: cancer with pain of the spine at night or on straining',
    raised: { history: { onset: weeks, symptoms: has('night-spinal-pain'), conditions: has('cancer') } },
    not: { history: { onset: weeks, symptoms: has('night-spinal-pain') } },
  },
  {
    flag: 'suspected-spinal-infection',
    by: 'Adams and Victor: pain of the spine, fever and a reason for bacteria; an old pain without fever is a back',
    raised: {
      history: { onset: days, symptoms: has('back-pain', 'fever'), exposures: has('injecting-drug-use') },
    },
    not: {
      history: { onset: { pace: 'chronic' }, symptoms: has('back-pain'), exposures: has('injecting-drug-use') },
    },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'Adams and Victor: pain of the spine and weak legs on an anticoagulant',
    raised: {
      history: { onset: days, symptoms: has('back-pain', 'leg-weakness'), medications: has('anticoagulant') },
    },
    not: { history: { onset: days, symptoms: has('back-pain', 'leg-weakness') } },
  },
  {
    flag: 'autonomic-dysreflexia',
    by: 'Bycroft 2005: a sudden rise of pressure below which the cord is cut off',
    raised: {
      history: { onset: years },
      findings: {
        autonomic: signs('paroxysmal-hypertension'),
        power: weakLegsBothSides,
        plantars: extensorBoth,
        sensation: levelAt('T4'),
      },
    },
    not: { history: { onset: years }, findings: { autonomic: signs('paroxysmal-hypertension') } },
  },
];
