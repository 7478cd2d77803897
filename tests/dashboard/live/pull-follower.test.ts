import type { SampleBlock } from '@surae/sensors';
import { expect, test } from 'vitest';
import { PullFollower } from '../../../apps/dashboard/src/live/pull-follower.ts';

/** A force at 100 samples a second, as one block that begins at a time. */
function block(seconds: number, force: (timeS: number) => number, fromS = 0): SampleBlock {
  const count = Math.round(seconds * 100);
  const times = Float64Array.from({ length: count }, (_, i) => i / 100);
  return {
    firstIndex: 0,
    hostTimeMs: 0,
    deviceTimesS: times.map((timeS) => timeS + fromS),
    channels: [{ quantity: 'force', axis: null, unit: 'N', samples: times.map(force) }],
  };
}

function followed(seconds: number, force: (timeS: number) => number, fromS = 0) {
  const follower = new PullFollower(2, 7.5);
  follower.add(block(seconds, force, fromS));
  return follower.state;
}

test('before the rest is over there is no force, and afterwards it stands above the load at rest', () => {
  expect(followed(1.9, () => 80)).toMatchObject({ rest: null, net: null, best: null });
  const state = followed(5, (timeS) => (timeS < 2.5 ? 80 : 880));
  expect(state.rest).toBeCloseTo(80, 9);
  expect(state.net).toBeCloseTo(800, 9);
  expect(state.best).toBeCloseTo(800, 9);
  expect(state.dropped).toBe(false);
});

test('the best is a mean over half a second: a shorter push has less', () => {
  // 0.25 s of 800 N within any half second
  expect(followed(5, (timeS) => (timeS >= 3 && timeS < 3.25 ? 880 : 80)).best).toBeCloseTo(400, 6);
});

test('a trial that lies later in its recording, and a sensor that reads a push downwards, are followed alike', () => {
  const up = followed(5, (timeS) => (timeS < 2.5 ? 80 : 880), 140);
  expect(up.net).toBeCloseTo(800, 9);
  expect(up.course[0][0]).toBeCloseTo(2.05, 9);
  expect(followed(5, (timeS) => (timeS < 2.5 ? -80 : -880)).net).toBeCloseTo(800, 9);
});

test('a fall by a third at once before the cue to let go is told; a slow one, one after the cue, and a small one are not', () => {
  const fallAt =
    (atS: number, to: number, size = 800) =>
    (timeS: number) =>
      timeS < 2.5 ? 0 : timeS < atS ? size : to;
  expect(followed(7, fallAt(5, 500)).dropped).toBe(true);
  expect(followed(7, fallAt(5, 600)).dropped).toBe(false);
  expect(followed(9, fallAt(7.6, 0)).dropped).toBe(false);
  expect(followed(7, fallAt(5, 0, 40)).dropped).toBe(false);
  expect(followed(7, (timeS) => (timeS < 2.5 ? 0 : 800 - 150 * (timeS - 2.5))).dropped).toBe(false);
});

test('a hole in the push makes no sudden drop and no best of its own; what follows it counts again', () => {
  const follower = new PullFollower(2, 7.5);
  follower.add(block(3.5, (timeS) => (timeS < 2.5 ? 80 : 880)));
  expect(follower.state.best).toBeCloseTo(800, 9);
  // 0.4 s without samples, and then half of the force, which sank meanwhile; the first mean after it is half a second later
  follower.add(block(0.4, () => 480, 3.9));
  expect(follower.state).toMatchObject({ dropped: false, best: expect.closeTo(800, 9) as number });
  follower.add(block(0.7, () => 1280, 4.3));
  expect(follower.state.best).toBeCloseTo(1200, 6);
  const whole = new PullFollower(2, 7.5);
  whole.add(block(3.5, (timeS) => (timeS < 2.5 ? 80 : 880)));
  whole.add(block(0.4, () => 480, 3.5));
  expect(whole.state.dropped).toBe(true);
});
