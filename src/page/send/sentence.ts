/** A reason of the service as a sentence of its own. */
export function sentence(text: string): string {
  const whole = text.trim();
  return `${whole.charAt(0).toUpperCase()}${whole.slice(1)}${/[.!?]$/.test(whole) ? '' : '.'}`;
}
