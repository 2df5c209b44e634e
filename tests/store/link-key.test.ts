import { describe, expect, it } from 'vitest';
import { openLinkKey } from '../../src/store/link-key.ts';
import { openPostgresEngine } from '../../src/store/postgres/engine.ts';
import { openSqliteEngine } from '../../src/store/sqlite/engine.ts';
import { emptyStores, engines } from '../support/engines.ts';

const newStore = emptyStores();

describe.each(engines)('the key of the links in %s', (name) => {
  it('is made once for a store, however many ask at once, and is another in another store', async () => {
    const open = async () => {
      const target = await newStore(name);
      return target.engine === 'sqlite' ? openSqliteEngine(target.file) : openPostgresEngine(target.url);
    };
    const [one, other] = [await open(), await open()];
    const keys = await Promise.all(Array.from({ length: 4 }, () => openLinkKey(one)));
    keys.push(await openLinkKey(one));
    expect(new Set(keys.map((key) => key.toString('hex'))).size).toBe(1);
    expect(keys[0]?.length).toBe(32);
    expect(await openLinkKey(other)).not.toEqual(keys[0]);
    await one.close();
    await other.close();
  });
});
