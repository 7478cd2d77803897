import { courseFacts, factTable, judgeRule, propose } from '@surae/guidance';
import { GUIDANCE_FACTS, GUIDANCE_RULES } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { madeFacts } from '../../../support/guidance-facts.ts';
import { madeCourse, today } from '../../../support/made-course.ts';

type Told = Record<string, string | number>;

const ready: Told = {
  place: 'mid-portion',
  irritability: 'moderate',
  'valid-raises': 12,
  'pain-double-raise': 1,
  'pain-single-raise': 2,
  'settles-overnight': 'yes',
  'rupture-looked': 'clear',
  'level-now': 1,
  'days-at-level': 7,
  'days-since-flare': 14,
  'worst-pain-lately': 2,
  'return-criteria': 'no',
  'repetitions-left': 3,
  'range-left': 0,
  'load-left': 'no',
  'speed-left': 'no',
  'impact-left': 'no',
};

function guidedBy(more: Told, right: Told = {}, sore = 'left') {
  const course = courseFacts(madeCourse(), today, 5);
  return propose(
    madeFacts({ ...ready, ...course, ...more }, { ...ready, ...course, ...right }, { 'sore-legs': sore }),
    GUIDANCE_RULES,
    GUIDANCE_FACTS,
  );
}

const changeOf = (more: Told) =>
  guidedBy(more).proposals.find(({ about, leg }) => about === 'change' && leg === 'left')?.rule.code ?? 'none';

// common practice, no source, but for the levels themselves: what would let somebody begin at a level lets somebody go on to it
describe('from one level to the next', () => {
  test.each([
    ['a raise at the lightest level', { 'level-now': 0, 'valid-raises': 1 }, 'change-to-learn'],
    ['none at the lightest level', { 'level-now': 0, 'valid-raises': 0 }, 'change-repetitions'],
    ['the lightest level with high irritability', { 'level-now': 0, irritability: 'high' }, 'change-repetitions'],
    ['ten raises', { 'valid-raises': 10 }, 'change-to-single'],
    ['nine raises', { 'valid-raises': 9 }, 'change-repetitions'],
    ['six days at the level', { 'days-at-level': 6 }, 'change-repetitions'],
    ['pain of 4 on one leg', { 'pain-single-raise': 4 }, 'change-repetitions'],
    ['a night that does not settle it', { 'settles-overnight': 'no' }, 'change-repetitions'],
    ['high irritability', { irritability: 'high' }, 'change-repetitions'],
    ['a flare 13 days ago', { 'days-since-flare': 13 }, 'change-repetitions'],
    ['thirty raises: one level at a time', { 'valid-raises': 30 }, 'change-to-single'],
    ['thirty raises on the floor', { 'level-now': 2, 'valid-raises': 30 }, 'change-to-heavy'],
    ['nineteen raises on the floor', { 'level-now': 2, 'valid-raises': 19 }, 'change-repetitions'],
    ['all sets on the floor done', { 'level-now': 2, 'level-two-met': 'yes' }, 'change-to-range'],
    [
      'the same, sore at the heel bone: no step',
      { 'level-now': 2, 'level-two-met': 'yes', place: 'insertion' },
      'change-repetitions',
    ],
    [
      'the same after four weeks with low irritability',
      { 'level-now': 2, 'level-two-met': 'yes', place: 'insertion', irritability: 'low', 'days-at-level': 28 },
      'change-to-heavy-late',
    ],
    ['four weeks at a step', { 'level-now': 3, irritability: 'low', 'days-at-level': 28 }, 'change-to-heavy-late'],
    ['the same with moderate irritability', { 'level-now': 3, 'days-at-level': 28 }, 'change-repetitions'],
    ['the same on the floor', { 'level-now': 2, irritability: 'low', 'days-at-level': 28 }, 'change-repetitions'],
    ['a dose that was made less comes back first', { 'dose-eased': 'yes', 'week-step-due': 'yes' }, 'change-back'],
  ] as const)('%s: %s', (_, more, expected) => {
    expect(changeOf(more)).toBe(expected);
  });

  test('the edge of a step is no next level for a heel that is sore at the bone, by its own rule too', () => {
    const rule = GUIDANCE_RULES.find(({ code }) => code === 'change-to-range')!;
    const held = (place: string) =>
      judgeRule(
        rule,
        'left',
        madeFacts({ ...ready, 'level-now': 2, 'level-two-met': 'yes', place }),
        factTable(GUIDANCE_FACTS),
      ).held;
    expect([held('mid-portion'), held('insertion'), held('both-places')]).toEqual(['yes', 'no', 'no']);
  });

  test('four weeks at a lower level with nothing left: load, and not before', () => {
    const stuck = { 'valid-raises': 9, 'repetitions-left': 0, 'load-left': 'yes' };
    expect(changeOf({ ...stuck, 'days-at-level': 28 })).toBe('change-load');
    expect(changeOf({ ...stuck, 'days-at-level': 27 })).toBe('none');
  });

  test('of two sore legs, the one that is ready for more leads to nothing', () => {
    const together = (more: Told, right: Told) =>
      guidedBy(more, right, 'both').together.find(({ about }) => about === 'change');
    expect(together({}, {})).toMatchObject({ rule: { code: 'change-to-single' }, standing: 'stands' });
    expect(together({ 'valid-raises': 9 }, {})).toMatchObject({
      rule: { code: 'change-repetitions' },
      standing: 'stands',
    });
    expect(together({ 'valid-raises': 9, 'repetitions-left': 0 }, {})).toBeUndefined();
  });
});

describe('what is asked where nothing goes on', () => {
  const prompts = (more: Told) =>
    guidedBy(more).proposals.flatMap(({ about, leg, rule }) =>
      about === 'prompt' && leg === 'left' ? [rule.code] : [],
    );

  test.each([
    [{ 'level-now': 0, 'days-at-level': 14 }, 'calm-long', true],
    [{ 'level-now': 0, 'days-at-level': 13 }, 'calm-long', false],
    [{ 'level-now': 1, 'days-at-level': 28 }, 'level-long', true],
    [{ 'level-now': 1, 'days-at-level': 27 }, 'level-long', false],
    [{ 'level-now': 4, 'days-at-level': 60 }, 'level-long', false],
    [{ 'morning-rise-last': 2 }, 'not-settled', true],
    [{ 'morning-rise-last': 1 }, 'not-settled', false],
    [{ 'morning-now': 'flare' }, 'flare', true],
  ] as const)('%o: %s %s', (more, code, isAsked) => {
    expect(prompts(more).includes(code)).toBe(isAsked);
  });
});
