import { expect, test } from 'vitest';
import {
  changeBetween,
  draftOf,
  draftOfPlanned,
  draftOfRun,
  emptyDraft,
  entryFrom,
  type LogDraft,
} from '../../../apps/dashboard/src/course/log-draft.ts';
import { type LogEntry, type LogKind, logKinds } from '../../../apps/dashboard/src/course/log-entry.ts';
import type { RunCadence } from '../../../apps/dashboard/src/runs/run-cadence.ts';
import { madePlanItem } from '../../support/plan-items.ts';

const on = '2026-03-04';
const from = (kind: LogKind, change: Partial<LogDraft>) => entryFrom({ ...emptyDraft(kind, on), ...change });

const entries: readonly LogEntry[] = [
  { kind: 'morning-check', body: { on, pain: { left: 3, right: null }, stiffnessMin: 20 } },
  { kind: 'morning-check', body: { on, pain: { left: null, right: 0 }, stiffnessMin: 12.5 } },
  { kind: 'run', body: { on, durationS: 1500, distanceM: 4300, pain: { left: 1, right: 2 } } },
  {
    kind: 'done-item',
    body: {
      planItemId: 'p',
      on,
      what: 'slow raises',
      side: 'left',
      load: { value: 12.5, unit: '[lb_av]' },
      sets: 3,
      repetitions: 15,
      painDuring: 2,
      painAfter: 3,
      exertion: null,
    },
  },
  {
    kind: 'run',
    body: { on, durationS: 1500, distanceM: 4300, pain: { left: 1, right: 2 }, cadencePerMin: 168 },
  },
  { kind: 'on-feet', body: { on, hours: 0 } },
  { kind: 'note', body: { on, text: 'new shoes' } },
  {
    kind: 'questionnaire-total',
    body: { questionnaire: 'visa-a', languageVersion: 'de-CH 2019', total: 64.5, on, side: 'left' },
  },
  { kind: 'knee-to-wall', body: { on, side: 'right', unit: 'deg', trials: [38, 40], pain: 0, skipped: null } },
  { kind: 'knee-to-wall', body: { on, side: 'left', unit: 'cm', trials: [], pain: 4, skipped: 'pain' } },
];

test('an entry that is opened and kept unchanged is the same entry, whatever it holds', () => {
  for (const entry of entries) {
    expect(entryFrom(draftOf(entry))).toEqual({ ok: true, entry });
    expect(changeBetween(entry, entry)).toBeUndefined();
  }
});

test('a morning keeps a time within the answer, and a pain that was not told is none', () => {
  expect(from('morning-check', { left: 0, stiffness: 'under-10-minutes' })).toEqual({
    ok: true,
    entry: { kind: 'morning-check', body: { on, pain: { left: 0, right: null }, stiffnessMin: 5 } },
  });
});

test('another answer takes the place of minutes that were kept, the same one keeps them', () => {
  const draft = draftOf(entries[1]);
  expect(entryFrom({ ...draft, stiffness: 'over-30-minutes' })).toMatchObject({
    entry: { body: { stiffnessMin: 45 } },
  });
  expect(entryFrom({ ...draft, right: 1 })).toMatchObject({ entry: { body: { stiffnessMin: 12.5 } } });
});

test('numbers are typed with a point or a comma', () => {
  expect(from('run', { minutes: '25', kilometres: '4,3' })).toMatchObject({
    ok: true,
    entry: { body: { durationS: 1500, distanceM: 4300 } },
  });
});

test('what is missing or no number is named at its field, and nothing is kept', () => {
  for (const kind of logKinds) expect(from(kind, {}).ok).toBe(false);
  expect(from('morning-check', { left: 1, on: '' })).toEqual({ ok: false, problems: { on: 'day-missing' } });
  expect(from('morning-check', {})).toEqual({ ok: false, problems: { left: 'nothing-told' } });
  expect(from('run', {})).toEqual({ ok: false, problems: { minutes: 'time-or-way' } });
  expect(from('run', { minutes: '0', kilometres: 'far' })).toEqual({
    ok: false,
    problems: { minutes: 'number-wrong', kilometres: 'number-wrong' },
  });
  expect(from('done-item', { what: ' ', sets: '2.5', repetitions: '0', load: '-1' })).toEqual({
    ok: false,
    problems: { what: 'what-missing', sets: 'whole-wrong', repetitions: 'whole-wrong', load: 'number-wrong' },
  });
  expect(from('note', { text: '  ' })).toEqual({ ok: false, problems: { text: 'text-missing' } });
});

test('what was planned fills in what was done, and names the plan', () => {
  const item = madePlanItem({
    what: 'slow raises on two legs',
    side: 'both',
    load: { value: 10, unit: 'kg' },
    sets: 3,
    repetitions: 15,
    perWeek: 3,
    from: on,
    until: null,
    proposedBy: null,
    decision: 'accepted',
    why: null,
  });
  expect(entryFrom(draftOfPlanned(emptyDraft('done-item', on), 'p', item))).toMatchObject({
    entry: { body: { planItemId: 'p', what: item.what, load: item.load, sets: 3, repetitions: 15, painDuring: null } },
  });
});

test('a correction holds what differs and nothing else', () => {
  const after: LogEntry = { kind: 'morning-check', body: { on, pain: { left: 4, right: null }, stiffnessMin: 20 } };
  expect(changeBetween(entries[0], after)).toEqual({ pain: { left: 4, right: null } });
});

test('steps a minute are kept where they were told, and taken out where they were taken out of the field', () => {
  const kept = from('run', { minutes: '25', cadence: '168' });
  expect(kept).toMatchObject({ entry: { body: { cadencePerMin: 168 } } });
  expect(from('run', { minutes: '25' })).not.toHaveProperty('entry.body.cadencePerMin');
  if (!kept.ok) throw new Error('not kept');
  const emptied = entryFrom({ ...draftOf(kept.entry), cadence: '' });
  if (!emptied.ok) throw new Error('not kept');
  expect(changeBetween(kept.entry, emptied.entry)).toEqual({ cadencePerMin: null });
  expect(from('run', { minutes: '25', cadence: '0' })).toMatchObject({ problems: { cadence: 'number-wrong' } });
});

test('hours on the feet are typed: none at all is zero, and an empty field is no answer', () => {
  expect(from('on-feet', { hours: '0' })).toEqual({ ok: true, entry: { kind: 'on-feet', body: { on, hours: 0 } } });
  expect(from('on-feet', { hours: '7,5' })).toMatchObject({ entry: { body: { hours: 7.5 } } });
  for (const hours of ['', '25', '-1', 'many']) {
    expect(from('on-feet', { hours })).toEqual({ ok: false, problems: { hours: 'hours-wrong' } });
  }
});

test('a run of a file is filled in with its day and its hash, and a correction keeps the hash', () => {
  const fileSha256 = 'ab'.repeat(32);
  const draft = draftOfRun(emptyDraft('run', on), {
    day: '2026-03-01',
    movingS: 754,
    distanceM: 2137,
    cadence: null,
    fileSha256,
  });
  expect(draft).toMatchObject({ on: '2026-03-01', minutes: '12.6', kilometres: '2.14' });
  const kept = entryFrom(draft);
  const body = { on: '2026-03-01', durationS: 756, distanceM: 2140, pain: { left: null, right: null }, fileSha256 };
  expect(kept).toEqual({ ok: true, entry: { kind: 'run', body } });
  expect(entryFrom(draftOf({ kind: 'run', body }))).toEqual(kept);
  // steps a minute are filled in where it is known of how many feet they are
  const steps = (cadence: RunCadence) =>
    draftOfRun(draft, { day: '2026-03-01', movingS: 1, distanceM: 1, cadence, fileSha256 });
  expect(steps({ counted: 83, as: 'one-foot', perMin: 166 }).cadence).toBe('166');
  expect(steps({ counted: 118, as: 'unclear', perMin: null }).cadence).toBe('');
  // one that was typed names no file
  expect(from('run', { minutes: '5' })).not.toHaveProperty('entry.body.fileSha256');
});

test('pain after what was done that nobody was asked for stays away, and one that was kept is taken out as not told', () => {
  const body = { planItemId: null, on, what: 'raises', side: 'left', load: null, sets: 3, repetitions: 15 } as const;
  const before: LogEntry = { kind: 'done-item', body: { ...body, painDuring: 2, exertion: 5 } };
  expect(entryFrom(draftOf(before))).toEqual({ ok: true, entry: before });
  const kept: LogEntry = { kind: 'done-item', body: { ...before.body, painAfter: 4 } };
  expect(entryFrom({ ...draftOf(kept), painAfter: null })).toMatchObject({ entry: { body: { painAfter: null } } });
  expect(entryFrom({ ...draftOf(before), painAfter: 0 })).toMatchObject({ entry: { body: { painAfter: 0 } } });
});
