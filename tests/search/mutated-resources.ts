import fc from 'fast-check';

type Node = Record<string, unknown>;

/** Elements of which one resource or backbone holds a single type. */
const choices = ['value', 'effective', 'occurrence', 'occurred', 'item', 'probability'];
/** ClinicalImpression.finding has `itemCodeableConcept` beside `itemReference`: no choice but two elements. */
const twoElements = new Set(['itemCodeableConcept', 'itemReference']);

const uuid = '0b5c1f9e-6a3d-5e7b-9c1d-2f4a6b8c0d1e';
const references = [
  'Patient/4711',
  `Patient/${uuid}`,
  'Patient/4711/_history/2',
  'https://ehr.example/fhir/Patient/4711',
  'https://ehr.example/fhir/Group/9',
  `Observation/${uuid}`,
  `RiskAssessment/${uuid}`,
  'Observation/not-ours',
  `Device/${uuid}`,
  `urn:uuid:${uuid}`,
  '#contained',
  'Group/3',
];
const dates = [
  '2024',
  '2024-02',
  '2024-02-29',
  '1999-12-31',
  '2026-03-14T10:20:00+01:00',
  '2026-03-14T10:20:07Z',
  '2026-03-14T23:59:59.000-08:00',
  '2026-03-14T10:20:00.120+05:30',
  '2026-03-14T10:20:00.5Z',
];
const words = ['Übung Café', 'ÅNGSTRÖM', 'reflex', 'Power, reduced', 'ẞ', 'naïve'];

/** Resources of one type, each made of the parts of several and with changed leaves. */
export function mutatedResources(originals: readonly Node[]): fc.Arbitrary<Node> {
  const pick = fc.constantFrom(...originals);
  return fc.tuple(pick, pick, pick, fc.array(fc.nat(999), { minLength: 40, maxLength: 40 })).map(([a, b, c, dice]) => {
    let throws = 0;
    const roll = (sides: number) => ((dice[throws++ % dice.length] ?? 0) + throws) % sides;
    const composed: Node = { ...a };
    for (const donor of [b, c]) {
      for (const [key, value] of Object.entries(donor)) if (roll(3) === 0) put(composed, key, value);
    }
    for (const key of Object.keys(composed)) if (key !== 'resourceType' && roll(9) === 0) delete composed[key];
    return changed(composed, '', roll) as Node;
  });
}

function put(target: Node, key: string, value: unknown): void {
  const choice = twoElements.has(key) ? undefined : choices.find((name) => new RegExp(`^_?${name}[A-Z]`).test(key));
  if (choice !== undefined) {
    for (const other of Object.keys(target)) if (new RegExp(`^_?${choice}[A-Z]`).test(other)) delete target[other];
  }
  target[key] = value;
}

function changed(node: unknown, key: string, roll: (sides: number) => number): unknown {
  if (Array.isArray(node)) {
    const children = node.map((child) => changed(child, key, roll));
    return roll(6) === 0 ? [...children, ...children.slice(0, 1)] : children;
  }
  if (typeof node === 'object' && node !== null) {
    const entries = Object.entries(node).filter(([name]) => name === 'resourceType' || roll(25) !== 0);
    const next: Node = Object.fromEntries(entries.map(([name, child]) => [name, changed(child, name, roll)]));
    if (key === 'valueQuantity' && roll(3) === 0) next.comparator = ['<', '<=', '>', '>='][roll(4)];
    if (key === 'subject' && roll(4) === 0) next.identifier = { system: 'https://clinic.example/ids', value: 'P-1' };
    if (key === 'subject' && roll(4) === 0) delete next.reference;
    return next;
  }
  if (roll(3) !== 0) return node;
  if (key === 'reference') return references[roll(references.length)];
  if (typeof node === 'number') return [0, -1.5, 3.67, 100, 1e-7][roll(5)];
  if (typeof node === 'string' && /^\d{4}(-\d\d(-\d\d(T.*)?)?)?$/.test(node)) return dates[roll(dates.length)];
  return key === 'display' || key === 'text' || key === 'valueString' ? words[roll(words.length)] : node;
}
