import { table } from './statistics.ts';
import { type Figure, targets, verdict } from './targets.ts';

/** Figures of one run, each beside the floor that was measured in turns with it. */
export interface Report {
  /**
   * @param floor what was measured with nothing but the unavoidable, with its unit
   * @param service the same of the service
   * @param value what is judged: a ratio to the floor, or an amount where the target is one
   */
  add(figure: Figure, name: string, floor: string, service: string, value: number, note?: string): void;
  /** Something worth knowing beside the figures. */
  say(line: string): void;
  readonly values: ReadonlyMap<Figure, number>;
  print(): void;
}

export function createReport(): Report {
  const rows: string[][] = [['measure', 'floor', 'service', 'ratio (range)', 'must', 'goal', 'verdict']];
  const values = new Map<Figure, number>();
  return {
    add(figure, name, floor, service, value, note = '') {
      const target = targets[figure];
      const shown = value >= 10 ? value.toFixed(0) : value.toFixed(2);
      rows.push([name, floor, service, shown + note, String(target.must), String(target.goal), verdict(value, target)]);
      values.set(figure, value);
      console.log(`${name}: ${floor} | ${service} | ${shown}${note}`);
    },
    say: (line) => console.log(line),
    values,
    print: () => console.log(`\n${table(rows)}`),
  };
}

export const microseconds = (value: number) => `${value.toFixed(0)} us`;
export const milliseconds = (value: number) => `${value.toFixed(value < 10 ? 2 : 0)} ms`;
export const perSecond = (value: number) => `${value.toFixed(0)}/s`;
export const megabytes = (bytes: number) => `${(bytes / 1024 / 1024).toFixed(0)} MB`;
