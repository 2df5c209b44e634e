import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Site } from '../../src/localisation/hypothesis.ts';
import { siteCatalogue } from '../../src/localisation/sites.ts';
import { judgeCommitment } from '../../src/practice/judge-commitment.ts';
import { practiceSites, readCommitment } from '../../src/practice/practice-sites.ts';

const sites = siteCatalogue();

function site(code: string): Site {
  const found = sites.find((one) => one.code === code);
  if (found === undefined) throw new Error(`There is no site ${code}.`);
  return found.site;
}

const grade = (truth: string, committed: string) => judgeCommitment(site(truth), site(committed)).grade;

describe('a commitment', () => {
  it('is right for the true site, whichever it is, and names it as the service offers it', () => {
    expect(sites.length).toBeGreaterThan(500);
    for (const { site: truth } of sites) {
      const offered = practiceSites.find((one) => one.site === truth.key);
      const read = readCommitment(
        {
          site: truth.key,
          ...(offered !== undefined && offered.sides.length > 0 && truth.side !== null ? { side: truth.side } : {}),
          ...(truth.level === null ? {} : { level: truth.level }),
        },
        '/commitment',
      );
      expect(read).toMatchObject({ committed: { site: { key: truth.key, level: truth.level } } });
      if ('committed' in read) expect(judgeCommitment(truth, read.committed.site).grade).toBe('right');
    }
  });

  it.each([
    ['nerve-root-L5.left', 'nerve-root-S1.left', 'near'],
    ['nerve-root-L5.left', 'adjacent-nerve-roots-L4.left', 'near'],
    ['nerve-root-L5.left', 'nerve-root-L5.right', 'wrong'],
    ['nerve-root-L5.left', 'nerve-root-C5.left', 'wrong'],
    ['median-nerve-wrist.right', 'median-nerve-elbow.right', 'near'],
    ['median-nerve-wrist.right', 'median-nerve-elbow.left', 'wrong'],
    ['median-nerve-wrist.right', 'lateral-cord.right', 'near'],
    ['spinal-cord-transverse-T8.both', 'spinal-cord-transverse-T9.both', 'right'],
    ['spinal-cord-transverse-T8.both', 'spinal-cord-transverse-T11.both', 'near'],
    ['spinal-cord-transverse-T8.both', 'spinal-cord-transverse-C5.both', 'wrong'],
    ['spinal-cord-transverse-T8.both', 'spinal-cord-central-T8.both', 'near'],
    ['optic-nerve.both', 'optic-nerve.left', 'near'],
    ['thalamus.left', 'common-fibular-nerve.left', 'wrong'],
    ['no-lesion', 'no-lesion', 'right'],
    ['no-lesion', 'thalamus.left', 'wrong'],
    ['thalamus.left', 'no-lesion', 'wrong'],
  ])('for %s, given %s, is %s', (truth, committed, expected) => {
    expect(grade(truth, committed)).toBe(expected);
  });

  it('says why, and is as near the other way round', () => {
    const any = fc.constantFrom(...sites.map((one) => one.site));
    fc.assert(
      fc.property(any, any, (one, other) => {
        const verdict = judgeCommitment(one, other);
        expect(verdict.because).toMatch(/^[A-Z\d].*\.$/);
        expect(judgeCommitment(other, one).grade).toBe(verdict.grade);
      }),
    );
  });
});
