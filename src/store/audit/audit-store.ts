import sql, { join, raw, type Sql } from 'sql-template-tag';
import { type AuditRecord, entryKinds, readRecord } from '../../audit/audit-record.ts';
import type { AuditFilter, AuditQuery } from '../../search/audit-query.ts';
import type { RangePattern } from '../../search/query.ts';
import type { Engine } from '../engine.ts';
import type { Position } from '../search/find-matches.ts';
import { appendAudit } from './append-audit.ts';

export interface KeptRecord {
  /** Place in the trail, from 1 without gaps. */
  readonly n: number;
  readonly record: AuditRecord;
}

export interface AuditPage {
  readonly matches: readonly KeptRecord[];
  readonly total?: number;
  /** Where the next page starts; absent on the last. */
  readonly next?: Position;
}

/** The audit trail of a store: added to, read and searched, never changed. */
export interface AuditRepository {
  /**
   * Adds a record; resolves when it is on disk. Records that arrive while others are being written share the next
   * transaction.
   * @throws StoreError when it could not be kept
   */
  append(record: AuditRecord): Promise<void>;
  /** @throws StoreError */
  find(n: number): Promise<KeptRecord | undefined>;
  /** In the order of time, newest first unless told. @throws StoreError */
  search(query: AuditQuery, from?: Position): Promise<AuditPage>;
}

/** More records than this in one transaction gain nothing. */
const largestGroup = 256;

interface Waiting {
  readonly record: AuditRecord;
  readonly resolve: () => void;
  readonly reject: (error: unknown) => void;
}

export function createAuditStore(engine: Engine): AuditRepository {
  const waiting: Waiting[] = [];
  let isWriting = false;

  /** One transaction at a time, so that an instance never waits for itself at the head of the chain. */
  async function writeAll(): Promise<void> {
    isWriting = true;
    while (waiting.length > 0) {
      let group: readonly Waiting[] | undefined;
      try {
        await engine.write((session) => {
          // Taken when the transaction begins, so that whoever comes until then is in it; a repeat has the same group.
          group ??= waiting.splice(0, largestGroup);
          return appendAudit(
            session,
            group.map(({ record }) => record),
          );
        });
        for (const { resolve } of group ?? []) resolve();
      } catch (error) {
        for (const { reject } of group ?? waiting.splice(0)) reject(error);
      }
    }
    isWriting = false;
  }

  return {
    append: (record) =>
      new Promise((resolve, reject) => {
        waiting.push({ record, resolve, reject });
        if (!isWriting) void writeAll();
      }),

    async find(n) {
      const [row] = await engine.reader.all<Row>(sql`SELECT n, recorded, record FROM audit_event WHERE n = ${n}`);
      return row === undefined ? undefined : opened(row);
    },

    async search({ filters, direction, count, isCounted }, from) {
      const where = join([sql`1 = 1`, ...filters.map(conditionOf)], ' AND ');
      const counted = isCounted
        ? await engine.reader.all<{ total: number }>(sql`SELECT count(*) AS total FROM audit_event AS e WHERE ${where}`)
        : [];
      const total = counted[0] === undefined ? {} : { total: counted[0].total };
      if (count === 0) return { matches: [], ...total };
      const isDown = direction === 'descending';
      const after =
        from === undefined
          ? sql``
          : isDown
            ? sql`AND (recorded, n) < (${from.value}, ${from.key})`
            : sql`AND (recorded, n) > (${from.value}, ${from.key})`;
      const order = isDown ? sql`recorded DESC, n DESC` : sql`recorded, n`;
      const rows = await engine.reader.all<Row>(
        sql`SELECT n, recorded, record FROM audit_event AS e WHERE ${where} ${after} ORDER BY ${order} LIMIT ${count + 1}`,
      );
      const page = rows.slice(0, count);
      const last = page.at(-1);
      const next = rows.length > count && last !== undefined ? { next: { value: last.recorded, key: last.n } } : {};
      return { matches: page.map(opened), ...total, ...next };
    },
  };
}

interface Row {
  readonly n: number;
  readonly recorded: number;
  readonly record: string;
}

function opened({ n, record }: Row): KeptRecord {
  return { n, record: readRecord(record) };
}

const nothing = sql`1 = 0`;

function conditionOf(filter: AuditFilter): Sql {
  if (filter.anyOf.length === 0) return nothing;
  switch (filter.by) {
    case 'number':
      return sql`n IN (${join(filter.anyOf)})`;
    case 'time':
      return sql`(${join(filter.anyOf.map(inTime), ' OR ')})`;
    case 'interaction':
    case 'action':
    case 'outcome':
      return sql`${raw(filter.by)} IN (${join(filter.anyOf)})`;
    default: {
      const { by, anyOf, match } = filter;
      const values =
        match === 'whole'
          ? sql`value IN (${join(anyOf)})`
          : sql`(${join(
              anyOf.map((text) => sql`(value >= ${text} AND value < ${text + beyond})`),
              ' OR ',
            )})`;
      return sql`n IN (SELECT n FROM audit_entry WHERE kind = ${entryKinds[by]} AND ${values})`;
    }
  }
}

/** Sorts behind every character that a name may go on with. */
const beyond = '\u{10FFFF}';

/** A moment has no length, so that several prefixes come to the same. Source: HL7 FHIR R4, Search, prefixes. */
function inTime({ prefix, low, high }: RangePattern): Sql {
  switch (prefix) {
    case 'ne':
      return sql`(recorded < ${low} OR recorded > ${high})`;
    case 'gt':
    case 'sa':
      return sql`recorded > ${high}`;
    case 'lt':
    case 'eb':
      return sql`recorded < ${low}`;
    case 'ge':
      return sql`recorded >= ${low}`;
    case 'le':
      return sql`recorded <= ${high}`;
    default:
      return sql`(recorded >= ${low} AND recorded <= ${high})`;
  }
}
