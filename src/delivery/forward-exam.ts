import type { Bundle } from 'fhir/r4.js';
import type { ExamRepository } from '../store/exam-repository.ts';
import type { AccessToken } from './access-token.ts';
import { judgeTransaction, type Verdict } from './judge-answer.ts';
import { type ReceivedAnswer, sendRequest } from './send-request.ts';
import type { SendDelivery } from './target.ts';

/** A response with `return=minimal` has a few hundred bytes an entry; some servers send the resources all the same. */
const answerLimitBytes = 16 * 1024 * 1024;

/** Sends the Bundle of a version, as it was answered, to the transaction endpoint of a FHIR server. */
export function createForwarding(
  exams: ExamRepository,
  { url, timeoutMs }: { readonly url: URL; readonly timeoutMs: number },
  token: AccessToken,
): SendDelivery {
  async function post(bundle: Buffer, isAfresh: boolean, signal: AbortSignal): Promise<ReceivedAnswer> {
    const bearer = await token(isAfresh);
    return sendRequest({
      method: 'POST',
      url,
      headers: {
        'Content-Type': 'application/fhir+json; charset=utf-8',
        Accept: 'application/fhir+json',
        Prefer: 'return=minimal',
        ...(bearer === undefined ? {} : { Authorization: `Bearer ${bearer}` }),
      },
      body: bundle,
      timeoutMs,
      answerLimitBytes,
      signal,
    });
  }

  return async ({ examId, version }, { signal }): Promise<Verdict> => {
    const exam = await exams.find(examId, version);
    if (exam === undefined) return { kind: 'dead', reason: 'CONTENT_MISSING' };
    const { entry = [] } = JSON.parse(exam.bundle.toString('utf8')) as Bundle;
    const answer = await post(exam.bundle, false, signal);
    return judgeTransaction(answer.status === 401 ? await post(exam.bundle, true, signal) : answer, entry.length);
  };
}
