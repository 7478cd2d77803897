import { expect, test } from 'vitest';
import { meanHalfWidth } from '../../../packages/analysis/src/design/mean-width.ts';
import '../../support/close.ts';
import { readReference } from '../../support/fixture.ts';

type Case = Record<'sd' | 'people' | 'level' | 'assurance', number>;

test('the width with an assurance is that of SciPy', () => {
  const { input, expected, rtol, atol } = readReference<Case[], number[]>('design.mean-width');
  expect(input.length).toBe(12);
  const found = input.map(({ sd, people, level, assurance }) => meanHalfWidth(sd, people, level, assurance));
  expect(found).toBeCloseToEach(expected, { rtol, atol });
});

test('refuses a certain assurance and one person', () => {
  expect(() => meanHalfWidth(1, 10, 0.95, 1)).toThrow('assurance');
  expect(() => meanHalfWidth(1, 1, 0.95, 0.8)).toThrow('people');
  expect(() => meanHalfWidth(-1, 10, 0.95, 0.8)).toThrow('sd');
});
