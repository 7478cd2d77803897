import { expect, test } from 'vitest';
import { disagreements, type LegAnswers } from '../../../apps/dashboard/src/result/together.ts';

const open: LegAnswers = { less: null, change: null, places: [] };
const low: LegAnswers['places'] = ['below', 'below'];
const notLow: LegAnswers['places'] = ['near', 'above'];
const up = { value: 8, zone: 'likely-real' } as const;
const down = { value: -8, zone: 'likely-real' } as const;

test('comparisons that say nothing, or the same, do not disagree', () => {
  expect(disagreements({ left: open, right: open })).toEqual([]);
  const less = { ...open, less: 'yes', places: low } as const;
  expect(disagreements({ left: { ...open, less: 'no', places: notLow }, right: less })).toEqual([]);
});

test('what cannot be told contradicts nothing', () => {
  const unsure = { ...open, less: 'cannot_tell', places: low } as const;
  expect(disagreements({ left: unsure, right: unsure })).toEqual([]);
  const mixed = { ...open, less: 'yes', places: ['below', 'near'] } as const;
  expect(disagreements({ left: open, right: mixed })).toEqual([]);
  const small = { ...open, less: 'yes', change: { value: 5, zone: 'possible' } } as const;
  expect(disagreements({ left: open, right: small })).toEqual([]);
});

test('less than the other leg, and not below the groups', () => {
  const right = { ...open, less: 'yes', places: notLow } as const;
  expect(disagreements({ left: open, right })).toEqual([
    'The comparisons disagree: the right leg does less than the other one, and lies not below the middle of the groups.',
  ]);
});

test('alike legs that both, or one of them, lie below every group: the other leg is no yardstick', () => {
  const alike = (places: LegAnswers['places']): LegAnswers => ({ ...open, less: 'no', places });
  expect(disagreements({ left: alike(low), right: alike(low) })).toEqual([
    'The comparisons disagree: the legs are alike, yet both lie below the middle of every group. The other leg is no yardstick here.',
  ]);
  expect(disagreements({ left: alike(notLow), right: alike(low) })[0]).toMatch(/yet the right leg lies below/);
});

test('less than a leg that is itself below every group', () => {
  const left = { ...open, less: 'no', places: low } as const;
  const right = { ...open, less: 'yes', places: low } as const;
  expect(disagreements({ left, right })).toEqual([
    'The other leg lies below the middle of every group too: the ratio makes the difference look small.',
  ]);
});

test('a real change that goes against where the leg stands', () => {
  const of = (leg: Partial<LegAnswers>): readonly string[] =>
    disagreements({ left: { ...open, less: 'no' }, right: { ...open, ...leg } });
  expect(of({ less: 'yes', change: up })).toEqual([
    'The right leg does more than before, and still less than the other one.',
  ]);
  expect(of({ change: up, places: low })).toEqual([
    'The right leg does more than before, and still lies below the middle of every group.',
  ]);
  expect(of({ less: 'no', change: down })).toEqual(['The right leg does less than before, though the legs are alike.']);
  expect(of({ change: down, places: notLow })).toEqual([
    'The right leg does less than before, though it lies not below the middle of the groups.',
  ]);
});
