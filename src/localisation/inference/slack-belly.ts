import type { Exam } from '../../exam/exam.ts';
import { anyOf, kinds, sites, thoracicRoots } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';
import { onEachSide } from './signs/sign-weight.ts';

/**
 * Odds where half of the belly bulges: its wall hangs on the lower thoracic roots, which zoster and diabetes take (common practice); a bowel
 * that stands still beside it is theirs too, and not that of the sacral roots. Judged.
 */
const slackBelly = { roots: 3, sacral: 0.2 } as const;
const ofTheWall = onEachSide(anyOf(thoracicRoots, sites('intercostal-nerves')));
const belowIt = anyOf(kinds('cauda-equina'), sites('conus-medullaris', 'autonomic-neuropathy'));

export function slackBellyShifts({ findings }: Exam): readonly Shift[] {
  const bulges = findings.filter(({ abnormal, item }) => abnormal && item.key === 'abdominal-bulge');
  const [bulge] = bulges;
  if (bulge === undefined || bulges.length > 1 || bulge.side === 'midline') return [];
  return [
    shiftBy(bulge, {
      applies: ofTheWall[bulge.side],
      factor: slackBelly.roots,
      because: 'the wall of the belly hangs on the lower thoracic roots',
    }),
    shiftBy(bulge, {
      applies: belowIt,
      factor: slackBelly.sacral,
      because: 'it does not reach the wall of the belly',
    }),
  ];
}
