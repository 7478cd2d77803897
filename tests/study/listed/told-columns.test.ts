import { IRRITABILITY_INPUTS, PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { expect, test } from 'vitest';
import { expectedIn, TOLD_COLUMNS } from '../../../packages/study/src/listed/told-columns.ts';

test('the words of surface, knee, footwear and support are those that a protocol allows', () => {
  const [{ parameters }] = PROTOCOLS;
  for (const name of ['surface', 'knee', 'footwear', 'support'] as const) {
    expect([...TOLD_COLUMNS[name].words].sort()).toEqual([...parameters[name].allowed].sort());
  }
});

test('the reasons of an end are those that some protocol knows', () => {
  const known = new Set<string>([...PROTOCOLS, ...PULL_PROTOCOLS].flatMap(({ endConditions }) => endConditions));
  expect([...TOLD_COLUMNS.end_reason.words].sort()).toEqual([...known].sort());
});

test('the answers about irritability are those that are graded', () => {
  expect(TOLD_COLUMNS.provoked_by.words).toEqual(Object.keys(IRRITABILITY_INPUTS.provokedBy.grades));
  expect(TOLD_COLUMNS.rest_pain.words).toEqual(Object.keys(IRRITABILITY_INPUTS.restPain.grades));
  expect(TOLD_COLUMNS.trend.words).toEqual(Object.keys(IRRITABILITY_INPUTS.trend.grades));
});

test('what is expected is said with range and unit', () => {
  expect(expectedIn(TOLD_COLUMNS.rest_s)).toBe('a number of 0 to 86400 s, or nothing');
  expect(expectedIn(TOLD_COLUMNS.symptomatic)).toBe('one of none, mild, dominant, or nothing');
});
