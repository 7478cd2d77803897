import { expect, test } from 'vitest';
import { noteOwnOpened, ownOpened } from '../../../apps/dashboard/src/clinic/own-opened.ts';
import { MapMemory } from '../../support/device-memory.ts';

test('a device knows when a clinic of its own was last opened, or that none ever was', () => {
  const memory = new MapMemory();
  expect(ownOpened(memory)).toBeNull();
  noteOwnOpened(memory, '2026-03-01T09:00:00+01:00');
  noteOwnOpened(memory, '2026-03-02T09:00:00+01:00');
  expect(ownOpened(memory)).toBe('2026-03-02T09:00:00+01:00');
});
