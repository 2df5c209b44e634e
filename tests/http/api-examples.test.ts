import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { describedOperations, type Example, examplesOf, schemaValidator } from '../support/api-document.ts';
import { type Answer, send } from '../support/client.ts';
import { startTestService } from '../support/service.ts';

const examples = describedOperations.flatMap(examplesOf);

/** The two exams that the other examples are about, then the rest in the order of the document. */
const isSetting = ({ operation }: Example) => operation.operationId === 'postExam';
const inOrder = [...examples.filter(isSetting), ...examples.filter((example) => !isSetting(example))];

/** What is wrong with an answer beside its example; undefined when it agrees. */
function difference(
  shown: unknown,
  real: unknown,
  { isExcerpt, varies }: { isExcerpt: boolean; varies: ReadonlySet<string> },
  pointer = '',
): string | undefined {
  if (varies.has(pointer)) return undefined;
  if (typeof shown !== 'object' || shown === null) {
    return Object.is(shown, real)
      ? undefined
      : `${pointer}: ${JSON.stringify(real)} instead of ${JSON.stringify(shown)}`;
  }
  if (typeof real !== 'object' || real === null || Array.isArray(real) !== Array.isArray(shown)) {
    return `${pointer}: has another type`;
  }
  const known = Object.entries(shown);
  const realKeys = Object.keys(real);
  const extra = realKeys.find((key) => !Object.hasOwn(shown, key) && !varies.has(`${pointer}/${key}`));
  if (!isExcerpt && extra !== undefined) return `${pointer}/${extra}: is not in the example`;
  for (const [key, part] of known) {
    if (!Object.hasOwn(real, key)) return `${pointer}/${key}: is missing`;
    const found = difference(part, (real as Record<string, unknown>)[key], { isExcerpt, varies }, `${pointer}/${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

describe('every example of the API description', () => {
  let service: RunningService;
  const answers = new Map<string, Promise<Answer>>();

  beforeAll(async () => {
    service = await startTestService();
  });
  afterAll(() => service.stop());

  /** Each example is sent once; others may need what came back. */
  function answerTo(example: Example): Promise<Answer> {
    const key = `${example.operation.operationId} ${example.name}`;
    const known = answers.get(key) ?? sent(example);
    answers.set(key, known);
    return known;
  }

  async function sent(example: Example): Promise<Answer> {
    const query = new URLSearchParams();
    const headers: Record<string, string> = {};
    let { path } = example;
    for (const { name, in: place, example: given } of example.parameters) {
      const value = await parameterValue(given);
      if (place === 'path') path = path.replace(`{${name}}`, encodeURI(value));
      else if (place === 'query') query.append(name, value);
      else headers[name] = value;
    }
    const { body, answer, method } = example;
    if (answer.type !== undefined) headers.Accept = example.status < 400 ? answer.type : '*/*';
    if (body !== undefined) headers['Content-Type'] = body.type;
    const isForm = body?.type === 'application/x-www-form-urlencoded';
    const text = isForm
      ? String(new URLSearchParams(body.value as Record<string, string>))
      : JSON.stringify(body?.value);
    const url = `${service.url}${path}${query.size === 0 ? '' : `?${query}`}`;
    const init = { method, headers, ...(body === undefined ? {} : { body: text }) };
    let result = await send(url, init);
    // An export works in the background: its status is asked for again, as its description says.
    while (result.status === 202 && example.status === 200) result = await send(url, init);
    return result;
  }

  async function parameterValue(given: Example['parameters'][number]['example']): Promise<string> {
    const source = given['x-taken-from'];
    if (source === undefined) return String(given.value);
    const earlier = examples.find(
      ({ operation, name }) => operation.operationId === source.operation && name === source.example,
    );
    if (earlier === undefined) throw new Error(`There is no example ${source.operation} ${source.example}.`);
    const header = (await answerTo(earlier)).headers.get(source.header) ?? '';
    return header.slice(header.lastIndexOf('/') + 1);
  }

  it.each(inOrder.map((example) => [`${example.operation.operationId}: ${example.name}`, example] as const))(
    '%s',
    async (_name, example) => {
      const result = await answerTo(example);
      const type = result.headers.get('Content-Type')?.split(';')[0] ?? undefined;
      expect([result.status, result.status < 400 ? '' : result.text]).toEqual([example.status, expect.any(String)]);
      for (const name of Object.keys(example.response.headers ?? {})) {
        expect([name, result.headers.has(name)]).toEqual([name, true]);
      }
      const content = example.response.content ?? {};
      if (Object.keys(content).length === 0) {
        expect(result.text).toBe('');
        return;
      }
      expect(Object.keys(content)).toContain(example.answer.type ?? type);
      expect(type).toBe(example.answer.type ?? type);
      if (type === undefined || !/json$/.test(type) || /ndjson/.test(type)) {
        expect(result.text).not.toBe('');
        return;
      }
      const real = JSON.parse(result.text);
      const validate = schemaValidator(content[type]?.schema ?? {});
      expect([validate(real), validate.errors]).toEqual([true, null]);
      const { 'x-excerpt': isExcerpt = false, 'x-varies': varies = [], value } = example.answer;
      expect(difference(value, real, { isExcerpt, varies: new Set(varies) })).toBeUndefined();
    },
  );
});
