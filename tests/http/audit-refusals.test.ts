import { rmSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import express from 'express';
import { pino } from 'pino';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { auditTrail } from '../../src/http/audit/audit-trail.ts';
import { auditedRoutes } from '../../src/http/audit/audited-routes.ts';
import { requestLog } from '../../src/http/request-log.ts';
import { startService } from '../../src/service.ts';
import { openAuditReader } from '../../src/store/audit/open-audit-reader.ts';
import { verifyAudit } from '../../src/store/audit/verify-audit.ts';
import type { Stores } from '../../src/store/open-stores.ts';
import { compiledByBuild } from '../support/built.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered, exampleExam } from '../support/example-exam.ts';
import { temporaryFolder } from '../support/service.ts';
import { openTestStores } from '../support/stores.ts';
import { lookAtWholeApp, mountedRoutes } from '../support/whole-app.ts';

describe('refused access', () => {
  let folder: string;
  let stores: Stores;
  let server: Server;
  let url: string;
  beforeAll(async () => {
    folder = temporaryFolder();
    stores = await openTestStores({ engine: 'sqlite', file: join(folder, 'exams.sqlite') });
    const app = express();
    const logger = pino({ level: 'silent' });
    app.use(
      requestLog(logger),
      auditTrail({ audit: stores.audit, logger, now: () => new Date(), software: { version: '1', releaseDate: '' } }),
    );
    // As access control does: it says who asks, and refuses before any route.
    app.use((req, res) => {
      if (req.headers.authorization !== undefined) res.locals.caller = { client: 'Poster', user: 'user-1', scopes: [] };
      res.statusCode = req.headers.authorization === undefined ? 401 : 403;
      res.end('{}');
    });
    await new Promise<void>((resolve) => {
      server = app.listen(0, '127.0.0.1', () => resolve());
    });
    url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  });
  afterAll(async () => {
    server.close();
    await stores.exams.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('is told wherever it happens, with who it was where that is known', async () => {
    const paths = [
      '/exams/00000000-0000-5000-8000-000000000001',
      '/fhir/Observation/a',
      '/fhir/Observation?patient=1',
      '/catalogue',
      '/no/such?x=1',
    ];
    for (const path of paths) await send(url + path);
    for (const path of paths) await send(url + path, { headers: { Authorization: 'Bearer x' } });
    const { matches } = await stores.audit.search({ filters: [], direction: 'ascending', count: 50, isCounted: false });
    const short = matches.map(({ record }) => [
      record.interaction,
      record.operation ?? record.exam ?? record.resource ?? record.query,
      record.outcome,
      record.reason,
      record.client,
      record.user,
    ]);
    const rows = [
      ['read', '00000000-0000-5000-8000-000000000001'],
      ['read', 'Observation/a'],
      ['search', 'GET /fhir/Observation?patient=1'],
      ['operation', 'GET /catalogue'],
      ['operation', 'GET /no/such'],
    ];
    expect(short).toEqual([
      ...rows.map((row) => [...row, '4', 'Unauthorized', 'anonymous', undefined]),
      ...rows.map((row) => [...row, '4', 'Forbidden', 'Poster', 'user-1']),
    ]);
  });
});

describe('a trail that cannot be written', () => {
  it('lets nothing stored out or in, and refuses what is refused anyway', async () => {
    const dataDir = temporaryFolder();
    const service = await startService(
      readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir }),
      compiledByBuild(),
    );
    const posted = await sendJson(`${service.url}/exams`, exampleExam());
    const path = String(posted.headers.get('Location'));
    const db = new Database(join(dataDir, 'exams.sqlite'));
    const versions = () => db.prepare('SELECT count(*) FROM exam_version').pluck().get();
    db.exec('ALTER TABLE audit_head RENAME TO audit_head_gone');
    for (const [answer, status] of [
      [await send(service.url + path), 503],
      [await send(`${service.url}/fhir/Observation?_count=1`), 503],
      [await send(`${service.url}/views/power.csv`), 503],
      [await sendJson(`${service.url}/exams`, examNumbered('not-kept')), 503],
      [await send(`${service.url}/fhir/Observation/none`), 404],
    ] as const) {
      expect([status, answer.status]).toEqual([status, status]);
      expect(answer.text).toMatch(/OperationOutcome|"code":"STORE_UNAVAILABLE"/);
      expect([answer.headers.get('ETag'), answer.headers.get('Location')]).toEqual([null, null]);
    }
    expect((await sendJson(`${service.url}/localisation`, exampleExam())).status).toBe(200);
    expect(versions()).toBe(1);
    db.exec('ALTER TABLE audit_head_gone RENAME TO audit_head');
    expect((await send(service.url + path)).status).toBe(200);
    db.close();
    const reader = await openAuditReader({ engine: 'sqlite', file: join(dataDir, 'exams.sqlite') });
    expect((await verifyAudit(reader)).fault).toBeUndefined();
    await reader.close();
    await service.stop();
    rmSync(dataDir, { recursive: true, force: true });
  });
});

describe('the list of audited routes', () => {
  /** Holds nobody's data: what is published, the terminology, and how the service is. */
  const unaudited = [
    /^\/(about$|page\/|$)/,
    /^\/(catalogue|picture)$/,
    /^\/(json-schema|profiles|terminology)\//,
    /^\/health\//,
    /^\/fhir\/metadata$/,
    /^\/fhir\/(CodeSystem|ConceptMap|Questionnaire|SearchParameter|StructureDefinition|ValueSet)(\/|$)/,
    /^\/views$/,
    /^\/(api|openapi\.json|metrics)$/,
    /^(\/fhir)?\/\.well-known\/smart-configuration$/,
    // Discovery, and what became of cards: counts alone.
    /^\/cds-services$/,
    /^\/cds-services\/[a-z-]+\/feedback$/,
    // Simulated patients: nobody's data, and nothing is kept.
    /^\/practice\//,
  ];
  /** A view is audited when a format is asked for. */
  const partly = ['/views/:file'];

  it('has every route, or there is a reason why not', async () => {
    const mounted = await lookAtWholeApp(mountedRoutes);
    const routes = mounted.map(({ method, path }) => `${method.toLowerCase()} ${path}`);
    const audited = new Set(auditedRoutes.map(({ method, path }) => `${method} ${path}`));
    const open = routes.filter((route) => {
      const path = route.replace(/^[a-z]+ /, '');
      return !audited.has(route) && !unaudited.some((form) => form.test(path)) && !partly.includes(path);
    });
    expect(open).toEqual([]);
    expect(routes.length).toBeGreaterThan(60);
    // A path that holds data must not be excused.
    expect([...audited].filter((route) => unaudited.some((form) => form.test(route.replace(/^[a-z]+ /, ''))))).toEqual(
      [],
    );
  });
});
