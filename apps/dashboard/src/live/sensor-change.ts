import type { Side } from '@surae/analysis';
import {
  liesAsItLay,
  type SensorTold,
  type SetChoice,
  type SetUpKept,
  sensorKey,
  turnedDeg,
  type Visit,
} from '@surae/casebook';
import { LIVE_WORDS, SAME_LEG_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { decimal } from '../words/decimal.ts';
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

/**
 * What to say before a set where the sensor lies as it lay on the other leg; null where it was moved, or nothing tells. A set of
 * this leg that was there before was answered for already.
 */
export function unmovedSensor(
  { sets }: Pick<Visit, 'sets'>,
  { side, placement, sensor }: Pick<SetChoice, 'side' | 'placement' | 'sensor'>,
  up: SetUpKept['up'] | null | undefined,
): string | null {
  const last = sets.findLast(({ setAside }) => !setAside);
  if (last === undefined || last.choice.side === side || sensor === undefined || up == null) return null;
  const { choice } = last;
  if (choice.sensor === undefined) return null;
  const before = { placement: choice.placement, sensor: choice.sensor, up: choice.setUp?.up ?? null };
  const turned = turnedDeg(before, { placement, sensor, up });
  if (!liesAsItLay(turned)) return null;
  const names = { leg: SUMMARY_WORDS[side].text, other: SUMMARY_WORDS[choice.side].text };
  return fill(SAME_LEG_WORDS['ready-unmoved'], { ...names, turned: decimal(turned, 0) });
}
