import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { opposite } from '../../kernel/side.ts';
import { kinds } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';

/** Signs of a cranial nerve, its nucleus or its fascicle, on the side of the lesion. */
const ofTheNerve: ReadonlySet<string> = new Set([
  'facial-weakness',
  'upper-facial-weakness',
  'third-nerve-palsy',
  'sixth-nerve-palsy',
  'eye-abduction-weakness',
  'esotropia',
  'facial-numbness',
  'absent-corneal-reflex',
  'jaw-weakness',
  'palatal-weakness',
  'tongue-deviation',
  'tongue-weakness',
]);
/** Skin of head and upper neck, which is of no limb. */
const ofTheHead: ReadonlySet<string> = new Set([
  'half-face',
  'forehead',
  'cheek',
  'chin',
  'angle-of-jaw',
  'ear-lobe',
  'vertex',
  'occiput',
  'neck-front',
  'ophthalmic-nerve',
  'maxillary-nerve',
  'mandibular-nerve',
  'C2',
  'C3',
]);
const ofTheTracts: ReadonlySet<string> = new Set([
  'pronator-drift',
  'leg-drift',
  'forearm-rolling',
  'hoffmann',
  'chaddock',
]);

/**
 * Odds of a cranial nerve outside the brainstem where the limbs of the other half have failed too: a crossed palsy is the mark
 * of the brainstem (Brazis, brainstem syndromes, recalled). Judged.
 */
const nerveAlone = 0.35;
const nerves = kinds('cranial-nerve');

function isOfALimb({ item: { key, probe }, modality, place }: Finding): boolean {
  if (modality !== undefined) return place !== undefined && !ofTheHead.has(place.key);
  return probe.kind === 'movement' || probe.kind === 'upper-motor' || ofTheTracts.has(key);
}

/** A cranial nerve of one half with limbs of the other speaks against a lesion of the nerve alone. */
export function crossedShift({ findings }: Exam): readonly Shift[] {
  const wrong = findings.filter(({ abnormal }) => abnormal);
  const [nerve, ...others] = wrong.filter(({ item }) => ofTheNerve.has(item.key));
  if (nerve === undefined || nerve.side === 'midline' || others.some(({ side }) => side !== nerve.side)) return [];
  const limbs = wrong.filter(isOfALimb);
  const across = opposite(nerve.side);
  if (limbs.length === 0 || limbs.some(({ side }) => side !== across)) return [];
  const because = 'a nerve of one half of the head with limbs of the other half is hurt in the brainstem';
  return [shiftBy(nerve, { applies: nerves, factor: nerveAlone, because })];
}
