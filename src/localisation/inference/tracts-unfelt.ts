import type { Exam } from '../../exam/exam.ts';
import { sites } from './history/history-weight.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Shift } from './shift.ts';
import { tells } from './told.ts';

/**
 * Odds of the lateral columns alone where the bladder, the bowel or the back speaks and nobody has felt for sensation: what presses on a cord
 * or inflames it is several times commoner than what takes its motor tracts alone, and those who lose these alone seldom come with
 * back pain (common practice). Judged.
 */
const lateralColumnsUnfelt = 0.5;
const ofWhatPresses: ReadonlySet<string> = new Set([
  'bladder-disturbance',
  'bowel-disturbance',
  'back-pain',
  'neck-pain',
  'radicular-leg-pain',
  'radicular-arm-pain',
  'tight-band',
]);

/** Odds of the inner face of both hemispheres where the spine hurts. Judged. */
const hemispheresWithAPainfulSpine = 0.5;
const spine: ReadonlySet<string> = new Set(['back-pain', 'radicular-leg-pain', 'tight-band']);

/** Weak limbs where feeling was not tried: the cord as a whole comes before its motor tracts alone, and where the back hurts before the head. */
export function tractsUnfeltShifts({ findings, history }: Exam): readonly Shift[] {
  if (!tells(history, ofWhatPresses)) return [];
  if (findings.some(({ modality }) => modality !== undefined)) return [];
  const weak = findings.find(({ abnormal, item }) => abnormal && item.probe.kind === 'movement');
  if (weak === undefined) return [];
  const columns = shiftBy(weak, {
    applies: sites('spinal-cord-lateral'),
    factor: lateralColumnsUnfelt,
    because:
      'nobody has felt for sensation, and what presses on the cord is commoner than what takes its motor tracts alone',
  });
  if (!tells(history, spine)) return [columns];
  const because = 'the spine hurts, and no disease of both hemispheres makes it hurt';
  return [
    columns,
    shiftBy(weak, { applies: sites('cortex-parasagittal'), factor: hemispheresWithAPainfulSpine, because }),
  ];
}
