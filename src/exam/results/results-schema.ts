import { systems } from '../../terminology/systems.ts';
import { resultByLoinc, resultRows } from '../catalogue/results.ts';
import { closedObject, definition, type JsonSchema, listOf, oneOfKeys } from '../schema/json-schema.ts';

/** Schema of the results that came back before the exam: FHIR-shaped where there is one code, by key otherwise. */
export function resultsSchema(): JsonSchema {
  return listOf(
    closedObject(
      {
        key: oneOfKeys(
          resultRows.map((row) => row.key),
          'the key of a result in the catalogue',
        ),
        code: closedObject(
          {
            system: { const: systems.loinc, description: `the code system: ${systems.loinc}` },
            version: definition('shortText'),
            code: oneOfKeys([...resultByLoinc.keys()], 'a LOINC code of the catalogue'),
            display: definition('shortText'),
            userSelected: { type: 'boolean', description: 'FHIR userSelected' },
          },
          ['system', 'code'],
          { description: 'a FHIR Coding' },
        ),
        valueQuantity: definition('quantity'),
        value: {
          type: 'string',
          minLength: 1,
          maxLength: 64,
          pattern: '^[A-Za-z0-9+\\-]+$',
          description: 'one of the values that the catalogue lists for this result',
        },
        note: definition('note'),
      },
      [],
      {
        description: 'a result by its LOINC code or its key, with a number and unit or a value',
        anyOf: [{ required: ['code'] }, { required: ['key'] }],
        oneOf: [{ required: ['valueQuantity'] }, { required: ['value'] }],
      },
    ),
    200,
    'investigations that are already back',
  );
}
