import { expect, test } from 'vitest';
import { routesHere, whyNoSource } from '../../../apps/dashboard/src/devices/source-access.ts';

const able = {
  isSecureContext: true,
  navigator: { bluetooth: {} as Bluetooth, serial: {} },
  DeviceMotionEvent: class {},
};
const routes = ['bluetooth', 'serial', 'motion'] as const;

test('a page that has everything is kept from nothing', () => {
  expect(routes.map((route) => whyNoSource(able, route))).toEqual([undefined, undefined, undefined]);
});

test('a browser without an interface and a page over plain http are told apart', () => {
  const bare = { isSecureContext: true, navigator: {} };
  expect(routes.map((route) => whyNoSource(bare, route)?.code)).toEqual([
    'no-interface',
    'no-interface',
    'no-interface',
  ]);
  const plain = { ...able, isSecureContext: false };
  expect(routes.map((route) => whyNoSource(plain, route)?.code)).toEqual([
    'insecure-page',
    'insecure-page',
    'insecure-page',
  ]);
});

test('the routes that are left are those that nothing speaks against', () => {
  expect(routesHere(able)).toEqual(['bluetooth', 'serial', 'motion']);
  expect(routesHere({ ...able, navigator: { serial: {} } as object })).toEqual(['serial', 'motion']);
  expect(routesHere({ ...able, isSecureContext: false })).toEqual([]);
});
