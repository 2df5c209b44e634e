import fc from 'fast-check';
import type { CodeSystem, ConceptMap, OperationOutcome, Parameters, ParametersParameter, ValueSet } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { scales } from '../../src/exam/scales.ts';
import type { RunningService } from '../../src/service.ts';
import { canonicalBase, scaleSystem, systems } from '../../src/terminology/systems.ts';
import { published } from '../contract/codings.ts';
import { send, sendJson } from '../support/client.ts';
import { flat } from '../support/code-systems.ts';
import { startTestService } from '../support/service.ts';

let service: RunningService;
beforeAll(async () => {
  service = await startTestService();
});
afterAll(() => service.stop());

const get = (path: string, query: Record<string, string> | [string, string][]) =>
  send(`${service.url}/fhir/${path}?${new URLSearchParams(query)}`);
const post = (path: string, ...parameter: unknown[]) =>
  sendJson(`${service.url}/fhir/${path}`, { resourceType: 'Parameters', parameter });
const outcome = (text: string) => (JSON.parse(text) as OperationOutcome).issue[0]?.details?.text ?? '';
const result = (answer: { json<T>(): T }) => answer.json<Parameters>().parameter?.[0]?.valueBoolean;
const valueSetOf = (...include: unknown[]) => ({
  name: 'valueSet',
  resource: { resourceType: 'ValueSet', status: 'draft', compose: { include } },
});
const codesIn = (valueSet: ValueSet) => (valueSet.expansion?.contains ?? []).map(({ code }) => code);

/** Values of a property in the answer of a look-up, with what it was described as. */
async function looked(system: string, code: string, ...properties: string[]) {
  const answer = await get('CodeSystem/$lookup', [
    ['system', system],
    ['code', code],
    ...properties.map((name): [string, string] => ['property', name]),
  ]);
  const parts = (answer.json<Parameters>().parameter ?? []).filter(({ name }) => name === 'property');
  return parts.map(({ part = [] }) => {
    const [name, value, description] = part;
    const { name: _, ...rest } = value as ParametersParameter;
    return [name?.valueCode, Object.values(rest)[0], description?.valueString].filter((one) => one !== undefined);
  });
}

describe('a look-up', () => {
  it('tells what stands above and below, by name', async () => {
    expect(await looked(systems.bodySite, 'hand.left', 'parent')).toEqual([
      ['parent', 'hand', 'Hand'],
      ['parent', 'upper-limb.left', 'Left upper limb'],
    ]);
    expect(await looked(systems.localisation, 'nerve-root-L5', 'child', 'parent')).toEqual([
      ['parent', 'nerve-root', 'Nerve root'],
      ['child', 'nerve-root-L5.left', 'L5 nerve root, left'],
      ['child', 'nerve-root-L5.right', 'L5 nerve root, right'],
    ]);
    // A nested code system: the items of a section.
    const [first] = await looked(systems.examItem, 'section/power', 'child');
    expect(first?.[0]).toBe('child');
    expect(await looked(systems.examItem, String(first?.[1]), 'parent')).toEqual([
      ['parent', 'section/power', 'Power'],
    ]);
  });

  it('tells the number of a grade and the properties of our own, and only what was asked for', async () => {
    for (const { key, ordinal } of scales['mrc-power'].grades) {
      expect(await looked(scaleSystem('mrc-power'), key, 'ordinal')).toEqual([['ordinal', ordinal]]);
    }
    expect(await looked(systems.cause, 'friedreich-ataxia', 'inheritance')).toEqual([
      ['inheritance', 'autosomal-recessive'],
    ]);
    expect(await looked(systems.cause, 'hereditary', 'notSelectable')).toEqual([['notSelectable', true]]);
    const refused = await get('CodeSystem/$lookup', { system: systems.cause, code: 'hereditary', property: 'colour' });
    expect([refused.status, outcome(refused.text)]).toEqual([400, expect.stringMatching(/unknown property.*parent/)]);
  });

  it('knows every open code of the tables and every target of a map, each with its notice', async () => {
    const asked = new Map<string, [string, string]>();
    for (const { system: usual, codes } of published.vocabularies()) {
      for (const { system = usual, code } of codes) asked.set(`${system}|${code}`, [system, code]);
    }
    for (const { group = [] } of published.ofType('ConceptMap')) {
      for (const { target: system = '', element } of group) {
        for (const { target = [] } of element) {
          for (const { code = '' } of target) asked.set(`${system}|${code}`, [system, code]);
        }
      }
    }
    expect(asked.size).toBeGreaterThan(700);
    const wrong: string[] = [];
    for (const [system, code] of asked.values()) {
      const found = await looked(system, code, 'copyright');
      if (found.length !== 1 || String(found[0]?.[1]).length < 40) wrong.push(`${system}|${code}`);
    }
    expect(wrong).toEqual([]);
  });
});

describe('an expansion', () => {
  it('marks headings, and leaves them out on request', async () => {
    const causes = { url: `${canonicalBase}/ValueSet/causes` };
    const all = (await get('ValueSet/$expand', causes)).json<ValueSet>();
    const headings = all.expansion?.contains?.filter(({ abstract }) => abstract).map(({ code }) => code) ?? [];
    expect(headings).toContain('hereditary');
    const shown = (await get('ValueSet/$expand', { ...causes, excludeNotForUI: 'true' })).json<ValueSet>();
    expect(shown.expansion?.total).toBe((all.expansion?.total as number) - headings.length);
    const own = (await get('ValueSet/$expand', { ...causes, 'exclude-system': systems.mondo })).json<ValueSet>();
    expect(new Set(own.expansion?.contains?.map(({ system }) => system))).toEqual(new Set([systems.cause]));
    expect(own.compose).toBeUndefined();
    const whole = (
      await get('ValueSet/$expand', { ...causes, includeDefinition: 'true', count: '1' })
    ).json<ValueSet>();
    expect(whole.compose?.include.map(({ system }) => system)).toEqual([systems.cause, systems.mondo]);
  });

  it('works out a value set that is sent, by codes and by place in a hierarchy', async () => {
    const filter = (op: string, value: string) => [{ property: 'concept', op, value }];
    const isA = await post(
      'ValueSet/$expand',
      valueSetOf({ system: systems.localisation, filter: filter('is-a', 'nerve-root-L5') }),
    );
    expect(codesIn(isA.json<ValueSet>())).toEqual(['nerve-root-L5', 'nerve-root-L5.left', 'nerve-root-L5.right']);
    const mixed = await post('ValueSet/$expand', {
      name: 'valueSet',
      resource: {
        resourceType: 'ValueSet',
        compose: {
          include: [
            { system: systems.localisation, filter: filter('descendent-of', 'nerve-root-L5') },
            { system: systems.loinc, concept: [{ code: '9269-2' }] },
            { valueSet: [`${canonicalBase}/ValueSet/presence`] },
          ],
          exclude: [{ system: systems.localisation, concept: [{ code: 'nerve-root-L5.left' }] }],
        },
      },
    });
    const presence = scales.presence.grades.map(({ key }) => key);
    expect(codesIn(mixed.json<ValueSet>())).toEqual(['nerve-root-L5.right', '9269-2', ...presence]);
    const byProperty = await post(
      'ValueSet/$expand',
      valueSetOf({ system: systems.cause, filter: [{ property: 'inheritance', op: '=', value: 'x-linked' }] }),
    );
    const tree = flat((published.byUrl(systems.cause) as CodeSystem).concept);
    const xLinked = tree.filter(({ property = [] }) => property.some(({ valueString }) => valueString === 'x-linked'));
    expect(codesIn(byProperty.json<ValueSet>())).toEqual(xLinked.map(({ code }) => code));
    expect(xLinked.length).toBeGreaterThan(3);
  });

  it.each([
    ['a system that is not here', { system: 'http://snomed.info/sct' }, /no code is here/],
    ['all of a fragment', { system: systems.loinc }, /fragment/],
    ['a code that its system does not have', { system: systems.cause, concept: [{ code: 'x' }] }, /does not have/],
    [
      'a filter of another kind',
      { system: systems.cause, filter: [{ property: 'a', op: 'regex', value: 'b' }] },
      /is-a/,
    ],
    ['a value set that is not here', { valueSet: ['urn:x'] }, /not published here/],
    ['more filters than anybody needs', { system: systems.cause, filter: Array(51).fill({}) }, /more than 50/],
    ['nothing', {}, /must have a system/],
    ['no object', 'x', /must be an object/],
  ])('refuses %s', async (_, include, says) => {
    const answer = await post('ValueSet/$expand', valueSetOf(include));
    expect([answer.status, outcome(answer.text)]).toEqual([400, expect.stringMatching(says)]);
  });

  it('says of a parameter that is not taken why', async () => {
    const answer = await get('ValueSet/presence/$expand', { displayLanguage: 'de' });
    expect([answer.status, outcome(answer.text)]).toEqual([400, expect.stringMatching(/displayLanguage.*English/)]);
    expect((await get('ValueSet/presence/$expand', { activeOnly: 'perhaps' })).status).toBe(400);
    expect((await get('ValueSet/presence/$expand', { valueSet: 'x' })).status).toBe(400);
  });
});

describe('the check of a code', () => {
  const concept = (...coding: unknown[]) => ({ name: 'codeableConcept', valueCodeableConcept: { coding } });

  it('takes a concept of which one coding is right', async () => {
    const wrong = { system: systems.cause, code: 'x' };
    const right = { system: systems.cause, code: 'friedreich-ataxia' };
    expect(result(await post('ValueSet/causes/$validate-code', concept(wrong, right)))).toBe(true);
    expect(result(await post('CodeSystem/cause/$validate-code', concept(wrong, right)))).toBe(true);
    expect(result(await post('ValueSet/causes/$validate-code', concept(wrong)))).toBe(false);
    expect((await post('ValueSet/causes/$validate-code', concept())).status).toBe(400);
    const twice = await post(
      'ValueSet/causes/$validate-code',
      concept(right),
      { name: 'code', valueCode: 'x' },
      { name: 'system', valueUri: systems.cause },
    );
    expect(twice.status).toBe(400);
  });

  it('takes a value set that is sent', async () => {
    const hereditary = valueSetOf({
      system: systems.cause,
      filter: [{ property: 'concept', op: 'is-a', value: 'hereditary' }],
    });
    const check = (code: string) =>
      post('ValueSet/$validate-code', hereditary, { name: 'coding', valueCoding: { system: systems.cause, code } });
    expect(result(await check('friedreich-ataxia'))).toBe(true);
    expect(result(await check('diabetic-polyneuropathy'))).toBe(false);
  });

  it('takes a heading only where headings are allowed', async () => {
    const asked = { system: systems.cause, code: 'hereditary' };
    const refused = await get('ValueSet/causes/$validate-code', asked);
    expect([result(refused), refused.text]).toEqual([false, expect.stringContaining('abstract=true')]);
    expect(result(await get('ValueSet/causes/$validate-code', { ...asked, abstract: 'true' }))).toBe(true);
    const other = await get('ValueSet/causes/$validate-code', { ...asked, systemVersion: '0.0.0' });
    expect(other.status).toBe(400);
  });
});

describe('subsumption', () => {
  const outcomeOf = (answer: { json<T>(): T }) => answer.json<Parameters>().parameter?.[0]?.valueCode;
  const coding = (name: string, code: string, system: string = systems.localisation) => ({
    name,
    valueCoding: { system, code },
  });

  it('takes codes and codings, of the type and of an instance', async () => {
    const codes = { codeA: 'nerve', codeB: 'common-fibular-nerve.left' };
    expect(outcomeOf(await get('CodeSystem/$subsumes', { ...codes, system: systems.localisation }))).toBe('subsumes');
    expect(outcomeOf(await get('CodeSystem/localisation/$subsumes', codes))).toBe('subsumes');
    const turned = [coding('codingA', 'common-fibular-nerve.left'), coding('codingB', 'nerve')];
    expect(outcomeOf(await post('CodeSystem/$subsumes', ...turned))).toBe('subsumed-by');
    expect(outcomeOf(await post('CodeSystem/localisation/$subsumes', ...turned))).toBe('subsumed-by');
    expect((await post('CodeSystem/cause/$subsumes', ...turned)).status).toBe(400);
    const mixed = [coding('codingA', 'nerve'), coding('codingB', 'hereditary', systems.cause)];
    expect((await post('CodeSystem/$subsumes', ...mixed)).status).toBe(400);
  });

  it('says nothing of a part that it would not say of a kind', async () => {
    const asked = { system: systems.bodySite, codeA: 'upper-limb', codeB: 'hand.left' };
    expect(outcomeOf(await get('CodeSystem/$subsumes', asked))).toBe('not-subsumed');
  });
});

describe('a translation', () => {
  interface Match {
    readonly equivalence: string | undefined;
    readonly system: string | undefined;
    readonly code: string | undefined;
  }
  const matches = async (query: Record<string, string>): Promise<Match[]> =>
    ((await get('ConceptMap/$translate', query)).json<Parameters>().parameter ?? [])
      .filter(({ name }) => name === 'match')
      .map(({ part = [] }) => {
        const { system, code } = part.find(({ name }) => name === 'concept')?.valueCoding ?? {};
        return { equivalence: part.find(({ name }) => name === 'equivalence')?.valueCode, system, code };
      });

  it('in reverse finds exactly the rows that name the code, seen from the other end', async () => {
    const turned: Record<string, string> = { wider: 'narrower', narrower: 'wider' };
    const map = published.get('ConceptMap', 'body-site-to-uberon') as ConceptMap;
    for (const term of ['UBERON:0002398', 'UBERON:0000033', 'UBERON:0001493']) {
      const rows = (map.group ?? []).flatMap(({ element }) =>
        element.flatMap(({ code, target = [] }) =>
          target
            .filter((one) => one.code === term)
            .map(({ equivalence }) => ({
              equivalence: turned[equivalence] ?? equivalence,
              system: systems.bodySite as string,
              code,
            })),
        ),
      );
      expect(rows.length).toBeGreaterThan(0);
      expect(await matches({ system: systems.uberon, code: term, reverse: 'true' })).toEqual(rows);
    }
    expect(await matches({ system: systems.uberon, code: 'UBERON:0002398' })).toEqual([]);
  });

  it('keeps to a target system and to a target value set', async () => {
    const item = { system: systems.examItem, code: 'power/ankle-dorsiflexion' };
    const all = await matches(item);
    const hpo = await matches({ ...item, targetsystem: systems.hpo });
    expect(hpo).toEqual(all.filter(({ system }) => system === systems.hpo));
    expect(await matches({ ...item, target: `${canonicalBase}/ValueSet/hpo-findings` })).toEqual(hpo);
    expect(await matches({ ...item, target: `${canonicalBase}/ValueSet/causes` })).toEqual([]);
    expect(hpo.length).toBeGreaterThan(0);
    const unknown = await get('ConceptMap/$translate', { ...item, target: 'urn:x' });
    expect(unknown.status).toBe(404);
    const elsewhere = await get('ConceptMap/$translate', { ...item, source: `${canonicalBase}/ValueSet/causes` });
    expect([elsewhere.status, outcome(elsewhere.text)]).toEqual([400, expect.stringContaining('source')]);
  });
});

it('no value set that is sent makes the service fail', async () => {
  const text = fc.constantFrom(systems.cause, systems.loinc, 'hereditary', 'concept', 'is-a', '=', '');
  const { node } = fc.letrec((tie) => ({
    node: fc.oneof(
      { maxDepth: 5 },
      text,
      fc.constantFrom(null, 0, true),
      fc.array(tie('node'), { maxLength: 3 }),
      fc.dictionary(
        fc.constantFrom(
          'include',
          'exclude',
          'system',
          'concept',
          'code',
          'filter',
          'property',
          'op',
          'value',
          'valueSet',
        ),
        tie('node'),
        { maxKeys: 5 },
      ),
    ),
  }));
  await fc.assert(
    fc.asyncProperty(node, fc.constantFrom('$expand', '$validate-code'), async (compose, operation) => {
      const resource = { resourceType: 'ValueSet', compose };
      const answer = await post(
        `ValueSet/${operation}`,
        { name: 'valueSet', resource },
        ...(operation === '$expand' ? [] : [{ name: 'coding', valueCoding: { system: systems.cause, code: 'x' } }]),
      );
      expect(answer.status).toBeLessThan(500);
    }),
    { numRuns: 100 },
  );
});
