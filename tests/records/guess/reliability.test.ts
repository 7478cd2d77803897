import { describe, expect, test } from 'vitest';
import { judgedGuesses, reliabilityOf } from '../../support/guess-reliability.ts';
import { isLong } from '../../support/runs.ts';

/** Sealed seeds: they measure and never tune. */
const seeds = Array.from({ length: isLong ? 1500 : 60 }, (_, i) => 10_001 + i);
const all = seeds.flatMap((seed) => judgedGuesses(seed));

describe('what is said with confidence is right as often as it says', () => {
  const table = reliabilityOf(all);
  if (isLong) process.stdout.write(`${JSON.stringify(table, null, 1)}\n`);

  test('of all guesses of 0.9 and above hardly one is wrong', () => {
    const sure = all.filter(({ confidence }) => confidence >= 0.9);
    expect(sure.length).toBeGreaterThan(seeds.length * 5);
    const wrong = sure.filter(({ right }) => !right);
    expect(wrong.length / sure.length, JSON.stringify(wrong.slice(0, 5))).toBeLessThan(0.01);
  });

  test('no class of confidence promises more than it keeps', () => {
    for (const { from, count, right, said } of table) {
      if (from < 0.5 || count < 20) continue;
      // three standard errors of a share, and what few tables can differ by
      const slack = 3 * Math.sqrt((said * (1 - said)) / count) + 0.08;
      expect(right / count, `from ${from}`).toBeGreaterThan(said - slack);
    }
  });
});
