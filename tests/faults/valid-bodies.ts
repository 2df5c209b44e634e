import { readFileSync } from 'node:fs';
import { inventExams } from '../../src/cli/simulated/invented-exams.ts';
import { simulationModel } from '../../src/cli/simulated/simulated-patient.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { compiledByBuild, root } from '../support/built.ts';

/** Kinds of body that the service takes. */
export type BodyKind = 'exam' | 'correction' | 'resource' | 'measure' | 'parameters' | 'view' | 'form';

export interface ValidBodies {
  readonly exams: readonly object[];
  /** What the operations take, by the end of their path. */
  readonly parameters: Readonly<Record<string, readonly object[]>>;
  readonly measures: readonly object[];
  readonly forms: readonly string[];
}

const local = 'https://neuroexam-fhir.example/fhir';
const json = (path: string) => JSON.parse(readFileSync(`${root}${path}`, 'utf8')) as Record<string, unknown>;
const parameters = (...parameter: object[]) => ({ resourceType: 'Parameters', parameter });

/** Bodies that are taken as they are, to be spoilt: invented exams, and what each operation asks for. */
export function validBodies(count: number, seed: number): ValidBodies {
  const compiled = compiledByBuild();
  const model = simulationModel(createExamReader(compiled?.validators), compiled?.model?.states);
  const made = [...inventExams(model, { count, seed, until: new Date('2026-01-01T00:00:00Z') })];
  const measures = ['neuropathy-signs', 'red-flag-minutes', 'section-documentation'].map((name) =>
    json(`profiles/measures/Measure-${name}.json`),
  );
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
    exams: made.map(({ exam }) => exam),
    measures,
    parameters: {
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
