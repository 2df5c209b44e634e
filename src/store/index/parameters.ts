import sql from 'sql-template-tag';
import type { SearchRules } from '../../search/search-rules.ts';
import type { Engine } from '../engine.ts';
import type { ParameterIds } from './layout.ts';
import { type StoredType, storedTypes } from './stored-types.ts';

/** What every type is searched by, beside what the standard names for it. */
export const commonParameters = ['_id', '_lastUpdated'] as const;

/** Numbers of the search parameters of every kept type. */
export async function openParameters(
  engine: Engine,
  { namesOf, indexedUnder }: Pick<SearchRules, 'namesOf' | 'indexedUnder'>,
): Promise<ParameterIds> {
  const wanted = storedTypes.flatMap((type) =>
    [...new Set([...commonParameters, ...namesOf(type)])].map((name) => [type, name]),
  );
  const known = await allParameters(engine);
  const missing = wanted.filter(([type, name]) => !known.has(`${type} ${name}`));
  if (missing.length > 0) {
    await engine.write((session) =>
      session.insert('parameter', { type: 'text', name: 'text' }, missing, 'ON CONFLICT DO NOTHING'),
    );
  }
  const numbers = missing.length > 0 ? await allParameters(engine) : known;
  const number = (type: StoredType, name: string): number => {
    const found = numbers.get(`${type} ${name}`);
    if (found === undefined) throw new RangeError(`${type} has no search parameter ${name}.`);
    return found;
  };
  return {
    number,
    under: (type, name) => indexedUnder(type, name).map((one) => number(type, one)),
    isIndexed: (type, name) => indexedUnder(type, name).includes(name),
  };
}

async function allParameters(engine: Engine): Promise<ReadonlyMap<string, number>> {
  const rows = await engine.reader.all<{ n: number; type: string; name: string }>(
    sql`SELECT n, type, name FROM parameter`,
  );
  return new Map(rows.map(({ n, type, name }) => [`${type} ${name}`, n]));
}
