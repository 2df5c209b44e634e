import { afterEach, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { send, sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

const services: RunningService[] = [];
afterEach(async () => {
  for (const service of services.splice(0)) await service.stop();
});

async function start(env: Readonly<Record<string, string>> = {}): Promise<RunningService> {
  const service = await startTestService(env);
  services.push(service);
  return service;
}

interface Family {
  readonly type: string;
  readonly samples: readonly {
    readonly name: string;
    readonly labels: Readonly<Record<string, string>>;
    value: number;
  }[];
}

const name = '[a-zA-Z_:][a-zA-Z0-9_:]*';
const label = String.raw`[a-zA-Z_][a-zA-Z0-9_]*="(?:[^"\\\n]|\\[\\"n])*"`;
const number = String.raw`(?:[+-]?(?:\d+(?:\.\d+)?(?:e[+-]?\d+)?|Inf)|NaN)`;
const sampleForm = new RegExp(`^(?<name>${name})(?:\\{(?<labels>${label}(?:,${label})*),?\\})? (?<value>${number})$`);

/**
 * Reads the text format, and refuses what is not in its grammar or its order.
 * Source: Prometheus documentation, Exposition formats, text-based format, version 0.0.4.
 */
function parse(text: string): ReadonlyMap<string, Family> {
  expect(text.endsWith('\n')).toBe(true);
  const families = new Map<string, { type: string; samples: Family['samples'][number][] }>();
  let helped = '';
  let current = '';
  for (const line of text.split('\n').filter((one) => one !== '')) {
    const [, keyword, about = '', rest = ''] = new RegExp(`^# (HELP|TYPE) (${name}) (.*)$`).exec(line) ?? [];
    if (keyword === 'HELP') {
      expect(families.has(about), line).toBe(false);
      helped = about;
    } else if (keyword === 'TYPE') {
      expect(about).toBe(helped);
      expect(rest).toMatch(/^(counter|gauge|histogram|summary|untyped)$/);
      families.set(about, { type: rest, samples: [] });
      current = about;
    } else {
      const { groups } = sampleForm.exec(line) ?? {};
      expect(groups, line).toBeDefined();
      const family = families.get(current);
      const suffix = groups?.name?.slice(current.length) ?? '';
      const suffixes: Record<string, string[]> = {
        histogram: ['_bucket', '_sum', '_count'],
        summary: ['', '_sum', '_count'],
      };
      expect(groups?.name?.startsWith(current), line).toBe(true);
      expect(suffixes[family?.type ?? ''] ?? [''], line).toContain(suffix);
      const labels = [...(groups?.labels ?? '').matchAll(/(?<key>\w+)="(?<value>(?:[^"\\]|\\.)*)"/g)];
      family?.samples.push({
        name: groups?.name ?? '',
        labels: Object.fromEntries(labels.map((one) => [one.groups?.key, one.groups?.value])),
        value: Number(groups?.value?.replace('Inf', 'Infinity')),
      });
    }
  }
  return families;
}

describe('the metrics', () => {
  it('count what happens, in the format of Prometheus, by values of the program alone', async () => {
    const canary = 'Canary-51e9';
    const { url } = await start();
    const exam = examNumbered(canary, { subject: { reference: `Patient/${canary}`, display: canary } });
    const posted = await sendJson(`${url}/exams`, exam, { headers: { 'X-Request-Id': canary, 'User-Agent': canary } });
    expect(posted.status).toBe(201);
    expect(posted.headers.get('X-Request-Id')).not.toContain(canary);
    await sendJson(`${url}/localisation`, exam);
    await sendJson(`${url}/exams`, { [canary]: canary });
    for (let n = 0; n < 5; n += 1) await send(`${url}/${canary}-${n}?name=${canary}`, { method: 'PROPFIND' });
    await send(`${url}/exams/${canary}`);
    await send(`${url}/fhir/Observation?patient=Patient/${canary}`);
    await send(`${url}/fhir/Observation/${canary}`);

    const { text, headers, status } = await send(`${url}/metrics`);
    expect([status, headers.get('Content-Type')]).toEqual([200, 'text/plain; version=0.0.4; charset=utf-8']);
    expect(text).not.toContain(canary);
    const families = parse(text);
    const value = (family: string, labels: Record<string, string> = {}) =>
      families
        .get(family)
        ?.samples.find((one) => Object.entries(labels).every(([key, wanted]) => one.labels[key] === wanted))?.value;
    expect(value('http_requests_total', { method: 'POST', route: '/exams', status: '2xx' })).toBe(1);
    expect(value('http_requests_total', { method: 'POST', route: '/exams', status: '4xx' })).toBe(1);
    expect(value('http_requests_total', { method: 'other', route: 'none', status: '4xx' })).toBe(5);
    expect(value('http_requests_total', { route: '/exams/:id', status: '4xx' })).toBe(1);
    expect(value('neuroexam_problems_total', { code: 'EXAM_INVALID' })).toBe(1);
    expect(value('neuroexam_exams_total', { event: 'created' })).toBe(1);
    expect(families.get('neuroexam_assessments_total')?.samples.reduce((sum, one) => sum + one.value, 0)).toBe(2);
    expect(value('http_requests_in_flight')).toBe(0);
    expect(value('neuroexam_store_pending_writes')).toBe(0);
    expect(value('neuroexam_store_up')).toBe(1);
    const { model_version: modelVersion, version } = families.get('neuroexam_build_info')?.samples[0]?.labels ?? {};
    expect(posted.text).toContain(String(modelVersion));
    expect(modelVersion?.startsWith(`${version}+`)).toBe(true);
    for (const needed of ['nodejs_eventloop_lag_seconds', 'process_resident_memory_bytes']) {
      expect(value(needed), needed).toBeGreaterThanOrEqual(0);
    }
    for (const { type, samples } of families.values()) {
      if (type !== 'histogram') continue;
      // Buckets are cumulative, and the last one is the count.
      const counts = samples.filter((one) => one.name.endsWith('_count'));
      for (const { labels, value: total } of counts) {
        const buckets = samples.filter(
          (one) =>
            one.name.endsWith('_bucket') && Object.entries(labels).every(([key, wanted]) => one.labels[key] === wanted),
        );
        expect(buckets.at(-1)?.labels.le).toBe('+Inf');
        expect(buckets.at(-1)?.value).toBe(total);
        expect(buckets.map((one) => one.value)).toEqual(buckets.map((one) => one.value).sort((a, b) => a - b));
      }
    }
  });

  it('have as many series after a thousand strange paths as after one', async () => {
    const { url } = await start();
    const series = async () => (await send(`${url}/metrics`)).text.match(/^http_requests_total/gm)?.length;
    await send(`${url}/strange/0`);
    await send(`${url}/metrics`);
    const before = await series();
    for (let n = 1; n < 100; n += 1) await send(`${url}/strange/${n}?q=${n}`);
    expect(await series()).toBe(before);
  });

  it('move to a port of their own where one is set', async () => {
    const { url, metricsUrl } = await start({ METRICS_PORT: '0' });
    expect((await send(`${url}/metrics`)).status).toBe(404);
    expect((await send(`${metricsUrl}/metrics`)).text).toContain('neuroexam_build_info');
    expect((await send(`${metricsUrl}/exams`)).status).toBe(404);
    expect((await send(`${metricsUrl}/metrics`, { method: 'POST' })).status).toBe(405);
  });
});
