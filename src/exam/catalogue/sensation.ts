import { recalled } from '../../kernel/cite.ts';
import { equivalent } from './code-links.ts';
import type { CodeLink } from './item.ts';
import { sectionTable } from './section-table.ts';

/** Only loss has the term; increased or altered feeling says something else. */
const lossIs = (link: CodeLink): Readonly<Record<string, CodeLink>> => ({ reduced: link, absent: link });

/** The modalities of sensation; where is said by the finding: landmark, dermatome, territory or level. */
export const sensation = sectionTable(
  'sensation',
  { scale: 'sensation', sides: 'paired', region: 'trunk', source: recalled('dejong', 'sensory examination') },
  {
    'light-touch': {
      label: 'Light touch',
      hpoByValue: lossIs(equivalent('HP:0010830', 'Impaired tactile sensation')),
      probe: { kind: 'sensation', modality: 'light-touch' },
    },
    pinprick: {
      label: 'Pinprick',
      hpoByValue: lossIs(equivalent('HP:0007328', 'Impaired pain sensation')),
      probe: { kind: 'sensation', modality: 'pinprick' },
    },
    temperature: {
      label: 'Temperature',
      hpoByValue: lossIs(equivalent('HP:0010829', 'Impaired temperature sensation')),
      probe: { kind: 'sensation', modality: 'temperature' },
    },
    vibration: {
      label: 'Vibration',
      hpoByValue: lossIs(equivalent('HP:0002495', 'Impaired vibratory sensation')),
      probe: { kind: 'sensation', modality: 'vibration' },
    },
    'joint-position': {
      label: 'Joint position',
      hpoByValue: lossIs(equivalent('HP:0010831', 'Impaired proprioception')),
      probe: { kind: 'sensation', modality: 'joint-position' },
    },
  },
);
