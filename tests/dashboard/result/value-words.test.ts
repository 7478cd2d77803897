import { expect, test } from 'vitest';
import { amountWords, capital, finer, signed } from '../../../apps/dashboard/src/result/value-words.ts';

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
  expect(finer({ unit: 'repetitions', decimals: 0, isCount: true })).toBe(1);
  expect(finer({ unit: 'cm', decimals: 2, isCount: false })).toBe(2);
  expect(finer({ unit: 'N', decimals: 0, isCount: false })).toBe(0);
});

test('a sentence begins with a capital', () => {
  expect([capital('left'), capital('')]).toEqual(['Left', '']);
});

test('repetitions are fewer, newtons less, and neither has a sign', () => {
  const force = { unit: 'N', decimals: 0, isCount: false };
  const count = { unit: 'repetitions', decimals: 0, isCount: true };
  expect([amountWords(-8, count), amountWords(8, count), amountWords(-275, force), amountWords(0.3, force)]).toEqual([
    '8 fewer',
    '8 more',
    '275 N less',
    'no difference',
  ]);
});
