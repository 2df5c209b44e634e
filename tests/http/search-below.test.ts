import type { Bundle, ClinicalImpression, CodeableConcept, CodeSystem, FhirResource, Observation } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bodyPartTable } from '../../src/anatomy/body-parts.ts';
import { type SkinPlaceKind, skinPlace } from '../../src/anatomy/skin-places.ts';
import { allCauses } from '../../src/causes/table/all-causes.ts';
import { items } from '../../src/exam/catalogue/catalogue.ts';
import { siteCatalogue } from '../../src/localisation/sites.ts';
import type { RunningService } from '../../src/service.ts';
import { systems } from '../../src/terminology/systems.ts';
import { send, sendJson } from '../support/client.ts';
import { exampleExam, exampleNames } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

let service: RunningService;
const kept = new Map<string, readonly FhirResource[]>();

beforeAll(async () => {
  service = await startTestService();
  for (const name of exampleNames) {
    expect((await sendJson(`${service.url}/exams`, exampleExam({}, name))).status).toBe(201);
  }
  for (const type of ['Observation', 'ClinicalImpression']) kept.set(type, await everyPage(type));
});
afterAll(() => service.stop());

async function everyPage(path: string): Promise<FhirResource[]> {
  const found: FhirResource[] = [];
  let next: string | undefined = `${service.url}/fhir/${path}`;
  while (next !== undefined) {
    const bundle: Bundle = (await send(next, { headers: { Prefer: 'handling=strict' } })).json<Bundle>();
    expect(bundle.resourceType).toBe('Bundle');
    found.push(...(bundle.entry ?? []).flatMap(({ resource }) => (resource as FhirResource | undefined) ?? []));
    next = bundle.link?.find(({ relation }) => relation === 'next')?.url;
  }
  return found;
}

/** Ids that a search below a code finds. */
async function below(type: string, parameter: string, system: string, code: string): Promise<string[]> {
  const found = await everyPage(`${type}?${parameter}:below=${encodeURIComponent(`${system}|${code}`)}`);
  return found.map(({ id }) => id ?? '').sort();
}

/** Ids of the kept resources of a type that hold a code of the system for which the question is answered with yes. */
function holding(type: string, system: string, isMeant: (code: string) => boolean): string[] {
  const concepts = (resource: FhirResource): (CodeableConcept | undefined)[] =>
    resource.resourceType === 'Observation'
      ? [(resource as Observation).bodySite]
      : ((resource as ClinicalImpression).finding ?? []).map(({ itemCodeableConcept }) => itemCodeableConcept);
  return (kept.get(type) ?? [])
    .filter((resource) =>
      concepts(resource).some((concept) =>
        concept?.coding?.some((coding) => coding.system === system && isMeant(coding.code ?? '')),
      ),
    )
    .map(({ id }) => id ?? '')
    .sort();
}

/** Region of a body site by the table of its kind, which says it beside the parent that the hierarchy is made from. */
function regionOf(site: string): string | undefined {
  const [structure = ''] = site.split('.');
  const [, kind, key = ''] = /^(dermatome|landmark|territory)-(.+)$/.exec(structure) ?? [];
  if (kind !== undefined) return skinPlace(kind as SkinPlaceKind, key)?.region;
  const movement = items.find((item) => item.probe.kind === 'movement' && `${item.key}-muscles` === structure);
  return (movement ?? bodyPartTable.get(structure))?.region;
}

describe('a search below a code', () => {
  it('finds every finding of the lower limb, on both sides or one', async () => {
    const expected = holding('Observation', systems.bodySite, (code) => regionOf(code) === 'lower-limbs');
    expect(expected.length).toBeGreaterThan(30);
    expect(await below('Observation', 'body-site', systems.bodySite, 'lower-limb')).toEqual(expected);
    const left = holding(
      'Observation',
      systems.bodySite,
      (code) => regionOf(code) === 'lower-limbs' && code.endsWith('.left'),
    );
    expect(left.length).toBeGreaterThan(10);
    expect(left.length).toBeLessThan(expected.length);
    expect(await below('Observation', 'body-site', systems.bodySite, 'lower-limb.left')).toEqual(left);
  });

  it('finds the same by the items of a section as by their panel', async () => {
    const power = (kept.get('Observation') as Observation[])
      .filter(({ code }) => /^(?:power\/|section\/power$)/.test(code.coding?.[0]?.code ?? ''))
      .map(({ id }) => id ?? '');
    expect(power.length).toBeGreaterThan(10);
    expect(await below('Observation', 'code', systems.examItem, 'section/power')).toEqual(power.sort());
  });

  it.each(['nerve', 'root', 'cord', 'polyradiculoneuropathy'])(
    'finds every impression whose site is of the kind %s',
    async (kind) => {
      const codes = new Set(siteCatalogue().flatMap(({ code, site }) => (site.kind === kind ? [code] : [])));
      const expected = holding('ClinicalImpression', systems.localisation, (code) => codes.has(code));
      expect(await below('ClinicalImpression', 'finding-code', systems.localisation, kind)).toEqual(expected);
    },
  );

  it('finds one site on any side', async () => {
    const found = await below('ClinicalImpression', 'finding-code', systems.localisation, 'common-fibular-nerve');
    expect(found).toHaveLength(1);
    expect(await below('ClinicalImpression', 'finding-code', systems.localisation, 'nerve')).toEqual(found);
  });

  it('finds every impression with a cause of a group, also where the cause has a MONDO term', async () => {
    const groups = [...new Set(allCauses.map(({ group }) => group))];
    let hits = 0;
    for (const group of groups) {
      const own = new Set(allCauses.filter((cause) => cause.group === group).map(({ key }) => key));
      const terms = new Set(allCauses.flatMap((cause) => (cause.group === group ? (cause.mondo?.code ?? []) : [])));
      const byOwn = holding('ClinicalImpression', systems.cause, (code) => own.has(code));
      const byTerm = holding('ClinicalImpression', systems.mondo, (code) => terms.has(code));
      const found = await below('ClinicalImpression', 'finding-code', systems.cause, group);
      expect(found).toEqual(byOwn);
      expect(found).toEqual(expect.arrayContaining(byTerm));
      hits += found.length;
    }
    expect(groups).toContain('hereditary');
    expect(hits).toBeGreaterThanOrEqual(exampleNames.length);
  });
});

describe('the published hierarchies', () => {
  const read = async (id: string) => (await send(`${service.url}/fhir/CodeSystem/${id}`)).json<CodeSystem>();

  it.each(['body-site', 'localisation', 'cause'])('of %s have known parents and no circle', async (id) => {
    const { concept = [], hierarchyMeaning } = await read(id);
    expect(hierarchyMeaning).toBe(id === 'body-site' ? 'part-of' : 'is-a');
    const parents = new Map(
      concept.map(({ code, property = [] }) => [code, property.flatMap(({ valueCode }) => valueCode ?? [])]),
    );
    for (const code of parents.keys()) {
      let above = parents.get(code) ?? [];
      for (let step = 0; above.length > 0; step += 1) {
        expect(above.filter((one) => !parents.has(one))).toEqual([]);
        expect(step).toBeLessThan(40);
        above = [...new Set(above.flatMap((one) => parents.get(one) ?? []))];
      }
    }
  });

  it('mark as headings exactly the codes that no resource ever carries', async () => {
    const headings = async (id: string) =>
      ((await read(id)).concept ?? [])
        .filter(({ property = [] }) =>
          property.some(({ code, valueBoolean }) => code === 'notSelectable' && valueBoolean),
        )
        .map(({ code }) => code)
        .sort();
    expect(await headings('cause')).toEqual([...new Set(allCauses.map(({ group }) => group as string))].sort());
    expect(await headings('localisation')).toEqual(
      [...new Set(siteCatalogue().map(({ site }) => site.kind as string))].sort(),
    );
    expect(await headings('body-site')).toEqual([]);
  });
});
