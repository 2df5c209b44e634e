import { recalled } from '../../kernel/cite.ts';
import { equivalent, wider } from './code-links.ts';
import { cerebellar, faculty, proprioception, slowTapping } from './probes.ts';
import { sectionTable } from './section-table.ts';

/** Tests of coordination; `impaired-by-weakness` is kept apart from ataxia. */
export const coordination = sectionTable(
  'coordination',
  {
    scale: 'coordination',
    sides: 'paired',
    region: 'upper-limbs',
    source: recalled('dejong', 'cerebellar function and coordination'),
  },
  {
    'finger-nose': {
      label: 'Finger-nose test',
      bodyPart: 'hand',
      hpoByValue: { impaired: equivalent('HP:0020036', 'Upper limb dysmetria') },
      probe: cerebellar('upper-limb'),
    },
    'finger-chase': {
      label: 'Finger chase',
      bodyPart: 'hand',
      hpoByValue: { impaired: wider('HP:0020036', 'Upper limb dysmetria') },
      probe: cerebellar('upper-limb'),
    },
    'past-pointing': {
      label: 'Past-pointing with the eyes closed',
      bodyPart: 'upper-limb',
      hpoByValue: { impaired: wider('HP:0020036', 'Upper limb dysmetria') },
      probe: cerebellar('upper-limb'),
    },
    'pointing-eyes-closed': {
      label: 'Touching the thumb of the other hand with the eyes closed',
      bodyPart: 'hand',
      probe: proprioception('upper'),
    },
    'rapid-alternating-movements': {
      label: 'Rapid alternating movements of the hand',
      bodyPart: 'hand',
      hpoByValue: { impaired: equivalent('HP:0002075', 'Dysdiadochokinesis') },
      probe: cerebellar('upper-limb'),
    },
    'finger-tapping': {
      label: 'Finger tapping',
      bodyPart: 'hand',
      probe: slowTapping('upper'),
      source: recalled('appasamy-2018', 'finger and foot tapping in upper-motor-neuron lesions'),
    },
    'fine-finger-movements': {
      label: 'Fine finger movements',
      bodyPart: 'hand',
      hpoByValue: { impaired: wider('HP:0007010', 'Poor fine motor coordination') },
      probe: slowTapping('upper'),
    },
    rebound: { label: 'Rebound of the outstretched arm', bodyPart: 'upper-limb', probe: cerebellar('upper-limb') },
    'heel-shin': {
      label: 'Heel-shin test',
      region: 'lower-limbs',
      bodyPart: 'lower-limb',
      hpoByValue: { impaired: equivalent('HP:0020035', 'Lower limb dysmetria') },
      probe: cerebellar('lower-limb'),
    },
    'toe-finger': {
      label: 'Toe to finger test',
      region: 'lower-limbs',
      bodyPart: 'foot',
      hpoByValue: { impaired: wider('HP:0020035', 'Lower limb dysmetria') },
      probe: cerebellar('lower-limb'),
    },
    'foot-tapping': {
      label: 'Foot tapping',
      region: 'lower-limbs',
      bodyPart: 'foot',
      probe: slowTapping('lower'),
      source: recalled('appasamy-2018', 'finger and foot tapping in upper-motor-neuron lesions'),
    },
    'sitting-balance': {
      label: 'Sitting balance without support',
      sides: 'midline',
      region: 'trunk',
      hpoByValue: { impaired: equivalent('HP:0002078', 'Truncal ataxia') },
      probe: faculty('trunk-coordination'),
    },
    'standing-balance': {
      label: 'Standing balance with the feet together, eyes open',
      sides: 'midline',
      region: 'lower-limbs',
      hpoByValue: { impaired: wider('HP:0001251', 'Ataxia') },
      probe: cerebellar('midline'),
    },
    'rapid-tongue-movements': {
      label: 'Rapid movements of the tongue',
      sides: 'midline',
      region: 'head',
      probe: faculty('pseudobulbar'),
    },
  },
);
