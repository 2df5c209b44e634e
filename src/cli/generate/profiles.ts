import type { ElementDefinition, StructureDefinition } from 'fhir/r4.js';
import { profileUrl, systems } from '../../terminology/systems.ts';
import { header, type Release, valueSetUrl } from './header.ts';
import { snapshotOf } from './snapshot.ts';

/** What a profile changes on one element, without the id and path that its place in the table gives. */
type Change = Omit<ElementDefinition, 'path' | 'id'>;

interface Profile {
  readonly id: string;
  readonly type: string;
  readonly title: string;
  readonly description: string;
  /** Element id below the type (`code`, `category:exam`) to its constraints; '' is the resource itself. */
  readonly elements: readonly (readonly [string, Change])[];
}

const patient: Change = { min: 1, type: [{ code: 'Reference', targetProfile: [resource('Patient')] }] };
const device: Change = { min: 1, type: [{ code: 'Reference', targetProfile: [resource('Device')] }] };
const dateTime: Change = { min: 1, type: [{ code: 'dateTime' }] };
const forbidden: Change = { max: '0' };
const required = (valueSet: string): Change => ({ binding: { strength: 'required', valueSet } });

const examCategory: readonly (readonly [string, Change])[] = [
  [
    'category',
    { min: 1, slicing: { discriminator: [{ type: 'pattern', path: '$this' }], ordered: false, rules: 'open' } },
  ],
  [
    'category:exam',
    {
      sliceName: 'exam',
      short: 'The category of all examination findings',
      min: 1,
      max: '1',
      patternCodeableConcept: { coding: [{ system: systems.observationCategory, code: 'exam' }] },
    },
  ],
];

/** R4 forbids a value beside a reason for its absence; here one of the two must be there. */
function valueOrReason(profile: string): readonly [string, Change] {
  return [
    '',
    {
      constraint: [
        {
          key: 'nex-1',
          severity: 'error',
          human: 'There is a value, or the reason why there is none',
          expression: 'value.exists() xor dataAbsentReason.exists()',
          source: profileUrl(profile),
        },
      ],
    },
  ];
}

const absentReason: Change = required('http://hl7.org/fhir/ValueSet/data-absent-reason');

const profiles: readonly Profile[] = [
  {
    id: 'neuro-exam-finding',
    type: 'Observation',
    title: 'Neurological examination finding',
    description:
      'One thing that was examined at one place on one side: what it was, how it came out on its scale, or why it could not be tested. Or what the examiner stated in one sentence of all the rest of a section, a region or a side.',
    elements: [
      valueOrReason('neuro-exam-finding'),
      ['identifier', { min: 1 }],
      ...examCategory,
      ['code', { ...required(valueSetUrl('exam-items')), short: 'What was examined' }],
      ['subject', patient],
      ['effective[x]', dateTime],
      [
        'value[x]',
        {
          type: [{ code: 'CodeableConcept' }, { code: 'Quantity' }],
          slicing: { discriminator: [{ type: 'type', path: '$this' }], ordered: false, rules: 'open' },
        },
      ],
      [
        'value[x]:valueCodeableConcept',
        {
          sliceName: 'valueCodeableConcept',
          short: 'Grade on the scale of the item',
          type: [{ code: 'CodeableConcept' }],
          ...required(valueSetUrl('exam-grades')),
        },
      ],
      ['dataAbsentReason', absentReason],
      ['bodySite', required(valueSetUrl('body-sites'))],
    ],
  },
  {
    id: 'neuro-exam-panel',
    type: 'Observation',
    title: 'Neurological examination panel',
    description:
      'The findings of one section of the examination, or of the whole of it, as members. It has no value of its own.',
    elements: [
      ['identifier', { min: 1 }],
      ...examCategory,
      ['code', required(valueSetUrl('exam-items'))],
      ['subject', patient],
      ['effective[x]', dateTime],
      ['value[x]', forbidden],
      ['dataAbsentReason', forbidden],
      ['hasMember', { type: [{ code: 'Reference', targetProfile: [resource('Observation')] }] }],
      ['component', forbidden],
    ],
  },
  {
    id: 'neuro-exam-derived-observation',
    type: 'Observation',
    title: 'Computed neurological observation',
    description:
      'Something that the software computed from the findings: where the lesion is, or whether a red flag is present. It names the device that computed it and never a person as performer.',
    elements: [
      valueOrReason('neuro-exam-derived-observation'),
      ['identifier', { min: 1 }],
      ...examCategory,
      ['code', required(valueSetUrl('exam-items'))],
      ['subject', patient],
      ['effective[x]', dateTime],
      ['performer', forbidden],
      ['value[x]', { type: [{ code: 'CodeableConcept' }] }],
      ['dataAbsentReason', absentReason],
      ['method', { min: 1, ...required(valueSetUrl('exam-methods')) }],
      ['device', device],
      ['derivedFrom', { type: [{ code: 'Reference', targetProfile: [resource('Observation')] }] }],
    ],
  },
  {
    id: 'neuro-exam-impression',
    type: 'ClinicalImpression',
    title: 'Computed impression of a neurological examination',
    description:
      'The localisation and the leading causes with the findings they rest on. Computed and not reviewed: in progress, without assessor, until a clinician adopts it.',
    elements: [
      ['identifier', { min: 1 }],
      ['description', { min: 1 }],
      ['subject', patient],
      ['effective[x]', dateTime],
      ['date', { min: 1 }],
      ['investigation', { min: 1 }],
      ['protocol', { min: 1 }],
      ['summary', { min: 1 }],
      ['finding', { min: 1, short: 'Pattern and localisation first, then causes by rank, then abnormal findings' }],
      [
        'note',
        { min: 1, short: 'The caution that belongs to every computed answer; what was suggested and not chosen' },
      ],
    ],
  },
  {
    id: 'neuro-exam-proposed-request',
    type: 'ServiceRequest',
    title: 'Proposed investigation',
    description:
      'An investigation that the software suggests or the examiner asks for. A proposal for a clinician to take up or leave; never an order.',
    elements: [
      ['identifier', { min: 1 }],
      ['intent', { patternCode: 'proposal' }],
      ['priority', { min: 1 }],
      ['code', { min: 1, ...required(valueSetUrl('investigations')) }],
      ['subject', patient],
      ['authoredOn', { min: 1 }],
      ['requester', device],
      ['reasonReference', { min: 1 }],
    ],
  },
  {
    id: 'neuro-exam-ranked-causes',
    type: 'RiskAssessment',
    title: 'Ranked causes of the localised lesion',
    description:
      'The causes considered, most probable first, each with its probability in per cent among the causes considered.',
    elements: [
      ['identifier', { min: 1 }],
      ['method', { min: 1, ...required(valueSetUrl('exam-methods')) }],
      ['code', { min: 1, ...required(valueSetUrl('exam-items')) }],
      ['subject', patient],
      ['occurrence[x]', dateTime],
      ['performer', device],
      ['basis', { min: 1 }],
      ['prediction.outcome', { min: 1, ...required(valueSetUrl('causes')) }],
      ['prediction.probability[x]', { min: 1 }],
    ],
  },
];

function resource(type: string): string {
  return `http://hl7.org/fhir/StructureDefinition/${type}`;
}

/** @param readBase the R4 definition of a resource type, with its snapshot */
export function profileDefinitions(
  release: Release,
  readBase: (type: string) => StructureDefinition,
): StructureDefinition[] {
  return profiles.map((profile) => {
    const definition: StructureDefinition = {
      ...header('StructureDefinition', release, profile),
      fhirVersion: '4.0.1',
      kind: 'resource',
      abstract: false,
      type: profile.type,
      baseDefinition: resource(profile.type),
      derivation: 'constraint',
      differential: { element: profile.elements.map(([place, change]) => elementOf(profile.type, place, change)) },
    };
    const base = readBase(profile.type);
    const { differential, ...rest } = definition;
    return {
      ...rest,
      snapshot: { element: snapshotOf(definition, base) },
      ...(differential ? { differential } : {}),
    };
  });
}

function elementOf(type: string, place: string, change: Change): ElementDefinition {
  const id = place === '' ? type : `${type}.${place}`;
  return { id, path: id.replaceAll(/:[^.]+/g, ''), ...change };
}
