import { misspeltSettings } from './config/misspelt.ts';
import { readConfig } from './config.ts';
import { AppError, ConfigError, StoreError } from './kernel/errors.ts';
import { startService, stopOnSignals } from './service.ts';

/**
 * Starts the service from an environment and stops it on a signal; prints one line with its address when it answers.
 * @returns nothing once it runs; an exit code when it cannot start, for a reason that was told on the error stream
 */
export async function startFromEnvironment(env: NodeJS.ProcessEnv): Promise<number | undefined> {
  try {
    const config = readConfig(env);
    const service = await startService(config);
    const { logger } = service;
    for (const [name, meant] of misspeltSettings(env)) {
      logger.warn({ variable: name, meant }, 'unknown variable');
    }
    if (config.isOpenToNetwork) {
      logger.warn('open to the network without access control; who reaches this port reads every exam');
    } else if (config.access === undefined) {
      logger.info('no access control is configured: listening on loopback only, for this machine alone');
    }
    stopOnSignals(service);
    process.stdout.write(`neuroexam-fhir ready at ${service.url}\n`);
    if (service.metricsUrl !== undefined) process.stdout.write(`metrics at ${service.metricsUrl}/metrics\n`);
    return undefined;
  } catch (error) {
    process.stderr.write(`neuroexam-fhir cannot start: ${reasonOf(error)}\n`);
    return 1;
  }
}

function reasonOf(error: unknown): string {
  if (error instanceof ConfigError) return error.problems.join('\n  ');
  if (error instanceof StoreError) return `${error.message} DATA_DIR and DATABASE_URL say where the store is.`;
  if (error instanceof AppError) return error.message;
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'EADDRINUSE')
    return 'the port is in use; set PORT or METRICS_PORT to another one, or to 0 for a free one.';
  if (/^(EACCES|EADDRNOTAVAIL|ENOTFOUND|EAI_AGAIN)$/.test(code)) return `HOST and PORT cannot be used (${code}).`;
  // Nothing of a request can be in here: no request has been accepted yet.
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
