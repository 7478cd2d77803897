import { readFileSync } from 'node:fs';
import type { OwnReliability, Side } from '@surae/analysis';
import { foldVisit, noOwnErrors, type OwnErrorsInUse, personOf } from '@surae/casebook';
import { FLOOR } from '@surae/shared';
import { MemoryStore, type StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { VisitBook } from '../../../apps/dashboard/src/journey/visit-book.ts';
import { type Comparisons, comparisonsOf, pullComparisonsOf } from '../../../apps/dashboard/src/result/comparisons.ts';
import { fixturePath } from '../../support/fixture.ts';
import { ALL_TOLD, legTold, MODERATE, type ToldVisit, tellVisits } from '../../support/told-visit.ts';

const WOMAN_38 = { name: 'Case', bodyMassKg: null, heelLeverM: null, sex: 'women', birthYear: 1988 } as const;

/** What the page says of the last of these visits, of its raises or by another test. */
async function comparedBy(
  compare: typeof comparisonsOf,
  own: OwnErrorsInUse,
  ...visits: readonly ToldVisit[]
): Promise<Comparisons> {
  const store = new MemoryStore();
  const ids = await tellVisits(store, WOMAN_38, visits);
  const book = new VisitBook(store, { isoNow: () => '2026-12-01T09:00:00.000+01:00' }, 'test');
  const { visit, earlier } = (await book.visitAndPast(ids[ids.length - 1]))!;
  const person = (await book.person(visit.personId))!;
  return compare(visit, person, earlier, own);
}

const compared = (...visits: readonly ToldVisit[]): Promise<Comparisons> =>
  comparedBy(comparisonsOf, noOwnErrors, ...visits);
const pushed = (...visits: readonly ToldVisit[]): Promise<Comparisons> =>
  comparedBy(pullComparisonsOf, noOwnErrors, ...visits);

const sideOf = <Of extends { readonly side: Side }>(list: readonly Of[], side: Side): Of =>
  list.find((one) => one.side === side)!;

const BEGIN: ToldVisit = { day: '2026-03-02', left: { count: 27 }, right: { count: 19, pain: 3 } };
const WEEK_8: ToldVisit = { day: '2026-04-27', left: { count: 27 }, right: { count: 24, pain: 2 } };

test('one sore side, 27 and 19: the ratio with its interval, the difference, and yes', async () => {
  const { side } = await compared(BEGIN);
  expect(side.lead).toBe('Yes, the right leg does less: 19 against 27.');
  expect(side.lines[0]).toBe('Right over left: 70 % (95 %: 53 to 93 %). The other leg may be low too.');
  expect(side.lines[1]).toBe('Right did 8 fewer than left (95 %: −14 to −2 repetitions).');
  expect(side.lines[2]).toBe('A difference this size is larger than the usual wobble of this test.');
  expect(side.lines[3]).toMatch(/under 90 % of the other leg; the probability is 0\.96\./);
  expect(side.ratio).toMatchObject({ over: 'right', percent: 70, low: 53, high: 93, linePercent: 90 });
  expect(side.blocks).toEqual([]);
});

test('the same two counts with the other published error cannot tell, and the page says that the verdict hangs on it', async () => {
  const { side } = await compared(BEGIN);
  expect(side.lines).toContainEqual(
    expect.stringMatching(/^The error used: Hébert-Losier 2017.*\(32 people, without complaint, 10 degree/),
  );
  expect(side.lines).toContainEqual(
    expect.stringMatching(
      /^The verdict hangs on which published error.*Ross.*\) less; by Byrne 2017.*string at the heel.*\) cannot tell\.$/,
    ),
  );
});

test('week 8, 5 more: a change is possible; with the other published error it cannot be told', async () => {
  const right = sideOf((await compared(BEGIN, WEEK_8)).pasts, 'right');
  expect(right.lead).toBe('Right: 5 more than on 2 Mar 2026. A change is possible.');
  expect(right.lines[0]).toBe('Detectable: 6.2 with 95 %, 4.1 with 80 %. Change: +5 (95 %: −1.2 to +11.2).');
  expect(right.lines).toContainEqual(
    expect.stringMatching(
      /^The verdict hangs on which published error.*Byrne.* cannot be told from the usual wobble\.$/,
    ),
  );
  expect(right.course?.points.map(({ value }) => value)).toEqual([19, 24]);
  const left = sideOf((await compared(BEGIN, WEEK_8)).pasts, 'left');
  expect(left.lead).toBe('Left: as many as on 2 Mar 2026. Cannot be told from the usual wobble of the test.');
});

test('the groups stand side by side, each with its people and source, and none is averaged', async () => {
  const { groups } = await compared(BEGIN);
  const [left, right] = [sideOf(groups, 'left'), sideOf(groups, 'right')];
  expect(right.rows.map(({ who, middle, place }) => [who, middle, place])).toEqual([
    ['women, 30 to 39 years', 27, 'below'],
    ['women, 20 to 81 years', 21, 'near'],
    ['women and men, from 18 years, 500 people', 25, 'below'],
  ]);
  expect(left.rows.map(({ place }) => place)).toEqual(['near', 'above', 'near']);
  expect(right.lead).toBe('Right, of 3 groups: below the middle of 2, cannot tell for 1.');
  expect(right.lines[0]).toMatch(/^The groups differ among themselves/);
  expect(right.rows[0].source).toMatch(/as copied elsewhere/);
});

test('two sore sides, one stopped for pain: no ratio, the reasons, and what was tolerated', async () => {
  const insertions = { left: 'insertion', right: 'insertion' } as const;
  const history = {
    ...ALL_TOLD,
    legs: { left: legTold('none', { ...MODERATE, peakPain: 6 }), right: legTold('none', { ...MODERATE, peakPain: 3 }) },
  };
  const found = await compared({
    day: '2026-03-02',
    sore: insertions,
    history,
    left: { count: 9, reason: 'pain', pain: 6, protocol: FLOOR },
    right: { count: 16, pain: 3, protocol: FLOOR },
  });
  expect(found.side.lead).toBe('Both legs are sore: no ratio, each leg against its own past and the groups.');
  expect(found.side.ratio).toBeNull();
  expect(found.side.blocks.map(({ why }) => why)).toEqual(
    expect.arrayContaining([
      'Both tendons are sore: neither leg shows what the other one could do.',
      'A leg stopped for pain: its result is what was tolerated.',
    ]),
  );
  expect(JSON.stringify(found.side)).not.toMatch(/\d %/);
  const left = sideOf(found.legs, 'left');
  expect(left.lead).toBe('Tolerated 9 before the pain limit. This is tolerance, not capacity.');
  expect(left.lines).toContain('Irritability: high, by greatest pain.');
  expect(sideOf(found.legs, 'right').lines.at(-1)).toMatch(/^Irritability: moderate, by /);
  expect(sideOf(found.groups, 'left').lead).toBe(
    'Left: The set does not show what the calf could do: no group stands beside it.',
  );
  expect(sideOf(found.groups, 'right').lead).toBe('Right: No matching reference for this way of testing.');
});

test('a visit that version 1 of the store wrote is compared: what it never asked stands against a ratio', () => {
  const { stores } = JSON.parse(readFileSync(fixturePath('stores/version-1.json'), 'utf8')) as {
    readonly stores: { readonly documents: readonly StoredDocument[] };
  };
  const [personDocument, begun] = ['person', 'visit'].map((kind) => stores.documents.find((one) => one.kind === kind)!);
  const about = stores.documents.filter((one) => one.about === begun.id);
  const visit = foldVisit(begun, about);
  const found = comparisonsOf(visit, personOf(personDocument), []);
  expect(visit.history).toBeUndefined();
  const whys = found.side.blocks.map(({ why }) => why);
  expect(whys).toContain('Earlier surgery, rupture, fracture or tear of the leg to compare with was not asked about.');
  // its reports were made without the reason of the end
  expect(whys).toContain('Why a leg stopped was not recorded.');
  expect(whys).toContain('Signs of a nerve or a vessel were not asked about.');
  expect(found.pasts.map(({ lead }) => lead)).toEqual([
    'Left: no earlier test of this leg.',
    'Right: no earlier test of this leg.',
  ]);
});

const PUSHES: ToldVisit = { day: '2026-03-02', pushes: { left: { netN: 1425 }, right: { netN: 1150 } } };

test('seated, 1425 and 1150 N net: 81 % with its interval by the published 42.6 N, and yes', async () => {
  const { side, groups, legs } = await pushed(PUSHES);
  expect(side.lead).toBe('Yes, the right leg does less: 1150 N against 1425 N.');
  // exp(+-1.96 sqrt((42.6 / 1425)^2 + (42.6 / 1150)^2)) is 0.911 to 1.098
  expect(side.ratio).toMatchObject({ over: 'right', percent: 81, low: 74, high: 89, linePercent: 90 });
  expect(groups.map(({ lead, rows }) => [lead, rows.length])).toEqual([
    ['Left: No matching reference for this way of testing this measure.', 0],
    ['Right: No matching reference for this way of testing this measure.', 0],
  ]);
  expect(legs.map(({ lead }) => lead)).toEqual(Array(2).fill('The efforts agree and were held: they show a maximum.'));
});

test('75 N more against 118 N cannot be told, by any published error, and one leg alone has no ratio', async () => {
  const retest: ToldVisit = { day: '2026-04-27', pushes: { left: { netN: 1500 } } };
  const { pasts, side } = await pushed(PUSHES, retest);
  expect(pasts.map(({ lead }) => lead)).toEqual([
    'Left: 75 N more than on 2 Mar 2026. Cannot be told from the usual wobble of the test.',
  ]);
  expect(pasts[0].lines[0]).toBe('Detectable: 118 with 95 %, 77 with 80 %. Change: +75 (95 %: −43 to +193).');
  expect(pasts[0].lines).toContain('Every published error gives the same verdict.');
  expect(side.blocks.map(({ why }) => why)).toContain('A leg has no value.');
});

test('pushes that pain ended show what was tolerated, and a cell beside the plate is refused', async () => {
  const pain = await pushed({
    ...PUSHES,
    pushes: { left: { netN: 1425 }, right: { netN: 800, reason: 'pain', pain: 6 } },
  });
  expect(sideOf(pain.legs, 'right').lead).toMatch(/^Tolerated 800 N before the pain limit\. This is tolerance/);
  expect(pain.side.lead).toBe('No ratio of the two legs. A leg stopped for pain: its result is what was tolerated.');
  const cell = await pushed(PUSHES, {
    day: '2026-04-27',
    pushes: { left: { netN: 1425 }, right: { netN: 1150, placement: 'inline' } },
  });
  expect([cell.side.ratio, sideOf(cell.pasts, 'right').course]).toEqual([null, null]);
  expect(cell.side.blocks.map(({ why }) => why)).toEqual([
    'The legs were tested by different protocols.',
    'The sensor sat in a different place on each leg.',
    'The values were taken by different conventions, such as net and gross force.',
  ]);
  expect(JSON.stringify(cell.side)).not.toMatch(/\d %/);
  expect(sideOf(cell.pasts, 'right').apart[0]).toMatchObject({
    value: '1150 N',
    why: 'place of the sensor: force platform then, cell in line with the force now',
  });
});

/** The clinic's own 5 % of a seated force. */
const FIVE_PERCENT: OwnReliability = {
  standardError: 0.05,
  standardErrorUpper80: 0.06,
  scale: 'log',
  unit: 'N',
  pairs: 30,
  source: { id: 'own:typed', citation: 'own repeated tests of 30 people on 2 days', group: 'own people' },
};
const ownOf = (changes: Partial<OwnReliability>): OwnErrorsInUse => ({
  tests: { 'isometric.seated': { ...FIVE_PERCENT, ...changes } },
  ratios: {},
});
const pushedBy = (own: OwnErrorsInUse, ...visits: readonly ToldVisit[]): Promise<Comparisons> =>
  comparedBy(pullComparisonsOf, own, ...visits);

test("the same pushes by the clinic's own 5 %: 81 % (70 to 93), as at the command line, and the page says whose error it is", async () => {
  const { side } = await pushedBy(ownOf({}), PUSHES);
  // exp(+-1.96 sqrt 2 0.05) is 0.871 to 1.149
  expect(side.ratio).toMatchObject({ over: 'right', percent: 81, low: 70, high: 93, linePercent: 90 });
  expect(side.lines[0]).toBe('Right over left: 81 % (95 %: 70 to 93 %). The other leg may be low too.');
  expect(side.lines).toContainEqual(expect.stringMatching(/the probability is 0\.94\./));
  expect(side.lines).toContain(
    "The error used: this clinic's own, from 30 pairs of tests (own repeated tests of 30 people on 2 days).",
  );
});

test('from 15 to 29 pairs its upper bound is used; under 15, and in another unit, it is shown and the published one stands', async () => {
  const bound = (await pushedBy(ownOf({ pairs: 20 }), PUSHES)).side;
  // exp(+-1.96 sqrt 2 0.06) is 0.847 to 1.181
  expect(bound.ratio).toMatchObject({ percent: 81, low: 68, high: 95 });
  expect(bound.lines).toContainEqual(
    expect.stringMatching(/^The error used: the upper bound of this clinic's own, from 20/),
  );
  const few = (await pushedBy(ownOf({ pairs: 14 }), PUSHES)).side;
  expect(few.ratio).toMatchObject({ low: 74, high: 89 });
  expect(few.lines).toContainEqual(expect.stringMatching(/^The error used: Glaied/));
  expect(few.lines).toContain("This clinic's own error, from 14 pairs of tests, is shown and not used: 15 are needed.");
  const torque = (await pushedBy(ownOf({ unit: 'N.m' }), PUSHES)).side;
  expect(torque.ratio).toMatchObject({ low: 74, high: 89 });
  expect(torque.lines).toContain("This clinic's own error of this test is told in another unit, and is not used.");
});

test("a re-test is held against the clinic's own error too", async () => {
  const again: ToldVisit = { day: '2026-04-27', pushes: { left: { netN: 1500 }, right: { netN: 1150 } } };
  const left = sideOf((await pushedBy(ownOf({ scale: 'natural', standardError: 20 }), PUSHES, again)).pasts, 'left');
  // 1.96 sqrt 2 20 is 55.4: 75 N more is beyond it, where the published 118 N could not tell
  expect(left.lead).toBe('Left: 75 N more than on 2 Mar 2026. A real change is likely.');
  expect(left.lines[0]).toMatch(/^Detectable: 55 with 95 %, 36 with 80 %/);
  expect(left.lines).toContainEqual(expect.stringMatching(/^The verdict hangs on which published error is believed/));
});

test('repeated ratios of the clinic are used for the ratio alone, and named', async () => {
  const source = { id: 'own', citation: 'own repeated tests in own.json', group: 'own people' };
  const ratios = { 'isometric.seated': { logError: 0.03, logErrorUpper: 0.04, pairs: 16, source } };
  const { side } = await pushedBy({ tests: {}, ratios }, PUSHES);
  // exp(+-1.96 0.04) is 0.925 to 1.082
  expect(side.ratio).toMatchObject({ percent: 81, low: 75, high: 87 });
  expect(side.lines).toContain('From fifteen to twenty-nine pairs the upper bound of their error is used.');
  expect(side.lines).toContain(
    "This clinic's own ratios of the legs: 16 pairs of visits (own repeated tests in own.json).",
  );
});
