import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, pictureFile } from './chromium.ts';
import { type Bench, type OpenPage, openBench, untilAssessed } from './page-under-test.ts';

async function record({ page }: OpenPage, ...lines: readonly string[]): Promise<void> {
  for (const line of lines) {
    const field = page.getByRole('combobox', { name: 'Type a finding' });
    await field.fill(line);
    await field.press('Enter');
  }
}

const footDrop = ['ankle dorsi left 3', 'great toe ext left 3', 'pin L5 left reduced'];

describe.skipIf(chromiumPath === undefined)('the reasoning in a browser', () => {
  let bench: Bench;
  beforeAll(async () => {
    bench = await openBench();
  });
  afterAll(() => bench?.close());

  it('leads from a finding and from a proposed item to their cells', async () => {
    const open = await bench.open('phone', '#/examine/legs');
    const { page, complaints } = open;
    await record(open, ...footDrop);
    await untilAssessed(open);
    await page.getByRole('link', { name: 'Where and what' }).click();
    await page.getByRole('heading', { name: 'Where the lesion may be', exact: true }).waitFor();
    await page.locator('.sites .to-finding', { hasText: 'left ankle dorsiflexion' }).first().click();
    await page.locator('[data-cells="power/ankle-dorsiflexion||left"]:focus').waitFor();

    await page.getByRole('link', { name: 'Where and what' }).click();
    const proposed = page.locator('.next button').first();
    const name = (await proposed.textContent()) ?? '';
    await proposed.click();
    const focused = page.locator('[data-cells]:focus');
    await focused.waitFor();
    expect(await focused.getAttribute('data-cells')).toMatch(/\|(left|right|midline)$/);
    expect(name).not.toBe('');
    expect(complaints).toEqual([]);
  });

  it('marks the leading site in a picture that says what it shows', async () => {
    const open = await bench.open('phone', '#/examine/legs');
    const { page } = open;
    await record(open, ...footDrop);
    await untilAssessed(open);
    await page.getByRole('link', { name: 'Where and what' }).click();
    const view = page.locator('.view-of-neuraxis svg[role=img]:not([aria-hidden=true])').first();
    await view.waitFor();
    const lead = await page.locator('.sites .name strong').first().textContent();
    expect(await view.getAttribute('aria-label')).toContain(`Marked: 1, ${lead}, left`);
    expect(await page.locator('.view-of-neuraxis .mark.rank-1 path').count()).toBeGreaterThan(0);
    await page.screenshot({ path: pictureFile('reasoning-phone.png'), fullPage: true });
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  });

  it('says a new leading site politely and a new red flag at once', async () => {
    const open = await bench.open('desktop', '#/examine/legs');
    const { page } = open;
    await record(open, 'ankle dorsi left 3');
    await untilAssessed(open);
    await page.locator('.flags [aria-live=polite]', { hasText: /\S/ }).waitFor({ state: 'attached' });
    expect(await page.locator('.flags [role=alert]').textContent()).toBe('');
    await record(open, 'ankle dorsi right 3', 'urinary retention present', 'saddle ana present');
    await page.locator('.flags [role=alert]', { hasText: 'Red flag' }).waitFor({ state: 'attached' });
    await page.locator('.flag.raised').first().waitFor();
  });

  it('marks the last answer as out of date while the service is away, and takes the mark away again', async () => {
    const open = await bench.open('desktop', '#/examine/legs');
    const { page } = open;
    await record(open, ...footDrop);
    await untilAssessed(open);
    await page.context().setOffline(true);
    await record(open, 'plantar left ext');
    await page.getByText('Out of date.').waitFor();
    expect(await page.locator('.sites .site').count()).toBeGreaterThan(0);
    await page.context().setOffline(false);
    await page.getByText('Out of date.').waitFor({ state: 'detached' });
  });
});
