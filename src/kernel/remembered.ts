/**
 * The function with its answers kept at hand; with more than `most` of them it begins anew, so that it needs no order of use.
 * @param make what depends on nothing but the key
 */
export function remembered<Key, Value>(most: number, make: (key: Key) => Value): (key: Key) => Value {
  const kept = new Map<Key, Value>();
  return (key) => {
    const found = kept.get(key);
    if (found !== undefined) return found;
    if (kept.size >= most) kept.clear();
    const made = make(key);
    kept.set(key, made);
    return made;
  };
}
