import { systems } from '../../terminology/systems.ts';
import { notTestedReasons } from '../finding.ts';
import { closedObject, definition, type JsonSchema } from './json-schema.ts';

/** One FHIR id; source: FHIR R4, datatype id. */
const id = '[A-Za-z0-9\\-.]{1,64}';

/** Text without control characters that has something other than spaces in it; source: FHIR R4, datatype string. */
const textPattern = '^(?=\\s*\\S)[^\\u0000-\\u0008\\u000B\\u000C\\u000E-\\u001F\\uFFFE\\uFFFF]*$';

function text(maxLength: number, description: string): JsonSchema {
  return { type: 'string', minLength: 1, maxLength, pattern: textPattern, description };
}

/**
 * A FHIR Reference to one of these resource types: literal (relative, absolute or urn:uuid) or by identifier.
 * Fragments are not taken, since there is nothing that they could point into.
 */
function reference(types: readonly string[]): JsonSchema {
  const oneOf = types.join('|');
  return closedObject(
    {
      reference: {
        type: 'string',
        minLength: 1,
        maxLength: 1000,
        pattern: `^(?:(?:https?://[^\\s#?]+/)?(?:${oneOf})/${id}(?:/_history/${id})?|urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12})$`,
        description: `a reference such as "${types[0]}/4711", an absolute URL of a ${types.join(' or ')}, or "urn:uuid:..."`,
      },
      type: { type: 'string', enum: [...types], description: 'the type of the resource referred to' },
      identifier: definition('identifier'),
      display: text(200, 'a short text that names the resource'),
    },
    [],
    {
      description: `a FHIR Reference to a ${types.join(', ')}`,
      anyOf: [{ required: ['reference'] }, { required: ['identifier'] }],
    },
  );
}

const identifierSystem: JsonSchema = {
  type: 'string',
  minLength: 3,
  maxLength: 500,
  pattern: '^[A-Za-z][A-Za-z0-9+.\\-]*:[^\\s<>"{}|\\\\^`]+$',
  description: 'an absolute URI that names the identifier system, such as "https://clinic.example/exams"',
};

const identifierValue: JsonSchema = {
  type: 'string',
  minLength: 1,
  maxLength: 200,
  pattern: '^[^\\u0000-\\u0020](?:[^\\u0000-\\u001F]*[^\\u0000-\\u0020])?$',
  description: 'the identifier itself, without leading or trailing spaces',
};

/** Definitions that several parts of the exam share. */
export const datatypeDefinitions: Readonly<Record<string, JsonSchema>> = {
  side: { type: 'string', enum: ['left', 'right', 'both'], description: 'left, right or both' },
  notTested: {
    type: 'string',
    enum: [...notTestedReasons],
    description: 'why the item was not tested; stands instead of its value',
  },
  note: text(2000, 'free text'),
  identifier: closedObject({ system: identifierSystem, value: identifierValue }, ['value'], {
    description: 'a FHIR Identifier of system and value',
  }),
  examIdentifier: closedObject({ system: identifierSystem, value: identifierValue }, ['system', 'value'], {
    description: "the sender's own identifier of the exam; a repeat is the same exam",
  }),
  subject: reference(['Patient']),
  encounter: reference(['Encounter']),
  performer: reference(['Practitioner', 'PractitionerRole', 'Organization', 'CareTeam', 'Patient', 'RelatedPerson']),
  examinedAt: {
    type: 'string',
    maxLength: 40,
    pattern:
      '^[0-9]{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12][0-9]|3[01])T(?:[01][0-9]|2[0-3]):[0-5][0-9]:[0-5][0-9](?:\\.[0-9]{1,9})?(?:Z|[+\\-](?:0[0-9]|1[0-3]):[0-5][0-9]|[+\\-]14:00)$',
    description:
      'date, time with seconds and time zone, such as "2026-03-14T10:20:00+01:00"; from 1900, not in the future',
  },
  shortText: text(300, 'a short text'),
  quantity: closedObject(
    {
      value: { type: 'number', minimum: -1e12, maximum: 1e12, description: 'the number' },
      comparator: { type: 'string', enum: ['<', '<=', '>=', '>'], description: 'less than, greater than' },
      unit: text(60, 'the unit in print'),
      system: { const: systems.ucum, description: `the system of the unit: ${systems.ucum}` },
      code: {
        type: 'string',
        minLength: 1,
        maxLength: 60,
        pattern: '^[!-~]+$',
        description: 'the UCUM code of the unit',
      },
    },
    ['value'],
    {
      description: 'a FHIR Quantity with a UCUM unit',
      anyOf: [{ required: ['code'] }, { required: ['unit'] }],
    },
  ),
};
