import { readFile } from 'node:fs/promises';
import { FRAME_WORDS, RECOUNT_STUDY_WORDS as WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { STUDY_ROWS, studyFolder } from '../support/study-folder.ts';
import { browserTest } from './support/browser-test.ts';
import { putStudy } from './support/put-study.ts';
import { fitsAt } from './support/result-page.ts';
import { recountStudyStates } from './support/states/recount-study-states.ts';
import { isLookedAt } from './support/states/stand-ins.ts';
import { violations } from './support/violations.ts';
import { walked } from './support/walked.ts';

function filled(text: string, values: Readonly<Record<string, string | number>>): string {
  return text.replace(/\{(\w+)\}/g, (_, name: string) => String(values[name]));
}

async function openStudy(page: Page, origin: string): Promise<string> {
  await page.goto(origin);
  await page.locator('start-page').waitFor();
  const id = await putStudy(page);
  await page.goto(`${origin}/#/study/${id}/recount`);
  await page.reload();
  await page.locator('recount-part').waitFor();
  return id;
}

/** What a press of a button saves. */
async function savedBy(page: Page, name: string): Promise<string> {
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name }).click();
  return readFile(await (await saved).path(), 'utf8');
}

async function begin(page: Page, rater: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`^${rater}: `) }).click();
  await page.getByRole('slider').waitFor();
}

/** Everything that can be read on the page or of it: texts, names and values of every element in every shadow tree, title, address. */
function everything(page: Page): Promise<string> {
  return page.evaluate(() => {
    const told: string[] = [document.title, location.href];
    const walk = (node: Node): void => {
      if (node instanceof Element) {
        for (const { name, value } of node.attributes) told.push(name, value);
        if (node.shadowRoot) walk(node.shadowRoot);
      } else if (node.nodeType === Node.TEXT_NODE || node.nodeType === Node.COMMENT_NODE)
        told.push(node.textContent ?? '');
      for (const child of node.childNodes) if (!(child instanceof HTMLStyleElement)) walk(child);
    };
    walk(document);
    return told.join('\n');
  });
}

/** Marks every peak by the keyboard and says that the item is done; gives how many there were. */
async function countItem(page: Page): Promise<number> {
  const heading = page.locator('recount-item h2');
  const before = await heading.innerText();
  let marked = 0;
  for (;;) {
    // the recording is read
    await page.locator('recount-item recount-trace').waitFor();
    await page.keyboard.press('d');
    const end = page.getByText(WORDS['no-peak'].text);
    const slider = page.getByRole('slider');
    if (await end.isVisible()) break;
    await expect.poll(() => slider.getAttribute('aria-valuetext')).not.toMatch(/mark/);
    await page.keyboard.press('1');
    marked += 1;
    await page.getByText(filled(WORDS.tally.text, { marked, counting: marked })).waitFor();
  }
  await page.keyboard.press('Enter');
  await expect
    .poll(
      async () =>
        (await heading.innerText()) !== before || (await page.getByText(WORDS['all-counted'].text).isVisible()),
    )
    .toBe(true);
  return marked;
}

browserTest(
  'somebody counts by the keyboard alone, nothing on the page tells whose it is, and a reload in the midst loses nothing',
  async ({ page, origin }) => {
    await openStudy(page, origin);
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'recount-part', 360, 768, 1280);
    // from the begin by keyboard: the rater has the focus, Enter begins
    await page.getByRole('button', { name: /^ada: / }).focus();
    await page.keyboard.press('Enter');
    const slider = page.getByRole('slider');
    await slider.waitFor();
    await slider.focus();
    await page.keyboard.press('d');
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toMatch(/^\d+\.\d\d s, \d+\.\d cm$/);
    await page.keyboard.press('2');
    await page.getByText(/Mark 1 at \d+\.\d\d s: does not count\./).waitFor();
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toMatch(/; mark 1: does not count$/);
    await page.keyboard.press('?');
    await page.getByText(WORDS['help-done'].text).waitFor();
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'recount-item', 360, 768, 1280);

    const told = (await everything(page)).toLowerCase();
    expect(told).toContain('recording 1 of 10');
    const secrets = STUDY_ROWS.flatMap(({ file, person, arm }) => [file, person, arm].map(String));
    for (const secret of [...new Set(secrets), 'left', 'right', 'visit', 'winter', 'heel-raise', 'item-0']) {
      // where the frame of every page speaks of visits it speaks of none of these
      expect([secret, told.replaceAll(FRAME_WORDS.scope.text.toLowerCase(), '').includes(secret)]).toEqual([
        secret,
        false,
      ]);
    }

    await page.reload();
    await begin(page, 'ada');
    await page.getByText(filled(WORDS.tally.text, { marked: 1, counting: 0 })).waitFor();
    await slider.focus();
    await page.keyboard.press('u');
    await page.getByText(WORDS.undone.text).waitFor();
    // the same by the pointer alone: a place on the line, a verdict, and away with it
    await page
      .locator('recount-trace svg')
      .last()
      .click({ position: { x: 500, y: 100 } });
    await page.getByRole('button', { name: WORDS['say-cannot_tell'].text }).click();
    await page.getByText(/Mark 1 at \d+\.\d\d s: cannot tell\./).waitFor();
    await page.getByRole('button', { name: WORDS.take.text }).click();
    await page.getByText(/^The mark at \d+\.\d\d s is taken away\./).waitFor();
    await slider.focus();
    await page.keyboard.press('Home');
    const counts: number[] = [];
    for (let at = 0; at < 10; at += 1) counts.push(await countItem(page));
    await page.getByText(WORDS['all-counted'].text).waitFor();
    // each file holds as many raises as its name says; two are shown twice
    const raises = STUDY_ROWS.map(({ file }) => Number(/\d+/.exec(String(file))![0]));
    expect([...counts].sort((a, b) => a - b)).toEqual(expect.arrayContaining([...raises].sort((a, b) => a - b)));
  },
);

browserTest(
  'verdicts are locked once, names open only after the lock of all, and agreement stands with intervals and every mark',
  async ({ page, origin }) => {
    await openStudy(page, origin);
    const openIt = page.getByRole('button', { name: WORDS['open-do'].text });
    await begin(page, 'ada');
    await page.getByRole('slider').focus();
    for (let at = 0; at < 10; at += 1) await countItem(page);
    await page.getByRole('button', { name: WORDS.lock.text }).click();
    await page.getByText(WORDS['lock-means'].text).waitFor();
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'recount-lock', 360, 768, 1280);
    await page.getByRole('button', { name: WORDS['lock-not'].text }).click();
    await page.getByRole('slider').waitFor();
    await page.getByRole('button', { name: WORDS.lock.text }).click();
    await page.getByRole('button', { name: WORDS['lock-sure'].text }).click();
    await page.getByText(filled(WORDS.locked.text, { rater: 'ada' })).waitFor();
    const hash = await page.locator('.hash').innerText();
    expect(hash).toMatch(/^[0-9a-f]{64}$/);
    await page.getByText(filled(WORDS['open-wait'].text, { raters: 'ben' })).waitFor();
    expect(await openIt.count()).toBe(0);
    expect(await page.getByRole('button', { name: /^ada: / }).count()).toBe(0);

    // ben is left out of the comparison, and stays hidden
    await page.getByRole('checkbox', { name: 'ben' }).uncheck();
    await openIt.click();
    await page.getByText(WORDS['open-missing'].text).waitFor();
    await page.getByLabel(WORDS['open-by'].text).fill('cyd');
    await page.getByLabel(WORDS['open-why'].text).fill('ada has locked');
    await openIt.click();
    await page.getByRole('heading', { name: WORDS.agreement.text }).waitFor();
    await page.getByRole('heading', { name: 'ada and the machine' }).waitFor();
    await page.getByText(/^Counts of 8 recordings: 8 the same/).waitFor();
    expect(await violations(page)).toEqual([]);
    await fitsAt(page, 'recount-agreement', 360, 768, 1280);

    await page.getByRole('button', { name: filled(WORDS['look-at'].text, { trial: 'cycling-10.csv' }) }).click();
    const slider = page.getByRole('slider');
    await slider.waitFor();
    await slider.focus();
    await page.keyboard.press('d');
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toMatch(/ada: counts; .*the machine: counts$/);
    expect(await violations(page)).toEqual([]);

    // figure and table as they are written, with the command that makes them again
    await page.getByRole('button', { name: WORDS['made-again'].text }).click();
    const made = new Map<string, string>();
    for (const file of ['agreement.svg', 'agreement.csv']) {
      made.set(file, await savedBy(page, filled(WORDS['save-file'].text, { file })));
    }
    expect(made.get('agreement.svg')).toMatch(/^<svg .*ada less automatic: 8 recordings/s);
    await page.locator('recount-agreement made-again summary').first().click();
    await page.getByText('--verdicts ada.jsonl --key ada.key.json').first().waitFor();
    await fitsAt(page, 'recount-files', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);

    // the list as the command line reads it holds the lock that was shown
    await page.getByText(WORDS.files.text).click();
    const verdicts = await savedBy(page, filled(WORDS['save-verdicts'].text, { rater: 'ada' }));
    const lines = verdicts.trim().split('\n');
    const entries = lines.map((line) => JSON.parse(line) as { hash: string; says: { step: string } });
    expect(entries.at(-2)).toMatchObject({ hash, says: { step: 'lock' } });
    expect(entries.at(-1)!.says.step).toBe('open');

    // and makes the same figure and the same table there, byte for byte
    const folder = studyFolder();
    folder.files.set('ada.jsonl', verdicts);
    folder.files.set('ada.key.json', await savedBy(page, filled(WORDS['save-key'].text, { rater: 'ada' })));
    const command = 'study study.json --manifest m.csv --verdicts ada.jsonl --key ada.key.json --out o';
    expect([await main(command.split(' '), folder.io), folder.error]).toEqual([0, '']);
    for (const [file, text] of made) expect([file, folder.text(`o/${file}`) === text]).toEqual([file, true]);
  },
);

browserTest(
  'no state of a blinded count breaks a rule of accessibility, on light and dark paper; text of twice the size fits 360 pixels',
  async ({ page, origin }) => {
    const { found, states } = await walked(page, origin, recountStudyStates);
    expect(found).toEqual([]);
    expect(states.length).toBe(recountStudyStates.filter(isLookedAt).length);
  },
  600_000,
);
