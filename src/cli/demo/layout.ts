/** Plain text for a terminal: wrapped paragraphs, bullet points and aligned tables. */

/** Breaks a text at spaces so that no line is longer than `width`, unless a single word is. */
export function wrap(text: string, width: number, indent = '', firstIndent = indent): string {
  const lines: string[] = [];
  for (const paragraph of text.split('\n')) {
    let line = lines.length === 0 ? firstIndent : indent;
    let isEmpty = true;
    for (const word of paragraph.split(' ').filter((part) => part !== '')) {
      if (!isEmpty && line.length + 1 + word.length > width) {
        lines.push(line);
        line = indent + word;
      } else {
        line += isEmpty ? word : ` ${word}`;
      }
      isEmpty = false;
    }
    lines.push(line.trimEnd());
  }
  return lines.join('\n');
}

export function bullets(texts: readonly string[], width: number, indent = '  '): string {
  return texts.map((text) => wrap(text, width, `${indent}  `, `${indent}- `)).join('\n');
}

/**
 * Aligned columns, cut where they would be wider than allowed; the first row is the head.
 * @param width  longest line
 * @param limits longest cell of each column but the last, which gets the rest; absent is unlimited
 */
export function table(rows: readonly (readonly string[])[], width: number, limits: readonly number[] = []): string {
  const shown = rows.map((row) => row.map((cell, column) => cut(cell, limits[column] ?? width)));
  const widths = (shown[0] ?? []).map((_, column) => Math.max(...shown.map((row) => (row[column] ?? '').length)));
  return shown
    .map((row) => {
      const cells = row.map((cell, column) => (column === row.length - 1 ? cell : cell.padEnd(widths[column] ?? 0)));
      return cut(`  ${cells.join('  ')}`.trimEnd(), width);
    })
    .join('\n');
}

function cut(text: string, length: number): string {
  return text.length > length ? `${text.slice(0, length - 3).trimEnd()}...` : text;
}
