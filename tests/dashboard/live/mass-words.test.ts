import { massLine, setupDefaults } from '@surae/analysis';
import { expect, test } from 'vitest';
import { massWords } from '../../../apps/dashboard/src/live/mass-words.ts';

const { gravityMps2: g, masses } = setupDefaults;
const say = (...pairs: (readonly [number, number])[]) =>
  massWords(
    massLine(
      pairs.map(([massKg, level]) => ({ massKg, level, u: 0.1 })),
      g,
      masses,
    ),
    180,
  );

test('a line is told with its uncertainties, its greatest departure, its return and what is not known', () => {
  const said = say([0, 1], [10, 1 - 10 * g], [20, 1 - 20 * g], [0, 1]);
  expect(said[0]).toMatch(/^One newton shows as -1\.0000 N, to 0\.\d{4} N/);
  expect(said).toContain('The reading falls when the load grows; the calibration turns it round.');
  expect(said).toContain('The temperature is not known.');
  expect(said.some((text) => text.includes('180 days'))).toBe(true);
  expect(say([0, 1], [10, 1 + 10 * g], [20, 1 + 20 * g]).join(' ')).toContain('was not read again after the masses');
});

test('a refusal is told with its numbers', () => {
  expect(say([0, 1], [10, 99])).toEqual([
    '2 different masses were read; 3 are needed, the empty sensor among them. Hang another one.',
  ]);
  const bend = [0, 5, 10, 15, 20].map((m) => [m, m * g * (1 + 0.006 * m)] as const);
  expect(say(...bend)[0]).toContain('1.0 % are allowed');
  const stray = say([0, 0.1], [5, 5 * g], [10, 10 * g + 12], [15, 15 * g - 0.1], [20, 20 * g], [0, -0.1]);
  expect(stray[0]).toMatch(/^The reading at 10 kg lies 1[12]\.\d N off/);
});
