import { readFileSync } from 'node:fs';
import {
  CONTACT_WORDS,
  EXERCISE_WORDS,
  HAND_OVER_WORDS,
  HOME_TODAY_WORDS,
  HOME_WORDS,
  MORNING_CHOICES,
  MORNINGS_IN_PLACE,
  MORNINGS_IN_WORDS,
  PLAN_WORDS,
  RESULT_WORDS,
} from '@surae/shared';
import { expect } from 'vitest';
import { profileTest } from './support/browser-test.ts';
import { fitsAt, openResult } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

profileTest('a visit is handed over as an address that holds the page, and a morning comes back', async (given) => {
  const { page, context, origin } = given;
  const day = '2026-03-02';
  const sore = { left: 'no', right: 'mid-portion' } as const;
  await openResult(page, origin, [{ day, sore, open: true, left: { count: 27 }, right: { count: 19 } }]);
  const visit = new URL(page.url()).hash;
  await page.evaluate(() => (location.hash = '#/clinic'));
  await page.getByLabel(CONTACT_WORDS.name.text).fill('Practice at the mill');
  await page.getByLabel(CONTACT_WORDS.telephone.text).fill('000 11 22');
  await page.locator('contact-setting').getByRole('button', { name: CONTACT_WORDS.keep.text }).click();
  await page.getByText('On the pages for patients: Practice at the mill, 000 11 22.').waitFor();
  await page.evaluate((hash) => (location.hash = hash), visit);
  await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
  await page.getByRole('button', { name: EXERCISE_WORDS['one-leg-hold'].text }).click();
  await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
  await page.getByRole('button', { name: MORNING_CHOICES['hold-same'].text }).click();
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: HAND_OVER_WORDS.code.text }).click();
  const address = (await page.getByRole('link', { name: HOME_WORDS.title.text }).getAttribute('href'))!;
  expect(await violations(page)).toEqual([]);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));

  // a browser that knows nothing of the clinic opens the address, and goes on without a network
  const other = await context.browser()?.newContext();
  const home = other === undefined ? await context.newPage() : await other.newPage();
  await home.goto(address);
  await home.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await home.context().setOffline(true);
  await home.reload();
  await home.getByRole('heading', { name: HOME_WORDS.morning.text }).waitFor();
  await home.getByText(/ring Practice at the mill, 000 11 22, today/).waitFor();
  expect(await home.content()).not.toContain('Case');
  await home
    .getByRole('radiogroup', { name: HOME_WORDS['pain-right'].text })
    .getByRole('radio', { name: '4', exact: true })
    .click();
  await home.getByRole('radio', { name: HOME_WORDS['10-to-30'].text }).click();
  await home.getByText(MORNING_CHOICES['hold-same'].text).waitFor();
  await fitsAt(home, 'home-morning', 360, 768, 1280);
  await home.getByRole('button', { name: HOME_WORDS.today.text, exact: true }).click();
  await home.getByRole('button', { name: HOME_TODAY_WORDS['one-set-done'].text }).click();
  await home.getByText('Sets left: 4 of 5').waitFor();
  expect(await violations(home)).toEqual([]);
  for (const name of ['legs', 'flare', 'numbers', 'give'] as const) {
    await home.getByRole('button', { name: HOME_WORDS[name].text }).click();
    await home.getByRole('heading', { name: HOME_WORDS[name].text }).waitFor();
    // the marks of the clinic's page, and not words alone
    if (name === 'legs') await home.getByRole('img', { name: 'Left: 27' }).waitFor();
    await fitsAt(home, `home-${name}`, 360);
    expect(await violations(home)).toEqual([]);
  }
  const [download] = await Promise.all([
    home.waitForEvent('download'),
    home.getByRole('button', { name: HOME_WORDS['give-file'].text }).click(),
  ]);
  const text = readFileSync(await download.path(), 'utf8');
  await home.context().setOffline(false);

  // the clinic takes it in, once
  await page.evaluate((hash) => (location.hash = hash), visit);
  await page.getByRole('link', { name: MORNINGS_IN_PLACE.link.text }).click();
  for (const count of [1, 0]) {
    await page.getByLabel(MORNINGS_IN_WORDS.text.text).fill(text);
    await page.getByRole('button', { name: MORNINGS_IN_WORDS.look.text }).click();
    const keep = page.getByRole('button', { name: MORNINGS_IN_WORDS.keep.text });
    await keep.waitFor();
    expect(await keep.isEnabled()).toBe(count === 1);
    if (count === 0) break;
    await fitsAt(page, 'mornings-in', 360);
    expect(await violations(page)).toEqual([]);
    await keep.click();
    await page.getByText('Kept: 2.').waitFor();
  }
  const checks = await storedBodies<object>(page, 'morning-check');
  expect(checks).toMatchObject([{ pain: { left: null, right: 4 }, stiffness: '10-to-30', stiffnessMin: null }]);
  const [item] = await storedBodies<{ id: string }>(page, 'plan-item');
  expect(item).toMatchObject({ code: 'one-leg-hold', side: 'right' });
  const done = await storedBodies<{ planItemId: string | null }>(page, 'done-item');
  expect(done).toMatchObject([{ sets: 1, side: 'right', what: EXERCISE_WORDS['one-leg-hold'].text, painDuring: null }]);
  expect(done[0].planItemId).toMatch(/^[0-9a-f]{32}$/);
});
