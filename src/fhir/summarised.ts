import type { StoredElements } from './summary-elements.ts';
import { summaryElements } from './summary-elements.ts';

/** How much of a resource is wanted. */
export type Extent =
  | { readonly kind: 'whole' }
  /** Elements that HL7 marks as a summary. */
  | { readonly kind: 'summary' }
  /** The narrative with what is mandatory. */
  | { readonly kind: 'text' }
  /** Everything but the narrative. */
  | { readonly kind: 'data' }
  | { readonly kind: 'elements'; readonly names: readonly string[] };

const subsetted = {
  system: 'http://terminology.hl7.org/CodeSystem/v3-ObservationValue',
  code: 'SUBSETTED',
  display: 'subsetted',
};

/**
 * A part of a resource, marked as such in `meta.tag`; mandatory elements are always there.
 * Source: HL7 FHIR R4, Search, sections 3.1.1.5.8 (summary) and 3.1.1.5.9 (elements).
 * @param json the resource as JSON text
 */
export function withExtent(json: string, extent: Extent): string {
  if (extent.kind === 'whole') return json;
  const resource = JSON.parse(json) as Record<string, unknown> & { resourceType: string; meta?: { tag?: unknown[] } };
  const known: StoredElements = summaryElements[resource.resourceType] ?? { mandatory: [], summary: [] };
  const isWanted = (name: string) => {
    if (name === 'resourceType' || name === 'id' || name === 'meta') return true;
    if (known.mandatory.includes(name)) return true;
    switch (extent.kind) {
      case 'summary':
        return known.summary.includes(name);
      case 'text':
        return name === 'text';
      case 'data':
        return name !== 'text';
      case 'elements':
        return extent.names.some((wanted) => wanted === name || isChoice(wanted, name));
    }
  };
  const kept = Object.fromEntries(Object.entries(resource).filter(([name]) => isWanted(name.replace(/^_/, ''))));
  const meta = { ...resource.meta, tag: [...(resource.meta?.tag ?? []), subsetted] };
  return JSON.stringify({ ...kept, meta });
}

/** `value` asks for `valueQuantity`, as it does for any other type of value. */
function isChoice(wanted: string, name: string): boolean {
  return name.startsWith(wanted) && /^[A-Z]/.test(name.slice(wanted.length));
}
