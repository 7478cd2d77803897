import { expect, test } from 'vitest';
import { leftLines, type RunLeft } from '../../../apps/cli/src/cluster/left.ts';

const LEFT: RunLeft = {
  run: 'spring',
  software: 'surae 0.1.0',
  recordings: 1000,
  results: 1000,
  done: 412,
  inHand: 3,
  toDo: 585,
  givenUp: [],
  workers: 2,
};

test('how far a run is stands in five lines', () => {
  expect(leftLines(LEFT)).toEqual([
    'Run spring of surae 0.1.0: 1000 recordings',
    '  done      412',
    '  in hand     3',
    '  to do     585',
    '  given up    0',
    '  workers     2',
  ]);
});

test('what nobody works on, what was given up and what was named twice is said', () => {
  const givenUp = Array.from({ length: 22 }, (_, at) => ({ file: `${at}.csv`, reason: 'there is no such file' }));
  const lines = leftLines({ ...LEFT, recordings: 1001, givenUp, workers: 0 });
  expect(lines[0]).toBe('Run spring of surae 0.1.0: 1001 recordings, 1 of them named twice');
  expect(lines[6]).toBe('  0.csv: there is no such file');
  expect(lines.slice(-4)).toEqual([
    '  19.csv: there is no such file',
    '  and 2 more; --json has them all',
    '  No worker is at it: start some with surae work',
    '  The same surae scatter tries again what was given up.',
  ]);
  expect(leftLines({ ...LEFT, inHand: 0, toDo: 0, workers: 0 })).toHaveLength(6);
});
