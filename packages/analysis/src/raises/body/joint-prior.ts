import type { NormalEquations } from './normal-equations.ts';
import { EACH, type MovedRepetition, type SetShape, SHAPE_UNKNOWNS } from './set-moves.ts';
import type { BodySettings } from './settings.ts';

/** Levels about which the repetitions of a set lie; a slope counts from the middle of the set to its end. */
export interface SetMeans {
  readonly logRise: number;
  readonly holdS: number;
  readonly logFall: number;
  /** change of the pace [log] */
  readonly logSlope: number;
  readonly riseM: number;
  readonly riseSlopeM: number;
  /** rest between repetitions that follow each other [s] */
  readonly restS: number;
}

/** Unknowns of a {@link SetMeans}. */
export const MEAN_UNKNOWNS = 7;

/** Everything that is fitted to a set. */
export interface JointState {
  readonly repetitions: readonly MovedRepetition[];
  readonly shape: SetShape;
  readonly means: SetMeans;
}

/** What the set says of itself before it is fitted: its scales, and where in it each repetition lies, -1 to 1. */
export interface JointScales {
  readonly riseM: number;
  readonly riseSpread: number;
  readonly durationS: number;
  readonly places: readonly number[];
}

/** One belief: a sum of unknowns lies at a value, both in standard deviations; what is robust may be odd. */
interface Belief {
  readonly unknowns: readonly number[];
  readonly factors: readonly number[];
  readonly residual: number;
  readonly robust: boolean;
}

/** Freedom of the t distribution of what may be odd [-]. */
const FREEDOM = 4;
/** A hold or rest below zero: two moves overlap by about this much at the most [s]. */
const OVERLAP_S = 0.03;
/** Shortest hold by which holds are scaled: briefer ones vary as much as this one [s]. */
const SHORTEST_HOLD_S = 0.08;

type Say = (unknowns: readonly number[], factors: readonly number[], residual: number, robust?: boolean) => void;

/** Rise, hold and fall of a repetition grow together and a little apart. */
function sayParts(say: Say, state: JointState, k: number, place: number, settings: BodySettings): void {
  const { means, repetitions } = state;
  const one = repetitions[k];
  const [at, m] = [k * EACH, repetitions.length * EACH + SHAPE_UNKNOWNS];
  const scaleS = Math.max(SHORTEST_HOLD_S, means.holdS);
  const own = settings.jointPartSpread;
  const together = [1, Math.max(0, means.holdS / scaleS), 1];
  const square = together.reduce((sum, value) => sum + value * value, 0);
  // inverse root of the covariance own^2 I + pace^2 u u': the identity less a share of the common direction, over own
  const rootShare = (1 - own / Math.sqrt(own * own + settings.jointPaceSpread ** 2 * square)) / square;
  const deviations = [
    one.logRise - means.logRise - means.logSlope * place,
    (one.holdS - means.holdS * (1 + means.logSlope * place)) / scaleS,
    one.logFall - means.logFall - means.logSlope * place,
  ];
  const common = deviations.reduce((sum, value, i) => sum + value * together[i], 0);
  for (let i = 0; i < 3; i++) {
    const [rise, hold, fall] = [0, 1, 2].map((j) => ((i === j ? 1 : 0) - rootShare * together[i] * together[j]) / own);
    say(
      [at + 1, at + 2, at + 3, m, m + 1, m + 2, m + 3],
      [
        rise,
        hold / scaleS,
        fall,
        -rise,
        (-hold * (1 + means.logSlope * place)) / scaleS,
        -fall,
        -place * (rise + (hold * means.holdS) / scaleS + fall),
      ],
      (deviations[i] - rootShare * together[i] * common) / own,
      true,
    );
  }
  if (one.holdS < 0) say([at + 2], [1 / OVERLAP_S], one.holdS / OVERLAP_S);
}

/** Tops lie near their line, bottoms near the floor, and rests are alike. */
function sayLevelsAndRests(say: Say, state: JointState, k: number, scales: JointScales, settings: BodySettings): void {
  const { means, repetitions } = state;
  const one = repetitions[k];
  const [at, m] = [k * EACH, repetitions.length * EACH + SHAPE_UNKNOWNS];
  const place = scales.places[k];
  const spreadM = scales.riseSpread * scales.riseM;
  const fromLineM = one.topM - means.riseM - means.riseSlopeM * place;
  say([at + 4, m + 4, m + 5], [1 / spreadM, -1 / spreadM, -place / spreadM], fromLineM / spreadM, true);
  // nothing precedes the first one that could have been left unfinished
  const fresh = k === 0 || !repetitions[k - 1].joined;
  const bottomM = fresh ? 0 : settings.unreachedShare * scales.riseM;
  const bottomSpreadM = (fresh ? 0.3 : 1) * settings.unreachedSpread * scales.riseM;
  say([at + 5], [1 / bottomSpreadM], (one.bottomM - bottomM) / bottomSpreadM);
  if (!one.joined) return;
  const [riseS, fallS] = [Math.exp(one.logRise), Math.exp(one.logFall)];
  const restS = repetitions[k + 1].startS - one.startS - riseS - one.holdS - fallS;
  const restSpreadS = settings.jointRestSpread * scales.durationS;
  const unknowns = [at + EACH, at, at + 1, at + 2, at + 3];
  const factors = [1, -1, -riseS, -1, -fallS];
  const over = (spreadS: number): number[] => factors.map((factor) => factor / spreadS);
  say([...unknowns, m + 6], [...over(restSpreadS), -1 / restSpreadS], (restS - means.restS) / restSpreadS, true);
  if (restS < 0) say(unknowns, over(OVERLAP_S), restS / OVERLAP_S);
}

/** People move much alike, and come down as they go up. */
function sayShapeAndMeans(say: Say, state: JointState, scales: JointScales, settings: BodySettings): void {
  const { shape, means, repetitions } = state;
  const base = repetitions.length * EACH;
  const m = base + SHAPE_UNKNOWNS;
  const simple = (unknown: number, value: number, spread: number): void => say([unknown], [1 / spread], value / spread);
  simple(base, Math.log(shape.ends / settings.moveEnds), settings.moveEndsSpread);
  simple(base + 1, shape.tilt - settings.moveTilt, settings.moveTiltSpread);
  const mirror = 1 / settings.moveMirrorSpread;
  say([base + 2, base + 1], [mirror, -mirror], mirror * (shape.fallTilt - shape.tilt));
  simple(base + 3, shape.middle - settings.moveMiddle, settings.moveMiddleSpread);
  simple(m, means.logRise - Math.log(0.4 * settings.typicalDurationS), 1);
  simple(m + 1, means.holdS - 0.2, 0.5);
  say([m, m + 2], [1 / 0.3, -1 / 0.3], (means.logRise - means.logFall) / 0.3);
  simple(m + 3, means.logSlope, settings.tempoDrift);
  simple(m + 4, means.riseM - scales.riseM, 0.5 * scales.riseM);
  simple(m + 5, means.riseSlopeM, (settings.riseDrift / 2) * scales.riseM);
  simple(m + 6, means.restS - 0.25, 0.4);
}

function beliefs(state: JointState, scales: JointScales, settings: BodySettings): Belief[] {
  const list: Belief[] = [];
  const say: Say = (unknowns, factors, residual, robust = false) => {
    list.push({ unknowns, factors, residual, robust });
  };
  for (let k = 0; k < state.repetitions.length; k++) {
    sayParts(say, state, k, scales.places[k], settings);
    sayLevelsAndRests(say, state, k, scales, settings);
  }
  sayShapeAndMeans(say, state, scales, settings);
  return list;
}

/**
 * How far a state lies from what is believed of sets in general.
 *
 * @param state - of the fit [-]
 * @param scales - of the set [m, s]
 * @param settings - spreads [-]
 * @returns negative log density, up to a constant [nat]
 *
 * Source: normal and, for what may be odd, t distributions; the rest ours
 */
export function priorCost(state: JointState, scales: JointScales, settings: BodySettings): number {
  let cost = 0;
  for (const { residual, robust } of beliefs(state, scales, settings)) {
    const square = residual * residual;
    cost += robust ? ((FREEDOM + 1) / 2) * Math.log(1 + square / FREEDOM) : square / 2;
  }
  return cost;
}

/**
 * Adds what is believed of sets in general to the equations of a fit.
 *
 * @param equations - of the steps from the state [-]
 * @param state - of the fit [-]
 * @param scales - of the set [m, s]
 * @param settings - spreads [-]
 * @returns nothing: the equations are changed [-]
 *
 * Source: t distributions by reweighting, Lange, Little & Taylor (1989), J Am Stat Assoc 84:881-896 (from memory)
 */
export function addPrior(
  equations: NormalEquations,
  state: JointState,
  scales: JointScales,
  settings: BodySettings,
): void {
  for (const { unknowns, factors, residual, robust } of beliefs(state, scales, settings)) {
    const weight = robust ? Math.sqrt((FREEDOM + 1) / (FREEDOM + residual * residual)) : 1;
    equations.addEquation(
      unknowns,
      factors.map((factor) => weight * factor),
      -weight * residual,
    );
  }
}
