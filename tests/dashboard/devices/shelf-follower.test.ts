import type { ReactiveControllerHost } from 'lit';
import { expect, test } from 'vitest';
import { SensorShelf } from '../../../apps/dashboard/src/devices/sensor-shelf.ts';
import { ShelfFollower } from '../../../apps/dashboard/src/devices/shelf-follower.ts';

test('an element is drawn anew with each change, as long as it is in the page', async () => {
  const shelf = new SensorShelf();
  let draws = 0;
  const host = { addController: () => {}, requestUpdate: () => (draws += 1) } as unknown as ReactiveControllerHost;
  const follower = new ShelfFollower(host, () => shelf);
  follower.hostConnected();
  await shelf.letGo();
  shelf.dispatchEvent(new Event('battery-changed'));
  expect(draws).toBe(2);
  follower.hostDisconnected();
  await shelf.letGo();
  expect(draws).toBe(2);
});
