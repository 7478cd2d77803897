import type { Side } from '@surae/analysis';
import { type SensorTold, sensorKey } from '@surae/casebook';
import { LIVE_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';

/** What of a test tells with which sensor a leg was measured. */
interface MeasuredLeg {
  readonly setAside: boolean;
  readonly choice: { readonly side: Side; readonly sensor?: SensorTold };
}

/** The sensor that the other leg was last measured with, among the tests of a visit; undefined where it was not measured with one. */
export function otherLegSensor(tests: readonly MeasuredLeg[], side: Side): SensorTold | undefined {
  return tests.filter(({ setAside, choice }) => !setAside && choice.side !== side).at(-1)?.choice.sensor;
}

/** What to say where the other leg was measured with another sensor than the one that is connected now; null where it was not. */
export function sensorChange(before: SensorTold | undefined, now: SensorTold | undefined): string | null {
  if (before === undefined || now === undefined || sensorKey(before) === sensorKey(now)) return null;
  return fill(LIVE_WORDS['other-sensor'], { before: `${before.kindName}, ${before.deviceName}` });
}
