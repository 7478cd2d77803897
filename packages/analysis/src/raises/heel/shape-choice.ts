import { innovations, softMisfit, softRoot } from './innovations.ts';
import { solveSymmetric } from './linear-solve.ts';
import type { FitData } from './move-fit.ts';
import { type Move, moveLevel, moveOf, moveSize, orderTimes, parametersOf } from './move-model.ts';
import { type MoveShape, moveShape, readShape, type ShapeExponents } from './move-shape.ts';
import { addPartsPrior, type PartsPrior, type PartsRule, partCount, partsPrior, usualParts } from './parts-prior.ts';
import { addShapePrior, origin, type ShapeRule, shapeSize } from './shape-prior.ts';

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

/** Shared parameters: those of the way up, of the way down, then the usual length of the parts. */
const shapesSize = 2 * shapeSize;
const sharedSize = shapesSize + partCount;

/** A move in two strokes: the second place, beside minimum jerk, from which the search sets out. */
const twoStrokes = [Math.log(2.7), Math.log(2.7), 6, 0] as const;

const rounds = 20;

/** Fewer repetitions show no habit. */
const leastForHabit = 4;

interface Way {
  readonly shape: MoveShape;
  /** derivative of the way by each of its three parameters, tabulated like it */
  readonly slopes: readonly Float64Array[];
}

function exponentsOf(shared: Float64Array, offset: number): ShapeExponents {
  return {
    start: Math.exp(shared[offset]),
    end: Math.exp(shared[offset + 1]),
    spread: shared[offset + 2],
    tilt: shared[offset + 3],
  };
}

function wayOf(shared: Float64Array, offset: number): Way {
  const shape = moveShape(exponentsOf(shared, offset));
  const slopes = [0.01, 0.01, 0.05, 0.02].map((step, k) => {
    const moved = Float64Array.from(shared);
    moved[offset + k] = moved[offset + k] + step;
    const other = moveShape(exponentsOf(moved, offset)).way;
    return other.map((value, i) => (value - shape.way[i]) / step);
  });
  return { shape, slopes };
}

/** Pieces of the normal equations: one block for each repetition, its coupling with the shared ones, and theirs. */
interface Blocks {
  readonly own: Float64Array[];
  readonly coupling: Float64Array[];
  readonly ownGradient: Float64Array[];
  readonly shared: Float64Array;
  readonly sharedGradient: Float64Array;
  cost: number;
}

function assemble(
  all: readonly FitData[],
  moves: readonly Float64Array[],
  shared: Float64Array,
  habit: PartsPrior | undefined,
  rule: ShapeRule,
): Blocks {
  const parts = habit && { ...habit, usualS: Array.from(shared.subarray(shapesSize)) };
  const [up, down] = [wayOf(shared, 0), wayOf(shared, shapeSize)];
  const blocks: Blocks = {
    own: all.map(() => new Float64Array(moveSize * moveSize)),
    coupling: all.map(() => new Float64Array(moveSize * sharedSize)),
    ownGradient: all.map(() => new Float64Array(moveSize)),
    shared: new Float64Array(sharedSize * sharedSize),
    sharedGradient: new Float64Array(sharedSize),
    cost: 0,
  };
  all.forEach((data, k) => {
    addRepetition(data, moves[k], up, down, blocks, k);
    if (parts === undefined) return;
    blocks.cost += addPartsPrior(parts, moves[k], moveSize, {
      matrix: blocks.own[k],
      gradient: blocks.ownGradient[k],
      shared: {
        first: shapesSize,
        size: sharedSize,
        matrix: blocks.shared,
        gradient: blocks.sharedGradient,
        coupling: blocks.coupling[k],
      },
    });
  });
  for (let a = shapesSize; a < sharedSize; a++) {
    blocks.shared[a * sharedSize + a] += 1e-6;
  }
  blocks.cost += addShapePrior(shared, sharedSize, blocks.shared, blocks.sharedGradient, rule);
  return blocks;
}

function addRepetition(data: FitData, p: Float64Array, up: Way, down: Way, blocks: Blocks, k: number): void {
  const total = moveSize + shapesSize;
  const ownSlopes = new Float64Array(moveSize);
  const slopes = new Float64Array(total);
  const normal = new Float64Array(total * total);
  const gradient = new Float64Array(total);
  const { timesS, level, whitening } = data;
  const { white, take } = innovations(whitening, total);
  for (let i = 0; i < timesS.length; i++) {
    const t = timesS[i];
    const departure = level[i] - moveLevel(p, t, up.shape, down.shape, ownSlopes);
    slopes.fill(0);
    slopes.set(ownSlopes);
    if (t > p[0] && t < p[1]) {
      addShapeSlopes(slopes, moveSize, up, (t - p[0]) / (p[1] - p[0]), p[5] - p[4]);
    } else if (t > p[2] && t < p[3]) {
      addShapeSlopes(slopes, moveSize + shapeSize, down, (t - p[2]) / (p[3] - p[2]), p[6] - p[5]);
    }
    // nothing depends on a way before it begins
    const size = t <= p[0] ? moveSize : t <= p[2] ? moveSize + shapeSize : total;
    const x = take(i, departure, slopes, size);
    const root = softRoot(x * x);
    blocks.cost += softMisfit(root);
    for (let a = 0; a < size; a++) {
      const weighted = white[a] / root;
      gradient[a] = gradient[a] + weighted * x;
      const row = a * total;
      for (let b = 0; b <= a; b++) normal[row + b] = normal[row + b] + weighted * white[b];
    }
  }
  scatter(normal, gradient, blocks, k);
}

function addShapeSlopes(slopes: Float64Array, first: number, way: Way, u: number, span: number): void {
  for (let k = 0; k < shapeSize; k++) slopes[first + k] = span * readShape(way.slopes[k], u);
}

/** Puts the normal equations of one repetition where they belong: its own, the shared ones, and what couples them. */
function scatter(normal: Float64Array, gradient: Float64Array, blocks: Blocks, k: number): void {
  const total = moveSize + shapesSize;
  const [own, coupling, ownGradient] = [blocks.own[k], blocks.coupling[k], blocks.ownGradient[k]];
  const { shared, sharedGradient } = blocks;
  for (let a = 0; a < moveSize; a++) {
    ownGradient[a] += gradient[a];
    for (let b = 0; b <= a; b++) own[a * moveSize + b] += normal[a * total + b];
    for (let b = 0; b < shapesSize; b++) coupling[a * sharedSize + b] += normal[(moveSize + b) * total + a];
  }
  for (let a = 0; a < shapesSize; a++) {
    sharedGradient[a] += gradient[moveSize + a];
    for (let b = 0; b <= a; b++) shared[a * sharedSize + b] += normal[(moveSize + a) * total + moveSize + b];
  }
}

/** Step of all parameters: the repetitions are eliminated one by one, then the few shared ones solved for. */
function stepOf(
  blocks: Blocks,
  damping: number,
): { readonly moves: Float64Array[]; readonly shared: Float64Array } | undefined {
  const schur = Float64Array.from(blocks.shared);
  const sharedStep = Float64Array.from(blocks.sharedGradient);
  for (let a = 0; a < sharedSize; a++) schur[a * sharedSize + a] = schur[a * sharedSize + a] * (1 + damping);
  const solved: Float64Array[][] = [];
  for (let k = 0; k < blocks.own.length; k++) {
    const matrix = Float64Array.from(blocks.own[k]);
    for (let a = 0; a < moveSize; a++) matrix[a * moveSize + a] = matrix[a * moveSize + a] * (1 + damping) + 1e-6;
    const coupling = blocks.coupling[k];
    const right = [Float64Array.from(blocks.ownGradient[k])];
    for (let b = 0; b < sharedSize; b++) {
      const column = new Float64Array(moveSize);
      for (let a = 0; a < moveSize; a++) column[a] = coupling[a * sharedSize + b];
      right.push(column);
    }
    if (!solveSymmetric(matrix, right, moveSize)) return undefined;
    solved.push(right);
    for (let a = 0; a < sharedSize; a++) {
      for (let m = 0; m < moveSize; m++) sharedStep[a] -= coupling[m * sharedSize + a] * right[0][m];
      for (let b = 0; b <= a; b++) {
        for (let m = 0; m < moveSize; m++) schur[a * sharedSize + b] -= coupling[m * sharedSize + a] * right[b + 1][m];
      }
    }
  }
  if (!solveSymmetric(schur, [sharedStep], sharedSize)) return undefined;
  const moves = solved.map((right) =>
    right[0].map((value, m) => {
      let step = value;
      for (let b = 0; b < sharedSize; b++) step -= right[b + 1][m] * sharedStep[b];
      return step;
    }),
  );
  return { moves, shared: sharedStep };
}

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
): { readonly shared: Float64Array; readonly moves: readonly Float64Array[]; readonly cost: number } {
  const shortest = all.map(({ timesS }) => Math.max(0.06, 3 * (timesS[1] - timesS[0])));
  let moves = guesses.map((guess, k) => {
    const p = parametersOf(guess);
    orderTimes(p, shortest[k]);
    return p;
  });
  const usual = all.length === 0 ? new Float64Array(partCount) : usualParts(moves);
  const habit = all.length < leastForHabit ? undefined : partsPrior(usual, rule.parts);
  let shared = Float64Array.of(...from, ...usual);
  let blocks = assemble(all, moves, shared, habit, rule.shape);
  const samples = all.reduce((sum, data) => sum + data.timesS.length, 0);
  let damping = 0.1;
  for (let round = 0; round < rounds; round++) {
    const step = stepOf(blocks, damping);
    if (step === undefined) break;
    const nextShared = shared.map((value, a) => held(value + Math.max(-0.7, Math.min(0.7, step.shared[a])), a));
    const nextMoves = moves.map((p, k) => {
      const next = p.map((value, m) => value + step.moves[k][m]);
      orderTimes(next, shortest[k]);
      return next;
    });
    const tried = assemble(all, nextMoves, nextShared, habit, rule.shape);
    if (tried.cost < blocks.cost) {
      // each sample is expected to cost 1: what gains less than a thousandth of that tells nothing more
      const small = blocks.cost - tried.cost < 1e-3 * Math.max(tried.cost, samples);
      [shared, moves, blocks] = [nextShared, nextMoves, tried];
      damping = Math.max(1e-5, damping / 5);
      if (small) break;
    } else {
      damping *= 5;
      if (damping > 1e4) break;
    }
  }
  return { shared, moves, cost: blocks.cost };
}

/** Keeps the parameters of a shape where the family means something. */
function held(value: number, index: number): number {
  if (index >= shapesSize) return Math.max(0, value);
  const kind = index % shapeSize;
  if (kind === 2) return Math.min(15, Math.max(-0.9, value));
  if (kind === 3) return Math.min(3, Math.max(-3, value));
  return Math.min(Math.log(5), Math.max(Math.log(0.7), value));
}
