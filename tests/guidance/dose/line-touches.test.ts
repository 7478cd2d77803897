import { exerciseTouches, linesFor, propose } from '@surae/guidance';
import { EXERCISES, GUIDANCE_FACTS, GUIDANCE_RULES, LEVELS, PROGRAMMES } from '@surae/shared';
import { expect, test } from 'vitest';
import { madeFacts } from '../../support/guidance-facts.ts';

const codes = (level: string, left: Record<string, string>, person: Record<string, string> = {}) => {
  const { blocks } = propose(madeFacts(left, {}, person), GUIDANCE_RULES, GUIDANCE_FACTS);
  const { lines, heldBack } = linesFor(LEVELS.find(({ code }) => code === level)!.lines, 'left', blocks);
  return [lines, heldBack.map(({ line }) => line)].map((each) => each.map(({ exercise }) => exercise));
};

test('the edge of a step is held back for a heel that is sore at the bone, and for one that is not known', () => {
  const held = [['one-leg-lowering', 'seated-raise'], ['step-raise']];
  expect(codes('range', { place: 'insertion' })).toEqual(held);
  expect(codes('range', { place: 'both-places' })).toEqual(held);
  expect(codes('range', {})).toEqual(held);
  expect(codes('range', { place: 'mid-portion' })).toEqual([['step-raise', 'one-leg-lowering', 'seated-raise'], []]);
});

test('a line of the heart holds back holds, and a lock holds back everything', () => {
  expect(codes('calm', { place: 'mid-portion' }, { 'safety.heart': 'ticked' })).toEqual([
    ['two-leg-raise'],
    ['two-leg-hold'],
  ]);
  expect(codes('calm', { place: 'mid-portion' }, { 'safety.clot': 'ticked' })).toEqual([
    [],
    ['two-leg-hold', 'two-leg-raise'],
  ]);
});

test.each([
  ['two-leg-raise', ['loading']],
  ['two-leg-hold', ['loading', 'hard-hold']],
  ['step-raise', ['loading', 'step', 'below-level']],
  ['calf-stretch', ['loading', 'stretch', 'below-level']],
  ['quick-rebounds', ['loading', 'impact']],
  ['forward-hops', ['loading', 'impact']],
])('%s does %o', (code, touches) => {
  expect(exerciseTouches(code)).toEqual(touches);
});

test('an exercise that is not known is taken to do everything', () => {
  const all = EXERCISES.flatMap(({ code }) => exerciseTouches(code));
  expect(exerciseTouches('of-tomorrow')).toEqual(expect.arrayContaining([...new Set(all)]));
});

test('every line of a level and of a programme is an exercise of a plan', () => {
  const lines = [...LEVELS, ...PROGRAMMES].flatMap((one) => one.lines);
  expect(lines.length).toBeGreaterThan(15);
  expect(lines.filter(({ exercise }) => !EXERCISES.some(({ code }) => code === exercise))).toEqual([]);
});

test.each(['insertion', 'both-places', null])(
  'of no programme a line goes to a step or below level for a heel that is sore at the bone, or not known: %s',
  (place) => {
    const { blocks } = propose(madeFacts(place === null ? {} : { place }), GUIDANCE_RULES, GUIDANCE_FACTS);
    for (const { code, lines } of [...PROGRAMMES, ...LEVELS]) {
      for (const { exercise } of linesFor(lines, 'left', blocks).lines) {
        const { surface, beginDeg } = EXERCISES.find((one) => one.code === exercise)!;
        expect([surface === 'step', beginDeg < 0], `${code}: ${exercise}`).toEqual([false, false]);
      }
    }
  },
);
