// All series of repetitions at once: a hidden semi-Markov chain whose states are starts, each at a bottom.
// Source: Rabiner (1989), Proc IEEE 77:257, section IV.D, for the chain; draws from it go forwards through what the backward
// pass has summed, Scott (2002), J Am Stat Assoc 97:337.
// Every number of repetitions weighs alike here; what is known of it beforehand is for the caller.

function logSum(a, b) {
  const [high, low] = a > b ? [a, b] : [b, a];
  return low === -Infinity ? high : high + Math.log1p(Math.exp(low - high));
}

function logSumOf(logs) {
  let highest = -Infinity;
  for (const log of logs) if (log > highest) highest = log;
  if (highest === -Infinity) return highest;
  let sum = 0;
  for (const log of logs) sum += Math.exp(log - highest);
  return highest + Math.log(sum);
}

/** Logarithms of the weight of all that can follow: from a start, and from the end of a repetition. */
function backward(chain) {
  const { starts, levels, moveSteps, usualNext, lateNext, mayEnd } = chain;
  const fromStart = starts.map(() => new Float64Array(levels).fill(-Infinity));
  const later = starts.map(() => new Float64Array(levels).fill(-Infinity));
  const after = starts.map((options) => options.map(() => new Float64Array(levels)));
  const lateFrom = (end, level) => {
    let log = -Infinity;
    for (const { from, to, log: each } of lateNext) {
      const logs = [];
      for (let t = end + from; t < Math.min(end + to, starts.length); t++) logs.push(fromStart[t][level]);
      log = logSum(log, logSumOf(logs) + each);
    }
    return log;
  };
  for (let t = starts.length - 1; t >= 0; t--) {
    for (let level = 0; level < levels; level++) later[t][level] = lateFrom(t, level);
    starts[t].forEach(({ pace, logs }, n) => {
      const end = t + moveSteps[pace];
      for (let level = 0; level < levels; level++) {
        const ways = [level === 0 && mayEnd(end) ? 0 : -Infinity, later[end]?.[level] ?? -Infinity];
        for (const { steps, log } of usualNext[pace]) {
          if (t + steps < starts.length) ways.push(log + fromStart[t + steps][level]);
        }
        after[t][n][level] = logSumOf(ways);
      }
    });
    for (let before = 0; before < levels; before++) {
      const ways = [];
      starts[t].forEach(({ logs }, n) => {
        for (let level = 0; level < levels; level++) ways.push(logs[before][level] + after[t][n][level]);
      });
      fromStart[t][before] = logSumOf(ways);
    }
  }
  return { fromStart, later, after };
}

/** One of several things by their logarithmic weights. */
class Choice {
  constructor(things, logs) {
    const highest = Math.max(...logs);
    let sum = 0;
    this.things = things;
    this.until = logs.map((log) => (sum += Math.exp(log - highest)));
  }

  draw(uniform) {
    const place = uniform() * this.until[this.until.length - 1];
    return this.things[this.until.findIndex((until) => until > place)];
  }
}

/**
 * Draws series from all that are possible, each as often as its share of the weight: lists of `{ start, pace }`. `logWeight`
 * is the weight of all together.
 */
export function seriesOf(chain, uniform, draws) {
  const { starts, levels, moveSteps, usualNext, lateNext, mayBegin, mayEnd } = chain;
  const { fromStart, later, after } = backward(chain);
  const kept = new Map();
  const choiceAt = (key, make) => {
    if (!kept.has(key)) kept.set(key, make());
    return kept.get(key);
  };
  const repetitionAt = (t, before) =>
    choiceAt(`repetition ${t} ${before}`, () => {
      const [things, logs] = [[], []];
      starts[t].forEach(({ pace, logs: weights }, n) => {
        for (let level = 0; level < levels; level++) {
          things.push({ pace, level });
          logs.push(weights[before][level] + after[t][n][level]);
        }
      });
      return new Choice(things, logs);
    });
  const nextAfter = (t, pace, level) =>
    choiceAt(`next ${t} ${pace} ${level}`, () => {
      const end = t + moveSteps[pace];
      const usual = usualNext[pace].filter(({ steps }) => t + steps < starts.length);
      return new Choice(
        ['end', 'late', ...usual.map(({ steps }) => t + steps)],
        [
          level === 0 && mayEnd(end) ? 0 : -Infinity,
          later[end]?.[level] ?? -Infinity,
          ...usual.map(({ steps, log }) => log + fromStart[t + steps][level]),
        ],
      );
    });
  const lateAfter = (end, level) =>
    choiceAt(`late ${end} ${level}`, () => {
      const [things, logs] = [[], []];
      for (const { from, to, log } of lateNext) {
        for (let t = end + from; t < Math.min(end + to, starts.length); t++) {
          things.push(t);
          logs.push(log + fromStart[t][level]);
        }
      }
      return new Choice(things, logs);
    });
  const begins = starts.flatMap((_, t) => (mayBegin(t) ? [t] : []));
  const beginLogs = begins.map((t) => fromStart[t][0]);
  const begin = new Choice(begins, beginLogs);
  const series = Array.from({ length: draws }, () => {
    const repetitions = [];
    let [t, before] = [begin.draw(uniform), 0];
    while (t !== 'end') {
      const { pace, level } = repetitionAt(t, before).draw(uniform);
      repetitions.push({ start: t, pace });
      const next = nextAfter(t, pace, level).draw(uniform);
      t = next === 'late' ? lateAfter(t + moveSteps[pace], level).draw(uniform) : next;
      before = level;
    }
    return repetitions;
  });
  return { series, logWeight: logSumOf(beginLogs) };
}
