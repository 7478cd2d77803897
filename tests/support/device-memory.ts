import type { DeviceMemory } from '../../apps/dashboard/src/clinic/author-code.ts';

/** What a device keeps for itself, as a map. */
export class MapMemory implements DeviceMemory {
  readonly kept = new Map<string, string>();

  getItem(key: string): string | null {
    return this.kept.get(key) ?? null;
  }

  setItem(key: string, value: string): void {
    this.kept.set(key, value);
  }
}
