import sql, { raw } from 'sql-template-tag';
import { linkHash } from '../../audit/audit-chain.ts';
import { type AuditRecord, entriesOf, recordText } from '../../audit/audit-record.ts';
import { StoreError } from '../../kernel/errors.ts';
import type { Session } from '../engine.ts';

const eventColumns = {
  n: 'bigint',
  recorded: 'bigint',
  interaction: 'text',
  action: 'text',
  outcome: 'text',
  record: 'text',
  previous_hash: 'bytea',
  hash: 'bytea',
};
const entryColumns = { n: 'bigint', kind: 'smallint', value: 'text' };

/**
 * Adds records behind the newest entry of the trail, in the transaction of the session. With several instances on one
 * database the row of the head is what they wait at, so there is one chain without gaps; that is why this comes last in
 * a transaction, when little is left to do before the commit.
 */
export async function appendAudit(session: Session, records: readonly AuditRecord[]): Promise<void> {
  if (records.length === 0) return;
  const lock = session.dialect === 'postgres' ? raw('FOR UPDATE') : raw('');
  const [head] = await session.all<{ n: number; hash: Buffer }>(sql`SELECT n, hash FROM audit_head ${lock}`);
  if (head === undefined) throw new StoreError('STORE_CORRUPT', 'The audit trail has lost its head.');
  let { n, hash } = head;
  const events: unknown[][] = [];
  const entries: unknown[][] = [];
  for (const record of records) {
    const text = recordText(record);
    const previous = hash;
    n += 1;
    hash = linkHash(previous, text);
    const { interaction, action, outcome } = record;
    events.push([n, Date.parse(record.at), interaction, action, outcome, text, previous, hash]);
    for (const { kind, value } of entriesOf(record)) entries.push([n, kind, value]);
  }
  await session.insert('audit_event', eventColumns, events);
  await session.insert('audit_entry', entryColumns, entries);
  await session.run(sql`UPDATE audit_head SET n = ${n}, hash = ${hash}`);
}
