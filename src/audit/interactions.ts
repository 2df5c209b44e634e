import type { Coding } from 'fhir/r4.js';

const restful = 'http://hl7.org/fhir/restful-interaction';
const dicom = 'http://dicom.nema.org/resources/ontology/DCM';

/** Displays as HL7's R4 code systems and DICOM PS3.16 (CID 400) have them. */
const rest: Coding = {
  system: 'http://terminology.hl7.org/CodeSystem/audit-event-type',
  code: 'rest',
  display: 'RESTful Operation',
};
const patientRecord: Coding = { system: dicom, code: '110110', display: 'Patient Record' };

const dataExport: Coding = { system: dicom, code: '110106', display: 'Export' };

interface InteractionRow {
  readonly type: Coding;
  readonly subtype: Coding;
  /** As a person would say it, of what was done to a record. */
  readonly said: string;
}

const restCoding = (code: string): Coding => ({ system: restful, code, display: code });
const restRow = (code: string, said: string): InteractionRow => ({
  type: rest,
  subtype: restCoding(code),
  said,
});

/**
 * What can be done, by the code of HL7's RESTful interaction; an erasure is a command, and the end of an export is reached by
 * the service itself, so that neither is a request, which their types say.
 */
const interactions = {
  create: restRow('create', 'Created'),
  update: restRow('update', 'Corrected'),
  delete: restRow('delete', 'Deleted'),
  read: restRow('read', 'Read'),
  vread: restRow('vread', 'Read one version'),
  search: restRow('search', 'Searched'),
  'history-instance': restRow('history-instance', 'Read the history'),
  'history-type': restRow('history-type', 'Read the history of a type'),
  operation: restRow('operation', 'Ran an operation'),
  erase: {
    type: patientRecord,
    subtype: restCoding('delete'),
    said: 'Erased for good',
  },
  'export-end': {
    type: dataExport,
    subtype: restCoding('operation'),
    said: 'Ended',
  },
} as const satisfies Record<string, InteractionRow>;

export type Interaction = keyof typeof interactions;
export const interactionNames = Object.keys(interactions) as readonly Interaction[];

export function isInteraction(name: string): name is Interaction {
  return Object.hasOwn(interactions, name);
}

export function interactionOf(name: Interaction): InteractionRow {
  return interactions[name];
}

/** Roles of the two ends. Source: DICOM PS3.16, CID 402. */
export const sourceRole: Coding = { system: dicom, code: '110153', display: 'Source Role ID' };
export const destinationRole: Coding = { system: dicom, code: '110152', display: 'Destination Role ID' };
