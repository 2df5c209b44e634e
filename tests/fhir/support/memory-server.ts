import type { Bundle, FhirResource } from 'fhir/r4.js';

interface Stored {
  readonly id: string;
  readonly version: number;
  readonly resource: FhirResource;
}

/** What a transaction did: one status for each entry. */
type Statuses = readonly number[];

/**
 * A FHIR server small enough to read: conditional create, conditional update and the rewriting of references, as R4
 * (http.html, sections 3.1.0.5.1, 3.1.0.8.1 and 3.1.0.11) asks for. It gives ids of its own, as most servers do.
 */
export class MemoryServer {
  readonly #stored: Stored[] = [];

  resources(type?: string): readonly FhirResource[] {
    return this.#stored
      .map(({ resource }) => resource)
      .filter((resource) => type === undefined || resource.resourceType === type);
  }

  versionOf(type: string, id: string): number | undefined {
    return this.#stored.find((one) => one.resource.resourceType === type && one.id === id)?.version;
  }

  transaction(bundle: Bundle): Statuses {
    const plan = (bundle.entry ?? []).map(({ fullUrl = '', resource, request }) => {
      if (resource === undefined || request === undefined) throw new Error('an entry without resource or request');
      const [type = '', conditional] = request.url.split('?');
      if (type !== resource.resourceType) throw new Error(`${request.url} holds a ${resource.resourceType}`);
      const query = request.method === 'POST' ? request.ifNoneExist : conditional;
      const matches = query === undefined ? [] : this.#search(type, query);
      if (matches.length > 1) throw new Error('412: more than one match');
      const match = matches[0];
      // R4: a conditional update whose body names another id than the match is refused.
      if (request.method === 'PUT' && resource.id !== undefined && resource.id !== match?.id)
        throw new Error('400: id');
      return {
        fullUrl,
        resource,
        method: request.method,
        match,
        id: match?.id ?? `s${this.#stored.length}-${crypto.randomUUID()}`,
      };
    });
    const ids = new Map(plan.map(({ fullUrl, resource, id }) => [fullUrl, `${resource.resourceType}/${id}`]));
    return plan.map(({ resource, method, match, id }) => {
      if (match !== undefined && method === 'POST') return 200;
      const kept = { ...(rewritten(resource, ids) as FhirResource), id };
      if (match === undefined) {
        this.#stored.push({ id, version: 1, resource: kept });
        return 201;
      }
      this.#stored[this.#stored.indexOf(match)] = { id, version: match.version + 1, resource: kept };
      return 200;
    });
  }

  #search(type: string, query: string): Stored[] {
    const [[name, value] = ['', '']] = [...new URLSearchParams(query)];
    const [system, code] = value.split('|');
    return this.#stored.filter(({ resource }) => {
      if (resource.resourceType !== type) return false;
      if (name === '_tag')
        return resource.meta?.tag?.some((tag) => tag.system === system && tag.code === code) === true;
      if (name !== 'identifier' || !('identifier' in resource)) throw new Error(`no search by ${name} on ${type}`);
      return [resource.identifier].flat().some((one) => one?.system === system && one?.value === code);
    });
  }
}

/** The resource with every `reference` to an entry replaced by where the entry is kept. */
function rewritten(node: unknown, ids: ReadonlyMap<string, string>): unknown {
  if (Array.isArray(node)) return node.map((one) => rewritten(one, ids));
  if (typeof node !== 'object' || node === null) return node;
  return Object.fromEntries(
    Object.entries(node).map(([key, value]) =>
      key === 'reference' && typeof value === 'string' ? [key, resolved(value, ids)] : [key, rewritten(value, ids)],
    ),
  );
}

function resolved(reference: string, ids: ReadonlyMap<string, string>): string {
  if (!reference.startsWith('urn:')) return reference;
  const kept = ids.get(reference);
  if (kept === undefined) throw new Error(`400: ${reference} is not in the Bundle`);
  return kept;
}
