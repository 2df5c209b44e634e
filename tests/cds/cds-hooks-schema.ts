/**
 * JSON Schemas of what a CDS service answers, written from the tables of CDS Hooks 2.0 (https://cds-hooks.hl7.org/2.0/):
 * "Discovery", "CDS Service Response", "Card Attributes", "Source", "Suggestion", "Action", "Link". What the tables say
 * in words stands as a rule: a summary of less than 140 characters, selectionBehavior wherever there are suggestions, a
 * resource for create and update, a resourceId for delete.
 */
const text = { type: 'string', minLength: 1 };
const url = { type: 'string', format: 'uri' };
const uuid = { type: 'string', format: 'uuid' };
const coding = { type: 'object', required: ['code', 'system'], properties: { code: text, system: url, display: text } };

const action = {
  type: 'object',
  required: ['type', 'description'],
  properties: { type: { enum: ['create', 'update', 'delete'] }, description: text, resource: { type: 'object' } },
  allOf: [
    {
      if: { properties: { type: { enum: ['create', 'update'] } } },
      // biome-ignore lint/suspicious/noThenProperty: `then` is a keyword of JSON Schema
      then: { required: ['resource'], properties: { resource: { required: ['resourceType'] } } },
      else: { required: ['resourceId'] },
    },
  ],
  additionalProperties: false,
};

const card = {
  type: 'object',
  required: ['summary', 'indicator', 'source'],
  properties: {
    uuid,
    summary: { ...text, maxLength: 139 },
    detail: text,
    indicator: { enum: ['info', 'warning', 'critical'] },
    source: {
      type: 'object',
      required: ['label'],
      properties: { label: text, url, icon: url, topic: coding },
      additionalProperties: false,
    },
    suggestions: {
      type: 'array',
      minItems: 1,
      items: {
        type: 'object',
        required: ['label'],
        properties: {
          label: text,
          uuid,
          isRecommended: { type: 'boolean' },
          actions: { type: 'array', items: action },
        },
        additionalProperties: false,
      },
    },
    selectionBehavior: { enum: ['at-most-one', 'any'] },
    overrideReasons: { type: 'array', items: coding },
    links: {
      type: 'array',
      items: {
        type: 'object',
        required: ['label', 'url', 'type'],
        properties: { type: { enum: ['absolute', 'smart'] } },
      },
    },
  },
  dependentRequired: { suggestions: ['selectionBehavior'] },
  additionalProperties: false,
};

export const responseSchema = {
  type: 'object',
  required: ['cards'],
  properties: { cards: { type: 'array', items: card }, systemActions: { type: 'array', items: action } },
  additionalProperties: false,
};

export const discoverySchema = {
  type: 'object',
  required: ['services'],
  properties: {
    services: {
      type: 'array',
      items: {
        type: 'object',
        required: ['hook', 'description', 'id'],
        properties: {
          hook: { ...text, pattern: '^[a-z]+(-[a-z]+)+$' },
          title: text,
          description: text,
          id: { ...text, pattern: '^[A-Za-z0-9._~-]+$' },
          prefetch: { type: 'object', additionalProperties: text },
          usageRequirements: text,
        },
        additionalProperties: false,
      },
    },
  },
};
