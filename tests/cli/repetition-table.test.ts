import type { AssessedRepetition, Report } from '@surae/analysis';
import { expect, test } from 'vitest';
import { pictureBars, repetitionTable, sizeMm } from '../../apps/cli/src/repetition-table.ts';
import { handMadeOutcome } from '../support/hand-made-outcome.ts';

const { report } = handMadeOutcome([100, 98, 60]);

function changed(change: Partial<AssessedRepetition>): Report {
  return { ...report, repetitions: report.repetitions.map((one) => ({ ...one, ...change })) };
}

test('numbers stand to the right under their heading, one line a repetition', () => {
  // reference: mean of the best two, 99 mm; 100 / 99 = 101 %, 98 / 99 = 99 %, 60 / 99 = 61 %
  expect(repetitionTable(report, 80)).toEqual([
    '  rep  top s  height mm  of ref  period s  valid',
    '    1   1.80    100 ± 2   101 %            yes',
    '    2   3.80     98 ± 2    99 %      2.00  yes',
    '    3   5.80     60 ± 2    61 %      2.00  no: not high enough',
  ]);
});

test('a column without any value is left out, never filled with zeros', () => {
  const bare = changed({ heightM: null, heightUM: null, percentOfReference: null, periodS: null });
  expect(repetitionTable(bare, 80)[0]).toBe('  rep  top s  valid');
});

test('a rise stands under its own heading', () => {
  const rises = changed({ heightM: null, heightUM: null, riseM: 0.072, riseUM: 0.004 });
  const [head, first] = repetitionTable({ ...rises, kind: 'body-rise' }, 80);
  expect(head).toContain('rise mm');
  expect(first).toContain('72 ± 4');
});

test('words that do not fit go on below, in their own column', () => {
  const lines = repetitionTable(changed({ valid: 'no' }), 58);
  const at = lines[0].indexOf('valid');
  const more = lines.filter((line) => line.slice(0, at).trim() === '');
  expect(more.length).toBeGreaterThan(1);
  expect(lines.filter((line) => line.length > at + 16)).toEqual([]);
});

test('the picture gets a height or a rise in millimetres, or nothing', () => {
  const [one] = report.repetitions;
  expect(pictureBars(report).map(({ heightMm, valid }) => [Math.round(heightMm!), valid])).toEqual([
    [100, 'yes'],
    [98, 'yes'],
    [60, 'no'],
  ]);
  expect(sizeMm({ ...one, heightM: null, riseM: 0.05 })).toBe(50);
  expect(sizeMm({ ...one, heightM: null, riseM: null })).toBeUndefined();
});
