import { commonPractice, recalled } from '../../kernel/cite.ts';
import { equivalent, inexact } from './code-links.ts';
import { anyFaculty, faculty, recordedOnly } from './probes.ts';
import { sectionTable } from './section-table.ts';

/** Bladder, bowel, sexual function and the pelvic floor. */
export const sphincters = sectionTable(
  'sphincters',
  {
    scale: 'presence',
    sides: 'midline',
    region: 'perineum',
    source: recalled('dejong', 'bladder, bowel and sexual function'),
  },
  {
    'urinary-retention': {
      label: 'Urinary retention',
      hpo: equivalent('HP:0000016', 'Urinary retention'),
      probe: faculty('bladder-retention'),
    },
    'urinary-hesitancy': {
      label: 'Urinary hesitancy',
      hpo: equivalent('HP:0000019', 'Urinary hesitancy'),
      probe: faculty('bladder-retention'),
    },
    'loss-of-bladder-sensation': {
      label: 'Loss of the feeling of bladder filling or passing urine',
      probe: faculty('bladder-retention'),
      source: recalled('girft-ces-2023', 'symptoms of suspected cauda equina syndrome'),
    },
    'urinary-urgency': {
      label: 'Urinary urgency',
      hpo: equivalent('HP:0000012', 'Urinary urgency'),
      probe: faculty('bladder-urgency'),
    },
    'urinary-incontinence': {
      label: 'Urinary incontinence',
      hpo: equivalent('HP:0000020', 'Urinary incontinence'),
      probe: anyFaculty('bladder-urgency', 'bladder-retention'),
    },
    'palpable-bladder': { label: 'Palpable bladder', probe: faculty('bladder-retention'), source: commonPractice },
    'faecal-incontinence': {
      label: 'Faecal incontinence',
      hpo: equivalent('HP:0002607', 'Bowel incontinence'),
      probe: anyFaculty('bowel', 'anal-tone'),
    },
    constipation: {
      label: 'Constipation',
      hpo: equivalent('HP:0002019', 'Constipation'),
      probe: faculty('bowel'),
    },
    'reduced-anal-tone': {
      label: 'Reduced anal tone',
      hpo: equivalent('HP:0034917', 'Weak anal sphincter tone'),
      probe: faculty('anal-tone'),
    },
    'absent-voluntary-anal-contraction': {
      label: 'Absent voluntary anal contraction',
      probe: faculty('anal-tone'),
      source: recalled('isncsci', 'voluntary anal contraction'),
    },
    'saddle-anaesthesia': {
      label: 'Saddle anaesthesia',
      sides: 'optional',
      hpo: inexact('HP:0034982', 'Perianal anesthesia'),
      probe: faculty('saddle-sensation'),
      source: recalled('girft-ces-2023', 'signs of suspected cauda equina syndrome'),
    },
    'absent-deep-anal-pressure': {
      label: 'Absent deep anal pressure',
      probe: faculty('saddle-sensation'),
      source: recalled('isncsci', 'deep anal pressure'),
    },
    'erectile-dysfunction': {
      label: 'Erectile dysfunction',
      hpo: equivalent('HP:0100639', 'Erectile dysfunction'),
      probe: faculty('sexual'),
    },
    'loss-of-genital-sensation': {
      label: 'Loss of genital sensation',
      probe: faculty('saddle-sensation'),
      source: recalled('girft-ces-2023', 'symptoms of suspected cauda equina syndrome'),
    },
  },
);

/** Signs of the autonomic nervous system and of breathing. */
export const autonomic = sectionTable(
  'autonomic',
  { scale: 'presence', sides: 'midline', region: 'trunk', source: recalled('dejong', 'autonomic nervous system') },
  {
    'orthostatic-hypotension': {
      label: 'Orthostatic hypotension',
      hpo: equivalent('HP:0001278', 'Orthostatic hypotension'),
      probe: faculty('blood-pressure'),
      source: recalled(
        'orthostatic-consensus-2011',
        'fall of 20 mm Hg systolic or 10 mm Hg diastolic within 3 minutes',
      ),
    },
    'orthostatic-tachycardia': {
      label: 'Orthostatic tachycardia',
      hpo: equivalent('HP:0012173', 'Orthostatic tachycardia'),
      probe: faculty('heart-rate'),
    },
    'blood-pressure-lability': { label: 'Labile blood pressure', probe: faculty('blood-pressure') },
    'paroxysmal-hypertension': {
      label: 'Sudden rise of blood pressure with headache or flushing',
      probe: faculty('blood-pressure'),
    },
    'resting-tachycardia': { label: 'Resting tachycardia', probe: faculty('heart-rate') },
    bradycardia: { label: 'Bradycardia', probe: faculty('heart-rate') },
    'fixed-heart-rate': { label: 'Heart rate that does not vary with breathing', probe: faculty('heart-rate') },
    arrhythmia: { label: 'Arrhythmia', probe: faculty('heart-rate') },
    anhidrosis: {
      label: 'Loss of sweating',
      sides: 'optional',
      hpo: equivalent('HP:0000970', 'Anhidrosis'),
      probe: faculty('sweating'),
    },
    hyperhidrosis: {
      label: 'Excessive sweating',
      sides: 'optional',
      hpo: equivalent('HP:0000975', 'Hyperhidrosis'),
      probe: faculty('sweating'),
    },
    hypersecretion: {
      label: 'Excess of saliva, tears or bronchial secretions',
      region: 'head',
      probe: recordedOnly,
      source: recalled('adams-victor', 'organophosphate poisoning'),
    },
    'dry-mouth': {
      label: 'Dry mouth on inspection',
      hpo: equivalent('HP:0000217', 'Xerostomia'),
      probe: faculty('gut'),
    },
    'dry-eyes': { label: 'Dry eyes', region: 'head', probe: faculty('gut') },
    ileus: { label: 'Ileus', probe: faculty('gut') },
    gastroparesis: {
      label: 'Delayed emptying of the stomach',
      hpo: equivalent('HP:0002578', 'Gastroparesis'),
      probe: faculty('gut'),
    },
    'breathlessness-at-rest': {
      label: 'Breathless at rest',
      probe: faculty('breathing'),
      source: recalled('nice-ng127', 'limb or facial weakness'),
    },
    'breathlessness-lying-flat': {
      label: 'Breathless lying flat',
      hpo: equivalent('HP:0012764', 'Orthopnea'),
      probe: faculty('breathing'),
      source: recalled('nice-ng127', 'limb or facial weakness'),
    },
    'paradoxical-breathing': {
      label: 'Paradoxical movement of the abdomen on breathing in',
      hpo: inexact('HP:0009113', 'Diaphragmatic weakness'),
      probe: faculty('breathing'),
    },
    'accessory-muscle-breathing': {
      label: 'Use of accessory muscles of breathing',
      hpo: inexact('HP:0004347', 'Weakness of muscles of respiration'),
      probe: faculty('breathing'),
    },
    'weak-cough': { label: 'Weak cough', probe: faculty('breathing') },
    stridor: { label: 'Stridor', region: 'neck', probe: faculty('voice') },
    'flushing-above-level': { label: 'Flushing above the level of a cord lesion', probe: recordedOnly },
    fever: { label: 'Fever on examination', probe: recordedOnly, source: commonPractice },
  },
);
