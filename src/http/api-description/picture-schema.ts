import { closedObject, type JsonSchema } from '../../exam/schema/json-schema.ts';
import { neuraxisSchema } from './neuraxis-schema.ts';

const says = (description: string): JsonSchema => ({ type: 'string', description });
const number = (description: string): JsonSchema => ({ type: 'integer', description });
const side = (description: string): JsonSchema => ({ enum: ['left', 'right'], description });
const all = (properties: Readonly<Record<string, JsonSchema>>, optional: readonly string[] = []): JsonSchema =>
  closedObject(
    properties,
    Object.keys(properties).filter((name) => !optional.includes(name)),
  );

const patch = all(
  {
    kind: { enum: ['dermatome', 'landmark', 'territory'], description: 'which of the places of the catalogue' },
    key: says('key of the place'),
    at: { type: 'array', items: { type: 'integer' }, minItems: 2, maxItems: 2, description: 'a point well inside' },
    path: says('SVG path data; absent for a spot to tap'),
  },
  ['path'],
);

const view = all({
  key: says('which picture'),
  label: says('in words'),
  width: number('in whole units'),
  height: number('in whole units'),
  drawnSide: side('the side of the patient on the right of the viewer, whose half is drawn; mirror it for the other'),
  outline: says('SVG path data of the border'),
  marks: says("SVG path data of lines that help to find one's way"),
  patches: {
    type: 'array',
    items: patch,
    description: 'dermatomes, which tile; nerve territories, which overlap; landmarks',
  },
});

/** The JSON Schema of `pictureDocument`, draft 2020-12, closed. */
export function pictureSchema(): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'https://neuroexam-fhir.example/json-schema/picture.schema.json',
    title: 'Pictures of the body',
    description: 'The body with the places at which sensation is recorded, drawn from the tables of the service.',
    ...all({
      body: all({
        views: { type: 'array', items: view },
        firstBelow: {
          type: 'object',
          additionalProperties: says('key of a dermatome'),
          description:
            'for a segment of the cord, the first of the dermatomes below it, as they are ordered in the catalogue',
        },
      }),
      neuraxis: neuraxisSchema,
    }),
  };
}
