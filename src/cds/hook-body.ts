import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { keywordFault } from '../exam/faults/keyword-fault.ts';
import { HookInvalidError } from '../kernel/errors.ts';
import type { CdsService } from './services.ts';

/** What a client sends when a hook fires, as far as it is used. */
export interface HookBody {
  readonly hookInstance: string;
  readonly context: { readonly patientId: string; readonly encounterId?: string };
  readonly prefetch?: Readonly<Record<string, unknown>>;
}

export interface Feedback {
  readonly feedback: readonly { readonly card: string; readonly outcome: 'accepted' | 'overridden' }[];
}

const uuid = {
  type: 'string',
  pattern: '^[0-9A-Fa-f]{8}(-[0-9A-Fa-f]{4}){3}-[0-9A-Fa-f]{12}$',
  description: 'a UUID',
} as const;
const resourceId = {
  type: 'string',
  pattern: '^[A-Za-z0-9.-]{1,64}$',
  description: 'the id of a FHIR resource',
} as const;
const text = (maxLength: number) => ({ type: 'string', maxLength, description: 'a text' });

/** Elements beyond these are left alone, as the standard asks. Source: CDS Hooks 2.0, calling a CDS service. */
function hookSchema({ hook }: Pick<CdsService, 'hook'>) {
  return {
    type: 'object',
    required: ['hook', 'hookInstance', 'context'],
    properties: {
      hook: { const: hook, description: `the hook of this service: ${hook}` },
      hookInstance: uuid,
      fhirServer: text(2000),
      fhirAuthorization: { type: 'object', description: 'which is not used here' },
      context: {
        type: 'object',
        description: `the context of ${hook}`,
        required: ['userId', 'patientId', ...(hook === 'encounter-discharge' ? ['encounterId'] : [])],
        properties: {
          userId: {
            type: 'string',
            pattern: '^(Practitioner|PractitionerRole|Patient|RelatedPerson)/[A-Za-z0-9.-]{1,64}$',
            description: 'who looks, such as "Practitioner/7"',
          },
          patientId: resourceId,
          encounterId: resourceId,
        },
      },
      prefetch: { type: 'object', description: 'what was fetched beforehand' },
      extension: { type: 'object', description: 'extensions' },
    },
  };
}

/** Source: CDS Hooks 2.0, feedback. */
const feedbackSchema = {
  type: 'object',
  required: ['feedback'],
  properties: {
    feedback: {
      type: 'array',
      minItems: 1,
      maxItems: 200,
      description: 'what became of each card',
      items: {
        type: 'object',
        required: ['card', 'outcome', 'outcomeTimestamp'],
        properties: {
          card: uuid,
          outcome: { enum: ['accepted', 'overridden'], type: 'string' },
          outcomeTimestamp: {
            type: 'string',
            pattern: '^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2}(\\.\\d+)?)?(Z|[+-]\\d{2}:\\d{2})$',
            description: 'date and time with a zone',
          },
          acceptedSuggestions: {
            type: 'array',
            maxItems: 200,
            description: 'the suggestions that were accepted',
            items: { type: 'object', required: ['id'], properties: { id: uuid } },
          },
          overrideReason: { type: 'object', description: 'why the card was not followed' },
        },
        if: { required: ['outcome'], properties: { outcome: { const: 'accepted' } } },
        // biome-ignore lint/suspicious/noThenProperty: `then` is a keyword of JSON Schema
        then: { required: ['acceptedSuggestions'] },
      },
    },
  },
};

const ajv = new Ajv2020({
  allErrors: true,
  verbose: true,
  ownProperties: true,
  strictTypes: false,
  strictRequired: false,
});
const compiled = new Map<string, ValidateFunction>();

function checked<T>(key: string, schema: () => object, body: unknown): T {
  let validate = compiled.get(key);
  if (validate === undefined) {
    validate = ajv.compile(schema());
    compiled.set(key, validate);
  }
  if (validate(body)) return body as T;
  // `if` only says that its branch failed, which the branch has said itself.
  throw new HookInvalidError((validate.errors ?? []).filter(({ keyword }) => keyword !== 'if').map(keywordFault));
}

/** @throws HookInvalidError with every fault */
export function readHookBody(service: CdsService, body: unknown): HookBody {
  return checked<HookBody>(service.hook, () => hookSchema(service), body);
}

/** @throws HookInvalidError with every fault */
export function readFeedback(body: unknown): Feedback {
  return checked<Feedback>('feedback', () => feedbackSchema, body);
}
