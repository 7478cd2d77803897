import { type AssessmentRequest, assess, type Count, defaultSettings, type TestEnd } from '@surae/analysis';
import { FLOOR, SEATED_BLOCK, SEATED_FLOOR } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import {
  isSeated,
  kneeLoadKg,
  requireSeatedPlacement,
  seatedLoad,
} from '../../../packages/analysis/src/assess/seated-load.ts';
import { heelSet } from '../../support/heel-set.ts';
import '../../support/close.ts';

const request = (subject: AssessmentRequest['subject'], protocol = SEATED_BLOCK): AssessmentRequest => ({
  placement: 'heel',
  protocol,
  subject,
});
const countOf = (scored: number, low = scored, high = scored) =>
  ({ scored, scoredLow: low, scoredHigh: high }) as unknown as Count;
const endOf = (kind: TestEnd['class']) => ({ class: kind }) as unknown as TestEnd;
const fatigue = endOf('capacity');
const maximumOf = (scored: number, end = fatigue, subject: AssessmentRequest['subject'] = { externalMassKg: 40 }) =>
  seatedLoad(request(subject), countOf(scored), end, 0.005)!.maximum;

describe('the load', () => {
  test('in kilograms, or as a share of body mass: half of 80 kg is 40 kg', () => {
    expect(kneeLoadKg({ externalMassKg: 40 })).toBe(40);
    expect(kneeLoadKg({ externalMassShare: 0.5, bodyMassKg: 80 })).toBe(40);
    expect(kneeLoadKg({ externalMassShare: 0.5 })).toBeUndefined();
    expect(kneeLoadKg({ bodyMassKg: 80 })).toBeUndefined();
  });

  test('two that contradict each other are refused, and so is none at all', () => {
    expect(kneeLoadKg({ externalMassKg: 40.2, externalMassShare: 0.5, bodyMassKg: 80 })).toBe(40.2);
    expect(() => kneeLoadKg({ externalMassKg: 45, externalMassShare: 0.5, bodyMassKg: 80 })).toThrow('40 kg');
    expect(() => kneeLoadKg({ externalMassKg: 0 })).toThrow('externalMassKg');
  });
});

describe('the load for twelve', () => {
  test('at twelve it is the load that was lifted', () => {
    expect(maximumOf(12)).toEqual({ target: 12, massKg: 40, lowKg: 40, highKg: 40, reason: null });
  });

  test('by hand at ten: 40 (1 + 10/30) / (1 + 12/30) = 38.10 and 40 x 25 / 27 = 37.04 kg', () => {
    const { massKg, lowKg, highKg } = maximumOf(10);
    expect(highKg).toBeCloseTo(38.095, 3);
    expect(lowKg).toBeCloseTo(37.037, 3);
    expect(massKg).toBeCloseTo(37.566, 3);
  });

  // shares of the most that can be lifted once, from two printed formulas: 100 / (1 + n / 30) and 100 (37 - n) / 36
  test.each([
    [8, 78.947, 80.556],
    [10, 75, 75],
    [15, 66.667, 61.111],
  ])('at %d repetitions it is the load over %f and %f of the most, times those of twelve', (scored, epley, brzycki) => {
    const both = [(40 * 71.429) / epley, (40 * 69.444) / brzycki].sort((one, other) => one - other);
    const { lowKg, highKg } = maximumOf(scored);
    expect([lowKg, highKg]).toBeCloseToEach(both, { rtol: 2e-5, atol: 0 });
  });

  test('named from 8 to 15 valid repetitions and never beyond', () => {
    for (const scored of [8, 15]) expect(maximumOf(scored).reason).toBeNull();
    for (const scored of [0, 7, 16, 30]) {
      expect(maximumOf(scored)).toMatchObject({
        massKg: null,
        lowKg: null,
        highKg: null,
        reason: 'count-out-of-range',
      });
    }
    // bounds of the count that leave the range are not followed
    const wide = seatedLoad(request({ externalMassKg: 40 }), countOf(14, 13, 22), fatigue, 0.005)!.maximum;
    expect(wide.highKg).toBeCloseTo((40 * 25) / 22, 6);
  });

  test('not from a set that ended for pain or for reasons that nobody noted, nor without a load', () => {
    expect(maximumOf(10, endOf('tolerance')).reason).toBe('not-to-fatigue');
    expect(maximumOf(10, endOf('censored')).reason).toBe('not-to-fatigue');
    expect(maximumOf(10, endOf('unknown')).reason).toBe('end-unknown');
    expect(maximumOf(10, fatigue, {}).reason).toBe('no-load');
  });

  test('a standing protocol has no such thing', () => {
    expect(seatedLoad(request({ externalMassKg: 40 }, FLOOR), countOf(10), fatigue, 0.005)).toBeNull();
    expect([isSeated(FLOOR), isSeated(SEATED_FLOOR)]).toEqual([false, true]);
  });
});

describe('a seated set', () => {
  const geometry = { heelLeverM: 0.186, ankleLeverM: 0.1476, ankleAngleRad: 0.494 };
  const raises = 10;
  const trace = { groups: [heelSet(raises)] };
  // the made raises take two seconds
  const quick = {
    ...SEATED_FLOOR,
    parameters: {
      ...SEATED_FLOOR.parameters,
      cycleTarget: { ...SEATED_FLOOR.parameters.cycleTarget, value: 2 },
    },
  };
  const reportOf = (subject: AssessmentRequest['subject']) =>
    assess(trace, { ...request(subject, quick), side: 'left', context: { endReason: 'fatigue' } }, defaultSettings());

  test('work is load times g times the rise of the knee, and the body is not in it', () => {
    const report = reportOf({ ...geometry, externalMassKg: 40 });
    expect(report.count.attempted).toBe(raises);
    // 8 cm of heel on this lever: sin phi = 0.08 / 0.186, dz = 0.1476 (sin(phi + 0.494) - sin 0.494) = 4.90 cm
    const phi = Math.asin(0.08 / 0.186);
    const rise = 0.1476 * (Math.sin(phi + 0.494) - Math.sin(0.494));
    expect(rise).toBeCloseTo(0.049, 3);
    for (const { work, heightM } of report.repetitions) {
      expect(Math.abs(heightM! - 0.08)).toBeLessThan(0.001);
      expect(Math.abs(work.seatedJ! / (40 * 9.80665 * rise) - 1)).toBeLessThan(0.02);
      expect([work.heelJ, work.ankleJ, work.riseJ, work.platformJ]).toEqual([null, null, null, null]);
    }
    expect(report.measures.scoredWork.seatedJ).toBeGreaterThan(0);
    expect(report.measures.peakPowerW).toBeNull();
    // twice the person does the same work
    const heavier = reportOf({ ...geometry, externalMassKg: 40, bodyMassKg: 160 });
    expect(heavier.measures.work.seatedJ).toBe(report.measures.work.seatedJ);
    expect(heavier.seated!.percentOfBodyMass).toBe(25);
  });

  test('without the load, or without the ankle, work is withheld and the reason stands there', () => {
    const none = reportOf(geometry);
    expect(none.measures.work.seatedJ).toBeNull();
    expect(none.withheld).toContain('no-load');
    expect(none.seated).toMatchObject({ massKg: null, repetitions: none.count.scored });
    const noAnkle = reportOf({ externalMassKg: 40 });
    expect(noAnkle.measures.work.seatedJ).toBeNull();
    expect(noAnkle.withheld).toContain('no-knee-rise');
    expect(reportOf({ ...geometry, externalMassKg: 40, bodyMassKg: 80 }).withheld).toEqual([]);
  });

  test('trunk and platform are refused with the reason', () => {
    for (const placement of ['trunk', 'platform'] as const) {
      expect(() => requireSeatedPlacement({ protocol: SEATED_FLOOR, placement })).toThrow('heel or foot');
      expect(() => assess(trace, { ...request({}, SEATED_FLOOR), placement }, defaultSettings())).toThrow('seated');
    }
    expect(() => requireSeatedPlacement({ protocol: FLOOR, placement: 'platform' })).not.toThrow();
  });
});
