import { expect, test } from 'vitest';
import { readArguments } from '../../apps/cli/src/arguments.ts';
import { answersOf } from '../../apps/cli/src/look-arguments.ts';

test('files, answers and the recipe are read', () => {
  expect(
    readArguments([
      'look',
      'a.csv',
      '--set',
      'rate=100',
      '--set',
      'unit:F = x=kgf',
      '--recipe-out',
      'r.json',
      '--name',
      'P',
    ]),
  ).toEqual({
    command: 'look',
    files: ['a.csv'],
    answers: { rate: '100', 'unit:F = x': 'kgf' },
    recipeOut: 'r.json',
    name: 'P',
    json: false,
    replace: false,
  });
  expect(readArguments(['look', '--help'])).toEqual({ command: 'help', about: 'look' });
});

test.each([
  [['look'], /name at least one FILE/],
  [['look', 'a', 'b', '--recipe-out', 'r'], /recipe of one FILE: "b" came after "a"/],
  [['look', 'a', '--name', 'x'], /--name says something only with --recipe-out/],
  [['look', 'a', '--replace'], /--replace says something only with --recipe-out/],
  [['look', 'a', '--recipe-out', ''], /--recipe-out needs the name/],
  [['look', 'a', '--colour'], /Unknown option '--colour'/],
])('%j is refused', (args, message) => {
  expect(() => readArguments(args)).toThrow(message);
});

test('an answer needs a topic and a word, and comes once', () => {
  expect(() => answersOf(['rate'])).toThrow(/--set rate: expected TOPIC=ANSWER/);
  expect(() => answersOf(['rate='])).toThrow(/expected TOPIC=ANSWER/);
  expect(() => answersOf(['rate=100', 'rate=50'])).toThrow(/--set rate came twice/);
});
