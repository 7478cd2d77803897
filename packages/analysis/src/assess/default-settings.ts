import { blockCounterDefaults } from './defaults/block-counter.ts';
import { bodyDefaults } from './defaults/body.ts';
import { effortDefaults } from './defaults/efforts.ts';
import { handDefaults } from './defaults/hand.ts';
import { heelDefaults } from './defaults/heel.ts';
import { hopDefaults } from './defaults/hops.ts';
import { judgingDefaults } from './defaults/judging.ts';
import { signalDefaults } from './defaults/signal.ts';
import type { Settings } from './settings.ts';

/**
 * Settings with every default, as plain JSON.
 *
 * @returns a fresh object that the caller may change [-]
 *
 * Source: ours
 */
export function defaultSettings(): Settings {
  return deepCopy({
    heel: heelDefaults,
    body: bodyDefaults,
    block: blockCounterDefaults,
    judging: judgingDefaults,
    hand: handDefaults,
    signal: signalDefaults,
    efforts: effortDefaults,
    hops: hopDefaults,
  });
}

// plain JSON only, so a round trip is an exact deep copy and needs no platform function
function deepCopy<Value>(value: Value): Value {
  return JSON.parse(JSON.stringify(value)) as Value;
}
