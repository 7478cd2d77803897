import { expect, test } from 'vitest';
import type { Hop } from '../../../packages/analysis/src/hops/hop.ts';
import { hopSummary } from '../../../packages/analysis/src/hops/hop-summary.ts';

const hop = (index: number, contact: number, analysed = true): Hop => ({
  index,
  landS: 0,
  takeOffS: 0,
  landsAgainS: 0,
  middleS: 0,
  contactS: { value: contact, u: 0.003 },
  flightS: null,
  periodS: null,
  heightM: null,
  ratio: null,
  stiffnessNpm: null,
  analysed,
  reason: null,
});

test('mean, spread and drift run over the analysed hops only', () => {
  const hops = [hop(1, 9, false), ...[0.2, 0.21, 0.22, 0.23, 0.24, 0.25].map((value, k) => hop(k + 6, value))];
  const { contactS, flightS } = hopSummary(hops);
  expect(contactS.mean!.value).toBeCloseTo(0.225, 12);
  expect(contactS.mean!.sd).toBeCloseTo(0.018_708, 6);
  // 0.018708 / sqrt(6) = 0.0076376, with 0.003 that all share: 0.0082057
  expect(contactS.mean!.u).toBeCloseTo(0.008_205_7, 6);
  expect(contactS.perHop!.value).toBeCloseTo(0.01, 12);
  expect(flightS).toEqual({ mean: null, perHop: null });
});

test('a single hop has a mean, its own uncertainty and no spread', () => {
  expect(hopSummary([hop(6, 0.2)]).contactS).toEqual({ mean: { value: 0.2, u: 0.003, sd: null }, perHop: null });
});
