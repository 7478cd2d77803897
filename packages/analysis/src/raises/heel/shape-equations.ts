import { type ColumnProducts, columnProducts, normalEquations } from './column-products.ts';
import { fitRoom } from './fit-room.ts';
import { softMisfit, softRoot, whiten, whitenFour } from './innovations.ts';
import { solveSideBySide, solveSymmetric } from './linear-solve.ts';
import type { FitData } from './move-fit.ts';
import { moveLevels, moveSize, moveSlopes, tieHold } from './move-model.ts';
import { type MoveShape, moveShape, readShape, type ShapeExponents, softEnds, waySlope } from './move-shape.ts';
import { addPartsPrior, type PartsPrior, partCount, partsMisfit } from './parts-prior.ts';
import { addShapePrior, origin, type ShapeRule, shapeSize } from './shape-prior.ts';

/** Shared parameters: those of the way up, of the way down, then the usual length of the parts. */
export const shapesSize = 2 * shapeSize;
export const sharedSize = shapesSize + partCount;

/** Unknowns of one repetition with the shapes: its own, then those of the way up and of the way down, and one that fills four. */
const total = columnProducts(moveSize + shapesSize).unknowns;

/**
 * Exponents of one way among the shared parameters.
 *
 * @param shared - logarithm of start, of end, spread and tilt of the way up, then of the way down [-]
 * @param offset - where the way begins [index]
 * @returns its exponents [-]
 *
 * Source: definition
 */
export function exponentsOf(shared: Float64Array, offset: number): ShapeExponents {
  return {
    start: Math.exp(shared[offset]),
    end: Math.exp(shared[offset + 1]),
    spread: shared[offset + 2],
    tilt: shared[offset + 3],
  };
}

/** One way as it was tried: the shape, and how softly it begins and ends. */
interface Way {
  readonly exponents: ShapeExponents;
  readonly soft: Float64Array;
  readonly shape: MoveShape;
}

function wayOf(shared: Float64Array, offset: number): Way {
  const exponents = exponentsOf(shared, offset);
  const soft = softEnds(exponents.start, exponents.end);
  return { exponents, soft, shape: moveShape(exponents, soft) };
}

/** Derivatives of the way by each of its parameters, tabulated like it. */
function waySlopes(shared: Float64Array, offset: number, { exponents, soft, shape }: Way): Float64Array[] {
  const { start, end, spread, tilt } = exponents;
  return [
    waySlope(shape.way, exponents, softEnds(Math.exp(shared[offset] + 0.01), end), 0.01),
    waySlope(shape.way, exponents, softEnds(start, Math.exp(shared[offset + 1] + 0.01)), 0.01),
    waySlope(shape.way, { spread: spread + 0.05, tilt }, soft, 0.05),
    waySlope(shape.way, { spread, tilt: tilt + 0.02 }, soft, 0.02),
  ];
}

/** Repetitions that are fitted together, the habit that they show (undefined for too few), and how people differ. */
export interface TogetherFit {
  readonly all: readonly FitData[];
  readonly habit: PartsPrior | undefined;
  readonly rule: ShapeRule;
}

/** Parameters that were tried: of each repetition and shared ones, with the whitened departures and the misfit. */
export interface TriedTogether {
  readonly white: readonly Float64Array[];
  readonly roots: readonly Float64Array[];
  moves: readonly Float64Array[];
  shared: Float64Array;
  up: Way;
  down: Way;
  /** robust misfit of all samples and of the habits: -2 log-likelihood up to a constant [-] */
  cost: number;
}

/**
 * Room for parameters that are tried.
 *
 * @param all - samples of the repetitions [s, m]
 * @returns room for them, nothing tried yet [-]
 *
 * Source: ours
 */
export function roomTogether(all: readonly FitData[]): TriedTogether {
  const [white, roots] = [0, 1].map(() => all.map(({ level }) => new Float64Array(level.length)));
  const shared = Float64Array.of(...origin, ...origin, ...new Float64Array(partCount));
  const [up, down] = [wayOf(shared, 0), wayOf(shared, shapeSize)];
  return { white, roots, moves: [], shared, up, down, cost: Number.POSITIVE_INFINITY };
}

function habitAt(habit: PartsPrior | undefined, shared: Float64Array): PartsPrior | undefined {
  return habit && { ...habit, usualS: Array.from(shared.subarray(shapesSize)) };
}

/**
 * Misfit of all repetitions at one set of parameters.
 *
 * @param fit - samples and rules, see {@link TogetherFit} [s, m]
 * @param moves - parameters of each repetition, its times in order [s, m]
 * @param shared - parameters of the ways, then the usual parts [-, s]
 * @param tried - receives both with their misfit, see {@link TriedTogether} [-]
 *
 * Source: ours
 */
export function tryTogether(
  { all, habit, rule }: TogetherFit,
  moves: readonly Float64Array[],
  shared: Float64Array,
  tried: TriedTogether,
): void {
  const parts = habitAt(habit, shared);
  const [up, down] = [wayOf(shared, 0), wayOf(shared, shapeSize)];
  let cost = 0;
  for (let k = 0; k < all.length; k++) {
    const { timesS, level, whitening } = all[k];
    const [white, roots] = [tried.white[k], tried.roots[k]];
    moveLevels(moves[k], timesS, up.shape, down.shape, roots);
    for (let i = 0; i < roots.length; i++) roots[i] = level[i] - roots[i];
    whiten(whitening, roots, white);
    for (let i = 0; i < roots.length; i++) {
      const root = softRoot(white[i] * white[i]);
      roots[i] = root;
      cost += softMisfit(root);
    }
    if (parts !== undefined) cost += partsMisfit(parts, moves[k]);
  }
  const unused = [new Float64Array(sharedSize * sharedSize), new Float64Array(sharedSize)] as const;
  cost += addShapePrior(shared, sharedSize, ...unused, rule);
  Object.assign(tried, { moves, shared, up, down, cost });
}

/** Pieces of the normal equations: one block for each repetition, its coupling with the shared ones, and theirs. */
export interface Blocks {
  readonly own: readonly Float64Array[];
  /** a row for each unknown of the repetition: its right-hand side, then its coupling with each shared one */
  readonly sides: readonly Float64Array[];
  readonly shared: Float64Array;
  readonly sharedGradient: Float64Array;
}

/** Length of a row of {@link Blocks.sides}. */
const sideSize = 1 + sharedSize;

/**
 * Room for the normal equations.
 *
 * @param count - number of repetitions [-]
 * @returns room for their pieces [-]
 *
 * Source: ours
 */
export function roomForBlocks(count: number): Blocks {
  return {
    own: Array.from({ length: count }, () => new Float64Array(moveSize * moveSize)),
    sides: Array.from({ length: count }, () => new Float64Array(moveSize * sideSize)),
    shared: new Float64Array(sharedSize * sharedSize),
    sharedGradient: new Float64Array(sharedSize),
  };
}

/**
 * Normal equations at parameters that were tried.
 *
 * @param fit - samples and rules, see {@link TogetherFit} [s, m]
 * @param tried - the parameters, see {@link TriedTogether} [s, m, -]
 * @param blocks - receives their pieces [-]
 *
 * Source: ours
 */
export function assembleTogether({ all, habit, rule }: TogetherFit, tried: TriedTogether, blocks: Blocks): void {
  const { moves, shared } = tried;
  const parts = habitAt(habit, shared);
  blocks.shared.fill(0);
  blocks.sharedGradient.fill(0);
  const slopes = [waySlopes(shared, 0, tried.up), waySlopes(shared, shapeSize, tried.down)] as const;
  const products = columnProducts(total);
  for (let k = 0; k < all.length; k++) {
    addRepetition(all[k], tried, k, slopes, products);
    scatter(products, blocks, k);
    if (parts !== undefined) addParts(parts, moves[k], blocks, k);
  }
  for (let a = shapesSize; a < sharedSize; a++) {
    blocks.shared[a * sharedSize + a] += 1e-6;
  }
  addShapePrior(shared, sharedSize, blocks.shared, blocks.sharedGradient, rule);
}

/** Normal equations of one repetition with the shapes. */
function addRepetition(
  { timesS, whitening }: FitData,
  tried: TriedTogether,
  k: number,
  [upSlopes, downSlopes]: readonly [up: readonly Float64Array[], down: readonly Float64Array[]],
  products: ColumnProducts,
): void {
  const [p, roots] = [tried.moves[k], tried.roots[k]];
  const count = timesS.length;
  const room = fitRoom(2 * total * count);
  const [white, weighted] = [room.subarray(0, total * count), room.subarray(total * count)];
  white.fill(0);
  const at = moveSlopes(p, timesS, tried.up.shape, tried.down.shape, white);
  addShapeSlopes(white, moveSize, upSlopes, timesS, [at.up, at.hold], [p[0], p[1]], p[5] - p[4]);
  addShapeSlopes(white, moveSize + shapeSize, downSlopes, timesS, [at.down, at.rest], [p[2], p[3]], p[6] - p[5]);
  whitenFour(whitening, white, 0, at.up);
  whitenFour(whitening, white, 4, 0);
  whitenFour(whitening, white, 8, at.up);
  whitenFour(whitening, white, 12, at.down);
  const own = [at.up, at.up, at.down, at.down, 0, at.up, at.down];
  const ofWays = [at.up, at.up, at.up, at.up, at.down, at.down, at.down, at.down];
  const firsts = [...own, ...ofWays, count];
  weighted.fill(0);
  for (let a = 0; a < total; a++) {
    for (let i = firsts[a], place = a * count + i; i < count; i++, place++) weighted[place] = white[place] / roots[i];
  }
  normalEquations(white, weighted, tried.white[k], firsts, products);
}

function addShapeSlopes(
  columns: Float64Array,
  firstColumn: number,
  slopes: readonly Float64Array[],
  timesS: Float64Array,
  [from, to]: readonly [number, number],
  [fromS, toS]: readonly [number, number],
  span: number,
): void {
  slopes.forEach((table, k) => {
    const first = (firstColumn + k) * timesS.length;
    for (let i = from; i < to; i++) {
      columns[first + i] = span * readShape(table, (timesS[i] - fromS) / (toS - fromS));
    }
  });
}

/** Puts the normal equations of one repetition where they belong: its own, the shared ones, and what couples them. */
function scatter({ matrix, gradient }: ColumnProducts, blocks: Blocks, k: number): void {
  const [own, sides] = [blocks.own[k], blocks.sides[k]];
  const { shared, sharedGradient } = blocks;
  for (let a = 0; a < moveSize; a++) {
    sides[a * sideSize] = gradient[a];
    for (let b = 0; b <= a; b++) own[a * moveSize + b] = matrix[a * total + b];
    for (let b = 0; b < shapesSize; b++) sides[a * sideSize + 1 + b] = matrix[(moveSize + b) * total + a];
    sides.fill(0, a * sideSize + 1 + shapesSize, (a + 1) * sideSize);
  }
  for (let a = 0; a < shapesSize; a++) {
    sharedGradient[a] += gradient[moveSize + a];
    for (let b = 0; b <= a; b++) shared[a * sharedSize + b] += matrix[(moveSize + a) * total + moveSize + b];
  }
}

/** Adds what the habit says to one repetition. */
function addParts(parts: PartsPrior, p: Float64Array, blocks: Blocks, k: number): void {
  const gradient = new Float64Array(moveSize);
  const sides = blocks.sides[k];
  for (let a = 0; a < moveSize; a++) gradient[a] = sides[a * sideSize];
  const shared = {
    first: shapesSize,
    size: sharedSize,
    matrix: blocks.shared,
    gradient: blocks.sharedGradient,
    coupling: sides,
    couplingAt: 1,
    couplingSize: sideSize,
  };
  addPartsPrior(parts, p, moveSize, { matrix: blocks.own[k], gradient, shared });
  for (let a = 0; a < moveSize; a++) sides[a * sideSize] = gradient[a];
}

/**
 * Step of all parameters: the repetitions are eliminated one by one, then the few shared ones solved for.
 *
 * @param blocks - the normal equations, see {@link Blocks} [-]
 * @param damping - share by which the diagonals are raised [-]
 * @param moves - parameters of each repetition that the step is added to [s, m]
 * @returns what is added to the parameters; undefined where the equations have no solution [s, m, -]
 *
 * Source: Levenberg-Marquardt (Marquardt 1963, J Soc Ind Appl Math 11:431-441) with the Schur complement
 */
export function stepTogether(
  blocks: Blocks,
  damping: number,
  moves: readonly Float64Array[],
): { readonly moves: Float64Array[]; readonly shared: Float64Array } | undefined {
  const schur = Float64Array.from(blocks.shared);
  const sharedStep = Float64Array.from(blocks.sharedGradient);
  for (let a = 0; a < sharedSize; a++) schur[a * sharedSize + a] = schur[a * sharedSize + a] * (1 + damping);
  const matrix = new Float64Array(moveSize * moveSize);
  const solved: Float64Array[] = [];
  for (let k = 0; k < blocks.own.length; k++) {
    const p = moves[k];
    let sides = Float64Array.from(blocks.sides[k]);
    damp(blocks.own[k], damping, matrix);
    if (!solveSideBySide(matrix, sides, moveSize)) return undefined;
    if (p[1] + sides[sideSize] > p[2] + sides[2 * sideSize]) {
      sides = Float64Array.from(blocks.sides[k]);
      damp(blocks.own[k], damping, matrix);
      tieHold(p, matrix, moveSize, sides, sideSize);
      if (!solveSideBySide(matrix, sides, moveSize)) return undefined;
    }
    solved.push(sides);
    eliminate(blocks.sides[k], sides, schur, sharedStep);
  }
  if (!solveSymmetric(schur, [sharedStep], sharedSize)) return undefined;
  return { moves: solved.map((sides) => ownStep(sides, sharedStep)), shared: sharedStep };
}

function damp(own: Float64Array, damping: number, matrix: Float64Array): void {
  matrix.set(own);
  for (let a = 0; a < moveSize; a++) matrix[a * moveSize + a] = matrix[a * moveSize + a] * (1 + damping) + 1e-6;
}

/** Takes one repetition out of the shared equations. */
function eliminate(sides: Float64Array, solved: Float64Array, schur: Float64Array, sharedStep: Float64Array): void {
  for (let a = 0; a < sharedSize; a++) {
    for (let m = 0; m < moveSize; m++) {
      const coupling = sides[m * sideSize + 1 + a];
      sharedStep[a] -= coupling * solved[m * sideSize];
      const [to, from] = [a * sharedSize, m * sideSize + 1];
      for (let b = 0; b <= a; b++) schur[to + b] = schur[to + b] - coupling * solved[from + b];
    }
  }
}

/** Step of the parameters of a repetition, when that of the shared ones is known. */
function ownStep(sides: Float64Array, sharedStep: Float64Array): Float64Array {
  const own = new Float64Array(moveSize);
  for (let m = 0; m < moveSize; m++) {
    let step = sides[m * sideSize];
    for (let b = 0; b < sharedSize; b++) step -= sides[m * sideSize + 1 + b] * sharedStep[b];
    own[m] = step;
  }
  return own;
}
