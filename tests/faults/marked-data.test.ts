import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Answer } from '../support/client.ts';
import { send } from '../support/client.ts';
import { exampleExam } from '../support/example-exam.ts';
import type { SpawnedService } from '../support/spawned-service.ts';
import { lookAtWholeApp, type MountedRoute, mountedRoutes } from '../support/whole-app.ts';
import { type LastingStore, lastingStore } from './service-on.ts';
import { isFullRun, tell } from './sizes.ts';
import { validBodies } from './valid-bodies.ts';

/** Marks in the place of what a person could be known by. Nobody is called so. */
const marks = {
  name: 'Ottiwell Zmarkby',
  surname: 'Zmarkby',
  number: 'ZMRK-771219',
  born: '1931-07-09',
  note: 'zmarknote: fell from a ladder',
  unusual: '\u017dm\u00e4rk \u{1f9e0}\u0301',
} as const;
const marked = Object.values(marks);

/** The marks that a route is sent: all in the full run, two in turn otherwise. */
const some = (index: number): readonly string[] =>
  isFullRun ? marked : [0, 1].map((n) => marked[(index + n * 3) % marked.length] as string);

/** Every form in which a mark could come out: as it is, escaped for JSON, for an address, for a form, or in base64. */
const forms = marked.flatMap((mark) => [
  mark,
  JSON.stringify(mark).slice(1, -1),
  [...mark].map((sign) => (sign.charCodeAt(0) < 128 ? sign : unicodeEscape(sign))).join(''),
  encodeURIComponent(mark),
  new URLSearchParams([['', mark]]).toString().slice(1),
  Buffer.from(mark).toString('base64').slice(0, -4),
  Buffer.from(mark, 'utf8').toString('latin1'),
]);

interface Asked {
  readonly what: string;
  readonly answer: Answer;
}

describe('marked personal data, sent through every endpoint', () => {
  let store: LastingStore;
  let service: SpawnedService;
  const asked: Asked[] = [];
  let rows: readonly MountedRoute[];

  beforeAll(async () => {
    rows = await lookAtWholeApp(mountedRoutes);
    const bodies = validBodies(2, 1);
    store = await lastingStore('sqlite');
    service = await store.start({ LOG_LEVEL: 'debug' });
    const kept = await ask('a marked exam', 'POST', '/exams', { body: JSON.stringify(markedExam()) });
    expect(kept.status).toBe(201);
    const id = String(kept.headers.get('Location')).slice('/exams/'.length);
    for (const [index, { method, path }] of rows.entries()) {
      const here = some(index);
      const place = path.replace(':id', path.startsWith('/exams/') ? id : 'a').replace(':version', '1');
      const what = `${method} ${path}`;
      for (const mark of here) {
        const inPath = encodeURIComponent(mark);
        await ask(what, method, path.replace(/[:*]\w+/g, inPath));
        await ask(what, method, `${place}?${new URLSearchParams({ [mark]: mark })}`);
      }
      const query = new URLSearchParams([
        ['subject', `Patient/${marks.number}`],
        ['subject:identifier', `https://clinic.example/patients|${marks.number}`],
        ['_id', marks.surname],
        ['code', marks.name],
        ['date', marks.born],
        ['patient', `Patient/${marks.number}`],
        ['_since', marks.born],
        ['_cursor', Buffer.from(marks.name).toString('base64url')],
      ]);
      await ask(what, method, `${place}?${query}`);
      for (const [name, value] of query) {
        await ask(what, method, `${place}?${new URLSearchParams([[name, value]])}`);
        await ask(what, method, `${place}?${new URLSearchParams([[name, value]])}`, {
          headers: { Prefer: 'handling=strict' },
        });
      }
      await ask(what, method, place, { headers: markedHeaders() });
      await ask(what, 'SEARCH', place);
      if (method !== 'POST' && method !== 'PUT') continue;
      for (const body of markedBodies(bodies, path, here)) {
        await ask(what, method, place, { body, headers: { 'If-Match': 'W/"1"', Prefer: 'respond-async' } });
      }
      const form = { 'Content-Type': 'application/x-www-form-urlencoded' };
      await ask(what, method, place, { body: query.toString(), headers: form });
      await ask(what, method, place, { body: marks.name, headers: { 'Content-Type': `text/${marks.surname}` } });
    }
    for (const path of ['/metrics', '/openapi.json', `/${marks.surname}`]) await ask(`GET ${path}`, 'GET', path);
  }, 300_000);
  afterAll(() => store.remove());

  it('reaches every route with answers of both kinds', () => {
    expect(new Set(asked.map(({ what }) => what)).size).toBeGreaterThan(rows.length);
    expect(asked.some(({ answer }) => answer.status < 300)).toBe(true);
    expect(asked.some(({ answer }) => answer.status >= 400)).toBe(true);
    expect(asked.filter(({ answer }) => answer.status >= 500).map(({ what }) => what)).toEqual([]);
    const numbers = `${asked.length} requests to ${rows.length} routes, ${asked.filter(({ answer }) => answer.status >= 400).length} refused`;
    tell(`${marked.length} marks in ${numbers}`);
  });

  it('comes back to whoever asks for the exam, so that the marks are seen where they are', () => {
    const bodies = asked.filter(({ answer }) => answer.status < 300).map(({ answer }) => answer.text);
    for (const mark of [marks.name, marks.number, marks.note, marks.unusual]) {
      expect(bodies.some((text) => hitsIn(text).includes(mark))).toBe(true);
    }
  });

  it('is in no error', () => {
    const found = asked.filter(({ answer }) => answer.status >= 400 && hitsIn(answer.text).length > 0);
    expect(found.map(({ what, answer }) => `${what} ${answer.text.slice(0, 300)}`)).toEqual([]);
  });

  it('is in no header of an answer', () => {
    const found = asked.filter(({ answer }) => hitsIn(headersOf(answer)).length > 0);
    expect(found.map(({ what, answer }) => `${what} ${headersOf(answer)}`)).toEqual([]);
  });

  it('is in no metrics', () => {
    const metrics = asked.find(({ what }) => what === 'GET /metrics');
    expect(hitsIn(metrics?.answer.text ?? '')).toEqual([]);
  });

  it('is in no address that the service makes', () => {
    const found = asked.filter(({ answer }) => answer.status < 300 && hitsIn(addressesIn(answer.text)).length > 0);
    expect(found.map(({ what, answer }) => `${what} ${addressesIn(answer.text).slice(0, 300)}`)).toEqual([]);
  });

  it('is in no log, on neither stream', async () => {
    await service.end('SIGTERM');
    expect(service.log().split('\n').length).toBeGreaterThan(asked.length);
    expect(hitsIn(service.log())).toEqual([]);
    expect(hitsIn(service.output())).toEqual([]);
  });

  async function ask(
    what: string,
    method: string,
    path: string,
    { body, headers = {} }: { body?: string; headers?: Record<string, string> } = {},
  ): Promise<Answer> {
    const init: RequestInit = {
      method,
      headers: { ...(body === undefined ? {} : { 'Content-Type': 'application/json' }), ...headers },
    };
    const answer = await send(service.url + path, body === undefined ? init : { ...init, body });
    asked.push({ what, answer });
    return answer;
  }
});

/** Marks wherever an exam takes text. */
function markedExam(): object {
  const exam = exampleExam();
  const [section, [first, ...others]] = Object.entries(exam.findings ?? {})[0] as [string, [object, ...object[]]];
  return {
    ...exam,
    identifier: { system: 'https://clinic.example/exams', value: marks.number },
    subject: {
      reference: `Patient/${marks.number}`,
      display: marks.name,
      identifier: { system: 'https://clinic.example/patients', value: marks.number },
    },
    performer: [{ reference: `Practitioner/${marks.number}`, display: marks.unusual }],
    findings: {
      ...exam.findings,
      [section]: [{ ...first, note: `${marks.note} ${marks.born} ${marks.unusual}` }, ...others],
    },
  };
}

function markedHeaders(): Record<string, string> {
  const value = `${marks.surname} ${marks.number} ${marks.born}`;
  const names = [
    'Authorization',
    'Cookie',
    'User-Agent',
    'Referer',
    'From',
    'X-Request-Id',
    'X-Forwarded-For',
    'If-Match',
  ];
  const more = [
    'If-None-Match',
    'Prefer',
    'Accept',
    'Accept-Language',
    'Traceparent',
    'Baggage',
    'X-Marked',
    'Forwarded',
  ];
  return Object.fromEntries([...names, ...more].map((name) => [name, value]));
}

/** Bodies that are wrong in many ways, with marks in every place. */
function markedBodies(bodies: ReturnType<typeof validBodies>, path: string, here: readonly string[]): string[] {
  const operation = /\$[a-z-]+$/.exec(path)?.[0] ?? '';
  const valid = [markedExam(), ...(bodies.parameters[operation] ?? bodies.measures.slice(0, 1))];
  const spoilt = valid.flatMap((body) =>
    here.flatMap((mark) => [
      replaced(body, (value) => (typeof value === 'string' ? mark : value)),
      replaced(body, (value) => (typeof value === 'number' || typeof value === 'boolean' ? mark : value)),
      { ...body, [mark]: mark },
      {
        ...body,
        status: mark,
        resourceType: mark,
        findings: { [mark]: [{ [mark]: mark }], power: [{ movement: mark, side: mark, grade: mark }] },
      },
    ]),
  );
  const texts = here.flatMap((mark) => [
    JSON.stringify(mark),
    `{"${mark}`,
    `{"${mark}":1,"${mark}":2}`,
    `{"a":"${mark}\\ud800"}`,
    `${'['.repeat(90)}"${mark}"`,
    `${mark}`,
  ]);
  return [...spoilt.map((body) => JSON.stringify(body)), ...texts];
}

/** The same value with every simple value in it replaced. */
function replaced(value: unknown, by: (value: unknown) => unknown): unknown {
  if (Array.isArray(value)) return value.map((one) => replaced(one, by));
  if (typeof value !== 'object' || value === null) return by(value);
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [key, key === 'resourceType' ? one : replaced(one, by)]),
  );
}

function hitsIn(text: string): string[] {
  return forms.filter((form) => text.includes(form));
}

function headersOf({ headers }: Answer): string {
  return [...headers].map(([name, value]) => `${name}: ${value}`).join('\n');
}

/** Keys, codes and days: they ask for a kind of finding or for what stands in an address anyway, and are told as sent. */
const impersonal = /([?&](?:_id|code|date|_since)=)[^&"]*/g;

/** Links of Bundles and manifests; every other address in an answer is one that was sent. */
function addressesIn(text: string): string {
  if (!/^[[{]/.test(text)) return '';
  try {
    const { link, request, output } = JSON.parse(text) as Record<string, unknown>;
    return JSON.stringify([link, typeof request === 'string' ? request : '', output]).replaceAll(impersonal, '$1');
  } catch {
    return '';
  }
}

function unicodeEscape(sign: string): string {
  return Array.from({ length: sign.length }, (_, n) => `\\u${sign.charCodeAt(n).toString(16).padStart(4, '0')}`).join(
    '',
  );
}
