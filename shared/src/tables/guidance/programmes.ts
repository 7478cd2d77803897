import type { Entry } from '../../entry.ts';
import type { DoseLine } from './dose-line.ts';
import { HEAVY_SLOW, HEAVY_SLOW_LINES } from './heavy-slow.ts';
import { DAILY_OR_ALTERNATE, doseLine } from './line-made.ts';
import type { Basis } from './rule-made.ts';

/** A programme that can be chosen beside the levels. */
export interface ProgrammeEntry extends Entry {
  readonly code: string;
  /** how long it was done where it was published; null where it goes by how it is borne, and not by date */
  readonly weeks: number | null;
  /** code of the level by which its steps go on, the one that its load is nearest to; null where none is */
  readonly level: string | null;
  readonly lines: readonly DoseLine[];
}

const drop: Basis = {
  source: 'Alfredson 1998 Am J Sports Med 26:360; dose as quoted elsewhere',
  mark: 'second-hand',
};
const floorLevel: Basis = {
  source: 'Jonsson 2008 Br J Sports Med 42:746 (pilot without a control group)',
  mark: 'read',
};
const staged: Basis = {
  source: 'Silbernagel 2007 Am J Sports Med 35:897 and 2020 J Athl Train 55:438, table 2; adapted',
  mark: 'read',
};
const heavy: Basis = { source: 'Beyer 2015 Am J Sports Med 43:1704, as quoted elsewhere', mark: 'second-hand' };
const holds: Basis = {
  source: 'Radovanović 2022 Sports Med Open (share of the own most); times and frequency from memory',
  mark: 'from-memory',
};

function programme(
  code: string,
  level: string | null,
  weeks: number | null,
  lines: readonly DoseLine[],
  basis: Basis,
): ProgrammeEntry {
  return { id: `programme.${code}`, version: '1', unit: '1', ...basis, code, level, weeks, lines };
}

/** Lowering on one leg, knee straight and bent, twice a day. */
function lowering(of: string, exercises: readonly string[], basis: Basis): readonly DoseLine[] {
  return exercises.map((exercise) =>
    doseLine(of, { exercise, sets: [3, 3], repetitions: [15, 15], perWeek: [14, 14] }, basis),
  );
}

/** Programmes beside the levels. */
export const PROGRAMMES: readonly ProgrammeEntry[] = [
  // at the edge of a step, knee straight and bent: of the exercises of a plan the nearest ones
  programme(
    'lowering-step',
    'range',
    12,
    lowering('programme.lowering-step', ['step-raise', 'bent-knee-raise'], drop),
    drop,
  ),
  programme(
    'lowering-level',
    'single',
    12,
    lowering('programme.lowering-level', ['one-leg-lowering'], floorLevel),
    floorLevel,
  ),
  // up and down on the floor, seated, and slow lowering: the first weeks of a staged programme for who can do single raises
  programme(
    'combined',
    'single',
    12,
    (['one-leg-raise', 'one-leg-lowering', 'seated-raise'] as const).map((exercise) =>
      doseLine(
        'programme.combined',
        {
          exercise,
          sets: [3, 3],
          repetitions: [10, 15],
          perWeek: DAILY_OR_ALTERNATE,
          ...(exercise === 'seated-raise' ? { load: { kind: 'limb' } } : {}),
        },
        staged,
      ),
    ),
    staged,
  ),
  programme('heavy-slow', 'heavy', 12, HEAVY_SLOW_LINES[HEAVY_SLOW[0].id] ?? [], heavy),
  programme(
    'hard-holds',
    null,
    null,
    [
      doseLine(
        'programme.hard-holds',
        {
          exercise: 'one-leg-hold',
          sets: [5, 5],
          repetitions: [4, 4],
          holdS: [3, 3],
          gapS: 3,
          perWeek: [4, 4],
          load: { kind: 'share-of-own-most', share: 0.9 },
        },
        holds,
      ),
    ],
    holds,
  ),
];
