import { expect, test } from 'vitest';
import { portNames } from '../../../apps/dashboard/src/devices/port-names.ts';
import type { SerialPortInfo } from '../../../apps/dashboard/src/devices/serial-interface.ts';

const port = (usbVendorId?: number, usbProductId = 0) => ({
  getInfo: (): SerialPortInfo => (usbVendorId === undefined ? {} : { usbVendorId, usbProductId }),
});

test('ports are told apart by the numbers of their maker, and numbered where those are alike', () => {
  expect(portNames([port(0x1209, 0x2a), port(), port(0x1209, 0x2b), port()])).toEqual([
    'Open serial port 1209:002a',
    'Open serial port, number 1',
    'Open serial port 1209:002b',
    'Open serial port, number 2',
  ]);
  expect(portNames([])).toEqual([]);
});
