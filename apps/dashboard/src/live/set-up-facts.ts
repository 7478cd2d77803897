import {
  type CalibrationLine,
  calibrated,
  type LightFacts,
  pullSign,
  type SetupPlacement,
  type Side,
  setupDefaults,
  type Trace,
} from '@surae/analysis';
import type { ZeroEntry } from '@surae/casebook';
import { groupsReadAs, type ReadAs } from './read-as.ts';

/** What is known where a test is made ready. */
export interface SetUpKnown {
  readonly placement: SetupPlacement;
  readonly side: Side;
  /** the leg that somebody said the sensor is on; null is not said */
  readonly sideTold: Side | null;
  readonly bodyMassKg: number | null;
  readonly massNeeded: boolean;
  readonly zero: ZeroEntry | null;
  /** forces are counted by a calibration, which knows their sign */
  readonly isCalibrated: boolean;
  /** which way is up when it is worn right: as answered, or as in the last set of the leg; null where neither tells */
  readonly upAxis: LightFacts['upAxis'];
  readonly silentS: number | null;
  readonly isoNow: string;
}

/** Scatter of a reading at rest below which no effort is looked for: newtons, and metres of a string; ours. */
const restNoise = { force: 3, 'heel-height': 0.002 } as const;

/** Departure from the zero that is a load [N], and how many times greater it is than what goes the other way; ours. */
const loadN = 30;
const outweighs = 3;

/** Which way the reading goes under load, by its zero; null while nothing loads it. */
function signFromZero(samples: Float64Array, level: number): 1 | -1 | null {
  const sorted = samples.map((value) => value - level).sort();
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? 0;
  const [down, up] = [-at(0.02), at(0.98)];
  if (up >= loadN && up >= outweighs * down) return 1;
  return down >= loadN && down >= outweighs * up ? -1 : null;
}

/** Which way the reading goes, once an effort or a raise was seen in the last seconds; null before. */
export function seenSign(trace: Trace, zero: Pick<ZeroEntry, 'level'> | null): 1 | -1 | null {
  for (const { channels } of trace.groups) {
    for (const { quantity, samples } of channels) {
      if (quantity !== 'force' && quantity !== 'heel-height') continue;
      if (quantity === 'force' && zero !== null) return signFromZero(samples, zero.level);
      const { answer, asks } = pullSign(samples, restNoise[quantity], setupDefaults.guess);
      if (answer !== null && !asks) return answer === 'up' ? 1 : -1;
    }
  }
  return null;
}

/** What the lights are asked with. */
export function lightFacts(known: SetUpKnown, sign: 1 | -1 | null): LightFacts {
  const { zero, isoNow } = known;
  return {
    placement: known.placement,
    silentS: known.silentS,
    upAxis: known.upAxis,
    sign: known.isCalibrated ? 1 : sign,
    zero:
      zero === null ? null : { level: zero.level, u: zero.u, ageS: (Date.parse(isoNow) - Date.parse(zero.at)) / 1000 },
    side: { wanted: known.side, told: known.sideTold, ofSensor: null },
    mass: { kg: known.bodyMassKg, ageDays: null, needed: known.massNeeded },
    gravityMps2: setupDefaults.gravityMps2,
  };
}

/** A trace and its zero in newtons, where a calibration says how the sensor counts; as they came without one. */
export function countedBy(
  trace: Trace,
  zero: ZeroEntry | null,
  line: CalibrationLine | null,
): { readonly trace: Trace; readonly zero: ZeroEntry | null } {
  if (line === null) return { trace, zero };
  const level = zero === null ? 0 : (zero.level - line.offset) / line.slope;
  const u = zero === null ? 0 : zero.u / Math.abs(line.slope);
  return { trace: calibrated(trace, line), zero: zero === null ? null : { ...zero, level, u } };
}

/** A trace and its zero as what was answered about the sensor reads them, and in newtons where a calibration counts them. */
export function asRead(
  trace: Trace,
  zero: ZeroEntry | null,
  readAs: ReadAs,
  line: CalibrationLine | null,
): { readonly trace: Trace; readonly zero: ZeroEntry | null } {
  const factor = (zero === null ? undefined : readAs[zero.quantity]) ?? 1;
  const read = zero === null ? null : { ...zero, level: factor * zero.level, u: Math.abs(factor) * zero.u };
  return countedBy({ groups: groupsReadAs(trace.groups, readAs) }, read, line);
}
