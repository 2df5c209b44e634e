import type { Pattern } from './skin-findings.ts';

/** Fillings of patches, for one drawing; ids are of that drawing, since every page may have several. */
export function PatternFills({ name, coarseness = 1 }: { readonly name: string; readonly coarseness?: number }) {
  const scale = `scale(${coarseness})`;
  return (
    <defs>
      <pattern
        id={`${name}-hatched`}
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform={`${scale} rotate(45)`}
      >
        <rect class="ground" width="7" height="7" />
        <path class="stroke" d="M1.5 0V7" />
      </pattern>
      <pattern
        id={`${name}-cross-hatched`}
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform={`${scale} rotate(45)`}
      >
        <rect class="ground" width="6" height="6" />
        <path class="stroke" d="M1.5 0V6M0 1.5H6" />
      </pattern>
      <pattern id={`${name}-dotted`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform={scale}>
        <rect class="ground" width="7" height="7" />
        <circle class="dot" cx="2" cy="2" r="1.4" />
        <circle class="dot" cx="5.5" cy="5.5" r="1.4" />
      </pattern>
      <pattern id={`${name}-waved`} width="10" height="6" patternUnits="userSpaceOnUse" patternTransform={scale}>
        <rect class="ground" width="10" height="6" />
        <path class="stroke" d="M0 4L2.5 1.5L7.5 5L10 4" />
      </pattern>
      <pattern id={`${name}-striped`} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform={scale}>
        <rect class="ground" width="6" height="6" />
        <path class="stroke" d="M0 2H6" />
      </pattern>
      <pattern id={`${name}-checked`} width="8" height="8" patternUnits="userSpaceOnUse" patternTransform={scale}>
        <rect class="ground" width="8" height="8" />
        <path class="dot" d="M0 0H4V4H0ZM4 4H8V8H4Z" />
      </pattern>
    </defs>
  );
}

export function fillOf(name: string, pattern: Pattern): string {
  return pattern === 'plain' ? 'var(--accent-paper)' : `url(#${name}-${pattern})`;
}

/** A small square with a filling, beside the word for it. */
export function ValueSwatch({ pattern, name }: { readonly pattern: Pattern; readonly name: string }) {
  return (
    <svg class="swatch body" viewBox="0 0 28 18" aria-hidden="true">
      <PatternFills name={`swatch-${name}`} />
      <rect class={`finding ${pattern}`} x="1" y="1" width="26" height="16" fill={fillOf(`swatch-${name}`, pattern)} />
    </svg>
  );
}
