import type { ForceScale } from './force-scale.ts';

/** A result of one side on one visit, with what is needed to set it beside another one. */
export interface MeasuredValue {
  /** null where nothing was measured [unit] */
  readonly value: number | null;
  /** standard uncertainty from one test to the next, that of the scale included; null where no error is known [unit] */
  readonly u: number | null;
  /** UCUM code */
  readonly unit: string;
  /** what the figure is of and how it was taken, such as net or gross force; only like is compared with like */
  readonly convention: string;
  /** what forces were counted by; left out where nothing was, as with repetitions */
  readonly scale?: ForceScale;
}

/** A figure with its 95 % interval. */
export interface Bounded {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}
