import { describe, expect, it } from 'vitest';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { bedsideExam } from '../support/bedside.ts';
import { examBody } from './case-writing.ts';
import { textbookCases } from './textbook-cases.ts';

const localiser = createLocaliser();

describe('the leading site of textbook pictures', () => {
  for (const one of textbookCases) {
    it(`${one.name} (${one.source})`, () => {
      const { localisations, conclusion } = localiser.localise(bedsideExam(examBody(one)));
      const leading = localisations[0];
      expect([one.expect.site].flat()).toContain(leading?.site);
      if (one.expect.side !== undefined) expect(leading?.side).toBe(one.expect.side);
      if (one.expect.level !== undefined) expect([one.expect.level].flat()).toContain(leading?.level);
      if (one.expect.conclusion !== undefined) expect(conclusion).toBe(one.expect.conclusion);
    });
  }
});
