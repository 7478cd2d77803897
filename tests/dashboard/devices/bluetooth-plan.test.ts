import { batteryService, deviceInformationService } from '@surae/sensors';
import { expect, test } from 'vitest';
import { filtersOf, servicesOf } from '../../../apps/dashboard/src/devices/bluetooth-plan.ts';

const plan = { advertised: [], namePrefix: null, streams: [], targets: [] };
const place = (service: string) => ({ service, characteristic: 'any' });

test('every service that may be asked for is named once, with battery and information', () => {
  expect(servicesOf({ ...plan, advertised: ['a'], streams: [place('a'), place('b')], targets: [place('c')] })).toEqual([
    'a',
    'b',
    'c',
    batteryService,
    deviceInformationService,
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
