import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { FhirResource, Observation } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { canonicalBase, systems } from '../../src/terminology/systems.ts';
import { viewsFrom } from '../../src/views/load-views.ts';
import { runViewOver } from '../../src/views/run-view.ts';
import type { Row } from '../../src/views/view-definition.ts';
import { namesInPath } from '../../src/views/view-path.ts';
import { builtSteps } from '../support/built.ts';
import { servedResources } from '../support/served-exam.ts';

const views = viewsFrom(fileURLToPath(new URL('../../profiles/views', import.meta.url)));
const steps = builtSteps();

function served(example: string): FhirResource[] {
  const text = readFileSync(new URL(`../examples/${example}.json`, import.meta.url), 'utf8');
  return servedResources(
    steps,
    steps.readExam(JSON.parse(text), { purpose: 'record', now: new Date('2026-11-25T12:00:00Z') }),
  );
}

const examples = ['foot-drop', 'cervical-cord', 'ascending-weakness'].map((name) => [name, served(name)] as const);

function rowsOf(name: string, resources: readonly FhirResource[]): readonly Row[] {
  const view = views.get(name)?.compiled;
  if (view === undefined) throw new Error(`no view ${name}`);
  return resources.flatMap((resource) => view.rowsOf(resource));
}

const footDrop = examples[0]?.[1] ?? [];

describe('the shipped views', () => {
  it('gives the weak movement of the foot drop with its grade', () => {
    const rows = rowsOf('power', footDrop).filter((row) => row.movement_code === 'power/ankle-dorsiflexion');
    expect(rows.map(({ side, ordinal }) => [side, typeof ordinal])).toEqual(
      expect.arrayContaining([['left', 'number']]),
    );
    const weak = rows.find(({ side }) => side === 'left');
    expect(weak).toMatchObject({ interpretation: 'A', patient_key: 'invented-foot-drop', status: 'final' });
  });

  it('gives the first site of the foot drop as the common fibular nerve, and a first cause with its probability', () => {
    const rows = rowsOf('impressions', footDrop);
    expect(rows.find(({ kind }) => kind === 'site')?.code).toBe('common-fibular-nerve.left');
    expect(rows.map(({ rank }) => rank)).toEqual(rows.map((_row, index) => index));
    const [first, second] = rowsOf('causes', footDrop);
    expect(first?.code).toBe('fibular-compression-at-fibular-neck');
    expect(Number(first?.probability_percent)).toBeGreaterThan(Number(second?.probability_percent));
  });

  it.each(examples)('counts in %s as the resources do, and every key joins', (_name, resources) => {
    const observations = resources.filter(
      (resource): resource is Observation => resource.resourceType === 'Observation',
    );
    const findings = rowsOf('findings', resources);
    const panels = observations.filter(({ hasMember }) => hasMember !== undefined);
    const members = rowsOf('panel_members', resources);
    expect(members).toHaveLength(panels.reduce((sum, { hasMember = [] }) => sum + hasMember.length, 0));
    expect(rowsOf('completeness', resources).map(({ resource_key, members }) => [resource_key, members])).toEqual(
      panels.map(({ id, hasMember = [] }) => [id, hasMember.length]),
    );
    const memberKeys = new Set(members.map(({ member_key }) => member_key));
    expect(findings.length).toBeGreaterThan(50);
    expect(findings.filter(({ resource_key }) => !memberKeys.has(resource_key ?? ''))).toEqual([]);
    const ids = new Set(resources.map(({ id }) => id));
    for (const { source_key } of rowsOf('impressions', resources)) expect(ids).toContain(source_key);
    const impression = resources.find(({ resourceType }) => resourceType === 'ClinicalImpression')?.id;
    for (const { impression_key } of rowsOf('requests', resources)) expect(impression_key).toBe(impression);
  });

  it.each(examples)(
    'gives every row of every table in %s the one key of its exam, as its second column',
    (_name, resources) => {
      const tags = new Set(
        resources.flatMap(({ meta }) => (meta?.tag ?? []).filter(({ system }) => system === systems.exam)),
      );
      const keys = new Set([...tags].map(({ code }) => code));
      expect(keys.size).toBe(1);
      for (const [name, { compiled }] of views) {
        expect(compiled.columns[1]).toMatchObject({ name: 'exam_key', type: 'string' });
        for (const { exam_key } of rowsOf(name, resources)) expect(keys).toContain(exam_key);
      }
    },
  );

  it.each(['power', 'reflexes', 'sensation', 'findings'])('%s names a place the same on both sides', (name) => {
    const rows = examples.flatMap(([, resources]) => rowsOf(name, resources));
    for (const { site_code, site_structure, side } of rows) {
      expect(side === null ? site_structure : `${site_structure}.${side}`).toBe(site_code);
    }
    const sided = (wanted: string) =>
      new Set(rows.filter(({ side }) => side === wanted).map((row) => row.site_structure));
    expect([...sided('left')].filter((place) => sided('right').has(place)).length).toBeGreaterThan(0);
  });

  it.each(examples)('tells patterns, sites, causes and findings apart in the impression of %s', (_name, resources) => {
    const kinds: Readonly<Record<string, string>> = {
      [systems.pattern]: 'pattern',
      [systems.localisation]: 'site',
      [systems.cause]: 'cause',
      [systems.mondo]: 'cause',
      [systems.hpo]: 'finding',
    };
    const rows = rowsOf('impressions', resources);
    for (const { kind, system } of rows) expect(kind).toBe(kinds[String(system)]);
    const ofKind = (wanted: string) => rows.filter(({ kind }) => kind === wanted);
    expect(ofKind('finding').length).toBeGreaterThan(0);
    const ranked = new Set(rowsOf('causes', resources).map(({ code }) => code));
    expect(ofKind('cause').length).toBeGreaterThan(0);
    for (const { code } of ofKind('cause')) expect(ranked).toContain(code);
  });

  it('gives red flags where the resources have them', () => {
    const flags = rowsOf('red_flags', examples[2]?.[1] ?? []);
    expect(flags.map(({ flag_code, state_code }) => [flag_code, state_code])).toContainEqual([
      'red-flag/acute-ascending-weakness',
      'present',
    ]);
  });

  it.each([...views.keys()])('%s gives cells of the types it states', (name) => {
    const columns = views.get(name)?.compiled.columns ?? [];
    const rows = examples.flatMap(([, resources]) => rowsOf(name, resources));
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(Object.keys(row)).toEqual(columns.map((column) => column.name));
      for (const { name: cell, type } of columns) {
        const wanted = type === 'integer' || type === 'decimal' ? 'number' : 'string';
        if (row[cell] !== null) expect([cell, typeof row[cell]]).toEqual([cell, wanted]);
      }
    }
  });
});

/** SQL on FHIR 2.1.0-pre, profile ShareableViewDefinition: functions that every runner has. */
const shareable = [
  'where',
  'exists',
  'empty',
  'extension',
  'ofType',
  'first',
  'getResourceKey',
  'getReferenceKey',
  'not',
];
/** Beyond them, functions of normative FHIRPath that have no shareable equal: sections by prefix, sides by suffix, sizes. */
const beyond = ['startsWith', 'endsWith', 'iif', 'count', 'contains', 'substring', 'indexOf'];

describe.each([...views])('%s', (name, { definition }) => {
  it('keeps to the shareable profile, but for the functions named here', () => {
    expect(definition.url).toBe(`${canonicalBase}/ViewDefinition/${name.replaceAll('_', '-')}`);
    expect(definition).toMatchObject({ fhirVersion: ['4.0.1'], status: 'active' });
    expect(definition.name).toMatch(/^[a-z][a-z_]*$/);
    const columns = definition.select.flatMap(({ column = [] }) => column);
    for (const column of columns)
      expect([column.type, column.description]).toEqual([expect.any(String), expect.any(String)]);
    const used = columns.flatMap(({ path }) => namesInPath(path)?.functions ?? []);
    expect(used.filter((called) => ![...shareable, ...beyond].includes(called))).toEqual([]);
  });
});

describe('runViewOver', () => {
  it('reports a bad line by its number, without its text, and goes on', async () => {
    const view = views.get('requests')?.compiled;
    if (view === undefined) throw new Error('no view');
    const bundle = JSON.stringify({ resourceType: 'Bundle', entry: footDrop.map((resource) => ({ resource })) });
    const items = [];
    for await (const item of runViewOver(['{"secret', '[]', '', bundle], view)) items.push(item);
    expect(items.slice(0, 2)).toEqual([
      { fault: { line: 1, message: 'Expected one JSON object on the line.' } },
      { fault: { line: 2, message: 'Expected a FHIR resource or a Bundle of resources.' } },
    ]);
    expect(items.slice(2).map((item) => 'row' in item && item.row)).toEqual(rowsOf('requests', footDrop));
  });
});
