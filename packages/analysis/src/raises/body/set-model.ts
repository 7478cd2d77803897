import { createRandom } from '../../signal/random.ts';
import { type Bank, type ShapeGrid, templateBank } from './bank.ts';
import { isBetterSet } from './better-set.ts';
import type { Correlations } from './correlations.ts';
import { learnRhythm } from './learning.ts';
import { type Path, samplePaths } from './path-sampling.ts';
import { learnProfile, type Profile, profileTemplate } from './profile.ts';
import { priorRhythm, type Rhythm } from './rhythm.ts';
import { type ModelSignal, noiseGuesses, oddsOf, type Round, weigh } from './round.ts';
import type { BodySettings } from './settings.ts';
import { learnSideways } from './sideways.ts';
import { repetitionTemplate, type Template } from './template.ts';
import type { Whitened } from './whitening.ts';

/** A set as it was learnt, with segmentations drawn from its posterior. */
export interface FittedSet {
  readonly rhythm: Rhythm;
  readonly bank: Bank;
  readonly whitened: Whitened;
  readonly correlations: Correlations;
  readonly paths: readonly Path[];
  /** log evidence for a set against none [nat] */
  readonly evidence: number;
  /** log evidence of the whole recording, whatever it holds [nat] */
  readonly likelihood: number;
}

function broadGrid(settings: BodySettings): ShapeGrid {
  return {
    fromS: settings.shortestS,
    toS: settings.longestS,
    durationStep: 0.14,
    holdShares: [0, 0.2, 0.45, 0.65],
    fallRatios: [0.7, 1, 1.45],
    twoPhases: true,
    swinging: true,
  };
}

/** A finer grid about what was learnt, and a coarse one for the repetition that is unlike the others. */
function narrowGrids(rhythm: Rhythm, settings: BodySettings): ShapeGrid[] {
  const reach = 2.2 * rhythm.logDurationSpread + Math.abs(rhythm.logDurationSlope) * 30;
  const fromS = Math.max(settings.shortestS, Math.exp(rhythm.logDuration - reach));
  const toS = Math.min(settings.longestS, Math.max(1.15 * fromS, Math.exp(rhythm.logDuration + reach)));
  const holdShares = [-1, 0, 1]
    .map((step) => Math.max(0, Math.min(0.75, rhythm.holdShare + 1.2 * step * rhythm.holdSpread)))
    .filter((share, index, all) => index === 0 || share - all[index - 1] > 0.03);
  const fallRatios = [-1, 0, 1].map((step) => Math.exp(rhythm.logFallRatio + 1.2 * step * rhythm.logFallSpread));
  const near = { fromS, toS, durationStep: 0.08, holdShares, fallRatios };
  // movements that swing into each other leave no rest to make up for a length between two of the grid
  const cells = settings.modelRateHz * Math.exp(rhythm.logDuration);
  const swing = { fromS, toS, durationStep: 1 / cells, holdShares: [0], fallRatios: [], swinging: true };
  const far = {
    ...broadGrid(settings),
    durationStep: 0.25,
    holdShares: [0.1, 0.5],
    fallRatios: [1],
    twoPhases: false,
    swinging: false,
  };
  return [near, swing, far];
}

/** Templates whose top dips: the moves of the set, and a longer time between them of which nothing is asked. */
function dippedTemplates(rhythm: Rhythm, settings: BodySettings): Template[] {
  const usualS = Math.exp(rhythm.logDuration);
  const steadyS = rhythm.holdShare * usualS;
  return [0.88, 1, 1.13].flatMap((factor) =>
    Array.from({ length: 10 }, (_, i) => {
      const movesS = factor * (usualS - steadyS);
      const durationS = movesS + steadyS + 0.15 + 0.1 * i * Math.max(1, usualS / 2);
      const shape = { durationS, holdShare: 1 - movesS / durationS, fallRatio: Math.exp(rhythm.logFallRatio), steadyS };
      return repetitionTemplate(shape, settings.modelRateHz);
    }),
  );
}

/** Templates of the shape that the set shares, over the durations that it uses. */
function sharedTemplates(profile: Profile | undefined, rhythm: Rhythm, settings: BodySettings): Template[] {
  if (profile === undefined) return [];
  const reach = 2.4 * rhythm.logDurationSpread + Math.abs(rhythm.logDurationSlope) * 30;
  const steps = Math.max(2, Math.round((2 * reach) / 0.04));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const durationS = Math.exp(rhythm.logDuration + reach * ((2 * i) / steps - 1));
    return profileTemplate(profile, durationS, settings.modelRateHz);
  });
}

/** Times that a shape is blurred at most [-]; ours. */
const MOST_BLURS = 3;

/** The same settings for quick repetitions, which in a broad prior cost as much as each of them is seldom. */
function quickSettings(settings: BodySettings): BodySettings {
  const { shortestS, quickShortestShare, quickTypicalS, quickLongestS } = settings;
  const quickestS = quickShortestShare * shortestS;
  return { ...settings, shortestS: quickestS, typicalDurationS: quickTypicalS, longestS: quickLongestS };
}

/** A round before anything is known of a set, and the settings that it was weighed with. */
interface Start {
  readonly round: Round;
  readonly settings: BodySettings;
}

/** A recording weighed before anything is known of its set, for each guess at the noise. */
function startsOf(signal: ModelSignal, settings: BodySettings, isFull: boolean): Start[] {
  const centreS = signal.startS + signal.acceleration.length / settings.modelRateHz / 2;
  const broad = templateBank([broadGrid(settings)], settings.modelRateHz);
  const early = { ...settings, bumpsPerS: settings.firstBumpsPerS };
  const starts: Start[] = [];
  for (const noise of noiseGuesses(signal, settings, isFull)) {
    const rhythm = priorRhythm(settings, centreS, noise);
    starts.push({ round: weigh(signal, broad, rhythm, undefined, early, starts[0]?.round), settings });
  }
  return starts;
}

/** In a quiet recording a shape that is not known yet looks like other movement: more noise blurs it until it does not. */
function blurred(signal: ModelSignal, { round, settings }: Start): Start {
  const early = { ...settings, bumpsPerS: settings.firstBumpsPerS };
  let best = round;
  for (let blur = 0; blur < MOST_BLURS && oddsOf(best) < settings.leastEvidence; blur++) {
    const { rhythm } = best.input;
    const louder = { ...rhythm, noiseVariance: 4 * rhythm.noiseVariance };
    const next = weigh(signal, best.bank, louder, undefined, early, best);
    if (oddsOf(next) < oddsOf(best)) break;
    best = next;
  }
  return { round: best, settings };
}

/**
 * A set fitted to a recording: its rhythm by empirical Bayes and segmentations drawn from their posterior.
 *
 * The first round is run for usual and for quick repetitions and for a few guesses at the noise, and the one with the most
 * evidence goes on. Each later round learns the rhythm from sampled paths and lays the templates finer about it. A set of quick
 * ones whose shape is not known looks like a slower one of pairs, and the other way round: where it may be either, both are
 * learnt. In little noise a set of an unusual shape is other movement throughout: where none is found, the round that spoke most
 * for one goes on as well.
 *
 * @param signal - acceleration on the model grid [m/s2]
 * @param settings - priors and sizes [-]
 * @param isQuick - whether only quick repetitions are looked for [-]
 * @returns rhythm, templates and sampled paths [-]
 *
 * Source: ours
 */
export function fitSet(signal: ModelSignal, settings: BodySettings, isQuick = false): FittedSet {
  const { leastEvidenceOfSet, leastEvidenceFilled } = settings;
  const quick = startsOf(signal, quickSettings(settings), true);
  // quick ones alone are weighed with the usual guesses at the noise as well
  const usual = startsOf(signal, isQuick ? quickSettings(settings) : settings, false);
  const [likeliestUsual, likeliestQuick] = [usual, quick].map((some) => most(some, ({ round }) => round.evidence));
  const tried = [likeliestUsual];
  let found = learnSet(signal, blurred(signal, likeliestUsual));
  // less noise alone adds evidence that is none of a set
  const isEither =
    isLikelier(likeliestQuick.round, likeliestUsual.round) || found.rhythm.shapeMisfit > settings.illFitting;
  if (isEither) {
    tried.push(likeliestQuick);
    const other = learnSet(signal, blurred(signal, likeliestQuick));
    if (isBetterSet(other, found, settings)) found = other;
  }
  if (found.evidence > leastEvidenceOfSet) return found;
  const boldest = most([...usual, ...quick], ({ round }) => oddsOf(round));
  if (tried.includes(boldest) || oddsOf(boldest.round) <= leastEvidenceOfSet) return found;
  const other = learnSet(signal, boldest);
  // who looks twice finds more by chance
  return other.evidence > leastEvidenceFilled ? other : found;
}

/** Whether a round has more evidence, and more of it for a set. */
function isLikelier(one: Round, other: Round): boolean {
  return one.evidence > other.evidence && oddsOf(one) > oddsOf(other);
}

function most<T>(all: readonly T[], of: (one: T) => number): T {
  return all.reduce((best, one) => (of(one) > of(best) ? one : best));
}

/** The set that follows from a first round. */
function learnSet(signal: ModelSignal, { round: begun, settings }: Start): FittedSet {
  const random = createRandom(settings.seed);
  const timeOf = (cell: number): number => signal.startS + cell / settings.modelRateHz;
  const early = { ...settings, bumpsPerS: settings.firstBumpsPerS };
  const broad = begun.bank;
  let round = begun;
  let likeliest: Round | undefined;
  for (let n = 0; n < settings.learningRounds; n++) {
    const paths = samplePaths(round.input, round.forward, settings.learningPaths, random);
    // from coarse to fine: a shape that is not known yet must not be lost to other movement in a quiet recording
    const left = (settings.learningRounds - 1 - n) / settings.learningRounds;
    const cooled = {
      ...settings,
      gridMisfit: settings.gridMisfit * (settings.firstMisfit / settings.gridMisfit) ** left,
    };
    const { whitened, correlations, bank, input } = round;
    const rhythm = learnRhythm(signal.acceleration, whitened, correlations, bank, input.rhythm, paths, cooled, timeOf);
    const { acceleration, present } = signal;
    const profile =
      n === 0
        ? undefined
        : learnProfile(
            acceleration,
            present,
            bank,
            correlations,
            rhythm,
            paths,
            settings.modelRateHz,
            settings.shapeSpread,
            timeOf,
          );
    const next =
      n === 0
        ? broad
        : templateBank(narrowGrids(rhythm, settings), settings.modelRateHz, [
            ...sharedTemplates(profile, rhythm, settings),
            ...dippedTemplates(rhythm, settings),
          ]);
    const sideways = signal.logPower && learnSideways(signal.logPower, bank, paths);
    round = weigh(signal, next, rhythm, sideways, n === 0 ? early : settings);
    if (n > 0 && (likeliest === undefined || round.evidence > likeliest.evidence)) likeliest = round;
  }
  // a shape that is learnt too closely makes other movement of a whole set: the last round need not be the best
  const best = likeliest ?? round;
  const paths = samplePaths(best.input, best.forward, settings.paths, random);
  const { bank, whitened, correlations, input } = best;
  const evidence = oddsOf(best);
  return { rhythm: input.rhythm, bank, whitened, correlations, paths, evidence, likelihood: best.evidence };
}
