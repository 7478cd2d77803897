import { PullFigures } from './pulls-figures.mjs';

export { PullFigures };

const refusing = ['gap-near-peak', 'clipped'];

/** One effort as the figures take it. `window` is the index of the window of 200 ms. */
function comparable(effort, window) {
  const { findings } = effort.acceptance;
  const reason = effort.rates[window].reason;
  return {
    onsetS: effort.onsetS,
    peakS: effort.peakS,
    peakN: effort.peak.net,
    meanN: effort.bestMean === null ? null : effort.bestMean.net,
    rate200: effort.rates[window].rate,
    peakJudged: !findings.some(({ code, met }) => refusing.includes(code) && met !== 'yes'),
    onsetJudged: reason !== 'gap-in-rise',
  };
}

/** Figures of simulated recordings of one kind, level and rate, with seeds from `from` on. */
export function measurePulls({
  simulation,
  analysis,
  kind,
  level,
  sampleRateHz,
  traces,
  from,
  figures = new PullFigures(),
  settings = analysis.effortDefaults,
}) {
  const window = settings.measure.rateWindowsS.indexOf(0.2);
  for (let seed = from; seed < from + traces; seed++) {
    const { trace, truth } = simulation.simulatePulls({ kind, level, seed, sampleRateHz });
    const { efforts } = analysis.findEfforts(trace, { polarity: 'find' }, settings);
    figures.add({ seed, efforts: efforts.map((effort) => comparable(effort, window)), truth: truth.efforts });
  }
  return figures;
}
