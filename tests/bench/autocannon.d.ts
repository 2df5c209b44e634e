// The package has no types of its own; these are the parts that the benchmarks use.
declare module 'autocannon' {
  export interface Request {
    method?: string;
    path?: string;
    headers?: Record<string, string>;
    body?: string | Buffer;
    setupRequest?: (request: Request) => Request;
  }
  export interface Options {
    url: string;
    connections: number;
    duration: number;
    overallRate?: number;
    requests: Request[];
  }
  export interface Result {
    requests: { average: number; total: number };
    latency: { p50: number; p99: number; mean: number };
    errors: number;
    timeouts: number;
    non2xx: number;
    '2xx': number;
    duration: number;
  }
  export default function autocannon(options: Options): Promise<Result>;
}
