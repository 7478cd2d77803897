import { Figures } from './figures.mjs';
import { kinds, setRequest } from './kinds.mjs';
import { topLimitS } from './top-limit.mjs';

export { Figures };

/**
 * The final pass as the report runs it, with the settings that are the default.
 * `analysis` is the front door of the analysis package; `set` one simulated set.
 */
export function detect(analysis, placement, set) {
  const { trace, subject } = set;
  const settings = analysis.defaultSettings();
  if (placement === 'heel' || placement === 'foot') {
    const foot = { heelLeverM: subject.heelLeverM, ...stringOf(subject) };
    return analysis.detectHeelRaises(trace, placement, foot, settings.heel);
  }
  return analysis.detectBodyRaises(trace, placement, { bodyMassKg: subject.bodyMassKg }, settings.body);
}

function stringOf(subject) {
  return subject.stringRestLengthM === undefined ? {} : { stringRestLengthM: subject.stringRestLengthM };
}

/** Every fifth repetition is enough for the limit of a kind and level. */
const limitEvery = 5;

/**
 * Figures of `sets` sets of one kind and level, with seeds from `from` on, added to `figures` when there are some.
 * `faultsOf` fixes amounts of faults for a seed; `progress` hears of every set.
 * With `limits` the least error of the top that the noise allows is worked out beside.
 */
export function measure({
  simulation,
  analysis,
  kind,
  level,
  sets,
  from,
  figures = new Figures(),
  faultsOf = () => ({}),
  progress = () => {},
  limits = false,
}) {
  const { placement, heightOf } = kinds[kind];
  for (let seed = from; seed < from + sets; seed++) {
    const set = simulation.simulateSet({ ...setRequest(kind, level, seed), faults: faultsOf(seed) });
    const detection = detect(analysis, placement, set);
    figures.add({
      seed,
      raises: detection.raises,
      count: { low: detection.countLow, high: detection.countHigh },
      repetitions: set.truth.repetitions,
      heightOf,
    });
    if (limits) {
      for (let i = seed % limitEvery; i < set.truth.repetitions.length; i += limitEvery) {
        figures.topLimitS.push(topLimitS(placement, set, set.truth.repetitions[i], simulation.wayGone));
      }
    }
    progress(seed - from + 1);
  }
  return figures;
}
