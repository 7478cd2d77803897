// What the observer knows of the person before it hears anything: how one repetition follows another, and how often.
// Every number of the simulated person is taken from the set itself; the ways they are drawn are those of the simulation.

/** Tempo and height are drawn within this many standard deviations. */
const span = 2.5;

/** Heights [standard deviations]; half repetitions [-]; bottoms as shares of the height, the first a whole return [-]. */
const heightSteps = [-2, -1, 0, 1, 2];
const halves = [0.4833, 0.55, 0.6167];
export const bottoms = [0, 0.1417, 0.225, 0.3083];

/** Stays at the bottom besides the usual one [s]. */
const restS = [0.6, 2.5];
const pauseS = [2.5, 8];

/** Nothing quicker than this is a repetition [s]. */
const shortestS = 0.55;

/** Chance of each number of repetitions: one set in ten is short, and one in ten of the others is long. */
export function chanceOfCount(count) {
  if (count < 1 || count > 60) return 0;
  if (count <= 7) return 0.1 / 7;
  return count <= 35 ? (0.9 * 0.9) / 28 : (0.9 * 0.1) / 25;
}

function normal(z) {
  return Math.exp((-z * z) / 2);
}

/**
 * How far the set has probably gone at a time, 0 at the first repetition and 1 at the last one, when it begins and ends in the
 * middle of where it may: with a drift d of the tempo the time gone at progress p is (p + d p^2 / 2) / (1 + d / 2).
 */
function progressOf({ cycleS, shares }, drift, firstS, endS) {
  const lastS = endS - cycleS * (1 + drift) * (1 - shares[3]);
  return (timeS) => {
    const gone = Math.min(1, Math.max(0, (timeS - firstS) / Math.max(cycleS, lastS - firstS)));
    const twice = gone * (1 + drift / 2);
    return Math.abs(drift) < 1e-6 ? gone : (Math.sqrt(1 + 2 * drift * twice) - 1) / drift;
  };
}

/** Durations of the parts of a repetition at a pace [s]. */
function partsAt(paceS, shares) {
  const [up, hold, down, low] = shares.map((share) => share * paceS);
  const longer = Math.max(1, shortestS / (up + hold + down));
  return { paceS, upS: up * longer, holdS: hold * longer, downS: down * longer, lowS: low };
}

/** Paces on an even grid of logarithms, over all that the tempo can be. */
function pacesOf({ cycleS, shares }, { tempoDrift, tempoSpread }, gridStep) {
  const most = Math.log(Math.max(1, 1 + tempoDrift)) + span * tempoSpread;
  const least = Math.log(Math.min(1, 1 + tempoDrift)) - span * tempoSpread;
  const count = Math.max(3, Math.ceil((most - least) / Math.min(gridStep, tempoSpread / 2)));
  const step = (most - least) / count;
  return Array.from({ length: count }, (_, j) => partsAt(cycleS * Math.exp(least + (j + 0.5) * step), shares));
}

/** Shares that sum to 1, as logarithms. */
function logShares(weights) {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  return weights.map((weight) => Math.log(weight / sum));
}

/** The middle of a range. */
function middle([low, high]) {
  return (low + high) / 2;
}

/** The person of a simulated set, as its observer knows it. `quietBeforeS` and `quietAfterS` are ranges. */
export function habitsOf({ truth, trace, faults }, { quietBeforeS, quietAfterS, paceStep }) {
  const { person } = truth;
  const lengthS = trace.groups[0].timesS.at(-1);
  const paces = pacesOf(person, faults, paceStep);
  const { fatigueLoss, heightSpread, partialShare, incompleteShare, restShare, pauseShare } = faults;
  const whole = logShares(heightSteps.map(normal)).map((log, i) => ({
    share: Math.exp(heightSpread * heightSteps[i]),
    log: log + Math.log(1 - partialShare),
  }));
  const half = halves.map((share) => ({ share, log: Math.log(partialShare / halves.length) }));
  const ownSpread = faults.partSpread * Math.hypot(...person.shares);
  return {
    person,
    paces,
    progressAt: progressOf(person, faults.tempoDrift, middle(quietBeforeS), lengthS - middle(quietAfterS)),
    usualPitchAt: (progress) => person.topPitchRad * (1 - fatigueLoss * progress),
    /** logarithm of the chance of each pace at a progress; minus infinity for those that do not occur */
    logPacesAt(progress) {
      const cycleS = person.cycleS * (1 + faults.tempoDrift * progress);
      const away = paces.map(({ paceS }) => Math.log(paceS / cycleS) / faults.tempoSpread);
      return logShares(away.map((z) => (Math.abs(z) > span ? 0 : normal(z))));
    },
    heights: partialShare > 0 ? [...whole, ...half] : whole,
    logBottoms: bottoms.map((_, i) => Math.log(i === 0 ? 1 - incompleteShare : incompleteShare / (bottoms.length - 1))),
    usualStay: {
      log: Math.log((1 - restShare) * (1 - pauseShare)),
      /** how much start and next start are apart besides the tempo [s] */
      spreadS: (paceS) => ownSpread * paceS,
    },
    lateStays: [
      { fromS: restS[0], toS: restS[1], share: restShare * (1 - pauseShare) },
      { fromS: pauseS[0], toS: pauseS[1], share: pauseShare },
    ].filter(({ share }) => share > 0),
    quietBeforeS,
    quietAfterS,
  };
}
