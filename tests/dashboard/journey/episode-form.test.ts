import type { Episode } from '@surae/casebook';
import { describe, expect, test } from 'vitest';
import {
  beginningOf,
  type EpisodeFields,
  episodeChange,
  episodeFields,
  episodeFrom,
  noFields,
  overFrom,
  typedPartDate,
} from '../../../apps/dashboard/src/journey/episode-form.ts';

const now = '2026-11-29T16:00:00.000+01:00';
const sore = { left: 'no', right: 'insertion' } as const;

function problems(fields: Partial<EpisodeFields>, before?: Episode): unknown {
  const form = episodeFrom({ ...noFields, sore, ...fields }, now, before);
  return form.ok ? {} : form.problems;
}

test('a day, a month or a year is taken; what the calendar does not have is not', () => {
  for (const text of ['2026', '2026-08', '2026-08-24', ' 2024-02-29 ']) expect(typedPartDate(text)).toBe(text.trim());
  for (const text of ['26', '2026-13', '2026-02-29', '2026-00', '08/2026', 'August', '2026-8', '3026'])
    expect(typedPartDate(text), text).toBeUndefined();
  expect(typedPartDate('  ')).toBeNull();
});

test('a chosen beginning is a part of a date and no day that nobody told', () => {
  const all = ['this-month', 'last-month', 'this-year', 'last-year'] as const;
  expect(all.map((which) => beginningOf(which, now))).toEqual(['2026-11', '2026-10', '2026', '2025']);
  expect(beginningOf('last-month', '2026-01-05T09:00:00Z')).toBe('2025-12');
});

test('one sore leg is enough, and what is left open is not asked', () => {
  const form = episodeFrom({ ...noFields, sore: { left: null, right: 'insertion' } }, now);
  expect(form).toEqual({
    ok: true,
    episode: {
      ...{ sore: { left: null, right: 'insertion' }, onset: null, began: null, over: null },
      ...{ story: null, goal: null, loads: null, goalBy: null, pop: null },
    },
  });
  expect(problems({ sore: { left: 'no', right: null } })).toEqual({ sore: 'sore-missing' });
});

test('a pop is of a sudden beginning alone', () => {
  const pop = (onset: Episode['onset']): unknown => {
    const form = episodeFrom({ ...noFields, sore, onset, pop: true }, now);
    return form.ok && form.episode.pop;
  };
  expect([pop('sudden'), pop('gradual'), pop(null)]).toEqual([true, null, null]);
});

describe('dates', () => {
  test('a beginning may be today, this month or this year, and not to come', () => {
    for (const began of ['2026-11-29', '2026-11', '2026']) expect(problems({ began }), began).toEqual({});
    for (const began of ['2026-11-30', '2026-12', '2027'])
      expect(problems({ began })).toEqual({ began: 'date-to-come' });
    expect(problems({ began: 'spring' })).toEqual({ began: 'date-unreadable' });
  });

  test('a goal has not passed, but one that has since is no hindrance to a correction', () => {
    for (const goalBy of ['2026-11-29', '2026-11', '2026', '2027-05']) expect(problems({ goalBy }), goalBy).toEqual({});
    for (const goalBy of ['2026-11-28', '2026-10', '2025'])
      expect(problems({ goalBy })).toEqual({ goalBy: 'date-past' });
    const before = { ...first(), goalBy: '2026-10' };
    expect(problems({ goalBy: '2026-10' }, before)).toEqual({});
    expect(problems({ goalBy: '2026-09' }, before)).toEqual({ goalBy: 'date-past' });
  });

  test('an end lies between the beginning and today; left empty it is today', () => {
    expect(overFrom('', '2026-08', now)).toEqual({ over: '2026-11-29' });
    expect(overFrom('2026-08', '2026-08-24', now)).toEqual({ over: '2026-08' });
    expect(overFrom('2026-07', '2026-08', now)).toEqual({ problem: 'date-over-before' });
    expect(overFrom('2026-12', null, now)).toEqual({ problem: 'date-over-to-come' });
    expect(overFrom('soon', null, now)).toEqual({ problem: 'date-unreadable' });
  });
});

function first(): Episode {
  const form = episodeFrom({ ...noFields, sore, loads: ' longest run 8 to 14 km \n' }, now);
  if (!form.ok) throw new Error('expected an episode');
  return form.episode;
}

test('notes are kept without what stands around them, up to 2000 letters', () => {
  expect(first().loads).toBe('longest run 8 to 14 km');
  expect(problems({ goal: 'x'.repeat(2000) })).toEqual({});
  expect(problems({ goal: 'x'.repeat(2001), story: ' '.repeat(3000) })).toEqual({ goal: 'too-long' });
});

test('a correction holds what differs and nothing else, also where a field was not there before', () => {
  const before = first();
  const { pop, goalBy, ...older } = before;
  expect([pop, goalBy]).toEqual([null, null]);
  const after = (fields: Partial<EpisodeFields>): Episode => {
    const form = episodeFrom({ ...episodeFields(older), ...fields }, now, older);
    if (!form.ok) throw new Error('expected an episode');
    return form.episode;
  };
  expect(episodeChange(older, after({}))).toBeUndefined();
  expect(episodeChange(older, after({ began: '2026-08', goal: 'stairs' }))).toEqual({
    began: '2026-08',
    goal: 'stairs',
  });
  const over = { ...older, over: '2026-10' };
  const kept = episodeFrom(episodeFields(over), now, over);
  expect(kept.ok && kept.episode.over).toBe('2026-10');
});
