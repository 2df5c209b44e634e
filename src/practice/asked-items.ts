import { type SkinPlaceKind, skinPlace, skinPlaceKeys } from '../anatomy/skin-places.ts';
import { itemById } from '../exam/catalogue/catalogue.ts';
import { type Item, itemId } from '../exam/catalogue/item.ts';
import { mayBeEchoed } from '../exam/faults/echo.ts';
import { nearestKey } from '../exam/faults/nearest-key.ts';
import { pointerInto } from '../exam/faults/pointer.ts';
import type { FindingPlace } from '../exam/finding.ts';
import type { Fault } from '../kernel/errors.ts';
import { bodySides, type Side } from '../kernel/side.ts';
import type { ProbeTarget } from '../localisation/observation/probe-models.ts';
import { knownTarget } from './known-targets.ts';

/** Something to examine, named as the catalogue names it. */
export interface AskedItem {
  /** Id of the item: `power/ankle-dorsiflexion`. */
  readonly item: string;
  readonly side?: 'left' | 'right' | 'both';
  /** Where, as an entry of an exam says it: one of these. */
  readonly site?: string;
  readonly dermatome?: string;
  readonly territory?: string;
}

export const placeProperties = ['site', 'dermatome', 'territory'] as const;

/** A target with where it was asked for. */
export interface AskedTarget {
  readonly pointer: string;
  readonly target: ProbeTarget;
}

/**
 * The targets of a list of items, both sides one by one, each once; and a fault for every item that names nothing.
 * @param pointer of the list
 */
export function readAskedItems(
  asked: readonly AskedItem[],
  pointer: string,
): { readonly targets: readonly AskedTarget[]; readonly faults: readonly Fault[] } {
  const targets = new Map<ProbeTarget, AskedTarget>();
  const faults: Fault[] = [];
  asked.forEach((one, index) => {
    const here = pointerInto(pointer, index);
    for (const read of readOne(one, here)) {
      if ('code' in read) faults.push(read);
      else if (!targets.has(read.target)) targets.set(read.target, read);
    }
  });
  return { targets: [...targets.values()], faults };
}

function readOne(asked: AskedItem, pointer: string): readonly (AskedTarget | Fault)[] {
  const item = itemById.get(asked.item);
  if (item === undefined) return [unknownKey(pointerInto(pointer, 'item'), 'item', asked.item, [...itemById.keys()])];
  const place = readPlace(item, asked, pointer);
  if (place !== undefined && 'code' in place) return [place];
  const sides = readSides(item, asked, pointer);
  if ('code' in sides) return [sides];
  const at = (some: readonly Side[]): readonly AskedTarget[] =>
    some.flatMap((side) => {
      const target = knownTarget(place === undefined ? { item, side } : { item, side, place });
      return target === undefined ? [] : [{ pointer, target }];
    });
  // Of a part that is on each side, both are looked at where none is named.
  const others = asked.side === undefined && item.sides === 'optional' ? at(bodySides) : [];
  const found = at(sides).length > 0 ? at(sides) : others;
  if (found.length > 0) return found;
  const message = `\`${itemId(item)}\` is not examined there: a part in the midline takes no side, one of a pair takes one.`;
  return [{ pointer, code: 'SITE_NOT_APPLICABLE', message }];
}

function readSides({ sides }: Item, { side, site }: AskedItem, pointer: string): readonly Side[] | Fault {
  if (sides === 'midline') {
    if (side === undefined) return ['midline'];
    const message = 'The item lies in the midline: leave `side` out.';
    return { pointer: pointerInto(pointer, 'side'), code: 'SIDE_NOT_APPLICABLE', message };
  }
  if (side === 'both') return bodySides;
  if (side !== undefined) return [side];
  // What may be stated without a side is looked for on both; a part in the midline has none.
  if (sides === 'optional') return site === undefined ? bodySides : ['midline'];
  const message = 'Give `side`: left, right or both.';
  return { pointer, code: 'REQUIRED', message, suggestion: 'side' };
}

function readPlace(item: Item, asked: AskedItem, pointer: string): FindingPlace | Fault | undefined {
  const [property, ...more] = placeProperties.filter((name) => asked[name] !== undefined);
  if (more.length > 0) {
    return { pointer, code: 'ONLY_ONE', message: 'Give only one of `site`, `dermatome` or `territory`.' };
  }
  if (item.probe.kind === 'sensation') return readSkinPlace(property, asked, pointer);
  const key = asked.site;
  if (property !== undefined && (property !== 'site' || item.sites === undefined)) {
    const message = `\`${itemId(item)}\` has its own place: leave \`${property}\` out.`;
    return { pointer: pointerInto(pointer, property), code: 'SITE_NOT_APPLICABLE', message };
  }
  if (key === undefined) {
    if (item.siteRequired !== true) return undefined;
    return {
      pointer,
      code: 'REQUIRED',
      message: 'Give `site`: the item is placed at a part of the body.',
      suggestion: 'site',
    };
  }
  const sites = item.sites ?? [];
  return sites.includes(key)
    ? { kind: 'body-part', key }
    : unknownKey(pointerInto(pointer, 'site'), 'site', key, sites);
}

function readSkinPlace(
  property: (typeof placeProperties)[number] | undefined,
  asked: AskedItem,
  pointer: string,
): FindingPlace | Fault {
  const key = property === undefined ? undefined : asked[property];
  if (property === undefined || key === undefined) {
    const message = 'Give where: `site`, `dermatome` or `territory`.';
    return { pointer, code: 'REQUIRED', message, suggestion: 'site' };
  }
  const kind: SkinPlaceKind = property === 'site' ? 'landmark' : property;
  return skinPlace(kind, key) === undefined
    ? unknownKey(pointerInto(pointer, property), property, key, skinPlaceKeys(kind))
    : { kind, key };
}

/** Fault of a key that the catalogue does not have, with the nearest that it has. */
export function unknownKey(pointer: string, name: string, key: string, known: readonly string[]): Fault {
  const suggestion = nearestKey(key, known);
  const what = mayBeEchoed(key) ? `No such ${name} '${key}'.` : `No such ${name}.`;
  const list = known.length <= 12 ? `Known here: ${known.join(', ')}.` : 'The catalogue lists those that there are.';
  return {
    pointer,
    code: 'UNKNOWN_KEY',
    message: `${what} ${suggestion === undefined ? list : `Did you mean '${suggestion}'?`}`,
    ...(suggestion === undefined ? {} : { suggestion }),
  };
}
