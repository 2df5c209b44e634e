import { stockingsAndGloves } from '../../anatomy/skin-extents.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Finding } from '../../exam/finding.ts';
import { kinds, sites } from './history/history-weight.ts';
import { hasSignOfTheHead, lostFeeling, shiftBy, sidesOf } from './limb-patterns.ts';
import { showsTracts } from './nerve-patterns.ts';
import type { Applies, Shift } from './shift.ts';
import { tells } from './told.ts';

/**
 * A stocking or a glove has an edge that was looked for and runs round the limb. Loss that fades towards the trunk at the same
 * distance on both sides is of the longest fibres; cord and roots lose feeling in segments or below a level. Odds judged: of what
 * lies in segments, with an edge on two limbs and on all four.
 */
const edgeRound = { twoLimbs: 0.3, allLimbs: 0.15 } as const;

/**
 * The same of the columns, of the rest of the cord beyond its segments, and of the ganglia, where nothing of a tract was found
 * either: no brisk jerk, no toe that goes up, no stiffness, and neither position nor vibration is lost. The columns fail from
 * their far end too, and are then found ill themselves. Judged.
 */
const withoutTracts = { columnsOfLegs: 0.25, columnsOfAll: 0.12, otherCord: 0.5, ganglia: 0.4 } as const;
/** What is left of it where the fork is not felt at the feet, which long axons lose as the columns do. Judged. */
const vibrationOfTheFeet = 0.5;

const inSegments = kinds('cord', 'root', 'cauda-equina', 'plexus', 'brainstem', 'hemisphere');
/** Lack of vitamin B12 or copper harms the longest fibres of the columns from their far end, as it does those of nerves. */
const columnsFromTheirEnd = sites('spinal-cord-posterolateral');
const segmental: Applies = (site) => inSegments(site) && !columnsFromTheirEnd(site);
const columnsOfTheCord = sites('spinal-cord-posterolateral', 'spinal-cord-posterior');
const otherCord: Applies = (site) => site.kind === 'cord' && !columnsOfTheCord(site);

const walksWithoutColumns: ReadonlySet<string> = new Set(['romberg', 'sensory-ataxic', 'pseudoathetosis']);
const shockOfTheColumns: ReadonlySet<string> = new Set(['electric-shock-on-neck-flexion']);
const farEnd =
  /^(toes|great-toe|little-toe|whole-foot|sole|dorsum-of-foot|ankle|(medial|lateral)-malleolus|stocking-to-(ankle|mid-calf))$/;

/** What feeling that ends as a stocking or glove does says of the site; held here alone. */
export function stockingEdgeShifts(exam: Exam): readonly Shift[] {
  const edged = lostFeeling(exam.findings).filter(
    ({ place }) => place !== undefined && stockingsAndGloves.has(place.key),
  );
  const [first] = edged;
  if (first === undefined || sidesOf(edged).size < 2) return [];
  const limbs = new Set(edged.map(({ place, side }) => `${place?.key.split('-')[0]} ${side}`));
  return [
    shiftBy(first, {
      applies: segmental,
      factor: limbs.size >= 4 ? edgeRound.allLimbs : edgeRound.twoLimbs,
      because: 'loss with an edge round both limbs follows the length of the fibres and not segments',
    }),
    ...withoutTractsShifts(exam, edged),
  ];
}

function withoutTractsShifts(exam: Exam, edged: readonly Finding[]): readonly Shift[] {
  const ofLegs = edged.filter(({ place }) => place?.key.startsWith('stocking'));
  const [first] = ofLegs;
  const share = shareWithoutTracts(exam);
  if (first === undefined || sidesOf(ofLegs).size < 2 || share === 0) return [];
  const { columnsOfLegs, columnsOfAll, otherCord: other, ganglia } = withoutTracts;
  const because = 'feeling ends as a stocking does, and nothing says that a tract is ill';
  return [
    shiftBy(first, {
      applies: columnsOfTheCord,
      factor: (edged.length > ofLegs.length ? columnsOfAll : columnsOfLegs) ** share,
      because,
    }),
    shiftBy(first, { applies: otherCord, factor: other ** share, because }),
    shiftBy(first, {
      applies: sites('sensory-ganglionopathy'),
      factor: ganglia ** share,
      because: 'feeling ends as a stocking does, and the sense of position is not said to be lost',
    }),
  ];
}

/** 1 where nothing at all of a tract was found or told, less where the fork is not felt at the feet, 0 where something was. */
function shareWithoutTracts(exam: Exam): number {
  const { findings, history } = exam;
  if (showsTracts(exam) || hasSignOfTheHead(findings) || tells(history, shockOfTheColumns)) return 0;
  if (findings.some(({ abnormal, item }) => abnormal && walksWithoutColumns.has(item.key))) return 0;
  const lost = lostFeeling(findings);
  if (lost.some(({ modality }) => modality === 'joint-position')) return 0;
  const vibration = lost.filter(({ modality }) => modality === 'vibration');
  if (vibration.length === 0) return 1;
  return vibration.every(({ place }) => farEnd.test(place?.key ?? '')) ? vibrationOfTheFeet : 0;
}
