/** The same function, which works each answer out once and keeps it: for few keys, or for the life of one Bundle. */
export function remembered<K, V>(work: (key: K) => V): (key: K) => V {
  const known = new Map<K, V>();
  return (key) => {
    let value = known.get(key);
    if (value === undefined) {
      value = work(key);
      known.set(key, value);
    }
    return value;
  };
}
