import type { CodeSystem, ValueSet } from 'fhir/r4.js';
import type { SiteKind } from '../../anatomy/site-kind.ts';
import { siteKindNames } from '../../fhir/local-codes.ts';
import { capitalised } from '../../kernel/words.ts';
import { type Site, siteId } from '../../localisation/hypothesis.ts';
import { siteCatalogue } from '../../localisation/sites.ts';
import { type LocalConcept, localCodeSystem } from './code-systems.ts';
import type { Release } from './header.ts';

const sites = siteCatalogue();

/** Every place and process that a localisation may name, below its kind. */
export function localisationResources(release: Release): [CodeSystem, ValueSet] {
  return localCodeSystem(release, {
    id: 'localisation',
    title: 'Sites and processes of the localisation',
    description:
      'Where a lesion may be, with level and side in the code where there are any, and the diffuse processes that have no single place. A site stands below the same site at any level or on any side, and that below its kind.',
    allCodes: 'localisations',
    hierarchy: 'is-a',
    properties: {
      site: 'The site without level and side.',
      kind: 'What sort of place or process it is.',
      level: 'Segment of the cord or root.',
      side: 'left, right or both; absent where there is no side.',
    },
    concepts: [
      ...kinds.map((kind) => ({ code: kind, display: siteKindNames[kind], isAbstract: true })),
      ...general.values(),
      ...sites.map(({ code, display, site }) => concept(site, code, display)),
    ],
  });
}

const kinds = (Object.keys(siteKindNames) as SiteKind[]).filter((one) => sites.some(({ site }) => site.kind === one));

/** Codes of a site from the general to the special, its own last. */
function chain(site: Site): string[] {
  return [
    siteId({ ...site, level: null, side: null }),
    ...(site.level === null ? [] : [siteId({ ...site, side: null })]),
    siteId(site),
  ];
}

/** A code above sites is worth having when it brings several of them together. */
const general = generalSites();

function generalSites(): ReadonlyMap<string, LocalConcept> {
  const own = new Set(sites.map(({ code }) => code));
  const members = new Map<string, Site[]>();
  for (const { site } of sites) {
    for (const code of chain(site).filter((one) => !own.has(one))) {
      members.set(code, [...(members.get(code) ?? []), site]);
    }
  }
  const several = [...members].filter(([, group]) => group.length > 1);
  const codes = new Set(several.map(([code]) => code));
  return new Map(
    several.map(([code, [first]]) => {
      const site = { ...(first as Site), side: null };
      const isOfLevel = code === siteId(site) && site.level !== null;
      const label = isOfLevel || site.level === null ? site.label : withoutLevel(site);
      return [code, concept({ ...site, level: isOfLevel ? site.level : null }, code, label, codes)];
    }),
  );
}

/** "Spinal cord at C1, one half" is "Spinal cord, one half" at any level; a root is called by nothing but its level. */
function withoutLevel({ key, label, level }: Site): string {
  const at = ` at ${level}`;
  return label.includes(at) ? label.replace(at, '') : capitalised(key.replaceAll('-', ' '));
}

function concept(
  site: Site,
  code: string,
  display: string,
  above: { has(code: string): boolean } = general,
): LocalConcept {
  const parent = chain(site).findLast((one) => one !== code && above.has(one)) ?? site.kind;
  return {
    code,
    display,
    properties: {
      site: site.key,
      kind: site.kind,
      level: site.level ?? undefined,
      side: site.side ?? undefined,
    },
    parents: [parent],
  };
}
