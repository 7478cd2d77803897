import { assess, defaultSettings, type HandVerdict, type Report, recounted, type Verdict } from '@surae/analysis';
import { type CriterionId, FLOOR, PROTOCOLS, type Protocol } from '@surae/shared';
import { simulateSet } from '@surae/simulation';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judged, PLAIN_REQUEST } from '../../support/detected-set.ts';

const settings = defaultSettings();

function byHand(
  report: Report,
  verdicts: readonly (readonly [number, Verdict, CriterionId?])[],
  protocol: Protocol = FLOOR,
): Report {
  const hands = verdicts.map(
    ([repetition, verdict, criterion]): HandVerdict => ({ repetition, verdict, criterion: criterion ?? null }),
  );
  return recounted(report, hands, { protocol, exertion: null, settings: settings.judging });
}

/** Ten raises of which the sixth and seventh are too low: two faults in a row end the test there. */
const heightsM = [0.1, 0.1, 0.1, 0.1, 0.1, 0.05, 0.05, 0.1, 0.1, 0.1];
const faulty = judged({ heightsM });

describe('without a verdict by hand', () => {
  test.each(['heel', 'foot', 'trunk', 'platform'] as const)('a set at the %s is counted as it was', (placement) => {
    for (const seed of [3, 4]) {
      const set = simulateSet({ placement, level: 'typical', seed });
      const subject = { bodyMassKg: set.subject.bodyMassKg, heelLeverM: set.subject.heelLeverM };
      const report = assess(set.trace, { ...PLAIN_REQUEST, placement, subject }, settings);
      const stored = JSON.parse(JSON.stringify(report)) as Report;
      expect(byHand(stored, [])).toEqual(report);
    }
  });

  test('any heights, sure or not, are counted as they were', () => {
    const height = fc.double({ min: 0.03, max: 0.12, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(height, { minLength: 1, maxLength: 20 }),
        fc.double({ min: 0.0005, max: 0.01, noNaN: true }),
        (heights, uM) => {
          const report = judged({ heightsM: heights, uM });
          expect(byHand(report, [])).toEqual(report);
        },
      ),
      { numRuns: 40, seed: 11 },
    );
  });

  test('what is uncertain about the reference moves all verdicts together, as it did', () => {
    // thirty heights around the threshold, held against two that are known to a centimetre
    const heightsM = [0.1, 0.1, ...Array.from({ length: 30 }, (_, i) => 0.06 + 0.001 * i)];
    const unsure = { heightUM: 0.01 };
    const report = judged({ heightsM, uM: 0.0005, raises: { 0: unsure, 1: unsure } });
    expect(report.count.validHigh - report.count.validLow).toBeGreaterThan(15);
    expect(byHand(report, []).count).toEqual(report.count);
  });

  test('what is uncertain about practice raises moves all verdicts together, as it did', () => {
    // thirty heights around the threshold, held against practice raises that are known to a centimetre
    const familiarisation = [0.1, 0.1].map((heightM) => ({ heightM, heightUM: 0.01 }));
    const heightsM = Array.from({ length: 30 }, (_, i) => 0.06 + 0.001 * i);
    const report = judged({ heightsM, uM: 0.0005 }, { context: { familiarisation } });
    const sure = judged(
      { heightsM, uM: 0.0005 },
      { context: { familiarisation: familiarisation.map(({ heightM }) => ({ heightM, heightUM: 0 })) } },
    );
    const widthOf = ({ count }: Report): number => count.validHigh - count.validLow;
    expect(report.reference).toMatchObject({ fromRepetitions: [], ownRelativeU: 0.1 / Math.SQRT2 });
    expect(widthOf(report)).toBeGreaterThan(15);
    expect(widthOf(sure)).toBeLessThan(5);
    expect(byHand(report, []).count).toEqual(report.count);
    // one verdict by hand takes no more away than its own doubt
    expect(widthOf(byHand(report, [[1, 'no']]))).toBeGreaterThan(15);
    // a report of an earlier version does not tell it: the interval is no narrower
    const earlier = structuredClone(report);
    Reflect.deleteProperty(earlier.reference!, 'ownRelativeU');
    expect(widthOf(byHand(earlier, [[1, 'no']]))).toBeGreaterThan(15);
  });

  test('a seated set, a capped one and one of a duration keep their ends and loads', () => {
    for (const protocol of PROTOCOLS) {
      const placement = protocol.parameters.externalMass.value === 'on-knee' ? 'foot' : 'heel';
      const subject = { bodyMassKg: 80, heelLeverM: 0.165, externalMassKg: 40 };
      const context = { endReason: 'fatigue' as const };
      const report = judged({ heightsM: Array<number>(70).fill(0.1) }, { protocol, placement, subject, context });
      expect(byHand(report, [], protocol)).toEqual(report);
    }
  });
});

describe('a verdict by hand', () => {
  test('lets a repetition count, and the end rule of two faults in a row is applied again', () => {
    expect(faulty.count).toMatchObject({ attempted: 10, valid: 8, scored: 5 });
    expect(faulty.end).toMatchObject({ rule: 'consecutive-faults', atRepetition: 7 });
    const after = byHand(faulty, [[7, 'yes']]);
    expect(after.count).toMatchObject({ attempted: 10, valid: 9, scored: 9 });
    expect(after.end).toMatchObject({ rule: 'last-repetition', atRepetition: 10 });
    expect(after.repetitions.map(({ afterEnd }) => afterEnd)).toEqual(Array(10).fill(false));
    expect(after.repetitions[6]).toMatchObject({ passes: true, valid: 'yes', headline: null });
    expect(after.measures.scoredDisplacementM!.value).toBeGreaterThan(faulty.measures.scoredDisplacementM!.value);
    expect(after.measures.timeToEndS!).toBeGreaterThan(faulty.measures.timeToEndS!);
  });

  test('that two repetitions in a row miss one rule ends the test there', () => {
    const clean = judged({ heightsM: Array<number>(8).fill(0.1) });
    const after = byHand(clean, [
      [4, 'no', 'knee'],
      [5, 'no', 'knee'],
    ]);
    expect(after.end).toMatchObject({ rule: 'consecutive-faults', kind: 'posture', atRepetition: 5 });
    expect(after.count).toMatchObject({ attempted: 8, valid: 6, scored: 3 });
    expect(after.repetitions[3]).toMatchObject({ headline: 'knee', valid: 'no', passes: false });
    expect(after.repetitions[3].criteria.knee).toMatchObject({ result: 'fail', seen: 'tester' });
  });

  test('that names no rule takes a repetition away and ends nothing', () => {
    const clean = judged({ heightsM: Array<number>(8).fill(0.1) });
    const after = byHand(clean, [
      [4, 'no'],
      [5, 'no'],
    ]);
    expect(after.end.rule).toBe('last-repetition');
    expect(after.count).toMatchObject({ valid: 6, scored: 6, scoredLow: 6, scoredHigh: 6 });
  });

  test('on a fault that was measured as well keeps that fault in the row', () => {
    expect(byHand(faulty, [[6, 'no']]).end).toEqual(faulty.end);
  });

  test('that lets a repetition be open counts neither way, and widens the interval', () => {
    const clean = judged({ heightsM: Array<number>(8).fill(0.1) });
    const { count, repetitions } = byHand(clean, [[3, 'cannot_tell']]);
    expect(count).toMatchObject({ valid: 7, cannotTell: 1, validLow: 7, validHigh: 8 });
    expect(repetitions[2]).toMatchObject({ valid: 'cannot_tell', probabilityValid: null });
  });

  test('on one rule leaves the others as they were measured', () => {
    const low = byHand(faulty, [[6, 'yes', 'tempo']]);
    expect(low.repetitions[5]).toMatchObject({ valid: 'no', headline: 'height' });
    const high = byHand(faulty, [[6, 'yes', 'height']]);
    expect(high.repetitions[5]).toMatchObject({ valid: 'yes', headline: null });
    const open = byHand(faulty, [[6, 'cannot_tell', 'height']]);
    expect(open.repetitions[5].criteria.height).toMatchObject({ result: 'not_observed', seen: 'tester' });
  });

  test('sees a fault that a gap hides from the sensor', () => {
    const hidden = judged({ heightsM: [0.1, 0.1, 0.1], raises: { 1: { topInGap: true } } });
    expect(hidden.repetitions[1].valid).toBe('cannot_tell');
    expect(byHand(hidden, [[2, 'no', 'lean']]).repetitions[1].valid).toBe('no');
    expect(byHand(hidden, [[2, 'yes', 'height']]).repetitions[1].valid).toBe('cannot_tell');
    expect(byHand(hidden, [[2, 'yes']]).repetitions[1].valid).toBe('yes');
  });

  test('is sure: it takes the doubt of its repetition out of the interval', () => {
    const doubtful = judged({ heightsM: [0.1, 0.1, 0.1, 0.075, 0.1], uM: 0.004 });
    expect(doubtful.count.validLow).toBeLessThan(doubtful.count.validHigh);
    expect(byHand(doubtful, [[4, 'yes']]).count).toMatchObject({ valid: 5, validLow: 5, validHigh: 5, borderline: 0 });
  });

  test('never changes what was attempted, nor the report that it is about', () => {
    const before = JSON.stringify(faulty);
    const verdict = fc.constantFrom<Verdict>('yes', 'no', 'cannot_tell');
    const one = fc.tuple(fc.integer({ min: 1, max: 12 }), verdict);
    fc.assert(
      fc.property(fc.array(one, { maxLength: 8 }), (verdicts) => {
        const { count, repetitions, measures } = byHand(faulty, verdicts);
        expect([count.attempted, count.low, count.high]).toEqual([10, 10, 10]);
        expect(count.valid).toBe(repetitions.filter(({ passes }) => passes).length);
        expect(count.scored).toBe(repetitions.filter(({ passes, afterEnd }) => passes && !afterEnd).length);
        expect(count.scored).toBeGreaterThanOrEqual(count.scoredLow);
        expect(count.scored).toBeLessThanOrEqual(count.scoredHigh);
        expect(measures.displacementM).toEqual(faulty.measures.displacementM);
        expect(JSON.stringify(faulty)).toBe(before);
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  test('on a repetition that is not there changes nothing; the last one of a repetition counts', () => {
    expect(byHand(faulty, [[11, 'no']])).toEqual(faulty);
    expect(
      byHand(faulty, [
        [3, 'no'],
        [3, 'yes'],
      ]).count.valid,
    ).toBe(8);
  });
});
