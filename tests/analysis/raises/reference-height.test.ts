import { expect, test } from 'vitest';
import { referenceHeight } from '../../../packages/analysis/src/raises/reference-height.ts';

const choice = { raises: 5, best: 2, raisedBy: 0.05 };
const heights = (...values: number[]) => values.map((heightM) => ({ heightM, heightUM: 0.002, usable: true }));

test('without practice raises the best two of the first five are averaged', () => {
  const reference = referenceHeight(heights(0.08, 0.1, 0.09, 0.12, 0.07, 0.2), choice, []);
  expect(reference?.heightM).toBeCloseTo(0.11, 12);
  expect(reference?.fromRepetitions).toEqual([2, 4]);
  // mean of two independent heights: 2 mm / sqrt 2
  expect(reference?.heightUM).toBeCloseTo(0.002 / Math.SQRT2, 12);
  expect(reference?.raised).toBe(false);
});

test('with practice raises their best two are averaged and the set gives nothing', () => {
  const reference = referenceHeight(heights(0.1, 0.1), choice, heights(0.09, 0.11, 0.1));
  expect(reference?.heightM).toBeCloseTo(0.105, 12);
  expect(reference?.fromRepetitions).toEqual([]);
});

test('an early repetition more than 5 % above the practice raises takes their place, a late one does not', () => {
  const raised = referenceHeight(heights(0.1, 0.1055, 0.1), choice, heights(0.1, 0.1));
  expect(raised).toMatchObject({ heightM: 0.1055, raised: true, fromRepetitions: [2] });
  const within = referenceHeight(heights(0.1, 0.1049, 0.1), choice, heights(0.1, 0.1));
  expect(within).toMatchObject({ raised: false });
  const late = referenceHeight(heights(0.1, 0.1, 0.1, 0.1, 0.1, 0.2), choice, heights(0.1, 0.1));
  expect(late).toMatchObject({ raised: false });
});

test('a height that cannot be judged gives no reference, and one alone is its own', () => {
  const hidden = { heightM: 0.3, heightUM: 0, usable: false };
  expect(referenceHeight([hidden, ...heights(0.1)], choice, [])).toMatchObject({ heightM: 0.1, fromRepetitions: [2] });
  expect(referenceHeight([hidden], choice, [])).toBeUndefined();
  expect(referenceHeight([], choice, [])).toBeUndefined();
});

test('looking at no repetition is refused', () => {
  expect(() => referenceHeight([], { ...choice, raises: 0 }, [])).toThrow('choice.raises');
});
