import { expect, test } from 'vitest';
import { allowMotion } from '../../../apps/dashboard/src/devices/motion-access.ts';

const asks = (requestPermission: () => Promise<'granted' | 'denied'>) => ({
  isSecureContext: true,
  DeviceMotionEvent: { requestPermission },
});

test('a browser that does not ask is asked nothing, and one that asks is asked once', async () => {
  await allowMotion({ isSecureContext: true, DeviceMotionEvent: {} });
  let times = 0;
  await allowMotion(
    asks(() => {
      times += 1;
      return Promise.resolve('granted');
    }),
  );
  expect(times).toBe(1);
});

const told = (answer: () => Promise<{ readonly state: string }>) => ({
  isSecureContext: true,
  DeviceMotionEvent: {},
  navigator: { permissions: { query: answer } },
});

test('a browser that does not ask tells by its settings; one that does not know what was asked refuses nothing', async () => {
  await allowMotion(told(() => Promise.resolve({ state: 'granted' })));
  await allowMotion(told(() => Promise.resolve({ state: 'prompt' })));
  await allowMotion(told(() => Promise.reject(new TypeError('no such name'))));
});

test.each([
  ['plain http', { isSecureContext: false }, 'insecure-page'],
  ['no interface', { isSecureContext: true }, 'no-interface'],
  ['a no in the settings', told(() => Promise.resolve({ state: 'denied' })), 'not-allowed'],
  ['a no', asks(() => Promise.resolve('denied')), 'not-allowed'],
  ['no press', asks(() => Promise.reject(new DOMException('', 'NotAllowedError'))), 'needs-press'],
  ['anything else', asks(() => Promise.reject(new Error('odd'))), 'failed'],
])('%s', async (_name, page, code) => {
  await expect(allowMotion(page)).rejects.toMatchObject({ code });
});
