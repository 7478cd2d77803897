import type { Handout, Morning, Stiffness } from '@surae/exchange';
import { MORNING_CHOICES } from '@surae/shared';
import { expect, test } from 'vitest';
import { confirmedLines, morningKind, morningLine } from '../../../apps/dashboard/src/home/morning-line.ts';

const usualOf = (right: number | null, stiffness: Stiffness | null = null): Pick<Handout, 'usual'> => ({
  usual: { left: null, right, stiffness },
});
const morningOf = (right: number | null, stiffness: Stiffness = 'none'): Morning => ({
  day: '2026-11-30',
  left: null,
  right,
  stiffness,
});

test('pain up to one more than usual is steady, two more is held, above that it is eased', () => {
  const kinds = [2, 3, 4, 5, 6].map((pain) => morningKind(usualOf(2), morningOf(pain)));
  expect(kinds).toEqual(['steady', 'steady', 'hold', 'eased', 'eased']);
  // above five it is eased, whatever was usual
  expect(morningKind(usualOf(6), morningOf(6))).toBe('eased');
});

test('without a usual value up to two is steady and up to five is held', () => {
  const kinds = [0, 2, 3, 5, 6, 10].map((pain) => morningKind(usualOf(null), morningOf(pain)));
  expect(kinds).toEqual(['steady', 'steady', 'hold', 'hold', 'eased', 'eased']);
});

test('stiffer than usual is never steady, and the more careful answer counts', () => {
  expect(morningKind(usualOf(null), morningOf(0, '10-to-30'))).toBe('hold');
  expect(morningKind(usualOf(null), morningOf(0, 'over-30'))).toBe('eased');
  expect(morningKind(usualOf(null, 'over-30'), morningOf(0, 'over-30'))).toBe('steady');
  expect(morningKind(usualOf(0), { ...morningOf(0), left: 7 })).toBe('eased');
  // no pain told is no calm morning
  expect(morningKind(usualOf(null), morningOf(null))).toBe('hold');
});

test('only what was confirmed is answered, and nothing where nothing was', () => {
  const handout = { usual: { left: null, right: 2, stiffness: null }, lines: [] as readonly string[] } as Handout;
  expect(morningLine(handout, morningOf(2))).toBeUndefined();
  const some = { ...handout, lines: ['eased-ring', 'steady-go-on', 'steady-of-tomorrow', 'eased-less'] };
  expect(morningLine(some, morningOf(2))).toBe(MORNING_CHOICES['steady-go-on'].text);
  expect(morningLine(some, morningOf(4))).toBeUndefined();
  expect(morningLine(some, morningOf(9))).toBe(MORNING_CHOICES['eased-ring'].text);
  expect(confirmedLines(some, 'eased')).toHaveLength(2);
  // what is usual may not be known
  for (const { text } of Object.values(MORNING_CHOICES)) expect(text).not.toMatch(/usual/);
  for (const line of Object.values(MORNING_CHOICES)) expect(line.source).toBe('common practice, no source');
});
