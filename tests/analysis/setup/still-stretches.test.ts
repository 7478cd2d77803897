import { describe, expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import { stillStretches } from '../../../packages/analysis/src/setup/still-stretches.ts';
import { hungRun, stillRun } from '../../support/still-run.ts';

const rule = setupDefaults.masses;

describe('still stretches of a run of masses', () => {
  test('one for each mass, at its level', () => {
    const found = stillStretches(hungRun([0, 98, 196, 0], 0.3), rule);
    expect(found.length).toBe(4);
    for (const [k, level] of [0, 98, 196, 0].entries()) {
      expect(Math.abs(found[k].level - level)).toBeLessThan(0.3);
      expect(found[k].spanS).toBeGreaterThan(1);
    }
    expect(found[1].fromS).toBeGreaterThan(found[0].toS);
  });

  test('a swing that parts one level in two leaves it one', () => {
    const run = hungRun([0, 100, 0], 0.2, 1, 6);
    // the mass swings in the middle of its stretch
    const samples = run.samples.map((value, i) => value + (Math.abs(run.timesS[i] - 10) < 0.2 ? 30 : 0));
    expect(stillStretches({ timesS: run.timesS, samples }, rule).length).toBe(3);
  });

  test('nothing that moves all the time stands still', () => {
    const { timesS } = stillRun({ seconds: 10 });
    const samples = timesS.map((timeS) => 100 * Math.sin(2 * timeS));
    expect(stillStretches({ timesS, samples }, rule)).toEqual([]);
  });
});
