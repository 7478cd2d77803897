import { matchedPain, type PainTold } from '@surae/guidance';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { marchDay } from '../../support/run-logs.ts';

const one: PainTold = {
  on: marchDay(1),
  exercise: 'one-leg-raise',
  leg: 'right',
  load: null,
  sets: 3,
  repetitions: 15,
  eachS: 6,
  pain: 4,
};
const told = (day: number, pain: number | null, change: Partial<PainTold> = {}): PainTold => ({
  ...one,
  on: marchDay(day),
  pain,
  ...change,
});

describe('pain at a matched load', () => {
  test('is a series over time where everything is the same, the oldest first', () => {
    const { series, unmatched } = matchedPain([told(8, 3), told(1, 5), told(15, 1)]);
    expect(series).toEqual([
      {
        ...{ exercise: 'one-leg-raise', leg: 'right', load: null, sets: 3, repetitions: 15, eachS: 6 },
        points: [
          { on: marchDay(1), pain: 5 },
          { on: marchDay(8), pain: 3 },
          { on: marchDay(15), pain: 1 },
        ],
      },
    ]);
    expect(unmatched).toEqual({ ownWords: 0, amounts: 0, pain: 0 });
  });

  test.each<[string, Partial<PainTold>]>([
    ['another exercise', { exercise: 'bent-knee-raise' }],
    ['the other leg', { leg: 'left' }],
    ['both legs', { leg: 'both' }],
    ['a load that is carried', { load: { value: 5, unit: 'kg' } }],
    ['one repetition more', { repetitions: 16 }],
    ['one set more', { sets: 4 }],
    ['another tempo', { eachS: 4 }],
    ['a tempo that was not said', { eachS: null }],
  ])('%s is never joined to it', (_, change) => {
    const { series } = matchedPain([told(1, 5), told(8, 2, change)]);
    expect(series.map(({ points }) => points.length)).toEqual([1, 1]);
  });

  test('a load is the same in kilograms and in grams, and not the next half kilogram', () => {
    const kg = (value: number, unit = 'kg'): Partial<PainTold> => ({ load: { value, unit } });
    expect(matchedPain([told(1, 5, kg(2.5)), told(8, 2, kg(2500, 'g'))]).series).toHaveLength(1);
    expect(matchedPain([told(1, 5, kg(2.5)), told(8, 2, kg(3))]).series).toHaveLength(2);
    // in a unit that is no mass here it is like itself alone
    expect(matchedPain([told(1, 5, kg(5, '[lb_av]')), told(8, 2, kg(5))]).series).toHaveLength(2);
  });

  test.each<[string, PainTold, object]>([
    ['somebody’s own words', told(1, 5, { exercise: null }), { ownWords: 1 }],
    ['no sets', told(1, 5, { sets: null }), { amounts: 1 }],
    ['no repetitions', told(1, 5, { repetitions: null }), { amounts: 1 }],
    ['a load that was not told', told(1, 5, { load: 'not-told' }), { amounts: 1 }],
    ['no pain told', told(1, null), { pain: 1 }],
  ])('%s stands in no series, and is counted', (_, left, count) => {
    const { series, unmatched } = matchedPain([left]);
    expect(series).toEqual([]);
    expect(unmatched).toEqual({ ownWords: 0, amounts: 0, pain: 0, ...count });
  });

  test('no pain is a point, and pain that was not told is none', () => {
    expect(matchedPain([told(1, 0), told(8, null)]).series[0]?.points).toEqual([{ on: marchDay(1), pain: 0 }]);
  });

  test('the load of the newest pain stands first', () => {
    const { series } = matchedPain([told(1, 5), told(9, 4, { repetitions: 12 }), told(5, 3)]);
    expect(series.map(({ repetitions }) => repetitions)).toEqual([12, 15]);
  });

  test('refuses what is no pain and what is no day', () => {
    expect(() => matchedPain([told(1, 11)])).toThrow('not-an-answer');
    expect(() => matchedPain([told(1, Number.NaN)])).toThrow('not-an-answer');
    expect(() => matchedPain([{ ...one, on: 'today' }])).toThrow('not-an-answer');
  });

  test('whatever is told: every one of a series is at its load, and nobody is lost or told twice', () => {
    const any = fc.record<PainTold>({
      on: fc.integer({ min: 1, max: 28 }).map(marchDay),
      exercise: fc.constantFrom('one-leg-raise', 'seated-raise', null),
      leg: fc.constantFrom('left', 'right', 'both'),
      load: fc.constantFrom<PainTold['load'][]>(null, 'not-told', { value: 5, unit: 'kg' }, { value: 5000, unit: 'g' }),
      sets: fc.constantFrom(2, 3, null),
      repetitions: fc.constantFrom(10, 15, null),
      eachS: fc.constantFrom(6, null),
      pain: fc.option(fc.integer({ min: 0, max: 10 })),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 20 }), (all) => {
        const { series, unmatched } = matchedPain(all);
        const inSeries = series.reduce((sum, { points }) => sum + points.length, 0);
        expect(inSeries + unmatched.ownWords + unmatched.amounts + unmatched.pain).toBe(all.length);
        for (const { points, ...at } of series) {
          expect(points.map(({ on }) => on)).toEqual(points.map(({ on }) => on).sort());
          for (const { on, pain } of points) {
            expect(
              all.some(
                (told) =>
                  told.on === on &&
                  told.pain === pain &&
                  told.exercise === at.exercise &&
                  told.leg === at.leg &&
                  told.sets === at.sets &&
                  told.repetitions === at.repetitions &&
                  told.eachS === at.eachS &&
                  (told.load === null) === (at.load === null),
              ),
            ).toBe(true);
          }
        }
      }),
    );
  });
});
