import type { EpisodeLine, Soreness } from '@surae/casebook';
import { expect, test } from 'vitest';
import { episodeWords } from '../../../apps/dashboard/src/journey/episode-words.ts';

const at = '2026-09-01T09:30:00.000+01:00';
const of = (left: Soreness | null, right: Soreness | null, began: EpisodeLine['began'] = '2026-08') =>
  episodeWords({ sore: { left, right }, began, at });

test('an episode is one line: which leg, where, and since when', () => {
  expect(of('no', 'insertion')).toBe('right leg, at the heel bone, since August 2026');
  expect(of('mid-portion', null, '2026')).toBe('left leg, mid-portion, since 2026');
  expect(of('insertion', 'insertion', '2026-08-24')).toBe('both legs, at the heel bone, since 24 Aug 2026');
  expect(of('mid-portion', 'both-places')).toBe('left leg, mid-portion; right leg, both places, since August 2026');
});

test('a beginning that was not told is not made up, and an end is said', () => {
  expect(of('no', 'insertion', null)).toBe('right leg, at the heel bone, told on 1 Sept 2026');
  expect(episodeWords({ sore: { left: 'no', right: 'insertion' }, began: '2026-08', at, over: '2026-10' })).toBe(
    'right leg, at the heel bone, since August 2026, until October 2026',
  );
});
