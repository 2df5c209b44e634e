import type { OperationOutcome } from 'fhir/r4.js';
import { uuidV5 } from '../kernel/uuid.ts';

/** Namespace of names that are URLs. Source: RFC 9562, section 6.6. */
const urlNamespace = '6ba7b811-9dad-11d1-80b4-00c04fd430c8';

/** A resource of a result, as JSON text. */
export interface ResultEntry {
  readonly type: string;
  readonly id: string;
  readonly json: string;
}

export interface ResultLink {
  readonly relation: 'self' | 'next' | 'first';
  readonly url: string;
}

/**
 * A searchset Bundle as JSON text. The resources are taken as the text that they are, since a page of them would take
 * longer to parse and write again than to find.
 * @param base address of the FHIR side, without a slash at the end
 */
export function searchset(
  base: string,
  links: readonly ResultLink[],
  total: number | undefined,
  matches: readonly ResultEntry[],
  included: readonly ResultEntry[],
  outcome: OperationOutcome | undefined,
): string {
  const entry = (mode: string) => (one: ResultEntry) =>
    `{"fullUrl":${JSON.stringify(`${base}/${one.type}/${one.id}`)},"resource":${one.json},"search":{"mode":"${mode}"}}`;
  const entries = [
    ...matches.map(entry('match')),
    ...included.map(entry('include')),
    ...(outcome === undefined ? [] : [outcomeEntry(outcome, links)]),
  ];
  return bundle('searchset', links, total, entries);
}

/** What a search has to say beside what it found. It is not kept, so its address is a name that only the page has. */
function outcomeEntry(resource: OperationOutcome, links: readonly ResultLink[]): string {
  const self = links.find(({ relation }) => relation === 'self')?.url ?? '';
  const fullUrl = `urn:uuid:${uuidV5(`${self}#outcome`, urlNamespace)}`;
  return JSON.stringify({ fullUrl, resource, search: { mode: 'outcome' } });
}

export interface HistoryEntry extends ResultEntry {
  readonly version: number;
  readonly updated: number;
}

/** A history Bundle as JSON text, newest version first. */
export function historySet(base: string, links: readonly ResultLink[], versions: readonly HistoryEntry[]): string {
  const entries = versions.map(({ type, id, json, version, updated }) => {
    const isFirst = version === 1;
    const request = { method: isFirst ? 'POST' : 'PUT', url: isFirst ? type : `${type}/${id}` };
    const response = {
      status: isFirst ? '201' : '200',
      etag: `W/"${version}"`,
      lastModified: new Date(updated).toISOString(),
    };
    const fullUrl = JSON.stringify(`${base}/${type}/${id}`);
    return `{"fullUrl":${fullUrl},"resource":${json},"request":${JSON.stringify(request)},"response":${JSON.stringify(response)}}`;
  });
  return bundle('history', links, undefined, entries);
}

function bundle(
  type: string,
  links: readonly ResultLink[],
  total: number | undefined,
  entries: readonly string[],
): string {
  const head = `{"resourceType":"Bundle","type":"${type}"`;
  const count = total === undefined ? '' : `,"total":${total}`;
  const link = `,"link":${JSON.stringify(links.map(({ relation, url }) => ({ relation, url })))}`;
  return `${head}${count}${link}${entries.length === 0 ? '' : `,"entry":[${entries.join(',')}]`}}`;
}
