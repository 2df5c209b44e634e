import { site } from '../../support/bedside.ts';
import { days, has, hours, months, power, type Story, weeks } from './story.ts';

const today = { pace: 'acute', durationDays: 1 };
const headAndArm = {
  symptoms: [{ key: 'arm-weakness', side: 'left', present: true }, ...has('headache')],
  course: 'progressive',
};
const deadArm = [
  ...power('left', '0', 'shoulder-abduction', 'elbow-flexion'),
  ...power('left', '1', 'elbow-extension', 'wrist-extension', 'finger-flexion'),
];
const feverAndFit = { onset: hours, symptoms: has('seizure', 'fever') };

/** Attacks, limbs that were nursed in one posture, and half a brain that fails, as they are told; beside the harmless picture nearest to each. */
export const attacksAndTendedLimbsStories: readonly Story[] = [
  {
    flag: 'rapidly-progressive-weakness',
    by: 'an attack of weak legs and arms today, like others before (Amato and Russell, periodic paralyses); one that has passed is none',
    raised: { history: { onset: today, symptoms: has('weakness', 'similar-attacks-before') } },
    not: { history: { onset: today, symptoms: has('weakness', 'similar-attacks-before', 'resolved-deficit') } },
    at: site('proximal-myopathy', 'muscle'),
  },
  {
    flag: 'rapidly-progressive-weakness',
    by: 'the same found on both sides (Amato and Russell, periodic paralyses); what already mends can wait',
    raised: {
      history: { onset: hours, symptoms: has('episodic-weakness') },
      findings: { power: power('both', '3', 'hip-flexion', 'knee-extension') },
    },
    not: {
      history: { onset: hours, course: 'improving', symptoms: has('episodic-weakness') },
      findings: { power: power('both', '3', 'hip-flexion', 'knee-extension') },
    },
    at: site('proximal-myopathy', 'muscle'),
  },
  {
    flag: 'compartment-syndrome',
    by: 'a dead, numb arm after an overdose (common practice); one that was nursed prone has a pulled plexus',
    raised: {
      history: {
        onset: today,
        symptoms: has('numbness'),
        exposures: has('prolonged-immobility', 'injecting-drug-use'),
      },
      findings: { power: deadArm },
    },
    not: {
      history: { onset: today, symptoms: has('numbness'), exposures: has('prolonged-immobility', 'external-pressure') },
      findings: { power: deadArm },
    },
    at: site('brachial-plexus', 'plexus'),
  },
  {
    flag: 'rhabdomyolysis',
    by: 'a dead arm after a night on the floor (common practice); one that was nursed prone has a pulled plexus',
    raised: {
      history: { onset: today, symptoms: has('loss-of-consciousness'), exposures: has('prolonged-immobility') },
      findings: { power: deadArm },
    },
    not: { history: { onset: today, exposures: has('prolonged-immobility') }, findings: { power: deadArm } },
    at: site('brachial-plexus', 'plexus'),
  },
  {
    flag: 'compartment-syndrome',
    by: 'a thigh that hurts and does not stretch the knee after hours in stirrups (common practice); hip flexors lie in no compartment',
    raised: {
      history: { onset: today, symptoms: has('thigh-pain'), exposures: has('prolonged-immobility') },
      findings: { power: power('right', '4', 'knee-extension') },
    },
    not: {
      history: { onset: today, symptoms: has('thigh-pain'), exposures: has('prolonged-immobility') },
      findings: { power: power('right', '4', 'hip-flexion', 'hip-adduction') },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'fever and a fit in a child whose mind nobody has tried (NICE NG240); clear again within the hour it is a febrile seizure',
    raised: { person: { ageYears: 2 }, history: feverAndFit },
    not: {
      person: { ageYears: 2 },
      history: feverAndFit,
      findings: { higherFunction: [{ sign: 'drowsiness', present: false }] },
    },
  },
  {
    flag: 'suspected-encephalitis',
    by: 'headache and a weak arm without defence (Adams and Victor, abscess and toxoplasmosis); with defences it is no infection by that',
    raised: { history: { onset: weeks, ...headAndArm, conditions: has('immunosuppression') } },
    not: { history: { onset: weeks, ...headAndArm } },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'a headache with an arm that grows weaker over weeks (NICE NG127); in one known for migraine it is asked first',
    raised: { history: { onset: weeks, ...headAndArm } },
    not: { history: { onset: weeks, ...headAndArm, conditions: has('migraine') } },
  },
  {
    flag: 'suspected-transient-ischaemic-attack',
    by: 'a deficit that has gone (NICE NG128); after the usual fit of an epilepsy it is that fit',
    raised: { history: { onset: days, symptoms: has('resolved-deficit'), conditions: has('epilepsy') } },
    not: { history: { onset: days, symptoms: has('resolved-deficit', 'seizure'), conditions: has('epilepsy') } },
  },
  {
    flag: 'suspected-stroke',
    by: 'a foot and hip that fail about a birth (NICE NG128); the hip alone is that of its nerves in the pelvis',
    raised: {
      history: { onset: today, conditions: has('pregnancy') },
      findings: { power: power('right', '4', 'hip-flexion', 'ankle-dorsiflexion') },
    },
    not: {
      history: { onset: today, conditions: has('pregnancy') },
      findings: { power: power('right', '4', 'hip-flexion', 'hip-adduction') },
    },
    at: site('cortex-anterior-cerebral', 'hemisphere'),
  },
  {
    flag: 'progressive-cord-signs',
    by: 'clumsy hands, a failing walk and a painful neck over months (NICE NG127); in known multiple sclerosis it must be said to grow',
    raised: { history: { onset: months, symptoms: has('clumsiness', 'difficulty-walking', 'neck-pain') } },
    not: {
      history: {
        onset: months,
        symptoms: has('clumsiness', 'difficulty-walking', 'neck-pain'),
        conditions: has('multiple-sclerosis'),
      },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'half a cord that fails over a month (NICE NG234); after two months it is no more that',
    raised: {
      history: { onset: { pace: 'subacute', durationDays: 30 } },
      findings: { power: power('right', '4', 'elbow-extension', 'hip-flexion') },
    },
    not: {
      history: { onset: { pace: 'subacute', durationDays: 60 } },
      findings: { power: power('right', '4', 'elbow-extension', 'hip-flexion') },
    },
    at: site('spinal-cord-hemisection', 'cord'),
  },
  {
    flag: 'progressive-cord-signs',
    by: 'shocks from the neck and hands that grow clumsy (NICE NG127, limb weakness); where it stands still it can wait',
    raised: {
      history: { onset: months, course: 'progressive', symptoms: has('electric-shock-on-neck-flexion', 'clumsiness') },
    },
    not: {
      history: { onset: months, course: 'static', symptoms: has('electric-shock-on-neck-flexion', 'clumsiness') },
    },
  },
];
