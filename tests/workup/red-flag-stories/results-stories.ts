import { days, has, measured, months, power, type Story, weeks } from './story.ts';

const coded = (key: string, value: string) => ({ key, value });
const both = (movement: string) => [...power('left', '3', movement), ...power('right', '3', movement)];

/** Results that show the danger by themselves, beside the complaint that had them asked for. */
export const resultsStories: readonly Story[] = [
  {
    flag: 'suspected-meningitis',
    by: 'NICE NG240: glucose of the fluid',
    raised: { history: { onset: days, symptoms: has('headache') }, results: [measured('csf-glucose', 1.2, 'mmol/L')] },
    not: { history: { onset: days, symptoms: has('headache') }, results: [measured('csf-glucose', 3.4, 'mmol/L')] },
  },
  {
    flag: 'suspected-meningitis',
    by: 'NICE NG240: lactate of the fluid',
    raised: { history: { onset: days, symptoms: has('headache') }, results: [measured('csf-lactate', 6, 'mmol/L')] },
    not: { history: { onset: days, symptoms: has('headache') }, results: [measured('csf-lactate', 1.6, 'mmol/L')] },
  },
  {
    flag: 'thunderclap-headache',
    by: 'thousands of red cells in the fluid',
    raised: {
      history: { onset: days, symptoms: has('headache') },
      results: [measured('csf-red-cells', 9000, '10*6/L')],
    },
    not: { history: { onset: days, symptoms: has('headache') }, results: [measured('csf-red-cells', 90, '10*6/L')] },
  },
  {
    flag: 'suspected-stroke',
    by: 'NICE NG128: an artery that is closed',
    raised: {
      history: { onset: { pace: 'acute' }, symptoms: has('clumsiness') },
      findings: { coordination: [{ test: 'finger-nose', side: 'left', result: 'impaired' }] },
      results: [coded('angiography-head-neck', 'occlusion')],
    },
    not: {
      history: { onset: months, symptoms: has('clumsiness') },
      findings: { coordination: [{ test: 'finger-nose', side: 'left', result: 'impaired' }] },
      results: [coded('angiography-head-neck', 'occlusion')],
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'a lesion of the conus is one of the cord',
    raised: {
      history: { onset: days, symptoms: has('saddle-numbness') },
      findings: { power: both('ankle-plantarflexion') },
      results: [coded('mri-lumbar-spine', 'conus-lesion')],
    },
    not: {
      history: { onset: months, symptoms: has('saddle-numbness') },
      findings: { power: both('ankle-plantarflexion') },
      results: [coded('mri-lumbar-spine', 'conus-lesion')],
    },
  },
  {
    flag: 'suspected-spinal-haematoma',
    by: 'blood seen beside the plexus',
    raised: {
      history: { onset: days },
      findings: { power: power('left', '3', 'knee-extension') },
      results: [coded('mri-lumbosacral-plexus', 'haematoma')],
    },
    not: {
      history: { onset: days },
      findings: { power: power('left', '3', 'knee-extension') },
      results: [coded('mri-lumbosacral-plexus', 'inflammation')],
    },
  },
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: lead',
    raised: {
      history: { onset: weeks },
      findings: { power: both('wrist-extension') },
      results: [measured('lead', 4, 'umol/L')],
    },
    not: {
      history: { onset: weeks },
      findings: { power: both('wrist-extension') },
      results: [measured('lead', 0.3, 'umol/L')],
    },
  },
  {
    flag: 'suspected-poisoning',
    by: 'Adams and Victor: arsenic',
    raised: {
      history: { onset: weeks, symptoms: has('vomiting') },
      results: [measured('arsenic-urine', 900, 'ug/L')],
    },
    not: {
      history: { onset: weeks, symptoms: has('vomiting') },
      results: [measured('arsenic-urine', 30, 'ug/L')],
    },
  },
  {
    flag: 'slow-weakness-with-breathlessness',
    by: 'a diaphragm that fails lying down, before breath is felt to be short',
    raised: {
      history: { onset: months },
      findings: { power: both('hip-flexion') },
      results: [measured('vital-capacity-fall-supine', 35, '%')],
    },
    not: {
      history: { onset: months },
      findings: { power: both('hip-flexion') },
      results: [measured('vital-capacity-fall-supine', 8, '%')],
    },
  },
];
