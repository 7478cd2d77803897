import type { BodySettings } from '../../raises/body/settings.ts';

/** Settings of the final pass over trunk and platform recordings. */
export const bodyDefaults: BodySettings = {
  /** rate of the model grid [Hz]; ours: 10 cells in the shortest repetition */
  modelRateHz: 20,
  /** rate of the returned motion [Hz]; ours */
  motionRateHz: 100,
  /** low-pass of the input [Hz]; ours: the shortest repetition keeps three harmonics */
  lowPassHz: 7,
  /** low-pass of the trunk's angle [Hz]; ours: below the beat, above a lean */
  postureCutoffHz: 0.8,
  /** least quiet stance before the set [s]; ours */
  leastStanceS: 0.5,
  /** moving mean that takes slow drift away [s]; ours: several of the longest repetitions */
  driftWindowS: 24,
  /** samples missing longer than this count as absent [s]; common practice, no source */
  gapS: 0.25,
  /** spikes: half window [samples] and threshold [robust deviations]; ours */
  spikeHalfWindow: 4,
  spikeThreshold: 8,
  /** span over which movement across gravity is averaged [s]; ours */
  sidewaysWindowS: 0.6,
  /** most movement across gravity on one's toes [m2/s4], [share of the vertical]; ours: 0.6 m/s2, walking has 0.7 to 1.5 */
  travelWindowS: 1.2,
  mostSideways: 0.36,
  mostSidewaysShare: 0.3,
  /** brief impacts: quick change above this [Hz], times the median [-], share of the slower movement [-], reach through the low-pass [s]; ours */
  impactAboveHz: 10,
  impactThreshold: 5,
  impactShare: 0.5,
  impactReachS: 0.07,
  /** shortest repetition [s]; common practice, no source */
  shortestS: 0.5,
  /** longest repetition [s]; ours: 2 s up, 2 s held, 2 s down and some more */
  longestS: 6.5,
  /** least rise of the body [m]; ours: about half of the 20 mm that common practice asks of the heel */
  leastRiseM: 0.01,
  /** greatest rise of the body on one's toes [m]; ours: a long foot at 60 degrees stays below it */
  mostRiseM: 0.1,
  /** rest that parts two bouts [s]; ours */
  boutRestS: 2,
  /** acceleration that sway does not reach [m/s2]; ours: the root of mostSideways */
  energetic: 0.6,
  /** the same as a multiple of the quietest moments [-]; ours: way and below are then known to a fifth of the rise */
  energeticRatio: 5,
  /** passing below both rests, going back and forth [share of the rise]; ours: raises under strong sway reach 0.08 and 0.05, steps 0.25 and 0.3 */
  mostBelowShare: 0.2,
  mostReversedShare: 0.3,
  /** greatest turn of the trunk within a repetition [rad]; ours: thrice the 10 degrees that count as a lean */
  mostTurnRad: 0.52,
  /** typical rise of the body [m] and its spread between people [-]; ours, from a 26 cm foot at 15 to 45 degrees */
  typicalRiseM: 0.05,
  typicalRiseSpread: 0.35,
  /** spread of rises in a set [-]; ours */
  riseSpread: 0.12,
  /** change of rise and of tempo over a set [-]; ours */
  riseDrift: 0.25,
  tempoDrift: 0.2,
  /** spread of durations and of cycles in a set [log]; ours: people keep a beat within 5 to 12 % */
  durationSpread: 0.1,
  cycleSpread: 0.11,
  /** share of sets whose rests lengthen with the repetition, and the spread that is left in those [log]; ours: a beat of one's own, or a given one */
  pacedShare: 0.5,
  paceSpread: 0.06,
  /** share of gaps that are stays at the bottom of any length up to a pause [-]; ours */
  stayShare: 0.03,
  /** typical repetition [s] and its spread between sets [log]; ours: about the beat of 60 a minute, half to thrice */
  typicalDurationS: 1.8,
  typicalDurationSpread: 0.5,
  /** quick repetitions: shortest [share of the shortest], typical and longest [s]; ours: of a cycle a fifth may be rest */
  quickShortestShare: 0.8,
  quickTypicalS: 0.7,
  quickLongestS: 1.6,
  /** misfit of the shape from which on pairs of quick ones are thought of, and quick ones for each in whose place they are taken [-]; ours */
  illFitting: 0.25,
  leastInstead: 1.5,
  /** share of pauses among gaps and of tops with a dip [-]; ours, flat between 0.03 and 0.1 */
  pauseShare: 0.08,
  dipShare: 0.06,
  /** typical pause [s]; ours */
  typicalPauseS: 5,
  /** repetitions in a typical set [-]; Hébert-Losier et al. (2017), Physiotherapy 103:446-452: medians 21 and 24 */
  typicalSetSize: 22,
  /** relative misfit of the repetition shape [-]; ours */
  shapeMisfit: 0.25,
  /** how far a set's own shape may differ from the templates [share]; ours */
  shapeSpread: 0.35,
  /** what the grid cannot follow [share of the acceleration]; ours: a quarter of a cell against a rise of half a second */
  gridMisfit: 0.1,
  /** the same before anything is known of the set's shape [share]; ours */
  firstMisfit: 0.35,
  /** evidence that a set needs beyond standing [nat]; ours: about one for each quantity that is fitted to the set */
  setEntryCost: 4,
  /** evidence below which the shape is looked for in more noise, and above which a set counts [nat]; ours: squats reached 3.4 */
  leastEvidence: 1,
  leastEvidenceOfSet: 4,
  /** the same where hardly any standing is left, and more for each repetition [nat]; ours: quiet standing reached 19 with two */
  leastEvidenceFilled: 16,
  leastEvidenceEach: 2.2,
  /** shares of the recording held by repetitions between which that grows [-]; ours */
  littleHeldShare: 0.25,
  muchHeldShare: 0.5,
  /** repetitions up to which that is asked in full; from twice as many on it is not, noise does not line them up [-]; ours: quiet standing reached 7 */
  few: 6.5,
  /** repetitions that count without that: share of the paths, rise over its standard deviation, and the share that the others keep [-]; ours: quiet standing reached a ratio of 7.3 */
  clearShare: 0.9,
  clearRatio: 9.5,
  doubtfulShare: 0.25,
  /** other movement begins and ends [1/s]; ours */
  otherBeginsPerS: 0.02,
  otherEndsPerS: 0.7,
  /** smooth movements that are no repetitions: rate [1/s] and sizes [m]; ours: fidgeting, a knee bend, sitting down */
  bumpsPerS: 0.015,
  firstBumpsPerS: 1e-5,
  bumpSizesM: [0.012, 0.05, 0.3],
  /** how much an impact speaks for other movement [nat]; ours: steps have one each, repetitions seldom */
  impactEvidence: 1.5,
  /** other movement that a knock may be in and how far from the set [s], size of a knock [standard deviations of the noise], evidence that leaving out a cell has to add [nat]; ours: landings on simulated sets add 3 and more, field noise 1 */
  longestKnockS: 1.5,
  knockReachS: 0.5,
  knockThreshold: 3.5,
  leastKnockGain: 2,
  /** acceleration of steps [m/s2]; ours */
  otherAcceleration: 1.5,
  /** order of the noise model [-]; ours */
  noiseOrder: 4,
  /** rounds of learning, paths in each, paths at the end [-]; ours */
  learningRounds: 4,
  learningPaths: 40,
  paths: 160,
  /** seed of the sampled paths [-] */
  seed: 20260101,
  /** widening of sampled spreads [-]; ours, from simulated sets */
  riseWidening: 1.15,
  timeWidening: 1.3,
  countWidening: 1.6,
  /** what an unknown shape adds to times [share of the move] and to rises [share]; ours, from simulated sets */
  shapeTimeShare: 0.01,
  shapeRiseShare: 0.05,
  /** what an unknown shape adds to all rises of a set alike [share]; ours, from simulated sets */
  shapeRiseCommon: 0.12,
  /** least doubt about any repetition [-]; ours */
  leastDoubt: 0.002,
  /** recordings longer than this are searched coarsely first [s]; ours */
  searchAboveS: 300,
  searchWindowS: 90,
  /** share of body weight that counts as standing on the platform, and to which a stance is trimmed [-]; ours */
  standingShare: 0.85,
  trimShare: 0.97,
  /** shifting after stepping on and before stepping off [s]; ours */
  settleS: 0.35,
  /** slow repetitions of a short foot that a recording may hide, from and up to [s], their rise [m] and share held [-]; ours */
  slowDurationS: 3,
  slowestDurationS: 6,
  slowRiseM: 0.04,
  slowHoldShare: 0.1,
  /** ratio below which such a one is not found reliably among the hundreds of places it may have [-]; ours */
  leastRatio: 4,
  /** joint fit: share of paths that a repetition needs, rounds [-]; ours: later rounds change less than the noise does */
  jointLeastShare: 0.4,
  jointRounds: 8,
  /** spread of rise, hold and fall in common, of each apart, of the rest between repetitions [share]; ours, flat within half and twice */
  jointPaceSpread: 0.08,
  jointPartSpread: 0.03,
  jointRestSpread: 0.04,
  /** bounds of the spread of rises about their line [share]; ours */
  jointLeastRiseSpread: 0.05,
  jointMostRiseSpread: 0.12,
  /** what is left below after an incomplete return, on average over all, and its spread [share of the rise]; ours */
  unreachedShare: 0.025,
  unreachedSpread: 0.07,
  /** shape of a usual move [-]; ours: nearly minimum jerk, quicker near the bottom for the arc of the ankle, one phase */
  moveEnds: 1.8,
  moveTilt: -0.25,
  moveMiddle: 0,
  /** how far people differ from it [log of ends, then as they are]; ours */
  moveEndsSpread: 0.35,
  moveTiltSpread: 0.4,
  moveMirrorSpread: 0.25,
  moveMiddleSpread: 1,
  /** share of the paths' spread that the joint fit leaves in times and rises [-]; ours, from simulated sets */
  jointPathTimes: 0.8,
  jointPathRises: 0.4,
};
