import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createExamReader } from '../../src/exam/read-exam.ts';
import { indexCatalogue } from '../../src/page/catalogue.ts';
import type { NormalStatement } from '../../src/page/draft/draft.ts';
import { partsOf, partWith } from '../../src/page/recording/parts.ts';
import { catalogue, exampleExam } from '../page/catalogue.ts';
import { chromiumPath, pictureFile } from './chromium.ts';
import { type Looked, lineFor, lookedAt } from './examined-words.ts';
import { type Bench, type OpenPage, openBench, untilAssessed } from './page-under-test.ts';

const examples = ['foot-drop', 'cervical-cord', 'ascending-weakness'] as const;
const reader = createExamReader();

/** What the service reads of an exam's findings and statements: a line for each side. */
function findingsOf(exam: Record<string, unknown>): readonly string[] {
  const { examinedAt, findings, otherwiseNormal } = exam;
  const body = { examinedAt, findings, ...(otherwiseNormal !== undefined && { otherwiseNormal }) };
  const read = reader.read(body, { purpose: 'localise', now: new Date() });
  return read.findings
    .map(({ id, value, notTested, reinforced, note }) =>
      JSON.stringify({ id, value, notTested, reinforced: reinforced === true, note }),
    )
    .sort();
}

describe.skipIf(chromiumPath === undefined)('recording in a browser', () => {
  let bench: Bench;
  beforeAll(async () => {
    bench = await openBench();
  });
  afterAll(() => bench?.close());

  for (const name of examples) {
    it(`takes ${name} by keyboard alone`, async () => {
      const exam = exampleExam(name);
      const open = await bench.open('desktop');
      const { page } = open;
      for (const looked of lookedAt(exam, catalogue)) {
        await page.keyboard.press('/');
        await page.keyboard.type(lineFor(looked));
        await page.keyboard.press('Enter');
        await page.keyboard.press('Tab');
      }
      await stateRestNormal(open, exam);
      await expect
        .poll(() => findingsOf({ ...open.lastExam(), examinedAt: exam.examinedAt }), { timeout: 10_000 })
        .toEqual(findingsOf(exam));
      await untilAssessed(open);
      await page.screenshot({ path: pictureFile(`${name}-keyboard.png`), fullPage: true });
      expect(open.complaints).toEqual([]);
    });

    it(`takes ${name} by touch on a phone`, async () => {
      const exam = exampleExam(name);
      const open = await bench.open('phone');
      for (const looked of lookedAt(exam, catalogue)) await touch(open, looked);
      await stateRestNormal(open, exam);
      await expect
        .poll(() => findingsOf({ ...open.lastExam(), examinedAt: exam.examinedAt }), { timeout: 10_000 })
        .toEqual(findingsOf(exam));
      await untilAssessed(open);
      await open.page.screenshot({ path: pictureFile(`${name}-touch.png`) });
      expect(open.complaints).toEqual([]);
    });
  }
});

/** The first tap on a cell records normal and opens its values; a second one there takes another. */
async function touch(open: OpenPage, looked: Looked): Promise<void> {
  const { page } = open;
  const { item, place, sides, value, entry } = looked;
  await showItem(open, looked);
  for (const side of sides) {
    const name = [item.label, place?.label, side].filter(Boolean).join(', ');
    const cell = page.getByRole('button', { name: new RegExp(`^${escaped(name)}: `) });
    await cell.tap();
    const strip = page.locator('.rows .strip');
    if (value === undefined) {
      await strip.getByRole('button', { name: `Not tested: ${String(entry.notTested).replace('-', ' ')}` }).tap();
    } else if (!Array.isArray(item.values)) {
      await strip.getByLabel('Beats').fill(value);
      await strip.getByLabel('Beats').blur();
    } else if (!item.normal.includes(value)) {
      const { label = value } = item.values.find(({ key }) => key === value) ?? {};
      await strip.getByRole('button', { name: new RegExp(`(^|: )${escaped(label)}$`) }).tap();
    }
    if (entry.reinforced !== true && entry.note === undefined) continue;
    if (!(await strip.isVisible())) await cell.tap();
    if (entry.reinforced === true) await strip.getByRole('checkbox', { name: 'With reinforcement' }).tap();
    if (entry.note !== undefined) {
      await strip.getByLabel('Note').fill(String(entry.note));
      await strip.getByLabel('Note').blur();
    }
  }
}

const parts = partsOf(indexCatalogue(catalogue));

/** Opens the part that an item lies in, and what of it is folded away. */
async function showItem({ page }: OpenPage, { section, item, place }: Looked): Promise<void> {
  const part = partWith(parts, section, item.key);
  const group = part?.groups.find((one) => one.section === section);
  if (part === undefined || group === undefined) throw new Error(`${item.id} stands in no part`);
  const link = page.getByRole('navigation', { name: 'Parts' }).getByRole('link', { name: part.label });
  if ((await link.getAttribute('aria-current')) === null) await link.tap();
  if (section === 'sensation') await page.getByRole('button', { name: 'In a table' }).tap();
  const row = page.getByRole('button', { name: new RegExp(`^${escaped(item.label)}(, |: )`) }).first();
  const more = page.getByRole('button', { name: new RegExp(`^\\d+ more of ${escaped(group.label)}$`, 'i') });
  const where = page.getByRole('combobox', {
    name: new RegExp(`^${escaped(item.label)}( at|, elsewhere at| elsewhere)`),
  });
  await row.or(where).or(more).first().waitFor();
  if (!(await row.isVisible()) && !(await where.isVisible())) await more.tap();
  if (place === undefined) return;
  const placed = page
    .getByRole('button', { name: new RegExp(`^${escaped(`${item.label}, ${place.label}`)}, `) })
    .first();
  if (!(await placed.isVisible())) await where.selectOption({ label: place.label });
}

/** Presses "rest normal" where the exam says so. */
async function stateRestNormal(open: OpenPage, exam: Record<string, unknown>): Promise<void> {
  const { page } = open;
  for (const statement of (exam.otherwiseNormal ?? []) as readonly NormalStatement[]) {
    const part = parts.find(({ groups }) =>
      groups.some((group) => group.statements.some((one) => isSame(one, statement))),
    );
    const group = part?.groups.find(({ statements }) => statements.some((one) => isSame(one, statement)));
    if (part === undefined || group === undefined) throw new Error(`${JSON.stringify(statement)} has no button`);
    const link = page.getByRole('navigation', { name: 'Parts' }).getByRole('link', { name: part.label });
    await link.click();
    await expect.poll(() => link.getAttribute('aria-current'), { timeout: 10_000 }).not.toBeNull();
    await page.getByRole('button', { name: `Rest normal in ${group.label.toLowerCase()}`, exact: true }).press('Enter');
    await expect
      .poll(() => open.lastExam()?.otherwiseNormal ?? [], { timeout: 10_000 })
      .toContainEqual(expect.objectContaining(statement));
  }
}

function isSame(one: NormalStatement, other: NormalStatement): boolean {
  return one.section === other.section && one.region === other.region;
}

function escaped(text: string): string {
  return text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
