/** Every way in which a request as a whole can fail, with its title. Which HTTP status each has is known to `http`. */
export const errorTitles = {
  NOT_JSON: 'Not usable as JSON',
  TOO_DEEP: 'Nested too deeply',
  BAD_REQUEST: 'Bad request',
  UNAUTHENTICATED: 'Access token needed',
  INVALID_TOKEN: 'Access token not valid',
  INSUFFICIENT_SCOPE: 'Not allowed',
  NOT_FOUND: 'Not found',
  ERASED: 'Erased',
  METHOD_NOT_ALLOWED: 'Method not allowed',
  NOT_ACCEPTABLE: 'Not acceptable',
  IDENTIFIER_IN_USE: 'Identifier in use',
  VERSION_MISMATCH: 'Not the current version',
  PREFETCH_MISSING: 'Prefetch missing',
  BODY_TOO_LARGE: 'Body too large',
  MEDIA_TYPE: 'Unsupported media type',
  EXAM_INVALID: 'Invalid exam',
  HOOK_INVALID: 'Invalid hook request',
  PRACTICE_INVALID: 'Invalid practice request',
  VIEW_INVALID: 'Invalid view',
  VIEW_FAILED: 'View without an answer',
  MEASURE_INVALID: 'Invalid measure',
  MEASURE_FAILED: 'Measure without an answer',
  SUBSCRIPTION_INVALID: 'Invalid subscription',
  PRECONDITION_REQUIRED: 'Precondition required',
  RATE_LIMITED: 'Too many requests',
  UNEXPECTED: 'Unexpected error',
  STORE_CORRUPT: 'Store damaged',
  STORE_UNAVAILABLE: 'Store not available',
  OVERLOADED: 'Too much to do',
  TIMED_OUT: 'Not answered in time',
  STORE_FULL: 'No room left',
  ACCESS_UNAVAILABLE: 'Access tokens cannot be checked',
} as const satisfies Record<string, string>;

export type ErrorCode = keyof typeof errorTitles;

/**
 * Every kind of fault that the content of a request can have, with its meaning. The codes are stable and part of the
 * API; the meanings are published with them.
 */
export const faultCodes = {
  REQUIRED: 'Something that must be given is missing.',
  UNKNOWN_PROPERTY: 'The object takes no property of this name.',
  UNKNOWN_KEY: 'No such key, code or value is known here.',
  WRONG_SECTION: 'The key is known but belongs in another section or list.',
  WRONG_PLACE_PROPERTY: 'The place is known but belongs in another property.',
  WRONG_VALUE_PROPERTY: 'The value was given under a property that this item or result does not take.',
  WRONG_TYPE: 'The value has another JSON type than expected.',
  FORMAT: 'The text has another form than expected.',
  DATE: 'The time is no possible time, or lies in the future.',
  OUT_OF_RANGE: 'The number lies outside what is possible.',
  UNIT: 'The unit is missing, unknown, or cannot be converted to the one expected.',
  VALUE_MISSING: 'Neither a value nor a reason for its absence is given.',
  VALUE_AND_NOT_TESTED: 'A value stands together with a reason for its absence.',
  ONLY_ONE: 'Several properties are given of which only one may be.',
  SIDE_NOT_APPLICABLE: 'The item lies in the midline and takes no side.',
  SITE_NOT_APPLICABLE: 'The item has its own place and takes no site.',
  REPEATED: 'A list that takes each thing once has it twice.',
  CONTRADICTION: 'Two statements of the examination cannot both be true.',
  LIMB_ABSENT: 'Something was stated of a part of the body that is absent.',
  NOTHING_COVERED: 'A statement that the rest was normal speaks of nothing that could be examined.',
  OTHER_PATIENT: 'The examination is of another person than the one that was asked about.',
  OTHER_EXAM: 'A correction carries the identifier of another examination.',
  NOT_A_CORRECTION: 'A correction does not say that it amends the examination or takes it back.',
  TOO_LARGE: 'The list, text, object or body is larger than is taken.',
  INVALID: 'The value is not as the schema asks; too much else was wrong to say more.',
  MORE_FAULTS: 'There are more faults than are listed.',
} as const satisfies Record<string, string>;

export type FaultCode = keyof typeof faultCodes;
