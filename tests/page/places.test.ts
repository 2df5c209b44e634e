import { describe, expect, it, vi } from 'vitest';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import { draftOfExam } from '../../src/page/draft/draft-of-exam.ts';
import { examOfDraft } from '../../src/page/draft/exam-of-draft.ts';
import { catalogue, exampleExam } from './catalogue.ts';

// The page keeps its view in the address.
vi.stubGlobal('location', { hash: '' });
const { placeAt, placeOfWords } = await import('../../src/page/send/places.ts');

const index = indexCatalogue(catalogue);
const built = examOfDraft(draftOfExam(exampleExam('foot-drop'), index), index);

describe('from a fault to where it is mended', () => {
  it.each([
    ['/subject/reference', 'field', 'Person examined'],
    ['/performer/0', 'field', 'Examiner'],
    ['/requests/2', 'field', 'Tests to propose'],
    ['/otherwiseNormal/0', 'view', 'Cranial nerves'],
    ['/history/symptoms/1', 'view', 'History, results'],
    ['/results/0/valueQuantity', 'view', 'History, results'],
  ])('%s', (pointer, kind, label) => {
    expect(placeAt(pointer, built, index)).toMatchObject({ kind, label });
  });

  it('leads from a finding to the cells that it was made of', () => {
    const { power } = built.exam.findings as Readonly<Record<string, readonly Readonly<Record<string, unknown>>[]>>;
    const at = power?.findIndex(({ movement, side }) => movement === 'ankle-dorsiflexion' && side === 'left');
    expect(placeAt(`/findings/power/${at}/grade`, built, index)).toMatchObject({
      kind: 'cells',
      label: 'Ankle dorsiflexion, left',
      addresses: [{ section: 'power', item: 'ankle-dorsiflexion', side: 'left' }],
    });
  });

  it('leads nowhere from a fault of the whole', () => {
    expect(placeAt(undefined, built, index)).toBeUndefined();
    expect(placeAt('', built, index)).toBeUndefined();
  });
});

/** As red flags put what they lack. */
describe('from what was not examined to where it is recorded', () => {
  it.each([
    ['Time of onset not stated.', 'view', 'History, results'],
    ['plantar responses were not tested', 'cells', 'Plantar response'],
    ['saddle sensation was not examined, and it matters', 'view', 'Sensation'],
    ['vital capacity was not measured, and it matters', 'view', 'History, results'],
    ['bladder function was not examined or asked for, and it matters', 'view', 'Sphincters and autonomic'],
  ])('%s', (text, kind, label) => {
    expect(placeOfWords(text, index)).toMatchObject({ kind, label });
  });

  it('leads nowhere where no name shares a word', () => {
    expect(placeOfWords('zzz was not tested', index)).toBeUndefined();
  });
});
