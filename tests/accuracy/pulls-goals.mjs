/** What the measurement of efforts has to reach on recordings whose seeds were never used in tuning; ours. */
const disturbed = { exact: 0.99, onsetP95Ms: 5, distinctP95Ms: 5, peakRmsPercent: 0.35, riseRmsPercent: 2 };
const typical = { exact: 0.99, onsetP95Ms: 4, distinctP95Ms: 4, peakRmsPercent: 0.15, riseRmsPercent: 1 };

/** A slow sensor: the onset within one sample, and no rate over 200 ms. */
function slow({ exact, peakRmsPercent }) {
  return { exact, peakRmsPercent, onsetP95Ms: 1000 / 80, distinctP95Ms: 1000 / 80 };
}

/** Goals by level and sampling rate, in the names of the figures. */
export function pullGoals(level, sampleRateHz) {
  const aims = level === 'clean' || level === 'typical' ? typical : disturbed;
  return sampleRateHz < 200 ? slow(aims) : aims;
}

/**
 * Goals that are not reached yet, with what is reached instead on recordings that nothing was tuned on, all forms of rise
 * together: 500 of each rate in the field and hard, 40 to 50 of the others, where what seeds of tuning gave stands if it was more.
 * An entry goes when its goal is reached. Most of the distance is slack that is taken up first, and soft starts: the little
 * force of the first moments lies in the noise; `pulls-limit.mjs` tells how well an onset can be known at all.
 */
const shortOfGoal = {
  'typical 80': { onsetP95Ms: 13.5 },
  'typical 200': { onsetP95Ms: 7.5, riseRmsPercent: 4.3 },
  'typical 1000': { onsetP95Ms: 5.5, riseRmsPercent: 2.1 },
  'typical 2000': { onsetP95Ms: 5, riseRmsPercent: 2 },
  'hard 80': { onsetP95Ms: 21.5 },
  'hard 200': { onsetP95Ms: 15 },
  'hard 1000': { onsetP95Ms: 9.5 },
  'hard 2000': { onsetP95Ms: 8 },
  'field 80': { onsetP95Ms: 20 },
  'field 200': { onsetP95Ms: 14.5 },
  'field 1000': { onsetP95Ms: 9.7 },
  'field 2000': { onsetP95Ms: 7.7 },
};

function misses(aims, level, sampleRateHz, summary, slack) {
  return Object.entries(aims)
    .filter(([key, goal]) => {
      if (key === 'exact') return 1 - summary.exact > slack * (1 - goal) + (slack > 1 ? 1 / summary.traces : 1e-12);
      return summary[key] === undefined || summary[key] > slack * goal;
    })
    .map(([key, goal]) => `${level} ${sampleRateHz} Hz ${key}: ${summary[key]?.toFixed(3)}, goal ${goal}`);
}

/** Goals that a summary misses, each as a sentence. */
export function missedPullGoals(level, sampleRateHz, summary) {
  return misses(pullGoals(level, sampleRateHz), level, sampleRateHz, summary, 1);
}

/**
 * The same, with what is reached in place of a goal that is not. `slack` lets a run over few recordings be worse than the
 * goal by a factor; of a share its complement is.
 */
export function lostPullGround(level, sampleRateHz, summary, slack) {
  const aims = { ...pullGoals(level, sampleRateHz), ...shortOfGoal[`${level} ${sampleRateHz}`] };
  return misses(aims, level, sampleRateHz, summary, slack);
}
