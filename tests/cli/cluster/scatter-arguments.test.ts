import { expect, test } from 'vitest';
import { readScatter } from '../../../apps/cli/src/cluster/scatter-arguments.ts';

test('a list with its options, the database and the name of the run arrive as given', () => {
  expect(
    readScatter([
      ...['--manifest', 'm.csv', '--database', 'postgres://db/calf', '--run', 'spring-2', '--send-bytes'],
      ...['--settings', 's.json', '--vary', 'heightFraction=0.6,0.9', '--recipe', 'r.json', '--part', '2'],
    ]),
  ).toMatchObject({
    command: 'scatter',
    database: 'postgres://db/calf',
    run: 'spring-2',
    files: [],
    manifest: 'm.csv',
    settings: 's.json',
    vary: { parameter: 'heightFraction', values: ['0.6', '0.9'] },
    recipe: { file: 'r.json', part: '2' },
    sendsBytes: true,
  });
  expect(readScatter(['a.csv', 'more.zip', '--placement', 'heel', '--side', 'left'])).toMatchObject({
    database: undefined,
    run: 'run',
    files: ['a.csv', 'more.zip'],
    given: { placement: 'heel', side: 'left' },
    sendsBytes: false,
  });
  expect(readScatter(['--help'])).toBeUndefined();
});

test.each([
  [[], 'name at least one FILE, FOLDER or ZIP'],
  [['a.csv', '--manifest', 'm.csv'], 'not both: "a.csv" came with --manifest'],
  [['a.csv', '--run', 'two words'], '--run two words: expected up to 60 letters'],
  [['a.csv', '--run', ''], 'expected up to 60 letters'],
  [['a.csv', '--csv', 'out'], "'--csv'"],
  [['a.csv', '--part', '2'], '--part says something only with --recipe'],
  [['a.csv', '--side', 'L'], 'expected left, right'],
])('%j is refused', (args, words) => {
  expect(() => readScatter(args)).toThrow(words);
});
