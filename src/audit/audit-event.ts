import type { AuditEvent, AuditEventAgent, AuditEventEntity, Coding, Reference } from 'fhir/r4.js';
import { softwareName } from '../fhir/device.ts';
import { fhirText, narrative, paragraph } from '../fhir/narrative.ts';
import { canonicalBase, systems } from '../terminology/systems.ts';
import type { AuditRecord, PatientReference } from './audit-record.ts';
import { destinationRole, interactionOf, sourceRole } from './interactions.ts';

const entityType = (code: string, display: string): Coding => ({
  system: 'http://terminology.hl7.org/CodeSystem/audit-entity-type',
  code,
  display,
});
const person = entityType('1', 'Person');
const systemObject = entityType('2', 'System Object');

const role = (code: string, display: string): Coding => ({
  system: 'http://terminology.hl7.org/CodeSystem/object-role',
  code,
  display,
});
const patientRole = role('1', 'Patient');
const resourceRole = role('4', 'Domain Resource');
const queryRole = role('24', 'Query');

const applicationServer: Coding = {
  system: 'http://terminology.hl7.org/CodeSystem/security-source-type',
  code: '4',
  display: 'Application Server',
};

const outcomes = { '0': 'success', '4': 'minor failure', '8': 'serious failure' } as const;

/**
 * An entry of the audit trail as an R4 AuditEvent, after IHE's Basic Audit Log Patterns 1.1.3: in a read the data flow
 * from the server to the client, in everything else the request counts as what flows.
 * @param n its number in the trail, from 1, which is its id
 */
export function auditEvent(n: number, record: AuditRecord): AuditEvent {
  const { type, subtype } = interactionOf(record.interaction);
  return {
    resourceType: 'AuditEvent',
    id: String(n),
    meta: { lastUpdated: record.at },
    text: narrative(paragraph(sentence(record))),
    type,
    subtype: [subtype],
    action: record.action,
    recorded: record.at,
    outcome: record.outcome,
    ...(record.reason === undefined ? {} : { outcomeDesc: record.reason }),
    agent: agentsOf(record),
    source: { observer: ownSoftware(record), type: [applicationServer] },
    ...withEntities(entitiesOf(record)),
  };
}

function agentsOf(record: AuditRecord): AuditEventAgent[] {
  const { client, user, address, interaction } = record;
  // Nobody asks for it then, and nobody is answered.
  if (interaction === 'export-end') {
    return [{ type: { coding: [sourceRole] }, who: ownSoftware(record), name: fhirText(client), requestor: true }];
  }
  const clientReceives = interaction === 'read' || interaction === 'vread';
  return [
    {
      type: { coding: [clientReceives ? destinationRole : sourceRole] },
      who: { identifier: { value: fhirText(client) } },
      name: fhirText(client),
      requestor: user === undefined,
      ...(address === undefined ? {} : { network: { address, type: '2' as const } }),
    },
    {
      type: { coding: [clientReceives ? sourceRole : destinationRole] },
      who: ownSoftware(record),
      requestor: false,
    },
    ...(user === undefined ? [] : [userAgent(fhirText(user))]),
  ];
}

function userAgent(user: string): AuditEventAgent {
  const participation = {
    system: 'http://terminology.hl7.org/CodeSystem/v3-ParticipationType',
    code: 'IRCP',
    display: 'information recipient',
  };
  return { type: { coding: [participation] }, who: { identifier: { value: user } }, name: user, requestor: true };
}

function ownSoftware({ software }: AuditRecord): Reference {
  return {
    type: 'Device',
    identifier: { system: `${canonicalBase}/NamingSystem/software`, value: softwareName },
    display: software === undefined ? softwareName : `${softwareName} ${software}`,
  };
}

function entitiesOf(record: AuditRecord): AuditEventEntity[] {
  const { exam, resource, job, patients = [], query, operation, request } = record;
  const detail = operation === undefined ? {} : { detail: [{ type: 'operation', valueString: fhirText(operation) }] };
  const entities: AuditEventEntity[] = [];
  if (exam !== undefined) {
    const what = { identifier: { system: systems.exam, value: exam }, display: `/exams/${exam}` };
    entities.push({ what, type: systemObject, role: resourceRole });
  }
  if (resource !== undefined) {
    entities.push({ what: { reference: resource }, type: systemObject, role: resourceRole });
  }
  if (job !== undefined) {
    entities.push({ what: { identifier: { value: job }, display: 'Bulk export' }, type: systemObject });
  }
  for (const patient of patients) entities.push({ what: referenceTo(patient), type: person, role: patientRole });
  if (query !== undefined) {
    entities.push({ type: systemObject, role: queryRole, query: Buffer.from(query, 'utf8').toString('base64') });
  }
  const [first] = entities;
  if (first === undefined) {
    if (operation !== undefined) entities.push({ type: systemObject, ...detail });
  } else {
    entities[0] = { ...first, ...detail };
  }
  if (request !== undefined) entities.push({ what: { identifier: { value: request } }, type: requestIdType });
  return entities;
}

const requestIdType: Coding = {
  system: 'https://profiles.ihe.net/ITI/BALP/CodeSystem/BasicAuditEntityType',
  code: 'XrequestId',
};

function referenceTo(patient: PatientReference): Reference {
  if ('reference' in patient) return { reference: fhirText(patient.reference) };
  const { system, value } = patient.identifier;
  return { identifier: { ...(system === undefined ? {} : { system }), value: fhirText(value) } };
}

/** R4 forbids empty lists. */
function withEntities(entity: AuditEventEntity[]): { entity?: AuditEventEntity[] } {
  return entity.length === 0 ? {} : { entity };
}

function sentence(record: AuditRecord): string {
  const { exam, resource, job, operation, outcome, reason, client, user, at } = record;
  const what = exam === undefined ? (resource ?? (job === undefined ? undefined : `export ${job}`)) : `exam ${exam}`;
  // A repeat of what is there creates nothing and reads it.
  const said =
    record.interaction === 'create' && record.action === 'R' ? 'Sent again' : interactionOf(record.interaction).said;
  const done = [said, operation, what].filter((part) => part !== undefined);
  const who = user === undefined ? client : `${client} for ${user}`;
  const end = reason === undefined ? outcomes[outcome] : `${outcomes[outcome]} (${reason})`;
  return `${done.join(' ')}, by ${who}, ${at}: ${end}.`;
}
