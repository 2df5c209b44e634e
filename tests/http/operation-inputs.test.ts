import { describe, expect, it } from 'vitest';
import { type OperationInputs, operationInputs } from '../../src/http/operation-inputs.ts';
import { hl7Resource } from '../terminology/hl7-package.ts';

interface Definition {
  readonly url: string;
  readonly parameter: readonly { use: string; name: string; max: string; type?: string }[];
}

// Source: the OperationDefinitions of FHIR R4, as HL7 publishes them with the specification.
describe.each(Object.entries<OperationInputs>(operationInputs))(
  'the input of %s',
  (id, { takes, several = [], refuses }) => {
    const { url, parameter } = hl7Resource(`OperationDefinition-${id}.json`) as Definition;
    const inputs = parameter.filter(({ use }) => use === 'in');

    it('has every parameter of the definition, taken with its type or refused with a reason, and no other', () => {
      expect(url).toBe(`http://hl7.org/fhir/OperationDefinition/${id}`);
      expect([...Object.keys(takes), ...Object.keys(refuses)].sort()).toEqual(inputs.map(({ name }) => name).sort());
      for (const { name, type, max } of inputs) {
        if (takes[name] === undefined) expect(refuses[name]?.length, name).toBeGreaterThan(20);
        else expect([name, takes[name], several.includes(name)]).toEqual([name, type, max === '*']);
      }
    });
  },
);
