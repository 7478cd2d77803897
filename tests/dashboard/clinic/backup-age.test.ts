import { expect, test } from 'vitest';
import { backupAge } from '../../../apps/dashboard/src/clinic/backup-age.ts';

const asked = { nowIso: '2026-03-10T09:00:00+01:00', backupDays: 7, isEmpty: false };

test('of a clinic with somebody in it that never had one, a backup is due; of an empty one not', () => {
  expect(backupAge(null, asked)).toEqual({ due: true, days: null });
  expect(backupAge(null, { ...asked, isEmpty: true })).toEqual({ due: false, days: null });
});

test.each([
  ['2026-03-10T08:59:00+01:00', { due: false, days: 0 }],
  ['2026-03-03T09:01:00+01:00', { due: false, days: 6 }],
  ['2026-03-03T09:00:00+01:00', { due: true, days: 7 }],
  // the same moment, written elsewhere
  ['2026-03-03T08:00:00Z', { due: true, days: 7 }],
  ['2025-03-10T09:00:00+01:00', { due: true, days: 365 }],
  // the clock was set back since
  ['2026-04-01T09:00:00+01:00', { due: false, days: 0 }],
  ['some day', { due: true, days: null }],
] as const)('one of %s gives %j', (at, age) => {
  expect(backupAge({ at }, asked)).toEqual(age);
});
