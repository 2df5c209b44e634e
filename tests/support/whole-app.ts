import { rmSync } from 'node:fs';
import type { Express } from 'express';
import { readConfig } from '../../src/config.ts';
import { closeContext, createContext } from '../../src/context.ts';
import { createApp } from '../../src/http/app.ts';
import { compiledByBuild } from './built.ts';
import { temporaryFolder } from './service.ts';

export interface MountedRoute {
  /** In capitals, such as `POST`. */
  readonly method: string;
  /** As the router has it, such as `/exams/:id`. */
  readonly path: string;
}

interface Layer {
  readonly route?: { readonly path: string; readonly methods: Readonly<Record<string, boolean>> };
  readonly handle?: { readonly stack?: readonly Layer[] };
}

/** Lets somebody look at the application of a whole service on an empty store, which listens nowhere and is then let go. */
export async function lookAtWholeApp<Seen>(look: (app: Express) => Seen): Promise<Seen> {
  const dataDir = temporaryFolder();
  const config = readConfig({ LOG_LEVEL: 'silent', DATA_DIR: dataDir, VIEW_TABLES_SECONDS: '0' });
  const context = await createContext(config, compiledByBuild());
  try {
    return look(createApp(context, () => false));
  } finally {
    await closeContext(context);
    rmSync(dataDir, { recursive: true, force: true });
  }
}

/** Every method of every path that an application answers, taken from the framework's own router. */
export function mountedRoutes(app: Express): readonly MountedRoute[] {
  return routesIn((app as unknown as { router: { stack: readonly Layer[] } }).router.stack);
}

function routesIn(stack: readonly Layer[]): readonly MountedRoute[] {
  return stack.flatMap(({ route, handle }) => {
    if (route === undefined) return routesIn(handle?.stack ?? []);
    // `_all` is the check of the method that stands before every handler.
    const methods = Object.keys(route.methods).filter((method) => method !== '_all');
    return methods.map((method) => ({ method: method.toUpperCase(), path: route.path }));
  });
}
