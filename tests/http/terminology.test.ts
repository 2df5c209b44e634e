import fc from 'fast-check';
import type { CapabilityStatement, CodeSystem, OperationOutcome, Parameters, ValueSet } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { systems } from '../../src/terminology/systems.ts';
import { send, sendJson } from '../support/client.ts';
import { startTestService } from '../support/service.ts';
import { hl7Resource } from '../terminology/hl7-package.ts';

describe('the terminology operations', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startTestService();
  });
  afterAll(() => service.stop());

  const ask = (path: string, query: Record<string, string>) =>
    send(`${service.url}/fhir/${path}?${new URLSearchParams(query)}`);
  const post = (path: string, parameter: unknown) =>
    sendJson(`${service.url}/fhir/${path}`, { resourceType: 'Parameters', parameter });

  it('looks up own codes whole and LOINC as a fragment with its notice', async () => {
    const own = await ask('CodeSystem/$lookup', { system: systems.bodySite, code: 'hand.left' });
    expect(own.json<Parameters>().parameter).toContainEqual({ name: 'display', valueString: 'Left hand' });
    const loinc = await ask('CodeSystem/$lookup', { system: systems.loinc, code: '9269-2' });
    expect(loinc.json<Parameters>().parameter).toContainEqual({
      name: 'display',
      valueString: 'Glasgow coma score total',
    });
    expect(loinc.text).toContain('Regenstrief');
    const none = await ask('CodeSystem/$lookup', { system: systems.loinc, code: '0-0' });
    expect([none.status, none.text]).toEqual([404, expect.stringContaining('fragment')]);
  });

  it('says false with the nearest code, and tells a wrong display', async () => {
    const near = await ask('CodeSystem/presence/$validate-code', { code: 'presen' });
    expect([near.status, near.text]).toEqual([200, expect.stringMatching(/false.*nearest known code is present/)]);
    const wrong = await post('ValueSet/presence/$validate-code', [
      {
        name: 'coding',
        valueCoding: { system: `${systems.examItem.replace('exam-item', 'presence')}`, code: 'present', display: 'No' },
      },
    ]);
    expect(wrong.json<Parameters>().parameter?.[0]).toEqual({ name: 'result', valueBoolean: false });
  });

  it('expands a value set by filter, offset and count to its codes', async () => {
    const all = (await ask('CodeSystem/mrc-power', {})).json<CodeSystem>();
    const expansion = async (query: Record<string, string>) =>
      (await ask('ValueSet/mrc-power/$expand', query)).json<ValueSet>().expansion;
    const codes = all.concept?.map(({ code }) => code);
    expect((await expansion({}))?.contains?.map(({ code }) => code)).toEqual(codes);
    const part = await expansion({ offset: '2', count: '3' });
    expect([part?.total, part?.contains?.map(({ code }) => code)]).toEqual([codes?.length, codes?.slice(2, 5)]);
    expect((await expansion({ filter: 'NO contr' }))?.contains?.map(({ code }) => code)).toEqual(['0']);
    expect((await ask('ValueSet/none-such/$expand', {})).status).toBe(404);
  });

  it('finds a code by what clinicians also call it, and says so on request', async () => {
    const query = { filter: 'abducens', includeDesignations: 'true' };
    const { expansion } = (await ask('ValueSet/exam-items/$expand', query)).json<ValueSet>();
    expect(expansion?.contains?.map(({ code }) => code)).toEqual(['cranial-nerves/sixth-nerve-palsy']);
    const names = expansion?.contains?.[0]?.designation?.map(({ value }) => value);
    expect(names).toContain('abducens nerve palsy');
  });

  it('translates by the maps, and takes no grouping of codes for subsumption', async () => {
    const found = await ask('ConceptMap/$translate', {
      system: systems.bodySite,
      code: 'head',
      targetsystem: systems.uberon,
    });
    expect(found.json<Parameters>().parameter?.[0]).toEqual({ name: 'result', valueBoolean: true });
    expect(found.text).toContain('UBERON:0000033');
    const order = await ask('CodeSystem/$subsumes', {
      system: systems.examItem,
      codeA: 'section/higher-function',
      codeB: 'higher-function/drowsiness',
    });
    expect(order.json<Parameters>().parameter).toEqual([{ name: 'outcome', valueCode: 'not-subsumed' }]);
  });

  it('answers with the output parameters of the definition of HL7 alone', async () => {
    const definition = hl7Resource('OperationDefinition-CodeSystem-lookup.json') as {
      parameter: { use: string; name: string; min: number }[];
    };
    const outputs = definition.parameter.filter(({ use }) => use === 'out');
    const answer = (await ask('CodeSystem/$lookup', { system: systems.loinc, code: '9269-2' })).json<Parameters>();
    const names = answer.parameter?.map(({ name }) => name) ?? [];
    expect(outputs.map(({ name }) => name)).toEqual(expect.arrayContaining(names));
    expect(names).toEqual(expect.arrayContaining(outputs.filter(({ min }) => min > 0).map(({ name }) => name)));
  });

  it('offers every operation that its CapabilityStatement lists', async () => {
    const questions: Record<string, Record<string, string>> = {
      'CodeSystem/$lookup': { system: systems.cause, code: 'diabetic-polyneuropathy' },
      'CodeSystem/$validate-code': { url: systems.cause, code: 'diabetic-polyneuropathy' },
      'CodeSystem/$subsumes': { system: systems.bodySite, codeA: 'head', codeB: 'hand' },
      'ValueSet/$expand': { url: systems.cause.replace('CodeSystem/cause', 'ValueSet/causes') },
      'ValueSet/$validate-code': {
        url: systems.cause.replace('CodeSystem/cause', 'ValueSet/causes'),
        system: systems.cause,
        code: 'diabetic-polyneuropathy',
      },
      'ConceptMap/$translate': { system: systems.cause, code: 'diabetic-polyneuropathy' },
    };
    const statement = (await ask('metadata', {})).json<CapabilityStatement>();
    const terminology = (statement.rest?.[0]?.resource ?? []).filter(({ type }) => /CodeSystem|Set|Map/.test(type));
    const listed = terminology.flatMap(({ type, operation = [] }) =>
      operation.map(({ name, definition }) => ({ path: `${type}/$${name}`, definition })),
    );
    expect(listed.map(({ path }) => path).sort()).toEqual(Object.keys(questions).sort());
    for (const { path, definition } of listed) {
      const [, id] = definition.split('OperationDefinition/');
      expect(hl7Resource(`OperationDefinition-${id}.json`)).toMatchObject({ url: definition });
      expect([path, (await ask(path, questions[path] ?? {})).status]).toEqual([path, 200]);
    }
  });

  it('never fails on its own side, whatever is asked', async () => {
    const paths = [
      'CodeSystem/$lookup',
      'CodeSystem/$subsumes',
      'ValueSet/$expand',
      'ConceptMap/$translate',
      'CodeSystem/cause/$validate-code',
    ];
    const names = fc.constantFrom('system', 'code', 'url', 'count', 'offset', 'filter', 'display', 'x');
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...paths),
        fc.dictionary(names, fc.string()),
        fc.json(),
        async (path, query, body) => {
          expect((await ask(path, query)).status).toBeLessThan(500);
          const answer = await post(path, JSON.parse(body));
          expect(answer.status).toBeLessThan(500);
          if (answer.status >= 400) expect(answer.json<OperationOutcome>().resourceType).toBe('OperationOutcome');
        },
      ),
      { numRuns: 40 },
    );
  });
});
