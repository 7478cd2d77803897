import { expect, test } from 'vitest';
import { capital, finer, signed } from '../../../apps/dashboard/src/result/value-words.ts';

test('a change has a sign, and what rounds to zero has none', () => {
  expect([signed(4.6, 0), signed(-4.6, 0), signed(0.2, 0), signed(-0.2, 0), signed(-1.24, 1)]).toEqual([
    '+5',
    '−5',
    '0',
    '0',
    '−1.2',
  ]);
});

test('whole numbers are compared with a tenth, other figures as they are', () => {
  expect(finer({ unit: 'repetitions', decimals: 0 })).toBe(1);
  expect(finer({ unit: 'cm', decimals: 2 })).toBe(2);
});

test('a sentence begins with a capital', () => {
  expect([capital('left'), capital('')]).toEqual(['Left', '']);
});
