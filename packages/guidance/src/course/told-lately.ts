import type { FactsOf, GivenFact } from '../given-facts.ts';
import type { SessionTold } from './leg-course.ts';
import type { SessionResponse } from './session-response.ts';

/**
 * Whether everything was told of the last two sessions and of the mornings after them, by what a step goes by.
 *
 * @param responses - the newest first [-]
 * @returns yes where there is no session to tell of [-]
 *
 * Source: ours
 */
export function toldInFull(responses: readonly SessionResponse[]): 'yes' | 'no' {
  const isWhole = responses
    .slice(0, 2)
    .every(
      ({ session: { shareDone, painDuring, painAfter, exertion }, morningRise, stiffnessRise }) =>
        ![shareDone, painDuring, painAfter, exertion, morningRise, stiffnessRise].includes(null),
    );
  return isWhole ? 'yes' : 'no';
}

/** Days that are looked back. */
const back = 14;

/**
 * Planned sessions of the last two weeks, and the share of them without a log or with nothing done. Of none, no share is left out.
 *
 * @param planned - day numbers before today [d]
 * @param sessions - by day number [-]
 * @param now - day number of today [d]
 * @param of - makes an answer [-]
 * @returns the two facts [1]
 *
 * Source: ours
 */
export function leftOut(
  planned: readonly number[],
  sessions: ReadonlyMap<number, SessionTold>,
  now: number,
  of: (value: number) => GivenFact,
): FactsOf {
  const lately = planned.filter((on) => on >= now - back && on < now);
  const out = lately.filter((on) => (sessions.get(on)?.shareDone ?? (sessions.has(on) ? 1 : 0)) === 0);
  return {
    'planned-two-weeks': of(lately.length),
    'left-out-two-weeks': of(lately.length === 0 ? 0 : out.length / lately.length),
  };
}
