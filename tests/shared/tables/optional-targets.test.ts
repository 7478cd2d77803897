import { OPTIONAL_TARGETS, REFERENCE_TABLES } from '@surae/shared';
import { expect, test } from 'vitest';

test('a target runs from low to high, says that it has no source, and is no reference', () => {
  const references = new Set(REFERENCE_TABLES.map(({ id }) => id));
  for (const { id, range, mark, source, remark } of OPTIONAL_TARGETS) {
    expect(range[0], id).toBeLessThan(range[1]);
    expect([mark, source.startsWith('common practice, no source')], id).toEqual(['common-practice', true]);
    expect(references.has(id), id).toBe(false);
    expect(remark, id).toMatch(/depend on the rig/);
  }
});

test('the mean of a published sample lies near the target and far from what a rig can shift', () => {
  // O'Neill (2023), PLoS One 18:e0282395: 1443.9 N seated; at 81.1 kg, the mean mass of Glaied & Whiteley (2025), 1.8 of body weight
  const [low, high] = OPTIONAL_TARGETS[0].range;
  const published = 1443.9 / (81.1 * 9.80665);
  expect(published > low && published < high).toBe(true);
});
