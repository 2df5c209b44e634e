import { site } from '../../support/bedside.ts';
import { days, has, hours, months, on, power, reflexes, type Story, signs, weeks, years } from './story.ts';

const newborn = { ageYears: 0.08 };
const infant = { ageYears: 0.4 };
const growing = { course: 'progressive' };

/** What comes after an operation, a dive or a blow, and what is told before anybody has tried it. */
export const operatedAndUntriedStories: readonly Story[] = [
  {
    flag: 'rapidly-progressive-weakness',
    by: 'anatomy: both obturator nerves after an operation leave the rest of the legs strong',
    at: site('obturator-nerve', 'nerve'),
    raised: {
      history: { onset: days, symptoms: has('leg-weakness'), exposures: has('recent-surgery') },
      findings: { power: power('both', '3', 'hip-adduction') },
    },
    not: {
      history: { onset: days, symptoms: has('leg-weakness'), exposures: has('recent-surgery') },
      findings: {
        power: [
          ...power('both', '3', 'hip-adduction'),
          ...power('both', '5', 'hip-flexion', 'knee-extension', 'ankle-dorsiflexion'),
        ],
      },
    },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'anatomy: after an operation on the spine both ulnar nerves are pressed by the table and the biceps is not',
    raised: {
      history: { onset: days, conditions: has('spinal-surgery'), exposures: has('recent-surgery') },
      findings: {
        power: [...power('both', '3', 'shoulder-abduction'), ...power('both', '5', 'elbow-flexion', 'elbow-extension')],
      },
    },
    not: {
      history: { onset: days, conditions: has('spinal-surgery'), exposures: has('recent-surgery') },
      findings: {
        power: [...power('both', '3', 'finger-abduction'), ...power('both', '5', 'elbow-flexion', 'elbow-extension')],
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG41: arms said to have failed after a blow, and not one that is broken',
    raised: { history: { onset: hours, symptoms: has('arm-weakness'), exposures: has('trauma') } },
    not: {
      history: {
        onset: hours,
        symptoms: has('arm-weakness'),
        conditions: has('limb-fracture-or-dislocation'),
        exposures: has('trauma'),
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'Adams and Victor: a band with tingling feet and the shock of Lhermitte, and not that of zoster',
    raised: {
      history: {
        onset: days,
        ...growing,
        symptoms: has('tight-band', 'paraesthesiae', 'electric-shock-on-neck-flexion'),
      },
    },
    not: {
      history: {
        onset: days,
        ...growing,
        symptoms: has('tight-band', 'paraesthesiae', 'electric-shock-on-neck-flexion', 'rash'),
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'NICE NG234: a neck that hurts and weakness of no limb that is named grow together, and not that of one arm',
    raised: { history: { onset: days, ...growing, symptoms: has('neck-pain', 'weakness', 'paraesthesiae') } },
    not: {
      history: {
        onset: days,
        ...growing,
        symptoms: has('neck-pain', 'weakness', 'paraesthesiae', 'radicular-arm-pain'),
      },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'NICE NG128: a face and half the body that have failed, of which nobody says when, and not over years',
    raised: {
      history: {
        symptoms: [
          { key: 'face-droop', side: 'left', present: true },
          { key: 'weakness', side: 'left', present: true },
        ],
      },
    },
    not: {
      history: {
        onset: years,
        symptoms: [
          { key: 'face-droop', side: 'left', present: true },
          { key: 'weakness', side: 'left', present: true },
        ],
      },
    },
  },
  {
    flag: 'suspected-cauda-equina-syndrome',
    by: 'GIRFT 2023: legs and bladder fail together, and no arm with them',
    raised: { history: { onset: days, symptoms: has('leg-weakness', 'bladder-disturbance') } },
    not: { history: { onset: days, symptoms: has('leg-weakness', 'bladder-disturbance', 'arm-weakness') } },
  },
  {
    flag: 'suspected-metastatic-cord-compression',
    by: 'judged: a bladder that has failed for years is not pressed by a tumour',
    raised: { history: { onset: weeks, symptoms: has('bladder-disturbance'), conditions: has('cancer') } },
    not: { history: { onset: years, symptoms: has('bladder-disturbance'), conditions: has('cancer') } },
  },
  {
    flag: 'compressive-third-nerve-palsy',
    by: 'Fang 2017: a spared pupil reassures where vessels are known to be ill',
    raised: {
      person: { ageYears: 70 },
      history: { onset: days },
      findings: {
        cranialNerves: [
          ...on('left', 'third-nerve-palsy'),
          ...['dilated-pupil', 'unreactive-pupil'].map((sign) => ({ sign, side: 'left', present: false })),
        ],
      },
    },
    not: {
      person: { ageYears: 70 },
      history: { onset: days, conditions: has('diabetes-mellitus') },
      findings: {
        cranialNerves: [
          ...on('left', 'third-nerve-palsy'),
          ...['dilated-pupil', 'unreactive-pupil'].map((sign) => ({ sign, side: 'left', present: false })),
        ],
      },
    },
  },
  {
    flag: 'central-vestibular-syndrome',
    by: 'Edlow 2018: an old person who sways, unless in an eye that beats the head impulse shows the ear',
    raised: {
      person: { ageYears: 70 },
      history: { onset: days, symptoms: has('vertigo') },
      findings: { gait: signs('ataxic') },
    },
    not: {
      person: { ageYears: 70 },
      history: { onset: days, symptoms: has('vertigo') },
      findings: {
        gait: signs('ataxic'),
        cranialNerves: [...on('left', 'abnormal-head-impulse'), ...on('right', 'nystagmus')],
      },
    },
  },
  {
    flag: 'central-vestibular-syndrome',
    by: 'anatomy: hearing and balance fail together in the brainstem, and in zoster of the ear',
    raised: { history: { onset: days, symptoms: has('vertigo', 'hearing-loss', 'ear-pain') } },
    not: {
      history: {
        onset: days,
        symptoms: has('vertigo', 'hearing-loss', 'ear-pain'),
        conditions: has('herpes-zoster'),
      },
    },
  },
  {
    flag: 'central-vestibular-syndrome',
    by: 'anatomy: one narrow pupil beside vertigo is the lateral medulla, unless drops were put in',
    raised: {
      history: { onset: hours, symptoms: has('vertigo') },
      findings: { cranialNerves: on('left', 'small-pupil') },
    },
    not: {
      history: { onset: hours, symptoms: has('vertigo'), medications: has('eye-drops') },
      findings: { cranialNerves: on('left', 'small-pupil') },
    },
  },
  {
    flag: 'acute-bulbar-weakness',
    by: 'anatomy: a cheek that holds the food back is no throat, and a nose through which it runs is',
    raised: {
      history: { onset: days, symptoms: has('face-droop', 'dysphagia', 'nasal-regurgitation') },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    },
    not: {
      history: { onset: days, symptoms: has('face-droop', 'dysphagia') },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    },
  },
  {
    flag: 'necrotising-otitis',
    by: 'anatomy: the tongue beside an infected mastoid, in a healthy child too',
    raised: {
      person: { ageYears: 12 },
      history: { symptoms: has('ear-pain'), conditions: has('sinus-or-ear-infection') },
      findings: { cranialNerves: on('left', 'tongue-deviation') },
    },
    not: {
      person: { ageYears: 12 },
      history: { symptoms: has('ear-pain'), conditions: has('sinus-or-ear-infection') },
      findings: { cranialNerves: on('left', 'facial-weakness') },
    },
  },
  {
    flag: 'suspected-vasculitic-neuropathy',
    by: 'the task force of 2010: late asthma with sinuses and a limb that fails, and not with sinuses alone',
    raised: {
      history: {
        onset: weeks,
        ...growing,
        symptoms: has('radicular-leg-pain', 'leg-weakness', 'paraesthesiae'),
        conditions: has('asthma', 'sinus-or-ear-infection'),
      },
    },
    not: {
      history: {
        onset: weeks,
        ...growing,
        symptoms: has('radicular-leg-pain', 'leg-weakness', 'paraesthesiae'),
        conditions: has('sinus-or-ear-infection'),
      },
    },
  },
  {
    flag: 'severe-inflammatory-myopathy',
    by: 'Allenbach 2020: stairs and a throat that fail within weeks on a statin, and not lids as well',
    raised: {
      history: {
        onset: weeks,
        ...growing,
        symptoms: has('difficulty-with-stairs', 'dysphagia'),
        medications: has('statin'),
      },
    },
    not: {
      history: {
        onset: weeks,
        ...growing,
        symptoms: has('difficulty-with-stairs', 'dysphagia', 'drooping-eyelids'),
        medications: has('statin'),
      },
    },
  },
  {
    flag: 'suspected-botulism',
    by: 'Arnon 2006: suck and gag that fail within days in an infant who does not fit',
    raised: {
      person: infant,
      history: { onset: days, symptoms: has('dysphagia') },
      findings: { cranialNerves: signs('weak-suck-or-cry', 'drooling') },
    },
    not: {
      person: infant,
      history: { onset: days, symptoms: has('dysphagia', 'seizure') },
      findings: { cranialNerves: signs('weak-suck-or-cry', 'drooling') },
    },
  },
  {
    flag: 'newborn-with-neurological-signs',
    by: 'judged: what an infant of two months has shown since the first weeks is a newborn’s',
    raised: {
      person: { ageYears: 0.17 },
      history: { onset: { pace: 'chronic', durationDays: 60 } },
      findings: { inspection: signs('frog-leg-posture') },
    },
    not: {
      person: { ageYears: 0.17 },
      history: { onset: { pace: 'acute', durationDays: 5 } },
      findings: { inspection: signs('frog-leg-posture') },
    },
  },
  {
    flag: 'newborn-with-neurological-signs',
    by: 'an age in hundredths of a year is rounded: four weeks are 0.08',
    raised: { person: newborn, history: { onset: days }, findings: { inspection: signs('frog-leg-posture') } },
    not: { person: infant, history: { onset: days }, findings: { inspection: signs('frog-leg-posture') } },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'Adams and Victor: want of thiamine clouds the mind and stills the eyes, and leaves the toes down',
    raised: {
      history: { onset: { pace: 'acute', durationDays: 6 } },
      findings: {
        higherFunction: signs('disorientation'),
        gait: signs('ataxic'),
        plantars: [{ side: 'both', response: 'extensor' }],
      },
    },
    not: {
      history: { onset: { pace: 'acute', durationDays: 6 } },
      findings: {
        higherFunction: signs('disorientation'),
        gait: signs('ataxic'),
        plantars: [{ side: 'both', response: 'flexor' }],
      },
    },
  },
  {
    flag: 'autonomic-dysreflexia',
    by: 'the review of 2005: legs that are stiff below a broken spine need no grade of power',
    raised: {
      history: { onset: hours, symptoms: has('headache'), conditions: has('spinal-fracture') },
      findings: {
        autonomic: signs('paroxysmal-hypertension'),
        tone: [{ site: 'lower-limb', side: 'both', tone: 'spastic' }],
      },
    },
    not: {
      history: { onset: hours, symptoms: has('headache') },
      findings: {
        autonomic: signs('paroxysmal-hypertension'),
        tone: [{ site: 'lower-limb', side: 'both', tone: 'spastic' }],
      },
    },
  },
  {
    flag: 'progressive-cord-signs',
    by: 'NICE NG127: finger-flexor signs of both hands name the neck, whatever the back tells',
    raised: {
      history: { onset: months, ...growing, symptoms: has('back-pain', 'unsteadiness', 'numbness') },
      findings: {
        specialTests: [{ test: 'hoffmann', side: 'both', result: 'positive' }],
        reflexes: reflexes('3', 'biceps', 'triceps'),
      },
    },
    not: {
      history: { onset: months, ...growing, symptoms: has('back-pain', 'unsteadiness', 'numbness') },
      findings: { reflexes: reflexes('3', 'biceps', 'triceps') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'judged: weakness that climbs from the legs to the arms within hours is of no artery of the brain',
    raised: { history: { onset: hours, symptoms: has('arm-weakness') } },
    not: { history: { onset: hours, symptoms: has('arm-weakness', 'leg-weakness', 'ascending-weakness') } },
  },
];
