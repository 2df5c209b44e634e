const keys: readonly (readonly [string, string])[] = [
  ['/', 'to the line for typed findings'],
  ['↑ ↓ ← →', 'from cell to cell; the name of a row stands for both sides'],
  ['Enter', 'normal; again: all values'],
  ['0 to 5, + and -', 'a grade; after 4, + or - makes 4+ or 4-'],
  ['a letter', 'the value that begins with it; n for normal'],
  ['x', 'not tested; again: the next reason'],
  ['=', 'the same on the other side'],
  ['Delete', 'nothing recorded'],
  ['Ctrl Z', 'undo'],
];

/** What the keys do in the record. */
export function KeyHelp() {
  return (
    <details class="key-help">
      <summary>Keys</summary>
      <dl>
        {keys.map(([key, what]) => (
          <div key={key}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{what}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
