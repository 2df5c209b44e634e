import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { axeViolations } from './axe-violations.ts';
import { chromiumPath, pictureFile } from './chromium.ts';
import { type Bench, openBench, type screens } from './page-under-test.ts';

const notice = /every patient is simulated and invented/;

describe.skipIf(chromiumPath === undefined)('practice in the page', () => {
  let bench: Bench;
  beforeAll(async () => {
    bench = await openBench();
  });
  afterAll(() => bench?.close());

  for (const screen of ['phone', 'desktop'] as const satisfies readonly (keyof typeof screens)[]) {
    it(`goes from a new patient to the answer on a ${screen}, readable by everybody`, async () => {
      const { page, complaints } = await bench.open(screen, '#/practice');
      const violations: string[] = [];
      const check = async (): Promise<void> => {
        violations.push(...(await axeViolations(page)));
        expect(await page.getByText(notice).isVisible()).toBe(true);
        const { width } = page.viewportSize() ?? { width: 0 };
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      };
      await page.getByRole('combobox', { name: 'Part of the nervous system' }).selectOption('spinal-cord');
      await check();
      await page.getByRole('button', { name: 'New patient' }).click();
      await page.getByRole('heading', { name: 'Invented patient' }).waitFor();
      await page.getByRole('button', { name: 'Legs', exact: true }).click();
      await page.getByRole('button', { name: /^Examine all \d+: power of legs$/ }).click();
      await page.getByRole('button', { name: /Ankle dorsiflexion, left: [0-5]/ }).waitFor();
      expect(await page.getByRole('button', { name: /Ankle reflex, left: examine/ }).count()).toBe(1);
      const counted = await page.getByRole('heading', { name: /^Examined: / }).textContent();
      const listed = await page.getByRole('list', { name: 'What was found, the newest first' }).getByRole('listitem');
      expect(counted).toBe(`Examined: ${await listed.count()} items`);
      await check();
      await page.getByRole('searchbox', { name: 'Search the sites' }).fill('whole cross');
      await page.getByRole('radio', { name: /whole cross-section/ }).check();
      await page.getByRole('button', { name: /Commit after/ }).click();
      await page.getByText('Choose the level.').waitFor();
      await page.getByRole('combobox', { name: 'Level' }).selectOption('T8');
      await page.getByRole('button', { name: /Commit after/ }).click();
      const verdict = page.getByRole('heading', { name: /(Right|Near|Not there): / });
      await verdict.waitFor();
      expect(await verdict.evaluate((heading) => heading === document.activeElement)).toBe(true);
      await check();
      await page.screenshot({ path: pictureFile(`practice-${screen}.png`), fullPage: true });
      await page.getByRole('button', { name: 'Next patient' }).first().click();
      await page.getByRole('button', { name: 'New patient' }).waitFor();
      expect(violations).toEqual([]);
      expect(complaints).toEqual([]);
    }, 120_000);
  }

  it('is worked by keyboard alone', async () => {
    const { page } = await bench.open('desktop', '#/practice');
    await page.getByRole('button', { name: 'New patient' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Invented patient' }).waitFor();
    await page.getByRole('combobox', { name: 'Find an item to examine' }).focus();
    await page.keyboard.type('ankle reflex left');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Examined: 1 item', exact: true }).waitFor();
    await page.getByRole('button', { name: 'Arms', exact: true }).focus();
    await page.keyboard.press('Enter');
    const first = page.locator('[data-row="power/shoulder-abduction|"]').first();
    await first.focus();
    const before = await first.getAttribute('data-row');
    await page.keyboard.press('ArrowDown');
    const reached = page.locator('[data-cells]:focus');
    expect(await reached.getAttribute('data-row')).not.toBe(before);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /^Examined: [23] items$/ }).waitFor();
    await page.locator('.sites summary').first().focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    expect(await page.getByRole('radio', { checked: true }).count()).toBe(1);
  }, 60_000);

  it('leaves the draft of an exam as it was, and is itself left as it was', async () => {
    const { page } = await bench.open('desktop', '#/examine/legs');
    const field = page.getByRole('combobox', { name: 'Type a finding' });
    await field.fill('ankle dorsi left 3');
    await field.press('Enter');
    await page.getByRole('button', { name: /Ankle dorsiflexion, left: 3/ }).waitFor();
    await page.getByRole('link', { name: 'Practise' }).click();
    await page.getByRole('button', { name: 'New patient' }).click();
    await page.getByRole('heading', { name: 'Invented patient' }).waitFor();
    const find = page.getByRole('combobox', { name: 'Find an item to examine' });
    await find.fill('knee reflex both');
    await find.press('Enter');
    await page.getByRole('heading', { name: 'Examined: 2 items' }).waitFor();
    await page.getByRole('button', { name: 'Arms', exact: true }).press('Control+z');
    await page.evaluate(() => {
      location.hash = '#/examine/legs';
    });
    await page.getByRole('heading', { name: 'Legs' }).waitFor();
    expect(await page.getByRole('button', { name: /Ankle dorsiflexion, left: 3/ }).count()).toBe(1);
    expect(await page.getByRole('button', { name: /Knee reflex, left: not recorded/ }).count()).toBe(1);
    await page.getByRole('link', { name: 'Practise' }).click();
    await page.getByRole('heading', { name: 'Examined: 2 items' }).waitFor();
    const kept = await page.evaluate(() => JSON.stringify({ ...localStorage, ...sessionStorage }));
    expect(kept).not.toContain('practice');
  }, 60_000);
});
