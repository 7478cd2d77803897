import type { Entry } from '../entry.ts';

/** What one stands or sits on: on a step the heel can go below the toes. */
export type ExerciseSurface = 'seat' | 'floor' | 'step' | 'wall';

/** What is done: it decides what is counted and how the exercise is drawn. */
export type ExerciseMove = 'raise' | 'lowering' | 'hold' | 'stretch' | 'rebounds' | 'hops';

/** Numbers that the page begins from when an exercise is chosen; null is left open. What is kept is what the clinician keeps. */
export interface ExerciseBegin {
  readonly sets: number;
  readonly repetitions: number | null;
  readonly holdS: number | null;
  /** up, at the top and down again [s]; null where it is done as quickly as it goes */
  readonly tempo: { readonly upS: number; readonly topS: number; readonly downS: number } | null;
  readonly restS: number;
  readonly perWeek: number;
}

/** One exercise that a plan can hold. The list is neutral: it proposes none. */
export interface ExerciseEntry extends Entry {
  /** what a plan is stored with */
  readonly code: string;
  readonly legs: 'one' | 'two';
  readonly knee: 'straight' | 'bent';
  readonly surface: ExerciseSurface;
  readonly move: ExerciseMove;
  /** lowest foot angle that the surface allows [deg]: 0 is level, below 0 the heel is lower than the toes */
  readonly lowestDeg: number;
  /** lowest foot angle that the page begins from, for a tendon that is not sore at the heel bone [deg] */
  readonly beginDeg: number;
  /** presses on the tendon at the heel bone by itself, for whom it is sore there */
  readonly presses: 'step' | 'stretch' | null;
  readonly begin: ExerciseBegin;
}

const practice = { version: '1', unit: '1', source: 'common practice, no source', mark: 'common-practice' } as const;
const slow = { upS: 3, topS: 0, downS: 3 } as const;
const raises: ExerciseBegin = { sets: 3, repetitions: 10, holdS: null, tempo: slow, restS: 60, perWeek: 7 };
const level = { surface: 'floor', lowestDeg: 0, beginDeg: 0, presses: null } as const;

function exercise(
  code: string,
  legs: 'one' | 'two',
  knee: 'straight' | 'bent',
  move: ExerciseMove,
  place: Pick<ExerciseEntry, 'surface' | 'lowestDeg' | 'beginDeg' | 'presses'>,
  begin: Partial<ExerciseBegin> = {},
): ExerciseEntry {
  return { ...practice, id: `exercise.${code}`, code, legs, knee, move, ...place, begin: { ...raises, ...begin } };
}

/**
 * Exercises of a plan, about in the order in which they load the tendon. What a code carries home counts their places: a new one is
 * added at the end, and none is taken away.
 */
export const EXERCISES: readonly ExerciseEntry[] = [
  exercise('seated-raise', 'two', 'bent', 'raise', { ...level, surface: 'seat' }, { repetitions: 15 }),
  exercise('two-leg-hold', 'two', 'straight', 'hold', level, { sets: 5, repetitions: null, holdS: 30, tempo: null }),
  exercise('one-leg-hold', 'one', 'straight', 'hold', level, { sets: 5, repetitions: null, holdS: 30, tempo: null }),
  exercise('two-leg-raise', 'two', 'straight', 'raise', level),
  exercise('one-leg-lowering', 'one', 'straight', 'lowering', level, { tempo: { upS: 1, topS: 0, downS: 3 } }),
  exercise('one-leg-raise', 'one', 'straight', 'raise', level),
  exercise('bent-knee-raise', 'one', 'bent', 'raise', level),
  exercise('step-raise', 'one', 'straight', 'raise', {
    surface: 'step',
    lowestDeg: -30,
    beginDeg: -10,
    presses: 'step',
  }),
  exercise('loaded-one-leg-raise', 'one', 'straight', 'raise', level, { sets: 4, restS: 150, perWeek: 3 }),
  exercise(
    'calf-stretch',
    'one',
    'straight',
    'stretch',
    {
      surface: 'wall',
      lowestDeg: -30,
      beginDeg: -10,
      presses: 'stretch',
    },
    { sets: 3, repetitions: null, holdS: 30, tempo: null, restS: 30 },
  ),
  exercise('quick-rebounds', 'two', 'straight', 'rebounds', level, { repetitions: 20, tempo: null, perWeek: 2 }),
  exercise('one-leg-hops', 'one', 'straight', 'hops', level, { repetitions: 10, tempo: null, perWeek: 2 }),
  exercise('forward-hops', 'one', 'straight', 'hops', level, { repetitions: 10, tempo: null, perWeek: 2 }),
  exercise('two-leg-hops', 'two', 'straight', 'hops', level, { repetitions: 10, tempo: null, perWeek: 2 }),
  exercise('rope-skipping', 'two', 'straight', 'rebounds', level, { repetitions: 20, tempo: null, perWeek: 2 }),
  exercise(
    'leg-press-raise',
    'two',
    'straight',
    'raise',
    { ...level, surface: 'seat' },
    { sets: 4, restS: 150, perWeek: 3 },
  ),
];
