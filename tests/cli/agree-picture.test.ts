import { expect, test } from 'vitest';
import { agreePicture } from '../../apps/cli/src/agree-picture.ts';

const bounded = (value: number, half: number) => ({ value, low: value - half, high: value + half });

const input = {
  first: 'A & co',
  second: 'B',
  unit: 'N',
  subjects: ['P1', 'P<2>', 'P3'],
  limits: {
    scale: 'difference',
    pairCount: 3,
    bias: bounded(1, 0.5),
    lower: bounded(-3, 1),
    upper: bounded(5, 1),
    sd: 2,
    biasTrend: undefined,
    scatterTrend: undefined,
    points: [
      { mean: 10, difference: 1 },
      { mean: 20, difference: 6 },
      { mean: 30, difference: -2 },
    ],
  },
} as const;

/** Coordinate of the line before a label. */
function height(svg: string, label: string): number {
  const lines = svg.split('\n');
  const at = lines.findIndex((line) => line.includes(`>${label}`));
  return Number(/y1="([\d.]+)"/.exec(lines[at - 2])![1]);
}

test('one cross a subject, a name only where it lies beyond the limits, a sentence that says what is seen', () => {
  const svg = agreePicture(input);
  expect(svg.match(/<path class="ink"/g)).toHaveLength(3);
  expect(svg).toContain('>P&lt;2&gt;</text>');
  expect(svg).not.toContain('>P1</text>');
  expect(svg).toContain('<title id="name">A &amp; co is clearly higher than B</title>');
  expect(svg).toContain('3 subjects. A &amp; co minus B: bias 1.00 (0.50 to 1.50) N; limits −3.00 and 5.00 N.');
});

test('bias and limits stand where their values are: equal distances, the upper above', () => {
  const svg = agreePicture(input);
  const [upper, bias, lower] = ['upper limit 5.00 N', 'bias 1.00 N', 'lower limit −3.00 N'].map((label) =>
    height(svg, label),
  );
  expect(upper).toBeLessThan(bias);
  expect(Math.abs(lower - bias - (bias - upper))).toBeLessThan(0.3);
});

test('a ratio has its neutral line at one and no unit; it is well-formed without a difference in words', () => {
  const limits = {
    ...input.limits,
    scale: 'ratio',
    bias: bounded(1, 0.1),
    lower: bounded(0.6, 0.1),
    upper: bounded(1.5, 0.1),
  } as const;
  const svg = agreePicture({ ...input, limits: { ...limits, points: [{ mean: 1, difference: 1 }] } });
  expect(svg).toContain('Cannot tell whether A &amp; co or B is higher');
  expect(svg).toContain('>upper limit 1.500</text>');
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  expect(svg.match(/<(?:text|title|desc|svg|style|defs|linearGradient)\b/g)).toHaveLength(
    svg.match(/<\/(?:text|title|desc|svg|style|defs|linearGradient)>/g)!.length,
  );
});
