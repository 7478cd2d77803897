import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gpxTracks } from '../../../apps/dashboard/src/runs/gpx-tracks.ts';
import { RunFileError } from '../../../apps/dashboard/src/runs/run-file-error.ts';
import { runOfTracks, type TrackRun } from '../../../apps/dashboard/src/runs/run-of-tracks.ts';
import { gpxText, type MadePoint, steady } from '../../support/made-gpx.ts';

const utcDay = (ms: number): string => new Date(ms).toISOString().slice(0, 10);
const runOf = (tracks: readonly (readonly (readonly MadePoint[])[])[], start?: string): TrackRun =>
  runOfTracks(gpxTracks(gpxText(tracks, start)), utcDay);

function codeOf(work: () => unknown): string {
  try {
    work();
  } catch (error) {
    if (error instanceof RunFileError) return error.code;
    throw error;
  }
  return 'read';
}

test('twenty minutes at 3 m/s are 3600 m, without a pause or a gap', () => {
  expect(runOf([[steady(1200, 3)]])).toEqual({
    day: '2026-03-01',
    dayBy: 'device',
    wholeS: 1200,
    movingS: 1200,
    distanceM: 3600,
    distanceErrorM: 216,
    pauses: 0,
    gaps: 0,
    gapS: 0,
    spikes: 0,
    untimed: 0,
    tracks: 1,
    cadence: null,
    isFast: false,
  });
});

test('a degree of latitude in ten hours is 111 195 m', () => {
  const points = Array.from({ length: 37 }, (_, i) => ({ northM: (i * 111_195.08) / 36, s: 1000 * i }));
  expect(runOf([[points]])).toMatchObject({ distanceM: 111_195, movingS: 36_000, gaps: 36, gapS: 36_000 });
});

test('standing for 10 s or longer is a pause, and a shorter one is not', () => {
  const paused = (seconds: number): TrackRun => {
    const still = steady(seconds, 0, { northM: 300, s: 100 });
    return runOf([
      [[...steady(100, 3), ...still.slice(1), ...steady(100, 3, { northM: 300, s: 100 + seconds }).slice(1)]],
    ]);
  };
  expect(paused(9)).toMatchObject({ pauses: 0, movingS: 209, wholeS: 209, distanceM: 600 });
  expect(paused(10)).toMatchObject({ pauses: 1, movingS: 200, wholeS: 210, distanceM: 600 });
});

test('a recording that was stopped and went on elsewhere has a pause there, and no way', () => {
  const second = steady(100, 3, { northM: 5000, s: 400 });
  for (const tracks of [[[steady(100, 3), second]], [[steady(100, 3)], [second]], [[second], [steady(100, 3)]]]) {
    expect(runOf(tracks)).toMatchObject({
      wholeS: 500,
      movingS: 200,
      distanceM: 600,
      pauses: 1,
      tracks: tracks.length,
    });
  }
});

test('one recording that is written twice counts once', () => {
  expect(runOf([[steady(100, 3)], [steady(100, 3)]])).toMatchObject({ movingS: 100, distanceM: 300, tracks: 2 });
});

test('a hole in which somebody ran on is a gap with the straight way, one in which nobody moved a pause', () => {
  const [before, after] = [steady(100, 3), steady(100, 3, { northM: 660, s: 220 })];
  expect(runOf([[[...before, ...after]]])).toMatchObject({
    gaps: 1,
    gapS: 120,
    pauses: 0,
    distanceM: 960,
    movingS: 320,
  });
  const waited = steady(100, 3, { northM: 310, s: 220 });
  expect(runOf([[[...before, ...waited]]])).toMatchObject({ gaps: 0, pauses: 1, distanceM: 600, movingS: 200 });
});

test('positions that nobody can have been at are passed over, and the way goes on over them', () => {
  const off = steady(100, 3).map((one, i) => (i === 40 || i === 41 ? { ...one, northM: one.northM + 400 } : one));
  expect(runOf([[off]])).toMatchObject({ spikes: 2, distanceM: 300, gaps: 0 });
});

test('a jump that does not come back is a gap over which no way is counted', () => {
  const jumped = steady(100, 3).map((one, i) => (i >= 50 ? { ...one, northM: one.northM + 2000 } : one));
  expect(runOf([[jumped]])).toMatchObject({ spikes: 0, gaps: 1, gapS: 1, distanceM: 297 });
});

test('points without a time, or with one that goes back, are counted and passed over', () => {
  const some = steady(100, 3).map((one, i) => (i === 10 || i === 60 ? { ...one, s: i === 10 ? null : 3 } : one));
  expect(runOf([[some]])).toMatchObject({ untimed: 2, distanceM: 300, movingS: 100 });
});

test('the day is that of the clock of the place where the file tells it, else of this device', () => {
  expect(runOf([[steady(60, 3)]], '2026-03-01T23:30:00Z')).toMatchObject({ day: '2026-03-01', dayBy: 'device' });
  const told = runOf([[steady(60, 3)]], '2026-03-02T06:30:00+09:00');
  expect(told).toMatchObject({ day: '2026-03-02', dayBy: 'file' });
  const here = runOfTracks(gpxTracks(gpxText([[steady(60, 3)]], '2026-03-01T23:30:00Z')), () => '2026-03-02');
  expect(here.day).toBe('2026-03-02');
});

test('a run over midnight is one of the day on which it began; tracks of two days are refused with both days', () => {
  expect(runOf([[steady(7200, 3, undefined, 10)]], '2026-03-01T23:00:00Z')).toMatchObject({ day: '2026-03-01' });
  const two = (): TrackRun => runOf([[steady(60, 3)], [steady(60, 3, { northM: 0, s: 86_400 })]]);
  expect(two).toThrow('several-days: 2026-03-01, 2026-03-02');
});

test('a ride is asked about, and a fast run is not', () => {
  expect(runOf([[steady(600, 6.4)]]).isFast).toBe(false);
  expect(runOf([[steady(600, 6.6)]]).isFast).toBe(true);
});

test('what is no run is refused with its reason', () => {
  const untimed = steady(60, 3).map((one) => ({ ...one, s: null }));
  expect(codeOf(() => runOf([[untimed]]))).toBe('no-times');
  expect(codeOf(() => runOf([[steady(0, 3)]]))).toBe('too-few');
  expect(codeOf(() => runOf([[steady(600, 0)]]))).toBe('no-move');
});

test('whatever was walked, run and stood: parts sum to the whole, no way is longer than the points, and a shift in time changes nothing', () => {
  const stretch = fc.record({ s: fc.integer({ min: 1, max: 90 }), speed: fc.constantFrom(0, 0.2, 1.2, 3, 5) });
  fc.assert(
    fc.property(
      fc.array(stretch, { minLength: 1, maxLength: 8 }),
      fc.integer({ min: 0, max: 40_000 }),
      (parts, later) => {
        const points: MadePoint[] = [{ northM: 0, s: 0 }];
        for (const { s, speed } of parts)
          points.push(...steady(s, speed, points.at(-1) as { northM: number; s: number }).slice(1));
        const [way, seconds] = [points.at(-1)!.northM, points.at(-1)!.s!];
        const read = (start: string): TrackRun | undefined => {
          try {
            return runOf([[points]], start);
          } catch (error) {
            expect(error).toMatchObject({ code: 'no-move' });
            return undefined;
          }
        };
        const run = read('2026-03-01T02:00:00Z');
        if (run === undefined) return;
        expect(run.wholeS).toBe(seconds);
        expect(run.movingS).toBeLessThanOrEqual(run.wholeS);
        expect(run.distanceM).toBeLessThanOrEqual(way + 1);
        const standing = parts.every(({ speed }) => speed > 0.5);
        if (standing) expect(run).toMatchObject({ movingS: seconds, distanceM: Math.round(way) });
        expect(read(new Date(Date.UTC(2026, 2, 1, 2) + 1000 * later).toISOString().replace('.000', ''))).toEqual(run);
      },
    ),
    { numRuns: 60 },
  );
});
