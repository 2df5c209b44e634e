import { describe, expect, it } from 'vitest';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { createLocaliser } from '../../src/localisation/localise.ts';
import { examBody } from './case-writing.ts';
import { textbookCases } from './textbook-cases.ts';

const reader = createExamReader();
const localiser = createLocaliser();
const now = new Date('2026-03-15T00:00:00Z');

describe('the leading site of textbook pictures', () => {
  for (const one of textbookCases) {
    it(`${one.name} (${one.source})`, () => {
      const exam = reader.read(examBody(one), { purpose: 'localise', now });
      const { localisations, conclusion } = localiser.localise(exam);
      const leading = localisations[0];
      expect([one.expect.site].flat()).toContain(leading?.site);
      if (one.expect.side !== undefined) expect(leading?.side).toBe(one.expect.side);
      if (one.expect.level !== undefined) expect([one.expect.level].flat()).toContain(leading?.level);
      if (one.expect.conclusion !== undefined) expect(conclusion).toBe(one.expect.conclusion);
    });
  }
});
