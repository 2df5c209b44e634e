const marks = /\p{M}/gu;
const plain = /^[\x20-\x7e]*$/;

/** Text as it is compared: lower case, without accents. */
export function folded(text: string): string {
  // Most displays are plain, and normalising is the dear part.
  return (plain.test(text) ? text : text.normalize('NFD').replace(marks, '')).toLowerCase();
}
