// How well the onset of a fast effort can be told at all: the mean of its posterior for an observer who is told the family of
// the rise, how its figures are drawn, the resting level, the noise and when each sample was taken, on recordings without
// knocks, dips, creeping tension and losses. No method that has to find these out does better on the whole.
//   node tests/accuracy/pulls-limit.mjs [--traces N] [--from SEED] [--levels field] [--rates 80,1000]
// Source: adaptive Metropolis sampling, Haario, Saksman & Tamminen (2001), Bernoulli 7:223-242, from memory.
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { quantile } from './statistics.mjs';

/** Samples looked at before and after the onset [s]; what hides the force while it rises is drawn at so many nodes. */
const beforeS = 0.1;
const afterS = 0.3;
const nodeCount = 16;
const tremorHz = [8, 12];
const slowHz = 1.5;

/** A stream of numbers between 0 and 1: Park & Miller (1988), Comm ACM 31:1192-1201. */
function randomFrom(seed) {
  let state = (seed % 2_147_483_646) + 1;
  const uniform = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  const gaussian = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, gaussian };
}

/** Lower root of a symmetric matrix, L L' = matrix, as rows; rounding below zero counts as none. */
function rootOf(matrix) {
  const size = matrix.length;
  const root = matrix.map(() => new Float64Array(size));
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i][j];
      for (let k = 0; k < j; k++) sum -= root[i][k] * root[j][k];
      if (i === j) root[i][i] = Math.sqrt(Math.max(sum, 1e-12));
      else root[i][j] = sum / root[j][j];
    }
  }
  return root;
}

/** Covariance of the share by which a force is unsteady: slow noise through two poles, and a tremor of unknown frequency. */
function unsteadiness({ unsteadiness: slow, tremor }, lagS) {
  const a = 2 * Math.PI * slowHz * Math.abs(lagS);
  const steps = 16;
  let wave = 0;
  for (let k = 0; k < steps; k++) {
    const hz = tremorHz[0] + ((k + 0.5) / steps) * (tremorHz[1] - tremorHz[0]);
    wave += Math.cos(2 * Math.PI * hz * lagS) / steps;
  }
  // the size of the tremor itself varies by 0.4
  return slow * slow * (1 + a) * Math.exp(-a) + tremor * tremor * 1.16 * wave;
}

/**
 * Logarithm of the probability of samples, for the forces that are expected: white noise of `sd` and unsteadiness in
 * proportion to the force, by Woodbury's identity on nodes between which it runs straight.
 */
export function likelihoodOf({ timesS, samples, sd, faults }) {
  const stepS = (timesS.at(-1) - timesS[0]) / (nodeCount - 1);
  const nodes = Array.from({ length: nodeCount }, (_, k) => k * stepS);
  const root = rootOf(
    nodes.map((one, i) => nodes.map((two, j) => unsteadiness(faults, one - two) + (i === j ? 1e-10 : 0))),
  );
  const places = Array.from(timesS, (timeS) => Math.min(nodeCount - 1.000001, (timeS - timesS[0]) / stepS));
  const white = sd * sd;
  return (forces) => {
    const diagonal = new Float64Array(nodeCount);
    const beside = new Float64Array(nodeCount);
    const along = new Float64Array(nodeCount);
    let squares = 0;
    for (let i = 0; i < forces.length; i++) {
      const residual = samples[i] - forces[i];
      squares += residual * residual;
      if (forces[i] === 0) continue;
      const node = Math.floor(places[i]);
      const [low, high] = [forces[i] * (node + 1 - places[i]), forces[i] * (places[i] - node)];
      diagonal[node] += low * low;
      diagonal[node + 1] += high * high;
      beside[node] += low * high;
      along[node] += low * residual;
      along[node + 1] += high * residual;
    }
    const spread = (column) =>
      column.map(
        (value, k) =>
          diagonal[k] * value + beside[k] * (column[k + 1] ?? 0) + (k > 0 ? beside[k - 1] * column[k - 1] : 0),
      );
    const columns = nodes.map((_, j) => root.map((row) => row[j]));
    const spreads = columns.map(spread);
    const dot = (one, two) => one.reduce((sum, value, k) => sum + value * two[k], 0);
    const inner = rootOf(columns.map((one, i) => spreads.map((two, j) => dot(one, two) / white + (i === j ? 1 : 0))));
    const seen = columns.map((one) => dot(one, along) / white);
    let explained = 0;
    let determinant = 0;
    const solved = [];
    for (let i = 0; i < nodeCount; i++) {
      let value = seen[i];
      for (let k = 0; k < i; k++) value -= inner[i][k] * solved[k];
      solved.push(value / inner[i][i]);
      explained += solved[i] * solved[i];
      determinant += Math.log(inner[i][i]);
    }
    return -0.5 * (squares / white - explained) - determinant;
  };
}

/**
 * Mean and standard deviation of the first of some unknowns given their log probability, -Infinity where it cannot be, from
 * adaptive Metropolis steps that begin at a point with spreads as a first guess.
 */
export function posteriorOfFirst(logProbability, first, spreads, { steps, seed }) {
  const { uniform, gaussian } = randomFrom(seed);
  const size = first.length;
  let here = Float64Array.from(first);
  let probability = logProbability(here);
  let root = rootOf(spreads.map((spread, i) => spreads.map((_, j) => (i === j ? (0.3 * spread) ** 2 : 0))));
  const middle = Float64Array.from(first);
  const squares = spreads.map((spread, i) =>
    Float64Array.from(spreads, (_, j) => (i === j ? 30 * (0.3 * spread) ** 2 : 0)),
  );
  let count = 30;
  let scale = 2.38 / Math.sqrt(size);
  let [sum, sumSquares, kept] = [0, 0, 0];
  for (let step = 0; step < steps; step++) {
    const draw = Array.from({ length: size }, gaussian);
    const next = here.map((value, i) => value + scale * root[i].reduce((all, one, j) => all + one * (draw[j] ?? 0), 0));
    const there = logProbability(next);
    const accepted = Math.log(uniform()) < there - probability;
    if (accepted) [here, probability] = [next, there];
    if (step < steps / 3) {
      // a quarter of the steps are taken, about what is best for few unknowns
      scale *= Math.exp(((accepted ? 1 : 0) - 0.25) / Math.sqrt(1 + step / 10));
      count += 1;
      const off = here.map((value, i) => value - middle[i]);
      for (let i = 0; i < size; i++) middle[i] += off[i] / count;
      for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) squares[i][j] += off[i] * (here[j] - middle[j]);
      if (step % 50 === 49) root = rootOf(squares.map((row) => row.map((value) => value / count)));
    } else {
      kept += 1;
      sum += here[0] - first[0];
      sumSquares += (here[0] - first[0]) ** 2;
    }
  }
  const mean = sum / kept;
  return { mean: first[0] + mean, sd: Math.sqrt(Math.max(0, sumSquares / kept - mean * mean)) };
}

/** Ranges from which the figures of a fast rise are drawn, by the name that they have in its shape. */
const scaleOf = { power: 1, exponential: 1, sigmoid: 0.85, smooth: 2.4, 'second-order': 0.5, 'take-up': 0.9 };
function drawnFrom(family) {
  const riseS = [0.06 * scaleOf[family], 0.2 * scaleOf[family]];
  if (family === 'sigmoid') return { riseS, power: [2, 3.2] };
  if (family === 'power') return { riseS, power: [1, 2.2] };
  if (family !== 'take-up') return { riseS };
  return { riseS, power: [1, 2.2], takeUpS: [0.05, 0.15], takeUpShare: [0.02, 0.1], takeUpPower: [1.2, 2.6] };
}

/** What stays of the faults: noise, steps of the converter, unsteadiness, tremor, yielding. */
const told = { pretensionShare: 0, dipShare: 0, knocksPerMinute: 0, stampJitter: 0, lossShare: 0, gapCount: 0 };

/** The onset as the observer finds it, for one true effort of a recording. */
function foundOnset({ trace, faults }, effort, shareRisen, { steps, seed }) {
  const { timesS, channels } = trace.groups[0];
  const inside = [];
  for (let i = 0; i < timesS.length; i++) {
    if (timesS[i] > effort.onsetS - beforeS && timesS[i] < effort.onsetS + afterS) inside.push(i);
  }
  const times = inside.map((i) => timesS[i]);
  const samples = inside.map(
    (i) => channels[0].samples[i] - faults.restLoadN - faults.offsetN - (faults.driftN * timesS[i]) / 60,
  );
  const stepN = (2 * faults.rangeN) / 2 ** faults.resolutionBits;
  const probabilityOf = likelihoodOf({
    timesS: times,
    samples,
    sd: Math.hypot(faults.noiseN, stepN / Math.sqrt(12)),
    faults,
  });
  const ranges = Object.entries(drawnFrom(effort.rise.family));
  const heldS = effort.endS - effort.releaseS - effort.onsetS;
  const logProbability = ([onsetS, plateauN, ...figures]) => {
    const rise = { ...effort.rise };
    for (const [k, [name, [low, high]]] of ranges.entries()) {
      if (figures[k] < low || figures[k] > high) return -Infinity;
      rise[name] = figures[k];
    }
    if (plateauN < 400 || plateauN > 1600 || Math.abs(onsetS - effort.onsetS) > beforeS) return -Infinity;
    return probabilityOf(
      times.map((timeS) => {
        const since = timeS - onsetS;
        return since <= 0 ? 0 : plateauN * shareRisen(rise, since) * (1 - (faults.yielding * since) / heldS);
      }),
    );
  };
  const first = [effort.onsetS, effort.plateauN, ...ranges.map(([name]) => effort.rise[name])];
  const spreads = [0.004, 0.01 * effort.plateauN, ...ranges.map(([, [low, high]]) => 0.1 * (high - low))];
  return posteriorOfFirst(logProbability, first, spreads, { steps, seed }).mean;
}

/** p95 of the onset errors of the observer [ms], all forms together and each, on fast recordings of one level and rate. */
export function onsetLimit({ simulation, level, sampleRateHz, traces, from, steps = 3000 }) {
  const byFamily = new Map();
  for (let seed = from; seed < from + traces; seed++) {
    const pulls = simulation.simulatePulls({ kind: 'fast', level, seed, sampleRateHz, faults: told });
    pulls.truth.efforts.forEach((effort, k) => {
      const onsetS = foundOnset(pulls, effort, simulation.shareRisen, { steps, seed: 100 * seed + k });
      const { family } = effort.rise;
      byFamily.set(family, [...(byFamily.get(family) ?? []), 1000 * Math.abs(onsetS - effort.onsetS)]);
    });
  }
  const p95 = (errors) => quantile(errors, 0.95);
  const all = [...byFamily.values()].flat();
  return {
    efforts: all.length,
    p95Ms: p95(all),
    families: Object.fromEntries([...byFamily].map(([family, errors]) => [family, p95(errors)])),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({
    options: {
      traces: { type: 'string', default: '60' },
      from: { type: 'string', default: '61001' },
      levels: { type: 'string', default: 'field' },
      rates: { type: 'string', default: '80,200,1000,2000' },
    },
  });
  const simulation = await import('@surae/simulation');
  const names = [...simulation.RISE_FAMILIES].sort();
  console.log(`| least onset p95 ms | rate Hz | efforts | all | ${names.join(' | ')} |`);
  console.log(`|${'---|'.repeat(4 + names.length)}`);
  for (const level of values.levels.split(',')) {
    for (const sampleRateHz of values.rates.split(',').map(Number)) {
      const request = { simulation, level, sampleRateHz, traces: Number(values.traces), from: Number(values.from) };
      const { efforts, p95Ms, families } = onsetLimit(request);
      const cells = names.map((name) => families[name]?.toFixed(1) ?? '');
      console.log(`| ${[level, sampleRateHz, efforts, p95Ms.toFixed(1), ...cells].join(' | ')} |`);
    }
  }
}
