import {
  EPISODE_LINE_WORDS,
  EPISODE_WORDS,
  HISTORY_WORDS,
  SAFETY_LIST,
  SAFETY_WORDS,
  SORENESS_WORDS,
  START_WORDS,
  TODAY_WORDS,
} from '@surae/shared';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { browserTest } from './support/browser-test.ts';
import { answerHistory, answerSoreness, beginVisit, openStart, words } from './support/journey.mjs';
import { fitsAt } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

browserTest('a new person, the episode, a visit, and the next one as last time', async ({ page, origin }) => {
  const press = (words: { readonly text: string }) => page.getByRole('button', { name: words.text }).click();
  const choose = (words: { readonly text: string }) =>
    page.getByRole('radio', { name: words.text, exact: true }).click();
  await openStart(page, origin);
  await page.getByText(START_WORDS.add.text, { exact: true }).click();
  await page.getByLabel(START_WORDS.name.text).fill('Zita Orban');
  await press(START_WORDS.keep);
  const entry = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Zita Orban' }) });
  await entry.getByText(TODAY_WORDS['lever-missing'].text).waitFor();
  await entry.getByRole('link', { name: fill(EPISODE_LINE_WORDS['link-of'], { name: 'Zita Orban' }) }).click();
  await page.getByRole('heading', { name: EPISODE_LINE_WORDS.title.text }).waitFor();
  await page.getByRole('img', { name: EPISODE_WORDS['lever-picture'].text }).waitFor();

  // nothing is taken that tells of no leg, and a beginning to come is none
  await page.getByLabel(EPISODE_WORDS['date-field'].text).fill('2099-01');
  await press(EPISODE_WORDS.keep);
  await page.getByText(EPISODE_WORDS['sore-missing'].text).waitFor();
  await page.getByText(EPISODE_WORDS['date-to-come'].text).waitFor();
  await fitsAt(page, 'episode-refused', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);

  const right = page.getByRole('region', { name: EPISODE_WORDS.right.text });
  await right.getByRole('radio', { name: SORENESS_WORDS.insertion.text }).click();
  await choose(EPISODE_WORDS.sudden);
  await choose(EPISODE_WORDS['pop-yes']);
  const rupture = SAFETY_LIST.find(({ id }) => id === 'safety.rupture');
  await page.getByText(rupture!.ask).waitFor();
  await page.getByText(rupture!.next).first().waitFor();
  await page.getByLabel(EPISODE_WORDS['date-field'].text).fill('2026-08');
  await page.getByLabel(EPISODE_WORDS.loads.text).fill('longest run from 8 to 14 km, 3 weeks before');
  await page.getByLabel(START_WORDS['mass-field'].text).fill('165');
  await page.getByLabel(START_WORDS['lever-field'].text).fill('18.2');
  await fitsAt(page, 'episode-told', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  // 165 is asked: as pounds it is 74.8 kg
  await press(EPISODE_WORDS.keep);
  await page.getByText(EPISODE_WORDS['mass-answer'].text).waitFor();
  await page
    .getByRole('radio', { name: fill(EPISODE_WORDS['mass-is-pounds'], { mass: 165, kilograms: 74.8 }) })
    .click();
  await choose(EPISODE_WORDS['pop-no']);
  await press(EPISODE_WORDS.keep);
  const line = 'right leg, at the heel bone, since August 2026';
  await page.getByText(line).waitFor();
  expect(await storedBodies(page, 'person-amended')).toEqual([
    { change: { bodyMassKg: 74.8, heelLeverM: 0.182 }, by: null },
  ]);

  // corrected, ended, and both taken back: nothing is written over
  await press(EPISODE_WORDS.correct);
  await page.getByLabel(EPISODE_WORDS['date-field'].text).fill('2026-07');
  await press(EPISODE_WORDS['keep-change']);
  await page.getByText(line.replace('August', 'July')).waitFor();
  await press(EPISODE_WORDS.end);
  await fitsAt(page, 'episode-ending', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  await press(EPISODE_WORDS['end-keep']);
  await page.getByText(/since July 2026, until/).waitFor();
  await press(EPISODE_WORDS.undo);
  await page.getByText(EPISODE_WORDS.undone.text).waitFor();
  await press(EPISODE_WORDS.undo);
  await page.getByText(line, { exact: true }).waitFor();
  expect(await storedBodies(page, 'episode')).toMatchObject([{ began: '2026-08', over: null, pop: false }]);
  expect(await storedBodies<{ why: string | null }>(page, 'amendment')).toHaveLength(4);
  await page.getByRole('link', { name: 'All people', exact: true }).click();
  await entry.getByText(line).waitFor();
  await entry.getByText(TODAY_WORDS['never-tested'].text).waitFor();
  await fitsAt(page, 'start-episode', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);

  // the first visit takes over what the episode says; the left leg was not told there
  await beginVisit(page, 'Zita Orban');
  const said = { left: SORENESS_WORDS['not-told'].text, right: SORENESS_WORDS.insertion.text };
  await page.getByRole('button', { name: fill(SORENESS_WORDS['as-episode'], said) }).click();
  await page.getByText(SORENESS_WORDS['copied-episode'].text).waitFor();
  await page.getByText(SORENESS_WORDS.missing.text).waitFor();
  await answerSoreness(page, { left: 'no', right: 'insertion' });
  await answerHistory(page, { told: true });
  await openStart(page, origin);
  await beginVisit(page, 'Zita Orban');

  // the second one as the first: one press for both legs, which can be taken back
  const asLast = page.getByRole('button', { name: /^As on .*: left not sore, right at the heel bone$/ });
  await asLast.click();
  await page.getByText(words(SORENESS_WORDS['copied-visit'])).waitFor();
  await fitsAt(page, 'soreness-copied', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  await press(SORENESS_WORDS['copied-back']);
  expect(await page.getByRole('button', { pressed: true }).count()).toBe(0);
  await asLast.click();
  expect(await page.getByRole('button', { pressed: true }).allTextContents()).toHaveLength(2);
  await press(SORENESS_WORDS['go-on']);
  await page.getByText(HISTORY_WORDS['copied-not'].text).waitFor();
  expect(await page.getByRole('radio', { name: HISTORY_WORDS['injury-none'].text, checked: true }).count()).toBe(0);
  await page.getByRole('button', { name: /^As on .*none of these\)$/ }).click();
  await page.getByText(words(HISTORY_WORDS['copied-visit'])).waitFor();
  await fitsAt(page, 'history-copied', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  await press(HISTORY_WORDS['go-on']);
  // the safety list is gone through anew
  await page.getByRole('heading', { name: SAFETY_WORDS.title.text }).waitFor();
  expect(await page.getByRole('checkbox', { checked: true }).count()).toBe(0);
  const [first, second] = await storedBodies(page, 'visit-history');
  expect(second).toEqual(first);
  expect(await storedBodies(page, 'visit-sore')).toHaveLength(2);
});
