import type { IrritabilityTold, LegHistory, SetEnd, VisitHistory, VisitLadder } from '@surae/casebook';
import { noHistory } from '@surae/casebook';
import { LEGS, type Leg } from '@surae/guidance';
import type { CoursePerson, Found } from '@surae/simulation';

/** What is known of a leg of an invented person when a visit begins. */
export interface LegToday {
  readonly found: Found;
  /** pain of the first steps of today, and minutes of stiffness [1, min] */
  readonly morning: { readonly pain: number; readonly stiffnessMin: number };
  /** days since something set the tendon back; null where nothing did [d] */
  readonly sinceSetback: number | null;
}

/** What is told of both legs. */
export type LegsToday = Readonly<Record<Leg, LegToday>>;

const provoked = {
  low: 'fast-or-heavy-load',
  moderate: 'single-raises-or-long-walk',
  high: 'walking-or-standing',
} as const;

function stiffnessOf(minutes: number): IrritabilityTold['stiffness'] {
  if (minutes < 10) return 'under-10-minutes';
  return minutes <= 30 ? '10-to-30-minutes' : 'over-30-minutes';
}

function irritability({ found, morning, sinceSetback }: LegToday): IrritabilityTold {
  const isFresh = sinceSetback !== null && sinceSetback < 7;
  return {
    provokedBy: provoked[found.grade],
    peakPain: found.painSingle,
    settles: found.settles ? (found.grade === 'low' ? 'under-12-hours' : 'by-next-morning') : 'over-24-hours',
    stiffness: stiffnessOf(morning.stiffnessMin),
    restPain: 'none',
    trend: isFresh ? 'worsening' : 'steady-or-better',
    flare: isFresh ? 'yes' : 'no',
    painNow: Math.min(morning.pain, found.painWalk),
  };
}

function lastFlare({ sinceSetback }: LegToday): NonNullable<LegHistory['lastFlare']> {
  if (sinceSetback === null || sinceSetback > 7) return 'longer-ago-or-never';
  return sinceSetback <= 2 ? 'within-two-days' : 'within-a-week';
}

/** What somebody tells when they are asked. */
export function historyTold(person: CoursePerson, legs: LegsToday): VisitHistory {
  const of = (leg: Leg): LegHistory => {
    const untold = { ...noHistory.legs[leg], injury: 'none', lastFlare: 'longer-ago-or-never' } as const;
    if (person[leg].place === 'no') return untold;
    return { ...untold, lastFlare: lastFlare(legs[leg]), irritability: irritability(legs[leg]) };
  };
  return { legs: { left: of('left'), right: of('right') }, about: [] };
}

/** What is tried on each leg, in the order of its rungs: a walk, a raise on two legs and on one, ten of these, three hops, ten. */
export function ladderTold(legs: LegsToday): VisitLadder {
  const of = (leg: Leg): VisitLadder[Leg] => {
    const { painWalk, painDouble, painSingle, painHops, raises } = legs[leg].found;
    if (raises < 1) {
      return { answers: [painWalk, painDouble, 'could-not', 'not-done', 'not-done', 'not-done'], sudden: false };
    }
    // nobody has a sore tendon hop that a raise hurts
    const hops = painSingle > 2 ? ('not-done' as const) : painHops;
    return { answers: [painWalk, painDouble, painSingle, painSingle, hops, hops], sudden: null };
  };
  return { left: of('left'), right: of('right') };
}

/** How the raises of a leg end. */
export function endTold({ found: { painSingle } }: LegToday): SetEnd {
  return { reason: painSingle > 5 ? 'pain' : 'fatigue', painPeak: painSingle, exertion: 9, painSharp: false };
}

/** Legs that are sore, as a visit asks. */
export function soreTold(person: CoursePerson): Readonly<Record<Leg, CoursePerson['left']['place']>> {
  return { left: person.left.place, right: person.right.place };
}

/** Legs that are sore. */
export function soreIn(person: CoursePerson): readonly Leg[] {
  return LEGS.filter((leg) => person[leg].place !== 'no');
}
