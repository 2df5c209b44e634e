import type { ApiOperation } from './operation.ts';

const text = 'text/plain';

export const metricsOperations: readonly ApiOperation[] = [
  {
    method: 'get',
    path: '/metrics',
    id: 'readMetrics',
    area: 'Service',
    summary: 'What is counted and measured, in the text format of Prometheus',
    description: 'Where `METRICS_PORT` is set it is on that port instead, and not here.',
    answers: { 200: { description: 'The metrics.', content: { [text]: { type: 'string' } } } },
    calls: [
      {
        name: 'all',
        says: 'Every metric.',
        status: 200,
        answer: {
          type: text,
          value: '# HELP process_cpu_user_seconds_total Total user CPU time spent in seconds.',
          isExcerpt: true,
        },
      },
    ],
  },
];
