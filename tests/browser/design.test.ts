import { readFileSync } from 'node:fs';
import { DESIGN_WORDS, START_WORDS, STUDY_RESULT_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { main } from '../../apps/cli/src/main.ts';
import { MemoryIo } from '../support/memory-io.ts';
import { inRun } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { fitsAt } from './support/result-page.ts';
import { designStates } from './support/states/design-states.ts';
import { isLookedAt } from './support/states/stand-ins.ts';
import { violations } from './support/violations.ts';
import { walked } from './support/walked.ts';

const words = DESIGN_WORDS;

/** The bytes of the file that a press saves. */
async function saved(page: Page, name: string): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name, exact: true }).click(),
  ]);
  return readFileSync(await download.path());
}

/** What the command that stands on the page writes, in Node. */
async function madeByCommand(page: Page): Promise<ReadonlyMap<string, Buffer>> {
  await page.getByText(STUDY_RESULT_WORDS.again.text, { exact: true }).click();
  const command = await page.locator('made-again code').innerText();
  const memory = new MemoryIo();
  expect(await main(command.replace('OUT', 'o').split(' ').slice(1), memory.io)).toBe(0);
  return new Map([...memory.files].map(([path, text]) => [path.replace('o/', ''), Buffer.from(text)]));
}

/** Every file that a press saves is that of the command; the record holds the hashes of those that are not saved one by one. */
async function allAsMade(page: Page, made: ReadonlyMap<string, Buffer>): Promise<void> {
  const files = [
    ['design.svg', 'save-picture'],
    ['design.csv', 'save-table'],
    ['curve.csv', 'save-curve'],
    ['reproduce.json', 'save-record'],
  ] as const;
  for (const [name, code] of files) {
    expect([name, await saved(page, words[code].text)]).toEqual([name, made.get(name)]);
  }
}

browserTest(
  'what is asked is answered with its range; what cannot be says why; a reload has it still; every file is that of the command, byte for byte',
  async ({ page, origin }) => {
    await page.goto(origin);
    await page.getByRole('link', { name: START_WORDS['design-link'].text }).click();
    await page.locator('design-page h1').waitFor();
    await page.getByLabel(words.question.text).selectOption('paired');
    await page.getByRole('radio', { name: words['way-sem'].text }).click();
    await page.getByRole('button', { name: words.work.text }).click();
    await page.getByText(words['fault-missing'].text).first().waitFor();
    // where something is missing the cursor stands
    const focused = (): Promise<string | undefined> =>
      page.evaluate(() => {
        let at = document.activeElement;
        while (at?.shadowRoot?.activeElement != null) at = at.shadowRoot.activeElement;
        return at?.getAttribute('aria-label') ?? undefined;
      });
    await expect.poll(focused).toBe(words.difference.text);
    await page.getByLabel(words.difference.text, { exact: true }).fill('-3');
    await page.getByLabel(words.sem.text, { exact: true }).fill('2,25');
    await page.locator('#sem #people').fill('32');
    await page.getByRole('button', { name: words.work.text }).click();
    // 11 of SciPy's noncentral t; 8 and 18 at the ends of the interval of 2.25 from 32 people
    await page.getByText('11 people', { exact: true }).first().waitFor();
    await page.getByText('From 8 to 18, as what is not known comes out.').waitFor();
    await page.reload();
    await page.getByText('11 people', { exact: true }).first().waitFor();
    await fitsAt(page, 'design-answered', 360, 768, 1280);
    expect(await violations(page)).toEqual([]);

    const made = await madeByCommand(page);
    expect(made.size).toBe(8);
    await allAsMade(page, made);
  },
);

browserTest('every question makes the same bytes in the browser and by its command', async ({ page, origin }) => {
  const asked = [
    'groups.;difference.low=2;difference.expected=3;difference.high=4;sd.low=4;sd.expected=5;sd.high=7;legs.expected=2;legs-alike.expected=0.6',
    'groups-not-worse.;margin.expected=2;difference.low=-1;difference.expected=0;difference.high=1;sd.expected=4',
    'paired.sd-change;difference.expected=3;sd-change.expected=4;sd-change.people=20',
    'paired.sd;difference.expected=3;sd.expected=5;correlation.low=0.6;correlation.expected=0.8;correlation.high=0.9',
    'paired-not-worse.sem;margin.expected=2;sem.expected=2.25',
    'mean.;within.expected=2;sd.low=4;sd.expected=5;sd.high=7',
    'limits.sem;within.expected=2;sem.expected=2.25;sem.people=32',
    'icc.;width.expected=0.2;icc.low=0.7;icc.expected=0.85;icc.high=0.9',
    'icc-above.;icc.expected=0.8;least.expected=0.6',
    'error.;above.expected=0.3;repeats.expected=3',
    'change.;change.expected=4;sem.low=2;sem.expected=2.25;sem.high=3',
  ];
  await page.goto(origin);
  // each goes through the same page and the same command: every run takes every fourth
  for (const one of asked.filter((_, at) => inRun(at % 4 === 0, true))) {
    await page.goto(`${origin}/#/nowhere`);
    await page.locator('design-page').waitFor({ state: 'detached' });
    await page.goto(`${origin}/#/design/${encodeURIComponent(one)}`);
    await page.locator('svg-figure svg').waitFor();
    const made = await madeByCommand(page);
    await allAsMade(page, made);
  }
});

browserTest(
  'no state of it breaks a rule of accessibility, on light and dark paper, nor with text of twice the size',
  async ({ page, origin }) => {
    const { found, states } = await walked(page, origin, designStates);
    expect(found).toEqual([]);
    expect(states.length).toBe(designStates.filter(isLookedAt).length);
  },
);
