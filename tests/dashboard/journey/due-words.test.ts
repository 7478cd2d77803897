import type { Due } from '@surae/casebook';
import { TODAY_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { dueLine } from '../../../apps/dashboard/src/journey/due-words.ts';

const said = (due: Due): string => dueLine(due).text;

test('each thing is said in a sentence, with its day and its figures', () => {
  const begunAt = '2026-03-01T09:30:00.000+01:00';
  expect(said({ kind: 'visit-open', begunAt })).toBe('The visit of 1 Mar 2026 is not finished.');
  expect(said({ kind: 'flare-told', begunAt, sides: ['right'] })).toContain('flare of the right leg');
  expect(said({ kind: 'flare-told', begunAt, sides: ['left', 'right'] })).toContain('flare of both legs');
  const morning = { on: '2026-03-02', side: 'left', pain: 6 } as const;
  expect(said({ kind: 'morning-rose', ...morning, usual: 2.5 })).toBe(
    'Left leg, morning of 2 Mar 2026: pain 6, usual 2.5. More than 2 over the usual is a flare.',
  );
  expect(said({ kind: 'morning-unknown', ...morning })).toContain('fewer than 3 mornings');
  const due = { kind: 'due', since: '2026-03-29' } as const;
  expect(said({ ...due, weeks: 4, what: 'test' })).toBe('The re-test of week 4 is due since 29 Mar 2026.');
  expect(said({ ...due, weeks: 2, what: 'tolerance' })).toContain('no full test');
  expect(said({ kind: 'due-further', last: '2026-03-29' })).toContain('after 4 to 6 weeks');
  expect(said({ kind: 'mass-old', days: 91 })).toContain('91 days old');
  expect(said({ kind: 'mass-old', days: null })).toBe(TODAY_WORDS['mass-undated'].text);
  expect(said({ kind: 'mass-changed', before: 80, now: 84.5 })).toContain('from 80 to 84.5 kg, more than 5 %');
  expect(said({ kind: 'lever-missing' })).toBe(TODAY_WORDS['lever-missing'].text);
});

test('what cannot be told is marked as such, and a rule without a source says so', () => {
  const marks = (due: Due): readonly [boolean, string | null] => [dueLine(due).isUnknown, dueLine(due).source];
  expect(marks({ kind: 'retest-unknown' })).toEqual([true, null]);
  expect(marks({ kind: 'morning-unknown', on: '2026-03-02', side: 'left', pain: 6 })).toEqual([true, null]);
  expect(marks({ kind: 'due', weeks: 4, what: 'test', since: '2026-03-29' })).toEqual([
    false,
    TODAY_WORDS.practice.text,
  ]);
  expect(marks({ kind: 'due-further', last: '2026-03-29' })).toEqual([false, TODAY_WORDS.practice.text]);
  expect(marks({ kind: 'mass-missing' })).toEqual([false, null]);
});
