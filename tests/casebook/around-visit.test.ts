import { isBothSore, isOfEpisode, type Visit, withAround } from '@surae/casebook';
import type { StoredDocument } from '@surae/storage';
import { expect, test } from 'vitest';
import { SAMPLE_BODIES, sampleDocument } from '../support/sample-bodies.ts';

const visitOn = (day: string, sore: Visit['sore'] = { left: 'no', right: 'mid-portion' }): Visit => ({
  id: `v ${day}`,
  personId: 'p',
  begunAt: `${day}T09:00:00+01:00`,
  sore,
  safety: null,
  first: null,
  sets: [],
  restS: null,
  closed: true,
});
const document = (kind: string, change: object, about = 'p'): StoredDocument =>
  sampleDocument(kind, about, { ...(SAMPLE_BODIES[kind] as object), ...change });
const episode = (began: string | null, over: string | null = null): StoredDocument =>
  document('episode', { began, over, sore: { left: 'insertion', right: 'mid-portion' } });

test('a visit falls into the newest complaint that had begun and was not over', () => {
  const documents = [episode('2025', '2025-06'), episode('2026-02')];
  const beganOn = (day: string) => withAround(visitOn(day), documents).around?.episode?.began ?? null;
  expect(['2025-06-30', '2025-07-01', '2026-01-31', '2026-02-01'].map(beganOn)).toEqual([
    '2025',
    null,
    null,
    '2026-02',
  ]);
  // a beginning that was not told is the day on which the complaint was written down, in March
  expect(withAround(visitOn('2026-02-28'), [episode(null)]).around).toBeUndefined();
  expect(withAround(visitOn('2026-03-01'), [episode(null)]).around?.episode).toEqual({ began: null, bothSore: true });
});

test('both are sore by what the visit tells, or by what its complaint tells', () => {
  const both = { left: 'insertion', right: 'both-places' } as const;
  expect(isBothSore(visitOn('2026-03-02', both))).toBe(true);
  expect(isBothSore(visitOn('2026-03-02'))).toBe(false);
  expect(isBothSore(visitOn('2026-03-02', { left: null, right: 'insertion' }))).toBe(false);
  expect(isBothSore(withAround(visitOn('2026-03-02'), [episode('2026')]))).toBe(true);
  expect(isBothSore(withAround(visitOn('2026-03-02'), [document('episode', {})]))).toBe(false);
});

test('an earlier visit is of the same complaint from its beginning on, by the part of the date that is known', () => {
  const visit = withAround(visitOn('2026-03-02'), [episode('2026-02')]);
  expect(isOfEpisode(visit, visitOn('2026-02-01'))).toBe(true);
  expect(isOfEpisode(visit, visitOn('2026-01-31'))).toBe(false);
  expect(isOfEpisode(visitOn('2026-03-02'), visitOn('2020-01-01'))).toBe(true);
});

test('of each leg and test the target that was set last counts, from its day on', () => {
  const documents = [
    document('target', { on: '2026-03-01', value: 25 }),
    document('target', { on: '2026-03-01', value: 28, side: 'right' }),
    document('target', { on: '2026-04-01', value: 35 }),
    document('target', { on: '2026-03-01', value: 99 }, 'somebody else'),
  ];
  const told = withAround(visitOn('2026-03-02'), documents).around?.targets.map(({ side, value }) => [side, value]);
  expect(told).toEqual([
    ['left', 25],
    ['right', 28],
  ]);
});

test('a visit around which nothing is known stays as it was', () => {
  const visit = visitOn('2026-03-02');
  expect(withAround(visit, [])).toBe(visit);
});
