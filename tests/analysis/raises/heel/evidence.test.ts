import { describe, expect, test } from 'vitest';
import type { Candidate } from '../../../../packages/analysis/src/raises/heel/candidate.ts';
import { beyond, ownEvidence, tempoEvidence } from '../../../../packages/analysis/src/raises/heel/evidence.ts';

const rule = { leastCycleS: 0.5, greatestHeightM: 0.17, belowFloorM: 0.014, travelAcceleration: 0.8 };
const habits = { unexplained: undefined, dipsAreUsual: false, tempo: undefined };
const raise: Candidate = {
  bump: { leftIndex: 0, topIndex: 1, rightIndex: 2, left: 0, top: 0.1, right: 0 },
  heightM: 0.1,
  ownRiseM: 0.1,
  upS: 0.4,
  downS: 0.5,
  highS: 1,
  halfUpIndex: 0,
  halfDownIndex: 2,
  belowM: 0.002,
  unexplained: 0.05,
  unexplainedGreat: 0.2,
  unexplainedShare: 0.3,
};

test('a penalty begins at its limit and is held at a bound', () => {
  expect(beyond(1, 1, 6)).toBe(0);
  expect(beyond(2, 1, 6)).toBe(-6);
  expect(beyond(99, 1, 6)).toBe(-14);
});

describe('own evidence', () => {
  test('speaks for a plain raise', () => {
    expect(ownEvidence(raise, rule, -5, habits).weight).toBeGreaterThan(2);
  });

  test.each([
    ['higher than the foot is long', { heightM: 0.3 }, 0, 'stride'],
    ['dipping below the floor', { belowM: 0.05 }, 0, 'stride'],
    ['travelling', { unexplained: 4 }, 0, 'stride'],
    ['quicker than any raise', { highS: 0.1 }, 0, 'too-quick'],
    ['leaving rest at speed', {}, 8, 'starts-at-speed'],
  ] as const)('speaks against a bump %s, and says why', (_, change, atSpeed, reason) => {
    const found = ownEvidence({ ...raise, ...change }, rule, atSpeed, habits);
    expect(found.weight).toBeLessThan(0);
    expect(found.reason).toBe(reason);
  });

  test('bears dips where all of the set dips, as from a step', () => {
    const dipping = { ...raise, belowM: 0.05 };
    expect(ownEvidence(dipping, rule, 0, { ...habits, dipsAreUsual: true }).weight).toBeGreaterThan(1);
  });

  test('does not hold its tempo against a raise of a brisk set, and gives none away in a slow one', () => {
    const brisk = { ...raise, upS: 0.2, downS: 0.2, highS: 0.36 };
    const tempo = tempoEvidence(brisk);
    expect(tempo).toBeLessThan(-0.5);
    const alone = ownEvidence(brisk, rule, 0, habits).weight;
    expect(ownEvidence(brisk, rule, 0, { ...habits, tempo }).weight).toBeCloseTo(alone - tempo, 12);
    expect(ownEvidence(raise, rule, 0, { ...habits, tempo: 2 }).weight).toBe(
      ownEvidence(raise, rule, 0, habits).weight,
    );
  });
});
