import { expect, test } from 'vitest';
import { type ShownPart, shownPart } from '../../../apps/dashboard/src/study/study-parts.ts';

test('an address shows the part that it names, and the first one where it names none that is there', () => {
  const parts = ['quality', 'groups'].map((part) => ({ part }) as unknown as ShownPart);
  expect(['groups', 'recount', null].map((asked) => shownPart(parts, asked).part)).toEqual([
    'groups',
    'quality',
    'quality',
  ]);
});
