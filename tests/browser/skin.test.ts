import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, pictureFile } from './chromium.ts';
import { type Bench, type OpenPage, openBench, untilAssessed } from './page-under-test.ts';

type Sensation = Readonly<Record<string, string>>;

const sensationOf = ({ lastExam }: OpenPage): readonly Sensation[] =>
  ((lastExam()?.findings as Record<string, readonly Sensation[]> | undefined)?.sensation ?? []) as readonly Sensation[];

describe.skipIf(chromiumPath === undefined)('sensation on the body, in a browser', () => {
  let bench: Bench;
  beforeAll(async () => {
    bench = await openBench();
  });
  afterAll(() => bench?.close());

  it('is drawn by keyboard alone', async () => {
    const open = await bench.open('desktop', '#/examine/sensation');
    const { page } = open;
    const control = (name: string) => page.getByRole('button', { name, exact: true });
    await control('Pinprick').press('Enter');
    await control('C3 dermatome, right: pinprick not recorded')
      .or(control('C2 dermatome, right: pinprick not recorded'))
      .first()
      .focus();
    await page.keyboard.press('End');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowRight');
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
    expect(await focused()).toMatch(/^S1 dermatome, left: pinprick not recorded$/);
    await page.keyboard.press('Enter');
    expect(await focused()).toBe('S1 dermatome, left: pinprick reduced');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('a');
    expect(await focused()).toMatch(/^L5 dermatome, left: pinprick a(bsent|ltered)$/);
    // One stop of Tab in each picture: from the front to the back and on to what follows.
    await page.keyboard.press('Tab');
    expect(await focused()).toContain('dermatome');
    await page.keyboard.press('Tab');
    expect(await focused()).not.toContain('dermatome');
    await untilAssessed(open);
    expect(sensationOf(open).map(({ dermatome, side, modality }) => [modality, dermatome, side])).toEqual([
      ['pinprick', 'S1', 'left'],
      ['pinprick', 'L5', 'left'],
    ]);
    await control('Remove Pinprick reduced: S1 dermatome, left').press('Enter');
    await untilAssessed(open);
    expect(sensationOf(open).map(({ dermatome }) => dermatome)).toEqual(['L5']);
    await page.screenshot({ path: pictureFile('skin-keyboard.png'), fullPage: true });
    expect(open.complaints).toEqual([]);
  });

  it('is drawn by touch on a phone, both sides at once, without the page growing wider than it', async () => {
    const open = await bench.open('phone', '#/examine/sensation');
    const { page } = open;
    const control = (name: string) => page.getByRole('button', { name, exact: true });
    await control('Vibration').tap();
    await control('Place').tap();
    await control('Tops of the feet').tap();
    await page.getByLabel('Both sides at once').tap();
    await page.locator('[data-tap="site:great-toe|left"]').tap();
    await untilAssessed(open);
    expect(sensationOf(open)).toMatchObject([
      { modality: 'vibration', site: 'great-toe', side: 'both', result: 'reduced' },
    ]);
    await page.locator('[data-tap="site:great-toe|left"]').tap();
    await expect.poll(() => page.getByText('Nothing yet.').isVisible()).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    expect(open.complaints).toEqual([]);
  });
});
