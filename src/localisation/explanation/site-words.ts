import type { SiteKind } from '../../anatomy/site-kind.ts';
import { lowerFirst } from '../../exam/describe.ts';
import type { Site } from '../hypothesis.ts';

/** What stands before the name of a process; the other kinds are places and have lesions. */
const processLeads: ReadonlyMap<SiteKind, string> = new Map<SiteKind, string>([
  ['polyneuropathy', ''],
  ['polyradiculoneuropathy', ''],
  ['ganglion', ''],
  ['muscle', ''],
  ['multiple-sites', ''],
  ['basal-ganglia', ''],
  ['meninges', ''],
  ['intracranial-pressure', ''],
  ['encephalopathy', 'a '],
  ['none', ''],
  ['motor-neuron-system', ''],
  ['anterior-horn', ''],
  ['junction', 'a '],
  ['multiple-nerves', 'lesions of '],
]);

/** Kinds of places of which there are two, so that a lesion of both says more than one of the midline would. */
const pairedKinds: ReadonlySet<SiteKind> = new Set<SiteKind>([
  'nerve',
  'plexus',
  'cranial-nerve',
  'hemisphere',
  'brainstem',
  'cerebellum',
  'visual-pathway',
]);

/** Whether a site is a process and not a place. */
export function isProcess({ kind, isDiffuse }: Pick<Site, 'kind' | 'isDiffuse'>): boolean {
  return isDiffuse === true || processLeads.has(kind);
}

/**
 * A site as the thing to blame: "a lesion of the left common fibular nerve at the fibular neck", "a lesion of the spinal
 * cord at C6, one half, on the left", "length-dependent sensorimotor polyneuropathy".
 */
export function siteWords({
  label,
  side,
  kind,
  isDiffuse,
  isEitherSide,
}: {
  readonly label: string;
  readonly side: string | null;
  readonly kind: SiteKind;
  readonly isDiffuse?: boolean;
  /** Whether nothing tells on which side it lies. */
  readonly isEitherSide?: boolean;
}): string {
  const name = /^Guyon/.test(label) ? label : lowerFirst(label);
  if (isDiffuse === true && kind === 'hemisphere') return `a disorder of the ${name} on both sides`;
  const lead = /^process /.test(name) ? 'a ' : (processLeads.get(kind) ?? (isDiffuse === true ? '' : undefined));
  // Several places together name the side of each.
  const isSided = (side === 'left' || side === 'right') && !/: (?:left|right) /.test(name);
  if (lead !== undefined) return `${lead}${name}${isSided ? ` on the ${side}` : ''}`;
  if (isEitherSide === true) return `a lesion of the ${name}, side not told`;
  if (!isSided) {
    const isOnBoth = side === 'both' && pairedKinds.has(kind) && !/\bboth\b|^foramen/.test(name);
    return `a lesion of the ${name}${isOnBoth ? ' on both sides' : ''}`;
  }
  return /,| in the cord/.test(name) ? `a lesion of the ${name}, on the ${side}` : `a lesion of the ${side} ${name}`;
}
