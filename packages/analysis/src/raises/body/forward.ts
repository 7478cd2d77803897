import type { Bank } from './bank.ts';
import type { Bumps } from './bumps.ts';
import { logAdd } from './log-sum.ts';
import type { PriorTables } from './prior-tables.ts';
import type { Rhythm } from './rhythm.ts';
import type { BodySettings } from './settings.ts';

/** Everything that the paths are weighed with. */
export interface PathInput {
  readonly cells: number;
  readonly bank: Bank;
  /** log Bayes factor of template k begun at cell i, at i * templates + k [nat] */
  readonly factors: Float32Array;
  /** log ratio of other movement in each cell [nat] */
  readonly other: Float64Array;
  readonly bumps: Bumps;
  readonly tables: PriorTables;
  readonly spanOf: Uint8Array;
  readonly rhythm: Rhythm;
  readonly settings: BodySettings;
}

/** Log probabilities of the moves between states at a cell boundary [nat]. */
export interface Moves {
  readonly begin: number;
  readonly resume: number;
  readonly otherBegins: number;
  readonly otherEnds: number;
  readonly otherEndsInRepetition: number;
  readonly end: number;
  readonly pause: number;
  readonly follow: number;
  readonly stay: number;
  readonly stayPaused: number;
  readonly stayOther: number;
}

/** Log weights of all paths up to each cell boundary, by the state they are in. */
export interface Forward {
  readonly moves: Moves;
  /** before the set, in a pause, after the set: standing and moving otherwise */
  readonly before: Float64Array;
  readonly beforeOther: Float64Array;
  readonly pause: Float64Array;
  readonly pauseOther: Float64Array;
  readonly after: Float64Array;
  readonly afterOther: Float64Array;
  /** a repetition begins here */
  readonly starts: Float64Array;
  /** a repetition of class c ended here, at boundary * classes + c; and any */
  readonly endsByClass: Float64Array;
  readonly ends: Float64Array;
  /** evidence of all paths against standing still throughout [nat] */
  readonly evidence: number;
  /** the same of the paths without any repetition [nat] */
  readonly evidenceOfNone: number;
}

/** log weight below which a place cannot matter beside the best one */
const NEGLIGIBLE = 40;

function movesOf(rhythm: Rhythm, settings: BodySettings): Moves {
  const rate = settings.modelRateHz;
  const otherBegins = settings.otherBeginsPerS / rate;
  const resume = 1 / (settings.typicalPauseS * rate);
  return {
    begin: Math.log(0.08 / rate),
    resume: Math.log(resume),
    otherBegins: Math.log(otherBegins),
    otherEnds: Math.log((0.8 * settings.otherEndsPerS) / rate),
    otherEndsInRepetition: Math.log((0.2 * settings.otherEndsPerS) / rate),
    end: Math.log(rhythm.endShare),
    pause: Math.log(rhythm.pauseShare),
    follow: Math.log(1 - rhythm.endShare - rhythm.pauseShare),
    stay: Math.log(1 - otherBegins),
    stayPaused: Math.log(1 - otherBegins - resume),
    stayOther: Math.log(1 - settings.otherEndsPerS / rate),
  };
}

/**
 * Log weights of all segmentations of a recording up to each cell boundary.
 *
 * Standing or other movement, then repetitions with rests and pauses between them, then standing or other movement: a
 * hidden semi-Markov chain. Rests follow the beat of the set, given the length of the repetition before.
 *
 * @param input - evidence and priors, see {@link PathInput} [nat]
 * @returns weights by state and the evidence in total [nat]
 *
 * Source: Rabiner (1989), Proc IEEE 77:257-286, explicit duration; states ours
 */
export function forwardPass(input: PathInput): Forward {
  const { cells, bank, factors, other, bumps, tables, spanOf, rhythm, settings } = input;
  const classes = bank.classCells.length;
  const count = bank.templates.length;
  const moves = movesOf(rhythm, settings);
  const filled = (): Float64Array => new Float64Array(cells + 1).fill(-Infinity);
  const [before, beforeOther, pause, pauseOther] = [filled(), filled(), filled(), filled()];
  const [after, afterOther, starts, ends] = [filled(), filled(), filled(), filled()];
  const [none, noneOther] = [filled(), filled()];
  none[0] = Math.log(0.5);
  noneOther[0] = Math.log(0.5);
  const endsByClass = new Float64Array((cells + 1) * classes).fill(-Infinity);
  before[0] = Math.log(0.5) - settings.setEntryCost;
  beforeOther[0] = Math.log(0.5) - settings.setEntryCost;
  // a path without any repetition: standing and other movement only, free of the cost of a set
  after[0] = Math.log(0.5);
  afterOther[0] = Math.log(0.5);
  const advance = (still: Float64Array, moving: Float64Array, b: number, stay: number): void => {
    const ratio = other[b];
    still[b + 1] = logAdd(still[b + 1], logAdd(still[b] + stay, moving[b] + moves.otherEnds));
    moving[b + 1] = logAdd(moving[b + 1], logAdd(still[b] + moves.otherBegins, moving[b] + moves.stayOther) + ratio);
    const from = still[b];
    const { classCells, weights } = bumps;
    const row = b * classCells.length;
    for (let c = 0; c < classCells.length; c++) {
      const end = b + classCells[c];
      if (end > cells) break;
      still[end] = logAdd(still[end], from + weights[row + c]);
    }
  };
  let best = -Infinity;
  for (let b = 0; b <= cells; b++) {
    // repetitions that end here
    let total = -Infinity;
    for (let c = 0; c < classes; c++) total = logAdd(total, endsByClass[b * classes + c]);
    ends[b] = total;
    after[b] = logAdd(after[b], total + moves.end);
    pause[b] = logAdd(pause[b], total + moves.pause);
    let start = logAdd(before[b] + moves.begin, beforeOther[b] + moves.otherEndsInRepetition);
    start = logAdd(start, logAdd(pause[b] + moves.resume, pauseOther[b] + moves.otherEndsInRepetition));
    start = logAdd(start, followedStart(endsByClass, tables, spanOf, b, classes, moves.follow, start));
    starts[b] = start;
    best = Math.max(best, start);
    if (b === cells) break;
    if (start > best - 2 * NEGLIGIBLE - 200) spread(b, start);
    advance(before, beforeOther, b, moves.stay);
    advance(pause, pauseOther, b, moves.stayPaused);
    advance(after, afterOther, b, moves.stay);
    advance(none, noneOther, b, moves.stay);
  }
  let evidence = logAdd(after[cells], afterOther[cells]);
  for (const state of [pause, pauseOther]) evidence = logAdd(evidence, state[cells]);
  // the recording may stop within a rest
  const last = Math.max(0, cells - tables.restCells + 1);
  for (let b = last; b <= cells; b++) evidence = logAdd(evidence, ends[b] + moves.follow + lateRest(b));
  return {
    moves,
    before,
    beforeOther,
    pause,
    pauseOther,
    after,
    afterOther,
    starts,
    endsByClass,
    ends,
    evidence,
    evidenceOfNone: logAdd(none[cells], noneOther[cells]),
  };

  function lateRest(b: number): number {
    return Math.log(1 - (cells - b) / tables.restCells + 1e-9);
  }

  function spread(b: number, start: number): void {
    const prior = spanOf[b] * count;
    const row = b * count;
    for (let c = 0; c < classes; c++) {
      const end = b + bank.classCells[c];
      if (end > cells) break;
      let most = -Infinity;
      const from = bank.classStart[c];
      const to = bank.classStart[c + 1];
      for (let k = from; k < to; k++) {
        const value = tables.templates[prior + k] + factors[row + k];
        if (value > most) most = value;
      }
      if (most === -Infinity) continue;
      let sum = 0;
      for (let k = from; k < to; k++) {
        const gap = tables.templates[prior + k] + factors[row + k] - most;
        if (gap > -NEGLIGIBLE) sum += Math.exp(gap);
      }
      const index = end * classes + c;
      endsByClass[index] = logAdd(endsByClass[index], start + most + Math.log(sum));
    }
  }
}

/**
 * Log weight of all paths whose next repetition follows an earlier one after a rest and begins at a boundary.
 *
 * @param endsByClass - log weights of repetitions that ended, by boundary and class [nat]
 * @param tables - log priors of the rests [nat]
 * @param spanOf - span of time of each boundary [-]
 * @param b - boundary at which the next repetition begins [-]
 * @param classes - number of classes [-]
 * @param follow - log probability that the set goes on without a pause [nat]
 * @param floor - weight beside which smaller ones may be left out [nat]
 * @returns log weight [nat]
 *
 * Source: definition
 */
export function followedStart(
  endsByClass: Float64Array,
  tables: PriorTables,
  spanOf: Uint8Array,
  b: number,
  classes: number,
  follow: number,
  floor: number,
): number {
  const rests = Math.min(tables.restCells, b + 1);
  const base = spanOf[b] * classes;
  let most = floor;
  for (let g = 0; g < rests; g++) {
    const row = (b - g) * classes;
    for (let c = 0; c < classes; c++) {
      const value = endsByClass[row + c];
      if (value > most - NEGLIGIBLE)
        most = Math.max(most, value + tables.rests[(base + c) * tables.restCells + g] + follow);
    }
  }
  if (most === -Infinity) return -Infinity;
  let sum = 0;
  for (let g = 0; g < rests; g++) {
    const row = (b - g) * classes;
    for (let c = 0; c < classes; c++) {
      const value = endsByClass[row + c];
      if (value < most - NEGLIGIBLE) continue;
      const gap = value + tables.rests[(base + c) * tables.restCells + g] + follow - most;
      if (gap > -NEGLIGIBLE) sum += Math.exp(gap);
    }
  }
  return sum === 0 ? -Infinity : most + Math.log(sum);
}
