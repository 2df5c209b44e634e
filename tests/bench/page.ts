/// <reference lib="dom" />
import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { chromiumPath, launchChromium } from '../browser/chromium.ts';
import { startCandidate } from './processes.ts';
import { milliseconds, type Report } from './report.ts';
import { median } from './statistics.ts';

/** Findings that are there before the taps that are timed, so that the answer is of a usual size. */
const recorded = ['ankle dorsi left 3', 'great toe ext left 2', 'pin dorsum of foot left reduced', 'ankle jerk both 2'];
const taps = 40;
/** Taps before any is counted. */
const warmUp = 8;

/**
 * The page at the bedside in a real browser: bytes of its first view as they come over the line, and the time from a tap to
 * the changed localisation on the screen, in turns with the bare request that the tap leads to.
 */
export async function measurePage(report: Report, folder: string): Promise<void> {
  if (chromiumPath === undefined) return report.say('page: no Chromium on this machine, so nothing is measured');
  mkdirSync(folder, { recursive: true });
  const server = await startCandidate(folder);
  const browser = await launchChromium();
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, locale: 'en-GB' });
    // The runner of these sources names functions by it, also those that are sent into the page.
    await page.addInitScript('globalThis.__name = (value) => value');
    const sizes: Promise<number>[] = [];
    page.on('requestfinished', (request) => {
      sizes.push(request.sizes().then((size) => size.responseBodySize + size.responseHeadersSize));
    });
    await page.goto(`${server.url}/#/examine/legs`);
    await page.getByRole('heading', { level: 2 }).first().waitFor();
    await page.waitForLoadState('networkidle');
    const firstView = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
    report.add(
      'firstView',
      'first view of the page, in KB',
      '-',
      `${(firstView / 1000).toFixed(0)} KB`,
      firstView / 1000,
    );
    for (const line of recorded) {
      const field = page.getByRole('combobox', { name: 'Type a finding' });
      await field.fill(line);
      await field.press('Enter');
    }
    await page.locator('[data-assessment="current"]').waitFor();
    const { tapped, bare } = await timeTaps(page);
    const floor = `${milliseconds(bare)} (the bare request)`;
    report.add('tapMs', 'tap to the changed localisation, in ms', floor, milliseconds(tapped), tapped);
  } finally {
    await browser.close();
    await server.stop();
  }
}

/** Medians in ms. A tap is a click on a value of an open cell; it ends with the frame that shows the new answer. */
function timeTaps(page: Page): Promise<{ readonly tapped: number; readonly bare: number }> {
  return page
    .evaluate(
      async ({ taps, warmUp }) => {
        const frame = () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
        const status = () => document.querySelector<HTMLElement>('[data-assessment]')?.dataset.assessment;
        const until = async (wanted: string): Promise<void> => {
          while (status() !== wanted) await new Promise((resolve) => setTimeout(resolve, 0));
        };
        const cell = document.querySelector<HTMLElement>('[data-cells="power/knee-extension||left"]');
        if (cell === null) throw new Error('there is no such cell');
        let body = '';
        const ask = globalThis.fetch;
        globalThis.fetch = (input, init) => {
          if (String(input).includes('/localisation')) body = String(init?.body ?? '');
          return ask(input, init);
        };
        const tapped: number[] = [];
        const bare: number[] = [];
        for (let tap = 0; tap < taps + warmUp; tap += 1) {
          const started = performance.now();
          cell.dispatchEvent(new KeyboardEvent('keydown', { key: tap % 2 === 0 ? '4' : '5', bubbles: true }));
          await until('behind');
          await until('current');
          await frame();
          if (tap >= warmUp) tapped.push(performance.now() - started);
          const asked = performance.now();
          const answer = await ask('/localisation', {
            method: 'POST',
            headers: { 'Content-Type': 'application/json' },
            body,
          });
          await answer.json();
          if (tap >= warmUp) bare.push(performance.now() - asked);
        }
        return { tapped, bare };
      },
      { taps, warmUp },
    )
    .then(({ tapped, bare }) => ({ tapped: median(tapped), bare: median(bare) }));
}
