import { assess, defaultSettings, InputError, type LegVisit, legOverVisits, type TestedLeg } from '@surae/analysis';
import { expect, test } from 'vitest';
import { steadyTaps } from '../../support/tapped.ts';
import { testedLeg } from '../../support/tested-leg.ts';

const visit = (day: number | null, scored: number, changes: Partial<TestedLeg> = {}): LegVisit => ({
  day,
  leg: { ...testedLeg('right', scored, { sore: true }), ...changes },
});

test('worked case: 19, eight weeks later 24 is possible by 2.25, cannot be told by 6.7, and the text can say so', () => {
  const { changes, trend } = legOverVisits([visit(0, 19), visit(56, 24)], {});
  expect(trend).toBeNull();
  expect(changes.map(({ since }) => since)).toEqual(['visit-before']);
  const [{ outcome, underOthers, hangsOnReliability }] = changes;
  if (outcome.kind === 'side-by-side') throw new Error(outcome.reasons.join(', '));
  expect(outcome).toMatchObject({ change: { value: 5 }, detectable: { zone: 'possible' }, real: 'cannot_tell' });
  expect([outcome.detectable.at95, outcome.detectable.at80].map((one) => one.toFixed(1))).toEqual(['6.2', '4.1']);
  expect(underOthers.map(({ reliability, zone }) => [reliability.standardError, zone])).toEqual([
    [2.07, 'possible'],
    [6.7, 'cannot-tell'],
  ]);
  expect(underOthers[1].at95.toFixed(2)).toBe('18.57');
  expect(hangsOnReliability).toBe(true);
});

test('visits are put in the order of time; with three of them there is a course and a change since the first', () => {
  const { visits, changes, trend } = legOverVisits([visit(28, 22), visit(0, 19), visit(56, 30)], {});
  expect(visits.map(({ day }) => day)).toEqual([0, 28, 56]);
  expect(changes.map(({ since, outcome }) => [since, outcome.kind === 'change' && outcome.change.value])).toEqual([
    ['visit-before', 8],
    ['first-visit', 11],
  ]);
  // 3 and 8 in four weeks, 11 in eight: the median slope is 11 / 8 a week
  expect(trend).toMatchObject({ kind: 'trend', slopePerWeek: { value: 11 / 8, low: null }, moves: 'cannot_tell' });
});

test('another way of testing, or one that is not known, stands side by side with what differs', () => {
  const { changes } = legOverVisits([visit(0, 19, { features: { footwearWorn: null } }), visit(56, 24)], {});
  expect(changes[0]).toMatchObject({ underOthers: [], hangsOnReliability: null });
  expect(changes[0].outcome).toMatchObject({
    kind: 'side-by-side',
    reasons: ['different-test'],
    differences: [{ feature: 'footwearWorn', before: null, after: 'barefoot' }],
  });
});

test('a visit without a day gives no change and no course, and nothing is moved', () => {
  const { visits, changes, trend } = legOverVisits([visit(28, 22), visit(null, 19), visit(0, 30)], {});
  expect(visits.map(({ day }) => day)).toEqual([28, null, 0]);
  expect(changes[0].outcome).toMatchObject({ reasons: ['day-not-recorded'] });
  expect(changes[1].outcome).toMatchObject({ reasons: ['not-in-time-order'] });
  expect(trend).toMatchObject({ kind: 'side-by-side', reasons: ['day-not-recorded'] });
});

test('one visit has no change; none at all is refused', () => {
  expect(legOverVisits([visit(0, 19)], {})).toMatchObject({ changes: [], trend: null });
  expect(() => legOverVisits([], {})).toThrow(InputError);
});

test('a change between two counts by hand has to be larger by the error of both, and one by a sensor is no counterpart', () => {
  const byHand = (count: number): TestedLeg => {
    const leg = testedLeg('left', count);
    const context = { endReason: 'fatigue', exertion: 9 } as const;
    const request = { placement: 'hand', side: 'left', protocol: leg.protocol, subject: {}, context } as const;
    return { ...leg, report: assess(steadyTaps(count, 2, 0.005), request, defaultSettings()) };
  };
  const change = (before: TestedLeg, after: TestedLeg) =>
    legOverVisits(
      [
        { day: 0, leg: before },
        { day: 28, leg: after },
      ],
      {},
    ).changes[0].outcome;
  const [hand, sensor] = [change(byHand(20), byHand(27)), change(testedLeg('left', 20), testedLeg('left', 27))];
  if (hand.kind !== 'change' || sensor.kind !== 'change') throw new Error('both are changes');
  expect(hand.standardError).toBe(sensor.standardError);
  expect(hand.detectable.at95).toBeCloseTo(Math.hypot(sensor.detectable.at95, Math.SQRT2 * 2), 9);
  expect(sensor.real).toBe('yes');
  const mixed = change(testedLeg('left', 20), byHand(27));
  expect(mixed.kind === 'side-by-side' && mixed.reasons).toContain('different-test');
});
