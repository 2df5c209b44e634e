import { tolerance } from './patches.ts';
import { openPathData, pathData } from './path-data.ts';
import { labelled, type SeenSpots } from './seen-spots.ts';
import { type Ring, traceRings } from './trace.ts';
import type { View } from './views.ts';

/** The border of the drawn half as path data, left open at the middle of the picture where both halves meet. */
export function outlineOf(view: View, seen: SeenSpots): string {
  // Of the body as one, so that it runs smoothly past the ends of the borders between patches.
  const body = labelled(seen, () => 1);
  const rings = traceRings(body, (label) => label === 1, tolerance);
  const half = view.width / 2;
  if (!view.isJoined) return pathData(rings, half);
  return rings.map((ring) => openPathData(openedAtMiddle(ring), half)).join('');
}

function openedAtMiddle(ring: Ring): Ring {
  const isBetween = (index: number) => ring.at(index - 1)?.[0] === 0 && ring[(index + 1) % ring.length]?.[0] === 0;
  const kept = ring.filter(([x], index) => x !== 0 || !isBetween(index));
  const cut = kept.findIndex(([x], index) => x === 0 && kept.at(index - 1)?.[0] === 0);
  return cut < 0 ? [...kept, ...kept.slice(0, 1)] : [...kept.slice(cut), ...kept.slice(0, cut)];
}
