import type { Side } from '@surae/analysis';
import { TODAY_RULES } from '@surae/shared';
import type { CaseloadEntry } from '../caseload.ts';
import { dayNumber } from '../compare/leg-past.ts';
import type { MorningLine, MorningOfLeg } from './morning-line.ts';
import { type RetestState, retestState } from './retest.ts';

/** One thing that somebody asks for today. */
export type Due =
  | { readonly kind: 'visit-open'; readonly begunAt: string }
  /** told in the newest visit */
  | { readonly kind: 'flare-told'; readonly begunAt: string; readonly sides: readonly Side[] }
  /** pain in the morning rose over what is usual */
  | {
      readonly kind: 'morning-rose';
      readonly on: string;
      readonly side: Side;
      readonly pain: number;
      readonly usual: number;
    }
  /** pain in the morning that may be a flare: what is usual is not known */
  | { readonly kind: 'morning-unknown'; readonly on: string; readonly side: Side; readonly pain: number }
  | Extract<RetestState, { readonly kind: 'due' | 'due-further' | 'never-tested' }>
  | { readonly kind: 'retest-unknown' }
  | { readonly kind: 'mass-missing' }
  /** whole days since it was written down; null where that cannot be told [d] */
  | { readonly kind: 'mass-old'; readonly days: number | null }
  | { readonly kind: 'mass-changed'; readonly before: number; readonly now: number }
  | { readonly kind: 'lever-missing' };

const bothSides = ['left', 'right'] as const satisfies readonly Side[];

/** What a morning says of a leg: a pain that cannot be more than the allowed rise over any usual level is no flare. */
function ofMorning(on: string, side: Side, { pain, usual }: MorningOfLeg): readonly Due[] {
  const most = TODAY_RULES.morningRiseMost.value;
  if (pain === null || pain <= most) return [];
  if (usual === null) return [{ kind: 'morning-unknown', on, side, pain }];
  return pain - usual > most ? [{ kind: 'morning-rose', on, side, pain, usual }] : [];
}

/** Flares by the newest word: a morning stands until a visit on its day or later, a visit until a morning after it. */
function flares({ facts, visits }: CaseloadEntry): readonly Due[] {
  const { morning, flareTold } = facts;
  const seen = dayNumber(visits.find(({ answered }) => answered)?.begunAt ?? '');
  const newest = morning !== null && (seen === null || dayNumber(morning.on)! > seen) ? morning : null;
  const ofMornings = newest === null ? [] : bothSides.flatMap((side) => ofMorning(newest.on, side, newest.legs[side]));
  if (flareTold === null) return ofMornings;
  const sides = flareTold.sides.filter((side) => newest === null || !isKnown(newest, side));
  return sides.length === 0 ? ofMornings : [{ kind: 'flare-told', begunAt: flareTold.begunAt, sides }, ...ofMornings];
}

/** Whether a morning tells of a leg whether it is in a flare. */
function isKnown({ legs }: MorningLine, side: Side): boolean {
  const { pain, usual } = legs[side];
  return pain !== null && (usual !== null || pain <= TODAY_RULES.morningRiseMost.value);
}

function retests({ facts: { episodes }, visits }: CaseloadEntry, isoNow: string): readonly Due[] {
  if (episodes.length === 0) return visits.some(({ tested }) => tested) ? [{ kind: 'retest-unknown' }] : [];
  const states = episodes.map((episode) => retestState(episode, visits, isoNow));
  const found = states.find(({ kind }) => kind === 'due' || kind === 'due-further');
  if (found?.kind === 'due' || found?.kind === 'due-further') return [found];
  if (states.some(({ kind }) => kind === 'cannot-tell')) return [{ kind: 'retest-unknown' }];
  return states.every(({ kind }) => kind === 'never-tested') ? [{ kind: 'never-tested' }] : [];
}

function mass(
  { person: { bodyMassKg }, facts: { massAt, massBefore } }: CaseloadEntry,
  isoNow: string,
): readonly Due[] {
  if (bodyMassKg === null) return [{ kind: 'mass-missing' }];
  const [today, day] = [dayNumber(isoNow), dayNumber(massAt ?? '')];
  if (today === null || day === null) return [{ kind: 'mass-old', days: null }];
  if (today - day > TODAY_RULES.massAgeMost.value) return [{ kind: 'mass-old', days: today - day }];
  if (massBefore === null) return [];
  const share = Math.abs(bodyMassKg - massBefore) / massBefore;
  // a share that is the limit but for the last digit of a double is not over it
  return share > TODAY_RULES.massChangeMost.value + 1e-12
    ? [{ kind: 'mass-changed', before: massBefore, now: bodyMassKg }]
    : [];
}

/**
 * What somebody asks for today, what comes first first: an open visit, a flare, a re-test, the body. What is missing is asked for and
 * never taken to be well.
 *
 * @param entry - somebody in the list of people [-]
 * @param isoNow - the present, with offset [-]
 * @returns nothing where there is nothing to ask for [-]
 * Source: TODAY_RULES and RETEST_TIMES; ours
 */
export function dueToday(entry: CaseloadEntry, isoNow: string): readonly Due[] {
  const open = entry.visits.find(({ answered, closed }) => answered && !closed);
  return [
    ...(open === undefined ? [] : [{ kind: 'visit-open', begunAt: open.begunAt } as const]),
    ...flares(entry),
    ...retests(entry, isoNow),
    ...mass(entry, isoNow),
    ...(entry.person.heelLeverM === null ? [{ kind: 'lever-missing' } as const] : []),
  ];
}

const ofTheBody: readonly Due['kind'][] = ['mass-missing', 'mass-old', 'mass-changed', 'lever-missing'];
/** said of somebody, and nothing that a day asks for */
const onlySaid: readonly Due['kind'][] = ['retest-unknown', 'never-tested'];

/** Whether somebody stands above the rest: something is due. A body is asked for of those alone who are in an episode. */
export function asksToday(due: readonly Due[], { facts }: Pick<CaseloadEntry, 'facts'>): boolean {
  const isInCare = facts.episodes.length > 0;
  return due.some(({ kind }) => !onlySaid.includes(kind) && (isInCare || !ofTheBody.includes(kind)));
}
