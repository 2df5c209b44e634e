import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, pictureFile } from './chromium.ts';
import { type Bench, type OpenPage, openBench, untilAssessed } from './page-under-test.ts';
import { printedPages } from './printed-pages.ts';

const typed = [
  'ankle dorsi left 3',
  'great toe ext left 2',
  'ankle inversion left 5',
  'hip abd left 5',
  'ankle jerk both 2',
  'plantar both flexor',
  'pin dorsum of foot left reduced',
  'romberg nt unable',
];

interface Bundle {
  readonly type: string;
  readonly entry: readonly { readonly resource: { readonly resourceType: string } }[];
}

describe.skipIf(chromiumPath === undefined)('what goes out', () => {
  let bench: Bench;
  const opened: OpenPage[] = [];
  beforeAll(async () => {
    bench = await openBench();
  });
  afterEach(async () => {
    for (const one of opened.splice(0)) await one.page.context().close();
  });
  afterAll(() => bench?.close());

  /** A page with a record of an invented foot drop, at its last view. */
  async function atTheEnd(screen: 'phone' | 'desktop', subject: string): Promise<OpenPage> {
    const open = await bench.open(screen, '#/examine/legs');
    opened.push(open);
    for (const line of typed) {
      const field = open.page.getByRole('combobox', { name: 'Type a finding' });
      await field.fill(line);
      await field.press('Enter');
    }
    await untilAssessed(open);
    await open.page.getByRole('navigation', { name: 'Views' }).getByRole('link', { name: 'Finish' }).click();
    await open.page.getByLabel('Person examined').fill(subject);
    await open.page.getByLabel('Person examined').blur();
    return open;
  }

  async function bundleOf(id: string): Promise<Bundle> {
    const answer = await fetch(`${bench.service.url}/exams/${id}/bundle`);
    return (await answer.json()) as Bundle;
  }

  const count = ({ entry }: Bundle, type: string): number =>
    entry.filter(({ resource }) => resource.resourceType === type).length;

  const idIn = ({ page }: OpenPage): string => new URL(page.url()).hash.split('/')[2] ?? '';

  it('prints on one page that can be read', async () => {
    const { page } = await atTheEnd('desktop', 'Patient/invented-print');
    for (const format of ['A4', 'Letter'] as const) {
      const pdf = await page.pdf({ format, path: pictureFile(`presentation-${format}.pdf`) });
      const pages = await printedPages(pdf);
      expect(pages).toHaveLength(1);
      const [text = ''] = pages;
      for (const words of [
        'Patient/invented-print',
        'Ankle dorsiflexion',
        'ommon fibular nerve',
        'Romberg',
        'not a diagnosis',
      ]) {
        expect(text).toContain(words);
      }
    }
  });

  it('sends the record, keeps nothing of it, opens it again, and corrects it', async () => {
    const open = await atTheEnd('phone', 'Patient/invented-sent');
    const { page } = open;
    const ticks = page.getByRole('checkbox', { name: /Needle electromyography/ });
    await ticks.uncheck();
    await page.getByRole('button', { name: 'Send the exam' }).tap();
    await page.getByRole('heading', { name: 'Sent', exact: true }).waitFor();
    await page.screenshot({ path: pictureFile('sent-phone.png') });
    const kept = await page.evaluate(() => JSON.stringify({ ...localStorage, ...sessionStorage }));
    expect(kept).not.toMatch(/ankle-dorsiflexion|invented-sent/);
    const id = idIn(open);
    const sent = await bundleOf(id);
    expect(sent.type).toBe('transaction');
    expect(count(sent, 'Observation')).toBeGreaterThan(typed.length);
    const proposals = JSON.stringify(sent.entry.filter(({ resource }) => resource.resourceType === 'ServiceRequest'));
    expect(proposals).toContain('Nerve conduction study');
    expect(proposals).not.toContain('electromyography');

    await page.reload();
    await page.getByRole('button', { name: 'Correct this exam' }).tap();
    await page.getByRole('navigation', { name: 'Views' }).getByRole('link', { name: 'Examine' }).tap();
    const field = page.getByRole('combobox', { name: 'Type a finding' });
    await field.fill('ankle dorsi left 4');
    await field.press('Enter');
    await page.getByRole('navigation', { name: 'Views' }).getByRole('link', { name: 'Finish' }).tap();
    await page.getByRole('button', { name: 'Send the correction' }).tap();
    await page.getByRole('heading', { name: 'Correction sent' }).waitFor();
    const exam = (await (await fetch(`${bench.service.url}/exams/${id}`)).json()) as {
      status: string;
      findings: { power: { movement: string; grade: string }[] };
    };
    expect(exam.status).toBe('amended');
    expect(exam.findings.power.find(({ movement }) => movement === 'ankle-dorsiflexion')?.grade).toBe('4');
    expect(open.complaints).toEqual([]);
  });

  it('loses nothing while the service is away, and keeps the exam once when it is sent again', async () => {
    const open = await atTheEnd('desktop', 'Patient/invented-away');
    const { page } = open;
    await bench.service.end('SIGTERM');
    await page.getByRole('button', { name: 'Send the exam' }).click();
    await page.getByText('Not sent: the service cannot be reached.').waitFor();
    await page.screenshot({ path: pictureFile('not-sent.png') });
    await bench.restart();
    await page.getByRole('button', { name: 'Send again' }).click();
    await page.getByRole('heading', { name: /^Sent/ }).waitFor();
    const search = `${bench.service.url}/fhir/ClinicalImpression?subject=Patient/invented-away&_summary=count`;
    const { total } = (await (await fetch(search)).json()) as { total: number };
    expect(total).toBe(1);
  });

  it('downloads the Bundle as a file', async () => {
    const open = await atTheEnd('desktop', 'Patient/invented-file');
    const { page } = open;
    await page.getByRole('button', { name: 'Send the exam' }).click();
    await page.getByRole('heading', { name: 'Sent', exact: true }).waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('group', { name: 'FHIR Bundle as a file' }).getByRole('button').first().click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^neuro-exam-[0-9a-f]{8}-transaction\.json$/);
    const chunks: Buffer[] = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
    const bundle = JSON.parse(Buffer.concat(chunks).toString('utf8')) as Bundle;
    expect(count(bundle, 'Observation')).toBe(count(await bundleOf(idIn(open)), 'Observation'));
  });
});
