import {
  EXERCISE_WORDS,
  HAND_OVER_WORDS,
  PLAN_ADVICE_CHOICES,
  PLAN_LINE_WORDS,
  PLAN_RULE_SENTENCES,
  PLAN_WORDS,
  RESULT_WORDS,
  STEP_WORDS,
} from '@surae/shared';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './support/browser-test.ts';
import { words } from './support/journey.mjs';
import { openResult } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

interface Body {
  readonly code: string | null;
  readonly sets: number | null;
  readonly repetitions: number | null;
  readonly lowestFootDeg: number | null;
  readonly goneOver: readonly { readonly rule: string; readonly reason: string }[];
}

const sore = { left: 'no', right: 'insertion' } as const;

function number(page: Page, name: string): Locator {
  return page.locator(`number-stepper[data-name="${name}"]`);
}

function addExercise(page: Page, code: keyof typeof EXERCISE_WORDS): Promise<void> {
  return page.getByRole('button', { name: EXERCISE_WORDS[code].text, exact: true }).click();
}

browserTest(
  'a plan is written by presses, a heel bone that is sore has its rule, and the reason is kept',
  async (given) => {
    const { page, origin } = given;
    await openResult(page, origin, [
      { day: '2026-03-02', sore, open: true, left: { count: 27 }, right: { count: 19 } },
    ]);
    await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
    await addExercise(page, 'one-leg-raise');
    const more = number(page, 'repetitions').getByRole('button', {
      name: PLAN_WORDS.more.text.replace('{what}', PLAN_WORDS.repetitions.text),
    });
    for (let press = 0; press < 5; press += 1) await more.click();
    await page.getByText('Time under tension: 15 times 6 s = 90 s a set, 3 sets = 270 s.').waitFor();
    // the heel stays at level, by hand and by key
    const lowest = number(page, 'lowestFootDeg');
    expect(await lowest.getByRole('button').first().isDisabled()).toBe(true);
    await lowest.getByRole('button').last().press('Home');
    await lowest.getByText(PLAN_WORDS['value-deg-level'].text).waitFor();
    await page.getByRole('img', { name: PLAN_LINE_WORDS['foot-level'].text }).waitFor();

    // a step is asked for its reason, which is kept; undo takes back press by press
    await addExercise(page, 'calf-stretch');
    await page.getByRole('button', { name: PLAN_WORDS.undo.text }).click();
    await addExercise(page, 'step-raise');
    await page.getByText(PLAN_RULE_SENTENCES['insertion-step'].text).waitFor();
    expect(await page.getByRole('button', { name: PLAN_WORDS.keep.text }).isDisabled()).toBe(true);
    const reason = page.getByLabel(PLAN_WORDS.reason.text).first();
    await reason.fill('stairs at work');
    await reason.blur();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
    await page.getByText(/Heel raises on one leg: right leg, 3 sets of 15/).waitFor();
    const kept = await storedBodies<Body>(page, 'plan-item');
    expect(kept.map(({ code, sets, repetitions, lowestFootDeg }) => [code, sets, repetitions, lowestFootDeg])).toEqual([
      ['one-leg-raise', 3, 15, 0],
      ['step-raise', 3, 10, 0],
    ]);
    expect(kept[1].goneOver).toEqual([{ rule: 'insertion-step', reason: 'stairs at work' }]);
  },
);

browserTest('the plan so far is taken over by one press, and goes on by one where nothing changes', async (given) => {
  const { page, origin } = given;
  const visit = { sore, open: true, left: { count: 27 }, right: { count: 19 } };
  await openResult(page, origin, [
    { day: '2026-03-02', ...visit },
    { day: '2026-03-30', ...visit },
  ]);
  const second = await page.evaluate(() => location.hash);
  const first = await page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const opening = indexedDB.open('surae');
        opening.onsuccess = () => {
          const asking = opening.result.transaction('documents').objectStore('documents').getAll();
          asking.onsuccess = () => {
            const all = asking.result as { kind: string; id: string; at: string }[];
            resolve(all.find(({ kind, at }) => kind === 'visit' && at.startsWith('2026-03-02'))?.id ?? '');
            opening.result.close();
          };
        };
      }),
  );
  await page.evaluate((id) => (location.hash = `#/visit/${id}`), first);
  const close = page.getByRole('button', { name: RESULT_WORDS.close.text });
  await close.click();
  await addExercise(page, 'seated-raise');
  await page.getByRole('button', { name: PLAN_ADVICE_CHOICES['heel-lift'].text }).click();
  await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
  await page.getByRole('heading', { name: HAND_OVER_WORDS.title.text }).waitFor();

  await page.evaluate((hash) => (location.hash = hash), second);
  await close.click();
  await page.getByRole('heading', { name: words(PLAN_WORDS['so-far']) }).waitFor();
  await page.getByRole('button', { name: PLAN_WORDS['take-over'].text }).click();
  expect(await page.locator('plan-line-form').count()).toBe(2);
  await page.getByRole('button', { name: PLAN_WORDS.undo.text }).click();
  expect(await page.locator('plan-line-form').count()).toBe(0);
  await page.getByRole('button', { name: words(PLAN_WORDS.unchanged) }).click();
  await page.getByRole('heading', { name: HAND_OVER_WORDS.title.text }).waitFor();
  await page.getByText(/^Seated heel raises: both legs, 3 sets of 15/).waitFor();
  expect(await storedBodies(page, 'plan-item')).toHaveLength(2);
});

browserTest(
  'what was begun and not kept is there after a reload, and goes when it is kept or taken away',
  async (given) => {
    const { page, origin } = given;
    const lines = page.locator('plan-line-form');
    const begunLine = page.getByText(words(PLAN_WORDS.begun));
    const own = page.getByLabel(PLAN_WORDS.own.text);
    const more = PLAN_WORDS.more.text.replace('{what}', PLAN_WORDS.repetitions.text);
    const begun = () => storedBodies<{ readonly items: readonly object[]; readonly typed: string }>(page, 'plan-begun');
    await openResult(page, origin, [
      { day: '2026-03-02', sore, open: true, left: { count: 27 }, right: { count: 19 } },
    ]);
    await page.getByRole('button', { name: RESULT_WORDS.close.text }).click();
    await addExercise(page, 'one-leg-raise');
    await number(page, 'repetitions').getByRole('button', { name: more }).click();
    await page.getByRole('button', { name: PLAN_ADVICE_CHOICES['heel-lift'].text }).click();
    await own.fill('shoes with a heel');
    expect(await begunLine.count()).toBe(0);
    // letters are written half a second later
    await expect.poll(async () => (await begun()).at(-1)?.typed).toBe('shoes with a heel');

    await page.reload();
    await begunLine.waitFor();
    await expect.poll(() => lines.count()).toBe(2);
    expect(await own.inputValue()).toBe('shoes with a heel');
    await lines
      .first()
      .getByText(/3 sets of 11/)
      .waitFor();
    expect(await violations(page)).toEqual([]);

    // taken away by one press, which can be undone; away for good after a reload
    await page.getByRole('button', { name: PLAN_WORDS['take-away'].text }).click();
    await expect.poll(() => lines.count()).toBe(0);
    await page.getByRole('button', { name: PLAN_WORDS.undo.text }).click();
    await expect.poll(async () => (await begun()).at(-1)?.items.length).toBe(2);
    await page.reload();
    await begunLine.waitFor();
    await expect.poll(() => lines.count()).toBe(2);
    expect(await own.inputValue()).toBe('');
    await page.getByRole('button', { name: PLAN_WORDS['take-away'].text }).click();
    await expect.poll(async () => (await begun()).at(-1)?.items).toEqual([]);
    await page.reload();
    await page.getByText(PLAN_WORDS.empty.text).waitFor();
    expect([await lines.count(), await begunLine.count()]).toEqual([0, 0]);

    // left for another step it is there as well; kept, it is a plan and no longer begun
    await addExercise(page, 'seated-raise');
    await expect.poll(async () => (await begun()).at(-1)?.items.length).toBe(1);
    await page
      .getByRole('button', { name: words(STEP_WORDS.change) })
      .first()
      .click();
    await page.getByRole('heading', { name: PLAN_WORDS.title.text, exact: true }).waitFor({ state: 'detached' });
    await page.reload();
    await begunLine.waitFor();
    await expect.poll(() => lines.count()).toBe(1);
    await page.getByRole('button', { name: PLAN_WORDS.keep.text }).click();
    await page.getByRole('heading', { name: HAND_OVER_WORDS.title.text }).waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'change: plan' }).click();
    await expect.poll(() => lines.count()).toBe(1);
    expect(await begunLine.count()).toBe(0);
  },
);
