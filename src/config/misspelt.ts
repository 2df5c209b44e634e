import { closest, distance } from 'fastest-levenshtein';
import { settings } from './settings.ts';

/** Letters by which a name may differ and still be taken for a misspelt one. */
const mostLetters = 2;

/**
 * Names in an environment that are nearly those of our settings, which would otherwise go without effect and unnoticed.
 * Only names of several words are looked at: `HOST` has too many innocent neighbours.
 * @returns pairs of what is there and what was probably meant
 */
export function misspeltSettings(
  env: Readonly<Record<string, string | undefined>>,
): readonly (readonly [string, string])[] {
  const known = Object.keys(settings).filter((name) => name.includes('_'));
  return Object.keys(env)
    .filter((name) => name.includes('_') && !(name in settings))
    .flatMap((name) => {
      const meant = closest(name.toUpperCase(), known);
      return distance(name.toUpperCase(), meant) <= mostLetters ? [[name, meant] as const] : [];
    });
}
