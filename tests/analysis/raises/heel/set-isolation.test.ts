import { describe, expect, test } from 'vitest';
import { heelDefaults } from '../../../../packages/analysis/src/assess/defaults/heel.ts';
import type { Candidate } from '../../../../packages/analysis/src/raises/heel/candidate.ts';
import { isolateSet } from '../../../../packages/analysis/src/raises/heel/set-isolation.ts';

const rule = {
  leastHeightM: 0.02,
  leastCycleS: 0.5,
  greatestHeightM: 0.17,
  belowFloorM: 0.014,
  travelAcceleration: 0.8,
  leastOwnRise: 0.3,
  boutGapS: 30,
  company: heelDefaults.company,
};
const bump = (heightM: number, wayS: number, change: Partial<Candidate> = {}): Candidate => ({
  bump: { leftIndex: 0, topIndex: 1, rightIndex: 2, left: 0, top: heightM, right: 0 },
  heightM,
  ownRiseM: heightM,
  upS: wayS,
  downS: wayS,
  highS: 2 * wayS,
  halfUpIndex: 0,
  halfDownIndex: 2,
  belowM: 0,
  unexplained: undefined,
  unexplainedGreat: undefined,
  unexplainedShare: undefined,
  ...change,
});
const judge = (entries: readonly [timeS: number, candidate: Candidate][]) =>
  isolateSet(
    entries.map(([, candidate]) => candidate),
    entries.map(([timeS]) => timeS),
    entries.map(() => 0),
    rule,
  );
const set = (fromS: number, count: number, height = 0.1): [number, Candidate][] =>
  Array.from({ length: count }, (_, i) => [fromS + 2 * i, bump(height * (1 + 0.05 * (i % 3)), 0.4)]);
const accepted = (entries: readonly [number, Candidate][]): number =>
  judge(entries).filter((one) => one.accepted).length;

describe('a set', () => {
  test('of like bumps is taken whole', () => {
    expect(accepted(set(5, 10))).toBe(10);
  });

  test('of brisk bumps is taken whole, pauses and all', () => {
    const brisk = (fromS: number, count: number): [number, Candidate][] =>
      Array.from({ length: count }, (_, i) => [fromS + 0.75 * i, bump(0.1, 0.15)]);
    expect(accepted([...brisk(5, 2), ...brisk(15, 2), ...brisk(26, 20)])).toBe(24);
  });

  test('keeps a partial repetition, a falling height and a pause', () => {
    const falling: [number, Candidate][] = set(5, 12).map(([timeS, one], i) => [
      timeS + (i > 5 ? 6 : 0),
      bump(i === 3 ? 0.05 : one.heightM * (1 - 0.05 * i), 0.4),
    ]);
    expect(accepted(falling)).toBe(12);
  });

  test('leaves out quick footfalls before it, and says that they are unlike it or outside', () => {
    const verdicts = judge([[0.8, bump(0.13, 0.15)], [2, bump(0.12, 0.16)], ...set(8, 10)]);
    expect(verdicts.map((one) => one.accepted)).toEqual([false, false, ...new Array<boolean>(10).fill(true)]);
    for (const stray of verdicts.slice(0, 2)) {
      expect(['unlike-the-set', 'outside-the-set']).toContain(stray.reason);
      expect(stray.probability).toBeLessThan(0.5);
    }
  });

  test('leaves out what cannot be with the forefoot down, also in its midst', () => {
    const entries = set(5, 10);
    entries.splice(5, 0, [14, bump(0.28, 0.2)]);
    const verdicts = judge(entries);
    expect(verdicts[5].accepted).toBe(false);
    expect(verdicts[5].reason).toBe('stride');
    expect(verdicts.filter((one) => one.accepted).length).toBe(10);
  });

  test('has not begun while something impossible is still to come', () => {
    const verdicts = judge([[1, bump(0.1, 0.4)], [3.5, bump(0.28, 0.2)], ...set(7, 10)]);
    expect(verdicts.map((one) => one.accepted).slice(0, 3)).toEqual([false, false, true]);
    expect(verdicts[0].reason).toBe('outside-the-set');
    // without the impossible one between, the same bump is the first repetition before a pause
    expect(judge([[1, bump(0.1, 0.4)], ...set(7, 10)])[0].accepted).toBe(true);
  });

  test('leaves out a bounce that hardly rises over its own lows', () => {
    const entries = set(5, 6);
    entries.splice(3, 0, [10, bump(0.04, 0.3, { ownRiseM: 0.012 })]);
    const verdicts = judge(entries);
    expect(verdicts[3].accepted).toBe(false);
    expect(verdicts[3].reason).toBe('too-small');
  });

  test('of one calm bump is a set', () => {
    expect(accepted(set(5, 1))).toBe(1);
  });

  test('is the larger of two bouts a minute apart', () => {
    expect(judge([...set(5, 3), ...set(80, 8)]).map((one) => one.accepted)).toEqual([
      ...new Array<boolean>(3).fill(false),
      ...new Array<boolean>(8).fill(true),
    ]);
  });

  test('of nothing is nothing', () => {
    expect(judge([])).toEqual([]);
  });
});
