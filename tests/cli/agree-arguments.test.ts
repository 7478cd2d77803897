import { expect, test } from 'vitest';
import { readAgree } from '../../apps/cli/src/agree-arguments.ts';
import { readArguments } from '../../apps/cli/src/arguments.ts';

test('a table alone asks for the usual', () => {
  expect(readArguments(['agree', 't.csv'])).toEqual({
    command: 'agree',
    table: 't.csv',
    across: undefined,
    scale: 'difference',
    reach: undefined,
    wholeOnly: false,
    order: undefined,
    json: false,
    picture: undefined,
    pair: undefined,
    replace: false,
    wish: { iccWidth: undefined, iccExpected: undefined, errorWithin: undefined, limitWithin: undefined },
  });
});

test('every option is taken', () => {
  const args = 't.csv --across day --ratio --reach 2 --whole-only --json --picture p.svg --replace --icc-width 0.1';
  expect(
    readAgree([
      ...args.split(' '),
      '--pair',
      'A, B',
      '--error-within',
      '25',
      '--limit-within',
      '0.5',
      '--order',
      'none, slight',
    ]),
  ).toMatchObject({
    across: 'day',
    scale: 'ratio',
    reach: 2,
    wholeOnly: true,
    order: ['none', 'slight'],
    json: true,
    picture: 'p.svg',
    pair: ['A', 'B'],
    replace: true,
    wish: { iccWidth: 0.1, errorWithin: 0.25, limitWithin: 0.5 },
  });
  expect(readAgree(['-h'])).toEqual({ command: 'help', about: 'agree' });
});

test.each([
  ['', 'name a TABLE'],
  ['a.csv b.csv', 'name one TABLE: "b.csv"'],
  ['a.csv --across week', '--across week: expected rater, day'],
  ['a.csv --reach x', '--reach x: expected a number'],
  ['a.csv --reach 0', '--reach 0'],
  ['a.csv --icc-width 1', '--icc-width 1: expected a number above 0 and below 1'],
  ['a.csv --icc-expected 0.9', '--icc-expected says something only with --icc-width'],
  ['--icc-width 0.1', '--icc-width needs --icc-expected'],
  ['--error-within 20 --picture p.svg', '--picture needs a TABLE'],
  ['a.csv --replace', '--replace says something only'],
  ['a.csv --pair A,B', '--pair says something only'],
  ['a.csv --picture p.svg --pair A', '--pair A: expected two names'],
  ['a.csv --picture=', '--picture needs the name'],
  ['a.csv --order none', '--order none: expected two words or more'],
  ['a.csv --order none,none', '--order none,none: expected'],
  ['a.csv --order none,,clear', 'each once'],
  ['--error-within 20 --order a,b', '--order needs a TABLE'],
  ['a.csv --colour', "Unknown option '--colour'"],
])('"%s" cannot be followed', (args, words) => {
  expect(() => readAgree(args.split(' ').filter((word) => word !== ''))).toThrow(words);
});
