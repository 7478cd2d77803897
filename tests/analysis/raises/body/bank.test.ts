import { expect, test } from 'vitest';
import { templateBank } from '../../../../packages/analysis/src/raises/body/bank.ts';

test('templates are sorted by length and each class holds one length', () => {
  const grid = { fromS: 0.5, toS: 2, durationStep: 0.3, holdShares: [0, 0.3], fallRatios: [0.8, 1.2] };
  const { templates, classStart, classCells } = templateBank([grid], 20);
  // log(4) / 0.3 is 4.6: six durations, two holds, two ratios
  expect(templates).toHaveLength(24);
  expect(classStart.at(-1)).toBe(24);
  classCells.forEach((cells, c) => {
    for (let k = classStart[c]; k < classStart[c + 1]; k++) expect(templates[k].cells).toBe(cells);
  });
  expect([...classCells].sort((a, b) => a - b)).toEqual(classCells);
});

test('moves in two phases come with the second hold share', () => {
  const grid = { fromS: 1, toS: 1, durationStep: 0.3, holdShares: [0, 0.3], fallRatios: [1], twoPhases: true };
  expect(templateBank([grid], 20).templates).toHaveLength(5);
});
