import type { SensorTold } from '@surae/casebook';
import { expect, test } from 'vitest';
import { otherLegSensor, sensorChange } from '../../../apps/dashboard/src/live/sensor-change.ts';

const one: SensorTold = {
  route: 'bluetooth',
  kindName: 'Foot sensor',
  deviceName: 'Foot 1',
  descriptionId: 'a',
  batteryPercent: 80,
  names: {},
};

test('another device is named by what the other leg was measured with', () => {
  expect(sensorChange(one, { ...one, deviceName: 'Foot 2' })).toContain('another sensor: Foot sensor, Foot 1.');
  expect(sensorChange(one, { ...one, route: 'serial' })).not.toBeNull();
});

test('the same device with less charge is the same; without one of the two there is nothing to say', () => {
  expect(sensorChange(one, { ...one, batteryPercent: 9, descriptionId: 'b' })).toBeNull();
  expect([sensorChange(undefined, one), sensorChange(one, undefined)]).toEqual([null, null]);
});

test('the other leg counts by its last test that was not set aside', () => {
  const tested = (side: 'left' | 'right', deviceName: string, setAside = false) => ({
    setAside,
    choice: { side, sensor: { ...one, deviceName } },
  });
  const tests = [tested('left', 'A'), tested('left', 'B'), tested('right', 'C'), tested('left', 'D', true)];
  expect(otherLegSensor(tests, 'right')?.deviceName).toBe('B');
  expect(otherLegSensor(tests, 'left')?.deviceName).toBe('C');
  expect(otherLegSensor([{ setAside: false, choice: { side: 'left' } }], 'right')).toBeUndefined();
});
