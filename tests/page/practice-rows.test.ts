import { describe, expect, it } from 'vitest';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import { addressOf, cellKey } from '../../src/page/draft/draft.ts';
import { askedItem } from '../../src/page/practice/asked-item.ts';
import { cellsOfRow, rowsOf } from '../../src/page/practice/practice-rows.ts';
import { partsOf } from '../../src/page/recording/parts.ts';
import { readAskedItems } from '../../src/practice/asked-items.ts';
import { catalogue } from './catalogue.ts';

const index = indexCatalogue(catalogue);

describe('the rows of practice', () => {
  it('ask for what the service takes, each cell as one item on one side', () => {
    const cells = partsOf(index)
      .flatMap(({ groups }) => groups)
      .flatMap((group) => rowsOf(group, index))
      .flatMap(cellsOfRow);
    const asked = cells.map((cell) => askedItem(cell, index));
    const { targets, faults } = readAskedItems(asked, '/items');
    expect(faults).toEqual([]);
    expect(targets.map(({ pointer }) => pointer)).toEqual(asked.map((_, at) => `/items/${at}`));
    expect(cells.length).toBeGreaterThan(300);
    for (const cell of cells) expect(askedItem(cellKey(cell), index)).toEqual(askedItem(cell, index));
    expect(cells.map((cell) => addressOf(cellKey(cell)))).toEqual(cells);
  });
});
