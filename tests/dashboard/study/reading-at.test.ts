import { expect, test } from 'vitest';
import { readingAt } from '../../../apps/dashboard/src/study/reading-at.ts';
import { raisedLine } from '../../support/recount-line.ts';

test('a cursor reads the time and the value there; beyond the samples and in a hole nothing was measured', () => {
  const line = raisedLine(2);
  expect(readingAt(line, 1)).toBe('1.00 s, 10.0 cm');
  expect(readingAt(line, 1.95)).toBe('1.95 s, 0.0 cm');
  expect(readingAt(line, 99)).toBe('99.00 s, not measured');
  expect(readingAt({ ...line, values: line.values.map(() => Number.NaN) }, 1)).toBe('1.00 s, not measured');
});
