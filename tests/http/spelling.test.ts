import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RunningService } from '../../src/service.ts';
import { sendJson } from '../support/client.ts';
import { examNumbered } from '../support/example-exam.ts';
import { startTestService } from '../support/service.ts';

describe('spelling of the prose', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startTestService();
  });
  afterAll(() => service.stop());

  const exam = {
    ...examNumbered('spelling'),
    history: { symptoms: [{ key: 'preceding-gastroenteritis', present: true }] },
  };

  // Webster's and the Oxford dictionary: diarrhea, diarrhoea.
  it.each([
    ['', undefined, 'diarrhoea'],
    ['?spelling=us', undefined, 'diarrhea'],
    ['', 'en-US,en;q=0.8', 'diarrhea'],
    ['', 'en-GB,en;q=0.8', 'diarrhoea'],
    ['?spelling=uk', 'en-US', 'diarrhoea'],
    ['', 'de', 'diarrhoea'],
  ])('with the query "%s" and the language %s has %s', async (query, language, word) => {
    const headers = language === undefined ? {} : { 'accept-language': language };
    const answer = await sendJson(`${service.url}/localisation${query}`, exam, { headers });
    expect(answer.status).toBe(200);
    expect(answer.json<{ presentation: string }>().presentation).toContain(word);
  });

  it('is that of labels, reasons and actions too, and leaves keys and codes alone', async () => {
    const bled = {
      ...examNumbered('spelling-of-all'),
      history: { symptoms: [{ key: 'thunderclap-headache', present: true }], onset: { pace: 'hyperacute' } },
    };
    const { text: american } = await sendJson(`${service.url}/localisation?spelling=us`, bled);
    expect(american).toContain('"label":"Subarachnoid hemorrhage"');
    expect(american).toContain('"key":"subarachnoid-haemorrhage"');
    expect(american).not.toMatch(/"(?:label|text|because|action)":"[^"]*(?:haemorrh|tumour|oedema)/);
  });
});
