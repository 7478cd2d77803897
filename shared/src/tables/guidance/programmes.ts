import type { Entry } from '../../entry.ts';
import type { DoseLine } from './dose-line.ts';
import { doseLine } from './line-made.ts';
import type { Basis } from './rule-made.ts';

/** A programme that can be chosen beside the levels. */
export interface ProgrammeEntry extends Entry {
  readonly code: string;
  /** how long it was done where it was published; null where it goes by how it is borne, and not by date */
  readonly weeks: number | null;
  readonly lines: readonly DoseLine[];
}

const drop: Basis = {
  source: 'Alfredson 1998 Am J Sports Med 26:360; dose as quoted elsewhere',
  mark: 'second-hand',
};
const level: Basis = { source: 'Jonsson 2008 Br J Sports Med 42:746 (pilot without a control group)', mark: 'read' };
const holds: Basis = {
  source: 'Radovanović 2022 Sports Med Open (share of the own most); times and frequency from memory',
  mark: 'from-memory',
};

function programme(code: string, weeks: number | null, lines: readonly DoseLine[], basis: Basis): ProgrammeEntry {
  return { id: `programme.${code}`, version: '1', unit: '1', ...basis, code, weeks, lines };
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
  programme('lowering-step', 12, lowering('programme.lowering-step', ['step-raise', 'bent-knee-raise'], drop), drop),
  programme('lowering-level', 12, lowering('programme.lowering-level', ['one-leg-lowering'], level), level),
  programme(
    'hard-holds',
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
