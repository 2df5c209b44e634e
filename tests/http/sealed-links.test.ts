import { rmSync } from 'node:fs';
import fc from 'fast-check';
import type { Bundle } from 'fhir/r4.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { createSealedText } from '../../src/http/sealed-text.ts';
import { isPersonal } from '../../src/http/search-links.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { compiledByBuild } from '../support/built.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { temporaryFolder } from '../support/service.ts';

const person = 'Canary-77c2';
const form = { 'Content-Type': 'application/x-www-form-urlencoded' };

describe('links of searches', () => {
  let dataDir: string;
  let service: RunningService;
  const start = () =>
    startService(readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir }), compiledByBuild());

  beforeAll(async () => {
    dataDir = temporaryFolder();
    service = await start();
    for (const [n, subject] of [person, person, 'other'].entries()) {
      const exam = examNumbered(`sealed-${n}`, { subject: { reference: `Patient/${subject}` } });
      expect((await sendJson(`${service.url}/exams`, exam)).status).toBe(201);
    }
  });
  afterAll(async () => {
    await service.stop();
    rmSync(dataDir, { recursive: true, force: true });
  });

  const linkOf = (bundle: Bundle, relation: string) => bundle.link?.find((one) => one.relation === relation)?.url;
  const get = async (url: string) => (await send(url)).json<Bundle>();
  const matches = ({ entry = [] }: Bundle) =>
    entry.filter(({ search }) => search?.mode === 'match').map(({ resource }) => resource?.id);

  /** Every page from the first on, following what it says. */
  async function walk(first: Bundle): Promise<{ ids: (string | undefined)[]; urls: string[] }> {
    const found = { ids: [] as (string | undefined)[], urls: [] as string[] };
    for (let page: Bundle | undefined = first; page !== undefined; ) {
      found.ids.push(...matches(page));
      found.urls.push(...(page.link ?? []).map(({ url }) => url));
      const next = linkOf(page, 'next');
      page = next === undefined ? undefined : await get(next);
    }
    return found;
  }

  it('name the parameters that took effect and keep to themselves whom they are about', async () => {
    const query = new URLSearchParams({
      patient: `Patient/${person}`,
      status: 'final',
      _count: '20',
      'identifier:not': `urn:x|${person}`,
    });
    const byGet = await get(`${service.url}/fhir/Observation?${query}`);
    const posted = await send(`${service.url}/fhir/Observation/_search`, {
      method: 'POST',
      headers: form,
      body: query.toString(),
    });
    const whole = matches(
      await get(`${service.url}/fhir/Observation?patient=Patient/${person}&status=final&_count=500`),
    );
    expect(whole.length).toBeGreaterThan(40);
    for (const first of [byGet, posted.json<Bundle>()]) {
      const { ids, urls } = await walk(first);
      expect(ids).toEqual(whole);
      expect(urls.length).toBeGreaterThan(4);
      expect(urls.join(' ')).not.toContain(person);
      const self = new URL(linkOf(first, 'self') ?? '');
      expect([...self.searchParams.keys()]).toEqual([...query.keys()]);
      expect(self.searchParams.get('status')).toBe('final');
      expect(self.searchParams.get('_count')).toBe('20');
      // What the self link says is what was asked.
      expect(matches(await get(self.href))).toEqual(matches(first));
    }
  });

  it('show no time of an examination in a cursor', async () => {
    const url = linkOf(await get(`${service.url}/fhir/Observation?_sort=date&_count=1`), 'next') ?? '';
    const cursor = new URL(url).searchParams.get('_cursor') ?? '';
    expect(Buffer.from(cursor, 'base64url').toString('latin1')).not.toMatch(/value|key|\d{4}-\d{2}/);
  });

  it('lead on after a restart', async () => {
    const before = await get(`${service.url}/fhir/Observation?subject=Patient/${person}&_count=10`);
    const next = linkOf(before, 'next') ?? '';
    const second = matches(await get(next));
    const { url } = service;
    await service.stop();
    service = await start();
    expect(matches(await get(next.replace(url, service.url)))).toEqual(second);
  });

  it('refuse what was changed, made up, or made for another place', async () => {
    const first = await get(`${service.url}/fhir/Observation?patient=Patient/${person}&_count=1`);
    const next = new URL(linkOf(first, 'next') ?? '');
    const refused = async (change: (url: URL) => void) => {
      const url = new URL(next);
      change(url);
      return (await send(url.href)).status;
    };
    const other = (text: string) => `${text.slice(0, -2)}${text.at(-2) === 'A' ? 'B' : 'A'}${text.at(-1)}`;
    expect(await refused(() => undefined)).toBe(200);
    for (const name of ['_cursor', 'patient']) {
      expect(await refused(({ searchParams: all }) => all.set(name, other(all.get(name) ?? ''))), name).toBe(400);
    }
    expect(
      await refused(({ searchParams: all }) => {
        all.set('subject', all.get('patient') ?? '');
        all.delete('patient');
      }),
    ).toBe(400);
    expect(await refused((url) => Object.assign(url, { pathname: '/fhir/RiskAssessment' }))).toBe(400);
    const history = await get(`${service.url}/fhir/Observation/_history?_count=1`);
    const cursor = new URL(linkOf(history, 'next') ?? '').searchParams.get('_cursor') ?? '';
    expect(await refused(({ searchParams }) => searchParams.set('_cursor', cursor))).toBe(400);
  });

  it('keep the values of parameters that are about people, whatever their modifier', () => {
    const personal = [
      'identifier',
      'patient',
      'subject',
      'subject:Patient',
      'patient.identifier',
      'encounter:identifier',
    ];
    personal.push('performer', 'value-string', 'value-string:exact', 'code:text', 'no-such-parameter');
    for (const name of personal) expect(isPersonal('Observation', name), name).toBe(true);
    for (const name of [
      'code',
      'code:in',
      'status',
      'date',
      'value-quantity',
      '_id',
      '_lastUpdated',
      '_sort',
      '_include',
    ]) {
      expect(isPersonal('Observation', name), name).toBe(false);
    }
    expect(isPersonal('Measure', 'title')).toBe(false);
  });
});

describe('sealed text', () => {
  const key = Buffer.alloc(32, 7);
  const { seal, open } = createSealedText(key);

  it('opens what it sealed, for the same purpose alone, and looks different each time', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.string(), fc.string(), (text, about, other) => {
        const sealed = seal(text, about);
        expect(sealed).toMatch(/^[A-Za-z0-9_-]{38,}$/);
        expect(open(sealed, about)).toBe(text);
        expect(open(sealed, `${about}x${other}`)).toBeUndefined();
        expect(seal(text, about)).not.toBe(sealed);
        expect(createSealedText(Buffer.alloc(32, 8)).open(sealed, about)).toBeUndefined();
      }),
      { numRuns: 50 },
    );
  });

  it('opens nothing that was changed, and never fails', () => {
    const sealed = Buffer.from(seal('text', 'a'), 'base64url');
    for (let bit = 0; bit < sealed.length * 8; bit += 1) {
      const changed = Buffer.from(sealed);
      changed.writeUInt8(changed.readUInt8(bit >> 3) ^ (1 << (bit & 7)), bit >> 3);
      expect(open(changed.toString('base64url'), 'a')).toBeUndefined();
    }
    fc.assert(fc.property(fc.string(), (text) => open(text, 'a') === undefined));
  });
});
