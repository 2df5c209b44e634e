/** Order of two texts by code unit, so that it is the same under every locale. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
