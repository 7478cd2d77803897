import { defaultSettings, judge } from '@surae/analysis';
import { FLOOR, INCLINE_10, LOADED, TOLERANCE_PROBE } from '@surae/shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { detectedSet, judged, PLAIN_REQUEST } from '../../support/detected-set.ts';

const steady = Array<number>(25).fill(0.1);
const fading = Array.from({ length: 25 }, (_, i) => 0.1 * (1 - 0.02 * i));

test('set A: 25 repetitions of 10 cm at the beat are 25 valid ones, 30 a minute and 2.5 m', () => {
  const report = judged({ heightsM: steady });
  expect(report.count).toMatchObject({ attempted: 25, valid: 25, scored: 25, scoredLow: 25, scoredHigh: 25 });
  expect(report.measures.tempo.perMinute).toBeCloseTo(30, 9);
  expect(report.measures.displacementM?.value).toBeCloseTo(2.5, 9);
  expect(report.repetitions.every((one) => one.valid === 'yes')).toBe(true);
});

test('set A at 80 kg is 78.453 J a repetition and 1961.33 J', () => {
  const report = judged({ heightsM: steady }, { subject: { bodyMassKg: 80 } });
  expect(report.repetitions[7].work.heelJ).toBeCloseTo(78.4532, 9);
  expect(report.measures.work.heelJ).toBeCloseTo(1961.33, 9);
  // 78.4532 J in the 0.9 s from the bottom to the hold
  expect(report.repetitions[7].meanPowerW).toBeCloseTo(78.4532 / 0.9, 9);
});

test('set B: fading by 2 % a repetition gives 1.9 m, 1490.61 J, 25 reps from 50 % and 16 from 70 % of the first', () => {
  const report = judged({ heightsM: fading, uM: 0 }, { subject: { bodyMassKg: 80 } });
  expect(report.measures.displacementM?.value).toBeCloseTo(1.9, 9);
  expect(Math.abs((report.measures.work.heelJ ?? 0) - 1490.61)).toBeLessThan(0.005);
  const at = (fraction: number) => report.measures.countAtFraction.find((one) => one.fraction === fraction)?.count;
  expect(at(0.5)).toBe(25);
  expect(at(0.7)).toBe(16);
  expect(report.repetitions[24].heightM).toBeCloseTo(0.052, 12);
});

test('set B by hand: the reference is 9.9 cm, 13 repetitions pass, the test ends with the second low one', () => {
  const report = judged({ heightsM: fading, uM: 0 });
  expect(report.reference).toMatchObject({
    rule: 'best-two-of-first-repetitions',
    fromRepetitions: [1, 2],
    raised: false,
  });
  expect(report.reference?.heightM).toBeCloseTo(0.099, 12);
  // 0.1 (1 - 0.02 (k - 1)) >= 0.75 x 0.099 up to k = 13
  expect(report.count).toMatchObject({ attempted: 25, valid: 13, scored: 13 });
  expect(report.end).toMatchObject({ rule: 'consecutive-faults', kind: 'height', atRepetition: 15 });
  expect(report.repetitions.map((one) => one.afterEnd)).toEqual(steady.map((_, i) => i >= 15));
  expect(report.repetitions[13].headline).toBe('height');
});

test('good repetitions after the end are listed and valid but do not score', () => {
  const report = judged({ heightsM: [0.1, 0.1, 0.05, 0.05, 0.1, 0.1] });
  expect(report.count).toMatchObject({ attempted: 6, valid: 4, scored: 2, scoredHigh: 2 });
  expect(report.repetitions[5]).toMatchObject({ passes: true, valid: 'yes', afterEnd: true });
});

test('without a body mass there is no work and no power, never a usual mass', () => {
  const report = judged({ heightsM: steady });
  expect(report.repetitions[0].work).toEqual({
    heelJ: null,
    heelUJ: null,
    ankleJ: null,
    ankleUJ: null,
    platformJ: null,
    platformUJ: null,
    riseJ: null,
    riseUJ: null,
    seatedJ: null,
    seatedUJ: null,
  });
  expect(report.measures.work.heelJ).toBeNull();
  expect(report.repetitions[0].peakPowerW).toBeNull();
  expect(report.withheld).toContain('no-body-mass');
});

test('a load that the protocol declares must be given, and is lifted as well', () => {
  const light = judged({ heightsM: steady }, { protocol: LOADED, subject: { bodyMassKg: 80 } });
  expect(light.measures.work.heelJ).toBeNull();
  expect(light.withheld).toContain('no-external-mass');
  const heavy = judged({ heightsM: steady }, { protocol: LOADED, subject: { bodyMassKg: 80, externalMassKg: 10 } });
  expect(heavy.measures.work.heelJ).toBeCloseTo((1961.33 * 90) / 80, 8);
});

test('a foot without its lever keeps its verdicts and loses its metres', () => {
  const report = judged({ heightsM: fading, uM: 0 }, { placement: 'foot', subject: { bodyMassKg: 80 } });
  expect(report.count.valid).toBe(13);
  expect(report.repetitions[0]).toMatchObject({ heightM: null, heightUM: null, peakPowerW: null });
  expect(report.repetitions[0].percentOfReference).toBeCloseTo(100 / 0.99, 9);
  expect(report.measures).toMatchObject({ displacementM: null, peakHeightM: null });
  expect(report.measures.fatigue.slopeM).toBeNull();
  expect(report.measures.fatigue.slopePercent?.value).toBeCloseTo(-0.2 / 0.099, 9);
  expect(report.reference?.heightM).toBeNull();
  expect(report.withheld).toContain('no-heel-lever');
});

test('trunk and platform give a rise and do not observe the height of the heel', () => {
  for (const placement of ['trunk', 'platform'] as const) {
    const report = judged({ heightsM: [0.05, 0.05, 0.02], kind: 'body-rise' }, { placement });
    expect(report.repetitions[0]).toMatchObject({ heightM: null, riseM: 0.05 });
    expect(report.repetitions[2].criteria.height).toMatchObject({ result: 'not_observed', reason: 'placement' });
    expect(report.repetitions[2].passes).toBe(true);
    expect(report.repetitions[2].percentOfReference).toBeCloseTo(40, 9);
  }
});

test('practice raises give the reference, and an early higher repetition raises it with a note', () => {
  const practice = [0.08, 0.09, 0.1].map((heightM) => ({ heightM, heightUM: 0.002 }));
  const lazy = judged({ heightsM: [0.1, 0.12, 0.1] }, { context: { familiarisation: practice } });
  expect(lazy.reference).toMatchObject({ rule: 'best-two-of-familiarisation', heightM: 0.12, raised: true });
  expect(lazy.issues.map((issue) => issue.code)).toContain('reference-raised');
  const fair = judged({ heightsM: [0.09, 0.09] }, { context: { familiarisation: practice } });
  expect(fair.reference?.heightM).toBeCloseTo(0.095, 12);
  expect(fair.reference?.fromRepetitions).toEqual([]);
});

test('ten repetitions of a tolerance probe are the test, the eleventh comes after it', () => {
  const report = judged({ heightsM: Array<number>(11).fill(0.1) }, { protocol: TOLERANCE_PROBE });
  expect(report.end).toMatchObject({ rule: 'fixed-count', atRepetition: 10, class: 'probe' });
  expect(report.count).toMatchObject({ attempted: 11, valid: 11, scored: 10 });
});

test('a test that was stopped for pain is one of tolerance', () => {
  const report = judged({ heightsM: steady }, { context: { endReason: 'pain', exertion: 9 } });
  expect(report.end).toMatchObject({ class: 'tolerance', reasonGiven: 'pain' });
  expect(report.effort.good).toBe('no');
});

test('an empty set is an empty report, not a failure', () => {
  const report = judged({ heightsM: [] });
  expect(report.count).toMatchObject({ attempted: 0, valid: 0, scored: 0, low: 0, high: 0 });
  expect(report.repetitions).toEqual([]);
  expect(report.reference).toBeNull();
  expect(report.end).toMatchObject({ rule: 'last-repetition', atRepetition: 0, atS: null });
  expect(report.gate).toMatchObject({ usable: 'cannot_tell', reasons: ['no-repetition'] });
});

test('what the block pass saw otherwise is noted and listed', () => {
  const differences = [{ kind: 'only-block', repetition: null, finalTopS: null, blockTopS: 3 }] as const;
  const extras = { commonRelativeU: 0, blockDifferences: differences };
  const report = judge(detectedSet({ heightsM: steady }), PLAIN_REQUEST, defaultSettings().judging, extras);
  expect(report.blockDifferences).toEqual(differences);
  expect(report.issues.map((issue) => issue.code)).toContain('changed-in-final-pass');
});

/** Every number anywhere in a value. */
function* numbersIn(value: unknown): Generator<number> {
  if (typeof value === 'number') yield value;
  else if (value !== null && typeof value === 'object') for (const one of Object.values(value)) yield* numbersIn(one);
}

test('a report is plain JSON: it survives a round trip, and no number in it is NaN or infinite', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0.02, max: 0.16, noNaN: true }), { maxLength: 12 }),
      fc.double({ min: 0, max: 0.02, noNaN: true }),
      fc.constantFrom('heel', 'foot', 'trunk', 'platform'),
      fc.option(fc.double({ min: 40, max: 120, noNaN: true }), { nil: undefined }),
      fc.double({ min: 0.6, max: 5, noNaN: true }),
      (heightsM, uM, placement, bodyMassKg, periodS) => {
        const kind = placement === 'heel' || placement === 'foot' ? 'heel-height' : 'body-rise';
        const report = judged(
          { heightsM, uM, kind, periodS },
          { placement, subject: { ...(bodyMassKg === undefined ? {} : { bodyMassKg }), heelLeverM: 0.18 } },
        );
        for (const value of numbersIn(report)) expect(Number.isFinite(value)).toBe(true);
        expect(JSON.parse(JSON.stringify(report))).toEqual(report);
        const { attempted, valid, scored, validLow, validHigh, scoredLow, scoredHigh } = report.count;
        expect(scored).toBeLessThanOrEqual(valid);
        expect(valid).toBeLessThanOrEqual(attempted);
        expect(validLow <= valid && valid <= validHigh).toBe(true);
        expect(scoredLow <= scored && scored <= scoredHigh).toBe(true);
      },
    ),
    { seed: 41, numRuns: 60 },
  );
});

test('raising every height by the same share changes no verdict', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0.05, max: 0.1, noNaN: true }), { minLength: 1, maxLength: 15 }),
      fc.double({ min: 1, max: 1.5, noNaN: true }),
      (heightsM, factor) => {
        const verdicts = (by: number) =>
          judged({ heightsM: heightsM.map((height) => height * by), uM: 0.002 * by }).repetitions.map(
            (one) => one.valid,
          );
        expect(verdicts(factor)).toEqual(verdicts(1));
      },
    ),
    { seed: 42, numRuns: 40 },
  );
});

test('another surface changes the ankle work through the level at rest, not the heel work', () => {
  const subject = { bodyMassKg: 80, heelLeverM: 0.186, ankleLeverM: 0.1476, ankleAngleRad: 0.494 };
  const floor = judged({ heightsM: steady }, { protocol: FLOOR, subject });
  const board = judged({ heightsM: steady }, { protocol: INCLINE_10, subject });
  expect(board.measures.work.heelJ).toBe(floor.measures.work.heelJ);
  expect(board.measures.work.ankleJ ?? 0).toBeGreaterThan((floor.measures.work.ankleJ ?? 0) * 1.02);
});
