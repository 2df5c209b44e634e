import { useEffect, useState } from 'preact/hooks';
import type { PracticeSites } from '../../client/generated/api-types.ts';
import type { CatalogueIndex } from '../catalogue.ts';
import { commit, fetchSites, found, isWaiting, sites } from './practice-case.ts';

type PracticeSite = PracticeSites['parts'][number]['sites'][number];
type Side = PracticeSite['sides'][number];

const sideLabels: Readonly<Record<Side, string>> = { left: 'Left', right: 'Right', both: 'Both sides' };

/** Where the learner says that the lesion is: a site, with its side and level where it has them. */
export function CommitForm({ index }: { readonly index: CatalogueIndex }) {
  const [wanted, setWanted] = useState('');
  const [chosen, setChosen] = useState<PracticeSite | undefined>(undefined);
  const [side, setSide] = useState<Side | undefined>(undefined);
  const [level, setLevel] = useState('');
  const [missing, setMissing] = useState<string | undefined>(undefined);
  useEffect(() => void fetchSites(), []);
  const words = wanted.toLowerCase().split(/\s+/).filter(Boolean);
  const choose = (site: PracticeSite): void => {
    setChosen(site);
    setMissing(undefined);
    if (side !== undefined && !site.sides.includes(side)) setSide(undefined);
    if (!site.levels.some((one) => one.level === level)) setLevel('');
  };
  const chooseSide = (one: Side): void => {
    setSide(one);
    setMissing(undefined);
  };
  const chooseLevel = (one: string): void => {
    setLevel(one);
    setMissing(undefined);
  };
  const submit = (event: Event): void => {
    event.preventDefault();
    const lack = lackOf(chosen, side, level);
    setMissing(lack);
    if (lack !== undefined || chosen === undefined) return;
    void commit(
      {
        site: chosen.site,
        ...(chosen.sides.length > 0 && side !== undefined && { side }),
        ...(chosen.levels.length > 0 && { level }),
      },
      index,
    );
  };
  const parts = sites.value?.parts ?? [];
  return (
    <form class="commit" aria-labelledby="commit-name" onSubmit={submit}>
      <h3 id="commit-name" tabIndex={-1}>
        Where is the lesion?
      </h3>
      <label class="field">
        Search the sites
        <input
          type="search"
          value={wanted}
          placeholder="median, L5, medulla"
          onInput={({ currentTarget }) => setWanted(currentTarget.value)}
        />
      </label>
      <div class="sites">
        {parts.map(({ part, label, sites: own }) => {
          const fitting = own.filter((site) => isNamed(site, label, words));
          const holdsChoice = own.some(({ site }) => site === chosen?.site);
          if (fitting.length === 0) return null;
          return (
            <details key={part} open={words.length > 0 || holdsChoice}>
              <summary>
                {label} <span class="soft">({fitting.length})</span>
              </summary>
              <fieldset>
                <legend class="unseen">{label}</legend>
                {fitting.map((site) => (
                  <label key={site.site} class="check">
                    <input
                      type="radio"
                      name="practice-site"
                      checked={site.site === chosen?.site}
                      onChange={() => choose(site)}
                    />
                    {site.label}
                  </label>
                ))}
              </fieldset>
            </details>
          );
        })}
      </div>
      {chosen !== undefined && chosen.sides.length > 0 && (
        <fieldset class="choices">
          <legend>Side of the {lowered(chosen.label)}</legend>
          {chosen.sides.map((one) => (
            <label key={one} class="check">
              <input type="radio" name="practice-side" checked={one === side} onChange={() => chooseSide(one)} />
              {sideLabels[one]}
            </label>
          ))}
        </fieldset>
      )}
      {chosen !== undefined && chosen.levels.length > 0 && (
        <label class="field">
          Level
          <select value={level} onChange={({ currentTarget }) => chooseLevel(currentTarget.value)}>
            <option value="">choose a level …</option>
            {chosen.levels.map((one) => (
              <option key={one.level} value={one.level}>
                {one.label}
              </option>
            ))}
          </select>
        </label>
      )}
      <p role="alert" class="missing">
        {missing}
      </p>
      <button type="submit" class="main" disabled={isWaiting.value}>
        {isWaiting.value ? 'Working out the answer …' : `Commit after ${countWords(found.value.length)}`}
      </button>
    </form>
  );
}

export function countWords(count: number): string {
  return count === 1 ? '1 item' : `${count} items`;
}

function lackOf(site: PracticeSite | undefined, side: Side | undefined, level: string): string | undefined {
  if (site === undefined) return 'Choose a site first.';
  if (site.sides.length > 0 && side === undefined) return 'Choose the side.';
  return site.levels.length > 0 && level === '' ? 'Choose the level.' : undefined;
}

/** Whether every word stands in the name of a site, of one of its levels, or of its part. */
function isNamed({ label, levels }: PracticeSite, part: string, words: readonly string[]): boolean {
  const names = [label, part, ...levels.map((one) => one.label)].join(' ').toLowerCase();
  return words.every((word) => names.includes(word));
}

function lowered(label: string): string {
  return `${label.charAt(0).toLowerCase()}${label.slice(1)}`;
}
