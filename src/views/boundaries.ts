import fhirpath from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4/index.js';

type Nodes = readonly unknown[];
type Evaluate = (context: Nodes, variables: Readonly<Record<string, unknown>>) => unknown[];

const options = { resolveInternalTypes: false, preciseMath: true } as never;
const compiled = (path: string) => fhirpath.compile(path, r4 as never, options) as unknown as Evaluate;

/**
 * The boundary function of FHIRPath. Where a dateTime has no zone, the widest zones that exist are added, which the
 * library leaves out: the earliest moment lies at +14:00, the latest at -12:00 (FHIRPath 3.0.0-ballot, lowBoundary and
 * highBoundary).
 */
export function boundaryOf(which: 'low' | 'high'): (nodes: Nodes, precision?: unknown) => unknown[] {
  const plain = compiled(`${which}Boundary()`);
  const precise = compiled(`${which}Boundary(%digits)`);
  const zone = which === 'low' ? '+14:00' : '-12:00';
  const withZone = (value: unknown) => {
    const text = String((value as { toJSON?: () => unknown }).toJSON?.() ?? value);
    return /^\d{4}-\d{2}-\d{2}T[\d:.]+$/.test(text) ? compiled(`@${text}${zone}`)([], {}) : [value];
  };
  return (nodes, precision) =>
    (precision === undefined ? plain(nodes, {}) : precise(nodes, { digits: precision })).flatMap(withZone);
}
