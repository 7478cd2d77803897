import { expect, test } from 'vitest';
import { Progress, timeLeft } from '../../apps/cli/src/progress.ts';
import { MemoryIo } from '../support/memory-io.ts';

function screen(watched: boolean, shared = false) {
  const memory = new MemoryIo();
  return { memory, io: { ...memory.io, watched, shared } };
}

test('a person who watches sees one line that changes, with the rate and the time left, and it goes at the end', () => {
  const { memory, io } = screen(true);
  const progress = new Progress(io, 20, true);
  progress.add(false);
  expect(memory.error).toBe('');
  memory.nowMs = 2000;
  progress.add(false);
  progress.add(false);
  memory.nowMs = 4000;
  progress.add(false);
  expect(memory.error).toBe('\r2 of 20, 1.0 a second, 18 s left\u001b[K\r4 of 20, 1.0 a second, 16 s left\u001b[K');
  progress.end();
  expect(memory.error.endsWith('\r\u001b[K')).toBe(true);
});

test('results that were there make the rest no quicker', () => {
  const { memory, io } = screen(true);
  const progress = new Progress(io, 100, true);
  for (let at = 0; at < 50; at += 1) progress.add(true);
  memory.nowMs = 1000;
  progress.add(true);
  memory.nowMs = 2000;
  progress.add(false);
  expect(memory.error).toBe('\r51 of 100\u001b[K\r52 of 100, 0.5 a second, 2 min left\u001b[K');
});

test('elsewhere a plain line now and then, and none for a short run', () => {
  const { memory, io } = screen(false);
  const progress = new Progress(io, 1000, true);
  for (let second = 1; second <= 95; second += 1) {
    memory.nowMs = 1000 * second;
    progress.add(false);
  }
  progress.end();
  expect(memory.error).toBe(
    '30 of 1000, 1.0 a second, 16 min left\n60 of 1000, 1.0 a second, 16 min left\n90 of 1000, 1.0 a second, 15 min left\n',
  );
});

test('where results appear on the same terminal there is no place for it, unless they are written at the end', () => {
  const shown = (mixed: boolean) => {
    const { memory, io } = screen(true, true);
    const progress = new Progress(io, 2, mixed);
    memory.nowMs = 500;
    progress.add(false);
    progress.end();
    return memory.error !== '';
  };
  expect([shown(true), shown(false)]).toEqual([false, true]);
});

test.each([
  [0.2, '1 s left'],
  [89, '89 s left'],
  [90, '2 min left'],
  [5399, '90 min left'],
  [9000, '2.5 h left'],
])('%d seconds are %s', (seconds, words) => {
  expect(timeLeft(seconds)).toBe(words);
});
