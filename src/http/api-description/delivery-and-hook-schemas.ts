import { closedObject, type JsonSchema } from '../../exam/schema/json-schema.ts';
import { deliveryStates } from '../../store/outbox/outbox-repository.ts';
import { componentSchema } from './operation.ts';

const text = { type: 'string' } as const;
const count = { type: 'integer', minimum: 0 } as const;
const instant = { type: 'string', format: 'date-time' } as const;
const texts = { type: 'array', items: text } as const;
const openObject = (properties: Readonly<Record<string, JsonSchema>>, required: readonly string[]): JsonSchema => ({
  type: 'object',
  properties,
  required,
  additionalProperties: true,
});
const deliveries = { type: 'array', items: componentSchema('Delivery') } as const;

const suggestion = openObject(
  {
    label: text,
    uuid: text,
    isRecommended: { type: 'boolean' },
    actions: {
      type: 'array',
      items: openObject({ type: text, description: text, resource: componentSchema('Resource') }, ['type']),
    },
  },
  ['label'],
);

/** What is answered about deliveries, and what CDS Hooks 2.0 and SMART App Launch 2.2.0 have, as far as it is used. */
export const deliveryAndHookSchemas: Readonly<Record<string, JsonSchema>> = {
  Delivery: closedObject(
    {
      target: text,
      version: { type: 'integer', minimum: 1, description: 'version of the exam' },
      state: { ...text, enum: [...deliveryStates] },
      attempts: count,
      nextAttemptAt: instant,
      settledAt: instant,
      lastStatus: { type: 'integer', description: 'status that the other side answered' },
      reason: text,
      issues: texts,
    },
    ['target', 'version', 'state', 'attempts'],
  ),
  Deliveries: closedObject({ deliveries }, ['deliveries']),
  RetriedDeliveries: closedObject({ retried: count, deliveries }, ['retried', 'deliveries']),
  CdsServices: closedObject(
    {
      services: {
        type: 'array',
        items: openObject({ id: text, hook: text, title: text, description: text }, ['id', 'hook', 'description']),
      },
    },
    ['services'],
  ),
  HookCall: openObject(
    {
      hook: text,
      hookInstance: { ...text, format: 'uuid' },
      context: openObject({ userId: text, patientId: text, encounterId: text }, ['userId', 'patientId']),
      prefetch: { type: 'object', additionalProperties: true },
    },
    ['hook', 'hookInstance', 'context'],
  ),
  Cards: closedObject(
    {
      cards: {
        type: 'array',
        items: openObject(
          {
            uuid: text,
            summary: text,
            detail: { ...text, description: 'Markdown' },
            indicator: { ...text, enum: ['info', 'warning', 'critical'] },
            source: openObject({ label: text, url: text }, ['label']),
            suggestions: { type: 'array', items: suggestion },
            selectionBehavior: text,
          },
          ['summary', 'indicator', 'source'],
        ),
      },
    },
    ['cards'],
  ),
  Feedback: openObject(
    {
      feedback: {
        type: 'array',
        minItems: 1,
        maxItems: 200,
        items: openObject(
          {
            card: { ...text, format: 'uuid' },
            outcome: { ...text, enum: ['accepted', 'overridden'] },
            outcomeTimestamp: instant,
          },
          ['card', 'outcome', 'outcomeTimestamp'],
        ),
      },
    },
    ['feedback'],
  ),
  SmartConfiguration: openObject({ issuer: text, token_endpoint: text, scopes_supported: texts, capabilities: texts }, [
    'token_endpoint',
    'capabilities',
  ]),
};
