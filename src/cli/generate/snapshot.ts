import type { ElementDefinition, StructureDefinition } from 'fhir/r4.js';

/**
 * The full element list of a profile: the base's own list with the differential laid over it.
 * Knows what our profiles use: constraints on elements that the base lists, and new slices of such an element. No children
 * of a data type, no re-slicing, no content references. The base's mappings to other
 * standards say nothing about the profile and are left out.
 * @param base a R4 resource definition or another profile, with snapshot
 * @throws Error when a differential element has no place in the base
 */
export function snapshotOf(profile: StructureDefinition, base: StructureDefinition): ElementDefinition[] {
  const elements = structuredClone(base.snapshot?.element ?? []);
  for (const change of profile.differential?.element ?? []) {
    const id = change.id ?? change.path;
    const known = elements.find((element) => element.id === id);
    if (known) overlay(known, change);
    else insertSlice(elements, change, id);
  }
  for (const element of elements) delete element.mapping;
  return elements;
}

function overlay(element: ElementDefinition, change: ElementDefinition): void {
  const constraint = [...(element.constraint ?? []), ...(change.constraint ?? [])];
  Object.assign(element, structuredClone(change), constraint.length > 0 ? { constraint } : {});
}

function insertSlice(elements: ElementDefinition[], change: ElementDefinition, id: string): void {
  const sliced = id.slice(0, id.lastIndexOf(':'));
  const at = elements.findIndex((element) => element.id === sliced);
  const model = elements[at];
  if (!model || change.sliceName === undefined) throw new Error(`${id}: nothing in the base to lay it over`);
  const { slicing: _, ...rest } = structuredClone(model);
  let end = at + 1;
  while (elements[end]?.id?.startsWith(`${sliced}.`) || elements[end]?.id?.startsWith(`${sliced}:`)) end += 1;
  const slice: ElementDefinition = { ...rest, min: 0 };
  overlay(slice, change);
  elements.splice(end, 0, slice);
}
