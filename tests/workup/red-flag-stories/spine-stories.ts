import { site, weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, months, power, reflexes, type Story, signs, weeks, years } from './story.ts';

const extensorBoth = [{ side: 'both', response: 'extensor' }];
const flexorBoth = [{ side: 'both', response: 'flexor' }];
const numbFeet = [{ modality: 'pinprick', site: 'dorsum-of-foot', side: 'both', result: 'reduced' }];
const levelAt = (segment: string) => [{ modality: 'pinprick', levelBelow: segment, side: 'both', result: 'reduced' }];
const weakGirdles = [
  { movement: 'hip-flexion', side: 'both', grade: '4' },
  { movement: 'shoulder-abduction', side: 'both', grade: '4' },
];
const lostPosition = (...where: readonly string[]) =>
  where.map((place) => ({ modality: 'joint-position', site: place, side: 'both', result: 'absent' }));

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
    flag: 'suspected-metastatic-cord-compression',
    by: 'hips and shoulders that fail slowly and alone are of muscle or junction in those with a cancer too',
    raised: {
      history: { onset: months, symptoms: has('weakness', 'numbness'), conditions: has('cancer') },
      findings: { power: weakGirdles },
    },
    not: {
      history: { onset: months, symptoms: has('weakness'), conditions: has('cancer') },
      findings: { power: weakGirdles },
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
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG234: legs that fail in weeks under a painful spine are imaged, flexor plantars or not; weak arms and lost jerks are of nerves',
    raised: {
      history: { onset: weeks, course: 'progressive', symptoms: has('back-pain', 'leg-weakness') },
      findings: {
        power: power('both', '3', 'hip-flexion', 'knee-extension'),
        reflexes: reflexes('1', 'knee', 'ankle'),
        plantars: flexorBoth,
      },
    },
    not: {
      history: { onset: weeks, course: 'progressive', symptoms: has('back-pain', 'leg-weakness', 'arm-weakness') },
      findings: {
        power: power('both', '3', 'hip-flexion', 'knee-extension'),
        reflexes: reflexes('0', 'knee', 'ankle', 'biceps'),
        plantars: flexorBoth,
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG127: months that end in legs that cannot be lifted are as pressing as days; what came years ago is not',
    raised: {
      history: { onset: months, course: 'progressive', symptoms: has('back-pain', 'leg-weakness') },
      findings: { power: power('both', '0', 'hip-flexion', 'ankle-dorsiflexion') },
    },
    not: {
      history: { onset: years, course: 'static', symptoms: has('back-pain', 'leg-weakness') },
      findings: { power: power('both', '0', 'hip-flexion', 'ankle-dorsiflexion') },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'weak legs with a bladder that stays full are taken for new where nobody has dated them, and not where they rest',
    at: site('spinal-cord-transverse', 'cord'),
    raised: {
      history: { symptoms: has('leg-weakness') },
      findings: { power: power('both', '4', 'hip-flexion'), sphincters: signs('urinary-retention') },
    },
    not: {
      history: { course: 'static', symptoms: has('leg-weakness') },
      findings: { power: power('both', '4', 'hip-flexion'), sphincters: signs('urinary-retention') },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'position lost in hands and feet within weeks under a neck that hurts; with all jerks lost it is of nerves',
    at: site('spinal-cord-posterior', 'cord'),
    raised: {
      history: { onset: weeks, course: 'progressive', symptoms: has('neck-pain', 'numbness') },
      findings: { sensation: lostPosition('toes', 'fingertips') },
    },
    not: {
      history: { onset: weeks, course: 'progressive', symptoms: has('neck-pain', 'numbness') },
      findings: { sensation: lostPosition('toes', 'fingertips'), reflexes: reflexes('0', 'knee', 'ankle', 'biceps') },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'position lost in hands and feet that goes on for months, where the cord is a likely place',
    at: site('spinal-cord-posterior', 'cord'),
    raised: {
      history: { onset: months, course: 'progressive', symptoms: has('numbness') },
      findings: { sensation: lostPosition('toes', 'fingertips') },
    },
    not: {
      history: { onset: months, course: 'static', symptoms: has('numbness') },
      findings: { sensation: lostPosition('toes', 'fingertips') },
    },
  },
  {
    flag: 'suspected-cauda-equina-syndrome',
    by: 'GIRFT 2023: a numb saddle that nobody has dated is fresh until shown otherwise, one that has rested is not',
    raised: { findings: { sphincters: signs('saddle-anaesthesia') } },
    not: { history: { course: 'static' }, findings: { sphincters: signs('saddle-anaesthesia') } },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'NICE NG127: a level on the trunk that goes on for months needs no further sign, one that rests for years is old',
    raised: { history: { onset: months, course: 'progressive' }, findings: { sensation: levelAt('T8') } },
    not: { history: { onset: years, course: 'static' }, findings: { sensation: levelAt('T8') } },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'NICE NG127: thighs that cannot be lifted after months, where the cord is the place; weak ones may be of muscle',
    at: site('spinal-cord-transverse', 'cord'),
    raised: {
      history: { onset: months, course: 'progressive' },
      findings: { power: power('both', '1', 'hip-flexion', 'knee-extension') },
    },
    not: {
      history: { onset: months, course: 'progressive' },
      findings: { power: power('both', '4', 'hip-flexion', 'knee-extension') },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG127: signs of the tracts with weak legs and a failing bladder, undated; unchanged ones are old',
    raised: {
      history: { symptoms: has('bladder-disturbance') },
      findings: { power: weakLegsBothSides, plantars: extensorBoth },
    },
    not: {
      history: { course: 'static', symptoms: has('bladder-disturbance') },
      findings: { power: weakLegsBothSides, plantars: extensorBoth },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'both arms that fail after a fall in later life (Adams and Victor, central cord injury); one arm is a nerve or the plexus',
    raised: {
      person: { ageYears: 72 },
      history: { onset: days, symptoms: has('arm-weakness'), exposures: has('trauma') },
    },
    not: {
      person: { ageYears: 72 },
      history: {
        onset: days,
        symptoms: [{ key: 'arm-weakness', side: 'left', present: true }],
        exposures: has('trauma'),
      },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'fingers of both hands that answer a flick, hands that tingle and a walk that sways (NICE NG127); one hand is met in health',
    raised: {
      history: { onset: months, symptoms: has('paraesthesiae', 'unsteadiness') },
      findings: { specialTests: [{ test: 'hoffmann', side: 'both', result: 'positive' }] },
    },
    not: {
      history: { onset: months, symptoms: has('paraesthesiae', 'unsteadiness') },
      findings: { specialTests: [{ test: 'hoffmann', side: 'left', result: 'positive' }] },
    },
    at: site('spinal-cord-transverse', 'cord', 0.4),
  },
];
