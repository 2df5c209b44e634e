import Database from 'better-sqlite3';
import fc from 'fast-check';
import { Client } from 'pg';
import sql, { raw, type Sql } from 'sql-template-tag';
import { describe, expect, it } from 'vitest';
import { linkHash } from '../../src/audit/audit-chain.ts';
import type { AuditRecord } from '../../src/audit/audit-record.ts';
import { type AuditReader, openAuditReader } from '../../src/store/audit/open-audit-reader.ts';
import { verifyAudit } from '../../src/store/audit/verify-audit.ts';
import type { StoreTarget } from '../../src/store/open-stores.ts';
import { auditRecords } from '../support/audit-records.ts';
import { type EngineName, emptyStores, engines } from '../support/engines.ts';
import { openTestStores } from '../support/stores.ts';

const newStore = emptyStores();

const read = (client: string, n: number): AuditRecord => ({
  at: new Date(Date.parse('2026-11-01T00:00:00Z') + n * 1000).toISOString(),
  interaction: 'read',
  action: 'R',
  outcome: '0',
  client,
  resource: `Observation/${n}`,
  patients: [{ reference: `Patient/${n % 3}` }],
});

async function verify(target: StoreTarget, anchor?: string) {
  const reader = await openAuditReader(target);
  try {
    return await verifyAudit(reader, anchor);
  } finally {
    await reader.close();
  }
}

/** Somebody with every right on the database, who gets round the triggers; what is done is taken back by `undo`. */
interface Intruder extends AuditReader {
  run(query: Sql): Promise<void>;
  undo(): Promise<void>;
}

async function intruderIn(target: StoreTarget): Promise<Intruder> {
  if (target.engine === 'sqlite') {
    const db = new Database(target.file);
    for (const name of db
      .prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger' AND name LIKE 'audit%'")
      .pluck()
      .all()) {
      db.exec(`DROP TRIGGER ${String(name)}`);
    }
    db.exec('BEGIN');
    return {
      all: async <Row>(query: Sql) => db.prepare(query.sql).all(...query.values) as Row[],
      run: async (query) => void db.prepare(query.sql).run(...query.values),
      undo: async () => void db.exec('ROLLBACK; BEGIN'),
      close: async () => void db.close(),
    };
  }
  const client = new Client({ connectionString: target.url, options: '-c search_path=neuroexam' });
  await client.connect();
  await client.query('SET session_replication_role = replica');
  await client.query('BEGIN');
  return {
    all: async <Row>({ text, values }: Sql) => (await client.query({ text, values })).rows as Row[],
    run: async ({ text, values }) => void (await client.query({ text, values })),
    undo: async () => void (await client.query('ROLLBACK; BEGIN')),
    close: () => client.end(),
  };
}

const length = 24;
const places = fc.integer({ min: 1, max: length });

interface Row {
  readonly n: number;
  readonly record: string;
  readonly previous: Buffer;
  readonly hash: Buffer;
}

async function rowAt(intruder: Intruder, n: number): Promise<Row> {
  const [row] = await intruder.all<Row>(
    sql`SELECT n, record, previous_hash AS previous, hash FROM audit_event WHERE n = ${n}`,
  );
  return row as Row;
}

/** Writes every hash anew from an entry on, as somebody who knows how the chain is made. */
async function rehash(intruder: Intruder, from: number, to: number): Promise<void> {
  let previous = from === 1 ? Buffer.alloc(32) : (await rowAt(intruder, from - 1)).hash;
  for (let n = from; n <= to; n += 1) {
    const hash = linkHash(previous, (await rowAt(intruder, n)).record);
    await intruder.run(sql`UPDATE audit_event SET previous_hash = ${previous}, hash = ${hash} WHERE n = ${n}`);
    previous = hash;
  }
}

async function setHead(intruder: Intruder, n: number): Promise<void> {
  const hash = n === 0 ? Buffer.alloc(32) : (await rowAt(intruder, n)).hash;
  await intruder.run(sql`UPDATE audit_head SET n = ${n}, hash = ${hash}`);
}

async function removeFrom(intruder: Intruder, n: number, to = length): Promise<void> {
  await intruder.run(sql`DELETE FROM audit_event WHERE n >= ${n} AND n <= ${to}`);
  await intruder.run(sql`DELETE FROM audit_entry WHERE n >= ${n} AND n <= ${to}`);
}

/** Moves what stands from an entry on by some places. */
async function shift(intruder: Intruder, from: number, by: number): Promise<void> {
  for (const table of ['audit_event', 'audit_entry']) {
    await intruder.run(sql`UPDATE ${raw(table)} SET n = n + 100000 WHERE n >= ${from}`);
    await intruder.run(sql`UPDATE ${raw(table)} SET n = n - 100000 + ${raw(String(by))} WHERE n >= 100000`);
  }
}

type Tampering = (intruder: Intruder, n: number, other: number) => Promise<void>;

/** Each leaves a trail that differs from the one written. The last three show by an anchor alone. */
const tamperings: Readonly<Record<string, Tampering>> = {
  'an entry is removed': (intruder, n) => removeFrom(intruder, n, n),
  'an entry is removed and the gap closed': async (intruder, n) => {
    await removeFrom(intruder, n, n);
    await shift(intruder, n + 1, -1);
  },
  'the newest are removed': (intruder, n) => removeFrom(intruder, n),
  'the whole table is emptied': (intruder) => removeFrom(intruder, 1),
  'the text is edited': async (intruder, n) => {
    const { record } = await rowAt(intruder, n);
    await intruder.run(sql`UPDATE audit_event SET record = ${record.replace('reader', 'nobody')} WHERE n = ${n}`);
  },
  'the text is edited and the entry hashed again': async (intruder, n) => {
    const { record } = await rowAt(intruder, n);
    await intruder.run(sql`UPDATE audit_event SET record = ${record.replace('reader', 'nobody')} WHERE n = ${n}`);
    await rehash(intruder, n, n);
  },
  'the time of the column is edited': (intruder, n) =>
    intruder.run(sql`UPDATE audit_event SET recorded = recorded + 1 WHERE n = ${n}`),
  'the outcome of the column is edited': (intruder, n) =>
    intruder.run(sql`UPDATE audit_event SET outcome = '8' WHERE n = ${n}`),
  'a hash is edited': async (intruder, n) => {
    const { hash } = await rowAt(intruder, n);
    const [first = 0, ...rest] = hash;
    await intruder.run(sql`UPDATE audit_event SET hash = ${Buffer.from([first ^ 1, ...rest])} WHERE n = ${n}`);
  },
  'two entries change places': async (intruder, n, other) => {
    const from = await rowAt(intruder, n);
    const to = await rowAt(intruder, other === n ? (n % length) + 1 : other);
    for (const table of ['audit_event', 'audit_entry']) {
      await intruder.run(sql`UPDATE ${raw(table)} SET n = 100000 WHERE n = ${from.n}`);
      await intruder.run(sql`UPDATE ${raw(table)} SET n = ${from.n} WHERE n = ${to.n}`);
      await intruder.run(sql`UPDATE ${raw(table)} SET n = ${to.n} WHERE n = 100000`);
    }
  },
  'an entry is put in between': async (intruder, n) => {
    const { record, previous, hash } = await rowAt(intruder, n);
    await shift(intruder, n, 1);
    await intruder.run(
      sql`INSERT INTO audit_event (n, recorded, interaction, action, outcome, record, previous_hash, hash)
          SELECT ${n}, recorded, interaction, action, outcome, ${record}, ${previous}, ${hash} FROM audit_event WHERE n = ${n + 1}`,
    );
    await intruder.run(sql`INSERT INTO audit_entry SELECT n - 1, kind, value FROM audit_entry WHERE n = ${n + 1}`);
  },
  'an entry is put at the end': async (intruder) => {
    const { record, hash } = await rowAt(intruder, length);
    await intruder.run(
      sql`INSERT INTO audit_event (n, recorded, interaction, action, outcome, record, previous_hash, hash)
          SELECT n + 1, recorded, interaction, action, outcome, record, ${hash}, ${linkHash(hash, record)} FROM audit_event WHERE n = ${length}`,
    );
    await intruder.run(sql`INSERT INTO audit_entry SELECT n + 1, kind, value FROM audit_entry WHERE n = ${length}`);
  },
  'an entry of the index is removed': (intruder, n) =>
    intruder.run(sql`DELETE FROM audit_entry WHERE n = ${n} AND kind = 1`),
  'an entry of the index is edited': (intruder, n) =>
    intruder.run(sql`UPDATE audit_entry SET value = 'Patient/other' WHERE n = ${n} AND kind = 1`),
  'an entry of the index is added': (intruder, n) =>
    intruder.run(sql`INSERT INTO audit_entry (n, kind, value) VALUES (${n}, 4, 'another')`),
  'an entry of the index is added behind the end': (intruder) =>
    intruder.run(sql`INSERT INTO audit_entry (n, kind, value) VALUES (${length + 5}, 4, 'another')`),
  'the head is removed': (intruder) => intruder.run(sql`DELETE FROM audit_head`),
  'the head is set back': (intruder, n) => setHead(intruder, n - 1),
  'the newest are removed and the head set back': async (intruder, n) => {
    await removeFrom(intruder, n);
    await setHead(intruder, n - 1);
  },
  'the text is edited and all hashed again': async (intruder, n) => {
    const { record } = await rowAt(intruder, n);
    await intruder.run(sql`UPDATE audit_event SET record = ${record.replace('reader', 'nobody')} WHERE n = ${n}`);
    await intruder.run(sql`UPDATE audit_entry SET value = 'nobody' WHERE n = ${n} AND kind = 4`);
    await rehash(intruder, n, length);
    await setHead(intruder, length);
  },
  'an entry is removed, the gap closed and all hashed again': async (intruder, n) => {
    await removeFrom(intruder, n, n);
    await shift(intruder, n + 1, -1);
    if (n < length) await rehash(intruder, n, length - 1);
    await setHead(intruder, length - 1);
  },
};
const needAnchor = Object.keys(tamperings).slice(-3);

describe.each(engines)('the audit trail on %s', (engine: EngineName) => {
  it('is one chain without gaps, and holds what was written', async () => {
    const target = await newStore(engine);
    const stores = await openTestStores(target);
    expect(await verify(target)).toEqual({ count: 0, anchor: '0'.repeat(64) });
    await fc.assert(
      fc.asyncProperty(fc.array(auditRecords, { minLength: 1, maxLength: 12 }), async (records) => {
        const before = (await verify(target)).count;
        await Promise.all(records.map((record) => stores.audit.append(record)));
        const { count, fault } = await verify(target);
        expect([count, fault]).toEqual([before + records.length, undefined]);
        const kept = await Promise.all(records.map((_, index) => stores.audit.find(before + 1 + index)));
        expect(kept.map((one) => one?.record)).toEqual(records.map((record) => JSON.parse(JSON.stringify(record))));
      }),
      { numRuns: 25 },
    );
    await stores.exams.close();
    const reopened = await openTestStores(target);
    await reopened.audit.append(read('reader', 1));
    expect((await verify(target)).fault).toBeUndefined();
    await reopened.exams.close();
  });

  it('lets nobody change, remove or empty it', async () => {
    const target = await newStore(engine);
    const stores = await openTestStores(target);
    for (let n = 1; n <= 3; n += 1) await stores.audit.append(read('reader', n));
    const statements = [
      sql`UPDATE audit_event SET outcome = '8' WHERE n = 2`,
      sql`DELETE FROM audit_event WHERE n = 3`,
      sql`UPDATE audit_entry SET value = 'x'`,
      sql`DELETE FROM audit_entry`,
      sql`UPDATE audit_head SET n = 2`,
      sql`DELETE FROM audit_head`,
      ...(engine === 'postgres'
        ? ['audit_event', 'audit_entry', 'audit_head'].map((table) => sql`TRUNCATE ${raw(table)}`)
        : []),
    ];
    for (const statement of statements) {
      await expect(
        stores.engine.write((session) => session.run(statement)),
        statement.sql,
      ).rejects.toThrow();
    }
    expect(await verify(target)).toMatchObject({ count: 3 });
    expect((await verify(target)).fault).toBeUndefined();
    await stores.exams.close();
  });

  it('shows every way of tampering, and from which entry on', { timeout: 60_000 }, async () => {
    const target = await newStore(engine);
    const stores = await openTestStores(target);
    for (let n = 1; n <= length; n += 1) await stores.audit.append(read('reader', n));
    await stores.exams.close();
    const { anchor } = await verify(target);
    const intruder = await intruderIn(target);
    expect((await verifyAudit(intruder, anchor)).fault).toBeUndefined();
    let tries = 0;
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...Object.keys(tamperings)), places, places, async (name, n, other) => {
        tries += 1;
        await tamperings[name]?.(intruder, n, other);
        const without = await verifyAudit(intruder);
        const { fault } = await verifyAudit(intruder, anchor);
        await intruder.undo();
        expect([name, n, other, typeof fault?.n]).toEqual([name, n, other, 'number']);
        // Whoever can write everything can write a whole trail anew; then only what was noted elsewhere tells.
        expect([name, without.fault === undefined]).toEqual([name, needAnchor.includes(name)]);
        const shownAt: readonly string[] = ['an entry is removed', 'the text is edited', 'a hash is edited'];
        if (shownAt.includes(name)) expect(fault?.n).toBe(n);
      }),
      {
        numRuns: 200,
        examples: Object.keys(tamperings).flatMap(
          (name) =>
            [
              [name, 1, 2],
              [name, length, 3],
            ] as [string, number, number][],
        ),
      },
    );
    expect(tries).toBeGreaterThanOrEqual(100);
    expect((await verifyAudit(intruder, anchor)).fault).toBeUndefined();
    await intruder.close();
  });

  it('is read as it stood while entries go on coming in', async () => {
    const target = await newStore(engine);
    const stores = await openTestStores(target);
    for (let n = 1; n <= 5; n += 1) await stores.audit.append(read('reader', n));
    const reader = await openAuditReader(target);
    await stores.audit.append(read('reader', 6));
    const then = await verifyAudit(reader);
    await reader.close();
    const now = await verify(target, then.anchor);
    expect([then.count, then.fault, now.count, now.fault]).toEqual([5, undefined, 6, undefined]);
    expect((await verify(target, 'f'.repeat(64))).fault?.text).toMatch(/anchor/);
    await stores.exams.close();
  });
});

describe('several instances on one PostgreSQL', () => {
  it('keep one chain, with exams and reads at the same time', async () => {
    const target = await newStore('postgres');
    const instances = await Promise.all(Array.from({ length: 3 }, () => openTestStores(target)));
    const each = 40;
    await Promise.all(
      instances.flatMap(({ audit }, instance) =>
        Array.from({ length: each }, (_, n) => audit.append(read(`instance-${instance}`, n))),
      ),
    );
    const { count, fault } = await verify(target);
    expect([count, fault]).toEqual([instances.length * each, undefined]);
    const page = await instances[0]?.audit.search({
      filters: [{ by: 'agent', anyOf: ['instance-'], match: 'start' }],
      direction: 'ascending',
      count: 500,
      isCounted: true,
    });
    expect(page?.total).toBe(instances.length * each);
    await Promise.all(instances.map(({ exams }) => exams.close()));
  });
});
