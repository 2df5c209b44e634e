import { site, weakLegsBothSides } from '../../support/bedside.ts';
import { days, has, hours, months, on, power, reflexes, type Story, signs, weeks, years } from './story.ts';

const extensorBoth = [{ side: 'both', response: 'extensor' }];
const fourWeakLimbs = [...weakLegsBothSides, ...power('both', '3', 'finger-abduction')];
const brain = site('thalamus', 'hemisphere');

/** Dangers that are told without a date, beside kept reflexes, on one side alone; and slow diseases that resemble them. */
export const undatedAndOneSidedStories: readonly Story[] = [
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'a half of the field that is lost slowly is pressed on, though nobody has dated it (NICE NG127); a mind that fails slowly wastes',
    at: site('cortex-occipital', 'hemisphere'),
    raised: {
      history: { onset: { pace: 'chronic' }, course: 'progressive' },
      findings: { cranialNerves: [{ sign: 'homonymous-hemianopia', side: 'left', present: true }] },
    },
    not: {
      history: { onset: { pace: 'chronic' }, course: 'progressive' },
      findings: { higherFunction: signs('apathy', 'executive-dysfunction') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'a flap of one side is a lesion of the brain, one of both sides a failing metabolism (Adams and Victor, asterixis)',
    raised: {
      history: { onset: hours },
      findings: { involuntaryMovements: [{ sign: 'asterixis', side: 'right', present: true }] },
    },
    not: {
      history: { onset: hours },
      findings: { involuntaryMovements: [{ sign: 'asterixis', side: 'both', present: true }] },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'hemiballism that comes at once is vascular; one that came over months is not',
    raised: {
      history: { onset: { pace: 'hyperacute', durationDays: 17 }, course: 'progressive' },
      findings: { involuntaryMovements: [{ sign: 'hemiballism', side: 'left', present: true }] },
    },
    not: {
      history: { onset: months, course: 'progressive' },
      findings: { involuntaryMovements: [{ sign: 'hemiballism', side: 'left', present: true }] },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'eyes that overshoot come from the cerebellum, though spinning and nystagmus may be missing',
    raised: {
      history: { onset: { pace: 'acute' }, symptoms: has('unsteadiness') },
      findings: { cranialNerves: signs('saccadic-dysmetria') },
    },
    not: { history: { onset: { pace: 'acute' }, symptoms: has('unsteadiness') } },
  },
  {
    flag: 'suspected-stroke',
    by: 'an extensor plantar of one side within a day, where the brain may be the place; of both sides it may be the cord',
    at: brain,
    raised: {
      history: { onset: { pace: 'acute', durationDays: 2 } },
      findings: { plantars: [{ side: 'left', response: 'extensor' }] },
    },
    not: {
      history: { onset: weeks },
      findings: { plantars: [{ side: 'left', response: 'extensor' }] },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'one leg said to have failed at once, before anybody has tested it; with pain of the leg another place',
    raised: {
      history: { onset: hours, symptoms: [{ key: 'leg-weakness', present: true, side: 'left' }] },
    },
    not: {
      history: {
        onset: hours,
        symptoms: [{ key: 'leg-weakness', present: true, side: 'left' }, ...has('leg-pain')],
      },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'guidance asks for a loss of function that progresses; of a chronic one it must be said',
    at: site('cortex-frontal', 'hemisphere'),
    raised: {
      history: { onset: months, course: 'progressive', symptoms: has('cognitive-change') },
      findings: { cranialNerves: on('left', 'homonymous-hemianopia') },
    },
    not: {
      history: { onset: months, symptoms: has('cognitive-change') },
      findings: { cranialNerves: on('left', 'homonymous-hemianopia') },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'a hemisphere that fails over months is pressed on, with headache or without; over years it is a scar or a degeneration',
    at: site('cortex-frontal', 'hemisphere'),
    raised: {
      history: { onset: { ...months, durationDays: 240 }, course: 'progressive' },
      findings: { power: [{ movement: 'elbow-extension', side: 'right', grade: '4' }] },
    },
    not: {
      history: { onset: { ...months, durationDays: 2400 }, course: 'progressive' },
      findings: { power: [{ movement: 'elbow-extension', side: 'right', grade: '4' }] },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'what takes both outer fields over weeks presses on the chiasm',
    at: site('optic-chiasm', 'visual-pathway'),
    raised: {
      history: { onset: weeks, course: 'progressive' },
      findings: { cranialNerves: [{ sign: 'bitemporal-hemianopia', present: true }] },
    },
    not: {
      history: { onset: weeks, course: 'improving' },
      findings: { cranialNerves: [{ sign: 'bitemporal-hemianopia', present: true }] },
    },
  },
  {
    flag: 'suspected-cerebral-venous-thrombosis',
    by: 'ESO 2017: a headache of a new kind on an oestrogen, without any sign; one that mends is not',
    raised: {
      history: {
        onset: { durationDays: 7 },
        symptoms: has('new-headache'),
        medications: has('hormonal-contraceptive'),
      },
    },
    not: {
      history: {
        onset: { durationDays: 7 },
        course: 'improving',
        symptoms: has('new-headache'),
        medications: has('hormonal-contraceptive'),
      },
    },
  },
  {
    flag: 'suspected-cauda-equina-syndrome',
    by: 'GIRFT 2023: a saddle and a bladder that fail are fresh, though the back has hurt for months',
    raised: {
      history: {
        onset: { pace: 'subacute', durationDays: 120 },
        course: 'progressive',
        symptoms: has('back-pain', 'saddle-numbness', 'bladder-disturbance'),
      },
    },
    not: {
      history: {
        onset: { pace: 'chronic', durationDays: 120 },
        course: 'static',
        symptoms: has('back-pain', 'saddle-numbness', 'bladder-disturbance'),
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'an injury dates what nobody has dated',
    raised: { history: { exposures: has('trauma') }, findings: { power: fourWeakLimbs, plantars: extensorBoth } },
    not: { findings: { power: fourWeakLimbs, plantars: extensorBoth } },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'lost reflexes of the legs below kept ones of the arms, with a tender spine, are spinal shock; lost all over, a neuropathy',
    raised: {
      history: { onset: { pace: 'acute' }, symptoms: has('neck-pain') },
      findings: {
        inspection: signs('spinal-tenderness'),
        power: fourWeakLimbs,
        reflexes: [...reflexes('2', 'biceps', 'triceps'), ...reflexes('0', 'knee', 'ankle')],
      },
    },
    not: {
      history: { onset: { pace: 'acute' }, symptoms: has('neck-pain') },
      findings: {
        inspection: signs('spinal-tenderness'),
        power: fourWeakLimbs,
        reflexes: reflexes('0', 'biceps', 'triceps', 'knee', 'ankle'),
      },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'NICE NG127: what is said to grow counts where nobody has said since when',
    raised: { history: { course: 'progressive' }, findings: { power: weakLegsBothSides, plantars: extensorBoth } },
    not: { history: { course: 'static' }, findings: { power: weakLegsBothSides, plantars: extensorBoth } },
  },
  {
    flag: 'suspected-metastatic-cord-compression',
    by: 'legs that have weakened for years without pain or tract are no metastasis',
    raised: { history: { onset: months, conditions: has('cancer') }, findings: { power: weakLegsBothSides } },
    not: { history: { onset: years, conditions: has('cancer') }, findings: { power: weakLegsBothSides } },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'Case reports of iliopsoas haematoma (Postgrad Med J 2002;78:630): groin or thigh pain and femoral palsy on an anticoagulant',
    raised: {
      history: { onset: days, symptoms: has('leg-pain'), medications: has('anticoagulant') },
      findings: { power: power('left', '3', 'hip-flexion', 'knee-extension') },
    },
    not: {
      history: { onset: days, symptoms: has('leg-pain') },
      findings: { power: power('left', '3', 'hip-flexion', 'knee-extension') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'NICE NG127: a baby who has been floppy for weeks or months and is weak, as in feeding',
    raised: {
      person: { ageYears: 0.4 },
      history: { onset: { pace: 'chronic', durationDays: 120 }, symptoms: has('dysphagia') },
      findings: { tone: [{ site: 'lower-limb', side: 'both', tone: 'reduced' }] },
    },
    not: {
      person: { ageYears: 0.4 },
      history: { onset: { pace: 'chronic', durationDays: 120 } },
      findings: { tone: [{ site: 'lower-limb', side: 'both', tone: 'reduced' }] },
    },
  },
  {
    flag: 'threatened-myasthenic-crisis',
    by: 'lids and swallowing that have failed for years without tiring are a dystrophy, and no crisis',
    at: site('postsynaptic-junction', 'junction'),
    raised: {
      history: { onset: months, course: 'progressive', symptoms: has('dysphagia') },
      findings: { cranialNerves: on('both', 'ptosis') },
    },
    not: {
      history: { onset: years, course: 'progressive', symptoms: has('dysphagia') },
      findings: { cranialNerves: on('both', 'ptosis') },
    },
  },
  {
    flag: 'slow-weakness-with-swallowing-trouble',
    by: 'NICE NG127; an arm that is called weak and is slow and rigid is that of parkinsonism',
    raised: { history: { onset: months, symptoms: has('arm-weakness', 'dysphagia') } },
    not: {
      history: { onset: months, symptoms: has('arm-weakness', 'dysphagia') },
      findings: { involuntaryMovements: [{ sign: 'bradykinesia', side: 'left', present: true }] },
    },
  },
];
