import { describe, expect, it } from 'vitest';
import { checkView } from '../../src/views/check-view.ts';

const view = (paths: readonly string[]) => ({
  resourceType: 'ViewDefinition',
  status: 'active',
  resource: 'Observation',
  select: [{ column: paths.map((path, n) => ({ name: `c${n}`, path })) }],
});

describe('paths that would take the parser long', () => {
  it.each([
    ['brackets that stay open', '('.repeat(500)],
    ['calls that stay open', 'where('.repeat(200)],
    ['brackets inside one another', `${'('.repeat(21)}code${')'.repeat(21)}`],
    ['too many characters', `code.${'a'.repeat(2_000)}`],
  ])('are refused for %s', (_name, path) => {
    expect(checkView(view([path])).map(({ code, pointer }) => [code, pointer])).toEqual([
      ['FORMAT', '/select/0/column/0/path'],
    ]);
  });

  it('are refused together, and told once, when each of them alone is short enough', () => {
    const path = `${'text.'.repeat(399)}text`;
    const faults = checkView(view(Array.from({ length: 40 }, () => path)));
    expect(faults.map(({ code }) => code)).toEqual(['TOO_LARGE']);
  });

  it('are taken where brackets are as deep as allowed', () => {
    expect(checkView(view([`${'('.repeat(20)}code.text${')'.repeat(20)}`]))).toEqual([]);
  });
});
