import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import { findRows, rowsOf } from '../../src/page/story/find-rows.ts';
import { readLine } from '../../src/page/story/read-line.ts';
import { tradeWords } from '../../src/page/story/trade-words.ts';
import { catalogue } from './catalogue.ts';

const rows = rowsOf(indexCatalogue(catalogue));

function first(line: string): string {
  const [read] = readLine(line, rows, 7);
  if (read === undefined) return '';
  const { row, isNegated, side, number, value } = read;
  const stated = number === undefined ? '' : 'problem' in number ? ' ?' : ` ${number.comparator ?? ''}${number.value}`;
  return `${isNegated ? 'no ' : ''}${row.kind}/${row.key}${side === undefined ? '' : ` ${side}`}${stated}${value === undefined ? '' : ` ${value.key}`}`;
}

/** What a clinician would mean by these words. Common practice. */
const lines: readonly (readonly [line: string, meant: string])[] = [
  ['back pain', 'symptoms/back-pain'],
  ['no back pain', 'no symptoms/back-pain'],
  ['- numbness', 'no symptoms/numbness'],
  ['denies headache', 'no symptoms/headache'],
  ['leg pain l', 'symptoms/leg-pain left'],
  ['no leg pain right', 'no symptoms/leg-pain right'],
  ['diplopia', 'symptoms/diplopia'],
  ['paresthesia', 'symptoms/paraesthesiae'],
  ['htn', 'conditions/hypertension'],
  ['af', 'conditions/atrial-fibrillation'],
  ['tia', 'conditions/transient-ischaemic-attack'],
  ['diabetes', 'conditions/diabetes-mellitus'],
  ['family diabetes', 'family/diabetes'],
  ['fh stroke', 'family/stroke'],
  ['vinc', 'medications/vincristine'],
  ['ssri', 'medications/serotonergic-medicine'],
  ['etoh', 'exposures/alcohol-excess'],
  ['nitrous', 'exposures/nitrous-oxide'],
  ['ck', 'results/creatine-kinase'],
  ['ck 1200', 'results/creatine-kinase 1200'],
  ['b12 <50', 'results/vitamin-b12 <50'],
  ['csf protein 1.2 g/L', 'results/csf-protein 1.2'],
  ['hba1c 5,3', 'results/hba1c ?'],
  ['mri brain', 'results/mri-brain'],
  ['mri brain infarct', 'results/mri-brain infarct'],
  ['mri brain nor', 'results/mri-brain normal'],
  ['ana pos', 'results/ana positive'],
  ['nerve conduction axonal', 'results/nerve-conduction-pattern axonal'],
  ['emg myopathic', 'results/needle-emg myopathic'],
  ['hemoglobin', 'results/haemoglobin'],
  ['vertgio', 'symptoms/vertigo'],
];

describe('a line typed into history and results', () => {
  it.each(lines)('%s', (line, meant) => expect(first(line)).toBe(meant));

  it('finds every row of the catalogue by its own label', () => {
    const lost = rows.filter((row) => !findRows(row.label, rows, 7).includes(row));
    expect(lost.map(({ key }) => key)).toEqual([]);
  });

  it('finds the same by an American spelling as by a British one', () => {
    for (const [british, american] of [
      ['oedema', 'edema'],
      ['tumour', 'tumor'],
      ['anaemia', 'anemia'],
      ['ischaemic', 'ischemic'],
      ['diarrhoea', 'diarrhea'],
    ] as const) {
      const found = findRows(british, rows, 99);
      expect(findRows(american, rows, 99), american).toEqual(found);
    }
  });

  it('never takes a result as absent, nor more rows than were asked for', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 30 }), fc.integer({ min: 1, max: 9 }), (line, limit) => {
        for (const text of [line, `no ${line}`]) {
          const reads = readLine(text, rows, limit);
          expect(reads.length).toBeLessThanOrEqual(limit);
          expect(reads.filter(({ row, isNegated }) => isNegated && row.kind === 'results')).toEqual([]);
          expect(new Set(reads.map(({ row }) => row)).size).toBe(reads.length);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('has no word of the trade that leads nowhere', () => {
    const idle = Object.keys(tradeWords).filter((word) => findRows(word, rows, 1).length === 0);
    expect(idle).toEqual([]);
  });

  it('says nothing of what it does not know', () => {
    expect(readLine('qqqq', rows, 7)).toEqual([]);
    expect(readLine('  ', rows, 7)).toEqual([]);
  });
});
