import { type SectionKey, sectionCode, sectionKeys } from '../exam/catalogue/item.ts';
import { profileUrl, systems } from '../terminology/systems.ts';

/** A resource as it is served, with references `Type/id`. */
export interface ServedResource {
  readonly resourceType: string;
  readonly id?: string;
}

/** What the criteria look at of a resource, whatever its type. */
interface Looked extends ServedResource {
  readonly status?: string;
  readonly code?: { readonly coding?: readonly { readonly system?: string; readonly code?: string }[] };
  readonly meta?: { readonly profile?: readonly string[] };
  readonly method?: { readonly coding?: readonly { readonly code?: string }[] };
  readonly interpretation?: readonly { readonly coding?: readonly { readonly code?: string }[] }[];
  readonly hasMember?: readonly { readonly reference?: string }[];
  readonly date?: string;
  readonly subject?: { readonly reference?: string };
}

export type Impression = Looked & { readonly resourceType: 'ClinicalImpression' };

const generalLists = [
  'exam',
  'findings',
  'abnormal',
  'statements',
  'sections',
  'localisation',
  'flags',
  'causes',
  'requests',
] as const;

/** Names of the environment variables that a criterion may use: general lists, then one list for each section. */
export const listNames: readonly string[] = [...generalLists, ...sectionKeys];

export type ExamLists = Readonly<Record<(typeof generalLists)[number] | SectionKey, readonly ServedResource[]>>;

const profiles = {
  finding: profileUrl('neuro-exam-finding'),
  panel: profileUrl('neuro-exam-panel'),
  derived: profileUrl('neuro-exam-derived-observation'),
};

/** What a correction has taken back is still served, with one of these. */
const withdrawn = ['entered-in-error', 'revoked'];

/**
 * An exam as lists, so that criteria are short and quick. Nothing that a correction took back is in any of them.
 * `exam` is one Bundle of everything; `findings` are single findings, `abnormal` those with the interpretation A, and
 * `statements` the summary statements; a section's list has every member of its panel, statements and scales too.
 */
export function examLists(resources: readonly ServedResource[]): ExamLists {
  const valid = (resources as readonly Looked[]).filter(({ status }) => !withdrawn.includes(status ?? ''));
  const byAddress = new Map(valid.map((resource) => [`${resource.resourceType}/${resource.id}`, resource]));
  const observations = valid.filter(({ resourceType }) => resourceType === 'Observation');
  const stated = observations.filter(({ meta }) => meta?.profile?.includes(profiles.finding));
  const statements = stated.filter((one) => itemCode(one) === 'otherwise-normal');
  const findings = stated.filter((one) => itemCode(one) !== 'otherwise-normal');
  const sections = observations.filter(
    (one) => one.meta?.profile?.includes(profiles.panel) && itemCode(one)?.startsWith('section/'),
  );
  const derived = observations.filter(({ meta }) => meta?.profile?.includes(profiles.derived));
  const members = new Map(
    sections.map((panel) => [
      itemCode(panel),
      (panel.hasMember ?? []).flatMap(({ reference }) => byAddress.get(reference ?? '') ?? []),
    ]),
  );
  const ofSections = Object.fromEntries<readonly Looked[]>(
    sectionKeys.map((key): [SectionKey, readonly Looked[]] => [key, members.get(`section/${sectionCode(key)}`) ?? []]),
  ) as Readonly<Record<SectionKey, readonly Looked[]>>;
  const exam = { resourceType: 'Bundle', type: 'collection', entry: valid.map((resource) => ({ resource })) };
  return {
    exam: [exam],
    findings,
    abnormal: findings.filter(({ interpretation }) => interpretation?.[0]?.coding?.[0]?.code === 'A'),
    statements,
    sections,
    localisation: derived.filter((one) => itemCode(one) === 'localisation'),
    flags: derived.filter((one) => itemCode(one)?.startsWith('red-flag/')),
    causes: valid.filter(({ resourceType }) => resourceType === 'RiskAssessment'),
    requests: valid.filter(({ resourceType }) => resourceType === 'ServiceRequest'),
    ...ofSections,
  };
}

/** The impression of an exam, unless it was entered in error. */
export function impressionOf(resources: readonly ServedResource[]): Impression | undefined {
  const found = resources.find(({ resourceType }) => resourceType === 'ClinicalImpression') as Impression | undefined;
  return found?.status === 'entered-in-error' ? undefined : found;
}

function itemCode({ code }: Looked): string | undefined {
  return code?.coding?.find(({ system }) => system === systems.examItem)?.code;
}
