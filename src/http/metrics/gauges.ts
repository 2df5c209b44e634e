import { Gauge, type Registry } from 'prom-client';

/** What is read when somebody asks for the metrics. */
export interface Levels {
  readonly requests: () => number;
  readonly bodyBytes: () => number;
  readonly pendingWrites: () => number;
  readonly exports: () => number;
  /** When the tables for analysts were last brought up to date, ms since 1970; undefined for never. */
  readonly viewsRefreshedAt: () => number | undefined;
  /** What is still to be sent to other servers, by target. */
  readonly deliveries: () => Promise<
    readonly {
      readonly target: string;
      readonly waiting: number;
      readonly dead: number;
      readonly oldestWaitingMs: number;
    }[]
  >;
  /** Resolves when the store reads, takes writes and has room. */
  readonly checkStore: () => Promise<unknown>;
}

/** How long the store may take to tell how it is. */
const checkMs = 1_000;

export function addGauges(registry: Registry, levels: Levels): void {
  const gauge = (name: string, help: string, read: () => number | Promise<number>) =>
    new Gauge({
      name,
      help,
      registers: [registry],
      async collect() {
        this.set(await read());
      },
    });
  gauge('http_requests_in_flight', 'Requests under way.', levels.requests);
  gauge('http_request_body_bytes_in_flight', 'Bytes of the bodies of the requests under way.', levels.bodyBytes);
  gauge('neuroexam_store_pending_writes', 'Writes that wait for the disk or the database.', levels.pendingWrites);
  gauge('neuroexam_exports_pending', 'Bulk exports that are waiting or at work in this process.', levels.exports);
  gauge(
    'neuroexam_views_refreshed_timestamp_seconds',
    'When this process last brought the tables for analysts up to date; 0 for not yet.',
    () => (levels.viewsRefreshedAt() ?? 0) / 1000,
  );
  const ofTargets = (
    name: string,
    help: string,
    read: (one: Awaited<ReturnType<Levels['deliveries']>>[number]) => number,
  ) =>
    new Gauge({
      name,
      help,
      labelNames: ['target'],
      registers: [registry],
      async collect() {
        // What the store cannot tell is left out; `neuroexam_store_up` says why.
        this.reset();
        const all = await inTime(levels.deliveries(), []);
        for (const one of all) this.set({ target: one.target }, read(one));
      },
    });
  ofTargets('neuroexam_deliveries_waiting', 'Exams and notifications that are still to be sent.', (one) => one.waiting);
  ofTargets('neuroexam_deliveries_dead', 'Exams and notifications that were given up.', (one) => one.dead);
  ofTargets(
    'neuroexam_deliveries_oldest_waiting_seconds',
    'Age of the oldest that is still to be sent; 0 for none.',
    (one) => one.oldestWaitingMs / 1000,
  );
  gauge('neuroexam_store_up', 'Whether the store reads, takes writes and has room: 1 or 0.', () => isUp(levels));
}

function isUp({ checkStore }: Levels): Promise<number> {
  const asked = checkStore().then(
    () => 1,
    () => 0,
  );
  return inTime(asked, 0);
}

/** What was asked of the store, or something else when it is away or takes too long. */
async function inTime<T>(asked: Promise<T>, otherwise: T): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<T>((resolve) => {
    timer = setTimeout(() => resolve(otherwise), checkMs);
  });
  const answer = await Promise.race([asked.catch(() => otherwise), late]);
  clearTimeout(timer);
  return answer;
}
