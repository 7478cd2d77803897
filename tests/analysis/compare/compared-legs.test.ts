import { defaultSettings, legsOfVisit, type OwnRatios, pullLegsOfVisit } from '@surae/analysis';
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

test("the clinic's own ratios are those of the protocol of the legs, for raises and for forces", () => {
  const source = { id: 'own', citation: 'ours', group: 'own people' };
  const error = { logError: 0.03, logErrorUpper: 0.04, pairs: 40, source };
  const legs = visitLegs(testedLeg('left', 40), testedLeg('right', 30, { sore: true }));
  const pulls = {
    ...visitLegs(null, null),
    legs: { left: testedPull('left', 1000), right: testedPull('right', 900, { sore: true }) },
  };
  const ids = [legs.legs.left!.protocol.id, pulls.legs.left.protocol.id];
  const errorsBy = (ratios: OwnRatios) =>
    [legsOfVisit(legs, {}, judging, ratios), pullLegsOfVisit(pulls, {}, ratios)].map(({ comparison }) =>
      comparison.kind === 'ratio' ? [comparison.error.from, comparison.error.logU === 0.03] : comparison.blocks,
    );
  const own = ['own-ratios', true];
  const independent = ['sides-independent', false];
  expect(errorsBy({ [ids[0]]: error })).toEqual([own, independent]);
  expect(errorsBy({ [ids[1]]: error })).toEqual([independent, own]);
  expect(errorsBy({ toString: error })).toEqual([independent, independent]);
});
