import { TOLD_COLUMNS } from '@surae/study/words';
import { expect, test } from 'vitest';
import { toldHelp } from '../../apps/cli/src/told-help.ts';

test('the help has a line for each column, broken at the width asked for', () => {
  const lines = toldHelp(60);
  expect(lines.filter((line) => /^ {2}\w/.test(line))).toHaveLength(Object.keys(TOLD_COLUMNS).length);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(60);
  expect(toldHelp(80)[0]).toBe('  date                  day of the test: a day such as 2026-03-01');
});
