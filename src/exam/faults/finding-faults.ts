import type { Fault } from '../../kernel/errors.ts';
import { joinWords, withArticle } from '../../kernel/words.ts';
import { itemNamed, items, itemsOf } from '../catalogue/catalogue.ts';
import { comaScale } from '../catalogue/coma-scale.ts';
import { historyListKeys } from '../catalogue/history.ts';
import { type Item, type SectionKey, sectionKeys } from '../catalogue/item.ts';
import { type NamedList, rowsOf } from '../catalogue/other-names.ts';
import { sectionOf } from '../catalogue/sections.ts';
import { scales } from '../scales.ts';
import { placeProperties, valueProperty } from '../schema/section-schemas.ts';
import { mayBeEchoed } from './echo.ts';
import { isSlipOf, keyWordedLike, kindsOf, nearestKey, whichOf } from './nearest-key.ts';
import { pointerInto } from './pointer.ts';
import { ownProperty } from './sound-parts.ts';
import { keyCalledIn } from './trade-synonyms.ts';
import { unknownProperty } from './unknown-property.ts';

/** Which entry of which section an error is about. */
export interface FindingContext {
  readonly section: SectionKey;
  readonly nameProperty: string | null;
  readonly entry: Readonly<Record<string, unknown>>;
  readonly item: Item | undefined;
}

/** The entry that these steps lead into, or null if they lead elsewhere. */
export function findingContext(steps: readonly string[], body: unknown): FindingContext | null {
  const [findings, section, index] = steps;
  if (findings !== 'findings' || section === undefined || index === undefined || !isSectionKey(section)) return null;
  const value = ownProperty(ownProperty(ownProperty(body, 'findings'), section), index);
  if (typeof value !== 'object' || value === null) return null;
  const entry = value as Readonly<Record<string, unknown>>;
  return { section, nameProperty: sectionOf(section).itemProperty, entry, item: itemNamed(section, entry) };
}

function isSectionKey(key: string): key is SectionKey {
  return (sectionKeys as readonly string[]).includes(key);
}

/** Faults of an entry whose naming property is missing: the property itself, or the misspelt one that stands for it. */
export function missingNameFaults(context: FindingContext, pointer: string): readonly Fault[] {
  const name = context.nameProperty ?? '';
  return [
    { pointer, code: 'REQUIRED', message: `\`${name}\` is required here.`, suggestion: name },
    ...unknownProperties(context, pointer),
  ];
}

/**
 * Faults of an entry that names no item of its section. Since the item decides what else the entry takes, the rest can
 * only be checked against everything that the section takes.
 */
export function unknownItemFaults(context: FindingContext, pointer: string): readonly Fault[] {
  const name = context.nameProperty ?? '';
  const at = pointerInto(pointer, name);
  const key = context.entry[name];
  const others = unknownProperties(context, pointer);
  if (typeof key !== 'string') return [{ pointer: at, code: 'WRONG_TYPE', message: 'Expected text.' }, ...others];
  const unknown = mayBeEchoed(key) ? `No such ${name} '${key}'.` : `Unknown ${name}.`;
  const ownKeys = itemsOf(context.section).map((item) => item.key);
  // A muscle that is tapped elsewhere names the movement here.
  const meant = keyCalledIn(context.section, key);
  const elsewhere = meant === undefined ? items.find((item) => item.key === key) : undefined;
  if (elsewhere !== undefined) {
    const { label } = sectionOf(elsewhere.section);
    return [
      {
        pointer: at,
        code: 'WRONG_SECTION',
        message: `'${key}' is ${withArticle(label.toLowerCase())} item: it belongs in \`findings.${elsewhere.section}\`.`,
        suggestion: `${elsewhere.section}/${key}`,
      },
      ...others,
    ];
  }
  const { suggestion, hint } = hintFor(key, context.section, meant, ownKeys);
  return [
    {
      pointer: at,
      code: 'UNKNOWN_KEY',
      message: `${unknown} ${hint}`,
      ...(suggestion === undefined ? {} : { suggestion }),
    },
    ...others,
  ];
}

interface Hint {
  readonly suggestion?: string;
  readonly hint: string;
}

/**
 * What an unknown item was most likely meant to be: a name or a slip of the pen for one of its own section first, or the kinds
 * of it where the name left the kind open, then what has its words there or in another section or list, and what is only near by its letters last.
 */
function hintFor(name: string, section: SectionKey, meant: string | undefined, ownKeys: readonly string[]): Hint {
  const kinds = kindsOf(name, ownKeys);
  if (kinds[0] !== undefined) return { suggestion: kinds[0], hint: whichOf(kinds) };
  const near = nearestKey(name, ownKeys);
  const own = meant ?? (near !== undefined && isSlipOf(name, near) ? near : keyWordedLike(name, section));
  if (own !== undefined) return here(own);
  const further = wordedElsewhere(name, section);
  if (further !== undefined) return there(further);
  if (near !== undefined) return here(near);
  const far = nearestElsewhere(name);
  return far === undefined
    ? { hint: 'The catalogue lists those that there are.' }
    : there({ list: far.section, key: far.key });
}

const here = (key: string): Hint => ({ suggestion: key, hint: whichOf([key]) });

const there = ({ list, key }: ListedKey): Hint => ({
  suggestion: `${list}/${key}`,
  hint: `Did you mean '${key}' in \`${isSectionKey(list) ? 'findings' : 'history'}.${list}\`?`,
});

interface ListedKey {
  readonly list: NamedList;
  readonly key: string;
}

/** Where what was named may stand instead: in the other sections, then in the history. */
function wordedElsewhere(name: string, own: SectionKey): ListedKey | undefined {
  const lists: readonly NamedList[] = [...sectionKeys.filter((section) => section !== own), ...historyListKeys];
  for (const list of lists) {
    const key = keyCalledIn(list, name) ?? rowsOf(list).find((row) => row.key === name)?.key;
    if (key !== undefined) return { list, key };
  }
  for (const list of lists) {
    const key = keyWordedLike(name, list);
    if (key !== undefined) return { list, key };
  }
  return undefined;
}

/** The item of any section that is nearest by its letters and words. */
function nearestElsewhere(name: string): Item | undefined {
  const nearest = nearestKey(
    name,
    items.map(({ key }) => key),
  );
  return items.find(({ key }) => key === nearest);
}

const valueProperties = new Set(['beats', ...Object.values(scales).map((scale) => scale.property)]);

/** Faults of properties that other items have but this one has not; null for a property that no item has. */
export function propertyFault(context: FindingContext, pointer: string, property: string): Fault | null {
  const { item } = context;
  if (item === undefined) return null;
  const at = pointerInto(pointer, property);
  if (property === 'side') {
    return {
      pointer: at,
      code: 'SIDE_NOT_APPLICABLE',
      message: `'${item.key}' lies in the midline: leave out \`side\`.`,
    };
  }
  if (property === 'site') {
    return {
      pointer: at,
      code: 'SITE_NOT_APPLICABLE',
      message: `'${item.key}' has its own place: leave out \`site\`.`,
    };
  }
  if (!valueProperties.has(property)) return null;
  const wanted = valueProperty(item);
  const values = item.scale === 'beats' ? 'a number of beats' : valueWords(item.scale);
  const reason =
    item.scale === 'performance' && property === 'present'
      ? 'is a task, so `present` could be read both ways'
      : `has no \`${property}\``;
  return {
    pointer: at,
    code: 'WRONG_VALUE_PROPERTY',
    message: `'${item.key}' ${reason}: give \`${wanted}\`: ${values}.`,
    suggestion: wanted,
  };
}

function valueWords(scale: keyof typeof scales): string {
  return scale === 'presence'
    ? 'true or false'
    : joinWords(
        scales[scale].grades.map((grade) => grade.key),
        'or',
      );
}

function unknownProperties(context: FindingContext, pointer: string): readonly Fault[] {
  const known = sectionProperties(context.section);
  return Object.keys(context.entry)
    .filter((property) => !known.includes(property))
    .map((property) => unknownProperty(pointer, property, known));
}

/** Every property that some item of the section takes. */
function sectionProperties(section: SectionKey): readonly string[] {
  const { itemProperty: nameProperty } = sectionOf(section);
  const rows = itemsOf(section);
  return [
    ...(nameProperty === null ? [] : [nameProperty]),
    ...(section === 'sensation' ? placeProperties : []),
    ...(rows.some((item) => item.sites !== undefined) ? ['site'] : []),
    ...(rows.some((item) => item.sides !== 'midline') ? ['side'] : []),
    ...new Set(rows.map(valueProperty)),
    ...(section === 'reflexes' ? ['reinforced'] : []),
    ...(section === 'higherFunction' ? ['scale', ...comaScale.parts.map(({ key }) => key), 'total'] : []),
    'notTested',
    'note',
  ];
}
