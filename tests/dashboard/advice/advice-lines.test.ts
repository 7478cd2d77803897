import { propose } from '@surae/guidance';
import { EXERCISES, GUIDANCE_FACTS, GUIDANCE_RULES, type GuidanceRule, LEVELS } from '@surae/shared';
import { expect, test } from 'vitest';
import { changeLines, type LinesGround, levelLines } from '../../../apps/dashboard/src/advice/advice-lines.ts';
import { beforeVisit, factsGiven } from '../../../apps/dashboard/src/advice/facts-given.ts';
import { advisedPerson, advisedVisit, inMarch, type Past } from '../../support/advised-person.ts';
import { madeExercise } from '../../support/plan-items.ts';

const today = inMarch(31);

function ruleOf(code: string): GuidanceRule {
  return GUIDANCE_RULES.find((one) => one.code === code)!;
}

function ground(past: Past = {}, changes: Partial<LinesGround> = {}): LinesGround {
  const [person, visit] = [advisedPerson(past), advisedVisit()];
  const given = factsGiven(person, visit, today);
  const guidance = propose(given, GUIDANCE_RULES, GUIDANCE_FACTS);
  return { visit, past: beforeVisit(person, visit), given, guidance, today, painLimit: 5, raises: 14, ...changes };
}

const proposedBy = 'guidance.start-single/1/common-practice/right/single';

function plan(...changes: Parameters<typeof madeExercise>[1][]): Past {
  const items = changes.map((one) => madeExercise('one-leg-raise', { side: 'right', proposedBy, ...one }));
  return { plans: [{ day: 20, items }] };
}

const learnt = 'guidance.start-learn/1/common-practice/right/learn';
const impact = 'springs';

test('bounces are held back where it is not known when heavy raises were last done, and the heavy raises are not', () => {
  const { lines, held, none } = levelLines(impact, ruleOf('start-single'), 'right', ground());
  expect([lines.map(({ code }) => code), none]).toEqual([['seated-raise', 'loaded-one-leg-raise'], null]);
  expect(held.map(({ line, by }) => [line.exercise, by[0]?.rule.code])).toEqual([
    ['quick-rebounds', 'impact-after-heavy'],
    ['two-leg-hops', 'impact-after-heavy'],
    ['rope-skipping', 'impact-after-heavy'],
  ]);
});

/** Heavy raises for three months, as they are done now. */
const heavyBy = 'guidance.change-to-heavy/1/common-practice/right/heavy';
const heavyPlan: Past = {
  plans: [
    {
      day: 20,
      items: [
        madeExercise('loaded-one-leg-raise', {
          side: 'right',
          proposedBy: heavyBy,
          sets: 4,
          repetitions: 8,
          load: { value: 15, unit: 'kg' },
          perWeek: 3,
        }),
        madeExercise('seated-raise', {
          side: 'both',
          proposedBy: heavyBy,
          sets: 4,
          repetitions: 8,
          load: null,
          perWeek: 3,
        }),
      ],
    },
  ],
};
const open = (past: Past): LinesGround => {
  const made = ground(past);
  return { ...made, guidance: { ...made.guidance, blocks: [] } };
};

test('bounces come with the heavy raises as they are, once a week, and a week has room for both', () => {
  const { lines } = changeLines(ruleOf('change-springs'), 'right', open(heavyPlan));
  const told = lines.map(({ code, side, sets, repetitions, load, perWeek }) => [
    code,
    side,
    sets,
    repetitions,
    load?.value,
    perWeek,
  ]);
  expect(told).toEqual([
    ['quick-rebounds', 'both', 3, 20, undefined, 2],
    ['two-leg-hops', 'both', 3, 10, undefined, 2],
    ['rope-skipping', 'both', 3, 20, undefined, 2],
    ['seated-raise', 'both', 4, 8, undefined, 1],
    ['loaded-one-leg-raise', 'right', 4, 8, 15, 1],
  ]);
  expect(lines.every(({ lowestFootDeg }) => lowestFootDeg === null || lowestFootDeg >= 0)).toBe(true);
});

test('the last level is hops forwards once a week and the heavy raises as they are twice', () => {
  const { lines } = changeLines(ruleOf('change-sport'), 'right', open(heavyPlan));
  expect(lines.map(({ code, repetitions, perWeek }) => [code, repetitions, perWeek])).toEqual([
    ['forward-hops', 10, 1],
    ['seated-raise', 8, 2],
    ['loaded-one-leg-raise', 8, 2],
  ]);
});

test('more impact is hops on one leg in the place of those on two, and nothing else changes', () => {
  const by = 'guidance.change-springs/1/read/right/springs';
  const items = [
    madeExercise('quick-rebounds', { side: 'both', proposedBy: by, sets: 3, repetitions: 20, lowestFootDeg: null }),
    madeExercise('two-leg-hops', { side: 'both', proposedBy: by, sets: 3, repetitions: 10, lowestFootDeg: null }),
  ];
  const { lines } = changeLines(ruleOf('change-impact'), 'right', open({ plans: [{ day: 20, items }] }));
  expect(lines.map(({ code, side }) => [code, side])).toEqual([
    ['quick-rebounds', 'both'],
    ['one-leg-hops', 'right'],
  ]);
  const later = [madeExercise('one-leg-hops', { side: 'right', proposedBy: by, lowestFootDeg: null })];
  expect(changeLines(ruleOf('change-impact'), 'right', open({ plans: [{ day: 20, items: later }] })).none).toBe(
    'no-lines',
  );
});

test.each(LEVELS.map(({ code }) => code).filter((code) => code !== impact))(
  'a line of level %s is one that a plan can hold, and no more than its dose',
  (code) => {
    const level = LEVELS.find((one) => one.code === code)!;
    const { lines } = levelLines(code, ruleOf('start-single'), 'right', ground());
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) {
      const dose = level.lines.find(({ exercise }) => exercise === line.code)!;
      expect(line.sets).toBe(dose.sets[0]);
      expect(line.repetitions ?? 0).toBeLessThanOrEqual(dose.repetitions?.[1] ?? 0);
      expect(line.holdS).toBe(dose.holdS?.[0] ?? null);
      expect(line.painLimit).toBeLessThanOrEqual(dose.painMost ?? 5);
      expect(line.side).toBe(EXERCISES.find((one) => one.code === line.code)?.legs === 'two' ? 'both' : 'right');
    }
  },
);

test('repetitions are two fewer than what counted, and never more than the most of the level', () => {
  const repetitions = (raises: number | null) =>
    levelLines('single', ruleOf('start-single'), 'right', ground({}, { raises })).lines[0]?.repetitions;
  expect([repetitions(11), repetitions(14), repetitions(19), repetitions(null)]).toEqual([9, 12, 15, 10]);
});

test('of hard holds a set has so many, and less of them is fewer holds of the same length', () => {
  const hold = { code: 'one-leg-hold', sets: 5, tempo: null } as const;
  const less = (changes: object) =>
    changeLines(ruleOf('step-reduce'), 'right', ground(plan({ ...hold, ...changes }))).lines[0];
  expect(less({ repetitions: 4, holdS: 3 })).toMatchObject({ sets: 5, repetitions: 3, holdS: 3 });
  expect(less({ repetitions: null, holdS: 45 })).toMatchObject({ sets: 5, repetitions: null, holdS: 36 });
});

test('less is 20 to 30 percent where a whole number lies there, and never none', () => {
  const less = (repetitions: number) =>
    changeLines(ruleOf('step-reduce'), 'right', ground(plan({ repetitions }))).lines[0]?.repetitions;
  expect([less(15), less(10), less(8), less(3), less(1)]).toEqual([12, 8, 6, 2, 1]);
});

test('the same again is the same lines from today, without their old end', () => {
  const { lines } = changeLines(ruleOf('step-hold'), 'right', ground(plan({ repetitions: 12, from: inMarch(20) })));
  expect(lines.map(({ repetitions, from, until, decision }) => [repetitions, from, until, decision])).toEqual([
    [12, today, null, 'accepted'],
  ]);
});

test('one variable goes up alone, and none beyond the level', () => {
  const up = (code: string, changes: Parameters<typeof madeExercise>[1]) =>
    changeLines(ruleOf(code), 'right', ground(plan(changes)));
  expect(up('change-repetitions', { repetitions: 12 }).lines[0]).toMatchObject({
    repetitions: 13,
    sets: 3,
    load: null,
  });
  expect(up('change-repetitions', { repetitions: 15 })).toMatchObject({ lines: [], none: 'no-lines' });
  const load = { value: 10, unit: 'kg' };
  expect(up('change-load', { load }).lines[0]).toMatchObject({ load: { value: 12.5, unit: 'kg' }, repetitions: 15 });
  expect(up('change-load', {}).none).toBe('no-lines');
  expect(up('change-speed', {}).none).toBe('no-lines');
});

test('without a plan there is nothing to change', () => {
  expect(changeLines(ruleOf('step-hold'), 'right', ground()).none).toBe('no-base');
});

test('a step to another level is the lines of that level', () => {
  const { lines } = changeLines(ruleOf('change-to-single'), 'right', ground(plan({ proposedBy: learnt })));
  expect(lines.map(({ code }) => code)).toContain('one-leg-raise');
  for (const line of lines) expect(line.proposedBy).toMatch(/\/right\/single$/);
});

test('the next weeks of the heavy level are fewer repetitions, and after the last row nothing changes', () => {
  const heavy = (changes: Parameters<typeof madeExercise>[1]) =>
    plan({
      code: 'loaded-one-leg-raise',
      proposedBy: 'guidance.start-heavy/1/common-practice/right/heavy',
      ...changes,
    });
  const next = (sets: number, repetitions: number) =>
    changeLines(ruleOf('change-week'), 'right', ground(heavy({ sets, repetitions }))).lines.map((one) => [
      one.sets,
      one.repetitions,
    ]);
  expect([next(3, 15), next(3, 12), next(4, 8), next(4, 6), next(3, 9)]).toEqual([
    [[3, 12]],
    [[4, 10]],
    [[4, 6]],
    [],
    [],
  ]);
});

test('what is done with both legs changes with the sore leg alone', () => {
  const both = madeExercise('seated-raise', { side: 'both', repetitions: 10, proposedBy });
  const own = (side: 'left' | 'right') =>
    madeExercise('one-leg-raise', { side, repetitions: 10, proposedBy: proposedBy.replace('right', side) });
  const past = { plans: [{ day: 20, items: [own('right'), both, own('left')] }] };
  const changed = (leg: 'left' | 'right') => changeLines(ruleOf('step-reduce'), leg, ground(past));
  expect(changed('right').lines.map(({ code, side }) => [code, side])).toEqual([
    ['one-leg-raise', 'right'],
    ['seated-raise', 'both'],
  ]);
  expect(changed('left').lines.map(({ code, side }) => [code, side])).toEqual([['one-leg-raise', 'left']]);
  expect(changed('left').ofOtherLeg).toEqual([{ exercise: 'seated-raise' }]);
});
