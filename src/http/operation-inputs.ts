/** Datatypes of the input parameters that are taken. */
export type InputType =
  | 'boolean'
  | 'canonical'
  | 'code'
  | 'Coding'
  | 'CodeableConcept'
  | 'date'
  | 'dateTime'
  | 'integer'
  | 'string'
  | 'uri'
  | 'ValueSet';

/** The input of one operation of HL7: what is taken, and why the rest is not. */
export interface OperationInputs {
  readonly takes: Readonly<Record<string, InputType>>;
  /** Names of those that may be there several times. */
  readonly several?: readonly string[];
  readonly refuses: Readonly<Record<string, string>>;
}

const noHistory = 'Only the present content is here, so nothing can be asked of another day.';
const oneLanguage = 'All displays are in English.';
const oneVersion = 'One version of each code system is here; it can be asked for by version.';
const noContext = 'Value sets are asked for by address; no element is known by its place in a profile.';

/**
 * The operations, by the id of their definition in FHIR R4.
 * Source: http://hl7.org/fhir/R4/operationslist.html; a test compares every name and type with the definitions.
 */
export const operationInputs = {
  'CodeSystem-lookup': {
    takes: { code: 'code', system: 'uri', version: 'string', coding: 'Coding', property: 'code' },
    several: ['property'],
    refuses: { date: noHistory, displayLanguage: oneLanguage },
  },
  'CodeSystem-subsumes': {
    takes: {
      codeA: 'code',
      codeB: 'code',
      system: 'uri',
      version: 'string',
      codingA: 'Coding',
      codingB: 'Coding',
    },
    refuses: {},
  },
  'CodeSystem-validate-code': {
    takes: {
      url: 'uri',
      code: 'code',
      version: 'string',
      display: 'string',
      coding: 'Coding',
      codeableConcept: 'CodeableConcept',
      abstract: 'boolean',
    },
    refuses: {
      codeSystem: 'Codes are checked against the code systems that are published here.',
      date: noHistory,
      displayLanguage: oneLanguage,
    },
  },
  'ValueSet-expand': {
    takes: {
      url: 'uri',
      valueSet: 'ValueSet',
      valueSetVersion: 'string',
      filter: 'string',
      offset: 'integer',
      count: 'integer',
      includeDesignations: 'boolean',
      includeDefinition: 'boolean',
      activeOnly: 'boolean',
      excludeNested: 'boolean',
      excludeNotForUI: 'boolean',
      excludePostCoordinated: 'boolean',
      'exclude-system': 'canonical',
    },
    several: ['exclude-system'],
    refuses: {
      context: noContext,
      contextDirection: noContext,
      date: noHistory,
      designation: 'Designations are few; all of them come with includeDesignations.',
      displayLanguage: oneLanguage,
      'system-version': oneVersion,
      'check-system-version': oneVersion,
      'force-system-version': oneVersion,
    },
  },
  'ValueSet-validate-code': {
    takes: {
      url: 'uri',
      valueSet: 'ValueSet',
      valueSetVersion: 'string',
      code: 'code',
      system: 'uri',
      systemVersion: 'string',
      display: 'string',
      coding: 'Coding',
      codeableConcept: 'CodeableConcept',
      abstract: 'boolean',
    },
    refuses: { context: noContext, date: noHistory, displayLanguage: oneLanguage },
  },
  'ConceptMap-translate': {
    takes: {
      url: 'uri',
      conceptMapVersion: 'string',
      code: 'code',
      system: 'uri',
      version: 'string',
      source: 'uri',
      coding: 'Coding',
      codeableConcept: 'CodeableConcept',
      target: 'uri',
      targetsystem: 'uri',
      reverse: 'boolean',
    },
    refuses: {
      conceptMap: 'Codes are translated by the maps that are published here.',
      dependency: 'Every match is given, whatever it depends on; the map itself states the condition.',
    },
  },
  'Measure-evaluate-measure': {
    takes: {
      periodStart: 'date',
      periodEnd: 'date',
      measure: 'string',
      reportType: 'code',
      subject: 'string',
    },
    refuses: {
      practitioner: 'Exams are counted for all examiners together.',
      lastReceivedOn: 'Every report is worked out anew; there is no earlier one to go on from.',
    },
  },
} as const satisfies Record<string, OperationInputs>;

export type OperationId = keyof typeof operationInputs;
