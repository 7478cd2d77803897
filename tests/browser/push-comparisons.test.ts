import { TARGET_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import type { ToldVisit } from '../support/told-visit.ts';
import { browserTest } from './support/browser-test.ts';
import { ADULT_82_KG, fitsAt, openFolds, openResult, shows } from './support/result-page.ts';
import { violations } from './support/violations.ts';

browserTest(
  'seated pushes of 1425 and 1150 N net at 82 kg: yes with its interval, then 75 N more that cannot be told, and a target only when asked for',
  async ({ page, origin }) => {
    const begin: ToldVisit = { day: '2026-03-02', pushes: { left: { netN: 1425 }, right: { netN: 1150 } } };
    await openResult(page, origin, [begin], ADULT_82_KG);
    await shows(
      page,
      'Left reached 1425 N; right reached 1150 N.',
      'Yes, the right leg does less: 1150 N against 1425 N.',
      'Left: no earlier test of this leg.',
      'Right: No matching reference for this way of testing',
      'Left: The efforts agree and were held: they show a maximum.',
    );
    await openFolds(page);
    // 42.6 N: Glaied & Whiteley 2025 Int J Sports Phys Ther 20:253; exp(+-1.96 sqrt((42.6 / 1425)^2 + (42.6 / 1150)^2)) is 0.911 to 1.098
    await shows(
      page,
      'Right over left: 81 % (95 %: 74 to 89 %). The other leg may be low too.',
      'Right did 275 N less than left (95 %: −393 to −157 N).',
      'Every published error gives the same verdict.',
      'Irritability: not graded',
    );
    const target = page.getByText('Left: 1.77 times body weight (95 % from one test to the next: 1.67 to 1.88).');
    expect(await target.isVisible()).toBe(false);
    await page.getByText(TARGET_WORDS.show.text).click();
    await target.waitFor();
    await shows(page, 'Right: 1.43 times body weight', 'no reference, no pass mark');
    await fitsAt(page, 'case3', 360, 768);

    const again: ToldVisit = { day: '2026-04-27', pushes: { left: { netN: 1500 }, right: { netN: 1150 } } };
    await openResult(page, origin, [begin, again], ADULT_82_KG);
    await shows(
      page,
      'Left: 75 N more than on 2 Mar 2026. Cannot be told from the usual wobble of the test.',
      'Right: as much as on 2 Mar 2026.',
    );
    await openFolds(page);
    await shows(page, 'Detectable: 118 with 95 %, 77 with 80 %. Change: +75 (95 %: −43 to +193).', 'Above rest, N');
    await fitsAt(page, 'case3-again', 360, 768);
  },
);

browserTest(
  'a cell beside a plate is refused, on one visit and over two; raises and pushes of a visit each have their own comparisons',
  async ({ page, origin }) => {
    const plate: ToldVisit = { day: '2026-03-02', pushes: { left: { netN: 1425 }, right: { netN: 1150 } } };
    const mixed: ToldVisit = {
      day: '2026-04-27',
      left: { count: 27 },
      right: { count: 19 },
      pushes: { left: { netN: 1425 }, right: { netN: 1150, placement: 'inline' } },
    };
    await openResult(page, origin, [plate, mixed], ADULT_82_KG);
    await shows(page, 'Yes, the right leg does less: 19 against 27.');
    const pushes = page.locator('pull-result');
    await pushes.getByText('No ratio of the two legs.').waitFor();
    await pushes.getByText('Right: earlier tests were done in another way, and stand beside this one only.').waitFor();
    await openFolds(page);
    await pushes.getByText('The values were taken by different conventions').first().waitFor();
    await pushes.getByText('The sensor sat in a different place on each leg.').first().waitFor();
    await pushes.getByText('place of the sensor: force platform then, cell in line with the force now').waitFor();
    await pushes.getByText('heel raises of this leg in the same visit before: no then, yes now').first().waitFor();
    expect(await pushes.locator('ratio-axis').count()).toBe(0);
    expect(await page.getByText(/Right over left: \d+ %/).count()).toBe(1);
    await fitsAt(page, 'case3-mixed', 360, 768);
    expect(await violations(page)).toEqual([]);
  },
);
