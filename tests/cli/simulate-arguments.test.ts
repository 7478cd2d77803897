import { expect, test } from 'vitest';
import { readSimulate } from '../../apps/cli/src/simulate-arguments.ts';

const read = (...args: string[]) => readSimulate(['--out', 'd', ...args]);

test('each test has its usual placement and rate', () => {
  const common = { command: 'simulate', level: 'typical', seed: 1, count: 1, folder: 'd', replace: false };
  expect(read()).toEqual({ ...common, test: 'heel-raise', placement: 'heel', gyroscope: true });
  expect(read('--test', 'isometric')).toEqual({
    ...common,
    test: 'isometric',
    placement: 'inline',
    kind: 'ramp',
    rateHz: 1000,
  });
  expect(read('--test', 'hop-series')).toEqual({
    ...common,
    test: 'hop-series',
    placement: 'platform',
    gyroscope: true,
    rateHz: 1000,
  });
});

test('hops by a sensor on the foot, with a gyroscope or without', () => {
  const foot = ['--test', 'hop-series', '--placement', 'foot'];
  expect(read(...foot, '--rate-hz', '200', '--no-gyroscope')).toMatchObject({
    placement: 'foot',
    gyroscope: false,
    rateHz: 200,
  });
  expect(() => read(...foot, '--rate-hz', '500')).toThrow('expected 200, 400, 1000');
  expect(() => read('--test', 'hop-series', '--rate-hz', '200')).toThrow('expected 500, 1000, 2000');
  expect(() => read('--test', 'hop-series', '--placement', 'trunk')).toThrow('expected platform, foot');
});

test.each([
  [['--test', 'hop-series', '--kind', 'fast'], '--kind says something only with --test isometric'],
  [['--test', 'hop-series', '--no-gyroscope'], '--no-gyroscope says something only with --placement foot'],
  [['--test', 'isometric', '--no-gyroscope'], '--no-gyroscope says something only with --placement foot'],
  [['--rate-hz', '200'], '--rate-hz says something only with --test isometric or hop-series'],
  [['--test', 'jump'], 'expected heel-raise, isometric, hop-series'],
])('%j is refused', (args, words) => {
  expect(() => read(...args)).toThrow(words);
});

test('help is asked for before anything else', () => {
  expect(readSimulate(['-h'])).toBeUndefined();
});
