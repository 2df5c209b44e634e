import { commonPractice, recalled } from '../../kernel/cite.ts';
import { equivalent, inexact, wider } from './code-links.ts';
import {
  anyFaculty,
  cerebellar,
  faculty,
  proprioception,
  recordedOnly,
  slackBeside,
  slackOnBothSides,
  standing,
  upperMotor,
  weaknessOf,
  weaknessOnBothSides,
} from './probes.ts';
import { sectionTable } from './section-table.ts';

/** Ways of walking that are seen, and tasks that the person is asked to perform. */
export const gait = sectionTable(
  'gait',
  { scale: 'presence', sides: 'midline', region: 'lower-limbs', source: recalled('dejong', 'gait and station') },
  {
    'high-stepping': {
      label: 'High-stepping gait',
      sides: 'optional',
      bodyPart: 'foot',
      hpo: equivalent('HP:0003376', 'Steppage gait'),
      probe: weaknessOf('ankle-dorsiflexion'),
    },
    waddling: {
      label: 'Waddling gait',
      hpo: equivalent('HP:0002515', 'Waddling gait'),
      probe: slackOnBothSides('hip-abduction'),
    },
    'trendelenburg-gait': {
      label: 'Trendelenburg gait',
      sides: 'paired',
      bodyPart: 'hip',
      probe: slackBeside(['hip-abduction']),
    },
    hemiplegic: {
      label: 'Hemiplegic (circumducting) gait',
      sides: 'paired',
      bodyPart: 'lower-limb',
      hpo: equivalent('HP:0031957', 'Spastic hemiparetic gait'),
      probe: upperMotor('lower'),
    },
    spastic: {
      label: 'Spastic gait',
      sides: 'optional',
      bodyPart: 'lower-limb',
      hpo: equivalent('HP:0002064', 'Spastic gait'),
      probe: upperMotor('lower'),
    },
    scissoring: {
      label: 'Scissoring gait',
      hpo: equivalent('HP:0012407', 'Scissor gait'),
      probe: upperMotor('lower'),
    },
    ataxic: {
      label: 'Broad-based ataxic gait',
      hpo: equivalent('HP:0002066', 'Gait ataxia'),
      probe: cerebellar('midline'),
    },
    'sensory-ataxic': {
      label: 'Stamping (sensory ataxic) gait',
      hpo: wider('HP:0010871', 'Sensory ataxia'),
      probe: proprioception('lower'),
    },
    veering: {
      label: 'Veering to one side on walking',
      sides: 'paired',
      bodyPart: 'lower-limb',
      hpo: wider('HP:0002317', 'Unsteady gait'),
      probe: faculty('balance-to-side'),
    },
    shuffling: {
      label: 'Shuffling gait',
      hpo: equivalent('HP:0002362', 'Shuffling gait'),
      probe: anyFaculty('axial-bradykinesia', 'gait-initiation'),
    },
    festinating: { label: 'Festinating gait', probe: anyFaculty('axial-bradykinesia', 'gait-initiation') },
    freezing: {
      label: 'Freezing of gait',
      hpo: equivalent('HP:0031825', 'Freezing of gait'),
      probe: anyFaculty('axial-bradykinesia', 'gait-initiation'),
    },
    'reduced-arm-swing': {
      label: 'Reduced arm swing',
      sides: 'optional',
      bodyPart: 'upper-limb',
      region: 'upper-limbs',
      probe: faculty('bradykinesia'),
    },
    'postural-instability': {
      label: 'Postural instability on the pull test',
      hpo: equivalent('HP:0002172', 'Postural instability'),
      probe: anyFaculty('axial-bradykinesia', 'gait-initiation'),
    },
    magnetic: {
      label: 'Magnetic gait (gait apraxia)',
      hpo: equivalent('HP:0010521', 'Gait apraxia'),
      probe: faculty('gait-initiation'),
    },
    dystonic: {
      label: 'Dystonic gait',
      sides: 'optional',
      bodyPart: 'lower-limb',
      hpo: equivalent('HP:0031954', 'Dystonic gait'),
      probe: faculty('dystonia'),
    },
    'knee-hyperextension': {
      label: 'Knee thrown back on walking (genu recurvatum)',
      sides: 'paired',
      bodyPart: 'knee',
      probe: weaknessOf('knee-extension'),
    },
    antalgic: {
      label: 'Antalgic gait',
      sides: 'optional',
      bodyPart: 'lower-limb',
      hpo: equivalent('HP:0031955', 'Antalgic gait'),
      probe: recordedOnly,
    },
    cautious: {
      label: 'Cautious gait',
      hpo: equivalent('HP:0031953', 'Cautious gait'),
      probe: recordedOnly,
    },
    functional: {
      label: 'Dragging or inconsistent gait that does not fit a nerve lesion',
      sides: 'optional',
      bodyPart: 'lower-limb',
      probe: faculty('effort'),
    },
    'unable-to-walk': {
      label: 'Unable to walk',
      hpo: equivalent('HP:0002540', 'Inability to walk'),
      probe: weaknessOnBothSides('hip-flexion', 'knee-extension'),
      source: commonPractice,
    },
    'unable-to-stand': {
      label: 'Unable to stand without support',
      probe: standing,
      source: commonPractice,
    },
    romberg: {
      label: 'Romberg sign',
      hpo: equivalent('HP:0002403', 'Positive Romberg sign'),
      probe: proprioception('lower'),
    },
    'gowers-sign': {
      label: 'Gowers sign',
      hpo: equivalent('HP:0003391', 'Gowers sign'),
      probe: slackOnBothSides('hip-extension', 'knee-extension'),
    },

    'heel-walking': {
      label: 'Walking on the heels',
      scale: 'performance',
      sides: 'optional',
      bodyPart: 'foot',
      hpo: equivalent('HP:6000490', 'Impaired heel-walking ability'),
      probe: weaknessOf('ankle-dorsiflexion'),
    },
    'toe-walking': {
      label: 'Walking on the toes',
      scale: 'performance',
      sides: 'optional',
      bodyPart: 'foot',
      hpo: equivalent('HP:0034052', 'Impaired toe-walking ability'),
      probe: weaknessOf('ankle-plantarflexion'),
    },
    'single-leg-heel-raise': {
      label: 'Single-leg heel raise',
      scale: 'performance',
      sides: 'paired',
      bodyPart: 'foot',
      probe: weaknessOf('ankle-plantarflexion'),
    },
    tandem: {
      label: 'Tandem walking',
      scale: 'performance',
      hpo: equivalent('HP:0031629', 'Impaired tandem gait'),
      probe: cerebellar('midline'),
    },
    hopping: {
      label: 'Hopping on one leg',
      scale: 'performance',
      sides: 'paired',
      bodyPart: 'lower-limb',
      probe: weaknessOf('ankle-plantarflexion', 'knee-extension'),
    },
    'rising-from-chair': {
      label: 'Rising from a chair without the arms',
      scale: 'performance',
      probe: weaknessOnBothSides('hip-extension', 'knee-extension'),
    },
    'rising-from-floor': {
      label: 'Rising from the floor',
      scale: 'performance',
      probe: weaknessOnBothSides('hip-extension', 'knee-extension'),
    },
    squatting: {
      label: 'Squatting and rising',
      scale: 'performance',
      probe: weaknessOnBothSides('hip-extension', 'knee-extension'),
    },
    'step-up': {
      label: 'Stepping up on to a stool',
      scale: 'performance',
      sides: 'paired',
      bodyPart: 'lower-limb',
      probe: weaknessOf('hip-extension', 'knee-extension'),
    },
    stairs: {
      label: 'Climbing stairs',
      scale: 'performance',
      hpo: inexact('HP:0033235', 'Difficulty descending stairs'),
      probe: weaknessOnBothSides('hip-flexion', 'knee-extension'),
    },
    turning: {
      label: 'Turning while walking',
      scale: 'performance',
      probe: anyFaculty('axial-bradykinesia', 'gait-initiation'),
    },
  },
);
