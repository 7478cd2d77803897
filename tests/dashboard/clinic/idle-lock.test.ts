import { expect, test } from 'vitest';
import { IdleLock } from '../../../apps/dashboard/src/clinic/idle-lock.ts';
import { HandClock } from '../../support/hand-clock.ts';

function lying(afterMs: number | null): { clock: HandClock; idle: IdleLock; locked: () => number } {
  const clock = new HandClock();
  let locked = 0;
  const idle = new IdleLock(
    clock,
    () => afterMs,
    () => (locked += 1),
  );
  return { clock, idle, locked: () => locked };
}

test('locks once, after the time in which nothing was touched', () => {
  const { clock, locked } = lying(60_000);
  clock.move(59_000);
  expect(locked()).toBe(0);
  clock.move(1_000);
  expect(locked()).toBe(1);
  expect(clock.running).toBe(0);
  clock.move(600_000);
  expect(locked()).toBe(1);
});

test('each touch begins the time anew', () => {
  const { clock, idle, locked } = lying(60_000);
  for (let i = 0; i < 5; i += 1) {
    clock.move(50_000);
    idle.touched();
  }
  expect(locked()).toBe(0);
  clock.move(60_000);
  expect(locked()).toBe(1);
});

test('never locks while a set runs, and locks as soon as it is over', () => {
  const { clock, idle, locked } = lying(60_000);
  idle.setRuns(true);
  clock.move(600_000);
  expect(locked()).toBe(0);
  idle.setRuns(false);
  // what the set still has to write is written first, however often it is said that it is over
  clock.move(4_000);
  idle.setRuns(false);
  expect(locked()).toBe(0);
  clock.move(1_000);
  expect(locked()).toBe(1);
});

test('a set that was stopped by a touch leaves the clinic open', () => {
  const { clock, idle, locked } = lying(60_000);
  idle.setRuns(true);
  clock.move(600_000);
  idle.touched();
  idle.setRuns(false);
  expect(locked()).toBe(0);
});

test('a page that slept locks at its first look', () => {
  const { clock, locked } = lying(60_000);
  clock.move(8 * 3_600_000);
  expect(locked()).toBe(1);
});

test('never is never, and one that was stopped locks nothing', () => {
  const never = lying(null);
  never.clock.move(1e9);
  expect(never.locked()).toBe(0);
  const stopped = lying(1000);
  stopped.idle.stop();
  stopped.clock.move(1e9);
  expect(stopped.locked()).toBe(0);
});
