import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { type SpawnedService, spawnService } from '../support/spawned-service.ts';
import { launchChromium } from './chromium.ts';

/** Sizes that the page is made for: a phone in one hand, a tablet, a desktop. CSS pixels. */
export const screens = {
  phone: { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true },
  tablet: { viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true },
  desktop: { viewport: { width: 1280, height: 800 } },
} as const satisfies Readonly<Record<string, BrowserContextOptions>>;

/** A service with an empty store and a browser, for one file of tests. */
export interface Bench {
  readonly service: SpawnedService;
  readonly open: (screen: keyof typeof screens, hash?: string) => Promise<OpenPage>;
  readonly close: () => Promise<void>;
  readonly restart: () => Promise<void>;
}

export interface OpenPage {
  readonly page: Page;
  /** What the browser complained of so far: errors, refused content, failed requests of our own. */
  readonly complaints: readonly string[];
  /** The exam that the page last asked about. */
  readonly lastExam: () => Record<string, unknown> | undefined;
}

export async function openBench(): Promise<Bench> {
  const folder = mkdtempSync(join(tmpdir(), 'neuroexam-page-'));
  let service = await spawnService({ DATA_DIR: folder });
  const { port } = new URL(service.url);
  const browser: Browser = await launchChromium();
  return {
    get service() {
      return service;
    },
    open: (screen, hash = '') => openPage(browser, screens[screen], `${service.url}/${hash}`),
    async restart() {
      await service.end('SIGTERM');
      service = await spawnService({ DATA_DIR: folder, PORT: port });
    },
    async close() {
      await browser.close();
      await service.end('SIGTERM');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function openPage(browser: Browser, options: BrowserContextOptions, url: string): Promise<OpenPage> {
  const context = await browser.newContext({ locale: 'en-GB', timezoneId: 'Europe/Berlin', ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', ({ message }) => complaints.push(message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  let lastExam: Record<string, unknown> | undefined;
  page.on('request', (request) => {
    if (request.method() === 'POST' && request.url().includes('/localisation')) lastExam = request.postDataJSON();
  });
  await page.goto(url);
  await page.getByRole('heading', { level: 2 }).first().waitFor();
  return { page, complaints, lastExam: () => lastExam };
}

/** Waits until what the page shows is of the record as it stands. */
export async function untilAssessed({ page }: OpenPage): Promise<void> {
  await page.locator('[data-assessment="current"]').waitFor();
}
