/**
 * Tells an element how tall the red flags are, which stick to the upper edge of the window, so that what else sticks there
 * stands below them.
 * @returns ends it
 */
export function keepBelowFlags(box: HTMLElement | null): (() => void) | undefined {
  const flags = document.querySelector('.flags');
  if (box === null || flags === null) return undefined;
  const observer = new ResizeObserver(() => {
    box.style.setProperty('--flags-height', `${flags.getBoundingClientRect().height}px`);
  });
  observer.observe(flags);
  return () => observer.disconnect();
}
