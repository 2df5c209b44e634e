import { rmSync } from 'node:fs';
import { readConfig } from '../../src/config.ts';
import { createContext } from '../../src/context.ts';
import { createApp } from '../../src/http/app.ts';
import { compiledByBuild } from '../support/built.ts';
import { temporaryFolder } from '../support/service.ts';

export interface TableRow {
  /** In capitals, such as `POST`. */
  readonly method: string;
  /** As the router has it, such as `/exams/:id`. */
  readonly path: string;
}

interface Layer {
  readonly route?: { readonly path: string; readonly methods: Readonly<Record<string, boolean>> };
  readonly handle?: { readonly stack?: readonly Layer[] };
}

/** Every method of every path that the service answers, taken from the router of a whole service. */
export async function routeTable(): Promise<readonly TableRow[]> {
  const dataDir = temporaryFolder();
  const config = readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir, VIEW_TABLES_SECONDS: '0' });
  const context = await createContext(config, compiledByBuild());
  try {
    const app = createApp(context, () => false) as unknown as { router: { stack: readonly Layer[] } };
    return rowsOf(app.router.stack);
  } finally {
    await context.viewRefresher.stop();
    await context.exportWorker.stop();
    await context.deliveryWorker.stop();
    context.operation.stop();
    await context.exams.close();
    rmSync(dataDir, { recursive: true, force: true });
  }
}

function rowsOf(stack: readonly Layer[]): TableRow[] {
  return stack.flatMap(({ route, handle }) => {
    if (route === undefined) return rowsOf(handle?.stack ?? []);
    // `_all` is the check of the method that stands before every handler.
    const methods = Object.keys(route.methods).filter((method) => method !== '_all');
    return methods.map((method) => ({ method: method.toUpperCase(), path: route.path }));
  });
}
