import type { Side } from '@surae/analysis';
import { type LegDay, type LineBeside, type LoadRange, relativeOf } from '@surae/guidance';
import { AXIS_WORDS, COURSE_WORDS, EXERCISE_WORDS, LOAD_WORDS, MARK_WORDS, RELATIVE_LOADS } from '@surae/shared';
import { capital } from '../result/value-words.ts';
import { dayOf, shortDayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import type { DiaryDay, DiaryWeek, LoadDiary, RunsOfDay } from './load-diary.ts';
import { loadNumber, minutesWords, timesWords } from './load-numbers.ts';

const words = LOAD_WORDS;
const sides = ['left', 'right'] as const satisfies readonly Side[];

/** Name of an exercise of the list; what is not in it is called by its own words. */
export function exerciseName(code: string | null, what: string): string {
  return code !== null && Object.hasOwn(EXERCISE_WORDS, code)
    ? EXERCISE_WORDS[code as keyof typeof EXERCISE_WORDS].text
    : what;
}

/** For how many days of the diary something is written down, leg by leg. */
export function diaryLeads({ days }: Pick<LoadDiary, 'days'>): readonly string[] {
  return sides.map((side) => {
    const told = days.filter(({ legs }) => legs[side].done !== null).length;
    const blanks = { leg: AXIS_WORDS[side].text, told, days: days.length };
    return fill(words[told === 0 ? 'lead-none' : 'lead'], blanks);
  });
}

/** What was written down of a leg on a day: nothing is said to be so, and is no zero. */
export function legDayWords({ done }: Pick<LegDay, 'done'>): string {
  if (done === null) return words.unknown.text;
  const { asRaiseS, unweighedS, amountsUnknown } = done;
  const unweighed = minutesWords([unweighedS, unweighedS]);
  const parts = [
    ...(asRaiseS === null ? [] : [minutesWords(asRaiseS)]),
    ...(unweighedS === 0
      ? []
      : [fill(words[asRaiseS === null ? 'unweighed-only' : 'unweighed'], { minutes: unweighed })]),
  ];
  if (amountsUnknown > 0) parts.push(words[parts.length === 0 ? 'amount-unknown' : 'more-unknown'].text);
  return parts.join(', ');
}

function runWords(run: RunsOfDay | null): string {
  if (run === null) return words.unknown.text;
  const { durationS, distanceM } = run;
  const way = distanceM === null ? null : fill(words.kilometres, { value: loadNumber(distanceM / 1000) });
  if (durationS === null) return way === null ? words['amount-unknown'].text : fill(words['time-not-told'], { way });
  const time = minutesWords([durationS, durationS]);
  return way === null ? time : `${time}, ${way}`;
}

function isEmpty({ legs, run, feetH }: DiaryDay): boolean {
  return legs.left.done === null && legs.right.done === null && run === null && feetH === null;
}

/** A row of the table of days: when, left, right, and what both legs did beside it. */
export type DiaryRow = readonly [when: string, left: string, right: string, beside: string];

/** The diary as a table, the newest first; days in a row of which nothing was written down are one row that says so. */
export function diaryRows({ days }: Pick<LoadDiary, 'days'>): readonly DiaryRow[] {
  const stretches: DiaryDay[][] = [];
  for (const day of days) {
    const last = stretches.at(-1);
    if (last !== undefined && isEmpty(day) && isEmpty(last[0]!)) last.push(day);
    else stretches.push([day]);
  }
  return stretches.toReversed().map((stretch): DiaryRow => {
    const [first, last] = [stretch[0]!, stretch.at(-1)!];
    const { unknown } = words;
    if (stretch.length > 1) {
      const when = { from: shortDayOf(first.on), to: dayOf(last.on), days: stretch.length };
      return [fill(words['some-days'], when), unknown.text, unknown.text, unknown.text];
    }
    const { on, legs, run, feetH } = first;
    const feet = feetH === null ? unknown.text : fill(words.hours, { value: loadNumber(feetH) });
    const beside =
      run === null && feetH === null ? unknown.text : fill(words['beside-of'], { run: runWords(run), feet });
    return [dayOf(on), legDayWords(legs.left), legDayWords(legs.right), beside];
  });
}

function rangeTimes([low, high]: LoadRange, times: number): LoadRange {
  return [low * times, high * times];
}

/** What of the load that a week asks for is written down, or why that cannot be told. */
function doseWords({ planned, done, sessionsPlanned, entriesUnknown, sessionsUnknown }: LineBeside): string {
  const open = (why: 'none' | 'amounts' | 'load' | 'relative-load'): string =>
    fill(words['dose-open'], { why: words[`why-${why}`].text });
  if ('withheld' in planned) return open('amounts');
  if (planned.unweighed !== null) return open(planned.unweighed);
  if (done === null) return open(entriesUnknown > 0 ? 'amounts' : 'none');
  if (done.asRaiseS === null || planned.asRaiseS === null) return open(done.unweighed ?? 'load');
  const told = minutesWords(done.asRaiseS);
  if (sessionsPlanned === null) return fill(words['dose-done'], { done: told });
  const isWhole = sessionsUnknown === 0 && entriesUnknown === 0;
  const asked = minutesWords(rangeTimes(planned.asRaiseS, sessionsPlanned));
  return fill(words[isWhole ? 'dose-of' : 'dose-least'], { done: told, planned: asked });
}

/** A row of the table of weeks: which line and leg, sessions planned, written down and unknown, and the load. */
export type WeekRow = readonly [of: string, sessions: string, dose: string];

/** Plan and diary week by week, the newest first. */
export function weekRows(weeks: readonly DiaryWeek[]): readonly WeekRow[] {
  return weeks.flatMap(({ from, until, lines }) =>
    lines.map((one): WeekRow => {
      const { item, leg, sessionsPlanned, sessionsLogged, sessionsUnknown } = one;
      return [
        fill(words['week-line'], {
          from: shortDayOf(from),
          to: shortDayOf(until),
          exercise: exerciseName(item.code, item.what),
          leg: COURSE_WORDS[leg].text,
        }),
        sessionsPlanned === null || sessionsUnknown === null
          ? fill(words['sessions-open'], { logged: sessionsLogged, planned: words['often-not-said'].text })
          : fill(words['sessions-of'], { planned: sessionsPlanned, logged: sessionsLogged, unknown: sessionsUnknown }),
        doseWords(one),
      ];
    }),
  );
}

/** What the loads rest on: each exercise beside a raise with source and mark, and what is taken for granted. */
export function diaryRest({ items, weeks, bodyMassKg }: LoadDiary): readonly string[] {
  const codes = [...new Set(items.map(({ code }) => code))];
  const ownWords = weeks.reduce((sum, one) => sum + one.ownWords, 0);
  const isLoaded = items.some(({ load }) => load !== null);
  return [
    ...codes.flatMap((code): string[] => {
      if (code === null) return [];
      const exercise = exerciseName(code, code);
      const entry = RELATIVE_LOADS.find((one) => one.exercise === code);
      const relative = relativeOf(code, 0);
      if (entry === undefined || relative === null) return [fill(words['rest-unknown'], { exercise })];
      const all = [...new Set(relative.from.map(({ source }) => source))];
      // one that goes on says the other too
      const sources = all.filter((one) => !all.some((other) => other !== one && other.startsWith(one)));
      const { source } = entry;
      return [
        fill(words['rest-line'], {
          exercise,
          range: timesWords(relative.range),
          source: sources.length === 0 ? capital(source) : sources.map(capital).join('; '),
          mark: MARK_WORDS[relative.mark].text,
        }),
      ];
    }),
    words['rest-tempo'].text,
    ...(isLoaded ? [words[bodyMassKg === null ? 'rest-mass-open' : 'rest-mass'].text] : []),
    words['rest-apart'].text,
    ...(ownWords === 0 ? [] : [fill(words['own-words'], { count: ownWords })]),
  ];
}
