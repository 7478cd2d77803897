import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { BeatSwitch } from '../../../apps/dashboard/src/live/beat-switch.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

function heard() {
  const calls: string[] = [];
  return { calls, sound: { start: (beats: number) => calls.push(`start ${beats}`), stop: () => calls.push('stop') } };
}

test('turned off it is silent, turned on again it comes with the next beat up', () => {
  const { calls, sound } = heard();
  const beat = new BeatSwitch();
  beat.turn(sound, 60, 300);
  expect([beat.isMuted, calls]).toEqual([true, ['stop']]);
  beat.turn(sound, 60, 500);
  vi.advanceTimersByTime(1499);
  expect(calls).toEqual(['stop', 'stop']);
  vi.advanceTimersByTime(1);
  expect([beat.isMuted, calls.at(-1)]).toEqual([false, 'start 60']);
});

test('a test that is over, or has no beat, makes no sound later', () => {
  const { calls, sound } = heard();
  const beat = new BeatSwitch();
  beat.turn(sound, null, 0);
  beat.turn(sound, null, 0);
  beat.turn(sound, 60, 500);
  beat.turn(sound, 60, 500);
  beat.stop(sound);
  vi.advanceTimersByTime(10_000);
  expect(calls.filter((call) => call.startsWith('start'))).toEqual([]);
});

test('while it is silent the beat is felt, from the next beat up on, until it is heard again or over', () => {
  const { sound } = heard();
  const felt: number[] = [];
  const beat = new BeatSwitch((forMs) => felt.push(forMs));
  beat.turn(sound, 60, 500);
  vi.advanceTimersByTime(1499);
  expect(felt).toEqual([]);
  // up at 1.5 s, then each second: 1.5, 2.5, 3.5
  vi.advanceTimersByTime(2001);
  expect(felt).toEqual([60, 60, 60]);
  beat.turn(sound, 60, 4000);
  vi.advanceTimersByTime(5000);
  expect(felt).toHaveLength(3);
  beat.turn(sound, 60, 0);
  beat.stop(sound);
  vi.advanceTimersByTime(5000);
  expect(felt).toHaveLength(3);
});
