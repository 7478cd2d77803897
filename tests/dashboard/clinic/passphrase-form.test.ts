import { expect, test } from 'vitest';
import { groupsAskedBack, isGroup, passphraseProblem } from '../../../apps/dashboard/src/clinic/passphrase-form.ts';

test.each([
  ['four green ladders', 'four green ladders', undefined],
  ['four green ladders', 'four green Ladders', 'not-alike'],
  ['elevensigns', 'elevensigns', 'too-short'],
  ['twelve signs', 'twelve signs', undefined],
  ['', '', 'too-short'],
  // a sign outside the first plane is one sign
  ['🪜🪜🪜🪜🪜🪜', '🪜🪜🪜🪜🪜🪜', 'too-short'],
] as const)('%j and %j: %s', (once, again, problem) => {
  expect(passphraseProblem(once, again)).toBe(problem);
});

const code = 'AAAA2-BBBB3-CCCC4-DDDD5-EEEE6-FFFF7-GGGG8-HHHH9';

test('two different groups are asked back, in order, whatever the draw', () => {
  const seen = new Set<string>();
  for (let first = 0; first < 8; first += 1) {
    for (let second = 0; second < 7; second += 1) {
      const draws = [first, second];
      const [low, high] = groupsAskedBack(code, () => draws.shift()!);
      expect(low).toBeGreaterThanOrEqual(1);
      expect(high).toBeGreaterThan(low);
      expect(high).toBeLessThanOrEqual(8);
      seen.add(`${low}-${high}`);
    }
  }
  expect(seen.size).toBe(28);
});

test('a group is what stands at its place, in either case', () => {
  expect([
    isGroup(code, 3, ' cccc4 '),
    isGroup(code, 3, 'CCCC5'),
    isGroup(code, 2, 'CCCC4'),
    isGroup(code, 9, ''),
  ]).toEqual([true, false, false, false]);
});
