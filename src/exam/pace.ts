import type { Exam } from './exam.ts';

/** Whether it is said to have come within seconds, hours or days. */
export const cameFast = ({ pace }: Exam['onset']): boolean => pace === 'hyperacute' || pace === 'acute';
