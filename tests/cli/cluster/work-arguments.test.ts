import { expect, test } from 'vitest';
import { movedPath, readWork } from '../../../apps/cli/src/cluster/work-arguments.ts';

test('what a worker is told arrives as given, and the usual where it is not', () => {
  expect(
    readWork([
      ...['--database', 'postgres://db/calf', '--run', 'spring', '--workers', '4', '--memory-mb', '512'],
      ...['--patience', '60', '--moved', '/data/study/=/mnt/study', '--moved', '/=/mnt/root/'],
    ]),
  ).toEqual({
    command: 'work',
    database: 'postgres://db/calf',
    run: 'spring',
    workers: 4,
    memoryMb: 512,
    patienceS: 60,
    moved: [
      { from: '/data/study', to: '/mnt/study' },
      { from: '/', to: '/mnt/root' },
    ],
  });
  expect(readWork([])).toMatchObject({ run: undefined, workers: undefined, patienceS: 30, moved: [] });
  expect(readWork(['-h'])).toBeUndefined();
});

test.each([
  [['a.csv'], 'takes its recordings from the database: "a.csv" says nothing here'],
  [['--workers', '0'], '--workers 0: expected a whole number from 1'],
  [['--patience', '1'], '--patience 1: expected a whole number from 3'],
  [['--moved', '/data'], '--moved /data: expected FROM=TO'],
  [['--run', '../x'], 'expected up to 60 letters'],
])('%j is refused', (args, words) => {
  expect(() => readWork(args)).toThrow(words);
});

test('a path is seen under the folder that was moved, whole names only and the first that fits', () => {
  const moved = [
    { from: '/data/study', to: '/mnt/study' },
    { from: 'D:\\study', to: '/mnt/d' },
    { from: '/data', to: '/mnt/all' },
  ];
  expect(movedPath('/data/study/left/1.csv', moved)).toBe('/mnt/study/left/1.csv');
  expect(movedPath('/data/study.zip/1.csv', moved)).toBe('/mnt/all/study.zip/1.csv');
  expect(movedPath('D:\\study\\1.csv', moved)).toBe('/mnt/d\\1.csv');
  expect(movedPath('/data', moved)).toBe('/mnt/all');
  expect(movedPath('/other/1.csv', moved)).toBe('/other/1.csv');
  expect(movedPath('/other/1.csv', [{ from: '/', to: '/mnt/root' }])).toBe('/mnt/root/other/1.csv');
});
