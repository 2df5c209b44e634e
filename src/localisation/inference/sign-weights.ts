import { describeFinding } from '../../exam/describe.ts';
import type { Exam } from '../../exam/exam.ts';
import type { Shift } from './shift.ts';
import { recordedSigns } from './signs/recorded-signs.ts';
import type { SignWeight } from './signs/sign-weight.ts';

export const signWeightRows: readonly SignWeight[] = recordedSigns;

const byKey = new Map<string, SignWeight[]>();
for (const weight of signWeightRows) byKey.set(weight.key, [...(byKey.get(weight.key) ?? []), weight]);

/** How signs that no pathway decides shift the odds of sites; one that is found in several places counts once. */
export function signShifts(exam: Exam): readonly Shift[] {
  const counted = new Set<string>();
  return exam.findings.flatMap((finding) => {
    const { key } = finding.item;
    if (!finding.abnormal || counted.has(key)) return [];
    counted.add(key);
    return (byKey.get(key) ?? []).map(({ applies, present, because }) => ({
      applies,
      factor: present,
      because,
      pointer: finding.pointer,
      text: describeFinding(finding),
      abnormal: true,
      id: finding.id,
    }));
  });
}
