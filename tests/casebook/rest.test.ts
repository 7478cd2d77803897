import { expect, test } from 'vitest';
import {
  countingOf,
  countingSets,
  restBetweenSidesS,
  restTakenS,
  secondsBetween,
} from '../../packages/casebook/src/rest.ts';
import { madeSet, madeVisit } from '../support/made-visit.ts';

test('time between two written times does not mind their offsets', () => {
  expect(secondsBetween('2026-03-29T01:59:50.000+01:00', '2026-03-29T03:00:10.500+02:00')).toBe(20.5);
  expect(secondsBetween('2026-03-01T09:00:10Z', '2026-03-01T09:00:00Z')).toBe(-10);
});

test('what cannot be read as a time gives no time', () => {
  expect(secondsBetween('yesterday', '2026-03-01T09:00:00Z')).toBeNull();
  expect(secondsBetween('2026-03-01T09:00:00Z', '')).toBeNull();
});

const left = madeSet('left', null, { begunAt: '2026-03-01T09:30:00Z', stoppedAt: '2026-03-01T09:31:00Z' });
const right = madeSet('right', null, { begunAt: '2026-03-01T09:33:30Z', stoppedAt: '2026-03-01T09:34:30Z' });

test('the rest runs from the stop of the first set to the begin of the second', () => {
  expect(restTakenS(madeVisit(left, right))).toBe(150);
  expect(restTakenS(madeVisit(right, left))).toBe(-270);
});

test('a rest with an end missing is unknown', () => {
  expect(restTakenS(madeVisit())).toBeNull();
  expect(restTakenS(madeVisit(left))).toBeNull();
  expect(restTakenS(madeVisit({ ...left, stoppedAt: null }, right))).toBeNull();
});

test('a set that was set aside does not count, nor does an earlier one of the same side', () => {
  const aside = { ...left, id: 'aside', setAside: true };
  const again = { ...left, id: 'again', begunAt: '2026-03-01T09:45:00Z' };
  expect(countingSets(madeVisit(aside, left, right)).map(({ id }) => id)).toEqual(['set-left', 'set-right']);
  expect(countingSets(madeVisit(left, right, again)).map(({ id }) => id)).toEqual(['set-right', 'again']);
});

test('the last set of each side that was not set aside counts, and the rest lies between two of them', () => {
  const aside = { ...right, setAside: true };
  const again = { ...left, begunAt: '2026-03-01T09:40:00Z' };
  expect(countingOf([left, right, again])).toEqual([right, again]);
  expect(countingOf([left, aside])).toEqual([left]);
  expect([restBetweenSidesS([left, right]), restBetweenSidesS([left]), restBetweenSidesS([])]).toEqual([
    150,
    null,
    null,
  ]);
});
