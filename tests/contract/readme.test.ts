import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { builtSteps } from '../support/built.ts';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** The request of the README, as a reader would send it, and the answer that the README shows, without its comments. */
function example(): { readonly body: unknown; readonly shown: Record<string, unknown> } {
  const body = /curl [^']*'content-type: application\/json' -d '(\{.*?\n\})'/s.exec(readme)?.[1];
  const answer = /```jsonc\n(.*?)```/s.exec(readme)?.[1];
  if (body === undefined || answer === undefined) throw new RangeError('the README has lost its example');
  return { body: JSON.parse(body), shown: JSON.parse(answer.replaceAll(/ +\/\/ .*$/gm, '')) };
}

/** Holds what is shown against what comes: shortened lists and texts may stop early, numbers are rounded to two places. */
function holds(shown: unknown, real: unknown, path: string): void {
  if (typeof shown === 'number') expect(Math.round(Number(real) * 100) / 100, path).toBe(shown);
  else if (typeof shown === 'string' && shown.endsWith('...')) {
    expect(String(real).replaceAll(/\s+/g, ' '), path).toContain(shown.slice(0, -3).trim());
  } else if (Array.isArray(shown)) {
    if (shown.length === 0) expect(real, path).toEqual([]);
    shown.forEach((one, index) => {
      holds(one, (real as readonly unknown[])[index], `${path}/${index}`);
    });
  } else if (typeof shown === 'object' && shown !== null) {
    for (const [key, one] of Object.entries(shown))
      holds(one, (real as Record<string, unknown>)[key], `${path}/${key}`);
  } else expect(real, path).toBe(shown);
}

describe('the example of the README', () => {
  it('answers what the README shows', () => {
    const { body, shown } = example();
    const steps = builtSteps();
    const exam = steps.readExam(body, { purpose: 'localise', now: new Date('2026-12-31T00:00:00Z') });
    holds(shown, steps.toLocalisationAnswer(steps.assess(exam)), '');
  });
});
