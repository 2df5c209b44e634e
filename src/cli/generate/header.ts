import { narrative, paragraph, titled } from '../../fhir/narrative.ts';
import { capitalised } from '../../kernel/words.ts';
import { canonicalBase } from '../../terminology/systems.ts';

/** Published with every resource. The date changes by hand with a release, so that the files do not depend on the clock. */
export interface Release {
  readonly version: string;
  readonly date: string;
}

export interface HeaderText {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  /** Notices of the vocabularies whose codes are inside. */
  readonly copyright?: readonly string[];
}

/** The elements that all conformance resources share, in the order of the specification. */
export function header<T extends string>(resourceType: T, release: Release, text: HeaderText) {
  return {
    resourceType,
    id: text.id,
    text: narrative(titled(text.title, paragraph(text.description))),
    url: `${canonicalBase}/${resourceType}/${text.id}`,
    version: release.version,
    name: pascalCase(text.id),
    title: text.title,
    status: 'active' as const,
    experimental: false,
    date: release.date,
    publisher: 'neuroexam-fhir project',
    description: text.description,
    ...(text.copyright ? { copyright: text.copyright.join('\n\n') } : {}),
  };
}

/** Canonical address of one of the published value sets. */
export function valueSetUrl(id: string): string {
  return `${canonicalBase}/ValueSet/${id}`;
}

/** Computer-friendly name: letters and digits, starting with a capital. */
function pascalCase(id: string): string {
  return id
    .split(/[^A-Za-z0-9]+/)
    .map(capitalised)
    .join('');
}
