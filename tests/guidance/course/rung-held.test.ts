import { type RungTried, rungHeld } from '@surae/guidance';
import { TOLERANCE_RUNGS } from '@surae/shared';
import { expect, test } from 'vitest';

const tried = (rung: string, pain: number | null, morningPassed: boolean | null, day = '2026-03-01'): RungTried => ({
  rung,
  day,
  pain,
  morningPassed,
});

test('the rung that is held is the highest one with pain up to the limit and a morning that passed', () => {
  const tries = [tried('two-leg-floor', 2, true), tried('walking', 5, true), tried('single-floor', 6, true)];
  expect(rungHeld(tries, 5)).toEqual({ held: 'walking', open: [] });
  expect(rungHeld(tries, 3).held).toBe('two-leg-floor');
});

test('a morning that was not told holds nothing, and is said', () => {
  expect(rungHeld([tried('walking', 1, true), tried('single-floor', 1, null)], 5)).toEqual({
    held: 'walking',
    open: ['single-floor'],
  });
  expect(rungHeld([tried('single-floor', null, true)], 5)).toEqual({ held: null, open: ['single-floor'] });
});

test('the newest try of a rung counts, and what lies over one that was not borne does not', () => {
  const before = [tried('walking', 1, true), tried('single-floor', 1, true)];
  expect(rungHeld([...before, tried('walking', 7, true, '2026-03-02')], 5).held).toBeNull();
  expect(rungHeld([tried('walking', 7, true, '2026-02-01'), ...before], 5).held).toBe('single-floor');
  expect(rungHeld([...before, tried('single-floor', 1, false, '2026-03-02')], 5).held).toBe('walking');
});

test('the ladder runs from 0.5 to 7.3 body weights: Baxter 2021, Med Sci Sports Exerc 53:124, n = 8; no figure between was read', () => {
  expect(TOLERANCE_RUNGS.map(({ bodyWeights }) => bodyWeights).filter((one) => one !== null)).toEqual([0.5, 7.3]);
  expect([TOLERANCE_RUNGS[0].code, TOLERANCE_RUNGS.at(-1)?.code]).toEqual(['seated-limb', 'hops-forward']);
});
