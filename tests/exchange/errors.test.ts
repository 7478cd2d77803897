import { ExchangeError } from '@surae/exchange';
import { expect, test } from 'vitest';

test('it says where, what was expected and what came', () => {
  const error = new ExchangeError('bad-file', {
    file: 'x.csv',
    row: 2,
    column: 'n',
    expected: 'a number',
    actual: '"a"',
  });
  expect(error).toMatchObject({ name: 'ExchangeError', code: 'bad-file' });
  expect(error.message).toBe('x.csv, row 2, column "n": expected a number, got "a"');
  expect(new ExchangeError('altered', { expected: 'a', actual: 'b' }).message).toBe('expected a, got b');
});
