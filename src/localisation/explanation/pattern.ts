import type { SiteKind } from '../../anatomy/site-kind.ts';
import type { Finding } from '../../exam/finding.ts';
import type { Pattern, RankedLocalisation } from '../localisation.ts';

/** Name of the syndrome that a kind of site makes. */
const syndromes: Readonly<Record<SiteKind, { readonly key: string; readonly label: string }>> = {
  none: { key: 'no-abnormality', label: 'No abnormal neurological pattern' },
  muscle: { key: 'myopathy', label: 'Myopathy' },
  junction: { key: 'junction-disorder', label: 'Disorder of neuromuscular transmission' },
  nerve: { key: 'mononeuropathy', label: 'Mononeuropathy' },
  'multiple-nerves': { key: 'multiple-mononeuropathy', label: 'Several single nerves' },
  polyneuropathy: { key: 'polyneuropathy', label: 'Polyneuropathy' },
  polyradiculoneuropathy: { key: 'polyradiculoneuropathy', label: 'Polyradiculoneuropathy' },
  ganglion: { key: 'sensory-ganglionopathy', label: 'Sensory ganglionopathy' },
  plexus: { key: 'plexopathy', label: 'Plexopathy' },
  root: { key: 'radiculopathy', label: 'Radiculopathy' },
  'cauda-equina': { key: 'cauda-equina-syndrome', label: 'Cauda equina syndrome' },
  'anterior-horn': { key: 'anterior-horn-disease', label: 'Anterior horn disease' },
  'motor-neuron-system': { key: 'upper-and-lower-motor-neuron-disease', label: 'Upper and lower motor neuron disease' },
  cord: { key: 'myelopathy', label: 'Myelopathy' },
  brainstem: { key: 'brainstem-syndrome', label: 'Brainstem syndrome' },
  cerebellum: { key: 'cerebellar-syndrome', label: 'Cerebellar syndrome' },
  hemisphere: { key: 'hemispheric-syndrome', label: 'Hemispheric syndrome' },
  'visual-pathway': { key: 'visual-pathway-syndrome', label: 'Lesion of the visual pathway' },
  'cranial-nerve': { key: 'cranial-neuropathy', label: 'Cranial neuropathy' },
  'basal-ganglia': { key: 'extrapyramidal-syndrome', label: 'Extrapyramidal syndrome' },
  meninges: { key: 'meningeal-syndrome', label: 'Meningeal syndrome' },
  'intracranial-pressure': { key: 'raised-intracranial-pressure', label: 'Raised intracranial pressure' },
  encephalopathy: { key: 'encephalopathy', label: 'Encephalopathy' },
  'multiple-sites': { key: 'multiple-sites', label: 'More than one site' },
};

/** Sites whose syndrome is narrower than that of their kind. */
const syndromesOfSites: ReadonlyMap<string, { readonly key: string; readonly label: string }> = new Map([
  ['upper-motor-neuron-system', { key: 'upper-motor-neuron-disease', label: 'Upper motor neuron disease' }],
  ['frontal-gait-disorder', { key: 'higher-level-gait-disorder', label: 'Higher-level disorder of gait' }],
  ['autonomic-neuropathy', { key: 'autonomic-neuropathy', label: 'Autonomic neuropathy' }],
]);

/** Every pattern that an answer can name, each once. */
export const patterns: readonly { readonly key: string; readonly label: string }[] = [
  ...new Map(
    [...Object.values(syndromes), ...syndromesOfSites.values()].map((one) => [one.key, one] as const),
  ).values(),
];

/** Signs, read straight from the findings, that the upper or the lower motor neuron is affected. */
function motorNeuron(abnormal: readonly Finding[]): Pattern['motorNeuron'] {
  const upper = abnormal.some(({ item, value }) => {
    switch (item.probe.kind) {
      case 'reflex':
        return item.scale === 'reflex-grade' && value === '4';
      case 'plantar':
        return value === 'extensor';
      case 'tone':
        return value === 'spastic';
      case 'clonus':
      case 'upper-motor':
        return true;
      default:
        return false;
    }
  });
  const weak = abnormal.some(({ item }) => item.probe.kind === 'movement');
  const lower = abnormal.some(({ item, value }) => {
    switch (item.probe.kind) {
      case 'reflex':
        return weak && item.scale === 'reflex-grade' && (value === '0' || value === 'trace' || value === '1');
      case 'denervation':
        return true;
      case 'tone':
        return value === 'reduced' && weak;
      default:
        return false;
    }
  });
  if (upper && lower) return 'both';
  if (upper) return 'upper';
  return lower ? 'lower' : 'none';
}

/** Kinds of site that weaken by the lower motor neuron or beyond, when the reflexes and bulk say nothing. */
export const lowerKinds: ReadonlySet<SiteKind> = new Set([
  'nerve',
  'multiple-nerves',
  'polyneuropathy',
  'polyradiculoneuropathy',
  'plexus',
  'root',
  'cauda-equina',
  'anterior-horn',
]);
const upperKinds: ReadonlySet<SiteKind> = new Set(['hemisphere', 'brainstem']);

function symmetry(abnormal: readonly Finding[]): Pattern['symmetry'] {
  const count = (side: Finding['side']): number => abnormal.filter((finding) => finding.side === side).length;
  const left = count('left');
  const right = count('right');
  if (left + right === 0) return count('midline') > 0 ? 'midline' : 'none';
  if (left === 0 || right === 0) return 'one-sided';
  return Math.min(left, right) / Math.max(left, right) >= 0.7 ? 'symmetrical' : 'asymmetrical';
}

/** The shape of the abnormal findings and the name of the syndrome that the leading site makes of it. */
export function describePattern(findings: readonly Finding[], leading: RankedLocalisation | undefined): Pattern {
  const abnormal = findings.filter((finding) => finding.abnormal);
  const kind = leading?.kind ?? 'none';
  const read = motorNeuron(abnormal);
  const weak = abnormal.some(({ item }) => item.probe.kind === 'movement');
  const implied = !weak ? 'none' : lowerKinds.has(kind) ? 'lower' : upperKinds.has(kind) ? 'upper' : 'none';
  const modalities = [
    ...new Set(abnormal.flatMap(({ item }) => (item.probe.kind === 'sensation' ? [item.probe.modality] : []))),
  ];
  return {
    ...(syndromesOfSites.get(leading?.site ?? '') ?? syndromes[kind]),
    motorNeuron: read === 'none' ? implied : read,
    symmetry: symmetry(abnormal),
    modalities,
  };
}
