/**
 * Where a path ends in a boundary of a dateTime without zone, the widest zones that exist are added: the earliest moment
 * lies at +14:00, the latest at -12:00 (FHIRPath 3.0.0-ballot, lowBoundary and highBoundary).
 */
export function boundary(path: string): ((node: unknown) => unknown) | undefined {
  const which = /\.(?<which>low|high)Boundary\(\)\s*$/.exec(path)?.groups?.which;
  if (which === undefined) return undefined;
  const zone = which === 'low' ? '+14:00' : '-12:00';
  return (node) => {
    const text = String((node as { toJSON?: () => unknown }).toJSON?.() ?? node);
    return /^\d{4}-\d{2}-\d{2}T[\d:.]+$/.test(text) ? `${text}${zone}` : node;
  };
}
