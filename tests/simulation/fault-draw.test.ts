import { describe, expect, test } from 'vitest';
import { drawFaults } from '../../packages/simulation/src/fault-draw.ts';
import { type FaultName, faultRange, faultTable } from '../../packages/simulation/src/fault-table.ts';
import { Random } from '../../packages/simulation/src/random.ts';

const faultNames = Object.keys(faultTable) as FaultName[];

describe('drawing from the table', () => {
  test('stays within the ranges and uses them', () => {
    const draws = Array.from({ length: 400 }, (_, seed) => drawFaults(faultTable, 'hard', new Random(seed, 0), {}));
    for (const name of faultNames) {
      const [low, high] = faultRange(faultTable[name], 'hard');
      const values = draws.map((draw) => draw[name]);
      expect(Math.min(...values)).toBeGreaterThanOrEqual(low);
      expect(Math.max(...values)).toBeLessThanOrEqual(high);
      if (high > low) expect(Math.max(...values) - Math.min(...values)).toBeGreaterThan(0.95 * (high - low));
    }
  });

  test('a fixed amount is taken as it is and changes no other', () => {
    const free = drawFaults(faultTable, 'field', new Random(7, 0), {});
    const fixed = drawFaults(faultTable, 'field', new Random(7, 0), { swayHeelM: 0.01 });
    expect(fixed).toEqual({ ...free, swayHeelM: 0.01 });
  });
});
