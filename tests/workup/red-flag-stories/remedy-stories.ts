import { site } from '../../support/bedside.ts';
import { days, has, hours, measured, months, on, power, type Story, signs } from './story.ts';

const junction = site('postsynaptic-junction', 'junction');
const slowHand = [{ sign: 'bradykinesia', side: 'both', site: 'hand', present: true }];
const ulcer = { inspection: on('left', 'foot-ulcer') };
const shaking = {
  coordination: [{ test: 'finger-nose', side: 'both', result: 'impaired' }],
  cranialNerves: [...on('both', 'gaze-evoked-nystagmus'), ...signs('cerebellar-dysarthria')],
  higherFunction: signs('confusion'),
};
const fit = { onset: hours, symptoms: has('ongoing-seizure') };

/** Dangers that have a remedy of their own, and pictures that another danger accounts for. */
export const remedyStories: readonly Story[] = [
  {
    flag: 'harmful-medicine',
    by: 'McKeith 1992: an antipsychotic where Lewy bodies are; a psychosis of old sees things without them',
    raised: {
      history: { onset: months, symptoms: has('cognitive-change'), medications: has('antipsychotic') },
      findings: { higherFunction: signs('hallucinations'), involuntaryMovements: slowHand },
    },
    not: {
      history: {
        onset: months,
        symptoms: has('cognitive-change'),
        conditions: has('psychiatric-disorder'),
        medications: has('antipsychotic'),
      },
      findings: { higherFunction: signs('hallucinations'), involuntaryMovements: slowHand },
    },
  },
  {
    flag: 'harmful-medicine',
    by: 'consensus on myasthenia: a fluoroquinolone; pyridostigmine is its remedy',
    raised: { history: { conditions: has('myasthenia-gravis'), medications: has('fluoroquinolone') } },
    not: { history: { conditions: has('myasthenia-gravis'), medications: has('pyridostigmine') } },
  },
  {
    flag: 'harmful-medicine',
    by: 'tetracycline under swollen discs; one disc alone has other causes',
    raised: {
      history: { onset: months, medications: has('tetracycline') },
      findings: { cranialNerves: on('both', 'optic-disc-swelling') },
    },
    not: {
      history: { onset: months, medications: has('tetracycline') },
      findings: { cranialNerves: on('left', 'optic-disc-swelling') },
    },
  },
  {
    flag: 'harmful-medicine',
    by: 'Sacco 2017: an aura with a contraceptive; a headache without one',
    raised: {
      history: {
        onset: hours,
        symptoms: has('headache', 'spreading-over-minutes', 'resolved-deficit'),
        medications: has('hormonal-contraceptive'),
      },
    },
    not: {
      history: { onset: hours, symptoms: has('headache', 'photophobia'), medications: has('hormonal-contraceptive') },
    },
  },
  {
    flag: 'diabetic-foot-ulcer',
    by: 'NICE NG19: an ulcer with diabetes; the same of leprosy or an inherited neuropathy',
    raised: { history: { onset: months, conditions: has('diabetes-mellitus') }, findings: ulcer },
    not: { history: { onset: months }, findings: ulcer },
  },
  {
    flag: 'suspected-stroke',
    by: 'both halves alike under a toxic level of lithium; without the level it may be a stroke',
    at: site('cerebellar-degeneration', 'cerebellum'),
    raised: { history: { onset: days, medications: has('lithium') }, findings: shaking },
    not: {
      history: { onset: days, medications: has('lithium') },
      findings: shaking,
      results: [measured('lithium-level', 2.6, 'mmol/L')],
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'eyes driven aside by a fit of a known epilepsy; in one who has had none it may be bleeding',
    raised: {
      history: fit,
      findings: { cranialNerves: [{ sign: 'forced-gaze-deviation', side: 'left', present: true }] },
    },
    not: {
      history: { ...fit, conditions: has('epilepsy') },
      findings: { cranialNerves: [{ sign: 'forced-gaze-deviation', side: 'left', present: true }] },
    },
  },
  {
    flag: 'acute-ascending-weakness',
    by: 'all limbs weak within days; in a known myasthenia whose jerks are kept it is the junction',
    at: junction,
    raised: {
      history: { onset: days, course: 'progressive' },
      findings: { power: [...power('both', '4', 'shoulder-abduction', 'hip-flexion')] },
    },
    not: {
      history: { onset: days, course: 'progressive', conditions: has('myasthenia-gravis') },
      findings: { power: [...power('both', '4', 'shoulder-abduction', 'hip-flexion')] },
    },
  },
  {
    flag: 'acute-ascending-weakness',
    by: 'the neuropathy of an organophosphate comes after weeks; with wet glands within hours it is the poison',
    at: junction,
    raised: {
      history: { onset: { pace: 'acute', durationDays: 16 }, exposures: has('organophosphate') },
      findings: { power: [...power('both', '4', 'shoulder-abduction', 'hip-flexion')] },
    },
    not: {
      history: { onset: hours, exposures: has('organophosphate') },
      findings: {
        power: [...power('both', '4', 'shoulder-abduction', 'hip-flexion')],
        autonomic: signs('hypersecretion', 'bradycardia'),
      },
    },
  },
  {
    flag: 'acute-visual-loss',
    by: 'a pupil that gives way; over a pale disc in one who sees double it is of old',
    raised: {
      history: { onset: days, symptoms: has('diplopia') },
      findings: { cranialNerves: on('right', 'relative-afferent-pupillary-defect') },
    },
    not: {
      history: { onset: days, symptoms: has('diplopia') },
      findings: { cranialNerves: on('right', 'relative-afferent-pupillary-defect', 'optic-disc-pallor') },
    },
  },
  {
    flag: 'suspected-cauda-equina-syndrome',
    by: 'legs and bladder that fail; below a level on the trunk with both tracts it is the cord',
    at: site('spinal-cord-transverse', 'cord'),
    raised: {
      history: { onset: days, symptoms: has('back-pain') },
      findings: {
        power: power('both', '3', 'hip-flexion', 'ankle-dorsiflexion'),
        sphincters: signs('urinary-retention', 'saddle-anaesthesia'),
      },
    },
    not: {
      history: { onset: days, symptoms: has('thoracic-back-pain') },
      findings: {
        power: power('both', '3', 'hip-flexion', 'ankle-dorsiflexion'),
        sphincters: signs('urinary-retention'),
        plantars: [{ side: 'both', response: 'extensor' }],
        sensation: [{ modality: 'pinprick', levelBelow: 'T6', side: 'both', result: 'reduced' }],
      },
    },
  },
];
