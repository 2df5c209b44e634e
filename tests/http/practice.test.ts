import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { sitesByPart } from '../../src/practice/practice-sites.ts';
import { type RunningService, startService } from '../../src/service.ts';
import { schemaValidator } from '../support/api-document.ts';
import { compiledByBuild } from '../support/built.ts';
import { type Answer, send, sendJson } from '../support/client.ts';
import { temporaryFolder } from '../support/service.ts';

interface Patient {
  readonly patient: string;
  readonly vignette: string;
}
interface Findings {
  readonly shown: readonly { readonly pointer: string; readonly text: string }[];
  readonly unanswered: readonly { readonly pointer: string; readonly because: string }[];
  readonly findings: object;
}
interface Outcome {
  readonly lesion: { readonly site: string; readonly side: string | null; readonly level: string | null };
  readonly verdict: { readonly grade: string };
  readonly reasons: readonly { readonly examined: string | null; readonly because: string }[];
  readonly items: { readonly yours: number };
  readonly efficient: { readonly steps: readonly { readonly leading: { readonly probability: number } }[] };
  readonly leftOut: readonly object[];
}
interface Problem {
  readonly code: string;
  readonly errors?: readonly { readonly pointer: string; readonly code: string; readonly suggestion?: string }[];
}

const dataDir = temporaryFolder();
const start = () => startService(readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir }), compiledByBuild());

let service: RunningService;
beforeAll(async () => {
  service = await start();
});
afterAll(() => service.stop());

const post = (path: string, body: unknown): Promise<Answer> => sendJson(`${service.url}/practice/${path}`, body);

async function admitted(wish: object = {}): Promise<Patient> {
  const answer = await post('patients', wish);
  expect(answer.status).toBe(201);
  return answer.json<Patient>();
}

const items = [
  { item: 'power/ankle-dorsiflexion', side: 'both' },
  { item: 'reflexes/ankle', side: 'both' },
  { item: 'sensation/pinprick', side: 'left', dermatome: 'L5' },
  { item: 'inspection/amputation', side: 'left', site: 'foot' },
];

/** A body that keeps the schema of the description. */
function expectSchema(name: string, answer: Answer): void {
  const validate = schemaValidator({ $ref: `#/components/schemas/${name}` });
  expect([name, validate(answer.json()), validate.errors]).toEqual([name, true, null]);
}

describe('practice', () => {
  it('gives a patient, shows what is asked for, and says plainly what the model cannot say', async () => {
    const { patient, vignette } = await admitted({ seed: 11 });
    expect(vignette).toMatch(/^A (woman|man) of \d\d /);
    const answer = await post('examinations', { patient, items });
    expect(answer.status).toBe(200);
    expectSchema('PracticeFindings', answer);
    const { shown, unanswered, findings } = answer.json<Findings>();
    expect(shown.map(({ pointer }) => pointer)).toEqual(['/items/0', '/items/0', '/items/1', '/items/1', '/items/2']);
    expect(unanswered).toMatchObject([{ pointer: '/items/3' }]);
    expect(unanswered[0]?.because).toMatch(/neither normal nor abnormal/);
    expect((await post('examinations', { patient, items })).text).toBe(answer.text);
    const localised = await sendJson(`${service.url}/localisation`, { examinedAt: '2026-01-15T10:00:00Z', findings });
    expect(localised.status).toBe(200);
  });

  it('knows the patient again after a restart on the same store, and no other service does', async () => {
    const { patient } = await admitted();
    const before = await post('examinations', { patient, items });
    await service.stop();
    service = await start();
    expect((await post('examinations', { patient, items })).text).toBe(before.text);
    const other = await startService(
      readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: temporaryFolder() }),
      compiledByBuild(),
    );
    const foreign = await sendJson(`${other.url}/practice/examinations`, { patient, items });
    await other.stop();
    expect([foreign.status, foreign.json<Problem>().code]).toEqual([400, 'BAD_REQUEST']);
  });

  it('names the patient by nothing that can be read, and differently each time', async () => {
    const tokens = await Promise.all([1, 2, 3].map(async () => (await admitted({ seed: 5 })).patient));
    expect(new Set(tokens).size).toBe(3);
    const words = sitesByPart().flatMap(({ part, sites }) => [part, ...sites.map(({ site }) => site)]);
    for (const token of tokens) {
      const bytes = Buffer.from(token, 'base64url').toString('latin1');
      expect(words.filter((word) => bytes.includes(word) || token.includes(word))).toEqual([]);
      expect(bytes).not.toMatch(/seed|difficulty|asked 5|usual/);
    }
  });

  it('tells the lesion only with the answer, and takes the true site for right', async () => {
    for (const wish of [
      { part: 'nerves', seed: 3 },
      { part: 'spinal-cord', seed: 4 },
      { difficulty: 'hard', seed: 9 },
    ]) {
      const { patient } = await admitted(wish);
      const first = await post('answers', { patient, examined: items, commitment: { site: 'no-lesion' } });
      expect(first.status).toBe(200);
      expectSchema('PracticeAnswer', first);
      const { lesion, reasons, items: counts, efficient } = first.json<Outcome>();
      expect(counts.yours).toBe(5);
      expect(new Set(reasons.flatMap(({ examined }) => examined ?? []))).toEqual(
        new Set(['/examined/0', '/examined/1', '/examined/2']),
      );
      expect(reasons.every(({ because }) => because.length > 5)).toBe(true);
      expect(efficient.steps.length).toBeGreaterThan(0);
      const offered = sitesByPart()
        .flatMap(({ sites }) => sites)
        .find(({ site }) => site === lesion.site);
      const commitment = {
        site: lesion.site,
        ...(offered?.sides.length === 0 ? {} : { side: lesion.side }),
        ...(lesion.level === null ? {} : { level: lesion.level }),
      };
      const again = await post('answers', { patient, examined: [], commitment });
      expect([again.status, again.json<Outcome>().verdict.grade]).toEqual([200, 'right']);
      expect(again.json<Outcome>().lesion).toEqual(lesion);
    }
  });

  it('offers the sites by part of the neuraxis', async () => {
    const answer = await send(`${service.url}/practice/sites`);
    expect(answer.status).toBe(200);
    expectSchema('PracticeSites', answer);
  });

  it('refuses what it cannot read, with the place and what was expected', async () => {
    const { patient } = await admitted();
    const refused = async (path: string, body: unknown, ...errors: object[]) => {
      const answer = await post(path, body);
      expect([answer.status, answer.json<Problem>()]).toMatchObject([422, { code: 'PRACTICE_INVALID', errors }]);
    };
    await refused('patients', { dificulty: 'easy' }, { code: 'UNKNOWN_PROPERTY', suggestion: 'difficulty' });
    await refused('patients', { seed: -1 }, { pointer: '/seed', code: 'OUT_OF_RANGE' });
    await refused('patients', { part: 'none' }, { pointer: '/part', code: 'UNKNOWN_KEY' });
    await refused('patients', [], { pointer: '', code: 'WRONG_TYPE' });
    await refused('examinations', { patient, items: [] }, { pointer: '/items', code: 'REQUIRED' });
    await refused(
      'examinations',
      {
        patient,
        items: [
          { item: 'power/ankle-dorsi-flexion', side: 'left' },
          { item: 'power/ankle-dorsiflexion' },
          { item: 'power/neck-flexion', side: 'left' },
          { item: 'sensation/pinprick', side: 'left' },
          { item: 'sensation/pinprick', side: 'left', dermatome: 'L9' },
          { item: 'power/ankle-dorsiflexion', side: 'left', site: 'foot' },
        ],
      },
      { pointer: '/items/0/item', code: 'UNKNOWN_KEY', suggestion: 'power/ankle-dorsiflexion' },
      { pointer: '/items/1', code: 'REQUIRED', suggestion: 'side' },
      { pointer: '/items/2/side', code: 'SIDE_NOT_APPLICABLE' },
      { pointer: '/items/3', code: 'REQUIRED' },
      { pointer: '/items/4/dermatome', code: 'UNKNOWN_KEY' },
      { pointer: '/items/5/site', code: 'SITE_NOT_APPLICABLE' },
    );
    const answer = (commitment: object) => ({ patient, examined: [], commitment });
    await refused(
      'answers',
      answer({ site: 'nerve-root' }),
      { pointer: '/commitment', suggestion: 'side' },
      { pointer: '/commitment', suggestion: 'level' },
    );
    await refused('answers', answer({ site: 'thalmus', side: 'left' }), {
      pointer: '/commitment/site',
      suggestion: 'thalamus',
    });
    await refused('answers', answer({ site: 'thalamus', side: 'left', level: 'L5' }), { pointer: '/commitment/level' });
  });

  it('answers 400 to any token that it did not give', async () => {
    const { patient } = await admitted();
    const broken = fc.oneof(
      fc.string({ maxLength: 400 }),
      fc.base64String({ maxLength: 200 }),
      fc.integer({ min: 0, max: patient.length - 1 }).map((at) => patient.slice(0, at)),
      fc.integer({ min: 0, max: patient.length - 1 }).map((at) => {
        const other = patient[at] === 'A' ? 'B' : 'A';
        return patient.slice(0, at) + other + patient.slice(at + 1);
      }),
    );
    await fc.assert(
      fc.asyncProperty(broken, async (token) => {
        const { status } = await post('examinations', { patient: token, items });
        expect(status).toBe(400);
      }),
      { numRuns: 60 },
    );
  });
});
