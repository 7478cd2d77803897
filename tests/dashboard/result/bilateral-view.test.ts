import type { Side } from '@surae/analysis';
import { type IrritabilityTold, noHistory, type SoreSides } from '@surae/casebook';
import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { legsView } from '../../../apps/dashboard/src/legs/legs-view.ts';
import { comparisonsOf, pullComparisonsOf } from '../../../apps/dashboard/src/result/comparisons.ts';
import { coursePerson } from '../../support/course-person.ts';
import { legTold, MODERATE, type ToldVisit } from '../../support/told-visit.ts';

const both: SoreSides = { left: 'insertion', right: 'insertion' };
const oneSore: SoreSides = { left: 'insertion', right: 'no' };
const told = (left: Partial<IrritabilityTold> | null, right: Partial<IrritabilityTold> | null) => ({
  legs: {
    left: left === null ? noHistory.legs.left : legTold('none', { ...MODERATE, ...left }),
    right: right === null ? noHistory.legs.right : legTold('none', { ...MODERATE, ...right }),
  },
  about: [],
});
const visit = (day: string, left: number, right: number, more: Partial<ToldVisit> = {}): ToldVisit => ({
  day,
  sore: both,
  history: told({}, {}),
  left: { count: left, protocol: FLOOR },
  right: { count: right, protocol: FLOOR },
  ...more,
});

interface Extra {
  readonly kind: string;
  readonly body: object;
}
const episode = (began: string): Extra => ({
  kind: 'episode',
  body: { sore: both, onset: null, began, over: null, story: null, goal: null, loads: null },
});
const target = (side: Side, value: number, test: 'heel-raise' | 'isometric' = 'heel-raise'): Extra => {
  const unit = test === 'heel-raise' ? 'repetitions' : 'times-body-weight';
  return { kind: 'target', body: { on: '2026-01-01', test, side, value, unit } };
};

async function last(visits: readonly ToldVisit[], ...extra: readonly Extra[]) {
  const { book, personId, read } = await coursePerson(...visits);
  for (const one of extra) await book.log.add(personId, one);
  const all = (await read()).visits;
  const { visit: now, person } = all[all.length - 1];
  const earlier = all.slice(0, -1).map((one) => one.visit);
  return { now, person, earlier, view: comparisonsOf(now, person, earlier) };
}

test('both sore: no state of it holds a ratio, whatever was counted and however it ended', async () => {
  const states: readonly (readonly [readonly ToldVisit[], ...Extra[]])[] = [
    [[visit('2026-03-02', 30, 10)]],
    [[visit('2026-03-02', 30, 10), visit('2026-03-30', 30, 30)]],
    [[visit('2026-03-02', 30, 10, { right: { count: 9, reason: 'pain', pain: 6, protocol: FLOOR } })]],
    [[visit('2026-03-02', 20, 20, { history: null })]],
    [[visit('2026-03-02', 20, 20, { sore: oneSore })], episode('2026-01')],
    [[visit('2026-03-02', 20, 20, { sore: { left: null, right: null } })], episode('2026')],
  ];
  for (const [visits, ...extra] of states) {
    const { now, person, earlier, view } = await last(visits, ...extra);
    expect(view.side.ratio).toBeNull();
    expect(view.bilateral).not.toBeNull();
    expect(view.side.lead).toMatch(/^Both legs are sore: no ratio/);
    const shown = JSON.stringify([view, legsView(now, person, earlier)]);
    expect(shown).not.toMatch(/\b(left|right) over (left|right)\b|share of (left|right)|"percent"/i);
  }
});

test('one sore leg is no such case, and its ratio stands', async () => {
  const { view } = await last([visit('2026-03-02', 20, 25, { sore: oneSore })]);
  expect([view.bilateral, view.side.ratio === null]).toEqual([null, false]);
});

test('each leg stands against the first test of this complaint that was done alike, and not against one before it', async () => {
  const visits = [
    visit('2025-06-02', 40, 40),
    visit('2026-02-02', 12, 14),
    visit('2026-03-02', 15, 16),
    visit('2026-03-30', 24, 15),
  ];
  const lines = (await last(visits, episode('2026-01'))).view.bilateral!.legs.map((leg) => leg.lines[0]);
  expect(lines[0]).toMatch(/^Left: 12 more than at its start, 2 Feb 2026\. /);
  expect(lines[1]).toMatch(/^Right: 1 more than at its start, 2 Feb 2026\. .*cannot be told/i);
  const without = (await last(visits)).view.bilateral!.legs[0].lines[0];
  expect(without).toMatch(/than at its start, 2 Jun 2025\./);
});

test('a start that was taken in a flare is named as such', async () => {
  const flare = visit('2026-02-02', 12, 14, { history: told({ flare: 'yes' }, {}) });
  const later = (await last([flare, visit('2026-03-02', 22, 15)])).view.bilateral!.legs;
  expect(later[0].lines.join(' ')).toMatch(/the start was taken in a flare/);
  expect(later[1].lines.join(' ')).not.toMatch(/flare/);
  const start = (await last([flare])).view.bilateral!.legs;
  expect(start[0].lines.join(' ')).toMatch(/this start was taken in a flare/);
});

test('the more irritable leg governs; where one was not graded it cannot be told', async () => {
  const lead = async (history: NonNullable<ToldVisit['history']> | null) =>
    (await last([visit('2026-03-02', 20, 20, { history })])).view.bilateral!.lead;
  expect(await lead(told({ peakPain: 8 }, {}))).toMatch(/^The left leg governs: .*\(high, the other moderate\)/);
  expect(await lead(told({}, {}))).toMatch(/^Both legs are graded moderate\./);
  expect(await lead(told({}, null))).toBe(
    'Cannot tell which leg governs: irritability was not graded of the right leg.',
  );
  expect(await lead(null)).toMatch(/of the left leg and the right leg\.$/);
});

test('a target is held against what was counted with its bounds, and against no test that pain ended', async () => {
  const ended = visit('2026-03-02', 30, 9, { right: { count: 9, reason: 'pain', pain: 6, protocol: FLOOR } });
  const { view } = await last([ended], target('left', 25), target('right', 25));
  const [left, right] = view.bilateral!.legs.map(({ lines }) => lines.at(-1));
  expect(left).toBe('Left: the target of 25 repetitions is reached (30 to 30).');
  expect(right).toMatch(/^Right: the target of 25 repetitions is not held against this test/);
  const without = (await last([ended])).view.bilateral!.legs.flatMap(({ lines }) => lines).join(' ');
  expect(without).not.toMatch(/target/);
});

test('pushes of both sore legs have no ratio either', async () => {
  const pushes = { left: { netN: 900 }, right: { netN: 500 } };
  const { now, person, earlier } = await last(
    [{ day: '2026-03-02', sore: both, pushes }],
    target('left', 1.5, 'isometric'),
  );
  const view = pullComparisonsOf(now, person, earlier);
  expect(view.side.ratio).toBeNull();
  expect(view.bilateral!.legs.map(({ side }) => side)).toEqual(['left', 'right']);
  expect(view.bilateral!.legs[0].lines.at(-1)).toMatch(
    /^Left: the target of 1\.5 times body weight is not reached \(1\.\d\d to 1\.\d\d\)\.$/,
  );
});
