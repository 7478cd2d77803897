import { readFileSync } from 'node:fs';
import { IMPORT_PLACE, IMPORT_QUESTIONS, IMPORT_WORDS, READY_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { fixturePath } from '../support/fixture.ts';
import { browserTest } from './support/browser-test.ts';
import { openFirstSet } from './support/first-set.ts';
import { words } from './support/journey.mjs';
import { fitsAt } from './support/result-page.ts';
import { storedDocuments } from './support/stored.ts';
import { violations } from './support/violations.ts';

const messy = (name: string): { name: string; mimeType: string; buffer: Buffer } => ({
  name,
  mimeType: 'text/csv',
  buffer: readFileSync(fixturePath(`messy/${name}`)),
});

browserTest(
  'a file that nobody described is looked at, asked about, read, kept as a recipe and taken into a visit',
  async ({ page, origin }) => {
    await openFirstSet(page, origin);
    await page.evaluate(() => (location.hash = '#/'));
    await page.getByRole('link', { name: IMPORT_PLACE.link.text }).click();
    await page.getByRole('heading', { name: IMPORT_PLACE.title.text }).waitFor();
    await fitsAt(page, 'import-empty', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    const field = page.getByLabel(IMPORT_WORDS.file.text);

    // a file that is none is refused in words, and nothing is kept
    await field.setInputFiles({
      name: 'picture.csv',
      mimeType: 'text/csv',
      buffer: readFileSync(fixturePath('broken/picture.csv')),
    });
    await page
      .getByRole('alert')
      .getByText(/picture\.csv: expected a table as text, got a PNG picture/)
      .waitFor();
    await fitsAt(page, 'import-refused', 360, 768, 1280);

    // two plates of one name: which leg each is of is asked, by the keyboard
    await field.setInputFiles(messy('two-plates.csv'));
    const read = page.getByRole('button', { name: IMPORT_WORDS.read.text, exact: true });
    await page.getByText(IMPORT_QUESTIONS.side.text.replace('{column}', 'Fz [N] #2')).waitFor();
    expect(await read.isDisabled()).toBe(true);
    await fitsAt(page, 'import-asked', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    for (const [column, side] of [
      ['#2', 'left'],
      ['#3', 'right'],
    ] as const) {
      const group = page.getByRole('radiogroup', {
        name: IMPORT_QUESTIONS.side.text.replace('{column}', `Fz [N] ${column}`),
      });
      await group.getByRole('radio', { name: side }).focus();
      await page.keyboard.press('Space');
      await expect.poll(() => group.count()).toBe(0);
    }
    await page.getByText(IMPORT_WORDS['asked-none'].text).waitFor();
    await fitsAt(page, 'import-looked', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await read.click();
    await page.getByText('force over 8.0 s, 400 samples').waitFor();
    await page.getByText(IMPORT_WORDS['no-gaps'].text).waitFor();
    await page.getByRole('button', { name: IMPORT_WORDS['keep-recipe'].text }).click();
    await page.getByText('Kept as "two-plates.csv".').waitFor();
    await fitsAt(page, 'import-read', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    expect((await storedDocuments(page)).filter(({ kind }) => kind === 'reading-recipe')).toHaveLength(1);

    // a like file is read by the recipe without a question; another one is refused with what differs
    await field.setInputFiles(messy('two-plates.csv'));
    await page.getByRole('button', { name: 'Read it like "two-plates.csv"' }).click();
    await page.getByText('force over 8.0 s, 400 samples').waitFor();
    await field.setInputFiles(messy('untidy.csv'));
    await page.getByText('Values that are missing: 3 (lines 126-127, 309).').waitFor();
    await fitsAt(page, 'import-untidy', 360, 768, 1280);
    await page.getByRole('button', { name: 'Read it like "two-plates.csv"' }).click();
    await page
      .getByRole('alert')
      .getByText(/expected a file like those of the recipe "two-plates\.csv"/)
      .waitFor();

    // saved as a file it is loaded again, here or at another desk, and reads a table that is dropped with it
    await field.setInputFiles(messy('two-plates.csv'));
    await page.getByRole('button', { name: 'Read it like "two-plates.csv"' }).click();
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: IMPORT_WORDS['save-recipe'].text }).click(),
    ]);
    const recipe = {
      name: saved.suggestedFilename(),
      mimeType: 'application/json',
      buffer: readFileSync(await saved.path()),
    };
    expect(recipe.name).toBe('two-plates.recipe.json');
    await page.evaluate(
      (files) => {
        const dataTransfer = new DataTransfer();
        for (const { name, text } of files) dataTransfer.items.add(new File([text], name));
        const area = document.querySelector('app-shell')!.shadowRoot!.querySelector('import-page')!;
        area.shadowRoot!.querySelector('div')!.dispatchEvent(new DragEvent('drop', { dataTransfer }));
      },
      [recipe, messy('two-plates.csv')].map(({ name, buffer }) => ({ name, text: buffer.toString('utf8') })),
    );
    await page.getByText('force over 8.0 s, 400 samples').waitFor();
    await page.getByText('Tables are read by the recipe "two-plates.csv".').waitFor();
    await field.setInputFiles(messy('untidy.csv'));
    await page
      .getByRole('alert')
      .getByText(/untidy\.csv.*expected a file like those of the recipe "two-plates\.csv"/)
      .waitFor();
    await fitsAt(page, 'import-unlike', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: IMPORT_WORDS['recipe-away'].text }).click();
    await page.getByText('Values that are missing: 3 (lines 126-127, 309).').waitFor();
    // one of a newer version is refused in words, and the table can be looked at without it
    const newer = recipe.buffer.toString('utf8').replace('"version": 1', '"version": 2');
    await field.setInputFiles([{ ...recipe, buffer: Buffer.from(newer) }, messy('two-plates.csv')]);
    await page
      .getByRole('alert')
      .getByText(/two-plates\.recipe\.json, version: expected version 1, got 2/)
      .waitFor();
    await page.getByRole('button', { name: IMPORT_WORDS['look-anyway'].text }).click();
    await page.getByText(IMPORT_QUESTIONS.side.text.replace('{column}', 'Fz [N] #2')).waitFor();

    // a rate that is in no file is typed; the recording then stands ready where a set is made ready
    await field.setInputFiles(messy('sample-numbers.csv'));
    await page.getByLabel(IMPORT_WORDS.rate.text).fill('5');
    await page.getByRole('button', { name: IMPORT_WORDS['set-rate'].text }).click();
    await page.getByText(IMPORT_WORDS['rate-range'].text).waitFor();
    await page.getByLabel(IMPORT_WORDS.rate.text).fill('50');
    await page.getByRole('button', { name: IMPORT_WORDS['set-rate'].text }).click();
    await page.getByRole('radio', { name: 'left' }).click();
    await read.click();
    await page.getByText('height of the heel over 8.0 s, 400 samples').waitFor();
    await page.getByText(IMPORT_WORDS['taken-kept'].text).waitFor();
    await page.getByText(words(IMPORT_WORDS['taken-line'])).first().waitFor();
    await fitsAt(page, 'import-into', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('link', { name: words(IMPORT_WORDS['into-visit']) }).click();
    // the set is made ready with the file, for the place that it was measured at; it begins from there
    await page.getByText(words(READY_WORDS['file-chosen'])).waitFor();
    expect(await page.getByRole('radio', { name: READY_WORDS.replayed.text }).isChecked()).toBe(true);
    expect(await page.getByRole('radio', { name: READY_WORDS.heel.text }).isChecked()).toBe(true);
    expect(await page.getByRole('button', { name: READY_WORDS.begin.text }).isDisabled()).toBe(false);

    // loaded anew, nothing of it is lost: the visit still offers it
    await page.reload();
    await page.getByText(IMPORT_WORDS['taken-offered'].text).waitFor();
    await fitsAt(page, 'import-offered', 360, 768, 1280);
    await page.getByRole('button', { name: /Play "sample-numbers\.csv"/ }).click();
    await page.getByText(words(READY_WORDS['file-chosen'])).waitFor();
    expect(await page.getByRole('radio', { name: READY_WORDS.replayed.text }).isChecked()).toBe(true);
    // put aside it is offered no more, and stays in the record
    await page.evaluate(() => (location.hash = '#/import'));
    const kept = page.getByRole('listitem').filter({ hasText: 'sample-numbers.csv' });
    await kept.getByRole('button', { name: IMPORT_WORDS['taken-open'].text }).click();
    await page.getByText('height of the heel over 8.0 s, 400 samples').waitFor();
    await kept.getByRole('button', { name: IMPORT_WORDS['taken-aside'].text }).click();
    await expect.poll(() => kept.count()).toBe(0);
    const documents = await storedDocuments(page);
    expect(documents.filter(({ kind }) => kind === 'recording-taken')).toHaveLength(2);
    expect(documents.filter(({ kind }) => kind === 'removal')).toHaveLength(1);
  },
);
