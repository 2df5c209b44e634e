import sql from 'sql-template-tag';
import { genesis, linkHash } from '../../audit/audit-chain.ts';
import { type AuditRecord, entriesOf, readRecord } from '../../audit/audit-record.ts';
import type { AuditReader } from './open-audit-reader.ts';

/** What a walk along the whole trail found. */
export interface AuditCheck {
  /** Entries that were found in order. */
  readonly count: number;
  /** Times of the first and the last of them, ISO 8601; absent for an empty trail. */
  readonly first?: string;
  readonly last?: string;
  /** Hash of the last of them, hexadecimal: whoever notes it elsewhere can show later that nothing before it was changed. */
  readonly anchor: string;
  /** The first entry that is not as it was written; absent when all are. */
  readonly fault?: { readonly n: number; readonly text: string };
}

interface EventRow {
  readonly n: number;
  readonly recorded: number;
  readonly interaction: string;
  readonly action: string;
  readonly outcome: string;
  readonly record: string;
  readonly previous: Uint8Array;
  readonly hash: Uint8Array;
}

interface Totals {
  readonly head: number | null;
  readonly headHash: Uint8Array | null;
  readonly newest: number | null;
  readonly rows: number;
}

const pageSize = 1000;

/**
 * Walks the trail from its first entry: each hash must follow from the hash before it and the text, each column and
 * index entry from the text, and the last entry must be the one that the head names.
 * @param anchor hash that was noted earlier, hexadecimal; it must be that of an entry
 * @throws StoreError
 */
export async function verifyAudit(reader: AuditReader, anchor?: string): Promise<AuditCheck> {
  const [totals] = await reader.all<Totals>(
    sql`SELECT (SELECT n FROM audit_head) AS head, (SELECT hash FROM audit_head) AS "headHash",
          (SELECT max(n) FROM audit_event) AS newest, (SELECT count(*) FROM audit_event) AS rows`,
  );
  let hash: Uint8Array = genesis;
  let count = 0;
  let first: string | undefined;
  let last: string | undefined;
  let isAnchored = anchor === undefined || anchor === hex(genesis);
  const found = (fault?: AuditCheck['fault']): AuditCheck => ({
    count,
    ...(first === undefined || last === undefined ? {} : { first, last }),
    anchor: hex(hash),
    ...(fault === undefined ? {} : { fault }),
  });

  for (let page = await eventsAfter(reader, 0); page.length > 0; page = await eventsAfter(reader, count)) {
    const entries = await entriesAmong(reader, page[0]?.n ?? 0, page.at(-1)?.n ?? 0);
    for (const event of page) {
      const n = count + 1;
      if (event.n !== n) return found({ n, text: 'it is missing' });
      const text = faultOf(event, hash, entries.get(n) ?? []);
      if (text !== undefined) return found({ n, text });
      hash = event.hash;
      count = n;
      isAnchored ||= hex(hash) === anchor;
      last = new Date(event.recorded).toISOString();
      first ??= last;
    }
  }
  const stray = await reader.all(sql`SELECT n FROM audit_entry WHERE n > ${count} LIMIT 1`);
  if (totals === undefined || totals.head === null || totals.headHash === null) {
    return found({ n: count + 1, text: 'the head of the trail is missing' });
  }
  if (totals.head > count)
    return found({ n: count + 1, text: `it is missing, as are all after it up to ${totals.head}` });
  if (totals.head < count || totals.newest !== (count === 0 ? null : count) || totals.rows !== count) {
    return found({ n: totals.head + 1, text: 'it stands behind the head of the trail' });
  }
  if (hex(totals.headHash) !== hex(hash)) return found({ n: count, text: 'it is not the one that the head names' });
  if (stray.length > 0) return found({ n: count + 1, text: 'the index has entries for it, and it is missing' });
  if (!isAnchored) {
    return found({ n: 1, text: 'no entry has the hash of the anchor: the trail was written anew, or is another one' });
  }
  return found();
}

function eventsAfter(reader: AuditReader, n: number): Promise<EventRow[]> {
  return reader.all<EventRow>(
    sql`SELECT n, recorded, interaction, action, outcome, record, previous_hash AS previous, hash
        FROM audit_event WHERE n > ${n} ORDER BY n LIMIT ${pageSize}`,
  );
}

async function entriesAmong(reader: AuditReader, from: number, to: number): Promise<Map<number, string[]>> {
  const rows = await reader.all<{ n: number; kind: number; value: string }>(
    sql`SELECT n, kind, value FROM audit_entry WHERE n >= ${from} AND n <= ${to}`,
  );
  const found = new Map<number, string[]>();
  for (const { n, kind, value } of rows) found.set(n, [...(found.get(n) ?? []), `${kind} ${value}`]);
  return found;
}

function faultOf(event: EventRow, previous: Uint8Array, entries: readonly string[]): string | undefined {
  if (hex(event.previous) !== hex(previous)) return 'it does not follow the entry before it';
  if (hex(linkHash(previous, event.record)) !== hex(event.hash)) return 'it was changed';
  let record: AuditRecord;
  try {
    record = readRecord(event.record);
  } catch {
    return 'it cannot be read';
  }
  const { at, interaction, action, outcome } = record;
  const columns = [event.recorded, event.interaction, event.action, event.outcome];
  if (columns.join(' ') !== [Date.parse(at), interaction, action, outcome].join(' ')) {
    return 'what it is found by was changed';
  }
  const expected = entriesOf(record).map(({ kind, value }) => `${kind} ${value}`);
  return expected.sort().join('\n') === [...entries].sort().join('\n') ? undefined : 'what it is found by was changed';
}

function hex(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('hex');
}
