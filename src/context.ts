import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isDeepStrictEqual } from 'node:util';
import type { Measure } from 'fhir/r4.js';
import { type Logger, pino } from 'pino';
import { createAccessControl } from './access/access-control.ts';
import { exportEndRecord } from './audit/export-end.ts';
import type { Config } from './config.ts';
import type { DeliveryWorker } from './delivery/delivery-worker.ts';
import { readCriteria } from './delivery/read-criteria.ts';
import { startDeliveries } from './delivery/start-deliveries.ts';
import { createSubscriptions } from './delivery/subscriptions.ts';
import { createExamReader } from './exam/read-exam.ts';
import type { QuickValidators } from './exam/schema/validator.ts';
import { buildBundle } from './fhir/bundle.ts';
import type { AppContext } from './http/app-context.ts';
import { createExamRecords } from './http/exam-records.ts';
import type { ExamSteps } from './http/exam-steps.ts';
import { measuredExams, measuredSteps } from './http/metrics/measured-store.ts';
import { createServiceMetrics } from './http/metrics/service-metrics.ts';
import { createOperation } from './http/operation.ts';
import { packedCatalogue } from './http/packed-catalogue.ts';
import { rememberedPicture } from './http/packed-picture.ts';
import { readPageFiles } from './http/page-files.ts';
import { publishedFiles } from './http/published-files.ts';
import { createSealedText } from './http/sealed-text.ts';
import { AppError } from './kernel/errors.ts';
import { type CompiledModel, unpackModel } from './localisation/compiled-model.ts';
import { createLocaliser } from './localisation/localise.ts';
import { modelVersion } from './localisation/model-version.ts';
import type { CompiledMeasure } from './measures/compile-measure.ts';
import { measuresFrom } from './measures/load-measures.ts';
import { drawBody } from './picture/body-picture.ts';
import { drawNeuraxis } from './picture/neuraxis/neuraxis-picture.ts';
import { createPractice } from './practice/practice.ts';
import type { Terminology } from './search/read-token.ts';
import { searchRules } from './search/search-rules.ts';
import { startExportWorker } from './store/export-worker.ts';
import { openLinkKey } from './store/link-key.ts';
import { openStores } from './store/open-stores.ts';
import type { ResourceRepository } from './store/resource-repository.ts';
import { startViewRefresher } from './store/view-refresher.ts';
import { createViewTables } from './store/view-tables.ts';
import { createAssessor } from './summary/assess.ts';
import { localisationAnswer } from './summary/localisation-answer.ts';
import { expandValueSet } from './terminology/expand.ts';
import { indexCodes } from './terminology/hierarchy.ts';
import { loadConformance } from './terminology/load.ts';
import { viewsFrom } from './views/load-views.ts';

/** Folder of package.json, the same number of steps up from `src` and from `dist`. */
const rootDir = fileURLToPath(new URL('..', import.meta.url));

/** Day of the version in package.json. */
const releaseDate = '2026-11-25';

/**
 * Builds everything that the service consists of; the only place where its parts are put together.
 * @throws StoreError when the store cannot be opened, ConfigError when a file of keys cannot be read
 */
export async function createContext(config: Config, compiled = compiledFiles()): Promise<AppContext> {
  const logger = createLogger(config);
  const now = () => new Date();
  const access =
    config.access &&
    (await createAccessControl(
      config.access,
      (variable) => logger.error({ code: 'ACCESS_FILE_FAILED', variable }, 'failed'),
      now,
    ));
  const conformance = loadConformance(rootDir);
  const codes = indexCodes(conformance);
  const terminology: Terminology = {
    expandValueSet: (url) => expandValueSet(conformance, codes, url),
    descendants: (system, code) => codes.descendants(system, code).filter((below) => below !== code),
  };
  let wakeDeliveries = () => {};
  const stores = await openStores(config.store, searchRules, {
    forwards: config.delivery.forward !== undefined,
    readCriteria: (criteria) => readCriteria(criteria, terminology),
    onEnqueued: () => wakeDeliveries(),
  });
  const { engine, resources, exports, erasures, audit, outbox } = stores;
  const version = packageVersion();
  const metrics = createServiceMetrics({ version, modelVersion, store: engine.dialect });
  const exams = measuredExams(stores.exams, metrics);
  const steps = measuredSteps(createExamSteps(compiled), metrics);
  const subscriptions = createSubscriptions(resources, stores.channels, now);
  const measures = measuresFrom(join(rootDir, 'profiles', 'measures'));
  let deliveryWorker: DeliveryWorker;
  let linkKey: Buffer;
  try {
    await keepMeasures(resources, measures, now());
    linkKey = await openLinkKey(engine);
    deliveryWorker = startDeliveries({
      ...stores,
      settings: config.delivery,
      subscriptions,
      onError: (error) => {
        const cause = error instanceof AppError ? error.code : 'UNEXPECTED';
        logger.error({ code: 'DELIVERY_FAILED', cause }, 'failed');
      },
    });
  } catch (error) {
    await exams.close();
    throw error;
  }
  wakeDeliveries = deliveryWorker.wake;
  const views = viewsFrom(join(rootDir, 'profiles', 'views'));
  const viewTables = createViewTables(engine, views.values(), ({ code }) => logger.error({ code }, 'failed'));
  const exportTrail = { recordOf: exportEndRecord(now, version), append: audit.append };
  const exportWorker = startExportWorker(exports, exportTrail, () => logger.error({ code: 'EXPORT_FAILED' }, 'failed'));
  const viewRefresher = startViewRefresher(viewTables, config.viewTablesSeconds * 1000, (error) => {
    const cause = error instanceof AppError ? error.code : 'UNEXPECTED';
    logger.error({ code: 'VIEW_TABLES_FAILED', cause }, 'failed');
  });
  return {
    access,
    exams,
    resources,
    exports,
    erasures,
    audit,
    outbox,
    deliveryWorker,
    subscriptions,
    subscriptionRules: {
      allowedHosts: new Set(config.delivery.webhookHosts),
      checkCriteria: (criteria) => readCriteria(criteria, terminology),
    },
    exportWorker,
    views,
    viewRefresher,
    sealedText: createSealedText(linkKey),
    operation: createOperation(config, metrics, {
      pendingWrites: () => engine.pendingWrites,
      exports: () => exportWorker.pending,
      viewsRefreshedAt: () => viewRefresher.refreshedAt,
      deliveries: () => outbox.figures(now().getTime()),
      checkStore: () => exams.check(),
    }),
    publicUrl: config.publicUrl,
    now,
    prepare: function* () {
      yield* steps.prepare();
      yield* drawBody();
      yield* drawNeuraxis();
    },
    practice: steps.practice,
    records: createExamRecords(steps, exams, now, version),
    catalogue: packedCatalogue(),
    page: readPageFiles(join(rootDir, 'dist', 'page')),
    picture: rememberedPicture(),
    conformance,
    terminology,
    measures,
    files: publishedFiles(rootDir),
    software: { version, releaseDate },
    bodyLimitBytes: config.bodyLimitBytes,
    cdsAllowedOrigins: config.cdsAllowedOrigins,
    logger,
  };
}

/** Ends the work in the background, keeps what was accepted, and lets go of files and connections. */
export async function closeContext(context: AppContext): Promise<void> {
  await context.viewRefresher.stop();
  await context.exportWorker.stop();
  await context.deliveryWorker.stop();
  await context.exams.close();
  context.operation.stop();
}

/** Keeps the measures that come with the service among those of its users; a version that is there already stays. */
async function keepMeasures(
  resources: ResourceRepository,
  measures: ReadonlyMap<string, CompiledMeasure>,
  now: Date,
): Promise<void> {
  for (const [id, { definition }] of measures) {
    const kept = await resources.read('Measure', id);
    const { meta: _meta, ...content } = JSON.parse(kept?.json ?? '{}') as Measure;
    if (!isDeepStrictEqual(content, definition)) await resources.put({ ...definition, id }, now);
  }
}

/** What the build has worked out beforehand. */
export interface Compiled {
  readonly model: CompiledModel | null;
  readonly validators: QuickValidators;
}

/** The files that the build writes beside this one; a run from the sources has none and works everything out itself. */
export function compiledFiles(folder = new URL('.', import.meta.url)): Compiled | null {
  const modelFile = new URL('compiled-model.bin', folder);
  const schemasFile = new URL('compiled-schemas.cjs', folder);
  if (!existsSync(modelFile) || !existsSync(schemasFile)) return null;
  const validators = createRequire(import.meta.url)(fileURLToPath(schemasFile)) as QuickValidators;
  return { model: unpackModel(readFileSync(modelFile)), validators };
}

/** The pure steps as the service has them, for commands and their workers. */
export function loadExamSteps(): ExamSteps {
  return createExamSteps(compiledFiles());
}

/** The pure steps with their tables compiled; takes a moment, so it is done once. */
export function createExamSteps(compiled: Compiled | null = null): ExamSteps {
  const reader = createExamReader(compiled?.validators);
  const localiser = createLocaliser(compiled?.model);
  const assessor = createAssessor(localiser);
  return {
    readExam: (body, options) => reader.read(body, options),
    formVersion: packageVersion(),
    assess: (exam, options) => assessor.assess(exam, options),
    toBundle: buildBundle,
    toLocalisationAnswer: localisationAnswer,
    practice: createPractice(reader, localiser),
    prepare: function* () {
      yield* assessor.prepare();
      reader.prepare();
    },
  };
}

/** Logs go to the error stream, so that standard output holds the start-up line alone. */
function createLogger({ logLevel }: Config): Logger {
  const formatters = { level: (label: string) => ({ level: label }) };
  const options = { level: logLevel, base: null, timestamp: pino.stdTimeFunctions.isoTime, formatters };
  return pino(options, pino.destination(2));
}

function packageVersion(): string {
  const { version } = JSON.parse(readFileSync(join(rootDir, 'package.json'), 'utf8')) as { version: string };
  return version;
}
