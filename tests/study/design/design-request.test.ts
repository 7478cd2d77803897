import { expect, test } from 'vitest';
import type { DesignFaultCode, DesignId, InputKey } from '../../../packages/study/src/design/design-question.ts';
import { DESIGN_QUESTIONS, questionFor } from '../../../packages/study/src/design/design-request.ts';
import '../../support/close.ts';
import { reading, requestOf } from '../../support/told-design.ts';

type Given = Parameters<typeof reading>[1];

const groups: Given = { difference: 3, sd: 5 };

test.each<[DesignId, Given, InputKey, DesignFaultCode]>([
  ['groups', { difference: 3 }, 'sd', 'missing'],
  ['groups', { ...groups, sd: 0 }, 'sd', 'not-above-0'],
  ['groups', { ...groups, sd: Number.NaN }, 'sd', 'not-a-number'],
  ['groups', { ...groups, sd: [5, 4, 7] }, 'sd', 'not-in-order'],
  ['groups', { ...groups, sd: [4, 5] }, 'sd', 'not-in-order'],
  ['groups', { ...groups, power: [0.7, 0.8, 0.9] }, 'power', 'one-number'],
  ['groups', { ...groups, power: 1 }, 'power', 'not-a-share'],
  ['groups', { ...groups, 'drop-out': 1 }, 'drop-out', 'not-a-drop-out'],
  ['groups', { ...groups, legs: 3 }, 'legs', 'not-legs'],
  ['groups', { ...groups, 'legs-alike': 1.1 }, 'legs-alike', 'not-an-icc'],
  ['groups', { ...groups, difference: 0 }, 'difference', 'no-difference'],
  ['groups', { ...groups, difference: [-1, 1, 3] }, 'difference', 'no-difference'],
  ['groups', { ...groups, sd: { numbers: [5], people: 1 } }, 'sd', 'not-people'],
  ['groups', { ...groups, sd: { numbers: [4, 5, 7], people: 12 } }, 'sd', 'not-people'],
  ['groups', { ...groups, difference: { numbers: [3], people: 12 } }, 'difference', 'not-people'],
  ['groups-not-worse', { margin: 2, difference: -2, sd: 5 }, 'difference', 'beyond-margin'],
  ['groups-not-worse', { margin: 2, difference: [-3, 0, 1], sd: 5 }, 'difference', 'beyond-margin'],
  ['paired', { difference: 3, sd: 5, correlation: 1 }, 'correlation', 'not-a-correlation'],
  ['icc', { icc: 1, width: 0.2 }, 'icc', 'not-an-icc'],
  ['icc', { icc: 0.8, width: 0.2, repeats: 2.5 }, 'repeats', 'not-repeats'],
  ['icc-above', { icc: [0.6, 0.8, 0.9], least: 0.7 }, 'least', 'least-not-below'],
])('%s with %o: %s is refused as %s', (id, given, input, code) => {
  const read = reading(id, given);
  expect(read.ok ? [] : read.faults).toContainEqual({ input, code });
});

test('everything that cannot be is told at once', () => {
  const read = reading('groups', { difference: 0, sd: -1, power: 2 });
  expect(read.ok ? [] : read.faults.map(({ input }) => input)).toEqual(['difference', 'sd', 'power']);
});

test('what was told says in which way a question is asked', () => {
  expect(questionFor('paired', ['difference', 'sem']).way).toBe('sem');
  expect(questionFor('paired', ['difference', 'sd', 'correlation']).way).toBe('sd');
  expect(questionFor('paired', []).way).toBe('sd-change');
  expect(questionFor('limits', ['sem']).way).toBe('sem');
});

test('a spread that was found in 10 people lies between the ends of its interval', () => {
  // factors of a standard deviation with 9 degrees of freedom: 0.688 and 1.826 (chi-square 19.023 and 2.700 at 97.5 % and 2.5 %)
  const { ranges } = requestOf('groups', { ...groups, sd: { numbers: [5], people: 10 } });
  const { low, expected, high } = ranges.get('sd')!;
  expect([low, expected, high]).toBeCloseToEach([5 * 0.6878, 5, 5 * 1.8256], { rtol: 1e-4, atol: 0 });
});

test('an input has one kind wherever it is asked for', () => {
  const kinds = new Map<string, Set<string>>();
  for (const { key, kind } of DESIGN_QUESTIONS.flatMap(({ inputs }) => inputs)) {
    kinds.set(key, (kinds.get(key) ?? new Set()).add(kind));
  }
  expect([...kinds].filter(([, own]) => own.size > 1).map(([key]) => key)).toEqual(['difference']);
});
