import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, pictureFile } from './chromium.ts';
import { type Bench, type OpenPage, openBench, untilAssessed } from './page-under-test.ts';

const typed = [
  'ankle dorsi left 3',
  'great toe ext left 2',
  'ankle plantar left 5',
  'ankle jerk both 2',
  'pin dorsum of foot left reduced',
];

async function type({ page }: OpenPage, lines: readonly string[]): Promise<void> {
  for (const line of lines) {
    const field = page.getByRole('combobox', { name: 'Type a finding' });
    await field.fill(line);
    await field.press('Enter');
  }
}

function findings(exam: Record<string, unknown> | undefined): number {
  return Object.values((exam?.findings ?? {}) as Record<string, readonly unknown[]>).flat().length;
}

/** Everything that the page keeps in the browser. */
function keptOf({ page }: OpenPage): Promise<string> {
  return page.evaluate(() => JSON.stringify({ ...localStorage, ...sessionStorage }));
}

describe.skipIf(chromiumPath === undefined)('what the page keeps', () => {
  let bench: Bench;
  const opened: OpenPage[] = [];
  const open = async (screen: 'phone' | 'desktop'): Promise<OpenPage> => {
    const one = await bench.open(screen, '#/examine/legs');
    opened.push(one);
    return one;
  };
  beforeAll(async () => {
    bench = await openBench();
  });
  afterEach(async () => {
    for (const one of opened.splice(0)) await one.page.context().close();
  });
  afterAll(() => bench?.close());

  it('is there after a reload in the middle, and after a tab that was closed', async () => {
    const one = await open('desktop');
    await type(one, typed);
    await expect.poll(() => findings(one.lastExam())).toBe(typed.length);
    await one.page.reload();
    const cell = one.page.getByRole('button', {
      name: 'Ankle dorsiflexion, left: 3: Active movement against gravity, abnormal',
    });
    await cell.waitFor();
    await untilAssessed(one);
    const other = await one.page.context().newPage();
    await one.page.close();
    await other.goto(`${bench.service.url}/#/examine/legs`);
    await other.getByRole('button', { name: 'Ankle dorsiflexion, left: 3: Active' }).waitFor();
  });

  it('takes changes back one by one, and again', async () => {
    const one = await open('desktop');
    await type(one, typed);
    const cell = one.page.getByRole('button', { name: 'Great toe extension, left: ' });
    await one.page.locator('#part-name').click();
    for (let step = 1; step < typed.length; step += 1) await one.page.keyboard.press('Control+z');
    await expect.poll(() => cell.getAttribute('aria-label')).toContain('not recorded');
    await one.page.keyboard.press('Control+Shift+Z');
    await expect.poll(() => cell.getAttribute('aria-label')).toContain('Active movement with gravity eliminated');
  });

  it('goes on recording while the service is away, says so, and catches up when it is back', async () => {
    const one = await open('phone');
    await type(one, typed.slice(0, 2));
    await untilAssessed(one);
    await bench.service.end('SIGTERM');
    await type(one, typed.slice(2));
    await one.page.getByText('out of reach').waitFor();
    await one.page.screenshot({ path: pictureFile('service-away.png') });
    await one.page.getByRole('button', { name: 'Ankle plantarflexion, left: 5' }).waitFor();
    await bench.restart();
    await expect.poll(() => findings(one.lastExam()), { timeout: 40_000 }).toBe(typed.length);
    await untilAssessed(one);
    await expect.poll(() => one.page.getByText('out of reach').count()).toBe(0);
  });

  it('is gone from the device when the exam is discarded', async () => {
    const one = await open('desktop');
    await type(one, typed);
    expect(await keptOf(one)).toContain('ankle-dorsiflexion');
    one.page.on('dialog', (dialog) => dialog.accept());
    await one.page.getByText('More', { exact: true }).click();
    await one.page.getByRole('button', { name: 'Discard this exam' }).click();
    await expect.poll(() => keptOf(one)).not.toContain('ankle-dorsiflexion');
    await one.page.reload();
    await one.page
      .getByRole('button', { name: 'Ankle dorsiflexion, left: not recorded' })
      .or(one.page.locator('#part-name'))
      .first()
      .waitFor();
    expect(await keptOf(one)).not.toContain('ankle-dorsiflexion');
  });
});
