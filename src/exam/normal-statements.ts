import { compareText } from '../kernel/compare-text.ts';
import type { Fault } from '../kernel/errors.ts';
import { itemsOf } from './catalogue/catalogue.ts';
import { sectionKeys } from './catalogue/item.ts';
import { isInRegion } from './expand.ts';
import type { SoundEntry } from './faults/sound-parts.ts';
import type { NormalStatement } from './finding.ts';

type StatementEntry = Omit<NormalStatement, 'pointer'>;

/** What the examiner declared normal, in the order of the examination, and the faults of statements about nothing. */
export function readStatements(entries: readonly SoundEntry<StatementEntry>[]): {
  readonly statements: readonly NormalStatement[];
  readonly faults: readonly Fault[];
} {
  const statements = entries.map(({ entry, pointer }) => ({
    section: entry.section,
    ...(entry.region === undefined ? {} : { region: entry.region }),
    ...(entry.side === undefined ? {} : { side: entry.side }),
    pointer,
  }));
  const faults = statements.filter((statement) => !coversAnything(statement)).map(nothingCovered);
  const order = (statement: NormalStatement): string =>
    [
      String(sectionKeys.indexOf(statement.section)).padStart(2, '0'),
      statement.region ?? '',
      statement.side ?? '',
    ].join('|');
  return { statements: statements.sort((a, b) => compareText(order(a), order(b))), faults };
}

function coversAnything({ section, region, side }: NormalStatement): boolean {
  const isOneSide = side === 'left' || side === 'right';
  return itemsOf(section).some(
    (item) => (region === undefined || isInRegion(item, region)) && !(isOneSide && item.sides === 'midline'),
  );
}

function nothingCovered({ section, region, side, pointer }: NormalStatement): Fault {
  const where = [region === undefined ? '' : ` in region '${region}'`, side === undefined ? '' : ` on side '${side}'`];
  return {
    pointer,
    code: 'NOTHING_COVERED',
    message: `Section '${section}' has no item${where.join('')}, so nothing is declared normal by this.`,
  };
}
