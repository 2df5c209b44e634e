import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bundleTypes } from '../../src/fhir/bundle-forms.ts';
import { bundleAs } from './support/bundle-building.ts';
import { assessment, exam, finding, rows } from './support/exam-fixture.ts';
import { structureProblems } from './support/r4-rules.ts';
import { xhtmlProblems } from './support/xhtml.ts';

const hostile = [
  '<script>alert(1)</script>',
  '</div><iframe src="x"/>',
  '&nbsp;&#0; ]]> <!-- -->',
  '"quoted" \'single\' a=b',
  'null \u0000 bell \u0007 escape \u001B',
  'half of a pair \uD800 and \uFFFE',
  'pair \u{1F9E0} kept',
];

function divs(text: string): string[] {
  const noted = finding(rows.ptosis, 'left', 'present', { abnormal: true, note: text });
  const [site, ...sites] = assessment.localisations;
  if (site === undefined) throw new Error('the fixture has a site');
  const about = {
    ...site,
    label: text,
    supporting: site.supporting.map((piece) => ({ ...piece, text, because: text })),
  };
  const said = {
    ...assessment,
    localisations: [about, ...sites],
    causes: assessment.causes.map((cause) => ({ ...cause, label: text })),
    redFlags: assessment.redFlags.map((flag) => ({ ...flag, label: text, action: text })),
    proposed: assessment.proposed.map((item) => ({ ...item, label: text, because: text })),
    notChosen: assessment.workup.map((item) => ({ ...item, label: text, because: text })),
    presentation: text,
    caution: text,
  };
  const subject = { reference: 'Patient/1', display: text };
  return bundleTypes.flatMap((type) => {
    const bundle = bundleAs(type, { ...exam, subject, findings: [noted] }, said);
    return [...JSON.stringify(bundle).matchAll(/"div":("(?:[^"\\]|\\.)*")/g)].map(([, div]) => JSON.parse(div ?? '""'));
  });
}

describe('narratives', () => {
  it.each(hostile)('are well-formed XHTML around %j', (text) => {
    const made = divs(text);
    expect(made.length).toBeGreaterThan(20);
    expect(made.flatMap(xhtmlProblems)).toEqual([]);
  });

  it('are well-formed around any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1, maxLength: 40 }), (text) => {
        expect(divs(`x${text}`).flatMap(xhtmlProblems)).toEqual([]);
      }),
      { numRuns: 50, seed: 1 },
    );
  });

  it('keep the words of the examiner, escaped', () => {
    expect(divs('<b>5</b> & more').some((div) => div.includes('&lt;b&gt;5&lt;/b&gt; &amp; more'))).toBe(true);
  });

  it('leave characters out of every other string that R4 forbids in one', () => {
    const note = 'a\u0000b\uD800c';
    const bundle = bundleAs(
      'collection',
      { ...exam, findings: [finding(rows.ptosis, 'left', 'present', { note })] },
      assessment,
    );
    expect(structureProblems(bundle)).toEqual([]);
    expect(JSON.stringify(bundle)).toContain('a\uFFFDb\uFFFDc');
  });
});
