import type { DeviceMemory } from './author-code.ts';

const key = 'surae.own-opened';

/**
 * When a clinic of one's own was last opened on this device; null where none was. It is kept beside the record, so that a record that
 * is gone is missed and not taken for one that never was.
 */
export function ownOpened(memory: Pick<DeviceMemory, 'getItem'>): string | null {
  return memory.getItem(key);
}

export function noteOwnOpened(memory: Pick<DeviceMemory, 'setItem'>, at: string): void {
  memory.setItem(key, at);
}
