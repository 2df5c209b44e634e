import { connect } from 'node:net';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { scoringSystem } from '../../src/measures/published-codes.ts';
import type { RunningService } from '../../src/service.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { type ExamBody, examNumbered } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

/** A request that takes this long hangs; how long one takes is for the benchmarks, since the machine may be busy. */
const slowestMs = 10_000;

describe('hostile bodies', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startTestService();
  });
  afterAll(() => service.stop());

  /** Sends to both endpoints and checks what holds for every body: a clear refusal or an answer, soon. */
  async function survive(body: string | Uint8Array): Promise<Answer[]> {
    const answers: Answer[] = [];
    for (const path of ['/exams', '/localisation']) {
      const started = performance.now();
      const answer = await sendJson(service.url + path, body);
      expect(performance.now() - started).toBeLessThan(slowestMs);
      expect(answer.status).toBeLessThan(500);
      expect(answer.json()).toBeTypeOf('object');
      answers.push(answer);
    }
    return answers;
  }

  const refused = async (body: string | Uint8Array) => {
    for (const answer of await survive(body)) expect([400, 413, 422]).toContain(answer.status);
  };

  it.each([10, 21, 1_000, 50_000, 100_000])('refuses arrays and objects nested %i deep', async (depth) => {
    await refused('['.repeat(depth) + ']'.repeat(depth));
    await refused(`${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}`);
    await refused('['.repeat(depth));
  });

  it('refuses keys that mean something to the language, and no prototype changes', async () => {
    const keys = [
      '__proto__',
      'constructor',
      'prototype',
      'toString',
      'hasOwnProperty',
      'valueOf',
      '',
      'x'.repeat(100_000),
    ];
    const exam = JSON.stringify(examNumbered('keys')).slice(0, -1);
    for (const key of keys) {
      const member = JSON.stringify(key);
      await refused(`${exam},${member}:{"polluted":true}}`);
      await refused(`${exam.replace('"findings":{', `"findings":{${member}:[],`)}}`);
      await refused(`${exam.replace('"ankle-dorsiflexion"', member)}}`);
      await refused(`${exam.replace('"diabetes-mellitus"', member)}}`);
    }
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(Object.keys(Object.prototype)).toEqual([]);
  });

  const noText = { toString: 1 };
  const scored = (code: unknown, system: unknown = scoringSystem) => ({ coding: [{ system, code }] });
  const notation = 'http://terminology.hl7.org/CodeSystem/measure-improvement-notation';
  it.each([
    ['POST Measure', { resourceType: 'Measure', status: 'active', scoring: scored(noText) }],
    ['POST Measure', { resourceType: 'Measure', status: noText, scoring: scored('cohort', noText) }],
    [
      'POST Measure/$validate',
      { resourceType: 'Measure', status: 'active', improvementNotation: scored(noText, notation) },
    ],
    [
      'POST $viewdefinition-run',
      { resourceType: 'ViewDefinition', resource: noText, select: [{ column: [{ name: noText, path: 'id' }] }] },
    ],
  ])('takes for no text what cannot be made one: %s', async (route, body) => {
    const answer = await sendJson(`${service.url}/fhir/${route.replace('POST ', '')}`, body);
    expect([200, 400, 422]).toContain(answer.status);
  });

  it('names at most a hundred of thousands of faults, and soon', async () => {
    const findings = {
      power: Array.from({ length: 3_000 }, (_, n) => ({ movement: `no-such-${n}`, side: 'left', grade: '9' })),
    };
    await refused(JSON.stringify(examNumbered('flood', { findings })));
    const unknown = Object.fromEntries(Array.from({ length: 15_000 }, (_, n) => [`k${n}`, n]));
    const [outcome] = await survive(JSON.stringify({ ...examNumbered('flood'), ...unknown }));
    expect(outcome?.json<{ issue: unknown[] }>().issue.length).toBeLessThanOrEqual(100);
  });

  it.each([
    ['infinity', '1e999'],
    ['a number of 400 digits', '9'.repeat(400)],
    ['more digits than a double keeps', '46.000000000000000001'],
    ['a negative age', '-1'],
    ['a text', '"46"'],
    ['a list', '[46]'],
    ['nothing', 'null'],
  ])('does not take %s for an age', async (_name, age) => {
    await refused(JSON.stringify(examNumbered('numbers')).replace('"ageYears":46', `"ageYears":${age}`));
  });

  it.each([
    ['half a surrogate pair', '"\\ud800"'],
    ['a NUL', '"a\\u0000b"'],
    ['an invalid escape', '"\\x41"'],
  ])('refuses %s in a text', async (_name, text) => {
    await refused(JSON.stringify(examNumbered('texts')).replace('"final"', text));
  });

  it('answers every mutation of an exam without failing', { timeout: 60_000 }, async () => {
    const value = fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.constantFrom<unknown>(null, -0, 1e308, [], {}, '', true));
    const path = fc.array(fc.nat(40), { minLength: 1, maxLength: 5 });
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(path, value), { minLength: 1, maxLength: 4 }), async (changes) => {
        const exam = examNumbered('mutated');
        // A copy, because a later change may go into what an earlier one put in.
        for (const [steps, replacement] of changes) mutate(exam, steps, structuredClone(replacement));
        await survive(JSON.stringify(exam));
      }),
      { numRuns: 120 },
    );
  });

  it('answers every cut, flipped or spliced body without failing', { timeout: 60_000 }, async () => {
    const bytes = Buffer.from(JSON.stringify(examNumbered('bytes')));
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), fc.nat(bytes.length - 1), fc.nat(255), async (at, other, byte) => {
        const flipped = Buffer.from(bytes);
        flipped[at] = byte;
        await survive(flipped);
        await survive(bytes.subarray(0, Math.max(1, at)));
        await survive(Buffer.concat([bytes.subarray(0, at), bytes.subarray(other)]));
      }),
      { numRuns: 60 },
    );
  });

  it.each([
    ['two lengths', 'Content-Length: 2\r\nContent-Length: 3\r\n\r\n{}'],
    ['a length and chunks', 'Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n'],
    ['a folded header', 'X-A: 1\r\n b\r\nContent-Length: 2\r\n\r\n{}'],
    ['a space before the colon', 'Content-Length : 2\r\n\r\n{}'],
    ['a header of 40 KB', `X-A: ${'a'.repeat(40_000)}\r\nContent-Length: 2\r\n\r\n{}`],
  ])('refuses %s in the head of a request, with one answer', async (_name, rest) => {
    const head = 'POST /localisation HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n';
    const answer = await raw(Number(new URL(service.url).port), head + rest);
    expect(answer.match(/^HTTP\/1\.1 4\d\d/gm)).toHaveLength(1);
  });

  it('still serves an honest client afterwards', async () => {
    expect((await send(`${service.url}/health/ready`)).status).toBe(200);
    expect((await sendJson(`${service.url}/exams`, examNumbered('honest'))).status).toBe(201);
  });
});

/** Follows the steps down the exam, each taken modulo the number of members, and replaces or adds what is there. */
function mutate(exam: ExamBody, steps: readonly number[], replacement: unknown): void {
  let place: Record<string, unknown> = exam;
  for (const [depth, step] of steps.entries()) {
    const keys = Object.keys(place);
    const key = keys[step % Math.max(1, keys.length)] ?? 'added';
    const next = place[key];
    if (depth === steps.length - 1 || typeof next !== 'object' || next === null) {
      if (key !== 'identifier') place[key] = replacement;
      return;
    }
    place = next as Record<string, unknown>;
  }
}

/** Sends bytes over a plain socket; resolves with everything that came back until the other side closed or fell silent. */
function raw(port: number, bytes: string): Promise<string> {
  return new Promise((resolve) => {
    let answer = '';
    const socket = connect(port, '127.0.0.1', () => socket.write(bytes));
    socket.setTimeout(500, () => socket.destroy());
    socket.on('data', (chunk) => {
      answer += chunk.toString('latin1');
    });
    socket.on('error', () => undefined);
    socket.on('close', () => resolve(answer));
  });
}
