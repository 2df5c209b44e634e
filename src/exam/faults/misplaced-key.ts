import type { ErrorObject } from 'ajv/dist/2020.js';
import { segments } from '../../anatomy/segments.ts';
import { dermatomeKeys } from '../../anatomy/skin.ts';
import { landmarkKeys, territoryKeys } from '../../anatomy/skin-places.ts';
import type { Fault } from '../../kernel/errors.ts';
import { items } from '../catalogue/catalogue.ts';
import { findHistoryRow, historyListKeys } from '../catalogue/history.ts';
import type { NamedList } from '../catalogue/other-names.ts';
import { placeProperties } from '../schema/section-schemas.ts';
import { mayBeEchoed } from './echo.ts';
import { pointerSteps } from './pointer.ts';
import { keyCalledIn, keysCalled } from './trade-synonyms.ts';

/** Fault of a key that is right in itself but stands in the wrong list or property; null if it is nowhere right. */
export function misplacedKeyFault(error: ErrorObject): Fault | null {
  const [part, list, , property] = pointerSteps(error.instancePath);
  const key: unknown = error.data;
  if (typeof key !== 'string') return null;
  if (part === 'history' && property === 'key') return inOtherHistoryList(error.instancePath, list, key);
  if (part === 'findings' && list === 'sensation' && property !== undefined) {
    return underOtherPlaceProperty(error.instancePath, property, key);
  }
  return null;
}

function inOtherHistoryList(pointer: string, own: string | undefined, key: string): Fault | null {
  // What this list has under another name is not looked for in the others.
  if (own !== undefined && keyCalledIn(own as NamedList, key) !== undefined) return null;
  const list = historyListKeys.find((one) => findHistoryRow(one, key) !== undefined);
  if (list === undefined) return otherwiseCalled(pointer, key) ?? amongFindings(pointer, key);
  const message = `'${key}' belongs in \`history.${list}\`.`;
  return { pointer, code: 'WRONG_SECTION', message, suggestion: `${list}/${key}` };
}

function otherwiseCalled(pointer: string, key: string): Fault | null {
  const meant = keysCalled(key).find(({ list }) => historyListKeys.some((one) => one === list));
  if (meant === undefined) return null;
  const unknown = mayBeEchoed(key) ? `No such key '${key}'.` : 'Unknown key.';
  const message = `${unknown} Did you mean '${meant.key}' in \`history.${meant.list}\`?`;
  return { pointer, code: 'UNKNOWN_KEY', message, suggestion: `${meant.list}/${meant.key}` };
}

/** What was found on examination has a section of its own; the history only tells of it. */
function amongFindings(pointer: string, key: string): Fault | null {
  const item = items.find((one) => one.key === key);
  if (item === undefined) return null;
  const message = `'${key}' is examined, not told: it belongs in \`findings.${item.section}\`.`;
  return { pointer, code: 'WRONG_SECTION', message, suggestion: `${item.section}/${key}` };
}

const placeKeys: readonly ReadonlySet<string>[] = [
  new Set(landmarkKeys),
  new Set(dermatomeKeys),
  new Set(territoryKeys),
  new Set(segments),
];

function underOtherPlaceProperty(pointer: string, property: string, key: string): Fault | null {
  const right = placeProperties[placeKeys.findIndex((keys) => keys.has(key))];
  if (right === undefined || right === property || !placeProperties.some((one) => one === property)) return null;
  return {
    pointer,
    code: 'WRONG_PLACE_PROPERTY',
    message: `'${key}' is not a \`${property}\`: give it as \`${right}\`.`,
    suggestion: right,
  };
}
