import type { SampleBlock, SensorEvent } from '@surae/sensors';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { PhoneMotion } from '../../../apps/dashboard/src/devices/phone-motion.ts';
import { HandClock } from '../../support/hand-clock.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function rig(sign: 1 | -1 = 1) {
  const events = new EventTarget();
  const clock = new HandClock();
  const heard: SensorEvent[] = [];
  const phone = new PhoneMotion({ placement: 'trunk', clock, events, sign, firstReadingMs: 1000 });
  const tell = (z: number | null, alpha: number | null = null): void => {
    const motion = new Event('devicemotion');
    const accelerationIncludingGravity = { x: z === null ? null : 0, y: z === null ? null : 1, z };
    const rotationRate = { alpha, beta: alpha, gamma: alpha };
    events.dispatchEvent(Object.assign(motion, { accelerationIncludingGravity, rotationRate, interval: 16 }));
  };
  const blocks = (): SampleBlock[] => heard.flatMap((event) => (event.kind === 'block' ? [event.block] : []));
  return { phone, clock, heard, tell, blocks, start: () => phone.start((event) => heard.push(event)) };
}

test('each reading is a block with the time of its arrival', async () => {
  const { phone, clock, tell, blocks, start } = rig();
  const started = start();
  tell(9.8, 180);
  await started;
  clock.move(16);
  tell(9.9, 0);
  expect(blocks().map(({ firstIndex, hostTimeMs, deviceTimesS }) => [firstIndex, hostTimeMs, deviceTimesS])).toEqual([
    [0, 1000, null],
    [1, 1016, null],
  ]);
  expect(blocks()[0].channels.map(({ quantity, axis, unit, samples }) => [quantity, axis, unit, samples[0]])).toEqual([
    ['acceleration', 'x', 'm/s2', 0],
    ['acceleration', 'y', 'm/s2', 1],
    ['acceleration', 'z', 'm/s2', 9.8],
    ['angular-velocity', 'x', 'rad/s', Math.PI],
    ['angular-velocity', 'y', 'rad/s', Math.PI],
    ['angular-velocity', 'z', 'rad/s', Math.PI],
  ]);
  expect(phone.quality).toMatchObject({ readings: 2, rateHz: 62.5, statedIntervalMs: 16 });
  expect(vi.getTimerCount()).toBe(0);
});

test('accelerations follow the sign of the browser', async () => {
  const { tell, blocks, start } = rig(-1);
  const started = start();
  tell(-9.8);
  await started;
  expect(blocks()[0].channels.map(({ samples }) => samples[0])).toEqual([0, -1, 9.8]);
});

test('an event without values is no reading, and without a reading there is no sensor', async () => {
  const { phone, tell, heard, start } = rig();
  const failed = expect(start()).rejects.toMatchObject({ code: 'no-sensor' });
  tell(null);
  await vi.advanceTimersByTimeAsync(1000);
  await failed;
  tell(9.8);
  expect([phone.status, heard]).toEqual(['failed', []]);
});

test('a reading that lacks the turning of the others is left out and counted', async () => {
  const { phone, tell, blocks, start } = rig();
  const started = start();
  tell(9.8, 1);
  await started;
  tell(9.9, null);
  tell(10, 1);
  expect(blocks().map(({ firstIndex }) => firstIndex)).toEqual([0, 1]);
  expect(phone.quality).toMatchObject({ readings: 2, incomplete: 1 });
});

test('it ends once, hears nothing more, and streams once', async () => {
  const { phone, tell, heard, start } = rig();
  const started = start();
  tell(9.8);
  await started;
  phone.stop();
  phone.stop();
  tell(9.9);
  expect(heard.map(({ kind }) => kind)).toEqual(['block', 'ended']);
  expect(phone.status).toBe('ended');
  await expect(start()).rejects.toMatchObject({ code: 'already-started' });
});

test('one that is stopped before its first reading ends', async () => {
  const { phone, heard, start } = rig();
  const started = start();
  phone.stop();
  await started;
  expect([phone.status, heard]).toEqual(['ended', [{ kind: 'ended' }]]);
  expect(vi.getTimerCount()).toBe(0);
});
