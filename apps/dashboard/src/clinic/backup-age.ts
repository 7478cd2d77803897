import type { BackupNote } from '@surae/storage';

/** Whether somebody is to be reminded of a backup, and how old the last one is. */
export type BackupAge =
  | { readonly due: false; readonly days: number | null }
  /** there never was one */
  | { readonly due: true; readonly days: null }
  /** whole days since the last one [day] */
  | { readonly due: true; readonly days: number };

/**
 * Whether a backup is due: the last one is older than the days that were set, or there is something in the book and never was
 * one. One that lies in the future, after the clock was set back, is of today.
 */
export function backupAge(
  last: Pick<BackupNote, 'at'> | null,
  { nowIso, backupDays, isEmpty }: { readonly nowIso: string; readonly backupDays: number; readonly isEmpty: boolean },
): BackupAge {
  if (last === null) return isEmpty ? { due: false, days: null } : { due: true, days: null };
  const days = Math.max(0, Math.floor((Date.parse(nowIso) - Date.parse(last.at)) / 86_400_000));
  // a time that cannot be read is no backup that anybody could rely on
  if (!Number.isFinite(days)) return { due: true, days: null };
  return { due: days >= backupDays, days };
}
