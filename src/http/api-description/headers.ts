import type { JsonSchema } from '../../exam/schema/json-schema.ts';

/** Headers of answers, as components of the document. */
export const apiHeaders = {
  'X-Request-Id': {
    description: 'Names the request in the log: the trace id of `traceparent` where one was sent.',
    schema: { type: 'string' },
  },
  ETag: {
    description: 'Version of what is answered, such as `W/"1"`; a correction sends it back as `If-Match`.',
    schema: { type: 'string', pattern: '^W/"[1-9][0-9]*"$' },
  },
  Location: {
    description: 'Address of what was kept, or of the exam that is kept in its place.',
    schema: { type: 'string', format: 'uri-reference' },
  },
  'Last-Modified': { description: 'When this version was kept.', schema: { type: 'string' } },
  'Content-Location': { description: 'Address at which to ask how far it is.', schema: { type: 'string' } },
  'Retry-After': { description: 'Seconds after which a repeat makes sense.', schema: { type: 'integer', minimum: 0 } },
  'X-Progress': { description: 'How far it is, in words.', schema: { type: 'string' } },
  Expires: { description: 'Until when the files can be fetched.', schema: { type: 'string' } },
  'Cache-Control': { description: 'Whether and how long the answer may be kept.', schema: { type: 'string' } },
  Vary: { description: 'Which request headers the answer depends on.', schema: { type: 'string' } },
} as const satisfies Record<string, { description: string; schema: JsonSchema }>;

export type ApiHeader = keyof typeof apiHeaders;
