import { expect, test } from 'vitest';
import { keepMorning, keptMornings } from '../../../apps/dashboard/src/home/kept-mornings.ts';
import { MapMemory } from '../../support/device-memory.ts';

const morning = (day: string, right: number) => ({ day, left: null, right, stiffness: 'none' as const });

test('mornings are kept in order, one a day, and the later answer counts', () => {
  const memory = new MapMemory();
  expect(keptMornings(memory)).toEqual([]);
  keepMorning(memory, morning('2026-11-30', 3));
  keepMorning(memory, morning('2026-11-29', 2));
  expect(keepMorning(memory, morning('2026-11-30', 1))).toEqual([morning('2026-11-29', 2), morning('2026-11-30', 1)]);
  expect(keptMornings(memory)).toEqual([morning('2026-11-29', 2), morning('2026-11-30', 1)]);
});

test('what cannot be read is none, and is written over', () => {
  const memory = new MapMemory();
  memory.setItem('surae.mornings', 'torn');
  expect(keptMornings(memory)).toEqual([]);
  expect(keepMorning(memory, morning('2026-11-29', 2))).toHaveLength(1);
});
