import { expect, test } from 'vitest';
import { cellText } from '../../apps/cli/src/cell-text.ts';

test('nothing for not measured, zero for zero, words parted by semicolons', () => {
  expect([null, 0, 1 / 3, true, 'ramp', ['clipped', 'lifted'], []].map(cellText)).toEqual([
    '',
    '0',
    '0.333333333',
    'true',
    'ramp',
    'clipped; lifted',
    '',
  ]);
});
