import type { DayRange, Side } from '@surae/analysis';
import { FLARE_TIMES, type LastFlare } from '@surae/shared';
import { dayNumber } from './compare/leg-past.ts';
import { inFlare } from './history.ts';
import type { IrritabilityTold, LegHistory, Visit } from './visit.ts';

/** What is known of the last flare of a leg. */
export interface FlareKnown {
  /** as it was told in this visit; null was not asked */
  readonly answer: LastFlare | null;
  /** day of an earlier visit that tells of a later flare than this one does, with offset; null where none does */
  readonly since: string | null;
  /** null where nothing is known [d] */
  readonly days: DayRange | null;
}

type Told = Pick<Visit, 'sore' | 'history' | 'begunAt'>;

/** A flare now counts before whatever else was said of the same leg. */
function answerOf(visit: Pick<Visit, 'sore' | 'history'>, side: Side): LastFlare | null {
  return inFlare(visit, side) === true ? 'now' : (visit.history?.legs[side].lastFlare ?? null);
}

/**
 * When the last flare of a leg was: as it was told, and not longer ago than an earlier visit tells of one.
 *
 * @param visit - the visit of today [-]
 * @param earlier - visits of the person before it [-]
 * @param side - the leg [-]
 * @returns what is known; days count from the day of the visit [d]
 * Source: ours
 */
export function lastFlareOf(visit: Told, earlier: readonly Told[], side: Side): FlareKnown {
  const answer = answerOf(visit, side);
  const told = answer === null ? null : FLARE_TIMES[answer];
  const least = told?.least ?? 0;
  let under = told?.under ?? Number.POSITIVE_INFINITY;
  let since: string | null = null;
  const today = dayNumber(visit.begunAt);
  for (const one of earlier) {
    const then = answerOf(one, side);
    const day = dayNumber(one.begunAt);
    if (then === null || today === null || day === null) continue;
    const bound = (FLARE_TIMES[then].under ?? Number.POSITIVE_INFINITY) + Math.max(0, today - day);
    if (bound >= under) continue;
    under = bound;
    since = one.begunAt;
  }
  return { answer, since, days: told === null && since === null ? null : { least, under } };
}

/** A leg once it was told when its last flare was, null for not asked: of a sore one it says also whether it is in one now. */
export function withLastFlare(leg: LegHistory, answer: LastFlare | null, isSore: boolean): LegHistory {
  const { lastFlare: before, ...rest } = leg;
  if (answer === null) {
    // what was told with it goes with it
    const flare = before === undefined || !isSore ? rest.irritability.flare : null;
    return { ...rest, irritability: { ...rest.irritability, flare } };
  }
  const flare = isSore ? (answer === 'now' ? 'yes' : 'no') : rest.irritability.flare;
  return { ...rest, lastFlare: answer, irritability: { ...rest.irritability, flare } };
}

/** A leg once it was told whether it is in a flare now; when the last one was is kept as far as it agrees. */
export function withFlareNow(leg: LegHistory, flare: IrritabilityTold['flare']): LegHistory {
  const { lastFlare, ...rest } = leg;
  const agreeing = flare === 'yes' ? 'now' : lastFlare === 'now' ? undefined : lastFlare;
  return {
    ...rest,
    ...(agreeing === undefined ? {} : { lastFlare: agreeing }),
    irritability: { ...rest.irritability, flare },
  };
}
