import type { Request, Response, Router } from 'express';
import type { CodeSystem, ConceptMap, FhirResource, ValueSet } from 'fhir/r4.js';
import { known } from '../../access/need.ts';
import { NotFoundError, RequestError } from '../../kernel/errors.ts';
import { isAbstract } from '../../terminology/expand.ts';
import { indexCodes } from '../../terminology/hierarchy.ts';
import { checkVersion, lookUp } from '../../terminology/lookup.ts';
import { subsumption } from '../../terminology/subsumes.ts';
import { translate } from '../../terminology/translate.ts';
import { validateCode } from '../../terminology/validate-code.ts';
import type { AppContext } from '../app-context.ts';
import { askedCodings, bestAnswer, codingOrCode, required } from '../asked-codings.ts';
import { endpoint, newRouter } from '../endpoint.ts';
import { answerFhirText } from '../fhir-answer.ts';
import { type OperationId, operationInputs } from '../operation-inputs.ts';
import { type OperationInput, operationInput } from '../operation-parameters.ts';
import { requestBody } from '../request-body.ts';
import { type AskedSet, expansion, knownValueSet, sentValueSet } from '../value-set-expansion.ts';

/** The terminology operations of FHIR R4 over the published code systems, value sets and maps. */
export function terminologyRoutes({ conformance, bodyLimitBytes }: AppContext, now = () => new Date()): Router {
  const router = newRouter();
  const codes = indexCodes(conformance);
  const terminology = { conformance, codes };

  const operation = (id: OperationId, run: (input: OperationInput, instance?: string) => FhirResource) => {
    const [type, name] = [id.slice(0, id.indexOf('-')), id.slice(id.indexOf('-') + 1)];
    const handle = (req: Request, res: Response) => {
      const instance = req.params.id === undefined ? undefined : String(req.params.id);
      const input = operationInput(req, operationInputs[id]);
      answerFhirText(res, 200, JSON.stringify(run(input, instance)), input.pretty);
    };
    const handlers = { get: [handle], post: [requestBody(bodyLimitBytes), handle] };
    endpoint(router, `/fhir/${type}/$${name}`, known, handlers);
    // Of R4's operations on terminology only this one is for the type alone.
    if (name !== 'lookup') endpoint(router, `/fhir/${type}/:id/$${name}`, known, handlers);
  };
  const addressed = <T extends 'CodeSystem' | 'ConceptMap'>(type: T, { values }: OperationInput, id?: string) => {
    const url = id === undefined ? required(values, 'url') : conformance.get(type, id)?.url;
    const found = conformance.byUrl(url ?? '');
    if (found?.resourceType !== type) throw new NotFoundError(`There is no ${type} with this address here.`);
    return found as T extends 'CodeSystem' ? CodeSystem : ConceptMap;
  };
  const valueSet = (input: OperationInput, id?: string): AskedSet => {
    const sent = input.resources.get('valueSet');
    if (sent !== undefined) {
      if (id !== undefined || input.values.has('url')) {
        throw new RequestError('BAD_REQUEST', 'Send either a value set or the address of one.');
      }
      return sentValueSet(terminology, sent);
    }
    const url = id === undefined ? required(input.values, 'url') : conformance.get('ValueSet', id)?.url;
    const asked = knownValueSet(terminology, url ?? '');
    checkVersion(input.values.get('valueSetVersion'), asked.valueSet.version);
    return asked;
  };
  const isHeading = ({ values }: OperationInput) =>
    values.get('abstract') === 'true'
      ? () => false
      : (coding: { system: string; code: string }) => isAbstract(codes, coding);
  /** A version is only compared when one is named, so that a fragment, which has none, is not refused. */
  const checkSystemVersion = (system: string | undefined, version: string | undefined) => {
    if (version !== undefined) checkVersion(version, codes.codeSystem(system ?? '')?.version);
  };

  operation('CodeSystem-lookup', (input) => {
    const { system, code, version } = codingOrCode(input, 'coding', 'code', required);
    return lookUp(codes, {
      system: system ?? '',
      code,
      version: version ?? input.values.get('version'),
      properties: input.lists.get('property') ?? [],
    });
  });
  operation('CodeSystem-subsumes', (input, id) => {
    const own = id === undefined ? undefined : addressed('CodeSystem', input, id).url;
    const [a, b] = (['A', 'B'] as const).map((which) =>
      codingOrCode(input, `coding${which}`, `code${which}`, (values, name) => own ?? required(values, name)),
    );
    if (a === undefined || b === undefined || a.system !== b.system || (own ?? a.system) !== a.system) {
      throw new RequestError('BAD_REQUEST', 'Both codes must be of one code system, on an instance of this one.');
    }
    for (const version of [input.values.get('version'), a.version, b.version]) checkSystemVersion(a.system, version);
    return subsumption(codes, a.system ?? '', a.code, b.code);
  });
  operation('CodeSystem-validate-code', (input, id) => {
    const { url: system = '', version } = addressed('CodeSystem', input, id);
    checkVersion(input.values.get('version'), version);
    const known = [...(codes.concepts(system)?.values() ?? [])];
    const codings = known.map(({ code, display = code }) => ({ system, code, display }));
    return bestAnswer(askedCodings(input).map((asked) => validateCode(codings, asked, isHeading(input))));
  });
  operation('ValueSet-validate-code', (input, id) => {
    const { codings } = valueSet(input, id);
    return bestAnswer(
      askedCodings(input, 'system').map((asked) => {
        checkSystemVersion(asked.system, asked.version ?? input.values.get('systemVersion'));
        return validateCode(codings, asked, isHeading(input));
      }),
    );
  });
  operation('ValueSet-expand', (input, id): ValueSet => expansion(codes, valueSet(input, id), input, now()));
  operation('ConceptMap-translate', (input, id) => {
    const { values } = input;
    const isNamed = id !== undefined || values.has('url');
    const maps = isNamed ? [addressed('ConceptMap', input, id)] : conformance.ofType('ConceptMap');
    for (const { version } of isNamed ? maps : []) checkVersion(values.get('conceptMapVersion'), version);
    const [source, target] = ['source', 'target'].map((name) => {
      const url = values.get(name);
      return url === undefined ? undefined : knownValueSet(terminology, url).codings;
    });
    return bestAnswer(
      askedCodings(input, 'system').map(({ system = '', code, version }) => {
        checkSystemVersion(system, version ?? values.get('version'));
        if (source !== undefined && !source.some((one) => one.system === system && one.code === code)) {
          throw new RequestError('BAD_REQUEST', 'The code is not in the value set that source names.');
        }
        const targetSystem = values.get('targetsystem');
        return translate(maps, { system, code, targetSystem, target, isReverse: values.get('reverse') === 'true' });
      }),
    );
  });
  return router;
}
