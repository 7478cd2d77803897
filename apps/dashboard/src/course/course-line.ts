import type { Side } from '@surae/analysis';
import type { CasebookPerson, CasebookVisit, Entry, PullSet, Recount, VisitSet } from '@surae/casebook';
import { COURSE_WORDS, SUMMARY_WORDS } from '@surae/shared';
import { recountSentence } from '../result/recount-view.ts';
import { fill } from '../words/fill.ts';
import type { LogEntry, LoggedEntry } from './log-entry.ts';
import { declinedWords, episodeWords, logWords, planWords } from './log-words.ts';
import { testWords } from './test-words.ts';

/** What a line tells of. */
export type CourseWhat = 'test' | 'episode' | 'flare' | 'planned' | LogEntry['kind'];

/** One thing on the line of time. */
export interface CourseLine {
  readonly id: string;
  readonly what: CourseWhat;
  /** day of the calendar of the place, such as 2026-03-01 */
  readonly day: string;
  /** when it was written down, with offset: it orders what is of one day */
  readonly at: string;
  readonly side: Side | null;
  readonly sentences: readonly string[];
  /** set where it can be corrected and taken out here */
  readonly logged: LoggedEntry | null;
  /** the visit that it is of */
  readonly visitId: string | null;
  /** a set whose samples can be counted again by other criteria */
  readonly isCounted: boolean;
}

const sides = ['left', 'right'] as const satisfies readonly Side[];

function lineOf(
  what: CourseWhat,
  { id, at }: Pick<Entry<unknown>, 'id' | 'at'>,
  day: string,
  sentences: readonly string[],
  more: Partial<CourseLine> = {},
): CourseLine {
  return { id, what, day, at, side: null, sentences, logged: null, visitId: null, isCounted: false, ...more };
}

/** What came of counting a set again, beside its first result. */
function againWords({ id, report }: VisitSet | PullSet, recounts: readonly Entry<Recount>[]): readonly string[] {
  if (report === null || !('repetitions' in report)) return [];
  return recounts.filter(({ body }) => body.setId === id).map((one) => recountSentence(report, one));
}

/** The tests of a visit, a leg each, the flare that was told with them, and what of the proposals was declined. */
function visitLines({ visit, recounts }: CasebookVisit): CourseLine[] {
  const { id: visitId, begunAt, history } = visit;
  const ofVisit = (side: Side): Partial<CourseLine> => ({ side, visitId });
  const tests = [...visit.sets, ...(visit.pulls ?? [])].map((set) =>
    lineOf(
      'test',
      { id: set.id, at: set.begunAt },
      set.begunAt.slice(0, 10),
      [...testWords(set), ...againWords(set, recounts)],
      { ...ofVisit(set.choice.side), isCounted: set.report !== null && 'repetitions' in set.report },
    ),
  );
  const flares = sides
    .filter((side) => history?.legs[side].irritability.flare === 'yes' && visit.sore[side] !== 'no')
    .map((side) =>
      lineOf(
        'flare',
        { id: `${visitId} ${side}`, at: begunAt },
        begunAt.slice(0, 10),
        [fill(COURSE_WORDS['flare-of'], { leg: SUMMARY_WORDS[side].text })],
        ofVisit(side),
      ),
    );
  const declined = (visit.declined ?? []).map((one) =>
    lineOf('planned', { id: `${visitId} ${one.proposedBy}`, at: begunAt }, begunAt.slice(0, 10), [declinedWords(one)], {
      visitId,
    }),
  );
  return [...tests, ...flares, ...declined];
}

/** Everything that was written down by hand and can be corrected here. */
export function loggedOf({
  morningChecks,
  doneItems,
  runs,
  onFeet,
  questionnaireTotals,
  reaches,
  notes,
  targets,
}: CasebookPerson): readonly LoggedEntry[] {
  return [
    ...morningChecks.map(({ id, body }) => ({ id, kind: 'morning-check', body }) as const),
    ...doneItems.map(({ id, body }) => ({ id, kind: 'done-item', body }) as const),
    ...runs.map(({ id, body }) => ({ id, kind: 'run', body }) as const),
    ...onFeet.map(({ id, body }) => ({ id, kind: 'on-feet', body }) as const),
    ...questionnaireTotals.map(({ id, body }) => ({ id, kind: 'questionnaire-total', body }) as const),
    ...reaches.map(({ id, body }) => ({ id, kind: 'knee-to-wall', body }) as const),
    ...notes.map(({ id, body }) => ({ id, kind: 'note', body }) as const),
    ...targets.map(({ id, body }) => ({ id, kind: 'target', body }) as const),
  ];
}

/** Day of the first visit; null without one. */
export function firstDayOf({ visits }: Pick<CasebookPerson, 'visits'>): string | null {
  return visits.map(({ visit }) => visit.begunAt.slice(0, 10)).sort()[0] ?? null;
}

/** The day a complaint stands on: the one on which it began where that is known, else the one on which it was written down. */
function episodeDay(began: string | null, at: string): string {
  return began !== null && began.length === 10 ? began : at.slice(0, 10);
}

/**
 * Everything of one person as lines, the newest first: what came since the last visit is what one looks for, and it must not
 * take a scroll through months. Of one day the later written stands first.
 */
export function courseLines(person: CasebookPerson): readonly CourseLine[] {
  const { morningChecks, doneItems, runs, onFeet, questionnaireTotals, reaches, notes, targets } = person;
  const byHand = [
    ...morningChecks,
    ...doneItems,
    ...runs,
    ...onFeet,
    ...questionnaireTotals,
    ...reaches,
    ...notes,
    ...targets,
  ];
  const written = new Map(byHand.map(({ id, at }) => [id, at]));
  const lines = [
    ...person.visits.flatMap(visitLines),
    ...loggedOf(person).map((logged) =>
      lineOf(logged.kind, { id: logged.id, at: written.get(logged.id) ?? '' }, logged.body.on, [logWords(logged)], {
        logged,
        side: logged.kind === 'questionnaire-total' || logged.kind === 'knee-to-wall' ? logged.body.side : null,
      }),
    ),
    ...person.planItems.map((one) => lineOf('planned', one, one.body.from, [planWords(one.body)])),
    ...person.episodes.map((one) => lineOf('episode', one, episodeDay(one.body.began, one.at), episodeWords(one.body))),
  ];
  // times of one place may stand in two offsets: they are compared as moments
  return lines.sort((a, b) => b.day.localeCompare(a.day) || Date.parse(b.at) - Date.parse(a.at));
}
