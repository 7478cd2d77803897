import { defaultSettings, legFinding, type TestedLeg } from '@surae/analysis';
import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { CALM, testedLeg, WOMAN } from '../../support/tested-leg.ts';

const { judging } = defaultSettings();
const finding = (leg: TestedLeg, person = WOMAN) => legFinding(leg, person, {}, judging);

test('a full set: its score with the published error, effort with inputs, and every published group beside it', () => {
  const found = finding(testedLeg('left', 27));
  expect(found.value).toMatchObject({ value: 27, u: 2.25 });
  expect(found.reliability?.source.id).toBe('reliability.repetitions.incline10');
  expect(found).toMatchObject({ blocks: [], pain: { countShows: 'capacity', withinLimit: 'yes' } });
  expect(found.effort).toMatchObject({ good: 'yes', used: ['end-reason', 'exertion', 'height-drop'] });
  expect(found.irritability.grade).toBe('low');
  expect(found.reference.kind === 'references' && found.reference.references.map(({ entry }) => entry.value)).toEqual([
    27, 21, 25,
  ]);
});

test('a set that pain ended is what was tolerated, and no group stands beside it', () => {
  const found = finding(testedLeg('left', 9, { painPeak: 6, irritability: { ...CALM, peakPain: 6 } }, 'pain'));
  expect(found.pain).toMatchObject({ countShows: 'tolerated', toleratedRepetitions: 9, withinLimit: 'no', limit: 3 });
  expect(found.irritability).toMatchObject({ grade: 'high', decidedBy: ['peakPain'] });
  expect(found.blocks).toContain('ended-for-pain');
  expect(found.reference).toEqual({ kind: 'none', reasons: ['set-not-interpreted'] });
});

test('another way of testing has no reference, and a protocol without a study has the cautious error', () => {
  const leg = testedLeg('left', 30);
  const report = { ...leg.report, protocol: { ...leg.report.protocol, id: FLOOR.id } };
  expect(finding({ ...leg, report, protocol: FLOOR }).reference).toEqual({
    kind: 'none',
    reasons: ['no-matching-protocol'],
  });
  const bent = { ...FLOOR, id: 'single-leg.bent-knee' };
  // 30 % of 30 is 9, more than the fixed 6
  expect(finding({ ...leg, protocol: bent }).value.u).toBeCloseTo(9 / (1.96 * Math.SQRT2), 10);
});

test('an own error of the same protocol comes first, of another protocol never', () => {
  const own = {
    standardError: 1.4,
    standardErrorUpper80: 1.6,
    scale: 'natural',
    unit: '1',
    pairs: 30,
    source: { id: 'own', citation: 'own repeated tests', group: 'own people' },
  } as const;
  expect(legFinding(testedLeg('left', 27), WOMAN, { 'single-leg.incline10': own }, judging).value.u).toBe(1.4);
  expect(legFinding(testedLeg('left', 27), WOMAN, { 'single-leg.floor': own }, judging).value.u).toBe(2.25);
  expect(legFinding(testedLeg('left', 27), WOMAN, {}, judging).value.u).toBe(2.25);
});
