import { judgingDefaults } from './defaults/judging.ts';
import type { Settings } from './settings.ts';

/**
 * Settings with every default, as plain JSON.
 *
 * @returns a fresh object that the caller may change [-]
 *
 * Source: ours
 */
export function defaultSettings(): Settings {
  return structuredCloneOf({ judging: judgingDefaults });
}

// plain JSON only, so a round trip is an exact deep copy and needs no platform function
function structuredCloneOf<Value>(value: Value): Value {
  return JSON.parse(JSON.stringify(value)) as Value;
}
