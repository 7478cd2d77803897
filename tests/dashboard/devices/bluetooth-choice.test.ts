import { expect, test } from 'vitest';
import { bluetoothOf, chooseBluetooth } from '../../../apps/dashboard/src/devices/bluetooth-choice.ts';
import type { BluetoothPlan } from '../../../apps/dashboard/src/devices/bluetooth-plan.ts';

const plan: BluetoothPlan = { advertised: ['a'], namePrefix: null, streams: [], targets: [] };

/** A page whose browser answers a choice as it is told. */
function pageThat(requestDevice: (options: RequestDeviceOptions) => Promise<unknown>, isAvailable = true) {
  const bluetooth = { requestDevice, getAvailability: () => Promise.resolve(isAvailable) } as unknown as Bluetooth;
  return { isSecureContext: true, navigator: { bluetooth } };
}

const fails =
  (name: string, message = '') =>
  () =>
    Promise.reject(new DOMException(message, name));

test('a page without the interface says whether another browser or another address would help', () => {
  const codeOf = (isSecureContext: boolean): unknown => {
    try {
      return bluetoothOf({ isSecureContext, navigator: {} });
    } catch (error) {
      return (error as { code: string }).code;
    }
  };
  expect([codeOf(false), codeOf(true)]).toEqual(['insecure-page', 'no-interface']);
});

test.each([
  ['NotFoundError', 'User cancelled the chooser.', true, 'not-chosen'],
  ['NotFoundError', 'Bluetooth adapter not available.', false, 'no-radio'],
  ['SecurityError', 'Must be handling a user gesture to show a permission request.', true, 'needs-press'],
  ['SecurityError', 'Access is disallowed by permissions policy.', true, 'not-allowed'],
  ['SecurityError', 'Access is disallowed by permissions policy.', false, 'not-allowed'],
  ['NotAllowedError', '', true, 'not-allowed'],
  ['TypeError', '', true, 'failed'],
])('%s (%s) with a radio: %s is %s', async (name, message, isAvailable, code) => {
  await expect(chooseBluetooth(pageThat(fails(name, message), isAvailable), plan)).rejects.toMatchObject({ code });
});

test('the browser lists by filters, and all devices only where there are none', async () => {
  const asked: RequestDeviceOptions[] = [];
  const page = pageThat((options) => {
    asked.push(options);
    return Promise.resolve({});
  });
  await chooseBluetooth(page, plan);
  await chooseBluetooth(page, { ...plan, advertised: [] });
  const services = (count: number): unknown => expect.objectContaining({ length: count });
  expect(asked).toEqual([
    { filters: [{ services: ['a'] }], optionalServices: services(3) },
    { acceptAllDevices: true, optionalServices: services(2) },
  ]);
});
