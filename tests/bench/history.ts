import { appendFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as echarts from 'echarts';
import { type Figure, targets } from './targets.ts';

/** One run a line: ratios only, since no time compares with one of another machine. */
const historyFile = join(import.meta.dirname, 'history.ndjson');
const plotFile = join(import.meta.dirname, 'history.svg');

interface Run {
  /** Day and time, UTC. */
  readonly at: string;
  readonly node: string;
  readonly modelVersion: string;
  readonly figures: Partial<Record<Figure, number>>;
}

/** Adds a run to the history and draws it anew. */
export function keepInHistory(figures: ReadonlyMap<Figure, number>, modelVersion: string): void {
  const rounded = [...figures].map(([figure, value]) => [figure, Number(value.toPrecision(3))]);
  const run: Run = {
    at: `${new Date().toISOString().slice(0, 16)}Z`,
    node: process.versions.node,
    modelVersion,
    figures: Object.fromEntries(rounded),
  };
  appendFileSync(historyFile, `${JSON.stringify(run)}\n`);
  writeFileSync(plotFile, plot(readHistory()));
}

function readHistory(): readonly Run[] {
  if (!existsSync(historyFile)) return [];
  const lines = readFileSync(historyFile, 'utf8').trimEnd().split('\n');
  return lines.map((line) => JSON.parse(line) as Run);
}

/** How many times better than what a release must reach: 1 is just reached, whichever way the figure runs. */
export function margin(figure: Figure, value: number): number {
  const { must, larger } = targets[figure];
  return larger ? value / must : must / value;
}

const columns = 3;
const [width, height, gap, top] = [300, 130, 50, 70];

/** A small chart for each figure, all on one logarithmic scale, with a line at 1 where a release must be. */
export function plot(runs: readonly Run[]): string {
  const figures = Object.keys(targets) as Figure[];
  const at = (index: number) => ({
    left: gap + (index % columns) * (width + gap),
    top: top + Math.floor(index / columns) * (height + gap),
  });
  const chart = echarts.init(null, null, {
    renderer: 'svg',
    ssr: true,
    width: gap + columns * (width + gap),
    height: top + Math.ceil(figures.length / columns) * (height + gap),
  });
  chart.setOption({
    animation: false,
    title: [
      { text: 'Margin over what a release must reach (1 = just reached, higher is better)', left: 'center' },
      ...figures.map((figure, index) => ({
        text: figure,
        textStyle: { fontSize: 12, fontWeight: 'normal' },
        left: at(index).left,
        top: at(index).top - 24,
      })),
    ],
    grid: figures.map((_, index) => ({ ...at(index), width, height })),
    xAxis: figures.map((_, gridIndex) => ({
      gridIndex,
      type: 'category',
      data: runs.map((run) => run.at.slice(0, 10)),
      axisLabel: { hideOverlap: true },
    })),
    yAxis: figures.map((_, gridIndex) => ({ gridIndex, type: 'log', min: 0.1, max: 10 })),
    series: figures.map((figure, index) => ({
      type: 'line',
      xAxisIndex: index,
      yAxisIndex: index,
      symbolSize: 5,
      data: runs.map(({ figures: of }) => {
        const value = of[figure];
        return value === undefined ? null : Math.min(10, Math.max(0.1, margin(figure, value)));
      }),
      markLine: { symbol: 'none', silent: true, label: { show: false }, data: [{ yAxis: 1 }] },
    })),
  });
  const svg = chart.renderToSVGString();
  chart.dispose();
  return svg;
}
