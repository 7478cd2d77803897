// All series of repetitions at once: a hidden semi-Markov chain whose states are starts, each at a bottom.
// Source: Rabiner (1989), Proc IEEE 77:257, section IV.D, for the chain; draws from it go forwards through what the backward
// pass has summed, Scott (2002), J Am Stat Assoc 97:337.
// Every number of repetitions weighs alike here; what is known of it beforehand is for the caller.

function logSum(a, b) {
  const [high, low] = a > b ? [a, b] : [b, a];
  return low === -Infinity ? high : high + Math.log1p(Math.exp(low - high));
}

/** Logarithm of the sum of the first `count` weights. */
function logSumOf(logs, count = logs.length) {
  let highest = -Infinity;
  for (let i = 0; i < count; i++) if (logs[i] > highest) highest = logs[i];
  if (highest === -Infinity) return highest;
  let sum = 0;
  for (let i = 0; i < count; i++) sum += Math.exp(logs[i] - highest);
  return highest + Math.log(sum);
}

/**
 * Logarithms of the weight of all that can follow, by bottom: after a start at a step, after a stay that is not the usual one
 * from a step on, and after each option of a start.
 */
function backward(chain) {
  const { starts, levels, moveSteps, usualNext, lateNext, mayEnd } = chain;
  const byLevel = () => Array.from({ length: levels }, () => new Float64Array(starts.length).fill(-Infinity));
  const fromStart = byLevel();
  const later = byLevel();
  const after = starts.map((options) => new Float64Array(options.length * levels));
  const most = Math.max(0, ...starts.map((options) => options.length));
  const ways = new Float64Array(Math.max(most * levels, 1 + Math.max(...usualNext.map((next) => next.length))));
  for (let t = starts.length - 1; t >= 0; t--) {
    for (let level = 0; level < levels; level++) {
      let log = -Infinity;
      for (const { from, to, log: each } of lateNext) {
        log = logSum(log, logSumOf(fromStart[level].subarray(t + from, t + to)) + each);
      }
      later[level][t] = log;
    }
    starts[t].forEach(({ pace }, n) => {
      const end = t + moveSteps[pace];
      for (let level = 0; level < levels; level++) {
        let count = 0;
        for (const { steps, log } of usualNext[pace]) {
          if (t + steps < starts.length) ways[count++] = log + fromStart[level][t + steps];
        }
        ways[count++] = later[level][end] ?? -Infinity;
        const usual = logSumOf(ways, count);
        after[t][n * levels + level] = level === 0 && mayEnd(end) ? logSum(0, usual) : usual;
      }
    });
    for (let before = 0; before < levels; before++) {
      let count = 0;
      starts[t].forEach(({ logs }, n) => {
        for (let level = 0; level < levels; level++) {
          ways[count++] = logs[before * levels + level] + after[t][n * levels + level];
        }
      });
      fromStart[before][t] = logSumOf(ways, count);
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
  const kept = { repetition: new Map(), next: new Map(), late: new Map() };
  const choiceAt = (choices, key, make) => {
    if (!choices.has(key)) choices.set(key, make());
    return choices.get(key);
  };
  const repetitionAt = (t, before) =>
    choiceAt(kept.repetition, t * levels + before, () => {
      const [things, logs] = [[], []];
      starts[t].forEach(({ pace, logs: weights }, n) => {
        for (let level = 0; level < levels; level++) {
          things.push({ pace, level });
          logs.push(weights[before * levels + level] + after[t][n * levels + level]);
        }
      });
      return new Choice(things, logs);
    });
  const nextAfter = (t, pace, level) =>
    choiceAt(kept.next, (t * moveSteps.length + pace) * levels + level, () => {
      const end = t + moveSteps[pace];
      const usual = usualNext[pace].filter(({ steps }) => t + steps < starts.length);
      return new Choice(
        ['end', 'late', ...usual.map(({ steps }) => t + steps)],
        [
          level === 0 && mayEnd(end) ? 0 : -Infinity,
          later[level][end] ?? -Infinity,
          ...usual.map(({ steps, log }) => log + fromStart[level][t + steps]),
        ],
      );
    });
  const lateAfter = (end, level) =>
    choiceAt(kept.late, end * levels + level, () => {
      const [things, logs] = [[], []];
      for (const { from, to, log } of lateNext) {
        for (let t = end + from; t < Math.min(end + to, starts.length); t++) {
          things.push(t);
          logs.push(log + fromStart[level][t]);
        }
      }
      return new Choice(things, logs);
    });
  const begins = starts.flatMap((_, t) => (mayBegin(t) ? [t] : []));
  const beginLogs = begins.map((t) => fromStart[0][t]);
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
