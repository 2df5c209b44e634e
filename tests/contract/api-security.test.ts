import { rmSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { createContext } from '../../src/context.ts';
import { createApp } from '../../src/http/app.ts';
import { declaredRoutes } from '../../src/http/endpoint.ts';
import { describedOperations } from '../support/api-document.ts';
import { compiledByBuild } from '../support/built.ts';
import { temporaryFolder } from '../support/service.ts';

/** What the routes themselves declare, in the words of the description. */
async function declaredSecurity(): Promise<ReadonlyMap<string, unknown>> {
  const folder = temporaryFolder();
  const config = readConfig({ LOG_LEVEL: 'silent', DATA_DIR: folder, VIEW_TABLES_SECONDS: '0' });
  const context = await createContext(config, compiledByBuild());
  try {
    const { stack } = createApp(context, () => false).router;
    const routes = stack.flatMap(({ handle }) => declaredRoutes(handle));
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
  } finally {
    await context.viewRefresher.stop();
    await context.exportWorker.stop();
    await context.deliveryWorker.stop();
    context.operation.stop();
    await context.exams.close();
    rmSync(folder, { recursive: true, force: true });
  }
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
