import type { SiteKind } from '../anatomy/site-kind.ts';
import { closedObject, definition, type JsonSchema, listOf, oneOfKeys } from '../exam/schema/json-schema.ts';
import type { Conclusion, Pattern } from '../localisation/localisation.ts';
import type { RedFlag, Urgency, WorkupItem } from '../workup/assessment.ts';

/** Every value of a union as a key, so that the compiler knows of one that is missing here. */
const values = <Value extends string>(table: Readonly<Record<Value, true>>): readonly string[] => Object.keys(table);

const conclusions = values<Conclusion>({
  'single-site': true,
  'multiple-sites': true,
  'diffuse-process': true,
  'no-abnormality': true,
  'not-anatomical': true,
  insufficient: true,
});
const kinds = values<SiteKind>({
  none: true,
  muscle: true,
  junction: true,
  nerve: true,
  'multiple-nerves': true,
  polyneuropathy: true,
  polyradiculoneuropathy: true,
  ganglion: true,
  plexus: true,
  root: true,
  'cauda-equina': true,
  'anterior-horn': true,
  'motor-neuron-system': true,
  cord: true,
  brainstem: true,
  cerebellum: true,
  hemisphere: true,
  'visual-pathway': true,
  'cranial-nerve': true,
  'basal-ganglia': true,
  meninges: true,
  'intracranial-pressure': true,
  encephalopathy: true,
  'multiple-sites': true,
});
const motorNeurons = values<Pattern['motorNeuron']>({ lower: true, upper: true, both: true, none: true });
const symmetries = values<Pattern['symmetry']>({
  symmetrical: true,
  asymmetrical: true,
  'one-sided': true,
  midline: true,
  none: true,
});
const urgencies = values<Urgency>({ immediate: true, 'same-day': true, urgent: true });
const priorities = values<WorkupItem['priority']>({ routine: true, urgent: true, stat: true });
const flagStates = values<Exclude<RedFlag['state'], 'absent'>>({ present: true, 'not-assessable': true });

const says = (description: string): JsonSchema => ({ type: 'string', description });
/** Keys grow with the tables, so that a program must expect ones that it does not know. */
const key = (description: string): JsonSchema => ({
  type: 'string',
  pattern: '^[A-Za-z0-9][A-Za-z0-9-]*$',
  description,
});
const label = says('in words');
const source = says('work that the rule or figure comes from');
const share = (description: string): JsonSchema => ({ type: 'number', minimum: 0, maximum: 1, description });
const orNull = (schema: JsonSchema, description: string): JsonSchema => ({
  anyOf: [schema, { type: 'null' }],
  description,
});
const all = (properties: Readonly<Record<string, JsonSchema>>, optional: readonly string[] = []): JsonSchema =>
  closedObject(
    properties,
    Object.keys(properties).filter((name) => !optional.includes(name)),
  );
const pointer: JsonSchema = {
  type: 'string',
  pattern: '^(/([^~/]|~[01])*)*$',
  description: 'JSON Pointer into the request',
};
const code = definition('coding');
const evidence = (description: string) => listOf(definition('evidence'), 2000, description);
const reasons = (description: string) => listOf(definition('reason'), 2000, description);

const definitions: Readonly<Record<string, JsonSchema>> = {
  coding: all(
    { system: says('address of the code system'), code: says('the code'), display: label, version: says('version') },
    ['version'],
  ),
  evidence: all({
    finding: pointer,
    side: oneOfKeys(['left', 'right', 'midline'], 'side that the weight is about'),
    text: says('the finding in words'),
    weight: { type: 'number', description: 'natural logarithm of the likelihood ratio; positive speaks for the site' },
    because: says('why it speaks for or against the site'),
  }),
  reason: all({
    finding: orNull(pointer, 'JSON Pointer into the request; null for something that was not sent'),
    text: says('the reason in words'),
  }),
  localisation: all({
    site: key('key of a place or process'),
    label,
    side: orNull(
      oneOfKeys(['left', 'right', 'both']),
      'side; null for a site without one, and where nothing tells which side it is',
    ),
    level: orNull(says('segment'), 'segment of a root or a place in the cord, the most likely one'),
    levelRange: orNull(
      { type: 'array', items: says('segment'), minItems: 2, maxItems: 2 },
      "highest and lowest segment that together hold 80 % of the site's probability",
    ),
    kind: oneOfKeys(kinds, 'what sort of place or process it is'),
    code,
    probability: share('among the hypotheses considered'),
    fit: share('share of the abnormal findings, by weight, that the site accounts for'),
    supporting: evidence('findings that speak for it'),
    against: evidence('findings that speak against it'),
    unexplained: evidence('abnormal findings that it does not explain'),
  }),
  cause: all({
    key: key('key of a cause'),
    label,
    code,
    probability: share('among the causes considered'),
    supporting: reasons('what speaks for it'),
    against: reasons('what speaks against it'),
    source,
  }),
  redFlag: all({
    key: key('key of a red flag'),
    label,
    state: oneOfKeys(flagStates, 'not-assessable where something that matters was not examined'),
    urgency: oneOfKeys(urgencies, 'how soon it calls for action'),
    because: reasons('what raises it, or what is missing'),
    action: says('what to do'),
    source,
  }),
  investigation: all(
    {
      key: key('key of an investigation'),
      label,
      code,
      tier: { type: 'integer', enum: [1, 2, 3], description: '1 comes first' },
      priority: oneOfKeys(priorities, 'how pressing it is'),
      because: says('why'),
      source,
      guidance: { type: 'string', format: 'uri', description: 'where the guidance can be read' },
    },
    ['guidance'],
  ),
  needlessTest: all({ key: key('key of a test'), label, because: says('why it is not needed here'), source }),
  nextExamination: all(
    {
      item: says('item to examine, such as power/hip-abduction'),
      label,
      side: orNull(oneOfKeys(['left', 'right']), 'side; null for an item of the midline'),
      place: says('where, for sensation'),
      because: says('what it would tell'),
      tellsApart: { type: 'boolean', description: 'whether it tells apart the two sites that `because` names' },
      gainBits: { type: 'number', minimum: 0, description: 'expected gain of information in bits' },
    },
    ['place'],
  ),
};

/**
 * The JSON Schema of what `localisationAnswer` makes, draft 2020-12: closed, so that an answer with a property more than
 * it names is not valid.
 */
export function localisationAnswerSchema(): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'https://neuroexam-fhir.example/json-schema/localisation-answer.schema.json',
    title: 'Answer to a neurological examination',
    description:
      'Where the lesion is, what it may be, what must not wait and what to do next. Computed and unreviewed.',
    ...all({
      localisations: listOf(definition('localisation'), 1000, 'sites, most probable first'),
      pattern: all({
        key: key('key of the pattern that the abnormal findings form'),
        label,
        motorNeuron: oneOfKeys(motorNeurons, 'which motor neuron is affected'),
        symmetry: oneOfKeys(symmetries, 'how the two sides compare'),
        modalities: listOf(says('modality of sensation'), 20, 'modalities of sensation that are affected'),
      }),
      conclusion: oneOfKeys(conclusions, 'what can be said at all'),
      causes: listOf(definition('cause'), 1000, 'what it may be, most probable first'),
      redFlags: listOf(definition('redFlag'), 1000, 'what must not wait; those that could not be decided come last'),
      workup: listOf(definition('investigation'), 1000, 'investigations to propose'),
      nextExamination: listOf(definition('nextExamination'), 1000, 'what to examine next, most telling first'),
      presentation: says('the findings and the conclusion as prose'),
      caution: says('what this answer is not'),
      modelVersion: says('version and fingerprint of the tables behind the answer'),
      needless: listOf(definition('needlessTest'), 1000, 'tests that guidance finds needless here'),
    }),
    $defs: definitions,
  };
}
