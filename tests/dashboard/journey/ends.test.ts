import { endClass } from '@surae/analysis';
import { END_CLASS_SENTENCES, END_REASON_SENTENCES, PROTOCOLS, TOLERANCE_PROBE } from '@surae/shared';
import { expect, test } from 'vitest';
import {
  endAnswered,
  endedByPop,
  endsOf,
  notedPainPeak,
  painLimitOf,
} from '../../../apps/dashboard/src/journey/ends.ts';

test('the ends that can be chosen are those of the protocol, in its order', () => {
  for (const protocol of PROTOCOLS) expect(endsOf(protocol), protocol.id).toEqual(protocol.endConditions);
  expect(endsOf(TOLERANCE_PROBE)).not.toContain('fatigue');
});

test('for a protocol that is not known here every end can be chosen, and no limit of pain is made up', () => {
  expect([...endsOf(undefined)].sort()).toEqual(Object.keys(END_REASON_SENTENCES).sort());
  expect(painLimitOf(undefined)).toBeNull();
});

test('the limit of pain is that of the protocol', () => {
  expect(painLimitOf(PROTOCOLS[0])).toBe(5);
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
] as const)('an end for %s makes the set one of %s, and there are words for that', (reason, expected) => {
  expect(endClass(reason)).toBe(expected);
  expect(END_CLASS_SENTENCES[expected].text).toMatch(/\.$/);
});

test('the pain that was noted most strongly is the proposal; nothing noted is not no pain', () => {
  const pain = (value: number) => ({ atS: value, what: 'pain', value }) as const;
  expect(notedPainPeak({ notes: [pain(2), pain(6), pain(3)] })).toBe(6);
  expect(notedPainPeak({ notes: [pain(0)] })).toBe(0);
  expect(notedPainPeak({})).toBeNull();
  expect(notedPainPeak({ notes: [{ atS: 1, what: 'hidden', value: 9 }] })).toBeNull();
});

test('where there was no pain it was not sharp; what was not asked stays open', () => {
  const open = { painPeak: null, exertion: null, painSharp: null };
  expect(endAnswered('fatigue', open)).toEqual({ reason: 'fatigue', ...open });
  expect(endAnswered('pain', { painPeak: 7, exertion: 8, painSharp: true }).painSharp).toBe(true);
  expect(endAnswered('fatigue', { ...open, painPeak: 0, painSharp: true }).painSharp).toBe(false);
  expect(endAnswered('fatigue', { painPeak: 3, exertion: 8 }).painSharp).toBeNull();
});

test('a pop ends a test for safety, and what was not asked then stays open', () => {
  expect(endedByPop(4)).toEqual({ reason: 'safety', painPeak: 4, exertion: null, painSharp: null, happened: 'pop' });
  expect(endClass(endedByPop(null).reason)).toBe('incomplete');
});
