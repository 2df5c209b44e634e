import type { SiteKind } from '../anatomy/site-kind.ts';
import { type Cause, rateShares } from '../causes/table/cause.ts';
import { rememberedWith } from '../kernel/remembered.ts';
import type { RankedLocalisation } from '../localisation/localisation.ts';
import { siteCatalogue } from '../localisation/sites.ts';

/**
 * How much of the probability is kept for causes of places that the localisation does not name, because it may be wrong:
 * where one site is certain, and as much more as that site lacks of certainty; and where no sign tells of a place at all. Judged.
 */
const doubt = { always: 0.08, ofTheRest: 0.1, withoutSigns: 0.2 } as const;

/** How much likelier a cause of the same kind of site is than one of a place far off; of a neighbouring kind half as much. Judged. */
const nearness = { sameKind: 8, neighbour: 4, elsewhere: 1 } as const;

/** From `from` on, what is far from the first site, or rare at its kind, counts the less the more certain that site is, down to `least`. Judged. */
const certain = { from: 0.9, least: 0.15 } as const;

/** Kinds of site that lie together or are mistaken for each other. */
const neighbourhoods: readonly (readonly SiteKind[])[] = [
  ['nerve', 'plexus', 'root', 'multiple-nerves'],
  ['root', 'cauda-equina', 'cord'],
  ['cord', 'brainstem'],
  [
    'junction',
    'muscle',
    'polyneuropathy',
    'polyradiculoneuropathy',
    'anterior-horn',
    'motor-neuron-system',
    'ganglion',
  ],
  ['multiple-nerves', 'polyneuropathy'],
  [
    'hemisphere',
    'brainstem',
    'cerebellum',
    'basal-ganglia',
    'encephalopathy',
    'intracranial-pressure',
    'meninges',
    'visual-pathway',
  ],
  ['brainstem', 'cranial-nerve', 'visual-pathway', 'meninges', 'intracranial-pressure'],
  ['cranial-nerve', 'junction'],
];

/**
 * Sum of claims from which on all that is kept for doubt is given away. Below it the sites keep the rest, so that one distant
 * cause for which a single word speaks does not get it all. Judged.
 */
const enoughClaims = 6;

type Ranked = Pick<RankedLocalisation, 'kind' | 'probability'>;

/** Takes what is kept for doubt from all causes, and gives it to those for which the story speaks: most to the common ones near the ranked sites. */
export function allowForDoubt(
  prior: Map<Cause, number>,
  supported: readonly Cause[],
  localisations: readonly Ranked[],
  isFree: boolean,
): void {
  const [first] = isFree ? [] : localisations;
  const claims = supported.map((cause) => [cause, claimOf(cause, localisations, isFree)] as const);
  const total = claims.reduce((sum, [, claim]) => sum + claim, 0);
  const wanted =
    first === undefined ? doubt.withoutSigns : doubt.always + doubt.ofTheRest * (1 - Math.min(1, first.probability));
  const kept = wanted * Math.min(1, total / enoughClaims);
  for (const [cause, share] of prior) prior.set(cause, share * (1 - kept));
  for (const [cause, claim] of claims) prior.set(cause, (prior.get(cause) ?? 0) + (kept * claim) / total);
}

/** Exponent of the rate of a cause at its own place, which says less than half of how common it is elsewhere. Judged. */
const weightOfRate = 0.4;

/** Without a sign the ranked sites say less: what they do not hold together lies anywhere. */
function claimOf(cause: Cause, localisations: readonly Ranked[], isFree: boolean): number {
  const reach = reachOf(cause);
  const first = isFree ? 0 : (localisations[0]?.probability ?? 0);
  const ofFar = Math.min(1, Math.max(certain.least, (1 - first) / (1 - certain.from)));
  const near = localisations.reduce(
    (sum, { kind, probability }) => sum + probability * nearnessOf(kind, reach, ofFar),
    0,
  );
  const anywhere = isFree ? Math.max(0, 1 - localisations.reduce((sum, { probability }) => sum + probability, 0)) : 0;
  return (near + anywhere * nearness.elsewhere) * reach.rate ** weightOfRate;
}

/** @param ofFar what is left of a claim from far off, or from a kind of place where the cause is rare */
function nearnessOf(kind: SiteKind, { usual, kinds }: Reach, ofFar: number): number {
  if (usual.has(kind)) return nearness.sameKind;
  if (kinds.has(kind)) return nearness.sameKind * ofFar;
  const isNeighbour = neighbourhoods.some((hood) => hood.includes(kind) && hood.some((one) => kinds.has(one)));
  return isNeighbour ? nearness.neighbour * Math.min(1, 2 * ofFar) : nearness.elsewhere * ofFar;
}

interface Reach {
  /** Kinds of site at which it is met, but for those where that is exceptional. */
  readonly kinds: ReadonlySet<SiteKind>;
  /** Those of them where it is not rare beside its usual place. */
  readonly usual: ReadonlySet<SiteKind>;
  /** The largest share that it has anywhere. */
  readonly rate: number;
}

/** Share of its largest rate below which a cause is a stranger at a site. Judged. */
const besideUsual = 0.25;

let kindsOfSites: ReadonlyMap<string, SiteKind> | undefined;

const reachOf = rememberedWith((cause: Cause): Reach => {
  kindsOfSites ??= new Map(siteCatalogue().map(({ site }) => [site.key, site.kind]));
  const sites = kindsOfSites;
  const rate = Math.max(...cause.produces.map((row) => rateShares[row.rate]));
  const kindsFrom = (least: number): ReadonlySet<SiteKind> =>
    new Set(
      cause.produces
        .filter((row) => row.rate !== 'exceptional' && rateShares[row.rate] >= least)
        .flatMap(({ kinds = [], sites: keys = [] }) => [
          ...kinds,
          ...keys.map((key) => sites.get(key)).filter((kind) => kind !== undefined),
        ]),
    );
  return { kinds: kindsFrom(0), usual: kindsFrom(rate * besideUsual), rate };
});
