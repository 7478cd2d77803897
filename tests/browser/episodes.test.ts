import {
  EPISODE_LINE_WORDS,
  EPISODE_WORDS,
  SAFETY_LIST,
  SORENESS_WORDS,
  START_WORDS,
  TODAY_WORDS,
} from '@surae/shared';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart } from './support/journey.mjs';
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
});
