import { WARM_UP_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';
import { countedEfforts, PULL_PLACEMENT_WORDS, pullText } from '../../apps/cli/src/pull-text.ts';
import { assessedPulls, pullItem } from '../support/assessed-pulls.ts';
import { exponentialEffort } from '../support/made-pull.ts';
import { madeRamps, madeRecording } from '../support/made-recording.ts';

const screen = { width: 80, drawsBlocks: true };
const text = madeRecording(madeRamps([1400, 1425, 1410]));
const said = (about = {}, carried = {}): string =>
  pullText(assessedPulls(text, pullItem(about, carried)), screen)
    .join(' ')
    .replace(/\s+/g, ' ');

test('the seated test worked out by hand: 1425 N net over 85 N, 82 kg, a lever of 0.13 m', () => {
  const words = said(
    { bodyMassKg: 82, forefootLeverMm: 130, calibrationUPercent: 0.5, calibrationZeroU: 0.4 },
    { end_reason: 'trials-done' },
  );
  expect(words).toContain(`left, ${PULL_PLACEMENT_WORDS.platform} Isometric strength, seated, knee bent`);
  expect(words).toContain('efforts 3 found, 3 of them count');
  expect(words).toMatch(
    /result 1425 ± 7 N, greatest mean over half a second, above the load at rest, effort 2; 1510 ± 8 N/,
  );
  expect(words).toMatch(
    /that is 1\.77\d? ± 0\.01\d* body weights, 17\.\d+ ± 0\.1\d* N\/kg, 185 ± 7 N\.m, 2\.26 ± 0\.09 N\.m\/kg/,
  );
  expect(words).toContain('All trials were done. The force shows what the calf could do.');
  expect(words).toContain('The efforts agree and were held: they show a maximum.');
  expect(words).toContain('calibration 0.50 % in every uncertainty; zero 0.40 N in those of gross forces');
  expect(words).not.toMatch(/not given|usable|another one/);
});

test('what is not known is said', () => {
  const words = said({ side: undefined });
  expect(words).toContain('side not given');
  expect(words).toContain('usable cannot tell: the side is not given');
  expect(words).toContain('Figures per kilogram and in body weights are not shown: enter the body mass.');
  expect(words).toContain('it is not known, and it is not zero');
  expect(words).toContain('Why the test ended was not recorded; the force is not interpreted.');
});

test('warm-up pushes are said, with how they were told from trials', () => {
  const say = (heights: readonly number[], about = {}): string =>
    pullText(assessedPulls(madeRecording(madeRamps(heights)), pullItem(about)), screen)
      .join(' ')
      .replace(/\s+/g, ' ');
  expect(say([500, 900, 920, 910])).toContain(`warm-up 1: ${WARM_UP_SENTENCES.guessed.text}`);
  expect(say([500, 900, 920, 910])).toContain('no: a warm-up push, no trial');
  expect(say([900, 500, 910])).toContain(`warm-up 2: ${WARM_UP_SENTENCES.open.text}`);
  expect(say([800, 900, 910], { warmUpPushes: 1 })).toContain(`warm-up 1: ${WARM_UP_SENTENCES.told.text}`);
  expect(say([900, 500, 910], { warmUpPushes: 0 })).not.toContain('warm-up');
});

test('no line is wider than the screen', () => {
  for (const width of [60, 80, 120]) {
    for (const line of pullText(assessedPulls(text), { width, drawsBlocks: true })) {
      expect(line.length, line).toBeLessThanOrEqual(width);
    }
  }
});

test('without an effort there is no picture and no figure', () => {
  const none = assessedPulls(madeRecording(madeRamps([])), pullItem());
  const lines = pullText(none, screen).join('\n');
  expect(lines).toContain('0 found, 0 of them count');
  expect(lines).not.toMatch(/result|│/);
  expect(countedEfforts(none.report)).toEqual({ found: 0, counted: 0 });
});

test('a fast test says which efforts start distinctly, and why one has no rate', () => {
  const efforts = [3, 9].map((atS) => exponentialEffort(atS, 1000, 0.1, 1.5));
  const recording = madeRecording({ efforts, lengthS: 14, sampleRateHz: 1000, noise: 0.5, rest: () => 85 });
  const outcome = assessedPulls(recording, pullItem({ protocol: 'isometric.seated-fast' }));
  const words = (report = outcome.report): string =>
    pullText({ ...outcome, report }, screen)
      .join(' ')
      .replace(/\s+/g, ' ');
  expect(words()).toContain('start distinct: effort 1, 2');
  expect(words()).not.toContain('no rate');
  const [first, second] = outcome.report.efforts;
  const soft = {
    ...second,
    start: { distinct: 'no', withinS: 0.02, limitS: 0.005 },
    rates: second.rates.map((one) => ({ ...one, rate: null, reason: 'rate-uncertain' }) as const),
  } as const;
  const two = words({ ...outcome.report, efforts: [first, soft] });
  expect(two).toContain('start distinct: effort 1; not distinct: effort 2');
  expect(two).toContain('no rate effort 2: the rate is known too poorly');
  expect(said()).not.toMatch(/ start /);
});
