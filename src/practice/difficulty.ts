/** How hard a practice patient is. Judged throughout. */
export const difficulties = {
  easy: {
    label: 'A common site with many signs',
    /** Power to which the chance of a site is raised: 1 as often as it is met, less makes the rare as common as the usual. */
    evenness: 1,
    /** Items that are likely to be abnormal, at least. */
    strikingAtLeast: 8,
    /** Values less likely than this are not found, so that chance findings do not mislead. */
    leastChance: 0.06,
    /** Whether a patient may have no lesion at all. */
    maybeHealthy: false,
    tellsHistory: true,
  },
  usual: {
    label: 'Common and less common sites',
    evenness: 0.5,
    strikingAtLeast: 4,
    leastChance: 0,
    maybeHealthy: true,
    tellsHistory: true,
  },
  hard: {
    label: 'Rare sites, few signs, little history',
    evenness: 0.2,
    strikingAtLeast: 2,
    leastChance: 0,
    maybeHealthy: true,
    tellsHistory: false,
  },
} as const;

export type Difficulty = keyof typeof difficulties;

export const difficultyKeys = Object.keys(difficulties) as readonly Difficulty[];
