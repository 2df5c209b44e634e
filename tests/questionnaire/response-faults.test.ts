import { describe, expect, it } from 'vitest';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { ExamInvalidError, type Fault } from '../../src/kernel/errors.ts';
import { readSentExam } from '../../src/questionnaire/read-sent-exam.ts';
import { scaleSystem, systems } from '../../src/terminology/systems.ts';

const reader = createExamReader();

function faultsOf(response: unknown): readonly Fault[] {
  try {
    readSentExam(response, '0.1.0', (body) =>
      reader.read(body, { purpose: 'record', now: new Date('2026-06-01T00:00:00Z') }),
    );
    return [];
  } catch (error) {
    if (error instanceof ExamInvalidError) return error.faults;
    throw error;
  }
}

const inBrief = (faults: readonly Fault[]) => faults.map(({ pointer, code }) => `${code} ${pointer}`);

function response(changes: Record<string, unknown> = {}): Record<string, unknown> {
  return {
    resourceType: 'QuestionnaireResponse',
    identifier: { system: 'https://clinic.example/exams', value: 'EX-1' },
    questionnaire: 'https://neuroexam-fhir.example/fhir/Questionnaire/neuro-exam|0.1.0',
    status: 'completed',
    subject: { reference: 'Patient/invented-1' },
    authored: '2026-03-14T10:20:00+01:00',
    ...changes,
  };
}

const coding = (system: string, code: string) => ({ valueCoding: { system, code } });
const grade = (code: string) => coding(scaleSystem('mrc-power'), code);
const power = (...item: unknown[]) => response({ item: [{ linkId: 'power', item }] });
const dorsiflexion = 'power/ankle-dorsiflexion.left';

describe('what a QuestionnaireResponse has wrong', () => {
  it('is a wanted investigation that is unknown, there twice, or beside the answer that none is', () => {
    const wanted = (...codes: string[]) =>
      response({
        item: [
          {
            linkId: 'requests',
            answer: codes.map((code) =>
              coding(code === 'requests/none' ? systems.examAnswer : systems.investigation, code),
            ),
          },
        ],
      });
    expect(faultsOf(wanted('mri-brain', 'ct-head'))).toEqual([]);
    expect(faultsOf(wanted('requests/none'))).toEqual([]);
    expect(faultsOf(wanted('ct-head', 'mri-bran'))).toMatchObject([
      { code: 'UNKNOWN_KEY', pointer: '/item/0/answer/1/valueCoding/code', suggestion: 'mri-brain' },
    ]);
    expect(faultsOf(wanted('ct-head', 'mri-brain', 'ct-head'))).toMatchObject([
      {
        code: 'REPEATED',
        pointer: '/item/0/answer/2/valueCoding',
        message: "'ct-head' is there before, at /item/0/answer/0/valueCoding: give each once.",
      },
    ]);
    expect(inBrief(faultsOf(wanted('ct-head', 'requests/none')))).toEqual(['ONLY_ONE /item/0/answer/1/valueCoding']);
  });

  it('is nothing where all is well, with or without the version of the form', () => {
    expect(faultsOf(power({ linkId: dorsiflexion, text: 'As shown.', answer: [grade('3')] }))).toEqual([]);
    const questionnaire = 'https://neuroexam-fhir.example/fhir/Questionnaire/neuro-exam';
    expect(faultsOf(response({ questionnaire }))).toEqual([]);
    expect(faultsOf(response({ extension: [{ url: 'https://clinic.example/x', valueCode: 'y' }] }))).toEqual([]);
  });

  it('is told all at once, each where it stands', () => {
    const faults = faultsOf({
      ...response({ questionnaire: 'https://clinic.example/Questionnaire/other', status: 'stopped', basedOn: [] }),
      authored: '2026-03-14',
      item: [
        { linkId: 'powr', item: [] },
        { linkId: 'power', item: [{ linkId: dorsiflexion, answer: [grade('6')] }] },
        {
          linkId: 'results',
          item: [{ linkId: 'results/hba1c', answer: [{ valueQuantity: { value: 5, code: 'kg' } }] }],
        },
      ],
    });
    expect(inBrief(faults).sort()).toEqual([
      'FORMAT /authored',
      'UNIT /item/2/item/0/answer/0/valueQuantity/code',
      'UNKNOWN_KEY /item/0/linkId',
      'UNKNOWN_KEY /item/1/item/0/answer/0/valueCoding/code',
      'UNKNOWN_KEY /questionnaire',
      'UNKNOWN_KEY /status',
      'UNKNOWN_PROPERTY /basedOn',
    ]);
    expect(faults.find(({ pointer }) => pointer === '/item/0/linkId')?.suggestion).toBe('power');
  });

  it('names the nearest linkId, and the group in which a known one stands', () => {
    const [unknown] = faultsOf(power({ linkId: 'power/ankle-dorsiflexoin.left', answer: [grade('3')] }));
    expect(unknown).toMatchObject({ code: 'UNKNOWN_KEY', suggestion: dorsiflexion });
    const [misplaced] = faultsOf(response({ item: [{ linkId: dorsiflexion, answer: [grade('3')] }] }));
    expect(misplaced).toMatchObject({ code: 'WRONG_SECTION', pointer: '/item/0/linkId' });
    expect(misplaced?.message).toContain("'power'");
  });

  it('is an answer of another type, of another system, or one too many', () => {
    expect(inBrief(faultsOf(power({ linkId: dorsiflexion, answer: [{ valueString: '3' }] })))).toEqual([
      'WRONG_VALUE_PROPERTY /item/0/item/0/answer/0/valueString',
    ]);
    expect(inBrief(faultsOf(power({ linkId: dorsiflexion, answer: [coding(systems.loinc, '3')] })))).toEqual([
      'UNKNOWN_KEY /item/0/item/0/answer/0/valueCoding/system',
    ]);
    expect(inBrief(faultsOf(power({ linkId: dorsiflexion, answer: [grade('3'), grade('4')] })))).toEqual([
      'ONLY_ONE /item/0/item/0/answer/1',
    ]);
    expect(
      inBrief(
        faultsOf(power({ linkId: dorsiflexion, answer: [grade('3')] }, { linkId: dorsiflexion, answer: [grade('3')] })),
      ),
    ).toEqual(['ONLY_ONE /item/0/item/1']);
    expect(inBrief(faultsOf(power({ linkId: dorsiflexion, answer: [] })))).toEqual([
      'WRONG_TYPE /item/0/item/0/answer',
    ]);
  });

  it('is a place without a value, told by the linkId that is missing', () => {
    const place = { linkId: 'sensation/pinprick.site', answer: [coding(systems.bodySite, 'dermatome-L5')] };
    const group = { linkId: 'sensation/pinprick.findings', item: [place] };
    const faults = faultsOf(response({ item: [{ linkId: 'sensation', item: [group] }] }));
    expect(faults.map(({ code, suggestion }) => `${code} ${suggestion}`)).toEqual([
      'REQUIRED sensation/pinprick.side',
      'REQUIRED sensation/pinprick',
    ]);
  });

  it('leads to both places of a contradiction, in the pointer and in the words', () => {
    const finding = (value: string) => ({
      linkId: 'sensation/pinprick.findings',
      item: [
        { linkId: 'sensation/pinprick.site', answer: [coding(systems.bodySite, 'dermatome-L5')] },
        { linkId: 'sensation/pinprick.side', answer: [coding('http://terminology.hl7.org/CodeSystem/v2-0495', 'L')] },
        { linkId: 'sensation/pinprick', answer: [coding(scaleSystem('sensation'), value)] },
      ],
    });
    const faults = faultsOf(
      response({ item: [{ linkId: 'sensation', item: [finding('absent'), finding('normal')] }] }),
    );
    expect(inBrief(faults)).toEqual(['CONTRADICTION /item/0/item/0', 'CONTRADICTION /item/0/item/1']);
    expect(faults[0]?.message).toContain('/item/0/item/1');
  });

  it('is a part of the coma scale scored and not tested at once', () => {
    const eye = 'higher-function/glasgow-coma-scale.eye';
    const item = [
      { linkId: eye, answer: [{ valueInteger: 4 }] },
      { linkId: `${eye}.not-tested`, answer: [coding(systems.notTestedReason, 'unable')] },
    ];
    const group = { linkId: 'higher-function/glasgow-coma-scale', item };
    expect(inBrief(faultsOf(response({ item: [{ linkId: 'higher-function', item: [group] }] })))).toEqual([
      'ONLY_ONE /item/0/item/0/item/1/answer/0/valueCoding',
    ]);
  });

  it('is what the response itself lacks, in its own words', () => {
    const { authored: _a, questionnaire: _q, status: _s, identifier: _i, subject: _u, ...bare } = response();
    expect(
      faultsOf(bare)
        .map(({ code, suggestion }) => `${code} ${suggestion}`)
        .sort(),
    ).toEqual([
      'REQUIRED authored',
      'REQUIRED identifier',
      'REQUIRED questionnaire',
      'REQUIRED status',
      'REQUIRED subject',
    ]);
  });

  it('never breaks on JSON of any shape, and repeats no free text', () => {
    const shapes: unknown[] = [null, 1, 'x', [], {}, [null], [[]], [{ linkId: 3 }], [{ linkId: 'power', item: [7] }]];
    for (const item of shapes) {
      expect(() => faultsOf(response({ item }))).not.toThrow();
      expect(() => faultsOf(power({ linkId: dorsiflexion, answer: item }))).not.toThrow();
      expect(() => faultsOf(response({ author: item, source: item, subject: item, status: item }))).not.toThrow();
    }
    const said = JSON.stringify(
      faultsOf(power({ linkId: 'Jane Invented, born 1980', answer: [grade('Jane Invented')] })),
    );
    expect(said).not.toContain('Jane');
  });
});
