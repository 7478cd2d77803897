import type { Bank } from './bank.ts';
import type { Correlations } from './correlations.ts';
import type { Path } from './path-sampling.ts';
import { type Rhythm, riseAt } from './rhythm.ts';
import type { BodySettings } from './settings.ts';
import { predictionCoefficients, type Whitened } from './whitening.ts';

/** One repetition of a sampled path with its own estimate of the rise, before anything is borrowed from the set. */
interface Sampled {
  readonly timeS: number;
  readonly template: number;
  /** least-squares rise and its variance [m, m2] */
  readonly riseM: number;
  readonly riseVariance: number;
  /** mean square left in its cells and of its shape for the expected rise [m2/s4] */
  readonly left: number;
  readonly shapeSquare: number;
  /** log of the time to the next start, when that follows without a pause */
  readonly logCycle: number | undefined;
  readonly restS: number;
}

/** how many repetitions the prior misfit counts as, in noise as large as the movement */
const PRIOR_MISFITS = 4;

/** steps after which the spread of the rises no longer changes */
const SPREAD_STEPS = 20;

interface WeightedLine {
  readonly level: number;
  readonly slope: number;
  readonly variance: number;
  readonly total: number;
}

/** Weighted line about a centre, its slope held near zero by a normal prior, its level near a prior level. */
function firmLine(
  points: readonly { x: number; y: number; weight: number }[],
  centre: number,
  prior: { level: number; levelWeight: number; slopeWeight: number },
): WeightedLine {
  let [s0, s1, s2, t0, t1] = [prior.levelWeight, 0, prior.slopeWeight, prior.levelWeight * prior.level, 0];
  for (const { x, y, weight } of points) {
    const dx = x - centre;
    s0 += weight;
    s1 += weight * dx;
    s2 += weight * dx * dx;
    t0 += weight * y;
    t1 += weight * y * dx;
  }
  const determinant = s0 * s2 - s1 * s1;
  const level = determinant > 0 ? (t0 * s2 - t1 * s1) / determinant : t0 / s0;
  const slope = determinant > 0 ? (t1 * s0 - t0 * s1) / determinant : 0;
  let squares = 0;
  let total = 0;
  for (const { x, y, weight } of points) {
    squares += weight * (y - level - slope * (x - centre)) ** 2;
    total += weight;
  }
  return { level, slope, variance: total > 0 ? squares / total : 0, total };
}

/** Standard deviation from a sum of squares, drawn to a prior one that counts as some observations. */
function firmSpread(variance: number, total: number, priorSpread: number, priorCount: number): number {
  return Math.sqrt((variance * total + priorSpread * priorSpread * priorCount) / (total + priorCount));
}

/**
 * A set's rhythm learnt from sampled paths: one round of empirical Bayes.
 *
 * Levels are lines over time whose slopes are held near zero: without that a trend feeds itself. Rises enter as their
 * own least-squares estimates, weighted by how well each is known. Spreads are drawn to their priors. The noise is what
 * the repetitions leave, outside other movement.
 *
 * @param signal - acceleration on the model grid [m/s2]
 * @param whitened - its prediction errors [m/s2]
 * @param correlations - with the bank [m2/s4]
 * @param bank - templates [m/s2 per m]
 * @param rhythm - what was believed [m, s, -]
 * @param paths - sampled with it [cells]
 * @param settings - priors [-]
 * @param timeOf - time of a cell's boundary [s]
 * @returns what is believed now; unchanged apart from the noise when no path holds a repetition [m, s, -]
 *
 * Source: ours; empirical Bayes after Robbins (1956), An empirical Bayes approach to statistics
 */
export function learnRhythm(
  signal: Float64Array,
  whitened: Whitened,
  correlations: Correlations,
  bank: Bank,
  rhythm: Rhythm,
  paths: readonly Path[],
  settings: BodySettings,
  timeOf: (cell: number) => number,
): Rhythm {
  const share = 1 / Math.max(1, paths.length);
  const sampled: Sampled[] = [];
  let pauses = 0;
  let followers = 0;
  let dips = 0;
  for (const path of paths) {
    path.repetitions.forEach((repetition, index) => {
      const one = describe(repetition.cell, repetition.template);
      const next = path.repetitions[index + 1];
      if (next !== undefined && next.follows) followers += share;
      else if (next !== undefined) pauses += share;
      if (bank.templates[repetition.template].dip) dips += share;
      if (one === undefined) return;
      const rate = settings.modelRateHz;
      const cells = next?.follows === true ? next.cell - repetition.cell : undefined;
      const startOf = (template: number): number => bank.templates[template].startS;
      const laterS = next === undefined ? 0 : startOf(next.template) - startOf(repetition.template);
      const logCycle = cells === undefined ? undefined : Math.log(cells / rate + laterS);
      const restS = cells === undefined ? 0 : (cells - bank.templates[repetition.template].cells) / rate;
      sampled.push({ ...one, logCycle, restS });
    });
  }
  const total = sampled.length * share;
  const noise = learnNoise(signal, whitened, bank, correlations, paths, rhythm, settings, timeOf, Math.min(1, total));
  if (total < 0.5) return { ...rhythm, ...noise };
  const centreS = sampled.reduce((sum, one) => sum + one.timeS, 0) / sampled.length;
  const spanS = Math.max(1, ...sampled.map((one) => 2 * Math.abs(one.timeS - centreS)));
  const slopeWeight = (change: number): number => (spanS / change) ** 2;

  const expected = rhythm.riseM;
  const spreadBefore = rhythm.riseSpread * expected;
  const rises = sampled.map((one) => ({
    x: one.timeS,
    y: Math.max(-0.5 * expected, Math.min(4 * expected, one.riseM)),
    weight: share / (spreadBefore ** 2 + one.riseVariance),
  }));
  const typical = settings.typicalRiseM;
  const rise = firmLine(rises, centreS, {
    level: typical,
    levelWeight: 1 / (settings.typicalRiseSpread * typical) ** 2,
    slopeWeight: slopeWeight(settings.riseDrift * expected),
  });
  const riseM = Math.max(settings.leastRiseM / 2, Math.min(settings.mostRiseM, rise.level));
  // where readings are less certain than the rises are alike one step comes a small part of the way: go on to the end
  let riseSpread = rhythm.riseSpread;
  for (let step = 0; step < SPREAD_STEPS; step++) {
    const before = (riseSpread * riseM) ** 2;
    // expected square of the true rise about the line: shrunken offset squared plus what remains unknown
    let riseSquares = 0;
    for (const one of sampled) {
      const gain = before / (before + one.riseVariance);
      const offset = gain * (one.riseM - riseM - rise.slope * (one.timeS - centreS));
      riseSquares += Math.min(offset * offset, riseM * riseM) + (1 - gain) * before;
    }
    riseSpread = firmSpread(riseSquares / sampled.length / (riseM * riseM), total, settings.riseSpread, 6);
  }

  const duration = firmLine(
    sampled.map((one) => ({ x: one.timeS, y: Math.log(bank.templates[one.template].durationS), weight: share })),
    centreS,
    {
      level: Math.log(settings.typicalDurationS),
      levelWeight: 0.1,
      slopeWeight: slopeWeight(settings.tempoDrift) * 0.02,
    },
  );
  const logDurationSpread = firmSpread(Math.min(duration.variance, 0.36), total, settings.durationSpread, 6);
  const plain = sampled.filter(({ template }) => {
    const { dip, shared } = bank.templates[template];
    return !dip && shared !== true;
  });
  const hold = firmLine(
    plain.map((one) => ({ x: 0, y: bank.templates[one.template].holdShare, weight: share })),
    0,
    { level: rhythm.holdShare, levelWeight: 0.5, slopeWeight: 1 },
  );
  const fall = firmLine(
    plain.map((one) => ({ x: 0, y: Math.log(bank.templates[one.template].fallRatio), weight: share })),
    0,
    { level: rhythm.logFallRatio, levelWeight: 1, slopeWeight: 1 },
  );
  const beats = sampled.filter((one) => one.logCycle !== undefined);
  const cycle = firmLine(
    beats.map((one) => ({ x: one.timeS, y: one.logCycle!, weight: share })),
    centreS,
    { level: duration.level + 0.2, levelWeight: 0.1, slopeWeight: slopeWeight(settings.tempoDrift) * 0.02 },
  );
  const rests = beats.reduce((sum, one) => sum + one.restS, 0) * share;
  let excess = 0;
  let shapes = 0;
  for (const one of sampled) {
    excess += Math.max(0, one.left - noise.noiseVariance) * share;
    shapes += one.shapeSquare * share;
  }
  // the misfit is what exceeds the noise: where noise is large, the excess is mostly chance
  const chance = (noise.noiseVariance * total) / Math.max(1e-12, shapes);
  const prior = (2 + chance * chance * PRIOR_MISFITS) / Math.max(1, total);
  const misfit = shapes > 0 ? Math.sqrt((excess / shapes + prior * settings.shapeMisfit ** 2) / (1 + prior)) : 0;
  return {
    centreS,
    riseM,
    riseSlope: rise.slope,
    riseSpread: Math.max(0.05, Math.min(0.5, riseSpread)),
    shapeMisfit: Math.max(0.08, Math.min(0.4, misfit)),
    logDuration: duration.level,
    logDurationSlope: duration.slope,
    logDurationSpread,
    holdShare: hold.level,
    holdSpread: firmSpread(hold.variance, total, 0.15, 4),
    logFallRatio: fall.level,
    logFallSpread: firmSpread(fall.variance, total, 0.3, 4),
    logCycle: cycle.level,
    logCycleSlope: cycle.slope,
    logCycleSpread: firmSpread(Math.min(cycle.variance, 0.36), cycle.total, settings.cycleSpread, 6),
    restS: (rests + 0.4 * 2) / (beats.length * share + 2),
    pauseShare: (pauses + settings.pauseShare * 20) / (pauses + followers + 20),
    dipShare: (dips + settings.dipShare * 20) / (total + 20),
    endShare: 2 / (total + settings.typicalSetSize / 2),
    ...noise,
  };

  function describe(cell: number, template: number): Omit<Sampled, 'logCycle' | 'restS'> | undefined {
    const index = cell * correlations.count + template;
    const energy = correlations.maskedEnergies?.[index] ?? correlations.energies[template];
    if (energy < 0.3 * correlations.energies[template]) return undefined;
    const { cells, highFromS, highToS } = bank.templates[template];
    const timeS = timeOf(cell) + (highFromS + highToS) / 2;
    const held = whitened.counts[cell + cells] - whitened.counts[cell];
    const square = whitened.squares[cell + cells] - whitened.squares[cell];
    const riseM = correlations.products[index] / energy;
    const level = riseAt(rhythm, timeOf(cell));
    if (bank.templates[template].dip) {
      const { noiseVariance } = rhythm;
      return { timeS, template, riseM, riseVariance: noiseVariance / energy, left: noiseVariance, shapeSquare: 0 };
    }
    const shapeSquare = energy / held;
    const variance = rhythm.noiseVariance + rhythm.shapeMisfit ** 2 * level * level * shapeSquare;
    const left = Math.max(0, square - riseM * riseM * energy) / Math.max(1, held - 2);
    return { timeS, template, riseM, riseVariance: variance / energy, left, shapeSquare: level * level * shapeSquare };
  }
}

/** Noise from what the mean of the sampled paths leaves unexplained, outside other movement. */
function learnNoise(
  signal: Float64Array,
  whitened: Whitened,
  bank: Bank,
  correlations: Correlations,
  paths: readonly Path[],
  rhythm: Rhythm,
  settings: BodySettings,
  timeOf: (cell: number) => number,
  inSet: number,
): { noiseVariance: number; noiseCoefficients: Float64Array } {
  const cells = signal.length;
  const residual = Float64Array.from(signal);
  const standing = Float64Array.from(whitened.present);
  const inside = new Float64Array(cells);
  const share = 1 / Math.max(1, paths.length);
  for (const path of paths) {
    for (const { cell, template } of path.repetitions) {
      const index = cell * correlations.count + template;
      const energy = correlations.maskedEnergies?.[index] ?? correlations.energies[template];
      if (energy <= 0) continue;
      const level = riseAt(rhythm, timeOf(cell));
      const own = rhythm.noiseVariance / energy;
      const gain = (rhythm.riseSpread * level) ** 2 / ((rhythm.riseSpread * level) ** 2 + own);
      const riseM = level + gain * (correlations.products[index] / energy - level);
      const { acceleration, openFrom, openTo } = bank.templates[template];
      for (let j = openFrom; j < openTo; j++) standing[cell + j] = Math.max(0, standing[cell + j] - share);
      for (let j = 0; j < acceleration.length; j++) {
        residual[cell + j] -= share * riseM * acceleration[j];
        inside[cell + j] += share;
      }
    }
    for (const [from, to] of path.other) for (let i = from; i < to; i++) standing[i] = Math.max(0, standing[i] - share);
  }
  // misfit of the shape counts as such and not as noise, as far as there is enough standing to learn from
  let outside = 0;
  for (let i = 0; i < cells; i++) outside += standing[i] * (1 - inside[i]);
  const wanted = 4 * settings.modelRateHz;
  const level2 = rhythm.riseM * rhythm.riseM;
  const shapeSquare = rhythm.shapeMisfit ** 2 * level2 * typicalShapeSquare(bank, rhythm);
  const trust = Math.max(0.02, Math.min(1, rhythm.noiseVariance / (rhythm.noiseVariance + shapeSquare)));
  if (outside > wanted) for (let i = 0; i < cells; i++) standing[i] *= 1 - inside[i] * (1 - trust);
  let held = 0;
  for (let i = 0; i < cells; i++) held += standing[i];
  if (held < wanted) return { noiseVariance: rhythm.noiseVariance, noiseCoefficients: rhythm.noiseCoefficients };
  // a grid of shapes and cells cannot follow a movement more closely than this, however quiet the sensor
  const floor = inSet * settings.gridMisfit ** 2 * level2 * typicalShapeSquare(bank, rhythm);
  const { coefficients, variance } = predictionCoefficients(residual, standing, settings.noiseOrder, floor);
  return { noiseVariance: Math.max(variance, 1e-8), noiseCoefficients: coefficients };
}

/** Mean square acceleration of a repetition of unit rise and the set's duration. */
function typicalShapeSquare(bank: Bank, rhythm: Rhythm): number {
  const durationS = Math.exp(rhythm.logDuration);
  let best = bank.templates[0];
  for (const one of bank.templates) {
    if (Math.abs(one.durationS - durationS) < Math.abs(best.durationS - durationS)) best = one;
  }
  return best.acceleration.reduce((sum, value) => sum + value * value, 0) / best.cells;
}
