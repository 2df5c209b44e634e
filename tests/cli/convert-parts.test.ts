import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertBatch } from '../../src/cli/convert/convert-batch.ts';
import { convertLine } from '../../src/cli/convert/convert-line.ts';
import { readLines } from '../../src/cli/convert/read-lines.ts';
import { keyOf, SeenExams } from '../../src/cli/convert/seen-exams.ts';
import { questionnaireResponse } from '../../src/questionnaire/write-response.ts';
import { builtSteps } from '../support/built.ts';
import { examNumbered, exampleExam } from '../support/example-exam.ts';

const steps = builtSteps();
const now = new Date('2026-11-26T00:00:00Z');

async function* inChunks(bytes: Buffer, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

async function linesOf(bytes: Buffer, size: number, longest: number) {
  const lines: { number: number; text: string | null; end: number }[] = [];
  for await (const line of readLines(inChunks(bytes, size), longest)) {
    lines.push({ number: line.number, text: line.bytes && Buffer.from(line.bytes).toString(), end: line.end });
  }
  return lines;
}

describe('the lines of an input', () => {
  it('are those between the newlines, whatever the chunks, and end where the input says', async () => {
    const text = fc.array(fc.string({ unit: fc.constantFrom('a', 'é', ' ', '\r'), maxLength: 9 }), { maxLength: 8 });
    await fc.assert(
      fc.asyncProperty(text, fc.integer({ min: 1, max: 12 }), fc.boolean(), async (parts, size, isEnded) => {
        const whole = parts.join('\n') + (isEnded ? '\n' : '');
        const expected = whole.split('\n');
        if (expected.at(-1) === '') expected.pop();
        const lines = await linesOf(Buffer.from(whole), size, 100);
        expect(lines.map((line) => line.text)).toEqual(expected);
        expect(lines.map((line) => line.number)).toEqual(expected.map((_, place) => place + 1));
        expect(lines.at(-1)?.end ?? 0).toBe(Buffer.byteLength(whole));
        for (const line of lines.slice(0, -1)) expect(Buffer.from(whole)[line.end - 1]).toBe(0x0a);
      }),
    );
  });

  it('are passed over when they are too long, without losing the place', async () => {
    const lines = await linesOf(Buffer.from(`ab\n${'x'.repeat(50)}\ncd`), 7, 10);
    expect(lines.map(({ number, text }) => [number, text])).toEqual([
      [1, 'ab'],
      [2, null],
      [3, 'cd'],
    ]);
  });
});

describe('exams met before', () => {
  it('are known by their first line, as a Map would know them', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.integer({ min: 0, max: 2 ** 48 - 1 }).map((key) => key % 5000),
          { maxLength: 6000, size: 'max' },
        ),
        (keys) => {
          const seen = new SeenExams();
          const map = new Map<number, number>();
          keys.forEach((key, place) => {
            expect(seen.meet(key, place + 1)).toBe(map.get(key));
            if (!map.has(key)) map.set(key, place + 1);
          });
        },
      ),
      { numRuns: 20 },
    );
  });

  it('have a key of 48 bits', () => {
    expect(keyOf('ffffffff-ffff-5000-8000-000000000000')).toBe(2 ** 48 - 1);
  });
});

describe('one line', () => {
  const bytes = Buffer.from(JSON.stringify(exampleExam({})));

  it('becomes the same Bundle as the service gives, or its resources with references among themselves', () => {
    const exam = steps.readExam(exampleExam({}), { purpose: 'record', now });
    const bundle = steps.toBundle(exam, steps.assess(exam), { version: 1 });
    const options = { line: 1, now } as const;
    expect(convertLine(steps, bytes, { ...options, type: 'transaction' }).output).toEqual([JSON.stringify(bundle)]);
    const { output, device } = convertLine(steps, bytes, { ...options, type: 'resources' });
    expect(output).toHaveLength((bundle.entry ?? []).length - 1);
    const ids = [...output, device ?? ''].map((line) => JSON.parse(line) as { resourceType: string; id: string });
    const known = new Set(ids.map(({ resourceType, id }) => `${resourceType}/${id}`));
    const inner = [...output.join('').matchAll(/"reference":"(?<to>[A-Za-z]+\/[0-9a-f-]{36})"/g)];
    expect(inner.length).toBeGreaterThan(10);
    expect(inner.filter(({ groups }) => !known.has(groups?.to ?? ''))).toEqual([]);
    expect(output.join('')).not.toContain('urn:uuid:');
  });

  it('may be a QuestionnaireResponse, which becomes the Bundle of the exam that it means', () => {
    const options = { line: 1, type: 'transaction', now } as const;
    const form = questionnaireResponse(steps.readExam(exampleExam({}), { purpose: 'record', now }), steps.formVersion);
    const ofForm = convertLine(steps, Buffer.from(JSON.stringify(form)), options);
    expect(ofForm).toEqual(convertLine(steps, bytes, options));
    expect(ofForm.id).toBeDefined();
  });

  it('has the faults of a QuestionnaireResponse where they stand in it', () => {
    const form = questionnaireResponse(steps.readExam(exampleExam({}), { purpose: 'record', now }));
    const broken = {
      ...form,
      questionnaire: `${form.questionnaire}|0.0.1`,
      item: [{ linkId: 'person', item: [{ linkId: 'person/age-years', answer: [{ valueDecimal: 300 }] }] }],
    };
    const line = { number: 7, bytes: Buffer.from(JSON.stringify(broken)) };
    const { faults, exams } = convertBatch(steps, { type: 'transaction', now: now.getTime(), lines: [line] });
    expect(exams).toEqual([]);
    expect(faults).toMatchObject([
      { line: 7, code: 'UNKNOWN_KEY', pointer: '/questionnaire', suggestion: steps.formVersion },
      { line: 7, code: 'OUT_OF_RANGE', pointer: '/item/0/item/0/answer/0/valueDecimal' },
    ]);
  });

  it('leaves the lines beside it alone when it is faulty or blank', () => {
    const line = (number: number, text: string | null) => ({ number, bytes: text === null ? null : Buffer.from(text) });
    const numbered = JSON.stringify(examNumbered('EX-2'));
    const lines = [line(1, ' \r'), line(2, '[]'), line(3, numbered), line(4, null)];
    const answer = convertBatch(steps, { type: 'transaction', now: now.getTime(), lines });
    expect(answer.exams.map(({ line: number }) => number)).toEqual([3]);
    expect(Buffer.from(answer.output).toString().split('\n')).toHaveLength(2);
    expect([...new Set(answer.faults.map(({ line: number }) => number))]).toEqual([2, 4]);
  });
});
