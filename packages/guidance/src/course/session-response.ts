import type { MorningTold, SessionTold } from './leg-course.ts';
import { usualMorning } from './usual-morning.ts';

/** What a session did to a leg by the morning after it; null is not known. */
export interface SessionResponse {
  readonly session: SessionTold;
  readonly morningRise: number | null;
  readonly stiffnessRise: number | null;
  readonly stiffnessOverDouble: number | null;
}

/** A session and the morning after, held against the mornings before that one. Source: ours; see {@link usualMorning}. */
export function sessionResponse(
  session: SessionTold,
  on: number,
  mornings: ReadonlyMap<number, MorningTold>,
): SessionResponse {
  const after = mornings.get(on + 1);
  const over = (part: 'pain' | 'stiffnessMin', times: number): number | null => {
    // the morning of the session itself is before it
    const usual = usualMorning(mornings, on + 1, part);
    const now = after?.[part] ?? null;
    return usual === null || now === null ? null : now - times * usual;
  };
  return {
    session,
    morningRise: over('pain', 1),
    stiffnessRise: over('stiffnessMin', 1),
    stiffnessOverDouble: over('stiffnessMin', 2),
  };
}
