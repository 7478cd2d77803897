import { expect, test } from 'vitest';
import { repetitionRows, stripSentence } from '../../../apps/dashboard/src/result/repetition-rows.ts';
import { handMadeOutcome } from '../../support/hand-made-outcome.ts';

/** Tops two seconds apart, heights with a standard uncertainty of 2 mm; the third is too low. */
const { report } = handMadeOutcome([90, 92, 40]);

test('height with its uncertainty in centimetres, period in seconds, verdict with its reason', () => {
  const rows = repetitionRows(report);
  expect(rows.map(({ index, size, period }) => [index, size, period])).toEqual([
    [1, '9.0 ± 0.2', 'first one'],
    [2, '9.2 ± 0.2', '2.00'],
    [3, '4.0 ± 0.2', '2.00'],
  ]);
  expect(rows[2]).toMatchObject({ valid: 'no', verdict: 'not met: not high enough' });
});

test('a wide uncertainty takes the tenths away, and none reads as nothing', () => {
  const [first] = report.repetitions;
  const sizeWith = (heightUM: number): string | undefined =>
    repetitionRows({ ...report, repetitions: [{ ...first, heightUM }] })[0]?.size;
  expect(sizeWith(0.013)).toBe('9 ± 1');
  expect(sizeWith(0.0002)).toBe('9.0 ± 0.1');
});

test('a height that was not measured is said, never shown as zero', () => {
  const [first] = report.repetitions;
  const [row] = repetitionRows({ ...report, repetitions: [{ ...first, heightM: null, heightUM: null }] });
  expect(row?.size).toBe('not measured');
});

test('a rise of the body stands where there is no height of the heel', () => {
  const [first] = report.repetitions;
  const rise = { ...first, heightM: null, heightUM: null, riseM: 0.0712, riseUM: 0.003 };
  expect(repetitionRows({ ...report, kind: 'body-rise', repetitions: [rise] })[0]?.size).toBe('7.1 ± 0.3');
});

test('the strip counts each kind of verdict, and says when there is none', () => {
  expect(stripSentence(report)).toBe('Verdicts in order: 2 met, 1 not met, 0 cannot tell.');
  expect(stripSentence({ ...report, repetitions: [] })).toBe('No heel raise was found.');
});
