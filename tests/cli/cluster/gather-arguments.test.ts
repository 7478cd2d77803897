import { expect, test } from 'vitest';
import { readGather } from '../../../apps/cli/src/cluster/gather-arguments.ts';

test('one thing is done with a run, and it arrives as given', () => {
  expect(readGather(['--csv', 'out', '--parquet', 'out', '--replace', '--run', 'spring'])).toEqual({
    command: 'gather',
    database: undefined,
    run: 'spring',
    act: { kind: 'write', output: { kind: 'tables', csv: 'out', parquet: 'out', replace: true } },
    reliability: undefined,
  });
  expect(readGather(['--json', '--reliability', 'r.json', '--reliability-of', 'p'])).toMatchObject({
    run: 'run',
    act: { kind: 'write', output: { kind: 'json' } },
    reliability: { file: 'r.json', of: 'p' },
  });
  expect(readGather(['--left'])?.act).toEqual({ kind: 'left', json: false });
  expect(readGather(['--left', '--json'])?.act).toEqual({ kind: 'left', json: true });
  expect(readGather(['--remove'])?.act).toEqual({ kind: 'remove' });
  expect(readGather(['--help'])).toBeUndefined();
});

test.each([
  [[], 'say what to write with --csv, --parquet or --json; or --left, or --remove'],
  [['--json', '--csv', 'out'], 'choose --json or --csv, not both'],
  [['--left', '--remove'], 'choose --left or --remove, not both'],
  [['--left', '--csv', 'out'], 'choose --left or --csv, not both'],
  [['--remove', '--json'], 'choose --remove or --json, not both'],
  [['--replace'], '--replace says something only with --csv or --parquet'],
  [['--left', '--reliability', 'r.json'], '--reliability says nothing with --left'],
  [['--json', '--reliability-of', 'p'], '--reliability-of says something only with --reliability'],
  [['a.csv'], '"a.csv" says nothing here'],
])('%j is refused', (args, words) => {
  expect(() => readGather(args)).toThrow(words);
});
