import { oneAtATime, type RunEffort, runWalk } from '@surae/guidance';
import { describe, expect, test } from 'vitest';

describe('running and walking in turn', () => {
  test('the first session is five parts of a minute, with a minute or two of walking between: five minutes in all', () => {
    expect(runWalk()).toEqual({ parts: 5, runS: 60, walkS: [60, 120], totalS: 300 });
  });

  test.each([
    [330, 66, 330],
    [334, 66, 330],
    [335, 67, 335],
  ])('of at most %d s is parts of %d s, and never more in all', (most, part, total) => {
    expect(runWalk(most)).toMatchObject({ runS: part, totalS: total });
  });

  test.each([4, 0, -5, Number.NaN, Number.POSITIVE_INFINITY])('%f s is no session', (most) => {
    expect(() => runWalk(most)).toThrow('not-an-answer');
  });
});

describe('one thing at a time', () => {
  const before: RunEffort = { durationS: 600, speedMps: 2.5, climbM: 0 };

  test.each<readonly [Partial<RunEffort>, string, readonly string[]]>([
    [{}, 'yes', []],
    [{ durationS: 660 }, 'yes', ['durationS']],
    [{ durationS: 660, speedMps: 2.4 }, 'yes', ['durationS']],
    [{ durationS: 660, speedMps: 2.6 }, 'no', ['durationS', 'speedMps']],
    [{ speedMps: 2.6, climbM: 20 }, 'no', ['speedMps', 'climbM']],
    [{ durationS: 660, climbM: null }, 'cannot-tell', ['durationS']],
    [{ climbM: null }, 'yes', []],
    [{ speedMps: null, climbM: null }, 'cannot-tell', []],
    [{ durationS: 660, speedMps: 2.6, climbM: null }, 'no', ['durationS', 'speedMps']],
  ])('%o: %s', (change, held, rises) => {
    expect(oneAtATime(before, { ...before, ...change })).toMatchObject({ held, rises });
  });
});
