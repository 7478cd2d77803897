/** Constants of the final pass over a trunk or platform recording; the defaults live in assess/defaults/body.ts. */
export interface BodySettings {
  /** rate of the grid on which paths are weighed [Hz] */
  readonly modelRateHz: number;
  /** rate of the grid on which the motion is returned [Hz] */
  readonly motionRateHz: number;
  /** low-pass of the motion and of the model's input [Hz] */
  readonly lowPassHz: number;
  /** low-pass of the trunk's angle [Hz] */
  readonly postureCutoffHz: number;
  /** least quiet stance before the set [s] */
  readonly leastStanceS: number;
  /** width of the moving mean that removes slow drift of the sensor [s] */
  readonly driftWindowS: number;
  /** samples missing for longer than this count as absent [s] */
  readonly gapS: number;
  /** half width of the running median that finds spikes [samples] and its threshold in robust deviations [-] */
  readonly spikeHalfWindow: number;
  readonly spikeThreshold: number;
  /** span over which movement across gravity is averaged [s] */
  readonly sidewaysWindowS: number;
  /** movement across gravity that a body on its toes cannot show: over this span, mean square and share of the vertical [s, m2/s4, -] */
  readonly travelWindowS: number;
  readonly mostSideways: number;
  readonly mostSidewaysShare: number;
  /** brief impacts: quick change above this, this many times the median, this share of the slower movement, reaching this far [Hz, -, -, s] */
  readonly impactAboveHz: number;
  readonly impactThreshold: number;
  readonly impactShare: number;
  readonly impactReachS: number;
  /** shortest and longest repetition [s] */
  readonly shortestS: number;
  readonly longestS: number;
  /** least rise of the body in a repetition, and the most that toes can give [m] */
  readonly leastRiseM: number;
  readonly mostRiseM: number;
  /** what the body cannot do on its toes, see BoutOptions: rest between bouts [s], acceleration [m/s2], the same over quiet and shares of the rise [-] */
  readonly boutRestS: number;
  readonly energetic: number;
  readonly energeticRatio: number;
  readonly mostBelowShare: number;
  readonly mostReversedShare: number;
  /** most that the trunk may turn within a repetition and still be upright on its toes [rad] */
  readonly mostTurnRad: number;
  /** typical rise of the body and its spread between people, as a share [m, -] */
  readonly typicalRiseM: number;
  readonly typicalRiseSpread: number;
  /** spread of rises within a set, as a share of the level, before the set is known [-] */
  readonly riseSpread: number;
  /** how firmly rises and tempo are held constant: standard deviation of their change over a set, as a share [-] */
  readonly riseDrift: number;
  readonly tempoDrift: number;
  /** spread of durations and of cycles within a set, before the set is known (log) [-] */
  readonly durationSpread: number;
  readonly cycleSpread: number;
  /** share of sets whose rests lengthen with the repetition, and the spread of the cycle over the repetition in those (log) [-] */
  readonly pacedShare: number;
  readonly paceSpread: number;
  /** share of the gaps that are stays of any length up to a pause [-] */
  readonly stayShare: number;
  /** typical duration of a repetition and its spread between sets (log) [s, -] */
  readonly typicalDurationS: number;
  readonly typicalDurationSpread: number;
  /** quick repetitions, looked for as well: the shortest as a share of the shortest otherwise, a typical and the longest [-, s, s] */
  readonly quickShortestShare: number;
  readonly quickTypicalS: number;
  readonly quickLongestS: number;
  /** misfit of the shape from which on slow repetitions may be pairs of quick ones [-] */
  readonly illFitting: number;
  /** quick ones for each one that cannot be a heel raise, at least, to be taken in its place [-] */
  readonly leastInstead: number;
  /** share of pauses among the gaps between repetitions and of repetitions that dip at the top, before the set is known [-] */
  readonly pauseShare: number;
  readonly dipShare: number;
  /** typical pause [s] */
  readonly typicalPauseS: number;
  /** repetitions in a typical set [-] */
  readonly typicalSetSize: number;
  /** relative misfit of the repetition shape, before the set is known [-] */
  readonly shapeMisfit: number;
  /** how far the shape that a set shares may differ from the templates, as a share of its size [-] */
  readonly shapeSpread: number;
  /** size of the movement that a grid of shapes and cells cannot follow, as a share of the acceleration [-] */
  readonly gridMisfit: number;
  /** the same before anything is known of the set's shape [-] */
  readonly firstMisfit: number;
  /** evidence that a set needs beyond that of standing, because its rhythm is fitted to it [nat] */
  readonly setEntryCost: number;
  /** evidence for a set against none below which the shape is looked for in more noise, and above which a set counts [nat] */
  readonly leastEvidence: number;
  readonly leastEvidenceOfSet: number;
  /** the same where repetitions leave hardly any standing to compare with: for the set, and more for each of them [nat] */
  readonly leastEvidenceFilled: number;
  readonly leastEvidenceEach: number;
  /** shares of the recording held by repetitions at which that begins and at which it is asked in full [-] */
  readonly littleHeldShare: number;
  readonly muchHeldShare: number;
  /** number of repetitions up to which it is asked in full; from twice that on it is not asked [-] */
  readonly few: number;
  /** repetitions that count without that: share of the paths and rise over its standard deviation [-]; the share that the others keep [-] */
  readonly clearShare: number;
  readonly clearRatio: number;
  readonly doubtfulShare: number;
  /** rate at which other movement begins while standing, and ends [1/s] */
  readonly otherBeginsPerS: number;
  readonly otherEndsPerS: number;
  /** rate at which smooth movements that are no repetitions begin while standing [1/s], and their sizes [m] */
  readonly bumpsPerS: number;
  /** the same before anything is known of the set: bumps fit any movement, repetitions only once their shape is known [1/s] */
  readonly firstBumpsPerS: number;
  readonly bumpSizesM: readonly number[];
  /** how much an impact speaks for other movement [nat] */
  readonly impactEvidence: number;
  /**
   * other movement no longer than this, and no further from the set, may be a repetition with a knock in it [s, s], which is what
   * noise does not reach [standard deviations]; evidence for the set that leaving out each cell of it has to add [nat]
   */
  readonly longestKnockS: number;
  readonly knockReachS: number;
  readonly knockThreshold: number;
  readonly leastKnockGain: number;
  /** acceleration of steps and other large movement [m/s2] */
  readonly otherAcceleration: number;
  /** order of the noise model [-] */
  readonly noiseOrder: number;
  /** rounds of learning the rhythm of the set, paths sampled in each, and at the end [-] */
  readonly learningRounds: number;
  readonly learningPaths: number;
  readonly paths: number;
  readonly seed: number;
  /** factors by which sampled spreads are widened, found on simulated sets [-] */
  readonly riseWidening: number;
  readonly timeWidening: number;
  readonly countWidening: number;
  /** what an unknown shape adds to times, as a share of the move, and to rises, as a share [-] */
  readonly shapeTimeShare: number;
  readonly shapeRiseShare: number;
  /** what an unknown shape adds to all rises of a set alike, as a share [-] */
  readonly shapeRiseCommon: number;
  /** least doubt about any repetition: failures that the paths cannot see [-] */
  readonly leastDoubt: number;
  /** recordings longer than this are searched coarsely first, in windows of this length [s] */
  readonly searchAboveS: number;
  readonly searchWindowS: number;
  /** platform: share of body weight above which someone stands on it, and to which a stance is trimmed [-] */
  readonly standingShare: number;
  readonly trimShare: number;
  /** time after stepping on and before stepping off in which the body still shifts [s] */
  readonly settleS: number;
  /** slow low repetitions that a recording may hide: from and up to [s], rise [m], share held [-], and the signal-to-noise ratio at which one shows [-] */
  readonly slowDurationS: number;
  readonly slowestDurationS: number;
  readonly slowRiseM: number;
  readonly slowHoldShare: number;
  readonly leastRatio: number;
  /** joint fit of a set: share of paths that a repetition needs, rounds of least squares [-] */
  readonly jointLeastShare: number;
  readonly jointRounds: number;
  /** spread of what rise, hold and fall of a repetition have in common, and of each apart, as shares [-] */
  readonly jointPaceSpread: number;
  readonly jointPartSpread: number;
  /** spread of the rest between repetitions that follow each other, as a share of a repetition [-] */
  readonly jointRestSpread: number;
  /** least and greatest spread of the rises about their line, as shares [-] */
  readonly jointLeastRiseSpread: number;
  readonly jointMostRiseSpread: number;
  /** what is left below a repetition that does not return wholly, on average and its spread, as shares of the rise [-] */
  readonly unreachedShare: number;
  readonly unreachedSpread: number;
  /** shape of a usual move, see MoveShape, and how far people differ: log of ends, tilt, fall from mirrored rise, middle [-] */
  readonly moveEnds: number;
  readonly moveTilt: number;
  readonly moveMiddle: number;
  readonly moveEndsSpread: number;
  readonly moveTiltSpread: number;
  readonly moveMirrorSpread: number;
  readonly moveMiddleSpread: number;
  /** share of the spread over the paths that the joint fit leaves in times and in rises [-] */
  readonly jointPathTimes: number;
  readonly jointPathRises: number;
}
