import type { Modality } from '../../anatomy/probe.ts';
import type { SkinPlace } from '../../anatomy/skin.ts';
import type { Side } from '../../kernel/side.ts';
import type { Hypothesis } from '../hypothesis.ts';
import { type Strand, sensoryThrough, strandsOf } from './strands.ts';

/** Loss of one modality at one place under a hypothesis: outside the cord, within cord and brain, together; 0 to 1. */
export interface SensoryDeficit {
  readonly peripheral: number;
  readonly central: number;
  readonly total: number;
}

export interface SensoryItem {
  readonly place: SkinPlace;
  readonly modality: Modality;
  readonly side: Side;
  readonly strands: readonly Strand[];
}

export function sensoryItem(place: SkinPlace, modality: Modality, side: Side): SensoryItem {
  return { place, modality, side, strands: strandsOf(place.supplies, side) };
}

/**
 * Which fibres and which tract each modality uses: share of large fibres at the periphery, share of the dorsal columns
 * centrally, and how soon a loss of large fibres shows: the power to which the loss is raised is its inverse, so that all is
 * lost with the last fibre. Position sense fails after vibration, touch after both.
 * Source: Blumenfeld, somatosensory pathways (recalled); the order in neuropathy after Vrancken 2006 (read), factors judged.
 */
const routes: Readonly<
  Record<Modality, { readonly large: number; readonly column: number; readonly sensitivity: number }>
> = {
  vibration: { large: 1, column: 1, sensitivity: 1 },
  'joint-position': { large: 1, column: 1, sensitivity: 0.7 },
  'light-touch': { large: 0.7, column: 0.65, sensitivity: 0.85 },
  pinprick: { large: 0, column: 0, sensitivity: 1 },
  temperature: { large: 0, column: 0, sensitivity: 1 },
};

export function sensoryDeficit(hypothesis: Hypothesis, item: SensoryItem): SensoryDeficit {
  const route = routes[item.modality];
  const { pathways, process } = hypothesis;
  let peripheral = 0;
  let through = 0;
  let centralOnly = 0;
  for (const strand of item.strands) {
    const fibre = { side: strand.side, segment: strand.segment, lengthCm: item.place.lengthCm };
    const large = process.largeFibre(fibre) ** (1 / route.sensitivity);
    const small = process.smallFibre(fibre);
    const kept = sensoryThrough(hypothesis, strand) * (1 - (route.large * large + (1 - route.large) * small));
    const central =
      strand.segment === null
        ? route.column * pathways.faceSensation(strand.side, 'position') +
          (1 - route.column) * pathways.faceSensation(strand.side, 'pain')
        : route.column * pathways.positionFrom(strand.side, strand.segment) +
          (1 - route.column) * pathways.painFrom(strand.side, strand.segment);
    peripheral += strand.share * kept;
    centralOnly += strand.share * central;
    through += strand.share * kept * central;
  }
  return { peripheral: 1 - peripheral, central: 1 - centralOnly, total: 1 - through };
}
