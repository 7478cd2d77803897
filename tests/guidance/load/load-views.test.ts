import { loadViews, type Stride } from '@surae/guidance';
import { describe, expect, test } from 'vitest';

const run: Stride = { activity: 'running', cadencePerMin: 168, speedMps: 2.8, distanceM: 5000 };

describe('a run', () => {
  test('of 168 steps a minute at 2.8 m/s has 500 steps of each leg in a kilometre, and 2500 in five', () => {
    // 168 / 60 = 2.8 steps a second, one for every metre
    const { stepsPerKm, total, missing } = loadViews(run);
    expect(stepsPerKm).toBeCloseTo(500, 9);
    expect(total?.steps).toBeCloseTo(2500, 9);
    expect(missing).toEqual([]);
  });

  test('has a peak and a total that are ranges, and no number that joins the three', () => {
    const { peak, total, doubts, ...rest } = loadViews(run);
    expect(peak.range[0]).toBeLessThan(peak.range[1]);
    expect(total?.asRaises).toEqual([(total?.steps ?? 0) * peak.range[0], (total?.steps ?? 0) * peak.range[1]]);
    expect(Object.keys(rest).sort()).toEqual(['missing', 'stepsPerKm']);
    expect(doubts).toContain('few-people');
  });

  test('that is quicker has fewer steps a kilometre, and nothing calls it better', () => {
    const [slow, quick] = [loadViews(run), loadViews({ ...run, speedMps: 3.5 })];
    expect(quick.stepsPerKm).toBeLessThan(slow.stepsPerKm ?? 0);
    expect(quick.peak).toEqual(slow.peak);
    expect(quick.doubts).toContain('speed-not-in-peak');
  });

  test.each([
    ['cadencePerMin', 'cadence', true],
    ['speedMps', 'speed', true],
    ['distanceM', 'way', false],
  ] as const)('without %s says so, and is no zero', (name, missing, isPerKmOpen) => {
    const views = loadViews({ ...run, [name]: null });
    expect(views.missing).toEqual([missing]);
    expect(views.total).toBeNull();
    expect(views.stepsPerKm === null).toBe(isPerKmOpen);
    expect(views.peak.range[1]).toBeGreaterThan(1);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a speed of %f', (speedMps) => {
    expect(() => loadViews({ ...run, speedMps })).toThrow('not-an-answer');
  });
});
