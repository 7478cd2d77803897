import type { FitData } from './move-fit.ts';
import { type Move, moveOf, orderTimes, parametersOf } from './move-model.ts';
import { type MoveShape, moveShape } from './move-shape.ts';
import { type PartsPrior, type PartsRule, partCount, partsPrior, usualParts } from './parts-prior.ts';
import {
  assembleTogether,
  exponentsOf,
  roomForBlocks,
  roomTogether,
  shapesSize,
  stepTogether,
  type TriedTogether,
  tryTogether,
} from './shape-equations.ts';
import { origin, type ShapeRule, shapeSize } from './shape-prior.ts';

/** How the ways of people differ, and how long their parts last. */
export interface ShapeChoiceRule {
  readonly parts: PartsRule;
  readonly shape: ShapeRule;
}

export interface ChosenShapes {
  readonly up: MoveShape;
  readonly down: MoveShape;
  /** how long the parts last; undefined for too few repetitions */
  readonly parts: PartsPrior | undefined;
  /** the repetitions as they were fitted together */
  readonly moves: readonly Move[];
}

const rounds = 20;

/** Fewer repetitions show no habit. */
const leastForHabit = 4;

/**
 * The shapes of the way up and down that suit the repetitions of a set best, all of them together: one person moves
 * alike, so a few repetitions tell the shape that a single one under sway cannot.
 *
 * @param all - samples of the repetitions, without dips; a dozen is enough [s, m]
 * @param guesses - where to begin, one for each [s, m]
 * @param rule - see {@link ShapeChoiceRule} [s, -]
 * @returns shape of the way up and of the way down; minimum jerk when nothing better is found [-]
 *
 * Source: ours (posterior mode over a family of shapes with repetitions pooled; Levenberg-Marquardt with the Schur complement)
 */
export function chooseShapes(all: readonly FitData[], guesses: readonly Move[], rule: ShapeChoiceRule): ChosenShapes {
  const best = search(all, guesses, rule);
  return {
    up: moveShape(exponentsOf(best.shared, 0)),
    down: moveShape(exponentsOf(best.shared, shapeSize)),
    parts: all.length < leastForHabit ? undefined : partsPrior(best.shared.subarray(shapesSize), rule.parts),
    moves: best.moves.map(moveOf),
  };
}

/** What a round has to gain of the misfit of each sample, of which 1 is expected, for another one to tell more [-]; ours. */
const worthwhile = 2e-3;

function search(all: readonly FitData[], guesses: readonly Move[], rule: ShapeChoiceRule): TriedTogether {
  const shortest = all.map(({ timesS }) => Math.max(0.06, 3 * (timesS[1] - timesS[0])));
  const moves = guesses.map((guess, k) => {
    const p = parametersOf(guess);
    orderTimes(p, shortest[k]);
    return p;
  });
  const usual = all.length === 0 ? new Float64Array(partCount) : usualParts(moves);
  const habit = all.length < leastForHabit ? undefined : partsPrior(usual, rule.parts);
  const fit = { all, habit, rule: rule.shape };
  const samples = all.reduce((sum, data) => sum + data.timesS.length, 0);
  let [best, tried] = [roomTogether(all), roomTogether(all)];
  const blocks = roomForBlocks(all.length);
  tryTogether(fit, moves, Float64Array.of(...origin, ...origin, ...usual), best);
  assembleTogether(fit, best, blocks);
  let damping = 0.01;
  let hasFailed = false;
  for (let round = 0; round < rounds; round++) {
    const step = stepTogether(blocks, damping, best.moves);
    if (step === undefined) break;
    const shared = best.shared.map((value, a) => {
      const limit = longest(a);
      return held(value + Math.max(-limit, Math.min(limit, step.shared[a])), a);
    });
    const moved = best.moves.map((p, k) => {
      const next = p.map((value, m) => value + step.moves[k][m]);
      orderTimes(next, shortest[k]);
      return next;
    });
    tryTogether(fit, moved, shared, tried);
    if (tried.cost < best.cost) {
      const small = best.cost - tried.cost < worthwhile * Math.max(tried.cost, samples);
      [best, tried] = [tried, best];
      if (small) break;
      assembleTogether(fit, best, blocks);
      // what failed a round ago would fail again
      if (!hasFailed) damping = Math.max(1e-5, damping / 5);
      hasFailed = false;
    } else {
      hasFailed = true;
      damping *= 5;
      if (damping > 1e4) break;
    }
  }
  return best;
}

/** Longest step of a shared parameter: the spread of a shape has a wider range than the others; ours. */
function longest(index: number): number {
  return index < shapesSize && index % shapeSize === 2 ? 3 : 0.7;
}

/** Keeps the parameters of a shape where the family means something. */
function held(value: number, index: number): number {
  if (index >= shapesSize) return Math.max(0, value);
  const kind = index % shapeSize;
  if (kind === 2) return Math.min(15, Math.max(-0.9, value));
  if (kind === 3) return Math.min(3, Math.max(-3, value));
  return Math.min(Math.log(5), Math.max(Math.log(0.7), value));
}
