import { days, has, hours, measured, power, type Story, years } from './story.ts';

const coldLeg = [{ sign: 'colour-or-temperature-change', site: 'leg-below-knee', side: 'left', present: true }];

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
];
