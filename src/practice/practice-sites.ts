import { pointerInto } from '../exam/faults/pointer.ts';
import type { Fault } from '../kernel/errors.ts';
import { capitalised, joinWords } from '../kernel/words.ts';
import { hypotheses } from '../localisation/hypotheses/hypotheses.ts';
import { type Site, siteId } from '../localisation/hypothesis.ts';
import { siteCatalogue } from '../localisation/sites.ts';
import { unknownKey } from './asked-items.ts';
import { type NeuraxisPart, neuraxisPartKeys, neuraxisParts, partOfKind } from './neuraxis-parts.ts';

/** A site that a learner may commit to. */
export interface PracticeSite {
  readonly site: string;
  readonly label: string;
  readonly part: NeuraxisPart;
  /** Sides of which one is to be given; none for what has no side, or always has both. */
  readonly sides: readonly ('left' | 'right' | 'both')[];
  /** Levels of which one is to be given, with the name of the site there; none for most sites. */
  readonly levels: readonly { readonly level: string; readonly label: string }[];
}

/** Where somebody says that the lesion is. */
export interface Commitment {
  readonly site: string;
  readonly side?: 'left' | 'right' | 'both';
  readonly level?: string;
}

const sitesByKey: ReadonlyMap<string, readonly Site[]> = grouped();

function grouped(): Map<string, Site[]> {
  const groups = new Map<string, Site[]>();
  for (const { site } of siteCatalogue()) {
    const own = groups.get(site.key);
    if (own === undefined) groups.set(site.key, [site]);
    else own.push(site);
  }
  return groups;
}

export const practiceSites: readonly PracticeSite[] = [...sitesByKey.values()].flatMap((sites) => {
  const [first] = sites;
  if (first === undefined) return [];
  const sides = [...new Set(sites.flatMap(({ side }) => side ?? []))];
  const levels = new Map(sites.flatMap((site) => (site.level === null ? [] : [[site.level, site] as const])));
  return [
    {
      site: first.key,
      label: labelWithoutLevel(first),
      part: partOfKind(first.kind),
      sides: sides.length > 1 ? sides : [],
      levels: [...levels].map(([level, { label }]) => ({ level, label })),
    },
  ];
});

/** The parts of the neuraxis with their sites, from above downwards. */
export function sitesByPart() {
  return neuraxisPartKeys.map((part) => ({
    part,
    label: neuraxisParts[part].label,
    sites: practiceSites.filter((site) => site.part === part).map(({ part: _part, ...site }) => site),
  }));
}

function labelWithoutLevel({ label, level, span }: Site): string {
  if (span !== undefined) return `${capitalised(label.replace(`${span.join(' and ')} `, ''))}, two neighbours`;
  return level === null ? label : capitalised(label.replace(` at ${level}`, '').replace(`${level} `, ''));
}

const firstIndex: ReadonlyMap<string, number> = new Map(
  hypotheses.map(({ site }, index) => [siteId(site), index] as const).reverse(),
);

/** A site with the index of a hypothesis that stands for it. */
export interface CommittedSite {
  readonly site: Site;
  readonly hypothesis: number;
}

/** The site that a commitment names, or what is wrong with it. */
export function readCommitment(
  commitment: Commitment,
  pointer: string,
): { readonly committed: CommittedSite } | { readonly faults: readonly Fault[] } {
  const sites = sitesByKey.get(commitment.site);
  const offered = practiceSites.find(({ site }) => site === commitment.site);
  if (sites === undefined || offered === undefined) {
    return { faults: [unknownKey(pointerInto(pointer, 'site'), 'site', commitment.site, [...sitesByKey.keys()])] };
  }
  const faults = [
    ...choiceFaults('side', commitment.side, offered.sides, pointer),
    ...choiceFaults(
      'level',
      commitment.level,
      offered.levels.map(({ level }) => level),
      pointer,
    ),
  ];
  if (faults.length > 0) return { faults };
  const site = sites.find(
    ({ side, level }) =>
      (offered.sides.length === 0 || side === commitment.side) && (level === null || level === commitment.level),
  );
  const hypothesis = site === undefined ? undefined : firstIndex.get(siteId(site));
  if (site === undefined || hypothesis === undefined) {
    return { faults: [{ pointer, code: 'UNKNOWN_KEY', message: 'This site is not known with this side and level.' }] };
  }
  return { committed: { site, hypothesis } };
}

function choiceFaults(
  name: 'side' | 'level',
  given: string | undefined,
  choices: readonly string[],
  pointer: string,
): readonly Fault[] {
  const here = pointerInto(pointer, name);
  if (choices.length === 0) {
    if (given === undefined) return [];
    const code = name === 'side' ? 'SIDE_NOT_APPLICABLE' : 'UNKNOWN_PROPERTY';
    return [{ pointer: here, code, message: `The site takes no \`${name}\`: leave it out.` }];
  }
  const list = choices.length <= 4 ? joinWords(choices, 'or') : `one from ${choices[0]} to ${choices.at(-1)}`;
  if (given === undefined) {
    return [{ pointer, code: 'REQUIRED', message: `Give \`${name}\`: ${list}.`, suggestion: name }];
  }
  return choices.includes(given) ? [] : [unknownKey(here, name, given, choices)];
}
