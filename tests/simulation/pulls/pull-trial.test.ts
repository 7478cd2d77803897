import { defaultSettings, effortSettingsBy, findEfforts } from '@surae/analysis';
import { SEATED_PULL } from '@surae/shared';
import { type PullTrialRequest, simulatePullTrial } from '@surae/simulation';
import { expect, test } from 'vitest';
import { inRun } from '../../support/runs.ts';

const settings = effortSettingsBy(defaultSettings().efforts, SEATED_PULL.parameters);
const asked: PullTrialRequest = { seed: 4, side: 'left', placement: 'platform', trial: 0, bodyMassKg: 70 };

function effortsOf(request: PullTrialRequest) {
  return findEfforts(simulatePullTrial(request), { polarity: 'positive' }, settings).efforts;
}

test('the same request gives the same bytes; another trial, side or seed gives others', () => {
  const samples = (changes: Partial<PullTrialRequest>) =>
    simulatePullTrial({ ...asked, ...changes }).groups[0].channels[0].samples;
  expect(samples({})).toEqual(samples({}));
  for (const changes of [{ trial: 1 }, { side: 'right' as const }, { seed: 5 }])
    expect(samples(changes)).not.toEqual(samples({}));
});

test('a trial begins at zero with two seconds at rest and holds one effort of a size that fits the body', () => {
  for (const seed of inRun([1, 2], [1, 2, 3, 4])) {
    for (const trial of inRun([0, 4], [0, 1, 2, 3, 4])) {
      const trace = simulatePullTrial({ ...asked, seed, trial });
      expect(trace.groups[0].timesS[0]).toBe(0);
      const efforts = effortsOf({ ...asked, seed, trial });
      expect([seed, trial, efforts.length]).toEqual([seed, trial, 1]);
      const [{ onsetS, peak }] = efforts;
      expect(onsetS.value).toBeGreaterThan(1.9);
      expect(onsetS.value).toBeLessThan(3);
      // 0.8 of 1.1 body weights times 0.85, up to 1.7 body weights and what tremor adds
      expect(peak.net.value).toBeGreaterThan(0.7 * 70 * 9.80665);
      expect(peak.net.value).toBeLessThan(1.8 * 70 * 9.80665);
    }
  }
});

test('a plate reads the resting leg, a cell in line does not', () => {
  const rest = (placement: PullTrialRequest['placement']) => effortsOf({ ...asked, placement })[0].rest.value;
  expect(rest('platform')).toBeGreaterThan(0.08 * 70 * 9.80665);
  expect(Math.abs(rest('inline'))).toBeLessThan(5);
});

test('some trials of some people are not accepted, most are', () => {
  const answers = [1, 2, 3, 4, 5, 6].flatMap((seed) =>
    [0, 1, 2].flatMap((trial) => effortsOf({ ...asked, seed, trial }).map(({ acceptance }) => acceptance.accepted)),
  );
  const accepted = answers.filter((one) => one === 'yes').length;
  expect(accepted).toBeGreaterThan(9);
  expect(accepted).toBeLessThan(answers.length);
});
