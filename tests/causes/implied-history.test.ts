import { describe, expect, it } from 'vitest';
import { withImplied } from '../../src/causes/implied-history.ts';
import { bedsideExam } from '../support/bedside.ts';

const keys = (conditions: readonly { readonly key: string; readonly present: boolean }[]) =>
  withImplied(bedsideExam({ history: { conditions } }).history)
    .filter(({ present }) => present)
    .map(({ key }) => key);

describe('what a history implies', () => {
  it('who is on dialysis has a kidney disease', () => {
    expect(keys([{ key: 'dialysis', present: true }])).toContain('chronic-kidney-disease');
    expect(keys([{ key: 'dialysis', present: false }])).not.toContain('chronic-kidney-disease');
  });

  it('sickness of pregnancy is of a pregnancy', () => {
    expect(keys([{ key: 'hyperemesis-gravidarum', present: true }])).toContain('pregnancy');
  });

  it('what is denied stays denied', () => {
    const both = [
      { key: 'dialysis', present: true },
      { key: 'chronic-kidney-disease', present: false },
    ];
    expect(keys(both)).toEqual(['dialysis']);
  });
});
