import { formatFaultTable, pullTable } from '@surae/simulation';
import { expect, test } from 'vitest';

test('the table of faults of isometric efforts prints one row for each', () => {
  const lines = formatFaultTable(pullTable).split('\n');
  expect(lines).toHaveLength(Object.keys(pullTable).length + 2);
  expect(lines).toContain('| noiseN | N | white noise, sd | 0.1 | 0.5 to 1.5 | 2 to 5 | 2 to 5 | 2 to 5 |');
});

test('no range is upside down', () => {
  for (const { amounts } of Object.values(pullTable)) {
    for (const [low, high] of amounts) expect(low).toBeLessThanOrEqual(high);
  }
});
