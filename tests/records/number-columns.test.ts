import { expect, test } from 'vitest';
import { NumberColumns } from '../../packages/records/src/number-columns.ts';

test('columns keep their numbers as they grow and end at their own length', () => {
  const store = new NumberColumns(2, 0);
  const first = store.capacity;
  for (let row = 0; row < 3 * first; row += 1) {
    if (row === store.capacity) store.grow();
    store.columns[0][row] = row;
    store.columns[1][row] = -row;
  }
  const [up, down] = store.take(3 * first);
  expect(Array.from(up)).toEqual(Array.from({ length: 3 * first }, (_, row) => row));
  expect(Array.from(down)).toEqual(Array.from(up, (value) => -value));
});
