import type { CodeSystem, ValueSet } from 'fhir/r4.js';
import { siteCatalogue } from '../../localisation/sites.ts';
import { localCodeSystem } from './code-systems.ts';
import type { Release } from './header.ts';

/** Every place and process that a localisation may name. */
export function localisationResources(release: Release): [CodeSystem, ValueSet] {
  return localCodeSystem(release, {
    id: 'localisation',
    title: 'Sites and processes of the localisation',
    description:
      'Where a lesion may be, with level and side in the code where there are any, and the diffuse processes that have no single place.',
    allCodes: 'localisations',
    properties: {
      site: 'The site without level and side.',
      kind: 'What sort of place or process it is.',
      level: 'Segment of the cord or root.',
      side: 'left, right or both; absent where there is no side.',
    },
    concepts: siteCatalogue().map(({ code, display, site }) => ({
      code,
      display,
      properties: {
        site: site.key,
        kind: site.kind,
        level: site.level ?? undefined,
        side: site.side ?? undefined,
      },
    })),
  });
}
