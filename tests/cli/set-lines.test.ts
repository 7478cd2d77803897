import type { Report } from '@surae/analysis';
import { END_CLASS_SENTENCES, END_REASON_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';
import { setLines } from '../../apps/cli/src/set-lines.ts';
import { handMadeOutcome } from '../support/hand-made-outcome.ts';

/** Text of each label, lines joined. */
function linesOf(changes: Partial<Report> = {}, heightsMm = [100, 98, 96, 94, 92, 90]): Map<string, string> {
  const outcome = handMadeOutcome(heightsMm, 70);
  const found = new Map<string, string>();
  let label = '';
  for (const line of setLines({ ...outcome, report: { ...outcome.report, ...changes } }, 16, 80)) {
    const name = line.slice(0, 16).trim();
    if (name !== '') label = name;
    found.set(label, `${found.get(label) ?? ''} ${line.slice(16)}`.trim());
  }
  return found;
}

const { report } = handMadeOutcome([100, 98, 96, 94, 92, 90], 70);

test('a set worked by hand: reference, work, course, tension', () => {
  const lines = linesOf();
  expect(lines.get('ended')).toBe('with repetition 6, the last one');
  expect(lines.get('reference')).toBe('99 ± 1 mm height, the mean of repetitions 1 and 2');
  // 70 kg x 9.80665 x 0.570 m = 391 J
  expect(lines.get('work')).toMatch(/^391 ± \d+ J by heel height$/);
  expect(lines.get('course')).toMatch(/^height −2\.0 \(.*\) mm a repetition; first three 98 mm, last three 92 mm$/);
  // six repetitions of 1.6 s
  expect(lines.get('tension')).toBe('9.6 s off the bottom in all');
  expect(lines.get('tempo')).toMatch(/^2\.00 s from top to top: up 0\.70, top 0\.20, down 0\.70, bottom 0\.40$/);
});

test.each([
  ['consecutive-faults', 'height', /^with repetition 4 of 6, by faults in a row \(/],
  ['repetition-cap', null, /^with repetition 4, the greatest number the protocol allows$/],
  ['fixed-count', null, /^with repetition 4, the number that was asked for$/],
  ['duration', null, /^with repetition 4, when the time was over$/],
] as const)('the end by %s has its own words', (rule, kind, words) => {
  expect(linesOf({ end: { ...report.end, rule, kind, atRepetition: 4 } }).get('ended')).toMatch(words);
});

test('why the person stopped is said as it was recorded, then what it makes of the count', () => {
  const end = { ...report.end, reasonGiven: 'pain', class: 'tolerance' } as const;
  expect(linesOf({ end }).get('why')).toBe(`${END_REASON_SENTENCES.pain.text} ${END_CLASS_SENTENCES.tolerance.text}`);
});

test('what is not known has no line', () => {
  const lines = linesOf({}, []);
  expect([...lines.keys()].filter((label) => !['usable', 'note', 'take care', 'not given'].includes(label))).toEqual(
    [],
  );
  expect(linesOf().has('body weight')).toBe(false);
});

test('body weight, power and a set that may not be interpreted', () => {
  const lines = linesOf({
    bodyWeightN: 686.4655,
    gate: { usable: 'no', reasons: ['gaps'] },
    measures: { ...report.measures, meanPowerW: 98.4, peakPowerW: 210.6 },
    reference: { ...report.reference!, fromRepetitions: [2], raised: true },
  });
  expect(lines.get('body weight')).toBe('686 N while standing still, by the platform');
  expect(lines.get('power')).toBe('mean 98 W, peak 211 W');
  expect(lines.get('usable')).toMatch(/^no: /);
  expect(lines.get('reference')).toContain('the mean of repetition 2, which beat the practice raises');
});

test('a criterion stands under "not observed" only when no repetition was judged on it', () => {
  expect(linesOf().get('not observed')).toContain('knee');
  const [first, ...rest] = report.repetitions;
  const criteria = { ...first.criteria, knee: { ...first.criteria.knee, result: 'pass' as const } };
  expect(linesOf({ repetitions: [{ ...first, criteria }, ...rest] }).get('not observed')).not.toContain('knee');
});

test('an issue of no weight is a note, any other asks for care', () => {
  const lines = linesOf();
  expect(lines.get('take care')).toMatch(/^3\.2 to 3\.5 s: /);
  expect(lines.get('note')).toContain('temperature');
});
