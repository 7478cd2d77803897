/**
 * What the measurement of hop series has to reach on recordings whose seeds were never used in tuning; ours. A gap hides
 * hops, so that in the field the bounds have to hold the count and the count itself need not be exact.
 */
const platform = {
  clean: { exact: 1, within: 1, contactP95Ms: 0.5, flightP95Ms: 0.5, stiffnessP95Percent: 3 },
  typical: { exact: 0.99, within: 0.99, contactP95Ms: 2, flightP95Ms: 2, stiffnessP95Percent: 4 },
  hard: { exact: 0.97, within: 0.99, contactP95Ms: 3, flightP95Ms: 3, stiffnessP95Percent: 6 },
  field: { within: 0.95, contactP95Ms: 3, flightP95Ms: 3, stiffnessP95Percent: 6 },
};
const foot = {
  clean: { exact: 0.99, within: 0.99, contactP95Ms: 6, flightP95Ms: 6, stiffnessP95Percent: 6 },
  typical: { exact: 0.98, within: 0.98, contactP95Ms: 8, flightP95Ms: 8, stiffnessP95Percent: 6 },
  hard: { exact: 0.95, within: 0.97, contactP95Ms: 15, flightP95Ms: 15, stiffnessP95Percent: 10 },
  field: { within: 0.9, contactP95Ms: 15, flightP95Ms: 15, stiffnessP95Percent: 10 },
};

/** Goals that a summary misses, each as a sentence; `slack` lets a run over few recordings be worse by a factor. */
export function missedHopGoals(placement, level, summary, slack = 1) {
  return Object.entries((placement === 'platform' ? platform : foot)[level])
    .filter(([key, goal]) => {
      if (key !== 'exact' && key !== 'within') return !(summary[key] <= slack * goal);
      return 1 - summary[key] > slack * (1 - goal) + (slack > 1 ? 1 / summary.series : 1e-12);
    })
    .map(([key, goal]) => `${placement} ${level} ${key}: ${summary[key]?.toFixed(3)}, goal ${goal}`);
}
