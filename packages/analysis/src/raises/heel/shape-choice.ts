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

/** A move in two strokes: the second place, beside minimum jerk, from which the search sets out. */
const twoStrokes = [Math.log(2.7), Math.log(2.7), 6, 0] as const;

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
  const usual = search(all, guesses, Float64Array.of(...origin, ...origin), rule);
  const samples = all.reduce((sum, data) => sum + data.timesS.length, 0);
  // What the usual shapes explain well needs no second search.
  const best =
    usual.cost < plainMisfit * samples
      ? usual
      : [search(all, guesses, Float64Array.of(...twoStrokes, ...twoStrokes), rule)].reduce(
          (a, b) => (b.cost < a.cost ? b : a),
          usual,
        );
  return {
    up: moveShape(exponentsOf(best.shared, 0)),
    down: moveShape(exponentsOf(best.shared, shapeSize)),
    parts: all.length < leastForHabit ? undefined : partsPrior(best.shared.subarray(shapesSize), rule.parts),
    moves: best.moves.map(moveOf),
  };
}

/** Misfit of one sample below which the noise alone explains what is left; 1 is expected. */
const plainMisfit = 1.2;

function search(
  all: readonly FitData[],
  guesses: readonly Move[],
  from: Float64Array,
  rule: ShapeChoiceRule,
): TriedTogether {
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
  tryTogether(fit, moves, Float64Array.of(...from, ...usual), best);
  assembleTogether(fit, best, blocks);
  let damping = 0.1;
  for (let round = 0; round < rounds; round++) {
    const step = stepTogether(blocks, damping);
    if (step === undefined) break;
    const shared = best.shared.map((value, a) => held(value + Math.max(-0.7, Math.min(0.7, step.shared[a])), a));
    const moved = best.moves.map((p, k) => {
      const next = p.map((value, m) => value + step.moves[k][m]);
      orderTimes(next, shortest[k]);
      return next;
    });
    tryTogether(fit, moved, shared, tried);
    if (tried.cost < best.cost) {
      // each sample is expected to cost 1: what gains less than a thousandth of that tells nothing more
      const small = best.cost - tried.cost < 1e-3 * Math.max(tried.cost, samples);
      [best, tried] = [tried, best];
      if (small) break;
      assembleTogether(fit, best, blocks);
      damping = Math.max(1e-5, damping / 5);
    } else {
      damping *= 5;
      if (damping > 1e4) break;
    }
  }
  return best;
}

/** Keeps the parameters of a shape where the family means something. */
function held(value: number, index: number): number {
  if (index >= shapesSize) return Math.max(0, value);
  const kind = index % shapeSize;
  if (kind === 2) return Math.min(15, Math.max(-0.9, value));
  if (kind === 3) return Math.min(3, Math.max(-3, value));
  return Math.min(Math.log(5), Math.max(Math.log(0.7), value));
}
