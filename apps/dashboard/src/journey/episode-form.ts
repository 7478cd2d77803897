import type { Episode } from '@surae/casebook';

/** What was typed and chosen about an episode, as it stands in the fields. */
export interface EpisodeFields extends Pick<Episode, 'sore' | 'onset'> {
  readonly pop: boolean | null;
  readonly began: string;
  readonly loads: string;
  readonly story: string;
  readonly goal: string;
  readonly goalBy: string;
}

/** Why a field is not taken. */
export type EpisodeProblem =
  | 'sore-missing'
  | 'too-long'
  /** no day, month or year */
  | 'date-unreadable'
  /** a beginning that is still to come */
  | 'date-to-come'
  /** a goal that has passed */
  | 'date-past'
  /** an end that is still to come */
  | 'date-over-to-come'
  /** an end before the beginning */
  | 'date-over-before';

export type EpisodeField = 'sore' | 'began' | 'loads' | 'story' | 'goal' | 'goalBy';

/** The episode that the fields tell of, or what is wrong with which of them. */
export type EpisodeForm =
  | { readonly ok: true; readonly episode: Episode }
  | { readonly ok: false; readonly problems: Readonly<Partial<Record<EpisodeField, EpisodeProblem>>> };

export const noFields: EpisodeFields = {
  sore: { left: null, right: null },
  onset: null,
  pop: null,
  began: '',
  loads: '',
  story: '',
  goal: '',
  goalBy: '',
};

/** Beginnings that are chosen in place of being typed. */
export const beginnings = ['this-month', 'last-month', 'this-year', 'last-year'] as const;

/** The part of a date that a chosen beginning names, counted from today. */
export function beginningOf(which: (typeof beginnings)[number], isoNow: string): string {
  const [year, month] = isoNow.split('-').map(Number) as [number, number];
  const two = (value: number): string => String(value).padStart(2, '0');
  switch (which) {
    case 'this-month':
      return `${year}-${two(month)}`;
    case 'last-month':
      return month === 1 ? `${year - 1}-12` : `${year}-${two(month - 1)}`;
    case 'this-year':
      return String(year);
    case 'last-year':
      return String(year - 1);
  }
}

/** A day, a month or a year as it was typed; null for an empty field, undefined for anything else. */
export function typedPartDate(text: string): string | null | undefined {
  const trimmed = text.trim();
  if (trimmed === '') return null;
  if (!/^(?:19|20)\d{2}(?:-\d{2}(?:-\d{2})?)?$/.test(trimmed)) return undefined;
  const day = new Date(`${trimmed}${'-01-01'.slice(trimmed.length - 4)}T00:00:00Z`);
  // a day that the calendar does not have becomes another one
  return Number.isFinite(day.getTime()) && day.toISOString().startsWith(trimmed) ? trimmed : undefined;
}

/** Whether a part of a date lies wholly after a day: both are compared as far as the shorter one tells. */
function isAfter(part: string, other: string): boolean {
  const length = Math.min(part.length, other.length);
  return part.slice(0, length) > other.slice(0, length);
}

const mostLetters = 2000;

function noteOf(text: string): string | null {
  return text.trim() === '' ? null : text.trim();
}

/**
 * The episode that the fields tell of. A question that does not follow any more, as of a pop, is not asked.
 *
 * @param before - the episode that is corrected, whose goal may have passed meanwhile
 */
export function episodeFrom(fields: EpisodeFields, isoNow: string, before?: Episode): EpisodeForm {
  const today = isoNow.slice(0, 10);
  const [began, goalBy] = [typedPartDate(fields.began), typedPartDate(fields.goalBy)];
  const places = Object.values(fields.sore);
  const long = (text: string): EpisodeProblem | undefined =>
    text.trim().length > mostLetters ? 'too-long' : undefined;
  const problems = {
    sore: places.some((place) => place !== null && place !== 'no') ? undefined : 'sore-missing',
    began:
      began === undefined ? 'date-unreadable' : began !== null && isAfter(began, today) ? 'date-to-come' : undefined,
    loads: long(fields.loads),
    story: long(fields.story),
    goal: long(fields.goal),
    goalBy:
      goalBy === undefined
        ? 'date-unreadable'
        : goalBy !== null && goalBy !== before?.goalBy && isAfter(today, goalBy)
          ? 'date-past'
          : undefined,
  } as const satisfies Readonly<Record<EpisodeField, EpisodeProblem | undefined>>;
  const found = Object.entries(problems).filter(([, problem]) => problem !== undefined);
  if (began === undefined || goalBy === undefined || found.length > 0)
    return { ok: false, problems: Object.fromEntries(found) };
  const episode = {
    sore: fields.sore,
    onset: fields.onset,
    began,
    over: before?.over ?? null,
    story: noteOf(fields.story),
    goal: noteOf(fields.goal),
    loads: noteOf(fields.loads),
    goalBy,
    pop: fields.onset === 'sudden' ? fields.pop : null,
  };
  return { ok: true, episode };
}

/** The fields as they stand for an episode that is known. */
export function episodeFields({ sore, onset, began, story, goal, loads, goalBy, pop }: Episode): EpisodeFields {
  return {
    sore: { left: sore.left, right: sore.right },
    onset,
    pop: pop ?? null,
    began: began ?? '',
    loads: loads ?? '',
    story: story ?? '',
    goal: goal ?? '',
    goalBy: goalBy ?? '',
  };
}

/** What differs between an episode and what was typed; undefined where nothing does. */
export function episodeChange(before: Episode, after: Episode): Partial<Episode> | undefined {
  const names = Object.keys(after) as (keyof Episode)[];
  const same = (name: keyof Episode): boolean =>
    JSON.stringify(after[name] ?? null) === JSON.stringify(before[name] ?? null);
  const changed = names.filter((name) => !same(name));
  return changed.length === 0 ? undefined : Object.fromEntries(changed.map((name) => [name, after[name]]));
}

/** When an episode was over, or why that is not taken; an empty field is today. */
export function overFrom(
  text: string,
  began: Episode['began'],
  isoNow: string,
): { readonly over: string } | { readonly problem: EpisodeProblem } {
  const [today, over] = [isoNow.slice(0, 10), typedPartDate(text)];
  if (over === undefined) return { problem: 'date-unreadable' };
  if (over === null) return { over: today };
  if (isAfter(over, today)) return { problem: 'date-over-to-come' };
  return began !== null && isAfter(began, over) ? { problem: 'date-over-before' } : { over };
}
