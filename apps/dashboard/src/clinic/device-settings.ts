import type { DeviceMemory } from './author-code.ts';

/** What is set for this device: nothing of it is part of the record. */
export interface DeviceSettings {
  /** minutes without a touch after which a clinic is locked; null is never */
  readonly lockMinutes: number | null;
  /** days after which a backup counts as old */
  readonly backupDays: number;
}

/** What can be chosen. Common practice, no source. */
export const lockChoices: readonly DeviceSettings['lockMinutes'][] = [2, 5, 10, 30, null];
export const backupChoices: readonly number[] = [1, 7, 14, 30];

const untouched: DeviceSettings = { lockMinutes: 10, backupDays: 7 };
const key = 'surae.settings';

/** The settings of this device; what is not one of the choices counts as not set. */
export function keptSettings(memory: DeviceMemory): DeviceSettings {
  let kept: Partial<DeviceSettings>;
  try {
    kept = (JSON.parse(memory.getItem(key) ?? '{}') ?? {}) as Partial<DeviceSettings>;
  } catch {
    // written by something else
    return untouched;
  }
  const { lockMinutes, backupDays } = kept;
  return {
    lockMinutes: lockMinutes !== undefined && lockChoices.includes(lockMinutes) ? lockMinutes : untouched.lockMinutes,
    backupDays: backupDays !== undefined && backupChoices.includes(backupDays) ? backupDays : untouched.backupDays,
  };
}

export function keepSettings(memory: DeviceMemory, settings: DeviceSettings): void {
  memory.setItem(key, JSON.stringify(settings));
}
