import type { NextExamination } from '../../client/generated/api-types.ts';

interface NextItemsProps {
  readonly items: readonly NextExamination[];
  readonly onItem: (item: string, side: 'left' | 'right' | null, place?: string) => void;
}

/** Judged bands of what a result is expected to tell, in bits. */
const muchFrom = 0.4;
const someFrom = 0.12;

export function gainWords(bits: number): string {
  if (bits >= muchFrom) return 'separates well';
  return bits >= someFrom ? 'separates' : 'separates a little';
}

/** A label that names its place has the side in it already. */
export function itemName(label: string, side: NextExamination['side']): string {
  return side === null || label.includes(side) ? label : `${label}, ${side}`;
}

/** What has not been examined and would tell the leading sites apart, the most telling first. */
export function NextItems({ items, onItem }: NextItemsProps) {
  if (items.length === 0) return null;
  return (
    <section class="next" aria-labelledby="next-title">
      <h3 id="next-title">Examine next</h3>
      <ol>
        {items.map(({ item, side, place, label, because, gainBits }) => {
          return (
            <li key={`${item} ${side} ${place}`} class="next-item">
              <button type="button" class="plain" onClick={() => onItem(item, side, place)}>
                {itemName(label, side)}
              </button>{' '}
              <span class="gain">{gainWords(gainBits)}</span>
              <span class="because">{because}</span>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
