import { GuidanceError, judgeCondition, type KnownFact, type MissingFact } from '@surae/guidance';
import type { Condition, RuleNumber } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { known } from '../support/guidance-facts.ts';

const ten: RuleNumber = { id: 'ten', version: '1', unit: '1', source: 'made', mark: 'computed', value: 10 };
const gone: MissingFact = { missing: 'not-asked' };

function judged(condition: Condition, answers: Readonly<Record<string, KnownFact | MissingFact>>) {
  return judgeCondition(condition, { answers: new Map(Object.entries(answers)), numbers: { ten } });
}

describe('a number against a limit', () => {
  test.each([
    ['atLeast', 'no', 'yes', 'yes'],
    ['atMost', 'yes', 'yes', 'no'],
    ['above', 'no', 'no', 'yes'],
    ['below', 'yes', 'no', 'no'],
  ] as const)('%s: just under, at and just over', (how, ...expected) => {
    const held = [9.999, 10, 10.001].map((n) => judged({ fact: 'n', [how]: 'ten' } as Condition, { n: known(n) }).held);
    expect(held).toEqual(expected);
  });

  test.each(['atLeast', 'atMost', 'above', 'below'] as const)(
    '%s: bounds on both sides of the limit cannot be told, and the fact is named',
    (how) => {
      const condition = { fact: 'n', [how]: 'ten' } as Condition;
      expect(judged(condition, { n: known(10, { low: 9, high: 11 }) })).toEqual({
        held: 'cannot-tell',
        missing: [],
        between: ['n'],
      });
      expect(judged(condition, { n: known(13, { low: 11, high: 15 }) }).held).toBe(
        how === 'atLeast' || how === 'above' ? 'yes' : 'no',
      );
    },
  );

  test('a bound that is the limit belongs to its side', () => {
    const held = (how: string, low: number, high: number) =>
      judged({ fact: 'n', [how]: 'ten' } as unknown as Condition, { n: known(low, { low, high }) }).held;
    expect([held('atLeast', 10, 12), held('above', 10, 12), held('atMost', 8, 10), held('below', 8, 10)]).toEqual([
      'yes',
      'cannot-tell',
      'yes',
      'cannot-tell',
    ]);
  });
});

describe('what is missing', () => {
  const isMissing: Condition = { fact: 'a', is: 'yes' };
  const holds: Condition = { fact: 'b', is: 'yes' };

  test.each([
    { is: 'yes' },
    { oneOf: ['no'] },
    { atLeast: 'ten' },
    { atMost: 'ten' },
    { above: 'ten' },
    { below: 'ten' },
  ])('is neither zero nor no: %o', (how) => {
    const condition = { fact: 'a', ...how } as unknown as Condition;
    const open = { held: 'cannot-tell', missing: ['a'], between: [] };
    expect(judged(condition, { a: gone })).toEqual(open);
    expect(judged({ not: condition }, { a: gone })).toEqual(open);
  });

  test('does not matter where something else decides, and is then not asked for', () => {
    const answers = { a: gone, b: known('yes') };
    expect(judged({ any: [isMissing, holds] }, answers)).toEqual({ held: 'yes', missing: [], between: [] });
    expect(judged({ all: [isMissing, { not: holds }] }, answers)).toEqual({ held: 'no', missing: [], between: [] });
  });

  test('is asked for where nothing else decides, each fact once', () => {
    const answers = { a: gone, b: known('yes'), c: gone };
    expect(judged({ all: [isMissing, holds, { any: [isMissing, { fact: 'c', is: 'yes' }] }] }, answers)).toEqual({
      held: 'cannot-tell',
      missing: ['a', 'c'],
      between: [],
    });
  });
});

test('a name that is not there is an error and no answer', () => {
  expect(() => judged({ fact: 'n', atLeast: 'eleven' }, { n: known(1) })).toThrow(GuidanceError);
  expect(() => judged({ fact: 'toString', is: 'yes' }, {})).toThrow(GuidanceError);
  expect(() => judged({ fact: 'n', atLeast: 'toString' }, { n: known(1) })).toThrow(GuidanceError);
});
