import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, pictureFile } from './chromium.ts';
import { type Bench, openBench, type screens } from './page-under-test.ts';

/** The open rules engine for the Web Content Accessibility Guidelines. */
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
/** Levels A and AA of WCAG 2.0, 2.1 and 2.2, and the good practice of the engine's authors. */
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const parts = ['mind', 'cranial-nerves', 'inspection', 'arms', 'trunk', 'legs', 'sensation', 'gait', 'sphincters'];
const views = [...parts.map((part) => `#/examine/${part}`), '#/story', '#/reasoning', '#/finish', '#/practice'];

describe.skipIf(chromiumPath === undefined)('WCAG 2.2 AA, by axe', () => {
  let bench: Bench;
  beforeAll(async () => {
    bench = await openBench();
  });
  afterAll(() => bench?.close());

  for (const screen of ['phone', 'desktop'] as const satisfies readonly (keyof typeof screens)[]) {
    it(`has nothing to say on a ${screen}, empty and filled`, async () => {
      const { page, complaints } = await bench.open(screen);
      // So tall that nothing lies under the bars that stay in sight, where the engine would take it for too small a target.
      await page.setViewportSize({ width: page.viewportSize()?.width ?? 0, height: 6000 });
      const found: string[] = [];
      const check = async (where: string): Promise<void> => {
        const { violations } = await page.evaluate(
          async ([source, tags]) => {
            // Trusted types forbid a script element made of text, not a function of the browser's debugger.
            const engine = globalThis as unknown as {
              axe?: { run: (node: Document, options: object) => Promise<AxeResults> };
            };
            if (engine.axe === undefined) throw new Error(`no engine: ${source.length}`);
            return engine.axe.run(document, { runOnly: tags });
          },
          [axe, rules] as const,
        );
        found.push(...violations.map(({ id, nodes }) => `${where}: ${id} ${nodes[0]?.html}`));
      };
      const session = await page.context().newCDPSession(page);
      await session.send('Runtime.evaluate', { expression: axe });
      const round = async (state: string): Promise<void> => {
        for (const view of views) {
          await page.evaluate((hash) => {
            location.hash = hash;
          }, view);
          await page.waitForTimeout(150);
          await check(`${state} ${view}`);
        }
      };
      await round('empty');
      await page.evaluate((hash) => {
        location.hash = hash;
      }, '#/examine/legs');
      for (const line of [
        'ankle dorsi left 3',
        'plantar left ext',
        'pin L5 left reduced',
        'urinary retention present',
        'romberg nt unable',
      ]) {
        const field = page.getByRole('combobox', { name: 'Type a finding' });
        await field.fill(line);
        await field.press('Enter');
      }
      await page.locator('[data-assessment="current"]').waitFor();
      await round('filled');
      await page.screenshot({ path: pictureFile(`accessible-${screen}.png`), fullPage: true });
      expect(found).toEqual([]);
      expect(complaints).toEqual([]);
    }, 300_000);
  }
});
