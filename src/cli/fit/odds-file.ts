import { compareText } from '../../kernel/compare-text.ts';

/** What the two tables say of themselves. */
const tables = {
  site: {
    name: 'fittedSiteOdds',
    what: 'How much oftener than its own table says a site is met among patients of whom a localisation is asked',
    how: 'each site and each kind of site has a shift of its log odds',
  },
  cause: {
    name: 'fittedCauseOdds',
    what: 'How much oftener than its rates at the sites say a cause is right where it is considered',
    how: 'each cause has a shift of its log odds',
  },
} as const;

/** Reports are written of what is rare, so no odds are corrected further than this, up or down. Judged. */
const mostOdds = 3;

/** Odds nearer to 1 than this are left out. */
const leastOdds = 1.02;

/** The text of a table of fitted odds, by key in the order of the alphabet. */
export function oddsFile(of: keyof typeof tables, odds: readonly (readonly [key: string, odds: number])[]): string {
  const { name, what, how } = tables[of];
  const rows = odds
    .map(([key, value]) => [key, Math.min(mostOdds, Math.max(1 / mostOdds, value))] as const)
    .filter(([, value]) => Math.max(value, 1 / value) >= leastOdds)
    .toSorted(([a], [b]) => compareText(a, b))
    .map(([key, value]) => `  ${/^[a-z]+$/.test(key) ? key : `'${key}'`}: ${Number(value.toPrecision(2))},`);
  return [
    '/**',
    ` * ${what}:`,
    ` * ${how}, fitted to the development half of the evaluation cases, which name`,
    ' * their sources, and held back toward 0 and to three times at most; see `fitLogOdds`. 1 when not listed.',
    ' * Written by `npm run fit-odds`.',
    ' */',
    `export const ${name}: Readonly<Partial<Record<string, number>>> = {`,
    ...rows,
    '};',
    '',
  ].join('\n');
}
