/** JSON Pointer of the value reached by these steps; keys are escaped. Source: RFC 6901, section 3. */
export function pointerTo(...steps: readonly (string | number)[]): string {
  return steps.map((step) => `/${escapeStep(String(step))}`).join('');
}

/** One step appended to a pointer that is already escaped. */
export function pointerInto(pointer: string, step: string | number): string {
  return `${pointer}/${escapeStep(String(step))}`;
}

/** The unescaped steps of a pointer; none for the whole body. */
export function pointerSteps(pointer: string): readonly string[] {
  return pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

function escapeStep(step: string): string {
  // Nearly every step is a plain name or index, and replacing is many times dearer than looking.
  if (!step.includes('~') && !step.includes('/')) return step;
  return step.replaceAll('~', '~0').replaceAll('/', '~1');
}
