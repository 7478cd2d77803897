import { LIVE_WORDS } from '@surae/shared';
import type { SensorTold } from '../journey/sensor-told.ts';
import { sensorKey } from '../journey/set-up.ts';
import { fill } from '../words/fill.ts';

/** What to say where the other leg was measured with another sensor than the one that is connected now; null where it was not. */
export function sensorChange(before: SensorTold | undefined, now: SensorTold | undefined): string | null {
  if (before === undefined || now === undefined || sensorKey(before) === sensorKey(now)) return null;
  return fill(LIVE_WORDS['other-sensor'], { before: `${before.kindName}, ${before.deviceName}` });
}
