import type { BlockChannel } from './block.ts';
import type { SensorClock } from './clock.ts';
import { Playback, type PlayedGroup } from './playback.ts';
import type { SourcePlacement, SourceQuantity } from './quantity.ts';
import type { Sensor } from './sensor.ts';

/** A recording or a simulated trace: SI units, native times. */
export interface Played {
  readonly groups: readonly {
    readonly timesS: Float64Array;
    readonly channels: readonly {
      readonly quantity: SourceQuantity;
      readonly axis: BlockChannel['axis'];
      readonly samples: Float64Array;
    }[];
  }[];
}

export interface SourceOptions {
  readonly placement: SourcePlacement;
  readonly clock: SensorClock;
  /** how many times faster than recorded; 1 when left out [-] */
  readonly pace?: number;
}

/** UCUM codes of the SI units. */
const units: Readonly<Record<SourceQuantity, string>> = {
  'heel-height': 'm',
  acceleration: 'm/s2',
  'angular-velocity': 'rad/s',
  force: 'N',
  torque: 'N.m',
  angle: 'rad',
  tap: '1',
};

/** About once a display frame [ms]; ours. */
const intervalMs = 16;

function playedGroup(played: Played): PlayedGroup {
  const longest = [...played.groups].sort((a, b) => b.timesS.length - a.timesS.length)[0];
  if (longest === undefined) return { timesS: new Float64Array(0), channels: [] };
  return {
    timesS: longest.timesS,
    channels: longest.channels.map(({ quantity, axis, samples }) => ({
      quantity,
      axis,
      samples,
      unit: units[quantity],
    })),
  };
}

function rateOf({ timesS }: PlayedGroup): number | null {
  const spanS = (timesS.at(-1) ?? 0) - (timesS[0] ?? 0);
  return spanS > 0 ? Math.round((timesS.length - 1) / spanS) : null;
}

function play(played: Played, origin: 'simulated' | 'replayed', options: SourceOptions): Sensor {
  const group = playedGroup(played);
  const { placement, clock, pace = 1 } = options;
  const description = { origin, placement, nominalRateHz: rateOf(group) };
  return new Playback(group, { description, clock, pace, intervalMs });
}

/** A person who exists in the computer only: streams a simulated trace. */
export function simulatedPerson(trace: Played, options: SourceOptions): Sensor {
  return play(trace, 'simulated', options);
}

/** A recording played again, at its own pace or faster. */
export function replay(recording: Played, options: SourceOptions): Sensor {
  return play(recording, 'replayed', options);
}
