import { segmentIndex, segments } from '../../anatomy/segments.ts';
import type { BodySide } from '../../kernel/side.ts';
import type { Site } from '../hypothesis.ts';
import type { LesionBuilder } from '../lesion.ts';
import { type FacultyChances, facultyKey } from '../process.ts';

/** How often the cord is damaged at a segment, relative to a mid-thoracic one. Judged from where discs, tumours and inflammation sit. */
export function levelFrequency(segment: number): number {
  if (segment < segmentIndex('C3')) return 0.6;
  if (segment < segmentIndex('C8')) return 4;
  if (segment <= segmentIndex('T3')) return 1.2;
  if (segment <= segmentIndex('T12')) return 1.6;
  return 0.7;
}

const highest = segmentIndex('C1');
const lowest = segmentIndex('S1');
export const cordLevels = segments.map((_, index) => index).filter((index) => index >= highest && index <= lowest);
export const totalFrequency = cordLevels.reduce((sum, level) => sum + levelFrequency(level), 0);

export function cordSite(key: string, part: string, level: number, side: Site['side']): Site {
  const segment = segments[level] ?? 'C1';
  return { key, label: `Spinal cord at ${segment}, ${part}`, side, level: segment, kind: 'cord' };
}

/** Grey matter and entering root of one side at the lesion; of the anterior horn a share one segment below it too. */
export function ownSegment(lesion: LesionBuilder, side: BodySide, level: number, depth: number): void {
  lesion.cord('anteriorHorn', side, level, depth).cord('anteriorHorn', side, level + 1, depth * 0.25);
  lesion.cord('dorsalRoot', side, level, depth * 0.2);
  lesion.cord('crossing', side, level, depth);
}

/** Chance that blood, pus, a tumour or a broken bone at the cord of the neck makes it stiff. Judged. */
const stiffNeck = 0.05;

/**
 * Signs above and beside the limbs that a lesion at a level brings: numbness of the face from the spinal tract of the
 * trigeminal nerve, which comes down to C2; falls of blood pressure where the outflow below T6 is cut off on both sides. Chances judged.
 */
export function signsAtLevel(sides: readonly BodySide[], level: number, depth: number): FacultyChances {
  const chances = new Map<string, number>();
  if (level <= segmentIndex('T1'))
    chances.set(facultyKey('meningeal', 'midline'), (stiffNeck * depth * sides.length) / 2);
  for (const side of sides) {
    if (level <= segmentIndex('C2')) chances.set(facultyKey('trigeminal-sensation', side), 0.25 * depth);
  }
  if (sides.length === 2 && level <= segmentIndex('T6')) {
    chances.set(facultyKey('blood-pressure', 'midline'), 0.3 * depth);
    if (level <= segmentIndex('C8')) chances.set(facultyKey('heart-rate', 'midline'), 0.15 * depth);
  }
  return chances;
}
