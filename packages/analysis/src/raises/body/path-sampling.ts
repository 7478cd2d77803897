import type { Random } from '../../signal/random.ts';
import type { Forward, PathInput } from './forward.ts';

/** One repetition on a sampled path. */
export interface PathRepetition {
  /** cell boundary at which its template begins */
  readonly cell: number;
  readonly template: number;
  /** whether it follows the repetition before it without a pause */
  readonly follows: boolean;
}

/** One sampled segmentation: its repetitions in time order, and the spans of other movement. */
export interface Path {
  readonly repetitions: readonly PathRepetition[];
  readonly other: readonly (readonly [fromCell: number, toCell: number])[];
}

/** Options at a point of a path with running weights, so that later draws at the same point cost little. */
interface Choice {
  readonly options: readonly number[];
  readonly cumulative: readonly number[];
}

function choiceOf(logs: readonly number[], options: readonly number[]): Choice {
  let most = -Infinity;
  for (const log of logs) most = Math.max(most, log);
  const cumulative: number[] = [];
  const kept: number[] = [];
  let sum = 0;
  logs.forEach((log, i) => {
    const weight = Math.exp(log - most);
    if (weight < 1e-9) return;
    sum += weight;
    cumulative.push(sum);
    kept.push(options[i]);
  });
  return { options: kept, cumulative };
}

function draw(choice: Choice, random: Random): number {
  const at = random() * choice.cumulative[choice.cumulative.length - 1];
  const index = choice.cumulative.findIndex((sum) => at < sum);
  return choice.options[index < 0 ? choice.options.length - 1 : index];
}

/** Standing that is no rest between repetitions that follow each other. */
type Standing = 'before' | 'pause' | 'after';

/**
 * Segmentations drawn from their posterior, by walking back through the forward weights.
 *
 * @param input - evidence and priors of the forward pass [nat]
 * @param forward - its weights [nat]
 * @param paths - how many to draw, >= 0 [-]
 * @param random - source of random numbers [-]
 * @returns sampled paths [cells]
 *
 * Source: Scott (2002), Bayesian methods for hidden Markov models, J Am Stat Assoc 97:337-351 (backward sampling)
 */
export function samplePaths(input: PathInput, forward: Forward, paths: number, random: Random): Path[] {
  const { cells, bank, bumps, factors, tables, spanOf, other } = input;
  const { moves } = forward;
  const classes = bank.classCells.length;
  const count = bank.templates.length;
  const endChoices = new Map<number, Choice>();
  const startChoices = new Map<number, Choice>();
  const finalChoice = finalOptions();
  const drawn: Path[] = [];
  for (let p = 0; p < paths; p++) drawn.push(onePath());
  return drawn;

  /** 0..3: after, afterOther, pause, pauseOther at the end; 4 + g: in a rest that began g cells before the end */
  function finalOptions(): Choice {
    const logs = [forward.after[cells], forward.afterOther[cells], forward.pause[cells], forward.pauseOther[cells]];
    const options = [0, 1, 2, 3];
    for (let g = 0; g < tables.restCells && g <= cells; g++) {
      logs.push(forward.ends[cells - g] + moves.follow + Math.log(1 - g / tables.restCells + 1e-9));
      options.push(4 + g);
    }
    return choiceOf(logs, options);
  }

  /** Which template ended at a boundary: class first, then template, as one index. */
  function endChoice(b: number, onlyClass: number): Choice {
    const key = b * (classes + 1) + onlyClass + 1;
    let choice = endChoices.get(key);
    if (choice === undefined) {
      const logs: number[] = [];
      const options: number[] = [];
      for (let c = onlyClass < 0 ? 0 : onlyClass; c < (onlyClass < 0 ? classes : onlyClass + 1); c++) {
        const begin = b - bank.classCells[c];
        if (begin < 0 || forward.endsByClass[b * classes + c] < forward.ends[b] - 30) continue;
        for (let k = bank.classStart[c]; k < bank.classStart[c + 1]; k++) {
          logs.push(forward.starts[begin] + tables.templates[spanOf[begin] * count + k] + factors[begin * count + k]);
          options.push(k);
        }
      }
      choice = choiceOf(logs, options);
      endChoices.set(key, choice);
    }
    return choice;
  }

  /** Where a repetition that begins at a boundary came from: -1..-4 states, else g * classes + c of the one before. */
  function startChoice(b: number): Choice {
    let choice = startChoices.get(b);
    if (choice === undefined) {
      const logs = [
        forward.before[b] + moves.begin,
        forward.beforeOther[b] + moves.otherEndsInRepetition,
        forward.pause[b] + moves.resume,
        forward.pauseOther[b] + moves.otherEndsInRepetition,
      ];
      const options = [-1, -2, -3, -4];
      const base = spanOf[b] * classes;
      for (let g = 0; g < tables.restCells && g <= b; g++) {
        for (let c = 0; c < classes; c++) {
          const value = forward.endsByClass[(b - g) * classes + c];
          if (value < forward.starts[b] - 40) continue;
          logs.push(value + tables.rests[(base + c) * tables.restCells + g] + moves.follow);
          options.push(g * classes + c);
        }
      }
      choice = choiceOf(logs, options);
      startChoices.set(b, choice);
    }
    return choice;
  }

  function bumpThatEnds(still: Float64Array, b: number, share: number): number {
    let left = share;
    for (let c = 0; c < bumps.classCells.length; c++) {
      const begin = b - bumps.classCells[c];
      if (begin < 0) break;
      left -= Math.exp(still[begin] + bumps.weights[begin * bumps.classCells.length + c] - still[b]);
      if (left < 0) return c;
    }
    return -1;
  }

  function onePath(): Path {
    const repetitions: PathRepetition[] = [];
    const otherSpans: (readonly [number, number])[] = [];
    let b = cells;
    let state: Standing = 'after';
    let moving = false;
    let onlyClass = -1;
    let inRepetition = false;
    const final = draw(finalChoice, random);
    if (final < 4) {
      state = final < 2 ? 'after' : 'pause';
      moving = final % 2 === 1;
    } else {
      b -= final - 4;
      inRepetition = true;
    }
    let otherTo = b;
    for (;;) {
      if (inRepetition) {
        const template = draw(endChoice(b, onlyClass), random);
        b -= bank.templates[template].cells;
        const origin = draw(startChoice(b), random);
        repetitions.push({ cell: b, template, follows: origin >= 0 });
        if (origin >= 0) {
          b -= Math.floor(origin / classes);
          onlyClass = origin % classes;
          continue;
        }
        inRepetition = false;
        state = origin >= -2 ? 'before' : 'pause';
        moving = origin % 2 === 0;
        otherTo = b;
      }
      const still = state === 'before' ? forward.before : state === 'pause' ? forward.pause : forward.after;
      const move =
        state === 'before' ? forward.beforeOther : state === 'pause' ? forward.pauseOther : forward.afterOther;
      if (b === 0) {
        if (moving) otherSpans.push([0, otherTo]);
        break;
      }
      if (moving) {
        const fromMoving = move[b - 1] + moves.stayOther + other[b - 1];
        if (random() >= Math.exp(fromMoving - move[b])) {
          otherSpans.push([b - 1, otherTo]);
          moving = false;
        }
        b--;
        continue;
      }
      // how standing here came about: the end of a repetition, of other movement, of a bump, or standing before
      let left = random();
      if (state !== 'before') {
        left -= Math.exp(forward.ends[b] + (state === 'after' ? moves.end : moves.pause) - still[b]);
        if (left < 0) {
          inRepetition = true;
          onlyClass = -1;
          continue;
        }
      }
      left -= Math.exp(move[b - 1] + moves.otherEnds - still[b]);
      if (left < 0) {
        moving = true;
        otherTo = b - 1;
        b--;
        continue;
      }
      const bump = bumpThatEnds(still, b, left);
      if (bump >= 0) otherSpans.push([b - bumps.classCells[bump], b]);
      b -= bump >= 0 ? bumps.classCells[bump] : 1;
    }
    return { repetitions: repetitions.reverse(), other: otherSpans };
  }
}
