import type { FhirResource } from 'fhir/r4.js';
import type { IndexEntries } from './index-entries.ts';
export function indexEntriesOf(resource: FhirResource): IndexEntries {
  const r = resource as unknown as Record<string, any>;
  const concept = (c: any) =>
    (c?.coding ?? []).map((x: any) => ({
      kind: 'coding' as const,
      system: x.system ?? '',
      code: x.code ?? '',
      text: x.display?.toLowerCase(),
    }));
  const tokens: any[] = [];
  const pairs: any[] = [];
  const links: any[] = [];
  for (const t of concept(r.code)) tokens.push({ param: 'code', token: t });
  if (r.resourceType === 'Observation') {
    for (const t of concept(r.valueCodeableConcept)) tokens.push({ param: 'value-concept', token: t });
    for (const a of concept(r.code))
      for (const b of concept(r.valueCodeableConcept)) pairs.push({ param: 'code-value-concept', first: a, second: b });
    for (const m of r.hasMember ?? []) links.push({ param: 'has-member', target: m.reference });
  }
  if (r.status) tokens.push({ param: 'status', token: { kind: 'coding', system: '', code: r.status } });
  if (r.subject?.reference)
    tokens.push({
      param: 'subject',
      token: { kind: 'reference', system: 'Patient', code: r.subject.reference.split('/').pop() },
    });
  const at = r.effectiveDateTime ?? r.date ?? r.authoredOn ?? r.recorded;
  return { at: at ? Date.parse(at) : null, tokens, pairs, ranges: [], links };
}
