import { createWriteStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { finished } from 'node:stream/promises';
import type { Bundle, CapabilityStatement, ClinicalImpression, FhirResource, Measure } from 'fhir/r4.js';
import { readConfig } from '../../src/config.ts';
import { startService } from '../../src/service.ts';
import { canonicalBase, systems } from '../../src/terminology/systems.ts';
import { send, sendJson } from '../support/client.ts';

/*
 * Starts the service on the data of a folder and writes what it answers, one resource a line, for a validator to read:
 * tsx collect-answers.ts DATA_DIR OUT.ndjson. What a search or a history brings is whole pages, with links and includes.
 */
const [dataDir = '', outFile = ''] = process.argv.slice(2);
const service = await startService(readConfig({ PORT: '0', LOG_LEVEL: 'silent', DATA_DIR: dataDir }));
const out = createWriteStream(outFile);

const keep = async (address: string, body?: unknown): Promise<FhirResource> => {
  const url = new URL(address, service.url).href;
  const answer = body === undefined ? await send(url) : await sendJson(url, body);
  const resource = answer.json<FhirResource>();
  if (typeof resource.resourceType !== 'string')
    throw new Error(`${address} answered ${answer.status} without a resource`);
  out.write(`${JSON.stringify(resource)}\n`);
  return resource;
};
const resourcesOf = (answer: FhirResource) => (answer as Bundle).entry?.flatMap(({ resource }) => resource ?? []) ?? [];

try {
  const capabilities = (await keep('/fhir/metadata')) as CapabilityStatement;
  const { resource: types = [] } = capabilities.rest?.[0] ?? {};

  const impressions = resourcesOf(await keep('/fhir/ClinicalImpression?_count=200')) as ClinicalImpression[];
  const tags = impressions.flatMap(({ meta }) => meta?.tag ?? []);
  const exams = [...new Set(tags.flatMap(({ system, code }) => (system === systems.exam && code ? [code] : [])))];
  for (const exam of exams.slice(0, 3)) {
    for (const type of ['transaction', 'collection', 'document']) await keep(`/exams/${exam}/bundle?type=${type}`);
    const form = await keep(`/exams/${exam}/questionnaire-response`);
    await keep('/fhir/QuestionnaireResponse/$extract', form);
  }

  // Summaries and chosen elements are left out: a subset does not meet the profile of the whole.
  for (const { type, interaction = [] } of types) {
    if (!interaction.some(({ code }) => code === 'search-type')) continue;
    const isKept = interaction.some(({ code }) => code === 'history-type');
    const [first] = resourcesOf(await keep(`/fhir/${type}${isKept ? '?_count=10&_total=accurate' : ''}`));
    if (first?.id !== undefined) await keep(`/fhir/${type}/${first.id}`);
    if (!isKept) continue;
    await keep(`/fhir/${type}?_summary=count`);
    await keep(`/fhir/${type}/_history?_count=10`);
  }
  await keep('/fhir/Observation?status=entered-in-error&_count=5');
  await keep('/fhir/ClinicalImpression?_count=3&_include=ClinicalImpression:finding-ref&_revinclude=Provenance:target');
  await keep('/fhir/Observation?_count=3&nonsense=1');

  const period = 'periodStart=2020-01-01&periodEnd=2030-01-01';
  for (const { id } of resourcesOf(await keep('/fhir/Measure')) as Measure[]) {
    for (const type of ['population', 'subject-list']) {
      await keep(`/fhir/Measure/${id}/$evaluate-measure?${period}&reportType=${type}`);
    }
  }

  const code = 'code=power/ankle-dorsiflexion';
  await keep(`/fhir/CodeSystem/$lookup?system=${systems.examItem}&${code}`);
  await keep(`/fhir/CodeSystem/$validate-code?url=${systems.examItem}&${code}`);
  await keep(`/fhir/CodeSystem/$subsumes?system=${systems.localisation}&codeA=polyneuropathy&codeB=polyneuropathy`);
  await keep(
    `/fhir/ValueSet/$validate-code?url=${canonicalBase}/ValueSet/exam-items&system=${systems.examItem}&${code}`,
  );
  await keep(`/fhir/ConceptMap/exam-item-to-hpo/$translate?system=${systems.examItem}&code=gait/spastic`);
  for (const { id } of resourcesOf(await keep('/fhir/ValueSet'))) {
    await keep(`/fhir/ValueSet/${id}/$expand?count=50`);
  }

  await keep('/fhir/Observation/not-there');
  await keep('/fhir/Observation?date=yesterday');
  await keep('/exams', { status: 'final' });
  const example = JSON.parse(await readFile(join('tests', 'examples', 'foot-drop.json'), 'utf8'));
  example.findings.power[0].movement = 'ankle-dorsiflexio';
  await keep('/exams', example);
} finally {
  out.end();
  await finished(out);
  await service.stop();
}
