import { expect, test } from 'vitest';
import { type AgreeArguments, readAgree } from '../../apps/cli/src/agree-arguments.ts';
import { type AgreeResult, agreeResult } from '../../apps/cli/src/agree-result.ts';

function result(text: string, ...options: string[]): AgreeResult | { reason: string } {
  return agreeResult(new TextEncoder().encode(text), 't.csv', readAgree(['t.csv', ...options]) as AgreeArguments);
}

function taken(text: string, ...options: string[]): AgreeResult {
  const found = result(text, ...options);
  if ('reason' in found) throw new Error(found.reason);
  return found;
}

const both = 'subject,rater,day,value [N]\nP1,A,1,10\nP1,A,2,12\nP2,A,1,20\nP2,A,2,21\nP3,A,1,33\nP3,A,2,30\n';
const counts = 'subject,A [repetitions],B [repetitions]\n1,20,21\n2,25,25\n3,30,28\n';

test('a table with raters and days is compared across the one that is named', () => {
  expect(() => result(both)).toThrow('choose --across rater or --across day');
  expect(taken(both, '--across', 'day').groups.map(({ of }) => of)).toEqual(['rater A']);
  expect(() => result(counts, '--across', 'day')).toThrow('has no column "day"');
});

test('counts are compared as counts, and only where the unit says so', () => {
  const [group] = taken(counts).groups;
  expect(group.kind === 'numbers' && group.agreement.pairs[0].counts).toEqual({
    setCount: 3,
    same: 1,
    withinOne: 2,
    largest: 2,
  });
  const [other] = taken(counts.replaceAll('repetitions', 'mm')).groups;
  expect(other.kind === 'numbers' && other.agreement.pairs[0].counts).toBeUndefined();
  expect(result(counts.replace('20', '20.5'))).toEqual({
    reason: expect.stringContaining('counts: expected whole numbers') as string,
  });
});

test('an empty cell leaves its subject out, or the table is refused where that was asked', () => {
  const holed = 'subject,A [N],B [N]\nP1,1,2\nP2,3,\nP3,5,4\n';
  const [group] = taken(holed).groups;
  expect(group.kind === 'numbers' && group.agreement.leftOut).toEqual([{ subject: 'P2', missing: ['B'] }]);
  expect(result(holed, '--whole-only')).toEqual({
    reason: 't.csv: expected a value in every cell, got none of "P2" by "B"',
  });
});

test('a table that cannot be judged is refused with its name and the reason', () => {
  expect(result('subject,A [N],B [N]\nP1,1,2\n')).toEqual({
    reason: 't.csv: subjects with a value from everybody: expected at least 2, got 1',
  });
  expect(result('subject,A [N],B [N]\nP1,1,x\n')).toEqual({
    reason: expect.stringContaining('row 2, column "B [N]"') as string,
  });
  expect(result('subject,A [N],B [N]\nP1,0,2\nP2,1,1\n', '--ratio')).toEqual({
    reason: expect.stringContaining('values above 0, for a ratio') as string,
  });
});

test('words are compared pair by pair, each with the items that both named', () => {
  const [group] = taken('subject,A [verdict],B [verdict],C [verdict]\n1,yes,yes,\n2,no,no,no\n3,yes,no,yes\n').groups;
  expect(
    group.kind === 'words' &&
      group.pairs.map(({ first, second, leftOut, kappa }) => [first, second, leftOut, kappa.itemCount]),
  ).toEqual([
    ['A', 'B', [], 3],
    ['A', 'C', ['1'], 2],
    ['B', 'C', ['1'], 2],
  ]);
});

test('a word that is not on the scale refuses the table, and a scale of numbers cannot be followed', () => {
  const words = 'subject,A [verdict],B [verdict]\n1,none,none\n2,none,clear\n';
  expect(result(words, '--order', 'none,slight')).toEqual({
    reason: 't.csv: words: expected every word of the raters, each once, got "clear" is not among them',
  });
  expect(() => result(counts, '--order', 'none,slight')).toThrow('--order says something only of words');
});
