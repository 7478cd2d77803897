import { requireRange } from '../check.ts';
import type { Trace } from '../trace.ts';

/** The line by which readings become forces. */
export interface CalibrationLine {
  readonly slope: number;
  readonly offset: number;
}

/**
 * A trace whose forces are counted by a calibration: (reading - offset) / slope. The trace that was handed over stays as it
 * is, so that the same recording can be counted by another calibration, or by none.
 *
 * @param trace - the recording as it came [unit of the sensor]
 * @param line - reading = offset + slope times load, slope not 0 [unit of the sensor per N]
 * @returns a new trace; channels that are no force are the same arrays [N]
 * @throws {@link InputError} `out-of-range` for a slope of 0 or a line that is not finite
 *
 * Source: definition
 */
export function calibrated(trace: Trace, line: CalibrationLine): Trace {
  requireRange(line.slope, line.slope !== 0, 'slope', 'a slope that is not 0');
  requireRange(line.offset, true, 'offset', 'a finite offset');
  return {
    groups: trace.groups.map((group) => ({
      ...group,
      channels: group.channels.map((channel) =>
        channel.quantity === 'force'
          ? { ...channel, samples: channel.samples.map((reading) => (reading - line.offset) / line.slope) }
          : channel,
      ),
    })),
  };
}

/**
 * Whether a calibration is to be repeated.
 *
 * @param ageDays - days since it was made, >= 0 [day]
 * @param validDays - days for which it counts, > 0 [day]
 * @returns days that are left, below 0 when it is over, and whether it is over [day]
 * @throws {@link InputError} `out-of-range` for a span that is not above 0
 *
 * Source: definition; how long one counts is common practice, no source
 */
export function calibrationAge(
  ageDays: number,
  validDays: number,
): { readonly leftDays: number; readonly over: boolean } {
  requireRange(validDays, validDays > 0, 'validDays', 'above 0');
  requireRange(ageDays, true, 'ageDays', 'a finite number of days');
  // one from the future has a wrong clock behind it and is no older than new
  const leftDays = validDays - Math.max(0, ageDays);
  return { leftDays, over: leftDays < 0 };
}
