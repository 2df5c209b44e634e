import type { Bundle, CodeableConcept, Observation, ServiceRequest } from 'fhir/r4.js';
import { localCodes } from '../../fhir/local-codes.ts';
import { systems } from '../../terminology/systems.ts';
import { bullets, table, wrap } from './layout.ts';

/** The parts of the localisation answer that the demonstration shows. */
export interface ShownAnswer {
  readonly presentation: string;
  readonly caution: string;
  readonly modelVersion: string;
  readonly conclusion: string;
  readonly localisations: readonly {
    readonly label: string;
    readonly side: string | null;
    readonly level: string | null;
    readonly probability: number;
    readonly supporting: readonly { readonly text: string; readonly because: string }[];
  }[];
  readonly causes: readonly { readonly label: string; readonly probability: number }[];
  readonly redFlags: readonly {
    readonly label: string;
    readonly state?: string;
    readonly urgency: string;
    readonly action: string;
  }[];
  readonly workup: readonly { readonly label: string; readonly priority: string; readonly because: string }[];
}

const shownSites = 3;
const shownReasons = 3;
const shownCauses = 5;
const shownFindings = 16;

/** What the service found out about one exam, for a person at a terminal. */
export function report(answer: ShownAnswer, bundle: Bundle, width: number): string {
  const part = (title: string, text: string) => (text === '' ? '' : `${title}\n${text}\n`);
  return [
    part('PRESENTATION', wrap(answer.presentation, width, '  ')),
    part('WHERE THE LESION MAY BE', sites(answer, width)),
    part('RED FLAGS', redFlags(answer, width)),
    part('WHAT IT MAY BE', causes(answer, width)),
    part('CODED FINDINGS (FHIR Observations)', observations(bundle, width)),
    part('PROPOSED TESTS (FHIR ServiceRequests, drafts)', tests(answer, bundle, width)),
    part('CAUTION', wrap(answer.caution, width, '  ')),
  ]
    .filter((text) => text !== '')
    .join('\n');
}

/** The first of all that share a key: the two sides of a finding often speak with the same words. */
function oneForEach<T>(values: readonly T[], keyOf: (value: T) => string): T[] {
  const seen = new Set<string>();
  return values.filter((value) => !seen.has(keyOf(value)) && seen.add(keyOf(value)));
}

function percent(probability: number): string {
  const rounded = Math.round(probability * 100);
  if (rounded === 0) return '<1 %';
  return rounded === 100 ? '>99 %' : `${rounded} %`;
}

function sites({ conclusion, localisations }: ShownAnswer, width: number): string {
  const ranked = localisations.slice(0, shownSites).map((site) => {
    const side = site.side === 'both' ? 'both sides' : site.side;
    const where = [side, site.level].filter((part) => part !== null && !site.label.includes(part)).join(', ');
    const title = `${percent(site.probability).padStart(6)}  ${site.label}${where === '' ? '' : ` (${where})`}`;
    const reasons = oneForEach(site.supporting, ({ because }) => because.replaceAll(/\b(left|right)\b/g, ''))
      .slice(0, shownReasons)
      .map(({ text, because }) => `${text}: ${because}`);
    return [title, ...(reasons.length === 0 ? [] : [bullets(reasons, width, '        ')])].join('\n');
  });
  return [`  Conclusion: ${conclusion.replaceAll('-', ' ')}`, ...ranked].join('\n');
}

function redFlags({ redFlags: flags }: ShownAnswer, width: number): string {
  if (flags.length === 0) return '  None was triggered by what was sent.';
  return bullets(
    flags.map(({ label, state, urgency, action }) => {
      const certainty = state === 'not-assessable' ? ' (cannot be decided from what was sent)' : '';
      return `${label}${certainty} [${urgency}]: ${action}`;
    }),
    width,
  );
}

function causes({ causes: ranked }: ShownAnswer, width: number): string {
  const rows = ranked.slice(0, shownCauses).map(({ label, probability }) => [percent(probability).padStart(4), label]);
  return rows.length === 0 ? '' : table(rows, width);
}

function observations(bundle: Bundle, width: number): string {
  const stated = resources(bundle)
    .filter((resource): resource is Observation => resource.resourceType === 'Observation')
    .filter((observation) => observation.meta?.profile?.some((url) => url.endsWith('/neuro-exam-finding')) === true);
  const isStatement = (one: Observation) => one.code.coding?.[0]?.code === localCodes.otherwiseNormal.code;
  const statements = stated.filter(isStatement).map((one) => one.code.text ?? '');
  const findings = stated.filter((one) => !isStatement(one));
  const isAbnormal = (one: Observation) => one.interpretation?.[0]?.coding?.[0]?.code === 'A';
  const notable = findings.filter((one) => isAbnormal(one) || one.dataAbsentReason !== undefined);
  const rows = notable
    .slice(0, shownFindings)
    .map((one) => [
      one.code.coding?.find((coding) => coding.system === systems.examItem)?.code ?? one.code.text ?? '',
      one.bodySite?.text ?? '',
      one.valueCodeableConcept?.coding?.[0]?.code ?? quantity(one) ?? 'not tested',
      one.interpretation?.[0]?.coding?.[0]?.code ?? '',
      phenotype(one),
    ]);
  const hidden = notable.length - rows.length;
  const normal = findings.length - notable.length;
  const count = `  and ${hidden === 0 ? '' : `${hidden} more like these and `}${normal} normal ones; all ${findings.length} are in the Bundle.`;
  const summary =
    statements.length === 0
      ? count
      : `${count}\n${wrap(`One Observation each for what the examiner stated as a whole: ${statements.join('; ')}.`, width, '  ')}`;
  if (rows.length === 0) return summary;
  const limits = [Math.floor(width * 0.32), Math.floor(width * 0.27), 10, 4];
  return `${table([['Code', 'Site', 'Value', 'Int.', 'HPO'], ...rows], width, limits)}\n${summary}`;
}

function quantity({ valueQuantity: value }: Observation): string | undefined {
  return value === undefined ? undefined : `${value.value} ${value.unit ?? ''}`.trim();
}

/** The phenotype term that the Observation carries, in its code or in a component. */
function phenotype(one: Observation): string {
  const concepts: (CodeableConcept | undefined)[] = [
    ...(one.component ?? []).map((component) => component.valueCodeableConcept),
    one.code,
  ];
  const term = concepts.flatMap((concept) => concept?.coding ?? []).find((coding) => coding.system === systems.hpo);
  return term === undefined ? '' : `${term.code} ${term.display ?? ''}`.trim();
}

/** The proposals of the Bundle, each with the reason from the answer. */
function tests({ workup }: ShownAnswer, bundle: Bundle, width: number): string {
  if (workup.length === 0) return '  None.';
  const reasons = new Map(workup.map(({ label, because }) => [label, because]));
  const proposals = resources(bundle).filter(
    (resource): resource is ServiceRequest => resource.resourceType === 'ServiceRequest',
  );
  return bullets(
    proposals.map((proposal) => {
      const label = proposal.code?.text ?? proposal.code?.coding?.[0]?.display ?? '';
      const because = reasons.get(label);
      return `${label} [${proposal.priority ?? 'routine'}]${because === undefined ? '' : `: ${because}`}`;
    }),
    width,
  );
}

function resources(bundle: Bundle) {
  return (bundle.entry ?? []).flatMap((entry) => entry.resource ?? []);
}
