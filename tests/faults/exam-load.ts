import { createHash } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import { send, sendJson } from '../support/client.ts';
import { type ExamBody, exampleExam, exampleNames } from '../support/example-exam.ts';
import { seed } from './sizes.ts';

/** What the service has promised to keep: the body as sent, and a hash of the Bundle that it answered. */
export interface Promised {
  readonly raw: string;
  readonly bundleHash: string;
  readonly subject: string;
}

export const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');

/** An invented exam under a name of its own, of a person of its own, so that a search finds what belongs to it. */
export function numberedExam(name: string): ExamBody {
  const value = `FAULT-${seed}-${name}`;
  const example = exampleNames[Number.parseInt(hashOf(value).slice(0, 6), 16) % exampleNames.length];
  return exampleExam(
    {
      identifier: { system: 'https://clinic.example/exams', value },
      subject: { reference: `Patient/${value}` },
    },
    example,
  );
}

/** The outside witness: posts from several clients and writes down what was acknowledged and what was merely sent. */
export class Witness {
  /** By path of the exam. */
  readonly acknowledged = new Map<string, Promised>();
  /** Sent without an answer, by name; the exam may have been kept or not. */
  readonly unanswered = new Map<string, string>();
  readonly statuses = new Map<number, number>();

  /** Posts until `stop` is called; `urlOf` says which instance is asked. */
  load(name: string, clients: number, urlOf: (n: number) => string): { stop(): Promise<void> } {
    let isStopped = false;
    const running = Array.from({ length: clients }, async (_, client) => {
      for (let n = 0; !isStopped; n += 1) await this.post(`${name}-${client}-${n}`, urlOf(client + n));
    });
    return {
      stop: async () => {
        isStopped = true;
        await Promise.all(running);
      },
    };
  }

  /** Posts one exam; true when it was acknowledged. */
  async post(name: string, url: string): Promise<boolean> {
    const exam = numberedExam(name);
    const raw = JSON.stringify(exam);
    this.unanswered.set(name, raw);
    const answer = await sendJson(`${url}/exams`, raw).catch(() => undefined);
    if (answer === undefined) {
      await pause(5);
      return false;
    }
    this.statuses.set(answer.status, (this.statuses.get(answer.status) ?? 0) + 1);
    if (answer.status !== 201 && answer.status !== 200) {
      await pause(5);
      return false;
    }
    this.unanswered.delete(name);
    this.acknowledged.set(String(answer.headers.get('Location')), {
      raw,
      bundleHash: hashOf(answer.text),
      subject: (exam.subject as { reference: string }).reference,
    });
    return true;
  }

  /** Faults of what was acknowledged, from the path numbered `from` on, each in words. */
  async faults(url: string, from = 0): Promise<string[]> {
    const faults: string[] = [];
    for (const [path, promised] of [...this.acknowledged].slice(from)) {
      const fault = await faultOf(url, path, promised);
      if (fault !== undefined) faults.push(`${path} ${fault}`);
    }
    return faults;
  }

  /**
   * Sends what got no answer again and takes it among the acknowledged: kept or not, a repeat gives the whole exam once.
   * @returns how many had been kept
   */
  async settle(url: string): Promise<{ kept: number; lost: number }> {
    const count = { kept: 0, lost: 0 };
    for (const [name, raw] of [...this.unanswered]) {
      const answer = await sendJson(`${url}/exams`, raw);
      if (answer.status !== 200 && answer.status !== 201) throw new Error(`a repeat was answered ${answer.status}`);
      count[answer.status === 200 ? 'kept' : 'lost'] += 1;
      this.unanswered.delete(name);
      const { subject } = JSON.parse(raw) as { subject: { reference: string } };
      this.acknowledged.set(String(answer.headers.get('Location')), {
        raw,
        bundleHash: hashOf(answer.text),
        subject: subject.reference,
      });
    }
    return count;
  }
}

/** The exam as sent, its Bundle, and its resources by way of the index: all of them, and each once. */
async function faultOf(url: string, path: string, { raw, bundleHash, subject }: Promised): Promise<string | undefined> {
  const exam = await send(url + path);
  if (exam.status !== 200) return `lost: ${exam.status}`;
  if (exam.text !== raw) return 'has other bytes';
  const bundle = await send(`${url}${path}/bundle`);
  if (hashOf(bundle.text) !== bundleHash) return 'has another Bundle';
  const types = bundle.json<{ entry: { resource: { resourceType: string } }[] }>().entry;
  for (const type of ['Observation', 'ClinicalImpression']) {
    const expected = types.filter(({ resource }) => resource.resourceType === type).length;
    const query = `subject=${encodeURIComponent(subject)}&_summary=count`;
    const { total } = (await send(`${url}/fhir/${type}?${query}`)).json<{ total: number }>();
    if (total !== expected) return `has ${total} ${type} in the index instead of ${expected}`;
  }
  return undefined;
}
