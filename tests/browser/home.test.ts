import { EXERCISE_WORDS, HOME_TODAY_WORDS, HOME_WORDS, PLAN_LINE_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { HOME_HANDOUT, homeHash } from '../support/home-address.ts';
import { JUDGING_WORDS } from '../support/judging-words.ts';
import { browserTest } from './support/browser-test.ts';
import { violations } from './support/violations.ts';

browserTest(
  'today is done set by set and comes back, runs have their limit, and nothing unconfirmed is there',
  async (given) => {
    const { page, origin } = given;
    await page.emulateMedia({ reducedMotion: 'no-preference' });
    await page.goto(`${origin}/${homeHash()}`);
    const go = (name: 'today' | 'running' | 'give'): Promise<void> =>
      page.locator('home-page nav').getByRole('button', { name: HOME_WORDS[name].text, exact: true }).click();
    await go('today');
    await page.getByRole('heading', { name: EXERCISE_WORDS['one-leg-raise'].text }).waitFor();
    await page.getByRole('img', { name: PLAN_LINE_WORDS['foot-level'].text }).waitFor();
    await page.getByText('Weight: 7.5 kg').waitFor();

    // the red flags and whom to ring stand first, and nothing judges or counts in percent
    const said = await page.locator('main').innerText();
    expect(said.indexOf('Practice at the mill, 000 11 22')).toBeLessThan(said.indexOf(HOME_WORDS.today.text));
    for (const word of JUDGING_WORDS) expect(said).not.toMatch(word);
    expect(said).not.toMatch(/%|undefined|NaN/);

    // the mark of the pace goes round when it is asked for, and not before
    const turns = (): Promise<number> =>
      page
        .locator('pace-ring')
        .evaluate(({ shadowRoot }) => shadowRoot!.querySelector('.pace-mark')!.getAnimations().length);
    expect(await turns()).toBe(0);
    await page.getByRole('button', { name: HOME_TODAY_WORDS['pace-start'].text }).click();
    expect(await turns()).toBe(1);
    await page.getByRole('button', { name: HOME_TODAY_WORDS['pace-stop'].text }).click();
    expect(await turns()).toBe(0);

    const oneSet = page.getByRole('button', { name: HOME_TODAY_WORDS['one-set-done'].text });
    for (const left of [2, 1]) {
      await oneSet.click();
      await page.getByText(`Sets left: ${left} of 3`).waitFor();
    }
    await page.getByRole('button', { name: HOME_TODAY_WORDS['one-set-back'].text }).click();
    await page.getByText('Sets left: 2 of 3').waitFor();
    // it is kept on this device
    await page.reload();
    await go('today');
    await page.getByText('Sets left: 2 of 3').waitFor();
    expect(await violations(page)).toEqual([]);

    await go('running');
    await page.getByText('5 min of running at most.').waitFor();
    await page.getByRole('radio', { name: '2', exact: true }).click();
    await page.getByRole('button', { name: HOME_TODAY_WORDS['write-run'].text }).click();
    await page.getByText(HOME_TODAY_WORDS.written.text).waitFor();
    await page.getByText(/the next one is from/).waitFor();
    await go('give');
    await page.getByText('mornings 0, exercises 1, runs 1').waitFor();

    // without a confirmed limit there is no page for runs, and without exercises none is made up
    const bare = { ...HOME_HANDOUT, plan: [] };
    // a newer code in the same window is another plan at once
    await page.evaluate((hash) => (location.hash = hash), homeHash(bare));
    await page.locator('home-page nav').waitFor();
    expect(await page.getByRole('button', { name: HOME_WORDS.running.text, exact: true }).count()).toBe(0);
    await go('today');
    await page.getByText(HOME_TODAY_WORDS['nothing-today'].text).waitFor();
  },
);

browserTest('who asks for less movement has the ring as a still picture', async ({ page, origin }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(`${origin}/${homeHash()}`);
  await page.locator('home-page nav').getByRole('button', { name: HOME_WORDS.today.text, exact: true }).click();
  await page.getByRole('img', { name: 'Picture. A ring: up 3 s, down 3 s.' }).waitFor();
  expect(await page.getByRole('button', { name: HOME_TODAY_WORDS['pace-start'].text }).count()).toBe(0);
});
