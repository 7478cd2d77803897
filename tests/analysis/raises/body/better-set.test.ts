import { describe, expect, test } from 'vitest';
import { isBetterSet } from '../../../../packages/analysis/src/raises/body/better-set.ts';

const settings = { leastEvidenceOfSet: 5, leastEvidenceFilled: 12 };
const setOf = (evidence: number, likelihood: number, shapeMisfit = 0.2) => ({
  evidence,
  likelihood,
  rhythm: { shapeMisfit },
});

describe('of two sets that were learnt from one recording', () => {
  test('the likelier one holds', () => {
    expect(isBetterSet(setOf(40, 110), setOf(60, 100), settings)).toBe(true);
    expect(isBetterSet(setOf(60, 100), setOf(40, 110), settings)).toBe(false);
  });

  test('noise alone takes the place of no set, however well it explains the recording', () => {
    expect(isBetterSet(setOf(0, 900), setOf(20, 100), settings)).toBe(false);
  });

  test('a set takes the place of none only with the evidence that a second look asks for', () => {
    expect(isBetterSet(setOf(11, 100), setOf(0, 900), settings)).toBe(false);
    expect(isBetterSet(setOf(13, 100), setOf(0, 900), settings)).toBe(true);
  });

  test('one of a vaguer shape does not take the place of one with a clearer shape', () => {
    expect(isBetterSet(setOf(90, 200, 0.4), setOf(60, 100, 0.25), settings)).toBe(false);
    expect(isBetterSet(setOf(90, 200, 0.25), setOf(60, 100, 0.4), settings)).toBe(true);
    expect(isBetterSet(setOf(90, 200, 0.41), setOf(60, 100, 0.4), settings)).toBe(true);
  });
});
