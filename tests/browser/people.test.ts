import { EPISODE_WORDS, START_WORDS, TODAY_WORDS } from '@surae/shared';
import { MemoryStore } from '@surae/storage';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { ALL_TOLD, documentsOf, legTold, tellVisits } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { openStart } from './support/journey.mjs';
import { fitsAt, WOMAN_38 } from './support/result-page.ts';
import { putDocuments, storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

const flaring = { ...ALL_TOLD, legs: { ...ALL_TOLD.legs, right: legTold('none', { flare: 'yes' }) } };

browserTest('a person is corrected: what was told before stays, and when and who stand beside it', async (given) => {
  const { page, origin } = given;
  await openStart(page, origin);
  const entry = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Mirela Haddad' }) });
  const before = await storedBodies(page, 'person');
  await entry.locator('summary').click();
  await entry.getByRole('button', { name: START_WORDS['amend-keep'].text }).click();
  await entry.getByText(START_WORDS['amend-none'].text).waitFor();
  await entry.getByLabel(START_WORDS['height-field'].text).fill('1.72');
  await entry.getByRole('button', { name: START_WORDS['amend-keep'].text }).click();
  await entry.getByText(START_WORDS['height-range'].text).waitFor();
  expect(await entry.getByText(START_WORDS['amend-none'].text).count()).toBe(0);
  await fitsAt(page, 'person-refused', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  await entry.getByLabel(START_WORDS['height-field'].text).fill('172');
  await entry.getByLabel(START_WORDS['amend-who'].text).fill('R. N.');
  await entry.getByRole('button', { name: START_WORDS['amend-keep'].text }).click();
  await entry.getByText('body height 172 cm').waitFor();
  // the focus is back where the form was opened
  await page.keyboard.press('Enter');
  await entry.getByText(/^Body height, cm: not told, then 172\.0 \(.+, R\. N\.\)$/).waitFor();
  await fitsAt(page, 'person-corrected', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  expect(await storedBodies(page, 'person')).toEqual(before);
  expect(await storedBodies(page, 'person-amended')).toEqual([{ change: { bodyHeightM: 1.72 }, by: 'R. N.' }]);
  await page.reload();
  await entry.getByText('body height 172 cm').waitFor();
});

browserTest(
  'a mass of 165 is asked about before anybody is added, and pounds are put right in one press',
  async ({ page, origin }) => {
    await openStart(page, origin);
    await page.getByText(START_WORDS.add.text, { exact: true }).click();
    const form = page.locator('details.add');
    await form.getByLabel(START_WORDS.name.text).fill('Case');
    const mass = form.getByLabel(START_WORDS['mass-field'].text);
    await mass.fill('165');
    await form.getByText('165 kg is 26 st 0 lb.').waitFor();
    await form.getByRole('button', { name: START_WORDS.keep.text }).click();
    await form.getByText(EPISODE_WORDS['mass-answer'].text).waitFor();
    expect(await storedBodies<{ name: string }>(page, 'person')).not.toContainEqual(
      expect.objectContaining({ name: 'Case' }),
    );
    await form.getByRole('radio', { name: '74.8 kg' }).click();
    expect(await mass.inputValue()).toBe('74.8');
    await form.getByRole('button', { name: START_WORDS.keep.text }).click();
    await page.getByRole('heading', { name: 'Case', exact: true }).waitFor();
    const people = await storedBodies<{ name: string; bodyMassKg: number }>(page, 'person');
    expect(people.at(-1)).toMatchObject({ name: 'Case', bodyMassKg: 74.8 });
  },
);

browserTest('somebody in a long list is found by name; a short list has no field for it', async ({ page, origin }) => {
  await openStart(page, origin);
  const field = page.getByLabel(START_WORDS.seek.text);
  expect(await field.count()).toBe(0);
  const store = new MemoryStore();
  for (const name of ['Åsa Lindqvarn', 'Aske B', 'C 3', 'D 4', 'E 5'])
    await tellVisits(store, { ...WOMAN_38, name }, []);
  await putDocuments(page, await documentsOf(store));
  await page.reload();
  await field.fill('as');
  await page.getByText(fill(START_WORDS.found, { found: 3, all: 9 })).waitFor();
  expect(await page.getByRole('heading', { level: 3 }).allTextContents()).toEqual([
    'Åsa Lindqvarn',
    'Aske B',
    'Tomasz Brelo',
  ]);
  await fitsAt(page, 'people-sought', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  await field.fill('nobody of this name');
  await page.getByText(fill(START_WORDS.found, { found: 0, all: 9 })).waitFor();
});

browserTest('who asks for something stands above the rest, with what it is', async ({ page, origin }) => {
  await openStart(page, origin);
  const due = page.getByRole('heading', { name: TODAY_WORDS.due.text });
  await page.getByRole('heading', { name: TODAY_WORDS.nobody.text }).waitFor();
  await fitsAt(page, 'nobody-due', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
  const store = new MemoryStore();
  await tellVisits(store, { ...WOMAN_38, name: 'Zita Orban' }, [
    { day: '2026-01-20', left: { count: 20 }, right: { count: 15 } },
    { day: '2026-03-01', history: flaring, open: true },
  ]);
  const [{ id: about }] = await store.documents({ kind: 'person' });
  const sore = { left: 'no', right: 'mid-portion' };
  const told = { onset: 'gradual', over: null, story: null, goal: null, loads: null };
  const written = { schema: 1, author: 'test', at: '2026-01-20T09:00:00.000+01:00', about };
  await store.add({ ...written, kind: 'episode', body: { sore, began: '2026-01', ...told } });
  await putDocuments(page, await documentsOf(store));
  await page.reload();
  await due.waitFor();
  const names = await page.getByRole('heading', { level: 3 }).allTextContents();
  expect([names[0], names.length]).toEqual(['Zita Orban', 5]);
  const asked = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Zita Orban' }) });
  expect((await asked.locator('.due li').allInnerTexts()).map((text) => text.split('\n').at(-1)?.trim())).toEqual([
    'The visit of 1 Mar 2026 is not finished.',
    'A flare of the right leg was told on 1 Mar 2026.',
    `The re-test of week 12 is due since 14 Apr 2026. ${TODAY_WORDS.practice.text}`,
    TODAY_WORDS['mass-missing'].text,
    TODAY_WORDS['lever-missing'].text,
  ]);
  await fitsAt(page, 'somebody-due', 360, 768, 1280);
  expect(await violations(page)).toEqual([]);
});

browserTest('the steps of a visit are there before anybody opens one', async ({ page, origin }) => {
  await openStart(page, origin);
  for (const step of ['test-step', 'pull-step', 'result-step']) {
    await page.waitForFunction((name) => customElements.get(name) !== undefined, step);
  }
  expect(await page.locator('visit-page').count()).toBe(0);
});
