import { expect, test } from 'vitest';
import { readArguments } from '../../apps/cli/src/arguments.ts';

function refusal(...args: string[]): string {
  try {
    readArguments(args);
  } catch (error) {
    expect(error).toMatchObject({ name: 'UsageError' });
    return (error as Error).message;
  }
  throw new Error(`nothing was refused in: ${args.join(' ')}`);
}

test('files and options of assess arrive as given', () => {
  expect(
    readArguments([
      ...['assess', 'a.csv', '--placement', 'foot', 'b.csv', '--side', 'left', '--heel-lever-mm', '186'],
      ...['--body-mass-kg', '71.5', '--string-rest-mm', '300', '--protocol', 'p', '--settings', 's.json', '--json'],
    ]),
  ).toEqual({
    command: 'assess',
    files: ['a.csv', 'b.csv'],
    manifest: undefined,
    given: {
      test: undefined,
      placement: 'foot',
      side: 'left',
      protocol: 'p',
      heelLeverMm: 186,
      bodyMassKg: 71.5,
      stringRestMm: 300,
      externalMassKg: undefined,
      ankleLeverMm: undefined,
      ankleAngleDeg: undefined,
    },
    settings: 's.json',
    output: { kind: 'json' },
  });
});

test('what is not said stays unknown', () => {
  expect(readArguments(['assess', 'a.csv', '--test', 'isometric', '--warm-up-pushes', '3'])).toMatchObject({
    given: { warmUpPushes: 3 },
  });
  expect(() => readArguments(['assess', 'a.csv', '--test', 'isometric', '--warm-up-pushes', '1.5'])).toThrow(
    '--warm-up-pushes 1.5: expected a whole number from 0 to 100',
  );
  expect(readArguments(['assess', '--manifest', 'm.csv'])).toMatchObject({
    files: [],
    manifest: 'm.csv',
    given: { placement: undefined, heelLeverMm: undefined, bodyMassKg: undefined },
    output: { kind: 'text' },
  });
});

test('simulate has a seed of its own and refuses a count of none', () => {
  expect(readArguments(['simulate', '--out', 'd', '--seed', '7', '--count', '3'])).toMatchObject({ seed: 7, count: 3 });
  expect(refusal('simulate', '--out', 'd', '--count', '0')).toBe('--count 0: expected a whole number from 1 to 10000');
  expect(refusal('simulate', '--out', 'd', '--seed', '1.5')).toContain('--seed 1.5');
  expect(refusal('simulate')).toBe('--out needs the name of a folder');
});

test('each impossible command line is refused with what was wrong', () => {
  expect(refusal()).toContain('a command is needed');
  expect(refusal('count')).toContain('there is no command "count"');
  expect(refusal('assess')).toContain('at least one FILE');
  expect(refusal('assess', 'a.csv', '--manifest', 'm.csv')).toContain('not both');
  expect(refusal('assess', 'a.csv', '--json', '--csv', 'd')).toContain('not both');
  expect(refusal('assess', 'a.csv', '--replace')).toContain('--csv');
  expect(refusal('assess', 'a.csv', '--placement', 'wrist')).toBe(
    '--placement wrist: expected heel, foot, trunk, platform, hand, inline',
  );
  expect(refusal('assess', 'a.csv', '--side', 'L')).toContain('expected left, right');
  expect(refusal('assess', 'a.csv', '--test', 'hop')).toContain('expected heel-raise');
  expect(refusal('assess', 'a.csv', '--colour')).toContain('--colour');
});

test.each(['0', '-5', '18,5', 'NaN', '', '1e3', '70kg'])('a body mass of "%s" is no number', (mass) => {
  expect(refusal('assess', 'a.csv', `--body-mass-kg=${mass}`)).toContain('expected a number of 25 to 250 kg');
});

test('help is found before and after the command', () => {
  expect(readArguments(['--help'])).toEqual({ command: 'help', about: 'surae' });
  expect(readArguments(['help', 'assess'])).toEqual({ command: 'help', about: 'assess' });
  expect(readArguments(['assess', '--help'])).toEqual({ command: 'help', about: 'assess' });
  expect(readArguments(['simulate', '-h'])).toEqual({ command: 'help', about: 'simulate' });
  expect(readArguments(['--version'])).toEqual({ command: 'version' });
});
