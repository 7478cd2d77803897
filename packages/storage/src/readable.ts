import type { Unreadable } from './codec.ts';

/** Whether a row could be read. */
export function isReadable<T>(one: T | Unreadable): one is T {
  return one !== 'altered' && one !== 'key-missing';
}
