import { type HandoutLine, wordsHome } from '@surae/exchange';
import { EXERCISES, PLAN_ADVICE_CHOICES, RUN_WHY_CHOICES } from '@surae/shared';
import fc from 'fast-check';

const begun = '2026-11-29';

/** An exercise as it is taken home. */
export function homeExercise(code: string, changes: Partial<HandoutLine> = {}): HandoutLine {
  return {
    ...wordsHome('', 'right', begun),
    of: 'exercise',
    code,
    sets: 3,
    repetitions: 15,
    tempo: { upS: 3, topS: 0, downS: 3 },
    restS: 60,
    lowestFootDeg: 0,
    painLimit: 5,
    perWeek: 3,
    ...changes,
  };
}

/** A limit for runs as it is taken home. */
export function homeRun(changes: Partial<HandoutLine> = {}): HandoutLine {
  return {
    ...wordsHome('', 'both', begun),
    of: 'running',
    painLimit: 5,
    run: { mostS: 300, mostM: null, daysBetween: 1, runS: 60, walkS: 60 },
    why: 'first-runs',
    ...changes,
  };
}

const count = fc.option(fc.nat({ max: 100_000 }));
const tenth = fc.integer({ min: 1, max: 5000 }).map((value) => value / 10);
const days = fc.integer({ min: 0, max: 40_000 });
const dayAt = (at: number): string => new Date(Date.UTC(2020, 0, 1) + at * 86_400_000).toISOString().slice(0, 10);
const term = fc
  .tuple(days, fc.option(fc.nat({ max: 300 })))
  .map(([at, length]) => ({ from: dayAt(at), until: length === null ? null : dayAt(at + length) }));
const side = fc.constantFrom('left', 'right', 'both' as const);
const painLimit = fc.option(fc.integer({ min: 0, max: 10 }));
const text = fc.string({ unit: 'grapheme', maxLength: 40 });
const dose = fc.record({
  sets: count,
  repetitions: count,
  holdS: count,
  tempo: fc.option(fc.record({ upS: count, topS: count, downS: count })),
  restS: count,
  load: fc.option(fc.record({ value: tenth, unit: fc.constantFrom('kg', '[lb_av]') })),
  lowestFootDeg: fc.option(fc.integer({ min: -90, max: 90 })),
  perWeek: fc.option(tenth),
});
const run = fc.record({ mostS: count, mostM: count, daysBetween: count, runS: count, walkS: count });
const shared = fc.record({ side, painLimit, term });

function lines(of: HandoutLine['of'], more: fc.Arbitrary<Partial<HandoutLine>>): fc.Arbitrary<HandoutLine> {
  return fc.tuple(shared, more).map(([{ term: ends, ...rest }, own]) => ({
    ...wordsHome('', rest.side, ends.from),
    ...rest,
    ...ends,
    of,
    ...own,
  }));
}

/** Whatever a line can be that is taken home. */
export const homeLine: fc.Arbitrary<HandoutLine> = fc.oneof(
  lines(
    'exercise',
    fc.tuple(fc.constantFrom(...EXERCISES.map(({ code }) => code)), dose).map(([code, all]) => ({ code, ...all })),
  ),
  lines(
    'words',
    fc.tuple(text, dose).map(([what, all]) => ({ what, ...all })),
  ),
  lines(
    'advice',
    fc.constantFrom(...Object.keys(PLAN_ADVICE_CHOICES)).map((code) => ({ code })),
  ),
  lines(
    'running',
    fc.record<Pick<HandoutLine, 'run' | 'why'>>({
      run,
      why: fc.option(fc.constantFrom(...(Object.keys(RUN_WHY_CHOICES) as (keyof typeof RUN_WHY_CHOICES)[])), {
        nil: null,
      }),
    }),
  ),
);
