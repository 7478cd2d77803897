import { median } from '../../signal/order-statistics.ts';
import type { Bank } from './bank.ts';
import type { Path } from './path-sampling.ts';
import type { ModelSignal } from './round.ts';
import { type FittedSet, fitSet } from './set-model.ts';
import type { BodySettings } from './settings.ts';

/** A set and the signal that it was fitted to: the one that was given, or that without its knocks. */
export interface FittedSignal {
  readonly signal: ModelSignal;
  readonly fitted: FittedSet;
}

/** Cells about each one that belong to a knock too: it is spread by the low-pass [-]; ours. */
const REACH = 1;

/** Other movement of a path within its set or right beside it: steps before and after a set are further away. */
function otherInSet(path: Path, bank: Bank, reach: number): Path['other'] {
  const [first, last] = [path.repetitions[0], path.repetitions.at(-1)];
  if (first === undefined || last === undefined) return [];
  const beginsAfter = last.cell + bank.templates[last.template].cells + reach;
  return path.other.filter(([from, to]) => to >= first.cell - reach && from <= beginsAfter);
}

/** Cells of brief other movement, as most paths have it, that are unlike any noise, and their neighbours. */
function knockCells(fitted: FittedSet, cells: number, settings: BodySettings): Set<number> {
  const { paths, bank, whitened, rhythm } = fitted;
  const longest = Math.round(settings.longestKnockS * settings.modelRateHz);
  const reach = Math.round(settings.knockReachS * settings.modelRateHz);
  const held = new Float64Array(cells);
  for (const path of paths) {
    for (const [from, to] of otherInSet(path, bank, reach)) {
      if (to - from > longest) continue;
      for (let i = from; i < to; i++) held[i] += 1 / paths.length;
    }
  }
  const least = settings.knockThreshold * Math.sqrt(rhythm.noiseVariance);
  const knocks = new Set<number>();
  held.forEach((share, i) => {
    if (share <= 0.5 || Math.abs(whitened.samples[i]) <= least) return;
    for (let j = Math.max(0, i - REACH); j <= Math.min(cells - 1, i + REACH); j++) knocks.add(j);
  });
  return knocks;
}

function withoutKnocks({ signal, fitted }: FittedSignal, settings: BodySettings, isQuick: boolean): FittedSignal {
  const knocks = knockCells(fitted, signal.acceleration.length, settings);
  if (knocks.size === 0) return { signal, fitted };
  const present = Uint8Array.from(signal.present);
  const acceleration = Float64Array.from(signal.acceleration);
  for (const cell of knocks) {
    present[cell] = 0;
    acceleration[cell] = 0;
  }
  const without = { ...signal, present, acceleration };
  const again = fitSet(without, settings, isQuick);
  return again.evidence > fitted.evidence + settings.leastKnockGain * knocks.size
    ? { signal: without, fitted: again }
    : { signal, fitted };
}

/** Impacts for each repetition from which on they are the way of this person to move [-]; ours. */
const OFTEN = 0.5;

/**
 * The signal with the cells that impacts disturb, where impacts belong to the repetitions or none were found without them;
 * undefined where they are chance.
 */
function withImpacts({ signal, fitted }: FittedSignal): ModelSignal | undefined {
  const { disturbed } = signal;
  const impacts = signal.impacts.reduce((sum, is) => sum + is, 0);
  const repetitions = median(fitted.paths.map((path) => path.repetitions.length));
  if (disturbed === undefined || impacts === 0 || impacts < OFTEN * repetitions) return undefined;
  const present = signal.present.map((is, i) => (Number.isNaN(disturbed[i]) ? is : 1));
  const acceleration = signal.acceleration.map((value, i) => (Number.isNaN(disturbed[i]) ? value : disturbed[i]));
  return { ...signal, acceleration, present };
}

/**
 * A set fitted to a recording, across knocks.
 *
 * A repetition that ends with a knock, as when the heel lands, is like no shape there, and a path can only call the knock
 * other movement and do without the repetition. So brief other movement is left out as if it had not been recorded and
 * the set is fitted once more. That holds where the set stands out more without it. What was taken for impacts and left out
 * before may be a quick push-off: where the set stands out more with it, that holds.
 *
 * @param signal - acceleration on the model grid [m/s2]
 * @param settings - priors and sizes [-]
 * @param isQuick - whether only quick repetitions are looked for [-]
 * @returns the set, and the signal that it was fitted to [-]
 *
 * Source: ours; leaving out what fits no model, e.g. Rousseeuw & Leroy (1987), Robust regression and outlier detection
 */
export function fitAcrossKnocks(signal: ModelSignal, settings: BodySettings, isQuick = false): FittedSignal {
  const left = { signal, fitted: fitSet(signal, settings, isQuick) };
  const whole = withImpacts(left);
  if (whole === undefined) return withoutKnocks(left, settings, isQuick);
  const kept = { signal: whole, fitted: fitSet(whole, settings, isQuick) };
  return withoutKnocks(kept.fitted.evidence > left.fitted.evidence ? kept : left, settings, isQuick);
}
