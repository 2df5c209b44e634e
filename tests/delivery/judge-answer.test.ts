import { describe, expect, it } from 'vitest';
import { judgeTransaction } from '../../src/delivery/judge-answer.ts';

const answer = (status: number, body: unknown, headers = {}) => ({
  status,
  headers,
  body: typeof body === 'string' ? body : JSON.stringify(body),
});
const response = (...statuses: string[]) => ({
  resourceType: 'Bundle',
  type: 'transaction-response',
  entry: statuses.map((status) => ({ response: { status } })),
});

describe('the answer to a transaction', () => {
  it('is good when every entry is', () => {
    expect(judgeTransaction(answer(200, response('201 Created', '200')), 2)).toEqual({
      kind: 'delivered',
      status: 200,
    });
  });

  // RFC 9110: 408, 5xx; RFC 8470: 425; RFC 6585: 429. The others say that a repeat would be answered the same.
  it.each([
    [408, 'again'],
    [425, 'again'],
    [429, 'again'],
    [500, 'again'],
    [502, 'again'],
    [503, 'again'],
    [504, 'again'],
    [401, 'again'],
    [400, 'dead'],
    [403, 'dead'],
    [404, 'dead'],
    [409, 'dead'],
    [412, 'dead'],
    [413, 'dead'],
    [422, 'dead'],
    [301, 'dead'],
    [302, 'dead'],
    [307, 'dead'],
    [308, 'dead'],
  ])('of status %i is tried %s', (status, kind) => {
    expect(judgeTransaction(answer(status, ''), 1)).toMatchObject({ kind, status });
  });

  it('is no answer when it is something else than the response to that transaction', () => {
    for (const body of [
      '<html>',
      '',
      '[]',
      'null',
      {},
      response('201'),
      { ...response('201', '201'), type: 'batch-response' },
    ]) {
      expect(judgeTransaction(answer(200, body), 2)).toEqual({ kind: 'again', reason: 'ANSWER_UNUSABLE', status: 200 });
    }
  });

  it('condemns the transaction when an entry failed, or says nothing of itself', () => {
    for (const bad of ['404 Not Found', '500', '']) {
      expect(judgeTransaction(answer(200, response('201', bad)), 2)).toMatchObject({
        kind: 'dead',
        reason: 'ENTRY_FAILED',
      });
    }
  });

  it('keeps the codes of issues and nothing else of them', () => {
    const issue = [
      { code: 'invalid', diagnostics: 'Smith' },
      { code: 'Smith, John' },
      { code: 7 },
      null,
      { code: 'invalid' },
    ];
    const verdict = judgeTransaction(answer(422, { resourceType: 'OperationOutcome', issue }), 1);
    expect(verdict).toMatchObject({ reason: 'REFUSED', issues: ['invalid'] });
    expect(JSON.stringify(verdict)).not.toMatch(/Smith/);
  });
});
