import { medianAbsoluteDeviation } from '../signal/order-statistics.ts';
import type { PullRule } from './effort-settings.ts';

/** Where a pull lies among the values of a slow signal: half of its own size is crossed at `from` and before `to`. */
export interface PullSpan {
  readonly topIndex: number;
  readonly fromIndex: number;
  readonly toIndex: number;
  /** least values beside it */
  readonly valleyBefore: number;
  readonly valleyAfter: number;
  /** why it is none */
  readonly rejected: null | 'knock' | 'cut-off' | 'too-small';
}

interface Hump {
  top: number;
  before: number;
  after: number;
}

/** Tops that rise by the given share of their own size above the valleys on both sides; an end of the signal is a valley. */
function findHumps(rise: Float64Array, least: number, ownRise: number): Hump[] {
  const humps: Hump[] = [];
  let valley = 0;
  let open: Hump | undefined;
  for (let i = 0; i < rise.length; i++) {
    if (open === undefined) {
      if (rise[i] < rise[valley]) valley = i;
      if (rise[i] >= least && rise[i] - Math.max(0, rise[valley]) >= ownRise * rise[i]) {
        open = { top: i, before: valley, after: rise.length - 1 };
      } else if (i === 0 && rise[i] >= least) open = { top: 0, before: 0, after: rise.length - 1 };
      continue;
    }
    if (rise[i] > rise[open.top]) open.top = i;
    else if (rise[i] <= (1 - ownRise) * rise[open.top]) {
      humps.push(open);
      valley = i;
      open = undefined;
    }
  }
  if (open !== undefined) humps.push(open);
  humps.forEach((hump, k) => {
    const until = k + 1 < humps.length ? humps[k + 1].top : rise.length - 1;
    hump.after = hump.top;
    for (let i = hump.top; i <= until; i++) if (rise[i] < rise[hump.after]) hump.after = i;
  });
  return humps;
}

/**
 * Pulls in a slow signal: humps that are large, long, and stand on their own. A recording that begins or ends above half of
 * a pull has cut it off.
 *
 * @param rise - slow course above the resting level, pulls upwards, n >= 1 [N or N.m]
 * @param intervalS - time between two values [s]
 * @param least - smallest pull [unit of rise]
 * @param rule - how pulls are found, see {@link PullRule} [-]
 * @returns spans in time order, those that are none among them with the reason [index]
 *
 * Source: ours
 */
export function findPulls(rise: Float64Array, intervalS: number, least: number, rule: PullRule): PullSpan[] {
  const quiet = rise.filter((value) => value < least);
  const noise = quiet.length > 0 ? medianAbsoluteDeviation(quiet) : 0;
  const spans = findHumps(rise, Math.max(least, rule.leastNoise * noise), rule.ownRise).map((hump): PullSpan => {
    const half = rise[hump.top] / 2;
    let from = hump.top;
    while (from > 0 && rise[from - 1] > half) from--;
    let to = hump.top + 1;
    while (to < rise.length && rise[to] > half) to++;
    const cutOff = from === 0 || to === rise.length;
    const rejected = cutOff ? 'cut-off' : (to - from) * intervalS < rule.leastS ? 'knock' : null;
    return {
      topIndex: hump.top,
      fromIndex: from,
      toIndex: to,
      valleyBefore: hump.before,
      valleyAfter: hump.after,
      rejected,
    };
  });
  const greatest = Math.max(0, ...spans.filter(({ rejected }) => rejected === null).map((span) => rise[span.topIndex]));
  return spans.map((span) =>
    span.rejected === null && rise[span.topIndex] < rule.leastShare * greatest
      ? { ...span, rejected: 'too-small' as const }
      : span,
  );
}
