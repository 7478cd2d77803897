import { findHops, hopDefaults } from '@surae/analysis';
import { HOP_SERIES } from '@surae/shared';
import { describe, expect, test } from 'vitest';
import { NO_RAISES } from '../support/open-counts.ts';
import { openRecording } from '../support/open-recordings.ts';

/** Recordings of a platform or of a sensor with three axes: of other movements, all of them. */
const cases = Object.entries(NO_RAISES).flatMap(([movement, recordings]) =>
  recordings
    .filter(({ placement }) => placement !== 'heel')
    .map(({ name, placement }) => [movement, name, placement === 'platform' ? 'platform' : 'foot'] as const),
);

function seriesIn(name: string, placement: 'platform' | 'foot') {
  return findHops(openRecording(name), { placement, parameters: HOP_SERIES.parameters }, hopDefaults);
}

test('there are recordings of both kinds to look at', () => {
  expect(cases.filter(([, , placement]) => placement === 'platform').length).toBeGreaterThan(5);
  expect(cases.filter(([, , placement]) => placement === 'foot').length).toBeGreaterThan(5);
});

test.each(cases)('%s: %s holds no hop series', (_movement, name, placement) => {
  const series = seriesIn(name, placement);
  expect(series.found).not.toBe('yes');
  expect(series.hops).toEqual([]);
  expect(series.reason).not.toBeNull();
});

describe('a single jump on a platform', () => {
  test('is no series, on a platform that nobody zeroed as well', () => {
    for (const name of ['jump-force/jump.csv', 'stepping-on-and-jump/stepping-on-and-jump.csv']) {
      expect(seriesIn(name, 'platform')).toMatchObject({ found: 'no', reason: 'no-hops' });
    }
  });
});
