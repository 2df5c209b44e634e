import type { Ring } from './trace.ts';

/** Rings as SVG path data in whole units: absolute starts, then relative lines, the shortest plain form. */
export function pathData(rings: readonly Ring[], shiftX = 0): string {
  return rings.map((ring) => `${openPathData(ring, shiftX)}z`).join('');
}

/** A line that is not closed. */
export function openPathData([start, ...rest]: Ring, shiftX = 0): string {
  if (start === undefined) return '';
  let [x, y] = start;
  const lines = rest.map(([nextX, nextY]) => {
    const step = `${nextX - x}${nextY - y < 0 ? '' : ' '}${nextY - y}`;
    [x, y] = [nextX, nextY];
    return step;
  });
  const joined = lines.reduce((data, line) => data + (data === '' || line.startsWith('-') ? '' : ' ') + line, '');
  return `M${start[0] + shiftX} ${start[1]}l${joined}`;
}

/** The rings of path data that `pathData` wrote. */
export function ringsOf(data: string): readonly Ring[] {
  return data
    .split('z')
    .filter((part) => part !== '')
    .map((part) => {
      const [x = 0, y = 0, ...steps] = (part.match(/-?\d+/g) ?? []).map(Number);
      const ring: [number, number][] = [[x, y]];
      for (let index = 0; index < steps.length; index += 2) {
        const [lastX, lastY] = ring.at(-1) ?? [x, y];
        ring.push([lastX + (steps[index] ?? 0), lastY + (steps[index + 1] ?? 0)]);
      }
      return ring;
    });
}
