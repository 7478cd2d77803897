import { StorageError } from '@surae/storage';
import { expect, test } from 'vitest';
import { letLockedReadsGo } from '../../../apps/dashboard/src/clinic/locked-reads.ts';

test.each([
  ['a read that met the lock is let go', new StorageError('locked', 'This store is locked.'), true],
  ['anything else stays a fault', new StorageError('full', 'There is no room.'), false],
  ['so does what is no fault of a store', new Error('locked'), false],
])('%s', (_what, reason, isLetGo) => {
  const page = new EventTarget();
  letLockedReadsGo(page);
  const event = Object.assign(new Event('unhandledrejection', { cancelable: true }), { reason });
  page.dispatchEvent(event);
  expect(event.defaultPrevented).toBe(isLetGo);
});
