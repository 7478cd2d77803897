import { type DoneItem, type Entry, kindOf, type PlanItem, type Run } from '@surae/casebook';
import { type AfterAtHome, planKey, type RunAtHome } from '@surae/exchange';
import { expect, test } from 'vitest';
import { givenDone, givenRuns } from '../../../apps/dashboard/src/home/taken-diary.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = '2026-11-30';
const entry = <Body>(id: string, body: Body): Entry<Body> => ({ id, at: '', author: 'RN', body });
const plan: readonly Entry<PlanItem>[] = [
  entry('a', madeExercise('seated-raise', { load: { value: 10, unit: 'kg' } })),
  entry('b', madeExercise('one-leg-raise')),
];
const done = (day: string, sets = 3, changes = {}) =>
  ({
    day,
    planKey: planKey(['a', 'b']),
    place: 0,
    code: 'seated-raise',
    side: 'both',
    sets,
    pain: 2,
    ...changes,
  }) as const;
const states = (kept: readonly Entry<DoneItem>[], ...given: ReturnType<typeof done>[]): readonly string[] =>
  givenDone(given, [], kept, [plan], today).map(({ state }) => state);

test('what was done is kept as what its line planned, with the sets that were done', () => {
  const [{ body, state, replaces }] = givenDone([done('2026-11-29', 2)], [], [], [plan], today);
  expect(kindOf('done-item')!.versions[0].safeParse(body).success).toBe(true);
  expect(body).toEqual({
    planItemId: 'a',
    on: '2026-11-29',
    what: 'seated-raise',
    side: 'both',
    load: { value: 10, unit: 'kg' },
    sets: 2,
    repetitions: 15,
    painDuring: 2,
    exertion: null,
  });
  expect([state, replaces]).toEqual(['new', []]);
});

test('the same is there, other sets are asked about, and so is a day to come', () => {
  const kept = givenDone([done('2026-11-28'), done('2026-11-29')], [], [], [plan], today).map(({ body }, at) =>
    entry(`k${at}`, body),
  );
  expect(states(kept, done('2026-11-28'), done('2026-11-29', 1), done('2026-11-30'), done('2026-12-01'))).toEqual([
    'same',
    'other',
    'new',
    'future',
  ]);
  expect(givenDone([done('2026-11-29', 1)], [], kept, [plan], today)[0].replaces).toEqual(['k1']);
});

test('pain after the exercises of a day is kept with what was done of the leg, and not where nobody told it', () => {
  const after = (left: number | null, right: number | null): AfterAtHome => ({ day: '2026-11-29', left, right });
  const kept = (side: 'left' | 'right' | 'both', told: readonly AfterAtHome[]): unknown =>
    givenDone([done('2026-11-29', 3, { side })], told, [], [plan], today)[0].body.painAfter;
  expect(kept('left', [after(4, 6)])).toBe(4);
  expect(kept('right', [after(4, 0)])).toBe(0);
  expect(kept('both', [after(4, 6)])).toBe(6);
  expect(kept('both', [after(null, 3)])).toBe(3);
  expect(kept('left', [after(null, 3)])).toBeUndefined();
  expect(kept('left', [])).toBeUndefined();
  expect(kept('left', [{ ...after(4, 4), day: '2026-11-28' }])).toBeUndefined();
});

test('what is of no plan of this person is said to be, and takes the place of nothing', () => {
  const others = [
    done('2026-11-29', 3, { planKey: 1 }),
    done('2026-11-29', 3, { place: 5 }),
    done('2026-11-29', 3, { place: 1 }),
  ];
  expect(states([], ...others)).toEqual(['no-plan', 'no-plan', 'no-plan']);
});

const run = (day: string, durationS = 300): RunAtHome => ({
  day,
  durationS,
  distanceM: null,
  cadencePerMin: null,
  left: null,
  right: 1,
});

test('two runs that are alike are two, and each that is kept stands for one', () => {
  const once = givenRuns([run('2026-11-29')], [], today);
  expect(kindOf('run')!.versions[0].safeParse(once[0].body).success).toBe(true);
  const kept: readonly Entry<Run>[] = [entry('r', once[0].body)];
  const given = [run('2026-11-29'), run('2026-11-29'), run('2026-11-29', 600), run('2026-12-01')];
  expect(givenRuns(given, kept, today).map(({ state }) => state)).toEqual(['same', 'new', 'new', 'future']);
  const keys = givenRuns(given, [], today).map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
});

test('a run of nothing is none', () => {
  expect(givenRuns([run('2026-11-29', 0)], [], today)).toEqual([]);
});
