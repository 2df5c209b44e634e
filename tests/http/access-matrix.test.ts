import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import express from 'express';
import { pino } from 'pino';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { known, open } from '../../src/access/need.ts';
import { declaredRoutes, endpoint, newRouter } from '../../src/http/endpoint.ts';
import { errorHandler } from '../../src/http/error-handler.ts';
import { type GuardedService, roles, startGuardedService } from '../support/guarded-service.ts';
import { lookAtWholeApp, mountedRoutes } from '../support/whole-app.ts';

const subject = 'Patient/invented-nobody';

type Role = 'nobody' | 'known' | keyof typeof roles | 'patient';

const everybody: readonly Role[] = [
  'nobody',
  'known',
  'integration',
  'analyst',
  'app',
  'monitoring',
  'auditor',
  'subscriber',
  'patient',
];
const anyToken = everybody.filter((role) => role !== 'nobody');
const conformance = 'StructureDefinition|CodeSystem|ValueSet|ConceptMap|Questionnaire|SearchParameter';
const ofSubject = 'Observation|ClinicalImpression|RiskAssessment|ServiceRequest|Device|MeasureReport';

/**
 * Who may use what, as the README says it; the first row that fits a route counts. A route without a row fails.
 * The patient's token has patient/exam.cru, patient/localisation.c and patient/*.rs.
 */
const rows: readonly (readonly [RegExp, readonly Role[]])[] = [
  [/^GET \/(about|page\/:file)?$/, everybody],
  [/^GET \/health\/(live|ready)$/, everybody],
  [/^GET (\/fhir)?\/\.well-known\/smart-configuration$/, everybody],
  [/^GET \/fhir\/metadata$/, everybody],
  [/^GET \/(catalogue|picture|json-schema\/:name|profiles\/\*path|terminology\/\*path)$/, everybody],
  [new RegExp(`^GET /fhir/(${conformance})(/:id)?$`), everybody],
  [new RegExp(`^(GET|POST) /fhir/(${conformance})(/:id)?/\\$(?!validate$)`), anyToken],
  [/^POST \/fhir\/[A-Za-z]+\/\$validate$/, anyToken],
  [/^POST \/fhir\/ClinicalImpression\/:id\/\$validate$/, ['analyst', 'subscriber']],
  [/^POST \/fhir\/[A-Za-z]+\/:id\/\$validate$/, ['analyst']],
  [/^POST \/exams$/, ['integration', 'patient']],
  [/^(GET|PUT) \/exams\/:id(\/bundle|\/questionnaire-response)?$/, ['integration', 'patient']],
  [/^POST \/localisation$/, ['app', 'patient']],
  [/^(GET|POST) \/practice\/(sites|patients|examinations|answers)$/, ['app', 'patient']],
  [/^(GET|POST) \/fhir\/AuditEvent(\/_search|\/:id)?$/, ['auditor']],
  [/^(GET|POST) \/exams\/:id\/deliveries(\/retry)?$/, ['integration']],
  [/^(POST|PUT|DELETE) \/fhir\/Subscription(\/:id)?$/, ['subscriber']],
  [
    /^(GET|POST) \/fhir\/Subscription(\/_search|\/:id|\/_history|\/:id\/_history(\/:version)?)?$/,
    ['analyst', 'subscriber'],
  ],
  [
    /^(GET|POST) \/fhir\/ClinicalImpression(\/_search|\/:id|\/:id\/_history(\/:version)?)?$/,
    ['analyst', 'subscriber', 'patient'],
  ],
  [/^GET \/fhir\/ClinicalImpression\/_history$/, ['analyst', 'subscriber']],
  [/^GET \/(cds-services|api|openapi\.json)$/, everybody],
  [/^POST \/cds-services\/[a-z-]+(\/feedback)?$/, ['app', 'patient']],
  [/^POST \/fhir\/QuestionnaireResponse\/\$extract$/, ['app', 'patient']],
  [/^GET \/metrics$/, ['monitoring']],
  [/^GET \/views$/, anyToken],
  [/^GET \/views\/:file$/, ['analyst']],
  // Whoever may read one type gets that type alone.
  [/^(GET|POST) \/fhir\/(ViewDefinition\/(:id\/)?)?\$viewdefinition-run$/, ['analyst', 'subscriber']],
  [/^(GET|POST) \/fhir\/\$export$/, ['analyst', 'subscriber']],
  [/^(GET|DELETE) \/fhir\/export-(status\/:id|files\/:id\/:file)$/, ['analyst', 'subscriber']],
  [/^(GET|POST) \/fhir\/Measure\/(:id\/)?\$evaluate-measure$/, ['analyst']],
  [/^(POST|PUT) \/fhir\/Measure(\/:id)?$/, ['analyst']],
  [/^GET \/fhir\/[A-Za-z]+\/_history$/, ['analyst']],
  [
    new RegExp(`^(GET|POST) /fhir/(${ofSubject}|Measure)(/_search|/:id|/:id/_history(/:version)?)?$`),
    ['analyst', 'patient'],
  ],
  [/^(GET|POST) \/fhir\/Provenance(\/_search|\/:id|\/:id\/_history(\/:version)?)?$/, ['analyst']],
];

/** Every route that the service has, as `METHOD path`, found on the application itself. */
function routesOf(): Promise<{ routes: string[]; undeclared: string[] }> {
  return lookAtWholeApp((app) => {
    const declared = app.router.stack.flatMap(({ handle }) => declaredRoutes(handle));
    const paths = mountedRoutes(app).map(({ path }) => path);
    return {
      routes: declared.flatMap(({ path, needs }) => [...needs.keys()].map((method) => `${method} ${path}`)),
      undeclared: paths.filter((path) => !declared.some((one) => one.path === path)),
    };
  });
}

let service: GuardedService;
let routes: readonly string[];
let undeclared: readonly string[];
beforeAll(async () => {
  service = await startGuardedService({ VIEW_TABLES_SECONDS: '0' });
  ({ routes, undeclared } = await routesOf());
});
afterAll(() => service.stop());

describe('who may use which route', () => {
  it('has a declaration for every route, and a row in this table', () => {
    expect(undeclared).toEqual([]);
    expect(routes.length).toBeGreaterThan(100);
    expect(routes.filter((route) => !rows.some(([form]) => form.test(route)))).toEqual([]);
    expect(rows.filter(([form]) => !routes.some((route) => form.test(route))).map(([form]) => form.source)).toEqual([]);
  });

  it('cannot have a route that does not say what it needs, or that stands without access control before it', async () => {
    const handlers = { get: [], post: [] };
    expect(() => endpoint(newRouter(), '/x', { get: open } as never, handlers)).toThrow(/POST \/x does not say/);
    const router = newRouter();
    endpoint(router, '/x', known, { get: [(_req, res) => void res.end('reached')] });
    const app = express();
    app.use(router, errorHandler(pino({ level: 'silent' })));
    const server = app.listen(0, '127.0.0.1');
    await once(server, 'listening');
    const answer = await fetch(`http://127.0.0.1:${(server.address() as AddressInfo).port}/x`);
    expect([answer.status, await answer.text()]).toEqual([401, expect.not.stringContaining('reached')]);
    server.close();
  });

  it.each(everybody)('lets %s in where the table says so, and nowhere else', async (role) => {
    const headers: Record<Role, () => Promise<Record<string, string>>> = {
      nobody: async () => ({}),
      known: () => service.bearer(''),
      integration: () => service.bearer(roles.integration),
      analyst: () => service.bearer(roles.analyst),
      app: () => service.bearer(roles.app),
      monitoring: () => service.bearer(roles.monitoring),
      auditor: () => service.bearer(roles.auditor),
      subscriber: () => service.bearer(roles.subscriber),
      patient: () =>
        service.bearer('patient/exam.cru patient/localisation.c patient/*.rs', {
          patient: subject.replace('Patient/', ''),
        }),
    };
    const authorization = await headers[role]();
    const outcomes: [string, string][] = [];
    const expected: [string, string][] = [];
    for (const route of routes) {
      const [method = '', path = ''] = route.split(' ');
      const address = path
        .replace('*path', 'none.json')
        .replace(':file', 'power.csv')
        .replace(/:[a-z]+/g, 'none');
      const body =
        method === 'GET' || method === 'DELETE' ? {} : { body: JSON.stringify({ subject: { reference: subject } }) };
      const answer = await fetch(service.url + address, {
        method,
        headers: { ...authorization, ...(method === 'GET' ? {} : { 'Content-Type': 'application/json' }) },
        ...body,
      });
      await answer.body?.cancel();
      const allowed = rows.find(([form]) => form.test(route))?.[1].includes(role);
      expected.push([route, allowed ? 'in' : role === 'nobody' ? '401' : '403']);
      outcomes.push([route, answer.status === 401 || answer.status === 403 ? String(answer.status) : 'in']);
      if (answer.status >= 500) throw new Error(`${route} answered ${answer.status}`);
    }
    expect(outcomes).toEqual(expected);
  });
});
