import type { CodeSystem, ConceptMap, ValueSet } from 'fhir/r4.js';
import { bodyPartTable } from '../../anatomy/body-parts.ts';
import { movementTable } from '../../anatomy/movements.ts';
import { allBodySites, type BodySite } from '../../fhir/body-site-codes.ts';
import { sideSystem } from '../../questionnaire/option-sets.ts';
import { systems } from '../../terminology/systems.ts';
import { localCodeSystem } from './code-systems.ts';
import { localMap, type MapRow } from './concept-maps.ts';
import { header, type Release, valueSetUrl } from './header.ts';
import type { OpenTables } from './open-tables.ts';

const sites = allBodySites();

/** The own body sites, each with its side in the code, and sets of them to search by. */
export function bodySiteResources(release: Release, tables: OpenTables): (CodeSystem | ValueSet | ConceptMap)[] {
  return [
    ...localCodeSystem(release, {
      id: 'body-site',
      title: 'Body sites of the neurological examination',
      description:
        'Where a finding was made, with the side in the code: body parts, the muscles of a movement, dermatomes, landmarks, territories of cutaneous nerves, and the body below a segment. The code without a side is the structure as such, of a pair both. A side is a part of that, and a structure is a part of the body part that holds it on the same side; the muscles of a movement belong to the region that moves, a patch of skin to the body part that most of it lies on.',
      copyright: [tables.uberon.notice],
      allCodes: 'body-sites',
      hierarchy: 'part-of',
      properties: {
        structure: 'Code of the same structure without a side.',
        side: 'left or right; midline for an unpaired structure; unspecified for a paired one without a side.',
        uberon: 'UBERON class of the structure, which says no side.',
      },
      concepts: sites.map(({ code, display, structure, side, uberon, partOf }) => ({
        code,
        display,
        properties: { structure, side, uberon: uberon?.code },
        ...(partOf.length > 0 && { parents: partOf }),
      })),
    }),
    siteValueSet(
      release,
      'body-parts',
      'Body parts',
      'Body parts at which a sign may be found, without a side.',
      (site) => bodyPartTable.has(site.structure),
    ),
    siteValueSet(
      release,
      'sensation-sites',
      'Places where sensation is tested',
      'Dermatomes, landmarks, territories of cutaneous nerves, and the body below a segment, without a side.',
      (site) => /^(?:dermatome|landmark|territory|below)-/.test(site.structure),
    ),
    sides(release, tables),
    localMap(release, {
      id: 'body-site-to-uberon',
      title: 'Body sites to UBERON',
      description: `The UBERON class of a site. UBERON has no side, so that the class of a structure is wider than a code with a side; the muscles of a movement map to the class of the first of them. UBERON ${tables.uberon.version}.`,
      copyright: [tables.uberon.notice],
      sourceValueSet: valueSetUrl('body-sites'),
      targetValueSet: valueSetUrl('uberon-classes'),
      source: systems.bodySite,
      target: systems.uberon,
      targetVersion: tables.uberon.version,
      rows: sites.flatMap(uberonRow),
    }),
  ];
}

const muscleClasses = new Map([...movementTable].map(([key, { uberon }]) => [`${key}-muscles`, uberon]));

/** A structure has a class of its own; the muscles of a movement have only the class of the first of them. */
function uberonRow({ code, display, structure, side, uberon }: BodySite): MapRow[] {
  const sided = side === 'left' || side === 'right';
  const muscle = muscleClasses.get(structure);
  if (uberon) return [{ code, display, target: { ...uberon, relation: sided ? 'wider' : 'equivalent' } }];
  if (muscle) return [{ code, display, target: { ...muscle, relation: sided ? 'inexact' : 'narrower' } }];
  return [];
}

function siteValueSet(
  release: Release,
  id: string,
  title: string,
  description: string,
  includes: (site: BodySite) => boolean,
): ValueSet {
  const concept = sites
    .filter((site) => site.code === site.structure && includes(site))
    .map(({ code, display }) => ({ code, display }));
  return {
    ...header('ValueSet', release, { id, title, description }),
    immutable: false,
    compose: { include: [{ system: systems.bodySite, concept }] },
  };
}

/** Left and right as HL7 codes them. */
function sides(release: Release, tables: OpenTables): ValueSet {
  const rows = tables.hl7.codes.filter((row) => row.system === sideSystem);
  return {
    ...header('ValueSet', release, { id: 'sides', title: 'Sides', description: 'Left and right.' }),
    immutable: false,
    compose: { include: [{ system: sideSystem, concept: rows.map(({ code, display }) => ({ code, display })) }] },
  };
}
