import { readFileSync } from 'node:fs';
import type { Catalogue } from '../../src/client/generated/api-types.ts';
import { catalogueDocument } from '../../src/exam/catalogue/catalogue-document.ts';

/** The catalogue as the service answers it. */
export const catalogue = JSON.parse(JSON.stringify(catalogueDocument())) as Catalogue;

/** One of the example exams that the README names. */
export function exampleExam(name: 'foot-drop' | 'cervical-cord' | 'ascending-weakness'): Record<string, unknown> {
  return JSON.parse(readFileSync(new URL(`../examples/${name}.json`, import.meta.url), 'utf8'));
}
