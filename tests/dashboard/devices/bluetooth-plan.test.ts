import { expect, test } from 'vitest';
import { assignedUuid, filtersOf, servicesOf } from '../../../apps/dashboard/src/devices/bluetooth-plan.ts';

const plan = { advertised: [], namePrefix: null, streams: [], targets: [] };
const place = (service: string) => ({ service, characteristic: 'any' });

test('an assigned number is the beginning of the base UUID', () => {
  // Bluetooth Core Specification, Vol 3, Part B, 2.5.1: the base UUID with the number in its first half
  expect(assignedUuid(0x180f)).toBe('0000180f-0000-1000-8000-00805f9b34fb');
  expect(assignedUuid(0x2c07)).toBe('00002c07-0000-1000-8000-00805f9b34fb');
});

test('every service that may be asked for is named once, with battery and information', () => {
  expect(servicesOf({ ...plan, advertised: ['a'], streams: [place('a'), place('b')], targets: [place('c')] })).toEqual([
    'a',
    'b',
    'c',
    assignedUuid(0x180f),
    assignedUuid(0x180a),
  ]);
});

test('a device is listed by its services, by its name, by both, or by neither', () => {
  expect(filtersOf({ ...plan, advertised: ['a', 'b'] })).toEqual([{ services: ['a', 'b'] }]);
  expect(filtersOf({ ...plan, namePrefix: 'Cell' })).toEqual([{ namePrefix: 'Cell' }]);
  expect(filtersOf({ ...plan, advertised: ['a'], namePrefix: 'Cell' })).toEqual([
    { services: ['a'], namePrefix: 'Cell' },
  ]);
  expect(filtersOf(plan)).toEqual([]);
  expect(filtersOf({ ...plan, namePrefix: '' })).toEqual([]);
});
