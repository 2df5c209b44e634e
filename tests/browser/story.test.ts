import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Exam } from '../../src/exam/exam.ts';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { historyLists } from '../../src/page/draft/draft.ts';
import { catalogue, exampleExam } from '../page/catalogue.ts';
import { chromiumPath, pictureFile } from './chromium.ts';
import { type Bench, type OpenPage, openBench, untilAssessed } from './page-under-test.ts';

const reader = createExamReader();

interface Story {
  readonly person: { readonly ageYears: number; readonly sex: string };
  readonly history: {
    readonly onset: { readonly pace: string; readonly durationDays: number };
    readonly course: string;
  } & Readonly<Record<string, readonly { readonly key: string; readonly present: boolean }[]>>;
  readonly results: readonly {
    readonly code: { readonly code: string };
    readonly valueQuantity: { readonly value: number; readonly unit: string };
  }[];
}

/** What the service reads of time, history and results, whatever the order and the pointers. */
function storyOf(exam: Record<string, unknown>): unknown {
  const { examinedAt, person, history, results } = exam;
  const body = { examinedAt, person, history, results };
  const read: Exam = reader.read(body, { purpose: 'localise', now: new Date() });
  return {
    person: read.person,
    onset: read.onset,
    course: read.course,
    history: read.history.map(({ pointer: _pointer, ...statement }) => statement),
    results: read.results.map(({ pointer: _pointer, ...result }) => result),
  };
}

function labelOf(list: string, key: string): string {
  const rows = catalogue.history[list as keyof typeof catalogue.history];
  return rows.find((row) => row.key === key)?.label ?? key;
}

function resultLabel(code: string): string {
  return catalogue.results.find(({ codes }) => codes.some((one) => one.code === code))?.label ?? code;
}

function plain(label: string): string {
  return label.replaceAll(/[^A-Za-z0-9 ]/g, ' ');
}

async function takePersonAndTime({ page }: OpenPage, { person, history }: Story): Promise<void> {
  const fill = async (label: string, text: string): Promise<void> => {
    await page.getByLabel(label, { exact: true }).fill(text);
    await page.keyboard.press('Enter');
  };
  const choose = (words: string): Promise<void> =>
    page.getByRole('button', { name: new RegExp(`^${words}\\b`, 'i') }).click();
  await fill('Age in years', String(person.ageYears));
  await choose(person.sex);
  await choose(history.onset.pace);
  await fill('Began', `${history.onset.durationDays} days`);
  await choose(history.course);
}

describe.skipIf(chromiumPath === undefined)('time, history and results in a browser', () => {
  let bench: Bench;
  beforeAll(async () => {
    bench = await openBench();
  });
  afterAll(() => bench?.close());

  for (const name of ['ascending-weakness', 'cervical-cord'] as const) {
    it(`takes those of ${name} by keyboard alone`, async () => {
      const exam = exampleExam(name);
      const story = exam as unknown as Story;
      const open = await bench.open('desktop', '#/story');
      const { page } = open;
      await page.getByRole('combobox').first().waitFor();
      await page.keyboard.press('/');
      for (const list of historyLists) {
        for (const { key, present } of story.history[list] ?? []) {
          await page.keyboard.type(`${list === 'family' ? 'family ' : ''}${plain(labelOf(list, key))}`);
          await page.keyboard.press(present ? 'Enter' : 'Shift+Enter');
        }
      }
      for (const { code, valueQuantity } of story.results) {
        await page.keyboard.type(`${plain(resultLabel(code.code))} ${valueQuantity.value} ${valueQuantity.unit}`);
        await page.keyboard.press('Enter');
      }
      await takePersonAndTime(open, story);
      await expect
        .poll(() => storyOf({ ...open.lastExam(), examinedAt: exam.examinedAt }), { timeout: 10_000 })
        .toEqual(storyOf(exam));
      await untilAssessed(open);
      await page.screenshot({ path: pictureFile(`${name}-story.png`), fullPage: true });
      expect(open.complaints).toEqual([]);
    });
  }

  it('takes those of foot-drop by touch on a phone, and tells the leading cause', async () => {
    const exam = exampleExam('foot-drop');
    const story = exam as unknown as Story;
    const open = await bench.open('phone', '#/story');
    const { page } = open;
    for (const list of historyLists) {
      const field = page.getByRole('combobox', { name: `Add to ${list}` });
      for (const { key, present } of story.history[list] ?? []) {
        const label = labelOf(list, key);
        await field.fill(plain(label));
        await page.getByRole('option', { name: `${label}: ${present ? 'present' : 'asked, absent'}` }).tap();
      }
    }
    for (const { code, valueQuantity } of story.results) {
      const label = resultLabel(code.code);
      await page.getByRole('combobox', { name: 'Add a result' }).fill(plain(label));
      await page.getByRole('option', { name: label }).first().tap();
      await page.getByLabel(`${label}: number`).fill(String(valueQuantity.value));
      await page.keyboard.press('Enter');
    }
    await takePersonAndTime(open, story);
    await expect
      .poll(() => storyOf({ ...open.lastExam(), examinedAt: exam.examinedAt }), { timeout: 10_000 })
      .toEqual(storyOf(exam));
    await untilAssessed(open);
    await page.getByText(/^1\. .+ \d+ % \((as before|was \d+\w\w|not listed before)\)$/).waitFor();
    await page.screenshot({ path: pictureFile('foot-drop-story.png'), fullPage: true });
    expect(open.complaints).toEqual([]);
  });

  it('shows what the service does not accept beside the entry, in its words, until it is mended', async () => {
    const { page } = await bench.open('desktop', '#/story');
    const field = page.getByRole('combobox', { name: 'Add a result' });
    await field.fill('potassium 400');
    await field.press('Enter');
    const entry = page.getByRole('listitem', { name: 'Potassium' });
    await entry.getByText(/lies between 0\.8 and 15 mmol\/L/).waitFor();
    const number = page.getByLabel('Potassium: number');
    await number.fill('4,0');
    await number.press('Enter');
    await entry.getByText(/may mean 4\.0 or 40/).waitFor();
    await entry.getByRole('button', { name: '4.0' }).click();
    await expect.poll(() => entry.getByRole('alert').textContent()).toBe('');
    expect(await number.inputValue()).toBe('4');
  });
});
