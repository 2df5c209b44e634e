import { days, has, hours, measured, months, power, type Story, signs, years } from './story.ts';

const coldLeg = [{ sign: 'colour-or-temperature-change', site: 'leg-below-knee', side: 'left', present: true }];
const pulselessLeg = (present: boolean) => [{ sign: 'absent-limb-pulse', site: 'lower-limb', side: 'left', present }];

export const systemicStories: readonly Story[] = [
  {
    flag: 'first-seizure',
    by: 'NICE NG217: to a specialist within two weeks after a first suspected seizure',
    raised: { history: { onset: days, symptoms: has('seizure') } },
    not: { history: { onset: days, symptoms: has('seizure'), conditions: has('epilepsy') } },
  },
  {
    flag: 'first-seizure',
    by: 'NICE NG217: a seizure that goes on is status, and a newborn has a flag of its own',
    raised: { person: { ageYears: 30 }, history: { onset: hours, symptoms: has('seizure') } },
    not: { person: { ageYears: 0.02 }, history: { onset: hours, symptoms: has('seizure') } },
  },
  {
    flag: 'dangerous-sodium-or-calcium',
    by: 'Spasovski 2014: under 125 mmol/L is profound',
    raised: { history: { onset: days }, results: [measured('sodium', 112, 'mmol/L')] },
    not: { history: { onset: days }, results: [measured('sodium', 131, 'mmol/L')] },
  },
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: an exposure with an effect, lately',
    raised: { history: { onset: hours, symptoms: has('headache', 'vomiting'), exposures: has('carbon-monoxide') } },
    not: { history: { onset: years, symptoms: has('headache', 'vomiting'), exposures: has('carbon-monoxide') } },
  },
  {
    flag: 'acute-limb-ischaemia',
    by: 'Björck 2020: within two weeks a cold, painful limb that grows numb or weak',
    raised: { history: { onset: hours, symptoms: has('leg-pain', 'numbness') }, findings: { inspection: coldLeg } },
    not: { history: { onset: years, symptoms: has('leg-pain', 'numbness') }, findings: { inspection: coldLeg } },
  },
  {
    flag: 'acute-limb-ischaemia',
    by: 'Björck 2020: a limb without a pulse that is suddenly weak, told or not to be cold',
    raised: {
      history: { onset: hours },
      findings: { inspection: pulselessLeg(true), power: power('left', '2', 'ankle-dorsiflexion') },
    },
    not: {
      history: { onset: hours },
      findings: { inspection: pulselessLeg(false), power: power('left', '2', 'ankle-dorsiflexion') },
    },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'Adams and Victor: haemophilia bleeds into the spinal canal as anticoagulants do',
    raised: {
      history: { onset: hours, symptoms: has('back-pain', 'leg-weakness'), conditions: has('bleeding-disorder') },
    },
    not: {
      history: { onset: years, symptoms: has('back-pain', 'leg-weakness'), conditions: has('bleeding-disorder') },
    },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'ASRA 2018: an INR well above 1.4 is blood that does not clot',
    raised: {
      history: { onset: days, symptoms: has('thigh-pain', 'leg-weakness') },
      results: [measured('inr', 4.2, '{INR}')],
    },
    not: {
      history: { onset: days, symptoms: has('thigh-pain', 'leg-weakness') },
      results: [measured('inr', 1.1, '{INR}')],
    },
  },
  {
    flag: 'potassium-paralysis',
    by: 'Adams and Victor: weakness with a potassium that is far off',
    raised: {
      history: { onset: hours },
      findings: { power: power('both', '2', 'hip-flexion') },
      results: [measured('potassium', 1.9, 'mmol/L')],
    },
    not: {
      history: { onset: hours },
      findings: { power: power('both', '2', 'hip-flexion') },
      results: [measured('potassium', 4.1, 'mmol/L')],
    },
  },
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: poisons of shellfish and puffer fish tingle about the mouth within the hour',
    raised: { history: { onset: hours, symptoms: has('perioral-numbness'), exposures: has('marine-toxin') } },
    not: { history: { onset: months, symptoms: has('perioral-numbness'), exposures: has('marine-toxin') } },
  },
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: methanol blinds within a day or two',
    raised: { history: { onset: hours, symptoms: has('visual-loss'), exposures: has('toxic-alcohol') } },
    not: { history: { onset: years, symptoms: has('visual-loss'), exposures: has('toxic-alcohol') } },
  },
  {
    flag: 'raised-intracranial-pressure',
    by: 'Adams and Victor: a new headache in one who has a shunt is a blocked shunt until shown otherwise',
    raised: { history: { onset: days, symptoms: has('headache'), conditions: has('ventricular-shunt') } },
    not: { history: { onset: years, symptoms: has('headache'), conditions: has('ventricular-shunt') } },
  },
  {
    flag: 'suspected-tetanus',
    by: 'Adams and Victor: painful spasms of the whole body, days after a wound',
    raised: {
      history: { onset: days, exposures: has('trauma') },
      findings: { involuntaryMovements: signs('generalised-spasms') },
    },
    not: {
      history: { onset: days, symptoms: has('fever'), exposures: has('trauma') },
      findings: { involuntaryMovements: signs('generalised-spasms') },
    },
  },
  {
    flag: 'head-injury-with-deficit',
    by: 'NICE NG232: blood or clear fluid from ear or nose after a knock is a broken base of the skull',
    raised: {
      history: { onset: hours, conditions: has('head-injury') },
      findings: { inspection: signs('ear-or-nose-leak') },
    },
    not: { history: { onset: hours, conditions: has('head-injury') } },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'NICE NG127: a child who loses skills is referred; one who was always slow has not lost them',
    raised: {
      person: { ageYears: 4 },
      history: { onset: months, course: 'progressive', symptoms: has('loss-of-skills') },
    },
    not: {
      person: { ageYears: 4 },
      history: { onset: months, course: 'progressive', conditions: has('developmental-delay') },
    },
  },
];
