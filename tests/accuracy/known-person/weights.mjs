// Logarithm of the weight of every repetition that could be in the set: chance of its pace, height and bottom after it, times
// the likelihood ratio of the signal with it and without it (Turin 1960, IRE Trans Inf Theory 6:311, for known noise).
import { bottoms } from './habits.mjs';
import { numbersOfWay, toldShare, wavesOf, waysAt } from './moves.mjs';

/** Usual heights are worked out at this many stages of the set. */
const stages = 60;

/** Terms smaller than the largest by this factor's logarithm are left out. */
const negligible = 30;

/** How well each wave fits the signal when it begins at step `t`, written into `fits`. */
function fitAt(fits, waves, heard, t) {
  for (let m = 0; m < waves.length; m++) {
    const wave = waves[m];
    const length = Math.min(wave.length, heard.length - t);
    let sum = 0;
    for (let i = 0; i < length; i++) sum += wave[i] * heard[t + i];
    fits[m] = sum;
  }
}

/** Logarithm of the weight of all ways together; `logs` is overwritten. */
function logSumOfWays(ways, fits, logs) {
  let highest = -Infinity;
  for (let way = 0; way < logs.length; way++) {
    const from = way * numbersOfWay;
    let log = ways[from + fits.length];
    for (let m = 0; m < fits.length; m++) log += ways[from + m] * fits[m];
    logs[way] = log;
    if (log > highest) highest = log;
  }
  let sum = 0;
  for (const log of logs) if (log > highest - negligible) sum += Math.exp(log - highest);
  return highest + Math.log(sum);
}

/**
 * The problem that `series.mjs` solves: by step of the start, the paces that occur with weights by bottom before and, within that, bottom after;
 * by pace, how long the moves last and when the next repetition may begin; when the first may begin and the last may end.
 */
export function chainOf(placement, set, heardSet, habits, wayGone) {
  const { heard, stepS, lengthS } = heardSet;
  const { person, paces, quietBeforeS, quietAfterS } = habits;
  const scale = toldShare(placement, person, set.faults);
  const banks = paces.map((pace) => ({ ...wavesOf(pace, person, heardSet, wayGone), byStage: new Map() }));
  const waysOf = (j, stage) => {
    const { byStage, products } = banks[j];
    if (!byStage.has(stage)) {
      byStage.set(stage, waysAt(habits, paces[j], products, habits.usualPitchAt(stage / stages), scale));
    }
    return byStage.get(stage);
  };
  const logPaces = Array.from({ length: stages + 1 }, (_, stage) => habits.logPacesAt(stage / stages));
  const first = quietBeforeS.map((timeS) => Math.round(timeS / stepS));
  const last = quietAfterS.map((timeS) => Math.round((lengthS - timeS) / stepS)).reverse();
  const moveSteps = paces.map(({ upS, holdS, downS }) => Math.round((upS + holdS + downS) / stepS));
  const fits = new Float64Array(numbersOfWay - 1);
  const ofWays = new Float64Array(habits.heights.length);
  const starts = Array.from({ length: last[1] + 1 }, (_, t) => {
    if (t < first[0]) return [];
    const stage = Math.round(stages * habits.progressAt(t * stepS));
    return paces.flatMap((_, j) => {
      const logPace = logPaces[stage][j];
      if (logPace === -Infinity || t + moveSteps[j] > last[1]) return [];
      fitAt(fits, banks[j].waves, heard, t);
      const ways = waysOf(j, stage);
      const logs = new Float64Array(bottoms.length ** 2);
      for (let n = 0; n < logs.length; n++) {
        const after = n % bottoms.length;
        const sum = logSumOfWays(ways[(n - after) / bottoms.length][after], fits, ofWays);
        logs[n] = sum + logPace + habits.logBottoms[after];
      }
      return [{ pace: j, logs }];
    });
  });
  return {
    starts,
    levels: bottoms.length,
    moveSteps,
    usualNext: paces.map((pace) => usualNext(pace, habits.usualStay, stepS)),
    lateNext: habits.lateStays.map(({ fromS, toS, share }) => {
      const [from, to] = [fromS, toS].map((timeS) => Math.round(timeS / stepS));
      return { from, to, log: Math.log(share / (to - from)) };
    }),
    mayBegin: (t) => t >= first[0] && t <= first[1],
    mayEnd: (end) => end >= last[0] && end <= last[1],
  };
}

/** Steps from the start to the usual next start, with their logarithmic chances. */
function usualNext({ paceS, upS, holdS, downS, lowS }, { log, spreadS }, stepS) {
  const middle = (upS + holdS + downS + lowS) / stepS;
  const spread = Math.max(0.4, spreadS(paceS) / stepS);
  const from = Math.max(Math.round((upS + holdS + downS) / stepS), Math.floor(middle - 2.5 * spread));
  const steps = Array.from({ length: Math.ceil(middle + 2.5 * spread) - from + 1 }, (_, i) => from + i);
  const weights = steps.map((step) => Math.exp(-(((step - middle) / spread) ** 2) / 2));
  const sum = weights.reduce((all, weight) => all + weight, 0);
  return steps.map((step, i) => ({ steps: step, log: log + Math.log(weights[i] / sum) }));
}
