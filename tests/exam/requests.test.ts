import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogueDocument } from '../../src/exam/catalogue/catalogue-document.ts';
import { examSchemas } from '../../src/exam/schema/exam-schemas.ts';
import { requestWith } from './support/exam-request.ts';
import { faultsOf, read } from './support/read.ts';

const keys = catalogueDocument().investigations.map(({ key }) => key);

describe('the investigations that the examiner wants proposed', () => {
  it('are not said by an exam without them, which is another thing than none', () => {
    expect(read(requestWith({}))).not.toHaveProperty('requests');
    expect(read(requestWith({ requests: [] })).requests).toEqual([]);
  });

  it('are any of the catalogue, each once, in whatever order', () => {
    const isValid = new Ajv2020({ strict: false }).compile(examSchemas()[0]?.schema ?? {});
    fc.assert(
      fc.property(fc.shuffledSubarray(keys), (requests) => {
        const body = requestWith({ requests });
        expect(isValid(body)).toBe(true);
        expect(read(body).requests).toEqual(keys.filter((key) => requests.includes(key)));
      }),
      { numRuns: 20 },
    );
    expect(isValid(requestWith({ requests: ['mri-brain', 'mri-brain'] }))).toBe(false);
    expect(isValid(requestWith({ requests: ['mri'] }))).toBe(false);
  });

  it.each([
    ['nerve-conduction-studies', 'nerve-conduction-study'],
    ['brain-mri', 'mri-brain'],
    ['emg', 'electromyography'],
  ])('are refused by another name, with the nearest key: %s', (wrong, right) => {
    expect(faultsOf(requestWith({ requests: ['mri-lumbar-spine', wrong] }))).toEqual([
      {
        pointer: '/requests/1',
        code: 'UNKNOWN_KEY',
        message: `No such key '${wrong}'. Did you mean '${right}'?`,
        suggestion: right,
      },
    ]);
  });

  it('are never repeated by what could be a person', () => {
    const [fault] = faultsOf(requestWith({ requests: ['Invented Person'] }));
    expect(fault).toMatchObject({ pointer: '/requests/0', code: 'UNKNOWN_KEY' });
    expect(fault?.message).not.toContain('Invented');
  });

  it('are refused where one is there twice, beside all else that is wrong', () => {
    const requests = ['mri-brain', 'ct-head', 'mri-brain', 'ct-haed', 'ct-head'];
    const faults = faultsOf(requestWith({ requests, extra: 1 }));
    expect(faults.map(({ pointer, code }) => `${pointer} ${code}`).sort()).toEqual([
      '/extra UNKNOWN_PROPERTY',
      '/requests/2 REPEATED',
      '/requests/3 UNKNOWN_KEY',
      '/requests/4 REPEATED',
    ]);
    expect(faults.find(({ pointer }) => pointer === '/requests/4')?.message).toBe(
      "'ct-head' is there before, at /requests/1: give each once.",
    );
  });

  it.each([['mri-brain'], [null], [[3]], [{ key: 'mri-brain' }], [[['mri-brain']]]])(
    'are a list of keys, not %j',
    (requests) => {
      expect(faultsOf(requestWith({ requests })).map(({ code }) => code)).toEqual(['WRONG_TYPE']);
    },
  );
});
