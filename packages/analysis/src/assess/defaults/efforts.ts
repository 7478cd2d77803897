import type { EffortMethod } from '../../efforts/effort-settings.ts';

/** Numbers of the method that measures isometric efforts; the rules of the test stand in its protocol. */
export const effortDefaults: EffortMethod = {
  pull: {
    blockS: 0.01, // ours
    medianS: 0.09, // three knocks of 30 ms long; ours
    restWindowS: 60, // ours
    restShare: 0.1, // ours
    leastN: 20, // common practice, no source
    leastNm: 2, // 20 N on a lever of 10 cm; ours
    leastNoise: 8, // ours
    leastShare: 0.1, // ours
    ownRise: 0.5, // ours
    leastS: 0.3, // ours
    nearShare: 0.06, // ours
    polarityLead: 0.1, // ours
    lowQuantile: 0.02, // ours
    highQuantile: 0.98, // ours
    endS: 0.2, // ours
    endScore: 0.15, // ours
  },
  rest: {
    windowS: 2.5, // common practice, no source: 2 s still
    leastS: 0.25, // ours
    blockS: 0.05, // ours
    footShare: 0.8, // ours
    marginS: 0.06, // ours
    outlying: 2.5, // ours
    lineShare: 0.1, // ours
  },
  onset: {
    cutoffHz: 20, // ours
    lowShare: 0.05, // ours
    highShare: 0.15, // ours
    fitBeforeS: 0.2, // ours
    disturbedShare: 0.01, // ours
    disturbedNoise: 3.5, // ours
    disturbedLeast: 0.004, // ours
    fast: {
      fitShare: 0.8, // ours
      powers: [1, 1.2, 1.44, 1.73, 2.07, 2.49, 3, 3.6], // ours
      power: 1.9, // ours
      powerSpread: 0.5, // ours
      settling: 0.1, // ours
      settlingSpread: 0.5, // ours
      riseSpread: 0.7, // ours
      heightSpread: 0.05, // ours
      startSpread: 1, // ours
      takeUpChance: 0.2, // ours
      takenUpPowers: [1, 1.44, 2.07, 3], // ours
      takeUpPower: 1.8, // ours
      takeUpPowerSpread: 0.35, // ours
      takeUpS: 0.08, // ours
      takeUpSpread: 0.6, // ours
      takeUpShare: 0.04, // ours
      shareSpread: 0.8, // ours
      fitU: 0.95, // ours, so that 95 % of the intervals of 300 simulated recordings a rate (seeds 1001 to 1300) hold the truth
      formU: 0.006, // ours, likewise
      formPower: 2.5, // ours, likewise
    },
    ramp: {
      fitShare: 0.5, // ours
      powers: [1, 1.2, 1.44, 1.73, 2.07, 2.49, 3, 3.6, 4.3], // ours
      power: 2.6, // ours
      powerSpread: 0.5, // ours
      settling: -0.2, // ours
      settlingSpread: 1, // ours
      riseSpread: 0.7, // ours
      heightSpread: 0.2, // ours
      startSpread: 1, // ours
      takeUpChance: 0.2, // ours
      takenUpPowers: [1, 1.44, 2.07, 3], // ours
      takeUpPower: 1.8, // ours
      takeUpPowerSpread: 0.35, // ours
      takeUpS: 0.4, // ours
      takeUpSpread: 0.6, // ours
      takeUpShare: 0.05, // ours
      shareSpread: 0.8, // ours
      fitU: 1.5, // ours, likewise for 200 recordings (seeds 1001 to 1200): a ramp bends in more ways than the curves do
      formU: 0.015, // ours, likewise
      formPower: 1, // ours
    },
    unsteadyShare: 0.015, // ours
    unsteadyHz: 25, // ours
    stampShare: 0.2, // ours
    freedom: 4, // ours
    sampleU: 0.05, // ours, likewise
    mostBlocks: 100, // ours
    lineU: 0.5, // ours
  },
  measure: {
    peakCutoffHz: 20, // common practice, no source: 20 to 50 Hz
    peakNoiseBias: 0.6, // ours
    knockS: 0.008, // ours
    knockNoise: 3.3, // ours
    knockShare: 0.002, // ours
    knockMarginS: 0.01, // ours
    knockRounds: 4, // ours
    knockPasses: 2, // ours
    grossWindowS: 0.09, // ours
    grossShare: 0.01, // ours
    readS: 0.02, // ours
    readOutlying: 3, // ours
    readShare: 0.01, // ours
    readU: 0.002, // ours, likewise (seeds 1001 to 1300)
    readSampleU: 0.008, // ours, likewise; an unsteady force departs by as much
    rateWindowsS: [0.05, 0.1, 0.15, 0.2, 0.25], // Aagaard et al. (2002), J Appl Physiol, and Maffiuletti et al. (2016)
    rateLeastHz: [1000, 500, 500, 200, 80], // 1000: Maffiuletti et al. (2016), from memory; the rest common practice, no source
    impulseWindowS: 0.2, // Aagaard et al. (2002), J Appl Physiol, from memory
    reachedShares: [0.3, 0.5], // common practice, no source
    coarseBelowHz: 200, // common practice, no source
    rateTolerance: 0.05, // ours
    heldShare: 0.85, // ours
    riseLowShare: 0.2, // ours
    riseHighShare: 0.8, // ours
    fastRiseS: 0.34, // ours
    timeUS: 0.02, // ours
    peakU: 1.1, // ours
    meanU: 1.09, // ours
    riseU: 1, // ours
    peakRelativeU: 0.0003, // ours
    meanRelativeU: 0.00005, // ours
    meanSampleU: 0.012, // ours
  },
  accept: {
    gapNearS: 0.5, // ours
    clipRunS: 0.01, // ours
    clipPile: 3, // ours
    beforeS: 0.3, // ours
    blurredS: 0.03, // ours
  },
  signal: {
    mostN: 5000, // ours, twice what strong people reach seated
    mostNm: 500, // ours
    peakLeastHz: 80, // common practice, no source
    legLeastN: 20, // ours, less than shank and foot of a child
    legLeastShare: 0.03, // ours; shank and foot alone are about 6 % of body weight (from memory)
    restSpreadN: 20, // ours
    restSpreadNm: 2, // ours
    leverUM: 0.005, // common practice, no source: a tape to 5 mm
  },
};
