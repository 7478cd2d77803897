import type { Entry } from '../../entry.ts';
import type { DoseLine, DoseSpan } from './dose-line.ts';
import { doseLine, SLOW } from './line-made.ts';
import type { Basis } from './rule-made.ts';

/** Weeks of heavy slow training that have one dose. */
export interface HeavySlowRow extends Entry {
  readonly weeks: DoseSpan;
  readonly sets: number;
  /** of a set, and the load: as heavy as can be lifted so many times */
  readonly repetitions: number;
}

const quoted: Basis = { source: 'Beyer 2015 Am J Sports Med 43:1704, as quoted elsewhere', mark: 'second-hand' };
const memory: Basis = { source: 'Beyer 2015 Am J Sports Med 43:1704; these weeks from memory', mark: 'from-memory' };

function row(weeks: DoseSpan, sets: number, repetitions: number, basis: Basis = quoted): HeavySlowRow {
  return { id: `heavy-slow.week-${weeks[0]}`, version: '1', unit: '1', ...basis, weeks, sets, repetitions };
}

/** Sets and repetitions of each exercise, by week: fewer and heavier. */
export const HEAVY_SLOW: readonly HeavySlowRow[] = [
  row([1, 1], 3, 15),
  row([2, 3], 3, 12),
  row([4, 5], 4, 10),
  row([6, 8], 4, 8, memory),
  row([9, 12], 4, 6),
];

/** Exercises of a session: the trial had three, seated, on a leg press and standing; a plan here has two of them. */
export const HEAVY_SLOW_EXERCISES = {
  trial: 3,
  codes: ['seated-raise', 'loaded-one-leg-raise'],
  /** where there is one: put in by hand */
  byHand: ['leg-press-raise'],
} as const;

/** Between two exercises of a session [s]. */
export const HEAVY_SLOW_REST = {
  id: 'heavy-slow.rest-exercises',
  version: '1',
  unit: 's',
  ...quoted,
  value: 300,
} as const satisfies Entry & { value: number };

/** The lines of a row: three times a week, not on two days in a row, three seconds up and three down. */
export const HEAVY_SLOW_LINES: Readonly<Record<string, readonly DoseLine[]>> = Object.fromEntries(
  HEAVY_SLOW.map(({ id, source, mark, sets, repetitions }) => [
    id,
    HEAVY_SLOW_EXERCISES.codes.map((exercise) =>
      doseLine(
        id,
        {
          exercise,
          sets: [sets, sets],
          repetitions: [repetitions, repetitions],
          tempo: SLOW,
          restS: [120, 180],
          perWeek: [3, 3],
          load: { kind: 'repetition-maximum', repetitions },
        },
        { source, mark },
      ),
    ),
  ]),
);
