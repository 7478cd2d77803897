import { identityDifferences, type LegCourse, type VisitResult } from '@surae/analysis';
import type { Visit } from '../visit.ts';

/** The day of a written time by the clock of its place, from a fixed day; null when it cannot be read [d]. */
export function dayNumber(iso: string): number | null {
  const days = Date.parse(`${iso.slice(0, 10)}T00:00:00Z`) / 86_400_000;
  return Number.isFinite(days) ? days : null;
}

/** One leg on one visit, with the visit that it is of. */
export interface LegOfVisit<Leg> {
  readonly visit: Visit;
  readonly leg: Leg;
  readonly result: VisitResult;
}

/** One leg over the visits of a person: those that may be held against each other, and those that may not. */
export interface LegPast<Leg> {
  readonly now: LegOfVisit<Leg>;
  /** done in the same way as this one and showing what the calf could do, the oldest first */
  readonly alike: readonly LegOfVisit<Leg>[];
  readonly unlike: readonly LegOfVisit<Leg>[];
  /** those before a visit that was taken as the new start: held against none after it */
  readonly beforeStart: readonly LegOfVisit<Leg>[];
  /** null where this one is not interpreted, or nothing is alike */
  readonly course: LegCourse | null;
}

/** One test, as far as its results are held against earlier ones. */
export interface PastTest<Leg> {
  /** the leg on a visit with the visits before it; null where it has no result */
  readonly legOf: (visit: Visit, earlier: readonly Visit[]) => Leg | null;
  /** whether an earlier visit may be held beside this one at all; each may when left out */
  readonly isHeldBeside?: (visit: Visit) => boolean;
  /** whether what lies before a visit is not held against what comes after it; none is when left out */
  readonly startsAnew?: (visit: Visit) => boolean;
  /** see `legOverVisits` of the analysis */
  readonly over: (visits: readonly { readonly day: number | null; readonly leg: Leg }[]) => LegCourse;
}

/** Whether two results were taken in the same way, in the same unit. */
export function takenAlike(one: VisitResult, other: VisitResult): boolean {
  return identityDifferences(one.identity, other.identity).length === 0 && one.unit === other.unit;
}

/** One leg of a visit over earlier visits, the oldest first; undefined where it has no result in this visit. */
export function pastOf<Leg>(
  visit: Visit,
  earlier: readonly Visit[],
  { legOf, over, isHeldBeside = () => true, startsAnew = () => false }: PastTest<Leg>,
): LegPast<Leg> | undefined {
  const ofVisit = (one: Visit, before: readonly Visit[]): LegOfVisit<Leg>[] => {
    const leg = legOf(one, before);
    if (leg === null) return [];
    return over([{ day: dayNumber(one.begunAt), leg }]).visits.map((result) => ({ visit: one, leg, result }));
  };
  const [now] = ofVisit(visit, earlier);
  if (now === undefined) return undefined;
  const start = Math.max(0, earlier.findLastIndex(startsAnew));
  const ofVisits = (from: number, to?: number): LegOfVisit<Leg>[] =>
    earlier.slice(from, to).flatMap((one, at) => ofVisit(one, earlier.slice(0, from + at)));
  const past = ofVisits(start);
  const isAlike = ({ visit: one, result }: LegOfVisit<Leg>): boolean =>
    isHeldBeside(one) && takenAlike(result, now.result) && result.blocks.length === 0;
  // of tests on one day the last one counts: a change within a day is none from visit to visit
  const isLastOfDay = ({ result: { day } }: LegOfVisit<Leg>, at: number, all: readonly LegOfVisit<Leg>[]): boolean =>
    day !== now.result.day && all.slice(at + 1).every((later) => later.result.day !== day);
  const alike = past.filter(isAlike).filter(isLastOfDay);
  const hasCourse = alike.length > 0 && now.result.blocks.length === 0;
  return {
    now,
    alike,
    unlike: past.filter((one) => !alike.includes(one)),
    beforeStart: ofVisits(0, start),
    course: hasCourse ? over([...alike, now].map(({ leg, result: { day } }) => ({ day, leg }))) : null,
  };
}
