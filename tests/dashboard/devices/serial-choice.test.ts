import { expect, test } from 'vitest';
import { choosePort, knownPorts, serialOf } from '../../../apps/dashboard/src/devices/serial-choice.ts';
import { ScriptedPort } from '../../support/scripted-port.ts';

const port = new ScriptedPort();

function pageThat(requestPort: (options: unknown) => Promise<unknown>) {
  return { isSecureContext: true, navigator: { serial: { requestPort, getPorts: () => Promise.resolve([port]) } } };
}

test('a page without the interface says whether another browser or another address would help', async () => {
  expect(() => serialOf({ isSecureContext: false, navigator: {} })).toThrow(
    expect.objectContaining({ code: 'insecure-page' }),
  );
  await expect(knownPorts({ isSecureContext: true, navigator: {} })).rejects.toMatchObject({ code: 'no-interface' });
});

test('ports that were allowed before are known without asking', async () => {
  const page = pageThat(() => Promise.reject(new Error('nobody is asked')));
  expect(await knownPorts(page)).toEqual([port]);
});

test.each([
  ['NotFoundError', 'No port selected by the user.', 'not-chosen'],
  ['SecurityError', 'Must be handling a user gesture to show a permission request.', 'needs-press'],
  ['SecurityError', 'Access to the feature "serial" is disallowed by permissions policy.', 'not-allowed'],
  ['TypeError', '', 'failed'],
])('%s (%s) is %s', async (name, message, code) => {
  const page = pageThat(() => Promise.reject(new DOMException(message, name)));
  await expect(choosePort(page)).rejects.toMatchObject({ code });
});

test('the list is narrowed only where filters are given', async () => {
  const asked: unknown[] = [];
  const page = pageThat((options) => {
    asked.push(options);
    return Promise.resolve(port);
  });
  expect(await choosePort(page)).toBe(port);
  await choosePort(page, [{ usbVendorId: 0x1209 }]);
  expect(asked).toEqual([{}, { filters: [{ usbVendorId: 0x1209 }] }]);
});
