#!/usr/bin/env node
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { Command, CommanderError } from 'commander';
import { AppError } from '../kernel/errors.ts';
import { allCommands } from './commands/all-commands.ts';
import { exitCodes, type Surroundings, UsageError } from './commands/surroundings.ts';

/** `neuroexam`: the service and its tools from the command line. Data go to standard output, everything else to the error stream. */

/** Each part is loaded when a command asks for it, so that the help does not wait for the model. */
const surroundings: Surroundings = {
  serve: async (env) => (await import('../start.ts')).startFromEnvironment(env),
  startService: async (env) => {
    const [{ readConfig }, { startService }] = await Promise.all([import('../config.ts'), import('../service.ts')]);
    return startService(readConfig({ ...env, HOST: '127.0.0.1', PORT: '0' }));
  },
  openStores: async (env) => {
    const [{ readConfig }, { openStores }, { searchRules }] = await Promise.all([
      import('../config.ts'),
      import('../store/open-stores.ts'),
      import('../search/search-rules.ts'),
    ]);
    return openStores(readConfig(env).store, searchRules);
  },
  verifyAudit: async (env, anchor) => {
    const [{ readConfig }, { openAuditReader }, { verifyAudit }] = await Promise.all([
      import('../config.ts'),
      import('../store/audit/open-audit-reader.ts'),
      import('../store/audit/verify-audit.ts'),
    ]);
    const reader = await openAuditReader(readConfig(env).store);
    try {
      return await verifyAudit(reader, anchor);
    } finally {
      await reader.close();
    }
  },
  loadViews: async () => {
    const { viewsFrom } = await import('../views/load-views.ts');
    return viewsFrom(fileURLToPath(new URL('../../profiles/views', import.meta.url)));
  },
  loadSteps: async () => (await import('../context.ts')).loadExamSteps(),
  loadModel: async () => {
    const [{ compiledFiles }, { createExamReader }, { simulationModel }] = await Promise.all([
      import('../context.ts'),
      import('../exam/read-exam.ts'),
      import('./simulated/simulated-patient.ts'),
    ]);
    const compiled = compiledFiles();
    return simulationModel(createExamReader(compiled?.validators), compiled?.model?.states);
  },
  startConvertWorker,
};

/** From the build, or from the sources: there, Node 20 does not hand the loader of TypeScript on to workers. */
function startConvertWorker(): Worker {
  const extension = extname(import.meta.url);
  const module = new URL(`./convert-worker${extension}`, import.meta.url);
  if (extension !== '.ts') return new Worker(module);
  const load = `import('tsx/esm/api').then(({ register }) => { register(); return import('${module.href}'); })`;
  return new Worker(load, { eval: true });
}

const program = new Command('neuroexam').description(
  'The neurological examination as FHIR: run the service, convert, check and invent exams.',
);
for (const create of allCommands) program.addCommand(create(surroundings));
for (const command of [program, ...program.commands]) {
  command.exitOverride().configureHelp({ helpWidth: 120 }).showHelpAfterError('(--help lists what it takes)');
}

// Whoever reads standard output may stop early, such as `head`.
process.stdout.on('error', () => process.exit(exitCodes.fine));

try {
  await program.parseAsync();
} catch (error) {
  process.exitCode = exitCodeOf(error);
}

function exitCodeOf(error: unknown): number {
  // Commander has said already what it has to say.
  if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.fine : exitCodes.wrongUse;
  if (error instanceof UsageError || error instanceof AppError) {
    process.stderr.write(`neuroexam: ${error.message}\n`);
    return exitCodes.wrongUse;
  }
  // The message of anything else might quote an exam.
  const code = error instanceof Error && 'code' in error ? ` (${String(error.code)})` : '';
  process.stderr.write(`neuroexam: it cannot go on${code}.\n`);
  return exitCodes.wrongUse;
}
