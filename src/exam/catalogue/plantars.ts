import { recalled } from '../../kernel/cite.ts';
import { equivalent } from './code-links.ts';
import { sectionTable } from './section-table.ts';

/** The plantar response. */
export const plantars = sectionTable(
  'plantars',
  { scale: 'plantar-response', sides: 'paired', region: 'lower-limbs', source: recalled('dejong', 'plantar response') },
  {
    'plantar-response': {
      label: 'Plantar response',
      bodyPart: 'foot',
      hpoByValue: { extensor: equivalent('HP:0003487', 'Babinski sign') },
      loinc: equivalent('32385-7', 'Babinski reflex'),
      probe: { kind: 'plantar' },
    },
  },
);
