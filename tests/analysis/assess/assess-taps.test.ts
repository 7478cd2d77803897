import { type AssessmentRequest, assess, defaultSettings, protocolFingerprint, type Report } from '@surae/analysis';
import { CRITERION_IDS, FLOOR } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { steadyTaps, tapped } from '../../support/tapped.ts';

const settings = defaultSettings();

function assessed(trace: ReturnType<typeof tapped>, context: AssessmentRequest['context'] = {}): Report {
  return assess(
    trace,
    { placement: 'hand', side: 'left', protocol: FLOOR, subject: { bodyMassKg: 80 }, context },
    settings,
  );
}

test('the number of taps that stand, right within two repetitions', () => {
  const { count, placement, kind, gate } = assessed(steadyTaps(22), { endReason: 'fatigue' });
  expect(count).toMatchObject({ attempted: 22, low: 20, high: 24, scored: 22, scoredLow: 20, scoredHigh: 24 });
  expect([placement, kind, gate.usable]).toEqual(['hand', 'not-measured', 'yes']);
});

test('few taps have no bound below zero, and none say that nothing was counted', () => {
  expect(assessed(steadyTaps(1)).count).toMatchObject({ attempted: 1, low: 0, high: 3 });
  const none = assessed(tapped([[0, 0]]));
  expect(none.count).toMatchObject({ attempted: 0, low: 0, high: 2 });
  expect(none.gate).toEqual({ usable: 'cannot_tell', reasons: ['no-repetition'] });
});

test('a tap that was taken back is said and not counted', () => {
  const { count, issues } = assessed(
    tapped([
      [0, 0],
      [1, 1],
      [3, 1],
      [3.4, -1],
      [5, 1],
      [6, 0],
    ]),
  );
  expect(count.attempted).toBe(2);
  expect(issues).toEqual([{ code: 'taps-taken-back', severity: 'note', fromS: 1, toS: 5, details: { count: 1 } }]);
});

test('two taps within half a second may be one: the lower bound allows for it', () => {
  const { count, issues } = assessed(
    tapped([
      [0, 0],
      [1, 1],
      [3, 1],
      [3.3, 1],
      [5, 1],
      [7, 1],
      [8, 0],
    ]),
  );
  expect(count).toMatchObject({ attempted: 5, low: 2, high: 7 });
  expect(issues.map(({ code }) => code)).toEqual(['taps-too-close']);
});

test('nothing but the count and the taps was measured, and nothing is zero that was not', () => {
  const { repetitions, measures, reference, withheld, bodyWeightN } = assessed(steadyTaps(10));
  const { topS, topUS, periodS, index, ...rest } = repetitions[4];
  expect([index, topS, topUS, periodS]).toEqual([5, 9, settings.hand.tapUS, 2]);
  const { startS, endS, heightM, riseM, upS, downS, meanPowerW, work, beatErrorS } = rest;
  expect([startS, endS, heightM, riseM, upS, downS, meanPowerW, beatErrorS]).toEqual(Array(8).fill(null));
  expect(Object.values(work).every((value) => value === null)).toBe(true);
  expect(measures).toMatchObject({
    heightsMeasured: 0,
    peakHeightM: null,
    meanHeightM: null,
    displacementM: null,
    timeUnderTensionS: null,
    timeToEndS: null,
  });
  expect(measures.countAtFraction.every(({ count }) => count === null)).toBe(true);
  expect([reference, withheld, bodyWeightN]).toEqual([null, ['counted-by-hand'], null]);
});

describe('criteria', () => {
  test('none is observed, so no repetition is called valid', () => {
    const { repetitions, count } = assessed(steadyTaps(3));
    for (const { criteria, valid, probabilityValid, headline } of repetitions) {
      expect(CRITERION_IDS.every((id) => criteria[id].result === 'not_observed')).toBe(true);
      expect([valid, probabilityValid, headline]).toEqual(['cannot_tell', null, null]);
    }
    expect(count.cannotTell).toBe(3);
  });

  test('a mark belongs to the tap before it, and one before all taps to the first', () => {
    const marks = [
      { atS: 0.5, criterion: 'other-foot' },
      { atS: 3.0, criterion: 'knee' },
      { atS: 6.9, criterion: 'hands' },
    ] as const;
    const { repetitions, count } = assessed(steadyTaps(5), { marks });
    expect(repetitions.map(({ headline }) => headline)).toEqual(['other-foot', 'knee', 'hands', null, null]);
    expect(repetitions[1].criteria.knee).toMatchObject({ result: 'fail', seen: 'tester' });
    expect(count).toMatchObject({ attempted: 5, valid: 2, scored: 2, validLow: 0, validHigh: 4, cannotTell: 2 });
  });

  test('faults of one kind in a row end the test, and what follows does not score', () => {
    const marks = [
      { atS: 3.2, criterion: 'knee' },
      { atS: 5.2, criterion: 'lean' },
    ] as const;
    const { end, count, repetitions } = assessed(steadyTaps(6), { marks });
    expect(end).toMatchObject({ rule: 'consecutive-faults', kind: 'posture', atRepetition: 3 });
    expect(count).toMatchObject({ attempted: 6, valid: 4, scored: 1 });
    expect(repetitions.map(({ afterEnd }) => afterEnd)).toEqual([false, false, false, true, true, true]);
  });
});

describe('tempo', () => {
  test('the mean time from tap to tap, and the beat that it misses', () => {
    const { tempo } = assessed(steadyTaps(12, 2.2)).measures;
    expect(tempo.meanPeriodS).toBeCloseTo(2.2, 9);
    expect(tempo.perMinute).toBeCloseTo(60 / 2.2, 9);
    expect(tempo.meanBeatErrorS).toBeCloseTo(0.2, 9);
    expect([tempo.meanUpS, tempo.meanTopS, tempo.meanDownS, tempo.meanLowS]).toEqual([null, null, null, null]);
  });

  test('too few taps carry none: their error is too large a share of it', () => {
    // sqrt 2 of 0.25 s over one period of 2 s is 18 %, over two 9 %
    expect(assessed(steadyTaps(2)).measures.tempo.meanPeriodS).toBeNull();
    expect(assessed(steadyTaps(3)).measures.tempo.meanPeriodS).toBeCloseTo(2, 9);
    expect(assessed(steadyTaps(1)).measures.tempo.meanPeriodS).toBeNull();
  });
});

test('the fingerprint is none of a sensor', () => {
  const { protocol } = assessed(steadyTaps(4));
  const rule = FLOOR.parameters.referenceRule.value;
  expect(protocol.fingerprint).toBe(protocolFingerprint(FLOOR, 'hand', rule));
  expect(protocol.fingerprint).not.toBe(protocolFingerprint(FLOOR, 'heel', rule));
});

test('the report is plain JSON', () => {
  const report = assessed(steadyTaps(5), { endReason: 'fatigue', exertion: 9 });
  expect(JSON.parse(JSON.stringify(report))).toEqual(report);
});
