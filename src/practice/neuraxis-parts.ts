import type { SiteKind } from '../anatomy/site-kind.ts';

/**
 * Parts of the neuraxis from above downwards, as a learner chooses among them. `share` is how many of a hundred practice
 * patients have their lesion there: a fair mix, not how often it is met. Judged.
 */
export const neuraxisParts = {
  hemispheres: { label: 'Cerebral hemispheres and visual pathway', kinds: ['hemisphere', 'visual-pathway'], share: 13 },
  'whole-brain': {
    label: 'Brain as a whole, meninges and pressure',
    kinds: ['encephalopathy', 'meninges', 'intracranial-pressure'],
    share: 4,
  },
  'basal-ganglia-and-cerebellum': {
    label: 'Basal ganglia and cerebellum',
    kinds: ['basal-ganglia', 'cerebellum'],
    share: 9,
  },
  brainstem: { label: 'Brainstem', kinds: ['brainstem'], share: 10 },
  'cranial-nerves': { label: 'Cranial nerves', kinds: ['cranial-nerve'], share: 9 },
  'spinal-cord': { label: 'Spinal cord', kinds: ['cord'], share: 13 },
  'motor-neurons': { label: 'Motor neurons', kinds: ['anterior-horn', 'motor-neuron-system'], share: 4 },
  'roots-and-plexuses': {
    label: 'Roots, cauda equina and plexuses',
    kinds: ['root', 'cauda-equina', 'plexus'],
    share: 12,
  },
  nerves: { label: 'Single nerves', kinds: ['nerve', 'multiple-nerves'], share: 10 },
  polyneuropathies: {
    label: 'Many nerves at once',
    kinds: ['polyneuropathy', 'polyradiculoneuropathy', 'ganglion'],
    share: 8,
  },
  'muscle-and-junction': { label: 'Muscle and neuromuscular junction', kinds: ['muscle', 'junction'], share: 8 },
  none: { label: 'Nothing damaged', kinds: ['none'], share: 6 },
} as const satisfies Record<
  string,
  { readonly label: string; readonly kinds: readonly SiteKind[]; readonly share: number }
>;

export type NeuraxisPart = keyof typeof neuraxisParts;

export const neuraxisPartKeys = Object.keys(neuraxisParts) as readonly NeuraxisPart[];

const partByKind = new Map<SiteKind, NeuraxisPart>(
  neuraxisPartKeys.flatMap((part) => neuraxisParts[part].kinds.map((kind) => [kind, part] as const)),
);

/** @throws RangeError for a kind that no hypothesis has */
export function partOfKind(kind: SiteKind): NeuraxisPart {
  const part = partByKind.get(kind);
  if (part === undefined) throw new RangeError(`no part of the neuraxis has sites of the kind ${kind}`);
  return part;
}
