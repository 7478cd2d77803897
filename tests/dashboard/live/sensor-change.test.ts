import type { SensorTold, VisitSet } from '@surae/casebook';
import { expect, test } from 'vitest';
import { otherLegSensor, sensorChange, unmovedSensor } from '../../../apps/dashboard/src/live/sensor-change.ts';

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

test('a sensor that lies as it lay on the other leg is told before the set, and one that was moved is not', () => {
  const set = (side: 'left' | 'right', change: object = {}) =>
    ({
      setAside: false,
      choice: { side, placement: 'foot', sensor: one, setUp: { up: [0, 0, 1] }, ...change },
    }) as unknown as VisitSet;
  const now = { side: 'right', placement: 'foot', sensor: one } as const;
  const tilted = [Math.sin(0.1), 0, Math.cos(0.1)] as const;
  expect(unmovedSensor({ sets: [set('left')] }, now, [0, 0, 1])).toContain(
    'as it lay on the left leg, turned by 0 degrees',
  );
  expect(unmovedSensor({ sets: [set('left')] }, now, tilted)).toBeNull();
  expect(unmovedSensor({ sets: [set('left')] }, now, null)).toBeNull();
  expect(
    unmovedSensor({ sets: [set('left')] }, { ...now, sensor: { ...one, deviceName: 'Foot 2' } }, [0, 0, 1]),
  ).toBeNull();
  // done again, or nothing done yet
  expect(unmovedSensor({ sets: [set('left'), set('right')] }, now, [0, 0, 1])).toBeNull();
  expect(unmovedSensor({ sets: [] }, now, [0, 0, 1])).toBeNull();
});
