import { Gauge, type Registry } from 'prom-client';

/** What is read when somebody asks for the metrics. */
export interface Levels {
  readonly requests: () => number;
  readonly bodyBytes: () => number;
  readonly pendingWrites: () => number;
  readonly exports: () => number;
  /** When the tables for analysts were last brought up to date, ms since 1970; undefined for never. */
  readonly viewsRefreshedAt: () => number | undefined;
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
  gauge('neuroexam_store_up', 'Whether the store reads, takes writes and has room: 1 or 0.', () => isUp(levels));
}

async function isUp({ checkStore }: Levels): Promise<number> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<number>((resolve) => {
    timer = setTimeout(() => resolve(0), checkMs);
  });
  const asked = checkStore().then(
    () => 1,
    () => 0,
  );
  const up = await Promise.race([asked, late]);
  clearTimeout(timer);
  return up;
}
