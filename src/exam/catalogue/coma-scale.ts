import { recalled, type Source } from '../../kernel/cite.ts';
import type { ScoredScale } from '../finding.ts';
import { equivalent } from './code-links.ts';
import type { CodeLink } from './item.ts';

/** One part of a scored scale: its scores from the best downwards, in our own words. */
export interface ScalePart {
  readonly key: keyof ScoredScale['parts'];
  readonly label: string;
  readonly loinc: CodeLink;
  readonly scores: readonly { readonly score: number; readonly label: string }[];
}

export interface ScoredScaleDefinition {
  readonly key: ScoredScale['scale'];
  readonly label: string;
  readonly panel: CodeLink;
  readonly total: CodeLink;
  readonly totalRange: readonly [lowest: number, highest: number];
  readonly parts: readonly ScalePart[];
  readonly source: Source;
}

/** Glasgow coma scale: eye 1-4, verbal 1-5, motor 1-6; the total (3-15) holds only when all three were tested. */
export const comaScale: ScoredScaleDefinition = {
  key: 'glasgow-coma-scale',
  label: 'Glasgow coma scale',
  panel: equivalent('35088-4', 'Glasgow coma scale'),
  total: equivalent('9269-2', 'Glasgow coma score total'),
  totalRange: [3, 15],
  parts: [
    {
      key: 'eye',
      label: 'Eye opening',
      loinc: equivalent('9267-6', 'Glasgow coma score eye opening'),
      scores: [
        { score: 4, label: 'Eyes open unprompted' },
        { score: 3, label: 'Eyes open when spoken to' },
        { score: 2, label: 'Eyes open on pressure' },
        { score: 1, label: 'Eyes stay closed' },
      ],
    },
    {
      key: 'verbal',
      label: 'Verbal response',
      loinc: equivalent('9270-0', 'Glasgow coma score verbal'),
      scores: [
        { score: 5, label: 'Oriented talk' },
        { score: 4, label: 'Confused talk' },
        { score: 3, label: 'Single words' },
        { score: 2, label: 'Sounds only' },
        { score: 1, label: 'Silent' },
      ],
    },
    {
      key: 'motor',
      label: 'Motor response',
      loinc: equivalent('9268-4', 'Glasgow coma score motor'),
      scores: [
        { score: 6, label: 'Follows requests' },
        { score: 5, label: 'Reaches towards the stimulus' },
        { score: 4, label: 'Pulls away' },
        { score: 3, label: 'Abnormal flexion' },
        { score: 2, label: 'Extension' },
        { score: 1, label: 'No movement' },
      ],
    },
  ],
  source: recalled('gcs-1974', 'the three parts'),
};
