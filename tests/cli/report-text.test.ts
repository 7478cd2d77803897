import { expect, test } from 'vitest';
import { closingLines, reportText, setSummary } from '../../apps/cli/src/report-text.ts';
import { handMadeOutcome, handMadeRefusal } from '../support/hand-made-outcome.ts';

const screen = { width: 80, drawsBlocks: true };

// best two of the first five: (100 + 98) / 2 = 99 mm; 0.75 of it is 74.25 mm, which only the last misses
const heightsMm = [100, 98, 96, 95, 94, 60];

test('counts, heights and verdicts of a set worked by hand stand in the text', () => {
  const text = reportText(handMadeOutcome(heightsMm), screen).join('\n');
  expect(text).toMatch(/attempted +6 \(6-7\)/);
  expect(text).toMatch(/valid +5 /);
  expect(text).toMatch(/^ +1 +1\.80 +100 ± 2 +101 % +yes$/m);
  expect(text).toMatch(/^ +6 +11\.80 +60 ± 2 +61 % +2\.00 +no: not high enough$/m);
  expect(text).toMatch(/reference +99 ± 1 mm height, the mean of repetitions 1 and 2/);
});

test('work is there only when the body mass is: 70 kg raised by 543 mm in all is 373 J', () => {
  // 70 x 9.80665 x 0.543 = 372.75
  expect(reportText(handMadeOutcome(heightsMm, 70), screen).join('\n')).toMatch(/work +373 ± \d+ J by heel height/);
  const without = reportText(handMadeOutcome(heightsMm), screen).join('\n');
  expect(without).not.toMatch(/ J /);
  expect(without.replace(/\s+/g, ' ')).toContain('Work and power are not shown: enter the body mass.');
});

test('what the sensor cannot see is named, never passed over', () => {
  const text = reportText(handMadeOutcome(heightsMm), screen).join('\n').replace(/\s+/g, ' ');
  expect(text).toContain('not observed knee, lean of the trunk, hands');
  expect(text).toContain('Why the test ended was not recorded');
});

test('what the protocol does not ask for is no lack of the sensor', () => {
  const outcome = handMadeOutcome(heightsMm);
  const repetitions = outcome.report.repetitions.map((one) => ({
    ...one,
    criteria: { ...one.criteria, lean: { ...one.criteria.lean, reason: 'not-asked' as const } },
  }));
  const text = reportText({ ...outcome, report: { ...outcome.report, repetitions } }, screen).join('\n');
  expect(text.replace(/\s+/g, ' ')).toContain('not observed knee, hands');
});

test('issues stand with their place, and a column that was not used is said', () => {
  const text = reportText(handMadeOutcome(heightsMm), screen).join('\n').replace(/\s+/g, ' ');
  expect(text).toContain('take care 3.2 to 3.5 s: Samples are missing');
  expect(text).toContain('The column "temperature [Cel]" was not used');
});

test('a set without repetitions says so and draws nothing', () => {
  const text = reportText(handMadeOutcome([]), screen).join('\n');
  expect(text).toMatch(/attempted +0 \(0-1\)/);
  expect(text).not.toContain('└');
});

test('no line is wider than the terminal', () => {
  for (const width of [60, 80, 100]) {
    const lines = reportText(handMadeOutcome([...heightsMm, ...heightsMm, ...heightsMm], 70), { ...screen, width });
    expect(lines.filter((line) => line.length > width)).toEqual([]);
  }
});

test('several recordings end in one table, and every output with its scope', () => {
  const lines = closingLines([setSummary(handMadeOutcome(heightsMm)), setSummary(handMadeRefusal())], screen);
  expect(lines[1]).toMatch(/^left, first\.csv +6 \(6-7\) +5/);
  expect(lines[2]).toMatch(/^bad\.csv +refused$/);
  expect(lines.at(-1)).toBe("Supports a clinician's judgement. Not a diagnosis.");
  expect(closingLines([setSummary(handMadeOutcome(heightsMm))], screen)).toEqual([lines.at(-1)]);
});

test('no word of blame or promise is printed', () => {
  const text = reportText(handMadeOutcome(heightsMm, 70), screen).join('\n').toLowerCase();
  for (const word of ['weak', 'deficit', 'injured', 'healthy', 'normal leg', 'cleared', 'safe', 'significant']) {
    expect(text).not.toContain(word);
  }
});
