import { simulateSet } from '@surae/simulation';
import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { fitAcrossKnocks } from '../../../../packages/analysis/src/raises/body/knocks.ts';
import { detectBodyRaises } from '../../../../packages/analysis/src/raises/detect-body.ts';
import { inRun } from '../../../support/runs.ts';

/** What the floor gives at most, and for how long on either side [m/s2, s]. */
const [knock, reachS] = [1.5, 0.2];

/** Twelve repetitions at the trunk, of which one lands with a knock. */
function landedHard(seed: number) {
  const set = simulateSet({ placement: 'trunk', level: 'typical', seed, count: 12 });
  const [{ timesS, channels }] = set.trace.groups;
  const landsS = set.truth.repetitions[seed % 12].endS;
  const heavier = timesS.map((timeS) => {
    const away = Math.abs(timeS - landsS) / reachS;
    return away < 1 ? 1 + (knock / 9.80665) * Math.cos((Math.PI / 2) * away) : 1;
  });
  const knocked = channels.map((one) => ({ ...one, samples: one.samples.map((value, i) => value * heavier[i]) }));
  return { set, trace: { groups: [{ timesS, channels: knocked }] } };
}

test('a repetition that lands with a knock is counted, and so is the one after it', () => {
  for (const seed of inRun([1, 3], [1, 2, 3, 5, 6])) {
    const { set, trace } = landedHard(seed);
    const { raises } = detectBodyRaises(trace, 'trunk', {}, bodyDefaults);
    expect(raises).toHaveLength(12);
    raises.forEach(({ topS }, k) => expect(Math.abs(topS - set.truth.repetitions[k].topS)).toBeLessThan(0.2));
  }
});

/** Standing for 3 s, eight rises of 50 mm every 2 s, standing for 3 s, on the model grid, in noise of 0.02 m/s2. */
function modelSignal(knockAt?: number) {
  const cells = 22 * bodyDefaults.modelRateHz;
  const acceleration = Float64Array.from({ length: cells }, (_, i) => {
    const t = i / bodyDefaults.modelRateHz;
    const swing = t < 3 || t >= 19 ? 0 : 0.025 * Math.PI ** 2 * Math.cos(Math.PI * (t - 3));
    return swing + 0.03 * Math.sin(1.7 * i * i) + (i === knockAt ? 3 : 0);
  });
  return {
    acceleration,
    present: new Uint8Array(cells).fill(1),
    impacts: new Float64Array(cells),
    barred: new Uint8Array(cells),
    startS: 0,
  };
}

test('a recording without knocks is fitted as it is', () => {
  const signal = modelSignal();
  expect(fitAcrossKnocks(signal, bodyDefaults).signal).toBe(signal);
});

test('a knock long before the set is other movement and stays', () => {
  const signal = modelSignal(20);
  expect(fitAcrossKnocks(signal, bodyDefaults).signal).toBe(signal);
});

/** The same signal with the first 0.15 s of every rise marked as an impact and left out, as an abrupt push-off is. */
function struck() {
  const signal = modelSignal();
  const starts = Array.from({ length: 8 }, (_, k) => (3 + 2 * k) * bodyDefaults.modelRateHz);
  const isHit = (i: number): boolean => starts.some((start) => i >= start && i < start + 3);
  return {
    ...signal,
    present: signal.present.map((is, i) => (isHit(i) ? 0 : is)),
    acceleration: signal.acceleration.map((value, i) => (isHit(i) ? 0 : value)),
    impacts: signal.impacts.map((_, i) => (starts.includes(i) ? 1 : 0)),
    disturbed: signal.acceleration.map((value, i) => (isHit(i) ? value : Number.NaN)),
  };
}

test('what is taken for an impact in every repetition belongs to them where the set stands out more with it', () => {
  expect(fitAcrossKnocks(struck(), bodyDefaults).signal.acceleration).toEqual(modelSignal().acceleration);
});

test('a single impact beside many repetitions stays left out', () => {
  const signal = struck();
  const one = { ...signal, impacts: signal.impacts.map((is, i) => (i < 80 ? is : 0)) };
  expect(fitAcrossKnocks(one, bodyDefaults).signal).toBe(one);
});
