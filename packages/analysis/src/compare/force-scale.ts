/** The scale that a force was counted by; null is not known, and is never read as none. */
export interface ForceScale {
  /** name of the calibration: values of one calibration share its error */
  readonly calibration: string | null;
  /** relative standard uncertainty of its slope [-] */
  readonly relativeU: number | null;
}

/** How the scales of two values bear on what is said of both. */
export type ScaleBetween =
  /** nothing was counted by a calibration */
  | 'none'
  /** one calibration: its error is the same share of both, and a ratio is free of it */
  | 'shared'
  /** two calibrations, or nobody said that they are one: both errors count */
  | 'apart'
  /** the error of a scale is not known, and not in the figures */
  | 'not-known';

/** A value as far as its scale bears on it. */
export interface ScaledValue {
  readonly value: number;
  /** left out where it was counted by no calibration, as repetitions are */
  readonly scale?: ForceScale;
}

/**
 * How the scales of two values bear on what is said of both.
 *
 * @param one - scale of the one value; undefined where it has none [-]
 * @param other - scale of the other value; undefined where it has none [-]
 * @returns see {@link ScaleBetween} [-]
 *
 * Source: definition
 */
export function scaleBetween(one: ForceScale | undefined, other: ForceScale | undefined): ScaleBetween {
  if (one === undefined && other === undefined) return 'none';
  const [first, second] = [one?.relativeU ?? null, other?.relativeU ?? null];
  const named = one?.calibration ?? null;
  // one name with two errors contradicts itself: then both count
  if (named !== null && named === other?.calibration && first === second) return 'shared';
  return first === null || second === null ? 'not-known' : 'apart';
}

/**
 * Whether the error of a scale is missing in a figure made of values.
 *
 * @param scales - of the values; undefined where one has none [-]
 * @returns true where one was counted by a calibration whose error is not known [-]
 *
 * Source: definition
 */
export function lacksScaleError(scales: readonly (ForceScale | undefined)[]): boolean {
  return scales.some((scale) => scale !== undefined && scale.relativeU === null);
}

/**
 * What the scales put into the logarithm of the ratio of two values: nothing where they share one.
 *
 * @param one - scale of the one value; undefined where it has none [-]
 * @param other - scale of the other value; undefined where it has none [-]
 * @returns standard uncertainty; 0 also where it is not known, which {@link scaleBetween} tells [-]
 *
 * Source: JCGM 100:2008, 5.1.2; a common error: 5.2.2 with a correlation of 1
 */
export function scaleLogU(one: ForceScale | undefined, other: ForceScale | undefined): number {
  return scaleBetween(one, other) === 'apart' ? Math.hypot(one?.relativeU ?? 0, other?.relativeU ?? 0) : 0;
}

/**
 * What the scales put into the difference of two values: the share of the difference where they share one, else the shares of
 * both values.
 *
 * @param one - the one value [unit of the values]
 * @param other - the other value [unit of the values]
 * @returns standard uncertainty; 0 also where it is not known, which {@link scaleBetween} tells [unit of the values]
 *
 * Source: JCGM 100:2008, 5.1.2; a common error: 5.2.2 with a correlation of 1
 */
export function scaleDifferenceU(one: ScaledValue, other: ScaledValue): number {
  const [first, second] = [one.scale?.relativeU ?? 0, other.scale?.relativeU ?? 0];
  const between = scaleBetween(one.scale, other.scale);
  if (between === 'shared') return first * Math.abs(one.value - other.value);
  return between === 'apart' ? Math.hypot(first * one.value, second * other.value) : 0;
}

/** A value with its whole uncertainty. */
type WithU = ScaledValue & { readonly u: number };

/**
 * The uncertainty of a value without what its scale puts into it.
 *
 * @param one - the value with its whole standard uncertainty [unit of the value]
 * @returns standard uncertainty of what is the value's own [unit of the value]
 *
 * Source: JCGM 100:2008, 5.1.2, solved for the other part
 */
export function ownU({ value, u, scale }: WithU): number {
  const ofScale = (scale?.relativeU ?? 0) * value;
  return ofScale === 0 ? u : u * Math.sqrt(Math.max(0, 1 - (ofScale / u) ** 2));
}

/**
 * Standard uncertainty of the difference of two values, each with its own error and those of the scales.
 *
 * @param one - the one value with its whole standard uncertainty [unit of the values]
 * @param other - the other value, likewise [unit of the values]
 * @returns standard uncertainty of one minus the other [unit of the values]
 *
 * Source: JCGM 100:2008, 5.2.2
 */
export function differenceU(one: WithU, other: WithU): number {
  return Math.hypot(ownU(one), ownU(other), scaleDifferenceU(one, other));
}
