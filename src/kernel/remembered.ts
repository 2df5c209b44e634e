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

/**
 * The same for objects that never change: an answer is kept as long as its object is.
 * @param make what depends on nothing but the object
 */
export function rememberedWith<Key extends object, Value>(make: (key: Key) => Value): (key: Key) => Value {
  const kept = new WeakMap<Key, { readonly value: Value }>();
  return (key) => {
    const found = kept.get(key) ?? { value: make(key) };
    kept.set(key, found);
    return found.value;
  };
}
