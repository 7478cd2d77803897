import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { protocolLimit, testEnd } from '../../../packages/analysis/src/assess/test-end.ts';
import { detectedSet } from '../../support/detected-set.ts';
import { parametersWith } from '../../support/set-under-judgement.ts';

const { raises } = detectedSet({ heightsM: Array<number>(6).fill(0.1) });

test('without a limit every repetition belongs to the test', () => {
  expect(protocolLimit(raises, FLOOR.parameters)).toEqual({ count: 6, rule: undefined });
  expect(testEnd(raises, FLOOR.parameters, undefined, undefined)).toEqual({
    rule: 'last-repetition',
    kind: null,
    atRepetition: 6,
    atS: 14,
    reasonGiven: null,
    class: 'unknown',
  });
});

test('a cap that is reached censors the count, one beyond the set does nothing', () => {
  expect(testEnd(raises, parametersWith({ repetitionCap: 6 }), undefined, undefined)).toMatchObject({
    rule: 'repetition-cap',
    atRepetition: 6,
    class: 'censored',
  });
  expect(protocolLimit(raises, parametersWith({ repetitionCap: 7 }))).toEqual({ count: 6, rule: undefined });
});

test('a duration counts from the first start to the tops within it', () => {
  // starts at 2, 4, ...; tops at 3, 5, 7, ...: 5 s after the first start hold the tops at 3, 5 and 7 s
  expect(protocolLimit(raises, parametersWith({ duration: 5 }))).toEqual({ count: 3, rule: 'duration' });
  expect(protocolLimit([], parametersWith({ duration: 5 }))).toEqual({ count: 0, rule: undefined });
});

test('whatever comes first ends the test', () => {
  const faults = { kind: 'height', index: 3 } as const;
  expect(testEnd(raises, parametersWith({ fixedCount: 5 }), faults, undefined)).toMatchObject({
    rule: 'consecutive-faults',
    kind: 'height',
    atRepetition: 4,
    atS: 10,
  });
  expect(testEnd(raises, parametersWith({ fixedCount: 3 }), faults, undefined)).toMatchObject({
    rule: 'fixed-count',
    kind: null,
    atRepetition: 3,
    class: 'probe',
  });
});

test.each([
  ['fatigue', 'capacity'],
  ['heel-cannot-leave', 'capacity'],
  ['two-prompted-faults', 'capacity'],
  ['pain', 'tolerance'],
  ['other-stop', 'incomplete'],
  ['safety', 'incomplete'],
  ['technical', 'incomplete'],
  ['cap', 'censored'],
  ['fixed-count-done', 'probe'],
] as const)('a test that ended by %s is one of %s', (reason, kind) => {
  expect(testEnd(raises, FLOOR.parameters, undefined, reason)).toMatchObject({ class: kind, reasonGiven: reason });
});
