import type { RequestHandler } from 'express';
import { createLoadGate, type LoadLimits } from './limits/load-gate.ts';
import { readProcess } from './limits/process-readings.ts';
import { limitRate } from './limits/rate-limit.ts';
import { timeLimit } from './limits/time-limit.ts';
import { countRequests } from './metrics/count-requests.ts';
import { addGauges, type Levels } from './metrics/gauges.ts';
import type { ServiceMetrics } from './metrics/service-metrics.ts';

/** How the service keeps going and is watched. */
export interface Operation {
  readonly metrics: ServiceMetrics;
  /** Whether the metrics are served with all else, and not on a port of their own. */
  readonly servesMetrics: boolean;
  /** Whose `X-Forwarded-For` is believed. */
  readonly trustProxy: string | number | false;
  /** Look at a request before anything is read of it. */
  readonly guards: readonly RequestHandler[];
  /** Stands behind the access control, since it counts by client. */
  readonly rateLimit: RequestHandler;
  stop(): void;
}

export interface OperationSettings {
  readonly metrics: unknown;
  readonly trustProxy: string | number | false;
  readonly bodyLimitBytes: number;
  readonly loadLimits: LoadLimits;
  readonly rateLimitPerMinute: number;
  readonly requestTimeoutSeconds: number;
}

export function createOperation(
  settings: OperationSettings,
  metrics: ServiceMetrics,
  levels: Omit<Levels, 'requests' | 'bodyBytes'>,
): Operation {
  const { loadLimits, bodyLimitBytes } = settings;
  const process = readProcess(loadLimits.memoryMb);
  const readings = { ...process, pendingWrites: levels.pendingWrites };
  const gate = createLoadGate(loadLimits, bodyLimitBytes, readings, (reason) => metrics.refusals.inc({ reason }));
  addGauges(metrics.registry, { ...levels, requests: () => gate.requests, bodyBytes: () => gate.bodyBytes });
  return {
    metrics,
    servesMetrics: settings.metrics === undefined,
    trustProxy: settings.trustProxy,
    guards: [countRequests(metrics), gate.handle, timeLimit(settings.requestTimeoutSeconds)],
    rateLimit: limitRate(settings.rateLimitPerMinute, () => metrics.refusals.inc({ reason: 'rate' })),
    stop: () => process.stop(),
  };
}
