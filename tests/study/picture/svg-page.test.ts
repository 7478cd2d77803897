import { expect, test } from 'vitest';
import { decimalsFor, escaped, plain, roundValues, svgPage } from '../../../packages/study/src/picture/svg-page.ts';

test.each([
  [0, 10, 5, [0, 2, 4, 6, 8, 10]],
  [-1.2, 1.2, 5, [-1, -0.5, 0, 0.5, 1]],
  [0, 0.07, 6, [0, 0.02, 0.04, 0.06]],
  [98, 203, 4, [100, 150, 200]],
])('round values from %d to %d', (low, high, wanted, values) => {
  expect(roundValues(low, high, wanted)).toEqual(values);
});

test('numbers have a true minus sign and no sign on nought; decimals follow the width', () => {
  expect([plain(-1.25, 1), plain(-0.04, 1), plain(3, 2)]).toEqual(['−1.3', '0.0', '3.00']);
  expect([50, 5, 0.5, 0.05, 0].map(decimalsFor)).toEqual([0, 1, 2, 3, 2]);
});

test('names of others cannot become part of the page', () => {
  expect(escaped('<a & "b">')).toBe('&lt;a &amp; &quot;b&quot;&gt;');
  const page = svgPage({ width: 10, height: 20.25, name: '<n>', what: '</desc>', from: '</metadata>' }, []);
  expect(page).toContain('viewBox="0 0 10 20.3"');
  expect(page.match(/<\/(?:desc|metadata|title)>/g)).toHaveLength(3);
});
