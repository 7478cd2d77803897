import { compareValues, type MeasuredValue, RATIO_BLOCKS, VALUE_BLOCKS } from '@surae/analysis';
import type { VisitHistory } from '@surae/casebook';
import {
  COMPARE_CAUTION_SENTENCES,
  FLOOR,
  HISTORY_WORDS,
  RATIO_BLOCK_SENTENCES,
  RATIO_UNBLOCK_SENTENCES,
  RESULT_WORDS,
  VALUE_BLOCK_SENTENCES,
  VALUE_UNBLOCK_SENTENCES,
} from '@surae/shared';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Comparisons } from '../../apps/dashboard/src/result/comparisons.ts';
import { sideView } from '../../apps/dashboard/src/result/side-view.ts';
import { inRun } from '../support/runs.ts';
import { ALL_TOLD, legTold, MODERATE, type ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { answerHistory } from './support/journey.mjs';
import { openFolds, openResult, openResults, shows } from './support/result-page.ts';
import { storedBodies } from './support/stored.ts';
import { violations } from './support/violations.ts';

const REASONS = { ...RATIO_BLOCK_SENTENCES, ...VALUE_BLOCK_SENTENCES };
const LIFTS = { ...RATIO_UNBLOCK_SENTENCES, ...VALUE_UNBLOCK_SENTENCES };

function valueOf(value: number): MeasuredValue {
  return { value, u: 2.25, unit: '1', convention: 'scored repetitions' };
}

browserTest(
  'one sore side, 27 and 19, then 24 in week 8: the page says yes, then possible, and what it hangs on',
  async (given) => {
    const { page, origin } = given;
    const begin: ToldVisit = { day: '2026-03-02', left: { count: 27 }, right: { count: 19, pain: 3 } };
    await openResult(page, origin, [begin]);
    if (process.env['SHOTS']) await page.screenshot({ path: `${process.env['SHOTS']}/case1.png`, fullPage: true });
    await shows(page, 'Yes, the right leg does less: 19 against 27.');
    await openFolds(page);
    await shows(
      page,
      'Right over left: 70 % (95 %: 53 to 93 %). The other leg may be low too.',
      'Right did 8 fewer than left (95 %: −14 to −2 repetitions).',
      'the probability is 0.96',
    );
    if (process.env['SHOTS']) await page.screenshot({ path: `${process.env['SHOTS']}/case1-open.png`, fullPage: true });
    await openResult(page, origin, [begin, { day: '2026-04-27', left: { count: 27 }, right: { count: 24, pain: 2 } }]);
    await shows(page, 'Right: 5 more than on 2 Mar 2026. A change is possible.');
    await openFolds(page);
    await shows(page, 'The verdict hangs on which published error is believed');
    await page.setViewportSize({ width: 360, height: 740 });
    if (process.env['SHOTS']) await page.screenshot({ path: `${process.env['SHOTS']}/week8.png`, fullPage: true });
  },
);

browserTest(
  'two sore sides, one stopped for pain: no ratio, its reasons, and 9 tolerated',
  async ({ page, origin }) => {
    const history = {
      ...ALL_TOLD,
      legs: {
        left: legTold('none', { ...MODERATE, peakPain: 6 }),
        right: legTold('none', { ...MODERATE, peakPain: 3 }),
      },
    };
    await openResult(page, origin, [
      {
        day: '2026-03-02',
        sore: { left: 'insertion', right: 'insertion' },
        history,
        left: { count: 9, reason: 'pain', pain: 6, protocol: FLOOR },
        right: { count: 16, pain: 3, protocol: FLOOR },
      },
    ]);
    await shows(page, 'Both legs are sore: no ratio', 'Tolerated 9 before the pain limit.');
    await openFolds(page);
    await shows(
      page,
      'Both tendons are sore: neither leg shows what the other one could do.',
      'A leg stopped for pain: its result is what was tolerated.',
      'Irritability: high, by greatest pain.',
    );
    expect(await page.locator('comparison-list').getByText(/\d %/).count()).toBe(0);
    await page.emulateMedia({ colorScheme: 'dark' });
    if (process.env['SHOTS']) await page.screenshot({ path: `${process.env['SHOTS']}/case2.png`, fullPage: true });
  },
);

/** A result whose three comparisons are given, on the page that shows results. */
async function showComparisons(page: Page, comparisons: Comparisons): Promise<void> {
  await page.evaluate((given) => {
    const list = document.createElement('comparison-list');
    Object.assign(list, { comparisons: JSON.parse(given) as object });
    document.body.replaceChildren(list);
  }, JSON.stringify(comparisons));
  await openFolds(page);
}

browserTest(
  'every reason against a ratio is on the page with what would lift it, and no figure beside it',
  async (given) => {
    const { page, origin } = given;
    await openResult(page, origin, [{ day: '2026-03-02', left: { count: 27 }, right: { count: 19 } }]);
    const values = { left: valueOf(27), right: valueOf(19) };
    const circumstances = { oneSidedSport: false, legLengthRaise: false, ageYears: 38 };
    const direction = { over: 'right', under: 'left', why: 'sore-over-other' } as const;
    const rules = { ratioLine: 0.9, plainNoMost: 0.2, plainYesLeast: 0.8 };
    // one list shows them all by their words: every run takes every sixth
    const codes = [...RATIO_BLOCKS, ...VALUE_BLOCKS].filter((_, at) => inRun(at % 6 === 0, true));
    for (const code of codes) {
      const question = {
        comparison: compareValues(values, [code], direction, circumstances, rules),
        values: { left: 27, right: 19 },
        zone: null,
        error: null,
        underOthers: [],
        hangsOnReliability: null,
        words: { unit: 'repetitions', decimals: 0, isCount: true },
      };
      await showComparisons(page, {
        side: sideView(question),
        pasts: [],
        groups: [],
        target: null,
        legs: [],
        together: [],
        bilateral: null,
        isOneLeg: false,
      });
      const list = page.locator('comparison-list');
      await list.getByRole('term').getByText(REASONS[code].text, { exact: true }).waitFor();
      await list.getByRole('definition').getByText(LIFTS[code].text, { exact: true }).waitFor();
      await list.getByText(COMPARE_CAUTION_SENTENCES['other-side-may-be-low'].text, { exact: true }).waitFor();
      expect([code, await list.getByText(/\d/).count(), await list.locator('ratio-axis').count()]).toEqual([
        code,
        0,
        0,
      ]);
    }
    expect(codes.length).toBeGreaterThan(inRun(5, 30));
  },
);

browserTest(
  'every verdict and every zone is on the page in its words, clean for who reads with other means',
  async (given) => {
    const { page, origin } = given;
    const day = (weeks: number): string => new Date(Date.UTC(2026, 0, 5 + 7 * weeks)).toISOString().slice(0, 10);
    const right = (weeks: number, count: number, left = 27): ToldVisit => ({
      day: day(weeks),
      left: { count: left },
      right: { count },
    });
    const all: readonly (readonly [readonly ToldVisit[], readonly string[]])[] = [
      [
        [right(0, 18), right(4, 25)],
        ['Right: 7 more than on 5 Jan 2026. A real change is likely.', 'Cannot tell whether the right leg does less'],
      ],
      [
        [right(0, 18), right(4, 21)],
        [
          'Right: 3 more than on 5 Jan 2026. Cannot be told from the usual wobble of the test.',
          'Yes, the right leg does less',
        ],
      ],
      [[right(0, 26), right(4, 30)], ['No, the right leg does not do less: 30 against 27.']],
      [
        [right(0, 15), right(4, 18), right(8, 21), right(12, 24), right(16, 29)],
        ['Over 5 visits:', 'The course has a direction.', 'Since the first such visit'],
      ],
      [
        [{ ...right(0, 19), right: { count: 19, protocol: FLOOR } }, right(4, 24)],
        ['Right: earlier tests were done in another way', 'surface: level floor then, 10 degree board now'],
      ],
      [[right(0, 12), right(4, 12, 12)], ['Right: below the middle of every group.']],
      [
        [right(0, 40, 40)],
        ['No, the right leg does not do less: 40 against 40.', 'Right: above the middle of every group.'],
      ],
      [[right(0, 27, 40)], ['The comparisons disagree: the right leg does less than the other one']],
      [[right(0, 16, 16), right(4, 18, 13)], ['Left: below the middle of every group.']],
    ];
    // which words there are is decided without a page: every run takes one of each kind
    const cases = all.filter((_, at) => inRun([0, 3, 4, 7].includes(at), true));
    await page.emulateMedia({ reducedMotion: 'reduce' });
    const opened = await openResults(
      page,
      origin,
      cases.map(([visits]) => visits),
    );
    for (const [index, [, said]] of cases.entries()) {
      await opened(index);
      await openFolds(page);
      await shows(page, ...said);
    }
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await violations(page)).toEqual([]);
    }
  },
);

browserTest('a fold opens by the keyboard, and each is as tall as a target', async ({ page, origin }) => {
  await openResult(page, origin, [{ day: '2026-03-02', left: { count: 27 }, right: { count: 19 } }]);
  const summary = page.locator('comparison-fold summary').first();
  await summary.focus();
  await page.keyboard.press('Enter');
  await shows(page, 'Right over left: 70 %');
  for (const one of await page.locator('comparison-fold summary').all()) {
    expect((await one.boundingBox())!.height).toBeGreaterThanOrEqual(56);
  }
});

browserTest(
  'what was not asked is told on the result page, and told later it lifts the reason',
  async ({ page, origin }) => {
    const told: ToldVisit = { day: '2026-03-02', left: { count: 27 }, right: { count: 19 }, history: null, open: true };
    await openResult(page, origin, [told]);
    const asked = 'Earlier surgery, rupture, fracture or tear of the leg to compare with was not asked about.';
    await openFolds(page);
    await shows(page, asked);
    await page.getByRole('button', { name: /^change: what came before$/ }).click();
    // one sore leg: how irritable it is can be told too, by taps
    await page.getByText(HISTORY_WORDS['irritable-right'].text).click();
    await page.getByRole('radiogroup', { name: HISTORY_WORDS.provokedBy.text }).getByRole('radio').nth(2).click();
    await answerHistory(page, { told: true, next: RESULT_WORDS.title.text });
    await shows(page, 'Yes, the right leg does less: 19 against 27.');
    await openFolds(page);
    await shows(page, 'Irritability: high, by what brings the pain on.');
    expect(await page.getByText(asked).count()).toBe(0);
    const [{ history }] = await storedBodies<{ history: VisitHistory }>(page, 'visit-history');
    expect(history.about).toEqual([]);
    expect(history.legs.right.irritability).toMatchObject({ provokedBy: 'walking-or-standing', settles: null });
  },
);
