import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { axeViolations } from './axe-violations.ts';
import { chromiumPath, pictureFile } from './chromium.ts';
import { type Bench, openBench, type screens, untilAssessed } from './page-under-test.ts';

const parts = ['mind', 'cranial-nerves', 'inspection', 'arms', 'trunk', 'legs', 'sensation', 'gait', 'sphincters'];
const views = [...parts.map((part) => `#/examine/${part}`), '#/story', '#/reasoning', '#/finish', '#/practice'];
const typed = [
  'ankle dorsi left 3',
  'plantar left ext',
  'pin L5 left reduced',
  'urinary retention present',
  'romberg nt unable',
];

describe.skipIf(chromiumPath === undefined)('WCAG 2.2 AA, by axe', () => {
  let bench: Bench;
  beforeAll(async () => {
    bench = await openBench();
  });
  afterAll(() => bench?.close());

  for (const screen of ['phone', 'desktop'] as const satisfies readonly (keyof typeof screens)[]) {
    it(`has nothing to say on a ${screen}, empty and filled`, async () => {
      const open = await bench.open(screen);
      const { page, complaints } = open;
      const found: string[] = [];
      const show = (hash: string): Promise<void> =>
        page.evaluate((wanted) => {
          location.hash = wanted;
        }, hash);
      const round = async (state: string): Promise<void> => {
        for (const view of views) {
          await show(view);
          await page.waitForTimeout(150);
          const violations = await axeViolations(page);
          found.push(...violations.map((violation) => `${state} ${view}: ${violation}`));
        }
      };
      await round('empty');
      await show('#/examine/legs');
      for (const line of typed) {
        const field = page.getByRole('combobox', { name: 'Type a finding' });
        await field.fill(line);
        await field.press('Enter');
      }
      await untilAssessed(open);
      await round('filled');
      await page.screenshot({ path: pictureFile(`accessible-${screen}.png`), fullPage: true });
      expect(found).toEqual([]);
      expect(complaints).toEqual([]);
    }, 300_000);
  }
});
