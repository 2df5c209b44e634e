import fc from 'fast-check';
import type { Bundle, CodeableConcept, Observation } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Identified } from '../../src/fhir/entry.ts';
import { servedResources } from '../../src/fhir/served.ts';
import { createExamRecords } from '../../src/http/exam-records.ts';
import { indexEntriesOf } from '../../src/search/extract.ts';
import type { Token } from '../../src/search/index-entries.ts';
import { joined } from '../../src/search/join-filters.ts';
import type { Filter, SearchQuery, Sort, TokenFilter } from '../../src/search/query.ts';
import { searchRules } from '../../src/search/search-rules.ts';
import type { Stores } from '../../src/store/open-stores.ts';
import type { Position } from '../../src/store/search/find-matches.ts';
import { builtSteps } from '../support/built.ts';
import { emptyStores, engines } from '../support/engines.ts';
import { type ExamBody, exampleExam, exampleNames } from '../support/example-exam.ts';
import { expectedMatches, type Kept } from '../support/search-oracle.ts';
import { openTestStores } from '../support/stores.ts';

const steps = builtSteps();
const newStore = emptyStores();

const identifier = (value: string) => ({ system: 'https://clinic.example/exams', value });
const bytes = (exam: ExamBody) => Buffer.from(JSON.stringify(exam));

/** Posts and corrections in order, each at its own moment. */
const exams: readonly ExamBody[] = exampleNames.flatMap((name, index) => [
  exampleExam({ identifier: identifier(`A-${index}`) }, name),
  exampleExam(
    {
      identifier: identifier(`B-${index}`),
      subject: { reference: 'Patient/invented-other' },
      examinedAt: `2025-0${index + 1}-14T09:00:00Z`,
    },
    name,
  ),
]);
const corrected = exampleExam(
  {
    identifier: identifier('A-0'),
    status: 'amended',
    findings: { power: [{ movement: 'ankle-dorsiflexion', side: 'left', grade: '4' }] },
  },
  'foot-drop',
);
const withdrawn = exampleExam({ identifier: identifier('B-1'), status: 'entered-in-error' }, 'cervical-cord');

describe.each(engines)('search on %s', (engine) => {
  let stores: Stores;
  let kept: readonly Kept[];

  beforeAll(async () => {
    stores = await openTestStores(await newStore(engine));
    let clock = Date.parse('2026-11-01T00:00:00Z');
    const records = createExamRecords(steps, stores.exams, () => new Date(clock));
    const current = new Map<string, Kept>();
    const keep = (bundle: Buffer) => {
      for (const resource of servedResources(JSON.parse(bundle.toString()) as Bundle)) {
        const address = `${resource.resourceType}/${resource.id}`;
        const same = JSON.stringify(current.get(address)?.resource) === JSON.stringify(resource);
        if (!same && !(resource.resourceType === 'Device' && current.has(address))) {
          current.set(address, { resource, updated: clock });
        }
      }
    };
    const ids: string[] = [];
    for (const exam of exams) {
      clock += 1000;
      const { exam: stored } = await records.record(bytes(exam));
      ids.push(stored.id);
      keep(stored.bundle);
    }
    for (const [index, correction] of [
      [0, corrected],
      [3, withdrawn],
    ] as const) {
      clock += 1000;
      keep((await records.correct(ids[index] as string, 1, bytes(correction))).bundle);
    }
    kept = [...current.values()];
    return () => stores.exams.close();
  });

  const query = (type: string, filters: readonly Filter[], changes: Partial<SearchQuery> = {}): SearchQuery => ({
    type,
    filters,
    sort: { by: 'date', direction: 'descending' },
    count: 1000,
    total: 'accurate',
    includes: [],
    revIncludes: [],
    ...changes,
  });

  async function pages(asked: SearchQuery): Promise<string[]> {
    const found: string[] = [];
    let from: Position | undefined;
    do {
      const page = await stores.resources.search(asked, from);
      expect(page.matches.length).toBeLessThanOrEqual(asked.count);
      found.push(...page.matches.map(({ id }) => id));
      from = page.next;
    } while (from !== undefined);
    return found;
  }

  it('finds what going through everything finds, whatever is asked', async () => {
    await fc.assert(
      fc.asyncProperty(fc.gen(), fc.nat(), async (draw, seed) => {
        const asked = randomQuery(kept, draw, seed);
        const expected = expectedMatches(kept, asked);
        const { matches, total } = await stores.resources.search({ ...asked, count: 1000 });
        expect(matches.map(({ id }) => id).sort()).toEqual(expected);
        expect(total).toBe(expected.length);
      }),
      { numRuns: 300 },
    );
  }, 120_000);

  it('finds by a pair what code and value find each by itself', async () => {
    const coded = (param: string, codes: readonly string[]): TokenFilter => ({
      kind: 'token',
      param,
      anyOf: codes.map((code) => ({ code })),
      negated: false,
    });
    const codesOf = (concept?: CodeableConcept) => concept?.coding?.flatMap(({ code }) => code ?? []) ?? [];
    const findings = kept.flatMap(({ resource }) =>
      resource.resourceType === 'Observation' ? [resource as Observation] : [],
    );
    const [values, reasons] = [
      findings.flatMap(({ valueCodeableConcept }) => codesOf(valueCodeableConcept)),
      findings.flatMap(({ dataAbsentReason }) => codesOf(dataAbsentReason)),
    ].map((codes) => [...new Set(codes)].sort());
    let met = 0;
    for (const code of [...new Set(findings.flatMap((one) => codesOf(one.code)))].sort().slice(0, 40)) {
      for (const other of [
        coded('value-concept', values?.slice(0, 20) ?? []),
        coded('data-absent-reason', reasons ?? []),
      ]) {
        const apart = query('Observation', [coded('code', [code]), other]);
        const together = { ...apart, filters: joined('Observation', apart.filters), count: 1000 };
        expect(together.filters.map(({ kind }) => kind)).toEqual(['pair']);
        const found = (await stores.resources.search(together)).matches.map(({ id }) => id);
        expect(found.sort()).toEqual(expectedMatches(kept, apart));
        met += found.length;
      }
    }
    expect(met).toBeGreaterThan(20);
  });

  it.each<Sort>([
    { by: 'date', direction: 'descending' },
    { by: 'date', direction: 'ascending' },
    { by: '_lastUpdated', direction: 'descending' },
    { by: '_lastUpdated', direction: 'ascending' },
    { by: '_id', direction: 'ascending' },
    { by: '_id', direction: 'descending' },
  ])('pages through every match once, by $by $direction', async (sort) => {
    const found = await pages(query('Observation', [], { sort, count: 37 }));
    expect(found).toHaveLength(new Set(found).size);
    expect([...found].sort()).toEqual(expectedMatches(kept, query('Observation', [])));
    const byId = new Map(kept.map((one) => [one.resource.id, one]));
    const values = found.map((id) => {
      const { resource, updated } = byId.get(id) as Kept;
      return sort.by === '_id' ? id : sort.by === '_lastUpdated' ? updated : (indexEntriesOf(resource).at as number);
    });
    const ordered = [...values].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
    expect(values).toEqual(sort.direction === 'ascending' ? ordered : ordered.reverse());
  });

  it('answers each resource with its id, version and time of change', async () => {
    const { matches } = await stores.resources.search(query('ClinicalImpression', []));
    for (const { id, json, updated, version } of matches) {
      expect(JSON.parse(json)).toMatchObject({
        resourceType: 'ClinicalImpression',
        id,
        meta: { versionId: String(version), lastUpdated: new Date(updated).toISOString() },
      });
    }
    expect(matches.filter(({ version }) => version === 2)).toHaveLength(2);
  });

  it('keeps every version of what a correction changed, and leaves the rest at its version', async () => {
    const panel = kept.find(({ resource }) => resource.resourceType === 'RiskAssessment') as Kept;
    const history = await stores.resources.history({ type: 'RiskAssessment', id: panel.resource.id, count: 10 });
    expect(history.map(({ version }) => version)).toEqual([2, 1]);
    const first = await stores.resources.read('RiskAssessment', panel.resource.id, 1);
    expect(first?.json).toBe(history[1]?.json);
    expect(await stores.resources.read('RiskAssessment', panel.resource.id, 3)).toBeUndefined();
    const provenance = kept.filter(({ resource }) => resource.resourceType === 'Provenance');
    expect(provenance).toHaveLength(exams.length + 2);
    for (const { resource } of provenance) {
      expect((await stores.resources.read('Provenance', resource.id))?.version).toBe(1);
    }
  });

  it('brings along what a match refers to and what refers to a match', async () => {
    const panel: Filter = { kind: 'token', param: 'code', anyOf: [{ code: 'examination' }], negated: false };
    const include = { source: 'Observation', param: 'has-member', isIterative: true };
    const found = await stores.resources.search(query('Observation', [panel], { count: 1, includes: [include] }));
    const byId = new Map(kept.map(({ resource }) => [resource.id, resource]));
    const members = (id: string): string[] =>
      ((byId.get(id) as { hasMember?: { reference: string }[] }).hasMember ?? [])
        .map(({ reference }) => reference.split('/')[1] as string)
        .flatMap((member) => [member, ...members(member)]);
    const top = found.matches[0]?.id as string;
    expect(found.included.map(({ id }) => id).sort()).toEqual([...new Set(members(top))].sort());

    const member = members(top).at(-1) as string;
    const back = await stores.resources.search(
      query('Observation', [{ kind: 'id', anyOf: [member] }], { revIncludes: [{ ...include, isIterative: false }] }),
    );
    const owners = kept.filter(
      ({ resource }) => members(resource.id).length > 0 && directMembers(resource).includes(member),
    );
    expect(back.included.map(({ id }) => id)).toEqual(owners.map(({ resource }) => resource.id));
  });

  it('answers as of the last write, whatever it answered before', async () => {
    const own = await openTestStores(await newStore(engine));
    const records = createExamRecords(steps, own.exams, () => new Date('2026-11-01T00:00:00Z'));
    const graded = (code: string): Promise<string[]> => {
      const pair: Filter = {
        kind: 'pair',
        param: 'code-value-concept',
        anyOf: [{ first: { code: 'power/ankle-dorsiflexion' }, second: { code } }],
      };
      const asked = query('Observation', [pair], { total: 'none' });
      return own.resources.search(asked).then(({ matches }) => matches.map(({ version }) => `version ${version}`));
    };
    expect(await graded('2')).toEqual([]);
    const { exam } = await records.record(bytes(exams[0] as ExamBody));
    expect(await graded('2')).toEqual(['version 1']);
    expect(await graded('4')).toEqual([]);
    await records.correct(exam.id, 1, bytes(corrected));
    expect(await graded('2')).toEqual([]);
    expect(await graded('4')).toEqual(['version 2']);
    await own.exams.close();
  });

  it('makes its index anew when the rules have changed, with the same answers', async () => {
    const target = await newStore(engine);
    const own = await openTestStores(target);
    const records = createExamRecords(steps, own.exams, () => new Date('2026-11-01T00:00:00Z'));
    const { exam } = await records.record(bytes(exams[0] as ExamBody));
    await records.correct(exam.id, 1, bytes(corrected));
    const asked = query('Observation', []);
    const before = await own.resources.search(asked);
    await own.exams.close();
    const { openStores } = await import('../../src/store/open-stores.ts');
    const again = await openStores(target, { ...searchRules, fingerprint: 'other' });
    const after = await again.resources.search(asked);
    expect(after.matches.map(({ json }) => json).sort()).toEqual(before.matches.map(({ json }) => json).sort());
    expect(after.total).toBe(before.total);
    await again.exams.close();
  });
});

function directMembers(resource: Identified): string[] {
  const { hasMember = [] } = resource as { hasMember?: { reference: string }[] };
  return hasMember.map(({ reference }) => reference.split('/')[1] as string);
}

/** A question made of values that are there, or nearly. */
function randomQuery(kept: readonly Kept[], draw: fc.GeneratorValue, seed: number): SearchQuery {
  const types = ['Observation', 'ClinicalImpression', 'RiskAssessment', 'ServiceRequest', 'Provenance'];
  const type = draw(fc.constantFrom, ...types);
  const own = kept.filter(({ resource }) => resource.resourceType === type);
  const filters: Filter[] = Array.from({ length: draw(fc.integer, { min: 0, max: 3 }) }, (_, index) => {
    const { resource, updated } = own[(seed * 31 + index * 7919 + draw(fc.nat)) % own.length] as Kept;
    const entries = indexEntriesOf(resource);
    const kind = draw(fc.constantFrom, 'token', 'token', 'pair', 'range', 'link', 'missing', 'id', 'text');
    const pick = <T>(list: readonly T[]): T | undefined => list[draw(fc.nat) % Math.max(1, list.length)];
    const token = pick(entries.tokens.filter((one) => one.token.kind === 'coding' && one.token.code !== ''));
    const reference = pick(entries.tokens.filter((one) => one.token.kind === 'reference'));
    const pair = pick(entries.pairs);
    const link = pick(entries.links);
    const prefix = draw(fc.constantFrom, 'eq', 'ne', 'gt', 'lt', 'ge', 'le', 'sa', 'eb', 'ap');
    if (kind === 'pair' && pair !== undefined) {
      const { first, second } = pair;
      const loose = draw(fc.boolean);
      return {
        kind,
        param: pair.param,
        anyOf: [
          {
            first: { system: first.system, code: first.code },
            second: loose ? { code: second.code } : { system: second.system, code: second.code },
          },
        ],
      };
    }
    const range = pick(entries.ranges);
    if (kind === 'range' && range !== undefined && draw(fc.boolean)) {
      const { param, low, high, unit, of } = range;
      const named = (token: Token | undefined) =>
        token === undefined ? undefined : { system: token.system, code: token.code };
      const [ofUnit, ofCode] = [named(unit), named(of)];
      const pattern = { prefix, low, high, ...(ofUnit && { unit: ofUnit }), ...(ofCode && { of: ofCode }) };
      return { kind, param, anyOf: [pattern] };
    }
    if (kind === 'range') {
      const isDate = draw(fc.boolean) && entries.at !== null && type !== 'RiskAssessment' && type !== 'Provenance';
      const middle = isDate ? (entries.at as number) : updated;
      const low = middle - draw(fc.constantFrom, 0, 1, 500, 86_400_000);
      const high = Math.max(low, middle + draw(fc.constantFrom, 0, 999, 1000, 86_400_000));
      const param = !isDate ? '_lastUpdated' : type === 'ServiceRequest' ? 'authored' : 'date';
      return { kind, param, anyOf: [{ prefix, low, high }] };
    }
    if (kind === 'link' && link !== undefined) return { kind, param: link.param, anyOf: [link.target] };
    if (kind === 'missing' && token !== undefined) return { kind, param: token.param, isMissing: draw(fc.boolean) };
    if (kind === 'text' && token?.token.text !== undefined && token.token.text.length > 2) {
      return {
        kind,
        param: token.param,
        anyOf: [token.token.text.slice(0, 3)],
        match: draw(fc.constantFrom, 'start', 'contain'),
      };
    }
    if (kind === 'id') return { kind, anyOf: [resource.id, (own[0] as Kept).resource.id] };
    if (reference !== undefined && draw(fc.boolean)) {
      const { system, code } = reference.token;
      return { kind: 'reference', param: reference.param, anyOf: [draw(fc.boolean) ? code : `${system}/${code}`] };
    }
    if (token === undefined) return { kind: 'id', anyOf: [resource.id] };
    const other = pick(
      indexEntriesOf((own[0] as Kept).resource).tokens.filter(
        (one) => one.param === token.param && one.token.code !== '',
      ),
    );
    const { system, code } = token.token;
    return {
      kind: 'token',
      param: token.param,
      anyOf: [
        draw(fc.boolean) ? { system, code } : { code },
        ...(other === undefined || draw(fc.boolean) ? [] : [{ code: other.token.code }]),
      ],
      negated: draw(fc.boolean),
      ...(draw(fc.boolean) ? { orIds: [resource.id] } : {}),
    };
  });
  return {
    type,
    filters,
    sort: { by: 'date', direction: 'descending' },
    count: 1000,
    total: 'accurate',
    includes: [],
    revIncludes: [],
  };
}
