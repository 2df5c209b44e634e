import { type Server, startCandidate } from './processes.ts';
import { milliseconds, type Report } from './report.ts';

const bytes = 1_000_000;

/** Bodies that are refused, but only after work: as many faults, keys or levels as a body of its size can hold. */
function hostileBodies(): readonly (readonly [string, string])[] {
  const many = (item: string) => Array.from({ length: Math.floor(bytes / (item.length + 1)) }, () => item).join(',');
  const head = '{"examinedAt":"2026-03-14T10:20:00+01:00",';
  return [
    ['findings that are all wrong', `${head}"findings":{"power":[${many('{"movement":"x","side":1}')}]}}`],
    ['keys that nobody knows', `${head}${Array.from({ length: 60_000 }, (_, n) => `"k${n}":0`).join(',')}}`],
    [
      'the same finding',
      `${head}"findings":{"power":[${many('{"movement":"ankle-dorsiflexion","side":"left","grade":"3"}')}]}}`,
    ],
    ['nesting', `${'['.repeat(bytes / 2)}${']'.repeat(bytes / 2)}`],
    ['one long text', `${head}"findings":{"power":[{"movement":"${'a'.repeat(bytes)}"}]}}`],
  ];
}

/** Longest time for which a hostile body keeps another caller waiting, beside what parsing it alone takes. */
export async function measureHostile(report: Report, folder: string): Promise<void> {
  const server = await startCandidate(folder, { BODY_LIMIT_BYTES: String(2 * bytes) });
  try {
    let worst = { name: '', hold: 0, parse: 0 };
    for (const [name, body] of hostileBodies()) {
      await hold(server, body);
      const holds = [await hold(server, body), await hold(server, body), await hold(server, body)];
      const least = Math.min(...holds);
      if (least > worst.hold) worst = { name, hold: least, parse: parseMs(body) };
    }
    report.add(
      'hostileHold',
      `hostile body, others wait (${worst.name}), in ms`,
      `${milliseconds(worst.parse)} (JSON.parse)`,
      milliseconds(worst.hold),
      worst.hold,
    );
  } finally {
    await server.stop();
  }
}

/** Milliseconds of the slowest answer to a plain question that is asked over and over while the body is dealt with. */
async function hold(server: Server, body: string): Promise<number> {
  let isDone = false;
  const refused = fetch(`${server.url}/localisation`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body,
  }).then(async (answer) => {
    await answer.arrayBuffer();
    isDone = true;
    if (answer.status >= 500 || answer.ok) throw new Error(`hostile body: ${answer.status}`);
  });
  let slowest = 0;
  while (!isDone) {
    const started = performance.now();
    await fetch(`${server.url}/health/live`).then((answer) => answer.arrayBuffer());
    slowest = Math.max(slowest, performance.now() - started);
  }
  await refused;
  return slowest;
}

function parseMs(body: string): number {
  const started = performance.now();
  try {
    JSON.parse(body);
  } catch {
    // Too deep for some parsers; the time until it gave up counts.
  }
  return performance.now() - started;
}
