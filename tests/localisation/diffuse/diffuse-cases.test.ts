import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../../src/localisation/localise.ts';
import { bedsideExam } from '../../support/bedside.ts';
import { examBody } from '../case-writing.ts';
import { motorCases } from './motor-cases.ts';
import { neuropathyCases } from './neuropathy-cases.ts';

const localiser = createLocaliser();

describe.each([
  ['many nerves', neuropathyCases],
  ['motor neuron, junction and muscle', motorCases],
] as const)('the leading process of textbook pictures: %s', (_, cases) => {
  for (const one of cases) {
    it(`${one.name} (${one.source})`, () => {
      const { localisations, conclusion } = localiser.localise(bedsideExam(examBody(one)));
      const leading = localisations[0];
      expect([one.expect.site].flat()).toContain(leading?.site);
      if (one.expect.side !== undefined) expect(leading?.side).toBe(one.expect.side);
      if (one.expect.conclusion !== undefined) expect(conclusion).toBe(one.expect.conclusion);
    });
  }
});
