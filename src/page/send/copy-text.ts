export type CopyOutcome = 'copied' | 'selected';

/**
 * Copies the text; where the browser has no clipboard for this page, as over plain HTTP from another machine, the element
 * that shows it is selected, so that one key copies it.
 */
export async function copyText(text: string, shownIn: HTMLElement): Promise<CopyOutcome> {
  try {
    if (navigator.clipboard === undefined) throw new Error('no clipboard here');
    await navigator.clipboard.writeText(text);
    return 'copied';
  } catch {
    const selection = getSelection();
    selection?.removeAllRanges();
    const range = document.createRange();
    range.selectNodeContents(shownIn);
    selection?.addRange(range);
    return 'selected';
  }
}
