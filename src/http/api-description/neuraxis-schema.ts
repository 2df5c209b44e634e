import { closedObject, type JsonSchema } from '../../exam/schema/json-schema.ts';
import { viewKeys } from '../../picture/neuraxis/shape.ts';

const says = (description: string): JsonSchema => ({ type: 'string', description });
const whole = (properties: Readonly<Record<string, JsonSchema>>): JsonSchema =>
  closedObject(properties, Object.keys(properties));
const list = (items: JsonSchema, description: string): JsonSchema => ({ type: 'array', items, description });

const view: JsonSchema = { enum: viewKeys, description: 'which view' };
const at: JsonSchema = {
  type: 'array',
  items: { type: 'number' },
  minItems: 2,
  maxItems: 2,
  description: 'x from the midline, positive towards the left of the person, and y downwards',
};
const names = (description: string): JsonSchema => list(says('name of a shape'), description);

/** The JSON Schema of the drawing of the neuraxis. */
export const neuraxisSchema: JsonSchema = {
  ...whole({
    views: list(
      whole({
        key: view,
        label: says('in words'),
        seen: says('from where it is seen'),
        viewBox: says('SVG viewBox'),
        background: says('SVG path data of what lies around the shapes and is never marked'),
      }),
      'from the cortex to the muscles',
    ),
    shapes: list(
      whole({
        name: says('name of the shape'),
        view,
        paired: {
          type: 'boolean',
          description:
            'whether there is one on each side: drawn on the left of the person, mirrored at x 0 on the right',
        },
        label: says('in words'),
        kind: { enum: ['area', 'line'], description: 'an area is filled, a line is stroked' },
        d: says('SVG path data'),
        at,
      }),
      'what can be marked',
    ),
    texts: list(whole({ view, text: says('word or letter'), at }), 'words and letters in the views'),
    sites: {
      type: 'object',
      additionalProperties: whole({
        own: names('on the side of the site, the most damaged first; both sides for a site of both or of neither'),
        other: names('on the other side'),
      }),
      description:
        'for the key of a site, the shapes that it takes; segment-@ and root-@ stand for the segments that an answer names',
    },
  }),
  description:
    'The nervous system with what every site takes of it, the right of the person on the left of the viewer.',
};
