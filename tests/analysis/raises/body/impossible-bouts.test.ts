import { expect, test } from 'vitest';
import { bodyDefaults } from '../../../../packages/analysis/src/assess/defaults/body.ts';
import { impossibleBouts } from '../../../../packages/analysis/src/raises/body/impossible-bouts.ts';

/** Ten repetitions of 1.2 s every 2 s from 1 s on, their rises such as toes give. */
const raises = Array.from({ length: 10 }, (_, k) => ({
  startS: 1 + 2 * k,
  endS: 2.2 + 2 * k,
  heightM: 0.07,
  heightUM: 0.01,
}));

/** Acceleration of a way that is given over 24 s, by differences at 100 a second. */
function moving(way: (timeS: number) => number) {
  const dt = 0.01;
  const upward = Float64Array.from({ length: 2400 }, (_, i) => {
    const timeS = i * dt;
    return (way(timeS + dt) - 2 * way(timeS) + way(timeS - dt)) / (dt * dt);
  });
  return { startS: 0, sampleRateHz: 100, upward };
}

/** A half period of a squared sine in each span of 2 s that begins at 1 s: from `fromS` on for `lastsS`, `times` over. */
function humps(sizeM: number, fromS: number, lastsS: number, times = 1) {
  return (timeS: number): number => {
    const u = (((timeS - 1 + 20) % 2) - fromS) / lastsS;
    return timeS < 1 || timeS > 21 || u < 0 || u > 1 ? 0 : sizeM * Math.sin(times * Math.PI * u) ** 2;
  };
}

const found = (way: (timeS: number) => number) => impossibleBouts(raises, moving(way), bodyDefaults);
const all = [{ fromS: 1, toS: 20.2 }];

test('a rise of 70 mm and back, and the same in two phases, can be on the toes', () => {
  expect(found(humps(0.07, 0, 1.2))).toEqual([]);
  const phases = (timeS: number): number => humps(0.04, 0, 1.2)(timeS) + humps(0.03, 0.3, 0.6)(timeS);
  expect(found(phases)).toEqual([]);
});

test('up and down twice between two rests is stepping', () => {
  expect(found(humps(0.05, 0, 1.2, 2))).toEqual(all);
});

test('sinking below the rests on both sides is bending the knees or walking', () => {
  const wave = (timeS: number): number => humps(0.05, 0.2, 0.8)(timeS) - humps(0.03, 1, 0.5)(timeS);
  expect(found(wave)).toEqual(all);
});

test('a rise of 200 mm is more than toes can give', () => {
  expect(found(humps(0.2, 0, 1.2))).toEqual(all);
});

test('rises that are surely beyond toes need no acceleration, those that may be within their reach do', () => {
  const still = moving(() => 0);
  const by = (heightM: number, heightUM: number) => raises.map((one) => ({ ...one, heightM, heightUM }));
  expect(impossibleBouts(by(0.18, 0.03), still, bodyDefaults)).toEqual(all);
  expect(impossibleBouts(by(0.15, 0.03), still, bodyDefaults)).toEqual([]);
});

/** The same in sway that gives some 0.06 m/s2 throughout. */
const swaying = (way: (timeS: number) => number) => (timeS: number) => way(timeS) + 0.0006 * Math.sin(12 * timeS);

test('what is no larger than sway is not held against a bout', () => {
  expect(found(swaying(humps(0.005, 0, 1.2, 2)))).toEqual([]);
});

test('slow bends are held against a bout where they stand out of the quietest moments, else they may be sway', () => {
  const bends = (timeS: number): number => (humps(0.05, 0.2, 0.8)(timeS) - humps(0.03, 1, 0.5)(timeS)) / 6;
  expect(found(bends)).toEqual(all);
  expect(found(swaying(bends))).toEqual([]);
});

test('one repetition alone may pass a third of its rise below the rests: its sway is not averaged out', () => {
  const wave = (timeS: number): number => humps(0.05, 0.2, 0.8)(timeS) - humps(0.016, 1, 0.5)(timeS);
  const rest = (way: (timeS: number) => number) => (timeS: number) => (timeS < 3 ? way(timeS) : 0);
  expect(found(wave)).toEqual(all);
  expect(impossibleBouts(raises.slice(0, 1), moving(rest(wave)), bodyDefaults)).toEqual([]);
});

test('two bouts are judged apart', () => {
  const steps = humps(0.05, 0, 1.2, 2);
  const later = raises.slice(5).map((one) => ({ ...one, startS: one.startS + 2, endS: one.endS + 2 }));
  const way = (timeS: number): number => (timeS < 12 ? steps(timeS) : humps(0.07, 0, 1.2)(timeS));
  expect(impossibleBouts([...raises.slice(0, 5), ...later], moving(way), bodyDefaults)).toEqual([
    { fromS: 1, toS: 10.2 },
  ]);
});

test('two beside a set are not judged by themselves, two alone are', () => {
  const steps = humps(0.05, 0, 1.2, 2);
  const later = raises.slice(3).map((one) => ({ ...one, startS: one.startS + 2, endS: one.endS + 2 }));
  const way = (timeS: number): number => (timeS < 6 ? steps(timeS) : humps(0.07, 0, 1.2)(timeS));
  expect(impossibleBouts([...raises.slice(0, 2), ...later], moving(way), bodyDefaults)).toEqual([]);
  expect(impossibleBouts(raises.slice(0, 2), moving(way), bodyDefaults)).toEqual([{ fromS: 1, toS: 4.2 }]);
});

test('no repetitions, no bouts', () => {
  expect(
    impossibleBouts(
      [],
      moving(() => 0),
      bodyDefaults,
    ),
  ).toEqual([]);
});
