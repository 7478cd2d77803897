/** What detection has to reach on sets whose seeds were never used in tuning; ours. */
const position = { topP95Ms: 15 };
const disturbedPosition = { exact: 0.97, topP95Ms: 15, startP95Ms: 160 };
const disturbedBody = { topP95Ms: 55, startP95Ms: 250, countCoverage: 0.92, countWidthMean: 2.5 };
const trunk = { ...disturbedBody, exact: 0.6, withinOne: 0.88, f1: 0.965, heightRmseMm: 9.5 };
const platform = { ...disturbedBody, exact: 0.7, withinOne: 0.94, f1: 0.975, heightRmseMm: 9 };
const calmPosition = {
  clean: { ...position, exact: 0.99 },
  typical: { ...position, exact: 0.99, countWidthMedian: 2 },
};
const calmBody = {
  clean: { exact: 0.97, topP95Ms: 55 },
  typical: { exact: 0.97, topP95Ms: 55, countCoverage: 0.95, countWidthMedian: 2 },
};

function positionGoals(heightRmseMm) {
  const disturbed = { ...disturbedPosition, heightRmseMm };
  return { ...calmPosition, hard: disturbed, field: disturbed };
}

/** Goals by kind and level, in the names of the figures. */
export const goals = {
  heel: positionGoals(2.8),
  foot: positionGoals(2.8),
  'foot without gyroscope': positionGoals(3.6),
  trunk: { ...calmBody, hard: trunk, field: trunk },
  platform: { ...calmBody, hard: platform, field: platform },
};

/** Figures of which more is better; of all others less is. */
const shares = ['exact', 'withinOne', 'f1', 'countCoverage'];

/** Probability of at most `hits` of `trials` when each succeeds with probability `share`. */
export function binomialTail(hits, trials, share) {
  let term = (1 - share) ** trials;
  let sum = term;
  for (let k = 1; k <= hits; k++) {
    term *= ((trials - k + 1) / k) * (share / (1 - share));
    sum += term;
  }
  return sum;
}

/** A run over few sets misses a goal that the method reaches at most this often. */
const chanceOfFalseAlarm = 0.001;

function missed(key, value, goal, sets, whole) {
  if (!shares.includes(key)) return value > (whole ? goal : 1.5 * goal);
  if (whole) return value < goal;
  // repetitions of one set fail together, so a few sets say little about F1
  if (key === 'f1') return 1 - value > 3 * (1 - goal) + 0.01;
  return binomialTail(Math.round(value * sets), sets, goal) < chanceOfFalseAlarm;
}

/**
 * Goals that a summary misses, each as a sentence. `whole` says that the summary is of the full number of sets; with fewer
 * sets only a miss that chance does not explain counts.
 */
export function missedGoals(kind, level, summary, whole) {
  return Object.entries(goals[kind][level])
    .filter(([key, goal]) => missed(key, summary[key], goal, summary.sets, whole))
    .map(([key, goal]) => `${key}: ${summary[key].toFixed(3)}, goal ${goal}`);
}
