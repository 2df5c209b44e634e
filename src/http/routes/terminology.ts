import type { Request, Response, Router } from 'express';
import type { FhirResource, Parameters, ValueSet } from 'fhir/r4.js';
import { NotFoundError, RequestError } from '../../kernel/errors.ts';
import { uuidV5 } from '../../kernel/uuid.ts';
import { expandValueSet, matching } from '../../terminology/expand.ts';
import { indexCodes } from '../../terminology/hierarchy.ts';
import type { ConformanceType } from '../../terminology/load.ts';
import { checkVersion, lookUp } from '../../terminology/lookup.ts';
import { subsumption } from '../../terminology/subsumes.ts';
import { translate } from '../../terminology/translate.ts';
import { validateCode } from '../../terminology/validate-code.ts';
import { answerJson, mediaTypes } from '../answer.ts';
import type { AppContext } from '../app-context.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { type OperationInput, operationInput } from '../operation-parameters.ts';
import { requestBody } from '../request-body.ts';

/** UUID namespace of the identifiers of expansions. */
const expansionNamespace = '5a0c1c5e-0d0b-5c55-9d5e-3f1a6b0d2c71';

/** The terminology operations of FHIR R4 over the published code systems, value sets and maps. */
export function terminologyRoutes({ conformance, bodyLimitBytes }: AppContext, now = () => new Date()): Router {
  const router = newRouter();
  const codes = indexCodes(conformance);

  const operation = (
    path: string,
    known: readonly string[],
    run: (input: OperationInput, id?: string) => FhirResource,
  ) => {
    const handle = (req: Request, res: Response) => {
      const id = req.params.id === undefined ? undefined : String(req.params.id);
      answerJson(res, 200, mediaTypes.fhir, run(operationInput(req, known), id));
    };
    endpoint(router, path, { get: [handle], post: [requestBody(bodyLimitBytes), handle] });
  };
  const addressed = <T extends ConformanceType>(type: T, { values }: OperationInput, id?: string) => {
    const url = id === undefined ? required(values, 'url') : conformance.get(type, id)?.url;
    const found = conformance.byUrl(url ?? '');
    if (found?.resourceType !== type) throw new NotFoundError(`There is no ${type} with this address here.`);
    return found;
  };

  operation('/fhir/CodeSystem/$lookup', ['system', 'code', 'version'], (input) => {
    const [asked] = askedCodings(input, 'system');
    return lookUp(codes, {
      system: asked?.system ?? '',
      code: asked?.code ?? '',
      version: input.values.get('version'),
    });
  });
  operation('/fhir/CodeSystem/$subsumes', ['system', 'codeA', 'codeB', 'version'], ({ values }) => {
    const system = required(values, 'system');
    checkVersion(values.get('version'), values.has('version') ? codes.codeSystem(system)?.version : undefined);
    return subsumption(codes, system, required(values, 'codeA'), required(values, 'codeB'));
  });
  for (const path of ['/fhir/CodeSystem/$validate-code', '/fhir/CodeSystem/:id/$validate-code']) {
    operation(path, ['url', 'code', 'display', 'version'], (input, id) => {
      const { url: system = '', version } = addressed('CodeSystem', input, id);
      checkVersion(input.values.get('version'), version);
      const known = [...(codes.concepts(system)?.values() ?? [])];
      const codings = known.map(({ code, display = code }) => ({ system, code, display }));
      return firstTrue(askedCodings(input).map((asked) => validateCode(codings, asked)));
    });
  }
  for (const path of ['/fhir/ValueSet/$validate-code', '/fhir/ValueSet/:id/$validate-code']) {
    operation(path, ['url', 'code', 'system', 'display', 'valueSetVersion'], (input, id) => {
      const { url = '', version } = addressed('ValueSet', input, id);
      checkVersion(input.values.get('valueSetVersion'), version);
      const codings = expandValueSet(conformance, codes, url) ?? [];
      return firstTrue(askedCodings(input, 'system').map((asked) => validateCode(codings, asked)));
    });
  }
  for (const path of ['/fhir/ValueSet/$expand', '/fhir/ValueSet/:id/$expand']) {
    operation(path, ['url', 'valueSetVersion', 'filter', 'offset', 'count'], (input, id) => {
      const { compose: _, text: __, ...valueSet } = addressed('ValueSet', input, id) as ValueSet;
      checkVersion(input.values.get('valueSetVersion'), valueSet.version);
      const { values } = input;
      const all = matching(expandValueSet(conformance, codes, valueSet.url ?? '') ?? [], values.get('filter') ?? '');
      const offset = count(values, 'offset') ?? 0;
      const contains = all.slice(offset, offset + (count(values, 'count') ?? all.length));
      const name = JSON.stringify([valueSet.url, valueSet.version, values.get('filter'), offset, values.get('count')]);
      return {
        ...valueSet,
        expansion: {
          identifier: `urn:uuid:${uuidV5(name, expansionNamespace)}`,
          timestamp: now().toISOString(),
          total: all.length,
          offset,
          ...(contains.length > 0 ? { contains: [...contains] } : {}),
        },
      };
    });
  }
  for (const path of ['/fhir/ConceptMap/$translate', '/fhir/ConceptMap/:id/$translate']) {
    operation(path, ['url', 'system', 'code', 'targetsystem'], (input, id) => {
      const isNamed = id !== undefined || input.values.has('url');
      const found = isNamed ? addressed('ConceptMap', input, id) : undefined;
      const maps = found?.resourceType === 'ConceptMap' ? [found] : conformance.ofType('ConceptMap');
      const targetSystem = input.values.get('targetsystem');
      return firstTrue(
        askedCodings(input, 'system').map(({ system = '', code }) => translate(maps, { system, code, targetSystem })),
      );
    });
  }
  return router;
}

function askedCodings({ values, codings }: OperationInput, needs?: 'system'): OperationInput['codings'] {
  if (codings.length > 0) return codings;
  const system = needs === undefined ? undefined : required(values, needs);
  const display = values.get('display');
  return [
    {
      code: required(values, 'code'),
      ...(system !== undefined && { system }),
      ...(display !== undefined && { display }),
    },
  ];
}

function firstTrue(answers: readonly Parameters[]): Parameters {
  const found = answers.find(({ parameter }) => parameter?.[0]?.valueBoolean) ?? answers[0];
  if (found === undefined) throw new RequestError('BAD_REQUEST', 'There is no code to look at.');
  return found;
}

function required(values: ReadonlyMap<string, string>, name: string): string {
  const value = values.get(name);
  if (value === undefined) throw new RequestError('BAD_REQUEST', `The parameter ${name} is missing.`);
  return value;
}

function count(values: ReadonlyMap<string, string>, name: string): number | undefined {
  const value = values.get(name);
  if (value === undefined) return undefined;
  if (!/^\d{1,9}$/.test(value)) throw new RequestError('BAD_REQUEST', `${name} must be a whole number from 0.`);
  return Number(value);
}
