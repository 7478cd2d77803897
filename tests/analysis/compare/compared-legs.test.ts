import { defaultSettings, legsOfVisit, pullLegsOfVisit } from '@surae/analysis';
import { expect, test } from 'vitest';
import { testedLeg, visitLegs } from '../../support/tested-leg.ts';
import { testedPull } from '../../support/tested-pull.ts';

const { judging } = defaultSettings();

test('reasons come once each and in their fixed order, whoever knew of them', () => {
  const visit = visitLegs(testedLeg('left', 3), testedLeg('right', 19, { sore: true }), {
    blocks: ['nerve-signs', 'several-sets', 'side-uncertain'],
    restS: null,
  });
  const { comparison } = legsOfVisit(visit, {}, judging);
  expect(comparison.kind === 'blocked' && comparison.blocks.map(({ code }) => code)).toEqual([
    'several-sets',
    'few-repetitions',
    'within-error',
    'rest-not-recorded',
    'side-uncertain',
    'nerve-signs',
  ]);
});

test('the error that was chosen is not among the others', () => {
  const counts = legsOfVisit(visitLegs(testedLeg('left', 40), testedLeg('right', 30, { sore: true })), {}, judging);
  expect(counts.reliability?.source.id).toBe('reliability.repetitions.incline10');
  expect(counts.underOthers.map(({ reliability }) => reliability.source.id)).toEqual([
    'reliability.repetitions.standing',
    'reliability.repetitions.string',
  ]);
});

test('a leg without a set has the unit of the other one, so that only its value is missing', () => {
  const { comparison } = pullLegsOfVisit(
    { ...visitLegs(null, null), legs: { left: null, right: testedPull('right', 900) } },
    {},
  );
  expect(comparison).toMatchObject({ kind: 'blocked', blocks: [{ code: 'value-missing' }] });
});
