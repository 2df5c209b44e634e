import { historyListKeys } from '../../exam/catalogue/history.ts';
import { closedObject, definition, type JsonSchema } from '../../exam/schema/json-schema.ts';

const says = (description: string): JsonSchema => ({ type: 'string', description });
const key = says('the key to send');
const label = says('in words');
const listOf = (items: JsonSchema, description?: string): JsonSchema => ({
  type: 'array',
  items,
  ...(description === undefined ? {} : { description }),
});
const all = (properties: Readonly<Record<string, JsonSchema>>, optional: readonly string[] = []): JsonSchema =>
  closedObject(
    properties,
    Object.keys(properties).filter((name) => !optional.includes(name)),
  );
const codes = listOf(definition('code'), 'open codes that say the same, or how close they are');
const number = (description: string): JsonSchema => ({ type: 'number', description });
const otherNames = listOf(says('name'), 'what clinicians also call it; never taken as a key');
const keyed = listOf(definition('keyed'));
const places = listOf(definition('place'));

/** The JSON Schema of `catalogueDocument`, draft 2020-12, closed. */
export function catalogueSchema(): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'https://neuroexam-fhir.example/json-schema/catalogue.schema.json',
    title: 'Catalogue of the neurological examination',
    description: 'Everything that can be examined and sent: keys, sides, values and codes.',
    ...all({
      sections: listOf(
        all(
          {
            section: says('the property of findings'),
            label,
            itemProperty: {
              type: ['string', 'null'],
              description: 'the property that names an item in this section; null where several do together',
            },
            codes,
            items: listOf(definition('item')),
          },
          ['codes'],
        ),
        'what is examined, by section',
      ),
      comaScale: all({
        key,
        label,
        codes,
        parts: listOf(all({ key, label, codes, scores: listOf(all({ score: number('score'), label })) })),
      }),
      history: all(Object.fromEntries(historyListKeys.map((list) => [list, listOf(definition('historyEntry'))]))),
      results: listOf(definition('result'), 'results of investigations that are taken'),
      investigations: listOf(
        all({ key, label, otherNames, codes }, ['otherNames']),
        'investigations that may be proposed, and named in the requests of an exam',
      ),
      places: all({
        dermatomes: places,
        landmarks: places,
        territories: places,
        bodyParts: places,
        levels: listOf(says('segment')),
      }),
      routine: listOf(
        all({ item: says('id of an item'), landmark: says('where sensation is tested') }, ['landmark']),
        'a routine examination in bedside order',
      ),
      notTested: listOf(says('reason why there is no value')),
      regions: listOf(says('large region of the body')),
    }),
    $defs: {
      keyed: all({ key, label }),
      place: all({ key, label, region: says('large region of the body') }),
      code: all(
        {
          system: says('address of the code system'),
          code: says('the code'),
          display: label,
          relation: says('how the code relates to the item, where it does not say the same'),
          value: says('the value that the code is for'),
        },
        ['relation', 'value'],
      ),
      item: all(
        {
          key,
          id: says('section and key, as codes in FHIR have it'),
          label,
          otherNames,
          sides: says('paired, midline or optional'),
          region: says('large region of the body'),
          sites: listOf(says('site'), 'sites at which it can be examined'),
          siteRequired: { type: 'boolean', description: 'whether the site must be sent' },
          bodyPart: says('the part of the body that it lies in'),
          scale: says('the scale of its values'),
          property: says('the property that has the value'),
          values: {
            anyOf: [keyed, all({ minimum: number('least number'), maximum: number('greatest number') })],
            description: 'the values, or the range of a count',
          },
          normal: listOf(says('value'), 'the values that are normal'),
          codes,
        },
        ['otherNames', 'sites', 'siteRequired', 'bodyPart'],
      ),
      historyEntry: all({ key, label, otherNames, codes }, ['otherNames']),
      result: all(
        {
          key,
          label,
          otherNames,
          kind: says('quantity, or coded with values from a list'),
          codes,
          unit: says('UCUM unit that the number is converted to'),
          units: listOf(
            says('UCUM unit'),
            'units in common use, that one first; others of the same kind are taken too',
          ),
          plausible: all({ low: number('least possible'), high: number('greatest possible') }),
          values: keyed,
          normal: listOf(says('value'), 'the values that are normal'),
        },
        ['otherNames', 'unit', 'units', 'plausible', 'values', 'normal'],
      ),
    },
  };
}
