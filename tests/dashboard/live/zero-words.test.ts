import { expect, test } from 'vitest';
import { zeroWords } from '../../../apps/dashboard/src/live/zero-words.ts';

const taken = { kind: 'zero', level: 2.04, u: 0.123, noise: 1, emptyBy: 'last-zero', emptyMost: 15 } as const;

test('a zero is told with its uncertainty and its drift', () => {
  const drift = { change: 6.12, u: 0.2, verdict: 'to-mind' } as const;
  expect(zeroWords({ ...taken, drift }, 'force')).toBe(
    'The zero is 2.0 N, to 0.12 N. It moved by 6.1 N since the last one. That is much: forces since then may be off by as much.',
  );
});

test('what was judged by nothing says so', () => {
  const said = zeroWords({ ...taken, drift: null, emptyBy: 'quantity', emptyMost: 40 }, 'torque');
  expect(said).toContain('up to 40 N·m pass for empty');
});

test('a refusal has its numbers', () => {
  const refused = { kind: 'refused', reason: 'loaded', found: 301.24, allowed: 15, emptyBy: 'last-zero' } as const;
  expect(zeroWords(refused, 'force')).toBe(
    'The reading is 301.2 N away from empty, more than 15.0: step off, or take the leg off, then set the zero. Judged by the last zero of this sensor.',
  );
});
