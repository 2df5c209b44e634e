import { readFileSync } from 'node:fs';

interface Concept {
  readonly code: string;
  readonly concept?: readonly Concept[];
}

const below = ({ code, concept = [] }: Concept): readonly string[] => [code, ...concept.flatMap(below)];

const { concept: roots } = JSON.parse(readFileSync('terminology/CodeSystem-localisation.json', 'utf8')) as {
  readonly concept: readonly Concept[];
};

/** Every code of the published code system of sites, those above a level or a side too. */
export const publishedSites: ReadonlySet<string> = new Set(roots.flatMap(below));
