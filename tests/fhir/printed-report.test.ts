import type { Composition } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { documentOf } from '../../src/fhir/bundle-forms.ts';
import { exampleRead } from '../support/bedside.ts';
import { builtSteps } from '../support/built.ts';
import { type ExampleName, exampleNames } from '../support/example-exam.ts';

const steps = builtSteps();

function compositionOf(name: ExampleName): { composition: Composition; summary: string } {
  const exam = exampleRead(name);
  const assessment = steps.assess(exam);
  const { entry = [] } = documentOf(steps.toBundle(exam, assessment, { version: 1 }));
  return { composition: entry[0]?.resource as Composition, summary: assessment.presentation };
}

const plain = (div = '') =>
  div
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ')
    .trim();

describe('the printed report', () => {
  // A page of A4 in 10-point type holds some 900 words.
  it.each(exampleNames)('of %s fits a page', (name) => {
    const { composition } = compositionOf(name);
    const words = (composition.section ?? []).flatMap(({ title = '', text }) =>
      `${title} ${plain(text?.div)}`.split(' '),
    );
    expect(words.length).toBeGreaterThan(100);
    expect(words.length).toBeLessThan(900);
  });

  it.each(exampleNames)('of %s says once what was examined, and all of the rest of the presentation', (name) => {
    const { composition, summary } = compositionOf(name);
    const assessment = plain(composition.section?.find(({ title }) => title === 'Assessment')?.text?.div);
    for (const part of summary.split('\n\n')) {
      expect(assessment.includes(part.replaceAll(/\s+/g, ' '))).toBe(!part.startsWith('On examination'));
    }
  });
});
