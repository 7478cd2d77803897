import { bandOf, loadStory } from '@surae/guidance';
import { describe, expect, test } from 'vitest';
import { keptLog, marchDay, runOn } from '../../support/run-logs.ts';

describe('the band of a run', () => {
  // more than 10 %, 30 %, 100 % over the longest: Frandsen 2025 Br J Sports Med 59:1203
  test.each([
    [5000, 'within'],
    [11_000, 'within'],
    [11_001, 'small'],
    [13_000, 'small'],
    [13_001, 'middle'],
    [20_000, 'middle'],
    [20_001, 'large'],
  ])('of %d m after 10 km is %s', (run, code) => {
    expect(bandOf(run, 10_000)?.code).toBe(code);
  });

  test('goes by lengths: the rounding of a quotient makes no jump of exactly a tenth', () => {
    for (let longest = 10; longest < 5000; longest += 10)
      expect(bandOf((longest / 10) * 11, longest)?.code).toBe('within');
  });
});

describe('what jumped', () => {
  test('is the run that went furthest over the longest of the 30 days before it', () => {
    const story = loadStory(keptLog(runOn(1, 10), runOn(5, 12), runOn(9, 26), runOn(12, 14)), marchDay(20));
    expect(story.largest).toMatchObject({
      on: marchDay(9),
      run: 26_000,
      longest: 12_000,
      band: { code: 'large', hazardRatio: 2.28 },
      unknownDays: 0,
    });
    expect(story.jumps.map(({ on, band }) => [on, band?.code])).toEqual([
      [marchDay(9), 'large'],
      [marchDay(5), 'small'],
    ]);
    // nothing is known to hold the first one against
    expect(story.untold.map(({ on }) => on)).toEqual([marchDay(1)]);
  });

  test('a run of the day on which it began counts, and a later one does not', () => {
    const log = keptLog(runOn(10, 5), runOn(20, 8), runOn(21, 30));
    expect(loadStory(log, marchDay(20)).largest).toMatchObject({ on: marchDay(20), band: { code: 'middle' } });
  });

  test('holds a run against 30 days before and not 31', () => {
    expect(loadStory(keptLog(runOn(1, 5), runOn(31, 20)), marchDay(31)).jumps).toHaveLength(1);
    expect(loadStory(keptLog(runOn(1, 5), runOn(32, 20)), marchDay(32)).jumps).toHaveLength(0);
  });

  test('says of how many days before it nobody knows: a longer run in them makes the jump smaller', () => {
    const log = { runs: [runOn(10, 5), runOn(20, 8)], kept: [{ from: marchDay(1), until: marchDay(20) }] };
    expect(loadStory(log, marchDay(20)).largest?.unknownDays).toBe(11);
  });

  test('a week with a day that is not known has no total, and one without a run is zero', () => {
    const log = { runs: [runOn(10, 5), runOn(17, 6)], kept: [{ from: marchDay(7), until: marchDay(27) }] };
    const { weeks } = loadStory(log, marchDay(27));
    expect(weeks).toHaveLength(12);
    expect(weeks.slice(-4)).toEqual([
      { from: marchDay(0), total: null },
      { from: marchDay(7), total: 5000 },
      { from: marchDay(14), total: 6000 },
      { from: marchDay(21), total: 0 },
    ]);
  });

  test('by time, a run that tells its way alone is no jump and leaves its week open', () => {
    const story = loadStory(keptLog(runOn(10, 5, 30), runOn(14, 50)), marchDay(14), 'durationS');
    expect([story.largest, story.weeks.at(-1)?.total]).toEqual([null, null]);
  });
});
