import { recalled } from '../../kernel/cite.ts';
import { historyTable, hpo } from './history-row.ts';

/** What the person tells of. */
export const symptoms = historyTable('symptom', {
  // Pain
  'back-pain': { label: 'Back pain', ...hpo('HP:0003418', 'Back pain') },
  'thoracic-back-pain': 'Pain in the thoracic spine',
  'neck-pain': { label: 'Neck pain', ...hpo('HP:0030833', 'Neck pain') },
  'night-spinal-pain': { label: 'Spinal pain at night', source: recalled('nice-ng234', 'recognition') },
  'pain-on-straining': { label: 'Spinal pain on coughing or straining', source: recalled('nice-ng234', 'recognition') },
  'flank-pain': 'Flank or groin pain',
  'radicular-leg-pain': 'Radicular pain in the leg',
  'bilateral-leg-pain': {
    label: 'Radicular pain in both legs',
    source: recalled('girft-ces-2023', 'warning features'),
  },
  'radicular-arm-pain': 'Radicular pain in the arm',
  'leg-pain': { label: 'Leg pain', ...hpo('HP:0012514', 'Lower limb pain') },
  'arm-pain': { label: 'Arm pain', ...hpo('HP:0012513', 'Upper limb pain') },
  'shoulder-pain': {
    label: 'Severe shoulder pain at onset',
    source: recalled('neuralgic-amyotrophy-2016', 'presentation'),
  },
  'thigh-pain': 'Severe pain in the thigh',
  'foot-pain': { label: 'Foot pain', ...hpo('HP:0025238', 'Foot pain') },
  'burning-feet': 'Burning feet',
  'neuropathic-pain': { label: 'Neuropathic pain', ...hpo('HP:6000040', 'Neuropathic pain') },
  'facial-pain': 'Facial pain',
  'eye-pain': 'Pain in or behind the eye',
  'ear-pain': 'Ear pain',
  'jaw-claudication': 'Pain in the jaw on chewing',
  'scalp-tenderness': 'Tender scalp',
  'tense-painful-limb': 'Tense limb with severe pain on stretching the muscles',
  'muscle-pain': { label: 'Muscle pain', ...hpo('HP:0003326', 'Myalgia') },
  cramps: 'Cramps',
  'exercise-cramps': { label: 'Cramps on exercise', ...hpo('HP:0003710', 'Exercise-induced muscle cramps') },
  'abdominal-pain': 'Abdominal pain',
  'neurogenic-claudication': {
    label: 'Leg symptoms on walking, eased by sitting or stooping',
    ...hpo('HP:0031952', 'Neurogenic claudication'),
  },

  // Head and senses
  headache: { label: 'Headache', ...hpo('HP:0002315', 'Headache') },
  'thunderclap-headache': {
    label: 'Sudden headache at its worst within minutes',
    ...hpo('HP:0030907', 'Thunderclap headache'),
  },
  'new-headache': 'New headache',
  'morning-headache': 'Headache on waking or lying down',
  photophobia: { label: 'Dislike of light', ...hpo('HP:0000613', 'Photophobia') },
  'visual-loss': { label: 'Loss of vision', ...hpo('HP:0000572', 'Visual loss') },
  'transient-visual-loss': 'Transient loss of vision',
  diplopia: { label: 'Double vision', ...hpo('HP:0000651', 'Diplopia') },
  oscillopsia: { label: 'Moving images (oscillopsia)', ...hpo('HP:0034773', 'Oscillopsia') },
  'drooping-eyelids': 'Drooping eyelids',
  vertigo: { label: 'Vertigo', ...hpo('HP:0002321', 'Vertigo') },
  'positional-vertigo': 'Vertigo on change of head position',
  'continuous-vertigo': 'Vertigo that has not stopped since it began',
  tinnitus: { label: 'Tinnitus', ...hpo('HP:0000360', 'Tinnitus') },
  'hearing-loss': { label: 'Loss of hearing', ...hpo('HP:0000365', 'Hearing impairment') },
  'loss-of-smell': { label: 'Loss of smell', ...hpo('HP:0000458', 'Anosmia') },

  // Motor
  weakness: { label: 'Weakness', ...hpo('HP:0001324', 'Muscle weakness') },
  'leg-weakness': { label: 'Weakness of the legs', ...hpo('HP:0007340', 'Lower limb muscle weakness') },
  'arm-weakness': { label: 'Weakness of the arms', ...hpo('HP:0003484', 'Upper limb muscle weakness') },
  'fatigable-weakness': { label: 'Weakness that grows with use', ...hpo('HP:0003473', 'Fatigable weakness') },
  'ascending-weakness': 'Weakness that rises from the legs',
  'descending-weakness': {
    label: 'Weakness that descends from the head',
    source: recalled('botulism-2021', 'clinical features'),
  },
  'episodic-weakness': { label: 'Attacks of weakness', ...hpo('HP:0003752', 'Episodic flaccid weakness') },
  'difficulty-with-stairs': 'Difficulty with stairs or rising',
  'difficulty-walking': { label: 'Difficulty walking', ...hpo('HP:0001288', 'Gait disturbance') },
  falls: { label: 'Falls', ...hpo('HP:0002527', 'Falls') },
  unsteadiness: { label: 'Unsteadiness', ...hpo('HP:0002317', 'Unsteady gait') },
  'worse-in-the-dark': {
    label: 'Unsteadiness that grows in the dark',
    ...hpo('HP:0006962', 'Gait instability, worse in the dark'),
  },
  clumsiness: { label: 'Clumsy hands', ...hpo('HP:0002312', 'Clumsiness') },
  lockjaw: { label: 'Jaw that will not open', ...hpo('HP:0000211', 'Trismus') },
  tremor: { label: 'Tremor', ...hpo('HP:0001337', 'Tremor') },
  stiffness: { label: 'Stiffness', ...hpo('HP:0003552', 'Muscle stiffness') },
  twitching: 'Twitching muscles',
  'muscle-thinning': 'Thinning of muscles',

  // Sensory
  numbness: { label: 'Numbness', ...hpo('HP:0033748', 'Hypoesthesia') },
  paraesthesiae: { label: 'Pins and needles', ...hpo('HP:0003401', 'Paresthesia') },
  'nocturnal-hand-paraesthesiae': 'Pins and needles of the hand that wake at night',
  'painless-injury': 'Burns or injuries that did not hurt',
  'electric-shock-on-neck-flexion': 'Electric shock down the back on bending the neck',
  'tight-band': 'Tight band around the trunk',
  'restless-legs': { label: 'Restless legs', ...hpo('HP:0012452', 'Restless legs') },

  // Bulbar and breathing
  dysphagia: { label: 'Difficulty swallowing', ...hpo('HP:0002015', 'Dysphagia') },
  'slurred-speech': { label: 'Slurred speech', ...hpo('HP:0001350', 'Slurred speech') },
  'voice-change': { label: 'Change of voice', ...hpo('HP:0001618', 'Dysphonia') },
  breathlessness: 'Breathlessness',
  orthopnoea: { label: 'Breathlessness lying flat', ...hpo('HP:0012764', 'Orthopnea') },

  // Pelvic and autonomic
  'saddle-numbness': { label: 'Numbness of the saddle area', source: recalled('girft-ces-2023', 'symptoms') },
  'bladder-disturbance': { label: 'New disturbance of the bladder', source: recalled('girft-ces-2023', 'symptoms') },
  'bowel-disturbance': { label: 'New disturbance of the bowel', source: recalled('girft-ces-2023', 'symptoms') },
  'sexual-dysfunction': { label: 'New disturbance of sexual function', source: recalled('girft-ces-2023', 'symptoms') },
  'light-headed-on-standing': 'Light-headedness on standing',
  syncope: { label: 'Syncope', ...hpo('HP:0001279', 'Syncope') },
  'dry-mouth': { label: 'Dry mouth', ...hpo('HP:0000217', 'Xerostomia') },
  'dry-eyes': 'Dry eyes',
  'altered-sweating': 'Altered sweating',
  'early-satiety': 'Early fullness, vomiting or alternating bowel habit',

  // Brain
  seizure: { label: 'Seizure', ...hpo('HP:0001250', 'Seizure') },
  'ongoing-seizure': 'Seizure of 5 minutes or more, or repeated without recovery',
  'loss-of-consciousness': { label: 'Loss of consciousness', ...hpo('HP:0007185', 'Loss of consciousness') },
  'cognitive-change': { label: 'Change of memory or thinking', ...hpo('HP:0100543', 'Cognitive impairment') },
  'behaviour-change': 'Change of behaviour or personality',
  'speech-difficulty': 'Difficulty finding or understanding words',
  'resolved-deficit': 'Deficit that has gone',

  // General
  fever: 'Fever',
  'weight-loss': 'Unintended weight loss',
  'night-sweats': 'Night sweats',
  vomiting: 'Vomiting',
  rash: 'Rash',
  'hair-loss': 'Loss of hair',
  'photosensitive-rash': { label: 'Rash of sun-exposed skin', source: recalled('eular-acr-myositis-2017', 'skin') },
  'joint-pain': 'Painful or swollen joints',
  'cold-white-fingers': 'Cold, white fingers (Raynaud phenomenon)',
  'dark-urine': 'Dark urine',
  fatigue: 'Fatigue',
  'fluctuating-symptoms': 'Symptoms that vary through the day',
  'preceding-infection': {
    label: 'Infection in the six weeks before',
    source: recalled('ean-pns-gbs-2023', 'antecedent events'),
  },
  'preceding-gastroenteritis': {
    label: 'Diarrhoea in the six weeks before',
    source: recalled('ean-pns-gbs-2023', 'antecedent events'),
  },
  'preceding-respiratory-infection': {
    label: 'Respiratory infection in the six weeks before',
    source: recalled('ean-pns-gbs-2023', 'antecedent events'),
  },
});
