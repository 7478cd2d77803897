import { PullFigures } from './pulls-figures.mjs';

export { PullFigures };

const refusing = ['gap-near-peak', 'clipped'];

/** One effort as the figures take it. `window` is the index of the window of 200 ms. */
function comparable(effort, window) {
  const { findings } = effort.acceptance;
  const reason = effort.rates[window].reason;
  return {
    onsetS: effort.onsetS,
    distinct: effort.start?.distinct,
    peakS: effort.peakS,
    peakN: effort.peak.net,
    meanN: effort.bestMean === null ? null : effort.bestMean.net,
    rate200: effort.rates[window].rate,
    peakJudged: !findings.some(({ code, met }) => refusing.includes(code) && met !== 'yes'),
    onsetJudged: reason !== 'gap-in-rise',
  };
}

export const pullKinds = ['ramp', 'fast'];
export const pullLevels = ['clean', 'typical', 'hard', 'field'];
export const pullRatesHz = [80, 200, 1000, 2000];

/** Seeds below 10,000 tune; those from here on are touched to measure, and for nothing else. */
export const firstSealedPull = 61_001;

/**
 * Figures of simulated recordings of one level and rate: `traces` of each kind, with seeds from `from` on. `find` gives the
 * efforts of a list of recordings as {@link PullFigures} take them.
 */
export function measurePulls({ simulation, level, sampleRateHz, traces, from, find, kinds = pullKinds }) {
  const figures = new PullFigures();
  for (const kind of kinds) {
    for (let first = from; first < from + traces; first += batch) {
      const seeds = Array.from({ length: Math.min(batch, from + traces - first) }, (_, k) => first + k);
      const pulls = seeds.map((seed) => simulation.simulatePulls({ kind, level, seed, sampleRateHz }));
      find(pulls.map(({ trace }) => trace)).forEach((efforts, k) => {
        figures.add({ seed: seeds[k], efforts, truth: pulls[k].truth.efforts });
      });
    }
  }
  return figures;
}

/** Recordings that are held in memory at a time. */
const batch = 25;

/** Efforts as the analysis finds them with its defaults, by the rules of the seated strength test. */
export function byAnalysis(analysis, shared) {
  const settings = analysis.effortSettingsBy(analysis.effortDefaults, shared.SEATED_PULL.parameters);
  const window = settings.measure.rateWindowsS.indexOf(0.2);
  return (traces) =>
    traces.map((trace) =>
      analysis.findEfforts(trace, { polarity: 'find' }, settings).efforts.map((effort) => comparable(effort, window)),
    );
}
