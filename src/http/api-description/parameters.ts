import { bundleTypes } from '../../fhir/bundle-forms.ts';
import { spellings } from '../exam-steps.ts';
import type { ApiParameter } from './operation.ts';

const text = { type: 'string' } as const;
const instant = { type: 'string', format: 'date-time' } as const;

/** Parameters that several operations take, as components of the document. */
export const apiParameters = {
  examId: {
    name: 'id',
    in: 'path',
    description: 'Id of an exam, as `Location` gave it: a UUID made from the identifier.',
    schema: { type: 'string', format: 'uuid' },
  },
  resourceId: {
    name: 'id',
    in: 'path',
    description: 'Id of the resource.',
    schema: { type: 'string', pattern: '^[A-Za-z0-9.-]{1,64}$' },
  },
  exportId: {
    name: 'id',
    in: 'path',
    description: 'Id of an export, the end of its `Content-Location`.',
    schema: { type: 'string', format: 'uuid' },
  },
  resourceVersion: {
    name: 'version',
    in: 'path',
    description: 'Version of the resource, from 1.',
    schema: { type: 'string', pattern: '^[1-9][0-9]{0,8}$' },
  },
  version: {
    name: 'version',
    in: 'query',
    description: 'Version of the exam, from 1; the current one when absent.',
    schema: { type: 'integer', minimum: 1, maximum: 999_999_999 },
  },
  bundleType: {
    name: 'type',
    in: 'query',
    description: 'Kind of Bundle: to send on, to read at once, or as a report.',
    schema: { type: 'string', enum: [...bundleTypes], default: 'transaction' },
  },
  spelling: {
    name: 'spelling',
    in: 'query',
    description: 'Spelling of the prose; stands above `Accept-Language`.',
    schema: { type: 'string', enum: [...spellings] },
  },
  acceptLanguage: {
    name: 'Accept-Language',
    in: 'header',
    description: '`en-US` asks for American spelling; anything else gives British.',
    schema: text,
  },
  ifMatch: {
    name: 'If-Match',
    in: 'header',
    required: true,
    description: 'ETag of the version that is corrected. Without it the answer is 428.',
    schema: { type: 'string', pattern: '^(W/)?"[1-9][0-9]{0,8}"$' },
  },
  ifNoneMatch: {
    name: 'If-None-Match',
    in: 'header',
    description: 'ETag of a version that the caller has; the answer is then 304 without a body.',
    schema: text,
  },
  prefer: {
    name: 'Prefer',
    in: 'header',
    description: '`handling=strict` refuses a parameter that is not understood; it is otherwise told and left out.',
    schema: { type: 'string', enum: ['handling=strict', 'handling=lenient'] },
  },
  preferAsync: {
    name: 'Prefer',
    in: 'header',
    required: true,
    description: '`respond-async`; with `handling=lenient` what is not supported is left out and told.',
    schema: { type: 'string', enum: ['respond-async', 'respond-async, handling=lenient'] },
  },
  format: {
    name: '_format',
    in: 'query',
    description: 'JSON by any of its names; there is no other format.',
    schema: { type: 'string', enum: ['json', 'application/json', 'application/fhir+json', 'text/json'] },
  },
  pretty: {
    name: '_pretty',
    in: 'query',
    description: '`true` indents the answer.',
    schema: { type: 'string', enum: ['true', 'false'] },
  },
  summaryOfOne: {
    name: '_summary',
    in: 'query',
    description: 'How much of the resource is wanted.',
    schema: { type: 'string', enum: ['true', 'text', 'data', 'false'] },
  },
  elements: {
    name: '_elements',
    in: 'query',
    description: 'Names of the elements that are wanted, with commas between.',
    schema: text,
  },
  historyCount: {
    name: '_count',
    in: 'query',
    description: 'Versions on a page; more than 500 are 500.',
    schema: { type: 'integer', minimum: 1, maximum: 999_999_999, default: 50 },
  },
  since: { name: '_since', in: 'query', description: 'Only what changed after this instant.', schema: instant },
  cursor: {
    name: '_cursor',
    in: 'query',
    description: 'Where a page begins: taken from a `next` link, never made up.',
    schema: text,
  },
  header: {
    name: 'header',
    in: 'query',
    description: 'Whether a CSV begins with the names of the columns.',
    schema: { type: 'string', enum: ['true', 'false'], default: 'true' },
  },
  patient: {
    name: 'patient',
    in: 'query',
    description: 'Only rows about this patient: a reference such as `Patient/4711`.',
    schema: { type: 'string', pattern: '^(\\S+/)?Patient/[A-Za-z0-9.-]{1,64}$' },
  },
  limit: {
    name: '_limit',
    in: 'query',
    description: 'Most rows.',
    schema: { type: 'integer', minimum: 1, maximum: 999_999_999 },
  },
} as const satisfies Record<string, ApiParameter>;

export type SharedParameter = keyof typeof apiParameters;
