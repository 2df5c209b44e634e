import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { root } from '../support/built.ts';

const installed = [process.env.CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** The browser of this machine; undefined where it has none. */
export const chromiumPath = installed.find((path) => path !== undefined && path !== '' && existsSync(path));

if (chromiumPath === undefined) {
  process.stderr.write(
    '\n*** NO CHROMIUM ON THIS MACHINE: THE TESTS OF THE PAGE IN A REAL BROWSER ARE SKIPPED. Install Debian’s package `chromium`, or name one by CHROMIUM. ***\n\n',
  );
}

export function launchChromium(): Promise<Browser> {
  if (chromiumPath === undefined) throw new Error('there is no Chromium');
  // Its own sandbox wants rights that a container often does not give.
  return chromium.launch({ executablePath: chromiumPath, args: ['--no-sandbox', '--disable-dev-shm-usage'] });
}

const pictures = join(root, 'data', 'browser');

/** Where a picture, or a printed page, of a test is kept. */
export function pictureFile(name: string): string {
  mkdirSync(pictures, { recursive: true });
  return join(pictures, name);
}
