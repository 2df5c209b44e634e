import { describe, expect, it } from 'vitest';
import { allCauses } from '../../src/causes/table/all-causes.ts';
import { items } from '../../src/exam/catalogue/catalogue.ts';
import { historyRows } from '../../src/exam/catalogue/history.ts';
import { itemId } from '../../src/exam/catalogue/item.ts';
import { resultByKey } from '../../src/exam/catalogue/results.ts';
import { works } from '../../src/kernel/works.ts';

const itemIds = new Set(items.map(itemId));
const historyKeys = new Set(historyRows.map((row) => (row.kind === 'family' ? `family/${row.key}` : row.key)));

describe('tables of causes', () => {
  it('holds at least sixty causes, each under its own key', () => {
    expect(allCauses.length).toBeGreaterThanOrEqual(60);
    expect(new Set(allCauses.map((cause) => cause.key)).size).toBe(allCauses.length);
  });

  it('gives no MONDO class to two causes', () => {
    const codes = allCauses.flatMap((cause) => (cause.mondo === undefined ? [] : [cause.mondo.code]));
    expect(new Set(codes).size).toBe(codes.length);
    expect(codes.every((code) => /^MONDO:\d{7}$/.test(code))).toBe(true);
  });

  it('names only signs, history and results that the catalogue knows', () => {
    const unknown: string[] = [];
    for (const cause of allCauses) {
      for (const id of (cause.signs ?? []).flatMap((row) => row.items)) if (!itemIds.has(id)) unknown.push(id);
      for (const key of (cause.history ?? []).flatMap((row) => row.keys)) if (!historyKeys.has(key)) unknown.push(key);
      for (const row of cause.quantities ?? []) {
        const result = resultByKey.get(row.result);
        if (result?.kind !== 'quantity' || result.unit !== row.unit) unknown.push(`${row.result} in ${row.unit}`);
      }
      for (const row of cause.values ?? []) {
        const result = resultByKey.get(row.result);
        const values = result?.kind === 'coded' ? result.values.map((value) => value.key) : [];
        for (const [value] of row.ratios) if (!values.includes(value)) unknown.push(`${row.result} = ${value}`);
      }
    }
    expect(unknown).toEqual([]);
  });

  it('spreads the onset of every cause over the four paces', () => {
    for (const cause of allCauses) {
      const sum = Object.values(cause.tempo).reduce((total, share) => total + share, 0);
      expect(sum, cause.key).toBeCloseTo(1, 6);
    }
  });

  it('never lets one statement or result decide alone that a cause is impossible', () => {
    for (const cause of allCauses) {
      const ratios = [
        ...(cause.history ?? []).flatMap((row) => [row.present, row.absent]),
        ...(cause.signs ?? []).flatMap((row) => [row.present, row.absent]),
        ...(cause.quantities ?? []).flatMap((row) => [row.whenMet, row.whenNot]),
        ...(cause.values ?? []).flatMap((row) => row.ratios.map(([, ratio]) => ratio)),
      ];
      expect(
        ratios.every((ratio) => ratio > 0 && Number.isFinite(ratio)),
        cause.key,
      ).toBe(true);
    }
  });

  it('names a work of the bibliography as the source of every cause', () => {
    for (const cause of allCauses) expect(works[cause.source.work], cause.key).toBeTruthy();
  });
});
