import type { DeviceMemory } from '../clinic/author-code.ts';

/** The hand that holds the device, so that its thumb presses. */
export type Hand = 'left' | 'right';

const key = 'surae.hand';

/** The hand that was chosen for this device; undefined where nobody chose, or what is kept is no hand. */
export function keptHand(memory: DeviceMemory): Hand | undefined {
  const kept = memory.getItem(key);
  return kept === 'left' || kept === 'right' ? kept : undefined;
}

export function keepHand(memory: DeviceMemory, hand: Hand): void {
  memory.setItem(key, hand);
}
