import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import { type RefusalReason, refusalReasons } from '../limits/load-gate.ts';

/** What is the same for as long as the process runs. */
export interface BuildInfo {
  readonly version: string;
  readonly modelVersion: string;
  readonly store: string;
}

/**
 * What is counted, in the text format of Prometheus. Labels take values from lists of the program alone (routes as
 * patterns, codes of faults), never from a request, so that they stay few and say nothing of anybody.
 */
export interface ServiceMetrics {
  readonly registry: Registry;
  readonly requests: Counter<'method' | 'route' | 'status'>;
  /** Seconds. */
  readonly requestSeconds: Histogram<'method' | 'route' | 'status'>;
  readonly problems: Counter<'code'>;
  readonly refusals: Counter<'reason'>;
  readonly exams: Counter<'event'>;
  /** Seconds from the hand-over to the store until the exam is on disk. */
  readonly writeSeconds: Histogram<'outcome'>;
  readonly assessments: Counter<'conclusion'>;
  /** Seconds. */
  readonly assessmentSeconds: Histogram;
}

const requestBuckets = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30];
const writeBuckets = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 5, 10];
const assessmentBuckets = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 1];

export function createServiceMetrics(build: BuildInfo): ServiceMetrics {
  const registry = new Registry();
  const registers = [registry];
  collectDefaultMetrics({ register: registry });
  new Gauge({
    name: 'neuroexam_build_info',
    help: 'Version of the service, of its clinical model, of Node, and kind of store; always 1.',
    labelNames: ['version', 'model_version', 'node_version', 'store'],
    registers,
  }).set(
    { version: build.version, model_version: build.modelVersion, node_version: process.version, store: build.store },
    1,
  );
  const requestLabels = ['method', 'route', 'status'] as const;
  const refusals = new Counter({
    name: 'neuroexam_refusals_total',
    help: 'Requests refused because there was too much to do, by what there was too much of.',
    labelNames: ['reason'],
    registers,
  });
  const reasons: readonly (RefusalReason | 'rate')[] = [...refusalReasons, 'rate'];
  for (const reason of reasons) refusals.inc({ reason }, 0);
  const exams = new Counter({
    name: 'neuroexam_exams_total',
    help: 'Exams kept since the start of the process: created or corrected.',
    labelNames: ['event'],
    registers,
  });
  for (const event of ['created', 'corrected']) exams.inc({ event }, 0);
  return {
    registry,
    requests: new Counter({
      name: 'http_requests_total',
      help: 'Requests answered, by method, pattern of the route and class of the status.',
      labelNames: requestLabels,
      registers,
    }),
    requestSeconds: new Histogram({
      name: 'http_request_duration_seconds',
      help: 'Time from the head of a request to the end of its answer.',
      labelNames: requestLabels,
      buckets: requestBuckets,
      registers,
    }),
    problems: new Counter({
      name: 'neuroexam_problems_total',
      help: 'Requests answered with an error, by its code.',
      labelNames: ['code'],
      registers,
    }),
    refusals,
    exams,
    writeSeconds: new Histogram({
      name: 'neuroexam_store_write_duration_seconds',
      help: 'Time until an exam that was handed to the store is on disk, or refused.',
      labelNames: ['outcome'],
      buckets: writeBuckets,
      registers,
    }),
    assessments: new Counter({
      name: 'neuroexam_assessments_total',
      help: 'Exams assessed, by the conclusion of the localisation.',
      labelNames: ['conclusion'],
      registers,
    }),
    assessmentSeconds: new Histogram({
      name: 'neuroexam_assessment_duration_seconds',
      help: 'Time to assess one exam: localisation, causes, red flags, tests, presentation.',
      buckets: assessmentBuckets,
      registers,
    }),
  };
}
