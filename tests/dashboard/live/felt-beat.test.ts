import { expect, test } from 'vitest';
import { feltBeat } from '../../../apps/dashboard/src/live/felt-beat.ts';

const sensor = { kindName: 'open', deviceName: 'A', descriptionId: null, batteryPercent: null, names: {} } as const;

test('a device that can is felt, and one that is itself the sensor stays still', () => {
  const felt: number[] = [];
  const device = { vibrate: (forMs: number) => felt.push(forMs) };
  feltBeat({}, device)(60);
  feltBeat({ sensor: { ...sensor, route: 'bluetooth' } }, device)(50);
  feltBeat({ sensor: { ...sensor, route: 'motion' } }, device)(40);
  expect(felt).toEqual([60, 50]);
  expect(() => feltBeat({}, {})(60)).not.toThrow();
});
