import { legPast, noOwnErrors, type OwnErrorsInUse, pullPast } from '@surae/casebook';
import { FLOOR, LEGS_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { type LegChange, legChange } from '../../../apps/dashboard/src/legs/leg-change.ts';
import { made } from '../../support/legs-visit.ts';
import type { ToldSet, ToldVisit } from '../../support/told-visit.ts';

const words = { unit: 'repetitions', decimals: 0, isCount: true };

const right = (day: string, count: number, changes: Partial<ToldSet> = {}): ToldVisit => ({
  day,
  left: { count: 27 },
  right: { count, ...changes },
});

async function changed(visits: readonly ToldVisit[], fromStart = false): Promise<LegChange> {
  const { visit, earlier } = await made(...visits);
  return legChange('right', legPast(visit, 'right', earlier)!, words, fromStart);
}

// worked case 1 of the trade: 19, in week 8 24, by the standard error of 2.25 (Hébert-Losier 2017): 1.96 sqrt 2 2.25 = 6.2,
// 1.28 sqrt 2 2.25 = 4.1
test('19, then 24 in week 8, may be real and can be chance; the band is 6.2 around 19', async () => {
  const { sentences, line } = await changed([right('2026-03-02', 19), right('2026-04-27', 24)]);
  expect(sentences[0]).toBe(
    `Your right leg: 5 more than on 2 Mar 2026. This may be a real change. It can also be chance. ${LEGS_WORDS.hangs.text}`,
  );
  expect(line?.points.map(({ value }) => value)).toEqual([19, 24]);
  expect(line?.band.low).toBeCloseTo(19 - 1.96 * Math.SQRT2 * 2.25, 9);
  expect(line?.band.high).toBeCloseTo(19 + 1.96 * Math.SQRT2 * 2.25, 9);
  expect(line?.band.fromDay).toBe(line?.points[0]?.day);
});

test('what lies in the band is never called a real change, and what lies outside always', async () => {
  for (const count of [10, 12, 13, 15, 18, 20, 23, 25, 26, 30]) {
    const { sentences, line } = await changed([right('2026-03-02', 19), right('2026-03-30', count)]);
    const isInside = count > line!.band.low && count < line!.band.high;
    expect([count, /more than the usual ups and downs/.test(sentences[0])]).toEqual([count, !isInside]);
  }
});

test('a number that is the same is no proof that nothing changed', async () => {
  const { sentences } = await changed([right('2026-03-02', 19), right('2026-03-30', 19)]);
  expect(sentences[0]).toMatch(/^Your right leg: the same as on 2 Mar 2026\. A small change can hide/);
});

test('a line goes back twelve weeks; the change is told from its first day, or from the start where both legs are sore', async () => {
  const visits = [right('2026-01-01', 10), right('2026-03-02', 19), right('2026-04-27', 24)];
  const near = await changed(visits);
  expect(near.sentences[0]).toMatch(/5 more than on 2 Mar 2026/);
  expect(near.line?.points.map(({ value }) => value)).toEqual([19, 24]);
  const own = await changed(visits, true);
  expect(own.sentences[0]).toMatch(/14 more than on 1 Jan 2026\. This is more than the usual/);
  expect(own.line?.points.map(({ value }) => value)).toEqual([19, 24]);
  expect(own.line?.band.fromDay).toBe(own.line?.points[0]?.day);
  expect(own.line?.band.high).toBeCloseTo(10 + 1.96 * Math.SQRT2 * 2.25, 9);
  // 84 days are within, 85 are not
  expect((await changed([right('2026-02-02', 19), right('2026-04-27', 24)])).line?.points).toHaveLength(2);
  expect((await changed([right('2026-02-01', 19), right('2026-04-27', 24)])).line).toBeNull();
});

test('tests that were not done alike are on no line, and it is said', async () => {
  const floor = await changed([right('2026-03-02', 19, { protocol: FLOOR }), right('2026-03-30', 24)]);
  expect(floor).toEqual({ sentences: [LEGS_WORDS.unlike.text], told: null, line: null });
  const mixed = await changed([
    right('2026-03-02', 19),
    right('2026-03-16', 30, { protocol: FLOOR }),
    right('2026-03-30', 24),
  ]);
  expect(mixed.line?.points.map(({ value }) => value)).toEqual([19, 24]);
  expect(mixed.sentences.at(-1)).toBe(LEGS_WORDS.unlike.text);
});

test('a test that stopped for pain is held against none; a first test has no start yet, which matters where both are sore', async () => {
  const pain = await changed([right('2026-03-02', 19), right('2026-03-30', 9, { reason: 'pain', pain: 6 })]);
  expect(pain.line).toBeNull();
  expect(pain.sentences).toEqual([
    'Your right leg: this test is not compared with earlier ones, because of how it was done or how it ended.',
  ]);
  expect(await changed([right('2026-03-02', 19)])).toEqual({ sentences: [], told: null, line: null });
  expect((await changed([right('2026-03-02', 19)], true)).sentences).toEqual([
    'Your right leg: this is the first test, so there is no start to compare it with yet.',
  ]);
});

test('the second test ever is told to be one', async () => {
  const { sentences } = await changed([right('2026-03-02', 19), right('2026-03-30', 24)]);
  expect(sentences).toContain(LEGS_WORDS['first-retest'].text);
  const third = await changed([right('2026-03-02', 19), right('2026-03-09', 20), right('2026-03-30', 24)]);
  expect(third.sentences).not.toContain(LEGS_WORDS['first-retest'].text);
});

// worked case 3: 75 N more against the published 118 N
test('75 N more lies in a band of 118 N; by an own error of the logarithm the band is a factor', async () => {
  const pushes = (day: string, netN: number): ToldVisit => ({ day, pushes: { left: { netN } } });
  const { visit, earlier } = await made(pushes('2026-03-02', 1425), pushes('2026-04-27', 1500));
  const newtons = { unit: 'N', decimals: 0, isCount: false };
  const by = (own: OwnErrorsInUse): LegChange =>
    legChange('left', pullPast(visit, 'left', earlier, own.tests)!, newtons, false);
  const published = by(noOwnErrors);
  expect(published.sentences[0]).toMatch(/^Your left leg: 75 N more than on 2 Mar 2026\. A change of this size can be/);
  expect(published.line?.band.high).toBeCloseTo(1425 + 118, -1);
  const own = {
    standardError: 0.05,
    standardErrorUpper80: 0.06,
    scale: 'log',
    unit: 'N',
    pairs: 30,
    source: { id: 'own', citation: 'own', group: 'own' },
  } as const;
  const { line } = by({ tests: { 'isometric.seated': own }, ratios: {} });
  const start = line!.points[0].value;
  expect(start).toBeCloseTo(1425, -1);
  expect(line?.band.high).toBeCloseTo(start * Math.exp(1.96 * Math.SQRT2 * 0.05), 6);
  expect(line?.band.low).toBeCloseTo(start / Math.exp(1.96 * Math.SQRT2 * 0.05), 6);
});
