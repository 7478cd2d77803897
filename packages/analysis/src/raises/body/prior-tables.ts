import type { Bank } from './bank.ts';
import type { Rhythm } from './rhythm.ts';
import type { BodySettings } from './settings.ts';

/** Prior log probabilities that the paths need, tabulated over a few spans of time because levels may drift. */
export interface PriorTables {
  readonly spans: number;
  /** log prior of each template, at span * templates + k [nat] */
  readonly templates: Float64Array;
  /** log prior of a rest of g cells after a repetition of class c, at (span * classes + c) * rests + g [nat] */
  readonly rests: Float64Array;
  readonly restCells: number;
}

/** share of repetitions whose duration and hold follow the broad prior instead of the set's */
const ODD_SHAPE_SHARE = 0.04;
/** share of repetitions that have the shape learnt from the set, once there is one */
const SHARED_SHAPE_SHARE = 0.6;
/** log of how much longer a repetition with a dip at the top lasts */
const DIP_LENGTHENS = 0.22;
/** share of the rests that follow the broad prior instead of the set's beat */
const ODD_REST_SHARE = 0.1;
/** spread of the cycle above which nothing is known of the beat yet */
const VAGUE = 0.3;
/** longest rest that is not a pause [s] */
const LONGEST_REST_S = 2.5;

function normalLog(value: number, mean: number, spread: number): number {
  const z = (value - mean) / spread;
  return -0.5 * z * z - Math.log(spread);
}

function normalise(logs: Float64Array, from: number, to: number): void {
  let most = -Infinity;
  for (let i = from; i < to; i++) most = Math.max(most, logs[i]);
  if (most === -Infinity) return;
  let sum = 0;
  for (let i = from; i < to; i++) sum += Math.exp(logs[i] - most);
  const total = most + Math.log(sum);
  for (let i = from; i < to; i++) logs[i] -= total;
}

/** Log density of each template, so that grids of unequal fineness carry equal weight: by local spacing of durations. */
function cellWeights(bank: Bank): Float64Array {
  const logs = bank.templates.map((template) => Math.log(template.durationS));
  const weights = new Float64Array(logs.length);
  const kind = (k: number): string => `${bank.templates[k].dip} ${bank.templates[k].shared === true}`;
  for (let k = 0; k < logs.length; k++) {
    let near = 0;
    for (let j = 0; j < logs.length; j++) {
      const z = (logs[j] - logs[k]) / 0.1;
      if (kind(j) === kind(k)) near += Math.exp(-0.5 * z * z);
    }
    weights[k] = -Math.log(near);
  }
  return weights;
}

/**
 * Prior tables of a rhythm over a bank of templates.
 *
 * @param bank - templates and classes [-]
 * @param rhythm - what is believed about the set [s, -]
 * @param settings - broad priors [s, -]
 * @param spanCentresS - middle of each span of time [s]
 * @returns normalised log probabilities, see {@link PriorTables} [nat]
 *
 * Source: ours
 */
export function priorTables(
  bank: Bank,
  rhythm: Rhythm,
  settings: BodySettings,
  spanCentresS: readonly number[],
): PriorTables {
  const count = bank.templates.length;
  const classes = bank.classCells.length;
  const spans = spanCentresS.length;
  const restCells = Math.round(LONGEST_REST_S * settings.modelRateHz) + 1;
  const templates = new Float64Array(spans * count);
  const rests = new Float64Array(spans * classes * restCells);
  const weights = cellWeights(bank);
  const broadMean = Math.log(settings.typicalDurationS);
  spanCentresS.forEach((centreS, span) => {
    const logDuration = rhythm.logDuration + rhythm.logDurationSlope * (centreS - rhythm.centreS);
    const own = new Float64Array(count);
    const broad = new Float64Array(count);
    bank.templates.forEach((template, k) => {
      const duration = Math.log(template.durationS);
      const ratio = Math.log(template.fallRatio);
      broad[k] = weights[k] + normalLog(duration, broadMean, settings.typicalDurationSpread);
      if (template.dip) {
        own[k] =
          weights[k] + normalLog(duration, logDuration + DIP_LENGTHENS, Math.max(0.15, rhythm.logDurationSpread));
        return;
      }
      own[k] = weights[k] + normalLog(duration, logDuration, rhythm.logDurationSpread);
      if (template.shared === true) return;
      own[k] += normalLog(template.holdShare, rhythm.holdShare, rhythm.holdSpread);
      own[k] += normalLog(ratio, rhythm.logFallRatio, rhythm.logFallSpread);
      broad[k] += normalLog(ratio, 0, 0.4);
    });
    mixByKind(bank, own, rhythm.dipShare);
    mixByKind(bank, broad, settings.dipShare);
    for (let k = 0; k < count; k++) {
      const sum = (1 - ODD_SHAPE_SHARE) * Math.exp(own[k]) + ODD_SHAPE_SHARE * Math.exp(broad[k]);
      templates[span * count + k] = Math.log(sum);
    }
    const logCycle = rhythm.logCycle + rhythm.logCycleSlope * (centreS - rhythm.centreS);
    const starts = startsByClass(bank, own);
    for (let c = 0; c < classes; c++) {
      const from = (span * classes + c) * restCells;
      const beat = new Float64Array(restCells);
      const paced = new Float64Array(restCells);
      const free = new Float64Array(restCells);
      const logPaced = logCycle + starts.logDurations[c] - logDuration;
      const pacedSpread = Math.min(rhythm.logCycleSpread, settings.paceSpread);
      for (let g = 0; g < restCells; g++) {
        const restS = g / settings.modelRateHz;
        const cellsS = (bank.classCells[c] + g) / settings.modelRateHz;
        const cycle = Math.log(cellsS + starts.nextS - starts.ownS[c]);
        free[g] = -restS / Math.max(0.1, rhythm.restS);
        beat[g] = normalLog(cycle, logCycle, rhythm.logCycleSpread) - cycle + 0.5 * free[g];
        paced[g] = normalLog(cycle, logPaced, pacedSpread) - cycle;
      }
      for (const logs of [beat, paced, free]) normalise(logs, 0, restCells);
      const pacedShare = rhythm.logCycleSpread < VAGUE ? settings.pacedShare : 0;
      const { stayShare } = settings;
      for (let g = 0; g < restCells; g++) {
        const inBeat = (1 - pacedShare) * Math.exp(beat[g]) + pacedShare * Math.exp(paced[g]);
        const odd = ODD_REST_SHARE * Math.exp(free[g]) + stayShare / restCells;
        rests[from + g] = Math.log((1 - ODD_REST_SHARE - stayShare) * inBeat + odd);
      }
    }
  });
  return { spans, templates, rests, restCells };
}

/**
 * Where the movement begins within the templates of each class and how long it usually lasts, by the prior of the templates.
 *
 * Templates learnt from the set have some standing at either end, those of the grid have none: a beat goes from start to
 * start of the movement, not of the cells.
 */
function startsByClass(
  bank: Bank,
  logPriors: Float64Array,
): { ownS: Float64Array; nextS: number; logDurations: Float64Array } {
  const classes = bank.classCells.length;
  const ownS = new Float64Array(classes);
  const logDurations = new Float64Array(classes);
  let nextS = 0;
  let total = 0;
  for (let c = 0; c < classes; c++) {
    const members = bank.templates.slice(bank.classStart[c], bank.classStart[c + 1]);
    const priors = members.map((_, i) => Math.exp(logPriors[bank.classStart[c] + i]));
    const plain = members.every((one) => one.dip) ? priors : priors.map((prior, i) => (members[i].dip ? 0 : prior));
    const weight = Math.max(
      1e-300,
      plain.reduce((sum, prior) => sum + prior, 0),
    );
    members.forEach((one, i) => {
      ownS[c] += (plain[i] * one.startS) / weight;
      logDurations[c] += (plain[i] * Math.log(one.durationS)) / weight;
      nextS += priors[i] * one.startS;
      total += priors[i];
    });
  }
  return { ownS, nextS: total > 0 ? nextS / total : 0, logDurations };
}

/** Scales the templates of each kind so that the kinds have their shares, and all sum to one. */
function mixByKind(bank: Bank, logs: Float64Array, dipShare: number): void {
  const kindOf = (k: number): number => (bank.templates[k].dip ? 1 : bank.templates[k].shared === true ? 2 : 0);
  const learnt = bank.templates.some((template) => template.shared === true);
  const shared = learnt ? SHARED_SHAPE_SHARE : 0;
  [(1 - dipShare) * (1 - shared), dipShare, (1 - dipShare) * shared].forEach((share, kind) => {
    let sum = 0;
    let most = -Infinity;
    for (let k = 0; k < logs.length; k++) if (kindOf(k) === kind) most = Math.max(most, logs[k]);
    if (most === -Infinity) return;
    for (let k = 0; k < logs.length; k++) if (kindOf(k) === kind) sum += Math.exp(logs[k] - most);
    const shift = Math.log(share) - most - Math.log(sum);
    for (let k = 0; k < logs.length; k++) if (kindOf(k) === kind) logs[k] += shift;
  });
}
