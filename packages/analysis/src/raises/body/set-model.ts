import { createRandom } from '../../signal/random.ts';
import { type Bank, type ShapeGrid, templateBank } from './bank.ts';
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
}

function broadGrid(settings: BodySettings): ShapeGrid {
  return {
    fromS: settings.shortestS,
    toS: settings.longestS,
    durationStep: 0.14,
    holdShares: [0, 0.2, 0.45],
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
    .map((step) => Math.max(0, Math.min(0.6, rhythm.holdShare + 1.2 * step * rhythm.holdSpread)))
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

/**
 * A set fitted to a recording: its rhythm by empirical Bayes and segmentations drawn from their posterior.
 *
 * The first round is run for a few guesses at the noise and the one with the most evidence goes on. Each later round
 * learns the rhythm from sampled paths and lays the templates finer about it.
 *
 * @param signal - acceleration on the model grid [m/s2]
 * @param settings - priors and sizes [-]
 * @returns rhythm, templates and sampled paths [-]
 *
 * Source: ours
 */
export function fitSet(signal: ModelSignal, settings: BodySettings): FittedSet {
  const random = createRandom(settings.seed);
  const cells = signal.acceleration.length;
  const centreS = signal.startS + cells / settings.modelRateHz / 2;
  const timeOf = (cell: number): number => signal.startS + cell / settings.modelRateHz;
  const broad = templateBank([broadGrid(settings)], settings.modelRateHz);
  const early = { ...settings, bumpsPerS: settings.firstBumpsPerS };
  const first = (noise: number, alike?: Round): Round =>
    weigh(signal, broad, priorRhythm(settings, centreS, noise), undefined, early, alike);
  const guesses = noiseGuesses(signal, settings);
  let round = first(guesses[0]);
  for (const noise of guesses.slice(1)) {
    const other = first(noise, round);
    if (other.evidence > round.evidence) round = other;
  }
  // in a quiet recording a shape that is not known yet looks like other movement: blur it until it does not
  for (let blur = 0; blur < 3 && oddsOf(round) < settings.leastEvidence; blur++) {
    const blurred = first(4 * round.input.rhythm.noiseVariance, round);
    if (oddsOf(blurred) < oddsOf(round)) break;
    round = blurred;
  }
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
  }
  const paths = samplePaths(round.input, round.forward, settings.paths, random);
  const { bank, whitened, correlations, input } = round;
  const evidence = oddsOf(round);
  return { rhythm: input.rhythm, bank, whitened, correlations, paths, evidence };
}
