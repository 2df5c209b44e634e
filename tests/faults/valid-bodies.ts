import { readFileSync } from 'node:fs';
import { inventExams } from '../../src/cli/simulated/invented-exams.ts';
import { simulationModel } from '../../src/cli/simulated/simulated-patient.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { questionnaireResponse } from '../../src/questionnaire/write-response.ts';
import { compiledByBuild, root } from '../support/built.ts';

export interface ValidBodies {
  readonly exams: readonly object[];
  /** What the operations take, by the end of their path. */
  readonly parameters: Readonly<Record<string, readonly object[]>>;
  readonly measures: readonly object[];
  readonly subscriptions: readonly object[];
  /** What a client of CDS Hooks sends when a hook fires, and what became of its cards. */
  readonly hooks: readonly object[];
  readonly feedback: readonly object[];
  /** By the end of the path; the patient is put in by who has one. */
  readonly practice: Readonly<Record<string, readonly object[]>>;
  readonly forms: readonly string[];
}

const local = 'https://neuroexam-fhir.example/fhir';
const json = (path: string) => JSON.parse(readFileSync(`${root}${path}`, 'utf8')) as Record<string, unknown>;
const parameters = (...parameter: object[]) => ({ resourceType: 'Parameters', parameter });

const examinedItems = [
  { item: 'power/ankle-dorsiflexion', side: 'both' },
  { item: 'sensation/pinprick', side: 'left', dermatome: 'L5' },
];

/** Bodies that are taken as they are, to be spoilt: invented exams, and what each operation asks for. */
export function validBodies(count: number, seed: number): ValidBodies {
  const compiled = compiledByBuild();
  const model = simulationModel(createExamReader(compiled?.validators), compiled?.model?.states);
  const made = [...inventExams(model, { count, seed, until: new Date('2026-01-01T00:00:00Z') })];
  const measures = ['neuropathy-signs', 'red-flag-minutes', 'section-documentation'].map((name) =>
    json(`profiles/measures/Measure-${name}.json`),
  );
  const reader = createExamReader(compiled?.validators);
  const responses = made.slice(0, 8).map(({ exam }) => {
    const options = { purpose: 'record', now: new Date('2026-01-01T00:00:00Z') } as const;
    return questionnaireResponse(reader.read(exam, options));
  });
  const hookInstance = 'd1577c69-dfbe-44ad-ba6d-3e05e953b2ea';
  const context = { userId: 'Practitioner/7', patientId: 'invented-1', encounterId: 'invented-1' };
  const hooks = ['patient-view', 'encounter-discharge'].flatMap((hook) => [
    { hook, hookInstance, context },
    { hook, hookInstance, context, prefetch: { form: responses[0] } },
    { hook, hookInstance, context, prefetch: { form: { resourceType: 'Bundle', type: 'searchset' } } },
  ]);
  const view = json('profiles/views/ViewDefinition-power.json');
  const tone = `${local}/CodeSystem/tone`;
  const coding = { name: 'coding', valueCoding: { system: tone, code: 'spastic' } };
  const set = { resourceType: 'ValueSet', status: 'active', compose: { include: [{ system: tone }] } };
  const observation = {
    resourceType: 'Observation',
    status: 'final',
    code: { text: 'Invented' },
    subject: { reference: 'Patient/invented' },
    valueQuantity: { value: 1.5, unit: 's', system: 'http://unitsofmeasure.org', code: 's' },
  };
  return {
    exams: [...made.map(({ exam }) => exam), ...responses],
    measures,
    hooks,
    feedback: [
      { feedback: [{ card: hookInstance, outcome: 'accepted', outcomeTimestamp: '2026-01-01T10:00:00Z' }] },
      { feedback: [{ card: hookInstance, outcome: 'overridden', outcomeTimestamp: '2026-01-01T10:00:00+01:00' }] },
    ],
    practice: {
      patients: [{}, { difficulty: 'hard', part: 'spinal-cord', seed: 7 }],
      examinations: [{ patient: '', items: examinedItems }],
      answers: [
        { patient: '', examined: examinedItems, commitment: { site: 'nerve-root', side: 'left', level: 'L5' } },
      ],
    },
    subscriptions: [
      {
        resourceType: 'Subscription',
        status: 'requested',
        reason: 'worklist of the neurology ward',
        criteria: 'ClinicalImpression?status=in-progress',
        end: '2026-01-01T00:00:00Z',
        channel: {
          type: 'rest-hook',
          endpoint: 'https://203.0.113.7/hooks/impressions',
          payload: 'application/fhir+json',
          header: ['Authorization: Bearer invented'],
        },
      },
    ],
    parameters: {
      $extract: [...responses, parameters({ name: 'questionnaire-response', resource: responses[0] ?? {} })],
      $lookup: [
        parameters(coding),
        parameters({ name: 'system', valueUri: tone }, { name: 'code', valueCode: 'rigid' }),
      ],
      $subsumes: [
        parameters(
          { name: 'system', valueUri: tone },
          { name: 'codeA', valueCode: 'rigid' },
          { name: 'codeB', valueCode: 'spastic' },
        ),
      ],
      '$validate-code': [
        parameters({ name: 'url', valueUri: tone }, coding),
        parameters({ name: 'valueSet', resource: set }, coding),
        parameters({ name: 'codeableConcept', valueCodeableConcept: { coding: [coding.valueCoding] } }),
      ],
      $expand: [
        parameters(
          { name: 'valueSet', resource: set },
          { name: 'filter', valueString: 'sp' },
          { name: 'count', valueInteger: 3 },
        ),
      ],
      $translate: [
        parameters({ name: 'url', valueUri: `${local}/ConceptMap/exam-item-to-loinc` }, coding),
        parameters(coding, { name: 'reverse', valueBoolean: true }),
      ],
      '$evaluate-measure': [
        parameters(
          { name: 'periodStart', valueDate: '2024-01-01' },
          { name: 'periodEnd', valueDate: '2026-01-01' },
          { name: 'measure', valueString: 'Measure/neuropathy-signs' },
          { name: 'reportType', valueCode: 'subject-list' },
        ),
        parameters({ name: 'periodStart', valueDate: '2024' }, { name: 'periodEnd', valueDate: '2025' }),
      ],
      '$viewdefinition-run': [
        parameters(
          { name: '_format', valueCode: 'json' },
          { name: 'viewResource', resource: view },
          { name: 'resource', resource: observation },
        ),
        view,
        parameters({ name: 'viewReference', valueReference: { reference: 'ViewDefinition/power' } }),
      ],
      $export: [
        parameters({ name: '_type', valueString: 'Observation' }, { name: '_outputFormat', valueString: 'ndjson' }),
      ],
      $validate: [
        observation,
        ...measures,
        parameters({ name: 'resource', resource: observation }, { name: 'mode', valueCode: 'create' }),
        { resourceType: 'Bundle', type: 'collection', entry: [{ fullUrl: 'urn:uuid:a', resource: observation }] },
      ],
    },
    forms: [
      `code=${tone}|spastic&subject=Patient/invented&date=ge2024-01-01&_count=5&_sort=-date`,
      '_id=a,b&_include=Observation:derived-from&_summary=true&_total=accurate',
      'value-quantity=gt1.5||s&status:not=final&_sort=_lastUpdated&_elements=id,code',
      'subject:identifier=https://clinic.example/patients|1&_lastUpdated=lt2100&_pretty=true',
      '_count=5&_since=2024-01-01T00:00:00Z',
      `_cursor=${Buffer.from('{"value":1,"key":5}').toString('base64url')}&_count=1`,
    ],
  };
}
