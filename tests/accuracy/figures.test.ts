import { describe, expect, test } from 'vitest';
import { binomialTail, type FigureStore, Figures, missedGoals } from './modules.ts';

const truth = (topS: number) => ({ startS: topS - 0.7, topS, heelHeightM: 0.1 });
const found = (topS: number, heightM = 0.1) => ({ startS: topS - 0.7, topS, heightM, topUS: 0.01, heightUM: 0.002 });
const heightOf = ({ heelHeightM }: { heelHeightM: number }): number => heelHeightM;

function figuresOf(raises: ReturnType<typeof found>[], tops: number[], count = { low: 1, high: 3 }): FigureStore {
  const figures = new Figures();
  figures.add({ seed: 1, raises, count, repetitions: tops.map(truth), heightOf });
  return figures;
}

describe('figures of accuracy', () => {
  test('a perfect answer', () => {
    const summary = figuresOf(
      [2, 4, 6].map((topS) => found(topS)),
      [2, 4, 6],
    ).summary();
    expect(summary).toMatchObject({ exact: 1, withinOne: 1, f1: 1, topP95Ms: 0, heightRmseMm: 0, countCoverage: 1 });
  });

  test('one missed and one invented: the count is right, F1 is two thirds', () => {
    const summary = figuresOf([found(2), found(4), found(9.5)], [2, 4, 6]).summary();
    expect(summary.exact).toBe(1);
    expect(summary.f1).toBe(2 / 3);
  });

  test('one true repetition answers to one found one only', () => {
    const summary = figuresOf([found(2), found(2.1), found(4)], [2, 4]).summary();
    expect(summary.exact).toBe(0);
    expect(summary.withinOne).toBe(1);
    expect(summary.f1).toBe(0.8);
    expect(summary.topP95Ms).toBe(0);
  });

  test('tops further apart than half a cycle do not answer to each other', () => {
    expect(figuresOf([found(3.1)], [2, 4.3]).summary().f1).toBe(2 / 3);
    expect(figuresOf([found(3.16)], [2, 4.32, 6.62]).summary().f1).toBe(0);
  });

  test('errors: RMS of the height, 95 % point of the time, share within 1.96 uncertainties', () => {
    const summary = figuresOf([found(2.015, 0.103), found(4.025, 0.096)], [2, 4]).summary();
    expect(Math.abs(summary.heightRmseMm! - Math.sqrt(12.5))).toBeLessThan(1e-9);
    expect(Math.abs(summary.topP95Ms! - 24.5)).toBeLessThan(1e-9);
    expect([summary.topCoverage, summary.heightCoverage]).toEqual([0.5, 0.5]);
  });

  test('an empty file that is called empty is right and has no errors', () => {
    const summary = figuresOf([], [], { low: 0, high: 0 }).summary();
    expect(summary).toMatchObject({ exact: 1, f1: 1, countCoverage: 1, countWidthMedian: 0 });
    expect(summary.topP95Ms).toBeUndefined();
  });

  test('a top inside a gap is found but not measured', () => {
    const figures = new Figures();
    const raises = [{ ...found(2.3), topInGap: true }, found(4)];
    figures.add({ seed: 1, raises, repetitions: [2, 4].map(truth), heightOf });
    expect(figures.summary()).toMatchObject({ exact: 1, f1: 1, topP95Ms: 0 });
  });
});

describe('goals', () => {
  const good = figuresOf([found(2)], [2]).summary();

  test('a figure that is worse than its goal is named', () => {
    expect(missedGoals('heel', 'hard', { ...good, sets: 300, exact: 0.9, startP95Ms: 10 }, true)).toEqual([
      'exact: 0.900, goal 0.97',
    ]);
    expect(missedGoals('heel', 'hard', { ...good, sets: 300, startP95Ms: 161 }, true)).toEqual([
      'startP95Ms: 161.000, goal 160',
    ]);
  });

  test('with few sets only what chance does not explain is a miss', () => {
    expect(missedGoals('trunk', 'hard', { ...good, sets: 8, exact: 0.375 }, false)).toEqual([]);
    expect(missedGoals('trunk', 'hard', { ...good, sets: 8, exact: 0 }, false)).toHaveLength(1);
  });

  test('the tail of the binomial: 1 of 3 or fewer at one half is one half', () => {
    expect(binomialTail(1, 3, 0.5)).toBe(0.5);
    expect(Math.abs(binomialTail(8, 8, 0.6) - 1)).toBeLessThan(1e-12);
  });
});
