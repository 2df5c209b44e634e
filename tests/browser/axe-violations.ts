import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

/** The open rules engine for the Web Content Accessibility Guidelines. */
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
/** Levels A and AA of WCAG 2.0, 2.1 and 2.2, and the good practice of the engine's authors. */
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What the engine has to say of a page as it stands. The engine comes in by the debugger, since the page allows no script but its own. */
export async function axeViolations(page: Page): Promise<readonly string[]> {
  const size = page.viewportSize() ?? { width: 0, height: 0 };
  // So tall that nothing lies under the bars that stay in sight, where the engine would take it for too small a target.
  await page.setViewportSize({ width: size.width, height: 12_000 });
  const session = await page.context().newCDPSession(page);
  await session.send('Runtime.evaluate', { expression: axe });
  const { violations } = await page.evaluate((tags) => {
    const engine = globalThis as unknown as { axe: { run: (node: Document, options: object) => Promise<AxeResults> } };
    return engine.axe.run(document, { runOnly: tags });
  }, rules);
  await session.detach();
  await page.setViewportSize(size);
  return violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`);
}
