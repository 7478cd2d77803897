import { ratioBlocks } from '@surae/analysis';
import { expect, test } from 'vitest';
import { irritabilityOf } from '../../packages/analysis/src/compare/irritability.ts';
import {
  holdsOf,
  inFlare,
  injuryOf,
  irritabilityAnswers,
  isTold,
  noHistory,
  proposedHistory,
  soreLegs,
} from '../../packages/casebook/src/history.ts';
import { testedLeg, visitLegs } from '../support/tested-leg.ts';
import { ALL_TOLD, legTold, MODERATE } from '../support/told-visit.ts';

test('nothing asked is nothing known', () => {
  expect(isTold(noHistory)).toBe(false);
  expect(injuryOf(noHistory.legs.left)).toBeNull();
  expect(Object.values(irritabilityAnswers(noHistory.legs.left)).every((answer) => answer === null)).toBe(true);
  expect(holdsOf({}, 'pregnant')).toBeNull();
  expect(holdsOf({ history: noHistory }, 'pregnant')).toBeNull();
});

test('one answer of any kind is something told', () => {
  expect(isTold({ ...noHistory, about: [] })).toBe(true);
  expect(isTold({ ...noHistory, legs: { ...noHistory.legs, left: legTold('none') } })).toBe(true);
  expect(isTold({ ...noHistory, legs: { ...noHistory.legs, right: legTold(null, { flare: 'no' }) } })).toBe(true);
});

test('what holds of the person is a yes, and every other answer of the same question a no', () => {
  const history = { ...ALL_TOLD, about: ['one-sided-sport'] as const };
  expect(holdsOf({ history }, 'one-sided-sport')).toBe(true);
  expect(holdsOf({ history }, 'amputation')).toBe(false);
});

test('an injury within a year or at an unknown time stands against a ratio; an older one only until a clinician confirms it', () => {
  const { legs, ...pair } = visitLegs(testedLeg('left', 27), testedLeg('right', 19));
  const blocksOf = (leg: ReturnType<typeof legTold>): readonly string[] =>
    ratioBlocks(legs.left!.report, legs.right!.report, {
      ...pair,
      sore: { left: false, right: true },
      earlierInjury: { left: injuryOf(leg), right: false },
      nerveSigns: false,
    });
  expect(blocksOf(legTold('none'))).toEqual([]);
  expect(blocksOf(legTold('within-a-year'))).toEqual(['earlier-injury']);
  expect(blocksOf(legTold('when-unknown'))).toEqual(['earlier-injury']);
  expect(blocksOf(legTold('over-a-year'))).toEqual(['earlier-injury-not-confirmed']);
  expect(blocksOf({ ...legTold('over-a-year'), confirmed: false })).toEqual(['earlier-injury-not-confirmed']);
  expect(blocksOf({ ...legTold('over-a-year'), confirmed: true })).toEqual([]);
  expect(blocksOf({ ...legTold('within-a-year'), confirmed: true })).toEqual(['earlier-injury']);
  expect(blocksOf(legTold(null))).toEqual(['earlier-injury-not-asked']);
});

test('each answer about a time has the grade of every time that it stands for', () => {
  const gradeOf = (told: Parameters<typeof legTold>[1]): unknown =>
    irritabilityOf(irritabilityAnswers(legTold(null, told))).byInput;
  expect(gradeOf({ settles: 'under-12-hours', stiffness: 'under-10-minutes' })).toEqual({
    settlesAfter: 'low',
    morningStiffness: 'low',
  });
  expect(gradeOf({ settles: 'by-next-morning', stiffness: '10-to-30-minutes' })).toEqual({
    settlesAfter: 'moderate',
    morningStiffness: 'moderate',
  });
  expect(gradeOf({ settles: 'over-24-hours', stiffness: 'over-30-minutes' })).toEqual({
    settlesAfter: 'high',
    morningStiffness: 'high',
  });
});

test('irritability is asked of sore legs alone', () => {
  expect(soreLegs({ left: 'insertion', right: 'no' })).toEqual(['left']);
  expect(soreLegs({ left: 'mid-portion', right: 'both-places' })).toEqual(['left', 'right']);
  expect(soreLegs({ left: null, right: 'no' })).toEqual([]);
});

test('a leg that is not sore is in no flare; of a sore one it must have been asked', () => {
  const sore = { left: 'no', right: 'insertion' } as const;
  const flare = (told: 'yes' | 'no' | null) => ({
    sore,
    history: { ...noHistory, legs: { ...noHistory.legs, right: legTold(null, { flare: told }) } },
  });
  expect(inFlare({ sore }, 'left')).toBe(false);
  expect(inFlare({ sore }, 'right')).toBeNull();
  expect([inFlare(flare('yes'), 'right'), inFlare(flare('no'), 'right'), inFlare(flare(null), 'right')]).toEqual([
    true,
    false,
    null,
  ]);
});

test('a next visit proposes what lasts, and nothing of how irritable it was then', () => {
  const told = { ...ALL_TOLD, legs: { left: legTold('over-a-year', MODERATE), right: legTold('none', MODERATE) } };
  expect(proposedHistory(told)).toEqual({
    about: [],
    legs: { left: legTold('over-a-year'), right: legTold('none') },
  });
  expect(proposedHistory(undefined)).toEqual(noHistory);
});
