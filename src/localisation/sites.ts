import type { Coding } from '../kernel/coding.ts';
import { systems } from '../terminology/systems.ts';
import { hypotheses } from './hypotheses/hypotheses.ts';
import { manyRootsSite } from './hypotheses/roots.ts';
import { type Site, siteId } from './hypothesis.ts';

/** Many roots, as a single process with its own hypotheses or as several roots found at once. */
export const manyRoots: Site = manyRootsSite('both');

function display({ label, side }: Site): string {
  return side === 'left' || side === 'right' ? `${label}, ${side}` : label;
}

/** Code of a site with its level and side, in the local code system of localisations. */
export function siteCoding(site: Site): Coding {
  return { system: systems.localisation, code: siteId(site), display: display(site) };
}

/** Every site that an answer may name, once, in the order of the hypotheses: the content of the local code system. */
export function siteCatalogue(): readonly { readonly code: string; readonly display: string; readonly site: Site }[] {
  const all = new Map<string, Site>();
  for (const { site } of hypotheses) if (!all.has(siteId(site))) all.set(siteId(site), site);
  return [...all].map(([code, site]) => ({ code, display: display(site), site }));
}
