import { expect, it } from 'vitest';
import { declaredRoutes } from '../../src/http/endpoint.ts';
import { describedOperations } from '../support/api-document.ts';
import { lookAtWholeApp } from '../support/whole-app.ts';

/** What the routes themselves declare, in the words of the description. */
function declaredSecurity(): Promise<ReadonlyMap<string, unknown>> {
  return lookAtWholeApp(({ router }) => {
    const routes = router.stack.flatMap(({ handle }) => declaredRoutes(handle));
    return new Map(
      routes.flatMap(({ path, needs }) =>
        [...needs].map(([method, { kind, all, some, isNarrowed }]): [string, unknown] => {
          const key = `${method} ${path.replace(/[:*](\w+)/g, '{$1}')}`;
          if (kind === 'open') return [key, []];
          if (kind === 'known') return [key, [{}, { bearer: [] }]];
          const lists = some.length === 0 ? [all] : some.map((one) => [...all, one]);
          const bearers = (isNarrowed ? ['system', 'patient'] : ['system']).flatMap((who) =>
            lists.map((list) => ({ bearer: list.map((permission) => `${who}/${permission}`) })),
          );
          return [key, [{}, ...bearers]];
        }),
      ),
    );
  });
}

it('says of every operation which scopes its route needs', async () => {
  const declared = await declaredSecurity();
  expect(declared.size).toBeGreaterThan(100);
  const wrong = describedOperations.flatMap(({ method, path, operation }) => {
    const says = (operation as { readonly security?: unknown }).security;
    const needs = declared.get(`${method} ${path}`);
    return JSON.stringify(says) === JSON.stringify(needs) ? [] : [{ route: `${method} ${path}`, says, needs }];
  });
  expect(wrong).toEqual([]);
});
