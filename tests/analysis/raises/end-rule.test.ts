import type { FaultKind } from '@surae/shared';
import { expect, test } from 'vitest';
import { faultEnd, faultKind } from '../../../packages/analysis/src/raises/end-rule.ts';

const row = (...faults: (FaultKind | 'good' | 'gap')[]) =>
  faults.map((fault) => ({
    faults: new Set(fault === 'good' || fault === 'gap' ? [] : [fault]),
    judged: fault !== 'gap',
  }));

test('two faults of one kind in a row end the test at the second', () => {
  expect(faultEnd(row('good', 'height', 'good', 'height', 'height', 'good'), 2)).toEqual({ kind: 'height', index: 4 });
});

test('faults of different kinds do not add up', () => {
  expect(faultEnd(row('height', 'tempo', 'height', 'tempo', 'posture', 'support'), 2)).toBeUndefined();
});

test('a repetition hidden by a gap neither adds to a row nor breaks it', () => {
  expect(faultEnd(row('height', 'gap', 'height'), 2)).toEqual({ kind: 'height', index: 2 });
  expect(faultEnd(row('height', 'gap', 'good', 'height'), 2)).toBeUndefined();
});

test('a repetition with two kinds of fault counts for both', () => {
  const both = [
    { faults: new Set<FaultKind>(['height', 'tempo']), judged: true },
    { faults: new Set<FaultKind>(['tempo']), judged: true },
  ];
  expect(faultEnd(both, 2)).toEqual({ kind: 'tempo', index: 1 });
});

test('one fault in a row ends at the first, none in an empty set', () => {
  expect(faultEnd(row('good', 'support'), 1)).toEqual({ kind: 'support', index: 1 });
  expect(faultEnd([], 2)).toBeUndefined();
  expect(() => faultEnd([], 0)).toThrow('faultsInARow');
});

test('resting is a fault of tempo, knee and trunk are one kind, and a bounce ends nothing', () => {
  expect(
    ['height', 'tempo', 'rest', 'knee', 'lean', 'hands', 'other-foot', 'bounce', 'return', 'gap'].map((id) =>
      faultKind(id as 'height'),
    ),
  ).toEqual(['height', 'tempo', 'tempo', 'posture', 'posture', 'support', 'support', undefined, undefined, undefined]);
});
