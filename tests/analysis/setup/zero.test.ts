import { describe, expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { takeZero, type ZeroFacts, type ZeroTaken } from '../../../packages/analysis/src/setup/zero.ts';
import { stillRun } from '../../support/still-run.ts';

const rule = setupDefaults.zero;
const unknown: ZeroFacts = { quantity: 'force', capacity: null, last: null };

function reasonOf(taken: ZeroTaken): string {
  return taken.kind === 'refused' ? taken.reason : 'zero';
}

const at = (level: number, noise = 0.5, facts: Partial<ZeroFacts> = {}): ZeroTaken =>
  takeZero(stillRun({ seconds: 2, level, noise }), { ...unknown, ...facts }, rule);

describe('a zero is taken', () => {
  test('of an empty sensor: value, uncertainty, and what it was judged by', () => {
    const taken = at(3);
    if (taken.kind !== 'zero') throw new Error('refused');
    expect(Math.abs(taken.level - 3)).toBeLessThan(3 * taken.u);
    expect(taken.u).toBeGreaterThan(0);
    expect([taken.drift, taken.emptyBy, taken.emptyMost]).toEqual([null, 'quantity', 40]);
  });

  test('with the drift since the last one: under 5 N plain, above it to be minded', () => {
    const last = { level: 0, u: 0.3 };
    const small = at(3, 0, { last });
    const large = at(9, 0, { last });
    expect(small.kind === 'zero' && small.drift).toEqual({ change: 3, u: 0.3, verdict: 'plain' });
    expect(large.kind === 'zero' && large.drift?.verdict).toBe('to-mind');
  });
});

test('the uncertainty of a drift is that of both zeros', () => {
  const now = at(3, 1, { last: { level: 0, u: 0.3 } });
  if (now.kind !== 'zero') throw new Error('refused');
  expect(now.u).toBeGreaterThan(0.01);
  expect(now.drift!.u).toBeCloseTo(Math.sqrt(now.u ** 2 + 0.09), 12);
});

describe('a zero is refused', () => {
  test('under load: with a last zero, what no drift explains; 15 N is the limit', () => {
    const last = { level: 100, u: 0.1 };
    expect(reasonOf(at(114.9, 0, { last }))).toBe('zero');
    expect(at(115.1, 0, { last })).toMatchObject({ reason: 'loaded', allowed: 15, emptyBy: 'last-zero' });
    // the same level without that zero would be a load
    expect(reasonOf(at(100, 0))).toBe('loaded');
  });

  test('under load: with a capacity, more than 2 % of it, and never less than 15 N', () => {
    expect(reasonOf(at(99, 0, { capacity: 5000 }))).toBe('zero');
    expect(at(101, 0, { capacity: 5000 })).toMatchObject({ reason: 'loaded', allowed: 100, emptyBy: 'capacity' });
    expect(at(16, 0, { capacity: 100 })).toMatchObject({ reason: 'loaded', allowed: 15 });
  });

  test('with a person on it, whichever way the reading goes', () => {
    expect(at(700)).toMatchObject({ reason: 'loaded', allowed: 40, emptyBy: 'quantity' });
    expect(reasonOf(at(-700))).toBe('loaded');
  });

  test('while it moves, while it is noisy, over a hole, and when it is short', () => {
    const moving = takeZero(stillRun({ seconds: 2, slopePerS: 5 }), unknown, rule);
    expect(moving).toMatchObject({ kind: 'refused', reason: 'moving', allowed: 6 });
    expect(at(0, 20)).toMatchObject({ reason: 'noisy', allowed: 8 });
    const { timesS, samples } = stillRun({ seconds: 3 });
    const hole = { timesS: timesS.map((timeS) => (timeS > 1.5 ? timeS + 1 : timeS)), samples };
    expect(takeZero(hole, unknown, rule)).toMatchObject({ reason: 'gap' });
    expect(takeZero(stillRun({ seconds: 0.5 }), unknown, rule)).toMatchObject({ reason: 'too-short', allowed: 1 });
    const none = { timesS: new Float64Array(0), samples: new Float64Array(0) };
    expect(takeZero(none, unknown, rule)).toMatchObject({ reason: 'too-short', found: 0 });
  });

  test('limits of a torque are those of a torque', () => {
    const taken = takeZero(stillRun({ seconds: 2, level: 5 }), { ...unknown, quantity: 'torque' }, rule);
    expect(taken).toMatchObject({ reason: 'loaded', allowed: 4 });
  });

  test('a capacity of nothing is no capacity', () => {
    expect(() => at(0, 0, { capacity: 0 })).toThrow(RangeError);
  });
});
