import { createExamReader } from '../../exam/read-exam.ts';
import { questionnaireResponse } from '../../questionnaire/write-response.ts';
import { toBeCorrected } from './example-exams.ts';

/** Any moment after the example; it decides nothing but that the example lies in the past. */
const now = new Date('2026-11-25T00:00:00Z');

const sent = {
  ...toBeCorrected,
  identifier: { ...toBeCorrected.identifier, value: 'EX-2043' },
  subject: { reference: 'Patient/invented-4713' },
};

const { text: _text, ...answers } = questionnaireResponse(createExamReader().read(sent, { purpose: 'record', now }));
/** An invented exam as answers to its form; nobody is meant. */
export const formOfReflex: Readonly<Record<string, unknown>> = JSON.parse(JSON.stringify(answers));
